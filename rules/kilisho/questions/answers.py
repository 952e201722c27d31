"""The parts of answers that several questions share: their published shapes, and the functions that build them as plain dictionaries."""

from __future__ import annotations

import datetime as dt
from typing import Any, Literal, Protocol

from pydantic import BaseModel, ConfigDict, Field

from kilisho.units import unit_of

Answer = dict[str, Any]
LAST_ORDINAL = dt.date.max.toordinal()


class Told(BaseModel):
    """Base of every answer: open, since later versions add members."""

    model_config = ConfigDict(extra="allow")


class Amount(Told):
    """A number with its UCUM unit, and the range within which it lies where it is uncertain."""

    value: float
    unit: str
    low: float | None = Field(None, description="Low end of the range; absent when the number is exact for what was stated.")
    high: float | None = Field(None, description="High end of the range.")


class Assumption(Told):
    """Something the caller did not state and the rulebook supplied."""

    quantity: str
    of: str | None = Field(None, description="What it belongs to, such as a substrate's id.")
    value: float | None = None
    low: float | None = None
    high: float | None = None
    unit: str | None = None
    choice: str | None = Field(None, description="For an assumption that is not a number.")
    curve: str | None = Field(None, description="Id of the table of practice that was read.")
    basis: str = Field(description="published, common_practice, from_memory, derived or judgement.")
    source: list[str] = []
    note: str | None = None


class LanguageTold(Told):
    """The language of an answer's sentences."""

    tag: str = Field(description="Language tag, such as sw.")
    reviewed: bool = Field(description="Whether speakers of the language have read every translation that was used.")
    untranslated: int = Field(description="Sentences that are English for want of a translation.")


class Urgent(Told):
    """What carries its English text as well while it is of danger level and its translation is not reviewed."""

    english: dict[str, str] | None = Field(None, description="The English by member, where a danger is told in words not yet reviewed.")


class Finding(Urgent):
    """How one check ended. ``unknown`` names what is missing and is never to be read as a pass."""

    check: str = Field(description="Id of the check; look it up under /v1/checks.")
    verdict: Literal["pass", "fail", "unknown"]
    severity: str = Field(description="danger, warning, caution or notice. Treat a word you do not know as a warning.")
    topic: str
    title: str
    subject: str
    value: Any = None
    must: dict[str, Any] = Field(description="What is asked of the subject.")
    missing: list[str] | None = Field(None, description="Facts that were not stated.")
    why: str
    do: str
    basis: str
    source: list[str] = []


class CautionTold(Urgent):
    """A caution that stands beside the answer whatever the facts are."""

    id: str
    signal: str
    text: str
    basis: str
    source: list[str] = []


class RulebookIdentity(Told):
    """Which rulebook gave the answer."""

    id: str
    version: str
    hash: str


class Step(Told):
    """One step of the derivation, in canonical units."""

    quantity: str
    of: str | None = None
    value: float
    unit: str
    formula: str
    inputs: dict[str, float]
    input_units: dict[str, str]
    source: list[str] = []
    validity: str | None = None


class MeasureTold(Told):
    """Something worth measuring, with what it would narrow."""

    quantity: str
    of: str | None = Field(None, description="What it belongs to, such as a substrate's id.")
    answer: str = Field(description="Name of the number in this answer whose range it would narrow.")
    explains: Amount = Field(description="Part of the spread of that number that comes from this input.")
    narrows: Amount = Field(description="By how much the range would shrink if the input were known.")
    how: str
    stated_as: str | None = Field(None, description="Member of a request that takes it, where it is not called like the quantity.")


class Common(Told):
    """What every answer carries. Low and high of a number are the ends between which nine in ten of its samples lie."""

    name: str | None = None
    assumptions: list[Assumption]
    measure_first: list[MeasureTold] = Field([], description="The inputs whose measurement would narrow the answer most.")
    findings: list[Finding]
    cautions: list[CautionTold]
    rulebook: RulebookIdentity
    language: LanguageTold | None = Field(None, description="In an answer by itself; its parts have none.")
    derivation: list[Step] | None = Field(None, description="Only with explain=true.")


class ContainerCount(Told):
    """Whole containers; the last one may not be full."""

    name: str
    volume: Amount
    substrate: int
    water: int
    urine: int | None = None
    load: Amount = Field(description="Mass of one container full of substrate.")


class SubstrateShare(Told):
    """One substrate's part."""

    substrate: str
    name: str
    mass: Amount
    share: Amount


