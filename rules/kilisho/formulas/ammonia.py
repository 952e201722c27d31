"""Ammonia in the slurry: how much there is in all and how much of it is free and so can inhibit."""

from __future__ import annotations

from kilisho.formulas.arrays import Numeric, exp

_LN10 = 2.302585092994046


def ammonia_pka(temperature: Numeric) -> Numeric:
    """Acidity constant of ammonium in water.

    Parameters
    ----------
    temperature : of the slurry [Cel], 0 to 50 (the range of the fit).

    Returns
    -------
    Negative decimal logarithm of the constant [1].

    References
    ----------
    Emerson, Russo, Lund and Thurston 1975.
    """
    return 0.09018 + 2729.92 / (temperature + 273.15)


def free_ammonia_share(slurry_ph: Numeric, temperature: Numeric) -> Numeric:
    """Share of the total ammonia that is free (un-ionised).

    Parameters
    ----------
    slurry_ph : pH of the slurry [1], 5 to 10.
    temperature : of the slurry [Cel], 0 to 50.

    Returns
    -------
    Free share [1], 0 to 1.

    Notes
    -----
    Fresh-water equilibrium. In slurry, with its dissolved salts, it overstates free ammonia, by over 40 % at 5 % total solids; the limits
    in use were derived with the same form and are to be read with it.

    References
    ----------
    Emerson et al. 1975; Hafner and Bisogni 2009 (the overstatement).
    """
    return 1.0 / (1.0 + exp(_LN10 * (ammonia_pka(temperature) - slurry_ph)))


def total_ammonia(nitrogen_concentration: Numeric, ammonium_share: Numeric) -> Numeric:
    """Total ammonia nitrogen in the slurry [kg/m3].

    Parameters
    ----------
    nitrogen_concentration : total nitrogen in the slurry [kg/m3], at least 0.
    ammonium_share : share of the nitrogen that is or becomes ammonium [1], 0 to 1 (0.5 to 0.7 digested manure, 0.7 to 0.85 poultry).
    """
    return nitrogen_concentration * ammonium_share
