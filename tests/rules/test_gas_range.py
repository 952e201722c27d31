"""The range of the day's gas: ordered, widened by what is uncertain, closed by what is measured, bounded by growth kinetics."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, base, like, value

from kilisho.faults import RefusedError
from kilisho.formulas.gas import normal_factor
from kilisho.formulas.kinetics import chen_hashimoto_cattle_parameter, chen_hashimoto_share

FEED: Json = {
    "digester": {"structure": "fixed_dome", "total_volume": 12},
    "feed": [{"substrate": "cattle_dung", "mass": 120}],
    "dilution": {"water_to_feed_by_volume": 1},
    "climate": {"digester_temperature": 25},
}
MEASURED: Json = {
    "substrate": "cattle_dung",
    "mass": 120,
    "total_solids": 0.15,
    "volatile_solids": 0.8,
    "biogas_yield": 0.25,
    "methane_share": 0.6,
}


def gas(**changes: Any) -> Json:
    found: Json = ask("maintenance-feed", like(FEED, **changes))["biogas_per_day"]
    return found


@given(
    substrate=st.sampled_from(sorted(base().data.substrates)),
    temperature=st.floats(5, 60),
    volume=st.floats(3, 40),
    mass=st.floats(20, 300),
)
def test_every_range_is_in_order(substrate: str, temperature: float, volume: float, mass: float) -> None:
    answer = ask(
        "maintenance-feed",
        like(
            FEED,
            digester={"total_volume": volume},
            feed=[{"substrate": substrate, "mass": mass}],
            dilution=None,
            climate={"digester_temperature": temperature},
        ),
    )
    for name in ("biogas_per_day", "share_of_potential"):
        told = answer[name]
        assert 0 <= told.get("low", told["value"]) <= told["value"] <= told.get("high", told["value"]), name
    assert answer["share_of_potential"].get("high", 0) <= 100


@pytest.mark.parametrize("temperature", [12, 20, 25, 33, 45])
@pytest.mark.parametrize("yields", [0.05, 0.25, 0.6])
def test_a_measured_yield_keeps_the_range_in_order_in_warm_and_cold(temperature: float, yields: float) -> None:
    told = gas(feed=[{**MEASURED, "biogas_yield": yields}], climate={"digester_temperature": temperature})
    assert told["low"] <= told["value"] <= told["high"]


def test_what_is_measured_narrows_the_range() -> None:
    assumed, measured = gas(climate={"digester_temperature": 15}), gas(climate={"digester_temperature": 15}, feed=[MEASURED])
    assert measured["value"] == pytest.approx(assumed["value"], rel=1e-6)
    assert measured["high"] - measured["low"] < 0.8 * (assumed["high"] - assumed["low"])


def test_the_growth_kinetics_widen_the_range_upwards_and_bound_it() -> None:
    """Chen and Hashimoto's steady state with the highest usual methane potential is never passed, their typical one is reached."""
    answer = ask("maintenance-feed", FEED)
    data = base().data
    retention = value(answer, "hydraulic_retention_time")
    solids = 120 * 0.15 * 0.8
    parameter = chen_hashimoto_cattle_parameter(solids / 0.24)
    share = float(chen_hashimoto_share(25.0, retention, parameter)) / 0.6 / float(normal_factor(25.0, 101325.0))
    potential, reach = data.substrates["cattle_dung"].methane_potential, data.practice.figures["growth_model_reach"]
    high = answer["biogas_per_day"]["high"]
    promised, grown = answer["biogas_per_day"]["value"], solids * potential.typical * reach.typical * share
    assert promised + 0.7 * (grown - promised) < high < solids * potential.most * reach.most * share


def test_below_twenty_degrees_the_growth_kinetics_are_not_asked() -> None:
    """Their coefficients were fitted from 20 to 60 Cel; below, only the properties' own range counts."""
    reach = "growth_model_reach"
    warm, cold = (ask("maintenance-feed", like(FEED, climate={"digester_temperature": t})) for t in (20, 19.9))
    assert reach in {one["quantity"] for one in warm["assumptions"]}
    assert reach not in {one["quantity"] for one in cold["assumptions"]}


def test_a_measured_potential_needs_no_growth_kinetics() -> None:
    told = ask("maintenance-feed", like(FEED, feed=[{**MEASURED, "methane_potential": 0.1}]))
    assert "growth_model_reach" not in {one["quantity"] for one in told["assumptions"]}


def test_no_gas_has_no_range() -> None:
    assert gas(feed=[{**MEASURED, "methane_potential": 0}]) == {"value": 0, "unit": "m3/d"}


def test_more_gas_than_feed_is_refused() -> None:
    body = like(
        FEED,
        feed=[{"substrate": "cattle_dung", "mass": 10, "total_solids": 1, "volatile_solids": 1, "biogas_yield": 2}],
        dilution={"water_to_feed_by_volume": 0},
        climate={"digester_temperature": 35},
    )
    with pytest.raises(RefusedError) as refused:
        ask("maintenance-feed", body)
    [fault] = refused.value.faults
    assert (fault.pointer, fault.code) == ("/feed", "gas_exceeds_feed")


@given(temperature=st.floats(12, 34), warmer=st.floats(0.5, 10))
def test_a_warmer_digester_promises_no_less(temperature: float, warmer: float) -> None:
    cold, warm = (gas(climate={"digester_temperature": t}) for t in (temperature, temperature + warmer))
    assert all(warm[end] >= cold[end] for end in ("low", "value"))
