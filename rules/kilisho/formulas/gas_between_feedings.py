"""How the gas of a digester that is not fed every day rises after a feeding and falls until the next.

First-order decay in a stirred digester at its periodic steady state: between feedings nothing leaves, so the rate falls as
``exp(-k t)``; how much each feeding pushes out changes the mean, and not the shape. Real digesters answer more gently, since solids
become acids before gas, so these swings are the largest to expect. All follow from ``x = k E``, rate times interval.
"""

from __future__ import annotations

from kilisho.formulas.arrays import Numeric, exp, expm1, log1p, most

_SMALLEST = 1e-6


def rate_since_feeding(rate: Numeric, feeding_interval: Numeric, since_feeding: Numeric) -> Numeric:
    """Gas rate at a time after a feeding, over the mean rate.

    Parameters
    ----------
    rate : degradation rate at the digester's temperature [1/d], at least 0.
    feeding_interval : time between feedings [d], above 0.
    since_feeding : time since the last feeding [d], 0 to ``feeding_interval``.

    Returns
    -------
    Rate over mean [1]; its mean over the interval is 1.
    """
    return peak_over_mean(rate, feeding_interval) * exp(-rate * since_feeding)


def peak_over_mean(rate: Numeric, feeding_interval: Numeric) -> Numeric:
    """Gas rate just after a feeding over the mean rate [1], at least 1; arguments as for :func:`rate_since_feeding`."""
    return 1.0 + _excess(_product(rate, feeding_interval))


def trough_over_mean(rate: Numeric, feeding_interval: Numeric) -> Numeric:
    """Gas rate just before a feeding over the mean rate [1], 0 to 1; arguments as for :func:`rate_since_feeding`."""
    return rate_since_feeding(rate, feeding_interval, feeding_interval)


def storage_between_feedings(biogas_per_day: Numeric, rate: Numeric, feeding_interval: Numeric) -> Numeric:
    """Storage that lets a steady use have the mean rate all the time.

    Parameters
    ----------
    biogas_per_day : mean gas [m3/d], at least 0.
    rate, feeding_interval : as for :func:`rate_since_feeding`.

    Returns
    -------
    Storage [m3]: what comes above the mean until the rate has fallen to it. With y the peak over the mean this is
    ``biogas_per_day * feeding_interval * (y - 1 - ln y) / x``, about ``x / 8`` of the interval's gas while x is small.
    """
    product = _product(rate, feeding_interval)
    excess = _excess(product)
    return biogas_per_day * feeding_interval * (excess - log1p(excess)) / product


def _product(rate: Numeric, feeding_interval: Numeric) -> Numeric:
    """x, never so small that its differences drown in rounding."""
    return most(rate * feeding_interval, _SMALLEST)


def _excess(product: Numeric) -> Numeric:
    """``x / (1 - exp(-x)) - 1``."""
    return (product + expm1(-product)) / -expm1(-product)
