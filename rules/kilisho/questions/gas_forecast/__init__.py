"""Gas forecast: how much gas on which day, from a first charge or a working digester, through seasons and missed feeds."""

from __future__ import annotations

from typing import Any

from kilisho.farm import Ledger
from kilisho.questions.answers import Answer
from kilisho.questions.digester import digester_contradictions
from kilisho.questions.digestion import samples_of
from kilisho.questions.findings import Inspector
from kilisho.questions.gas_forecast.facts import facts_of
from kilisho.questions.gas_forecast.request import example_under, request_under
from kilisho.questions.gas_forecast.shape import GasForecastAnswer
from kilisho.questions.gas_forecast.told import gas_of_run, rows_of, told
from kilisho.questions.gas_forecast.work import work_out
from kilisho.questions.gas_state import gas_state
from kilisho.questions.limits import Limits
from kilisho.questions.measuring import measure_first
from kilisho.questions.opening import Form
from kilisho.questions.tables import CSV, table_of
from kilisho.views.forecast_drawing import forecast_drawing
from kilisho.views.paper import SVG


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    work = work_out(asked, ledger)
    gas, _ = gas_of_run(work)
    return {
        **told(work),
        "gas_state": gas_state(ledger),
        "digester_temperature": work.warmth.told(),
        "measure_first": measure_first(ledger, total_gas=samples_of(gas.sum(axis=0))),
        "findings": inspector.shown(inspector.inspect(facts_of(work)), digester_contradictions(work.structure, ledger)),
        "cautions": inspector.cautions(work.structure.cautions, *(one.entry.cautions for one in work.fed)),
        **({"derivation": ledger.trace()} if explain else {}),
    }


def form(limits: Limits) -> Form:
    """The question, with the longest forecast in force."""
    return Form(
        "gas-forecast",
        "gas_forecast",
        "Forecast the gas",
        "Gas, methane, slurry temperature and acid risk by day, week or month from a first charge or a working digester, by a "
        "process model that follows every feed; the first burnable gas, the steady gas, and what a change of feed, water or interval "
        "would do.",
        request_under(limits),
        GasForecastAnswer,
        _answer,
        example_under(limits),
        {CSV: table_of(rows_of), SVG: forecast_drawing},
        slow=True,
    )
