"""What is fed: which substrates, how much of each, with which properties and how much water."""

from __future__ import annotations

from collections.abc import Sequence, Set
from dataclasses import dataclass, replace
from typing import Any

from kilisho.farm import GRAPH, SUBSTRATE_QUANTITIES, Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.formulas.arrays import most
from kilisho.formulas.digester import REFERENCE_TEMPERATURE, SEA_LEVEL_PRESSURE
from kilisho.formulas.gas import normal_factor
from kilisho.messages import say
from kilisho.questions.herd import Supply
from kilisho.questions.requests import DailyFeedItem, MeasuredSubstrate
from kilisho.ranges import Uncertain, certain
from kilisho.rulebook import GROUPS_OF_FACTS, Substrate

PER_DAY = (
    "feed_volume_per_day",
    "displaced_volume_per_day",
    "total_solids_per_day",
    "volatile_solids_per_day",
    "ash_per_day",
    "nitrogen_per_day",
    "carbon_per_day",
    "ammonium_nitrogen_per_day",
    "grit_per_day",
)
_OF_URINE = ("urine", "urine_mass", "urine_solids", "urine_nitrogen", "urine_carbon", "urine_ammonium", "urine_alkalinity")
NO_URINE = {f"{name}_per_day": 0.0 for name in _OF_URINE}
# The process model foresees that a charge of cattle dung starts in 97 of 100 runs at 20 to 28 Cel, and still does with any one other
# substrate as a hundredth of its mass; at 28 Cel a fiftieth of kitchen waste leaves 92, a twentieth of cassava peel
# 73, and a tenth of either 16 to 28 at any of them (runs of gas-forecast, dome of 12 m3).
SELF_STARTING_SHARE = 0.99
_ROUNDING = 1e-9
# Groups of substrates that animals drop.
DUNG_OF_ANIMALS = frozenset({"dung", "droppings", "poultry"})
MEASURABLE = frozenset(SUBSTRATE_QUANTITIES) | {"methane_potential"}


@dataclass(slots=True)
class Fed:
    """One substrate with its properties and its fresh mass, per day or in all.

    ``sampled`` is the same substrate with samples in place of what is uncertain; in it mass and values may be arrays.
    """

    id: str
    entry: Substrate
    mass: Any
    values: dict[str, Any]
    sampled: Fed | None = None

    def displaced(self, water_density: float) -> Any:
        """Room that it takes in slurry; never more than it takes as handled."""
        return self.mass / most(self.values["bulk_density"], water_density)

    @property
    def volume(self) -> Any:
        """Volume as handled."""
        return self.mass / self.values["bulk_density"]


def uncertain_mass(one: Fed) -> Uncertain:
    """The fresh mass with its samples."""
    return Uncertain(one.mass, (one.sampled or one).mass)


def sampled(fed: Sequence[Fed]) -> list[Fed]:
    """The substrates with samples in place of what is uncertain."""
    return [one.sampled or one for one in fed]


def resolve(item: MeasuredSubstrate, mass: Uncertain, ledger: Ledger) -> Fed:
    """The substrate's properties: as measured where stated, the rulebook's where not, each of those listed as an assumption."""
    figures, entry = ledger.shelf.substrates[item.substrate], ledger.shelf.data.substrates[item.substrate]
    measured = item.model_fields_set & MEASURABLE
    for field, reading in figures.readings.items():
        if field not in measured:
            ledger.use(reading)
    typical, samples = (_with_measured(item, measured, values) for values in (figures.typical, figures.sampled))
    return Fed(item.substrate, entry, mass.value, typical, Fed(item.substrate, entry, mass.samples, samples))


def _with_measured(item: MeasuredSubstrate, measured: Set[str], values: dict[str, Any]) -> dict[str, Any]:
    if not measured:
        return values
    stated = {SUBSTRATE_QUANTITIES[field]: getattr(item, field) for field in measured if field in SUBSTRATE_QUANTITIES}
    if item.methane_potential is not None:
        methane = stated.get("methane_share", values["methane_share"])
        stated["biogas_potential"] = item.methane_potential / methane / normal_factor(REFERENCE_TEMPERATURE, SEA_LEVEL_PRESSURE)
    return values | stated


