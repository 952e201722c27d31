"""GET /docs and /docs/reference: the guide and the contract as pages, from files of this package alone: no internet is needed."""

from __future__ import annotations

from collections.abc import Callable
from importlib.resources import files

from litestar.handlers import HTTPRouteHandler

from kilisho_api.documents import Document, late_page, page

# The reference's library sets inline styles and draws its icons from data addresses; everything else stays with the service.
REFERENCE_POLICY = (
    "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; "
    "base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
)
GUIDE_POLICY = "default-src 'self'; script-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
ONE_DAY = 86_400
HTML = "text/html"
ASSETS = {
    "swagger-ui.css": "text/css",
    "swagger-ui-bundle.js": "text/javascript",
    "reference.js": "text/javascript",
    "reference.css": "text/css",
    "guide.css": "text/css",
    "icon.svg": "image/svg+xml",
}


def handlers(guide: Callable[[], bytes]) -> list[HTTPRouteHandler]:
    """The handlers of the pages and of their files; ``guide`` writes the guide when it is first asked for."""
    first = late_page("/docs", lambda: Document(guide(), HTML, headers={"content-security-policy": GUIDE_POLICY}), HTML)
    reference = Document(_asset("reference.html"), HTML, headers={"content-security-policy": REFERENCE_POLICY})
    found = [page(f"/docs/{name}", Document(_asset(name), kind, ONE_DAY)) for name, kind in ASSETS.items()]
    return [first, page("/docs/reference", reference), *found]


def _asset(name: str) -> bytes:
    return (files("kilisho_api") / "assets" / name).read_bytes()
