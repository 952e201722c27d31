"""One installation's record: what the verdict says of farms that an officer would know at sight, and what the answer shows of its work."""

from __future__ import annotations

import datetime as dt
import json
from typing import Any

import pytest
from tests.rules.conftest import FIRST_CHARGE, Json, ask, assert_sound, assumed, base, findings, like, questions, value
from tests.rules.fleets import NAME, ROW, asked, fleet, one, request_of, row, single, table

from kilisho.faults import RefusedError
from kilisho.questions.installation.request import EXAMPLE


def verdict(answer: Json) -> tuple[str, ...]:
    aspects = answer["aspects"]
    return answer["verdict"], aspects["record"], aspects["size"], aspects["feeding"], aspects["gas"], aspects["safety"]


def failed(answer: Json) -> set[str]:
    return {name for name, end in findings(answer).items() if end == "fail"}


# Farms that an officer would know


def test_a_dome_in_order_is_open_in_its_dangers_and_nothing_else() -> None:
    answer = single()
    assert verdict(answer) == ("unknown", "possible", "fitting", "fitting", "inside", "open")
    assert failed(answer) <= {"feeding_daily"}


STORIES: list[tuple[str, Json, str, str]] = [
    ("eight kilograms a day in nine cubic metres", {"feed_mass": 8.0, "water_volume": 8.0, "biogas_measured": 0.3}, "feeding", "starved"),
    (
        "three times the feed that it bears",
        {"feed_mass": 200.0, "water_volume": 200.0, "animal_count": 16, "biogas_measured": 2.0},
        "feeding",
        "overfed",
    ),
    ("four volumes of water", {"water_volume": 160.0}, "feeding", "too_wet"),
    ("next to no water", {"water_volume": 4.0}, "feeding", "too_dry"),
    ("fed once in ten days", {"feeding_interval": 10.0}, "feeding", "too_seldom"),
    ("one cow for nine cubic metres", {"animal_count": 1, "feed_mass": 30.0, "water_volume": 30.0}, "size", "too_large"),
    ("fourteen cows for nine cubic metres", {"animal_count": 14}, "size", "too_small"),
    ("a third of the gas", {"biogas_measured": 0.4}, "gas", "below"),
    ("a little less than the range", {"biogas_measured": 0.9}, "gas", "low"),
    ("a little more than the range", {"biogas_measured": 1.9}, "gas", "above"),
    ("nobody measured", {"biogas_measured": None}, "gas", "not_measured"),
    ("no water known, gas in the middle", {"water_volume": None}, "gas", "inside"),
    ("no herd", {"animal": None, "animal_count": None}, "size", "unknown"),
    ("no climate", {"mean_air_temperature": None}, "size", "unknown"),
    ("ten times the gas", {"biogas_measured": 12.0}, "record", "doubtful"),
    ("litres for cubic metres", {"total_volume": 9000.0}, "record", "doubtful"),
    ("a smell of gas", {"gas_smell_indoors": True}, "safety", "danger"),
    ("people's excreta a few steps from the well", {"substrate": "human_excreta", "distance_to_well": 6.0}, "safety", "danger"),
]


@pytest.mark.parametrize(("story", "changes", "aspect", "word"), STORIES, ids=[one[0] for one in STORIES])
def test_an_officer_s_word(story: str, changes: Json, aspect: str, word: str) -> None:
    answer = single(**changes)
    assert_sound(NAME, answer)
    assert answer["aspects"][aspect] == word
    if word not in ("unknown", "inside", "low", "above", "not_measured"):
        assert answer["verdict"] == {"danger": "danger", "doubtful": "doubtful"}.get(word, "faulty")


def test_thin_slurry_does_not_pass_for_feed() -> None:
    """Much water shortens the retention as much feed does; the farm is starved all the same."""
    answer = single(feed_mass=12.0, water_volume=70.0, animal_count=2, biogas_measured=0.3)
    assert answer["aspects"]["feeding"] == "starved"
    assert {"fed_share_least", "slurry_total_solids_least"} <= failed(answer)


def test_a_danger_that_is_stated_and_in_order_is_no_longer_open() -> None:
    assert "gas_smell_indoors" in single()["unanswered"]
    assert "gas_smell_indoors" not in single(gas_smell_indoors=False)["unanswered"]
    assert single(gas_smell_indoors=False)["aspects"]["safety"] == "open"


def test_a_sour_digester_is_told_as_the_rulebook_tells_it() -> None:
    assert {"ph_least", "ph_usual"} <= failed(single(ph=6.3))
    assert single(ph=6.3)["verdict"] == "attention"


