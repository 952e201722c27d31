"""The state of gas volumes: what it is, what altitude does to it, and that heat and mass do not change with it."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, assumed, like, value

from kilisho.formulas.digester import gas_volume_factor
from kilisho.formulas.gas import normal_factor
from kilisho.formulas.temperature import atmospheric_pressure

FARM: Json = {
    "digester": {"total_volume": 12},
    "feed": [{"substrate": "cattle_dung", "mass": 100}],
    "dilution": {"water_to_feed_by_volume": 1},
    "climate": {"digester_temperature": 24},
}
SIZED: Json = {"herd": [{"animal": "dairy_cow", "count": 6}], "climate": {"digester_temperature": 24}}


def at(height: float, operation: str = "maintenance-feed", **changes: Any) -> Json:
    body = FARM if operation == "maintenance-feed" else SIZED
    return ask(operation, like(body, climate={"digester_temperature": 24, "altitude": height}, **changes))


@pytest.mark.parametrize("operation", ["maintenance-feed", "sizing"])
def test_every_answer_with_gas_says_in_which_state(operation: str) -> None:
    state = at(0, operation)["gas_state"]
    assert value(state, "temperature") == 25
    assert value(state, "pressure") == 101.325
    assert state["moist"] is True
    assert value(state, "normal_volume") == pytest.approx(0.8876, abs=1e-4)


def test_an_altitude_that_nobody_stated_is_listed_as_assumed() -> None:
    assert ("altitude", None) in assumed(ask("maintenance-feed", FARM))
    assert ("altitude", None) not in assumed(at(0))


@given(height=st.floats(-300, 5000))
def test_normal_volume_does_not_depend_on_the_altitude(height: float) -> None:
    low, high = at(0), at(height)
    for name in ("biogas_per_day_normal", "methane_share", "share_of_potential"):
        assert value(high, name) == pytest.approx(value(low, name), rel=2e-4), name
    # The same dry gas carries more vapour off at a lower pressure: some grams of a day's hundreds of kilograms.
    assert value(high, "digestate_mass_per_day") == pytest.approx(value(low, "digestate_mass_per_day"), rel=1e-3)


@given(height=st.floats(-300, 5000))
def test_as_used_and_normal_volume_differ_by_the_factor_that_is_told(height: float) -> None:
    answer = at(height)
    assert value(answer, "biogas_per_day_normal") == pytest.approx(
        value(answer, "biogas_per_day") * value(answer, "gas_state.normal_volume"), rel=1e-4
    )


def test_gas_at_fifteen_hundred_metres_takes_a_fifth_more_room() -> None:
    """ISO 2533: 84.56 kPa at 1,500 m; of that 3.16 kPa is vapour at 25 Cel."""
    assert value(at(1500), "gas_state.pressure") == pytest.approx(84.56, abs=0.01)
    assert value(at(1500), "biogas_per_day") / value(at(0), "biogas_per_day") == pytest.approx(
        (101.325 - 3.163) / (84.556 - 3.163), rel=1e-3
    )


@given(pressure=st.floats(50_000, 110_000))
def test_the_factor_is_the_ratio_of_normal_volumes(pressure: float) -> None:
    expected = normal_factor(25.0, 101325.0) / normal_factor(25.0, pressure)
    assert gas_volume_factor(pressure) == pytest.approx(expected, rel=1e-12)
    assert (gas_volume_factor(pressure) > 1) == (pressure < 101325.0)


def test_a_household_needs_more_volume_of_thinner_gas_and_the_same_feed() -> None:
    """Demand by practice is heat: at altitude it is more volume, and the same feed covers the same part of it."""
    low, high = (at(height, "sizing", people_cooked_for=5) for height in (0, 2500))
    assert value(high, "gas_demand") > 1.3 * value(low, "gas_demand")
    assert value(high, "demand_met") == pytest.approx(value(low, "demand_met"), rel=1e-3)
    assert value(high, "total_volume") == value(low, "total_volume")


def test_a_stated_demand_is_taken_as_metered_on_the_spot() -> None:
    low, high = (at(height, "sizing", gas_demand=1.5) for height in (0, 2500))
    assert value(high, "gas_demand") == value(low, "gas_demand") == 1.5
    assert value(high, "demand_met") > value(low, "demand_met")


def test_storage_is_a_volume_on_the_spot() -> None:
    low, high = (at(height, "sizing") for height in (0, 2500))
    factor = float(gas_volume_factor(float(atmospheric_pressure(2500.0))))
    assert value(high, "gas_storage_needed") == pytest.approx(factor * value(low, "gas_storage_needed"), rel=1e-3)
