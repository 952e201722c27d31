"""Gas through the year with its range, the slurry's temperature below, and where acids threaten, as an SVG drawing."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from kilisho.messages import Amount, Day, Language
from kilisho.views.axes import Mark, Panel, Row, band, day_marks, draw_axes, ends_of, panel_of, stairs, upright
from kilisho.views.paper import LINE, MARGIN, SMALL, Paper, Words, headed, wrapped

GAS_HEIGHT, TEMPERATURE_HEIGHT, RISK_HEIGHT, BELOW, ABOVE = 190, 90, 14, 26, 36
RISKS = {"raised": "band", "high": "#000"}
Answer = Mapping[str, Any]


def forecast_drawing(answer: Answer, language: Language) -> str:
    """An answer's series: gas in cubic metres a day with its range, temperature with its range, and the acid risk."""
    say, about = language.say, " ".join(_in_words(answer, language))
    notes, key = wrapped(about), wrapped(say("drawing-forecast-key"), SMALL)
    panels = 3 * (ABOVE + BELOW) + GAS_HEIGHT + TEMPERATURE_HEIGHT + RISK_HEIGHT
    height = panels + LINE * (len(notes) + 1 + len(key))
    paper, top = headed("forecast", Words(say("drawing-forecast-title"), about), answer.get("name"), height, language)
    below = _panels(paper, top, answer)
    paper.lines(below, notes)
    paper.lines(below + LINE * (len(notes) + 0.5), key, SMALL)
    return paper.svg()


def _panels(paper: Paper, top: float, answer: Answer) -> float:
    """Gas, temperature and acid risk from ``top`` down; gives where the room below them begins."""
    say, days = paper.language.say, _last_day(answer)
    marks = day_marks(dt.date.fromisoformat(answer["first_day"]), days, paper.language)
    gas, warmth = _rows(answer, "gas"), _rows(answer, "temperature")
    panel = panel_of(top + ABOVE, GAS_HEIGHT, days, ends_of(gas), from_zero=True)
    _series(paper, panel, gas, (say("drawing-forecast-gas"), "line", "gas"), marks)
    if "first_burnable_gas_day" in answer:
        upright(paper, panel, answer["first_burnable_gas_day"]["value"], say("drawing-forecast-first-burnable-gas"))
    panel = panel_of(panel.bottom + BELOW + ABOVE, TEMPERATURE_HEIGHT, days, ends_of(warmth), from_zero=False)
    _series(paper, panel, warmth, (say("drawing-forecast-temperature"), "dashed", "temperature"), marks)
    panel = Panel(panel.bottom + BELOW + ABOVE, RISK_HEIGHT, days, 0, 1)
    _risk(paper, panel, answer["series"], say("drawing-forecast-acid-risk"))
    return panel.bottom + BELOW


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


def _risk(paper: Paper, panel: Panel, series: Sequence[Answer], label: str) -> None:
    """A strip that is filled where the acid risk is raised or high."""
    frame = [panel.at(*corner) for corner in ((0, 0), (panel.days, 0), (panel.days, 1), (0, 1))]
    for one in series:
        if one["acid_risk"] in RISKS:
            first, last = one["day"], one["day"] + one.get("days", 1)
            paper.area([panel.at(x, y) for x, y in ((first, 0), (last, 0), (last, 1), (first, 1))], RISKS[one["acid_risk"]], "risk")
    paper.line([*frame, frame[0]], "thin")
    paper.text((MARGIN, panel.top - 8), label)


def _in_words(answer: Answer, language: Language) -> Iterator[str]:
    say, gas = language.say, Amount.of(answer["total_gas"])
    yield say("drawing-forecast-from", days=answer["days"], first=Day(dt.date.fromisoformat(answer["first_day"])))
    if (least := answer.get("least_gas")) is None:
        yield say("drawing-forecast-total", gas=gas)
    else:
        yield say("drawing-forecast-total-and-least", gas=gas, least=Amount.of(least["gas"]), day=least["day"])
    if "first_burnable_gas_day" in answer:
        yield say("drawing-forecast-burnable-after", after=Amount.of(answer["first_burnable_gas_day"]))
    if "starts" in answer:
        yield say("drawing-forecast-share-that-starts", share=language.typical(answer["starts"]))
    yield say("drawing-forecast-highest-acid-risk", risk=language.word("acid_risk", answer["highest_acid_risk"]))
