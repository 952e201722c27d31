"""Works out what a size follows from: feed, temperature, retention and demand."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from kilisho.farm import Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.messages import say
from kilisho.questions import refusals
from kilisho.questions.appliances import demand_of, faults_of_appliances
from kilisho.questions.climate import Warmth, warmth_of
from kilisho.questions.digester import structure_of
from kilisho.questions.feeding import Fed, menu_of, water_to_feed
from kilisho.questions.gas_state import at_the_place, take_gas_state
from kilisho.questions.herd import supply_of
from kilisho.rulebook import Structure


@dataclass(slots=True)
class Work:
    """Everything worked out for one sizing, before it is told."""

    asked: Any
    ledger: Ledger
    structure_id: str
    structure: Structure
    fed: list[Fed]
    supplied: bool
    warmth: Warmth
    retention: tuple[float, float, float]
    demand: float | None


def work_out(asked: Any, ledger: Ledger) -> Work:
    """Everything that a size follows from; raises :class:`RefusedError` for faults between members of the request."""
    _refuse(asked)
    structure_id, structure = structure_of(asked.structure, ledger)
    ledger.practice("water_density")
    ledger.put(tanks_in_series=float(structure.tanks_in_series))
    ledger.assume("fill_share", "structures", structure_id, "fill_share")
    ledger.assume("gas_storage_share", "structures", structure_id, "gas_storage_share")
    supply = supply_of(asked.herd, ledger)
    take_gas_state(asked.climate, ledger)
    warmth = warmth_of(asked.climate, ledger, structure_id)
    ledger.put(digester_temperature=warmth.coldest)
    ledger.sample(digester_temperature=warmth.uncertain_coldest.samples)
    menu = menu_of(asked.feed, supply, ledger)
    water_to_feed(menu.fed, asked.dilution, ledger)
    retention = _retention(asked, ledger, warmth, menu.fed)
    return Work(asked, ledger, structure_id, structure, menu.fed, menu.known, warmth, retention, demand_of_day(asked, ledger))


def _retention(asked: Any, ledger: Ledger, warmth: Warmth, fed: list[Fed]) -> tuple[float, float, float]:
    """Low, typical and high retention for the coldest month, longer or shorter by what the substrates ask."""
    if asked.hydraulic_retention_time is not None:
        wanted = asked.hydraulic_retention_time
        return wanted, wanted, wanted
    low, usual, high = ledger.curve("design_retention", "design_retention_time", warmth.coldest)
    solids = [one.mass * one.values["total_solids"] for one in fed]
    factor = sum(s * one.entry.retention_factor.typical for s, one in zip(solids, fed, strict=True)) / sum(solids)
    return low * factor, usual * factor, high * factor


def _refuse(asked: Any) -> None:
    faults = [
        *refusals.faults_of_dilution(asked.dilution),
        *refusals.faults_of_shares(asked.feed),
        *refusals.faults_of_months(asked.climate),
        *faults_of_appliances(asked.appliances),
    ]
    ways = sum((asked.gas_demand is not None, bool(asked.appliances), asked.people_cooked_for is not None))
    if ways > 1:
        faults.append(Fault((), "demand_twice", say("fault-demand_twice")))
    if not ways and not _anything_fed(asked):
        faults.append(Fault((), "nothing_to_size_for", say("fault-nothing_to_size_for")))
    if faults:
        raise RefusedError(faults)


def _anything_fed(asked: Any) -> bool:
    return any(item.count > 0 for item in asked.herd) or any(item.mass is not None for item in asked.feed)


def demand_of_day(asked: Any, ledger: Ledger) -> float | None:
    """Gas wanted per day [m3/d], in whichever way it was stated."""
    if asked.gas_demand is not None:
        return float(asked.gas_demand)
    if asked.people_cooked_for is not None:
        return float(asked.people_cooked_for * ledger.practice("gas_per_person") * at_the_place(ledger))
    return demand_of(asked.appliances, ledger) if asked.appliances else None
