"""Charges in turn as plain arithmetic: timetables, sums over digesters and charges, even supply, the best retention."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from kilisho.formulas.gas_storage import run_store, storage_over_days
from kilisho.formulas.rotation import YEAR, Timetable, even_supply, gas_per_cycle_day, keeps_up, spare_storage, supply_of

AGES = 120
TIMETABLES = st.builds(Timetable, st.integers(1, 12), st.integers(1, AGES), st.integers(0, 20))


def curve(rate: float = 0.03, columns: int = 1) -> np.ndarray:
    """First-order gas of a charge of 1 m3 on each day, one start, (1, ages, columns)."""
    edges = np.exp(-rate * np.arange(AGES + 1.0))
    return np.repeat((edges[:-1] - edges[1:])[None, :, None], columns, axis=2)


def seasons(starts: int = 12) -> np.ndarray:
    """Charges of other seasons give other gas."""
    return curve() * (1.0 + 0.3 * np.cos(2 * np.pi * np.arange(starts) / starts))[:, None, None]


@given(timetable=TIMETABLES)
def test_first_charges_are_spread_over_one_cycle_within_a_day_of_even(timetable: Timetable) -> None:
    first = timetable.first_charges
    assert first[0] == 0
    even = np.arange(timetable.digesters) * timetable.cycle / timetable.digesters
    assert (first <= even).all()
    assert (even - first < 1).all()
    assert first[-1] < timetable.cycle


@given(timetable=TIMETABLES, cycles=st.integers(1, 3))
def test_over_whole_cycles_the_sum_over_digesters_is_the_sum_over_charges(timetable: Timetable, cycles: int) -> None:
    days = timetable.cycle * 2 + np.arange(timetable.cycle * cycles)
    supplied = supply_of(curve(), timetable, days).sum()
    charges = timetable.digesters * cycles
    assert supplied == pytest.approx(charges * curve()[0, : timetable.retention].sum(), rel=1e-12)


@given(timetable=TIMETABLES, day_of_year=st.floats(0, 365))
def test_the_sum_is_that_of_digesters_one_by_one(timetable: Timetable, day_of_year: float) -> None:
    """The same by a plain loop over digesters, charges and days."""
    curves, days, found = seasons(), np.arange(200), np.zeros(200)
    for first in timetable.first_charges:
        for start in range(first, 200, timetable.cycle):
            place = ((start + day_of_year) % YEAR) * 12 / YEAR
            before, part = int(place) % 12, place - int(place)
            own = (1 - part) * curves[before] + part * curves[(before + 1) % 12]
            for age in range(min(timetable.retention, 200 - start)):
                found[start + age] += own[age, 0]
    assert supply_of(curves, timetable, days, day_of_year)[:, 0] == pytest.approx(found, abs=1e-12)


@given(timetable=TIMETABLES)
def test_nothing_comes_before_the_first_charge_or_while_all_stand_open(timetable: Timetable) -> None:
    assert not supply_of(curve(), timetable, np.arange(-10, 0)).any()
    single = Timetable(1, timetable.retention, timetable.turn_round)
    gas = supply_of(curve(), single, np.arange(single.cycle))[:, 0]
    assert (gas > 0).sum() == single.retention


@given(timetable=TIMETABLES, day=st.integers(0, 2000), day_of_year=st.floats(0, 365))
def test_one_start_serves_the_whole_year_alike(timetable: Timetable, day: int, day_of_year: float) -> None:
    days = np.arange(day, day + 30)
    repeated = np.repeat(curve(), 12, axis=0)
    assert supply_of(repeated, timetable, days, day_of_year) == pytest.approx(supply_of(curve(), timetable, days), rel=1e-12)


@given(timetable=TIMETABLES)
def test_columns_together_are_the_columns_alone(timetable: Timetable) -> None:
    both = np.concatenate([seasons(), 2.0 * seasons()], axis=2)
    days = np.arange(365, 500)
    together = supply_of(both, timetable, days, 40.0)
    assert together[:, :1] == pytest.approx(supply_of(seasons(), timetable, days, 40.0), rel=1e-12)
    assert together[:, 1] == pytest.approx(2 * together[:, 0], rel=1e-12)


# The best retention


@given(rate=st.floats(0.005, 0.3), turn_round=st.integers(0, 30))
def test_at_the_best_retention_the_days_gas_crosses_the_mean_of_the_cycle(rate: float, turn_round: int) -> None:
    gas = curve(rate)[0]
    mean = gas_per_cycle_day(gas, turn_round)[:, 0]
    best = int(mean.argmax())
    assert gas[best, 0] >= mean[best] * (1 - 1e-12)
    if best + 1 < AGES:
        assert gas[best + 1, 0] <= mean[best] * (1 + 1e-12)


@given(rate=st.floats(0.005, 0.3), turn_round=st.integers(0, 30))
def test_a_longer_turn_round_gives_less_and_asks_for_longer_charges(rate: float, turn_round: int) -> None:
    short, long = (gas_per_cycle_day(curve(rate)[0], days)[:, 0] for days in (turn_round, turn_round + 3))
    assert long.max() < short.max()
    assert long.argmax() >= short.argmax()


def test_the_best_retention_solves_the_equation_of_first_order_gas() -> None:
    """(1 - e^-kt) / (t + d) is greatest where k (t + d) = e^kt - 1: found by scipy, within the half day that whole days leave."""
    from scipy.optimize import brentq

    for rate, turn_round in ((0.03, 3), (0.05, 5), (0.08, 2)):
        exact = brentq(lambda t, k=rate, d=turn_round: k * (t + d) - np.expm1(k * t), 0.1, 200)
        ours = int(gas_per_cycle_day(curve(rate)[0], turn_round)[:, 0].argmax()) + 1
        assert ours == pytest.approx(exact, abs=1.0)


# Demand


@given(timetable=TIMETABLES, storage=st.floats(0, 2), share=st.floats(0, 1))
def test_the_even_supply_is_met_and_a_little_more_is_not(timetable: Timetable, storage: float, share: float) -> None:
    supply = supply_of(curve(), timetable, np.arange(365, 1095))
    even = even_supply(supply, storage, share)
    assert keeps_up(supply, even, spare_storage(storage, share, even))[0]
    more = even * (1 + 1e-5) + 1e-6
    assert not keeps_up(supply, more, spare_storage(storage, share, more))[0]


@given(timetable=TIMETABLES, storage=st.floats(0, 2), demand=st.floats(0.001, 0.5))
def test_keeping_up_is_what_a_store_day_by_day_does(timetable: Timetable, storage: float, demand: float) -> None:
    supply = supply_of(curve(), timetable, np.arange(365, 1095))
    short = supply.mean() < demand
    run = run_store(supply, np.full_like(supply, demand), storage, storage)
    met = bool((run.unmet <= 1e-9 * demand).all()) and not short
    near = abs(float(storage_over_days(supply, np.full_like(supply, demand))[0]) - storage) < 1e-6
    assert near or bool(keeps_up(supply, demand, storage)[0]) == met


@given(timetable=TIMETABLES, storage=st.floats(0, 2), more=st.floats(0, 1))
def test_more_storage_never_makes_the_supply_less_even(timetable: Timetable, storage: float, more: float) -> None:
    supply = supply_of(curve(), timetable, np.arange(365, 1095))
    small, large = (even_supply(supply, size, 0.6)[0] for size in (storage, storage + more))
    assert large >= small * (1 - 1e-7)
    assert supply.min() * (1 - 1e-7) <= even_supply(supply, storage, 0.0)[0] <= supply.mean() * (1 + 1e-12)


@given(storage=st.floats(0, 10), share=st.floats(0, 2), demand=st.floats(0, 10))
def test_spare_storage_is_what_the_hours_of_a_day_leave(storage: float, share: float, demand: float) -> None:
    assert spare_storage(storage, share, demand) == max(0.0, storage - share * demand)


def test_a_rich_farm_beside_a_poor_one_keeps_its_own_supply() -> None:
    days = np.array([[3.0, 1.2], [5.0, 0.8], [4.0, 1.0]])
    assert keeps_up(days, np.array([4.0, 1.0]), 2.0).tolist() == [True, True]
    assert keeps_up(days, np.array([2.0, 1.1]), 2.0).tolist() == [True, False]
    together = even_supply(days, 0.5, 0.0)
    alone = [even_supply(days[:, [column]], 0.5, 0.0)[0] for column in (0, 1)]
    assert together == pytest.approx(alone)
    # 3 m3 on the leanest day and half a cubic metre kept; the poor farm's store carries its whole mean.
    assert together == pytest.approx([3.5, 1.0], rel=1e-5)
