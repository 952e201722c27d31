"""Gas wanted, made and stored through the hours of a day, as an SVG drawing."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from kilisho.faults import Fault, RefusedError
from kilisho.messages import Amount, Language, say
from kilisho.views.axes import Panel, Row, draw_axes, ends_of, panel_of, stairs
from kilisho.views.paper import LINE, SMALL, Paper, Words, headed, wrapped

HEIGHT, BELOW, ABOVE = 150, 26, 36
MARKS = [(hour, f"{hour:02}:00") for hour in (0, 4, 8, 12, 16, 20, 24)]
Answer = Mapping[str, Any]


def hours_drawing(answer: Answer, language: Language) -> str:
    """An answer's ``cover_by_hour``: what is wanted, missing, made and stored.

    Raises :class:`RefusedError` with code ``hours_needed`` where the hours of use are not known.
    """
    if not answer.get("cover_by_hour"):
        lacking = "appliances" if "supply_per_day" in answer else "biogas_per_day"
        raise RefusedError([Fault((lacking,), "hours_needed", say("fault-drawing_needs_hours"))])
    about = _in_words(answer, language)
    words, key = wrapped(about), wrapped(language.say("drawing-hours-key"), SMALL)
    height = 2 * (ABOVE + HEIGHT + BELOW) + LINE * (len(words) + 0.5 + len(key))
    paper, top = headed("hours", Words(language.say("drawing-hours-title"), about), answer.get("name"), height, language)
    below = _panels(paper, top, answer["cover_by_hour"])
    paper.lines(below, words)
    paper.lines(below + LINE * (len(words) + 0.5), key, SMALL)
    return paper.svg()


def _panels(paper: Paper, top: float, hours: list[Answer]) -> float:
    """What is wanted and made, and what is stored, from ``top`` down; gives where the room below them begins."""
    demand, supply, stored = (_rows(hours, name) for name in ("demand", "supply", "stored"))
    panel = panel_of(top + ABOVE, HEIGHT, 24, [*ends_of(demand), *ends_of(supply)], from_zero=True)
    _bars(paper, panel, hours)
    draw_axes(paper, panel, paper.language.say("drawing-hours-gas"), MARKS)
    paper.line(stairs(panel, supply, "value"), "line", "supply")
    panel = panel_of(panel.bottom + BELOW + ABOVE, HEIGHT, 24, ends_of(stored), from_zero=True)
    draw_axes(paper, panel, paper.language.say("drawing-hours-stored"), MARKS)
    paper.line(stairs(panel, stored, "value"), "line", "stored")
    return panel.bottom + BELOW


def _rows(hours: list[Answer], name: str) -> list[Row]:
    return [(one["hour"], one["hour"] + 1, one[name]) for one in hours]


def _bars(paper: Paper, panel: Panel, hours: list[Answer]) -> None:
    """What is wanted in each hour, and on top of it what is missing."""
    for one in hours:
        wanted, missing = one["demand"]["value"], one["unmet"]["value"]
        for low, high, fill, name in ((0, wanted, "band", "wanted"), (wanted - missing, wanted, "#000", "missing")):
            if high > low:
                corners = ((one["hour"], low), (one["hour"] + 1, low), (one["hour"] + 1, high), (one["hour"], high))
                paper.area([panel.at(*corner) for corner in corners], fill, name)


def _in_words(answer: Answer, language: Language) -> str:
    wanted, made = Amount.of(answer["demand_per_day"]), Amount.of(answer["supply_per_day"])
    text = language.say("drawing-hours-wanted-and-made", wanted=wanted, made=made)
    spells = [language.say("drawing-hours-spell", start=one["from"], end=one["to"]) for one in answer.get("without_gas", ())]
    lasts = language.say("drawing-hours-gas-runs-out", spells=", ".join(spells)) if spells else language.say("drawing-hours-gas-lasts")
    return f"{text} {lasts}"
