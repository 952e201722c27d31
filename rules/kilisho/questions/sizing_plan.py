"""The parts of a sizing: supply against demand and water, the buildable size, and how the digester then runs."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from pydantic import Field

from kilisho.farm import Ledger
from kilisho.questions.answers import (
    Amount,
    Answer,
    Common,
    Told,
    in_cubic_metres,
    in_cubic_metres_per_day,
    in_days,
    in_kilograms_per_cubic_metre_and_day,
    in_kilograms_per_day,
    in_litres_per_day,
    in_percent,
)
from kilisho.questions.dimensions import dimensions_of
from kilisho.questions.feeding import gas_of, highest_gas, totals
from kilisho.questions.urine import NONE

if TYPE_CHECKING:
    from kilisho.questions.sizing import Work

DERIVED = ("slurry_per_day", "slurry_total_solids", "hydraulic_retention_time", "organic_loading_rate")
SLACK = 1e-9


class Side(Told):
    """What one side (supply, demand or water) would allow or need."""

    feed_per_day: Amount
    biogas_per_day: Amount
    working_volume: Amount
    total_volume: Amount


class VolumeRule(Told):
    """What the trade would build, beside the model's size."""

    total_volume: Amount
    why: str


class SizingAnswer(Common):
    """The size of a digester. Volumes are those of the chosen buildable size."""

    limited_by: str = Field(description="supply, demand, water, or largest_buildable_size.")
    total_volume: Amount
    working_volume: Amount
    gas_storage_volume: Amount = Field(description="Gas that the chosen digester stores.")
    gas_storage_needed: Amount = Field(description="Gas storage that the use asks for.")
    needed_total_volume: Amount = Field(description="Before rounding up to a buildable size.")
    hydraulic_retention_time: Amount
    design_retention_time: Amount
    organic_loading_rate: Amount
    slurry_total_solids: Amount
    feed_per_day: Amount
    water_per_day: Amount
    slurry_per_day: Amount
    biogas_per_day: Amount = Field(description="In the coldest month, as used: moist, at the digester's temperature.")
    gas_demand: Amount | None = None
    demand_met: Amount | None = Field(None, description="Gas per day against demand.")
    digester_temperature: dict[str, Any]
    from_supply: Side | None = None
    from_demand: Side | None = None
    from_water: Side | None = None
    rule_of_thumb: VolumeRule
    dimensions: dict[str, Any]


@dataclass(slots=True)
class Sized:
    """The chosen size and what limits it."""

    limited_by: str
    needed: float
    total: float
    low: dict[str, float]
    high: dict[str, float]
    sides: dict[str, float]
    water_sufficiency: float | None


def demand(asked: Any, ledger: Ledger) -> float | None:
    """Gas wanted per day [m3/d], in whichever way it was stated."""
    if asked.gas_demand is not None:
        return float(asked.gas_demand)
    if asked.people_cooked_for is not None:
        return float(asked.people_cooked_for * ledger.practice("gas_per_person"))
    if not asked.appliances:
        return None
    total = 0.0
    for use in asked.appliances:
        entry = ledger.shelf.data.appliances[use.appliance]
        ledger.assumptions.append(ledger.shelf.assumption("appliances", use.appliance, "gas_per_hour"))
        if use.hours_per_day is None:
            ledger.assumptions.append(ledger.shelf.assumption("appliances", use.appliance, "usual_hours_per_day"))
        total += use.count * entry.gas_per_hour.typical * (use.hours_per_day or entry.usual_hours_per_day.typical)
    return total


def size(work: Work) -> Sized:
    """Choose the feed that supply, demand and water all allow, and the next buildable digester for it.

    The ledger then holds the chosen digester at that feed.
    """
    sides = _sides(work)
    limited_by = min(sides, key=lambda name: sides[name])
    _feed(work, sides[limited_by])
    ledger = work.ledger
    ledger.put(design_retention_time=work.retention[1])
    needed = ledger.solve("required_total_volume")["required_total_volume"]
    offered = sorted(work.structure.buildable_sizes.total_volumes)
    total = next((volume for volume in offered if volume >= needed * (1 - SLACK)), offered[-1])
    if total < needed * (1 - SLACK):
        limited_by = "largest_buildable_size"
        _feed(work, sides[min(sides, key=lambda name: sides[name])] * total / needed)
    ledger.put(total_volume=total)
    ledger.practice("gas_storage_of_daily_gas")
    ledger.solve("working_volume", "gas_storage_volume", *DERIVED, "water_per_day")
    low, high = _run(work)
    ledger.solve("gas_storage_needed")
    return Sized(limited_by, needed, total, low, high, sides, _water_sufficiency(work))


def _feed(work: Work, scale: float) -> None:
    """Scale the feed to ``scale`` times its stated (or unit) amount and put its totals into the ledger."""
    for one in work.fed:
        one.mass = one.mass if scale == 1.0 else abs(one.mass) * scale
    work.ledger.put(**totals(work.fed), **NONE)


def _run(work: Work) -> tuple[dict[str, float], dict[str, float]]:
    values = work.ledger.values
    conditions = {name: values[name] for name in ("hydraulic_retention_time", "digester_temperature", "tanks_in_series")}
    work.ledger.put(**gas_of(work.fed, conditions))
    return gas_of(work.fed, conditions, "low"), highest_gas(work.fed, conditions, work.ledger)


