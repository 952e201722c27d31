"""What is made of a load's answers and samples: percentiles, counts, and a straight line with how sure its slope is."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
from scipy import stats
from tests.load.generator import LOST, Answer

SURE = 0.95
# Of fewer samples that do not repeat each other no line's slope is told.
LEAST_SAMPLES = 3.0


@dataclass(frozen=True)
class Summary:
    """The answers of a stretch of ``seconds``: accepted ones a second with their latencies in milliseconds, and all others by status."""

    seconds: float
    accepted: float
    p50: float
    p99: float
    worst: float
    others: Counter[int]

    @property
    def lost(self) -> int:
        """Requests without a whole answer."""
        return self.others[LOST]


def summed_up(answers: Sequence[Answer], seconds: float) -> Summary:
    """The summary of ``answers``; its latencies are not a number where none was accepted."""
    taken = [answer.seconds * 1e3 for answer in answers if answer.status == 200] or [np.nan]
    p50, p99 = np.percentile(taken, (50, 99))
    accepted = sum(answer.status == 200 for answer in answers)
    others = Counter(answer.status for answer in answers if answer.status != 200)
    return Summary(seconds, accepted / seconds, float(p50), float(p99), max(taken), others)


@dataclass(frozen=True)
class Slope:
    """How a figure rose with another, and the ends of its 95 % confidence interval."""

    rise: float
    low: float
    high: float

    @property
    def none(self) -> bool:
        """Whether it cannot be told from zero."""
        return self.low <= 0 <= self.high

    def times(self, factor: float) -> Slope:
        """The same over ``factor`` units of what it rises with."""
        return Slope(self.rise * factor, self.low * factor, self.high * factor)


def slope_of(places: Sequence[float], values: Sequence[float]) -> Slope:
    """The slope of the least-squares line through evenly spaced samples, with its interval.

    Samples of memory repeat each other (what has grown stays), and taken as independent they would make the line look surer than it is. So
    they count as ``n (1 - r) / (1 + r)`` samples, ``r`` being the correlation of each residual with the next: Santer and others (2000),
    Journal of Geophysical Research 105, 7337-7356 (recalled).
    """
    across = np.asarray(places) - np.mean(places)
    line, level = np.polyfit(across, values, 1)
    left = np.asarray(values) - level - line * across
    count = independent(left)
    if not np.ptp(values):  # what never changes at all has no scatter to be worked out
        return Slope(0.0, 0.0, 0.0)
    if count < LEAST_SAMPLES:
        return Slope(float(line), -np.inf, np.inf)
    half = stats.t.ppf((1 + SURE) / 2, count - 2) * np.sqrt(left @ left / (count - 2) / (across @ across))
    return Slope(float(line), float(line - half), float(line + half))


def independent(residuals: npt.NDArray[np.float64]) -> float:
    """As how many independent samples ``residuals`` count, at most their number."""
    square = float(residuals @ residuals)
    repeated = float(residuals[:-1] @ residuals[1:]) / square if square else 0.0
    return len(residuals) * min(1.0, (1 - repeated) / (1 + repeated))


def show(values: Sequence[object], first: int = 27, width: int = 11) -> None:
    """Print one line of a table."""
    print(f"{values[0]!s:<{first}}" + "".join(f"{value!s:>{width}}" for value in values[1:]), flush=True)


def counted(others: Counter[int]) -> str:
    """Statuses with their counts, such as ``503: 12``."""
    return ", ".join(f"{'lost' if status == LOST else status}: {count}" for status, count in sorted(others.items())) or "none"
