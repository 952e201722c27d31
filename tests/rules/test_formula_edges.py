"""Edges of the formulas: where a range ends, what is refused, and what is documented of single numbers against arrays."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
import pytest

from kilisho.formulas import arrays

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
