"""How long a first charge takes to give gas that burns: full runs on a grid, and what lies between."""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, fields, replace
from typing import TypeVar

import numpy as np
import numpy.typing as npt

from kilisho.process.feedstocks import Feedstock
from kilisho.process.headspace import RELIABLE, first_burnable_day
from kilisho.process.history import Conditions, History, working_slurry
from kilisho.process.parameters import Parameters
from kilisho.process.simulate import simulate

Array = npt.NDArray[np.float64]
Columns = npt.NDArray[np.intp]
Told = TypeVar("Told", Feedstock, Parameters)

TEMPERATURES = tuple(float(warm) for warm in np.arange(10.0, 35.1, 2.5))
STARTER_SHARES = (0.0, 0.02, 0.04, 0.06, 0.08, 0.10, 0.125, 0.15, 0.20, 0.25, 0.30, 0.40, 0.50)
# The charge of the table: dung at 60 kg/m3 of volatile solids (7.5 % total solids), gas space a third of the slurry as in a dome whose
# inlet stands open; judgement. Longer than the horizon is no start; most have started by half time, and only the others run on.
SOLIDS_OF_CHARGE, GAS_SPACE_SHARE, HORIZON, HALF_TIME = 60.0, 1.0 / 3.0, 200, 40
LOWEST, HIGHEST = 0.05, 0.95
_SUBSTEPS, _COLUMNS_AT_ONCE = 4, 512


@dataclass(frozen=True, slots=True)
class StartUpTable:
    """Days to burnable gas on the grid of ``TEMPERATURES`` and ``STARTER_SHARES``.

    ``days`` holds for a charge that brings the microbes of a rumen (True) or not (False), by temperature and starter share: low, typical,
    high, infinity where there is no start within 200 d; ``started`` the part of the samples that start at all [1].
    """

    days: Mapping[bool, Sequence[Sequence[Sequence[float]]]]
    started: Mapping[bool, Sequence[Sequence[float]]]


def first_charge_days(temperature: Array, starter_share: Array, dung: Feedstock, parameters: Parameters) -> Array:
    """Days to burnable gas by full runs, all of one shape (farms,); temperature [Cel], starter share of the slurry [1].

    ``dung`` and ``parameters`` have one value a farm or one for all.
    """
    days = np.full(temperature.shape, np.inf)
    for first in range(0, days.size, _COLUMNS_AT_ONCE):
        some: Columns = np.arange(first, min(first + _COLUMNS_AT_ONCE, days.size))
        for horizon in (HALF_TIME, HORIZON):
            some = some[np.isinf(days[some])]
            if some.size:
                farms = temperature[some], starter_share[some], _columns(dung, some), _columns(parameters, some)
                days[some] = _run(*farms, horizon)
    return days


def _columns(told: Told, farms: Columns) -> Told:
    values = {field.name: np.asarray(getattr(told, field.name)) for field in fields(told)}
    return replace(told, **{name: value[..., farms] for name, value in values.items() if value.ndim and value.shape[-1] > 1})


def _run(temperature: Array, starter_share: Array, dung: Feedstock, parameters: Parameters, horizon: int) -> Array:
    solids, slurry = np.zeros((horizon, 1, temperature.size)), np.zeros((horizon, temperature.size))
    slurry[0] = 1.0 - starter_share
    solids[0, 0] = SOLIDS_OF_CHARGE * slurry[0]
    history = History(dung, solids, slurry, working_slurry(starter_share, parameters))
    conditions = Conditions(1.0, np.broadcast_to(temperature, (horizon, temperature.size)))
    return first_burnable_day(simulate(history, conditions, parameters, _SUBSTEPS), GAS_SPACE_SHARE, RELIABLE)


