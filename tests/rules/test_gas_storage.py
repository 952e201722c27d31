"""What storage, pressure and the swing between feedings keep over their whole range, on floats and on arrays."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.integrate import trapezoid

from kilisho.formulas import gas_between_feedings as between
from kilisho.formulas import gas_storage as store
from kilisho.formulas.dome_pressure import dome_gas_pressure, slurry_head, stored_gas_at_pressure
from kilisho.formulas.gas_storage import Interval, run_day, run_store, steady, storage_needed, storage_over_days
from kilisho.formulas.geometry import cap_volume, hemisphere_volume

MINUTES = st.integers(0, 24 * 60 - 1).map(lambda minute: minute / 60)
RATES = st.floats(0.01, 5)
INTERVALS = st.builds(Interval, MINUTES, MINUTES, RATES)
USES = st.lists(INTERVALS, min_size=1, max_size=6).map(tuple)
SUPPLIES = st.floats(0, 20)


def asked(uses: tuple[Interval, ...]) -> float:
    return sum(float(one.rate) * store.hours_of(one) for one in uses)


def shifted(uses: tuple[Interval, ...], by: float) -> tuple[Interval, ...]:
    return tuple(Interval((one.start + by) % 24, (one.end + by) % 24, one.rate) for one in uses)


@given(USES, SUPPLIES)
def test_no_household_needs_more_than_its_day(uses: tuple[Interval, ...], supply: float) -> None:
    """With a constant supply: what is burnt while it comes is never stored."""
    assert 0 <= storage_needed(steady(supply), uses) <= min(asked(uses), supply) + 1e-9


@given(USES, SUPPLIES, st.floats(0.1, 10))
def test_storage_scales_with_the_gas(uses: tuple[Interval, ...], supply: float, factor: float) -> None:
    larger = [one._replace(rate=one.rate * factor) for one in uses]
    assert storage_needed(steady(supply * factor), larger) == pytest.approx(
        factor * storage_needed(steady(supply), uses), rel=1e-6, abs=1e-9
    )


@given(USES, SUPPLIES, st.integers(1, 1439))
def test_moving_the_clock_changes_nothing(uses: tuple[Interval, ...], supply: float, minutes: int) -> None:
    assume(abs(supply - asked(uses)) > 1e-6)
    moved = shifted(uses, minutes / 60)
    assert storage_needed(steady(supply), moved) == pytest.approx(storage_needed(steady(supply), uses), abs=1e-9)
    ours, theirs = run_day(steady(supply), uses, 1.0).store, run_day(steady(supply), moved, 1.0).store
    assert float(theirs.covered) == pytest.approx(float(ours.covered), abs=1e-9)
    assert theirs.vented.sum() == pytest.approx(ours.vented.sum(), abs=1e-9)


@given(USES, SUPPLIES)
def test_the_storage_that_is_needed_is_just_enough(uses: tuple[Interval, ...], supply: float) -> None:
    """It meets the demand, or burns all there is; a tenth less does not."""
    needed = float(storage_needed(steady(supply), uses))
    total = asked(uses)
    best = min(1.0, supply / total)
    assert float(run_day(steady(supply), uses, needed).store.covered) == pytest.approx(best, abs=1e-9)
    if needed > 1e-3:
        less = float(run_day(steady(supply), uses, 0.9 * needed).store.covered)
        assert less == pytest.approx(best - 0.1 * needed / total, abs=1e-9) or less < best - 0.1 * needed / total


@given(USES, SUPPLIES, st.floats(0, 10))
def test_a_steady_day_ends_as_it_began_and_its_gas_is_accounted_for(uses: tuple[Interval, ...], supply: float, storage: float) -> None:
    day = run_day(steady(supply), uses, storage)
    assert day.store.level[-1] == pytest.approx(day.store.level[0], abs=1e-9)
    assert day.store.level.min() >= 0
    assert day.store.level.max() <= storage
    burnt = day.store.demand.sum() - day.store.unmet.sum()
    assert supply == pytest.approx(burnt + day.store.vented.sum(), abs=1e-8)
    assert (day.short_hours >= 0).all()
    assert (day.short_hours <= np.diff(day.clock) + 1e-12).all()


@given(USES, SUPPLIES, st.floats(0, 5), st.floats(0, 5))
def test_more_storage_never_does_harm(uses: tuple[Interval, ...], supply: float, storage: float, more: float) -> None:
    small, large = (run_day(steady(supply), uses, size).store for size in (storage, storage + more))
    assert float(large.covered) >= float(small.covered) - 1e-9
    assert large.vented.sum() <= small.vented.sum() + 1e-9


@given(USES, SUPPLIES, st.lists(st.floats(0, 24), max_size=10))
def test_more_cuts_change_no_sum(uses: tuple[Interval, ...], supply: float, cuts: list[float]) -> None:
    plain, cut = run_day(steady(supply), uses, 1.0), run_day(steady(supply), uses, 1.0, cuts)
    assert set(cuts) <= set(cut.clock)
    assert cut.store.unmet.sum() == pytest.approx(plain.store.unmet.sum(), abs=1e-9)
    assert cut.short_hours.sum() == pytest.approx(plain.short_hours.sum(), abs=1e-6)


def test_uses_that_overlap_add_up_and_may_pass_midnight() -> None:
    twice = (Interval(22, 2, 1.0), Interval(23, 1, 0.5))
    clock = store.clock_of(*twice)
    assert list(clock) == [0, 1, 2, 22, 23, 24]
    assert list(store.volumes_between(clock, twice)) == pytest.approx([1.5, 1.0, 0.0, 1.0, 1.5])
    assert storage_needed(steady(5.0), twice) == pytest.approx(5.0 - 4 * 5 / 24)


def test_a_whole_day_of_use_needs_no_storage_and_one_moment_needs_it_all() -> None:
    assert storage_needed(steady(4.0), steady(4.0)) == pytest.approx(0, abs=1e-12)
    at_once = (Interval(12, 12 + 1e-6, 4e6),)
    assert storage_needed(steady(4.0), at_once) == pytest.approx(4.0, rel=1e-6)
    assert storage_needed(steady(4.0), ()) == 0
    assert float(run_day(steady(4.0), (), 1.0).store.covered) == 1


def test_a_dark_house_counts_its_hours_without() -> None:
    """Nothing stored, a tenth of what the stove takes comes all day: it is short all the time that it burns."""
    day = run_day(steady(2.4), (Interval(6, 8, 1.0),), 0.0)
    assert day.short_hours.sum() == pytest.approx(2)
    assert float(day.store.covered) == pytest.approx(0.1)
    assert day.store.vented.sum() == pytest.approx(2.2)


def test_samples_side_by_side_are_samples_one_by_one() -> None:
    rates, supply, size = np.array([0.5, 1.0, 2.0]), np.array([3.0, 2.0, 8.0]), np.array([0.4, 1.0, 0.1])
    uses = (Interval(6, 8, rates), Interval(18, 21, 0.3))
    together = run_day(steady(supply), uses, size)
    needed = storage_needed(steady(supply), uses)
    for i in range(3):
        one = (Interval(6, 8, rates[i]), Interval(18, 21, 0.3))
        assert needed[i] == pytest.approx(storage_needed(steady(supply[i]), one))
        alone = run_day(steady(supply[i]), one, size[i])
        assert together.store.covered[i] == pytest.approx(float(alone.store.covered))
        assert together.short_hours[:, i] == pytest.approx(alone.short_hours)
    spread = run_day(steady(2.0), (Interval(6, 8, 1.0),), size)
    assert spread.store.covered[1] == pytest.approx(float(run_day(steady(2.0), (Interval(6, 8, 1.0),), 1.0).store.covered))


DAYS = st.lists(st.tuples(st.floats(0, 5), st.floats(0, 5)), min_size=1, max_size=40).map(np.array)


@given(DAYS, st.floats(0, 8), st.floats(0, 1))
def test_a_series_of_days_is_the_days_one_after_another(days: np.ndarray, storage: float, filled: float) -> None:
    run = run_store(days[:, 0], days[:, 1], storage, filled * storage)
    level = filled * storage
    for day, (supply, demand) in enumerate(days):
        assert run.unmet[day] == pytest.approx(max(0, demand - supply - level), abs=1e-9)
        level = min(max(level + supply - demand, 0), storage)
        assert run.level[day + 1] == pytest.approx(level, abs=1e-9)
    assert run.level[0] + days[:, 0].sum() == pytest.approx(run.level[-1] + run.vented.sum() + run.demand.sum() - run.unmet.sum(), abs=1e-8)


@given(DAYS)
def test_least_storage_over_days_keeps_every_day_and_a_tenth_less_does_not(days: np.ndarray) -> None:
    needed = float(storage_over_days(days[:, 0], days[:, 1]))
    assert run_store(days[:, 0], days[:, 1], needed, needed).unmet.max() <= 1e-9
    if needed > 1e-3:
        assert run_store(days[:, 0], days[:, 1], 0.9 * needed, 0.9 * needed).unmet.sum() > 0


def test_many_farms_at_once() -> None:
    supply = np.random.default_rng(3).uniform(0, 3, (30, 5))
    sizes = storage_over_days(supply, np.full((30, 1), 1.4))
    assert [storage_over_days(supply[:, i], np.full(30, 1.4)) for i in range(5)] == pytest.approx(sizes)
    assert run_store(supply, np.full((30, 1), 1.4), sizes, sizes).unmet.max() <= 1e-9


INTERVAL_DAYS, DECAY = st.floats(0.25, 60), st.floats(1e-5, 0.4)


@given(DECAY, INTERVAL_DAYS)
def test_the_swing_surrounds_its_mean(rate: float, interval: float) -> None:
    peak, trough = between.peak_over_mean(rate, interval), between.trough_over_mean(rate, interval)
    assert trough <= 1 <= peak
    times = np.linspace(0, interval, 4001)
    assert trapezoid(between.rate_since_feeding(rate, interval, times), times) / interval == pytest.approx(1, rel=1e-3)
    assert 0 <= between.storage_between_feedings(2.0, rate, interval) <= 2.0 * interval


@given(DECAY, INTERVAL_DAYS, st.floats(1.05, 4))
def test_rarer_feeding_swings_more(rate: float, interval: float, times: float) -> None:
    assert between.peak_over_mean(rate, interval * times) > between.peak_over_mean(rate, interval)
    assert between.storage_between_feedings(1.0, rate, interval * times) > between.storage_between_feedings(1.0, rate, interval)


def test_a_slow_feed_hardly_swings() -> None:
    """The series of the closed form: an eighth of x times the interval's gas; exact to rounding also where differences are tiny."""
    assert between.storage_between_feedings(1.0, 1e-5, 0.25) == pytest.approx(0.25 * 2.5e-6 / 8, rel=1e-5)
    assert between.storage_between_feedings(1.0, 0.0, 1.0) < 1e-6
    together = between.storage_between_feedings(np.array([1.0, 2.0]), np.array([0.02, 0.05]), 7.0)
    assert list(together) == pytest.approx([between.storage_between_feedings(g, k, 7.0) for g, k in ((1.0, 0.02), (2.0, 0.05))])


