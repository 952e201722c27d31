"""The pipe's formulas: what scales how, where the flow turns, and one number against an array."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from kilisho.formulas import gas_pipe
from kilisho.formulas.gas import moist_biogas_viscosity
from kilisho.ranges import SAMPLES, Uncertain, about, about_each, applied, certain, columns, sampled, split, sum_of

DENSITY, VISCOSITY = 1.1, 1.3e-5
FLOWS, BORES = st.floats(0, 50), st.floats(0.01, 0.2)


def drop(flow: Any, bore: Any = 0.021, length: Any = 30.0, roughness: Any = 1.5e-4) -> Any:
    return gas_pipe.pressure_drop(flow, length, bore, roughness, DENSITY, VISCOSITY)


def reynolds(flow: float, bore: float = 0.021) -> float:
    return float(gas_pipe.reynolds_number(gas_pipe.mean_velocity(flow, bore), bore, DENSITY, VISCOSITY))


def test_no_flow_loses_nothing() -> None:
    assert drop(0.0) == 0.0
    assert drop(1.0, length=0.0) == 0.0


@given(FLOWS, st.floats(1, 10))
def test_the_drop_grows_with_the_flow_and_in_proportion_to_the_length(flow: float, times: float) -> None:
    assert drop(flow * times) >= drop(flow)
    assert drop(flow, length=30.0 * times) == pytest.approx(times * drop(flow))


@given(FLOWS, BORES, st.floats(1, 5))
def test_a_wider_pipe_loses_no_more(flow: float, bore: float, times: float) -> None:
    assert drop(flow, bore * times) <= drop(flow, bore)


@given(st.floats(0.001, 0.9), BORES)
def test_laminar_flow_follows_the_fourth_power_of_the_bore(part: float, bore: float) -> None:
    flow = part * gas_pipe.LAMINAR * VISCOSITY / DENSITY * np.pi * bore / 4 * 3600
    assert reynolds(flow, bore) == pytest.approx(part * gas_pipe.LAMINAR)
    assert drop(flow, bore) == pytest.approx(128 * VISCOSITY * 30.0 * flow / 3600 / (np.pi * bore**4))
    assert drop(flow, bore, roughness=0.0) == drop(flow, bore)


def test_the_drop_leaps_where_flow_turns_turbulent() -> None:
    turn = gas_pipe.LAMINAR / reynolds(1.0)
    below, above = drop(turn * (1 - 1e-9)), drop(turn * (1 + 1e-9))
    assert 1.6 < above / below < 2.0
    smooth = drop(turn * (1 + 1e-9), roughness=0.0)
    assert smooth < above


@given(st.floats(2300, 1e7), st.floats(0, 0.05), st.floats(0, 0.05))
def test_rougher_walls_hinder_more(number: float, first: float, second: float) -> None:
    smooth, rough = sorted((first, second))
    assert gas_pipe.turbulent_friction_factor(number, smooth) <= gas_pipe.turbulent_friction_factor(number, rough)


@given(st.lists(FLOWS, min_size=2, max_size=5), BORES)
def test_an_array_gives_what_single_numbers_give(flows: list[float], bore: float) -> None:
    assert drop(np.array(flows), bore).tolist() == pytest.approx([drop(flow, bore) for flow in flows])


@given(st.integers(0, 30), BORES)
def test_each_fitting_counts_for_some_diameters_of_pipe(fittings: int, bore: float) -> None:
    assert gas_pipe.length_with_fittings(10.0, float(fittings), 30.0, bore) == pytest.approx(10 + fittings * 30 * bore)


@given(st.floats(0.3, 0.8), st.floats(0, 45))
def test_gas_with_more_methane_is_thinner_and_warm_gas_thicker(methane: float, temperature: float) -> None:
    here = moist_biogas_viscosity(methane, temperature, 101325.0)
    assert moist_biogas_viscosity(methane + 0.1, temperature, 101325.0) < here < moist_biogas_viscosity(methane, temperature + 5, 101325.0)
    assert 1.0e-5 < here < 1.5e-5


# Columns: the typical value and the samples in one run

UNSURE = Uncertain(2.0, sampled("a", 1.0, 2.0, 4.0))


def test_columns_hold_the_value_and_then_its_samples() -> None:
    found = columns(UNSURE)
    assert isinstance(found, np.ndarray)
    assert found.shape == (SAMPLES + 1,)
    assert found[0] == 2.0
    assert split(found).told == UNSURE.told
    assert columns(certain(3.0)) == 3.0
    assert split(3.0) == certain(3.0)


def test_a_formula_runs_on_values_and_samples_alike() -> None:
    twice = applied(lambda one, other: one * other, UNSURE, certain(3.0))
    assert twice.told == UNSURE.times(3.0).told
    assert applied(lambda one: one + 1, certain(2.0)) == certain(3.0)


def test_sums() -> None:
    assert sum_of([]) == certain(0.0)
    assert sum_of([UNSURE, certain(1.0), UNSURE]).told == pytest.approx(UNSURE.times(2.0).plus(certain(1.0)).told)


@given(st.lists(st.floats(-10, 10), min_size=1, max_size=4))
def test_rows_are_told_as_single_values_are(shifts: list[float]) -> None:
    rows = np.stack([columns(UNSURE) + shift for shift in shifts])
    assert about_each(rows) == [about(2.0 + shift, UNSURE.samples + shift) for shift in shifts]
    assert about_each(np.array(shifts)) == [(shift,) for shift in shifts]
    assert about_each(np.full((2, SAMPLES + 1), 7.0)) == [(7.0,), (7.0,)]
