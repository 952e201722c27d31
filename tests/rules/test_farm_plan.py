"""The farm plan: every part to the last digit what its own operation answers, one calendar, and nothing safe for want of facts."""

from __future__ import annotations

import datetime as dt
from typing import Any

import pytest
from tests.rules.conftest import Json, ask, like, numbers, questions, value

from kilisho.faults import RefusedError

FARM: Json = questions()["farm-plan"].example
QUICK: Json = {**FARM, "with_forecast": False}
SHARED = ("assumptions", "findings", "cautions", "measure_first", "rulebook", "language", "name")


def plan(**changes: Any) -> Json:
    return ask("farm-plan", like(QUICK, **changes))


def own(answer: Json) -> Json:
    return {name: part for name, part in answer.items() if name not in SHARED}


def shared(*names: str) -> Json:
    return {name: FARM[name] for name in names if name in FARM}


def digester(answer: Json) -> Json:
    return {"structure": FARM["structure"], "total_volume": answer["sizing"]["total_volume"]}


# Each part is what its operation answers


def test_the_size_is_that_of_sizing() -> None:
    asked = ask("sizing", shared("structure", "herd", "dilution", "climate", "water_available", "people_cooked_for"))
    assert plan()["sizing"] == own(asked)


def test_the_first_charge_is_that_of_first_charge() -> None:
    answer = plan()
    body = shared("herd", "dilution", "climate", "water_available", "stockpile", "containers", "labour")
    body |= {"digester": digester(answer), "feed": [{"substrate": "cattle_dung"}], "digester_ready_on": "2027-02-08"}
    assert answer["first_charge"] == own(ask("first-charge", body))


def test_the_maintenance_feed_is_that_of_maintenance_feed() -> None:
    answer = plan()
    [full] = [row for row in answer["first_charge"]["schedule"] if row["event"] == "feed_100_per_cent"]
    body = shared("herd", "dilution", "climate", "water_available", "containers")
    body |= {"digester": digester(answer), "feeding": {"starts_on": full["date"]}}
    assert answer["maintenance_feed"] == own(ask("maintenance-feed", body))


def test_the_use_of_the_gas_is_that_of_gas_use() -> None:
    answer = plan()
    gas, storage = answer["maintenance_feed"]["biogas_per_day"], answer["sizing"]["gas_storage_volume"]
    body = shared("appliances", "climate")
    body |= {"biogas_per_day": gas["value"], "gas_storage_volume": storage["value"]}
    assert answer["gas_use"] == own(ask("gas-use", body))


def test_the_digestate_is_that_of_digestate() -> None:
    answer = plan()
    fed = answer["maintenance_feed"]
    feed = [{"substrate": one["substrate"], "mass": one["mass"]["value"]} for one in fed["per_feeding"]["substrates"]]
    body = shared("climate", "crops", "containers") | {"feed": feed, "hydraulic_retention_time": fed["hydraulic_retention_time"]["value"]}
    body |= {name: {"value": fed[f"{name}_per_day"]["value"], "unit": "L/d"} for name in ("water", "urine")}
    asked = own(ask("digestate", body))
    assert answer["digestate"] == asked


def test_the_forecast_is_that_of_gas_forecast() -> None:
    answer = ask("farm-plan", FARM)
    charge, fed = answer["first_charge"], answer["maintenance_feed"]
    steps = [row["date"] for row in charge["schedule"] if row["event"].startswith("feed_")]
    mass, water = fed["per_feeding"]["substrate_mass"]["value"], fed["per_feeding"]["water_volume"]["value"]
    plans = [
        {
            "from": day,
            "feed": [{"substrate": "cattle_dung", "mass": mass * (i + 1) / 4}],
            "water": {"value": water * (i + 1) / 4, "unit": "L"},
        }
        for i, day in enumerate(steps)
    ]
    first = {"on": "2027-02-08", "feed": [{"substrate": "cattle_dung", "mass": charge["substrate_mass"]["value"]}]}
    first["water"] = {"value": charge["water_volume"]["value"], "unit": "m3"}
    body = {"digester": digester(answer), "first_charge": first, "maintenance_feed": plans, "climate": FARM["climate"], "interval": "month"}
    asked = own(ask("gas-forecast", body))
    told = dict(numbers(answer["gas_forecast"]))
    for path, number in numbers(asked):
        assert told[path] == pytest.approx(number, rel=1e-6, abs=1e-6), path


def test_the_safety_check_knows_what_the_parts_found_and_what_is_stated() -> None:
    answer = plan(site={"distance_to_well": 3})
    failed = {one["check"] for one in answer["findings"] if one["verdict"] == "fail"}
    assert any("well" in check for check in failed)
    assert answer["safety_check"]["verdict"] in ("danger", "unknown")
    missing = {name for one in answer["findings"] for name in one.get("missing", ())}
    assert "total_volume" not in missing
    assert "structure_kind" not in missing


