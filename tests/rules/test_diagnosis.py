"""Diagnosis: readings as facts, gas against its expectation, the tests that part the leading causes, and what is refused."""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, base, findings, like, value

from kilisho.faults import RefusedError
from kilisho.questions.diagnosis.separating import Bench, entropy, likelihoods
from kilisho.rulebook import FieldTest

FARM: Json = {
    "symptoms": ["gas_fell_slowly"],
    "digester": {"structure": "fixed_dome", "total_volume": 9},
    "feed": [{"substrate": "cattle_dung", "mass": 60}],
    "water": {"value": 60, "unit": "L/d"},
    "climate": {"digester_temperature": 25},
}


def cause(answer: Json, name: str) -> Json:
    return next(one for one in answer["causes"] if one["cause"] == name)


def codes(body: Json) -> set[tuple[str, str]]:
    with pytest.raises(RefusedError) as refused:
        ask("diagnosis", body)
    return {(fault.pointer, fault.code) for fault in refused.value.faults}


# Gas against its expectation


def test_the_expected_gas_is_that_of_the_maintenance_feed() -> None:
    """The same farm asked the other way gives the same gas, retention and loading."""
    fed = ask(
        "maintenance-feed",
        {**like(FARM, symptoms=None, water=None), "dilution": {"water_to_feed_by_volume": 60 / (60 / 0.95)}, "slurry_ph": 7.3},
    )
    answer = ask("diagnosis", like(FARM, readings={"biogas_per_day": 1, "ph": 7.3}, water=None, dilution={"water_to_feed_by_volume": 0.95}))
    assert answer["gas"]["expected"] == fed["biogas_per_day"]
    assert answer["gas"]["gas_state"] == fed["gas_state"]


@given(st.floats(0.01, 20))
def test_the_verdict_follows_the_range(measured: float) -> None:
    gas = ask("diagnosis", like(FARM, readings={"biogas_per_day": measured}))["gas"]
    low, high = gas["expected"]["low"], gas["expected"]["high"]
    assert gas["verdict"] == ("below" if measured < low - 1e-6 else "above" if measured > high + 1e-6 else gas["verdict"])
    assert (low - 1e-6 <= measured <= high + 1e-6) or gas["verdict"] != "inside"
    assert gas["gas_ratio"]["value"] == pytest.approx(measured / gas["expected"]["value"], rel=1e-4, abs=1e-6)
    assert gas["gas_ratio"]["low"] == pytest.approx(measured / high, rel=0.02, abs=1e-6)


def test_inside_the_range_speaks_against_a_leak_and_says_so() -> None:
    expected = value(ask("diagnosis", FARM), "gas.expected")
    inside, below = (ask("diagnosis", like(FARM, readings={"biogas_per_day": share * expected})) for share in (1.0, 0.3))
    assert inside["gas"]["verdict"] == "inside"
    assert "needs no fault" in inside["gas"]["text"]
    assert "gas_ratio_to_low" in {clue["of"] for clue in cause(inside, "pipe_leaks")["speaks_against"]}
    assert "gas_ratio_to_low" in {clue["of"] for clue in cause(below, "pipe_leaks")["speaks_for"]}
    assert value(cause(below, "pipe_leaks"), "share") > value(cause(inside, "pipe_leaks"), "share")
    assert findings(below)["gas_not_below_expected"] == "fail"
    assert "gas_not_below_expected" not in findings(inside)


def test_more_gas_than_the_feed_gives_is_a_matter_of_the_record() -> None:
    answer = ask("diagnosis", like(FARM, readings={"biogas_per_day": 9}))
    assert answer["gas"]["verdict"] == "above"
    assert findings(answer)["gas_record_plausible"] == "fail"


@pytest.mark.parametrize(("without", "missing"), [("digester", ["digester"]), ("feed", ["feed"])])
def test_without_digester_or_feed_the_gas_is_unknown_and_never_called_right(without: str, missing: list[str]) -> None:
    answer = ask("diagnosis", like(FARM, readings={"biogas_per_day": 1}, water=None, **{without: None}))
    assert answer["gas"]["verdict"] == "unknown"
    assert answer["gas"]["missing"] == missing
    assert "expected" not in answer["gas"]
    assert findings(answer)["gas_not_below_expected"] == "unknown"


def test_a_colder_digester_is_expected_to_give_less() -> None:
    warm, cold = (ask("diagnosis", like(FARM, climate=None, readings={"slurry_temperature": t})) for t in (28, 14))
    assert value(cold, "gas.expected") < value(warm, "gas.expected")
    assert cause(cold, "cold_slurry")["rank"] < cause(warm, "cold_slurry")["rank"]


# Readings


