"""A line for each request, when it is asked for: what was asked by its pattern, never by its address, and how it ended."""

from __future__ import annotations

import logging
import time

from kilisho_api.layers import App, Message, Receive, Scope, Send
from kilisho_api.logs import fields
from kilisho_api.metrics import method_of, operation_of

LOGGER = "kilisho.access"


def with_access_log(app: App) -> App:
    """Log every request of ``app`` once it is answered, whatever the level of the other loggers."""
    logger = logging.getLogger(LOGGER)
    logger.setLevel(logging.INFO)

    async def run(scope: Scope, receive: Receive, send: Send) -> None:
        begun, status, size = time.perf_counter(), 500, 0

        async def sending(message: Message) -> None:
            nonlocal status, size
            status = message.get("status", status)
            size += len(message.get("body", b""))
            await send(message)

        try:
            await app(scope, receive, sending)
        finally:
            seconds = round(time.perf_counter() - begun, 6)
            shown = {"method": method_of(scope), "operation": operation_of(scope), "status": status, "seconds": seconds, "bytes": size}
            logger.info("answered", extra=fields(**shown))

    return run
