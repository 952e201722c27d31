"""Which web pages may call from a browser (the CORS protocol of the Fetch standard). Off until origins are set; never with cookies."""

from __future__ import annotations

from collections.abc import Sequence

from kilisho_api.layers import App, Message, Receive, Scope, Send

ALLOWED = (
    (b"access-control-allow-methods", b"GET, HEAD, POST"),
    (b"access-control-allow-headers", b"authorization, content-type, if-none-match, traceparent, tracestate, x-request-id"),
    (b"access-control-max-age", b"600"),
)
EXPOSED = (
    b"access-control-expose-headers",
    b"deprecation, etag, kilisho-rulebook, kilisho-unread-columns, link, retry-after, sunset, www-authenticate, x-request-id",
)


def with_cors(app: App, origins: Sequence[str]) -> App:
    """Let pages of ``origins`` read the answers of ``app``; a page of any other origin gets no permission and so no answer."""
    allowed = {origin.encode() for origin in origins}

    async def run(scope: Scope, receive: Receive, send: Send) -> None:
        headers = dict(scope["headers"])
        origin = headers.get(b"origin")
        granted = origin is not None and (origin in allowed or b"*" in allowed)
        if granted and scope["method"] == "OPTIONS" and b"access-control-request-method" in headers:
            await send({"type": "http.response.start", "status": 204, "headers": [*_grant(origin, allowed), *ALLOWED]})
            await send({"type": "http.response.body", "body": b"", "more_body": False})
        else:
            await app(scope, receive, _sending(send, _grant(origin, allowed) if granted else []))

    return run


def _grant(origin: bytes | None, allowed: set[bytes]) -> list[tuple[bytes, bytes]]:
    return [(b"access-control-allow-origin", b"*" if b"*" in allowed else origin or b""), EXPOSED]


def _sending(send: Send, grant: list[tuple[bytes, bytes]]) -> Send:
    async def sending(message: Message) -> None:
        if message["type"] == "http.response.start":
            message["headers"] = [*message["headers"], *grant, (b"vary", b"Origin")]
        await send(message)

    return sending
