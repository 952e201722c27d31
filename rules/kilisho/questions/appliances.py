"""What burns the gas, for how long and when."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import Any

from kilisho.farm import Ledger
from kilisho.faults import Fault
from kilisho.formulas.gas_storage import Interval, clock_of, hours_of
from kilisho.messages import say
from kilisho.questions.gas_state import at_the_place
from kilisho.ranges import Numeric, Uncertain, certain

HOURS_TOLERANCE = 0.01


def clock_intervals(use: Any, rate: Numeric = 1.0) -> tuple[Interval, ...]:
    """The stated clock hours of one kind of appliance as intervals at a rate [m3/h]."""
    return tuple(Interval(hours.start, hours.end, rate) for hours in use.use)


def clock_hours(use: Any) -> float:
    """Length of the stated clock hours [h] a day."""
    return sum(hours_of(one) for one in clock_intervals(use))


def rate_of(use: Any, ledger: Ledger) -> Uncertain:
    """Gas that the appliances of one kind burn together [m3/h] at the place, with its samples."""
    return ledger.figure("appliances", use.appliance, "gas_per_hour").times(use.count * at_the_place(ledger))


def demand_of(appliances: Sequence[Any], ledger: Ledger) -> float:
    """Gas that the appliances burn [m3/d], at their typical rates; what the rulebook supplies is listed as assumed."""
    return sum(demand_by(use, ledger).value for use in appliances)


def demand_by(use: Any, ledger: Ledger) -> Uncertain:
    """Gas that the appliances of one kind burn [m3/d], with its samples."""
    return rate_of(use, ledger).by(hours_of_use(use, ledger))


def hours_of_use(use: Any, ledger: Ledger) -> Uncertain:
    """Hours a day [h] that each burns: by its clock hours, as stated, or as usual."""
    if use.use:
        return certain(clock_hours(use))
    if use.hours_per_day is not None:
        return certain(float(use.hours_per_day))
    return ledger.figure("appliances", use.appliance, "usual_hours_per_day")


def burning(appliances: Sequence[Any], ledger: Ledger) -> tuple[tuple[Interval, ...], tuple[Interval, ...]]:
    """All appliances by the clock, each at its typical rate [m3/h], and the same with the samples of the rates."""
    rates = [rate_of(use, ledger) for use in appliances]
    sides = ([rate.value for rate in rates], [rate.samples for rate in rates])
    typical, samples = (
        tuple(one for use, rate in zip(appliances, side, strict=True) for one in clock_intervals(use, rate)) for side in sides
    )
    return typical, samples


def faults_of_appliances(appliances: Sequence[Any]) -> Iterator[Fault]:
    """Clock hours have a length, do not overlap for one appliance, and agree with the hours a day where both are stated."""
    for i, use in enumerate(appliances):
        empty = [j for j, hours in enumerate(use.use) if hours.start == hours.end]
        detail = say("fault-use_without_length")
        yield from (Fault(("appliances", i, "use", j), "use_without_length", detail) for j in empty)
        if use.use and not empty:
            yield from _faults_of_hours(i, use)


def _overlap(intervals: Sequence[Interval]) -> bool:
    """Whether two intervals hold the same time of the day."""
    middles = [(before + after) / 2 for before, after in pairwise(clock_of(*intervals).tolist())]
    return any(sum([_holds(one, middle) for one in intervals]) > 1 for middle in middles)


def _holds(interval: Interval, time: float) -> bool:
    """Whether an interval, which may last over midnight, holds a time of the day [h]."""
    after, before = interval.start <= time, time < interval.end
    return (after and before) if interval.end > interval.start else (after or before)


def _faults_of_hours(i: int, use: Any) -> Iterator[Fault]:
    if _overlap(clock_intervals(use)):
        yield Fault(("appliances", i, "use"), "use_overlaps", say("fault-use_overlaps"))
    elif use.hours_per_day is not None and abs(use.hours_per_day - clock_hours(use)) > HOURS_TOLERANCE * use.hours_per_day:
        yield Fault(("appliances", i, "hours_per_day"), "stated_twice", say("fault-hours_denied"))
