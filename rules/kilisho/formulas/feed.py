"""What is fed: solids, volumes, nitrogen and gas potential of one feed, and the slurry that it makes with its liquid."""

from __future__ import annotations

from kilisho.formulas.ammonia import free_ammonia_share
from kilisho.formulas.arrays import Numeric, most
from kilisho.quantities import given, quantity

GIVEN = (
    given("feed_mass_per_day", "mass_flow", "Fresh feed per day."),
    given("total_solids", "share", "Dry matter of the feed, share of fresh mass."),
    given("volatile_solids_share", "share", "Organic part of the total solids."),
    given("bulk_density", "density", "Density of the feed as handled."),
    given("nitrogen_share", "share", "Nitrogen in the total solids."),
    given("carbon_to_nitrogen_of_feed", "number", "Carbon to nitrogen ratio of the feed by mass."),
    given("ammonium_share", "share", "Part of the feed's nitrogen that becomes ammonium."),
    given("water_to_feed_by_volume", "number", "Volumes of mixing liquid per volume of feed."),
    given("urine_per_day", "volume_flow", "Urine used as mixing liquid."),
    given("urine_solids_per_day", "mass_flow", "Total solids that come with the urine."),
    given("urine_mass_per_day", "mass_flow", "Mass of the urine used."),
    given("urine_nitrogen_per_day", "mass_flow", "Nitrogen that comes with the urine."),
    given("urine_carbon_per_day", "mass_flow", "Carbon that comes with the urine."),
    given("urine_ammonium_per_day", "mass_flow", "Nitrogen of the urine that becomes ammonium."),
    given("water_density", "density", "Density of the mixing water."),
    given("digester_temperature", "temperature", "Temperature of the slurry in the digester."),
    given("target_total_solids", "share", "Total solids that the slurry should have."),
)


@quantity("volume_flow")
def feed_volume_per_day(feed_mass_per_day: Numeric, bulk_density: Numeric) -> Numeric:
    """Volume of the feed as handled."""
    return feed_mass_per_day / bulk_density


@quantity("volume_flow")
def displaced_volume_per_day(feed_mass_per_day: Numeric, bulk_density: Numeric, water_density: Numeric) -> Numeric:
    """Room that the feed takes in slurry: what is lighter than water displaces its own mass of water, soaked or afloat (Archimedes)."""
    return feed_mass_per_day / most(bulk_density, water_density)


@quantity("mass_flow")
def total_solids_per_day(feed_mass_per_day: Numeric, total_solids: Numeric) -> Numeric:
    """Dry matter fed per day."""
    return feed_mass_per_day * total_solids


@quantity("mass_flow")
def volatile_solids_per_day(total_solids_per_day: Numeric, volatile_solids_share: Numeric) -> Numeric:
    """Organic dry matter fed per day."""
    return total_solids_per_day * volatile_solids_share


@quantity("mass_flow")
def ash_per_day(total_solids_per_day: Numeric, volatile_solids_per_day: Numeric) -> Numeric:
    """Mineral matter fed per day."""
    return total_solids_per_day - volatile_solids_per_day


@quantity("mass_flow")
def nitrogen_per_day(total_solids_per_day: Numeric, nitrogen_share: Numeric) -> Numeric:
    """Nitrogen fed per day."""
    return total_solids_per_day * nitrogen_share


@quantity("mass_flow")
def carbon_per_day(nitrogen_per_day: Numeric, carbon_to_nitrogen_of_feed: Numeric) -> Numeric:
    """Carbon fed per day."""
    return nitrogen_per_day * carbon_to_nitrogen_of_feed


@quantity("mass_flow")
def ammonium_nitrogen_per_day(nitrogen_per_day: Numeric, ammonium_share: Numeric) -> Numeric:
    """Nitrogen that becomes ammonium in the digester, per day."""
    return nitrogen_per_day * ammonium_share


@quantity("volume_flow")
def liquid_per_day(feed_volume_per_day: Numeric, water_to_feed_by_volume: Numeric) -> Numeric:
    """Mixing liquid per day: water, and urine in place of part of it."""
    return feed_volume_per_day * water_to_feed_by_volume


@quantity("volume_flow")
def water_per_day(liquid_per_day: Numeric, urine_per_day: Numeric) -> Numeric:
    """Water that is still needed beside the urine."""
    return liquid_per_day - urine_per_day


@quantity("volume_flow")
def slurry_per_day(displaced_volume_per_day: Numeric, liquid_per_day: Numeric) -> Numeric:
    """Slurry let in per day: the room that the feed takes in it, and its liquid."""
    return displaced_volume_per_day + liquid_per_day


@quantity("mass_flow")
def slurry_mass_per_day(feed_mass_per_day: Numeric, water_per_day: Numeric, water_density: Numeric, urine_mass_per_day: Numeric) -> Numeric:
    """Mass of the slurry let in per day."""
    return feed_mass_per_day + water_per_day * water_density + urine_mass_per_day


@quantity("share")
def slurry_total_solids(total_solids_per_day: Numeric, urine_solids_per_day: Numeric, slurry_mass_per_day: Numeric) -> Numeric:
    """Total solids of the slurry after mixing."""
    return (total_solids_per_day + urine_solids_per_day) / slurry_mass_per_day


@quantity("number")
def carbon_to_nitrogen(
    carbon_per_day: Numeric, urine_carbon_per_day: Numeric, nitrogen_per_day: Numeric, urine_nitrogen_per_day: Numeric
) -> Numeric:
    """Carbon to nitrogen ratio of all that is fed, from the balances of carbon and nitrogen."""
    return (carbon_per_day + urine_carbon_per_day) / (nitrogen_per_day + urine_nitrogen_per_day)


@quantity("density")
def total_ammonia_nitrogen(ammonium_nitrogen_per_day: Numeric, urine_ammonium_per_day: Numeric, slurry_per_day: Numeric) -> Numeric:
    """Ammonium and ammonia nitrogen in the slurry, at steady feeding."""
    return (ammonium_nitrogen_per_day + urine_ammonium_per_day) / slurry_per_day


@quantity("density", source="emerson-1975", empirical="pKa of ammonia; 0-50 Cel, ideal solution, so too high in thick slurry")
def free_ammonia(total_ammonia_nitrogen: Numeric, slurry_ph: Numeric, digester_temperature: Numeric) -> Numeric:
    """Free (un-ionised) ammonia nitrogen, the part that hinders the microbes."""
    return total_ammonia_nitrogen * free_ammonia_share(slurry_ph, digester_temperature)


@quantity("number")
def water_to_feed_for_target(total_solids: Numeric, target_total_solids: Numeric, bulk_density: Numeric, water_density: Numeric) -> Numeric:
    """Volumes of water per volume of feed that bring the slurry to its target total solids (mass balance; water without solids)."""
    return (total_solids - target_total_solids) / target_total_solids * bulk_density / water_density
