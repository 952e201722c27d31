"""A heap of dung day by day: what is brought, what it loses, what is left. Everything brought is accounted for."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
import numpy.typing as npt

LONGEST_ACCOUNT = 400
Days = npt.NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Material:
    """What is put on the heap: shares of fresh mass."""

    water: float
    volatile_solids: float
    ash: float
    nitrogen: float


@dataclass(frozen=True, slots=True)
class Losses:
    """First-order losses per day (0..1) of the heap's volatile solids, nitrogen and water."""

    volatile_solids: float
    nitrogen: float
    moisture: float


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


@lru_cache(maxsize=1024)
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
