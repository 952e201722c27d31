"""Tells a gas forecast: the series by day, week or month, when the gas first burns, what it tends to, and what a change would do."""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Iterator, Sequence
from typing import Any

import numpy as np

from kilisho.formulas.digester import REFERENCE_TEMPERATURE
from kilisho.formulas.gas import normal_factor
from kilisho.process.headspace import RELIABLE, first_burnable_day
from kilisho.process.run import ACID_RATIO_STOP, ACID_RATIO_WATCH
from kilisho.questions.answers import (
    Answer,
    in_celsius,
    in_cubic_metres,
    in_cubic_metres_per_day,
    in_days,
    in_kilograms_per_cubic_metre_and_day,
    in_number,
    in_percent,
    in_whole_percent,
    known,
    plus_days,
)
from kilisho.questions.digestion import ends_of, samples_of
from kilisho.questions.gas import growth_reach
from kilisho.questions.gas_forecast.run import Change
from kilisho.questions.gas_forecast.work import Work
from kilisho.ranges import SAMPLES, Array

LEVELS = ("low", "raised", "high")
# A digester that is filled to the top still holds some gas under its lid: a twentieth of the slurry (judgement).
LEAST_GAS_SPACE = 0.05
# Days at the end of a forecast over which a change of the plan is compared.
TAIL = 90
LENGTHS = {"day": 1, "week": 7}


def told(work: Work) -> Answer:
    """The forecast's own members."""
    gas, methane = gas_of_run(work)
    return {
        "first_day": work.first_day.isoformat(),
        "days": work.asked.days,
        "interval": work.asked.interval,
        **_first_flame(work),
        **_steady(work),
        "total_gas": in_cubic_metres(*ends_of(gas.sum(axis=0))),
        "total_methane_normal": in_cubic_metres(*ends_of(methane.sum(axis=0))),
        "least_gas": _least(gas, work),
        "highest_acid_risk": LEVELS[int(_levels(work.run.acid_ratio).max())],
        "series": list(_series(work, gas, methane)),
        "changes": [_change(work, gas, place) for place in range(len(work.changes))],
        "gaps": [_gap(work, *gap) for gap in work.gaps],
    }


def gas_of_run(work: Work) -> tuple[Array, Array]:
    """Gas as used and normal methane by day, (days, columns); the samples reach as far towards the growth kinetics as the steady gas."""
    factor = float(normal_factor(REFERENCE_TEMPERATURE, work.ledger.values["gas_pressure"]))
    reach = work.columns.of(1.0, growth_reach(work.steady_fed, work.ledger) if work.steady_fed else 1.0)
    return work.run.biogas_normal / factor * reach, work.run.methane * reach


def _first_flame(work: Work) -> Answer:
    """Days from the first charge until the gas space holds gas that burns; nothing for a digester that has long been working."""
    if work.asked.first_charge is None:
        return {}
    slurry = work.run.volume[-1]
    space = np.maximum(work.columns.laid(work.ledger.uncertain("total_volume")) - slurry, LEAST_GAS_SPACE * slurry)
    days = first_burnable_day(work.run, space, RELIABLE)
    found: Answer = {"starts": in_whole_percent(float(np.isfinite(samples_of(days)).mean()))}
    if not math.isfinite(days[0]):
        return found
    value, *ends = ends_of(np.where(np.isfinite(days), days, float(work.asked.days)))
    first, last = ends or (value, value)
    dates = {"earliest": plus_days(work.first_day, math.floor(first)), "latest": plus_days(work.first_day, math.ceil(last))}
    return found | {"first_burnable_gas_day": in_days(value, *ends), "first_burnable_gas": known(**dates)}


def _steady(work: Work) -> Answer:
    """What the gas tends to if the last plan is kept at the year's mean temperature; nothing without a plan."""
    if not work.changes:
        return {}
    of = work.ledger.of
    return {
        "steady_gas": in_cubic_metres_per_day(*of("biogas_per_day")),
        "steady_gas_normal": in_cubic_metres_per_day(*of("biogas_per_day_normal")),
        "share_of_potential": in_percent(*of("share_of_potential")),
        "methane_share": in_percent(*of("methane_share")),
        "hydraulic_retention_time": in_days(*of("hydraulic_retention_time")),
        "organic_loading_rate": in_kilograms_per_cubic_metre_and_day(*of("organic_loading_rate")),
        "slurry_total_solids": in_percent(*of("slurry_total_solids")),
    }


