"""Answers that are ready before they are asked for: bytes with an entity tag, answered with 304 to whoever holds them."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from functools import cache, cached_property
from typing import Any

from anyio import CapacityLimiter, to_thread
from litestar import Request, Response, get
from litestar.handlers import HTTPRouteHandler

from kilisho.messages import DEFAULT, Language
from kilisho_api.conditional import strong_tag, unchanged
from kilisho_api.headers import header, language_of
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


class Spoken:
    """A document in each language: the English at once, others when they are first asked for."""

    def __init__(
        self, write: Callable[[Language], bytes], languages: Mapping[str, Language], media_type: str = JSON, max_age: int = 0
    ) -> None:
        self._write, self._languages, self.media_type, self._max_age = write, languages, media_type, max_age
        self._made = {DEFAULT: self._make(DEFAULT)}

    def _make(self, tag: str) -> Document:
        return Document(self._write(self._languages[tag]), self.media_type, self._max_age, {"content-language": tag})

    def answer(self, request: Request[Any, Any, Any]) -> Response[bytes] | Response[None]:
        """The document in the language that Accept-Language likes best, or 304."""
        tag = language_of(request, self._languages)
        found = self._made.get(tag)
        if found is None:
            found = self._made[tag] = self._make(tag)
        return found.answer(request)


def page(path: str, document: Document | Spoken) -> HTTPRouteHandler:
    """A GET handler of ``document``."""
    offers = (document.media_type,)

    @get(path, sync_to_thread=False)
    def handle(request: Request[Any, Any, Any]) -> Response[Any]:
        admit(request, offers)
        return document.answer(request)

    return handle


def late_page(path: str, make: Callable[[], Document], media_type: str = JSON) -> HTTPRouteHandler:
    """A GET handler of the document that ``make`` writes when it is first asked for, once and in a thread: it may take long."""
    made, alone = cache(make), CapacityLimiter(1)

    @get(path)
    async def handle(request: Request[Any, Any, Any]) -> Response[Any]:
        admit(request, (media_type,))
        return (await to_thread.run_sync(made, limiter=alone)).answer(request)

    return handle