def test_a_herd_too_small_for_its_gas_is_told_so_and_not_that_it_cannot_give_the_feed() -> None:
    """The plan feeds what the herd gives, so what is fed is covered however little gas it makes."""
    answer = ask("farm-plan", {"herd": [{"animal": "dairy_cow", "count": 3}], "people_cooked_for": 8, "with_forecast": False})
    verdicts = {one["check"]: one["verdict"] for one in answer["findings"]}
    assert verdicts["feed_covers_demand"] == "fail"
    assert "herd_covers_feed" not in verdicts


# The whole


def test_the_calendar_runs_by_date_and_holds_every_event_of_the_parts() -> None:
    calendar = plan()["calendar"]
    dates = [row["date"] for row in calendar]
    assert dates == sorted(dates)
    assert {row["operation"] for row in calendar} == {"first_charge", "maintenance_feed"}
    events = [row["event"] for row in calendar]
    assert events.index("fill") < events.index("flame_test") < events.index("feed_100_per_cent") <= events.index("feed")
    for row in calendar:
        dt.date.fromisoformat(row["date"])


def test_each_finding_caution_and_assumption_is_told_once() -> None:
    answer = plan()
    checks = [one["check"] for one in answer["findings"]]
    assert len(checks) == len(set(checks))
    cautions = [one["id"] for one in answer["cautions"]]
    assert len(cautions) == len(set(cautions))
    assumed = [(one["quantity"], one.get("of"), one.get("curve"), one.get("value"), one.get("choice")) for one in answer["assumptions"]]
    assert len(assumed) == len(set(assumed))
    assert all(one["operations"] for one in answer["assumptions"])


def test_what_makes_a_failure_in_one_part_is_not_hidden_by_another() -> None:
    answer = plan(water_available=20)
    failed = {one["check"] for one in answer["findings"] if one["verdict"] == "fail"}
    alone = ask("first-charge", {"digester": digester(answer), "feed": [{"substrate": "cattle_dung"}], "water_available": 20})
    own_failures = {one["check"] for one in alone["findings"] if one["verdict"] == "fail" and one["topic"] == "water"}
    assert own_failures
    assert own_failures <= failed


@pytest.mark.parametrize(
    ("change", "operation"),
    [
        ({"crops": []}, "digestate"),
        ({"appliances": [], "people_cooked_for": None}, "gas_use"),
        ({"with_forecast": True, "construction": None}, "gas_forecast"),
        ({"digester": {"total_volume": 12, "age": 900}}, "first_charge"),
    ],
)
def test_what_is_left_out_says_why(change: Json, operation: str) -> None:
    answer = plan(**change)
    assert operation not in answer
    assert operation in {one["operation"] for one in answer["left_out"]}
    assert all(len(one["because"]) > 10 for one in answer["left_out"])


def test_a_digester_that_stands_is_not_sized_again() -> None:
    answer = plan(digester={"structure": "bag", "total_volume": 10})
    assert "sizing" not in answer
    assert value(answer, "maintenance_feed.slurry_per_day") > 0


def test_without_dates_the_days_remain() -> None:
    answer = plan(construction=None, stockpile=None)
    assert answer["calendar"]
    assert all("date" not in row for row in answer["calendar"])


def test_measured_solids_reach_every_part() -> None:
    feed = [{"substrate": "cattle_dung", "total_solids": 0.12}]
    answer = plan(feed=feed)
    assert value(answer, "first_charge.slurry_total_solids") == pytest.approx(6.0, abs=0.3)
    assert "low" not in answer["maintenance_feed"]["slurry_total_solids"] or value(answer, "maintenance_feed.slurry_total_solids") < 6.5
    listed = {(one["quantity"], one.get("of")) for one in answer["assumptions"]}
    assert ("total_solids", "cattle_dung") not in listed


@pytest.mark.parametrize(
    ("change", "pointer"),
    [
        ({"climate": {"monthly_air_temperature": {"values": [200] * 12}}}, "/climate/monthly_air_temperature/values/0"),
        ({"herd": [{"animal": "unicorn", "count": 2}]}, "/herd/0/animal"),
        ({"dilution": {"water_to_feed_by_volume": 1, "target_total_solids": 0.08}}, "/dilution"),
    ],
)
def test_faults_of_the_farm_are_refused_where_they_stand(change: Json, pointer: str) -> None:
    with pytest.raises(RefusedError) as refused:
        plan(**change)
    assert pointer in {fault.pointer for fault in refused.value.faults}


def test_a_farm_of_nothing_is_told_what_is_missing() -> None:
    answer = ask("farm-plan", {"name": "Empty Acre (invented)"})
    assert answer["calendar"] == []
    assert {one["operation"] for one in answer["left_out"]} >= {"sizing"}


def test_explaining_shows_the_steps_of_every_part() -> None:
    answer = ask("farm-plan", QUICK, explain=True)
    assert {step["operation"] for step in answer["derivation"]} >= {"sizing", "first_charge", "maintenance_feed"}
