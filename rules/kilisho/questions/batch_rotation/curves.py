"""The gas of single charges by the process model: of charges that start through the year, and of a digester's first one.

Every charge is a run of its own in columns of its own: the typical farm and its samples, once for each start. Gas counts as supply from
the day on which the gas space holds gas that burns; what came before is air and poor gas that is vented. Ranges come from the samples of
the handbooks' yields and the model's parameters; they do not reach towards the growth kinetics, which were measured on fed digesters.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Sequence
from dataclasses import dataclass, fields
from typing import Any, TypeVar

import numpy as np

from kilisho.farm import Ledger
from kilisho.formulas.digester import REFERENCE_TEMPERATURE
from kilisho.formulas.gas import normal_factor
from kilisho.formulas.rotation import YEAR
from kilisho.messages import say
from kilisho.process import Conditions, Feedstock, History, Parameters, simulate, working_slurry
from kilisho.process.headspace import RELIABLE, first_burnable_day
from kilisho.process.parameters import METHANE_PER_COD
from kilisho.questions.batch_rotation.charge import Charge
from kilisho.questions.batch_rotation.limits import LONGEST_RETENTION
from kilisho.questions.climate import Warmth
from kilisho.questions.digestion import Columns, feedstock_of, parameters_of, volatile_solids_of
from kilisho.ranges import Array, Uncertain

# Starts through the year where its seasons are known; between them gas is taken along straight lines, which misses a day by up to about
# two hundredths of the greatest gas (the tests hold it).
STARTS = 12
# Starts that share a run: all at once would be quicker by a third, and take nearly 200 MB more.
SIDE_BY_SIDE = 2
# Where the process model ends; slurry that freezes gives next to nothing there, and gas of hotter slurry is not counted on.
COLDEST, WARMEST = 0.0, 45.0
# Of the slurry: the least gas space, where a digester is filled to the brim.
LEAST_GAS_SPACE = 0.05

Part = TypeVar("Part", Feedstock, Parameters)


@dataclass(frozen=True, slots=True)
class Start:
    """A charge to be followed: the day of the year on which it begins [d], its fresh slurry and its starter [m3]."""

    day_of_year: float
    fresh: Uncertain
    starter: Uncertain


@dataclass(frozen=True, slots=True)
class Course:
    """Of one start: gas as used [m3/d] and slurry temperature [Cel], (days, columns), and the day from which it burns [d], (columns,)."""

    gas: Array
    temperature: Array
    burnable: Array

    @property
    def usable(self) -> Array:
        """Gas from the first burnable day on [m3/d], (days, columns)."""
        counted: Array = self.gas * np.clip(np.arange(1.0, self.gas.shape[0] + 1.0)[:, None] - self.burnable, 0.0, 1.0)
        return counted


@dataclass(frozen=True, slots=True)
class Curves:
    """Courses of charges that start through the year, of the one told in full, and of the first charge.

    ``potential`` is the gas of a charge that degrades wholly, as used [m3], (columns,). ``day_of_year`` is that of the first charge.
    """

    columns: Columns
    through_year: list[Course]
    told: Course
    first: Course
    potential: Array
    day_of_year: float

    @property
    def usable(self) -> Array:
        """Gas that counts as supply [m3/d], (starts, days, columns)."""
        return np.stack([course.usable for course in self.through_year])


def curves_of(charge: Charge, warmth: Warmth, first_day: dt.date | None, ledger: Ledger) -> Curves:
    """Run the process model on all starts at once."""
    columns = Columns()
    day_of_year = _first_day_of_year(warmth, first_day, ledger)
    regular, later = (charge.fresh, charge.starter), (charge.first_fresh, charge.first_starter)
    seasons = warmth.ground is not None and warmth.ground.coldest_day is not None
    starts = [Start(YEAR * i / STARTS, *regular) for i in range(STARTS)] if seasons else [Start(0.0, *regular)]
    more = [Start(day_of_year, *regular)] if seasons else []
    first = [Start(day_of_year, *later)] if charge.first_starter is not charge.starter else []
    bench = _bench(charge, ledger, columns)
    every = [*starts, *more, *first]
    temperature = _temperatures(every, warmth, ledger, columns)
    courses = bench.courses(every, temperature)
    told = courses[len(starts)] if more else courses[0]
    return Curves(columns, courses[: len(starts)], told, courses[-1] if first else told, bench.potential, day_of_year)


def _first_day_of_year(warmth: Warmth, first_day: dt.date | None, ledger: Ledger) -> float:
    """Days from New Year to the first charge; New Year where nobody said and it matters, listed as an assumption."""
    if first_day is not None:
        return min(first_day.timetuple().tm_yday - 1.0, YEAR - 1.0)
    if warmth.ground is not None and warmth.ground.coldest_day is not None:
        ledger.choose("first_charge_on", "new_year", say("rotation-first-day-unknown"))
    return 0.0


def _temperatures(starts: Sequence[Start], warmth: Warmth, ledger: Ledger, columns: Columns) -> Array:
    """Slurry temperature [Cel], (days, starts times columns): through the seasons where they are known, the year's mean where not."""
    days, ground = np.arange(float(LONGEST_RETENTION))[:, None], warmth.ground
    if ground is None or ground.coldest_day is None:
        return np.broadcast_to(np.tile(columns.laid(warmth.uncertain), len(starts)), (LONGEST_RETENTION, len(starts) * columns.count))
    parts = [columns.laid(ledger.uncertain(name)) for name in ("soil_offset", "soil_depth", "soil_diffusivity")]
    return np.concatenate([np.asarray(ground.at((one.day_of_year + days) % YEAR + 1.0, *parts)) for one in starts], axis=1)


