"""What the gas is burnt for: cooking, which alone takes the place of cooking fuels, and light, cold, engines and other uses beside it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Final, get_args

from kilisho.farm import GRAPH, Ledger, derive
from kilisho.messages import Amount, Message, say
from kilisho.questions.answers import Answer, in_cubic_metres_per_day, in_kilowatt_hours_per_day
from kilisho.questions.gas_state import at_the_place
from kilisho.questions.gas_use.demand import Demand, Use
from kilisho.questions.gas_use.hours import Day
from kilisho.ranges import Uncertain, certain, sum_of
from kilisho.rulebook import Purpose

COOKING: Final = "cooking"
LIGHTING: Final = "lighting"
ELECTRICITY: Final = "electricity"
NAMES: dict[Purpose, Message] = {
    "cooking": say("use-for-cooking"),
    "heating": say("use-for-heating"),
    "refrigeration": say("use-for-refrigeration"),
    "lighting": say("use-for-lighting"),
    "shaft_power": say("use-for-shaft-power"),
    "electricity": say("use-for-electricity"),
    "other": say("use-for-other"),
}
MADE = "electricity_made_per_day"


@dataclass(frozen=True, slots=True)
class Generated:
    """Electricity [MJ/d] that the appliances of one kind make, and the quantities that it came from."""

    appliance: str
    given: dict[str, Any]
    made: Uncertain


@dataclass(frozen=True, slots=True)
class Purposes:
    """Gas that is burnt [m3/d] by what for, together all of it, and the electricity that is made of some."""

    gas: dict[Purpose, Uncertain]
    generated: list[Generated]

    @property
    def others(self) -> dict[Purpose, Uncertain]:
        """All gas but that which cooks [m3/d]."""
        return {purpose: gas for purpose, gas in self.gas.items() if purpose != COOKING}

    @property
    def electricity(self) -> Uncertain | None:
        """Electricity that all appliances make [MJ/d]; None where none makes any."""
        return sum_of(one.made for one in self.generated) if self.generated else None

    def uncounted(self, electricity_counts: bool) -> list[Purpose]:
        """What gas is burnt for without counting in the place of any fuel."""
        return [purpose for purpose in self.others if not (electricity_counts and purpose == ELECTRICITY)]


def work_out_purposes(demand: Demand | None, day: Day | None, ledger: Ledger) -> Purposes:
    """Part the gas that is burnt among its purposes, and put that of cooking into the ledger.

    Where no appliances are stated all gas is taken to cook: a demand by people is one for cooking, and so is what gas alone could replace.
    """
    burnt = ledger.uncertain("gas_burnt_per_day")
    uses = demand.uses if demand is not None else ()
    parts = list(zip(uses, _burnt_by(demand, day, burnt), strict=True)) if demand is not None and uses else []
    gas: dict[Purpose, Uncertain] = _by_purpose(parts) if parts else {COOKING: burnt}
    cooking = gas.get(COOKING, certain(0.0))
    ledger.put(gas_for_cooking_per_day=cooking.value)
    ledger.sample(gas_for_cooking_per_day=cooking.samples)
    return Purposes(gas, [_generated(use, part, ledger) for use, part in parts if use.purpose == ELECTRICITY])


def _burnt_by(demand: Demand, day: Day | None, burnt: Uncertain) -> list[Uncertain]:
    """Gas that each use burns [m3/d]: hour by hour where the hours are known, else each its part of what it wants."""
    if day is not None:
        return [day.burnt_by(use.intervals) for use in demand.uses]
    if demand.per_day.value <= 0:
        return [certain(0.0) for _ in demand.uses]
    met = burnt.over(demand.per_day)
    return [use.per_day.by(met) for use in demand.uses]


def _by_purpose(parts: Sequence[tuple[Use, Uncertain]]) -> dict[Purpose, Uncertain]:
    purposes: tuple[Purpose, ...] = get_args(Purpose)
    stated = {use.purpose for use, _ in parts}
    return {name: sum_of(gas for use, gas in parts if use.purpose == name) for name in purposes if name in stated}


def _generated(use: Use, gas: Uncertain, ledger: Ledger) -> Generated:
    figures = {
        "gas_for_electricity_per_day": gas,
        "electric_power": ledger.figure("appliances", use.appliance, "electric_power"),
        "electric_gas_rate": ledger.figure("appliances", use.appliance, "gas_per_hour").times(at_the_place(ledger)),
    }
    return Generated(use.appliance, {name: figure.value for name, figure in figures.items()}, derive(figures, (MADE,))[MADE])


def trace_of_purposes(purposes: Purposes) -> list[dict[str, Any]]:
    """How the electricity of each generator came about."""
    return [{**step, "of": one.appliance} for one in purposes.generated for step in GRAPH.trace(one.given, (MADE,))]


def told_purposes(purposes: Purposes, electricity_counts: bool) -> Answer:
    """Gas by purpose, and in a sentence how much of it counts for no cooking fuel."""
    others = purposes.others
    rows = [_told(purpose, gas, purposes, electricity_counts) for purpose, gas in purposes.gas.items()]
    if not others:
        return {"gas_by_purpose": rows}
    gas = Amount.of(in_cubic_metres_per_day(*sum_of(others.values()).told))
    return {"gas_by_purpose": rows, "other_uses_text": say("use-not-for-cooking", gas=gas)}


def _told(purpose: Purpose, gas: Uncertain, purposes: Purposes, electricity_counts: bool) -> Answer:
    made = purposes.electricity if purpose == ELECTRICITY else None
    return {
        "purpose": purpose,
        "name": NAMES[purpose],
        "gas_per_day": in_cubic_metres_per_day(*gas.told),
        **({} if made is None else {"electricity_made_per_day": in_kilowatt_hours_per_day(*made.told)}),
        "text": _counted(purpose, electricity_counts),
    }


def _counted(purpose: Purpose, electricity_counts: bool) -> Message:
    """Whether the gas of a purpose counts in the place of a fuel, and if not why."""
    if purpose == COOKING:
        return say("use-cooking-counts")
    if purpose == ELECTRICITY:
        return say("use-electricity-counts") if electricity_counts else say("use-electricity-uncounted")
    return say("use-light-uncounted") if purpose == LIGHTING else say("use-other-uncounted")
