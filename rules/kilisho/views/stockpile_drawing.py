"""The stockpile of a first charge against its need, day by day until filling, as an SVG drawing."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping, Sequence
from typing import Any

from kilisho.messages import Language
from kilisho.views.axes import Panel, day_marks, draw_axes, panel_of, short_date, upright
from kilisho.views.paper import LINE, SMALL, Paper, Point, headed, wrapped
from kilisho.views.words import amount, in_words

HEIGHT, BELOW, ABOVE = 170, 30, 32
TITLE = "Stockpile against need"
KEY = (
    "Thick line: what lies on the heap. Dashed: what the charge needs, hatched its range. The bar at the end: range of the heap "
    "on the day of filling."
)
Answer = Mapping[str, Any]


def stockpile_drawing(answer: Answer, language: Language) -> str:
    """An answer's heaps, a panel each: kilograms by day, the need with its range, and the day of filling, with words below."""
    return _drawing(answer, wrapped(answer["stockpile"]["in_words"]), wrapped(KEY, SMALL))


def stockpile_figure(answer: Answer, language: Language) -> str:
    """The same without the farm's name and the words below, for a page that tells them itself."""
    return _drawing({**answer, "name": None}, [], [])


def _drawing(answer: Answer, notes: Sequence[str], key: Sequence[str]) -> str:
    stockpile = answer["stockpile"]
    height = len(stockpile["heaps"]) * _room() + LINE * (len(notes) + 0.5 + len(key)) * bool(notes)
    paper, top = headed("stockpile", TITLE, answer.get("name"), _about(stockpile), height)
    for heap in stockpile["heaps"]:
        _heap(paper, top + ABOVE, heap)
        top += _room()
    paper.lines(top, notes)
    paper.lines(top + LINE * (len(notes) + 0.5), key, SMALL)
    return paper.svg()


def _room() -> float:
    return ABOVE + HEIGHT + BELOW


def _about(stockpile: Answer) -> str:
    return f"Heaps in kilograms by day until filling, against what the charge needs. {stockpile['in_words']}"


def _heap(paper: Paper, top: float, heap: Answer) -> None:
    account, needed, on_heap = heap["account"], heap["needed"], heap["on_heap"]
    days = len(account["on_heap"]) - 1
    highest = [*account["on_heap"], *(part.get("high", part["value"]) for part in (needed, on_heap))]
    panel = panel_of(top, HEIGHT, days, highest, from_zero=True)
    first = dt.date.fromisoformat(account["first_day"]) if "first_day" in account else None
    paper.area(_range(panel, needed), "band", "need-range")
    draw_axes(paper, panel, f"{in_words(heap['substrate'])} [kg]", day_marks(first, panel.days))
    paper.line([panel.at(0, needed["value"]), panel.at(panel.days, needed["value"])], "dashed", "need")
    filling = "filling day" if first is None else f"filling, {short_date(first + dt.timedelta(days))}"
    upright(paper, panel, days, f"{filling}: {amount(on_heap)}")
    paper.line([panel.at(day, mass) for day, mass in enumerate(account["on_heap"])], "wall", "heap")
    _at_filling(paper, panel, days, on_heap)
    paper.text((panel.at(0, 0)[0] + 6, panel.at(0, needed["value"])[1] - 5), f"needed {amount(needed)}", SMALL)


def _range(panel: Panel, told: Answer) -> list[Point]:
    """The corners of an amount's range over all days."""
    low, high = told.get("low", told["value"]), told.get("high", told["value"])
    return [panel.at(0, low), panel.at(panel.days, low), panel.at(panel.days, high), panel.at(0, high)]


def _at_filling(paper: Paper, panel: Panel, days: int, on_heap: Answer) -> None:
    """What lies there at filling, with its range as an upright bar."""
    low, high = on_heap.get("low", on_heap["value"]), on_heap.get("high", on_heap["value"])
    ends = [panel.at(days, value) for value in (low, high)]
    for x, y in ends:
        paper.line([(x - 5, y), (x + 5, y)], "line")
    paper.line(ends, "line", "heap-range")
    x, y = panel.at(days, on_heap["value"])
    paper.area([(x - 4, y), (x, y - 4), (x + 4, y), (x, y + 4)], "#000")
