"""An installation's record: flat, as a programme's register keeps it. The same members are the columns of a fleet's table."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import Field

from kilisho.questions import fields as f
from kilisho.questions.requests import Date, Enquiry

# Far beyond what can be meant: a number that is possible in another unit only is a finding of the record, not a fault of the request.
TOTAL_VOLUME = f.InUnit("volume", "m3", 1e-4, 1e6)
GAS_STORAGE_VOLUME = f.InUnit("volume", "m3", 0, 1e6)
FEED_MASS = f.InUnit("mass_flow", "kg/d", 0, 1e7)
WATER_VOLUME = f.InUnit("volume_flow", "L/d", 0, 1e7)
GAS_MEASURED = f.InUnit("volume_flow", "m3/d", 0, 1e6)
GAS_PRESSURE = f.InUnit("pressure", "Pa", -1e6, 1e8)
AIR_TEMPERATURE = f.InUnit("temperature", "Cel", -100, 400)
INTERVAL = f.InUnit("time", "d", 0.04, 365)
DISTANCE_TO_WELL = f.InUnit("length", "m", 0, 10_000)


class InstallationRequest(Enquiry):
    """One installation as it was built and as it runs. Leave out what nobody knows: it is then unknown, never passed."""

    id: Annotated[str | None, f.LABEL] = Field(None, description="The register's own id; given back unchanged.")
    structure: Annotated[str, f.STRUCTURE] = Field(description="Kind of digester.")
    total_volume: Annotated[float, TOTAL_VOLUME] = Field(description="Slurry and gas space together.")
    gas_storage_volume: Annotated[float | None, GAS_STORAGE_VOLUME] = Field(None, description="Usable gas storage.")
    commissioned_on: Annotated[Date | None, f.DAY] = Field(None, description="Day of the first filling.")
    visited_on: Annotated[Date | None, f.DAY] = Field(None, description="Day on which the rest of the record was taken.")
    animal: Annotated[str | None, f.ANIMAL] = Field(None, description="Kind of animal whose dung is fed.")
    animal_count: Annotated[float | None, f.whole_number(0, 10_000_000)] = Field(None, description="Heads.")
    housing: Annotated[str | None, f.HOUSING] = Field(None, description="Where they stand; stall is assumed when absent.")
    substrate: Annotated[str | None, f.SUBSTRATE] = Field(None, description="What is fed; what the animal gives when absent.")
    feed_mass: Annotated[float | None, FEED_MASS] = Field(None, description="Fresh mass fed per day, on the mean.")
    water_volume: Annotated[float | None, WATER_VOLUME] = Field(None, description="Mixing water per day, on the mean.")
    feeding_interval: Annotated[float | None, INTERVAL] = Field(None, description="Time between feedings.")
    biogas_measured: Annotated[float | None, GAS_MEASURED] = Field(
        None, description="Gas of a day as metered: moist, at the pressure of the place."
    )
    gas_pressure: Annotated[float | None, GAS_PRESSURE] = Field(None, description="In the digester, against the open air.")
    ph: Annotated[float | None, f.plain_number(0, 1400)] = Field(None, description="Of the slurry.")
    mean_air_temperature: Annotated[float | None, AIR_TEMPERATURE] = Field(None, description="Mean of the year.")
    digester_temperature: Annotated[float | None, f.TEMPERATURE] = Field(None, description="Measured in the slurry.")
    altitude: Annotated[float | None, f.ALTITUDE] = Field(None, description="Above sea level; sea level when absent.")
    distance_to_well: Annotated[float | None, DISTANCE_TO_WELL] = Field(None, description="To the nearest drinking-water source.")


EXAMPLE: dict[str, Any] = {
    "name": "Highfold (invented)",
    "id": "INV-000417",
    "structure": "fixed_dome",
    "total_volume": {"value": 12, "unit": "m3"},
    "commissioned_on": "2024-03-01",
    "visited_on": "2027-02-15",
    "animal": "dairy_cow",
    "animal_count": 6,
    "substrate": "cattle_dung",
    "feed_mass": {"value": 64, "unit": "kg/d"},
    "water_volume": {"value": 70, "unit": "L/d"},
    "feeding_interval": {"value": 1, "unit": "d"},
    "biogas_measured": {"value": 480, "unit": "L/d"},
    "mean_air_temperature": {"value": 22, "unit": "Cel"},
}
