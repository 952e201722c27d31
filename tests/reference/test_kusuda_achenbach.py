"""Kusuda, T., Achenbach, P. R. 1965: yearly wave of the ground temperature.

The form is standard (as printed in two soil-physics texts); the figures are checked by solving the heat equation itself with scipy: the
complex amplitude of a yearly wave obeys ``alpha u'' = i omega u`` with u = 1 at the surface and 0 deep below. Tolerance 0.1 % for the
amplitude is the mesh's; temperatures are compared to 0.02 % of their value. The surface is 20 Cel with a half range of 10 K, coldest on
day 20; diffusivity 0.05 m2/d.
"""

import datetime as dt
import math
from collections.abc import Callable
from typing import TypeAlias

import numpy as np
import numpy.typing as npt
import pytest
from scipy.integrate import solve_bvp
from tests.reference.record import check

from kilisho.formulas.temperature import damping_depth, ground_temperature, seasonal_amplitude_at_depth
from kilisho.questions.climate import Ground, days_of_year

Array: TypeAlias = npt.NDArray[np.float64]
Amplitude: TypeAlias = Callable[[float], complex]
SCIPY = "scipy.integrate, heat equation in the ground (general library)"
ALPHA, MEAN, HALF_RANGE, COLDEST, DEEP = 0.05, 20.0, 10.0, 20.0, 30.0
OMEGA = 2 * math.pi / 365


@pytest.fixture(scope="module")
def amplitude() -> Amplitude:
    def change(_depth: Array, state: Array) -> Array:
        real, imaginary, real_slope, imaginary_slope = state
        return np.vstack([real_slope, imaginary_slope, -OMEGA / ALPHA * imaginary, OMEGA / ALPHA * real])

    def ends(top: Array, bottom: Array) -> Array:
        return np.array([top[0] - 1, top[1], bottom[0], bottom[1]])

    mesh = np.linspace(0, DEEP, 400)
    solution = solve_bvp(change, ends, mesh, np.zeros((4, mesh.size)), tol=1e-7, max_nodes=20000)
    assert solution.success
    return lambda depth: complex(*solution.sol(depth)[:2])


@pytest.mark.parametrize("depth", [0.5, 1.0, 2.0, 3.0])
def test_amplitude(amplitude: Amplitude, depth: float) -> None:
    ours = seasonal_amplitude_at_depth(HALF_RANGE, depth, ALPHA)
    check(f"half range at {depth:g} m", float(ours), HALF_RANGE * abs(amplitude(depth)), 0.001, "K", SCIPY)


@pytest.mark.parametrize(("depth", "day"), [(1.0, 15.0), (1.0, 200.0), (2.0, 105.0), (2.0, 200.0), (3.0, 330.0)])
def test_temperature(amplitude: Amplitude, depth: float, day: float) -> None:
    wave = amplitude(depth) * np.exp(1j * OMEGA * (day - COLDEST))
    ours = ground_temperature(MEAN, HALF_RANGE, depth, day, COLDEST, ALPHA)
    check(f"ground at {depth:g} m on day {day:g}", float(ours), MEAN - HALF_RANGE * wave.real, 0.0002, "Cel", SCIPY)


def test_damping_depth_of_loam() -> None:
    """Half of the last printed digit of the usual textbook figure, about 2 to 3 m for the yearly wave in loam."""
    ours = seasonal_amplitude_at_depth(1.0, damping_depth(0.06), 0.06)
    check(
        "swing left at the damping depth",
        float(ours),
        0.3679,
        0.0002,
        "1",
        "Hillel 1982, definition of the damping depth (recalled, to be confirmed)",
    )


@pytest.mark.parametrize(
    ("depth", "day", "published"), [(1, 15, 14.21), (1, 105, 16.70), (1, 200, 25.92), (2, 15, 17.34), (2, 105, 16.48), (2, 200, 22.80)]
)
def test_worked_values(depth: float, day: float, published: float) -> None:
    """Half of the last digit of values worked by hand with the published form."""
    ours = ground_temperature(MEAN, HALF_RANGE, depth, day, COLDEST, ALPHA)
    check(f"ground at {depth} m on day {day}", float(ours), published, 0.005 / published, "Cel", "worked by hand with the published form")


@pytest.mark.parametrize("depth", [0.5, 1.5])
def test_daily_series_of_a_slurry(amplitude: Amplitude, depth: float) -> None:
    """A year of a digester 1.5 K above its soil: extremes, their days and the sum of warmth, against the heat equation."""
    days = days_of_year(dt.date(2027, 1, 1), 365)
    ours = np.asarray(Ground(MEAN, 1.5, HALF_RANGE, depth, ALPHA, COLDEST).at(days))
    solved = MEAN + 1.5 - HALF_RANGE * (amplitude(depth) * np.exp(1j * OMEGA * (days - COLDEST))).real
    assert np.abs(ours - solved).max() < 0.005
    for what, pick in (("coldest", np.argmin), ("warmest", np.argmax)):
        found, expected = int(pick(ours)), int(pick(solved))
        check(f"slurry on its {what} day, {depth:g} m", float(ours[found]), float(solved[expected]), 0.0002, "Cel", SCIPY)
        assert abs(found - expected) <= 1
    warmth = float(np.maximum(ours - 20, 0).sum()), float(np.maximum(solved - 20, 0).sum())
    check(f"degree days above 20 Cel in a year, {depth:g} m", *warmth, 0.001, "K d", SCIPY)


def test_the_ground_lags_behind_the_air() -> None:
    """24.1 days a metre in this soil, as the published form's own lag; a day is the series' step."""
    days = np.arange(1.0, 366.0)
    for depth, lag in ((0.0, 0.0), (1.0, 24.1), (2.0, 48.2), (3.0, 72.3)):
        coldest = days[np.argmin(Ground(MEAN, 0.0, HALF_RANGE, depth, ALPHA, COLDEST).at(days))]
        assert coldest - COLDEST == pytest.approx(lag, abs=0.51)