def water_to_feed(fed: Sequence[Fed], dilution: Any, ledger: Ledger) -> float:
    """Volumes of liquid per volume of the mixed feed: as stated, to the target, or by each substrate's practice.

    It is told to be followed, so it is as certain as an instruction; a target is followed with the typical total solids.
    """
    if dilution is not None and dilution.water_to_feed_by_volume is not None:
        ledger.state("water_to_feed_by_volume", dilution.water_to_feed_by_volume)
    elif dilution is not None and dilution.target_total_solids is not None:
        ledger.state("target_total_solids", dilution.target_total_solids)
        ledger.put(water_to_feed_by_volume=_to_target(_blend(fed), dilution.target_total_solids, ledger))
    else:
        volume = sum(one.volume for one in fed)
        ratio = sum(one.volume * _by_practice(one, ledger) for one in fed) / volume if volume else _by_practice(fed[0], ledger)
        ledger.put(water_to_feed_by_volume=ratio)
    return float(ledger.values["water_to_feed_by_volume"])


def _blend(fed: Sequence[Fed]) -> dict[str, float]:
    mass, volume = sum(one.mass for one in fed), sum(one.volume for one in fed)
    if not mass:
        return fed[0].values
    return {"total_solids": sum(one.mass * one.values["total_solids"] for one in fed) / mass, "bulk_density": mass / volume}


def _to_target(blend: dict[str, float], target: float, ledger: Ledger) -> float:
    given = {**blend, "target_total_solids": target, "water_density": ledger.values["water_density"]}
    return max(0.0, float(GRAPH.solve(given, ("water_to_feed_for_target",))["water_to_feed_for_target"]))


def _by_practice(one: Fed, ledger: Ledger) -> float:
    rule = one.entry.dilution
    ledger.assumptions.append(ledger.shelf.dilution(one.id))
    if rule.water_to_feed_by_volume is not None:
        return rule.water_to_feed_by_volume.typical
    if rule.target_total_solids is not None:
        return _to_target(one.values, rule.target_total_solids.typical, ledger)
    return 0.0


def take_totals(fed: Sequence[Fed], ledger: Ledger) -> None:
    """Put the extensive quantities of the mix per day, summed over the substrates, into the ledger."""
    ledger.put(**_totals(fed, ledger.values["water_density"]))
    ledger.sample(**_totals(sampled(fed), ledger.values["water_density"]))


def _totals(fed: Sequence[Fed], water_density: float) -> dict[str, Any]:
    total: dict[str, Any] = dict.fromkeys(("feed_mass_per_day", *PER_DAY), 0.0)
    for one in fed:
        values = {**one.values, "feed_mass_per_day": one.mass, "water_density": water_density}
        total["feed_mass_per_day"] = total["feed_mass_per_day"] + one.mass
        for name, value in GRAPH.solve(values, PER_DAY).items():
            total[name] = total[name] + value
    return total


def feed_facts(fed: Sequence[Fed]) -> dict[str, Any]:
    """Facts that checks ask about a mix, worked out from its substrates."""
    mass = sum(one.mass for one in fed)
    if not mass:
        return {}
    solids = sum(one.mass * one.values["total_solids"] for one in fed)
    return {
        "poultry_share": sum(one.mass for one in _counted(fed, "poultry_share")) / mass,
        "crop_residue_share": sum(one.mass * one.values["total_solids"] for one in _counted(fed, "crop_residue_share")) / solids,
        "human_excreta_fed": any(one.mass > 0 for one in _counted(fed, "human_excreta_fed")),
        "starts_unaided": mix_starts_unaided(fed),
    }


def _counted(fed: Sequence[Fed], fact: str) -> list[Fed]:
    """The substrates of the group that a fact counts."""
    return [one for one in fed if one.entry.group == GROUPS_OF_FACTS[fact]]


def mix_starts_unaided(fed: Sequence[Fed]) -> bool:
    """Whether practically all of the fresh mass brings the methane-forming microbes that start a digester."""
    return _practically_all(fed, [one for one in fed if one.entry.starts_unaided])


def all_dung_of_animals(fed: Sequence[Fed]) -> bool:
    """Whether practically all of the fresh mass is dung or droppings, whether it starts by itself or not."""
    return _practically_all(fed, [one for one in fed if one.entry.starts_unaided or one.entry.group in DUNG_OF_ANIMALS])


def _practically_all(fed: Sequence[Fed], some: Sequence[Fed]) -> bool:
    return bool(sum(one.mass for one in some) >= (SELF_STARTING_SHARE - _ROUNDING) * sum(one.mass for one in fed))


