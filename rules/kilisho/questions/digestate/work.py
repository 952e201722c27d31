"""Works out the use of a farm's digestate: balances, nutrients, store, land and facts, before any of it is told."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from kilisho.farm import Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.messages import say
from kilisho.questions import refusals
from kilisho.questions.climate import warmth_of
from kilisho.questions.digestate.balance import URINE, take_feed, take_nutrients, take_outflow, take_retention
from kilisho.questions.digestate.land import Land, land_facts, share_out
from kilisho.questions.digestate.storing import dug_depth, solve_store, store_facts, take_store
from kilisho.questions.digester import structure_of, take_digester
from kilisho.questions.feeding import Fed, feed_facts
from kilisho.questions.findings import Inspector
from kilisho.questions.gas_state import take_gas_state
from kilisho.questions.stated_facts import all_facts, values_by_id, worst_of
from kilisho.rulebook import Structure

FERTILISERS = (
    "nitrogen_in_urea",
    "nitrogen_in_diammonium_phosphate",
    "phosphate_in_diammonium_phosphate",
    "potash_in_potassium_chloride",
)


@dataclass(slots=True)
class Work:
    """Everything worked out for one farm's digestate, before it is told."""

    asked: Any
    ledger: Ledger
    structure_id: str
    structure: Structure
    fed: list[Fed]
    unknown: dict[str, list[str]]
    store: str | None
    digs: bool
    spreading: str
    land: Land
    facts: dict[str, Any]


def work_out(asked: Any, ledger: Ledger, inspector: Inspector) -> Work:
    """Everything of one farm's digestate; raises :class:`RefusedError` for faults between members of the request."""
    _refuse(asked)
    ledger.practice("water_density")
    structure_id, structure = _take_structure(asked.digester, ledger)
    take_gas_state(asked.climate, ledger)
    warmth = warmth_of(asked.climate, ledger, structure_id, asked.digester.depth if asked.digester is not None else None)
    fed = take_feed(asked, ledger)
    take_retention(asked, warmth, ledger)
    take_outflow(fed, ledger)
    store, spreading = take_store(asked, ledger), _take_spreading(asked, ledger)
    unknown = take_nutrients(asked, fed, ledger)
    solve_store(asked, ledger)
    _take_fertilisers(unknown, ledger)
    if asked.nitrogen_limit is not None:
        ledger.state("nitrogen_limit", asked.nitrogen_limit)
    data, stated = ledger.shelf.data, values_by_id(asked.facts)
    excreta = {
        "human_excreta_fed": all_facts(data, {"human_excreta_fed": feed_facts(fed)["human_excreta_fed"]}, stated)["human_excreta_fed"]
    }
    land = share_out(asked, ledger, inspector, excreta)
    temperature = {"digester_temperature": warmth.mean} if warmth.known else {}
    retention = {"hydraulic_retention_time": ledger.values["hydraulic_retention_time"]}
    kind = {"structure_kind": structure_id} if asked.digester is not None else {}
    facts = {**excreta, **temperature, **retention, **kind, **store_facts(ledger), **land_facts(land)}
    dug = dug_depth(store, ledger)
    facts = all_facts(data, facts, worst_of(stated, **dug))
    return Work(asked, ledger, structure_id, structure, fed, unknown, store, bool(dug), spreading, land, facts)


def _take_structure(digester: Any, ledger: Ledger) -> tuple[str, Structure]:
    if digester is not None:
        return take_digester(digester, ledger)
    name, structure = structure_of(None, ledger)
    ledger.put(tanks_in_series=float(structure.tanks_in_series))
    return name, structure


def _take_spreading(asked: Any, ledger: Ledger) -> str:
    first = next(iter(ledger.shelf.data.practice.spreadings))
    name = asked.spreading or ledger.choose("spreading", first, say("digestate-spreading-unknown"))
    ledger.assume("ammonia_loss_in_spreading", "spreadings", name, "ammonia_loss")
    return str(name)


def _take_fertilisers(unknown: dict[str, list[str]], ledger: Ledger) -> None:
    """Put the bought fertilisers that the digestate stands for into the ledger, those of known nutrients."""
    for name in FERTILISERS:
        ledger.practice(name)
    if unknown["phosphorus"]:
        ledger.put(diammonium_phosphate_equivalent=0.0)
    else:
        ledger.solve("diammonium_phosphate_equivalent")
    ledger.solve("urea_equivalent")
    if not unknown["potassium"]:
        ledger.solve("potassium_chloride_equivalent")


def _refuse(asked: Any) -> None:
    faults = [
        *(refusals.faults_of_digester(asked.digester) if asked.digester is not None else []),
        *refusals.faults_of_dilution(asked.dilution),
        *refusals.faults_of_shares(asked.feed),
        *refusals.faults_of_months(asked.climate),
    ]
    if asked.digester is not None and asked.hydraulic_retention_time is not None:
        detail = say("fault-retention_twice")
        faults.append(Fault(("hydraulic_retention_time",), "stated_twice", detail))
    if asked.water is not None and asked.dilution is not None:
        faults.append(Fault(("water",), "water_and_dilution", say("fault-water_and_dilution")))
    if asked.urine and any(item.substrate == URINE for item in asked.feed):
        faults.append(Fault(("urine",), "substrate_twice", say("fault-urine_twice")))
    if faults:
        raise RefusedError(faults)
