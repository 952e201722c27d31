"""The farm plan over HTTP, as a farm-management app would call it: units, faults, what is missing, the same farm in other words."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import httpx
import orjson
import pytest
from tests.api.asking import ask, faults

REQUEST: dict[str, Any] = orjson.loads((Path(__file__).parents[1] / "contract" / "farm-plan.request.json").read_bytes())
QUICK = {**REQUEST, "with_forecast": False}
PARTS = ("sizing", "first_charge", "maintenance_feed", "gas_use", "digestate", "safety_check")


def plan(client: httpx.Client, **changes: Any) -> dict[str, Any]:
    body = {name: part for name, part in {**QUICK, **changes}.items() if part is not None}
    answer = ask(client, "farm-plan", body)
    assert answer.status_code == 200, answer.text
    found: dict[str, Any] = answer.json()
    return found


def amounts(value: Any) -> list[dict[str, Any]]:
    """Every number with a unit in an answer."""
    if isinstance(value, dict):
        mine = [value] if {"value", "unit"} <= value.keys() and isinstance(value["value"], int | float) else []
        return mine + [one for part in value.values() for one in amounts(part)]
    return [one for part in value for one in amounts(part)] if isinstance(value, list) else []


def test_one_call_serves_the_whole_visit(client: httpx.Client) -> None:
    answer = plan(client)
    assert [name for name in PARTS if name not in answer] == []
    assert answer["name"] == REQUEST["name"]
    assert answer["left_out"] == []
    assert len(answer["calendar"]) > 10
    assert answer["rulebook"]["hash"]


def test_every_range_holds_its_value_and_no_number_lacks_a_unit(client: httpx.Client) -> None:
    found = amounts(plan(client))
    assert len(found) > 200
    for one in found:
        assert one["unit"]
        if "low" in one:
            assert one["low"] <= one["value"] <= one["high"]


def test_the_same_farm_in_other_units_gets_the_same_plan(client: httpx.Client) -> None:
    other = {
        "climate": {"mean_air_temperature": {"value": 292.15, "unit": "K"}, "yearly_swing": {"value": 3, "unit": "K"}},
        "water_available": {"value": 0.16, "unit": "m3/d"},
        "containers": [{"name": "bucket", "volume": {"value": 0.02, "unit": "m3"}}],
    }
    usual, converted = plan(client), plan(client, **other)
    for name in ("sizing", "maintenance_feed"):
        assert converted[name] == usual[name], name


def test_more_animals_gather_sooner_and_a_larger_household_needs_no_smaller_digester(client: httpx.Client) -> None:
    many = [{**one, "count": 2 * one["count"]} for one in REQUEST["herd"]]
    usual, twice = plan(client), plan(client, herd=many)
    days = [answer["first_charge"]["stockpile"]["days_needed"]["value"] for answer in (usual, twice)]
    assert days[1] < days[0]
    sizes = [plan(client, herd=many, people_cooked_for=people)["sizing"]["total_volume"]["value"] for people in (4, 8, 12)]
    assert sizes == sorted(sizes)


@pytest.mark.parametrize(
    ("change", "pointer"),
    [
        ({"herd": [{"animal": "dairy_cow", "count": -1}]}, "/herd/0/count"),
        ({"climate": {"mean_air_temperature": {"value": 19, "unit": "degC"}}}, "/climate/mean_air_temperature/unit"),
        ({"crops": [{"crop": "maise"}]}, "/crops/0/crop"),
        ({"site": {"distance_to_well": {"value": 25, "unit": "L"}}}, "/site/distance_to_well/unit"),
        ({"appliances": [{"appliance": "double_burner_stove", "use": [{"from": "25:00", "to": "26:00"}]}]}, "/appliances/0/use/0/from"),
        ({"herds": []}, "/herds"),
        ({"construction": {"digester_ready_on": "2026-12-01"}}, "/construction/digester_ready_on"),
    ],
)
def test_faults_are_named_where_they_stand(client: httpx.Client, change: dict[str, Any], pointer: str) -> None:
    assert pointer in faults(ask(client, "farm-plan", {**QUICK, **change}))


def test_what_nobody_stated_is_unknown_and_never_safe(client: httpx.Client) -> None:
    answer = plan(client, site=None)
    assert answer["safety_check"]["verdict"] in ("unknown", "danger")
    unknown = [one for one in answer["findings"] if one["verdict"] == "unknown"]
    assert any("distance_to_well" in one["missing"] for one in unknown)
    assert all(one["missing"] for one in unknown)


def test_a_well_too_near_is_found_by_the_plan(client: httpx.Client) -> None:
    near = plan(client, site={"distance_to_well": {"value": 4, "unit": "m"}})
    failed = [one for one in near["findings"] if one["verdict"] == "fail" and one["subject"] == "distance_to_well"]
    assert failed
    assert all(one["do"] for one in failed)


def test_the_forecast_comes_when_it_is_wanted(client: httpx.Client) -> None:
    answer = ask(client, "farm-plan", REQUEST).json()
    assert sum(row.get("days", 1) for row in answer["gas_forecast"]["series"]) == 365
    assert "gas_forecast" not in plan(client)
