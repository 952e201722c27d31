"""Works out a maintenance feed: flows, balances, gas and facts, before any of it is told."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from kilisho.farm import Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.messages import say
from kilisho.questions import refusals
from kilisho.questions.acidity import state_ph, take_slurry_ph
from kilisho.questions.carrying import lifted_load
from kilisho.questions.climate import Warmth, warmth_of
from kilisho.questions.digester import take_digester
from kilisho.questions.feeding import Fed, feed_facts, menu_of, scale_to, take_totals, water_to_feed
from kilisho.questions.gas import take_gas
from kilisho.questions.gas_state import take_gas_state
from kilisho.questions.herd import Supply, supply_of
from kilisho.questions.maintenance_feed.urine import take_urine
from kilisho.questions.seasons import season_facts
from kilisho.questions.stated_facts import all_facts, values_by_id
from kilisho.rulebook import Structure

FLOWS = ("liquid_per_day", "slurry_per_day", "hydraulic_retention_time", "organic_loading_rate")
BALANCES = (
    "water_per_day",
    "slurry_mass_per_day",
    "slurry_total_solids",
    "carbon_to_nitrogen",
    "total_ammonia_nitrogen",
    "free_ammonia",
    "methane_per_day",
    "biogas_per_day_normal",
    "biogas_mass_per_day",
    "digestate_mass_per_day",
    "digestate_per_day",
    "sludge_per_day",
)


@dataclass(slots=True)
class Work:
    """Everything worked out for one maintenance feed, before it is told."""

    asked: Any
    ledger: Ledger
    structure_id: str
    structure: Structure
    supply: Supply
    fed: list[Fed]
    warmth: Warmth


def work_out(asked: Any, ledger: Ledger) -> Work:
    """Everything of one maintenance feed; raises :class:`RefusedError` for faults between members of the request."""
    _refuse(asked)
    structure_id, structure = take_digester(asked.digester, ledger)
    ledger.practice("water_density")
    state_ph(asked.slurry_ph, asked.facts, ledger)
    for figure in ("grit_held_in_mixing_tank", "sludge_density", "sludge_allowance"):
        ledger.practice(figure)
    supply = supply_of(asked.herd, ledger, with_urine=asked.urine is not None and asked.urine.collected and asked.urine.volume is None)
    take_gas_state(asked.climate, ledger)
    warmth = warmth_of(asked.climate, ledger, structure_id, asked.digester.depth)
    menu = menu_of(asked.feed, supply, ledger)
    fed = menu.fed
    water_to_feed(fed, asked.dilution, ledger)
    if not menu.known:
        ledger.choose("feed_mass_per_day", "design_retention", say("assumed-feed"))
        _feed_what_retention_asks(fed, ledger, warmth)
    take_totals(fed, ledger)
    ledger.solve(*FLOWS)
    take_urine(asked.urine, supply, ledger)
    take_gas(fed, ledger)
    take_slurry_ph(fed, ledger)
    balances = ledger.solve(*BALANCES)
    if balances["digestate_mass_per_day"] <= 0:
        raise RefusedError([Fault(("feed",), "gas_exceeds_feed", say("fault-gas_exceeds_feed"))])
    if balances["sludge_per_day"]:
        ledger.solve("desludging_interval")
    return Work(asked, ledger, structure_id, structure, supply, fed, warmth)


def _feed_what_retention_asks(fed: list[Fed], ledger: Ledger, warmth: Warmth) -> None:
    retention = ledger.curve("design_retention", "design_retention_time", warmth.mean)[1]
    scale_to(fed, ledger.uncertain("working_volume").times(1 / retention), ledger)


def _refuse(asked: Any) -> None:
    faults = [
        *refusals.faults_of_digester(asked.digester),
        *refusals.faults_of_dilution(asked.dilution),
        *refusals.faults_of_shares(asked.feed),
        *refusals.faults_of_months(asked.climate),
    ]
    if faults:
        raise RefusedError(faults)


def facts_of(work: Work) -> dict[str, Any]:
    """The facts that checks ask of a maintenance feed: worked out, and as the caller stated them."""
    values = work.ledger.values
    facts = {
        **feed_facts(work.fed),
        "structure_kind": work.structure_id,
        "total_volume": values["total_volume"],
        **{
            name: values[name] for name in ("slurry_total_solids", "hydraulic_retention_time", "organic_loading_rate", "carbon_to_nitrogen")
        },
        **{name: values[name] for name in ("total_ammonia_nitrogen", "free_ammonia")},
        "feeding_interval": work.asked.feeding.every,
        "dose_share": values["slurry_per_day"] * work.asked.feeding.every / values["working_volume"],
        **({"heap_age": work.asked.feeding.every} if work.asked.feeding.every > 1 else {}),
        **_supply_fact(work),
        "fed_share_of_design": work.ledger.shelf.curve("design_retention", work.warmth.mean)[1] / values["hydraulic_retention_time"],
        **({"digester_temperature": work.warmth.mean} if work.warmth.known else {}),
        **season_facts(work.fed, work.warmth, work.ledger),
        **lifted_load(work.asked.containers, max(values["feed_mass_per_day"] / values["feed_volume_per_day"], values["water_density"])),
        **({"slurry_ph": values["slurry_ph"]} if work.asked.slurry_ph is not None else {}),
    }
    if work.asked.water_available is not None and values["water_per_day"] > 0:
        facts["water_sufficiency"] = work.asked.water_available / values["water_per_day"]
    return all_facts(work.ledger.shelf.data, facts, values_by_id(work.asked.facts))


def _supply_fact(work: Work) -> dict[str, float]:
    """How far the herd covers what is stated to be fed, for the substrate that is covered worst."""
    supply = work.supply.by_substrate
    if work.asked.herd and not any(supply.get(one.id) for one in work.fed):
        return {"supply_sufficiency": 0.0}
    covered = [supply[one.id].value / one.mass for one in work.fed if one.id in supply and one.mass > 0]
    return {"supply_sufficiency": min(covered)} if covered else {}
