"""What a sizing is asked with."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import Field

from kilisho.questions import fields as f
from kilisho.questions.requests import Appliances, Climate, Dilution, Enquiry, Feed, Herd


class SizingRequest(Enquiry):
    """What there is to feed, what gas is wanted, or both."""

    structure: Annotated[str | None, f.STRUCTURE] = Field(None, description="Kind of digester; a fixed dome is assumed when absent.")
    herd: Herd = Field([], description="Animals of the farm.")
    feed: Feed = Field([], description="Substrates; those of the herd when empty.")
    dilution: Dilution | None = None
    gas_demand: Annotated[float | None, f.DAILY_GAS] = Field(None, description="Biogas wanted per day, as used.")
    appliances: Appliances = Field([], description="Demand by appliances, instead of gas_demand or people_cooked_for.")
    people_cooked_for: Annotated[int | None, f.whole_number(1, 10_000)] = Field(
        None, description="Demand for cooking; not together with appliances or gas_demand."
    )
    climate: Climate | None = None
    water_available: Annotated[float | None, f.DAILY_WATER] = Field(None, description="Water that can be had per day.")
    hydraulic_retention_time: Annotated[float | None, f.InUnit("time", "d", 5, 365)] = Field(
        None, description="Retention to design for; from the coldest month's temperature when absent."
    )


EXAMPLE: dict[str, Any] = {
    "name": "Highfold (invented)",
    "structure": "fixed_dome",
    "herd": [{"animal": "dairy_cow", "count": 8, "housing": "stall"}],
    "dilution": {"water_to_feed_by_volume": 1},
    "gas_demand": {"value": 2.5, "unit": "m3/d"},
    "climate": {"mean_air_temperature": {"value": 22, "unit": "Cel"}, "yearly_swing": {"value": 4, "unit": "K"}},
    "water_available": {"value": 150, "unit": "L/d"},
}
