"""GET /docs: the contract as a page to read and try, from files of this package alone, so that it works with no internet."""

from __future__ import annotations

from importlib.resources import files

from litestar.handlers import HTTPRouteHandler

from kilisho_api.documents import Document, page

# The page's library sets inline styles and draws its icons from data addresses; everything else stays with the service.
PAGE_POLICY = (
    "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; "
    "base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
)
ONE_DAY = 86_400
ASSETS = {
    "swagger-ui.css": "text/css",
    "swagger-ui-bundle.js": "text/javascript",
    "docs.js": "text/javascript",
    "docs.css": "text/css",
    "icon.svg": "image/svg+xml",
}


def handlers() -> list[HTTPRouteHandler]:
    """The handlers of the page and of its files."""
    main = Document(_asset("docs.html"), "text/html", headers={"content-security-policy": PAGE_POLICY})
    found = [page(f"/docs/{name}", Document(_asset(name), kind, ONE_DAY)) for name, kind in ASSETS.items()]
    return [page("/docs", main), *found]


def _asset(name: str) -> bytes:
    return (files("kilisho_api") / "assets" / name).read_bytes()
