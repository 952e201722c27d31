"""From low, typical and high to a range on every number that follows from them.

An uncertain figure is taken as triangular between its low and its high end with the peak at the typical value: the packs give no more
than that. It becomes :data:`SAMPLES` values, one from the middle of each of as many equally likely strata, in an order that only the
figure's key decides (a Latin hypercube without chance: McKay, Beckman and Conover 1979). The same request gives the same range, and a
pack that adds an entry moves no other. Formulas run on these arrays as they do on plain numbers; nine in ten of the results lie between
the low and the high end that an answer tells.
"""

from __future__ import annotations

import hashlib
import math
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from functools import lru_cache
from typing import cast

import numpy as np
import numpy.typing as npt

Array = npt.NDArray[np.float64]
Numeric = float | Array

SAMPLES = 64
# The places in rising order below and above which one in twenty lies.
_LOW, _HIGH = round(0.05 * SAMPLES), SAMPLES - 1 - round(0.05 * SAMPLES)
# A figure known to within this share of itself is taken as exact: nobody on a farm measures better.
EXACT = 0.02
NOISE = 1e-9
# An input that explains less of the spread than this is not worth measuring for its own sake.
LEAST_SHARE = 0.05
MOST_NAMED = 6


@lru_cache(maxsize=4096)
def strata(key: str) -> Array:
    """Middles of ``SAMPLES`` equal strata of 0..1 in the order of ``key``; read-only."""
    draws = np.frombuffer(hashlib.shake_128(key.encode()).digest(SAMPLES * 8), dtype="<u8")
    found: Array = (np.argsort(draws, kind="stable") + 0.5) / SAMPLES
    found.setflags(write=False)
    return found


@lru_cache(maxsize=4096)
def standard_strata(key: str) -> Array:
    """``strata`` with mean 0 and a sum of squares of 1; read-only."""
    centred = strata(key) - 0.5
    found: Array = centred / math.sqrt(float(centred @ centred))
    found.setflags(write=False)
    return found


def triangular(quantile: Array, low: float, typical: float, high: float) -> Array:
    """Values of the triangular distribution at ``quantile`` (0..1); ``low <= typical <= high`` and ``low < high``."""
    span = high - low
    rising = low + np.sqrt(quantile * (span * (typical - low)))
    falling = high - np.sqrt((1.0 - quantile) * (span * (high - typical)))
    return np.where(quantile * span < typical - low, rising, falling)


def sampled(key: str, low: float, typical: float, high: float) -> Numeric:
    """The samples of a figure, read-only; the typical value itself where the figure is as good as exact."""
    if high - low <= EXACT * abs(typical):
        return typical
    found = triangular(strata(key), low, typical, high)
    found.setflags(write=False)
    return found


def about(value: float, samples: Numeric) -> tuple[float, ...]:
    """``value`` alone where it is certain, otherwise with the low and high end of its samples, which never leave it outside."""
    if not isinstance(samples, np.ndarray) or samples.size < SAMPLES:
        return (value,)
    ordered = samples.copy()
    ordered.sort()
    low, high = min(ordered.item(_LOW), value), max(ordered.item(_HIGH), value)
    # What cancels out leaves rounding errors, and what divides by nothing leaves infinity: neither is a range.
    return (value, low, high) if NOISE * abs(value) < high - low < math.inf else (value,)


@dataclass(frozen=True, slots=True)
class Uncertain:
    """A value with its samples; the samples are the value itself where it is certain."""

    value: float
    samples: Numeric

    def times(self, factor: float) -> Uncertain:
        """The product with a certain number."""
        return Uncertain(self.value * factor, self.samples * factor)

    def by(self, other: Uncertain) -> Uncertain:
        """The product with another value."""
        return Uncertain(self.value * other.value, self.samples * other.samples)

    def plus(self, other: Uncertain) -> Uncertain:
        """The sum with another value."""
        return Uncertain(self.value + other.value, self.samples + other.samples)

    def less(self, other: Uncertain) -> Uncertain:
        """The difference from another value."""
        return Uncertain(self.value - other.value, self.samples - other.samples)

    def over(self, other: Uncertain) -> Uncertain:
        """The ratio to another value, which must not be 0."""
        return Uncertain(self.value / other.value, self.samples / other.samples)

    def at_most(self, other: Uncertain) -> Uncertain:
        """The smaller of the two, sample by sample."""
        return Uncertain(min(self.value, other.value), cast("Numeric", np.minimum(self.samples, other.samples)))

    @property
    def told(self) -> tuple[float, ...]:
        """The value, and its low and high end where it is uncertain."""
        return about(self.value, self.samples)


