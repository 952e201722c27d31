"""A heap of dung day by day: what is brought, what it loses, what is left. Everything brought is accounted for."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Material:
    """What is put on the heap: shares of fresh mass."""

    water: float
    volatile_solids: float
    ash: float
    nitrogen: float


@dataclass(frozen=True, slots=True)
class Losses:
    """First-order losses per day of the heap's volatile solids, nitrogen and water."""

    volatile_solids: float
    nitrogen: float
    moisture: float


@dataclass(slots=True)
class Heap:
    """The heap after each day's delivery; masses in kg, one entry a day, day 0 first.

    ``brought == on_heap + volatile_solids_lost + water_lost`` holds on every day (the nitrogen lost leaves with water and solids
    and is counted apart).
    """

    brought: list[float]
    on_heap: list[float]
    volatile_solids: list[float]
    volatile_solids_lost: list[float]
    water_lost: list[float]
    nitrogen: list[float]
    nitrogen_lost: list[float]

    def days_until(self, mass: float) -> int | None:
        """First day count after which the heap holds ``mass``; None if it never does within the account."""
        return next((day for day, held in enumerate(self.on_heap) if held >= mass * (1 - 1e-12)), None)


def account(material: Material, losses: Losses, per_day: float, on_hand: float, days: int) -> Heap:
    """The heap over ``days`` days of collection.

    Parameters
    ----------
    material, losses : shares of fresh mass, and losses per day (0..1)
    per_day : fresh dung put on the heap each day [kg]
    on_hand : fresh dung on the heap at the start [kg]
    days : days of collection; entry ``n`` is the morning after ``n`` days, with ``n`` days' dung brought

    Notes
    -----
    The dung of a day loses for the first time in the following night. Exact recursion of first-order losses; a closed
    form exists, but the account is wanted day by day.
    """
    solids, water, nitrogen = on_hand * material.volatile_solids, on_hand * material.water, on_hand * material.nitrogen
    ash, brought, lost_solids, lost_water, lost_nitrogen = on_hand * material.ash, on_hand, 0.0, 0.0, 0.0
    heap = Heap([brought], [on_hand], [solids], [0.0], [0.0], [nitrogen], [0.0])
    for _ in range(days):
        brought, ash = brought + per_day, ash + per_day * material.ash
        solids, gone = _weather(solids + per_day * material.volatile_solids, losses.volatile_solids)
        lost_solids += gone
        water, gone = _weather(water + per_day * material.water, losses.moisture)
        lost_water += gone
        nitrogen, gone = _weather(nitrogen + per_day * material.nitrogen, losses.nitrogen)
        lost_nitrogen += gone
        heap.brought.append(brought)
        heap.on_heap.append(solids + water + ash)
        heap.volatile_solids.append(solids)
        heap.volatile_solids_lost.append(lost_solids)
        heap.water_lost.append(lost_water)
        heap.nitrogen.append(nitrogen)
        heap.nitrogen_lost.append(lost_nitrogen)
    return heap


def _weather(held: float, loss: float) -> tuple[float, float]:
    gone = held * loss
    return held - gone, gone
