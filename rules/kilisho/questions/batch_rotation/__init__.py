"""Batch rotation: the gas of one charge, when to recharge, how many digesters in turn keep a demand met, and the dates of it all."""

from __future__ import annotations

from typing import Any

from kilisho.farm import Ledger
from kilisho.questions.answers import Answer
from kilisho.questions.batch_rotation.calendar import recharge_dates
from kilisho.questions.batch_rotation.facts import facts_of
from kilisho.questions.batch_rotation.request import EXAMPLE, BatchRotationRequest
from kilisho.questions.batch_rotation.shape import BatchRotationAnswer
from kilisho.questions.batch_rotation.told import retention_of, rows_of, told
from kilisho.questions.batch_rotation.work import work_out
from kilisho.questions.digester import digester_contradictions
from kilisho.questions.digestion import samples_of
from kilisho.questions.findings import Inspector
from kilisho.questions.gas_state import gas_state
from kilisho.questions.measuring import measure_first
from kilisho.questions.opening import Form
from kilisho.questions.tables import CSV, table_of
from kilisho.views.calendars import CALENDAR, Layout, calendar_of, recharges_of
from kilisho.views.paper import SVG
from kilisho.views.rotation_drawing import rotation_drawing

# Whatever the structure: a digester is opened at every recharge.
OPENING = ("batch_opening",)
CALENDAR_LAYOUT = Layout(
    "batch-rotation",
    ("first_charge_on",),
    {
        "first_charge": ["first_gas", "no_flame_no_smoking"],
        "recharge": ["first_gas", "no_flame_no_smoking"],
        "open_and_empty": ["batch_opening", "never_enter", "collapse_in_pit"],
    },
    recharges_of,
)


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    work = work_out(asked, ledger)
    gas = work.curves.told.gas[: retention_of(work)].sum(axis=0)
    return {
        **told(work),
        "recharge_dates": recharge_dates(work),
        "gas_state": gas_state(ledger),
        "digester_temperature": work.warmth.told(),
        "measure_first": measure_first(ledger, gas_of_charge=samples_of(gas)),
        "findings": inspector.shown(inspector.inspect(facts_of(work)), digester_contradictions(work.structure, ledger)),
        "cautions": inspector.cautions(OPENING, work.structure.cautions, *(one.entry.cautions for one in work.charge.fed)),
        **({"derivation": ledger.trace()} if explain else {}),
    }


FORM = Form(
    "batch-rotation",
    "batch_rotation",
    "Plan batch digesters in turn",
    "The gas of one charge day by day, how long to leave it, how many digesters recharged in turn (or how much storage) keep a gas demand "
    "met on every day of the year, the dates of every recharge, and what recharging early or late costs.",
    BatchRotationRequest,
    BatchRotationAnswer,
    _answer,
    EXAMPLE,
    {CSV: table_of(rows_of), CALENDAR: calendar_of(CALENDAR_LAYOUT), SVG: rotation_drawing},
    slow=True,
)
