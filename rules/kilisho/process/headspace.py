"""The gas space above the slurry: how soon air and the first, poor gas are washed out, and when the gas burns."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.formulas.arrays import Numeric
from kilisho.process.run import Run

Array = npt.NDArray[np.float64]

# Methane in the gas below which it does not light, and from which it burns reliably; safety reference, rows on burnable gas and start-up:
# below 30 % it will not light, 30 to 45 % is weak, more than 50 % burns (published).
WEAK, RELIABLE = 0.30, 0.50


class GasSpace(NamedTuple):
    """Parts of the gas in the gas space at the end of each day [1], (days, farms); the rest of 1 is carbon dioxide."""

    methane: Array
    air: Array


def gas_space(run: Run, volume: Numeric) -> GasSpace:
    """Gas in a space that is full of air at first, mixes fully, and lets out as much as comes in.

    Parameters
    ----------
    run : a run of the process model.
    volume : of the gas space with its storage [m3], number or (farms,), above 0.

    Notes
    -----
    Exact for a day of even gas. A household that vents the whole store at once washes air out sooner. The share says nothing of safety: gas
    with air in it passes through the explosive range, and first gas is vented outdoors, away from flames.
    """
    if not np.all(np.greater(volume, 0.0)):
        raise ValueError("the gas space must be above 0 m3")
    kept = np.exp(-run.biogas / volume)
    made = np.nan_to_num(run.methane_share)
    methane, air = np.zeros_like(kept), np.exp(-np.cumsum(run.biogas, axis=0) / volume)
    held = np.zeros(kept.shape[1])
    for day in range(kept.shape[0]):
        held = held * kept[day] + made[day] * (1.0 - kept[day])
        methane[day] = held
    return GasSpace(methane, air)


def first_burnable_day(run: Run, volume: Numeric, threshold: float = RELIABLE) -> Array:
    """Days from the start until the gas in the gas space holds ``threshold`` methane, (farms,); infinity if it never does.

    ``volume`` as in :func:`gas_space`; ``threshold`` [1], above 0 to 1: ``WEAK`` or ``RELIABLE``. Within the day, in a straight line.
    """
    if not 0.0 < threshold <= 1.0:
        raise ValueError("the threshold must lie above 0 and at most at 1")
    methane = gas_space(run, volume).methane
    reached = methane >= threshold
    day = reached.argmax(axis=0)
    farms = np.arange(methane.shape[1])
    after, before = methane[day, farms], np.where(day > 0, methane[day - 1, farms], 0.0)
    within = (threshold - before) / np.where(after > before, after - before, 1.0)
    return np.where(reached.any(axis=0), day + within, np.inf)
