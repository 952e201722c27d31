"""Properties that the formulas keep over their whole range, on floats and on arrays."""

import inspect
import math
from collections.abc import Callable
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kilisho.formulas import ammonia, arrays, gas, geometry, kinetics, temperature
from kilisho.formulas.theoretical_yield import buswell


def between(low: float, high: float) -> st.SearchStrategy[float]:
    return st.floats(low, high, allow_nan=False)


RATES, DAYS, CELSIUS, SHARES, TANKS = between(1e-4, 0.5), between(0.1, 300), between(0, 45), between(0, 1), between(1, 50)
RADII = between(0.2, 10)


@given(RADII, between(0, 2))
def test_cap_height_undoes_cap_volume(radius: float, relative_height: float) -> None:
    height = relative_height * radius
    volume = min(geometry.cap_volume(radius, height), geometry.cap_volume(radius, 2 * radius))
    # Near the full sphere the volume hardly changes with the height, so only the volume is held to full precision there.
    found = geometry.cap_height(radius, min(volume, 4 / 3 * math.pi * radius**3))
    assert geometry.cap_volume(radius, found) == pytest.approx(volume, rel=1e-12, abs=1e-15)
    if relative_height <= 1:
        assert found == pytest.approx(height, rel=1e-12, abs=1e-15)


def test_a_hemisphere_is_the_largest_cap_of_a_dome() -> None:
    assert geometry.cap_height(1.8, geometry.hemisphere_volume(1.8)) == pytest.approx(1.8, rel=1e-14)
    assert geometry.cap_height(1.8, 0.0) == 0.0


def test_a_cap_larger_than_its_sphere_is_refused() -> None:
    with pytest.raises(ValueError, match=r"domain|expected"):
        geometry.cap_height(1.0, 5.0)


@given(between(0, 100))
def test_hemisphere_radius_undoes_hemisphere_volume(volume: float) -> None:
    assert geometry.hemisphere_volume(geometry.hemisphere_radius(volume)) == pytest.approx(volume, rel=1e-12, abs=1e-15)


@given(between(0.1, 100), between(0.2, 5))
def test_cylinder_radius_undoes_cylinder_volume(volume: float, slenderness: float) -> None:
    radius = geometry.cylinder_radius(volume, slenderness)
    assert geometry.cylinder_volume(radius, 2 * radius * slenderness) == pytest.approx(volume, rel=1e-12)
    assert geometry.cone_volume(radius, 2 * radius * slenderness) == pytest.approx(volume / 3, rel=1e-12)


@given(RADII, SHARES)
def test_tube_fill_height_undoes_tube_segment_area(radius: float, share: float) -> None:
    level = geometry.tube_fill_height(radius, share)
    assert 0 <= level <= 2 * radius
    assert geometry.tube_segment_area(radius, level) / (math.pi * radius**2) == pytest.approx(share, abs=1e-12)


@given(RADII, between(0, 1))
def test_a_slice_from_the_rim_to_the_pole_is_a_cap(radius: float, relative_height: float) -> None:
    height = relative_height * radius
    rim = math.sqrt(2 * radius * height - height**2)
    assert geometry.spherical_segment_volume(rim, 0.0, height) == pytest.approx(geometry.cap_volume(radius, height), rel=1e-9, abs=1e-12)


@given(RATES, CELSIUS, between(0.1, 10))
def test_a_warmer_digester_is_faster(rate: float, celsius: float, warmer: float) -> None:
    corrected = kinetics.temperature_corrected_rate
    assert corrected(rate, celsius + warmer) > corrected(rate, celsius)
    assert corrected(rate, 20.0) == rate


@given(RATES, DAYS, between(1, 60), TANKS)
def test_longer_retention_gives_more_and_shares_stay_shares(rate: float, days: float, longer: float, tanks: float) -> None:
    for share in (lambda d: kinetics.mixed_share(rate, d, tanks), lambda d: kinetics.batch_share(rate, d)):
        assert 0 < share(days) <= share(days + longer) <= 1


@given(RATES, DAYS, TANKS)
def test_tanks_in_series_lie_between_stirred_tank_and_plug_flow(rate: float, days: float, tanks: float) -> None:
    stirred, plug = kinetics.mixed_share(rate, days, 1.0), kinetics.batch_share(rate, days)
    assert stirred - 1e-12 <= kinetics.mixed_share(rate, days, tanks) <= plug + 1e-12


