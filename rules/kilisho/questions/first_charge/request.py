"""What a first charge is asked with."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import Field

from kilisho.questions import fields as f
from kilisho.questions.requests import Ask, Charge, Climate, Containers, Date, Digester, Dilution, Enquiry, Herd, Labour, Purchases


class Stockpile(Ask):
    """The heap that is gathered for the first charge."""

    starts_on: Annotated[Date | None, f.DAY] = Field(None, description="First day of collection.")
    cover: Annotated[str | None, f.COVER] = Field(None, description="How it is kept; an open heap is assumed when absent.")
    on_hand_age: Annotated[float | None, f.AGE] = Field(None, description="Age of the dung that lies there already, on the first day.")
    on_hand: Annotated[float, f.STORED_MASS] = Field(0.0, description="Fresh mass of the first substrate that lies there already.")


class FirstChargeRequest(Enquiry):
    """A new digester, what will be fed, and whatever is known of herd, dates, help and climate."""

    digester: Digester
    feed: Charge = Field(description="Substrates of the first charge; the first one is the main one.")
    dilution: Dilution | None = None
    first_fill_share: Annotated[float | None, f.SOLIDS] = Field(
        None, description="Slurry of the first charge as share of the total volume."
    )
    starter_slurry: Annotated[float, f.STORED_MASS] = Field(0.0, description="Digested slurry from a working digester that can be added.")
    herd: Herd = Field([], description="Animals of the farm.")
    stockpile: Stockpile = Stockpile()
    digester_ready_on: Annotated[Date | None, f.DAY] = Field(None, description="Day on which the digester may be filled.")
    purchases: Purchases = Field([], description="Who could sell or give what is short.")
    full_feed_per_day: Annotated[float | None, f.DAILY_MASS] = Field(
        None,
        description="Feed per day that the working digester gets, for the steps to it; when absent what the farm gathers, as far as the "
        "shortest retention allows.",
    )
    containers: Containers = Field([], description="What material is carried in; a bucket is assumed when empty.")
    labour: Labour | None = None
    climate: Climate | None = None
    water_available: Annotated[float | None, f.DAILY_WATER] = Field(None, description="Water that can be had per day.")
    water_distance: Annotated[float | None, f.DISTANCE] = Field(None, description="From the water to the digester, one way.")


EXAMPLE: dict[str, Any] = {
    "name": "Highfold (invented)",
    "digester": {"structure": "fixed_dome", "total_volume": {"value": 12, "unit": "m3"}},
    "feed": [{"substrate": "cattle_dung"}],
    "dilution": {"water_to_feed_by_volume": 1},
    "herd": [{"animal": "dairy_cow", "count": 8, "housing": "stall"}],
    "stockpile": {"starts_on": "2027-01-04", "cover": "sheet"},
    "digester_ready_on": "2027-02-03",
    "purchases": [{"name": "neighbour up the hill", "available": {"value": 800, "unit": "kg"}, "distance": {"value": 1.2, "unit": "km"}}],
    "containers": [{"name": "bucket", "volume": {"value": 20, "unit": "L"}}],
    "labour": {"people": 3, "hours_per_day": 6},
    "climate": {"mean_air_temperature": {"value": 19, "unit": "Cel"}},
}
