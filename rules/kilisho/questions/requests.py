"""The parts of requests that several questions share. All are closed: an unknown member is a fault."""

from __future__ import annotations

import datetime as dt
from typing import Annotated, Any

from pydantic import BaseModel, ConfigDict, Field

from kilisho.questions import fields as f

LARGEST_CARRIED_BY_HAND = 0.03
LONGEST_FEED, LONGEST_HERD, LONGEST_PURCHASES, LONGEST_CONTAINERS = 12, 40, 40, 12
LONGEST_APPLIANCES = 20


class Ask(BaseModel):
    """Base of every request and every part of one."""

    model_config = ConfigDict(extra="forbid", frozen=True, allow_inf_nan=False)


def _at_least_one(*names: str) -> ConfigDict:
    return ConfigDict(json_schema_extra={"anyOf": [{"required": [name]} for name in names]})


class Digester(Ask):
    """The digester as built. State its total volume, its working volume, or both."""

    model_config = _at_least_one("total_volume", "working_volume")

    structure: Annotated[str | None, f.STRUCTURE] = Field(None, description="Kind of digester; a fixed dome is assumed when absent.")
    total_volume: Annotated[float | None, f.TOTAL_VOLUME] = Field(None, description="Slurry and gas space together.")
    working_volume: Annotated[float | None, f.WORKING_VOLUME] = Field(None, description="Slurry at the normal level.")
    gas_storage_volume: Annotated[float | None, f.GAS_STORAGE_VOLUME] = Field(None, description="Usable gas storage, if measured.")
    depth: Annotated[float | None, f.DEPTH] = Field(
        None, description="Of the middle of the slurry below ground; 0 for a digester above ground; the structure's usual when absent."
    )
    age: Annotated[float | None, f.AGE] = Field(None, description="Time since it was first filled.")


class MeasuredSubstrate(Ask):
    """A substrate, with whatever was measured on it. A measured property replaces the rulebook's figure."""

    substrate: Annotated[str, f.SUBSTRATE] = Field(description="Id of a substrate of the rulebook.")
    total_solids: Annotated[float | None, f.SOLIDS] = Field(None, description="Dry matter, share of fresh mass.")
    volatile_solids: Annotated[float | None, f.SOLIDS] = Field(None, description="Organic part, share of total solids.")
    nitrogen: Annotated[float | None, f.NITROGEN] = Field(None, description="Nitrogen, share of total solids.")
    carbon_to_nitrogen: Annotated[float | None, f.CARBON_TO_NITROGEN] = Field(None, description="Carbon to nitrogen ratio by mass.")
    bulk_density: Annotated[float | None, f.BULK_DENSITY] = Field(None, description="Density as handled in a bucket.")
    biogas_yield: Annotated[float | None, f.GAS_YIELD] = Field(
        None, description="Biogas as used per mass of volatile solids at 25 Cel and 60 d."
    )
    methane_potential: Annotated[float | None, f.GAS_YIELD] = Field(
        None, description="Ultimate methane, normal volume per mass of volatile solids; replaces the yield's ultimate when stated."
    )
    methane_share: Annotated[float | None, f.METHANE_SHARE] = Field(None, description="Methane in the biogas by volume.")


class FeedItem(MeasuredSubstrate):
    """A substrate of a feed or charge."""

    share: Annotated[float | None, f.MASS_SHARE] = Field(None, description="Part of the fresh mass of all substrates.")


class DailyFeedItem(FeedItem):
    """A substrate that is fed regularly."""

    mass: Annotated[float | None, f.DAILY_MASS] = Field(None, description="Fresh mass per day; taken from the herd when absent.")


class ChargeItem(FeedItem):
    """A substrate of the first charge."""

    mass: Annotated[float | None, f.CHARGED_MASS] = Field(None, description="Fresh mass to be charged; worked out when absent.")
    gathered_per_day: Annotated[float | None, f.DAILY_MASS] = Field(
        None, description="What the farm gathers of it per day, for substrates that no animal of the herd gives."
    )


class HerdItem(Ask):
    """Animals of one kind. ``dung_per_day`` is what is gathered from one head as measured, so no share is taken off it."""

    animal: Annotated[str, f.ANIMAL] = Field(description="Id of an animal of the rulebook.")
    count: Annotated[int, f.whole_number(0, 1_000_000)] = Field(description="Heads.")
    housing: Annotated[str | None, f.HOUSING] = Field(None, description="Where they stand; stall is assumed when absent.")
    dung_per_day: Annotated[float | None, f.DUNG_PER_HEAD] = Field(None, description="Dung gathered from one head per day, as measured.")
    live_weight: Annotated[float | None, f.LIVE_WEIGHT] = Field(
        None, description="Live weight of one head; its dung is then taken from it."
    )
    urine_per_day: Annotated[float | None, f.DAILY_WATER] = Field(None, description="Urine gathered from one head per day, as measured.")


