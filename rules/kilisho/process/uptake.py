"""The closed forms within one step: uptake of acids by Monod's law, and the gas that the slurry is under."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

Array = npt.NDArray[np.float64]

_EMPTY = 1e-12


def used_up(before: Array, source: Array, spread: Array) -> Array:
    """Acids taken up in a step: exact for those there before and a steady source, ``spread`` is the step over the time they last [1]."""
    spread = np.maximum(spread, _EMPTY)
    gone = -np.expm1(-spread)
    return before * gone + source * (1.0 - gone / spread)


def left_over(acids: Array, capacity: Array, half: Array) -> Array:
    """Acids left by an implicit step of Monod uptake; ``capacity`` is what unlimited cells would take, all in the same mass."""
    excess = acids - capacity - half
    root = np.sqrt(excess * excess + 4.0 * acids * half)
    # The sum of two like signs loses no digits: when the excess is below 0 the product of both roots gives the one wanted.
    return np.where(excess > 0.0, 0.5 * (excess + root), 2.0 * acids * half / (root + np.abs(excess) + _EMPTY))


def gas_over(share: Array, methane: Array, carbon_dioxide: Array, held: Array) -> Array:
    """Carbon dioxide in the gas over the slurry [1] after gas has bubbled through: the slurry holds ``held`` volumes and mixes with it."""
    half = 0.5 * (methane + carbon_dioxide) / held
    return np.maximum((share * (1.0 - half) + carbon_dioxide / held) / (1.0 + half), 0.0)
