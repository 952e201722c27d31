"""Methane that manure would have given off if it had been kept as before: the method and the default factors of national inventories."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from kilisho.farm import GRAPH, Ledger, derive
from kilisho.faults import Fault
from kilisho.messages import Message, say
from kilisho.questions.answers import Answer, in_kilograms_per_year, in_percent
from kilisho.questions.climate import mean_air_of
from kilisho.questions.feeding import DUNG_OF_ANIMALS
from kilisho.questions.requests import Climate
from kilisho.ranges import Uncertain, certain, sum_of

MANURE = DUNG_OF_ANIMALS | {"urine"}
COOL, TEMPERATE, WARM = "cool", "temperate", "warm"
FIGURES = {"total_solids": "total_solids", "volatile_solids": "volatile_solids_share", "methane_potential": "methane_potential"}
WANTED = ("manure_methane_per_day", "warming_of_manure_methane")


@dataclass(frozen=True, slots=True)
class Spared:
    """Manure of one kind: its share that became methane [1], its quantities by name, and what they came from."""

    asked: Any
    name: str
    management_name: str
    conversion: Uncertain
    given: dict[str, Any]
    found: dict[str, Uncertain]


@dataclass(frozen=True, slots=True)
class Manure:
    """All manure of which somebody said how it was kept before, and the climate for which its factors hold."""

    climate: str
    parts: list[Spared]

    @property
    def methane(self) -> Uncertain:
        """Methane no longer given off [kg/d]."""
        return sum_of(one.found["manure_methane_per_day"] for one in self.parts)

    @property
    def warming(self) -> Uncertain:
        """Carbon dioxide that would have warmed as much [kg/d]."""
        return sum_of(one.found["warming_of_manure_methane"] for one in self.parts)


def work_out_manure(manure: Sequence[Any], climate: Climate | None, ledger: Ledger) -> Manure | None:
    """The manure that is fed, as it was kept before; None where nobody said how: nothing is assumed of it."""
    if not manure:
        return None
    zone = _zone(climate, ledger)
    return Manure(zone, [_spared(item, zone, ledger) for item in manure])


def _zone(climate: Climate | None, ledger: Ledger) -> str:
    """Cool, temperate or warm by the year's mean air; cool, which gives least methane, where nobody stated it."""
    mean = mean_air_of(climate)
    if mean is None:
        return ledger.choose("climate", COOL, say("use-climate-unknown"))
    if mean <= ledger.figure("figures", "cool_climate_to", "cool_climate_to").value:
        return COOL
    return TEMPERATE if mean <= ledger.figure("figures", "temperate_climate_to", "temperate_climate_to").value else WARM


def _spared(item: Any, zone: str, ledger: Ledger) -> Spared:
    data, conversion = ledger.shelf.data, ledger.figure("manure_managements", item.management, f"methane_conversion_{zone}")
    figures = {quantity: _figure(item, field, ledger) for field, quantity in FIGURES.items()}
    figures |= {"feed_mass_per_day": certain(item.mass), "methane_conversion": conversion}
    figures |= {"warming_potential": ledger.uncertain("warming_potential")}
    given = {quantity: figure.value for quantity, figure in figures.items()}
    names = data.substrates[item.substrate].name, data.practice.manure_managements[item.management].name
    return Spared(item, *names, conversion, given, derive(figures, WANTED))


def _figure(item: Any, field: str, ledger: Ledger) -> Uncertain:
    stated = getattr(item, field)
    return certain(stated) if stated is not None else ledger.figure("substrates", item.substrate, field)


def told_manure(manure: Manure | None) -> Answer:
    """Methane spared in all and by manure; nothing where nobody said how it was kept."""
    if manure is None:
        return {}
    return {
        "climate": manure.climate,
        "manure": [_told(one) for one in manure.parts],
        "manure_methane_spared_per_year": in_kilograms_per_year(*manure.methane.told),
        "warming_of_manure_methane_per_year": in_kilograms_per_year(*manure.warming.told),
    }


def _told(one: Spared) -> Answer:
    return {
        "substrate": one.asked.substrate,
        "name": one.name,
        "management": one.asked.management,
        "management_name": one.management_name,
        "methane_conversion": in_percent(*one.conversion.told),
        "methane_per_year": in_kilograms_per_year(*one.found["manure_methane_per_day"].told),
    }


def not_counted(manure: Manure | None) -> Message:
    """What is left out of the manure: all of it, or its nitrous oxide."""
    return say("use-left-out-manure") if manure is None else say("use-left-out-nitrous-oxide")


def trace_of_manure(manure: Manure | None) -> list[dict[str, Any]]:
    """How each manure's methane came about."""
    parts = manure.parts if manure is not None else []
    return [{**step, "of": one.asked.substrate} for one in parts for step in GRAPH.trace(one.given, WANTED)]


def faults_of_manure(asked: Any, ledger: Ledger) -> Iterator[Fault]:
    """Factors of manure hold for manure alone."""
    for i, item in enumerate(asked.manure_before):
        if ledger.shelf.data.substrates[item.substrate].group not in MANURE:
            yield Fault(("manure_before", i, "substrate"), "not_manure", say("fault-not_manure"))
