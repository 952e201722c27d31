"""What a maintenance feed is asked with."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import Field

from kilisho.questions import fields as f
from kilisho.questions.requests import Ask, Climate, Containers, Date, Digester, Dilution, Enquiry, Feed, Herd


class Urine(Ask):
    """Urine gathered in the stable, to stand in for part of the water."""

    collected: Annotated[bool, f.YES_NO] = Field(True, description="Whether the herd's urine is gathered.")
    volume: Annotated[float | None, f.DAILY_WATER] = Field(
        None, description="Gathered per day, as measured; taken from the herd when absent."
    )


class Feeding(Ask):
    """When the digester is fed."""

    every: Annotated[float, f.INTERVAL] = Field(1.0, description="Time between feedings: half a day for twice daily, up to 60 d.")
    starts_on: Annotated[Date | None, f.DAY] = Field(None, description="Day of the first feeding.")
    missed: Annotated[int, f.whole_number(0, 60)] = Field(0, description="Feedings that were just missed.")


class MaintenanceFeedRequest(Enquiry):
    """A working digester and what is fed to it: from the herd, as stated, or what the digester needs."""

    digester: Digester
    herd: Herd = Field([], description="Animals of the farm.")
    feed: Feed = Field([], description="Substrates; those of the herd when empty.")
    dilution: Dilution | None = None
    urine: Urine | None = None
    feeding: Feeding = Feeding()
    containers: Containers = Field([], description="What material is carried in; a bucket is assumed when empty.")
    climate: Climate | None = None
    water_available: Annotated[float | None, f.DAILY_WATER] = Field(None, description="Water that can be had per day.")
    slurry_ph: Annotated[float | None, f.SLURRY_PH] = Field(None, description="pH of the slurry, as measured.")


EXAMPLE: dict[str, Any] = {
    "name": "Highfold (invented)",
    "digester": {"structure": "fixed_dome", "total_volume": {"value": 12, "unit": "m3"}},
    "herd": [{"animal": "dairy_cow", "count": 8, "housing": "stall"}],
    "feed": [{"substrate": "cattle_dung"}],
    "dilution": {"water_to_feed_by_volume": 1},
    "urine": {"collected": True},
    "feeding": {"every": {"value": 1, "unit": "d"}, "starts_on": "2027-03-01"},
    "containers": [{"name": "bucket", "volume": {"value": 20, "unit": "L"}}],
    "climate": {"mean_air_temperature": {"value": 22, "unit": "Cel"}},
}
