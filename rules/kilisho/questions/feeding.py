"""What is fed: which substrates, how much of each, with which properties and how much water."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from kilisho.farm import GRAPH, SUBSTRATE_QUANTITIES, Ledger, Shelf
from kilisho.faults import Fault, RefusedError
from kilisho.formulas.digester import REFERENCE_TEMPERATURE, SEA_LEVEL_PRESSURE
from kilisho.formulas.gas import normal_factor
from kilisho.questions.herd import Supply
from kilisho.questions.requests import DailyFeedItem, FeedItem
from kilisho.rulebook import Substrate

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
_OF_URINE = ("urine", "urine_mass", "urine_solids", "urine_nitrogen", "urine_carbon", "urine_ammonium")
NO_URINE = {f"{name}_per_day": 0.0 for name in _OF_URINE}
MEASURABLE = frozenset(SUBSTRATE_QUANTITIES) | {"methane_potential"}


@dataclass(slots=True)
class Fed:
    """One substrate with its properties (typical, and the low and high ends) and its fresh mass, per day or in all."""

    id: str
    entry: Substrate
    mass: float
    values: dict[str, float]
    low: dict[str, float]
    high: dict[str, float]

    def displaced(self, water_density: float) -> float:
        """Room that it takes in slurry; never more than it takes as handled."""
        return self.mass / max(self.values["bulk_density"], water_density)

    @property
    def volume(self) -> float:
        """Volume as handled."""
        return self.mass / self.values["bulk_density"]


def resolve(item: FeedItem, mass: float, ledger: Ledger) -> Fed:
    """The substrate's properties: as measured where stated, the rulebook's where not, each of those listed as an assumption."""
    shelf: Shelf = ledger.shelf
    figures, entry = shelf.substrates[item.substrate], shelf.data.substrates[item.substrate]
    measured = item.model_fields_set & MEASURABLE
    ledger.assumptions += [told for field, told in figures.assumptions.items() if field not in measured]
    if not measured:
        return Fed(item.substrate, entry, mass, figures.typical, figures.low, figures.high)
    stated = {SUBSTRATE_QUANTITIES[field]: getattr(item, field) for field in measured if field in SUBSTRATE_QUANTITIES}
    if item.methane_potential is not None:
        methane = stated.get("methane_share", figures.typical["methane_share"])
        stated["biogas_potential"] = float(item.methane_potential / methane / normal_factor(REFERENCE_TEMPERATURE, SEA_LEVEL_PRESSURE))
    return Fed(item.substrate, entry, mass, figures.typical | stated, figures.low | stated, figures.high | stated)


def water_to_feed(fed: Sequence[Fed], dilution: Any, ledger: Ledger) -> float:
    """Volumes of liquid per volume of the mixed feed: as stated, to the target, or by each substrate's practice."""
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


def totals(fed: Sequence[Fed], ledger: Ledger) -> dict[str, float]:
    """The extensive quantities of the mix per day, summed over the substrates."""
    total = dict.fromkeys(("feed_mass_per_day", *PER_DAY), 0.0)
    for one in fed:
        values = {**one.values, "feed_mass_per_day": one.mass, "water_density": ledger.values["water_density"]}
        total["feed_mass_per_day"] += one.mass
        for name, value in GRAPH.solve(values, PER_DAY).items():
            total[name] += value
    return total


def feed_facts(fed: Sequence[Fed]) -> dict[str, Any]:
    """Facts that checks ask about a mix, worked out from its substrates."""
    mass = sum(one.mass for one in fed)
    if not mass:
        return {}
    solids = sum(one.mass * one.values["total_solids"] for one in fed)
    return {
        "poultry_share": sum(one.mass for one in fed if one.entry.group == "poultry") / mass,
        "crop_residue_share": sum(one.mass * one.values["total_solids"] for one in fed if one.entry.group == "crop_residue") / solids,
        "human_excreta_fed": any(one.entry.group == "excreta" and one.mass > 0 for one in fed),
        "starts_unaided": mix_starts_unaided(fed),
    }


def mix_starts_unaided(fed: Sequence[Fed]) -> bool:
    """Whether at least half of the fresh mass brings the methane-forming microbes that start a digester."""
    return sum(one.mass for one in fed if one.entry.starts_unaided) >= sum(one.mass for one in fed) / 2


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
        or [DailyFeedItem.model_construct(substrate=name) for name, mass in supply.by_substrate.items() if mass]
        or [_usual(ledger)]
    )
    masses = _masses(items, [supply.by_substrate.get(item.substrate, 0.0) for item in items])
    known = any(masses)
    if known and not all(masses):
        unknown = [i for i, mass in enumerate(masses) if not mass]
        detail = "state its mass or the shares: no animal of the herd gives it"
        raise RefusedError([Fault(("feed", i), "amount_unknown", detail) for i in unknown])
    amounts = masses if known else shares_of(items, [0.0] * len(items))
    return Menu([resolve(item, mass, ledger) for item, mass in zip(items, amounts, strict=True)], known)


def _masses(items: Sequence[DailyFeedItem], supplies: Sequence[float]) -> list[float]:
    """Stated masses, or the herd's; with stated shares, as much in all as the herd's own substrates allow."""
    masses = [item.mass if item.mass is not None else supply for item, supply in zip(items, supplies, strict=True)]
    if all(item.share is None for item in items):
        return masses
    shares = shares_of(items, masses)
    totals = [mass / share for mass, share in zip(masses, shares, strict=True) if mass and share]
    return [share * min(totals, default=0.0) for share in shares]


def slurry_of(fed: Sequence[Fed], ledger: Ledger) -> float:
    """Slurry that the substrates make with their liquid."""
    room = sum(one.displaced(ledger.values["water_density"]) for one in fed)
    return room + sum(one.volume for one in fed) * float(ledger.values["water_to_feed_by_volume"])


def scale_to(fed: Sequence[Fed], slurry: float, ledger: Ledger) -> None:
    """Scale all masses so that they make ``slurry`` [m3/d] with their water."""
    made = slurry_of(fed, ledger)
    for one in fed:
        one.mass *= slurry / made


def _usual(ledger: Ledger) -> DailyFeedItem:
    data = ledger.shelf.data
    name = "cattle_dung" if "cattle_dung" in data.substrates else next(iter(data.substrates))
    return DailyFeedItem.model_construct(substrate=ledger.choose("substrate", name, "Neither herd nor feed was stated."))
