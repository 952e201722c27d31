"""The few elementary functions that the formulas share, for one number or for an array of numbers.

A ufunc of numpy costs about ten times as much as its counterpart in ``math`` when it is given a single float, and the engine works
one farm at a time as often as a million. Each function here takes the short way for a float and the ufunc for an array.
"""

from __future__ import annotations

import math
from typing import TypeAlias

import numpy as np
import numpy.typing as npt

Numeric: TypeAlias = float | npt.NDArray[np.float64]

_SCALAR = (float, int)


def exp(value: Numeric) -> Numeric:
    """e to the power ``value``; a float above 709 raises OverflowError, an array element becomes infinite."""
    return math.exp(value) if isinstance(value, _SCALAR) else np.exp(value)


def log(value: Numeric) -> Numeric:
    """Natural logarithm; a float must be above 0 (ValueError), an array element below 0 becomes NaN."""
    return math.log(value) if isinstance(value, _SCALAR) else np.log(value)


def expm1(value: Numeric) -> Numeric:
    """``exp(value) - 1`` without loss for small values; a float above 709 raises OverflowError, an array element becomes infinite."""
    return math.expm1(value) if isinstance(value, _SCALAR) else np.expm1(value)


def log1p(value: Numeric) -> Numeric:
    """``log(1 + value)`` without loss for small values; a float must be above -1 (ValueError)."""
    return math.log1p(value) if isinstance(value, _SCALAR) else np.log1p(value)


def sqrt(value: Numeric) -> Numeric:
    """Square root; a float must be at least 0 (ValueError), an array element below 0 becomes NaN."""
    return math.sqrt(value) if isinstance(value, _SCALAR) else np.sqrt(value)


def cbrt(value: Numeric) -> Numeric:
    """Cube root of any real number."""
    return math.cbrt(value) if isinstance(value, _SCALAR) else np.cbrt(value)


def sin(angle: Numeric) -> Numeric:
    """Sine of an angle in radians."""
    return math.sin(angle) if isinstance(angle, _SCALAR) else np.sin(angle)


def cos(angle: Numeric) -> Numeric:
    """Cosine of an angle in radians."""
    return math.cos(angle) if isinstance(angle, _SCALAR) else np.cos(angle)


def asin(value: Numeric) -> Numeric:
    """Arc sine in radians; a float must lie in -1..1 (ValueError), an array element outside becomes NaN."""
    return math.asin(value) if isinstance(value, _SCALAR) else np.arcsin(value)


def copysign(size: Numeric, sign: Numeric) -> Numeric:
    """``size`` with the sign of ``sign``, element by element."""
    if isinstance(size, _SCALAR) and isinstance(sign, _SCALAR):
        return math.copysign(size, sign)
    return np.copysign(size, sign)


def least(first: Numeric, second: Numeric) -> Numeric:
    """The smaller of the two, element by element; for arrays NaN passes through."""
    if isinstance(first, _SCALAR) and isinstance(second, _SCALAR):
        return min(first, second)
    return np.minimum(first, second)


def most(first: Numeric, second: Numeric) -> Numeric:
    """The larger of the two, element by element; for arrays NaN passes through."""
    if isinstance(first, _SCALAR) and isinstance(second, _SCALAR):
        return max(first, second)
    return np.maximum(first, second)


def clip(value: Numeric, low: Numeric, high: Numeric) -> Numeric:
    """``value`` held between ``low`` and ``high``, element by element."""
    return least(most(value, low), high)


def choose(condition: bool | npt.NDArray[np.bool_], first: Numeric, second: Numeric) -> Numeric:
    """``first`` where the condition holds and ``second`` elsewhere, element by element."""
    if isinstance(condition, np.ndarray):
        return np.where(condition, first, second)
    return first if condition else second