def certain(value: float) -> Uncertain:
    """A value without doubt."""
    return Uncertain(value, value)


def sum_of(parts: Iterable[Uncertain]) -> Uncertain:
    """The sum of values; 0 of none."""
    total = certain(0.0)
    for part in parts:
        total = total.plus(part)
    return total


def columns(one: Uncertain) -> Numeric:
    """The typical value and after it the samples, as one array, so that a slow formula runs once for both; a certain value as it is."""
    return np.concatenate(((one.value,), one.samples)) if isinstance(one.samples, np.ndarray) else one.value


def split(found: Numeric) -> Uncertain:
    """What a formula made of :func:`columns`, as a value with its samples."""
    if isinstance(found, np.ndarray) and found.ndim:
        return Uncertain(float(found[0]), found[1:])
    return certain(float(found))


def applied(formula: Callable[..., Numeric], *parts: Uncertain) -> Uncertain:
    """A formula's result, with its samples where any of its inputs has some."""
    return split(formula(*(columns(part) for part in parts)))


def about_each(rows: Array) -> list[tuple[float, ...]]:
    """``about`` for each row of a table whose columns are those of :func:`columns`; without samples every value is certain."""
    if rows.ndim == 1:
        return [(value,) for value in rows.tolist()]
    values = rows[:, 0]
    low, high = ends_of(values, rows[:, 1:])
    wide = (high - low > NOISE * np.abs(values)) & (high - low < math.inf)
    told = zip(values.tolist(), low.tolist(), high.tolist(), wide.tolist(), strict=True)
    return [(value, least, most) if ranged else (value,) for value, least, most, ranged in told]


def ends_of(values: Array, samples: Array) -> tuple[Array, Array]:
    """Low and high ends of the rows of ``samples``, which never leave the row's value outside."""
    ordered = np.sort(samples, axis=1)
    return np.minimum(ordered[:, _LOW], values), np.maximum(ordered[:, _HIGH], values)


@dataclass(frozen=True, slots=True)
class Share:
    """How much of an answer's spread one input explains [1], and by how much the range would narrow if it were known [1]."""

    key: str
    explains: float
    narrows: float


@lru_cache(maxsize=256)  # some 7 kB each, and callers choose which inputs are left to the rulebook
def _orders(keys: tuple[str, ...]) -> Array:
    return np.array([standard_strata(key) for key in keys])


def leading(answer: Numeric, keys: tuple[str, ...]) -> Iterator[Share]:
    """The inputs (by the key of their samples) that explain most of an answer's spread, the first one most, each as it is asked for.

    One after the other: the input whose order of samples correlates most with what the ones before it leave unexplained, so that one that
    only happens to be drawn like another is not taken for a cause. Right for inputs that move the answer in one direction, as they do here.
    """
    if not isinstance(answer, np.ndarray) or answer.size < SAMPLES or not keys:
        return
    orders, left = _orders(keys), answer - np.add.reduce(answer) / SAMPLES
    square = float(left @ left)
    for _ in range(MOST_NAMED):
        if not 0.0 < square < math.inf:
            break
        parts = orders @ left
        place = int(np.abs(parts).argmax())
        share = float(parts[place]) ** 2 / square
        if share < LEAST_SHARE:
            break
        yield Share(keys[place], share, 1.0 - math.sqrt(max(0.0, 1.0 - share)))
        left = left - parts[place] * orders[place]
