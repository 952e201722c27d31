"""What is wanted of the gas a day, and how much of it at the busiest hour."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any, Literal

import numpy as np

from kilisho.farm import Ledger
from kilisho.faults import Fault
from kilisho.formulas.gas_storage import Interval, clock_of, volumes_between
from kilisho.messages import say
from kilisho.questions.appliances import clock_intervals, faults_of_appliances, hours_of_use, rate_of
from kilisho.questions.gas_state import at_the_place
from kilisho.ranges import Numeric, Uncertain, certain, columns, split, sum_of
from kilisho.rulebook import Purpose

FlowFrom = Literal["stated_hours", "all_at_once", "cooking_hours"]


@dataclass(frozen=True, slots=True)
class Use:
    """The appliances of one kind: gas that all of them burn [m3/h], hours a day [h] and gas a day [m3/d], and their clock hours.

    The rates of ``intervals`` are columns: the typical one and after it the samples.
    """

    appliance: str
    purpose: Purpose
    count: int
    rate: Uncertain
    hours: Uncertain
    intervals: tuple[Interval, ...]

    @property
    def per_day(self) -> Uncertain:
        """Gas a day [m3/d]."""
        return self.rate.by(self.hours)


@dataclass(frozen=True, slots=True)
class Demand:
    """Gas wanted a day [m3/d], by appliance where stated so, and by the clock where all hours are stated."""

    per_day: Uncertain
    uses: tuple[Use, ...] = ()
    clock: tuple[Interval, ...] | None = None


def demand_of(asked: Any, ledger: Ledger) -> Demand | None:
    """The demand in whichever way it was stated; None where only the gas is."""
    if asked.appliances:
        return _of_appliances(asked.appliances, ledger)
    if asked.people_cooked_for is not None:
        per_person = ledger.figure("figures", "gas_per_person", "gas_per_person")
        return Demand(per_person.times(asked.people_cooked_for * at_the_place(ledger)))
    return None if asked.gas_demand is None else Demand(certain(asked.gas_demand))


def _of_appliances(appliances: Any, ledger: Ledger) -> Demand:
    uses = tuple(_use(use, ledger) for use in appliances)
    clock = tuple(one for use in uses for one in use.intervals)
    return Demand(sum_of(use.per_day for use in uses), uses, clock if all(use.use for use in appliances) else None)


def _use(use: Any, ledger: Ledger) -> Use:
    purpose, rate = ledger.shelf.data.appliances[use.appliance].purpose, rate_of(use, ledger)
    return Use(use.appliance, purpose, use.count, rate, hours_of_use(use, ledger), clock_intervals(use, columns(rate)))


def busiest_flow(demand: Demand | None, supply: float | None, ledger: Ledger) -> tuple[Uncertain, FlowFrom]:
    """Greatest flow [m3/h], and what it rests on: the clock, all appliances at once, or the usual hours of cooking."""
    if demand is not None and demand.clock is not None:
        return split(_peak(demand.clock)), "stated_hours"
    if demand is not None and demand.uses:
        return sum_of(use.rate for use in demand.uses), "all_at_once"
    hours = ledger.figure("figures", "cooking_hours", "cooking_hours")
    gas = demand.per_day if demand is not None else certain(supply or 0.0)
    return Uncertain(gas.value / hours.value, gas.samples / hours.samples), "cooking_hours"


def _peak(intervals: Sequence[Interval]) -> Numeric:
    clock = clock_of(*intervals)
    peak: Numeric = (volumes_between(clock, intervals).T / np.diff(clock)).T.max(axis=0)
    return peak


def faults_of_demand(asked: Any) -> Iterator[Fault]:
    """The demand is stated once, and there is a demand or gas."""
    yield from faults_of_appliances(asked.appliances)
    ways = sum((asked.gas_demand is not None, bool(asked.appliances), asked.people_cooked_for is not None))
    if ways > 1:
        yield Fault((), "demand_twice", say("fault-demand_twice"))
    if not ways and asked.biogas_per_day is None:
        yield Fault((), "nothing_to_use", say("fault-nothing_to_use"))
