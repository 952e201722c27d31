"""The shape of a first charge's answer, and the small pieces it is told in."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal

from pydantic import Field

from kilisho.farm import Shelf
from kilisho.formulas.labour import whole_containers
from kilisho.questions.answers import (
    Amount,
    Answer,
    Common,
    ContainerCount,
    Event,
    SubstrateShare,
    Told,
    in_kilograms,
    in_litres,
    in_percent,
)
from kilisho.questions.feeding import Fed, uncertain_mass
from kilisho.ranges import Uncertain
from kilisho.rulebook import Structure


class HeapAccount(Told):
    """The heap day by day in kilograms; on every day brought = on_heap + volatile_solids_lost + water_lost."""

    unit: str
    first_day: str | None = Field(None, description="Date of the first entry, which is the state before collection.")
    brought: list[float]
    on_heap: list[float]
    volatile_solids_lost: list[float]
    water_lost: list[float]


class HeapTold(Told):
    """One substrate's heap on the day of filling."""

    substrate: str
    name: str
    per_day: Amount
    needed: Amount
    collected: Amount
    on_heap: Amount
    shortfall: Amount
    days_needed: Amount | None = None
    nitrogen_lost: Amount
    account: HeapAccount


class PurchaseTold(Told):
    """What to take from one source."""

    name: str
    substrate: str
    mass: Amount
    cost: float = Field(description="In the currency of the request's prices.")
    distance: Amount
    loads: int | None = None


class Remedy(Told):
    """One way to close a shortfall, with what it asks and whether it is open to this farm."""

    remedy: str = Field(description="purchase, wait, starter_slurry or smaller_first_fill.")
    possible: bool
    text: str
    amount: Amount | None = None
    date: str | None = None


class StockpileTold(Told):
    """Own collection against the need. Dates are there when the request states one to count from."""

    days_needed: Amount | None = Field(
        None, description="Days of own collection until there is enough; absent when there never is. A high end of 400 d stands for never."
    )
    start_by: str | None = Field(None, description="Latest first day of collection for the stated ready date.")
    enough_on: str | None = Field(None, description="Day on which own collection suffices.")
    collected: Amount
    on_heap: Amount = Field(description="What is left of it on the day of filling.")
    shortfall: Amount
    shortfall_after_purchases: Amount
    enough: bool
    in_words: str
    oldest: Amount | None = Field(None, description="Age of the oldest dung on the day of filling; absent where nobody knows it.")
    within_keeping_time: bool = Field(description="False also where the age is not known.")
    keeps_for: Amount = Field(description="How long it keeps under this cover.")
    cover: str
    purchases: list[PurchaseTold]
    remedies: list[Remedy]
    heaps: list[HeapTold]


class LabourTold(Told):
    """Person-hours, and days where the request says who works."""

    mixing: Amount
    carrying: Amount
    total: Amount
    trips: int
    carried_in: str
    days: int | None = None
    mass_per_person_and_day: Amount | None = None
    hauled_to_farm: Amount | None = Field(None, description="Mass that others give, with the starter slurry; hauling it is not counted.")
    not_counted_text: str | None = Field(None, description="Says so in words.")


class Confirmation(Told):
    """A fact that must be known before filling."""

    fact: str
    name: str
    state: Literal["confirmed", "refused", "unknown"]


class RampStep(Told):
    """A step of the maintenance feed after the first flame; days count from the start of feeding."""

    from_day: int
    share_of_full_feed: float
    feed_per_day: Amount


class StartUpTold(Told):
    """From the filled digester to full feeding."""

    digester_temperature: dict[str, Any]
    days_to_first_burnable_gas: Amount | None = Field(
        None,
        description="By the process model; the high end is the later of it and practice. Absent where the typical charge does not start, "
        "and where other feed than dung can sour it.",
    )
    in_practice: Amount = Field(
        description="Days that practice reports for such a temperature; longer, since it counts until the gas space was filled and vented."
    )
    first_burnable_gas_from: str | None = None
    first_burnable_gas_until: str | None = None
    vent_completely: int
    starts_unaided: bool = Field(description="Whether practically all of the fresh mass (99 %) is of substrates that start by themselves.")
    sure_to_start: bool = Field(
        description="Whether practically all of the charge starts by itself, and nineteen of twenty samples of the process model start; if "
        "not, get starter slurry, and leave what does not start by itself for later."
    )
    steps: list[str]
    ramp: list[RampStep]


class FirstChargeAnswer(Common):
    """The plan of a first charge."""

    slurry_volume: Amount
    substrate_mass: Amount
    substrate_volume: Amount
    water_volume: Amount
    starter_slurry: Amount
    slurry_total_solids: Amount
    substrates: list[SubstrateShare]
    animal_days: Amount | None = Field(
        None,
        description="Days of one animal's dung in the main substrate's own mass, which as many animals give in one day; absent where no "
        "animal gives it.",
    )
    stockpile: StockpileTold
    containers: list[ContainerCount]
    labour: LabourTold
    confirm_before_filling: list[Confirmation]
    start_up: StartUpTold
    schedule: list[Event]


def substrate(fed: Fed, total: Uncertain) -> Answer:
    """One substrate's mass and its share of the total [kg]."""
    mass = uncertain_mass(fed)
    share = (1.0,) if fed.mass == total.value else mass.over(total).told
    return {"substrate": fed.id, "name": fed.entry.name, "mass": in_kilograms(*mass.told), "share": in_percent(*share)}


def container(name: str, volume: float, values: Mapping[str, float]) -> Answer:
    """Whole containers of one kind (volume [m3]) for the charge's substrate and water."""
    return {
        "name": name,
        "volume": in_litres(volume),
        "substrate": whole_containers(values["substrate_volume"], volume),
        "water": whole_containers(values["water_volume"], volume),
        "load": in_kilograms(volume * values["bulk_density"]),
    }


def confirmations(structure: Structure, shelf: Shelf, facts: Mapping[str, Any]) -> list[Answer]:
    """What must be known before the digester is filled, and whether it is."""
    asked = structure.confirm_before_filling
    return [{"fact": fact, "name": shelf.data.facts[fact].name, "state": _state(facts, fact, shelf)} for fact in asked]


def _state(facts: Mapping[str, Any], fact: str, shelf: Shelf) -> str:
    if fact not in facts:
        return "unknown"
    value = facts[fact]
    if fact == "cured_for":
        return "confirmed" if value >= shelf.figure("curing_time").least else "refused"
    return "confirmed" if value is True or value == "passed" else "refused"
