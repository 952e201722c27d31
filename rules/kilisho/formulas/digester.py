"""The digester at steady feeding: volumes, retention, loading, gas, digestate and what settles."""

from __future__ import annotations

from kilisho.formulas import kinetics
from kilisho.formulas.arrays import Numeric, least
from kilisho.formulas.gas import moist_biogas_density, normal_factor
from kilisho.quantities import given, quantity

# The state in which packs give ``biogas_yield``: the reference point of the handbooks' yield tables.
REFERENCE_TEMPERATURE, REFERENCE_RETENTION = 25.0, 60.0
SEA_LEVEL_PRESSURE = 101325.0
WARMEST_FITTED = 35.0

GIVEN = (
    given("total_volume", "volume", "Slurry and gas space together."),
    given("fill_share", "share", "Slurry at the normal level, share of total volume."),
    given("gas_storage_share", "share", "Usable gas storage, share of total volume."),
    given("tanks_in_series", "number", "Stirred tanks that stand for the digester's mixing."),
    given("biogas_yield", "gas_yield", "Biogas as used per mass of volatile solids at 25 Cel and 60 d."),
    given("degradation_rate", "rate", "First-order rate at 20 Cel."),
    given("methane_share", "share", "Methane in the biogas by volume."),
    given("gas_pressure", "pressure", "Absolute pressure of the place, at which gas volumes are told."),
    given("settling_share", "share", "Part of the ash that settles."),
    given("grit_held_in_mixing_tank", "share", "Part of the grit that stays in the mixing tank."),
    given("sludge_density", "density", "Density of settled sludge."),
    given("sludge_allowance", "share", "Part of the working volume that sludge may take."),
    given("design_retention_time", "time", "Retention to design for at the digester's temperature."),
    given("gas_demand", "volume_flow", "Biogas wanted per day."),
    given("gas_storage_of_daily_gas", "share", "Storage needed as part of a day's gas."),
    given("water_available", "volume_flow", "Water that can be had per day."),
)


@quantity("volume")
def working_volume(total_volume: Numeric, fill_share: Numeric) -> Numeric:
    """Slurry in the digester at its normal level."""
    return total_volume * fill_share


@quantity("volume")
def gas_storage_volume(total_volume: Numeric, gas_storage_share: Numeric) -> Numeric:
    """Gas that the digester can store and give back."""
    return total_volume * gas_storage_share


@quantity("time", source="sasse-1988")
def hydraulic_retention_time(working_volume: Numeric, slurry_per_day: Numeric) -> Numeric:
    """Mean time that slurry stays in the digester."""
    return working_volume / slurry_per_day


@quantity("loading", source="werner-1989")
def organic_loading_rate(volatile_solids_per_day: Numeric, working_volume: Numeric) -> Numeric:
    """Volatile solids fed per day and volume of slurry in the digester."""
    return volatile_solids_per_day / working_volume


@quantity("rate", source="sasse-1988", empirical="rate in 1/d at 20 Cel, temperature in Cel; 12-35 Cel")
def rate_at_temperature(degradation_rate: Numeric, digester_temperature: Numeric) -> Numeric:
    """First-order rate at the digester's temperature; no faster above the 35 Cel to which it was fitted."""
    return kinetics.temperature_corrected_rate(degradation_rate, least(digester_temperature, WARMEST_FITTED))


@quantity("share")
def share_of_potential(rate_at_temperature: Numeric, hydraulic_retention_time: Numeric, tanks_in_series: Numeric) -> Numeric:
    """Part of the ultimate gas that this retention releases, for first-order decay in stirred tanks in series."""
    return kinetics.mixed_share(rate_at_temperature, hydraulic_retention_time, tanks_in_series)


@quantity("share", empirical="evaluates the first-order model at 25 Cel and 60 d")
def reference_share(degradation_rate: Numeric) -> Numeric:
    """Part of the ultimate gas that the state of the handbooks' yield tables releases."""
    return kinetics.mixed_share(kinetics.temperature_corrected_rate(degradation_rate, REFERENCE_TEMPERATURE), REFERENCE_RETENTION, 1.0)


@quantity("gas_yield", source="werner-1989")
def biogas_potential(biogas_yield: Numeric, reference_share: Numeric) -> Numeric:
    """Ultimate biogas as used per mass of volatile solids."""
    return biogas_yield / reference_share


