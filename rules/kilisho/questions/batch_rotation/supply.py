"""Tells what a rotation gives: how many digesters are needed, their gas and storage, and what fewer and more of them do."""

from __future__ import annotations

import math

import numpy as np

from kilisho.questions.answers import Answer, Tell, in_cubic_metres, in_cubic_metres_per_day, in_days, in_number, in_whole_percent
from kilisho.questions.batch_rotation.limits import MOST_DIGESTERS
from kilisho.questions.batch_rotation.rotation import Outcome, open_ends
from kilisho.questions.batch_rotation.work import Work
from kilisho.questions.digestion import ends_of, samples_of
from kilisho.ranges import Array


def supply_told(work: Work) -> Answer:
    """Digesters needed, the rotation that is told, and its neighbours."""
    return {**_needed(work), **_chosen(work), "options": [_option(work, outcome) for outcome in work.options]}


def open_told(tell: Tell, columns: Array, most: float) -> Answer:
    """A number told with the ends that it has."""
    value, low, high = open_ends(columns, most)
    ends = tell(value, value if low is None else low, value if high is None else high)
    return {**tell(value), **({} if low is None else {"low": ends["low"]}), **({} if high is None else {"high": ends["high"]})}


def _needed(work: Work) -> Answer:
    """Digesters that keep the demand met; nothing where no demand is stated or none serve."""
    if work.needed is None or work.needed_by_column is None:
        return {}
    return {"digesters_needed": open_told(in_number, work.needed_by_column, float(MOST_DIGESTERS))}


def _chosen(work: Work) -> Answer:
    """The rotation told, and its storage."""
    if work.chosen is None:
        return {}
    plan = work.chosen.plan
    return {
        "digesters": plan.digesters,
        "recharge_every": in_days((plan.retention + work.yard.turn_round) / plan.digesters),
        "gas_supply": in_cubic_metres_per_day(*ends_of(work.chosen.gas)),
        "even_supply": in_cubic_metres_per_day(*ends_of(work.chosen.even)),
        **_against_demand(work, work.chosen),
    }


def _against_demand(work: Work, chosen: Outcome) -> Answer:
    """How surely the demand is met, and the storage that this takes."""
    demand, yard = work.yard.demand, work.yard
    if demand is None:
        return {}
    within = yard.within_day * demand
    between, available = chosen.storage, chosen.plan.digesters * yard.storage
    met = samples_of(chosen.met.astype(float)).mean()
    return {
        "gas_demand": in_cubic_metres_per_day(demand),
        "demand_met": in_whole_percent(float(met)),
        **_storage(between, within, available),
        "storage_within_day": in_cubic_metres(*ends_of(within)),
        "storage_available": in_cubic_metres(*ends_of(available)),
    }


def _storage(between: Array, within: Array, available: Array) -> Answer:
    """Storage from day to day, in all, and what these digesters lack of it; nothing where no storage keeps the demand met."""
    if not math.isfinite(between[0]):
        return {}
    needed = between + within
    return {
        "storage_needed": in_cubic_metres(*_finite(needed)),
        "storage_between_days": in_cubic_metres(*_finite(between)),
        "storage_lacking": in_cubic_metres(*_finite(np.maximum(needed - available, 0.0))),
    }


def _finite(columns: Array) -> tuple[float, ...]:
    """Value, low and high; the value alone where some sample has none, since its range then has no end."""
    return ends_of(columns) if np.isfinite(columns).all() else (float(columns[0]),)


def _option(work: Work, outcome: Outcome) -> Answer:
    plan, demand = outcome.plan, work.yard.demand
    enough = demand is not None and math.isfinite(outcome.storage[0])
    return {
        "digesters": plan.digesters,
        "retention": in_days(float(plan.retention)),
        "chosen_for": plan.chosen_for,
        "recharge_every": in_days((plan.retention + work.yard.turn_round) / plan.digesters),
        "gas_supply": in_cubic_metres_per_day(*ends_of(outcome.gas)),
        "least_gas": in_cubic_metres_per_day(*ends_of(outcome.least)),
        "greatest_gas": in_cubic_metres_per_day(*ends_of(outcome.greatest)),
        "even_supply": in_cubic_metres_per_day(*ends_of(outcome.even)),
        **({"storage_between_days": in_cubic_metres(*_finite(outcome.storage))} if enough else {}),
        **({} if demand is None else {"days_met": in_days(*ends_of(365.0 - outcome.short_days)), "demand_met": plan.met}),
        **({} if demand is None else {"left_over": in_cubic_metres_per_day(*ends_of(outcome.left_over))}),
    }
