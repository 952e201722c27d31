"""Edges of the formulas: where a range ends, what is refused, and what is documented of single numbers against arrays."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
import pytest

from kilisho.formulas import arrays, kinetics
from kilisho.formulas.dome_pressure import dome_gas_pressure, stored_gas_at_pressure
from kilisho.formulas.gas_storage import Interval, hours_of, run_day, run_store, steady, storage_needed
from kilisho.formulas.geometry import cap_volume
from kilisho.formulas.theoretical_yield import buswell

Function = Callable[[arrays.Numeric], arrays.Numeric]


@pytest.mark.parametrize(
    ("function", "argument", "expected"),
    [
        (arrays.exp, 1.0, math.e),
        (arrays.log, math.e, 1.0),
        (arrays.expm1, 1.0, math.e - 1),
        (arrays.log1p, math.e - 1, 1.0),
        (arrays.sqrt, 2.25, 1.5),
        (arrays.cbrt, -3.375, -1.5),
        (arrays.sin, math.pi / 6, 0.5),
        (arrays.cos, math.pi / 3, 0.5),
        (arrays.asin, 0.5, math.pi / 6),
    ],
)
def test_known_values_and_a_plain_float_for_a_float(function: Function, argument: float, expected: float) -> None:
    # A ufunc would give a numpy scalar, ten times as slowly.
    assert type(function(argument)) is float
    assert function(argument) == pytest.approx(expected, rel=1e-14)
    assert function(np.array([argument, argument])) == pytest.approx([expected, expected], rel=1e-14)


@pytest.mark.parametrize(("function", "argument"), [(arrays.log, 0.0), (arrays.sqrt, -1.0), (arrays.log1p, -1.0), (arrays.asin, 1.5)])
def test_a_number_outside_is_refused(function: Function, argument: float) -> None:
    with pytest.raises(ValueError, match=r"domain|expected"):
        function(argument)


@pytest.mark.parametrize("function", [arrays.exp, arrays.expm1])
def test_a_float_that_is_too_large_is_refused_and_an_array_s_becomes_infinite(function: Function) -> None:
    with pytest.raises(OverflowError):
        function(710.0)
    with np.errstate(over="ignore"):
        assert np.isposinf(function(np.array([710.0]))).all()


def test_small_values_lose_nothing() -> None:
    # exp(x) - 1 and log(1 + x) begin with x.
    for small in (1e-20, -1e-20):
        assert arrays.expm1(small) == arrays.log1p(small) == small
        assert arrays.expm1(np.array([small]))[0] == arrays.log1p(np.array([small]))[0] == small


@pytest.mark.parametrize(("first", "second"), [(1.5, -2.0), (-2.0, 1.5), (3.0, 3.0)])
def test_pairs_of_floats_stay_floats_and_mixed_pairs_become_arrays(first: float, second: float) -> None:
    for pair, expected in ((arrays.least, min), (arrays.most, max), (arrays.copysign, math.copysign)):
        assert type(pair(first, second)) is float
        assert pair(first, second) == expected(first, second)
        for left, right in ((np.array([first]), second), (first, np.array([second])), (np.array([first]), np.array([second]))):
            assert pair(left, right).tolist() == [expected(first, second)]


def test_what_nobody_knows_stays_unknown_in_arrays() -> None:
    for pair in (arrays.least, arrays.most):
        assert np.isnan(pair(np.array([math.nan]), 1.0)).all()


def test_choosing_goes_element_by_element() -> None:
    assert arrays.choose(True, 1.0, 2.0) == 1.0
    assert arrays.choose(False, 1.0, 2.0) == 2.0
    assert arrays.choose(np.array([True, False]), 1.0, np.array([2.0, 3.0])).tolist() == [1.0, 3.0]
    assert arrays.clip(np.array([-2.0, 0.5, 7.0]), -1.0, np.array([1.0, 1.0, 3.0])).tolist() == [-1.0, 0.5, 3.0]


def test_a_nearly_full_dome_over_a_narrow_tank_gives_its_gas_back() -> None:
    radius, cap, tank = 2.0, 0.2, 1.0
    for share in (0.05, 0.5, 0.95, 1.0):
        gas = share * (cap_volume(radius, radius) - cap_volume(radius, cap))
        pressure = dome_gas_pressure(gas, radius, cap, tank, 1000.0)
        assert stored_gas_at_pressure(pressure, radius, cap, tank, 1000.0) == pytest.approx(gas, rel=1e-12)
    with pytest.raises(ValueError, match="beyond"):
        stored_gas_at_pressure(pressure * 1.0001, radius, cap, tank, 1000.0)


def test_a_small_surplus_is_carried_over_midnight() -> None:
    # 2 m3 a day round the clock, 1.6 m3 burnt from 6 to 8, a store of 1.5: full at 6, then 0.067 is left and by midnight 1.4.
    day = run_day(steady(2.0), [Interval(6.0, 8.0, 0.8)], 1.5)
    assert day.clock.tolist() == [0.0, 6.0, 8.0, 24.0]
    assert day.store.level == pytest.approx([1.4, 1.5, 1.5 + 1 / 6 - 1.6, 1.4])
    assert day.store.vented == pytest.approx([0.4, 0.0, 0.0])
    assert day.store.covered == pytest.approx(1.0)
    assert day.short_hours.tolist() == [0.0, 0.0, 0.0]


def test_a_short_day_begins_with_what_the_evening_left() -> None:
    # 1.2 m3 a day, 1.6 m3 wanted from 6 to 8: 0.8 m3 since 8 and 0.3 since midnight, then 0.1 while burning; 0.4 are missing, half an hour.
    day = run_day(steady(1.2), [Interval(6.0, 8.0, 0.8)], 1.5)
    assert day.store.level == pytest.approx([0.8, 1.1, 0.0, 0.8])
    assert day.store.unmet == pytest.approx([0.0, 0.4, 0.0])
    assert day.store.covered == pytest.approx(0.75)
    # While the store is empty 0.05 of the 0.8 m3/h still come.
    assert day.short_hours == pytest.approx([0.0, 0.4 / 0.75, 0.0])


def test_a_whole_number_of_storage_is_a_number_like_any_other() -> None:
    net = np.array([0.5, -0.7, 0.9, -1.6, 0.3, 0.4])
    whole, exact = (run_store(np.maximum(net, 0), np.maximum(-net, 0), storage, 1) for storage in (1, 1.0))
    assert whole.level.tolist() == exact.level.tolist()
    assert exact.level == pytest.approx([1.0, 1.0, 0.3, 1.0, 0.0, 0.3, 0.7])


def test_hours_pass_midnight_and_the_same_hour_is_a_whole_day() -> None:
    assert [hours_of(Interval(start, end, 1.0)) for start, end in ((6, 8), (22, 2), (0, 24), (7, 7))] == [2.0, 4.0, 24.0, 24.0]
    # A lamp from 22 to 2 burns as long as one from 2 to 6 and needs the same store.
    assert storage_needed(steady(0.48), [Interval(22.0, 2.0, 0.12)]) == pytest.approx(0.4)
    assert storage_needed(steady(0.48), [Interval(2.0, 6.0, 0.12)]) == pytest.approx(0.4)


@pytest.mark.parametrize(("solids", "cattle", "pig"), [(20.0, 0.8053, 0.6571), (60.0, 0.8586, 1.0393), (80.0, 0.9944, 1.8185)])
def test_the_kinetic_parameter_of_manures(solids: float, cattle: float, pig: float) -> None:
    # Hashimoto 1982 and 1984, their equations (from memory) worked by hand.
    assert kinetics.chen_hashimoto_cattle_parameter(solids) == pytest.approx(cattle, rel=1e-4)
    assert kinetics.chen_hashimoto_swine_parameter(solids) == pytest.approx(pig, rel=1e-4)


def test_ten_kelvin_make_dung_decay_two_to_four_times_as_fast() -> None:
    # The rule of van 't Hoff; Safley and Westerman 1992 give 1.105 a kelvin, 2.7 times (from memory).
    assert kinetics.temperature_corrected_rate(0.01, 30.0) == pytest.approx(0.01 * 1.105**10, rel=0.01)


def test_what_is_methane_already_takes_its_molar_volume() -> None:
    # Real molar volumes at 0 Cel and 101.325 kPa: 22.360 L of methane and 22.26 L of carbon dioxide (ISO 6976 and tables, from memory).
    methane = buswell(1.0, 4.0, 0.0)
    assert (methane.methane, methane.carbon_dioxide, methane.water_taken_up) == (1.0, 0.0, 0.0)
    assert methane.methane_yield_normal == pytest.approx(22.360 / 16.043, rel=3e-4)
    # Formic acid: four molecules give one of methane and three of carbon dioxide.
    formic = buswell(1.0, 2.0, 2.0)
    assert (formic.methane, formic.carbon_dioxide) == (0.25, 0.75)
    assert formic.carbon_dioxide_yield_normal == pytest.approx(0.75 * 22.26 / 46.025, rel=5e-4)
