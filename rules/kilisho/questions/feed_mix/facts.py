"""The facts of a mix that checks read."""

from __future__ import annotations

from typing import Any

from kilisho.formulas.feed_mix import WHOLE
from kilisho.questions.feed_mix.work import Work
from kilisho.questions.feeding import feed_facts
from kilisho.questions.seasons import season_facts
from kilisho.questions.stated_facts import all_facts, values_by_id

READ = ("slurry_total_solids", "hydraulic_retention_time", "organic_loading_rate", "carbon_to_nitrogen", "total_ammonia_nitrogen")
ROUNDING = 1e-5


def facts_of(work: Work) -> dict[str, Any]:
    """What is worked out and what the caller stated; where there is no recipe nothing is known of it."""
    values = work.ledger.values
    facts = {
        "structure_kind": work.structure_id,
        "total_volume": values["total_volume"],
        **({"digester_temperature": work.warmth.mean} if work.warmth.known else {}),
        **({"slurry_ph": values["slurry_ph"]} if work.asked.slurry_ph is not None else {}),
        **(_of_recipe(work) if work.feasible else {}),
    }
    return all_facts(work.ledger.shelf.data, facts, values_by_id(work.asked.facts))


def _of_recipe(work: Work) -> dict[str, Any]:
    values, usual = work.ledger.values, work.ledger.shelf.curve("design_retention", work.warmth.mean)[1]
    return {
        **feed_facts(work.fed),
        **{name: _on_limit(values[name], work) for name in READ},
        "free_ammonia": values["free_ammonia"],
        "fed_share_of_design": usual / values["hydraulic_retention_time"],
        **season_facts(work.fed, work.warmth, work.ledger),
        **_water(work),
    }


def _on_limit(value: float, work: Work) -> float:
    """What lies within the solver's rounding of a limit lies on it."""
    bounds = [bound for (_, place), bound in work.mix.limits.items() if place == WHOLE]
    return next((bound for bound in bounds if abs(value - bound) <= ROUNDING * bound), value)


def _water(work: Work) -> dict[str, float]:
    there, used = work.asked.water_available, float(work.recipe[-1])
    return {"water_sufficiency": there / used} if there is not None and used > 0.0 else {}
