"""A body that is too large for memory, kept in a file without a name: it is gone with the request, and with the process."""

from __future__ import annotations

import tempfile
import time
from collections.abc import Callable
from dataclasses import dataclass
from typing import IO, TypeVar, cast

from anyio import CapacityLimiter, fail_after, to_thread

from kilisho.messages import say
from kilisho_api.headers import AnyRequest, header
from kilisho_api.layers import Receive
from kilisho_api.problems import ProblemError

T = TypeVar("T")
WRITTEN_AT_ONCE = 1 << 20
# Seconds in which a body may come as slowly as it likes.
FIRST_PATIENCE = 60.0
GONE = say("detail-caller_left")


@dataclass(frozen=True)
class Spool:
    """Takes bodies of up to ``most`` bytes into ``folder``, and waits ``patience`` seconds for each part of one.

    After ``FIRST_PATIENCE`` seconds a body must have come at ``least_rate`` bytes a second in the mean; it holds a place meanwhile.
    The threads that write are its own, so that the file of one caller never waits for what is computed for another.
    """

    folder: str | None
    most: int
    patience: float
    least_rate: int
    threads: CapacityLimiter

    def check_length(self, request: AnyRequest) -> None:
        """Raises :class:`ProblemError` (413) for a body that says itself that it is too large."""
        says = header(request, b"content-length")
        if says.isdigit() and int(says[:20]) > self.most:
            raise self._too_large()

    async def take(self, receive: Receive) -> IO[bytes]:
        """The whole body as a file, for the caller to close; raises :class:`ProblemError` (408, 413, 507)."""
        file = await self._writing(self._open)
        try:
            await self._fill(file, receive)
        except BaseException:
            file.close()
            raise
        return file

    def _open(self) -> IO[bytes]:
        return cast("IO[bytes]", tempfile.TemporaryFile(dir=self.folder, buffering=0))

    async def _fill(self, file: IO[bytes], receive: Receive) -> None:
        waiting, size, more = bytearray(), 0, True
        begin = time.monotonic()
        while more:
            part, more = await self._part(receive)
            waiting += part
            size += len(part)
            if size > self.most:
                raise self._too_large()
            if more and self._too_slow(size, time.monotonic() - begin):
                raise _stalled()
            if len(waiting) >= WRITTEN_AT_ONCE or not more:
                data, waiting = bytes(waiting), bytearray()
                await self._writing(lambda data=data: write_all(file, data))  # type: ignore[misc]

    async def _part(self, receive: Receive) -> tuple[bytes, bool]:
        try:
            with fail_after(self.patience):
                message = await receive()
        except TimeoutError:
            raise _stalled() from None
        if message["type"] == "http.disconnect":
            raise ProblemError("bad-request", GONE)
        return message.get("body", b""), message.get("more_body", False)

    async def _writing(self, work: Callable[[], T]) -> T:
        try:
            return await to_thread.run_sync(work, limiter=self.threads)
        except OSError:
            raise ProblemError("no-room", say("detail-table_no_room")) from None

    def _too_slow(self, size: int, seconds: float) -> bool:
        return seconds > FIRST_PATIENCE and size < self.least_rate * seconds

    def _too_large(self) -> ProblemError:
        return ProblemError("too-large", say("detail-table_too_large", most=self.most))


def _stalled() -> ProblemError:
    return ProblemError("request-stalled", say("detail-table_stalled"), headers={"Connection": "close"})


def write_all(file: IO[bytes], data: bytes) -> None:
    """Write ``data``, which a file without a buffer may take in parts."""
    left = memoryview(data)
    while left:
        left = left[file.write(left) :]
