"""The search for a rotation on curves of our own, where the best is found by trying everything."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kilisho.formulas.rotation import YEAR, Timetable, supply_of
from kilisho.questions.batch_rotation.curves import Course, Curves
from kilisho.questions.batch_rotation.limits import LONGEST_RETENTION, MOST_DIGESTERS, SHORTEST_RETENTION
from kilisho.questions.batch_rotation.rotation import GAS_PER_DAY, GAS_PER_FEED, STATED, Plan, Yard, open_ends, outcome_of
from kilisho.questions.digestion import Columns
from kilisho.ranges import SAMPLES

COLUMNS = Columns()
DEMANDS = st.floats(0.1, 4.0)


def course(rate: float = 0.03, lag: float = 2.0, spread: float = 0.3, season: float = 1.0) -> Course:
    """First-order gas of a charge with a potential of 60 m3; the samples' potentials spread evenly by a share either way."""
    edges = 60.0 * np.exp(-rate * np.arange(LONGEST_RETENTION + 1.0)) * season
    scale = np.concatenate([[1.0], np.linspace(1 - spread, 1 + spread, SAMPLES)])
    gas = (edges[:-1] - edges[1:])[:, None] * scale
    return Course(gas, np.full_like(gas, 25.0), np.full(COLUMNS.count, lag))


def curves(*courses: Course) -> Curves:
    return Curves(COLUMNS, list(courses), courses[0], courses[0], np.full(COLUMNS.count, 60.0), 0.0)


def yard(demand: float | None = 1.0, storage: float = 1.0, stated: int | None = None, turn_round: int = 3, spread: float = 0.3) -> Yard:
    made = curves(course(spread=spread))
    return Yard(made, turn_round, demand, np.full(COLUMNS.count, storage), np.full(COLUMNS.count, 0.5), stated)


def plainly_met(made: Yard, count: int, retention: int, column: int = 0) -> bool:
    """Whether a store that is full at the beginning ever runs dry, day by day, in a plain loop."""
    assert made.demand is not None
    days = np.arange(YEAR, 3 * YEAR)
    supply = supply_of(made.usable[..., [column]], Timetable(count, retention, made.turn_round), days)[:, 0]
    full = max(0.0, count * made.storage[column] - made.within_day[column] * made.demand)
    level = full
    for gas in supply:
        level = min(full, level + gas - made.demand)
        if level < -1e-9:
            return False
    return bool(supply.mean() >= made.demand)


# Courses


@given(lag=st.floats(0, 20))
def test_usable_gas_begins_within_the_first_burnable_day(lag: float) -> None:
    one = course(lag=lag)
    first = int(lag)
    assert not one.usable[:first].any()
    assert one.usable[first] == pytest.approx(one.gas[first] * (first + 1 - lag))
    assert (one.usable[first + 1 :] == one.gas[first + 1 :]).all()


def test_a_charge_that_never_burns_gives_nothing_to_use() -> None:
    assert not course(lag=math.inf).usable.any()
    never = Yard(curves(course(lag=math.inf)), 3, 1.0, np.ones(COLUMNS.count), np.ones(COLUMNS.count))
    assert not never.gives_gas
    assert never.fewest() is None


# Keeping up


@given(count=st.integers(1, 6), retention=st.integers(5, 200), demand=DEMANDS, storage=st.floats(0, 5))
def test_keeping_up_is_that_of_a_plain_loop(count: int, retention: int, demand: float, storage: float) -> None:
    made = yard(demand, storage)
    assert bool(made.keeps_up(count, retention)[0]) == plainly_met(made, count, retention)


@given(count=st.integers(1, 6), retention=st.integers(5, 200), demand=DEMANDS)
@settings(max_examples=20)
def test_columns_keep_up_each_for_itself(count: int, retention: int, demand: float) -> None:
    made = yard(demand)
    together = made.keeps_up(count, retention, slice(None))
    for column in (0, 1, 20, SAMPLES):
        assert bool(together[column]) == bool(made.keeps_up(count, retention, [column])[0])


# The search


@given(demand=DEMANDS, storage=st.floats(0, 4), turn_round=st.integers(0, 15))
@settings(max_examples=15)
def test_the_fewest_are_those_of_trying_every_retention(demand: float, storage: float, turn_round: int) -> None:
    made = yard(demand, storage, turn_round=turn_round)
    found = made.fewest()
    every = range(SHORTEST_RETENTION, LONGEST_RETENTION + 1)
    tried = next((n for n in range(1, 9) if any(made.keeps_up(n, days)[0] for days in every)), None)
    if tried is not None:
        assert found is not None
        assert found.digesters == tried
    else:
        assert found is None or found.digesters > 8


@given(demand=DEMANDS, count=st.integers(1, 8))
@settings(max_examples=15)
def test_the_longest_is_that_of_trying_every_retention(demand: float, count: int) -> None:
    made = yard(demand)
    tried = [days for days in range(SHORTEST_RETENTION, LONGEST_RETENTION + 1) if made.keeps_up(count, days)[0]]
    assert made.longest(count) == (max(tried) if tried else None)


@given(demand=DEMANDS, count=st.integers(1, 8))
@settings(max_examples=25)
def test_a_plan_says_why(demand: float, count: int) -> None:
    plan = yard(demand).plan(count)
    if plan.met:
        assert plan.longest is not None
        assert plan.chosen_for == GAS_PER_FEED
        assert SHORTEST_RETENTION <= plan.retention <= plan.longest
        assert yard(demand).keeps_up(count, plan.retention)[0]
    else:
        assert (plan.retention, plan.chosen_for) == (yard().most_gas[0], GAS_PER_DAY)


