"""Pressure that low-pressure gas loses on its way through a pipe.

The gas is taken as incompressible: the losses here are hundreds of pascals on a hundred thousand. Bores are true inner diameters; the
nominal inch of a pipe is not its bore.
"""

from __future__ import annotations

import math
from typing import cast

from kilisho.formulas.arrays import Numeric, choose, log, most

SECONDS_PER_HOUR = 3600.0
# Up to this Reynolds number flow in a pipe is laminar.
LAMINAR = 2300.0


def mean_velocity(flow: Numeric, inner_diameter: Numeric) -> Numeric:
    """Mean velocity [m/s] of a flow [m3/h], at least 0, in a round pipe of inner diameter [m], above 0."""
    return flow / SECONDS_PER_HOUR * 4.0 / (math.pi * inner_diameter * inner_diameter)


def reynolds_number(velocity: Numeric, inner_diameter: Numeric, density: Numeric, viscosity: Numeric) -> Numeric:
    """Reynolds number [1] of a velocity [m/s] in a pipe of inner diameter [m]; density [kg/m3], dynamic viscosity [Pa.s]."""
    return velocity * inner_diameter * density / viscosity


def turbulent_friction_factor(reynolds: Numeric, relative_roughness: Numeric) -> Numeric:
    """Darcy friction factor of turbulent flow.

    Parameters
    ----------
    reynolds : Reynolds number [1], 2300 to 1e8; smaller ones are taken as 2300.
    relative_roughness : height of the roughness over the inner diameter [1], 0 to 0.05.

    Returns
    -------
    Friction factor [1], within 2 % of the equation of Colebrook from 4000 on and within 2.5 % below.

    References
    ----------
    Haaland 1983.
    """
    part = (relative_roughness / 3.7) ** 1.11 + 6.9 / most(reynolds, LAMINAR)
    root = -1.8 * log(part) / math.log(10.0)
    return 1.0 / (root * root)


def pressure_drop(  # noqa: PLR0913, PLR0917 -- gas and pipe have three properties each
    flow: Numeric, length: Numeric, inner_diameter: Numeric, roughness: Numeric, density: Numeric, viscosity: Numeric
) -> Numeric:
    """Pressure lost to friction in a straight pipe.

    Parameters
    ----------
    flow : as it passes the pipe [m3/h], at least 0.
    length : with what the fittings count for [m], at least 0.
    inner_diameter : true bore [m], above 0.
    roughness : of the wall [m], at least 0 and below a twentieth of the bore.
    density, viscosity : of the gas [kg/m3] and [Pa.s].

    Returns
    -------
    Pressure drop [Pa]: Hagen and Poiseuille up to a Reynolds number of 2300, above it Darcy and Weisbach with the friction factor of
    Haaland. At 2300 it jumps by some 70 %; between 2000 and 4000 nature may choose either.
    """
    velocity = mean_velocity(flow, inner_diameter)
    reynolds = reynolds_number(velocity, inner_diameter, density, viscosity)
    laminar = 32.0 * viscosity * velocity * length / (inner_diameter * inner_diameter)
    factor = turbulent_friction_factor(reynolds, roughness / inner_diameter)
    turbulent = factor * length / inner_diameter * density * velocity * velocity / 2.0
    return choose(cast("bool", reynolds <= LAMINAR), laminar, turbulent)


def length_with_fittings(length: Numeric, fittings: Numeric, diameters_per_fitting: Numeric, inner_diameter: Numeric) -> Numeric:
    """Length of straight pipe [m] that loses as much as a pipe [m] with ``fittings`` bends, tees and valves [1], each of which counts
    for ``diameters_per_fitting`` inner diameters [1] of pipe; inner diameter [m].
    """
    return length + fittings * diameters_per_fitting * inner_diameter
