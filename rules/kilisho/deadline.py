"""A time by which whoever asked wants an answer. A thread cannot be stopped, so long loops look at the clock themselves."""

from __future__ import annotations

import math
import time
from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar

# Follows a request into the thread that works on it, since threads are started with a copy of the context.
_UNTIL: ContextVar[float] = ContextVar("until", default=math.inf)


class TooLongError(Exception):
    """The time is over; nothing is kept of what was worked out so far."""


@contextmanager
def within(seconds: float) -> Iterator[None]:
    """Let what runs inside take about so many seconds; an earlier time that holds already stays."""
    before = _UNTIL.set(min(_UNTIL.get(), time.monotonic() + seconds))
    try:
        yield
    finally:
        _UNTIL.reset(before)


def keep_to_time() -> None:
    """Called by every loop that may take long, some hundred times a second at least; raises :class:`TooLongError` when time is over."""
    if time.monotonic() > _UNTIL.get():
        raise TooLongError