READINGS: list[tuple[Json, str, str]] = [
    ({"ph": 6.4}, "overfed", "speaks_for"),
    ({"ph": 7.2}, "overfed", "speaks_against"),
    ({"ph": 8.3}, "ammonia_from_droppings", "speaks_for"),
    ({"ph": 6.5}, "ammonia_from_droppings", "speaks_against"),
    ({"volatile_acids_to_alkalinity": 0.6}, "overfed", "speaks_for"),
    ({"volatile_acids_to_alkalinity": 0.2}, "overfed", "speaks_against"),
    ({"total_ammonia_nitrogen": {"value": 4000, "unit": "mg/L"}}, "ammonia_from_droppings", "speaks_for"),
    ({"methane_share": {"value": 40, "unit": "%"}}, "overfed", "speaks_for"),
    ({"slurry_temperature": 12}, "cold_slurry", "speaks_for"),
    ({"slurry_temperature": 30}, "cold_slurry", "speaks_against"),
    ({"days_since_feeding": 10}, "underfed", "speaks_for"),
    ({"gas_pressure": 0}, "air_drawn_in", "speaks_for"),
    ({"gas_pressure": {"value": 3, "unit": "mbar"}}, "dome_leaks_gas", "speaks_for"),
    ({"hydrogen_sulfide": 3000}, "hydrogen_sulfide_high", "speaks_for"),
]


@pytest.mark.parametrize(("readings", "name", "side"), READINGS)
def test_a_reading_speaks_for_or_against(readings: Json, name: str, side: str) -> None:
    answer = ask("diagnosis", {"symptoms": ["gas_fell_slowly"], "readings": readings})
    told = {one["cause"]: one for one in (*answer["causes"], *answer["other_causes"])}
    clues = [clue for clue in told[name][side] if clue["kind"] == "reading"]
    assert clues
    assert all(clue["when"].keys() == clue["values"].keys() for clue in clues)


@pytest.mark.parametrize(
    "pressure",
    [
        {"value": 20, "unit": "cm[H2O]"},
        {"value": 1961.33, "unit": "Pa"},
        {"value": 1.96133, "unit": "kPa"},
        {"value": 19.6133, "unit": "mbar"},
    ],
)
def test_the_unit_of_the_gauge_does_not_matter(pressure: Json) -> None:
    first, second = (
        ask("diagnosis", {"symptoms": ["flame_lifts"], "readings": {"gas_pressure": one}})["causes"]
        for one in (pressure, {"value": 1961.33, "unit": "Pa"})
    )
    assert [(one["cause"], one["share"]) for one in first] == [(one["cause"], one["share"]) for one in second]


def test_a_reading_and_the_fact_that_it_is_may_not_differ() -> None:
    body = {"symptoms": ["sour_smell"], "readings": {"ph": 6.4}}
    assert ask("diagnosis", {**body, "facts": {"slurry_ph": 6.4}})["causes"][0]["cause"] == "overfed"
    assert codes({**body, "facts": {"slurry_ph": 7.4}}) == {("/facts/slurry_ph", "stated_twice")}


def test_a_symptom_and_a_fact_that_denies_it_are_refused() -> None:
    assert codes({"symptoms": ["gas_smell_indoors"], "facts": {"gas_smell_indoors": False}}) == {
        ("/facts/gas_smell_indoors", "stated_twice")
    }


def test_a_symptom_states_its_fact_for_the_checks_and_is_not_counted_twice() -> None:
    answer = ask("diagnosis", {"symptoms": ["trap_or_relief_dry"]})
    assert findings(answer)["trap_water_level"] == "fail"
    assert [clue["kind"] for clue in cause(answer, "relief_seal_dry")["speaks_for"]] == ["symptom"]


def test_a_danger_check_that_fails_is_an_alarm_too() -> None:
    facts = {"gas_meter_used": True, "methane_in_room_air": {"value": 1, "unit": "%"}, "entry_planned": True}
    alarms = {one["alarm"]: one for one in ask("diagnosis", {"symptoms": ["gas_fell_slowly"], "facts": facts})["alarms"]}
    assert {"methane_in_room_air_danger", "no_entry"} <= alarms.keys()
    assert alarms["no_entry"]["kind"] == "check"
    assert alarms["no_entry"]["do"] == [base().data.checks["no_entry"].do]


