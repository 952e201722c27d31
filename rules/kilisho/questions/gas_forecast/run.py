"""The feeding history of a forecast in all columns: typical farm, samples, and what a change of feed, water or interval would do."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from kilisho.messages import Message
from kilisho.questions.digestion import Columns, volatile_solids_of
from kilisho.questions.feeding import Fed
from kilisho.questions.gas_forecast.calendar import Span
from kilisho.questions.gas_forecast.doses import Dose
from kilisho.ranges import SAMPLES, Array


@dataclass(frozen=True, slots=True)
class Change:
    """A change of the last feeding plan: its feed and its water to feed times a factor, or the days between feedings."""

    name: str
    text: Message
    feed: float = 1.0
    water: float = 1.0
    every: float | None = None


@dataclass(frozen=True, slots=True)
class Planned:
    """A dose, when it is fed, and the part of it that was kept on each day, (days,); the first charge is not regular."""

    dose: Dose
    span: Span
    kept: Array
    regular: bool = True

    def counts(self, every: float | None = None) -> Array:
        """Doses on each day, (days,); at another interval the same feed in fewer, larger doses."""
        days = len(self.kept)
        if every is None:
            return self.span.doses(days) * self.kept
        return replace(self.span, every=every).doses(days) * self.kept * (every / self.span.every)


@dataclass(frozen=True, slots=True)
class Feeds:
    """All that is fed, by day and column: each row of ``solids`` [kg], (days, rows, columns), is one of ``substrates``."""

    substrates: list[Fed]
    solids: Array
    slurry: Array


def feeds_of(planned: Sequence[Planned], changes: Sequence[Change], columns: Columns) -> Feeds:
    """The doses laid on the days; the last columns hold ``changes`` of the last dose, one each."""
    rows: dict[tuple[str, int], Fed] = {}
    for one in planned:
        for fed in one.dose.fed:
            rows.setdefault(_row_of(fed), fed)
    order = list(rows)
    days = len(planned[0].kept)
    feeds = Feeds(list(rows.values()), np.zeros((days, len(order), columns.count)), np.zeros((days, columns.count)))
    for one in planned:
        mine = changes if one is planned[-1] else ()
        counts = _counts(one, mine, columns)
        feed, water = (_factors([getattr(change, name) for change in mine], columns) for name in ("feed", "water"))
        for fed in one.dose.fed:
            feeds.solids[:, order.index(_row_of(fed))] += counts * (volatile_solids_of(fed, columns) * feed)
        feeds.slurry[:] += counts * (columns.laid(one.dose.room) + columns.laid(one.dose.liquid) * water) * feed
    return feeds


def routine_of(planned: Planned, feeds: Feeds, columns: Columns) -> tuple[Array, Array]:
    """The mean day of a plan: solids [kg], (rows, columns), in the rows of ``feeds``, and slurry [m3], (columns,)."""
    solids = np.zeros(feeds.solids.shape[1:])
    order = [_row_of(fed) for fed in feeds.substrates]
    for fed in planned.dose.fed:
        solids[order.index(_row_of(fed))] += volatile_solids_of(fed, columns) / planned.span.every
    return solids, columns.laid(planned.dose.slurry) / planned.span.every


def _row_of(fed: Fed) -> tuple[str, int]:
    """Substrates on which nothing was measured share their values, and so a row."""
    return fed.id, id(fed.values)


def _counts(planned: Planned, changes: Sequence[Change], columns: Columns) -> Array:
    counts = np.repeat(planned.counts()[:, None], columns.count, axis=1)
    for place, change in enumerate(changes, start=1 + SAMPLES):
        if change.every is not None:
            counts[:, place] = planned.counts(change.every)
    return counts


def _factors(factors: Sequence[float], columns: Columns) -> Array:
    found = np.ones(columns.count)
    found[1 + SAMPLES :] = factors if factors else 1.0
    return found
