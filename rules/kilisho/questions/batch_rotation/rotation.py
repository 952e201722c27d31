"""How many digesters, recharged in turn after how long, keep the demand met; and what more or fewer of them do.

Retention. With a short one a digester gives most gas per day; with a long one the feed gives most gas. So the rotation takes as few
digesters as keep the demand met at any retention, and then the longest retention that is nearly as sure as the surest: fewer charges,
less dung, less work, the same meals. At the longest at which the typical farm just keeps up, most of its samples do not, so that limit
is told and not taken. Without a demand, or where none is met, it is the retention of most gas per day.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
import numpy.typing as npt

from kilisho.deadline import keep_to_time
from kilisho.formulas.gas_storage import run_store, storage_over_days
from kilisho.formulas.rotation import YEAR, Timetable, even_supply, gas_per_cycle_day, keeps_up, spare_storage, supply_of
from kilisho.questions.batch_rotation.curves import Curves
from kilisho.questions.batch_rotation.limits import LONGEST_RETENTION, MOST_DIGESTERS, SHORTEST_RETENTION
from kilisho.questions.digestion import ends_of, samples_of
from kilisho.ranges import Array

STATED, GAS_PER_DAY, GAS_PER_FEED = "stated", "gas_per_day", "gas_per_feed"
# The second and third year are looked at: by then every digester is in its turn (the longest cycle is shorter than the first year), and a
# want that begins in one year ends in the next. Where the cycle does not divide the year, later years meet the seasons a little
# differently.
FIRST_DAY, DAYS = YEAR, 2 * YEAR
# A rotation whose mean year falls this far short of the demand is not tried: charges meet the seasons a little differently.
WORTH_TRYING = 0.9
# Samples, as a share of all, that a longer retention may cost.
LESS_SURE = 0.05
RUNGS = 6
NOTICED = 1e-9


@dataclass(frozen=True)
class Yard:
    """Digesters that are all alike: curves of their charges, days to recharge one, the demand [m3/d] if any, the gas storage of one
    digester [m3] and the part of a day's gas that the hours of a day keep in store [1], (columns,).
    """

    curves: Curves
    turn_round: int
    demand: float | None
    storage: Array
    within_day: Array
    stated_retention: int | None = None

    @cached_property
    def usable(self) -> Array:
        """Gas that counts as supply [m3/d], (starts, days, columns)."""
        return self.curves.usable

    @cached_property
    def cycle_gas(self) -> Array:
        """Gas of one digester per day of the whole cycle by retention, as the mean of the year [m3/d], (retentions from 1, columns)."""
        return gas_per_cycle_day(self.usable.mean(axis=0), self.turn_round)

    @cached_property
    def most_gas(self) -> npt.NDArray[np.intp]:
        """Retention of most gas per day [d], (columns,); the typical one for samples that give no gas."""
        found = self.cycle_gas[SHORTEST_RETENTION - 1 :].argmax(axis=0) + SHORTEST_RETENTION
        kept: npt.NDArray[np.intp] = np.where(self.cycle_gas[-1] > 0.0, found, found[0])
        return kept

    @property
    def gives_gas(self) -> bool:
        """Whether a typical charge gives any gas that burns."""
        return bool(self.usable[..., 0].any())

    def supply(self, count: int, retention: int, columns: Any = slice(None)) -> Array:
        """Gas of so many digesters on each day of the second and third year [m3/d], (days, columns)."""
        keep_to_time()
        timetable, days = Timetable(count, retention, self.turn_round), np.arange(FIRST_DAY, FIRST_DAY + DAYS)
        return supply_of(self.usable[..., columns], timetable, days, self.curves.day_of_year)

    def keeps_up(self, count: int, retention: int, columns: Any = slice(0, 1)) -> npt.NDArray[np.bool_]:
        """Whether the demand is met on every day of the year, (columns,)."""
        assert self.demand is not None, "nothing to keep up with"
        spare = spare_storage(count * self.storage[columns], self.within_day[columns], self.demand)
        return keeps_up(self.supply(count, retention, columns), self.demand, spare)

    def longest(self, count: int) -> int | None:
        """The longest retention at which so many digesters keep the demand met, or the stated one if they do; None where none does."""
        worth = count * self.cycle_gas[:, 0] >= WORTH_TRYING * (self.demand or 0.0)
        own = range(LONGEST_RETENTION, SHORTEST_RETENTION - 1, -1)
        tried = own if self.stated_retention is None else (self.stated_retention,)
        return next((days for days in tried if worth[days - 1] and self.keeps_up(count, days)[0]), None)

    def plan(self, count: int) -> Plan:
        """The rotation of so many digesters."""
        longest = None if self.demand is None else self.longest(count)
        if self.stated_retention is not None:
            return Plan(count, self.stated_retention, STATED, longest)
        if longest is not None:
            return Plan(count, self._sure(count, longest), GAS_PER_FEED, longest)
        return Plan(count, int(self.most_gas[0]), GAS_PER_DAY, None)

    def _sure(self, count: int, longest: int) -> int:
        """The longest retention that nearly as many samples keep up with as with the surest; between rungs of a ladder by halving."""
        ends = sorted({int(self.most_gas[0]), longest})
        ladder = sorted({round(float(days)) for days in np.geomspace(ends[0], ends[-1], RUNGS)})
        sure = {days: self._sureness(count, days) for days in ladder}
        enough = max(sure.values()) - LESS_SURE
        low = max(days for days in ladder if sure[days] >= enough)
        high = min((days for days in ladder if days > low), default=low + 1)
        while high - low > 1:
            middle = (low + high) // 2
            low, high = (middle, high) if self._sureness(count, middle) >= enough else (low, middle)
        return low

    def _sureness(self, count: int, retention: int) -> float:
        """Share of the samples whose demand is met on every day [1]; below 0 where the typical farm's is not."""
        met = self.keeps_up(count, retention, slice(None))
        return float(samples_of(met.astype(float)).mean()) if met[0] else -1.0

    def fewest(self) -> Plan | None:
        """The rotation with the fewest digesters that keep the demand met; None without a demand, or where the most allowed do not."""
        if self.demand is None or not self.gives_gas:
            return None
        least = math.ceil(WORTH_TRYING * self.demand / self.cycle_gas[:, 0].max())
        plans = (self.plan(count) for count in range(max(1, least), MOST_DIGESTERS + 1))
        return next((plan for plan in plans if plan.met), None)

    def needed_by_column(self, retentions: Sequence[int]) -> Array:
        """Digesters needed at any of ``retentions``, (columns,); infinity where the most allowed do not do."""
        needed = np.full(self.storage.size, np.inf)
        most = MOST_DIGESTERS * self.cycle_gas[[days - 1 for days in retentions]].max(axis=0)
        possible = most >= WORTH_TRYING * (self.demand or 0.0)
        for count in range(1, MOST_DIGESTERS + 1):
            for days in retentions:
                waiting = np.flatnonzero(np.isinf(needed) & possible)
                waiting = waiting[count * self.cycle_gas[days - 1, waiting] >= WORTH_TRYING * (self.demand or 0.0)]
                if waiting.size:
                    needed[waiting[self.keeps_up(count, days, waiting)]] = count
        return needed


