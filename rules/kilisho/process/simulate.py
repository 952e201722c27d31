"""The day-stepping run of the process model."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.deadline import keep_to_time
from kilisho.process.flow import flow_of, pour
from kilisho.process.history import Conditions, History
from kilisho.process.pace import Pace, constants_of, pace_of
from kilisho.process.parameters import Parameters
from kilisho.process.reactions import react, settle
from kilisho.process.record import Course, Record, told
from kilisho.process.run import Run
from kilisho.process.schedule import Lockstep, Steps, in_order, lockstep_of, moves_of, scaled, steps_of
from kilisho.process.shapes import checked
from kilisho.process.state import State, brought_by, first_state
from kilisho.process.traits import Traits, traits_of

Array = npt.NDArray[np.float64]

# Twice as many move no day by a thousandth, and take half as long again. With these, 99 of 100 days come to within half a percent of
# finely stepped ones, and a year to a thousandth: the model's figures are known to tens of percent.
SUBSTEPS = 4


def simulate(history: History, conditions: Conditions, parameters: Parameters, substeps: int = SUBSTEPS) -> Run:
    """Gas, acids and ammonia of a digester day by day, for one farm or many at once.

    Parameters
    ----------
    history : feeds by day and what is there at first; see :class:`History`.
    conditions : volume, temperature, mixing; see :class:`Conditions`.
    parameters : see :class:`Parameters`.
    substeps : steps on the liveliest day at 30 Cel, 1 to 96; quiet and cold days take fewer, see :mod:`kilisho.process.schedule`.

    Returns
    -------
    :class:`Run`, all of shape (days, farms).

    Raises
    ------
    ValueError
        For shapes that do not fit and values outside the ranges documented on the parts.
    TooLongError
        Between two days, when the time that :mod:`kilisho.deadline` holds is over.

    Notes
    -----
    Two steps after Hill 1983 and Bernard et al. 2001: first-order hydrolysis to acids, Monod growth of methanogens on them, with pH and
    free ammonia in the manner of ADM1 (Batstone et al. 2002). Fed steadily and in health, it comes to
    ``kilisho.formulas.kinetics.mixed_share`` of the potential. Left out: scum, sludge that stays behind, sulphide, hydrogen, long fatty
    acids, cold shock, and the carbon dioxide that the slurry takes up as bicarbonate.
    """
    temperature, farms = checked(history, conditions, parameters, substeps)
    course = _course(history, conditions, parameters, temperature, farms)
    volume, tanks = course.flow.volume, conditions.tanks_in_series
    steps = scaled(steps_of(history, volume, temperature, parameters, tanks), substeps)
    lockstep = lockstep_of(steps, farms)
    pace = pace_of(steps, temperature, volume, tanks, history.feedstock.rate, parameters)
    state = first_state(history.start, farms, tanks, history.feedstock.rate.shape[0])
    record = Record(temperature.shape[0], state)
    _run(state, course, pace, lockstep, record)
    return told(record, course)


def _course(history: History, conditions: Conditions, parameters: Parameters, temperature: Array, farms: int) -> Course:
    """What is known before the first day."""
    traits, tanks = traits_of(history.feedstock, parameters), conditions.tanks_in_series
    slurry = np.broadcast_to(history.slurry, (temperature.shape[0], farms))
    start, volume = (np.broadcast_to(np.asarray(x, dtype=np.float64), (farms,)) for x in (history.start.volume, conditions.working_volume))
    flow = flow_of(slurry, start, volume, tanks)
    brought, quick_gas = brought_by(history.volatile_solids, history.feedstock, traits.release, farms)
    return Course(temperature, slurry, flow, brought, quick_gas, constants_of(temperature), traits)


def _run(state: State, course: Course, pace: Pace, lockstep: Lockstep, record: Record) -> None:
    """Step through the days, with the farms of each day in the order of ``lockstep``."""
    order, bench, fed = lockstep.order, Bench(state, course.traits), np.asarray(course.slurry.any(axis=1))
    feeds, moved = Feeds(course.brought, course.flow.moved, course.flow.spread), moves_of(order)
    if order is not None:
        pace, feeds = pace.ordered(order), Feeds._make(in_order(part, order) for part in feeds)
    for day, turns in enumerate(lockstep.turns):
        keep_to_time()
        if day in moved:
            bench.reorder(moved[day])
        if fed[day]:
            _feed(state, day, feeds, record)
        if day == 0:
            settle(state, pace.on(0), bench.traits)
        _react_for_a_day(bench, turns, pace.on(day))
        record.close(day, state)
    if order is not None:
        record.restore(order)


class Bench:
    """The state and the traits of all farms as they stand, and views of the first of them."""

    def __init__(self, state: State, traits: Traits) -> None:
        self.state, self.traits = state, traits
        self._first: dict[int, tuple[State, Traits]] = {state.ions.shape[1]: (state, traits)}

    def reorder(self, moved: Steps) -> None:
        """Let the farms stand in another order: places in the one before."""
        self.state.reorder(moved)
        self.traits = self.traits.at(moved)
        self._first = {len(moved): (self.state, self.traits)}

    def first(self, farms: int) -> tuple[State, Traits]:
        """State and traits of the first farms; what is written into them is written into all."""
        found = self._first.get(farms)
        if found is None:
            found = self._first[farms] = self.state.first(farms), self.traits.first(farms)
        return found


class Feeds(NamedTuple):
    """What comes by days, and what it does in the tanks: see :class:`Course` and :class:`kilisho.process.flow.Flow`."""

    brought: Array
    moved: Array
    spread: Array


def _feed(state: State, day: int, feeds: Feeds, record: Record) -> None:
    brought = feeds.brought[day]
    after = pour(state.pools, brought, feeds.moved[day], feeds.spread[day])
    record.feed(day, state.pools, brought, after)
    state.pools[:] = after


def _react_for_a_day(bench: Bench, turns: list[tuple[int, int]], pace: Pace) -> None:
    """The steps of a day, in turns of so many steps of the first so many farms."""
    state = bench.state
    state.methane[:] = state.carbon_dioxide[:] = 0.0
    for times, farms in turns:
        part, traits = bench.first(farms)
        part.sour = state.sour
        _react(part, times, pace if part is state else pace.first(farms), traits)
        state.sour = part.sour or (state.sour and part is not state)


def _react(state: State, times: int, pace: Pace, traits: Traits) -> None:
    for _ in range(times):
        react(state, pace, traits)
