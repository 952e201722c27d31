"""The closed forms within one step: uptake of acids by Monod's law, and the gas that the slurry is under."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

Array = npt.NDArray[np.float64]

_EMPTY = 1e-12


def used_up(before: Array, source: Array, spread: Array) -> Array:
    """Acids, and the gas that waits in them, taken up in a step: exact for those there before and a steady source.

    ``spread`` is the step over the time that they last [1].
    """
    spread = np.maximum(spread, _EMPTY)
    return source - np.expm1(-spread) * (before - source / spread)


def left_over(acids: Array, capacity: Array, half: Array) -> Array:
    """Acids left by an implicit step of Monod uptake; ``capacity`` is what unlimited cells would take, all in the same mass.

    The root of a quadratic equation that is at least 0, in the form that loses no digits where capacity is ample.
    """
    excess, product = acids - (capacity + half), 2.0 * half * acids
    return np.minimum(product / (np.sqrt(excess * excess + 2.0 * product) - excess), acids)


def gas_over(share: Array, methane: Array, carbon_dioxide: Array, held: Array) -> Array:
    """Carbon dioxide in the gas over the slurry [1] after gas has bubbled through: the slurry holds ``held`` volumes and mixes with it."""
    made = methane + carbon_dioxide
    return np.maximum(share + (carbon_dioxide - share * made) / (held + 0.5 * made), 0.0)
