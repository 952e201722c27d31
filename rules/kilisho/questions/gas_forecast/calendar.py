"""On which day of the forecast which dose is fed: the feeding plans, what deviated from them, and what is wrong with them."""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Any

import numpy as np

from kilisho.faults import Fault, Place
from kilisho.messages import say
from kilisho.ranges import Array

ONE_DAY = dt.timedelta(days=1)


@dataclass(frozen=True, slots=True)
class Span:
    """A feeding plan in days of the forecast, ``first`` to ``last`` included, with a feeding every ``every`` days."""

    first: int
    last: int
    every: float

    def doses(self, days: int) -> Array:
        """Feedings on each of ``days`` days, (days,): two on a day that is fed twice, none between feedings."""
        counts = np.zeros(days)
        for day in _feeding_days(self, days):
            counts[day] += 1.0
        return counts


def _feeding_days(span: Span, days: int) -> Iterable[int]:
    last = min(span.last, days - 1)
    feedings = int((last + 1 - span.first) / span.every + 1)
    found = (span.first + math.floor(k * span.every + 1e-9) for k in range(max(0, feedings)))
    return (day for day in found if 0 <= day <= last)


def first_day_of(asked: Any) -> dt.date | None:
    """Day 0 of the forecast: the first charge, or the first feeding; None where neither is asked."""
    if asked.first_charge is not None:
        return asked.first_charge.on  # type: ignore[no-any-return]
    return min((plan.from_ for plan in asked.maintenance_feed), default=None)


def spans_of(asked: Any, first_day: dt.date) -> list[Span]:
    """The plans in days of the forecast, in the order of the request; an open end reaches to the next plan or to the last day."""
    starts = sorted(plan.from_ for plan in asked.maintenance_feed)
    return [
        Span((plan.from_ - first_day).days, _last_day(plan, starts, first_day, asked.days), plan.every) for plan in asked.maintenance_feed
    ]


def _last_day(plan: Any, starts: Sequence[dt.date], first_day: dt.date, days: int) -> int:
    if plan.until is not None:
        return int((plan.until - first_day).days)
    following = [start for start in starts if start > plan.from_]
    return (following[0] - first_day).days - 1 if following else days - 1


def kept_of(asked: Any, first_day: dt.date, days: int) -> Array:
    """Part of the planned feed that was fed on each day, (days,): 1 but for deviations; where two speak of a day, the later in the list."""
    kept = np.ones(days)
    for one in asked.deviations:
        first, last = (one.from_ - first_day).days, ((one.until or one.from_) - first_day).days
        kept[max(0, first) : max(0, last + 1)] = one.share_of_feed
    return kept


def gaps_in(spans: Sequence[Span], kept: Array) -> list[tuple[int, int]]:
    """First and last day of every stretch after the first feeding that no plan covers, or of which nothing was ``kept``, (days,)."""
    covered = np.zeros(len(kept), dtype=bool)
    for span in spans:
        days = slice(max(0, span.first), max(0, span.last + 1))
        covered[days] = kept[days] > 0.0
    first = min((span.first for span in spans), default=len(kept))
    open_days = np.flatnonzero(~covered[first:]) + first
    breaks = np.flatnonzero(np.diff(open_days) > 1)
    edges = zip([0, *(breaks + 1)], [*breaks, len(open_days) - 1], strict=True) if len(open_days) else ()
    return [(int(open_days[a]), int(open_days[b])) for a, b in edges]


def faults_of_calendar(asked: Any) -> list[Fault]:
    """Spans that end before they begin, plans that overlap, and days outside the forecast."""
    faults = [*_faults_of_spans("maintenance_feed", asked.maintenance_feed), *_faults_of_spans("deviations", asked.deviations)]
    first_day = first_day_of(asked)
    if first_day is None:
        return [*faults, Fault((), "nothing_to_forecast", say("fault-nothing_to_forecast"))]
    last_day = first_day + (asked.days - 1) * ONE_DAY
    for i, plan in enumerate(asked.maintenance_feed):
        if not first_day <= plan.from_ <= last_day:
            detail = say("fault-outside_forecast", first=str(first_day), last=str(last_day))
            faults.append(Fault(("maintenance_feed", i, "from"), "outside_forecast", detail))
    return faults if faults else _faults_of_overlap(asked, first_day)


def _faults_of_spans(member: str, spans: Sequence[Any]) -> list[Fault]:
    return [
        Fault((member, i, "until"), "dates_disordered", say("fault-until_before_from"))
        for i, one in enumerate(spans)
        if one.until is not None and one.until < one.from_
    ]


def _faults_of_overlap(asked: Any, first_day: dt.date) -> list[Fault]:
    spans = spans_of(asked, first_day)
    order = sorted(range(len(spans)), key=lambda i: spans[i].first)
    places: list[Place] = [("maintenance_feed", b) for a, b in pairwise(order) if spans[b].first <= spans[a].last]
    return [Fault(place, "plans_overlap", say("fault-plans_overlap")) for place in places]
