"""JSON out: orjson for speed, with the guard that it lacks."""

from __future__ import annotations

import math
from typing import Any

import orjson


class NotFiniteError(ArithmeticError):
    """An answer holds NaN or infinity: a fault of ours, never to be sent as ``null``."""


def encode(value: Any) -> bytes:
    """``value`` as JSON; raises :class:`NotFiniteError` rather than let a number vanish."""
    body = orjson.dumps(value)
    # orjson writes NaN and infinity as null without a word, so only a body with a null needs the walk.
    if b"null" in body:
        _refuse_non_finite(value, "")
    return body


def _refuse_non_finite(value: Any, path: str) -> None:
    if isinstance(value, float):
        if not math.isfinite(value):
            raise NotFiniteError(f"not a finite number at {path or '/'}")
    elif isinstance(value, dict):
        for key, inner in value.items():
            _refuse_non_finite(inner, f"{path}/{key}")
    elif isinstance(value, list | tuple):
        for index, inner in enumerate(value):
            _refuse_non_finite(inner, f"{path}/{index}")
