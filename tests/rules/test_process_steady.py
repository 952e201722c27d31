"""The steady start: a run from it goes on as it began, and comes to what a long run from elsewhere comes to."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules.process_cases import CATTLE, KITCHEN, LAYERS, PARAMETERS, SOLIDS, Array, both, cattle, healthy, of

from kilisho.process import Conditions, Feedstock, History, Routine, Run, Start, simulate, steady_start
from kilisho.process.parameters import growth_rate

DAYS = 400
WARM, RETENTION = (axis.ravel() for axis in np.meshgrid([15.0, 20.0, 25.0, 30.0, 35.0], [40.0, 60.0, 90.0]))


def routine_of(feed: Feedstock, strength: list[float], warm: Array = WARM, retention: Array = RETENTION, tanks: int = 1) -> Routine:
    """A digester of 6 m3, fed at these volatile solids [kg/m3] of each substrate."""
    slurry = 6.0 / retention
    return Routine(feed, np.array(strength)[:, None] * slurry, slurry, 6.0, warm, tanks)


def run_on(routine: Routine, start: Start, days: int = DAYS) -> Run:
    """The routine, day after day."""
    solids, slurry = np.repeat(routine.volatile_solids[None], days, axis=0), np.repeat(routine.slurry[None], days, axis=0)
    warm = np.repeat(np.broadcast_to(routine.temperature, routine.slurry.shape)[None], days, axis=0)
    conditions = Conditions(routine.working_volume, warm, routine.tanks_in_series)
    return simulate(History(routine.feedstock, solids, slurry, start), conditions, PARAMETERS)


def drift(run: Run) -> Array:
    """How far any day's gas lies from the first one's [1], by farm."""
    moved: Array = np.abs(run.biogas / run.biogas[0] - 1.0).max(axis=0)
    return moved


FEEDS: dict[str, tuple[Feedstock, list[float]]] = {
    "cattle": (cattle(), [SOLIDS]),
    "thin cattle slurry": (cattle(), [30.0]),
    "cattle and poultry": (both(CATTLE, LAYERS), [48.0, 12.0]),
    "cattle and kitchen waste, slow": (both(CATTLE, {**KITCHEN, "quick_share": 0.0}), [45.0, 15.0]),
}


@pytest.mark.parametrize("tanks", [1, 2, 4])
@pytest.mark.parametrize("name", FEEDS)
def test_every_day_of_a_long_run_is_as_the_first(name: str, tanks: int) -> None:
    routine = routine_of(*FEEDS[name], tanks=tanks)
    run = run_on(routine, steady_start(routine, PARAMETERS))
    # A first tank that is renewed about as fast as methanogens grow lives on the few that come with the feed, and settles for years.
    near_washout = np.abs(np.asarray(growth_rate(WARM, 1.0)) * RETENTION / tanks - 1.0) < 0.1
    assert drift(run)[~near_washout].max() < 0.02
    assert drift(run).max() < 0.04
    assert run.ph[0] == pytest.approx(run.ph[-1], abs=0.05)


def test_a_feed_of_much_that_sours_at_once_settles_within_days() -> None:
    """Two fifths of the kitchen waste's matter sours on the day of feeding: the first days are up to 8 % off, a week later 2 %."""
    routine = routine_of(both(CATTLE, KITCHEN), [45.0, 15.0])
    run = run_on(routine, steady_start(routine, PARAMETERS))
    assert drift(run).max() < 0.08
    assert np.abs(run.biogas[7:] / run.biogas[7] - 1.0).max() < 0.02


@pytest.mark.parametrize("tanks", [1, 3])
def test_it_is_where_a_long_run_from_elsewhere_arrives(tanks: int) -> None:
    routine = routine_of(cattle(), [SOLIDS], tanks=tanks)
    ours = run_on(routine, steady_start(routine, PARAMETERS), 1)
    long = run_on(routine, healthy(6.0), 1500)
    assert ours.biogas[0] == pytest.approx(long.biogas[-1], rel=0.02)
    assert ours.ammonia[0] == pytest.approx(long.ammonia[-1], rel=0.02)
    assert ours.methanogens[0] == pytest.approx(long.methanogens[-1], rel=0.05)
    assert ours.degradable[0] == pytest.approx(long.degradable[-1], rel=0.02)


@settings(max_examples=20)
@given(seed=st.integers(0, 2**32 - 1))
def test_parameters_and_sizes_that_differ_by_farm_hold_too(seed: int) -> None:
    rng = np.random.default_rng(seed)
    farms = 4
    parameters = replace(PARAMETERS, growth_factor=rng.uniform(0.8, 1.3, farms), half_saturation=rng.uniform(0.2, 0.9, farms))
    feed = of(CATTLE, biogas_yield=rng.uniform(0.2, 0.3, farms), degradation_rate=rng.uniform(0.006, 0.015, farms))
    routine = routine_of(feed, [50.0], rng.uniform(18, 34, farms), rng.uniform(35, 90, farms))
    routine = replace(routine, working_volume=6.0 * np.ones(farms))
    start = steady_start(routine, parameters)
    solids, slurry = np.repeat(routine.volatile_solids[None], 200, axis=0), np.repeat(routine.slurry[None], 200, axis=0)
    warm = np.repeat(np.asarray(routine.temperature)[None], 200, axis=0)
    assert drift(simulate(History(feed, solids, slurry, start), Conditions(6.0, warm), parameters)).max() < 0.02


def test_more_growth_leaves_less_acid_and_cold_leaves_more() -> None:
    acids = [steady_start(routine_of(cattle(), [SOLIDS]), replace(PARAMETERS, growth_factor=one)).acids for one in (0.8, 1.0, 1.3)]
    assert (np.diff(acids, axis=0) < 0).all()
    by_warmth = np.asarray(acids[1])[0].reshape(3, 5)
    assert (np.diff(by_warmth[:, :3], axis=1) < 0).all()


def test_a_routine_beyond_the_digester_ends_sour() -> None:
    """Five days at 20 Cel are shorter than the 7.6 days in which methanogens double themselves away."""
    routine = routine_of(of(KITCHEN), [60.0], np.array([20.0]), np.array([5.0]))
    start = steady_start(routine, PARAMETERS)
    assert np.asarray(start.methanogens).max() < 0.01
    assert np.asarray(start.acids).min() > 5.0
    assert run_on(routine, start, 30).ph[-1, 0] < 6.0
