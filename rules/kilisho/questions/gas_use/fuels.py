"""The fuels whose place the gas takes, and what the change does to the climate: fuel and methane of manure saved less methane lost.

Only gas that cooks takes the place of a fuel, and electricity that is made of gas that of electricity, where that is among the fuels.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from kilisho.farm import GRAPH, Ledger, derive
from kilisho.formulas.arrays import most
from kilisho.messages import Message, say
from kilisho.questions.answers import (
    Answer,
    in_kilograms_per_day,
    in_kilograms_per_year,
    in_kilowatt_hours_per_day,
    in_kilowatt_hours_per_year,
    in_litres_per_day,
    in_litres_per_year,
    in_percent,
    known,
)
from kilisho.questions.gas_use.manure import Manure, not_counted, told_manure, work_out_manure
from kilisho.questions.gas_use.purposes import Purposes
from kilisho.ranges import Numeric, Uncertain, applied, certain, sum_of
from kilisho.rulebook import Fuel

TEXTS = {"saves": say("use-saves"), "harms": say("use-harms"), "uncertain": say("use-uncertain")}
TEXTS_WITH_MANURE = {
    "saves": say("use-saves-with-manure"),
    "harms": say("use-harms-with-manure"),
    "uncertain": say("use-uncertain-with-manure"),
}
LOSSES = ("gas_leaked_per_day", "methane_lost_per_day", "warming_of_methane_lost", "methane_in_gas")
FIELDS = {"stove_efficiency": "fuel_stove_efficiency", "emission_factor": "emission_factor", "non_renewable_share": "non_renewable_share"}
OPTIONAL = {"heating_value": "fuel_heating_value", "density": "fuel_density"}


@dataclass(frozen=True, slots=True)
class Replaced:
    """One fuel: the part of the useful heat that it gave, its quantities by name, and what they came from.

    ``electricity`` is what is made of gas in its place [MJ/d], None of a fuel that is burnt and where no gas makes any.
    """

    id: str
    entry: Fuel
    share: float
    electricity: Uncertain | None
    given: dict[str, Any]
    found: dict[str, Uncertain]

    @property
    def avoided(self) -> Uncertain:
        """Carbon dioxide no longer given off [kg/d]."""
        return self.found["carbon_dioxide_avoided"]


@dataclass(frozen=True, slots=True)
class Climate:
    """Carbon dioxide saved less the warming of the methane lost [kg/d]; the fuels are ``together`` or each an alternative.

    ``manure`` is what was fed instead of being kept as before, None where nobody said how that was.
    """

    fuels: list[Replaced]
    together: bool
    purposes: Purposes
    lost: Uncertain
    manure: Manure | None

    @property
    def avoided(self) -> Uncertain | None:
        """Carbon dioxide of all stated fuels; None where none was stated."""
        return sum_of(fuel.avoided for fuel in self.fuels) if self.together else None

    @property
    def electricity_counts(self) -> bool:
        """Whether electricity that is made of gas takes the place of one of the fuels."""
        return any(fuel.electricity is not None for fuel in self.fuels)

    def saved(self, avoided: Uncertain) -> Uncertain:
        """Carbon dioxide of the fuel [kg/d], and the warming of the methane that its manure would have given off."""
        return avoided if self.manure is None else avoided.plus(self.manure.warming)

    def net(self, avoided: Uncertain) -> Uncertain:
        """What is won [kg/d]; below nothing where the losses undo it."""
        return self.saved(avoided).plus(self.lost.times(-1.0))


def work_out_fuels(asked: Any, purposes: Purposes, ledger: Ledger) -> Climate:
    """The stated fuels by their shares, or every fuel of the rulebook as if it alone were replaced."""
    ledger.practice("biogas_stove_efficiency")
    ledger.solve("useful_heat_per_day")
    for figure in ("leak_share", "warming_potential"):
        ledger.practice(figure)
    ledger.solve(*LOSSES)
    stated = {one.fuel: one.share for one in asked.replaced_fuels}
    shares = stated or dict.fromkeys(ledger.shelf.data.fuels, 1.0)
    electricity = _electricity_by_fuel(stated, purposes, ledger)
    fuels = [_replaced(name, share, electricity.get(name), ledger) for name, share in shares.items()]
    manure = work_out_manure(asked.manure_before, asked.climate, ledger)
    return Climate(fuels, bool(stated), purposes, ledger.uncertain("warming_of_methane_lost"), manure)


def _electricity_by_fuel(stated: Mapping[str, float], purposes: Purposes, ledger: Ledger) -> dict[str, Uncertain]:
    """What is made of gas in the place of each fuel that is electricity: all of it in each that is alone, parted among several stated ones.

    They part it as they part the heat between them, and evenly where none of them heats a pot.
    """
    made, fuels = purposes.electricity, ledger.shelf.data.fuels
    if made is None:
        return {}
    if not stated:
        return {name: made for name, entry in fuels.items() if entry.heating_value is None}
    shares = {name: share for name, share in stated.items() if fuels[name].heating_value is None}
    heating = sum(shares.values())
    return {name: made.times(share / heating if heating else 1.0 / len(shares)) for name, share in shares.items()}


def _replaced(name: str, share: float, electricity: Uncertain | None, ledger: Ledger) -> Replaced:
    entry = ledger.shelf.data.fuels[name]
    fields = FIELDS | {field: quantity for field, quantity in OPTIONAL.items() if getattr(entry, field) is not None}
    figures = {quantity: ledger.figure("fuels", name, field) for field, quantity in fields.items()}
    figures |= {"useful_heat_per_day": ledger.uncertain("useful_heat_per_day"), "fuel_share": certain(share)}
    figures["electricity_replaced_per_day"] = electricity or certain(0.0)
    given = {quantity: figure.value for quantity, figure in figures.items()}
    return Replaced(name, entry, share, electricity, given, derive(figures, _wanted(entry)))


def _wanted(entry: Fuel) -> tuple[str, ...]:
    mass = ("fuel_mass_per_day",) if entry.heating_value is not None else ()
    volume = ("fuel_volume_per_day",) if mass and entry.density is not None else ()
    return ("fuel_heat_per_day", "carbon_dioxide_avoided", *mass, *volume)


def trace_of_fuels(climate: Climate) -> list[dict[str, Any]]:
    """How each fuel's quantities came about."""
    return [{**step, "of": fuel.id} for fuel in climate.fuels for step in GRAPH.trace(fuel.given, tuple(fuel.found))]


