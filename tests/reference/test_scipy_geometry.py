"""scipy as an outside check of the bodies' volumes, their inverses and the first-order digesters. General library.

Tolerances are those of the quadrature and of the root finder (1e-12 on the root), or of the integrator (1e-8).
"""

import math

import pytest
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq
from scipy.stats import gamma
from tests.reference.record import check

from kilisho.formulas import geometry, kinetics

QUAD = "scipy.integrate.quad (general library)"
ROOT = "scipy.optimize.brentq (general library)"
ODE = "scipy.integrate.solve_ivp (general library)"
RADIUS = 1.8


def slice_area(height: float) -> float:
    return math.pi * (2 * RADIUS * height - height**2)


def chord(height: float) -> float:
    return 2 * math.sqrt(2 * RADIUS * height - height**2)


@pytest.mark.parametrize("height", [0.05, 0.35, 1.2, 1.8])
def test_cap(height: float) -> None:
    check(f"cap {height:g} m high, R 1.8 m", float(geometry.cap_volume(RADIUS, height)), quad(slice_area, 0, height)[0], 1e-12, "m3", QUAD)


@pytest.mark.parametrize("volume", [1e-6, 0.648, 2.248, 12.0])
def test_height_of_a_cap(volume: float) -> None:
    root = brentq(lambda height: math.pi * height**2 * (RADIUS - height / 3) - volume, 0, RADIUS, xtol=1e-15, rtol=1e-14)
    check(f"height of a cap of {volume:g} m3, R 1.8 m", float(geometry.cap_height(RADIUS, volume)), root, 1e-12, "m", ROOT)


def test_slice_of_a_sphere() -> None:
    low, high = 0.4, 1.1
    rims = [math.sqrt(slice_area(height) / math.pi) for height in (low, high)]
    ours = geometry.spherical_segment_volume(rims[1], rims[0], high - low)
    check("slice of a sphere, R 1.8 m, 0.4 to 1.1 m", float(ours), quad(slice_area, low, high)[0], 1e-12, "m3", QUAD)


@pytest.mark.parametrize("level", [0.1, 1.0, 1.8, 3.0])
def test_lying_tube(level: float) -> None:
    check(
        f"wetted section of a tube, R 1.8 m, {level:g} m",
        float(geometry.tube_segment_area(RADIUS, level)),
        quad(chord, 0, level)[0],
        1e-9,
        "m2",
        QUAD,
    )


@pytest.mark.parametrize("share", [0.01, 0.5, 0.75, 0.99])
def test_level_in_a_lying_tube(share: float) -> None:
    angle = brentq(lambda a: a - math.sin(a) - 2 * math.pi * share, 0, 2 * math.pi, xtol=1e-15, rtol=1e-14)
    expected = RADIUS * (1 - math.cos(angle / 2))
    check(f"level in a tube filled to {share:g}, R 1.8 m", float(geometry.tube_fill_height(RADIUS, share)), expected, 1e-12, "m", ROOT)


def test_batch_by_integration() -> None:
    left = solve_ivp(lambda _t, left: -0.05 * left, (0, 30), [1.0], rtol=1e-11, atol=1e-13).y[0, -1]
    check("batch share, 0.05 1/d, 30 d", float(kinetics.batch_share(0.05, 30.0)), 1 - left, 1e-8, "1", ODE)


def test_stirred_tank_by_integration() -> None:
    left = solve_ivp(lambda _t, left: (1 - left) / 30 - 0.05 * left, (0, 600), [1.0], rtol=1e-11, atol=1e-13).y[0, -1]
    check("stirred tank, 0.05 1/d, 30 d", float(kinetics.mixed_share(0.05, 30.0, 1.0)), 1 - left, 1e-8, "1", ODE)


@pytest.mark.parametrize("tanks", [1.0, 2.5, 4.0])
def test_tanks_in_series_by_residence_times(tanks: float) -> None:
    """Each parcel digests as a batch for its own residence time, which is gamma distributed: holds for broken numbers of tanks too."""
    ages = gamma(tanks, scale=60.0 / tanks)
    expected = quad(lambda age: ages.pdf(age) * (1 - math.exp(-0.0149 * age)), 0, 3000, limit=400, points=[1, 30, 60, 200])[0]
    check(f"{tanks:g} tanks in series, 0.0149 1/d, 60 d", float(kinetics.mixed_share(0.0149, 60.0, tanks)), expected, 1e-7, "1", QUAD)


def test_gompertz_means_what_its_parameters_say() -> None:
    """The steepest slope is the rate, and the tangent there meets the time axis at the lag (Zwietering et al. 1990, definition)."""

    def slope(time: float) -> float:
        return (float(kinetics.gompertz(0.3, 0.015, 3.0, time + 1e-4)) - float(kinetics.gompertz(0.3, 0.015, 3.0, time - 1e-4))) / 2e-4

    steepest = brentq(lambda time: slope(time + 0.01) - slope(time - 0.01), 3, 30)
    source = "Zwietering et al. 1990, definitions (recalled, to be confirmed)"
    check("steepest slope of the Gompertz curve", slope(steepest), 0.015, 1e-5, "m3/kg/d", source)
    at_axis = steepest - float(kinetics.gompertz(0.3, 0.015, 3.0, steepest)) / slope(steepest)
    check("lag read from the tangent", at_axis, 3.0, 1e-4, "d", source)