@given(demand=DEMANDS, count=st.integers(1, 8))
@settings(max_examples=15)
def test_the_plan_is_about_as_sure_as_any(demand: float, count: int) -> None:
    made = yard(demand)
    plan = made.plan(count)
    if plan.met:
        between = range(min(int(made.most_gas[0]), plan.retention), plan.retention + 1, 3)
        sure = [float(made.keeps_up(count, days, slice(None))[1:].mean()) for days in between]
        mine = float(made.keeps_up(count, plan.retention, slice(None))[1:].mean())
        # The ladder has six rungs; a sample or two more may be met between them.
        assert mine >= max(sure) - 0.05 - 2.5 / SAMPLES


def test_samples_that_agree_leave_the_longest_retention() -> None:
    """Without any spread nothing is lost by going to the limit."""
    made = yard(spread=0.0)
    plan = made.fewest()
    assert plan is not None
    assert plan.retention == plan.longest


def test_a_stated_retention_is_the_only_one_tried() -> None:
    made = yard(1.0, stated=40)
    found = made.fewest()
    assert found is not None
    assert (found.retention, found.chosen_for) == (40, STATED)
    assert made.longest(1) in (None, 40)
    assert made.plan(1) == Plan(1, 40, STATED, made.longest(1))


def test_what_is_beyond_the_most_digesters_is_not_found() -> None:
    greatest = float(MOST_DIGESTERS * yard().cycle_gas[:, 0].max())
    assert yard(greatest * 1.2).fewest() is None
    reachable = yard(greatest * 0.5).fewest()
    assert reachable is not None
    assert reachable.digesters >= MOST_DIGESTERS / 2


@given(demand=DEMANDS)
@settings(max_examples=15)
def test_samples_with_more_gas_need_no_more_digesters(demand: float) -> None:
    made = yard(demand)
    found = made.fewest()
    assert found is not None
    needed = made.needed_by_column([int(made.most_gas[0]), found.retention])
    assert needed[0] == found.digesters
    assert (np.diff(needed[1:]) <= 0).all()


def test_samples_without_gas_need_more_than_there_can_be() -> None:
    dead = course()
    dead.burnable[1:11] = math.inf
    made = replace(yard(), curves=curves(dead))
    needed = made.needed_by_column([30])
    assert np.isinf(needed[1:11]).all()
    assert np.isfinite(needed[11:]).all()
    assert (made.most_gas[1:11] == made.most_gas[0]).all()


# Seasons


def test_a_poor_season_decides() -> None:
    """Half a year of charges with half the gas needs more digesters than charges of the mean, and no more than the poor half alone."""
    good, poor, mean = course(), course(season=0.5), course(season=0.75)
    mixed = [good] * 6 + [poor] * 6
    needed = [replace(yard(1.4), curves=curves(*courses)).fewest() for courses in ([good], [mean], mixed, [poor])]
    counts = [plan.digesters if plan else MOST_DIGESTERS + 1 for plan in needed]
    assert counts == sorted(counts)
    assert counts[0] < counts[3]


# Outcomes


@given(count=st.integers(1, 6), retention=st.integers(5, 150), demand=st.none() | DEMANDS, storage=st.floats(0, 4))
@settings(max_examples=25)
def test_an_outcome_agrees_with_itself(count: int, retention: int, demand: float | None, storage: float) -> None:
    made = yard(demand, storage, stated=retention)
    found = outcome_of(made, made.plan(count))
    asked = found.gas if demand is None else np.full(COLUMNS.count, demand)
    assert (found.least <= found.gas + 1e-12).all()
    assert (found.gas <= found.greatest + 1e-12).all()
    assert (found.least - 1e-9 <= found.even).all()
    assert (found.even <= found.gas + 1e-9).all()
    assert (found.met == (found.short_days == 0) & (found.gas >= asked * (1 - 1e-9))).all()
    # What comes in is used, vented or still in store.
    unmet_at_most = found.short_days / YEAR * asked
    used = found.gas - found.left_over
    assert (used <= asked + 1e-9 + count * storage / (2 * YEAR)).all()
    assert (used >= asked - unmet_at_most - 1e-9 - count * storage / (2 * YEAR)).all()
    assert (np.isnan(found.storage) == (found.gas < asked * (1 - 1e-9))).all()


def test_met_plans_and_outcomes_say_the_same() -> None:
    for demand in (0.5, 1.0, 2.0, 3.0):
        for count in (1, 2, 3, 5):
            made = yard(demand)
            plan = made.plan(count)
            assert bool(outcome_of(made, plan).met[0]) == plan.met


# Ends


def test_ends_stop_where_nothing_more_is_known() -> None:
    agreed = np.full(COLUMNS.count, 3.0)
    assert open_ends(agreed, 24.0) == (3.0, None, None)
    spread = agreed.copy()
    spread[1:33] = 4.0
    assert open_ends(spread, 24.0) == (3.0, 3.0, 4.0)
    spread[1:10] = math.inf
    assert open_ends(spread, 24.0) == (3.0, 3.0, None)
    few = agreed.copy()
    few[1] = math.inf
    assert open_ends(few, 24.0) == (3.0, None, None)
