"""Refuses what the process model cannot take, in words that name the fault."""

from __future__ import annotations

from dataclasses import fields

import numpy as np
import numpy.typing as npt

from kilisho.formulas.arrays import Numeric
from kilisho.process.feedstocks import Feedstock
from kilisho.process.history import Conditions, History, Start
from kilisho.process.parameters import Parameters

Array = npt.NDArray[np.float64]

LOWEST_TEMPERATURE, HIGHEST_TEMPERATURE = 0.0, 45.0
MOST_TANKS, MOST_SUBSTEPS, MOST_DAYS = 10, 96, 366 * 50


def checked(history: History, conditions: Conditions, parameters: Parameters, substeps: int) -> tuple[Array, int]:
    """Temperature as (days, farms) or (days, 1), and the number of farms.

    Raises ValueError with the fault for shapes and values outside the documented ranges.
    """
    days, farms = _size(history, conditions, parameters)
    temperature = np.asarray(conditions.temperature, dtype=np.float64)
    temperature = np.broadcast_to(
        temperature[:, None] if temperature.ndim == 1 else temperature, (days, farms if temperature.ndim == 2 else 1)
    )
    _refuse(
        not (temperature.min() >= LOWEST_TEMPERATURE and temperature.max() <= HIGHEST_TEMPERATURE), "temperature must lie in 0 to 45 Cel"
    )
    solids, slurry = history.volatile_solids, history.slurry
    _refuse(not (np.isfinite(solids).all() and np.isfinite(slurry).all()), "feeds must be finite numbers")
    _refuse(bool((solids < 0).any() or (slurry < 0).any()), "feeds must be at least 0")
    _refuse(bool(((solids.sum(axis=1) > 0) & (slurry <= 0)).any()), "a feed with solids needs a volume above 0")
    volume = np.asarray(conditions.working_volume)
    _refuse(not bool((volume > 0).all() and np.isfinite(volume).all()), "working volume must be above 0")
    _refuse(bool((np.asarray(history.start.volume) > volume).any()), "the start holds more than the working volume")
    _refuse(not 1 <= conditions.tanks_in_series <= MOST_TANKS, f"tanks in series must be 1 to {MOST_TANKS}")
    _refuse(not 1 <= substeps <= MOST_SUBSTEPS or days > MOST_DAYS, f"substeps must be 1 to {MOST_SUBSTEPS}, days at most {MOST_DAYS}")
    return temperature, farms


def _size(history: History, conditions: Conditions, parameters: Parameters) -> tuple[int, int]:
    solids, slurry = history.volatile_solids, history.slurry
    _refuse(solids.ndim != 3 or solids.shape[0] < 1, "volatile solids must have the shape (days, substrates, farms)")
    _refuse(solids.shape[1] != history.feedstock.rate.shape[0], "volatile solids and feedstock differ in the number of substrates")
    _refuse(slurry.ndim != 2 or slurry.shape[0] != solids.shape[0], "slurry must have the shape (days, farms)")
    told = [_values(history.feedstock), _values(history.start), _values(parameters), [conditions.working_volume, solids, slurry]]
    widths = {np.shape(value)[-1] for values in told for value in values if np.ndim(value)}
    temperature = np.asarray(conditions.temperature)
    _refuse(temperature.ndim > 0 and temperature.shape[0] != solids.shape[0], "temperature must have one value a day")
    farms = (widths | {temperature.shape[1]} if temperature.ndim == 2 else widths) - {1}
    _refuse(len(farms) > 1, f"the parts differ in the number of farms: {sorted(farms)}")
    return solids.shape[0], farms.pop() if farms else 1


def _values(told: Feedstock | Start | Parameters) -> list[Numeric]:
    return [getattr(told, field.name) for field in fields(told)]


def _refuse(wrong: bool, fault: str) -> None:
    if wrong:
        raise ValueError(fault)
