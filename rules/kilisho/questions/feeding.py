"""Herd and feed: what the animals give, and what a mix of substrates is."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from kilisho.farm import GRAPH, SUBSTRATE_QUANTITIES, Ledger, Shelf
from kilisho.formulas.digester import REFERENCE_TEMPERATURE, SEA_LEVEL_PRESSURE
from kilisho.formulas.gas import normal_factor
from kilisho.formulas.kinetics import chen_hashimoto_cattle_parameter, chen_hashimoto_share, chen_hashimoto_swine_parameter
from kilisho.questions.requests import FeedItem, HerdItem
from kilisho.rulebook import Substrate

PER_DAY = (
    "feed_volume_per_day",
    "total_solids_per_day",
    "volatile_solids_per_day",
    "ash_per_day",
    "nitrogen_per_day",
    "carbon_per_day",
    "ammonium_nitrogen_per_day",
    "grit_per_day",
)
# Where the growth kinetics were measured: 20 to 60 Cel, up to 100 kg volatile solids per cubic metre.
LEAST_GROWTH_TEMPERATURE, MOST_SOLIDS_CONCENTRATION = 20.0, 100.0
GROWTH_PARAMETERS = {"cattle": chen_hashimoto_cattle_parameter, "swine": chen_hashimoto_swine_parameter}
GAS = ("biogas_per_day", "share_of_potential")
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

    @property
    def volume(self) -> float:
        return self.mass / self.values["bulk_density"]


@dataclass(slots=True)
class Supply:
    """What a herd gives per day, by substrate, and its gathered urine."""

    by_substrate: dict[str, float]
    heads: dict[str, int]
    urine: float
    rule_of_thumb_gas: float | None


def supply_of(herd: Sequence[HerdItem], ledger: Ledger) -> Supply:
    """What the herd gives per day, as stated for each head or from the rulebook."""
    data = ledger.shelf.data
    supply = Supply({}, {}, 0.0, None)
    for item in herd:
        animal = data.animals[item.animal]
        housing = item.housing or ledger.choose("housing", "stall", f"Housing of {item.animal} was not stated.")
        gathered = item.count * _dung_per_head(item, housing, ledger)
        supply.by_substrate[animal.substrate] = supply.by_substrate.get(animal.substrate, 0.0) + gathered
        supply.heads[animal.substrate] = supply.heads.get(animal.substrate, 0) + item.count
        supply.urine += item.count * _urine_per_head(item, housing, ledger)
    supply.rule_of_thumb_gas = _rule_of_thumb(herd, ledger)
    return supply


def _rule_of_thumb(herd: Sequence[HerdItem], ledger: Ledger) -> float | None:
    """The trade's gas for the herd; None unless it has a word for every animal in it."""
    rules = [(item.count, ledger.shelf.data.animals[item.animal].rule_of_thumb_gas) for item in herd]
    if not rules or any(rule is None for _, rule in rules):
        return None
    return float(sum(count * rule.typical for count, rule in rules if rule is not None))


def _dung_per_head(item: HerdItem, housing: str, ledger: Ledger) -> float:
    if item.dung_per_day is not None:
        return item.dung_per_day
    animal, shelf = ledger.shelf.data.animals[item.animal], ledger.shelf
    share = getattr(animal.collectable, housing)
    if item.live_weight is not None:
        ledger.assumptions.append(shelf.assumption("animals", item.animal, "dung_per_live_weight"))
        return float(item.live_weight * animal.dung_per_live_weight.typical * share.typical)
    ledger.assumptions.append(shelf.assumption("animals", item.animal, "dung_per_day"))
    ledger.assumptions.append(shelf.collected(item.animal, housing))
    return float(animal.dung_per_day.typical * share.typical)


def _urine_per_head(item: HerdItem, housing: str, ledger: Ledger) -> float:
    if item.urine_per_day is not None:
        return item.urine_per_day
    animal = ledger.shelf.data.animals[item.animal]
    return float(animal.urine_per_day.typical * getattr(animal.urine_collectable, housing).typical)


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


