"""Temperatures in the ground, and what temperature and altitude do to the pressures that gas volumes depend on."""

from __future__ import annotations

from kilisho.formulas.arrays import Numeric, cos, exp, sqrt

DAYS_PER_YEAR = 365.0
_YEARLY_ANGLE = 2.0 * 3.141592653589793 / DAYS_PER_YEAR


def damping_depth(diffusivity: Numeric) -> Numeric:
    """Depth at which the yearly swing of the ground temperature has fallen to 1/e of the swing at the surface.

    Parameters
    ----------
    diffusivity : thermal diffusivity of the soil [m2/d], 0.02 (dry sand) to 0.08 (wet clay).

    Returns
    -------
    Damping depth [m].
    """
    return sqrt(2.0 * diffusivity / _YEARLY_ANGLE)


def seasonal_amplitude_at_depth(swing_half_range: Numeric, depth: Numeric, diffusivity: Numeric) -> Numeric:
    """Half of the yearly range of the ground temperature at a depth.

    Parameters
    ----------
    swing_half_range : half of the yearly range at the surface [K], at least 0.
    depth : below the surface [m], at least 0.
    diffusivity : thermal diffusivity of the soil [m2/d], 0.02 to 0.08.

    Returns
    -------
    Half range at the depth [K].
    """
    return swing_half_range * exp(-depth / damping_depth(diffusivity))


def ground_temperature(  # noqa: PLR0913, PLR0917 -- the wave has six parameters
    mean: Numeric, swing_half_range: Numeric, depth: Numeric, day: Numeric, coldest_day: Numeric, diffusivity: Numeric
) -> Numeric:
    """Undisturbed ground temperature at a depth on a day of the year.

    Parameters
    ----------
    mean : yearly mean at the surface [Cel].
    swing_half_range : half of the yearly range at the surface [K], at least 0.
    depth : below the surface [m], at least 0.
    day : day of the year [d], 0 to 365.
    coldest_day : day of the coldest surface [d], 0 to 365 (about 20 in the north, about 200 in the south).
    diffusivity : thermal diffusivity of the soil [m2/d], 0.02 to 0.08.

    Returns
    -------
    Ground temperature [Cel].

    Notes
    -----
    One harmonic over uniform soil, without ground water, snow or the digester's own heat. A shallow digester (less than 1 m of
    cover) swings more than the ground at its middle: measured daily means of a buried 6 m3 dome ran from 10 to 29 Cel in a year.

    References
    ----------
    Kusuda and Achenbach 1965; Hillel 1982.
    """
    relative_depth = depth / damping_depth(diffusivity)
    return mean - swing_half_range * exp(-relative_depth) * cos(_YEARLY_ANGLE * (day - coldest_day) - relative_depth)


def saturation_vapour_pressure(temperature: Numeric) -> Numeric:
    """Pressure of water vapour over water at saturation.

    Parameters
    ----------
    temperature : [Cel], -40 to 50 (within 0.4 %).

    Returns
    -------
    Vapour pressure [Pa].

    References
    ----------
    Alduchov and Eskridge 1996, equation 21; the form that the Standard BMP Methods (document 201, 2020) prescribe.
    """
    return 610.94 * exp(17.625 * temperature / (243.04 + temperature))


def atmospheric_pressure(altitude: Numeric) -> Numeric:
    """Mean atmospheric pressure at an altitude, standard atmosphere.

    Parameters
    ----------
    altitude : above sea level [m], -500 to 11000.

    Returns
    -------
    Absolute pressure [Pa]; weather moves it by some 2 %.

    References
    ----------
    ISO 2533:1975.
    """
    pressure: Numeric = 101325.0 * (1.0 - 2.25577e-5 * altitude) ** 5.25588
    return pressure
