"""Ranks causes by their share of the weight, with the range that follows from the words' figures."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import get_args

import numpy as np

from kilisho.farm import Ledger
from kilisho.questions.diagnosis.evidence import FREQUENCIES, STRENGTHS, Judged, shares
from kilisho.ranges import SAMPLES, Uncertain
from kilisho.rulebook import Urgency

FIGURES = (*(f"evidence_{word}" for word in STRENGTHS), *(f"prior_{word}" for word in FREQUENCIES))
URGENCIES: tuple[str, ...] = get_args(Urgency)
# The first causes that together bear this part of the weight are worth telling apart; more than a handful nobody tests.
LEADING_SHARE, LEAST_LEADING, MOST_LEADING = 0.8, 2, 5
TWELVE_DIGITS = 12
_NOUGHTS = np.zeros(SAMPLES)


@dataclass(frozen=True, slots=True)
class Ranked:
    """A cause in its place: its share of the weight of those ranked, and whether it is among the few to be told apart."""

    judged: Judged
    share: Uncertain
    leading: bool


def rank(judged: Sequence[Judged], ledger: Ledger) -> tuple[list[Ranked], Uncertain]:
    """The likeliest first, and the share of something else; where two weigh the same, the more urgent one, then by id."""
    figures = [ledger.figure("figures", name, name) for name in FIGURES]
    typical = shares(judged, np.array([one.value for one in figures])).tolist()
    samples = shares(judged, np.array([one.samples + _NOUGHTS for one in figures]))
    order = sorted(range(len(judged)), key=lambda i: _place(judged[i], typical[i]))
    many = _many_leading([typical[i] for i in order])
    ranked = [Ranked(judged[i], Uncertain(typical[i], samples[i]), place < many) for place, i in enumerate(order)]
    return ranked, Uncertain(typical[-1], samples[-1])


def _place(one: Judged, share: float) -> tuple[float, int, str]:
    # Rounded, so that the order of a sum's terms never decides a tie.
    return -round(share, TWELVE_DIGITS), URGENCIES.index(one.cause.urgency), one.id


def _many_leading(falling: Sequence[float]) -> int:
    """How many of the first causes are leading: those that bear most of the weight of all of them."""
    reach = next((i + 1 for i, total in enumerate(np.cumsum(falling)) if total >= LEADING_SHARE * sum(falling)), len(falling))
    return min(len(falling), max(LEAST_LEADING, min(MOST_LEADING, reach)))
