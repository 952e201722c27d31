"""The facts that checks ask of a batch rotation."""

from __future__ import annotations

from typing import Any

import numpy as np

from kilisho.questions.batch_rotation.work import Work
from kilisho.questions.digestion import samples_of
from kilisho.questions.feeding import feed_facts
from kilisho.questions.seasons import temperature_facts
from kilisho.questions.stated_facts import all_facts, values_by_id


def facts_of(work: Work) -> dict[str, Any]:
    """Worked out, and as the caller stated them."""
    values = work.ledger.values
    facts = {
        **feed_facts(work.charge.fed),
        **temperature_facts(work.warmth),
        "structure_kind": work.structure_id,
        "total_volume": values["total_volume"],
        "slurry_total_solids": values["slurry_total_solids"],
        "starter_share": _first_starter_share(work),
        "carbon_to_nitrogen": _carbon_to_nitrogen(work),
        "charge_start_reliability": start_reliability(work),
        **({"digester_temperature": work.warmth.mean} if work.warmth.known else {}),
        **({} if work.yard.demand is None else {"rotation_sufficiency": _sufficiency(work)}),
    }
    return all_facts(work.ledger.shelf.data, facts, values_by_id(work.asked.facts))


def start_reliability(work: Work) -> float:
    """Share of the samples in which every charge, the first one among them, comes to gas that burns [1]."""
    courses = [*work.curves.through_year, work.curves.first]
    return float(np.logical_and.reduce([np.isfinite(samples_of(course.burnable)) for course in courses]).mean())


def _sufficiency(work: Work) -> float:
    """Even supply of the rotation told, or of the largest one where none serves, over the demand [1]."""
    outcome = work.chosen or (work.options[-1] if work.options else None)
    return float(outcome.even[0] / work.yard.demand) if outcome is not None and work.yard.demand else 0.0


def _first_starter_share(work: Work) -> float:
    """Starter in the slurry of the first charge [1]: the charge that has least of it to start with."""
    charge = work.charge
    shares = [s.value / (s.value + f.value) for s, f in ((charge.starter, charge.fresh), (charge.first_starter, charge.first_fresh))]
    return float(min(shares))


def _carbon_to_nitrogen(work: Work) -> float:
    """Carbon over nitrogen of the charge, from the balances of both."""
    solids = [(one.mass * one.values["total_solids"] * one.values["nitrogen_share"], one) for one in work.charge.fed]
    return float(sum(n * one.values["carbon_to_nitrogen_of_feed"] for n, one in solids) / sum(n for n, _ in solids))
