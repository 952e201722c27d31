"""The gas forecast as a caller gets it, against handbook yields, a measured digester, and what the trade knows of seasons and starts."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from tests.rules.conftest import Json, ask, value

PLAN_DAYS = 700


def long_run(temperature: float, retention: float, **feed: Any) -> Json:
    """A stirred digester of 6 m3 that has long been fed cattle dung of 16 % total solids, 80 % of it volatile, with its volume of water."""
    dung = 1000 * 6.0 / retention / 2
    item = {"substrate": "cattle_dung", "mass": dung, "total_solids": 0.16, "volatile_solids": 0.8, "bulk_density": 1000, **feed}
    return ask(
        "gas-forecast",
        {
            "digester": {"total_volume": 9, "working_volume": 6},
            "maintenance_feed": [{"from": "2027-01-01", "feed": [item], "water": dung}],
            "climate": {"digester_temperature": temperature},
            "days": PLAN_DAYS,
            "interval": "month",
        },
    )


@pytest.mark.parametrize(("temperature", "retention", "litres"), [(20, 30, 15), (33, 100, 54)])
def test_handbook_yields_of_fresh_dung(temperature: float, retention: float, litres: float) -> None:
    """Sasse 1988, section 4 (read): litres of gas from a kilogram of fresh cattle dung. The rate was fitted to these two points.

    The pack's ultimate yield is that of Werner's design figure, 3 % below the 70 L/kg of the fit: so is the steady formula. The forecast
    lies up to 6 % below at 20 Cel and 30 d, where acids run out with the slurry before the few methanogens have eaten them.
    """
    answer = long_run(temperature, retention)
    dung = 6000 / retention / 2
    last = np.mean([row["gas"]["value"] for row in answer["series"][-6:]])
    assert 1000 * value(answer, "steady_gas") / dung == pytest.approx(0.968 * litres, rel=0.01)
    assert 0.94 * litres < 1000 * last / dung < 1.01 * litres


def test_design_yield_of_the_sample_calculation() -> None:
    """Werner et al. 1989, page 38 (read): 12 kg of volatile solids a day in 15 m3 at 25 Cel and 60 d are designed to give 3.0 m3."""
    item = {"substrate": "cattle_dung", "mass": 150, "total_solids": 0.12, "volatile_solids": 12 / 18, "bulk_density": 1000}
    answer = ask(
        "gas-forecast",
        {
            "digester": {"total_volume": 22.5, "working_volume": 15},
            "maintenance_feed": [{"from": "2027-01-01", "feed": [item], "water": 100}],
            "climate": {"digester_temperature": 25},
            "days": PLAN_DAYS,
            "interval": "month",
        },
    )
    assert value(answer, "hydraulic_retention_time") == pytest.approx(60)
    assert value(answer, "steady_gas") == pytest.approx(3.0, rel=0.01)
    assert answer["series"][-1]["gas"]["value"] == pytest.approx(3.0, rel=0.02)


def test_a_measured_dome_of_dairy_manure_gave_more_than_the_range_promises() -> None:
    """Castaño et al. 2014 (read): 0.168 m3 of methane per kilogram of volatile solids, normal, at 20 to 28 Cel and about 25 d, unheated.

    The typical forecast promises half of it and the high end two thirds. The handbooks' rate is that of fresh dung in simple plants, and
    the pack's methane potential is that of cattle on farm fodder; this manure came from dairy cows on concentrate (potential 0.24 and
    more). Chen and Hashimoto's kinetics with that potential give 0.19. Nothing was fitted to it.
    """
    answer = long_run(24, 25)
    solids = 6000 / 25 / 2 * 0.16 * 0.8
    methane = [answer["series"][-1]["methane"][end] / solids for end in ("low", "value", "high")]
    assert methane[0] < 0.168
    assert methane[1] == pytest.approx(0.08, abs=0.015)
    assert 0.6 * 0.168 < methane[2] < 0.168


@pytest.mark.parametrize(("temperature", "least", "most"), [(27.5, 2, 14), (17.5, 4, 40)])
def test_a_charge_of_cattle_dung_burns_within_the_times_of_practice(temperature: float, least: float, most: float) -> None:
    """From memory: 7 to 14 d at 25 to 30 Cel and 20 to 40 d at 15 to 20 Cel; a handbook (Biogas Digest 2, read) has 1 to 2 d at best.

    The model's nine in ten lie before practice's latest day. It starts sooner than practice: it counts no filling and venting of the store.
    """
    charge = {"on": "2027-01-01", "feed": [{"substrate": "cattle_dung"}]}
    climate = {"digester_temperature": temperature}
    answer = ask(
        "gas-forecast", {"digester": {"total_volume": 9}, "first_charge": charge, "climate": climate, "days": 90, "interval": "week"}
    )
    first = answer["first_burnable_gas_day"]
    assert least <= first["value"] <= first["high"] <= most


def test_the_cold_half_of_the_year_gives_less_gas_and_later_than_the_cold_itself() -> None:
    """Common practice, no source: size for the cold season. The ground lags behind the air, and the gas behind the ground."""
    months = [22, 22, 20, 17, 13, 10, 10, 12, 15, 18, 20, 21]
    feed = [{"substrate": "cattle_dung", "mass": 80}]
    plan = {"from": "2027-01-01", "feed": feed, "water": 80}
    body = {"digester": {"total_volume": 12}, "maintenance_feed": [plan], "climate": {"monthly_air_temperature": {"values": months}}}
    answer = ask("gas-forecast", {**body, "days": 730, "interval": "month"})
    second = answer["series"][12:]
    gas = [row["gas"]["value"] for row in second]
    assert gas.index(min(gas)) in (6, 7, 8)
    assert min(gas) < 0.75 * max(gas)
    failed = {one["check"] for one in answer["findings"] if one["verdict"] == "fail"}
    assert "cold_season" in failed or "temperature_cool" in failed
