"""First charge: how much dung and water fill a new digester, from when to gather it, what is short, and how it is started."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Annotated, Any

from pydantic import Field

from kilisho.checks import Finding as CheckFinding
from kilisho.farm import GRAPH, Ledger, Shelf
from kilisho.faults import Fault, RefusedError
from kilisho.formulas.labour import carrying_hours, whole_containers
from kilisho.formulas.stockpile import LONGEST_ACCOUNT
from kilisho.packs import Rulebook
from kilisho.questions import fields as f
from kilisho.questions import first_charge_plan as plan
from kilisho.questions import first_charge_told as told
from kilisho.questions import refusals
from kilisho.questions.answers import Answer, in_cubic_metres, in_kilograms, in_percent
from kilisho.questions.asking import Question
from kilisho.questions.climate import Warmth, warmth_of
from kilisho.questions.digester import digester_contradictions, take_digester
from kilisho.questions.feeding import Fed, Supply, feed_facts, resolve, supply_of, water_to_feed
from kilisho.questions.findings import Inspector, contradiction
from kilisho.questions.heaps import Pile, cover_of, pile_up, purchases_for
from kilisho.questions.requests import Ask, Charge, Climate, Containers, Date, Digester, Dilution, Enquiry, Herd, Labour, Purchases
from kilisho.questions.stated_facts import values_by_id, with_facts
from kilisho.rulebook import Structure


class Stockpile(Ask):
    """The heap that is gathered for the first charge."""

    starts_on: Annotated[Date | None, f.DAY] = Field(None, description="First day of collection.")
    cover: Annotated[str | None, f.COVER] = Field(None, description="How it is kept; an open heap is assumed when absent.")
    on_hand: Annotated[float, f.STORED_MASS] = Field(0.0, description="Fresh mass of the first substrate that lies there already.")


class FirstChargeRequest(Enquiry):
    """A new digester, what will be fed, and whatever is known of herd, dates, help and climate."""

    digester: Digester
    feed: Charge = Field(description="Substrates of the first charge; the first one is the main one.")
    dilution: Dilution | None = None
    first_fill_share: Annotated[float | None, f.SOLIDS] = Field(
        None, description="Slurry of the first charge as share of the total volume."
    )
    starter_slurry: Annotated[float, f.STORED_MASS] = Field(0.0, description="Digested slurry from a working digester that can be added.")
    herd: Herd = Field([], description="Animals of the farm.")
    stockpile: Stockpile = Stockpile()
    digester_ready_on: Annotated[Date | None, f.DAY] = Field(None, description="Day on which the digester may be filled.")
    purchases: Purchases = Field([], description="Who could sell or give what is short.")
    containers: Containers = Field([], description="What material is carried in; a bucket is assumed when empty.")
    labour: Labour | None = None
    climate: Climate | None = None
    water_available: Annotated[float | None, f.DAILY_WATER] = Field(None, description="Water that can be had per day.")
    water_distance: Annotated[float | None, f.DISTANCE] = Field(None, description="From the water to the digester, one way.")


EXAMPLE: dict[str, Any] = {
    "name": "Highfold (invented)",
    "digester": {"structure": "fixed_dome", "total_volume": {"value": 12, "unit": "m3"}},
    "feed": [{"substrate": "cattle_dung"}],
    "dilution": {"water_to_feed_by_volume": 1},
    "herd": [{"animal": "dairy_cow", "count": 8, "housing": "stall"}],
    "stockpile": {"starts_on": "2027-01-04", "cover": "sheet"},
    "digester_ready_on": "2027-02-03",
    "purchases": [{"name": "neighbour up the hill", "available": {"value": 800, "unit": "kg"}, "distance": {"value": 1.2, "unit": "km"}}],
    "containers": [{"name": "bucket", "volume": {"value": 20, "unit": "L"}}],
    "labour": {"people": 3, "hours_per_day": 6},
    "climate": {"mean_air_temperature": {"value": 19, "unit": "Cel"}},
}
WANTED = (
    "slurry_volume",
    "fresh_slurry_volume",
    "substrate_volume",
    "substrate_mass",
    "water_volume",
    "water_mass",
    "starter_share",
    "first_charge_total_solids",
    "mixing_hours",
)


def question(rulebook: Rulebook) -> Question:
    """The question bound to a rulebook."""
    shelf, inspector = Shelf(rulebook.data), Inspector(rulebook.data, "first_charge")
    request = with_facts("FirstChargeQuestion", FirstChargeRequest, rulebook.data.facts)

    def answer(asked: Any, explain: bool) -> Answer:
        return {**_answer(asked, Ledger(shelf), inspector, explain), "rulebook": rulebook.identity}

    return Question(
        "first-charge",
        "Plan the first charge",
        "Slurry, substrate and water that fill a new digester; the stockpile by date, what is short and how to close it; containers, "
        "labour, what to confirm before filling, and the start-up until full feeding.",
        request,
        told.FirstChargeAnswer,
        answer,
        EXAMPLE,
        shelf.ids,
    )


@dataclass(slots=True)
class Work:
    """Everything worked out for one first charge, before it is told."""

    asked: Any
    ledger: Ledger
    structure_id: str
    structure: Structure
    supply: Supply
    fed: list[Fed]
    warmth: Warmth
    cover_id: str
    piles: list[Pile]
    keeps_for: float
    mass_per_person: float | None = None
    first_flame: tuple[float, float, float] = (0.0, 0.0, 0.0)


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    charge = _work_out(asked, ledger)
    purchases, lacking = purchases_for(charge.piles, asked.purchases, charge.fed[0].id)
    hours, counts = _labour(charge)
    facts = _facts(charge)
    findings = inspector.inspect(facts)
    values = ledger.values
    answer: Answer = {
        **({"name": asked.name} if asked.name else {}),
        "slurry_volume": in_cubic_metres(values["slurry_volume"]),
        "substrate_mass": in_kilograms(values["substrate_mass"]),
        "substrate_volume": in_cubic_metres(values["substrate_volume"]),
        "water_volume": in_cubic_metres(values["water_volume"]),
        "starter_slurry": in_kilograms(asked.starter_slurry),
        "slurry_total_solids": in_percent(values["first_charge_total_solids"]),
        "substrates": [told.substrate(one, values["substrate_mass"]) for one in charge.fed],
        "animal_days": plan.animal_days(ledger, charge.supply, charge.fed[0].id),
        "stockpile": plan.stockpile(charge, purchases, lacking),
        "containers": counts,
        "labour": hours,
        "confirm_before_filling": plan.confirmations(charge, facts),
        "start_up": plan.start_up(charge),
        "schedule": plan.schedule(charge, hours, lacking),
        "assumptions": ledger.assumptions,
        "findings": _findings(charge, findings, inspector),
        "cautions": inspector.cautions(charge.structure.cautions, *(one.entry.cautions for one in charge.fed)),
    }
    if explain:
        answer["derivation"] = ledger.trace()
    return answer


def _work_out(asked: Any, ledger: Ledger) -> Work:
    _refuse(asked)
    structure_id, structure = take_digester(asked.digester, ledger)
    for figure in ("water_density", "mixing_rate"):
        ledger.practice(figure)
    supply = supply_of(asked.herd, ledger)
    fed = _mix(asked, ledger, supply)
    water_to_feed(fed, asked.dilution, ledger)
    _take_amounts(asked, ledger, fed)
    warmth = warmth_of(asked.climate, ledger).on(asked.digester_ready_on)
    ledger.put(digester_temperature=warmth.mean)
    cover_id, cover = cover_of(asked.stockpile.cover, ledger)
    days = (
        None if None in (asked.digester_ready_on, asked.stockpile.starts_on) else (asked.digester_ready_on - asked.stockpile.starts_on).days
    )
    piles = [
        pile_up(one, _gathered(asked, supply, one, index), asked.stockpile.on_hand if index == 0 else 0.0, cover, days)
        for index, one in enumerate(fed)
    ]
    return Work(asked, ledger, structure_id, structure, supply, fed, warmth, cover_id, piles, cover.keeps_for.typical)


def _refuse(asked: Any) -> None:
    faults = [
        *refusals.faults_of_digester(asked.digester),
        *refusals.faults_of_dilution(asked.dilution),
        *refusals.faults_of_shares(asked.feed),
        *refusals.faults_of_months(asked.climate),
        *refusals.faults_of_purchases(asked.purchases),
    ]
    start, ready = asked.stockpile.starts_on, asked.digester_ready_on
    if start and ready and not 0 <= (ready - start).days <= LONGEST_ACCOUNT:
        detail = f"must lie from 0 to {LONGEST_ACCOUNT} days after /stockpile/starts_on"
        faults.append(Fault(("digester_ready_on",), "dates_disordered", detail))
    if faults:
        raise RefusedError(faults)


def _gathered(asked: Any, supply: Supply, fed: Fed, index: int) -> float:
    """What the farm gathers of a substrate per day: from its herd, and as stated for the substrate itself."""
    herd = supply.by_substrate.get(fed.id, 0.0) if all(item.substrate != fed.id for item in asked.feed[:index]) else 0.0
    return herd + (asked.feed[index].gathered_per_day or 0.0)


def _mix(asked: Any, ledger: Ledger, supply: Supply) -> list[Fed]:
    """The substrates with their relative masses; real masses follow once the volumes are known."""
    shares = refusals.shares_of(asked.feed, [supply.by_substrate.get(item.substrate, 0.0) for item in asked.feed])
    return [resolve(item, share, ledger) for item, share in zip(asked.feed, shares, strict=True)]


def _take_amounts(asked: Any, ledger: Ledger, fed: Sequence[Fed]) -> None:
    """Volumes and masses of the charge, and each substrate's own mass."""
    values = ledger.values
    ledger.put(starter_volume=asked.starter_slurry / values["water_density"])
    mass, volume = sum(one.mass for one in fed), sum(one.volume for one in fed)
    ledger.put(bulk_density=mass / volume, total_solids=sum(one.mass * one.values["total_solids"] for one in fed) / mass)
    if all(item.mass is not None for item in asked.feed):
        filled = volume * (1 + values["water_to_feed_by_volume"]) + values["starter_volume"]
        ledger.put(first_fill_share=filled / values["total_volume"])
    elif asked.first_fill_share is not None:
        ledger.state("first_fill_share", asked.first_fill_share)
    else:
        ledger.put(first_fill_share=values["fill_share"])
    if values["starter_volume"] >= values["first_fill_share"] * values["total_volume"]:
        raise RefusedError([Fault(("starter_slurry",), "starter_fills_digester", "must leave room for fresh slurry")])
    ledger.solve(*WANTED)
    for one in fed:
        one.mass *= values["substrate_mass"] / mass


