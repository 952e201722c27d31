"""Works out a first charge: volumes, masses, heaps and facts, before any of it is told."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from kilisho.farm import Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.formulas.stockpile import LONGEST_ACCOUNT
from kilisho.messages import say
from kilisho.questions import refusals
from kilisho.questions.carrying import lifted_load
from kilisho.questions.climate import Warmth, take_temperature, warmth_of
from kilisho.questions.digester import take_digester
from kilisho.questions.feeding import (
    Fed,
    comes_by_itself,
    feed_facts,
    resolve,
    sampled,
    shares_of,
    slurry_of,
    uncertain_mass,
    water_to_feed,
)
from kilisho.questions.first_charge.heaps import Pile, cover_of, pile_up
from kilisho.questions.herd import Supply, supply_of
from kilisho.questions.stated_facts import all_facts, values_by_id
from kilisho.ranges import Uncertain, certain
from kilisho.rulebook import Structure

LONGEST_WAIT = 36_500.0
# A fault of the request as a whole: a farm plan can answer its other parts without the first charge.
NOTHING_TO_CHARGE = Fault((), "nothing_to_charge", say("fault-nothing_to_charge"))
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


@dataclass(slots=True)
class Work:
    """Everything worked out for one first charge, before it is told.

    ``fed`` has a row for each substrate asked for, without mass where it comes by itself later; ``piles`` only what is gathered.
    """

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

    @property
    def main(self) -> Fed:
        """The main substrate: the first one that is gathered."""
        return self.piles[0].fed

    @property
    def awaits_latrine(self) -> bool:
        """Whether something that drains in by itself waits until the digester burns."""
        return len(self.piles) < len(self.fed)


def work_out(asked: Any, ledger: Ledger) -> Work:
    """Everything of one first charge; raises :class:`RefusedError` for faults between members of the request."""
    _refuse(asked)
    structure_id, structure = take_digester(asked.digester, ledger)
    for figure in ("water_density", "mixing_rate"):
        ledger.practice(figure)
    supply = supply_of(asked.herd, ledger)
    fed = _mix(asked, ledger, supply)
    water_to_feed(fed, asked.dilution, ledger)
    _take_amounts(asked, ledger, fed)
    warmth = warmth_of(asked.climate, ledger, structure_id, asked.digester.depth).on(asked.digester_ready_on)
    take_temperature(warmth, ledger)
    cover = cover_of(asked.stockpile.cover, ledger)
    days = (
        None if None in (asked.digester_ready_on, asked.stockpile.starts_on) else (asked.digester_ready_on - asked.stockpile.starts_on).days
    )
    piles = [
        pile_up(one, _gathered(asked.feed[index], supply), asked.stockpile.on_hand if index == 0 else 0.0, cover, days)
        for index, one in enumerate(fed)
        if not comes_by_itself(one.entry)
    ]
    keeps_for = ledger.shelf.data.practice.covers[cover.id].keeps_for.typical
    return Work(asked, ledger, structure_id, structure, supply, fed, warmth, cover.id, piles, keeps_for)


def _refuse(asked: Any) -> None:
    faults = [
        *refusals.faults_of_digester(asked.digester),
        *refusals.faults_of_dilution(asked.dilution),
        *refusals.faults_of_shares(asked.feed, whole=True),
        *refusals.faults_of_months(asked.climate),
        *refusals.faults_of_purchases(asked.purchases),
    ]
    start, ready = asked.stockpile.starts_on, asked.digester_ready_on
    if start and ready and not 0 <= (ready - start).days <= LONGEST_ACCOUNT:
        detail = say("fault-ready_too_early_or_late", most=LONGEST_ACCOUNT)
        faults.append(Fault(("digester_ready_on",), "dates_disordered", detail))
    if faults:
        raise RefusedError(faults)


def _gathered(item: Any, supply: Supply) -> Uncertain:
    """What the farm gathers of a substrate per day: from its herd, and as stated for the substrate itself."""
    return supply.of(item.substrate).plus(certain(item.gathered_per_day or 0.0))


def _mix(asked: Any, ledger: Ledger, supply: Supply) -> list[Fed]:
    """The substrates with their relative masses; real masses follow once the volumes are known.

    What drains in from a latrine has none: it is let in once the digester burns (common practice).
    """
    entries = ledger.shelf.data.substrates
    charged = [item for item in asked.feed if not comes_by_itself(entries[item.substrate])]
    amounts = shares_of(charged, [_gathered(item, supply).value for item in charged]) if charged else []
    if not sum(amounts) > 0:
        raise RefusedError([NOTHING_TO_CHARGE])
    shares = dict(zip([item.substrate for item in charged], amounts, strict=True))
    return [resolve(item, certain(shares.get(item.substrate, 0.0)), ledger) for item in asked.feed]


def _take_amounts(asked: Any, ledger: Ledger, fed: Sequence[Fed]) -> None:
    """Volumes and masses of the charge, and each substrate's own mass."""
    values = ledger.values
    ledger.put(starter_volume=asked.starter_slurry / values["water_density"])
    ledger.put(**_blend(fed, values["water_density"]))
    ledger.sample(**_blend(sampled(fed), values["water_density"]))
    _take_fill(asked, ledger, fed)
    if values["starter_volume"] >= values["first_fill_share"] * values["total_volume"]:
        raise RefusedError([Fault(("starter_slurry",), "starter_fills_digester", say("fault-starter_fills_digester"))])
    ledger.solve(*WANTED)
    _take_masses(fed, ledger.uncertain("substrate_mass"))