DOMES = st.tuples(st.floats(0.5, 5), st.floats(0.01, 0.9), st.floats(0.05, 40), st.floats(0, 1))


@given(DOMES)
def test_a_gauge_reading_gives_the_stored_gas_back(dome: tuple[float, float, float, float]) -> None:
    radius, height_share, tank, part = dome
    cap = height_share * radius
    stored = part * (hemisphere_volume(radius) - cap_volume(radius, cap)) * (1 - 1e-9)
    pressure = dome_gas_pressure(stored, radius, cap, tank, 1010.0)
    assert stored_gas_at_pressure(pressure, radius, cap, tank, 1010.0) == pytest.approx(stored, rel=1e-8, abs=1e-9)
    array = stored_gas_at_pressure(np.array([pressure, 1e9]), radius, cap, tank, 1010.0)
    assert array[0] == pytest.approx(stored, rel=1e-8, abs=1e-9)
    assert np.isnan(array[1])


@given(DOMES, st.floats(1.01, 3))
def test_pressure_rises_with_the_gas_and_falls_with_a_wider_tank(dome: tuple[float, float, float, float], wider: float) -> None:
    radius, height_share, tank, part = dome
    cap = height_share * radius
    room = hemisphere_volume(radius) - cap_volume(radius, cap)
    stored = (0.01 + 0.9 * part) * room
    assert slurry_head(stored, radius, cap, tank * wider) < slurry_head(stored, radius, cap, tank)
    assert slurry_head(stored, radius, cap, tank) < slurry_head(stored + 0.01 * room, radius, cap, tank)
    assert slurry_head(stored, radius, cap, tank) >= stored / tank


def test_a_reading_that_no_such_dome_can_show_is_refused() -> None:
    with pytest.raises(ValueError, match="all gas"):
        stored_gas_at_pressure(1e6, 1.8, 0.35, 3.0, 1000.0)
    assert stored_gas_at_pressure(0.0, 1.8, 0.35, 3.0, 1000.0) == pytest.approx(0, abs=1e-12)
