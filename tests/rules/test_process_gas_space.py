"""The gas over the slurry: air washed out, methane gathered, and the day from which it burns."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import solve_ivp
from tests.rules.process_cases import PARAMETERS, cattle, charge, healthy, run_of

from kilisho.process import Conditions, History, Run, simulate, working_slurry
from kilisho.process.headspace import RELIABLE, WEAK, first_burnable_day, gas_space

DAYS, VOLUME = 60, 6.0


def first_charge(temperature: float = 25.0, starter: float = 0.0, days: int = DAYS, volume: float = VOLUME) -> Run:
    """A first charge of cattle dung, part of it slurry of a working digester."""
    start = working_slurry(starter * volume, PARAMETERS) if starter else None
    return run_of(charge(days, volume * (1 - starter)), temperature, start, volume=volume, substeps=4)


CHARGED = first_charge()


@given(space=st.floats(0.2, 30))
def test_methane_and_air_are_parts_of_one_whole(space: float) -> None:
    gas = gas_space(CHARGED, space)
    assert (gas.methane >= 0).all()
    assert (gas.air >= 0).all()
    assert (gas.methane + gas.air <= 1 + 1e-12).all()


@given(space=st.floats(0.2, 30))
def test_air_only_leaves(space: float) -> None:
    air = gas_space(CHARGED, space).air[:, 0]
    assert (np.diff(air) <= 1e-15).all()
    assert air[-1] == pytest.approx(np.exp(-CHARGED.biogas.sum() / space), rel=1e-9)


def test_the_mixing_is_that_of_the_differential_equation() -> None:
    """d(share)/dt = gas rate over space times (share made less share held), solved by scipy's Radau."""
    space, made = 2.0, np.nan_to_num(CHARGED.methane_share[:, 0])
    gas = CHARGED.biogas[:, 0]

    def change(time: float, held: np.ndarray) -> np.ndarray:
        day = min(int(time), DAYS - 1)
        return gas[day] / space * (made[day] - held)

    held = np.zeros(1)
    for day in range(DAYS):
        held = solve_ivp(change, (day, day + 1 - 1e-9), held, "Radau", rtol=1e-9, atol=1e-12).y[:, -1]
        assert gas_space(CHARGED, space).methane[day, 0] == pytest.approx(held[0], abs=1e-6)


@given(space=st.floats(0.3, 10), more=st.floats(1.05, 4))
def test_a_larger_space_burns_later(space: float, more: float) -> None:
    small, large = (first_burnable_day(CHARGED, size)[0] for size in (space, space * more))
    assert large >= small


@given(space=st.floats(0.3, 10))
def test_a_weak_flame_comes_no_later_than_a_reliable_one(space: float) -> None:
    assert first_burnable_day(CHARGED, space, WEAK)[0] <= first_burnable_day(CHARGED, space, RELIABLE)[0]


@given(space=st.floats(0.3, 10), threshold=st.floats(0.05, 0.55))
def test_the_day_lies_where_the_threshold_is_crossed(space: float, threshold: float) -> None:
    day, methane = first_burnable_day(CHARGED, space, threshold)[0], gas_space(CHARGED, space).methane[:, 0]
    if np.isinf(day):
        assert (methane < threshold).all()
    else:
        assert methane[int(np.ceil(day)) - 1 if day > 0 else 0] >= threshold or methane[min(int(day), DAYS - 1)] >= threshold
        assert (methane[: int(day)] < threshold).all()


def test_starter_slurry_brings_the_flame_forward() -> None:
    alone, helped = (first_burnable_day(first_charge(20.0, share), 2.0)[0] for share in (0.0, 0.2))
    assert helped < alone


def test_warmth_brings_the_flame_forward() -> None:
    days = [first_burnable_day(first_charge(temperature), 2.0)[0] for temperature in (15.0, 20.0, 25.0, 30.0)]
    assert days == sorted(days, reverse=True)


def test_twice_the_digester_with_twice_the_space_burns_on_the_same_day() -> None:
    double = first_charge(volume=2 * VOLUME)
    assert first_burnable_day(double, 4.0)[0] == pytest.approx(first_burnable_day(CHARGED, 2.0)[0], rel=1e-9)


def test_farms_together_are_the_farms_alone() -> None:
    temperatures = (18.0, 28.0)
    solids, slurry = charge(DAYS, VOLUME)
    history = History(cattle(), np.repeat(solids, 2, axis=2), np.repeat(slurry, 2, axis=1))
    together = simulate(history, Conditions(VOLUME, np.tile(temperatures, (DAYS, 1))), PARAMETERS, 4)
    alone = [first_burnable_day(first_charge(temperature), 2.0)[0] for temperature in temperatures]
    assert first_burnable_day(together, 2.0) == pytest.approx(alone, rel=1e-9)


def test_without_gas_there_is_never_a_flame() -> None:
    empty = run_of((np.zeros((10, 1, 1)), np.zeros((10, 1))))
    assert np.isinf(first_burnable_day(empty, 1.0)).all()
    assert (gas_space(empty, 1.0).air == 1).all()


def test_a_working_digester_that_is_opened_burns_again_within_days() -> None:
    solids, slurry = charge(DAYS, 0.1)
    again = run_of((solids + 0.0, slurry + 0.0), 25.0, healthy(VOLUME - 0.1), substeps=4)
    assert first_burnable_day(again, 0.5)[0] < DAYS
