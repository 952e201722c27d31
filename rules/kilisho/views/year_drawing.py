"""Gas month by month as bars with their numbers, as an SVG drawing for a sheet."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from typing import Any

from babel.dates import format_date

from kilisho.messages import Language
from kilisho.views.paper import WIDTH, Paper, Words

# Printed four tenths of a page wide, the type has 9.9 pt.
SIZE, LINE = 18, 21
# The highest range reaches so high, and a bar takes so much of its month's width.
HEIGHT, SHARE = 96, 0.6
JANUARY = 1
# From here on the decimals of a month's gas say nothing.
WHOLE = 10
Answer = Mapping[str, Any]


def year_figure(forecast: Answer, language: Language) -> str:
    """A forecast by month: a bar for each month's gas in cubic metres a day with its number, its range as an upright line."""
    series, first = forecast["series"], dt.date.fromisoformat(forecast["first_day"])
    months = [first + dt.timedelta(one["day"]) for one in series]
    pairs = [(language.month(month), language.amount(one["gas"])) for month, one in zip(months, series, strict=True)]
    told = "; ".join(language.say("sheet-pair", name=name, value=gas) for name, gas in pairs)
    paper = Paper("year", (WIDTH, HEIGHT + 3 * LINE), Words(language.say("drawing-year-title"), f"{told}."), language)
    pitch, highest = WIDTH / len(series), max(one["gas"].get("high", one["gas"]["value"]) for one in series) or 1.0
    for place, (month, one) in enumerate(zip(months, series, strict=True)):
        _bar(paper, (pitch * (place + 0.5), pitch * SHARE), one["gas"], HEIGHT / highest)
        _month(paper, pitch * (place + 0.5), month, with_year=place == 0 or month.month == JANUARY)
    paper.line([(0, HEIGHT + LINE), (WIDTH, HEIGHT + LINE)], "line")
    return paper.svg()


def _bar(paper: Paper, spot: tuple[float, float], gas: Answer, scale: float) -> None:
    """A bar around the middle of ``spot``, as wide as its end says; its number stands above the range."""
    (middle, wide), floor = spot, HEIGHT + LINE
    low, value, high = (floor - gas.get(end, gas["value"]) * scale for end in ("low", "value", "high"))
    left, right = middle - wide / 2, middle + wide / 2
    paper.area([(left, floor), (left, value), (right, value), (right, floor)], "slurry", "month")
    paper.line([(left, floor), (left, value), (right, value), (right, floor)], "line")
    paper.line([(middle, low), (middle, high)], "line", "month-range")
    paper.text((middle, high - 4), paper.language.number(gas["value"], 1 if gas["value"] < WHOLE else 0), SIZE, "middle")


def _month(paper: Paper, middle: float, month: dt.date, *, with_year: bool) -> None:
    name = str(format_date(month, "LLLLL", paper.language.locale))
    paper.text((middle, HEIGHT + 2 * LINE - 2), name, SIZE, "middle")
    if with_year:
        paper.text((max(middle, LINE), HEIGHT + 3 * LINE - 4), str(month.year), SIZE, "middle")
