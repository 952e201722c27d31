"""What a feed mix is asked with."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import ConfigDict, Field

from kilisho.questions import fields as f
from kilisho.questions.requests import LONGEST_FEED, Ask, Climate, Digester, Enquiry, Herd, MeasuredSubstrate

TOTAL_SOLIDS = f.InUnit("share", "1", 0.005, 0.4)
RATIO = f.plain_number(1, 300)
AMMONIA = f.InUnit("density", "g/L", 0.05, 20)
RETENTION = f.InUnit("time", "d", 2, 400)
LOADING = f.InUnit("loading", "kg/m3/d", 0.01, 20)
SHARE = f.InUnit("share", "1", 0.001, 1)
SEASON = f.InUnit("time", "d", 1, 3660)
WISH = f.one_of(("most_gas", "cheapest", "most_even"))


class OnHand(MeasuredSubstrate):
    """A substrate that can be had. Without ``available`` or ``stock`` it is what the herd gives."""

    available: Annotated[float | None, f.DAILY_MASS] = Field(None, description="Fresh mass that comes per day.")
    stock: Annotated[float | None, f.STORED_MASS] = Field(None, description="Fresh mass that lies ready; it is spread over the season.")
    price: Annotated[float | None, f.PRICE_PER_MASS] = Field(None, description="In the farm's own currency per mass; free when absent.")
    largest_share: Annotated[float | None, SHARE] = Field(None, description="Largest part of the fed volatile solids that it may be.")
    brought_in: Annotated[bool, f.YES_NO] = Field(False, description="Whether it comes from outside the farm.")


class MixLimits(Ask):
    """Limits that replace the rulebook's."""

    least_total_solids: Annotated[float | None, TOTAL_SOLIDS] = Field(None, description="Of the slurry.")
    largest_total_solids: Annotated[float | None, TOTAL_SOLIDS] = Field(None, description="Of the slurry.")
    least_carbon_to_nitrogen: Annotated[float | None, RATIO] = Field(None, description="Of all that is fed.")
    largest_carbon_to_nitrogen: Annotated[float | None, RATIO] = Field(None, description="Of all that is fed.")
    largest_total_ammonia_nitrogen: Annotated[float | None, AMMONIA] = Field(None, description="In the slurry, after digestion.")
    least_retention_time: Annotated[float | None, RETENTION] = Field(None, description="Mean stay in the digester.")
    largest_organic_loading_rate: Annotated[float | None, LOADING] = Field(None, description="Volatile solids per working volume and day.")
    largest_crop_residue_share: Annotated[float | None, SHARE] = Field(None, description="Crop residues, part of the fed total solids.")


class FeedMixRequest(Enquiry):
    """What is on hand, the digester, and what is wanted of the mix."""

    model_config = ConfigDict(json_schema_extra={"anyOf": [{"required": ["working_volume"]}, {"required": ["digester"]}]})

    on_hand: Annotated[list[OnHand], Field(max_length=LONGEST_FEED)] = Field([], description="Substrates; those of the herd when empty.")
    herd: Herd = Field([], description="Animals of the farm.")
    digester: Digester | None = None
    working_volume: Annotated[float | None, f.WORKING_VOLUME] = Field(
        None, description="Slurry at the normal level, where nothing else is known of the digester."
    )
    water_available: Annotated[float | None, f.DAILY_WATER] = Field(
        None, description="Water that can be had per day; no limit when absent."
    )
    water_price: Annotated[float | None, f.PRICE_PER_MASS] = Field(None, description="Per mass of water, a tonne being a cubic metre.")
    climate: Climate | None = None
    wish: Annotated[str, WISH] = Field(
        "most_gas",
        description="most_gas; cheapest that meets gas_demand; most_even: meets gas_demand (or gives most of the most gas) from the "
        "smallest part of what there is of any substrate, so that it lasts the longest and bears the most lean days.",
    )
    gas_demand: Annotated[float | None, f.DAILY_GAS] = Field(None, description="Biogas as used that is wanted per day.")
    season: Annotated[float | None, SEASON] = Field(None, description="How long the stocks must last.")
    limits: MixLimits | None = None
    slurry_ph: Annotated[float | None, f.SLURRY_PH] = Field(None, description="pH of the slurry, as measured.")


EXAMPLE: dict[str, Any] = {
    "name": "Highfold (invented)",
    "on_hand": [
        {"substrate": "cattle_dung", "available": {"value": 90, "unit": "kg/d"}},
        {"substrate": "layer_droppings", "available": {"value": 12, "unit": "kg/d"}, "price": {"value": 4, "per": "t"}, "brought_in": True},
        {"substrate": "maize_stover", "stock": {"value": 900, "unit": "kg"}, "price": {"value": 15, "per": "t"}},
    ],
    "digester": {"structure": "fixed_dome", "total_volume": {"value": 12, "unit": "m3"}},
    "water_available": {"value": 120, "unit": "L/d"},
    "climate": {"mean_air_temperature": {"value": 22, "unit": "Cel"}},
    "wish": "most_gas",
    "season": {"value": 120, "unit": "d"},
}
