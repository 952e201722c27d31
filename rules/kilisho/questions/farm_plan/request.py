"""What a farm plan is asked with: one farm, whole."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import Field

from kilisho.questions import fields as f
from kilisho.questions.digestate.request import LONGEST_CROPS, CropItem
from kilisho.questions.first_charge.request import Stockpile
from kilisho.questions.gas_use.request import GasPipe
from kilisho.questions.maintenance_feed.request import Urine
from kilisho.questions.requests import (
    Appliances,
    Ask,
    Climate,
    Containers,
    Date,
    Digester,
    Dilution,
    Enquiry,
    Feed,
    Herd,
    Labour,
    Purchases,
)


class Construction(Ask):
    """When the digester is built."""

    starts_on: Annotated[Date | None, f.DAY] = Field(None, description="First day of building.")
    digester_ready_on: Annotated[Date | None, f.DAY] = Field(None, description="Day on which the digester may be filled.")


class FarmPlanRequest(Enquiry):
    """One farm. Whatever is stated is used by every part of the plan that it bears on."""

    structure: Annotated[str | None, f.STRUCTURE] = Field(None, description="Kind of digester; a fixed dome is assumed when absent.")
    digester: Digester | None = Field(None, description="A digester that is chosen or built already; it is sized when absent.")
    herd: Herd = Field([], description="Animals of the farm.")
    feed: Feed = Field([], description="Substrates; those of the herd when empty.")
    dilution: Dilution | None = None
    urine: Urine | None = None
    climate: Climate | None = None
    water_available: Annotated[float | None, f.DAILY_WATER] = Field(None, description="Water that can be had per day.")
    water_distance: Annotated[float | None, f.DISTANCE] = Field(None, description="From the water to the digester, one way.")
    gas_demand: Annotated[float | None, f.DAILY_GAS] = Field(
        None, description="Gas that is wanted. Of this, people_cooked_for and appliances the largest is sized for."
    )
    people_cooked_for: Annotated[int | None, f.whole_number(1, 10_000)] = Field(
        None, description="For the gas that is wanted; see gas_demand."
    )
    appliances: Appliances = Field([], description="What burns the gas, and when.")
    pipe: GasPipe | None = None
    construction: Construction = Construction()
    stockpile: Stockpile = Stockpile()
    starter_slurry: Annotated[float, f.STORED_MASS] = Field(0.0, description="Digested slurry from a working digester that can be added.")
    purchases: Purchases = Field([], description="Who could sell or give what is short.")
    containers: Containers = Field([], description="What material is carried in; a bucket is assumed when empty.")
    labour: Labour | None = None
    manure_management_before: Annotated[str | None, f.MANURE_MANAGEMENT] = Field(
        None, description="How the manure was kept before, for the methane that it no longer gives off; nothing is assumed when absent."
    )
    crops: list[CropItem] = Field([], max_length=LONGEST_CROPS, description="Fields for the digestate, the first its need first.")
    with_forecast: Annotated[bool, f.YES_NO] = Field(True, description="Whether the gas of the first year is forecast month by month.")


EXAMPLE: dict[str, Any] = {
    "name": "Highfold (invented)",
    "structure": "fixed_dome",
    "herd": [{"animal": "dairy_cow", "count": 8, "housing": "stall"}],
    "dilution": {"water_to_feed_by_volume": 1},
    "climate": {"mean_air_temperature": {"value": 22, "unit": "Cel"}, "yearly_swing": {"value": 4, "unit": "K"}, "warmest_month": 3},
    "water_available": {"value": 250, "unit": "L/d"},
    "people_cooked_for": 6,
    "appliances": [
        {
            "appliance": "double_burner_stove",
            "use": [{"from": "06:00", "to": "07:00"}, {"from": "12:00", "to": "13:30"}, {"from": "18:00", "to": "19:30"}],
        }
    ],
    "construction": {"starts_on": "2027-01-04", "digester_ready_on": "2027-02-08"},
    "stockpile": {"starts_on": "2027-01-04", "cover": "sheet"},
    "containers": [{"name": "bucket", "volume": {"value": 20, "unit": "L"}}],
    "labour": {"people": 3, "hours_per_day": 6},
    "site": {"distance_to_well": {"value": 25, "unit": "m"}},
    "crops": [{"crop": "maize", "area": {"value": 0.8, "unit": "har"}}],
}
