"""The gas through the hours of a day: what is stored, what is missing, when it runs out, and what is let off."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from kilisho.farm import Ledger
from kilisho.formulas.gas_storage import DayRun, Interval, run_day, steady, storage_needed, volumes_between
from kilisho.messages import say
from kilisho.questions.answers import Answer, in_cubic_metres, in_cubic_metres_per_day, in_hours
from kilisho.questions.gas_use.demand import Demand
from kilisho.questions.storage_methods import BY_HOURS, BY_SHARE, StorageMethod
from kilisho.ranges import Uncertain, about_each, certain, columns, split

HOURS = 24
NO_TIME = 1.0 / 3600.0


@dataclass(frozen=True, slots=True)
class Day:
    """A day that repeats itself, over a store [m3]; the columns of its run are the typical rates and after them the samples."""

    supply: float
    storage: float
    run: DayRun

    def total(self, name: str) -> Uncertain:
        """``demand``, ``unmet`` or ``vented`` of the day [m3]."""
        return split(getattr(self.run.store, name).sum(axis=0))

    def burnt_by(self, intervals: Sequence[Interval]) -> Uncertain:
        """Gas [m3] of the day that one use burns: in each step its part of what all ask for, since flames on one pipe starve alike."""
        asked, store = volumes_between(self.run.clock, intervals), self.run.store
        met = np.divide(store.demand - store.unmet, store.demand, out=np.zeros(store.demand.shape), where=store.demand > 0)
        return split((asked.T * met.T).T.sum(axis=0))

    @property
    def without_gas(self) -> Uncertain:
        """Hours [h] in which less gas comes than is wanted."""
        return split(self.run.short_hours.sum(axis=0))


def take_storage_needed(demand: Demand, supply: float | None, ledger: Ledger) -> StorageMethod:
    """Put the storage that the use needs into the ledger, with its samples; the method by which it was found.

    Without a stated supply the digester is taken as one that gives just what is wanted.
    """
    gas = demand.per_day if supply is None else certain(supply)
    if demand.clock is None:
        share = ledger.figure("figures", "gas_storage_of_daily_gas", "gas_storage_of_daily_gas")
        needed = gas.by(share)
    else:
        needed = split(storage_needed(steady(columns(gas)), demand.clock))
    ledger.put(gas_storage_needed=needed.value)
    ledger.sample(gas_storage_needed=needed.samples)
    return BY_SHARE if demand.clock is None else BY_HOURS


def storage_of(stated: float | None, ledger: Ledger) -> float:
    """The store as stated [m3]; what the use needs, listed as an assumption, where it is not."""
    if stated is not None:
        return stated
    ledger.choose("gas_storage_volume", "gas_storage_needed", say("use-store-unknown"))
    return float(ledger.values["gas_storage_needed"])


def day_of(demand: Demand, supply: float | None, storage: float) -> Day | None:
    """The day's run; None where the hours of use or the gas are not stated."""
    if demand.clock is None or supply is None:
        return None
    return Day(supply, storage, run_day(steady(supply), demand.clock, storage, range(HOURS + 1)))


def told_day(day: Day) -> Answer:
    """When the gas runs out, what is missing, and the 24 hours."""
    return {
        "hours_without_gas": in_hours(*day.without_gas.told),
        "without_gas": list(_without_gas(day.run)),
        "unmet_per_day": in_cubic_metres_per_day(*day.total("unmet").told),
        "cover_by_hour": _rows(day),
    }


def _without_gas(run: DayRun) -> Iterator[Answer]:
    """Spells with less gas than is wanted, from the first after midnight; one that lasts over midnight is told once."""
    spells: list[list[float]] = []
    typical = run.short_hours.reshape(len(run.short_hours), -1)[:, 0]
    for end, short in zip(run.clock[1:].tolist(), typical.tolist(), strict=True):
        if short > NO_TIME and spells and abs(end - short - spells[-1][1]) < NO_TIME:
            spells[-1][1] = end
        elif short > NO_TIME:
            spells.append([end - short, end])
    if len(spells) > 1 and spells[0][0] < NO_TIME and spells[-1][1] > HOURS - NO_TIME:
        spells[0][0] = spells.pop()[0]
    yield from ({"from": _clock(start), "to": _clock(end), "hours": in_hours((end - start) % HOURS or HOURS)} for start, end in spells)


def _clock(hours: float) -> str:
    minutes = round(hours * 60)
    return f"{minutes // 60:02}:{minutes % 60:02}"


# What every answer calls the hours of its day.
_NAMED = tuple({"hour": hour, "from": _clock(hour), "to": _clock(hour + 1)} for hour in range(HOURS))


def _rows(day: Day) -> list[Answer]:
    """Supply, demand, unmet and vented gas of each hour, and what is stored at its end [m3]."""
    told = {name: _by_hour(day, name) for name in ("demand", "unmet", "vented")} | {"stored": _stored(day)}
    supply = in_cubic_metres(day.supply / HOURS)
    return [
        {
            **_NAMED[hour],
            "supply": supply,
            **{name: in_cubic_metres(*column[hour]) for name, column in told.items()},
        }
        for hour in range(HOURS)
    ]


def _by_hour(day: Day, name: str) -> list[tuple[float, ...]]:
    """Volumes of the run's steps, summed by hour."""
    bounds = np.searchsorted(day.run.clock, np.arange(HOURS))
    return about_each(np.add.reduceat(getattr(day.run.store, name), bounds, axis=0))


def _stored(day: Day) -> list[tuple[float, ...]]:
    """Level at the end of each hour."""
    return about_each(day.run.store.level[np.searchsorted(day.run.clock, np.arange(1, HOURS + 1))])