def _labour(charge: Work) -> tuple[Answer, list[Answer]]:
    """Person-hours of the first charge, and whole containers."""
    ledger, asked = charge.ledger, charge.asked
    values = ledger.values
    containers = plan.containers_of(asked, ledger)
    ledger.practice("walking_speed")
    ledger.practice("handling_time")
    distance = ledger.practice("carrying_distance")
    to_water = asked.water_distance if asked.water_distance is not None else distance
    name, volume = containers[0]
    trips = (whole_containers(values["substrate_volume"], volume), whole_containers(values["water_volume"], volume))
    speed, handling = values["walking_speed"], values["handling_time"]
    carrying = carrying_hours(trips[0], distance, speed, handling) + carrying_hours(trips[1], to_water, speed, handling)
    counts = [told.container(label, size, values) for label, size in containers]
    return plan.labour(charge, carrying, sum(trips), name), counts


def _facts(charge: Work) -> dict[str, Any]:
    values, asked = charge.ledger.values, charge.asked
    carried = [one.volume for one in asked.containers if one.by_hand]
    facts = {
        **feed_facts(charge.fed),
        "structure_kind": charge.structure_id,
        "total_volume": values["total_volume"],
        "slurry_total_solids": values["first_charge_total_solids"],
        "starter_share": values["starter_share"],
        "first_fill_share": values["first_fill_share"],
        "seal_margin": values["first_fill_share"] / charge.structure.least_fill_share.typical,
        "fill_margin": values["first_fill_share"] / charge.structure.fill_share.most,
        "stockpile_sufficiency": min(pile.on_heap / pile.needed if pile.needed else 1.0 for pile in charge.piles),
        **({"heap_age": float(max(pile.days for pile in charge.piles))} if any(p.collected > 0 for p in charge.piles) else {}),
        **({"load_carried": max(carried) * max(values["bulk_density"], values["water_density"])} if carried else {}),
        "heap_covered": charge.ledger.shelf.data.practice.covers[charge.cover_id].covered,
        "carbon_to_nitrogen": _carbon_to_nitrogen(charge.fed),
        **({"daily_mass_per_person": charge.mass_per_person} if charge.mass_per_person is not None else {}),
        **({"digester_temperature": charge.warmth.mean} if charge.warmth.known else {}),
    }
    if asked.water_available:
        facts["water_days"] = values["water_volume"] / asked.water_available
    return {**facts, **values_by_id(asked.facts)}


def _carbon_to_nitrogen(fed: Sequence[Fed]) -> float:
    """Carbon over nitrogen of the whole charge, from the balances of both."""
    nitrogen = [one.mass * one.values["total_solids"] * one.values["nitrogen_share"] for one in fed]
    carbon = [mass * one.values["carbon_to_nitrogen_of_feed"] for mass, one in zip(nitrogen, fed, strict=True)]
    return sum(carbon) / sum(nitrogen)


def _findings(charge: Work, findings: list[CheckFinding], inspector: Inspector) -> list[Answer]:
    denied = digester_contradictions(charge.structure, charge.ledger)
    return [contradiction(c, GRAPH.quantities[c.name].kind) for c in denied] + inspector.shown(findings)
