"""JSON out: orjson for speed, with the guard that it lacks."""

from __future__ import annotations

import math
from typing import Any

import orjson
from pydantic_core import to_json


class NotFiniteError(ArithmeticError):
    """An answer holds NaN or infinity: a fault of ours, never to be sent as ``null``."""


def encode(value: Any) -> bytes:
    """``value`` as JSON; raises :class:`NotFiniteError` rather than let a number vanish."""
    body = orjson.dumps(value)
    # orjson writes NaN and infinity as null without a word. Only then is the slower encoder asked, which writes them out.
    if b"null" in body and any(mark in to_json(value) for mark in (b"NaN", b"Infinity")):
        _refuse_non_finite(value, "")
    return body


def _refuse_non_finite(value: Any, path: str) -> None:
    """Names the place; the words NaN and Infinity may also stand in a text."""
    if isinstance(value, float) and not math.isfinite(value):
        raise NotFiniteError(f"not a finite number at {path or '/'}")
    inner = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list | tuple) else ()
    for key, part in inner:
        _refuse_non_finite(part, f"{path}/{key}")