def told_fuels(climate: Climate, ledger: Ledger) -> list[Answer]:
    """Each fuel: per day, per year, and its carbon dioxide; an alternative also with what is won and what leak would undo it."""
    return [_told(fuel, climate, ledger) for fuel in climate.fuels]


def _told(fuel: Replaced, climate: Climate, ledger: Ledger) -> Answer:
    found = {name: one.told for name, one in fuel.found.items()}
    heat, mass, volume = (found.get(name) for name in ("fuel_heat_per_day", "fuel_mass_per_day", "fuel_volume_per_day"))
    told: Answer = {"fuel": fuel.id, "name": fuel.entry.name, "share": in_percent(fuel.share)}
    if mass is not None:
        told |= {"per_day": in_kilograms_per_day(*mass), "per_year": in_kilograms_per_year(*mass)}
    elif heat is not None:
        told |= {"per_day": in_kilowatt_hours_per_day(*heat), "per_year": in_kilowatt_hours_per_year(*heat)}
    if volume is not None:
        told |= {"volume_per_day": in_litres_per_day(*volume), "volume_per_year": in_litres_per_year(*volume)}
    if fuel.electricity is not None:
        told["electricity_made_per_day"] = in_kilowatt_hours_per_day(*fuel.electricity.told)
    told["carbon_dioxide_avoided_per_year"] = in_kilograms_per_year(*found["carbon_dioxide_avoided"])
    return told if climate.together else told | _balance(fuel.avoided, climate, ledger)


def told_emissions(climate: Climate, ledger: Ledger) -> Answer:
    """Methane lost and its warming; for stated fuels what is saved and won, and the leak that would undo it."""
    vented = ledger.uncertain("gas_vented_per_day").by(ledger.uncertain("methane_in_gas"))
    leaked = ledger.uncertain("gas_leaked_per_day").by(ledger.uncertain("methane_in_gas"))
    avoided = climate.avoided
    return {
        "methane_leaked_per_year": in_kilograms_per_year(*leaked.told),
        "methane_vented_per_year": in_kilograms_per_year(*vented.told),
        "leak_share": in_percent(*ledger.of("leak_share")),
        "warming_of_methane_lost_per_year": in_kilograms_per_year(*climate.lost.told),
        **(
            {}
            if avoided is None
            else {"carbon_dioxide_avoided_per_year": in_kilograms_per_year(*avoided.told)} | _balance(avoided, climate, ledger)
        ),
        **told_manure(climate.manure),
        "left_out": _left_out(climate),
    }


def _left_out(climate: Climate) -> list[Message]:
    """What the balance does not count; of alternatives, what not all of them count."""
    uncounted = climate.purposes.uncounted(climate.together and climate.electricity_counts)
    uses = [say("use-left-out-uses")] if uncounted else []
    return [say("use-left-out-fire"), *uses, not_counted(climate.manure), say("use-left-out-slip"), say("use-left-out-fertiliser")]


def _balance(avoided: Uncertain, climate: Climate, ledger: Ledger) -> Answer:
    net = climate.net(avoided)
    value, *ends = net.told
    low, high = ends or (value, value)
    verdict = "saves" if low > 0 else "harms" if high < 0 else "uncertain"
    return {
        "net_per_year": in_kilograms_per_year(*net.told),
        "verdict": verdict,
        **known(breakeven_leak_share=_breakeven(climate.saved(avoided), ledger)),
        "text": (TEXTS if climate.manure is None else TEXTS_WITH_MANURE)[verdict],
    }


def _breakeven(saved: Uncertain, ledger: Ledger) -> Answer | None:
    """The leak share with which nothing is won, venting as it is; None where no gas is used."""
    if not ledger.values["gas_burnt_per_day"] + ledger.values["gas_vented_per_day"]:
        return None
    names = ("methane_in_gas", "warming_potential", "gas_vented_per_day", "gas_burnt_per_day")
    return in_percent(*applied(_leak_that_undoes, saved, *(ledger.uncertain(name) for name in names)).told)


def _leak_that_undoes(saved: Numeric, methane: Numeric, potential: Numeric, vented: Numeric, burnt: Numeric) -> Numeric:
    leaked = most(saved / potential / methane - vented, 0.0)
    return leaked / (leaked + burnt + vented)
