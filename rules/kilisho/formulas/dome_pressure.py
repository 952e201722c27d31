"""Gas pressure in a fixed dome: gas pushes slurry out of the dome into a compensation tank, and the difference of levels is the pressure.

The dome is a hemisphere with a cap of gas in its top when the pressure is 0 and both levels are equal; the tank has straight walls.
Slurry pushed out is gas stored, at the state in the dome.
"""

from __future__ import annotations

import math

import numpy as np

from kilisho.formulas.arrays import Numeric, least
from kilisho.formulas.geometry import cap_height, cap_volume

STANDARD_GRAVITY = 9.80665
_NEWTON_STEPS = 40
_ROUNDING = 1e-12


def level_drop(stored_gas: Numeric, radius: Numeric, gas_cap_height: Numeric) -> Numeric:
    """Fall of the slurry's level in the dome [m]; arguments as for :func:`slurry_head`."""
    return cap_height(radius, cap_volume(radius, gas_cap_height) + stored_gas) - gas_cap_height


def slurry_head(stored_gas: Numeric, radius: Numeric, gas_cap_height: Numeric, tank_area: Numeric) -> Numeric:
    """Difference between the slurry's levels in tank and dome.

    Parameters
    ----------
    stored_gas : above what the dome holds at zero pressure [m3], at least 0; with the cap at most the hemisphere.
    radius : inner radius of the dome [m], above 0.
    gas_cap_height : height of the gas under the dome's top at zero pressure [m], 0 to ``radius``.
    tank_area : surface of the compensation tank [m2], above 0.

    Returns
    -------
    Head [m of slurry]. Beyond the tank's overflow it grows no more.
    """
    return stored_gas / tank_area + level_drop(stored_gas, radius, gas_cap_height)


def dome_gas_pressure(
    stored_gas: Numeric, radius: Numeric, gas_cap_height: Numeric, tank_area: Numeric, slurry_density: Numeric
) -> Numeric:
    """Gauge pressure [Pa]; slurry density [kg/m3], 950 to 1100, other arguments as for :func:`slurry_head`."""
    return slurry_density * STANDARD_GRAVITY * slurry_head(stored_gas, radius, gas_cap_height, tank_area)


def stored_gas_at_pressure(
    gauge_pressure: Numeric, radius: Numeric, gas_cap_height: Numeric, tank_area: Numeric, slurry_density: Numeric
) -> Numeric:
    """Gas that a gauge reading tells: the inverse of :func:`dome_gas_pressure`.

    Parameters
    ----------
    gauge_pressure : [Pa], at least 0.

    Returns
    -------
    Stored gas [m3]. A reading beyond a dome that is all gas means that a measure is wrong: a float raises ValueError, an array
    element becomes NaN.

    Notes
    -----
    With h the height of the gas in the dome, the head is ``(cap_volume(h) - cap_volume(h0)) / A + h - h0``: rising, and convex up to
    the radius. Newton's method from the far end ``min(h0 + head, radius)`` therefore comes down to the root and never passes it.
    """
    head = gauge_pressure / (slurry_density * STANDARD_GRAVITY)
    empty = cap_volume(radius, gas_cap_height)
    wanted = head + gas_cap_height + empty / tank_area
    height = least(gas_cap_height + head, radius)
    start_above_root = cap_volume(radius, height) / tank_area + height - wanted
    for _ in range(_NEWTON_STEPS):
        slope = math.pi * height * (2.0 * radius - height) / tank_area + 1.0
        height = least(height - (cap_volume(radius, height) / tank_area + height - wanted) / slope, radius)
    return _unless_beyond(cap_volume(radius, height) - empty, start_above_root + _ROUNDING * wanted)


def _unless_beyond(stored_gas: Numeric, above_root: Numeric) -> Numeric:
    """The stored gas where the search began above the root; no dome of this shape shows such a reading where it began below."""
    if not isinstance(above_root, float):
        return np.where(above_root >= 0, stored_gas, np.nan)
    if above_root < 0:
        raise ValueError("the reading lies beyond a dome that is all gas")
    return stored_gas
