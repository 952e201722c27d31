"""Maintenance feed: what goes in at each feeding, what it does to the digester, and how to keep it up for decades."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Any

from pydantic import Field

from kilisho.farm import GRAPH, Ledger, Shelf
from kilisho.faults import RefusedError
from kilisho.packs import Rulebook
from kilisho.questions import fields as f
from kilisho.questions import maintenance_feed_plan as plan
from kilisho.questions import maintenance_feed_told as told
from kilisho.questions import refusals
from kilisho.questions.answers import Answer
from kilisho.questions.asking import Question
from kilisho.questions.climate import Warmth, warmth_of
from kilisho.questions.digester import digester_contradictions, take_digester
from kilisho.questions.feeding import (
    Fed,
    Supply,
    feed_facts,
    gas_of,
    highest_gas,
    supply_of,
    totals,
    trace_of,
    water_to_feed,
)
from kilisho.questions.findings import Inspector, contradiction
from kilisho.questions.requests import Ask, Climate, Containers, Date, Digester, Dilution, Enquiry, Feed, Herd
from kilisho.questions.stated_facts import values_by_id, with_facts
from kilisho.questions.urine import take_urine
from kilisho.rulebook import Structure


class Urine(Ask):
    """Urine gathered in the stable, to stand in for part of the water."""

    collected: Annotated[bool, f.YES_NO] = Field(True, description="Whether the herd's urine is gathered.")
    volume: Annotated[float | None, f.DAILY_WATER] = Field(
        None, description="Gathered per day, as measured; taken from the herd when absent."
    )


class Feeding(Ask):
    """When the digester is fed."""

    every: Annotated[float, f.INTERVAL] = Field(1.0, description="Time between feedings: half a day for twice daily, up to 60 d.")
    starts_on: Annotated[Date | None, f.DAY] = Field(None, description="Day of the first feeding.")
    missed: Annotated[int, f.whole_number(0, 60)] = Field(0, description="Feedings that were just missed.")


class MaintenanceFeedRequest(Enquiry):
    """A working digester and what is fed to it: from the herd, as stated, or what the digester needs."""

    digester: Digester
    herd: Herd = Field([], description="Animals of the farm.")
    feed: Feed = Field([], description="Substrates; those of the herd when empty.")
    dilution: Dilution | None = None
    urine: Urine | None = None
    feeding: Feeding = Feeding()
    containers: Containers = Field([], description="What material is carried in; a bucket is assumed when empty.")
    climate: Climate | None = None
    water_available: Annotated[float | None, f.DAILY_WATER] = Field(None, description="Water that can be had per day.")
    slurry_ph: Annotated[float | None, f.SLURRY_PH] = Field(None, description="pH of the slurry, as measured.")


EXAMPLE: dict[str, Any] = {
    "name": "Highfold (invented)",
    "digester": {"structure": "fixed_dome", "total_volume": {"value": 12, "unit": "m3"}},
    "herd": [{"animal": "dairy_cow", "count": 8, "housing": "stall"}],
    "feed": [{"substrate": "cattle_dung"}],
    "dilution": {"water_to_feed_by_volume": 1},
    "urine": {"collected": True},
    "feeding": {"every": {"value": 1, "unit": "d"}, "starts_on": "2027-03-01"},
    "containers": [{"name": "bucket", "volume": {"value": 20, "unit": "L"}}],
    "climate": {"mean_air_temperature": {"value": 22, "unit": "Cel"}},
}
FLOWS = ("liquid_per_day", "slurry_per_day", "hydraulic_retention_time", "organic_loading_rate")
BALANCES = (
    "water_per_day",
    "slurry_mass_per_day",
    "slurry_total_solids",
    "carbon_to_nitrogen",
    "total_ammonia_nitrogen",
    "free_ammonia",
    "methane_per_day",
    "biogas_mass_per_day",
    "digestate_mass_per_day",
    "digestate_per_day",
    "sludge_per_day",
)
CONDITIONS = ("hydraulic_retention_time", "digester_temperature", "tanks_in_series")


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
    low: dict[str, float]
    high: dict[str, float]


def question(rulebook: Rulebook) -> Question:
    """The question bound to a rulebook."""
    shelf, inspector = Shelf(rulebook.data), Inspector(rulebook.data, "maintenance_feed")
    request = with_facts("MaintenanceFeedQuestion", MaintenanceFeedRequest, rulebook.data.facts)

    def answer(asked: Any, explain: bool) -> Answer:
        return {**_answer(asked, Ledger(shelf), inspector, explain), "rulebook": rulebook.identity}

    return Question(
        "maintenance-feed",
        "Plan the maintenance feed",
        "Mass, water, urine and whole containers per feeding at any interval; retention, loading, gas and its range; storing between "
        "feedings, catching up, grit and desludging; digestate out; the schedule.",
        request,
        told.MaintenanceFeedAnswer,
        answer,
        EXAMPLE,
        shelf.ids,
    )


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    work = _work_out(asked, ledger)
    facts = _facts(work)
    denied = [contradiction(c, GRAPH.quantities[c.name].kind) for c in digester_contradictions(work.structure, ledger)]
    answer: Answer = {
        **({"name": asked.name} if asked.name else {}),
        **plan.per_feeding(work),
        **plan.process(work),
        **plan.upkeep(work),
        "schedule": plan.schedule(work),
        "assumptions": ledger.assumptions,
        "findings": denied + inspector.shown(inspector.inspect(facts)),
        "cautions": inspector.cautions(work.structure.cautions, *(one.entry.cautions for one in work.fed)),
    }
    if explain:
        answer["derivation"] = [*trace_of(work.fed, ledger), *ledger.trace()]
    return answer


def _work_out(asked: Any, ledger: Ledger) -> Work:
    _refuse(asked)
    structure_id, structure = take_digester(asked.digester, ledger)
    ledger.practice("water_density")
    if asked.slurry_ph is not None:
        ledger.state("slurry_ph", asked.slurry_ph)
    ledger.practice("slurry_ph", "unknown_slurry_ph")
    for figure in ("grit_held_in_mixing_tank", "sludge_density", "sludge_allowance"):
        ledger.practice(figure)
    supply = supply_of(asked.herd, ledger)
    warmth = warmth_of(asked.climate, ledger)
    fed = plan.substrates(asked, ledger, supply)
    water_to_feed(fed, asked.dilution, ledger)
    plan.fill_up(fed, ledger, warmth)
    ledger.put(**totals(fed))
    ledger.solve(*FLOWS)
    take_urine(asked.urine, supply, ledger)
    low, high = _gas(fed, ledger)
    if ledger.solve(*BALANCES)["sludge_per_day"]:
        ledger.solve("desludging_interval")
    return Work(asked, ledger, structure_id, structure, supply, fed, warmth, low, high)


def _gas(fed: list[Fed], ledger: Ledger) -> tuple[dict[str, float], dict[str, float]]:
    """The day's gas at typical properties into the ledger, and at all low and all high ones."""
    conditions = {name: ledger.values[name] for name in CONDITIONS}
    ledger.put(**gas_of(fed, conditions))
    return gas_of(fed, conditions, "low"), highest_gas(fed, conditions, ledger)


def _refuse(asked: Any) -> None:
    faults = [
        *refusals.faults_of_digester(asked.digester),
        *refusals.faults_of_dilution(asked.dilution),
        *refusals.faults_of_shares(asked.feed),
        *refusals.faults_of_months(asked.climate),
    ]
    if faults:
        raise RefusedError(faults)


def _facts(work: Work) -> dict[str, Any]:
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
        **plan.supply_fact(work),
        "fed_share_of_design": work.ledger.shelf.curve("design_retention", work.warmth.mean)[1] / values["hydraulic_retention_time"],
        **({"digester_temperature": work.warmth.mean} if work.warmth.known else {}),
        **({"slurry_ph": values["slurry_ph"]} if work.asked.slurry_ph is not None else {}),
    }
    if work.asked.water_available is not None and values["water_per_day"] > 0:
        facts["water_sufficiency"] = work.asked.water_available / values["water_per_day"]
    carried = [one.volume for one in work.asked.containers if one.by_hand]
    if carried:
        facts["load_carried"] = max(carried) * max(values["feed_mass_per_day"] / values["feed_volume_per_day"], values["water_density"])
    return {**facts, **values_by_id(work.asked.facts)}
