"""Sizing: how large a digester the feed keeps going or the gas demand needs, and which of feed, demand and water limits it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Any

from pydantic import Field

from kilisho.farm import Ledger, Shelf
from kilisho.faults import Fault, RefusedError
from kilisho.packs import Rulebook
from kilisho.questions import fields as f
from kilisho.questions import refusals
from kilisho.questions import sizing_plan as plan
from kilisho.questions.answers import Answer
from kilisho.questions.asking import Question
from kilisho.questions.climate import Warmth, warmth_of
from kilisho.questions.digester import structure_of
from kilisho.questions.feeding import Fed, Supply, feed_facts, supply_of, trace_of, water_to_feed
from kilisho.questions.findings import Inspector
from kilisho.questions.maintenance_feed_plan import substrates
from kilisho.questions.requests import Ask, Climate, Dilution, Enquiry, Feed, Herd
from kilisho.questions.stated_facts import values_by_id, with_facts
from kilisho.rulebook import Structure


class ApplianceUse(Ask):
    """Appliances of one kind."""

    appliance: Annotated[str, f.APPLIANCE] = Field(description="Id of an appliance of the rulebook.")
    count: Annotated[int, f.whole_number(1, 1000)] = Field(1, description="How many.")
    hours_per_day: Annotated[float | None, f.HOURS_PER_DAY] = Field(
        None, description="Hours each burns a day; the usual hours when absent."
    )


class SizingRequest(Enquiry):
    """What there is to feed, what gas is wanted, or both."""

    structure: Annotated[str | None, f.STRUCTURE] = Field(None, description="Kind of digester; a fixed dome is assumed when absent.")
    herd: Herd = Field([], description="Animals of the farm.")
    feed: Feed = Field([], description="Substrates; those of the herd when empty.")
    dilution: Dilution | None = None
    gas_demand: Annotated[float | None, f.DAILY_GAS] = Field(None, description="Biogas wanted per day, as used.")
    appliances: list[ApplianceUse] = Field([], max_length=20, description="Demand by appliances, added to the demand.")
    people_cooked_for: Annotated[int | None, f.whole_number(1, 10_000)] = Field(
        None, description="Demand for cooking; not together with appliances or gas_demand."
    )
    climate: Climate | None = None
    water_available: Annotated[float | None, f.DAILY_WATER] = Field(None, description="Water that can be had per day.")
    hydraulic_retention_time: Annotated[float | None, f.InUnit("time", "d", 5, 365)] = Field(
        None, description="Retention to design for; from the coldest month's temperature when absent."
    )


EXAMPLE: dict[str, Any] = {
    "name": "Highfold (invented)",
    "structure": "fixed_dome",
    "herd": [{"animal": "dairy_cow", "count": 8, "housing": "stall"}],
    "dilution": {"water_to_feed_by_volume": 1},
    "gas_demand": {"value": 2.5, "unit": "m3/d"},
    "climate": {"mean_air_temperature": {"value": 22, "unit": "Cel"}, "yearly_swing": {"value": 4, "unit": "K"}},
    "water_available": {"value": 150, "unit": "L/d"},
}


@dataclass(slots=True)
class Work:
    """Everything worked out for one sizing, before it is told."""

    asked: Any
    ledger: Ledger
    structure_id: str
    structure: Structure
    supply: Supply
    fed: list[Fed]
    warmth: Warmth
    retention: tuple[float, float, float]
    demand: float | None


def question(rulebook: Rulebook) -> Question:
    """The question bound to a rulebook."""
    shelf, inspector = Shelf(rulebook.data), Inspector(rulebook.data, "sizing")
    request = with_facts("SizingQuestion", SizingRequest, rulebook.data.facts)

    def answer(asked: Any, explain: bool) -> Answer:
        return {**_answer(asked, Ledger(shelf), inspector, explain), "rulebook": rulebook.identity}

    return Question(
        "sizing",
        "Size a digester",
        "Working, total and gas storage volume from the feed, the gas demand or both, for the coldest month; which of them limits; the "
        "next buildable size and its dimensions.",
        request,
        plan.SizingAnswer,
        answer,
        EXAMPLE,
        shelf.ids,
    )


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    work = _work_out(asked, ledger)
    sized = plan.size(work)
    facts = {
        **feed_facts(work.fed),
        "structure_kind": work.structure_id,
        **{name: ledger.values[name] for name in ("hydraulic_retention_time", "organic_loading_rate", "slurry_total_solids")},
        **({"water_sufficiency": sized.water_sufficiency} if sized.water_sufficiency is not None else {}),
        **({"digester_temperature": work.warmth.coldest} if work.warmth.known else {}),
        **values_by_id(asked.facts),
    }
    answer: Answer = {
        **({"name": asked.name} if asked.name else {}),
        **plan.told(work, sized),
        "assumptions": ledger.assumptions,
        "findings": inspector.shown(inspector.inspect(facts)),
        "cautions": inspector.cautions(work.structure.cautions, *(one.entry.cautions for one in work.fed)),
    }
    if explain:
        answer["derivation"] = [*trace_of(work.fed, ledger), *ledger.trace()]
    return answer


def _work_out(asked: Any, ledger: Ledger) -> Work:
    _refuse(asked)
    structure_id, structure = structure_of(asked.structure, ledger)
    ledger.practice("water_density")
    ledger.put(tanks_in_series=float(structure.tanks_in_series))
    ledger.assume("fill_share", "structures", structure_id, "fill_share")
    ledger.assume("gas_storage_share", "structures", structure_id, "gas_storage_share")
    supply = supply_of(asked.herd, ledger)
    warmth = warmth_of(asked.climate, ledger)
    ledger.put(digester_temperature=warmth.coldest)
    fed = substrates(asked, ledger, supply)
    water_to_feed([_positive(one) for one in fed], asked.dilution, ledger)
    return Work(
        asked, ledger, structure_id, structure, supply, fed, warmth, _retention(asked, ledger, warmth, fed), plan.demand(asked, ledger)
    )


def _positive(one: Fed) -> Fed:
    return Fed(one.id, one.entry, abs(one.mass), one.values, one.low, one.high)


def _retention(asked: Any, ledger: Ledger, warmth: Warmth, fed: list[Fed]) -> tuple[float, float, float]:
    """Low, typical and high retention for the coldest month, longer or shorter by what the substrates ask."""
    if asked.hydraulic_retention_time is not None:
        wanted = asked.hydraulic_retention_time
        return wanted, wanted, wanted
    low, usual, high = ledger.shelf.curve("design_retention", warmth.coldest)
    ledger.assumptions.append(ledger.shelf.assumption("curves", "design_retention", "design_retention_time"))
    solids = [abs(one.mass) * one.values["total_solids"] for one in fed]
    factor = sum(s * one.entry.retention_factor.typical for s, one in zip(solids, fed, strict=True)) / sum(solids)
    return low * factor, usual * factor, high * factor


def _refuse(asked: Any) -> None:
    faults = [
        *refusals.faults_of_dilution(asked.dilution),
        *refusals.faults_of_shares(asked.feed),
        *refusals.faults_of_months(asked.climate),
    ]
    ways = sum((asked.gas_demand is not None, bool(asked.appliances), asked.people_cooked_for is not None))
    if ways > 1:
        faults.append(Fault((), "demand_twice", "state the demand once: gas_demand, appliances or people_cooked_for"))
    if not ways and not _anything_fed(asked):
        faults.append(Fault((), "nothing_to_size_for", "state a herd with animals, a feed with masses, or a gas demand"))
    if faults:
        raise RefusedError(faults)


def _anything_fed(asked: Any) -> bool:
    return any(item.count > 0 for item in asked.herd) or any(item.mass is not None for item in asked.feed)
