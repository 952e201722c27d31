"""The shape of a sizing's answer."""

from __future__ import annotations

from typing import Any

from pydantic import Field

from kilisho.questions.answers import Amount, Common, Told
from kilisho.questions.gas_state import GasState
from kilisho.questions.storage_methods import StorageMethod


class Side(Told):
    """What one side (supply, demand or water) would allow or need."""

    feed_per_day: Amount
    biogas_per_day: Amount
    working_volume: Amount
    total_volume: Amount


class VolumeRule(Told):
    """What the trade would build, beside the model's size."""

    total_volume: Amount
    why: str


class PressureStep(Told):
    """Gauge pressure with so much gas stored."""

    stored_gas: Amount
    gauge_pressure: Amount
    water_column: Amount


class GasPressure(Told):
    """How the pressure of a dome rises with the gas stored in it."""

    when_full: Amount = Field(description="With its range over the compensation tanks that are usual.")
    limit: Amount = Field(description="Most that this kind of structure is held to.")
    curve: list[PressureStep]
    statement: str


class SizingAnswer(Common):
    """The size of a digester. Volumes are those of the chosen buildable size."""

    limited_by: str = Field(description="supply, demand, water, or largest_buildable_size.")
    total_volume: Amount
    working_volume: Amount
    gas_storage_volume: Amount = Field(description="Gas that the chosen digester stores.")
    gas_storage_needed: Amount = Field(description="Gas storage that the use asks for.")
    gas_storage_method: StorageMethod = Field(description="By the hours of use where all appliances state their clock hours.")
    gas_storage_method_name: str
    needed_total_volume: Amount = Field(description="Before rounding up to a buildable size.")
    hydraulic_retention_time: Amount
    design_retention_time: Amount
    organic_loading_rate: Amount
    slurry_total_solids: Amount
    feed_per_day: Amount
    water_per_day: Amount
    slurry_per_day: Amount
    biogas_per_day: Amount = Field(description="In the coldest month, as used; see gas_state.")
    biogas_per_day_normal: Amount
    gas_state: GasState
    share_of_potential: Amount = Field(description="Part of the ultimate gas that this retention releases in the coldest month.")
    gas_demand: Amount | None = None
    demand_met: Amount | None = Field(None, description="Gas per day against demand.")
    digester_temperature: dict[str, Any]
    from_supply: Side | None = None
    from_demand: Side | None = None
    from_water: Side | None = None
    rule_of_thumb: VolumeRule
    dimensions: dict[str, Any]
    gas_pressure: GasPressure | None = Field(None, description="For domes.")
