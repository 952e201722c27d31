"""Use of the gas: does it reach, when does it run out, through which pipe, and which fuel does it replace."""

from __future__ import annotations

from typing import Any

from kilisho.farm import Ledger
from kilisho.questions.answers import Answer
from kilisho.questions.findings import Inspector
from kilisho.questions.gas_state import gas_state
from kilisho.questions.gas_use.fuels import trace_of_fuels
from kilisho.questions.gas_use.manure import trace_of_manure
from kilisho.questions.gas_use.pipe import pipe_step
from kilisho.questions.gas_use.purposes import trace_of_purposes
from kilisho.questions.gas_use.request import EXAMPLE, GasUseRequest
from kilisho.questions.gas_use.shape import GasUseAnswer
from kilisho.questions.gas_use.told import rows_of, told
from kilisho.questions.gas_use.work import Work, facts_of, work_out
from kilisho.questions.measuring import measure_first
from kilisho.questions.opening import Form
from kilisho.questions.tables import CSV, table_of
from kilisho.views.hours_drawing import hours_drawing
from kilisho.views.paper import SVG


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    work = work_out(asked, ledger)
    appliances = ledger.shelf.data.appliances
    return {
        **told(work),
        "gas_state": gas_state(ledger),
        "measure_first": measure_first(ledger, **_ranged(work)),
        "findings": inspector.shown(inspector.inspect(facts_of(work))),
        "cautions": inspector.cautions(*(appliances[use.appliance].cautions for use in asked.appliances)),
        **({"derivation": _derivation(work)} if explain else {}),
    }


def _ranged(work: Work) -> dict[str, Any]:
    """The samples of the answers that are most worth a narrower range."""
    demand = {"demand_per_day": work.demand.per_day.samples} if work.demand is not None else {}
    avoided = work.climate.avoided
    net = {"emissions.net_per_year": work.climate.net(avoided).samples} if avoided is not None else {}
    return {**demand, **net}


def _derivation(work: Work) -> list[dict[str, Any]]:
    pipe = pipe_step(work.pipe) if work.pipe is not None else []
    climate = work.climate
    uses = [*trace_of_purposes(climate.purposes), *trace_of_fuels(climate), *trace_of_manure(climate.manure)]
    return [*work.ledger.trace(), *uses, *pipe]


FORM = Form(
    "gas-use",
    "gas_use",
    "Use the gas",
    "Demand by appliance, the store that it needs, what is there and missing in each hour of the day; pressure lost in the pipe and the "
    "size to take; heat, density and Wobbe index of the gas; what it is burnt for, the fuels whose place it takes, and what leaks do to "
    "the climate.",
    GasUseRequest,
    GasUseAnswer,
    _answer,
    EXAMPLE,
    {CSV: table_of(rows_of), SVG: hours_drawing},
)
