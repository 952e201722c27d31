"""Properties of biogas taken as methane and carbon dioxide: volume at the normal state, density, viscosity, heat, explosive limit.

The normal state is 0 Cel, 101325 Pa, dry. Gas as used is warm, saturated with water vapour and at the pressure of the place.
"""

from __future__ import annotations

from collections.abc import Sequence

from kilisho.formulas.arrays import Numeric, sqrt
from kilisho.formulas.temperature import saturation_vapour_pressure

NORMAL_TEMPERATURE = 273.15
NORMAL_PRESSURE = 101325.0
GAS_CONSTANT = 8.314462618
IDEAL_MOLAR_VOLUME = GAS_CONSTANT * NORMAL_TEMPERATURE / NORMAL_PRESSURE

_METHANE_MASS, _CARBON_DIOXIDE_MASS, _WATER_MASS, _AIR_MASS = 0.0160425, 0.0440095, 0.0180153, 0.0289655
_AIR_COMPRESSION_FACTOR = 0.99942
_METHANE_LOWER_HEAT, _METHANE_HIGHER_HEAT = 0.80269, 0.89151
_WATER_COLUMN = 9806.65
# ISO 6976 summation factors at 0 Cel and their slope to 15 Cel: the root of the departure from the ideal gas law.
_METHANE_SUMMATION, _METHANE_SLOPE = 0.04886, (0.04452 - 0.04886) / 15.0
_CARBON_DIOXIDE_SUMMATION, _CARBON_DIOXIDE_SLOPE = 0.0821, (0.0752 - 0.0821) / 15.0
# Sutherland's formula: viscosity at 0 Cel [Pa.s] and constant [K] of methane, carbon dioxide and water vapour.
_VISCOSITIES = ((1.04e-5, 164.0), (1.37e-5, 240.0), (0.87e-5, 961.0))
_MASSES = (_METHANE_MASS, _CARBON_DIOXIDE_MASS, _WATER_MASS)


def normal_factor(temperature: Numeric, absolute_pressure: Numeric) -> Numeric:
    """Normal volume held by one cubic metre of gas as used.

    Parameters
    ----------
    temperature : of the gas [Cel], 0 to 50.
    absolute_pressure : atmospheric plus gauge [Pa], above the vapour pressure.

    Returns
    -------
    Normal cubic metres per cubic metre [1], about 0.87 at sea level and 30 Cel.

    References
    ----------
    Standard BMP Methods, document 201 (2020), equations 1 to 3.
    """
    dry_pressure = absolute_pressure - saturation_vapour_pressure(temperature)
    return dry_pressure / NORMAL_PRESSURE * NORMAL_TEMPERATURE / (temperature + NORMAL_TEMPERATURE)


def normal_volume(volume: Numeric, temperature: Numeric, absolute_pressure: Numeric) -> Numeric:
    """Normal volume [m3] of a moist volume as used [m3]; temperature [Cel], 0 to 50, and absolute pressure [Pa] of the gas."""
    return volume * normal_factor(temperature, absolute_pressure)


def molar_mass(methane_share: Numeric) -> Numeric:
    """Molar mass of dry biogas [kg/mol]; methane share [1], 0 to 1, the rest carbon dioxide."""
    return methane_share * _METHANE_MASS + (1.0 - methane_share) * _CARBON_DIOXIDE_MASS


def compression_factor(methane_share: Numeric, temperature: Numeric, pressure: Numeric) -> Numeric:
    """Real volume of dry biogas over its ideal volume [1]; methane share [1], temperature [Cel], 0 to 40, pressure [Pa], to 120000.

    ISO 6976 gives the summation factors at 0 and 15 Cel; they are carried on in a straight line and the departure grows with pressure.
    """
    methane = methane_share * (_METHANE_SUMMATION + _METHANE_SLOPE * temperature)
    carbon_dioxide = (1.0 - methane_share) * (_CARBON_DIOXIDE_SUMMATION + _CARBON_DIOXIDE_SLOPE * temperature)
    return 1.0 - (methane + carbon_dioxide) * (methane + carbon_dioxide) * pressure / NORMAL_PRESSURE


def biogas_density(methane_share: Numeric, temperature: Numeric, pressure: Numeric) -> Numeric:
    """Density of dry biogas [kg/m3]; methane share [1], 0 to 1, temperature [Cel], 0 to 40, absolute pressure [Pa], to 120000."""
    ideal = pressure * molar_mass(methane_share) / (GAS_CONSTANT * (temperature + NORMAL_TEMPERATURE))
    return ideal / compression_factor(methane_share, temperature, pressure)


def moist_biogas_density(methane_share: Numeric, temperature: Numeric, pressure: Numeric) -> Numeric:
    """Density of biogas saturated with water vapour [kg/m3], as it flows in the pipe.

    Methane share of the dry gas [1], 0 to 1, temperature [Cel], 0 to 40, absolute pressure with the vapour's [Pa], to 120000.
    """
    vapour = saturation_vapour_pressure(temperature)
    vapour_density = vapour * _WATER_MASS / (GAS_CONSTANT * (temperature + NORMAL_TEMPERATURE))
    return biogas_density(methane_share, temperature, pressure - vapour) + vapour_density


