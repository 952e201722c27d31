"""uvicorn's protocol with a bound on the head of a request, which it would otherwise gather for as long as the caller goes on."""

from __future__ import annotations

from typing import Any

from uvicorn.protocols.http.httptools_impl import HttpToolsProtocol

# Bytes of request line and headers; the same as uvicorn lets its other parser gather. Browsers and proxies keep to far less.
LARGEST_HEAD = 65_536
TOO_LARGE = b"HTTP/1.1 431 Request Header Fields Too Large\r\ncontent-length: 0\r\nconnection: close\r\n\r\n"


class BoundedHead(HttpToolsProtocol):
    """Hangs up on whoever sends more than ``LARGEST_HEAD`` bytes that end no head and are no body: a head, trailers, a chunk's extension.

    Bytes are counted as they arrive, some hundred kilobytes at a time at most, so a head may be larger by one such piece. Bodies have a
    bound of their own (``KILISHO_LARGEST_BODY``).
    """

    def __init__(self, *given: Any, **named: Any) -> None:
        super().__init__(*given, **named)
        self._gathered = 0

    def data_received(self, data: bytes) -> None:
        """The transport's call: a piece of a request."""
        self._gathered += len(data)
        super().data_received(data)
        if self._gathered > LARGEST_HEAD and not self.transport.is_closing():
            if self.cycle is None or self.cycle.response_complete:
                self.transport.write(TOO_LARGE)
            self.transport.close()

    def on_headers_complete(self) -> None:
        """The parser's call."""
        self._gathered = 0
        super().on_headers_complete()

    def on_body(self, body: bytes) -> None:
        """The parser's call."""
        self._gathered = 0
        super().on_body(body)

    def on_message_complete(self) -> None:
        """The parser's call."""
        self._gathered = 0
        super().on_message_complete()