def _least(gas: Array, work: Work) -> Answer:
    """The day of least typical gas after the first hundred days (or the second half of a shorter forecast)."""
    from_day = min(100, work.asked.days // 2)
    day = from_day + int(gas[from_day:, 0].argmin())
    return {"day": day, **known(date=plus_days(work.first_day, day)), "gas": in_cubic_metres_per_day(*ends_of(gas[day]))}


def _levels(ratio: Array) -> Array:
    """Acid risk by day, 0 to 2: high where the typical ratio asks to stop, raised where it asks to watch or one in twenty to stop."""
    typical, upper = ratio[:, 0], np.quantile(samples_of(ratio), 0.95, axis=1)
    return np.where(typical > ACID_RATIO_STOP, 2, np.where((typical > ACID_RATIO_WATCH) | (upper > ACID_RATIO_STOP), 1, 0))


def _series(work: Work, gas: Array, methane: Array) -> Iterator[Answer]:
    run, levels = work.run, _levels(work.run.acid_ratio)
    for first, last in _steps(work):
        days = slice(first, last + 1)
        ratio = run.acid_ratio[days].max(axis=0)
        yield {
            "day": first,
            **known(date=plus_days(work.first_day, first)),
            **({"days": last - first + 1} if last > first else {}),
            "gas": in_cubic_metres_per_day(*ends_of(gas[days].mean(axis=0))),
            "methane": in_cubic_metres_per_day(*ends_of(methane[days].mean(axis=0))),
            "temperature": in_celsius(*ends_of(run.temperature[days].mean(axis=0))),
            "acid_risk": LEVELS[int(levels[days].max())],
            "acid_ratio": in_number(*ends_of(ratio)),
        }


def _steps(work: Work) -> Iterator[tuple[int, int]]:
    """First and last day of each step of the series; months are those of the calendar."""
    days, day = work.asked.days, 0
    while day < days:
        length = (
            1
            if work.asked.interval == "day"
            else 7
            if work.asked.interval == "week"
            else _left_of_month(work.first_day + dt.timedelta(days=day))
        )
        yield day, min(day + length, days) - 1
        day += length


def _left_of_month(day: dt.date) -> int:
    following = (day.replace(day=28) + dt.timedelta(days=4)).replace(day=1)
    return (following - day).days


def _change(work: Work, gas: Array, place: int) -> Answer:
    """What a change of the last plan, from its first day on, would do over the forecast."""
    change, column = work.changes[place], 1 + SAMPLES + place
    since = work.spans[-1].first
    end = gas[max(since, work.asked.days - TAIL) :]
    return {
        "change": change.name,
        "text": change.text,
        "total_gas": in_cubic_metres(float(gas[:, column].sum())),
        "against_plan": _against(gas[:, column].sum(), gas[:, 0].sum()),
        "gas_at_the_end": in_cubic_metres_per_day(float(end[:, column].mean())),
        "against_plan_at_the_end": _against(end[:, column].mean(), end[:, 0].mean()),
        "hydraulic_retention_time": in_days(_retention(work, change)),
        "acid_risk": LEVELS[_level_of(work.run.acid_ratio[since:, column])],
    }


def _against(after: float, before: float) -> Answer:
    return in_percent(float(after / before) - 1.0 if before else 0.0)


def _retention(work: Work, change: Change) -> float:
    """Retention of the last plan once it is changed, whatever was missed meanwhile; another interval leaves it as it is."""
    dose = work.planned[-1].dose
    changed = (dose.room.value + dose.liquid.value * change.water) * change.feed
    return float(work.ledger.values["hydraulic_retention_time"]) * dose.slurry.value / changed


def _level_of(ratio: Array) -> int:
    highest = float(ratio.max(initial=0.0))
    return 2 if highest > ACID_RATIO_STOP else 1 if highest > ACID_RATIO_WATCH else 0


def _gap(work: Work, first: int, last: int) -> Answer:
    return {"first_day": first, "last_day": last, **known(date=plus_days(work.first_day, first), until=plus_days(work.first_day, last))}


def rows_of(answer: Answer) -> Sequence[Any]:
    """The series of an answer, as the rows of a table."""
    found: Sequence[Any] = answer["series"]
    return found
