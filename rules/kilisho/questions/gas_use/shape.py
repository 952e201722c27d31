"""The shape of a gas use's answer."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from kilisho.questions.answers import Amount, Common, Told
from kilisho.questions.gas_state import GasState
from kilisho.questions.gas_use.demand import FlowFrom
from kilisho.questions.storage_methods import StorageMethod
from kilisho.rulebook import Purpose


class UseTold(Told):
    """The appliances of one kind."""

    appliance: str
    name: str
    purpose: Purpose
    count: int
    gas_per_hour: Amount = Field(description="Of all of them together.")
    hours_per_day: Amount
    gas_per_day: Amount


class RunsFor(Told):
    """How long the gas keeps one appliance alight."""

    appliance: str
    name: str
    hours_per_day: Amount = Field(description="Alone; more than 24 means more than one of them all day.")


class Spell(Told):
    """From one time of day to another with less gas than is wanted; it lasts over midnight where it ends before it begins."""

    from_: str = Field(alias="from")
    to: str
    hours: Amount


class HourTold(Told):
    """One hour of a day that repeats itself."""

    hour: int
    from_: str = Field(alias="from")
    to: str
    supply: Amount
    demand: Amount
    unmet: Amount = Field(description="Wanted gas that is not there.")
    vented: Amount = Field(description="Gas that finds the store full.")
    stored: Amount = Field(description="At the end of the hour.")


class FeedNeeded(Told):
    """Feed that would give the wanted gas."""

    substrate: str
    name: str
    mass_per_day: Amount
    text: str


class GasTold(Told):
    """The gas: moist and as used, dry at 0 Cel and 101.325 kPa where the name ends in ``_normal``."""

    methane_share: Amount = Field(description="By volume; the rest is taken as carbon dioxide.")
    lower_heating_value: Amount = Field(description="Of one cubic metre as metered; see gas_state.")
    lower_heating_value_normal: Amount
    higher_heating_value_normal: Amount
    lower_wobbe_index_normal: Amount = Field(description="Lower heating value over the root of the relative density.")
    density: Amount = Field(description="Moist, as used.")
    relative_density: Amount = Field(description="Dry gas over dry air: above 1 the gas sinks into pits, below it rises. Neither is safe.")
    gas_per_day: Amount
    gas_per_day_normal: Amount
    heat_per_day: Amount = Field(description="Lower heating value of the day's gas.")
    heat_per_day_in_kilowatt_hours: Amount


class PipeSize(Told):
    """A size of pipe of the rulebook."""

    pipe: str
    name: str
    inner_diameter: Amount
    pressure_drop: Amount
    keeps_limit: bool = Field(description="Whether the high end of the drop keeps the limit.")


class PipeTold(Told):
    """The pipe from plant to appliances."""

    busiest_flow: Amount
    busiest_flow_from: FlowFrom = Field(description="What the busiest flow rests on.")
    busiest_flow_is: str = Field(description="The same in words.")
    pressure_drop_limit: Amount = Field(
        description="Of practice, or what the plant's pressure leaves above the appliance's least, if less."
    )
    inner_diameter: Amount | None = Field(None, description="As stated; so are the members up to pressure_drop.")
    equivalent_length: Amount | None = Field(None, description="With what the fittings count for.")
    velocity: Amount | None = None
    reynolds_number: Amount | None = None
    flow: Literal["laminar", "turbulent"] | None = None
    pressure_drop: Amount | None = None
    sizes: list[PipeSize]
    recommended: PipeSize | None = Field(None, description="The narrowest size that keeps the limit; absent where none does.")
    plant_pressure: Amount | None = None
    appliance_pressure: Amount | None = Field(None, description="Plant's pressure less the drop of the stated bore or recommended size.")
    least_appliance_pressure: Amount | None = Field(None, description="Below it an appliance of the request burns badly or goes out.")
    text: str


class PurposeTold(Told):
    """Gas that is burnt for one purpose, and whether it counts in the place of a fuel."""

    purpose: Purpose
    name: str
    gas_per_day: Amount
    electricity_made_per_day: Amount | None = Field(None, description="For the purpose electricity.")
    text: str


class FuelTold(Told):
    """A fuel whose place the gas takes; by mass, electricity by energy."""

    fuel: str
    name: str
    share: Amount = Field(description="Part of the useful heat of cooking; 100 % for alternatives of which each is told alone.")
    per_day: Amount
    per_year: Amount
    volume_per_day: Amount | None = None
    volume_per_year: Amount | None = None
    electricity_made_per_day: Amount | None = Field(None, description="Of electricity: part of per_day that is made of gas.")
    carbon_dioxide_avoided_per_year: Amount
    net_per_year: Amount | None = Field(None, description="Of an alternative; see emissions.")
    verdict: Literal["saves", "harms", "uncertain"] | None = None
    breakeven_leak_share: Amount | None = None
    text: str | None = None


class ManureTold(Told):
    """Manure that is fed instead of being kept as before."""

    substrate: str
    name: str
    management: str
    management_name: str
    methane_conversion: Amount = Field(description="Part of its methane potential that the air would have got.")
    methane_per_year: Amount = Field(description="Mass of methane.")


class Emissions(Told):
    """Carbon dioxide, and methane counted as the carbon dioxide that would warm as much over 100 years."""

    methane_leaked_per_year: Amount = Field(description="Mass of methane.")
    methane_vented_per_year: Amount = Field(description="Mass of methane let off because the store is full.")
    leak_share: Amount = Field(description="Part of the gas made that leaks before it is metered; on top of biogas_per_day.")
    warming_of_methane_lost_per_year: Amount = Field(description="Mass of carbon dioxide that would warm as much.")
    carbon_dioxide_avoided_per_year: Amount | None = Field(None, description="Of the stated fuels; absent where none was stated.")
    climate: Literal["cool", "temperate", "warm"] | None = Field(None, description="By the air's mean; for the methane of manure.")
    manure: list[ManureTold] | None = Field(None, description="Absent where nobody said how the manure was kept before.")
    manure_methane_spared_per_year: Amount | None = Field(None, description="Mass of methane; default factors of national inventories.")
    warming_of_manure_methane_per_year: Amount | None = Field(None, description="Mass of carbon dioxide that would have warmed as much.")
    net_per_year: Amount | None = Field(
        None, description="Avoided, with the warming of the manure's methane where it is told, less lost; below 0 the losses undo it."
    )
    verdict: Literal["saves", "harms", "uncertain"] | None = None
    breakeven_leak_share: Amount | None = Field(None, description="Leak share with which nothing is won.")
    text: str | None = None
    left_out: list[str]


class GasUseAnswer(Common):
    """A use of gas. Members of which nothing is known are absent: demand without appliances, hours without clock times."""

    gas_state: GasState
    demand_per_day: Amount | None = None
    demand_by_appliance: list[UseTold] | None = None
    runs_for: list[RunsFor] | None = Field(None, description="Where no demand is stated: what the gas could do.")
    supply_per_day: Amount | None = None
    burnt_per_day: Amount | None = None
    vented_per_day: Amount | None = Field(None, description="Let off unburnt on a day that repeats itself.")
    covered: Amount | None = Field(None, description="Part of the wanted gas that is there when it is wanted.")
    feed_needed: FeedNeeded | None = Field(None, description="Where no gas is stated.")
    storage_needed: Amount | None = Field(
        None, description="Least store that passes on all gas that can be used; without a stated supply, of one that equals the demand."
    )
    storage_method: StorageMethod | None = None
    storage_method_name: str | None = None
    gas_storage_volume: Amount | None = Field(None, description="The store that the hours are worked out with.")
    hours_unknown: str | None = None
    hours_without_gas: Amount | None = Field(None, description="Hours a day with less gas than is wanted.")
    without_gas: list[Spell] | None = Field(None, description="When the gas runs out, at typical rates; empty where it does not.")
    unmet_per_day: Amount | None = None
    cover_by_hour: list[HourTold] | None = Field(
        None, description="The 24 hours, where supply and all clock hours are stated; the first hour begins at midnight."
    )
    gas: GasTold
    pipe: PipeTold | None = None
    gas_by_purpose: list[PurposeTold] = Field(
        description="Together burnt_per_day, or demand_per_day where no gas is stated; all of it cooks where no appliances are stated."
    )
    other_uses_text: str | None = Field(None, description="How much gas counts for no cooking fuel; absent where all of it cooks.")
    replaced_fuels: list[FuelTold]
    emissions: Emissions
