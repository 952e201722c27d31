"""Tells nitrogen, phosphorus and potassium: in the digestate, lost on the way, found by plants, and as bought fertiliser."""

from __future__ import annotations

from typing import Any

from kilisho.messages import say
from kilisho.questions.answers import (
    Answer,
    in_grams,
    in_kilograms_per_cubic_metre,
    in_kilograms_per_day,
    in_kilograms_per_year,
    in_litres,
    in_number,
    in_percent,
)
from kilisho.questions.carrying import containers_of
from kilisho.questions.digestate.work import Work
from kilisho.ranges import Uncertain, certain
from kilisho.units import to_canonical

YEAR = to_canonical(1.0, "time", "a")


def containers(work: Work) -> list[tuple[str, float]]:
    """What digestate is carried in: name and volume [m3]."""
    return containers_of(work.asked.containers, work.ledger)


def nitrogen(work: Work, vessels: list[tuple[str, float]]) -> Answer:
    """Nitrogen on its way from the feed to the plants."""
    of = work.ledger.of
    return {
        **_carried(work, "nitrogen", vessels),
        "fed_per_day": in_kilograms_per_day(*of("nitrogen_per_day")),
        "ammonium_share": in_percent(*of("digestate_ammonium_share")),
        "lost_in_storage": in_kilograms_per_year(*of("nitrogen_lost_in_storage")),
        "lost_in_spreading": in_kilograms_per_year(*of("nitrogen_lost_in_spreading")),
        "available_in_first_year": in_kilograms_per_year(*of("available_nitrogen_per_day")),
        "for_later_years": in_kilograms_per_year(*of("nitrogen_for_later_years")),
        "availability": in_percent(*of("nitrogen_availability")),
        "available_per_cubic_metre": in_kilograms_per_cubic_metre(*of("available_nitrogen_concentration")),
        "spreading": work.spreading,
        "spreading_name": work.ledger.shelf.data.practice.spreadings[work.spreading].name,
        "text": say("digestate-nitrogen"),
    }


def phosphorus(work: Work, vessels: list[tuple[str, float]]) -> Answer:
    """Phosphorus as P and as P2O5; only which substrates leave it unknown, where some do."""
    if work.unknown["phosphorus"]:
        return {"unknown_for": work.unknown["phosphorus"], "text": say("digestate-nutrient-unknown")}
    return {
        **_carried(work, "phosphorus", vessels),
        "as_phosphate": _oxide(work, "phosphate_per_day"),
        "settled_per_year": in_kilograms_per_year(*work.ledger.of("settled_phosphorus_per_day")),
        "text": say("digestate-phosphorus"),
    }


def potassium(work: Work, vessels: list[tuple[str, float]]) -> Answer:
    """Potassium as K and as K2O; only which substrates leave it unknown, where some do."""
    if work.unknown["potassium"]:
        return {"unknown_for": work.unknown["potassium"], "text": say("digestate-nutrient-unknown")}
    return {**_carried(work, "potassium", vessels), "as_potash": _oxide(work, "potash_per_day"), "text": say("digestate-potassium")}


def _carried(work: Work, nutrient: str, vessels: list[tuple[str, float]]) -> Answer:
    """A nutrient in the digestate as it leaves the digester: per day (the value itself), per year, per cubic metre and per container."""
    ledger, concentration = work.ledger, work.ledger.uncertain(f"{nutrient}_concentration")
    per_day = ledger.of(f"digestate_{nutrient}_per_day")
    return {
        **in_kilograms_per_day(*per_day),
        "per_year": in_kilograms_per_year(*per_day),
        "per_cubic_metre": in_kilograms_per_cubic_metre(*concentration.told),
        "containers": [
            {"name": name, "volume": in_litres(size), "mass": in_grams(*concentration.times(size).told)} for name, size in vessels
        ],
    }


def _oxide(work: Work, name: str) -> Answer:
    amount = work.ledger.uncertain(name)
    per_volume = amount.over(work.ledger.uncertain("digestate_per_day"))
    return {
        "per_year": in_kilograms_per_year(*amount.told),
        "per_cubic_metre": in_kilograms_per_cubic_metre(*per_volume.told),
    }


def fertiliser(work: Work) -> Answer:
    """Bought fertiliser that the year's digestate stands for, and its worth where prices are stated."""
    of = work.ledger.of
    told = {"urea": in_kilograms_per_year(*of("urea_equivalent"))}
    if not work.unknown["phosphorus"]:
        told["diammonium_phosphate"] = in_kilograms_per_year(*of("diammonium_phosphate_equivalent"))
    if not work.unknown["potassium"]:
        told["potassium_chloride"] = in_kilograms_per_year(*of("potassium_chloride_equivalent"))
    worth = _worth(work)
    return {**told, **({"worth_per_year": in_number(*worth.told)} if worth is not None else {}), "text": say("digestate-fertiliser")}


def _worth(work: Work) -> Uncertain | None:
    """What the nutrients with a price would cost a year; None where no price is stated or none of those nutrients is known."""
    prices: Any = work.asked.prices
    if prices is None:
        return None
    names = {"available_nitrogen_per_day": prices.nitrogen, "phosphate_per_day": prices.phosphate, "potash_per_day": prices.potash}
    priced = {name: price for name, price in names.items() if price is not None and name in work.ledger.values}
    total = certain(0.0)
    for name, price in priced.items():
        total = total.plus(work.ledger.uncertain(name).times(price * YEAR))
    return total if priced else None