def test_very_many_tanks_are_plug_flow() -> None:
    assert kinetics.mixed_share(0.05, 30.0, 1e7) == pytest.approx(kinetics.batch_share(0.05, 30.0), rel=1e-6)


@given(between(0, 60), between(0, 200), between(0.5, 3))
def test_chen_hashimoto_is_a_share_that_grows_with_retention(celsius: float, days: float, parameter: float) -> None:
    share = kinetics.chen_hashimoto_share(celsius, days, parameter)
    assert 0 <= share < 1
    assert share <= kinetics.chen_hashimoto_share(celsius, days + 1, parameter)
    if days * kinetics.greatest_growth_rate(celsius) <= 1:
        assert share == 0


@given(between(0, 100), between(0.1, 20))
def test_thicker_feed_never_lowers_the_kinetic_parameter(concentration: float, more: float) -> None:
    for parameter in (kinetics.chen_hashimoto_cattle_parameter, kinetics.chen_hashimoto_swine_parameter):
        assert parameter(concentration + more) > parameter(concentration) > 0.6


@given(between(0.01, 1), between(1e-4, 0.2), between(0, 200), between(0, 400), between(0, 50))
def test_gompertz_rises_from_nothing_to_the_potential(potential: float, rate: float, lag: float, days: float, later: float) -> None:
    early, late = kinetics.gompertz(potential, rate, lag, days), kinetics.gompertz(potential, rate, lag, days + later)
    assert 0 <= early <= late <= potential


def test_gompertz_without_lag_starts_at_a_fifteenth() -> None:
    assert kinetics.gompertz(1.0, 0.05, 0.0, 0.0) == pytest.approx(math.exp(-math.e))


@given(between(-5, 30), between(0, 15), between(0, 10), between(0, 365), between(0, 365), between(0.02, 0.08))
def test_ground_stays_within_the_swing_of_its_depth(  # noqa: PLR0917
    mean: float, swing: float, depth: float, day: float, coldest: float, alpha: float
) -> None:
    ground = temperature.ground_temperature(mean, swing, depth, day, coldest, alpha)
    assert abs(ground - mean) <= temperature.seasonal_amplitude_at_depth(swing, depth, alpha) + 1e-9
    assert ground == pytest.approx(temperature.ground_temperature(mean, swing, depth, day + 365, coldest, alpha), abs=1e-9)


def test_the_surface_is_coldest_on_its_coldest_day() -> None:
    assert temperature.ground_temperature(20.0, 8.0, 0.0, 20.0, 20.0, 0.05) == pytest.approx(12.0)


@given(CELSIUS, between(0.1, 5), between(60_000, 120_000))
def test_warmer_or_thinner_gas_holds_less(celsius: float, warmer: float, pascal: float) -> None:
    assert gas.normal_factor(celsius + warmer, pascal) < gas.normal_factor(celsius, pascal) < gas.normal_factor(celsius, pascal + 1000)
    assert gas.normal_volume(3.0, celsius, pascal) == pytest.approx(3 * gas.normal_factor(celsius, pascal))


@given(between(0.01, 0.99), between(0.001, 0.01))
def test_more_methane_is_lighter_hotter_and_explodes_leaner(share: float, more: float) -> None:
    richer = share + more
    assert gas.relative_density(richer) < gas.relative_density(share)
    assert gas.heating_value_lower(richer) > gas.heating_value_lower(share)
    assert gas.lower_explosive_limit(richer) < gas.lower_explosive_limit(share)


@given(SHARES, between(0, 40))
def test_water_vapour_makes_gas_lighter(share: float, celsius: float) -> None:
    """Not so for pure methane, which is lighter than water vapour."""
    moist, dry = gas.moist_biogas_density(share, celsius, 101325.0), gas.biogas_density(share, celsius, 101325.0)
    assert (moist < dry) == (gas.molar_mass(share) / gas.compression_factor(share, celsius, 101325.0) > 0.0180153) or abs(
        moist / dry - 1
    ) < 1e-4


@given(between(0, 9000), between(1, 500))
def test_pressure_falls_with_altitude(altitude: float, higher: float) -> None:
    assert temperature.atmospheric_pressure(altitude + higher) < temperature.atmospheric_pressure(altitude) <= 101325