def totals(fed: Sequence[Fed]) -> dict[str, float]:
    """The extensive quantities of the mix per day, summed over the substrates."""
    total = dict.fromkeys(("feed_mass_per_day", *PER_DAY), 0.0)
    for one in fed:
        values = {**one.values, "feed_mass_per_day": one.mass}
        total["feed_mass_per_day"] += one.mass
        for name, value in GRAPH.solve(values, PER_DAY).items():
            total[name] += value
    return total


def gas_of(fed: Sequence[Fed], conditions: dict[str, float], side: str = "values") -> dict[str, float]:
    """Biogas of the mix per day, its methane share, and the share of the potential that the conditions release.

    ``side`` picks typical values or the low or high end of every uncertain property at once, which bounds the answer.
    """
    gas = methane = potential = 0.0
    for one in fed:
        given = {**getattr(one, side), **conditions, "feed_mass_per_day": one.mass}
        found = GRAPH.solve(given, GAS)
        gas += found["biogas_per_day"]
        methane += found["biogas_per_day"] * given["methane_share"]
        potential += found["biogas_per_day"] / found["share_of_potential"] if found["share_of_potential"] else 0.0
    return {
        "biogas_per_day": gas,
        "methane_share": methane / gas if gas else 0.0,
        "share_of_potential": gas / potential if potential else 0.0,
    }


def trace_of(fed: Sequence[Fed], ledger: Ledger) -> list[dict[str, Any]]:
    """How each substrate's own quantities came about."""
    conditions = {name: ledger.values[name] for name in ("hydraulic_retention_time", "digester_temperature", "tanks_in_series")}
    return [
        {**step, "of": one.id}
        for one in fed
        for step in GRAPH.trace({**one.values, **conditions, "feed_mass_per_day": one.mass}, (*PER_DAY, *GAS))
    ]


def highest_gas(fed: Sequence[Fed], conditions: dict[str, float], ledger: Ledger) -> dict[str, float]:
    """The high end of the gas: all properties high, or what the growth kinetics give where that is more.

    First-order decay fitted to handbook yields promises too little for warm, well run plants; growth kinetics with the highest usual
    methane potential, less what an unstirred digester does not reach, bound the answer from above.
    """
    high = gas_of(fed, conditions, "high")
    grown = _grown_gas(fed, conditions, ledger)
    if grown <= high["biogas_per_day"]:
        return high
    return {**high, "biogas_per_day": grown, "share_of_potential": min(1.0, high["share_of_potential"] * grown / high["biogas_per_day"])}


def _grown_gas(fed: Sequence[Fed], conditions: dict[str, float], ledger: Ledger) -> float:
    """Biogas as used per day by the growth kinetics; 0 where they are not valid or not known for every substrate."""
    temperature, retention = conditions["digester_temperature"], conditions["hydraulic_retention_time"]
    if temperature < LEAST_GROWTH_TEMPERATURE or any(one.entry.growth_model is None for one in fed):
        return 0.0
    reach = ledger.practice("growth_model_reach")
    concentration = min(ledger.values["volatile_solids_per_day"] / ledger.values["slurry_per_day"], MOST_SOLIDS_CONCENTRATION)
    return float(sum(reach * _grown(one, temperature, retention, concentration) for one in fed))


def _grown(one: Fed, temperature: float, retention: float, concentration: float) -> float:
    parameter = GROWTH_PARAMETERS[str(one.entry.growth_model)](concentration)
    share = chen_hashimoto_share(temperature, retention, parameter)
    solids = one.mass * one.values["total_solids"] * one.values["volatile_solids_share"]
    methane = solids * one.entry.methane_potential.most * share
    return float(methane / one.values["methane_share"] / normal_factor(temperature, SEA_LEVEL_PRESSURE))


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
        "starts_unaided": sum(one.mass for one in fed if one.entry.starts_unaided) >= mass / 2,
    }
