"""Gas through the year with its range, the slurry's temperature below, and where acids threaten, as an SVG drawing."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping, Sequence
from typing import Any

from kilisho.messages import Language
from kilisho.views.axes import Mark, Panel, Row, band, day_marks, draw_axes, ends_of, panel_of, stairs, upright
from kilisho.views.paper import LINE, MARGIN, SMALL, Paper, headed, wrapped
from kilisho.views.words import MONTHS, amount_range, number

GAS_HEIGHT, TEMPERATURE_HEIGHT, RISK_HEIGHT, BELOW, ABOVE = 190, 90, 14, 26, 36
TITLE = "Gas forecast"
KEY = (
    "Lines: typical. Hatched: the range in which nine of ten of the samples lie. Each step is the mean of its day, week or month. Acid "
    "risk: hatched raised, black high."
)
RISKS = {"raised": "band", "high": "#000"}
Answer = Mapping[str, Any]


def forecast_drawing(answer: Answer, language: Language) -> str:
    """An answer's series: gas in cubic metres a day with its range, temperature with its range, and the acid risk."""
    notes, key = wrapped(_in_words(answer)), wrapped(KEY, SMALL)
    panels = 3 * (ABOVE + BELOW) + GAS_HEIGHT + TEMPERATURE_HEIGHT + RISK_HEIGHT
    paper, top = headed("forecast", TITLE, answer.get("name"), _in_words(answer), panels + LINE * (len(notes) + 1 + len(key)))
    first, days = dt.date.fromisoformat(answer["first_day"]), _last_day(answer)
    marks = day_marks(first, days)
    gas, warmth = _rows(answer, "gas"), _rows(answer, "temperature")
    panel = panel_of(top + ABOVE, GAS_HEIGHT, days, ends_of(gas), from_zero=True)
    _series(paper, panel, gas, ("Gas [m³ a day]", "line", "gas"), marks)
    if "first_burnable_gas_day" in answer:
        upright(paper, panel, answer["first_burnable_gas_day"]["value"], "first burnable gas")
    panel = panel_of(panel.bottom + BELOW + ABOVE, TEMPERATURE_HEIGHT, days, ends_of(warmth), from_zero=False)
    _series(paper, panel, warmth, ("Slurry temperature [°C]", "dashed", "temperature"), marks)
    panel = Panel(panel.bottom + BELOW + ABOVE, RISK_HEIGHT, days, 0, 1)
    _risk(paper, panel, answer["series"])
    paper.lines(panel.bottom + BELOW, notes)
    paper.lines(panel.bottom + BELOW + LINE * (len(notes) + 0.5), key, SMALL)
    return paper.svg()


def _rows(answer: Answer, name: str) -> list[Row]:
    return [(one["day"], one["day"] + one.get("days", 1), one[name]) for one in answer["series"]]


def _last_day(answer: Answer) -> float:
    last = answer["series"][-1]
    return float(last["day"] + last.get("days", 1))


def _series(paper: Paper, panel: Panel, rows: Sequence[Row], look: tuple[str, str, str], marks: Sequence[Mark]) -> None:
    label, stroke, name = look
    band(paper, panel, rows, f"{name}-range")
    draw_axes(paper, panel, label, marks)
    paper.line(stairs(panel, rows, "value"), stroke, name)


def _risk(paper: Paper, panel: Panel, series: Sequence[Answer]) -> None:
    """A strip that is filled where the acid risk is raised or high."""
    frame = [panel.at(*corner) for corner in ((0, 0), (panel.days, 0), (panel.days, 1), (0, 1))]
    for one in series:
        if one["acid_risk"] in RISKS:
            first, last = one["day"], one["day"] + one.get("days", 1)
            paper.area([panel.at(x, y) for x, y in ((first, 0), (last, 0), (last, 1), (first, 1))], RISKS[one["acid_risk"]], "risk")
    paper.line([*frame, frame[0]], "thin")
    paper.text((MARGIN, panel.top - 8), "Acid risk")


def _in_words(answer: Answer) -> str:
    day = dt.date.fromisoformat(answer["first_day"])
    text = f"{answer['days']} days from {day.day} {MONTHS[day.month - 1]} {day.year}. In all {amount_range(answer['total_gas'])} of gas"
    if "least_gas" in answer:
        text += f"; least {amount_range(answer['least_gas']['gas'])}, on day {answer['least_gas']['day']}"
    burns = answer.get("first_burnable_gas_day")
    text += f". First burnable gas after {amount_range(burns)}" if burns else ""
    starts = answer.get("starts")
    text += f"; {number(starts['value'])} % of the samples start" if starts else ""
    return f"{text}. Highest acid risk: {answer['highest_acid_risk']}."
