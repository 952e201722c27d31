"""How long a first charge takes to give gas that burns: full runs on a grid, and what lies between."""

from __future__ import annotations

from functools import lru_cache
from typing import NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.process.feedstocks import Feedstock, feedstock
from kilisho.process.headspace import RELIABLE, first_burnable_day
from kilisho.process.history import Conditions, History, working_slurry
from kilisho.process.parameters import Parameters
from kilisho.process.simulate import simulate

Array = npt.NDArray[np.float64]

TEMPERATURES = np.arange(10.0, 35.1, 2.5)
STARTER_SHARES = np.array([0.0, 0.02, 0.04, 0.06, 0.08, 0.10, 0.125, 0.15, 0.20, 0.25, 0.30, 0.40, 0.50])
# The charge of the surface: dung at 60 kg/m3 of volatile solids (7.5 % total solids), gas space a third of the slurry as in a dome whose
# inlet stands open; judgement. Longer than this is no start.
SOLIDS_OF_CHARGE, GAS_SPACE_SHARE, HORIZON = 60.0, 1.0 / 3.0, 200


class Surface(NamedTuple):
    """Days to burnable gas, (temperatures, starter shares), for a charge that does or does not bring the methanogens of a rumen."""

    unaided: Array
    aided: Array


def dung(starts_unaided: bool, parameters: Parameters) -> Feedstock:
    """Dung of the surface: the base pack's dairy cattle dung, with or without the methanogens of a rumen."""
    per_volatile = 1.0 / 0.8
    return feedstock(
        biogas_yield=0.25, degradation_rate=0.009, methane_share=0.60, nitrogen=0.018 * per_volatile, ammonium_share=0.60,
        potassium=0.011 * per_volatile, starts_unaided=starts_unaided, of_dung=True,
        parameters=parameters,
    )  # fmt: skip


def first_charge_days(temperature: Array, starter_share: Array, starts_unaided: bool, parameters: Parameters) -> Array:
    """Days to burnable gas by full runs; temperature [Cel] and starter share of the slurry [1] of one shape (farms,)."""
    farms = temperature.shape[0]
    solids, slurry = np.zeros((HORIZON, 1, farms)), np.zeros((HORIZON, farms))
    slurry[0] = 1.0 - starter_share
    solids[0, 0] = SOLIDS_OF_CHARGE * slurry[0]
    history = History(dung(starts_unaided, parameters), solids, slurry, working_slurry(starter_share, parameters))
    run = simulate(history, Conditions(1.0, np.broadcast_to(temperature, (HORIZON, farms))), parameters)
    return first_burnable_day(run, GAS_SPACE_SHARE, RELIABLE)


@lru_cache(maxsize=1)
def surface(parameters: Parameters) -> Surface:
    """The grid of ``TEMPERATURES`` and ``STARTER_SHARES``; a few seconds of work, done once."""
    warm, share = (axis.ravel() for axis in np.meshgrid(TEMPERATURES, STARTER_SHARES, indexing="ij"))
    shape = TEMPERATURES.size, STARTER_SHARES.size
    return Surface(*(first_charge_days(warm, share, unaided, parameters).reshape(shape) for unaided in (True, False)))


def start_up_days(temperature: float, starter_share: float, starts_unaided: bool, parameters: Parameters) -> float:
    """Days until a first charge of dung gives gas that burns reliably.

    Parameters
    ----------
    temperature : of the slurry [Cel], 10 to 35.
    starter_share : slurry of a working digester in the charge [1], 0 to 0.5.
    starts_unaided : the dung brings the methanogens of a rumen (fresh cattle and buffalo dung).

    Returns
    -------
    Days, linear in the logarithm between the points of the grid; infinity where a corner of the field sours or needs more than 200 days,
    which reads as "do not count on it".

    Raises
    ------
    ValueError
        Outside the grid.
    """
    grid = surface(parameters).unaided if starts_unaided else surface(parameters).aided
    row, up = _place(temperature, TEMPERATURES, "temperature")
    column, right = _place(starter_share, STARTER_SHARES, "starter share")
    corners = grid[row : row + 2, column : column + 2]
    weights = np.outer([1.0 - up, up], [1.0 - right, right])
    used = weights > 0.0
    return float(np.exp((weights[used] * np.log(corners[used])).sum()))


def _place(value: float, axis: Array, name: str) -> tuple[int, float]:
    if not axis[0] <= value <= axis[-1]:
        raise ValueError(f"{name} must lie in {axis[0]:g} to {axis[-1]:g}")
    place = min(int(np.searchsorted(axis, value, side="right")) - 1, axis.size - 2)
    return place, float((value - axis[place]) / (axis[place + 1] - axis[place]))
