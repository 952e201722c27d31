"""Rules of HTTP that hold for every answer, errors included: thin ASGI layers around the framework."""

from __future__ import annotations

import re
import uuid
from collections.abc import Awaitable, Callable, Iterable, MutableMapping
from typing import Any

Message = MutableMapping[str, Any]
Scope = MutableMapping[str, Any]
Receive = Callable[[], Awaitable[Message]]
Send = Callable[[Message], Awaitable[None]]
App = Callable[[Scope, Receive, Send], Awaitable[None]]

_UUID = re.compile(r"[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}")


def with_request_id(app: App) -> App:
    """Take the caller's X-Request-Id when it is a UUID, make one otherwise, and send it back on every answer."""

    async def run(scope: Scope, receive: Receive, send: Send) -> None:
        given = next((value.decode("latin-1") for name, value in scope["headers"] if name == b"x-request-id"), "")
        request_id = given.lower() if _UUID.fullmatch(given) else str(uuid.uuid4())
        scope["kilisho.request_id"] = request_id
        await app(scope, receive, adding(send, [(b"x-request-id", request_id.encode())]))

    return run


def with_headers(app: App, headers: Iterable[tuple[bytes, bytes]]) -> App:
    """Add ``headers`` to every answer that does not set them itself."""
    always = list(headers)

    async def run(scope: Scope, receive: Receive, send: Send) -> None:
        await app(scope, receive, adding(send, always))

    return run


def adding(send: Send, headers: list[tuple[bytes, bytes]]) -> Send:
    """``send`` that adds ``headers`` to an answer that does not set them itself; Vary grows, the others stay as they are set."""

    async def sending(message: Message) -> None:
        if message["type"] == "http.response.start":
            present = {name for name, _ in message["headers"]} - {b"vary"}
            message["headers"] = [*message["headers"], *(item for item in headers if item[0] not in present)]
        await send(message)

    return sending


def with_head(app: App) -> App:
    """Answer HEAD wherever GET is answered: the same headers, no body; and name it where GET is allowed."""

    async def run(scope: Scope, receive: Receive, send: Send) -> None:
        bodiless = scope["method"] == "HEAD"
        await app({**scope, "method": "GET"} if bodiless else scope, receive, _head_sending(send, bodiless))

    return run


def _head_sending(send: Send, bodiless: bool) -> Send:
    async def sending(message: Message) -> None:
        if message["type"] == "http.response.start":
            message["headers"] = [(name, _allow(value) if name == b"allow" else value) for name, value in message["headers"]]
        elif bodiless:
            message = {"type": "http.response.body", "body": b"", "more_body": False}
        await send(message)

    return sending


def _allow(value: bytes) -> bytes:
    methods = {method.strip() for method in value.split(b",")}
    return b", ".join(sorted(methods | {b"HEAD"} if b"GET" in methods else methods))
