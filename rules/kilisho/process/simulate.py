"""The day-stepping run of the process model."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.process.flow import pour
from kilisho.process.history import Conditions, History
from kilisho.process.parameters import Parameters
from kilisho.process.reactions import Day, day_of, react
from kilisho.process.record import Record
from kilisho.process.run import Run
from kilisho.process.shapes import checked
from kilisho.process.state import Contents, State, brought_by, contents, first_state, settle

Array = npt.NDArray[np.float64]

SUBSTEPS = 8


class _Model(NamedTuple):
    history: History
    parameters: Parameters
    figures: Contents
    working_volume: Array
    farms: int


def simulate(history: History, conditions: Conditions, parameters: Parameters, substeps: int = SUBSTEPS) -> Run:
    """Gas, acids and ammonia of a digester day by day, for one farm or many at once.

    Parameters
    ----------
    history : feeds by day and what is there at first; see :class:`History`.
    conditions : volume, temperature, mixing; see :class:`Conditions`.
    parameters : see :class:`Parameters`.
    substeps : steps a day, 1 to 96.

    Returns
    -------
    :class:`Run`, all of shape (days, farms).

    Raises
    ------
    ValueError
        For shapes that do not fit and values outside the ranges documented on the parts.

    Notes
    -----
    Two steps after Hill 1983 and Bernard et al. 2001: first-order hydrolysis to acids, Monod growth of methanogens on them, with pH and
    free ammonia in the manner of ADM1 (Batstone et al. 2002). Fed steadily and in health, it comes to
    ``kilisho.formulas.kinetics.mixed_share`` of the potential. Left out: scum, sludge that stays behind, sulphide, hydrogen, long fatty
    acids, cold shock, and the carbon dioxide that the slurry takes up as bicarbonate.
    """
    temperature, farms = checked(history, conditions, parameters, substeps)
    volume = np.broadcast_to(np.asarray(conditions.working_volume, dtype=np.float64), (farms,))
    model = _Model(history, parameters, contents(history.feedstock, parameters), volume, farms)
    state = first_state(history.start, farms, conditions.tanks_in_series, history.feedstock)
    record = Record(temperature, farms, model.figures, parameters, state)
    for day, warmth in enumerate(temperature):
        _one_day(state, day, day_of(warmth, model.figures, parameters, 1.0 / substeps), model, record, substeps)
    return record.told()


def _one_day(state: State, index: int, day: Day, model: _Model, record: Record, substeps: int) -> None:  # noqa: PLR0913, PLR0917
    slurry = model.history.slurry[index]
    methane, carbon_dioxide = np.zeros(model.farms), np.zeros(model.farms)
    if slurry.any():
        carbon_dioxide += _feed(state, index, model, record)
    if index == 0:
        settle(state, day.constants, model.parameters)
    for _ in range(substeps):
        made, freed = react(state, day, model.figures, model.parameters)
        methane += made.sum(axis=0)
        carbon_dioxide += freed.sum(axis=0)
    record.close(index, state, day.constants, methane, carbon_dioxide)


def _feed(state: State, index: int, model: _Model, record: Record) -> Array:
    history, farms = model.history, model.farms
    rows, gas = brought_by(history.volatile_solids[index], history.feedstock, model.figures, model.parameters, farms)
    slurry = np.broadcast_to(history.slurry[index], (farms,))
    state.pools, state.volume, left = pour(state.pools, state.volume, rows, slurry, model.working_volume)
    record.feed(index, rows, left, slurry)
    return gas
