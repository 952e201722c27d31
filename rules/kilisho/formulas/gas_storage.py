"""Gas that must be kept until it is burnt: over the hours of a day that repeats itself, and over a series of days.

Supply and demand are constant between clock times, so what a store holds changes along straight lines; its extremes lie where the
lines bend, and every figure here is exact. Volumes are gas as used, at one state.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple, TypeAlias

import numpy as np
import numpy.typing as npt

from kilisho.formulas.arrays import Numeric

HOURS_PER_DAY = 24.0
_ROUNDING = 1e-12
Array: TypeAlias = npt.NDArray[np.float64]


class Interval(NamedTuple):
    """A constant rate [m3/h], a number or an array of samples, from one clock time to another [h], 0 to 24.

    An end at or before the start lies on the next day.
    """

    start: float
    end: float
    rate: Numeric


class StoreRun(NamedTuple):
    """A store over a series of steps (first axis): level at their bounds, demand, unmet demand and vented gas in each [m3]."""

    level: Array
    demand: Array
    unmet: Array
    vented: Array

    @property
    def covered(self) -> Numeric:
        """Part of the demand that is met [1], 0 to 1; 1 where nothing is asked for."""
        asked = self.demand.sum(axis=0)
        return np.where(asked > 0, 1.0 - self.unmet.sum(axis=0) / np.where(asked > 0, asked, 1.0), 1.0)[()]


class DayRun(NamedTuple):
    """A day that repeats itself: clock times of the steps' bounds [h], the store, and the hours of each step with less than asked."""

    clock: Array
    store: StoreRun
    short_hours: Array


def hours_of(interval: Interval) -> float:
    """Length of an interval [h], above 0 to 24."""
    return (interval.end - interval.start) % HOURS_PER_DAY or HOURS_PER_DAY


def steady(per_day: Numeric) -> tuple[Interval, ...]:
    """The same rate round the clock; ``per_day`` [m3/d]."""
    return (Interval(0.0, HOURS_PER_DAY, per_day / HOURS_PER_DAY),)


def clock_of(*intervals: Interval, cuts: Sequence[float] = ()) -> Array:
    """Midnight, every start and end, and ``cuts`` [h], in order and each once."""
    bends = {time for one in intervals for time in (one.start, one.end)}
    return np.array(sorted({0.0, HOURS_PER_DAY, *bends, *cuts}))


def volumes_between(clock: Array, intervals: Sequence[Interval]) -> Array:
    """Volume of all intervals together [m3] in each step of the clock; intervals that overlap add up."""
    if not intervals:
        return np.zeros(len(clock) - 1)
    middle = (clock[1:, None] + clock[:-1, None]) / 2
    start, end = np.array([(one.start, one.end) for one in intervals]).T
    after, before = start <= middle, middle < end
    burning = np.where(end > start, after & before, after | before).astype(float)
    volumes: Array = ((burning @ np.stack(np.broadcast_arrays(*(one.rate for one in intervals)))).T * np.diff(clock)).T
    return volumes


def storage_needed(supply: Sequence[Interval], demand: Sequence[Interval]) -> Numeric:
    """Least storage with which a day that repeats itself passes on all gas that can be used.

    Parameters
    ----------
    supply, demand : rates [m3/h], at least 0, by clock time; see :func:`steady` for a constant supply.

    Returns
    -------
    Storage [m3]. Where the day's supply reaches the day's demand, all demand is met and the surplus is vented when full; where it
    falls short, no gas is vented and all of it is used.

    Notes
    -----
    A full store that never lets demand down falls by at most the greatest drop of the cumulative net supply; an empty one that
    never vents rises by at most its greatest rise. No drop (or rise) that matters lasts longer than a day, since the day's net is
    not negative (not positive), so two days hold them all. In balance both are the span of the cumulative curve.
    """
    clock = clock_of(*supply, *demand)
    net = volumes_between(clock, supply).T - volumes_between(clock, demand).T
    stored = _from_nothing(np.concatenate([net.T, net.T]))
    return np.where(net.T.sum(axis=0) >= 0, _greatest_drop(stored), _greatest_drop(-stored))[()]


