"""What every line that is logged during a request says of it. Threads that work for a request inherit it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from types import MappingProxyType

_TOLD: ContextVar[Mapping[str, str]] = ContextVar("told", default=MappingProxyType({}))


def told() -> Mapping[str, str]:
    """What is known of the request at hand: ``request_id``, ``trace_id``, ``span_id``; empty outside of any."""
    return _TOLD.get()


@contextmanager
def telling(**more: str) -> Iterator[None]:
    """Add ``more`` to what is told until the block ends."""
    token = _TOLD.set({**_TOLD.get(), **more})
    try:
        yield
    finally:
        _TOLD.reset(token)