class Dilution(Ask):
    """How the feed is mixed with water: by volume or to a target, not both. The substrate's practice when absent."""

    model_config = ConfigDict(json_schema_extra={"not": {"required": ["water_to_feed_by_volume", "target_total_solids"]}})

    water_to_feed_by_volume: Annotated[float | None, f.WATER_TO_FEED] = Field(None, description="Volumes of liquid per volume of feed.")
    target_total_solids: Annotated[float | None, f.SOLIDS] = Field(None, description="Total solids that the slurry should have.")


class MonthlyTemperature(Ask):
    """Twelve monthly means, January first."""

    values: list[Annotated[float, f.plain_number(-80, 340)]] = Field(min_length=12, max_length=12, description="January to December.")
    unit: Annotated[str, f.one_of(("Cel", "K", "[degF]"))] = Field("Cel", description="UCUM code.")


class Climate(Ask):
    """What is known of the temperature, measured in the slurry or of the air, and how high the place lies."""

    digester_temperature: Annotated[float | None, f.TEMPERATURE] = Field(None, description="Measured in the slurry.")
    mean_air_temperature: Annotated[float | None, f.TEMPERATURE] = Field(None, description="Mean of the year.")
    yearly_swing: Annotated[float | None, f.TEMPERATURE_SWING] = Field(None, description="Warmest month less coldest month.")
    warmest_month: Annotated[int | None, f.whole_number(1, 12)] = Field(None, description="1 for January; tells the season of a date.")
    monthly_air_temperature: MonthlyTemperature | None = Field(None, description="Means of the months.")
    altitude: Annotated[float | None, f.ALTITUDE] = Field(None, description="Above sea level; sea level when absent.")


class ClockHours(Ask):
    """From one time of day to another; past midnight where it ends before it begins."""

    start: Annotated[float, f.CLOCK_START] = Field(alias="from", description="HH:MM, 00:00 to 23:59.")
    end: Annotated[float, f.CLOCK_END] = Field(alias="to", description="HH:MM, 00:00 to 24:00.")


class ApplianceUse(Ask):
    """Appliances of one kind."""

    appliance: Annotated[str, f.APPLIANCE] = Field(description="Id of an appliance of the rulebook.")
    count: Annotated[int, f.whole_number(1, 1000)] = Field(1, description="How many.")
    hours_per_day: Annotated[float | None, f.HOURS_PER_DAY] = Field(
        None, description="Hours each burns a day; from use, or the usual hours, when absent."
    )
    use: list[ClockHours] = Field([], max_length=24, description="When each burns, instead of hours_per_day; then storage is exact.")


class Container(Ask):
    """Something the farm carries material in."""

    name: Annotated[str, f.LABEL] = Field(description="What people call it.")
    volume: Annotated[float, f.CONTAINER_VOLUME] = Field(description="Filled as it is carried.")
    carried_by: Annotated[str | None, f.CARRIED_BY] = Field(None, description="By hand up to 30 L, on wheels above, when absent.")

    @property
    def by_hand(self) -> bool:
        """Whether a person lifts it, so that lifting limits apply."""
        return self.carried_by in ("hand", "head") or (self.carried_by is None and self.volume <= LARGEST_CARRIED_BY_HAND)


class Labour(Ask):
    """Who does the work."""

    people: Annotated[int, f.whole_number(1, 1000)] = Field(description="People who work on it.")
    hours_per_day: Annotated[float, f.HOURS_PER_DAY] = Field(description="Hours each works a day.")


class Purchase(Ask):
    """Somebody who sells or gives substrate."""

    model_config = _at_least_one("available", "per_day")

    name: Annotated[str, f.LABEL] = Field(description="Who or where.")
    substrate: Annotated[str | None, f.SUBSTRATE] = Field(None, description="What it is; the first of the feed when absent.")
    available: Annotated[float | None, f.STORED_MASS] = Field(None, description="Mass that can be had in all.")
    per_day: Annotated[float | None, f.DAILY_MASS] = Field(None, description="Mass that can be had per day of collection.")
    distance: Annotated[float | None, f.DISTANCE] = Field(None, description="One way.")
    price: Annotated[float | None, f.PRICE_PER_MASS] = Field(None, description="In the farm's own currency per mass; free when absent.")
    load: Annotated[float | None, f.LOAD_MASS] = Field(None, description="Mass of one load, where only whole loads are sold.")


class Enquiry(Ask):
    """What every question takes."""

    name: Annotated[str | None, f.LABEL] = Field(None, description="Name of the farm; given back unchanged.")


def stated(part: Ask | None, *names: str) -> dict[str, Any]:
    """The members of ``part`` that the caller stated, by name."""
    if part is None:
        return {}
    return {name: value for name in names if (value := getattr(part, name)) is not None}


Date = dt.date
Feed = Annotated[list[DailyFeedItem], Field(max_length=LONGEST_FEED)]
Charge = Annotated[list[ChargeItem], Field(min_length=1, max_length=LONGEST_FEED)]
Herd = Annotated[list[HerdItem], Field(max_length=LONGEST_HERD)]
Purchases = Annotated[list[Purchase], Field(max_length=LONGEST_PURCHASES)]
Containers = Annotated[list[Container], Field(max_length=LONGEST_CONTAINERS)]
Appliances = Annotated[list[ApplianceUse], Field(max_length=LONGEST_APPLIANCES)]
