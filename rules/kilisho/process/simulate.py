"""The day-stepping run of the process model."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from kilisho.deadline import keep_to_time
from kilisho.process.flow import flow_of, pour
from kilisho.process.history import Conditions, History
from kilisho.process.pace import Pace, Paces
from kilisho.process.parameters import Parameters
from kilisho.process.reactions import react, settle
from kilisho.process.record import Course, Record, told
from kilisho.process.run import Run
from kilisho.process.schedule import Share, shares_of, steps_of
from kilisho.process.shapes import checked
from kilisho.process.state import State, brought_by, first_state
from kilisho.process.traits import Traits, traits_of

Array = npt.NDArray[np.float64]

SUBSTEPS = 8


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
    course, paces = _prepared(history, conditions, parameters, temperature, farms)
    state = first_state(history.start, farms, conditions.tanks_in_series, history.feedstock.rate.shape[0])
    record, fed = Record(temperature.shape[0], state), np.asarray(course.slurry.any(axis=1))
    steps = steps_of(history, course.flow.volume, temperature, parameters, conditions.tanks_in_series)
    for day, shares in enumerate(shares_of(steps, substeps)):
        keep_to_time()
        if fed[day]:
            _feed(state, day, course, record)
        if day == 0:
            settle(state, paces.of(substeps).on(0), course.traits)
        _react_for_a_day(state, day, shares, paces, course.traits)
        record.close(day, state)
    return told(record, course)


def _prepared(history: History, conditions: Conditions, parameters: Parameters, temperature: Array, farms: int) -> tuple[Course, Paces]:
    """What is known before the first day."""
    traits, tanks = traits_of(history.feedstock, parameters), conditions.tanks_in_series
    slurry = np.broadcast_to(history.slurry, (temperature.shape[0], farms))
    start, volume = (np.broadcast_to(np.asarray(x, dtype=np.float64), (farms,)) for x in (history.start.volume, conditions.working_volume))
    flow = flow_of(slurry, start, volume, tanks)
    brought, quick_gas = brought_by(history.volatile_solids, history.feedstock, traits.release, farms)
    paces = Paces(temperature, flow.volume, tanks, history.feedstock.rate, parameters)
    return Course(temperature, slurry, flow, brought, quick_gas, paces.constants, traits), paces


def _feed(state: State, day: int, course: Course, record: Record) -> None:
    before, brought = state.pools, course.brought[day]
    state.pools = pour(before, brought, course.flow.moved[day], course.flow.spread[day])
    record.feed(day, before, brought, state.pools)


def _react_for_a_day(state: State, day: int, shares: list[Share], paces: Paces, traits: Traits) -> None:
    state.methane[:] = state.carbon_dioxide[:] = 0.0
    for steps, farms in shares:
        pace = paces.of(steps).on(day)
        if farms is None:
            _react(state, steps, pace, traits)
        else:
            part = state.at(farms)
            _react(part, steps, pace.at(farms), traits.at(farms))
            state.put(farms, part)


def _react(state: State, steps: int, pace: Pace, traits: Traits) -> None:
    for _ in range(steps):
        react(state, pace, traits)