def _sides(work: Work) -> dict[str, float]:
    """The feed that each side allows or needs, as a multiple of the stated feed (or of the unit feed where none is stated)."""
    supplied = any(one.mass > 0 for one in work.fed)
    for one in work.fed:
        one.mass = abs(one.mass)
    unit = _unit(work)
    sides = {"supply": 1.0} if supplied else {}
    if work.demand is not None and unit["biogas"] > 0:
        sides["demand"] = work.demand / unit["biogas"]
    if work.asked.water_available is not None and unit["water"] > 0 and sides:
        sides["water"] = work.asked.water_available / unit["water"]
    return sides or {"supply": 1.0}


def _unit(work: Work) -> dict[str, float]:
    """Gas and water of the feed as it stands, at the design retention."""
    values = work.ledger.values
    conditions = {n: values[n] for n in ("digester_temperature", "tanks_in_series")}
    gas = gas_of(work.fed, {**conditions, "hydraulic_retention_time": work.retention[1]})
    volume = sum(one.volume for one in work.fed)
    return {
        "biogas": gas["biogas_per_day"],
        "water": volume * values["water_to_feed_by_volume"],
        "slurry": volume * (1 + values["water_to_feed_by_volume"]),
    }


def _water_sufficiency(work: Work) -> float | None:
    """Water there is against the water that the farm's own feed would need, before any cut for lack of water."""
    needed = work.ledger.values["water_per_day"]
    return None if work.asked.water_available is None or not needed else work.asked.water_available / needed


def told(work: Work, sized: Sized) -> Answer:
    """The sizing as the answer tells it."""
    values, gas = work.ledger.values, work.ledger.values["biogas_per_day"]
    return {
        "limited_by": sized.limited_by,
        "total_volume": in_cubic_metres(values["total_volume"]),
        "working_volume": in_cubic_metres(values["working_volume"]),
        "gas_storage_volume": in_cubic_metres(values["gas_storage_volume"]),
        "gas_storage_needed": _storage_needed(work),
        "needed_total_volume": in_cubic_metres(sized.needed, *_needed_range(work, sized)),
        "hydraulic_retention_time": in_days(values["hydraulic_retention_time"]),
        "design_retention_time": in_days(work.retention[1], work.retention[0], work.retention[2]),
        "organic_loading_rate": in_kilograms_per_cubic_metre_and_day(values["organic_loading_rate"]),
        "slurry_total_solids": in_percent(values["slurry_total_solids"]),
        "feed_per_day": in_kilograms_per_day(values["feed_mass_per_day"]),
        "water_per_day": in_litres_per_day(values["water_per_day"]),
        "slurry_per_day": in_litres_per_day(values["slurry_per_day"]),
        "biogas_per_day": in_cubic_metres_per_day(gas, sized.low["biogas_per_day"], sized.high["biogas_per_day"]),
        **_against_demand(work, gas),
        "digester_temperature": work.warmth.told(),
        **{f"from_{name}": _side(work, sized, scale) for name, scale in sized.sides.items()},
        "rule_of_thumb": _rule_of_thumb(work),
        "dimensions": dimensions_of(work.structure, values["total_volume"], values["working_volume"], values["gas_storage_volume"]),
    }


def _storage_needed(work: Work) -> Answer:
    ledger, gas = work.ledger, work.ledger.values["biogas_per_day"]
    low, high = (side["gas_storage_of_daily_gas"] * gas for side in (ledger.low, ledger.high))
    return in_cubic_metres(ledger.values["gas_storage_needed"], low, high)


def _needed_range(work: Work, sized: Sized) -> tuple[float, float]:
    low, usual, high = work.retention
    return sized.needed * low / usual, sized.needed * high / usual


def _against_demand(work: Work, gas: float) -> Answer:
    if work.demand is None:
        return {}
    return {"gas_demand": in_cubic_metres_per_day(work.demand), "demand_met": in_percent(gas / work.demand)}


def _rule_of_thumb(work: Work) -> Answer:
    """The total volume that the trade would build for this feed, with the reason why it differs."""
    ledger, feed = work.ledger, work.ledger.values["feed_mass_per_day"]
    usual = ledger.practice("dung_per_plant_volume")
    low, high = feed / ledger.high["dung_per_plant_volume"], feed / ledger.low["dung_per_plant_volume"]
    return {
        "total_volume": in_cubic_metres(feed / usual, low, high),
        "why": f"The trade sizes by dung per plant volume whatever the temperature; this size keeps {work.retention[1]:.0f} d of retention "
        f"in the coldest month at {work.warmth.coldest:.0f} Cel. A smaller plant costs less and gives less gas from the same dung.",
    }


def _side(work: Work, sized: Sized, scale: float) -> Answer:
    """One side's feed, gas and volumes at the design retention."""
    values, chosen = work.ledger.values, min(sized.sides.values())
    ratio = scale / chosen if sized.limited_by != "largest_buildable_size" else scale / (chosen * sized.total / sized.needed)
    unit = {name: value * ratio for name, value in _unit(work).items()}
    working = unit["slurry"] * work.retention[1]
    return {
        "feed_per_day": in_kilograms_per_day(values["feed_mass_per_day"] * ratio),
        "biogas_per_day": in_cubic_metres_per_day(unit["biogas"]),
        "working_volume": in_cubic_metres(working),
        "total_volume": in_cubic_metres(working / values["fill_share"]),
    }
