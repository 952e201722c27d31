"""How many tables are worked on at once, and the threads in which that is done, a piece at a time."""

from __future__ import annotations

import math
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import TypeVar

from anyio import CapacityLimiter, to_thread

from kilisho.deadline import within
from kilisho.messages import say
from kilisho_api.problems import ProblemError

T = TypeVar("T")
FULL = say("detail-table_lane_full")
FIRST_GUESS = 10.0


class TableLane:
    """Takes ``at_once`` tables, from the first byte of a request to the last of its answer. Nobody waits: that would fill the disk.

    A piece may take ``longest`` seconds. Between two pieces a thread is free again, so whoever leaves stops the work within one.
    """

    def __init__(self, at_once: int, longest: float = math.inf) -> None:
        self.at_once, self._longest = at_once, longest
        self.threads, self.writers = CapacityLimiter(at_once), CapacityLimiter(at_once)
        self.inside, self._seconds = 0, FIRST_GUESS

    @contextmanager
    def place(self) -> Iterator[None]:
        """A table's place until the block ends; raises :class:`ProblemError` (503) where none is free."""
        if self.inside >= self.at_once:
            raise ProblemError("overloaded", FULL, headers={"Retry-After": str(max(1, math.ceil(self._seconds)))})
        self.inside += 1
        begun = time.perf_counter()
        try:
            yield
        finally:
            self.inside -= 1
            self._seconds = time.perf_counter() - begun

    async def run(self, work: Callable[[], T]) -> T:
        """What ``work`` gives, worked out in a thread; a caller that is cancelled waits for its end, as nothing can stop it."""
        return await to_thread.run_sync(self._in_time, work, limiter=self.threads)

    def _in_time(self, work: Callable[[], T]) -> T:
        with within(self._longest):
            return work()
