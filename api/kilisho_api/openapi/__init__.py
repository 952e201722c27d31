"""The contract: an OpenAPI 3.1 document, the JSON Schema of a pack, and executed examples; run as a module, it writes them."""

from kilisho_api.openapi.document import contract

__all__ = ("contract",)