def start_up_table(dung: Mapping[bool, Feedstock], parameters: Parameters) -> StartUpTable:
    """The table by full runs of samples: columns of ``dung`` and ``parameters``, of which the first is the typical one."""
    samples = dung[True].rate.shape[1]
    grid = np.array([(warm, share) for warm in TEMPERATURES for share in STARTER_SHARES])
    point, sample = (index.ravel() for index in np.indices((len(grid), samples)))
    found = {}
    for unaided, feed in dung.items():
        days = first_charge_days(grid[point, 0], grid[point, 1], _columns(feed, sample), _columns(parameters, sample))
        found[unaided] = days.reshape(len(TEMPERATURES), len(STARTER_SHARES), samples)
    return StartUpTable(
        {unaided: _ends(days).tolist() for unaided, days in found.items()},
        {unaided: np.isfinite(days[..., 1:]).mean(axis=-1).tolist() for unaided, days in found.items()},
    )


def _ends(days: Array) -> Array:
    """Low, typical and high of samples along the last axis; ends are samples themselves, since infinity has no middle."""
    typical, drawn = days[..., 0], np.sort(days[..., 1:], axis=-1)
    low, high = (drawn[..., round(part * (drawn.shape[-1] - 1))] for part in (LOWEST, HIGHEST))
    return np.stack([np.minimum(low, typical), typical, np.maximum(high, typical)], axis=-1)


def start_up_days(table: StartUpTable, temperature: float, starter_share: float, starts_unaided: bool) -> tuple[float, float, float]:
    """Low, typical and high days until a first charge of dung gives gas that burns reliably.

    Parameters
    ----------
    temperature : of the slurry [Cel]; below 10 and above 35 the ends of the table are told.
    starter_share : slurry of a working digester in the charge [1]; held to 0 to 0.5.
    starts_unaided : the dung brings the methanogens of a rumen (fresh cattle and buffalo dung).

    Returns
    -------
    Days, linear in the logarithm between the points of the grid; infinity where a corner of the field sours or needs more than 200 days,
    which reads as "do not count on it".
    """
    grid = table.days[starts_unaided]
    row, up = _place(temperature, TEMPERATURES)
    column, right = _place(starter_share, STARTER_SHARES)
    corners = (
        (grid[row][column], (1.0 - up) * (1.0 - right)),
        (grid[row][column + 1], (1.0 - up) * right),
        (grid[row + 1][column], up * (1.0 - right)),
        (grid[row + 1][column + 1], up * right),
    )
    low, typical, high = (math.exp(sum(part * math.log(days[end]) for days, part in corners if part)) for end in range(3))
    return low, typical, high


def _place(value: float, axis: Sequence[float]) -> tuple[int, float]:
    held = min(max(value, axis[0]), axis[-1])
    place = min(bisect_right(axis, held) - 1, len(axis) - 2)
    return place, (held - axis[place]) / (axis[place + 1] - axis[place])


def start_up_days_of(table: StartUpTable, temperature: Array, starter_share: float, starts_unaided: bool) -> Array:
    """:func:`start_up_days` for many temperatures, (farms,) -> (3, farms)."""
    column, right = _place(starter_share, STARTER_SHARES)
    parts = [(column, 1.0 - right), (column + 1, right)]
    by_warmth = np.array([sum(part * np.log(row[place]) for place, part in parts if part) for row in table.days[starts_unaided]])
    held = np.clip(temperature, TEMPERATURES[0], TEMPERATURES[-1])
    place = np.minimum(np.searchsorted(TEMPERATURES, held, side="right") - 1, len(TEMPERATURES) - 2)
    up = (held - np.take(TEMPERATURES, place)) / (TEMPERATURES[1] - TEMPERATURES[0])
    below, above = by_warmth[place].T, by_warmth[place + 1].T
    with np.errstate(invalid="ignore"):
        days: Array = np.exp(np.where(up > 0.0, (1.0 - up) * below + up * above, below))
    return np.where(np.isnan(days), np.where(up < 1.0, np.inf, np.exp(above)), days)