@pytest.mark.parametrize(("pressure", "expected"), [(11_000.0, {"dome_pressure_tested", "dome_pressure_most"}), (4_000.0, set())])
def test_pressure_is_held_against_the_kind_of_digester(pressure: float, expected: set[str]) -> None:
    assert {name for name in failed(single(gas_pressure=pressure)) if name.startswith("dome")} == expected


AIR = {"carbon_monoxide_in_room_air": 80.0, "methane_in_room_air": 0.45, "hydrogen_sulfide_in_breathed_air": 9.0}
HARMFUL = {
    "carbon_monoxide_half_hour",
    "carbon_monoxide_hour",
    "carbon_monoxide_eight_hours",
    "methane_in_room_air_much",
    "methane_in_room_air_leak",
    "hydrogen_sulfide_air_short",
    "hydrogen_sulfide_air_day",
}


def test_air_that_harms_below_the_stop_is_found_in_a_record_and_in_a_column() -> None:
    """80 ppm of carbon monoxide, 0.45 % of methane and 9 ppm of hydrogen sulphide, in the units of the facts; the record is invented."""
    assert failed(single(**AIR)) - failed(single()) == HARMFUL
    assert set(one(**AIR)["failed"]) >= HARMFUL
    assert not set(one(**dict.fromkeys(AIR, 0.0))["failed"]) & HARMFUL


def test_suction_is_a_danger_while_gas_is_in_use() -> None:
    assert single(gas_pressure=-100.0, gas_in_use=True)["verdict"] == "danger"
    assert "no_suction_with_flame" not in failed(single(gas_pressure=-100.0))


def test_a_batch_tank_is_not_judged_by_its_feed() -> None:
    answer = single(structure="batch_tank")
    assert verdict(answer)[1:5] == ("possible", "unknown", "unknown", "unknown")
    assert "expected" not in answer


def test_nothing_fed_is_starved_and_not_impossible() -> None:
    answer = single(feed_mass=0.0, water_volume=0.0, biogas_measured=0.0)
    assert (answer["aspects"]["record"], answer["aspects"]["feeding"]) == ("possible", "starved")
    assert value(answer, "expected") == 0.0
    assert "gas_ratio" not in answer
    assert_sound(NAME, answer)


# Age


@pytest.mark.parametrize(("days", "gas"), [(20, "unknown"), (900, "below")])
def test_a_young_digester_s_gas_is_not_judged(days: int, gas: str) -> None:
    visited = dt.date(2026, 5, 1)
    answer = single(biogas_measured=0.3, commissioned_on=visited - dt.timedelta(days=days), visited_on=visited)
    assert answer["aspects"]["gas"] == gas
    assert value(answer, "gas_ratio") < 0.3
    assert ("running_steadily" in failed(answer)) == (days == 20)


def test_a_visit_before_the_commissioning_is_a_doubtful_record() -> None:
    answer = single(commissioned_on=dt.date(2026, 5, 1), visited_on=dt.date(2026, 4, 1))
    assert "visited_after_commissioning" in failed(answer)
    assert answer["verdict"] == "doubtful"


def test_one_date_alone_says_nothing() -> None:
    assert failed(single(visited_on=dt.date(2026, 4, 1))) == failed(single())


# What is shown


def test_the_gas_is_expected_measured_and_held_against_each_other() -> None:
    answer = single()
    assert value(answer, "measured") == ROW["biogas_measured"]
    assert value(answer, "gas_ratio") == pytest.approx(value(answer, "measured") / value(answer, "expected"), abs=1e-5)
    ratio, expected = answer["gas_ratio"], answer["expected"]
    assert ratio["low"] == pytest.approx(1.2 / expected["high"], abs=1e-5)
    assert ratio["high"] == pytest.approx(1.2 / expected["low"], abs=1e-5)
    assert answer["gas_state"]["moist"] is True


def test_the_same_gas_is_expected_as_of_a_diagnosis() -> None:
    diagnosis = ask(
        "diagnosis",
        {
            "readings": {"biogas_per_day": 1.2},
            "digester": {"structure": "fixed_dome", "total_volume": 9},
            "feed": [{"substrate": "cattle_dung", "mass": 40}],
            "water": 40,
            "climate": {"mean_air_temperature": 22},
        },
    )["gas"]
    answer = single()
    assert value(answer, "expected") == pytest.approx(value(diagnosis, "expected"), rel=1e-5)
    assert value(answer, "gas_ratio") == pytest.approx(value(diagnosis, "gas_ratio"), rel=1e-4)
    assert answer["aspects"]["gas"] == diagnosis["verdict"] == "inside"


