"""An installation's record held against what is built, what its herd gives and what its feed should give."""

from __future__ import annotations

from kilisho.formulas.arrays import Numeric
from kilisho.quantities import given, quantity

GIVEN = (
    given("smallest_built", "volume", "Smallest total volume that is built of a kind of digester."),
    given("largest_built", "volume", "Largest total volume that is built of a kind of digester."),
    given("animal_count", "number", "Heads."),
    given("dung_per_head", "mass_flow", "Dung that is gathered from one head per day."),
    given("most_dung_per_head", "mass_flow", "The most dung that can be gathered from one head per day."),
    given("slurry_per_head", "volume_flow", "Slurry that the dung of one head makes per day with its usual water."),
    given("usual_water_to_feed", "number", "Volumes of water per volume of feed with which it is usually diluted."),
    given("wettest_water_to_feed", "number", "The most volumes of water per volume of feed with which it is diluted."),
    given("shortest_retention", "time", "Shortest usual retention at the digester's temperature."),
    given("longest_retention", "time", "Longest usual retention at the digester's temperature."),
    given("feeding_interval", "time", "Time between feedings."),
    given("biogas_measured", "volume_flow", "Biogas of a day as metered."),
    given("low_gas_share", "number", "Low end of the expected gas over its typical value."),
    given("high_gas_share", "number", "High end of the expected gas over its typical value."),
    given("gauge_pressure", "pressure", "Pressure of the gas in the digester against the open air."),
    given("highest_operating_pressure", "pressure", "Highest gauge pressure in use with a kind of digester."),
    given("digester_age", "time", "Time since the digester was commissioned."),
)


@quantity("number")
def total_volume_to_smallest(total_volume: Numeric, smallest_built: Numeric) -> Numeric:
    """Total volume against the smallest that is built."""
    return total_volume / smallest_built


@quantity("number")
def total_volume_to_largest(total_volume: Numeric, largest_built: Numeric) -> Numeric:
    """Total volume against the largest that is built."""
    return total_volume / largest_built


@quantity("number")
def gas_storage_to_usual(gas_storage_volume: Numeric, total_volume: Numeric, gas_storage_share: Numeric) -> Numeric:
    """Gas storage against the usual share of the total volume."""
    return gas_storage_volume / (total_volume * gas_storage_share)


@quantity("mass_flow")
def herd_dung_per_day(animal_count: Numeric, dung_per_head: Numeric) -> Numeric:
    """Dung that is gathered from the herd per day."""
    return animal_count * dung_per_head


@quantity("number")
def supply_sufficiency(herd_dung_per_day: Numeric, feed_mass_per_day: Numeric) -> Numeric:
    """What the herd gives against what is fed."""
    return herd_dung_per_day / feed_mass_per_day


@quantity("number")
def feed_to_herd_most(feed_mass_per_day: Numeric, animal_count: Numeric, most_dung_per_head: Numeric) -> Numeric:
    """Feed against the most that can be gathered from the herd."""
    return feed_mass_per_day / (animal_count * most_dung_per_head)


@quantity("number")
def herd_to_largest_herd(animal_count: Numeric, slurry_per_head: Numeric, shortest_retention: Numeric, working_volume: Numeric) -> Numeric:
    """The herd's slurry against what the digester takes at the shortest usual retention."""
    return animal_count * slurry_per_head * shortest_retention / working_volume


@quantity("number")
def herd_to_smallest_herd(animal_count: Numeric, slurry_per_head: Numeric, longest_retention: Numeric, working_volume: Numeric) -> Numeric:
    """The herd's slurry against what fills the digester at the longest usual retention."""
    return animal_count * slurry_per_head * longest_retention / working_volume


@quantity("volume_flow")
def usual_slurry_per_day(displaced_volume_per_day: Numeric, feed_volume_per_day: Numeric, usual_water_to_feed: Numeric) -> Numeric:
    """Slurry that the feed would make with its usual water."""
    return displaced_volume_per_day + feed_volume_per_day * usual_water_to_feed


@quantity("number")
def fed_share_of_design(usual_slurry_per_day: Numeric, design_retention_time: Numeric, working_volume: Numeric) -> Numeric:
    """Feed against the feed that keeps the design retention, both with the usual water, so that thin slurry does not pass for feed."""
    return usual_slurry_per_day * design_retention_time / working_volume


@quantity("number")
def water_to_wettest(liquid_per_day: Numeric, feed_volume_per_day: Numeric, wettest_water_to_feed: Numeric) -> Numeric:
    """Mixing water against the most with which the feed is diluted."""
    return liquid_per_day / (feed_volume_per_day * wettest_water_to_feed)


@quantity("number")
def dose_share(slurry_per_day: Numeric, feeding_interval: Numeric, working_volume: Numeric) -> Numeric:
    """Slurry of one feeding against the working volume."""
    return slurry_per_day * feeding_interval / working_volume


@quantity("volume_flow")
def low_biogas_per_day(biogas_per_day: Numeric, low_gas_share: Numeric) -> Numeric:
    """Low end of the expected gas."""
    return biogas_per_day * low_gas_share


@quantity("volume_flow")
def high_biogas_per_day(biogas_per_day: Numeric, high_gas_share: Numeric) -> Numeric:
    """High end of the expected gas."""
    return biogas_per_day * high_gas_share


@quantity("number")
def gas_ratio(biogas_measured: Numeric, biogas_per_day: Numeric) -> Numeric:
    """Measured gas against the gas expected of the feed."""
    return biogas_measured / biogas_per_day


@quantity("number")
def gas_ratio_to_low(biogas_measured: Numeric, low_biogas_per_day: Numeric) -> Numeric:
    """Measured gas against the least that is expected of the feed."""
    return biogas_measured / low_biogas_per_day


@quantity("number")
def gas_ratio_to_high(biogas_measured: Numeric, high_biogas_per_day: Numeric) -> Numeric:
    """Measured gas against the most that is expected of the feed."""
    return biogas_measured / high_biogas_per_day


@quantity("number")
def gas_pressure_to_highest(gauge_pressure: Numeric, highest_operating_pressure: Numeric) -> Numeric:
    """Gas pressure against the highest in use."""
    return gauge_pressure / highest_operating_pressure


@quantity("number")
def age_over_retention(digester_age: Numeric, design_retention_time: Numeric) -> Numeric:
    """Age of the digester over the retention to design for."""
    return digester_age / design_retention_time
