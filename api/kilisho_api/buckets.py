"""How often a caller may ask: a bucket of tokens for each, filled evenly; each request takes one."""

from __future__ import annotations

import re
import time
from collections import OrderedDict
from collections.abc import Callable
from dataclasses import dataclass

MOST_CALLERS = 100_000
MOST_REQUESTS = 1_000_000
SECONDS = {"second": 1, "minute": 60, "hour": 3_600}
_RATE = re.compile(r"([1-9][0-9]{0,6})/(second|minute|hour)")


@dataclass(frozen=True)
class Rate:
    """So many requests in so many seconds; as many may come at once after a pause."""

    requests: int
    seconds: float

    @property
    def interval(self) -> float:
        """Seconds in which one token comes."""
        return self.seconds / self.requests


def read_rate(text: str) -> Rate:
    """A rate such as ``120/minute``; raises ValueError with what was expected."""
    found = _RATE.fullmatch(text)
    if found is None or int(found[1]) > MOST_REQUESTS:
        raise ValueError(f"1 to {MOST_REQUESTS} requests in a second, minute or hour, such as 120/minute")
    return Rate(int(found[1]), SECONDS[found[2]])


class Buckets:
    """The buckets of all callers of one process. What is kept of each is the time at which its bucket is full again.

    Of more than ``most`` callers the one that has been silent for longest is forgotten, so that inventing addresses fills no memory.
    """

    def __init__(self, rate: Rate, most: int = MOST_CALLERS, clock: Callable[[], float] = time.monotonic) -> None:
        self._rate, self._most, self._clock = rate, most, clock
        self._full_at: OrderedDict[str, float] = OrderedDict()

    def seconds_to_wait(self, caller: str) -> float:
        """0 where ``caller`` may go on, and a token is taken; otherwise the seconds until there is one, and nothing is taken."""
        now = self._clock()
        full_at = max(self._full_at.get(caller, now), now) + self._rate.interval
        missing = full_at - now - self._rate.seconds
        # Rounding must not make a caller wait who keeps to the rate exactly.
        if missing > 1e-9 * self._rate.seconds:
            return missing
        self._full_at[caller] = full_at
        self._full_at.move_to_end(caller)
        if len(self._full_at) > self._most:
            self._full_at.popitem(last=False)
        return 0.0
