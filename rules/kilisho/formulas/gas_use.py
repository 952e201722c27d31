"""What the gas is worth: its heat, the fuels whose place it takes, and what that does to the climate.

Heat is lower heating value throughout. Fuels are compared by the heat that reaches the pot, so only gas that cooks takes their place;
electricity that is made of gas takes the place of as much electricity.
"""

from __future__ import annotations

from kilisho.formulas.arrays import Numeric
from kilisho.formulas.digester import REFERENCE_TEMPERATURE
from kilisho.formulas.gas import NORMAL_PRESSURE, biogas_density, heating_value_as_used, normal_factor
from kilisho.quantities import given, quantity

GIVEN = (
    given("gas_burnt_per_day", "volume_flow", "Biogas that is burnt a day, as used."),
    given("gas_for_cooking_per_day", "volume_flow", "Part of the gas that is burnt whose heat cooks, as used."),
    given("gas_for_electricity_per_day", "volume_flow", "Part of the gas that is burnt of which an appliance makes electricity, as used."),
    given("electric_power", "power", "Electricity that one such appliance makes while it runs."),
    given("electric_gas_rate", "gas_use_rate", "Gas that one such appliance takes while it runs, as used."),
    given("electricity_replaced_per_day", "heat_per_day", "Electricity made of gas in place of a fuel that is electricity; 0 of others."),
    given("gas_vented_per_day", "volume_flow", "Biogas let off unburnt a day because the store is full, as used."),
    given("leak_share", "share", "Part of the biogas made that leaks from plant, store and pipe before it is metered."),
    given("warming_potential", "number", "Carbon dioxide that warms as much as the same mass of methane, over 100 years."),
    given("biogas_stove_efficiency", "share", "Part of the gas's heat that reaches the pot."),
    given("fuel_share", "share", "Part of the useful heat for which a fuel would have been burnt."),
    given("fuel_heating_value", "heat_per_mass", "Lower heating value of a fuel as it is burnt."),
    given("fuel_stove_efficiency", "share", "Part of a fuel's heat that reaches the pot."),
    given("fuel_density", "density", "Density of a liquid fuel."),
    given("emission_factor", "emission_factor", "Carbon dioxide of burning a fuel per heat."),
    given("non_renewable_share", "share", "Part of a fuel that does not grow again."),
    given("methane_potential", "gas_yield", "Ultimate methane of a substrate per mass of volatile solids."),
    given("methane_conversion", "share", "Part of the methane potential of manure that reaches the air where no digester takes it."),
)
# Kilograms of methane in a cubic metre, as inventories count it: at 20 Cel and 101.325 kPa. Potentials of substrates are normal volumes,
# of which a cubic metre has 0.72 kg, so what is spared is told on the careful side.
METHANE_OF_INVENTORIES = 0.67


@quantity("heat_per_volume", empirical="moist gas at 25 Cel; pressure in Pa, 50000 to 110000; ISO 6976 route")
def lower_heating_value(methane_share: Numeric, gas_pressure: Numeric) -> Numeric:
    """Heat of one cubic metre of biogas as used, its vapour not condensed."""
    return heating_value_as_used(methane_share, REFERENCE_TEMPERATURE, gas_pressure)


@quantity("heat_per_day")
def cooking_heat_per_day(gas_for_cooking_per_day: Numeric, lower_heating_value: Numeric) -> Numeric:
    """Heat of the gas that cooks."""
    return gas_for_cooking_per_day * lower_heating_value


@quantity("heat_per_day")
def useful_heat_per_day(cooking_heat_per_day: Numeric, biogas_stove_efficiency: Numeric) -> Numeric:
    """Heat of the gas that reaches the pot."""
    return cooking_heat_per_day * biogas_stove_efficiency


@quantity("heat_per_day")
def electricity_made_per_day(gas_for_electricity_per_day: Numeric, electric_power: Numeric, electric_gas_rate: Numeric) -> Numeric:
    """Electricity that an appliance makes of its gas."""
    return gas_for_electricity_per_day / electric_gas_rate * electric_power


@quantity("heat_per_day")
def fuel_heat_per_day(
    useful_heat_per_day: Numeric, fuel_share: Numeric, fuel_stove_efficiency: Numeric, electricity_replaced_per_day: Numeric
) -> Numeric:
    """Heat of the fuel that would have been burnt for the same useful heat; of electricity, with what is made in its place."""
    return useful_heat_per_day * fuel_share / fuel_stove_efficiency + electricity_replaced_per_day


@quantity("mass_flow")
def fuel_mass_per_day(fuel_heat_per_day: Numeric, fuel_heating_value: Numeric) -> Numeric:
    """Fuel whose place the gas takes."""
    return fuel_heat_per_day / fuel_heating_value


@quantity("volume_flow")
def fuel_volume_per_day(fuel_mass_per_day: Numeric, fuel_density: Numeric) -> Numeric:
    """Liquid fuel whose place the gas takes."""
    return fuel_mass_per_day / fuel_density


@quantity("mass_flow")
def carbon_dioxide_avoided(fuel_heat_per_day: Numeric, emission_factor: Numeric, non_renewable_share: Numeric) -> Numeric:
    """Carbon dioxide of the fuel that is no longer burnt, as far as it would not have grown again."""
    return fuel_heat_per_day * emission_factor * non_renewable_share


@quantity("volume_flow")
def gas_leaked_per_day(gas_burnt_per_day: Numeric, gas_vented_per_day: Numeric, leak_share: Numeric) -> Numeric:
    """Biogas that leaks before it is metered; it comes on top of what is burnt and vented."""
    return (gas_burnt_per_day + gas_vented_per_day) * leak_share / (1.0 - leak_share)


@quantity("density", empirical="dry methane of moist gas at 25 Cel; pressure in Pa, 50000 to 110000")
def methane_in_gas(methane_share: Numeric, gas_pressure: Numeric) -> Numeric:
    """Mass of methane in one cubic metre of biogas as used."""
    normal_methane = methane_share * normal_factor(REFERENCE_TEMPERATURE, gas_pressure)
    return normal_methane * biogas_density(1.0, 0.0, NORMAL_PRESSURE)


@quantity("mass_flow")
def methane_lost_per_day(gas_leaked_per_day: Numeric, gas_vented_per_day: Numeric, methane_in_gas: Numeric) -> Numeric:
    """Methane that reaches the air unburnt, by leaks and by venting."""
    return (gas_leaked_per_day + gas_vented_per_day) * methane_in_gas


@quantity("mass_flow")
def warming_of_methane_lost(methane_lost_per_day: Numeric, warming_potential: Numeric) -> Numeric:
    """Carbon dioxide that would warm as much as the methane lost."""
    return methane_lost_per_day * warming_potential


@quantity("mass_flow", source="ipcc-2019", empirical="0.67 kg of methane in a cubic metre; default factors of national inventories")
def manure_methane_per_day(volatile_solids_per_day: Numeric, methane_potential: Numeric, methane_conversion: Numeric) -> Numeric:
    """Methane that manure would have given off, had it been kept as before."""
    return volatile_solids_per_day * methane_potential * METHANE_OF_INVENTORIES * methane_conversion


@quantity("mass_flow")
def warming_of_manure_methane(manure_methane_per_day: Numeric, warming_potential: Numeric) -> Numeric:
    """Carbon dioxide that would have warmed as much as the methane of the manure."""
    return manure_methane_per_day * warming_potential