def run_day(supply: Sequence[Interval], demand: Sequence[Interval], storage: Numeric, cuts: Sequence[float] = ()) -> DayRun:
    """A day that repeats itself, with a store of limited size.

    Parameters
    ----------
    supply, demand : rates [m3/h], at least 0, by clock time.
    storage : [m3], at least 0 and finite.
    cuts : clock times [h] at which to divide the steps further, such as every full hour.

    Returns
    -------
    The steps of the steady day. What is asked for is taken as it comes; the rest of the supply fills the store and is then vented.

    Notes
    -----
    One pass finds the level that the day begins and ends with. A day maps the level at its start to that at its end as
    ``clip(level + net, low, high)``, since clipped shifts follow one another as a clipped shift. With a net of at least 0 a full
    store ends at ``high``, and ``high`` ends at ``high`` again; with a net below 0 an empty store ends at ``low`` and so does ``low``.
    """
    clock = clock_of(*supply, *demand, cuts=cuts)
    sides = volumes_between(clock, supply).T, volumes_between(clock, demand).T
    given, asked = (side.T for side in np.broadcast_arrays(*sides, np.asarray(storage)[..., None])[:2])
    net = given - asked
    shifts = _shifts(net, storage)
    begin = _after(shifts, np.where(net.sum(axis=0) >= 0, storage, 0.0))[-1]
    store = _told(net, asked, storage, begin, _after(shifts, begin))
    return DayRun(clock, store, (_short_share(store, asked - given).T * np.diff(clock)).T)


def _short_share(store: StoreRun, missing: Array) -> Array:
    """Part of each step with less than is asked for: what is not met, over what is missing all the time that the store is empty."""
    noticed = missing > _ROUNDING * store.demand
    return np.minimum(np.divide(store.unmet, missing, out=np.zeros(missing.shape), where=noticed), 1.0)


def run_store(supply: Array, demand: Array, storage: Numeric, start: Numeric) -> StoreRun:
    """A store over a series of steps, such as days, in each of which supply and demand are constant.

    Parameters
    ----------
    supply, demand : [m3] in each step (first axis), at least 0; more axes hold farms or samples.
    storage : [m3], at least 0 and finite.
    start : level at the beginning [m3], 0 to ``storage``.
    """
    net = supply - demand
    return _told(net, demand, storage, start, store_levels(net, storage, start))


def _told(net: Array, demand: Array, storage: Numeric, start: Numeric, after: Array) -> StoreRun:
    """The run of a store whose levels after each step are known."""
    level = np.concatenate([np.broadcast_to(start, after[:1].shape), after])
    free = level[:-1] + net
    return StoreRun(level, np.broadcast_to(demand, net.shape), np.maximum(-free, 0.0), np.maximum(free - storage, 0.0))


def store_levels(net: Array, storage: Numeric, start: Numeric) -> Array:
    """Level after each step [m3] of a store that is held between empty and full; arguments as for :func:`run_store`.

    Clipped shifts are composed in pairs, pairs of pairs and so on, so a year takes nine passes and not 365.
    """
    return _after(_shifts(net, storage), start)


def _after(shifts: tuple[Array, Array], start: Numeric) -> Array:
    """Levels after each step from the clipped shift of all steps so far: shift, and low and high."""
    shift, (low, high) = shifts
    levels: Array = np.minimum(np.maximum(start + shift, low), high)
    return levels


def _shifts(net: Array, storage: Numeric) -> tuple[Array, Array]:
    """For each step, what it and all before it do to a level: the shift, and the low and high that it is then held between, stacked."""
    shift = np.array(net, dtype=float)
    held = np.stack([np.zeros_like(shift), np.broadcast_to(np.asarray(storage, dtype=float), shift.shape)])
    reach = 1
    while reach < len(shift):
        later = shift[reach:], held[0, reach:], held[1, reach:]
        held[:, reach:] = np.minimum(np.maximum(held[:, :-reach] + later[0], later[1]), later[2])
        shift[reach:] = shift[:-reach] + later[0]
        reach *= 2
    return shift, held


def storage_over_days(supply: Array, demand: Array) -> Numeric:
    """Least storage that, full at the beginning, keeps the demand of every day met.

    Parameters
    ----------
    supply, demand : [m3] on each day (first axis), at least 0; more axes hold farms or samples.

    Returns
    -------
    Storage [m3] from day to day; what the hours of a day ask for comes on top (:func:`storage_needed`). For a year that repeats
    itself give it twice; it must bring at least what it asks for, or no store is enough.
    """
    return _greatest_drop(_from_nothing(np.asarray(supply - demand)))


def _from_nothing(net: Array) -> Array:
    """Cumulative sums along the first axis, beginning with 0."""
    return np.cumsum(np.concatenate([np.zeros_like(net[:1]), net]), axis=0)


def _greatest_drop(stored: Array) -> Numeric:
    """Greatest fall of a series (first axis) below what it was before."""
    drop: Numeric = (np.maximum.accumulate(stored) - stored).max(axis=0)
    return drop
