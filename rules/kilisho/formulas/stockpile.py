"""A heap of dung day by day: what is brought, what it loses, what is left. Everything brought is accounted for."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import numpy as np
import numpy.typing as npt

from kilisho.formulas.arrays import Numeric, most

LONGEST_ACCOUNT = 400
# Below it the series is taken at it: 400 days' nitrogen is then told to a millionth.
_LEAST_LOSS = 1e-9
Days = npt.NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Material:
    """What is put on the heap: shares of fresh mass."""

    water: Any
    volatile_solids: Any
    ash: Any
    nitrogen: Any


@dataclass(frozen=True, slots=True)
class Losses:
    """First-order losses per day (0 to below 1) of the heap's volatile solids, nitrogen and water."""

    volatile_solids: Any
    nitrogen: Any
    moisture: Any


@dataclass(frozen=True, slots=True)
class Heap:
    """The heap after each day's delivery: masses in kg, one column a day, day 0 first.

    ``rows`` holds, from the top: brought, on_heap, volatile_solids_lost, water_lost, nitrogen_lost. On every day
    ``brought == on_heap + volatile_solids_lost + water_lost`` (the nitrogen leaves with water and solids and is counted apart).
    """

    rows: Days

    @property
    def brought(self) -> Days:
        """Fresh dung brought so far."""
        row: Days = self.rows[0]
        return row

    @property
    def on_heap(self) -> Days:
        """What is left of it."""
        row: Days = self.rows[1]
        return row

    @property
    def volatile_solids_lost(self) -> Days:
        """Organic matter that has decayed."""
        row: Days = self.rows[2]
        return row

    @property
    def water_lost(self) -> Days:
        """Water that has evaporated or drained."""
        row: Days = self.rows[3]
        return row

    @property
    def nitrogen_lost(self) -> Days:
        """Nitrogen that has left."""
        row: Days = self.rows[4]
        return row

    def table(self, days: int) -> list[list[float]]:
        """The first ``days`` entries of brought, on_heap, volatile_solids_lost and water_lost, to the gram."""
        rows: list[list[float]] = self.rows[:4, :days].round(3).tolist()
        return rows

    def days_until(self, mass: float) -> int | None:
        """First day count after which the heap holds ``mass``; None if it never does within the account."""
        enough = self.rows[1] >= mass * (1 - 1e-12)
        day = int(enough.argmax())
        return day if enough[day] else None


def account(material: Material, losses: Losses, per_day: float, on_hand: float, days: int) -> Heap:
    """The heap over ``days`` days of collection.

    Parameters
    ----------
    material, losses : shares of fresh mass, and losses per day (0..1)
    per_day : fresh dung put on the heap each day [kg]
    on_hand : fresh dung on the heap at the start [kg]
    days : days of collection, 0 to 400; entry ``n`` is the morning after ``n`` days, with ``n`` days' dung brought

    Notes
    -----
    The dung of a day loses for the first time in the following night; first-order losses in closed form (the sum of a
    geometric series), so every day is exact. The account is linear in what is brought, so it is two known tables, scaled.
    """
    of_start, of_daily = _tables(material, losses)
    rows = per_day * of_daily[:, : days + 1]
    return Heap(rows + on_hand * of_start[:, : days + 1] if on_hand else rows)


@lru_cache(maxsize=128)  # 32 kB each, and callers may state the solids
def _tables(material: Material, losses: Losses) -> tuple[Days, Days]:
    """The rows of :class:`Heap` for 1 kg at the start, and for 1 kg brought on each day."""
    day = np.arange(LONGEST_ACCOUNT + 1, dtype=np.float64)
    kept = np.array([[1 - losses.volatile_solids], [1 - losses.moisture], [1 - losses.nitrogen]])
    of_start = kept**day
    of_daily = np.concatenate((np.zeros((3, 1)), np.cumsum(of_start[:, 1:], axis=1)), axis=1)
    return _rows(np.ones_like(day), of_start, material), _rows(day, of_daily, material)


def _rows(brought: Days, left_share: Days, material: Material) -> Days:
    shares = np.array([[material.volatile_solids], [material.water], [material.nitrogen]])
    left = left_share * shares
    return np.vstack((brought, left[0] + left[1] + brought * material.ash, brought * shares - left))


@dataclass(frozen=True, slots=True)
class Left:
    """What is left of one kilogram brought on each day, or once at the start, after 0 to ``LONGEST_ACCOUNT`` days [kg]; (days, samples)."""

    of_daily: Days
    of_start: Days
    nitrogen: Days | float
    nitrogen_loss: Days | float

    def days_until(self, mass: Numeric, per_day: Numeric, on_hand: float, within: int = LONGEST_ACCOUNT) -> Numeric:
        """Days of collection until the heap holds ``mass``, (samples,); ``LONGEST_ACCOUNT`` where it never does within the account.

        ``within`` is how many days are looked at first; only where that is too short all are.
        """
        rows = slice(within + 1)
        gathered = self.of_daily[rows] * per_day + self.of_start[rows] * on_hand if on_hand else self.of_daily[rows] * per_day
        enough = gathered >= mass * (1 - 1e-12)
        ever = enough.any(axis=0)
        if within < LONGEST_ACCOUNT and not ever.all():
            return self.days_until(mass, per_day, on_hand)
        return np.where(ever, enough.argmax(axis=0), float(LONGEST_ACCOUNT))

    def nitrogen_lost_of_daily(self, days: int) -> Numeric:
        """Nitrogen that one kilogram brought on each of ``days`` days has lost [kg]; the geometric series in closed form."""
        loss = most(self.nitrogen_loss, _LEAST_LOSS)
        kept = 1.0 - loss
        return self.nitrogen * (days - kept * (1.0 - kept**days) / loss)

    def nitrogen_lost_of_start(self, days: int) -> Numeric:
        """Nitrogen that one kilogram has lost since the start [kg]."""
        return self.nitrogen * (1.0 - (1.0 - self.nitrogen_loss) ** days)


def left_by_day(material: Material, losses: Losses) -> Left:
    """What is left of a heap, for samples of material and losses (numbers or arrays (samples,)); see :func:`account` for one farm."""
    day = np.arange(LONGEST_ACCOUNT + 1, dtype=np.float64)[:, None]
    organic, water = (np.power(1.0 - np.atleast_1d(loss), day) for loss in (losses.volatile_solids, losses.moisture))
    of_start = material.volatile_solids * organic + material.water * water + material.ash
    of_daily = np.concatenate((np.zeros((1, of_start.shape[1])), np.cumsum(of_start[1:], axis=0)))
    return Left(of_daily, of_start, material.nitrogen, losses.nitrogen)