def relative_density(methane_share: Numeric) -> Numeric:
    """Density of dry biogas over that of dry air at the normal state [1]; methane share [1], 0 to 1.

    Above 1 (less than 54 % methane) the gas sinks and fills pits from the bottom; below 1 it rises. No value makes a pit safe to enter.
    """
    factor = compression_factor(methane_share, 0.0, NORMAL_PRESSURE)
    return molar_mass(methane_share) / _AIR_MASS * _AIR_COMPRESSION_FACTOR / factor


def heating_value_lower(methane_share: Numeric) -> Numeric:
    """Lower heating value of dry biogas [MJ/m3, normal]; methane share [1], 0 to 1; ISO 6976 route, combustion at 15 Cel."""
    return methane_share * _METHANE_LOWER_HEAT / (IDEAL_MOLAR_VOLUME * compression_factor(methane_share, 0.0, NORMAL_PRESSURE))


def heating_value_higher(methane_share: Numeric) -> Numeric:
    """Higher heating value of dry biogas [MJ/m3, normal]; methane share [1], 0 to 1; ISO 6976 route, combustion at 15 Cel."""
    return heating_value_lower(methane_share) * (_METHANE_HIGHER_HEAT / _METHANE_LOWER_HEAT)


def heating_value_as_used(methane_share: Numeric, temperature: Numeric, absolute_pressure: Numeric) -> Numeric:
    """Lower heating value of one cubic metre as it is metered [MJ/m3]: moist, at temperature [Cel] and absolute pressure [Pa]."""
    return heating_value_lower(methane_share) * normal_factor(temperature, absolute_pressure)


def wobbe_index(heating_value: Numeric, relative_density: Numeric) -> Numeric:
    """Heat that passes a burner's jet at a given pressure [MJ/m3, normal]: heating value [MJ/m3, normal] over the root of the relative
    density [1]. Gases of the same index can be burnt with the same jet.
    """
    return heating_value / sqrt(relative_density)


def moist_biogas_viscosity(methane_share: Numeric, temperature: Numeric, pressure: Numeric) -> Numeric:
    """Dynamic viscosity of biogas saturated with water vapour [Pa.s].

    Parameters
    ----------
    methane_share : of the dry gas [1], 0 to 1.
    temperature : [Cel], 0 to 50.
    pressure : absolute, with the vapour's [Pa], 50000 to 120000; the viscosity itself does not hang on it.

    References
    ----------
    Wilke 1950 for the mixture; Sutherland's formula for the parts, its constants recalled and held against CoolProp.
    """
    vapour = saturation_vapour_pressure(temperature) / pressure
    shares = (methane_share * (1.0 - vapour), (1.0 - methane_share) * (1.0 - vapour), vapour)
    ratio = (temperature + NORMAL_TEMPERATURE) / NORMAL_TEMPERATURE
    parts = [
        viscosity * ratio**1.5 * (NORMAL_TEMPERATURE + constant) / (temperature + NORMAL_TEMPERATURE + constant)
        for viscosity, constant in _VISCOSITIES
    ]
    return _wilke(shares, parts)


def _wilke(shares: Sequence[Numeric], viscosities: Sequence[Numeric]) -> Numeric:
    """Viscosity of a gas mixture [Pa.s] from the parts' shares [1] and viscosities [Pa.s], in the order of ``_MASSES``."""
    total: Numeric = 0.0
    for share, viscosity, mass in zip(shares, viscosities, _MASSES, strict=True):
        hindrance: Numeric = 0.0
        for other_share, other, other_mass in zip(shares, viscosities, _MASSES, strict=True):
            term = 1.0 + sqrt(viscosity / other) * (other_mass / mass) ** 0.25
            hindrance = hindrance + other_share * term * term / (8.0 * (1.0 + mass / other_mass)) ** 0.5
        total = total + share * viscosity / hindrance
    return total


def lower_explosive_limit(methane_share: Numeric) -> Numeric:
    """Share of biogas in air from which a spark can explode the mixture.

    Parameters
    ----------
    methane_share : of the biogas [1], above 0 to 1.

    Returns
    -------
    Biogas in air [1]: 5 % of methane in air over the methane share.

    Notes
    -----
    Carbon dioxide raises the measured limit a little, so the figure errs low; but IEC 60079-20-1 uses 4.4 % for methane and hydrogen
    sulphide lowers the limit. Alarms are set at a small part of the limit, on methane in air, never on this figure. Above the limit is
    not safe either: a rich gas passes back through the explosive range as it mixes with air.
    """
    return 0.05 / methane_share


def water_column(pressure: Numeric) -> Numeric:
    """Gauge pressure [Pa] as the height of a column of water [m] (conventional water, 9806.65 Pa a metre)."""
    return pressure / _WATER_COLUMN
