"""Sizing: how large a digester the feed keeps going or the gas demand needs, and which of feed, demand and water limits it."""

from __future__ import annotations

from typing import Any

from kilisho.farm import Ledger
from kilisho.questions.answers import Answer
from kilisho.questions.feeding import feed_facts
from kilisho.questions.findings import Inspector
from kilisho.questions.gas import trace_of
from kilisho.questions.measuring import measure_first
from kilisho.questions.opening import Form
from kilisho.questions.seasons import season_facts
from kilisho.questions.sizing.request import EXAMPLE, SizingRequest
from kilisho.questions.sizing.shape import SizingAnswer
from kilisho.questions.sizing.size import Sized, size
from kilisho.questions.sizing.storage import storage_step
from kilisho.questions.sizing.told import planned_pressure, pressure_facts, told
from kilisho.questions.sizing.work import Work, work_out
from kilisho.questions.stated_facts import all_facts, values_by_id, worst_of
from kilisho.views.paper import SVG
from kilisho.views.section_drawing import digester_drawing


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    work = work_out(asked, ledger)
    sized = size(work)
    return {
        **told(work, sized),
        "measure_first": measure_first(
            ledger, needed_total_volume=sized.needed_samples, biogas_per_day=ledger.uncertain("biogas_per_day").samples
        ),
        "findings": inspector.shown(inspector.inspect(_facts(work, sized))),
        "cautions": inspector.cautions(work.structure.cautions, *(one.entry.cautions for one in work.fed)),
        **({"derivation": [*trace_of(work.fed, ledger), *ledger.trace(), *storage_step(work, sized.storage_method)]} if explain else {}),
    }


def _facts(work: Work, sized: Sized) -> dict[str, Any]:
    values = work.ledger.values
    worked_out = {
        **feed_facts(work.fed),
        "structure_kind": work.structure_id,
        **{name: values[name] for name in ("hydraulic_retention_time", "organic_loading_rate", "slurry_total_solids")},
        **({"water_sufficiency": sized.water_sufficiency} if sized.water_sufficiency is not None else {}),
        **({"digester_temperature": work.warmth.coldest} if work.warmth.known else {}),
        **season_facts(work.fed, work.warmth, work.ledger),
        **_sufficiency(work, sized),
        **pressure_facts(work),
    }
    return all_facts(work.ledger.shelf.data, worked_out, worst_of(values_by_id(work.asked.facts), **planned_pressure(work)))


def _sufficiency(work: Work, sized: Sized) -> dict[str, float]:
    """What the feed gives against what the demand asks for; nothing where one of them is not stated."""
    demand = sized.sides.get("demand")
    if not demand or not (work.supplied or work.asked.herd):
        return {}
    return {"feed_sufficiency": 1.0 / demand if work.supplied else 0.0}


FORM = Form(
    "sizing",
    "sizing",
    "Size a digester",
    "Working, total and gas storage volume from the feed, the gas demand or both, for the coldest month; which of them limits; the "
    "next buildable size and its dimensions.",
    SizingRequest,
    SizingAnswer,
    _answer,
    EXAMPLE,
    {SVG: digester_drawing},
)