class Event(Told):
    """Something to do. ``day`` counts from the day of the first filling or feeding; ``date`` is there when the day is known."""

    event: str
    day: int
    date: str | None = None
    text: str
    repeats_every: Amount | None = None


class Tell(Protocol):
    """Tells a canonical value in one unit, with its range where it is uncertain."""

    def __call__(self, value: float, low: float | None = None, high: float | None = None) -> Answer: ...


def told_in(kind: str, code: str, decimals: int) -> Tell:
    """The function that tells canonical values of ``kind`` in ``code``.

    ``decimals`` are as many as the trade can use and the balances need; more would claim what nobody knows.
    """
    unit = unit_of(kind, code)
    scale, offset = 10.0**decimals, unit.offset
    times = scale / unit.factor

    # Half up by floor: several times faster than round(), which prints the number and reads it again.
    def tell(value: float, low: float | None = None, high: float | None = None) -> Answer:
        told = ((value - offset) * times + 0.5) // 1 / scale
        if low is None or high is None:
            return {"value": told, "unit": code}
        ends = ((low - offset) * times + 0.5) // 1 / scale, ((high - offset) * times + 0.5) // 1 / scale
        return {"value": told, "unit": code, "low": ends[0], "high": ends[1]}

    return tell


in_kilograms = told_in("mass", "kg", 3)
in_kilograms_per_day = told_in("mass_flow", "kg/d", 4)
in_cubic_metres = told_in("volume", "m3", 6)
in_litres = told_in("volume", "L", 3)
in_cubic_metres_per_day = told_in("volume_flow", "m3/d", 6)
in_litres_per_day = told_in("volume_flow", "L/d", 4)
in_days = told_in("time", "d", 4)
in_years = told_in("time", "a", 3)
in_percent = told_in("share", "%", 4)
in_whole_percent = told_in("share", "%", 0)
in_litres_per_kilogram = told_in("gas_yield", "L/kg", 4)
in_number = told_in("number", "1", 6)
in_litres_per_hour = told_in("gas_use_rate", "L/h", 2)
in_litres_per_year = told_in("volume_flow", "L/a", 0)
in_megajoules_per_day = told_in("heat_per_day", "MJ/d", 4)
in_kilowatt_hours_per_day = told_in("heat_per_day", "kW.h/d", 4)
in_kilowatt_hours_per_year = told_in("heat_per_day", "kW.h/a", 1)
in_megajoules_per_cubic_metre = told_in("heat_per_volume", "MJ/m3", 3)
in_kilograms_per_cubic_metre = told_in("density", "kg/m3", 4)
in_pascals = told_in("pressure", "Pa", 2)
in_millimetres = told_in("length", "mm", 1)
in_metres_per_second = told_in("speed", "m/s", 3)
in_hours = told_in("working_time", "h", 3)
in_celsius = told_in("temperature", "Cel", 3)
in_kilopascals = told_in("pressure", "kPa", 3)
in_kilometres = told_in("length", "km", 4)
in_metres = told_in("length", "m", 4)
in_kilograms_per_cubic_metre_and_day = told_in("loading", "kg/m3/d", 6)
in_grams_per_litre = told_in("density", "g/L", 5)
in_milligrams_per_litre = told_in("density", "mg/L", 3)
in_grams = told_in("mass", "g", 1)
in_kilograms_per_year = told_in("mass_flow", "kg/a", 3)
in_cubic_metres_per_year = told_in("volume_flow", "m3/a", 3)
in_kilograms_per_hectare = told_in("areic_mass", "kg/har", 2)
in_cubic_metres_per_hectare = told_in("areic_volume", "m3/har", 2)
in_hectares = told_in("area", "har", 4)
in_square_metres = told_in("area", "m2", 2)
in_months = told_in("time", "mo", 2)


def known(**members: Any) -> Answer:
    """The members that are known; what is not known is left out of an answer rather than told as null."""
    return members if None not in members.values() else {name: value for name, value in members.items() if value is not None}


def plus_days(day: dt.date | None, days: float | None) -> str | None:
    """``day`` moved by whole days as text; None where either is unknown or the day lies beyond the calendar (year 1 to 9999)."""
    if day is None or days is None:
        return None
    ordinal = day.toordinal() + int(days)
    return dt.date.fromordinal(ordinal).isoformat() if 1 <= ordinal <= LAST_ORDINAL else None
