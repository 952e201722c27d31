"""What is made of a load's answers and samples: percentiles, counts, and a straight line with how sure its slope is."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from scipy import stats
from tests.load.generator import LOST, Answer

SURE = 0.95
# Samples that follow each other closely repeat each other, and a line through all of them would look surer than it is.
BLOCKS = 30


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
    """How a figure grew, per second, and the ends of its 95 % confidence interval."""

    per_second: float
    low: float
    high: float

    @property
    def none(self) -> bool:
        """Whether it cannot be told from zero."""
        return self.low <= 0 <= self.high


def slope_of(seconds: Sequence[float], values: Sequence[float]) -> Slope:
    """The slope of the least-squares line through the means of ``BLOCKS`` blocks, or through all where there are fewer."""
    pairs = np.array_split(np.column_stack((seconds, values)), min(BLOCKS, len(values)))
    times, means = np.array([block.mean(axis=0) for block in pairs]).T
    fitted = stats.linregress(times, means)
    # What never changes at all has no scatter to be worked out.
    half = stats.t.ppf((1 + SURE) / 2, len(means) - 2) * fitted.stderr if np.ptp(means) else 0.0
    return Slope(float(fitted.slope), float(fitted.slope - half), float(fitted.slope + half))


def show(values: Sequence[object], first: int = 27, width: int = 11) -> None:
    """Print one line of a table."""
    print(f"{values[0]!s:<{first}}" + "".join(f"{value!s:>{width}}" for value in values[1:]), flush=True)


def counted(others: Counter[int]) -> str:
    """Statuses with their counts, such as ``503: 12``."""
    return ", ".join(f"{'lost' if status == LOST else status}: {count}" for status, count in sorted(others.items())) or "none"
