"""Works out a batch rotation: the charge, its gas, the number of digesters and when each is recharged."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

from kilisho.farm import Ledger
from kilisho.faults import RefusedError
from kilisho.messages import say
from kilisho.questions import refusals
from kilisho.questions.batch_rotation.charge import Charge, charge_of
from kilisho.questions.batch_rotation.curves import Curves, curves_of
from kilisho.questions.batch_rotation.limits import MOST_DIGESTERS
from kilisho.questions.batch_rotation.rotation import Outcome, Plan, Yard, outcome_of
from kilisho.questions.climate import Warmth, warmth_of
from kilisho.questions.digester import take_digester
from kilisho.questions.gas_state import take_gas_state
from kilisho.ranges import Array
from kilisho.rulebook import Structure

BATCH = "batch"
# Options that are told on each side of the chosen number, and numbers told without a demand.
AROUND, WITHOUT_DEMAND = 2, 6


@dataclass(slots=True)
class Work:
    """Everything worked out for one batch rotation, before it is told. ``needed`` and ``chosen`` are None where nothing serves."""

    asked: Any
    ledger: Ledger
    structure_id: str
    structure: Structure
    charge: Charge
    warmth: Warmth
    curves: Curves
    yard: Yard
    needed: Plan | None
    needed_by_column: Array | None
    chosen: Outcome | None
    options: list[Outcome]


def work_out(asked: Any, ledger: Ledger) -> Work:
    """Everything of one batch rotation; raises :class:`RefusedError` for faults between members of the request."""
    _refuse(asked)
    structure_id, structure = take_digester(_digester_of(asked, ledger), ledger)
    ledger.practice("water_density")
    take_gas_state(asked.climate, ledger)
    warmth = warmth_of(asked.climate, ledger, structure_id, asked.digester.depth)
    charge = charge_of(asked, ledger)
    curves = curves_of(charge, warmth, asked.first_charge_on, ledger)
    yard = _yard_of(asked, ledger, curves)
    needed = yard.fewest()
    chosen = _chosen(asked, yard, needed)
    by_column = None if needed is None else yard.needed_by_column(_retentions(yard, needed))
    options = _options(asked, yard, chosen)
    return Work(asked, ledger, structure_id, structure, charge, warmth, curves, yard, needed, by_column, chosen, options)


def _refuse(asked: Any) -> None:
    faults = [
        *refusals.faults_of_digester(asked.digester),
        *refusals.faults_of_dilution(asked.dilution),
        *refusals.faults_of_months(asked.climate),
        *refusals.faults_of_shares(asked.feed, whole=True),
    ]
    if faults:
        raise RefusedError(faults)


def _digester_of(asked: Any, ledger: Ledger) -> Any:
    """The digester as stated, with the rulebook's first batch structure where none is named (its first of all where it has none)."""
    if asked.digester.structure is not None:
        return asked.digester
    structures = ledger.shelf.data.structures
    name = next((name for name, entry in structures.items() if entry.operation == BATCH), ledger.shelf.first_structure)
    ledger.choose("structure", name, say("assumed-structure"))
    return asked.digester.model_copy(update={"structure": name})


def _yard_of(asked: Any, ledger: Ledger, curves: Curves) -> Yard:
    if asked.turn_round is not None:
        ledger.state("turn_round", asked.turn_round)
    turn_round = math.ceil(ledger.practice("turn_round") - 1e-9)
    within = ledger.figure("figures", "gas_storage_of_daily_gas", "gas_storage_of_daily_gas")
    lay = curves.columns.laid
    retention = None if asked.retention is None else round(asked.retention)
    return Yard(curves, turn_round, asked.gas_demand, lay(ledger.uncertain("gas_storage_volume")), lay(within), retention)


def _retentions(yard: Yard, needed: Plan) -> list[int]:
    """Retentions at which samples are asked how many digesters they need: the stated one, or those that are told."""
    own = {needed.retention} if yard.stated_retention is not None else {needed.retention, int(yard.most_gas[0])}
    return sorted(own)


def _chosen(asked: Any, yard: Yard, needed: Plan | None) -> Outcome | None:
    """The farm's own number of digesters, else the number needed; one where no demand is stated. None where nothing serves."""
    if not yard.gives_gas:
        return None
    if asked.digesters is not None:
        return outcome_of(yard, yard.plan(asked.digesters))
    if yard.demand is None:
        return outcome_of(yard, yard.plan(1))
    return None if needed is None else outcome_of(yard, needed)


def _options(asked: Any, yard: Yard, chosen: Outcome | None) -> list[Outcome]:
    """Rotations with a few digesters fewer and more; the largest ones where none keeps the demand met."""
    if not yard.gives_gas:
        return []
    if yard.demand is None and asked.digesters is None:
        counts = range(1, WITHOUT_DEMAND + 1)
    else:
        middle = MOST_DIGESTERS if chosen is None else chosen.plan.digesters
        counts = range(max(1, middle - AROUND), min(MOST_DIGESTERS, middle + AROUND) + 1)
    return [chosen if chosen and chosen.plan.digesters == n else outcome_of(yard, yard.plan(n)) for n in counts]