@quantity("number", empirical="moist gas at 25 Cel; pressure in Pa, 50000 to 110000")
def gas_volume_factor(gas_pressure: Numeric) -> Numeric:
    """Volume of moist gas at 25 Cel at the pressure of the place against that at sea level, the state of the handbooks' yields."""
    return normal_factor(REFERENCE_TEMPERATURE, SEA_LEVEL_PRESSURE) / normal_factor(REFERENCE_TEMPERATURE, gas_pressure)


@quantity("volume_flow", source="werner-1989")
def biogas_per_day(
    volatile_solids_per_day: Numeric, biogas_potential: Numeric, share_of_potential: Numeric, gas_volume_factor: Numeric
) -> Numeric:
    """Biogas per day at steady feeding, as used: moist, at 25 Cel and the pressure of the place."""
    return volatile_solids_per_day * biogas_potential * share_of_potential * gas_volume_factor


@quantity("volume_flow", empirical="dry gas at 0 Cel and 101325 Pa")
def biogas_per_day_normal(biogas_per_day: Numeric, gas_pressure: Numeric) -> Numeric:
    """The day's biogas as normal volume."""
    return biogas_per_day * normal_factor(REFERENCE_TEMPERATURE, gas_pressure)


@quantity("volume_flow")
def methane_per_day(biogas_per_day: Numeric, methane_share: Numeric) -> Numeric:
    """Methane in the day's biogas, in the same state."""
    return biogas_per_day * methane_share


@quantity("mass_flow", empirical="moist gas at 25 Cel and the pressure of the place")
def biogas_mass_per_day(biogas_per_day: Numeric, methane_share: Numeric, gas_pressure: Numeric) -> Numeric:
    """Mass that leaves as gas per day."""
    return biogas_per_day * moist_biogas_density(methane_share, REFERENCE_TEMPERATURE, gas_pressure)


@quantity("mass_flow")
def digestate_mass_per_day(slurry_mass_per_day: Numeric, biogas_mass_per_day: Numeric) -> Numeric:
    """Digested slurry that leaves per day: what goes in less what leaves as gas."""
    return slurry_mass_per_day - biogas_mass_per_day


@quantity("volume_flow")
def digestate_per_day(digestate_mass_per_day: Numeric, slurry_mass_per_day: Numeric, slurry_per_day: Numeric) -> Numeric:
    """Digested slurry that leaves per day, at the density of the slurry let in."""
    return digestate_mass_per_day * slurry_per_day / slurry_mass_per_day


@quantity("mass_flow")
def grit_per_day(ash_per_day: Numeric, settling_share: Numeric) -> Numeric:
    """Mineral matter of the feed that would settle."""
    return ash_per_day * settling_share


@quantity("volume_flow")
def sludge_per_day(grit_per_day: Numeric, grit_held_in_mixing_tank: Numeric, sludge_density: Numeric) -> Numeric:
    """Working volume lost to grit per day, after settling in the mixing tank."""
    return grit_per_day * (1 - grit_held_in_mixing_tank) / sludge_density


@quantity("time")
def desludging_interval(sludge_allowance: Numeric, working_volume: Numeric, sludge_per_day: Numeric) -> Numeric:
    """Time until sludge fills its allowance of the working volume."""
    return sludge_allowance * working_volume / sludge_per_day


@quantity("number")
def water_sufficiency(water_available: Numeric, water_per_day: Numeric) -> Numeric:
    """Water that can be had against water that is needed."""
    return water_available / water_per_day


@quantity("volume")
def required_working_volume(slurry_per_day: Numeric, design_retention_time: Numeric) -> Numeric:
    """Slurry volume that gives the design retention."""
    return slurry_per_day * design_retention_time


@quantity("volume")
def required_total_volume(required_working_volume: Numeric, fill_share: Numeric) -> Numeric:
    """Total volume that holds the required slurry at the normal level."""
    return required_working_volume / fill_share


@quantity("volume", source="werner-1989", empirical="the storage share is part of one day's gas")
def gas_storage_needed(biogas_per_day: Numeric, gas_storage_of_daily_gas: Numeric) -> Numeric:
    """Gas storage that the household needs."""
    return biogas_per_day * gas_storage_of_daily_gas
