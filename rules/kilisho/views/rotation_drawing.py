"""The gas of one batch charge, day by day with its range and in all, as an SVG drawing."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from typing import Any

from kilisho.messages import Language
from kilisho.views.axes import band, day_marks, draw_axes, ends_of, panel_of, stairs, upright
from kilisho.views.paper import LINE, SMALL, headed, wrapped
from kilisho.views.words import amount_range

HEIGHT, BELOW, ABOVE = 160, 26, 36
TITLE = "Gas of one charge"
PANELS = (("gas", "Gas [m³ a day]"), ("gas_so_far", "Gas so far [m³]"))
KEY = (
    "Lines: typical. Hatched: the range in which nine of ten of the samples lie. Dashed: gas that burns; the rest is let off. Dotted: "
    "the day of recharging."
)
Answer = Mapping[str, Any]
NEVER = {"value": float("inf")}


def rotation_drawing(answer: Answer, language: Language) -> str:
    """An answer's ``gas_curve``: gas by day with the part that can be used, and gas so far, with the day of recharging."""
    curve = answer["gas_curve"]
    words, key = wrapped(_in_words(answer)), wrapped(KEY, SMALL)
    height = len(PANELS) * (ABOVE + HEIGHT + BELOW) + LINE * (len(words) + 0.5 + len(key))
    paper, top = headed("rotation", TITLE, answer.get("name"), _in_words(answer), height)
    first = dt.date.fromisoformat(curve[0]["date"]) if "date" in curve[0] else None
    for name, label in PANELS:
        rows = [(one["day"], one["day"] + 1, one[name]) for one in curve]
        panel = panel_of(top + ABOVE, HEIGHT, len(curve), ends_of(rows), from_zero=True)
        band(paper, panel, rows, f"{name}-range")
        draw_axes(paper, panel, label, day_marks(first, panel.days))
        paper.line(stairs(panel, rows, "value"), "line", name)
        if name == "gas":
            usable = [(one["day"], one["day"] + 1, one["usable_gas"]) for one in curve]
            paper.line(stairs(panel, usable, "value"), "dashed", "usable")
        if answer.get("retention", NEVER)["value"] <= panel.days:
            upright(paper, panel, answer["retention"]["value"], "recharge")
        top = panel.bottom + BELOW
    paper.lines(top, words)
    paper.lines(top + LINE * (len(words) + 0.5), key, SMALL)
    return paper.svg()


def _in_words(answer: Answer) -> str:
    if "gas_of_charge" not in answer or "retention" not in answer:
        return "One charge gives no gas that could be counted on."
    text = f"One charge gives {amount_range(answer['gas_of_charge'])} of gas in {amount_range(answer['retention'])}."
    if "recharge_every" in answer and "digesters" in answer:
        text += f" {answer['digesters']} digesters in turn: one is recharged every {amount_range(answer['recharge_every'])}."
    return text
