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
    span = days + 1
    brought = on_hand + per_day * _DAY_COUNT[:span]
    solids = _left(losses.volatile_solids, on_hand, per_day, span) * material.volatile_solids
    water = _left(losses.moisture, on_hand, per_day, span) * material.water
    nitrogen = _left(losses.nitrogen, on_hand, per_day, span) * material.nitrogen
    return Heap(
        brought,
        solids + water + brought * material.ash,
        brought * material.volatile_solids - solids,
        brought * material.water - water,
        brought * material.nitrogen - nitrogen,
    )


_DAY_COUNT: Days = np.arange(LONGEST_ACCOUNT + 1, dtype=np.float64)


def _left(loss: float, on_hand: float, per_day: float, span: int) -> Days:
    """What is left of something of which ``per_day`` is brought daily and ``loss`` of what lies there goes each night."""
    of_start, of_daily = _series(loss)
    return on_hand * of_start[:span] + per_day * of_daily[:span]


@lru_cache(maxsize=256)
def _series(loss: float) -> tuple[Days, Days]:
    """What is left after n days of 1 at the start, and of 1 brought on each of the n days."""
    of_start = (1 - loss) ** _DAY_COUNT
    return of_start, np.concatenate(([0.0], np.cumsum(of_start[1:])))
