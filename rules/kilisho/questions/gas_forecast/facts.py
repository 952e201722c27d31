"""The facts that checks ask of a gas forecast."""

from __future__ import annotations

from typing import Any

from kilisho.questions.feeding import feed_facts
from kilisho.questions.gas_forecast.work import Work
from kilisho.questions.seasons import season_facts
from kilisho.questions.stated_facts import all_facts, values_by_id

# Days in which a new digester's acids may run high without harm; the first flame has its own answer.
BREAKING_IN = 30


def facts_of(work: Work) -> dict[str, Any]:
    """Worked out, and as the caller stated them."""
    values, run = work.ledger.values, work.run
    facts = {
        "structure_kind": work.structure_id,
        "total_volume": values["total_volume"],
        "acid_ratio_forecast": float(run.acid_ratio[min(BREAKING_IN, work.asked.days - 1) :, 0].max()),
        "longest_feeding_gap": float(max([last - first + 1 for first, last in work.gaps], default=0)),
        **({"digester_temperature": float(run.temperature[:, 0].min())} if work.warmth.known else {}),
        **_steady_facts(work),
    }
    return all_facts(work.ledger.shelf.data, facts, values_by_id(work.asked.facts))


def _steady_facts(work: Work) -> dict[str, Any]:
    """What follows from the last plan; nothing where there is none."""
    if not work.changes:
        return {}
    names = ("hydraulic_retention_time", "organic_loading_rate", "slurry_total_solids", "carbon_to_nitrogen")
    more = ("total_ammonia_nitrogen", "free_ammonia")
    last = max(work.spans, key=lambda span: span.first)
    return {
        **feed_facts(work.steady_fed),
        **season_facts(work.steady_fed, work.warmth, work.ledger),
        **{name: work.ledger.values[name] for name in (*names, *more)},
        "feeding_interval": last.every,
        "dose_share": work.ledger.values["slurry_per_day"] * last.every / work.ledger.values["working_volume"],
    }
