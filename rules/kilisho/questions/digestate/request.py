"""What the use of digestate is asked with."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import Field

from kilisho.questions import fields as f
from kilisho.questions.requests import Ask, Climate, Containers, DailyFeedItem, Digester, Dilution, Enquiry, Herd

LONGEST_FEED, LONGEST_CROPS = 12, 12
NUTRIENT = f.InUnit("share", "1", 0, 0.5)


class DigestedFeedItem(DailyFeedItem):
    """A substrate that is fed regularly, with its nutrients where they were measured."""

    phosphorus: Annotated[float | None, NUTRIENT] = Field(None, description="Phosphorus (as P), share of total solids.")
    potassium: Annotated[float | None, NUTRIENT] = Field(None, description="Potassium (as K), share of total solids.")
    ammonium_share: Annotated[float | None, f.MASS_SHARE] = Field(
        None, description="Part of its nitrogen that is ammonium after digestion."
    )


class CropItem(Ask):
    """A field of one crop. What is stated here replaces the rulebook's figure."""

    crop: Annotated[str, f.CROP] = Field(description="Id of a crop of the rulebook.")
    area: Annotated[float | None, f.InUnit("area", "har", 0.0001, 10_000)] = Field(
        None, description="Area that it stands on; all that the digestate reaches when absent."
    )
    nitrogen_need: Annotated[float | None, f.InUnit("areic_mass", "kg/har", 0.1, 2000)] = Field(
        None, description="Nitrogen that it needs a year; what other manure and fertiliser bring is taken off by the caller."
    )
    eaten_raw: Annotated[bool | None, f.YES_NO] = Field(None, description="Whether people eat any of it uncooked.")
    edible_part_touches_soil: Annotated[bool | None, f.YES_NO] = Field(
        None, description="Whether what is eaten grows in the soil or lies on it."
    )


class Storage(Ask):
    """How digestate is kept while nothing can be spread."""

    store: Annotated[str | None, f.SLURRY_STORE] = Field(None, description="Id of a slurry store; an open pit is assumed when absent.")
    time: Annotated[float | None, f.InUnit("time", "mo", 0, 24)] = Field(
        None, description="Longest time between two spreadings; 0 where it is spread as it comes."
    )
    volume: Annotated[float | None, f.InUnit("volume", "m3", 0.01, 1e5)] = Field(None, description="Store that there is, up to its rim.")
    depth: Annotated[float | None, f.InUnit("length", "m", 0.2, 6)] = Field(None, description="Slurry in the full store.")
    freeboard: Annotated[float | None, f.InUnit("length", "m", 0, 2)] = Field(None, description="Wall above the slurry of the full store.")


class Prices(Ask):
    """What nutrients cost in the farm's own currency, by mass of nutrient as fertilisers are counted."""

    nitrogen: Annotated[float | None, f.PRICE_PER_MASS] = Field(None, description="Nitrogen (N).")
    phosphate: Annotated[float | None, f.PRICE_PER_MASS] = Field(None, description="Phosphate (P2O5).")
    potash: Annotated[float | None, f.PRICE_PER_MASS] = Field(None, description="Potash (K2O).")


class DigestateRequest(Enquiry):
    """What is fed a day, and the land that the digestate goes to."""

    feed: list[DigestedFeedItem] = Field([], max_length=LONGEST_FEED, description="Substrates; those of the herd when empty.")
    herd: Herd = Field([], description="Animals of the farm.")
    water: Annotated[float | None, f.DAILY_WATER] = Field(None, description="Water mixed in per day; by dilution when absent.")
    urine: Annotated[float | None, f.DAILY_WATER] = Field(None, description="Urine mixed in per day; none when absent.")
    dilution: Dilution | None = None
    digester: Digester | None = None
    hydraulic_retention_time: Annotated[float | None, f.InUnit("time", "d", 1, 1000)] = Field(
        None, description="Instead of the digester; the design retention is assumed when neither is stated."
    )
    climate: Climate | None = None
    crops: list[CropItem] = Field(
        min_length=1, max_length=LONGEST_CROPS, description="Fields in the order in which they get digestate: the first its need first."
    )
    spreading: Annotated[str | None, f.SPREADING] = Field(
        None, description="Id of a way of spreading; on the surface is assumed when absent."
    )
    nitrogen_limit: Annotated[float | None, f.InUnit("areic_mass", "kg/har", 1, 2000)] = Field(
        None, description="Total manure nitrogen that the local rule allows per area and year; then no field gets more."
    )
    storage: Storage | None = None
    prices: Prices | None = None
    containers: Containers = Field([], description="What digestate is carried in; a bucket is assumed when empty.")


EXAMPLE: dict[str, Any] = {
    "name": "Highfold (invented)",
    "feed": [{"substrate": "cattle_dung", "mass": {"value": 90, "unit": "kg/d"}}],
    "water": {"value": 90, "unit": "L/d"},
    "urine": {"value": 15, "unit": "L/d"},
    "hydraulic_retention_time": {"value": 45, "unit": "d"},
    "climate": {"mean_air_temperature": {"value": 22, "unit": "Cel"}},
    "crops": [
        {"crop": "napier_grass", "area": {"value": 0.25, "unit": "har"}},
        {"crop": "maize", "area": {"value": 0.8, "unit": "har"}, "nitrogen_need": {"value": 90, "unit": "kg/har"}},
        {"crop": "leafy_vegetables", "area": {"value": 500, "unit": "m2"}, "eaten_raw": True},
    ],
    "spreading": "covered_furrow",
    "storage": {"store": "covered_pit", "time": {"value": 3, "unit": "mo"}},
    "containers": [{"name": "jerrycan", "volume": {"value": 20, "unit": "L"}}],
}