@dataclass(frozen=True, slots=True)
class Plan:
    """A rotation: digesters, days that a charge stays, why so long, and the longest with which they keep the demand met, if they do."""

    digesters: int
    retention: int
    chosen_for: str
    longest: int | None

    @property
    def met(self) -> bool:
        """Whether the typical farm has its demand met on every day."""
        return self.longest is not None


@dataclass(frozen=True, slots=True)
class Outcome:
    """What a rotation gives in the second and third year, each (columns,).

    Gas a day, its least and its greatest day [m3/d]; the storage that carries gas from day to day [m3], NaN where no storage is enough; the
    greatest even supply [m3/d]; whether the demand is met on every day; days a year on which it is not; gas that is left over [m3/d].
    Where no demand is stated it is the mean of the gas.
    """

    plan: Plan
    gas: Array
    least: Array
    greatest: Array
    storage: Array
    even: Array
    met: npt.NDArray[np.bool_]
    short_days: Array
    left_over: Array


def outcome_of(yard: Yard, plan: Plan) -> Outcome:
    """What a rotation gives, with the storage that its digesters have."""
    supply, store = yard.supply(plan.digesters, plan.retention), plan.digesters * yard.storage
    gas = supply.mean(axis=0)
    even = even_supply(supply, store, yard.within_day)
    asked = gas if yard.demand is None else yard.demand
    enough = gas >= np.multiply(asked, 1.0 - NOTICED)
    between = np.where(enough, storage_over_days(supply, np.broadcast_to(asked, supply.shape)), np.nan)
    spare = spare_storage(store, yard.within_day, asked)
    run = run_store(supply, np.broadcast_to(asked, supply.shape), spare, np.where(enough, spare, 0.0))
    short = (run.unmet > NOTICED * np.asarray(asked)).sum(axis=0) * YEAR / DAYS
    met = keeps_up(supply, asked, spare)
    return Outcome(plan, gas, supply.min(axis=0), supply.max(axis=0), between, even, met, short, run.vented.mean(axis=0))


def open_ends(columns: Array, most: float) -> tuple[float, float | None, float | None]:
    """Value, low and high end of numbers in all columns; no high end where it lies beyond ``most``, and no ends where all agree."""
    value, *ends = ends_of(np.minimum(columns, most + 1.0))
    low, high = ends or (None, None)
    return value, low, None if high is None or high > most else high
