"""The store that keeps digestate until it can be spread: volume, area and freeboard."""

from __future__ import annotations

from kilisho.formulas.arrays import Numeric
from kilisho.quantities import given, quantity

GIVEN = (
    given("slurry_storage_time", "time", "Longest time between two spreadings."),
    given("slurry_store_depth", "length", "Depth of the slurry in the full store."),
    given("slurry_store_freeboard", "length", "Wall above the slurry of the full store."),
    given("slurry_store_volume", "volume", "Store that there is, up to its rim."),
)


@quantity("volume")
def digestate_to_store(digestate_per_day: Numeric, slurry_storage_time: Numeric) -> Numeric:
    """Digestate that gathers between two spreadings; rain, and what dries up, not counted."""
    return digestate_per_day * slurry_storage_time


@quantity("area")
def slurry_store_area(digestate_to_store: Numeric, slurry_store_depth: Numeric) -> Numeric:
    """Surface of a store with upright walls."""
    return digestate_to_store / slurry_store_depth


@quantity("volume")
def slurry_store_needed(slurry_store_area: Numeric, slurry_store_depth: Numeric, slurry_store_freeboard: Numeric) -> Numeric:
    """Store with its freeboard, up to the rim."""
    return slurry_store_area * (slurry_store_depth + slurry_store_freeboard)


@quantity("time")
def slurry_store_lasts(
    slurry_store_volume: Numeric, slurry_store_depth: Numeric, slurry_store_freeboard: Numeric, digestate_per_day: Numeric
) -> Numeric:
    """Time until the store that there is reaches its freeboard."""
    usable = slurry_store_volume * slurry_store_depth / (slurry_store_depth + slurry_store_freeboard)
    return usable / digestate_per_day