@pytest.mark.parametrize(
    ("fact", "number", "unit", "alarm"),
    [
        ("carbon_monoxide_in_room_air", 80, "[ppm]", "carbon_monoxide_half_hour"),
        ("carbon_monoxide_in_room_air", 12, "[ppm]", "carbon_monoxide_eight_hours"),
        ("methane_in_room_air", 0.45, "%", "methane_in_room_air_much"),
        ("hydrogen_sulfide_in_breathed_air", 9, "[ppm]", "hydrogen_sulfide_air_short"),
        ("hydrogen_sulfide_in_breathed_air", 90, "[ppm]", "hydrogen_sulfide_air_danger"),
    ],
)
def test_measured_air_that_harms_is_one_alarm_by_its_worst_limit(fact: str, number: float, unit: str, alarm: str) -> None:
    """Readings are invented; the limits are those of the rulebook's sources."""
    answer = ask("diagnosis", {"symptoms": ["gas_fell_slowly"], "facts": {fact: {"value": number, "unit": unit}}})
    [found] = answer["alarms"]
    assert (found["alarm"], found["signal"]) == (alarm, str(base().data.checks[alarm].severity))
    assert answer["in_words"].startswith("Act at once: ")


def test_air_below_the_warning_is_found_and_no_alarm() -> None:
    body = {"symptoms": ["gas_fell_slowly"], "facts": {"hydrogen_sulfide_in_breathed_air": {"value": 3, "unit": "[ppm]"}}}
    answer = ask("diagnosis", body)
    assert findings(answer)["hydrogen_sulfide_air_day"] == "fail"
    assert answer["alarms"] == []


def test_a_leak_looked_for_with_a_flame_is_an_alarm() -> None:
    answer = ask("diagnosis", {"symptoms": ["gas_fell_slowly"], "facts": {"leak_test_method": "flame"}})
    assert "leak_test_without_flame" in {one["alarm"] for one in answer["alarms"]}


# Structures, shares


def test_a_drum_sinks_only_where_there_is_a_drum() -> None:
    dome, drum, unknown = (
        {one["cause"] for one in ask("diagnosis", {"symptoms": ["pressure_falls_overnight"], **more})["causes"]}
        for more in (
            {"digester": {"structure": "fixed_dome", "total_volume": 9}},
            {"digester": {"structure": "floating_drum", "total_volume": 9}},
            {},
        )
    )
    assert "drum_leaks" not in dome
    assert "dome_leaks_gas" not in drum
    assert {"drum_leaks", "dome_leaks_gas", "bag_leaks"} <= unknown


@given(st.lists(st.sampled_from(sorted(base().data.symptoms)), min_size=1, max_size=6, unique=True))
def test_shares_fall_with_rank_lie_in_their_range_and_make_up_no_more_than_all(symptoms: list[str]) -> None:
    causes = ask("diagnosis", {"symptoms": symptoms})["causes"]
    told = [one["share"]["value"] for one in causes]
    assert told == sorted(told, reverse=True)
    assert sum(told) <= 100 + len(told) / 2
    assert all(one["share"].get("low", 0) <= one["share"]["value"] <= one["share"].get("high", 100) for one in causes)


def test_shares_by_hand() -> None:
    """Slurry in the gas pipe: strong (8) for an occasional cause (3), some (3) for a rare (1) and an occasional one (3); else 6."""
    answer = ask("diagnosis", {"symptoms": ["slurry_in_gas_pipe"]})
    weight = {"slurry_in_line": 3 * 8, "outlet_blocked": 3 * 3, "foaming": 1 * 3}
    assert [one["cause"] for one in answer["causes"]] == list(weight)
    for one in answer["causes"]:
        assert one["share"]["value"] == round(100 * weight[one["cause"]] / (sum(weight.values()) + 6)), one["cause"]
    assert answer["something_else"]["value"] == round(100 * 6 / 42)


def test_a_lone_cause_is_not_certain_and_is_told_with_a_test_that_would_confirm_it() -> None:
    answer = ask("diagnosis", {"symptoms": ["ammonia_smell"]})
    assert [one["cause"] for one in answer["causes"]] == ["ammonia_from_droppings"]
    assert answer["causes"][0]["share"]["value"] == 80
    assert any(out["points_to"] == ["ammonia_from_droppings"] for one in answer["tests"] for out in one["outcomes"])


# Tests that part causes


def made(*outcomes: tuple[list[str], list[str]], effort: str = "look", **more: Any) -> FieldTest:
    rows = [{"seen": "Something", "points_to": points, "rules_out": out} for points, out in outcomes]
    return FieldTest.model_validate({"name": "A test", "effort": effort, "how": "Look.", "outcomes": rows, "basis": "judgement", **more})


def test_entropy_by_hand() -> None:
    import numpy as np

    assert entropy(np.array([[0.5, 0.5]])) == pytest.approx(1.0)
    assert entropy(np.array([[0.25, 0.75]])) == pytest.approx(-0.25 * math.log2(0.25) - 0.75 * math.log2(0.75))
    assert entropy(np.array([[1.0, 0.0]])) == 0.0
    assert entropy(np.array([[0.5, 0.0], [0.0, 0.5]])) == 0.0