def brings_lime(entry: Substrate) -> bool:
    """Whether it has the lime and magnesia of dung beside its potassium."""
    return entry.group == "dung"


def comes_by_itself(entry: Substrate) -> bool:
    """Whether it drains into the digester, so that nobody gathers, carries or mixes it."""
    return entry.group == GROUPS_OF_FACTS["human_excreta_fed"]


def shares_of(feed: Sequence[Any], supplies: Sequence[float]) -> list[float]:
    """The relative fresh mass of each substrate.

    Masses where they are stated; otherwise stated shares, the rest going to the others by what the farm gathers of each, or
    evenly where it gathers none.
    """
    if any(item.mass is not None for item in feed):
        return [item.mass or 0.0 for item in feed]
    open_ones = [i for i, item in enumerate(feed) if item.share is None]
    rest = max(0.0, 1 - sum(item.share or 0.0 for item in feed))
    supply = sum(supplies[i] for i in open_ones)
    return [
        item.share if item.share is not None else rest * (supplies[i] / supply if supply else 1 / len(open_ones))
        for i, item in enumerate(feed)
    ]


@dataclass(frozen=True, slots=True)
class Menu:
    """The substrates of a regular feed. Where nothing says how much is fed, their masses are shares of 1 and ``known`` is false."""

    fed: list[Fed]
    known: bool


def menu_of(feed: Sequence[DailyFeedItem], supply: Supply, ledger: Ledger) -> Menu:
    """The substrates with their daily masses: as stated, from the herd, or relative shares where only the digester decides."""
    items = (
        list(feed)
        or [DailyFeedItem.model_construct(substrate=name) for name, mass in supply.by_substrate.items() if mass.value]
        or [_usual(ledger)]
    )
    masses = _masses(items, [supply.of(item.substrate) for item in items])
    known = any(mass.value for mass in masses)
    if known and not all(mass.value for mass in masses):
        unknown = [i for i, mass in enumerate(masses) if not mass.value]
        detail = say("fault-mass_or_shares_unknown")
        raise RefusedError([Fault(("feed", i), "amount_unknown", detail) for i in unknown])
    amounts = masses if known else [certain(share) for share in shares_of(items, [0.0] * len(items))]
    return Menu([resolve(item, mass, ledger) for item, mass in zip(items, amounts, strict=True)], known)


def _masses(items: Sequence[DailyFeedItem], supplies: Sequence[Uncertain]) -> list[Uncertain]:
    """Stated masses, or the herd's; with stated shares, as much in all as the herd's own substrates allow."""
    masses = [certain(item.mass) if item.mass is not None else supply for item, supply in zip(items, supplies, strict=True)]
    if all(item.share is None for item in items):
        return masses
    shares = shares_of(items, [mass.value for mass in masses])
    totals = [mass.times(1 / share) for mass, share in zip(masses, shares, strict=True) if mass.value and share]
    scarcest = min(totals, key=lambda total: total.value, default=certain(0.0))
    return [scarcest.times(share) for share in shares]


def slurry_of(fed: Sequence[Fed], ledger: Ledger) -> Any:
    """Slurry that the substrates make with their liquid."""
    room = sum(one.displaced(ledger.values["water_density"]) for one in fed)
    return room + sum(one.volume for one in fed) * ledger.values["water_to_feed_by_volume"]


def scale_to(fed: Sequence[Fed], slurry: Uncertain, ledger: Ledger) -> None:
    """Scale all masses so that they make ``slurry`` [m3/d] with their water."""
    for side, wanted in ((fed, slurry.value), (sampled(fed), slurry.samples)):
        scale = wanted / slurry_of(side, ledger)
        for one in side:
            one.mass = one.mass * scale


def scaled(fed: Sequence[Fed], scale: float) -> list[Fed]:
    """The substrates with all masses multiplied; those given stay as they are."""
    return [
        replace(one, mass=one.mass * scale, sampled=replace(other, mass=other.mass * scale))
        for one, other in zip(fed, sampled(fed), strict=True)
    ]


def scale_by(fed: Sequence[Fed], scale: float) -> None:
    """Multiply all masses."""
    for one in (*fed, *sampled(fed)):
        one.mass = one.mass * scale


def _usual(ledger: Ledger) -> DailyFeedItem:
    data = ledger.shelf.data
    name = "cattle_dung" if "cattle_dung" in data.substrates else next(iter(data.substrates))
    return DailyFeedItem.model_construct(substrate=ledger.choose("substrate", name, say("assumed-substrate")))
