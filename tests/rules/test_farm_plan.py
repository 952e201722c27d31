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
    asked = ask("sizing", shared("structure", "herd", "dilution", "climate", "water_available", "appliances"))
    assert plan()["sizing"] == own(asked)


def test_the_first_charge_is_that_of_first_charge() -> None:
    answer = plan()
    body = shared("herd", "dilution", "climate", "water_available", "stockpile", "containers", "labour")
    body |= {"digester": digester(answer), "feed": [{"substrate": "cattle_dung"}], "digester_ready_on": "2027-02-08"}
    body |= {"full_feed_per_day": answer["sizing"]["feed_per_day"]["value"]}
    assert answer["first_charge"] == own(ask("first-charge", body))


def test_the_maintenance_feed_is_that_of_maintenance_feed() -> None:
    answer = plan()
    [full] = [row for row in answer["first_charge"]["schedule"] if row["event"] == "feed_100_per_cent"]
    body = shared("herd", "dilution", "climate", "water_available", "containers")
    body |= {"digester": digester(answer), "feeding": {"starts_on": full["date"]}}
    body |= {"feed": [{"substrate": "cattle_dung", "mass": answer["sizing"]["feed_per_day"]["value"]}]}
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
    answer = plan(structure="bag", digester={"total_volume": 10})
    assert "sizing" not in answer
    assert value(answer, "maintenance_feed.slurry_per_day") > 0


def test_a_digester_that_stands_is_of_the_kind_that_the_farm_states() -> None:
    for body in (
        {"structure": "bag", "digester": {"total_volume": 10}},
        {"structure": None, "digester": {"structure": "bag", "total_volume": 10}},
    ):
        answer = ask("farm-plan", {name: part for name, part in like(QUICK, **body).items() if part is not None})
        assumed = [one for one in answer["assumptions"] if one["quantity"] == "structure"]
        assert all(one["operations"] == ["digestate"] for one in assumed)
        assert "bag_puncture_pressure" in {one["id"] for one in answer["cautions"]}


# One feed


@pytest.mark.parametrize(
    "change",
    [
        {},
        {"people_cooked_for": 12},
        {"water_available": {"value": 40, "unit": "L/d"}},
        {"gas_demand": {"value": 0.8, "unit": "m3/d"}, "appliances": []},
    ],
)
def test_the_digester_is_fed_what_it_was_sized_for_from_the_last_step_on(change: Json) -> None:
    answer = plan(**change)
    feed = value(answer, "sizing.feed_per_day")
    assert value(answer["first_charge"]["start_up"]["ramp"][-1], "feed_per_day") == pytest.approx(feed, rel=1e-5)
    assert value(answer, "maintenance_feed.per_feeding.substrate_mass") == pytest.approx(feed, rel=1e-5)
    for name in ("hydraulic_retention_time", "organic_loading_rate"):
        assert value(answer, f"maintenance_feed.{name}") == pytest.approx(value(answer, f"sizing.{name}"), rel=0.03), name
    # A size must do in the coldest month, a year's mean is warmer.
    assert value(answer, "maintenance_feed.biogas_per_day") > value(answer, "sizing.biogas_per_day")


def test_what_is_there_is_fed_or_left_over() -> None:
    """A balance of mass: eight dairy cows give so much dung, whatever the digester takes of it."""
    whole = value(ask("maintenance-feed", shared("herd", "climate") | {"digester": {"total_volume": 40}}), "per_feeding.substrate_mass")
    answer = plan()
    left = value(answer, "left_over.mass_per_day")
    assert left > 0
    assert left + value(answer, "maintenance_feed.per_feeding.substrate_mass") == pytest.approx(whole, rel=1e-5)
    assert f"{left:.0f} kg a day" in answer["left_over"]["text"]
    assert "left_over" not in plan(appliances=[], people_cooked_for=40)


def test_a_mix_is_cut_in_proportion() -> None:
    feed = [{"substrate": "cattle_dung", "mass": 90}, {"substrate": "maize_stover", "mass": 10, "total_solids": 0.8}]
    told = plan(feed=feed, water_available=None)["maintenance_feed"]["per_feeding"]["substrates"]
    assert [one["share"]["value"] for one in told] == pytest.approx([90, 10], rel=1e-4)
    assert sum(one["mass"]["value"] for one in told) < 100


