"""The stockpile of a first charge against its need, day by day until filling, as an SVG drawing."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from kilisho.messages import Language
from kilisho.views.axes import Panel, day_marks, draw_axes, panel_of, upright
from kilisho.views.paper import LINE, SMALL, Paper, Point, Words, headed, wrapped

HEIGHT, BELOW, ABOVE = 170, 28, 40
NARROW = 300
Answer = Mapping[str, Any]


def stockpile_drawing(answer: Answer, language: Language) -> str:
    """An answer's heaps, a panel each: kilograms by day, the need with its range, and the day of filling, with words below."""
    stockpile, words = answer["stockpile"], _words(answer, language)
    notes, key = wrapped(stockpile["in_words"]), wrapped(language.say("drawing-heap-key"), SMALL)
    height = len(stockpile["heaps"]) * _room() + LINE * (len(notes) + 0.5 + len(key))
    paper, top = headed("stockpile", words, answer.get("name"), height, language)
    top = _heaps(paper, top, stockpile)
    paper.lines(top, notes)
    paper.lines(top + LINE * (len(notes) + 0.5), key, SMALL)
    return paper.svg()


def stockpile_figure(answer: Answer, language: Language) -> str:
    """The panels alone, narrow, for half the width of a page that tells the words itself."""
    stockpile = answer["stockpile"]
    paper = Paper("stockpile", (NARROW, len(stockpile["heaps"]) * _room() + LINE / 2), _words(answer, language), language)
    _heaps(paper, LINE / 2, stockpile)
    return paper.svg()


def _words(answer: Answer, language: Language) -> Words:
    about = f"{language.say('drawing-heap-about')} {answer['stockpile']['in_words']}"
    return Words(language.say("drawing-heap-title"), about)


def _heaps(paper: Paper, top: float, stockpile: Answer) -> float:
    """A panel for each heap from ``top`` down; gives where the room below them begins."""
    for heap in stockpile["heaps"]:
        _heap(paper, top + ABOVE, heap)
        top += _room()
    return top


def _room() -> float:
    return ABOVE + HEIGHT + BELOW


def _heap(paper: Paper, top: float, heap: Answer) -> None:
    language = paper.language
    account, needed, on_heap = heap["account"], heap["needed"], heap["on_heap"]
    days = len(account["on_heap"]) - 1
    highest = [*account["on_heap"], *(part.get("high", part["value"]) for part in (needed, on_heap))]
    panel = replace(panel_of(top, HEIGHT, days, highest, from_zero=True), paper_width=paper.width)
    first = dt.date.fromisoformat(account["first_day"]) if "first_day" in account else None
    paper.area(_range(panel, needed), "band", "need-range")
    label = language.say("drawing-kilograms-of", name=heap["name"])
    draw_axes(paper, panel, label, day_marks(first, panel.days, language))
    paper.line([panel.at(0, needed["value"]), panel.at(panel.days, needed["value"])], "dashed", "need")
    upright(paper, panel, days, _filling(first, days, language.typical(on_heap), language))
    paper.line([panel.at(day, mass) for day, mass in enumerate(account["on_heap"])], "wall", "heap")
    _at_filling(paper, panel, days, on_heap)
    text = language.say("drawing-heap-needed", mass=language.typical(needed))
    paper.text((panel.at(0, 0)[0] + 6, panel.at(0, needed["value"])[1] - 5), text, SMALL)


def _filling(first: dt.date | None, days: int, mass: str, language: Language) -> str:
    if first is None:
        return language.say("drawing-heap-filling-day", mass=mass)
    return language.say("drawing-heap-filling-on", date=language.short_date(first + dt.timedelta(days)), mass=mass)


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
