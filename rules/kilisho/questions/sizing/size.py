"""Chooses the size: what supply, demand and water allow, and the next buildable digester for it."""

from __future__ import annotations

from dataclasses import dataclass

from kilisho.faults import Fault, RefusedError
from kilisho.messages import say
from kilisho.questions.feeding import NO_URINE, scale_by, slurry_of, take_totals
from kilisho.questions.gas import gas_of, take_gas
from kilisho.questions.sizing.storage import take_storage_needed
from kilisho.questions.sizing.work import Work
from kilisho.questions.storage_methods import StorageMethod
from kilisho.ranges import Numeric

DERIVED = ("slurry_per_day", "slurry_mass_per_day", "slurry_total_solids", "hydraulic_retention_time", "organic_loading_rate")
SLACK = 1e-9
# Below these [m3/d] there is no water and no gas worth dividing by.
LEAST_WATER, LEAST_GAS = 1e-9, 1e-9


@dataclass(slots=True)
class Sized:
    """The chosen size and what limits it."""

    limited_by: str
    needed: float
    needed_samples: Numeric
    total: float
    sides: dict[str, float]
    water_sufficiency: float | None
    storage_method: StorageMethod


def size(work: Work) -> Sized:
    """Choose the feed that supply, demand and water all allow, and the next buildable digester for it.

    The ledger then holds the chosen digester at that feed.
    """
    sides = _sides(work)
    limited_by = min(sides, key=lambda name: sides[name])
    chosen = sides[limited_by]
    if _dry(work) and work.ledger.values["water_to_feed_by_volume"] > LEAST_WATER:
        limited_by = "water"
    _feed(work, chosen)
    ledger = work.ledger
    ledger.put(design_retention_time=work.retention[1])
    needed = ledger.solve("required_total_volume")["required_total_volume"]
    samples = ledger.uncertain("required_total_volume").samples
    offered = sorted(work.structure.buildable_sizes.total_volumes)
    total = next((volume for volume in offered if volume >= needed * (1 - SLACK)), offered[-1])
    if total < needed * (1 - SLACK):
        limited_by = "largest_buildable_size"
        _feed(work, total / needed)
    ledger.put(total_volume=total)
    ledger.solve("working_volume", "gas_storage_volume", *DERIVED, "water_per_day")
    take_gas(work.fed, ledger)
    ledger.solve("biogas_per_day_normal")
    return Sized(limited_by, needed, samples, total, sides, _water_sufficiency(work, sides), take_storage_needed(work))


def _feed(work: Work, scale: float) -> None:
    """Scale the feed to ``scale`` times its stated (or unit) amount and put its totals into the ledger."""
    scale_by(work.fed, scale)
    take_totals(work.fed, work.ledger)
    work.ledger.put(**NO_URINE)


def _sides(work: Work) -> dict[str, float]:
    """The feed that each side allows or needs, as a multiple of the stated feed (or of the unit feed where none is stated)."""
    unit = unit_of(work)
    sides = {"supply": 1.0} if work.supplied else {}
    if work.demand is not None and unit["biogas"] > LEAST_GAS:
        sides["demand"] = work.demand / unit["biogas"]
    if not sides:
        raise RefusedError([Fault(("feed",), "feed_gives_no_gas", say("fault-no_gas_for_demand"))])
    # Without any water the other sides decide, and the water checks speak.
    if work.asked.water_available is not None and not _dry(work) and unit["water"] > LEAST_WATER:
        sides["water"] = work.asked.water_available / unit["water"]
    return sides


def _dry(work: Work) -> bool:
    """Whether it is stated that there is no water, or so little that nothing could be divided by it."""
    return work.asked.water_available is not None and work.asked.water_available <= LEAST_WATER


def unit_of(work: Work) -> dict[str, float]:
    """Gas and water of the feed as it stands, at the design retention."""
    values = work.ledger.values
    conditions = {n: values[n] for n in ("digester_temperature", "tanks_in_series", "gas_pressure")}
    gas = gas_of(work.fed, {**conditions, "hydraulic_retention_time": work.retention[1]})
    volume = sum(one.volume for one in work.fed)
    return {
        "biogas": gas["biogas_per_day"],
        "water": volume * values["water_to_feed_by_volume"],
        "slurry": slurry_of(work.fed, work.ledger),
    }


def _water_sufficiency(work: Work, sides: dict[str, float]) -> float | None:
    """Water there is against the water that supply or demand would ask for, before any cut for lack of water."""
    if work.asked.water_available is None or work.ledger.values["water_to_feed_by_volume"] <= LEAST_WATER:
        return None
    wanted = min([scale for name, scale in sides.items() if name != "water"])
    return sides.get("water", 0.0) / wanted
