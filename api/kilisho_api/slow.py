"""Work that takes long runs in threads, so that quick answers come meanwhile; when too many wait, the rest is turned away."""

from __future__ import annotations

import math
import time
from collections.abc import Awaitable, Callable
from typing import Any, TypeVar

from anyio import CancelScope, CapacityLimiter, to_thread

from kilisho.deadline import TooLongError, within
from kilisho.messages import say
from kilisho_api.headers import AnyRequest
from kilisho_api.problems import ProblemError

T = TypeVar("T")
FULL = say("detail-lane_full")
GONE = say("detail-caller_left")
TOO_LONG = say("detail-took_too_long")


class SlowLane:
    """Lets ``at_once`` pieces of work run and ``waiting`` more wait their turn; one lane is shared by all that should wait together.

    ``longest`` is how many seconds a turn may take; work that keeps to it ends by itself (:mod:`kilisho.deadline`).
    """

    def __init__(self, at_once: int, waiting: int, longest: float = math.inf) -> None:
        self._turns, self._at_once, self._most, self._longest = CapacityLimiter(at_once), at_once, at_once + waiting, longest
        self._inside, self._seconds = 0, 0.0

    async def run(self, work: Callable[[], T], request: AnyRequest) -> T:
        """The result of ``work``, in its turn; whatever it raises, and :class:`ProblemError`: 503 when the lane is full, 504 when it took
        too long.

        A thread cannot be stopped: whose caller leaves before its turn is passed over, and a turn that has begun is kept to its
        end, so that never more than ``at_once`` compute. The body of ``request`` has been read.
        """
        if self._inside >= self._most:
            raise ProblemError("overloaded", FULL, headers={"Retry-After": str(self._seconds_to_wait())})
        self._inside += 1
        try:
            async with self._turns:
                if await gone(request.receive):
                    raise ProblemError("overloaded", GONE)
                return await self._timed(work)
        finally:
            self._inside -= 1

    async def _timed(self, work: Callable[[], T]) -> T:
        begun = time.perf_counter()
        try:
            return await to_thread.run_sync(self._in_time, work)
        except TooLongError:
            raise ProblemError("took-too-long", TOO_LONG) from None
        finally:
            self._seconds = time.perf_counter() - begun

    def _in_time(self, work: Callable[[], T]) -> T:
        with within(self._longest):
            return work()

    def _seconds_to_wait(self) -> int:
        """Until all that are inside are done, if each takes as long as the last one did."""
        return max(1, math.ceil(self._seconds * self._inside / self._at_once))


async def gone(receive: Callable[[], Awaitable[Any]]) -> bool:
    """Whether the caller has hung up: a message that is there already is read, and one that is not there is not waited for."""
    message: dict[str, Any] = {}
    with CancelScope() as scope:
        scope.cancel()
        message |= await receive()
    return message.get("type") == "http.disconnect"
