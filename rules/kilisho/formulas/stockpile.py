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


@dataclass(slots=True)
class Heap:
    """The heap after each day's delivery; masses in kg, one entry a day, day 0 first.

    ``brought == on_heap + volatile_solids_lost + water_lost`` on every day (the nitrogen lost leaves with water and solids and
    is counted apart).
    """

    brought: Days
    on_heap: Days
    volatile_solids_lost: Days
    water_lost: Days
    nitrogen_lost: Days

    def table(self, days: int) -> list[list[float]]:
        """The first ``days`` entries of brought, on_heap, volatile_solids_lost and water_lost, to the gram."""
        columns = (self.brought, self.on_heap, self.volatile_solids_lost, self.water_lost)
        rows: list[list[float]] = np.array(columns)[:, :days].round(3).tolist()
        return rows

    def days_until(self, mass: float) -> int | None:
        """First day count after which the heap holds ``mass``; None if it never does within the account."""
        enough = self.on_heap >= mass * (1 - 1e-12)
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
    The dung of a day loses for the first time in the following night; first-order losses, in closed form (the sum of a
    geometric series), so every day is exact.
    """
    start, daily = _series(losses)
    shares = np.array(((material.volatile_solids,), (material.water,), (material.nitrogen,)))
    brought = on_hand + per_day * _DAY_COUNT[: days + 1]
    left = (on_hand * start[:, : days + 1] + per_day * daily[:, : days + 1]) * shares
    lost = brought * shares - left
    return Heap(brought, left[0] + left[1] + brought * material.ash, *lost)


_DAY_COUNT: Days = np.arange(LONGEST_ACCOUNT + 1, dtype=np.float64)


@lru_cache(maxsize=256)
def _series(losses: Losses) -> tuple[Days, Days]:
    """For each loss, what is left after n days of 1 at the start, and of 1 brought on each of the n days."""
    kept = np.array([[1 - losses.volatile_solids], [1 - losses.moisture], [1 - losses.nitrogen]])
    start = kept**_DAY_COUNT
    return start, np.concatenate((np.zeros((3, 1)), np.cumsum(start[:, 1:], axis=1)), axis=1)
