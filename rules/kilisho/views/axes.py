"""Panels of a chart: from numbers to pixels, with ticks at round numbers and calendar days."""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from babel.dates import format_date

from kilisho.messages import Language
from kilisho.views.paper import LETTER, LINE, MARGIN, SMALL, WIDTH, Paper, Point, wrapped

GUTTER, RIGHT = 46, 8
MOST_LEVELS, MOST_DAYS, MOST_LABEL_LINES = 6, 6, 2
ROUND = (1, 2, 5, 10)
MONTH_STEPS = (1, 2, 3, 6, 12, 24, 60, 120)
# Up to here days are marked by their date, beyond by their month.
LONGEST_BY_DAY = 100
Mark = tuple[float, str]
Row = tuple[float, float, Mapping[str, Any]]


@dataclass(frozen=True)
class Panel:
    """A rectangle of a paper so wide that shows ``days`` from left to right and values from ``low`` to ``high`` upwards."""

    top: float
    height: float
    days: float
    low: float
    high: float
    paper_width: float = WIDTH

    @property
    def bottom(self) -> float:
        """The pixel of ``low``."""
        return self.top + self.height

    def at(self, day: float, value: float) -> Point:
        """The pixel of a value on a day."""
        width = self.paper_width - 2 * MARGIN - GUTTER - RIGHT
        share = (value - self.low) / (self.high - self.low)
        return MARGIN + GUTTER + width * day / self.days, self.bottom - self.height * share


def step_of(span: float, most: int) -> float:
    """The smallest of 1, 2 and 5 times a power of ten that goes into ``span``, above 0, at most ``most`` times."""
    least = span / most
    power = 10.0 ** math.floor(math.log10(least))
    return next(factor * power for factor in ROUND if factor * power >= least * (1 - 1e-9))


def panel_of(top: float, height: float, days: float, values: Sequence[float], from_zero: bool) -> Panel:
    """A panel whose range holds ``values`` and ends at round numbers."""
    low, high = 0.0 if from_zero else min(values), max(values)
    step = step_of(max(high - low, abs(high) * 0.02) or 1.0, MOST_LEVELS - 1)
    bottom = math.floor(low / step) * step
    return Panel(top, height, max(days, 1.0), bottom, max(math.ceil(high / step), math.floor(low / step) + 1) * step)


def draw_axes(paper: Paper, panel: Panel, label: str, marks: Sequence[Mark]) -> None:
    """Frame, level lines with their numbers, day marks below, and what the panel shows above its left end, in two lines at most."""
    step = step_of(panel.high - panel.low, MOST_LEVELS)
    for place in range(round((panel.high - panel.low) / step) + 1):
        value = panel.low + place * step
        (x0, y), (x1, _) = panel.at(0, value), panel.at(panel.days, value)
        paper.line([(x0, y), (x1, y)], "grid")
        paper.text((x0 - 5, y + 4), paper.language.number(round(value, 9)), SMALL, "end")
    for day, text in marks:
        x, y = panel.at(day, panel.low)
        paper.line([(x, y), (x, y + 4)], "thin")
        paper.text((x, y + 16), text, SMALL, "middle")
    frame = [panel.at(*corner) for corner in ((0, panel.low), (panel.days, panel.low), (panel.days, panel.high), (0, panel.high))]
    paper.line([*frame, frame[0]], "thin")
    above = wrapped(label, width=paper.width - 2 * MARGIN)[:MOST_LABEL_LINES]
    paper.lines(panel.top - 4 - LINE * len(above), above)


def upright(paper: Paper, panel: Panel, day: float, text: str) -> None:
    """A dotted line through the panel on a day, its text right of the line, or left of it where that has more room."""
    (x, bottom), (_, top) = panel.at(day, panel.low), panel.at(day, panel.high)
    paper.line([(x, bottom), (x, top)], "dotted", "day")
    right, left = paper.width - MARGIN - x - 4, x - 4 - MARGIN - GUTTER
    starts = len(text) * SMALL * LETTER < right or right > left
    for place, line in enumerate(wrapped(text, SMALL, right if starts else left)):
        paper.text((x + 4 if starts else x - 4, top + 12 + place * LINE), line, SMALL, "start" if starts else "end")


def stairs(panel: Panel, rows: Sequence[Row], end: str) -> list[Point]:
    """The line through an end (value, low or high) of amounts, each of which holds from one day to another."""
    return [panel.at(day, told.get(end, told["value"])) for first, last, told in rows for day in (first, last)]


def band(paper: Paper, panel: Panel, rows: Sequence[Row], name: str) -> None:
    """The range of amounts that hold from one day to another."""
    paper.area([*stairs(panel, rows, "low"), *reversed(stairs(panel, rows, "high"))], "band", name)


def ends_of(rows: Sequence[Row]) -> list[float]:
    """Every value, low and high end of amounts, from which a panel takes its range."""
    return [told[end] for _, _, told in rows for end in ("value", "low", "high") if end in told]


def day_marks(first: dt.date | None, days: float, language: Language) -> list[Mark]:
    """Where days are marked: by number without a date, by date over some weeks, by month beyond."""
    if first is None or days <= LONGEST_BY_DAY:
        step = max(1, math.ceil(step_of(max(days, 1), MOST_DAYS - 1)))
        return [(day, _day_name(first, day, language)) for day in range(0, int(days) + 1, step)]
    months = list(_month_starts(first, days))
    step = next((size for size in MONTH_STEPS if len(months) <= MOST_DAYS * size), MONTH_STEPS[-1])
    chosen = [one for one in months if (one.year * 12 + one.month - 1) % step == 0]
    years = [one.year for one in chosen]
    new = [place == 0 or years[place] > years[place - 1] for place in range(len(chosen))]
    return [((one - first).days, _month_name(one, fresh, language)) for one, fresh in zip(chosen, new, strict=True)]


def _day_name(first: dt.date | None, day: int, language: Language) -> str:
    return language.say("drawing-day", day=day) if first is None else language.short_date(first + dt.timedelta(day))


def _month_name(month: dt.date, with_year: bool, language: Language) -> str:
    return language.month(month) if with_year else str(format_date(month, "LLL", language.locale))


def _month_starts(first: dt.date, days: float) -> Iterator[dt.date]:
    month, last = first.replace(day=1), first + dt.timedelta(days)
    while month <= last:
        if month >= first:
            yield month
        month = (month + dt.timedelta(31)).replace(day=1)