def _blend(fed: Sequence[Fed], water_density: float) -> dict[str, Any]:
    """Density and total solids of the mix, and the room that it takes in slurry."""
    mass, volume = sum(one.mass for one in fed), sum(one.volume for one in fed)
    return {
        "displacement": sum(one.displaced(water_density) for one in fed) / volume,
        "bulk_density": mass / volume,
        "total_solids": sum(one.mass * one.values["total_solids"] for one in fed) / mass,
    }


def _take_fill(asked: Any, ledger: Ledger, fed: Sequence[Fed]) -> None:
    """How full the first charge makes the digester: by the stated masses, as stated, or to the normal level."""
    values = ledger.values
    if all(item.mass is not None for item in asked.feed):
        filled, samples = (slurry_of(side, ledger) + values["starter_volume"] for side in (fed, sampled(fed)))
        ledger.put(first_fill_share=filled / values["total_volume"])
        ledger.sample(first_fill_share=samples / ledger.uncertain("total_volume").samples)
        if filled > values["total_volume"]:
            raise RefusedError([Fault(("feed",), "volume_impossible", say("fault-masses_too_large"))])
    elif asked.first_fill_share is not None:
        ledger.state("first_fill_share", asked.first_fill_share)
    else:
        ledger.put(first_fill_share=values["fill_share"])
        ledger.sample(first_fill_share=ledger.uncertain("fill_share").samples)


def _take_masses(fed: Sequence[Fed], total: Uncertain) -> None:
    """Turn the relative masses into those of the charge."""
    for side, wanted in ((fed, total.value), (sampled(fed), total.samples)):
        scale = wanted / sum(one.mass for one in side)
        for one in side:
            one.mass = one.mass * scale


def facts_of(work: Work, mass_per_person: float | None) -> dict[str, Any]:
    """The facts that checks ask of a first charge: worked out, and as the caller stated them."""
    values, asked = work.ledger.values, work.asked
    facts = {
        **feed_facts(work.fed),
        **({"human_excreta_fed": True} if work.awaits_latrine else {}),
        "structure_kind": work.structure_id,
        "total_volume": values["total_volume"],
        "slurry_total_solids": values["first_charge_total_solids"],
        "starter_share": values["starter_share"],
        "first_fill_share": values["first_fill_share"],
        "seal_margin": values["first_fill_share"] / work.structure.least_fill_share.typical,
        "fill_margin": values["first_fill_share"] / work.structure.fill_share.most,
        "stockpile_sufficiency": min(pile.on_heap / pile.needed.value if pile.needed.value else 1.0 for pile in work.piles),
        **({"heap_age": age} if (age := oldest_dung(work)) is not None else {}),
        **lifted_load(asked.containers, max(values["bulk_density"], values["water_density"])),
        "heap_covered": work.ledger.shelf.data.practice.covers[work.cover_id].covered,
        "carbon_to_nitrogen": _carbon_to_nitrogen(work.fed),
        **({"daily_mass_per_person": mass_per_person} if mass_per_person is not None else {}),
        **({"digester_temperature": work.warmth.mean} if work.warmth.known else {}),
    }
    if asked.water_available is not None:
        facts["water_days"] = min(values["water_volume"] / asked.water_available, LONGEST_WAIT) if asked.water_available else LONGEST_WAIT
    return all_facts(work.ledger.shelf.data, facts, values_by_id(asked.facts))


def oldest_dung(work: Work) -> float | None:
    """Age of the oldest dung at filling [d]; None where dung of unknown age lies there already, or none is gathered."""
    stockpile, days = work.asked.stockpile, float(max(pile.days for pile in work.piles))
    if stockpile.on_hand > 0:
        return None if stockpile.on_hand_age is None else days + stockpile.on_hand_age
    return days if any(pile.collected > 0 for pile in work.piles) else None


def _carbon_to_nitrogen(fed: Sequence[Fed]) -> float:
    """Carbon over nitrogen of the whole charge, from the balances of both."""
    nitrogen = [one.mass * one.values["total_solids"] * one.values["nitrogen_share"] for one in fed]
    carbon = [mass * one.values["carbon_to_nitrogen_of_feed"] for mass, one in zip(nitrogen, fed, strict=True)]
    return float(sum(carbon) / sum(nitrogen))


def animal_days(work: Work) -> tuple[float, ...] | None:
    """Days of one animal's dung in the charge's main substrate: of the farm's own animals, or of its first animal in the rulebook.

    None for a substrate that no animal gives.
    """
    ledger, supply, main = work.ledger, work.supply, work.main.id
    heads = supply.heads.get(main, 0)
    if heads and supply.of(main).value > 0:
        per_day = supply.of(main).times(1 / heads)
    else:
        giver = next((name for name, animal in ledger.shelf.data.animals.items() if animal.substrate == main), None)
        if giver is None:
            return None
        per_day = ledger.figure("animals", giver, "dung_per_day")
    mass = uncertain_mass(work.main)
    ledger.put(dung_per_animal_day=per_day.value, main_substrate_mass=mass.value)
    ledger.sample(dung_per_animal_day=per_day.samples, main_substrate_mass=mass.samples)
    ledger.solve("animal_days")
    return ledger.of("animal_days")