def test_the_process_is_that_of_a_maintenance_feed() -> None:
    plan = ask(
        "maintenance-feed",
        {
            "digester": {"structure": "fixed_dome", "total_volume": 9},
            "feed": [{"substrate": "cattle_dung", "mass": 40}],
            "dilution": {"water_to_feed_by_volume": 1},
            "climate": {"mean_air_temperature": 22},
        },
    )
    answer = single()
    for name in ("hydraulic_retention_time", "organic_loading_rate", "slurry_total_solids"):
        assert value(answer, f"worked_out.{name}") == pytest.approx(value(plan, name), rel=1e-5)


def test_a_finding_says_what_is_asked_of_what_and_what_to_do() -> None:
    [found] = [one for one in single(feed_mass=8.0)["findings"] if one["check"] == "fed_share_least"]
    assert found["finds"] == "starved"
    assert found["subject"] == "fed_share_of_design"
    assert found["must"] == {"at_least": 50.0, "unit": "%"}
    assert found["value"]["unit"] == "%"
    assert found["value"]["value"] < 50
    assert found["severity"] == "warning"
    assert found["why"]
    assert found["do"]


def test_an_unknown_finding_names_what_is_missing_and_finds_nothing() -> None:
    [found] = [one for one in single(feeding_interval=None)["findings"] if one["check"] == "feeding_weekly"]
    assert (found["verdict"], found["missing"]) == ("unknown", ["feeding_interval"])
    assert "finds" not in found


@pytest.mark.parametrize(
    ("changes", "expected"),
    [
        ({}, {("soil_offset", None), ("housing", None), ("altitude", None), ("fill_share", "fixed_dome"), ("dung_per_day", "dairy_cow")}),
        ({"water_volume": None}, {("water_to_feed_by_volume", "cattle_dung")}),
        ({"substrate": None}, {("substrate", None)}),
        ({"mean_air_temperature": None}, {("digester_temperature", None)}),
        ({"gas_storage_volume": 1.8}, {("gas_storage_share", "fixed_dome")}),
        ({}, {("total_solids", "cattle_dung"), ("biogas_yield", "cattle_dung"), ("degradation_rate", "cattle_dung")}),
    ],
)
def test_what_was_assumed_is_listed(changes: Json, expected: set[tuple[str, str | None]]) -> None:
    assert expected <= assumed(single(**changes))


@pytest.mark.parametrize(
    ("changes", "absent"),
    [
        ({"altitude": 900.0}, "altitude"),
        ({"housing": "stall"}, "housing"),
        ({"digester_temperature": 24.0}, "soil_offset"),
        ({"feed_mass": None}, "biogas_yield"),
        ({"animal": None, "animal_count": None}, "dung_per_day"),
    ],
)
def test_what_was_stated_or_is_not_needed_is_not_assumed(changes: Json, absent: str) -> None:
    assert absent not in {quantity for quantity, _ in assumed(single(**changes))}


def test_no_figure_is_listed_that_the_answer_does_not_hang_on() -> None:
    listed = {quantity for quantity, of in assumed(single()) if of == "cattle_dung"}
    assert listed == {
        "total_solids",
        "volatile_solids_share",
        "bulk_density",
        "biogas_yield",
        "degradation_rate",
        "methane_share",
        "methane_potential",
    }


def test_cautions_of_structure_and_feed_come_with_it() -> None:
    named = {one["id"] for one in single(structure="bag")["cautions"]}
    data = base().data
    assert {*data.structures["bag"].cautions, *data.substrates["cattle_dung"].cautions, "never_enter"} <= named


def test_the_derivation_shows_every_formula_with_its_inputs() -> None:
    answer = asked(row(), explain=True)
    assert not isinstance(answer, RefusedError)
    steps = {step["quantity"]: step for step in answer["derivation"]}
    assert {"working_volume", "biogas_per_day", "gas_ratio", "herd_to_largest_herd", "fed_share_of_design"} <= steps.keys()
    assert steps["gas_ratio"]["value"] == pytest.approx(1.2 / steps["biogas_per_day"]["value"])
    assert steps["working_volume"]["inputs"] == {"total_volume": 9.0, "fill_share": pytest.approx(2 / 3)}