def test_a_given_digester_is_fed_what_it_bears() -> None:
    """Ten cubic metres at 24 Cel do not take the dung of eight dairy cows; the plan ends where its first charge's steps end."""
    answer = plan(structure="bag", digester={"total_volume": 10})
    ramp = answer["first_charge"]["start_up"]["ramp"]
    assert value(answer, "maintenance_feed.per_feeding.substrate_mass") == pytest.approx(value(ramp[-1], "feed_per_day"), rel=1e-5)
    assert value(answer, "left_over.mass_per_day") > 0
    assert "retention_least" not in {one["check"] for one in answer["findings"] if one["verdict"] == "fail"}


def test_the_largest_of_the_stated_demands_is_sized_for() -> None:
    """A double burner for four hours a day burns more than six people's cooking takes; ten times the people turn it round."""
    assert value(plan(), "sizing.gas_demand") == value(plan(), "gas_use.demand_per_day")
    many = ask("sizing", shared("structure", "herd", "dilution", "climate") | {"people_cooked_for": 60})
    assert value(plan(people_cooked_for=60), "sizing.gas_demand") == value(many, "gas_demand")


def test_a_batch_digester_is_not_fed_every_day() -> None:
    answer = plan(structure="batch_tank")
    left_out = {one["operation"]: one["because"] for one in answer["left_out"]}
    assert left_out.keys() == {"maintenance_feed", "gas_forecast", "gas_use", "digestate"}
    assert answer.keys().isdisjoint(left_out)
    assert all("batch-rotation" in because for because in left_out.values())
    assert {row["event"] for row in answer["calendar"]}.isdisjoint({"feed", "feed_100_per_cent"})
    assert "text/html" in questions()["farm-plan"].representations


def test_a_latrine_of_the_site_reaches_every_part() -> None:
    crops = [{"crop": "leafy_vegetables"}]
    answer = plan(site={"latrine_linked": True, "distance_to_well": 8}, crops=crops)
    assert "leafy_vegetables" in answer["digestate"]["waiting_time"]["never_on"]
    failed = {one["check"] for one in answer["findings"] if one["verdict"] == "fail"}
    assert "well_distance_least" in failed
    assert answer["safety_check"]["stop"]
    assert "leafy_vegetables" not in plan(site={"distance_to_well": 8}, crops=crops)["digestate"]["waiting_time"]["never_on"]


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
        ({"digester": {"structure": "bag", "total_volume": 10}}, "/digester/structure"),
        ({"construction": {"starts_on": "2027-02-09", "digester_ready_on": "2027-02-08"}}, "/construction/digester_ready_on"),
        ({"site": {"latrine_linked": True}, "facts": {"human_excreta_fed": False}}, "/facts/human_excreta_fed"),
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


# What a plan digs and how far it fills


def found(answer: Json) -> Json:
    return {one["check"]: one["verdict"] for one in answer["findings"]}


def test_a_store_to_be_dug_asks_for_its_walls_and_warns_even_where_the_digester_stands() -> None:
    """Without a size to work out, no part but the digestate digs: the usual store of 1.2 m and 0.3 m above it."""
    answer = plan(digester={"total_volume": 12})
    assert "excavation_collapse" in {one["id"] for one in answer["cautions"]}
    assert found(answer)["pit_walls_supported"] == "unknown"
    assert "excavation_collapse" not in {one["id"] for one in plan(digester={"total_volume": 12}, crops=[])["cautions"]}


@pytest.mark.parametrize("depth", [0.5, 3.0])
def test_a_stated_pit_does_not_hide_the_deeper_one_that_is_planned(depth: float) -> None:
    answer = plan(digester={"total_volume": 12}, site={"pit_depth": depth})
    assert found(answer)["pit_walls_supported"] == "unknown"


def test_a_planned_pressure_is_found_and_never_answers_what_the_gauge_would() -> None:
    """A full dome of the plan says nothing of air that is sucked in while gas is used: a danger that stays open."""
    answer = plan(facts={"gas_in_use": True}, people_cooked_for=60)
    assert answer["sizing"]["gas_pressure"]["when_full"]["value"] > 8
    assert found(answer)["dome_pressure_tested"] == "fail"
    assert found(answer)["no_suction_with_flame"] == "unknown"


def test_a_stated_gauge_is_no_fault_of_the_plan() -> None:
    answer = plan(facts={"gas_in_use": True, "gas_pressure": {"value": 3, "unit": "kPa"}})
    assert "no_suction_with_flame" not in found(answer)
    assert found(plan(facts={"gas_in_use": True, "gas_pressure": {"value": -1, "unit": "kPa"}}))["no_suction_with_flame"] == "fail"