@given(between(5, 10), CELSIUS, between(0.05, 1))
def test_free_ammonia_grows_with_alkalinity_and_warmth(ph: float, celsius: float, step: float) -> None:
    share = ammonia.free_ammonia_share(ph, celsius)
    assert 0 < share < 1
    assert ammonia.free_ammonia_share(ph + step, celsius) > share
    assert ammonia.free_ammonia_share(ph, celsius + step) > share
    assert ammonia.total_ammonia(2.0, share) == pytest.approx(2 * share)


def test_at_the_acidity_constant_half_of_the_ammonia_is_free() -> None:
    assert ammonia.free_ammonia_share(ammonia.ammonia_pka(30.0), 30.0) == pytest.approx(0.5)


@given(between(1, 60), between(0, 120), between(0, 30))
def test_carbon_is_conserved(carbon: float, hydrogen: float, oxygen: float) -> None:
    got = buswell(carbon, hydrogen, oxygen)
    assert got.methane + got.carbon_dioxide == pytest.approx(carbon)


SCALARS_IN_RANGE = {
    "radius": 1.8, "height": 0.7, "volume": 2.0, "cap_volume": 2.0, "height_to_diameter": 0.8, "fill_height": 0.9, "area_share": 0.75,
    "lower_radius": 1.2, "upper_radius": 0.7, "degradation_rate": 0.009, "digester_temperature": 24.0, "rate": 0.02,
    "retention": 60.0, "tanks_in_series": 2.0, "time": 30.0, "potential": 0.3, "greatest_rate": 0.015, "lag": 3.0,
    "hydraulic_retention_time": 40.0, "kinetic_parameter": 0.9, "volatile_solids_concentration": 60.0, "mean": 20.0,
    "swing_half_range": 8.0, "depth": 1.5, "day": 100.0, "coldest_day": 20.0, "diffusivity": 0.05, "temperature": 28.0,
    "altitude": 1500.0, "absolute_pressure": 90000.0, "pressure": 90000.0, "methane_share": 0.6, "slurry_ph": 7.5,
    "nitrogen_concentration": 3.0, "ammonium_share": 0.6, "heating_value": 21.0, "relative_density": 0.94,
}  # fmt: skip
FORMULAS = [
    function
    for module in (ammonia, gas, geometry, kinetics, temperature)
    for name, function in inspect.getmembers(module, inspect.isfunction)
    if function.__module__ == module.__name__ and not name.startswith("_")
]


@pytest.mark.parametrize("formula", FORMULAS, ids=lambda formula: formula.__name__)
@given(stretch=st.lists(between(0.9, 1.1), min_size=1, max_size=4))
@settings(max_examples=25)
def test_an_array_gives_what_its_floats_give(formula: Callable[..., Any], stretch: list[float]) -> None:
    names = list(inspect.signature(formula).parameters)
    singly = [formula(**{name: SCALARS_IN_RANGE[name] * factor for name in names}) for factor in stretch]
    together = formula(**{name: SCALARS_IN_RANGE[name] * np.array(stretch) for name in names})
    assert all(isinstance(value, float) for value in singly)
    assert together.shape == (len(stretch),)
    np.testing.assert_allclose(together, singly, rtol=1e-12)


@pytest.mark.parametrize("formula", FORMULAS, ids=lambda formula: formula.__name__)
def test_every_formula_states_units(formula: Callable[..., Any]) -> None:
    """The docstring contract: a summary, and a unit in square brackets for what goes in and what comes out."""
    assert (formula.__doc__ or "").count("[") >= 2, formula.__name__


@given(between(-700, 700), between(-700, 700))
def test_shared_functions_agree_on_floats_and_arrays(first: float, second: float) -> None:
    for function in (arrays.exp, arrays.sin, arrays.cos, arrays.cbrt):
        assert function(np.array([first]))[0] == pytest.approx(function(first), rel=1e-12, abs=1e-300)
    for function in (arrays.log, arrays.sqrt):
        assert function(np.array([abs(first) + 1]))[0] == pytest.approx(function(abs(first) + 1), rel=1e-14)
    for pair in (arrays.least, arrays.most, arrays.copysign):
        assert pair(np.array([first]), second)[0] == pair(first, second)
    assert arrays.clip(first, -1.0, 1.0) == arrays.clip(np.array([first]), -1.0, 1.0)[0] == min(max(first, -1), 1)