def test_id_and_name_are_given_back() -> None:
    answer = ask(NAME, {**request_of(row()), "name": "Highfold (invented)"})
    assert (answer["id"], answer["name"]) == ("INV-1", "Highfold (invented)")
    assert "id" not in single(id=None)


def test_the_example_is_answered_and_shows_a_fault() -> None:
    answer = ask(NAME, EXAMPLE)
    assert answer["aspects"]["gas"] == "below"
    assert answer["verdict"] == "faulty"


@pytest.mark.parametrize(("number", "unit"), [(9000, "L"), (317.832, "[cft_i]"), (2377.55, "[gal_us]")])
def test_a_record_may_state_its_units(number: float, unit: str) -> None:
    stated = ask(NAME, {**request_of(row()), "total_volume": {"value": number, "unit": unit}})
    assert value(stated, "expected") == pytest.approx(value(single(), "expected"), rel=1e-3)


# Refusals


@pytest.mark.parametrize(
    ("changes", "pointer", "code"),
    [
        ({"structure": None}, "/structure", "missing"),
        ({"total_volume": None}, "/total_volume", "missing"),
        ({"structure": "igloo"}, "/structure", "unknown_id"),
        ({"total_volume": -9}, "/total_volume", "out_of_range"),
        ({"feed_mass": "forty"}, "/feed_mass", "number_expected"),
        ({"animal_count": 2.5}, "/animal_count", "whole_number_expected"),
        ({"housing": "field"}, "/housing", "not_one_of"),
        ({"visited_on": "2026-02-30"}, "/visited_on", "date_expected"),
        ({"feed_mas": 40}, "/feed_mas", "extra_forbidden"),
        ({"feed_mass": {"value": 40, "unit": "m3"}}, "/feed_mass/unit", "unknown_unit"),
    ],
)
def test_a_bad_record_is_refused_at_its_member(changes: Json, pointer: str, code: str) -> None:
    body = like(request_of(row()), **changes)
    with pytest.raises(RefusedError) as refused:
        questions()[NAME].ask(json.dumps(body).encode())
    assert (pointer, code) in {(fault.pointer, fault.code) for fault in refused.value.faults}


def test_a_stated_fact_that_the_record_denies_is_refused() -> None:
    found = asked(row(organic_loading_rate=5.0))
    assert isinstance(found, RefusedError)
    assert [(fault.pointer, fault.code) for fault in found.faults] == [("/facts/organic_loading_rate", "stated_twice")]


@pytest.mark.parametrize(
    ("changes", "check"),
    [({"feed_mass": 0.0, "biogas_measured": 5.0}, "gas_measured_possible_most"), ({"animal_count": 0}, "feed_within_herd")],
)
def test_what_comes_of_nothing_cannot_be_right(changes: Json, check: str) -> None:
    """Gas of no feed and dung of no animals are more than any limit, not unknown; there is no number to show for them."""
    stated = row(substrate="cattle_dung", **changes)
    found = asked(stated)
    assert not isinstance(found, RefusedError)
    assert found["verdict"] == "doubtful"
    [shown] = [one for one in found["findings"] if one["check"] == check]
    assert shown["verdict"] == "fail"
    assert "value" not in shown
    assert fleet().answer(table([stated])).to_pylist()[0]["verdict"] == "doubtful"


@pytest.mark.parametrize("fact", ["latrine_linked", "human_excreta_fed"])
def test_a_latrine_counts_for_a_row_as_for_a_table(fact: str) -> None:
    """The rules of human excreta speak for a plant that is fed cattle dung and has a latrine, singly and in a column."""
    stated = row(substrate="cattle_dung", distance_to_well=8.0, **{fact: True})
    single = asked(stated)
    assert not isinstance(single, RefusedError)
    failed = [one["check"] for one in single["findings"] if one["verdict"] == "fail"]
    assert "well_distance_least" in failed
    assert set(fleet().answer(table([stated, row(distance_to_well=8.0)])).to_pylist()[0]["failed"]) == set(failed)
    assert "well_distance_least" not in {one["check"] for one in asked(row(substrate="cattle_dung", distance_to_well=8.0))["findings"]}


def test_other_questions_requests_are_refused() -> None:
    with pytest.raises(RefusedError):
        ask(NAME, FIRST_CHARGE)


def members() -> list[str]:
    return [name for name in questions()[NAME].request.model_fields if name != "facts"]


@pytest.mark.parametrize("name", members())
def test_every_member_says_what_it_is(name: str) -> None:
    field: Any = questions()[NAME].request.model_fields[name]
    assert field.description
    assert field.description.endswith(".")
