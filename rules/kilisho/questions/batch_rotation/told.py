"""Tells a batch rotation: the charge, its gas day by day, how long it stays, and what recharging earlier or later does."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Any

import numpy as np

from kilisho.formulas.arrays import Numeric
from kilisho.questions.answers import (
    Answer,
    in_celsius,
    in_cubic_metres,
    in_cubic_metres_per_day,
    in_days,
    in_kilograms,
    in_litres_per_kilogram,
    in_percent,
    in_whole_percent,
    known,
    plus_days,
)
from kilisho.questions.batch_rotation.facts import start_reliability
from kilisho.questions.batch_rotation.limits import LONGEST_RETENTION, SHORTEST_RETENTION
from kilisho.questions.batch_rotation.rotation import GAS_PER_DAY, STATED
from kilisho.questions.batch_rotation.supply import open_told, supply_told
from kilisho.questions.batch_rotation.work import Work
from kilisho.questions.digestion import ends_of
from kilisho.questions.feeding import sampled, uncertain_mass
from kilisho.ranges import Array, Uncertain

# Retentions that are held against the one chosen, and days of the curve beyond it.
OTHERWISE = (0.5, 0.75, 1.0, 1.5, 2.0)
CURVE_BEYOND = 1.25


def told(work: Work) -> Answer:
    """The rotation's own members."""
    retention = retention_of(work)
    return {
        "charge": _charge(work),
        "starts": in_whole_percent(start_reliability(work)),
        **_burnable(work),
        **_retentions(work, retention),
        "gas_curve": list(_curve(work, _last_day(work, retention))),
        "other_retentions": [] if retention is None else [_otherwise(work, retention, days) for days in _others(retention)],
        **supply_told(work),
    }


def retention_of(work: Work) -> int | None:
    """Days that a charge stays: of the rotation told, or of most gas per day where none serves; None without any gas."""
    if work.chosen is not None:
        return work.chosen.plan.retention
    if not work.yard.gives_gas:
        return None
    return work.yard.stated_retention or int(work.yard.most_gas[0])


def _charge(work: Work) -> Answer:
    charge, curves = work.charge, work.curves
    mass = Uncertain(*(sum(one.mass for one in side) for side in (charge.fed, sampled(charge.fed))))
    return {
        "slurry_volume": in_cubic_metres(*charge.slurry.told),
        "substrates": [_substrate(one, mass) for one in charge.fed],
        "substrate_mass": in_kilograms(*mass.told),
        "water_volume": in_cubic_metres(*charge.water.told),
        "starter_volume": in_cubic_metres(*charge.starter.told),
        "first_starter_volume": in_cubic_metres(*charge.first_starter.told),
        "slurry_total_solids": in_percent(*charge.total_solids.told),
        "gas_potential": in_cubic_metres(*ends_of(curves.potential)),
    }


def _substrate(one: Any, total: Uncertain) -> Answer:
    mass = uncertain_mass(one)
    share = Uncertain(mass.value / total.value, mass.samples / total.samples)
    return {"substrate": one.id, "name": one.entry.name, "mass": in_kilograms(*mass.told), "share": in_percent(*share.told)}


def _burnable(work: Work) -> Answer:
    """First day on which the gas of a charge burns, of the first charge and of a later one on the same day of the year."""
    pairs = ("first_burnable_gas_day", work.curves.first), ("later_burnable_gas_day", work.curves.told)
    return {name: _days_told(course.burnable) for name, course in pairs if math.isfinite(course.burnable[0])}


def _days_told(burnable: Array) -> Answer:
    """Days with their range; no high end where more than one sample in twenty never burns."""
    return open_told(in_days, burnable, float(LONGEST_RETENTION))


def _retentions(work: Work, retention: int | None) -> Answer:
    turn_round = {"turn_round": in_days(float(work.yard.turn_round))}
    if retention is None:
        return turn_round
    course, days, chosen = work.curves.told, slice(0, retention), None if work.chosen is None else work.chosen.plan
    gas, usable = course.gas[days].sum(axis=0), course.usable[days].sum(axis=0)
    return {
        **turn_round,
        "retention": in_days(float(retention)),
        "chosen_for": chosen.chosen_for if chosen else STATED if work.yard.stated_retention else GAS_PER_DAY,
        **({} if chosen is None or chosen.longest is None else {"longest_retention": in_days(float(chosen.longest))}),
        "retention_for_gas_per_day": in_days(*ends_of(work.yard.most_gas.astype(float))),
        "gas_of_charge": in_cubic_metres(*ends_of(gas)),
        "vented_of_charge": in_cubic_metres(*ends_of(gas - usable)),
        "share_of_potential": in_percent(*ends_of(_over(gas, work.curves.potential))),
    }


def _over(part: Array, whole: Numeric) -> Array:
    found: Array = np.divide(part, whole, out=np.zeros_like(part), where=np.greater(whole, 0.0))
    return found


def _last_day(work: Work, retention: int | None) -> int:
    """Last day of the curve that is told: somewhat beyond the longest retention that the answer speaks of."""
    longest = max(retention, int(work.yard.most_gas[0])) if retention is not None else LONGEST_RETENTION
    return min(LONGEST_RETENTION, math.ceil(CURVE_BEYOND * longest))


def _curve(work: Work, last: int) -> Iterator[Answer]:
    """A charge that begins on the first day, with the starter that later charges have, day by day."""
    course, potential = work.curves.told, work.curves.potential
    total, usable = np.cumsum(course.gas, axis=0), course.usable
    for day in range(last):
        yield {
            "day": day,
            **known(date=plus_days(work.asked.first_charge_on, day)),
            "gas": in_cubic_metres_per_day(*ends_of(course.gas[day])),
            "usable_gas": in_cubic_metres_per_day(*ends_of(usable[day])),
            "gas_so_far": in_cubic_metres(*ends_of(total[day])),
            "share_of_potential": in_percent(*ends_of(_over(total[day], potential))),
            "temperature": in_celsius(*ends_of(course.temperature[day])),
        }


def _others(retention: int) -> list[int]:
    return sorted({min(max(round(retention * factor), SHORTEST_RETENTION), LONGEST_RETENTION) for factor in OTHERWISE})


def _otherwise(work: Work, retention: int, days: int) -> Answer:
    """What recharging after so many days instead gains and loses, for the typical charge of the mean year."""
    curves = work.curves
    gas, usable = (np.mean([getattr(c, name)[:, 0] for c in curves.through_year], axis=0).cumsum() for name in ("gas", "usable"))
    mass, potential = sum(one.mass for one in work.charge.fed), float(curves.potential[0])
    gained = float(gas[days - 1] / potential) if potential else 0.0
    cycle = days + work.yard.turn_round
    return {
        "retention": in_days(float(days)),
        "share_of_potential": in_percent(gained),
        "share_lost": in_percent(1.0 - gained),
        "gas_per_feed": in_litres_per_kilogram(float(usable[days - 1] / mass)),
        "against_chosen_per_feed": in_litres_per_kilogram(float((usable[days - 1] - usable[retention - 1]) / mass)),
        "gas_per_day": in_cubic_metres_per_day(float(usable[days - 1] / cycle)),
        "feed_per_year": in_kilograms(mass * 365.0 / cycle),
    }


def rows_of(answer: Answer) -> list[Any]:
    """The gas curve of an answer, as the rows of a table."""
    found: list[Any] = answer["gas_curve"]
    return found
