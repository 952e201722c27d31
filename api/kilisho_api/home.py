"""GET /: where everything is."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from importlib.metadata import PackageNotFoundError, version

from litestar.handlers import HTTPRouteHandler

from kilisho_api.documents import Document, page
from kilisho_api.encoding import encode


def release() -> str:
    """The version of the installed package; a bare checkout has none."""
    try:
        return version("kilisho")
    except PackageNotFoundError:
        return "unreleased"


def handler(operations: Iterable[str], collections: Iterable[str], identity: Mapping[str, str]) -> HTTPRouteHandler:
    """The handler of the home page."""
    body = {
        "name": "Kilisho",
        "version": release(),
        "rulebook": dict(identity),
        "contract": "/openapi.json",
        "manual": "/docs",
        "reference": "/docs/reference",
        "operations": [f"/v1/{name}" for name in operations],
        "catalogue": [f"/v1/{name}" for name in collections],
        "health": "/health",
        "ready": "/ready",
        "metrics": "/metrics",
    }
    links = '</openapi.json>; rel="service-desc", </docs>; rel="service-doc", </health>; rel="status"'
    return page("/", Document(encode(body), headers={"link": links}))
