"""Gas wanted, made and stored through the hours of a day, as an SVG drawing."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from kilisho.faults import Fault, RefusedError
from kilisho.messages import Language
from kilisho.views.axes import Panel, draw_axes, ends_of, panel_of, stairs
from kilisho.views.paper import LINE, SMALL, Paper, headed, wrapped
from kilisho.views.words import amount_range

HEIGHT, BELOW, ABOVE = 150, 26, 36
TITLE = "Gas through the day"
KEY = "Hatched: gas that is wanted in each hour; black the part of it that is not there. Line: gas that is made. Below: gas in the store."
MARKS = [(hour, f"{hour:02}:00") for hour in (0, 4, 8, 12, 16, 20, 24)]
Answer = Mapping[str, Any]


def hours_drawing(answer: Answer, language: Language) -> str:
    """An answer's ``cover_by_hour``: what is wanted, missing, made and stored.

    Raises :class:`RefusedError` with code ``hours_needed`` where the hours of use are not known.
    """
    if not answer.get("cover_by_hour"):
        lacking = "appliances" if "supply_per_day" in answer else "biogas_per_day"
        raise RefusedError([Fault((lacking,), "hours_needed", "the drawing needs the gas per day and clock hours of every appliance")])
    words, key = wrapped(_in_words(answer)), wrapped(KEY, SMALL)
    height = 2 * (ABOVE + HEIGHT + BELOW) + LINE * (len(words) + 0.5 + len(key))
    paper, top = headed("hours", TITLE, answer.get("name"), _in_words(answer), height)
    rows = {name: [(one["hour"], one["hour"] + 1, one[name]) for one in answer["cover_by_hour"]] for name in ("demand", "supply", "stored")}
    panel = panel_of(top + ABOVE, HEIGHT, 24, [*ends_of(rows["demand"]), *ends_of(rows["supply"])], from_zero=True)
    _bars(paper, panel, answer["cover_by_hour"])
    draw_axes(paper, panel, "Gas [m³ an hour]", MARKS)
    paper.line(stairs(panel, rows["supply"], "value"), "line", "supply")
    panel = panel_of(panel.bottom + BELOW + ABOVE, HEIGHT, 24, ends_of(rows["stored"]), from_zero=True)
    draw_axes(paper, panel, "In the store at the end of the hour [m³]", MARKS)
    paper.line(stairs(panel, rows["stored"], "value"), "line", "stored")
    paper.lines(panel.bottom + BELOW, words)
    paper.lines(panel.bottom + BELOW + LINE * (len(words) + 0.5), key, SMALL)
    return paper.svg()


def _bars(paper: Paper, panel: Panel, hours: list[Answer]) -> None:
    """What is wanted in each hour, and on top of it what is missing."""
    for one in hours:
        wanted, missing = one["demand"]["value"], one["unmet"]["value"]
        for low, high, fill, name in ((0, wanted, "band", "wanted"), (wanted - missing, wanted, "#000", "missing")):
            if high > low:
                corners = ((one["hour"], low), (one["hour"] + 1, low), (one["hour"] + 1, high), (one["hour"], high))
                paper.area([panel.at(*corner) for corner in corners], fill, name)


def _in_words(answer: Answer) -> str:
    text = f"Wanted {amount_range(answer['demand_per_day'])}, made {amount_range(answer['supply_per_day'])}."
    spells = [f"{one['from']} to {one['to']}" for one in answer.get("without_gas", ())]
    return f"{text} The gas runs out: {', '.join(spells)}." if spells else f"{text} At typical rates the gas does not run out."