@dataclass(frozen=True, slots=True)
class _Bench:
    """What all runs of one request share: volatile solids of a regular charge [kg], (substrates, columns), its fresh slurry and the
    total volume [m3], (columns,), and normal volume of gas as used [1].
    """

    solids: Array
    fresh: Array
    total_volume: Array
    feedstock: Feedstock
    parameters: Parameters
    normal: float
    columns: Columns

    @property
    def potential(self) -> Array:
        """Gas as used of a charge whose degradable part all becomes gas [m3], (columns,)."""
        gas = self.feedstock.degradable * METHANE_PER_COD * (1.0 - self.parameters.cell_yield) / self.feedstock.methane_share
        total: Array = (self.solids * gas).sum(axis=0) / self.normal
        return total

    def courses(self, starts: Sequence[Start], temperature: Array) -> list[Course]:
        """The courses of every start, a few starts to a run."""
        wide, width = [], SIDE_BY_SIDE * self.columns.count
        for place in range(0, len(starts), SIDE_BY_SIDE):
            first = place * self.columns.count
            wide += self._run(starts[place : place + SIDE_BY_SIDE], temperature[:, first : first + width])
        return wide

    def _run(self, starts: Sequence[Start], temperature: Array) -> list[Course]:
        """One run with the columns of some starts side by side."""
        fresh, starter = (np.concatenate([self.columns.laid(getattr(one, side)) for one in starts]) for side in ("fresh", "starter"))
        times, whole = len(starts), fresh + starter
        slurry, fed = np.zeros((LONGEST_RETENTION, fresh.size)), np.zeros((LONGEST_RETENTION, self.solids.shape[0], fresh.size))
        slurry[0], fed[0] = fresh, np.tile(self.solids, times) * (fresh / np.tile(self.fresh, times))
        feedstock, parameters = _tiled(self.feedstock, times, self.columns), _tiled(self.parameters, times, self.columns)
        history = History(feedstock, fed, slurry, working_slurry(starter, parameters))
        run = simulate(history, Conditions(whole, np.clip(temperature, COLDEST, WARMEST)), parameters)
        space = np.maximum(np.tile(self.total_volume, times) - whole, LEAST_GAS_SPACE * whole)
        known = (temperature <= WARMEST).all(axis=0)
        burnable = np.where(known, first_burnable_day(run, space, RELIABLE), np.inf)
        return [Course(run.biogas_normal[:, p] / self.normal, run.temperature[:, p], burnable[p]) for p in self._places(times)]

    def _places(self, times: int) -> list[slice]:
        return [slice(i * self.columns.count, (i + 1) * self.columns.count) for i in range(times)]


def _bench(charge: Charge, ledger: Ledger, columns: Columns) -> _Bench:
    parameters = parameters_of(ledger, columns)
    solids = np.stack([volatile_solids_of(one, columns) for one in charge.fed])
    total = columns.laid(ledger.uncertain("total_volume"))
    normal = float(normal_factor(REFERENCE_TEMPERATURE, ledger.values["gas_pressure"]))
    return _Bench(solids, columns.laid(charge.fresh), total, feedstock_of(charge.fed, parameters, columns), parameters, normal, columns)


def _tiled(part: Part, times: int, columns: Columns) -> Part:
    """The columns of a part of a run, once for each start."""
    values: dict[str, Any] = {field.name: getattr(part, field.name) for field in fields(part)}
    wide = {n: np.tile(v, times) if np.ndim(v) and np.shape(v)[-1] == columns.count else v for n, v in values.items()}
    return type(part)(**wide)
