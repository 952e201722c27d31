"""The gas of one batch charge, day by day with its range and in all, as an SVG drawing."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from typing import Any

from kilisho.messages import Amount, Language
from kilisho.views.axes import Mark, Panel, band, day_marks, draw_axes, ends_of, panel_of, stairs, upright
from kilisho.views.paper import LINE, SMALL, Paper, Words, headed, wrapped

HEIGHT, BELOW, ABOVE = 160, 26, 36
PANELS = ("gas", "gas_so_far")
Answer = Mapping[str, Any]
NEVER = {"value": float("inf")}


def rotation_drawing(answer: Answer, language: Language) -> str:
    """An answer's ``gas_curve``: gas by day with the part that can be used, and gas so far, with the day of recharging."""
    about = _in_words(answer, language)
    words, key = wrapped(about), wrapped(language.say("drawing-charge-key"), SMALL)
    height = len(PANELS) * (ABOVE + HEIGHT + BELOW) + LINE * (len(words) + 0.5 + len(key))
    paper, top = headed("rotation", Words(language.say("drawing-charge-title"), about), answer.get("name"), height, language)
    for name, label in zip(PANELS, (language.say("drawing-charge-gas"), language.say("drawing-charge-gas-so-far")), strict=True):
        panel = _panel(paper, top + ABOVE, answer, (name, label))
        top = panel.bottom + BELOW
    paper.lines(top, words)
    paper.lines(top + LINE * (len(words) + 0.5), key, SMALL)
    return paper.svg()


def _panel(paper: Paper, top: float, answer: Answer, shown: tuple[str, str]) -> Panel:
    (name, label), curve, language = shown, answer["gas_curve"], paper.language
    rows = [(one["day"], one["day"] + 1, one[name]) for one in curve]
    panel = panel_of(top, HEIGHT, len(curve), ends_of(rows), from_zero=True)
    band(paper, panel, rows, f"{name}-range")
    draw_axes(paper, panel, label, _marks(curve, panel.days, language))
    paper.line(stairs(panel, rows, "value"), "line", name)
    if name == "gas":
        usable = [(one["day"], one["day"] + 1, one["usable_gas"]) for one in curve]
        paper.line(stairs(panel, usable, "value"), "dashed", "usable")
    if answer.get("retention", NEVER)["value"] <= panel.days:
        upright(paper, panel, answer["retention"]["value"], language.say("drawing-charge-recharge"))
    return panel


def _marks(curve: list[Answer], days: float, language: Language) -> list[Mark]:
    first = dt.date.fromisoformat(curve[0]["date"]) if "date" in curve[0] else None
    return day_marks(first, days, language)


def _in_words(answer: Answer, language: Language) -> str:
    if "gas_of_charge" not in answer or "retention" not in answer:
        return language.say("drawing-charge-gives-nothing")
    text = language.say("drawing-charge-gives", gas=Amount.of(answer["gas_of_charge"]), retention=Amount.of(answer["retention"]))
    if "recharge_every" not in answer or "digesters" not in answer:
        return text
    turn = language.say("drawing-charge-in-turn", digesters=answer["digesters"], every=Amount.of(answer["recharge_every"]))
    return f"{text} {turn}"
