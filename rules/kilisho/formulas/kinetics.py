"""How fast and how far a substrate degrades: first order, Gompertz, and the steady-state model of Chen and Hashimoto."""

from __future__ import annotations

from kilisho.formulas.arrays import Numeric, exp, least, most

_EULER = 2.718281828459045
_LARGEST_EXPONENT = 700.0


def temperature_corrected_rate(degradation_rate: Numeric, digester_temperature: Numeric) -> Numeric:
    """First-order degradation rate at the temperature of the digester.

    Parameters
    ----------
    degradation_rate : rate at 20 Cel [1/d], above 0.
    digester_temperature : mean temperature of the slurry [Cel], 12 to 35.

    Returns
    -------
    Rate at the digester's temperature [1/d].

    Notes
    -----
    1.106 per kelvin is fitted to two handbook yields of cattle dung, 15 L/kg (20 Cel, 30 d) and 54 L/kg (33 Cel, 100 d).

    References
    ----------
    Sasse 1988, section 4; Safley and Westerman 1992 give 1.105 for cold digestion (from memory).
    """
    rate: Numeric = degradation_rate * 1.106 ** (digester_temperature - 20.0)
    return rate


def mixed_share(rate: Numeric, retention: Numeric, tanks_in_series: Numeric) -> Numeric:
    """Share of the ultimate yield that a continuously fed digester releases, first order.

    Parameters
    ----------
    rate : degradation rate at the digester's temperature [1/d], at least 0.
    retention : hydraulic retention time [d], at least 0.
    tanks_in_series : equal stirred tanks that act like the digester [1], at least 1: one for domes and drums, 2 to 4 for a bag.

    Returns
    -------
    Share released [1], 0 to 1, under steady feeding without inhibition; very many tanks are plug flow.

    References
    ----------
    Levenspiel, Chemical Reaction Engineering, tanks-in-series model (from memory).
    """
    share: Numeric = 1.0 - (1.0 + rate * retention / tanks_in_series) ** -tanks_in_series
    return share


def batch_share(rate: Numeric, time: Numeric) -> Numeric:
    """Share of the ultimate yield that one charge has released after some time, first order.

    Parameters
    ----------
    rate : degradation rate at the digester's temperature [1/d], at least 0.
    time : time since the end of the lag [d], at least 0.

    Returns
    -------
    Share released [1], 0 to 1. A charge with a marked lag (straw, little starter) follows :func:`gompertz` better.
    """
    return 1.0 - exp(-rate * time)


def gompertz(potential: Numeric, greatest_rate: Numeric, lag: Numeric, time: Numeric) -> Numeric:
    """Cumulative yield of one charge by the modified Gompertz curve.

    Parameters
    ----------
    potential : ultimate yield [m3/kg], above 0.
    greatest_rate : steepest daily yield [m3/kg/d], above 0.
    lag : lag before gas sets in [d], at least 0.
    time : time since the charge [d], at least 0.

    Returns
    -------
    Cumulative yield [m3/kg], 0 to ``potential``; a little above 0 at time 0 by construction (6.6 % of the potential at a lag of 0).

    References
    ----------
    Zwietering et al. 1990; Lay et al. 1997 (from memory).
    """
    exponent = greatest_rate * _EULER / potential * (lag - time) + 1.0
    # A long lag would overflow the inner exponential although the curve is simply 0 there.
    return potential * exp(-exp(least(exponent, _LARGEST_EXPONENT)))


def greatest_growth_rate(digester_temperature: Numeric) -> Numeric:
    """Greatest specific growth rate [1/d], never below 0, of the digesting population at a temperature [Cel], 20 to 60.

    From 15 to 20 Cel it is extrapolation. Hashimoto, Varel and Chen 1981 (from memory; the coefficients are widely reprinted).
    """
    return most(0.013 * digester_temperature - 0.129, 0.0)


def chen_hashimoto_share(digester_temperature: Numeric, hydraulic_retention_time: Numeric, kinetic_parameter: Numeric) -> Numeric:
    """Share of the ultimate methane yield that a stirred, steadily fed digester releases.

    Parameters
    ----------
    digester_temperature : mean temperature of the slurry [Cel], 20 to 60.
    hydraulic_retention_time : [d], above one and a half times the washout retention ``1 / greatest_growth_rate``.
    kinetic_parameter : Chen and Hashimoto's K [1], above 0 (0.6 to 2 for manures).

    Returns
    -------
    Share released [1], 0 to 1; 0 at and below washout.

    Notes
    -----
    Describes stirred, well run digesters: it promises more than a household digester gives (about half more at 25 Cel and 60 d).

    References
    ----------
    Chen and Hashimoto 1978, 1980 (from memory).
    """
    growth_above_washout = most(hydraulic_retention_time * greatest_growth_rate(digester_temperature) - 1.0, 0.0)
    return growth_above_washout / (growth_above_washout + kinetic_parameter)


def chen_hashimoto_cattle_parameter(volatile_solids_concentration: Numeric) -> Numeric:
    """K of Chen and Hashimoto for cattle manure [1]; volatile solids of the feed [kg/m3], 20 to 100 (Hashimoto 1982, from memory)."""
    return 0.8 + 0.0016 * exp(0.06 * volatile_solids_concentration)


def chen_hashimoto_swine_parameter(volatile_solids_concentration: Numeric) -> Numeric:
    """K of Chen and Hashimoto for pig manure [1]; volatile solids of the feed [kg/m3], 20 to 80 (Hashimoto 1984, from memory)."""
    return 0.6 + 0.0206 * exp(0.051 * volatile_solids_concentration)
