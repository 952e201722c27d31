"""Tells a size: the chosen digester, what each side would ask for, and the trade's size beside it."""

from __future__ import annotations

from kilisho.messages import Amount, say
from kilisho.questions.answers import (
    Answer,
    in_cubic_metres,
    in_cubic_metres_per_day,
    in_days,
    in_kilograms_per_cubic_metre_and_day,
    in_kilograms_per_day,
    in_litres_per_day,
    in_percent,
)
from kilisho.questions.gas_state import gas_state
from kilisho.questions.sizing.dimensions import dimensions_of
from kilisho.questions.sizing.dome import DOME, Plan, full_pressure, gas_pressure
from kilisho.questions.sizing.size import Sized, unit_of
from kilisho.questions.sizing.work import Work
from kilisho.questions.storage_methods import name_of
from kilisho.ranges import about


def told(work: Work, sized: Sized) -> Answer:
    """The sizing as the answer tells it."""
    values, of, plan, unit = work.ledger.values, work.ledger.of, plan_of(work), unit_of(work)
    return {
        "limited_by": sized.limited_by,
        "total_volume": in_cubic_metres(values["total_volume"]),
        "working_volume": in_cubic_metres(*of("working_volume")),
        "gas_storage_volume": in_cubic_metres(*of("gas_storage_volume")),
        "gas_storage_needed": in_cubic_metres(*of("gas_storage_needed")),
        "gas_storage_method": sized.storage_method,
        "gas_storage_method_name": name_of(sized.storage_method),
        "needed_total_volume": in_cubic_metres(sized.needed, *_needed_range(work, sized)),
        "hydraulic_retention_time": in_days(*of("hydraulic_retention_time")),
        "design_retention_time": in_days(work.retention[1], work.retention[0], work.retention[2]),
        "organic_loading_rate": in_kilograms_per_cubic_metre_and_day(*of("organic_loading_rate")),
        "slurry_total_solids": in_percent(*of("slurry_total_solids")),
        "feed_per_day": in_kilograms_per_day(*of("feed_mass_per_day")),
        "water_per_day": in_litres_per_day(*of("water_per_day")),
        "slurry_per_day": in_litres_per_day(*of("slurry_per_day")),
        "biogas_per_day": in_cubic_metres_per_day(*of("biogas_per_day")),
        "biogas_per_day_normal": in_cubic_metres_per_day(*of("biogas_per_day_normal")),
        "gas_state": gas_state(work.ledger),
        "share_of_potential": in_percent(*of("share_of_potential")),
        **_against_demand(work),
        "digester_temperature": work.warmth.told(),
        **{f"from_{name}": _side(work, sized, scale, unit) for name, scale in sized.sides.items()},
        "rule_of_thumb": _rule_of_thumb(work),
        "dimensions": dimensions_of(plan),
        **({"gas_pressure": gas_pressure(plan)} if work.structure.geometry.shape == DOME else {}),
    }


def plan_of(work: Work) -> Plan:
    """What the dimensions of the chosen digester follow from."""
    values = work.ledger.values
    density = values["slurry_mass_per_day"] / values["slurry_per_day"]
    return Plan(values["total_volume"], values["working_volume"], values["gas_storage_volume"], density, work.structure)


def pressure_facts(work: Work) -> dict[str, float]:
    """Pressure of a full dome against what the structure bears; nothing for other shapes."""
    limit = work.structure.operating_pressure.most
    return {"full_gas_pressure_margin": full_pressure(plan_of(work)) / limit} if work.structure.geometry.shape == DOME and limit else {}


def planned_pressure(work: Work) -> dict[str, float]:
    """Pressure [Pa] of a full dome as the fact that a gauge on it would state; nothing for other shapes."""
    return {"gas_pressure": full_pressure(plan_of(work))} if work.structure.geometry.shape == DOME else {}


def _needed_range(work: Work, sized: Sized) -> tuple[float, float]:
    """From the short to the long end of the usual retention, each with that end of the slurry's range."""
    low, usual, high = work.retention
    _, *ends = about(sized.needed, sized.needed_samples)
    least, most = ends or (sized.needed, sized.needed)
    return least * low / usual, most * high / usual


def _against_demand(work: Work) -> Answer:
    if work.demand is None:
        return {}
    met = work.ledger.uncertain("biogas_per_day").times(1 / work.demand)
    return {"gas_demand": in_cubic_metres_per_day(work.demand), "demand_met": in_percent(*met.told)}


def _rule_of_thumb(work: Work) -> Answer:
    """The total volume that the trade would build for this feed, with the reason why it differs."""
    ledger, feed = work.ledger, work.ledger.values["feed_mass_per_day"]
    usual = ledger.practice("dung_per_plant_volume")
    reading = ledger.shelf.reading("figures", "dung_per_plant_volume", "dung_per_plant_volume")
    low, high = feed / reading.high, feed / reading.low
    return {
        "total_volume": in_cubic_metres(feed / usual, low, high),
        "why": say(
            "trade-size",
            retention=Amount(work.retention[1], "d", decimals=0),
            temperature=Amount(work.warmth.coldest, "Cel", decimals=0),
        ),
    }


def _side(work: Work, sized: Sized, scale: float, chosen_unit: dict[str, float]) -> Answer:
    """One side's feed, gas and volumes at the design retention, from those of the chosen feed."""
    values, chosen = work.ledger.values, min(sized.sides.values())
    ratio = scale / chosen if sized.limited_by != "largest_buildable_size" else scale / (chosen * sized.total / sized.needed)
    unit = {name: value * ratio for name, value in chosen_unit.items()}
    working = unit["slurry"] * work.retention[1]
    return {
        "feed_per_day": in_kilograms_per_day(values["feed_mass_per_day"] * ratio),
        "biogas_per_day": in_cubic_metres_per_day(unit["biogas"]),
        "working_volume": in_cubic_metres(working),
        "total_volume": in_cubic_metres(working / values["fill_share"]),
    }
