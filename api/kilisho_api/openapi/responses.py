"""The parts of the contract that every operation shares: problems, headers, parameters."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from kilisho_api.problem_types import PROBLEM_TYPES, ProblemType
from kilisho_api.problems import PROBLEM_JSON, body_of

Part = dict[str, Any]
EXAMPLE_ID = "6f1c0f0e-6a0b-4c57-9d3e-2b8d1c9f7a10"
OF_EVERY_GET = ("not-acceptable", "invalid-request", "internal-error")
OF_EVERY_POST = ("malformed-json", "not-acceptable", "too-large", "unsupported-media-type", "invalid-request", "internal-error")
OF_TABLES = ("bad-request", "request-stalled", "no-room")
_EXAMPLES: Mapping[str, tuple[str, list[Part]]] = {
    "malformed-json": ("The body is not one JSON document (line 3, column 14).", []),
    "not-found": (
        "The collection holds no entry with this id.",
        [{"parameter": "id", "code": "unknown_id", "detail": "no entry of this collection", "nearest": ["cattle_dung"]}],
    ),
    "invalid-request": (
        "2 faults in the body.",
        [
            {"pointer": "/digester/total_volme", "code": "extra_forbidden", "detail": "no such member here", "nearest": ["total_volume"]},
            {"pointer": "/feed/0/substrate", "code": "unknown_id", "detail": "not a substrate of the rulebook", "nearest": ["cattle_dung"]},
        ],
    ),
}


def components() -> Part:
    """Shared responses, headers and parameters by name; see :func:`referred`."""
    return {
        "responses": {_name(kind): _response(kind) for kind in PROBLEM_TYPES.values()},
        "headers": {
            "RequestId": {"description": "The request's id.", "schema": {"type": "string", "format": "uuid"}},
            "RetryAfter": {"description": "Seconds after which to try again.", "schema": {"type": "integer", "minimum": 1}},
            "Challenge": {"description": "How to show a key.", "schema": {"type": "string"}},
            "ETag": {"description": "Strong entity tag of the body.", "schema": {"type": "string"}},
        },
        "parameters": {
            "RequestId": _header("X-Request-Id", "A UUID to be used as the request's id; anything else is passed over and an id is made."),
            "IfNoneMatch": _header("If-None-Match", "Entity tags that the caller holds; one that still holds is answered with 304."),
            "Explain": {
                "name": "explain",
                "in": "query",
                "description": "Add the derivation of every number.",
                "schema": {"type": "boolean", "default": False},
            },
        },
    }


def referred(document: Part) -> Part:
    """``document`` without the shared responses and headers that nothing in it refers to."""
    shared = document["components"]
    named = _references(document["paths"])
    kept = {name: one for name, one in shared["responses"].items() if f"#/components/responses/{name}" in named}
    named |= _references(kept)
    headers = {name: one for name, one in shared["headers"].items() if f"#/components/headers/{name}" in named}
    return {**document, "components": {**shared, "responses": kept, "headers": headers}}


def _references(part: Any) -> set[str]:
    """Where the references in a part of the document lead."""
    if isinstance(part, list):
        return set().union(*map(_references, part))
    if not isinstance(part, dict):
        return set()
    own = {part["$ref"]} if isinstance(part.get("$ref"), str) else set()
    return own.union(*map(_references, part.values()))


def problems(*slugs: str) -> Part:
    """References to the responses of these problems, by status."""
    kinds = sorted((PROBLEM_TYPES[slug] for slug in slugs), key=lambda kind: kind.status)
    return {str(kind.status): {"$ref": f"#/components/responses/{_name(kind)}"} for kind in kinds}


def success(text: str, media_type: str, schema: Part, example: Any = None, *, cached: bool = False) -> Part:
    """A 200 response."""
    headers = {"X-Request-Id": {"$ref": "#/components/headers/RequestId"}}
    if cached:
        headers["ETag"] = {"$ref": "#/components/headers/ETag"}
    content = {"schema": schema, **({} if example is None else {"example": example})}
    return {"description": text, "headers": headers, "content": {media_type: content}}


def unchanged() -> Part:
    """The 304 response."""
    headers = {"X-Request-Id": {"$ref": "#/components/headers/RequestId"}, "ETag": {"$ref": "#/components/headers/ETag"}}
    return {"description": "The caller holds the current representation.", "headers": headers}


def _header(name: str, text: str) -> Part:
    return {"name": name, "in": "header", "description": text, "schema": {"type": "string"}}


def _response(kind: ProblemType) -> Part:
    detail, errors = _EXAMPLES.get(kind.slug, (kind.about, []))
    example = body_of(kind, detail, EXAMPLE_ID, errors)
    headers = {"X-Request-Id": {"$ref": "#/components/headers/RequestId"}}
    if kind.slug in ("overloaded", "too-many-requests"):
        headers["Retry-After"] = {"$ref": "#/components/headers/RetryAfter"}
    if kind.slug == "unauthorized":
        headers["WWW-Authenticate"] = {"$ref": "#/components/headers/Challenge"}
    content = {PROBLEM_JSON: {"schema": {"$ref": "#/components/schemas/Problem"}, "example": example}}
    return {"description": kind.about, "headers": headers, "content": content}


def _name(kind: ProblemType) -> str:
    return "".join(part.capitalize() for part in kind.slug.split("-"))