def test_likelihoods_of_outcomes() -> None:
    test = made((["a"], ["b"]), ([], ["a"]), ([], []))
    assert likelihoods(test.outcomes, "a") == [1.0, 0.0, 0.0]
    assert likelihoods(test.outcomes, "b") == [0.0, 0.5, 0.5]
    assert likelihoods(test.outcomes, "c") == [pytest.approx(1 / 3)] * 3
    assert likelihoods(made(([], ["d"]), ([], ["d"])).outcomes, "d") == [0.5, 0.5]


def test_a_test_that_parts_two_causes_settles_everything_and_one_that_names_neither_nothing() -> None:
    parts, silent = made((["a"], ["b"]), (["b"], ["a"])), made((["x"], []), ([], ["x"]))
    bench = Bench({"parts": parts, "silent": silent}, ["a", "b", "x"])
    [chosen] = bench.choose({"a": 0.5, "b": 0.5})
    assert (chosen.id, chosen.settles) == ("parts", pytest.approx(1.0))
    assert bench.choose({"a": 1.0}) == []


def test_tests_complement_each_other_and_the_harmless_come_first() -> None:
    first = made((["a"], ["b", "c", "d"]), ([], ["a"]), effort="instrument")
    again = made((["a"], ["b", "c", "d"]), ([], ["a"]), effort="instrument")
    second = made((["b"], ["c"]), (["c"], ["b"]), effort="look")
    chosen = Bench({"a_first": first, "b_again": again, "c_second": second}, ["a", "b", "c", "d"]).choose({"a": 0.4, "b": 0.3, "c": 0.3})
    assert [one.id for one in chosen] == ["c_second", "a_first"]


def test_a_test_whose_result_is_stated_is_not_asked_for_again() -> None:
    symptoms = ["sour_smell", "gas_fell_suddenly"]
    before, after = (ask("diagnosis", {"symptoms": symptoms, "readings": readings}) for readings in ({}, {"ph": 7}))
    assert "ph_of_slurry" in {one["test"] for one in before["tests"]}
    assert "ph_of_slurry" not in {one["test"] for one in after["tests"]}


@given(st.lists(st.sampled_from(sorted(base().data.symptoms)), min_size=1, max_size=5, unique=True))
def test_the_tests_are_few_different_about_the_leading_causes_and_in_order_of_effort(symptoms: list[str]) -> None:
    answer = ask("diagnosis", {"symptoms": symptoms})
    tests = [one["test"] for one in answer["tests"]]
    assert len(tests) == len(set(tests)) <= 3
    efforts = ["look", "by_hand", "instrument", "trained"]
    assert [one["effort"] for one in answer["tests"]] == sorted((one["effort"] for one in answer["tests"]), key=efforts.index)
    for one in answer["tests"]:
        assert 0 < one["settles"]["value"] <= 100
        assert any(out["points_to"] or out["rules_out"] for out in one["outcomes"])


# Refusals


REFUSED: list[tuple[Json, tuple[str, str]]] = [
    ({}, ("/symptoms", "nothing_to_diagnose")),
    ({"symptoms": ["foam", "foam"]}, ("/symptoms/1", "symptom_twice")),
    ({"symptoms": ["foam"], "not_seen": ["foam"]}, ("/not_seen/0", "symptom_twice")),
    ({"symptoms": ["foamy"]}, ("/symptoms/0", "unknown_id")),
    ({"symptoms": ["foam"], "readings": {"ph": 15}}, ("/readings/ph", "out_of_range")),
    ({"symptoms": ["foam"], "digester": {"structure": "bag"}}, ("/digester", "volume_missing")),
    ({**FARM, "dilution": {"water_to_feed_by_volume": 1}}, ("/dilution", "water_and_dilution")),
    ({**FARM, "readings": {"slurry_temperature": 20}}, ("/readings/slurry_temperature", "stated_twice")),
    (
        {**FARM, "feed": [{"substrate": "cattle_dung", "mass": 60, "biogas_yield": 0}], "readings": {"biogas_per_day": 1}},
        ("/feed", "feed_gives_no_gas"),
    ),
]


@pytest.mark.parametrize(("body", "fault"), REFUSED)
def test_what_cannot_be_diagnosed_is_refused_with_its_place(body: Json, fault: tuple[str, str]) -> None:
    assert fault in codes(body)


def test_a_herd_of_none_leaves_the_gas_unknown_and_assumes_nothing_twice() -> None:
    answer = ask("diagnosis", like(FARM, feed=None, water=None, herd=[{"animal": "dairy_cow", "count": 0}], digester={"total_volume": 9}))
    assert answer["gas"]["verdict"] == "unknown"
    assumed = [(one["quantity"], one.get("of")) for one in answer["assumptions"]]
    assert len(assumed) == len(set(assumed))
