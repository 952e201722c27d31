"""Digesters that are charged in turn: when to recharge one, and what several, staggered, give together on each day.

A charge gives much gas early and less later. ``curves`` hold the gas on each day of a charge [m3/d], shape (starts, ages, columns): for
charges begun on ``starts`` days that divide a year of 365 days evenly, the first on day of the year 0; one start serves where the
temperature is even. Days are whole days from the first charge of the first digester.
"""

from __future__ import annotations

from typing import NamedTuple, TypeAlias

import numpy as np
import numpy.typing as npt

from kilisho.formulas.arrays import Numeric
from kilisho.formulas.gas_storage import storage_over_days

Array: TypeAlias = npt.NDArray[np.float64]
Days: TypeAlias = npt.NDArray[np.intp]

YEAR = 365
_ROUNDING = 1e-9
_HALVINGS = 20


class Timetable(NamedTuple):
    """Digesters that are all alike and recharged in turn: how many, whole days that a charge stays, at least 1, and whole days from the
    opening of a digester to its next charge, at least 0.
    """

    digesters: int
    retention: int
    turn_round: int

    @property
    def cycle(self) -> int:
        """Days from one charge of a digester to its next."""
        return self.retention + self.turn_round

    @property
    def first_charges(self) -> Days:
        """Day of the first charge of each digester, spread evenly over a cycle, on whole days."""
        return np.arange(self.digesters) * self.cycle // self.digesters


def gas_per_cycle_day(curve: Array, turn_round: int) -> Array:
    """Mean gas over the whole cycle [m3/d] for a recharge after 1, 2, ... days, of the shape of ``curve``, (ages, columns).

    It is greatest where the gas of the day has fallen to the mean of the cycle: a day more would bring less than a day of the next
    charge does on the average (the marginal value of waiting).
    """
    ages = np.arange(1, curve.shape[0] + 1)[:, None]
    mean: Array = np.cumsum(curve, axis=0) / (ages + turn_round)
    return mean


def supply_of(curves: Array, timetable: Timetable, days: Days, day_of_year: float = 0.0) -> Array:
    """Gas of all digesters together on each of ``days`` [m3/d], (days, columns).

    Parameters
    ----------
    curves : see above; as many ages as the retention, or more.
    timetable : a digester gives nothing before its first charge and while it is emptied and refilled.
    days : from the first charge.
    day_of_year : of the first charge, 0 to 365; only matters where there are several starts.

    Notes
    -----
    Between two starts of ``curves`` gas of the same age is taken along a straight line.
    """
    since = days - timetable.first_charges[:, None]
    age = since % timetable.cycle
    working = ((since >= 0) & (age < timetable.retention))[..., None]
    gas = _gas_at(curves, np.minimum(age, timetable.retention - 1), days - age, day_of_year)
    total: Array = (gas * working).sum(axis=0)
    return total


def _gas_at(curves: Array, age: Days, start: Days, day_of_year: float) -> Array:
    """Gas of charges begun on ``start`` at ``age``, (digesters, days, columns)."""
    if curves.shape[0] == 1:
        even: Array = curves[0, age]
        return even
    place = ((start + day_of_year) % YEAR) * (curves.shape[0] / YEAR)
    before = place.astype(np.intp) % curves.shape[0]
    part = (place - np.floor(place))[..., None]
    gas: Array = (1.0 - part) * curves[before, age] + part * curves[(before + 1) % curves.shape[0], age]
    return gas


def spare_storage(storage: Numeric, within_day_share: Numeric, demand: Numeric) -> Numeric:
    """Storage that is free to carry gas from day to day [m3]: all of it less what the hours of a day ask for; at least 0."""
    spare: Numeric = np.maximum(storage - within_day_share * demand, 0.0)
    return spare


def keeps_up(supply: Array, demand: Numeric, storage: Numeric) -> npt.NDArray[np.bool_]:
    """Whether a store of ``storage`` [m3] keeps ``demand`` [m3/d] met on every day of ``supply``, (days, columns).

    The days stand for ever: their gas must reach what they are asked for, and the store is full at the beginning, as it then is sooner
    or later.
    """
    between = storage_over_days(supply, np.broadcast_to(demand, supply.shape))
    found: npt.NDArray[np.bool_] = (supply.mean(axis=0) >= demand * (1 - _ROUNDING)) & (between <= storage + _ROUNDING * demand)
    return found


def even_supply(supply: Array, storage: Numeric, within_day_share: Numeric) -> Array:
    """Greatest demand, the same every day, that ``supply``, (days, columns), and a store keep up with [m3/d], (columns,).

    By halving between the least day's gas, which needs no store, and the mean, to a millionth of their difference.
    """
    low: Array = supply.min(axis=0)
    high: Array = supply.mean(axis=0)
    for _ in range(_HALVINGS):
        middle = 0.5 * (low + high)
        met = keeps_up(supply, middle, spare_storage(storage, within_day_share, middle))
        low, high = np.where(met, middle, low), np.where(met, high, middle)
    return low
