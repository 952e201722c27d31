"""The first charge: how much slurry, feed and liquid fill a digester for the first time, and the work it is."""

from __future__ import annotations

from kilisho.formulas.arrays import Numeric
from kilisho.quantities import given, quantity

GIVEN = (
    given("first_fill_share", "share", "Slurry of the first charge, share of total volume."),
    given("starter_volume", "volume", "Digested slurry added to the first charge."),
    given("displacement", "share", "Room that the feed takes in slurry, share of its volume as handled; 1 for dung."),
    given("main_substrate_mass", "mass", "Fresh mass of the main substrate in the first charge."),
    given("dung_per_animal_day", "mass", "Fresh dung gathered from one animal in one day."),
    given("mixing_rate", "work_rate", "Slurry that one person mixes in an hour."),
)


@quantity("volume")
def slurry_volume(total_volume: Numeric, first_fill_share: Numeric) -> Numeric:
    """Slurry that fills the digester for the first time."""
    return total_volume * first_fill_share


@quantity("volume")
def fresh_slurry_volume(slurry_volume: Numeric, starter_volume: Numeric) -> Numeric:
    """Slurry that has to be mixed from feed and water."""
    return slurry_volume - starter_volume


@quantity("volume")
def substrate_volume(fresh_slurry_volume: Numeric, displacement: Numeric, water_to_feed_by_volume: Numeric) -> Numeric:
    """Feed in the first charge, as handled."""
    return fresh_slurry_volume / (displacement + water_to_feed_by_volume)


@quantity("mass")
def substrate_mass(substrate_volume: Numeric, bulk_density: Numeric) -> Numeric:
    """Fresh feed in the first charge."""
    return substrate_volume * bulk_density


@quantity("volume")
def water_volume(substrate_volume: Numeric, water_to_feed_by_volume: Numeric) -> Numeric:
    """Water in the first charge."""
    return substrate_volume * water_to_feed_by_volume


@quantity("mass")
def water_mass(water_volume: Numeric, water_density: Numeric) -> Numeric:
    """Mass of the water in the first charge."""
    return water_volume * water_density


@quantity("share")
def first_charge_total_solids(substrate_mass: Numeric, total_solids: Numeric, water_mass: Numeric) -> Numeric:
    """Total solids of the freshly mixed first charge."""
    return substrate_mass * total_solids / (substrate_mass + water_mass)


@quantity("share")
def starter_share(starter_volume: Numeric, slurry_volume: Numeric) -> Numeric:
    """Part of the first charge that is digested slurry."""
    return starter_volume / slurry_volume


@quantity("number")
def animal_days(main_substrate_mass: Numeric, dung_per_animal_day: Numeric) -> Numeric:
    """Days of one animal's dung in the main substrate of the first charge; as many animals give it in one day."""
    return main_substrate_mass / dung_per_animal_day


@quantity("working_time")
def mixing_hours(fresh_slurry_volume: Numeric, mixing_rate: Numeric) -> Numeric:
    """Person-hours to mix the first charge."""
    return fresh_slurry_volume / mixing_rate
