"""What a use of gas is asked with: what burns and when, what gas there is, the pipe, and the fuels whose place it takes."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import Field

from kilisho.questions import fields as f
from kilisho.questions.requests import Appliances, Ask, Climate, Enquiry, MeasuredSubstrate

MOST_FUELS = 12
MOST_MANURES = 24


class GasPipe(Ask):
    """The pipe from the plant to the appliances, as one length."""

    length: Annotated[float, f.PIPE_LENGTH] = Field(description="Along the pipe.")
    inner_diameter: Annotated[float | None, f.BORE] = Field(
        None, description="True bore, not the nominal inch; when absent only a size is recommended."
    )
    material: Annotated[str | None, f.PIPE_MATERIAL] = Field(None, description="Galvanised steel, the rougher one, is assumed when absent.")
    fittings: Annotated[int | None, f.whole_number(0, 500)] = Field(
        None, description="Bends, tees and valves; a share of the length is added for them when absent."
    )


class ReplacedFuel(Ask):
    """A fuel that would be burnt without the gas."""

    fuel: Annotated[str, f.FUEL] = Field(description="Id of a fuel of the rulebook.")
    share: Annotated[float, f.MASS_SHARE] = Field(
        1.0,
        description="Part of the useful heat of cooking for which it would be burnt; 0 for electricity that cooks nothing.",
    )


class ManureBefore(MeasuredSubstrate):
    """Manure that is fed to the digester, and how it was kept before there was one."""

    mass: Annotated[float, f.DAILY_MASS] = Field(description="Fresh mass per day.")
    management: Annotated[str, f.MANURE_MANAGEMENT] = Field(description="Id of a way of keeping manure, of the rulebook's practice.")


class GasUseRequest(Enquiry):
    """What burns the gas, what gas there is, or both. The demand is stated in one way: appliances, people_cooked_for or gas_demand."""

    appliances: Appliances = Field([], description="With clock hours for all of them the gas is followed through the hours of the day.")
    people_cooked_for: Annotated[int | None, f.whole_number(1, 10_000)] = Field(None, description="Demand for cooking.")
    gas_demand: Annotated[float | None, f.DAILY_GAS] = Field(None, description="Biogas wanted per day, as used.")
    biogas_per_day: Annotated[float | None, f.GAS_GIVEN] = Field(
        None, description="Gas that reaches store and pipe, as used; when absent the feed that the demand needs is told."
    )
    gas_storage_volume: Annotated[float | None, f.GAS_STORAGE_VOLUME] = Field(
        None, description="Usable gas storage; as much as the use needs is assumed when absent."
    )
    methane_share: Annotated[float | None, f.METHANE_SHARE] = Field(None, description="Methane in the gas by volume, if measured.")
    gas_pressure: Annotated[float | None, f.GAUGE_PRESSURE] = Field(
        None, description="In the plant against the open air while gas is used, for instance the height of a water column."
    )
    pipe: GasPipe | None = None
    replaced_fuels: list[ReplacedFuel] = Field(
        [],
        max_length=MOST_FUELS,
        description="Fuels whose place the gas takes in cooking; electricity also where appliances make it of gas. Each fuel of the "
        "rulebook alone is told when empty.",
    )
    substrate: Annotated[str | None, f.SUBSTRATE] = Field(
        None, description="What would be fed, for the feed that the demand needs; cattle dung is assumed when absent."
    )
    manure_before: list[ManureBefore] = Field(
        [],
        max_length=MOST_MANURES,
        description="For the methane that manure no longer gives off. Nothing is assumed and nothing counted of it when empty.",
    )
    climate: Climate | None = Field(None, description="The altitude, and for manure_before the air's mean of the year.")


EXAMPLE: dict[str, Any] = {
    "name": "Highfold (invented)",
    "appliances": [
        {
            "appliance": "double_burner_stove",
            "use": [{"from": "05:30", "to": "07:00"}, {"from": "12:00", "to": "13:00"}, {"from": "18:00", "to": "19:30"}],
        },
        {"appliance": "mantle_lamp", "use": [{"from": "19:00", "to": "22:00"}]},
    ],
    "biogas_per_day": {"value": 2.6, "unit": "m3/d"},
    "gas_storage_volume": {"value": 1.2, "unit": "m3"},
    "gas_pressure": {"value": 40, "unit": "cm[H2O]"},
    "pipe": {"length": {"value": 25, "unit": "m"}, "inner_diameter": {"value": 20.9, "unit": "mm"}, "fittings": 6},
    "replaced_fuels": [{"fuel": "firewood", "share": 0.8}, {"fuel": "paraffin", "share": 0.2}],
    "manure_before": [{"substrate": "cattle_dung", "mass": {"value": 75, "unit": "kg/d"}, "management": "solid_storage"}],
    "climate": {"mean_air_temperature": {"value": 19, "unit": "Cel"}, "altitude": {"value": 1500, "unit": "m"}},
}
