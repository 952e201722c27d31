"""Answers that are ready before they are asked for: bytes with an entity tag, answered with 304 to whoever holds them."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from functools import cache, cached_property
from typing import Any

from anyio import CapacityLimiter, to_thread
from litestar import Request, Response, get
from litestar.handlers import HTTPRouteHandler

from kilisho_api.conditional import strong_tag, unchanged
from kilisho_api.headers import header
from kilisho_api.http_rules import JSON, admit


@dataclass(frozen=True)
class Document:
    """A representation: its bytes, media type, and how many seconds it may be kept unasked."""

    body: bytes
    media_type: str = JSON
    max_age: int = 0
    headers: Mapping[str, str] = field(default_factory=dict)

    @cached_property
    def all_headers(self) -> dict[str, str]:
        """Its own headers and those that every document carries."""
        keep = f"public, max-age={self.max_age}" if self.max_age else "no-cache"
        return {**self.headers, "etag": strong_tag(self.body), "cache-control": keep}

    def answer(self, request: Request[Any, Any, Any]) -> Response[bytes] | Response[None]:
        """200 with the bytes, or 304 when the caller's If-None-Match names them."""
        headers = self.all_headers
        if unchanged(header(request, b"if-none-match"), headers["etag"]):
            return Response(None, status_code=304, headers=headers)
        return Response(self.body, media_type=self.media_type, headers=headers)


def page(path: str, document: Document) -> HTTPRouteHandler:
    """A GET handler of ``document``."""
    offers = (document.media_type,)

    @get(path, sync_to_thread=False)
    def handle(request: Request[Any, Any, Any]) -> Response[Any]:
        admit(request, offers)
        return document.answer(request)

    return handle


def late_page(path: str, make: Callable[[], bytes]) -> HTTPRouteHandler:
    """A GET handler of the JSON document that ``make`` writes when it is first asked for, once and in a thread: it may take long."""
    made, alone = cache(lambda: Document(make())), CapacityLimiter(1)

    @get(path)
    async def handle(request: Request[Any, Any, Any]) -> Response[Any]:
        admit(request)
        return (await to_thread.run_sync(made, limiter=alone)).answer(request)

    return handle
