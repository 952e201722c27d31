"""The safety check as a question: every stated fact reaches its checks, and what is not stated is never safe."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, assert_sound, base, findings, stated_facts

from kilisho.faults import RefusedError
from kilisho.rulebook import Severity

DATA = base().data
ENDS, RANKS = ["fail", "unknown", "pass"], [str(severity) for severity in Severity]


def grouped(facts: Json) -> Json:
    body: Json = {}
    for name, said in facts.items():
        body.setdefault(DATA.facts[name].group, {})[DATA.facts[name].field] = said
    return body


def verdict(**facts: Any) -> str:
    return str(ask("safety-check", {"facts": facts} if facts else {})["verdict"])


def test_saying_nothing_is_not_safe() -> None:
    answer = ask("safety-check", {})
    assert (answer["verdict"], answer["stop"]) == ("unknown", False)
    assert answer["counts"]["pass"] == answer["counts"]["fail"] == 0
    assert answer["counts"]["unknown"] == len(answer["findings"]) > 100
    assert "entry_planned" in answer["unanswered"]
    assert "cannot be called safe" in answer["in_words"]


@given(stated_facts())
@settings(max_examples=50)
def test_the_verdict_in_words_counts_what_it_speaks_of(facts: Json) -> None:
    try:
        answer = ask("safety-check", {"facts": facts})
    except RefusedError:
        return
    failed = [one for one in answer["findings"] if one["verdict"] == "fail"]
    dangers = [one["title"] for one in failed if one["severity"] == "danger"]
    unknown = sum(1 for one in answer["findings"] if one["verdict"] == "unknown" and one["severity"] == "danger")
    plural = "check of danger level is" if unknown == 1 else "checks of danger level are"
    acting = answer["in_words"].split("Act at once. ")
    assert (len(acting) == 2) <= any(DATA.checks[one["check"]].alarm for one in failed)
    words = acting[0] + acting[1].partition(". ")[2] if len(acting) == 2 else acting[0]
    if dangers:
        rest = f" {unknown} more {plural} not answered." if unknown else ""
        assert words.strip() == f"Stop. Not met: {'; '.join(dangers)}.{rest}"
    elif unknown:
        lesser = f"{len(failed)} lesser {'check' if len(failed) == 1 else 'checks'} failed."
        assert words == f"{unknown} {plural} not answered, so this cannot be called safe. {lesser}"


@given(stated_facts())
@settings(max_examples=50)
def test_a_fact_means_the_same_in_its_group_and_by_its_id(facts: Json) -> None:
    by_id = ask("safety-check", {"facts": facts})
    in_group = ask("safety-check", grouped(facts))
    both = ask("safety-check", {**grouped(facts), "facts": facts})
    assert by_id == in_group == both
    assert_sound("safety-check", by_id)


@given(stated_facts())
@settings(max_examples=50)
def test_counts_words_and_findings_agree(facts: Json) -> None:
    answer = ask("safety-check", {"facts": facts})
    ends = [one["verdict"] for one in answer["findings"]]
    assert answer["counts"] == {word: ends.count(word) for word in ("pass", "fail", "unknown")}
    ranks = [(ENDS.index(one["verdict"]), RANKS.index(one["severity"])) for one in answer["findings"]]
    assert ranks == sorted(ranks), "failed before unknown before passed, and danger first in each"
    for one in answer["findings"]:
        assert (one["verdict"] == "unknown") is bool(one.get("missing"))
        assert set(one.get("missing") or ()).isdisjoint(facts)
        assert one["why"]
        assert one["do"]


@given(stated_facts(), st.data())
@settings(max_examples=50)
def test_one_more_fact_changes_no_check_that_does_not_read_it(facts: Json, data: st.DataObject) -> None:
    if not facts:
        return
    name = data.draw(st.sampled_from(sorted(facts)))
    said = {name, *DATA.facts[name].implies}
    without = findings(ask("safety-check", {"facts": {k: v for k, v in facts.items() if k != name}}))
    for check, how in findings(ask("safety-check", {"facts": facts})).items():
        entry = DATA.checks[check]
        if said.isdisjoint((entry.subject, *entry.when)):
            assert without[check] == how


@pytest.mark.parametrize(
    ("facts", "check"),
    [
        ({"entry_planned": True}, "no_entry"),
        ({"first_flame_place": "at_digester"}, "first_flame_not_at_digester"),
        ({"flame_distance": 4.9}, "no_flame_at_digester"),
        ({"first_gas_vented": False}, "first_gas_vented"),
    ],
)
def test_what_can_kill_stops_the_work(facts: Json, check: str) -> None:
    answer = ask("safety-check", {"facts": facts})
    assert (answer["verdict"], answer["stop"]) == ("danger", True)
    assert findings(answer)[check] == "fail"
    assert answer["in_words"].startswith("Stop.")
    assert DATA.checks[check].title in answer["in_words"]


def test_no_number_of_good_answers_outweighs_entry() -> None:
    assert verdict(entry_planned=True, first_gas_vented=True, gas_tightness_test="passed", flame_distance=50) == "danger"
    assert verdict(entry_planned=False) == "unknown"


@pytest.mark.parametrize(
    ("said", "how"), [(4.999, "fail"), (5, "pass"), ({"value": 499, "unit": "cm"}, "fail"), ({"value": 17, "unit": "[ft_i]"}, "pass")]
)
def test_a_distance_in_any_unit(said: Any, how: str) -> None:
    assert findings(ask("safety-check", {"facts": {"flame_distance": said}}))["no_flame_at_digester"] == how


def test_the_value_is_told_in_the_units_of_the_bound() -> None:
    answer = ask("safety-check", {"facts": {"flame_distance": {"value": 300, "unit": "cm"}}})
    [found] = [one for one in answer["findings"] if one["check"] == "no_flame_at_digester"]
    assert found["value"] == {"value": 3.0, "unit": "m"}
    assert found["must"] == {"at_least": 5.0, "unit": "m"}


def test_a_fact_said_twice_must_agree() -> None:
    same = {"people": {"entry_planned": False}, "facts": {"entry_planned": False}}
    assert ask("safety-check", same)["verdict"] == "unknown"
    with pytest.raises(RefusedError) as caught:
        ask("safety-check", {"people": {"entry_planned": False}, "facts": {"entry_planned": True}})
    [fault] = caught.value.faults
    assert (fault.pointer, fault.code) == ("/facts/entry_planned", "stated_twice")


def test_a_fact_in_the_wrong_group_is_no_member() -> None:
    with pytest.raises(RefusedError) as caught:
        ask("safety-check", {"site": {"entry_planned": True}})
    assert [(fault.pointer, fault.code) for fault in caught.value.faults] == [("/site/entry_planned", "extra_forbidden")]


@pytest.mark.parametrize("name", sorted(DATA.structures))
def test_a_structure_brings_its_own_cautions(name: str) -> None:
    shown = {one["id"] for one in ask("safety-check", {"facts": {"structure_kind": name}})["cautions"]}
    always = {one["id"] for one in ask("safety-check", {})["cautions"]}
    assert shown == always | set(DATA.structures[name].cautions)
    assert always


def test_every_group_of_facts_can_be_stated() -> None:
    groups = {fact.group for fact in DATA.facts.values()}
    assert ask("safety-check", {group: {} for group in groups})["verdict"] == "unknown"


def test_clear_is_never_called_safe() -> None:
    assert "not that the plant is safe" in ask("safety-check", {})["statement"]


PPM = "[ppm]"
# Readings between the limits of /reference: what each must say below the limit that stops everything. Readings are invented.
READINGS = [
    ("carbon_monoxide_in_room_air", 9, PPM, []),
    ("carbon_monoxide_in_room_air", 20, PPM, ["eight_hours"]),
    ("carbon_monoxide_in_room_air", 40, PPM, ["hour", "eight_hours"]),
    ("carbon_monoxide_in_room_air", 80, PPM, ["half_hour", "hour", "eight_hours"]),
    ("methane_in_room_air", 0.05, "%", []),
    ("methane_in_room_air", 0.1, "%", ["leak"]),
    ("methane_in_room_air", 0.45, "%", ["much", "leak"]),
    ("hydrogen_sulfide_in_breathed_air", 1, PPM, []),
    ("hydrogen_sulfide_in_breathed_air", 3, PPM, ["day"]),
    ("hydrogen_sulfide_in_breathed_air", 9, PPM, ["short", "day"]),
    ("hydrogen_sulfide", 900, PPM, []),
    ("hydrogen_sulfide", 2000, PPM, ["usual"]),
    ("hydrogen_sulfide", 6000, PPM, ["much", "usual"]),
]
PREFIXES = ("carbon_monoxide", "methane_in_room_air", "hydrogen_sulfide_air", "hydrogen_sulfide_gas")


@pytest.mark.parametrize(("field", "number", "unit", "expected"), READINGS)
def test_a_reading_below_the_stop_is_held_to_the_lesser_limits(field: str, number: float, unit: str, expected: list[str]) -> None:
    answer = ask("safety-check", {"gas": {field: {"value": number, "unit": unit}}})
    failed = [name for name, end in findings(answer).items() if end == "fail"]
    assert [name.removeprefix(f"{prefix}_") for name in failed for prefix in PREFIXES if name.startswith(f"{prefix}_")] == expected
    assert len(failed) == len(expected)
    assert answer["stop"] is False


def test_air_that_harms_is_named_first_and_by_its_worst_limit() -> None:
    answer = ask("safety-check", {"gas": {"carbon_monoxide_in_room_air": {"value": 80, "unit": PPM}}})
    assert answer["in_words"].startswith("Act at once. Not met: Measured carbon monoxide in the room is no more than 50 ppm. ")
    assert "cannot be called safe" in answer["in_words"]
    assert "25 ppm" not in answer["in_words"]


def test_a_limit_that_stops_leaves_the_lesser_ones_unsaid_but_not_those_of_another_gas() -> None:
    gas = {"carbon_monoxide_in_room_air": {"value": 120, "unit": PPM}, "hydrogen_sulfide_in_breathed_air": {"value": 9, "unit": PPM}}
    answer = ask("safety-check", {"gas": gas})
    assert (answer["verdict"], answer["stop"]) == ("danger", True)
    stop, act = "Measured carbon monoxide in the room is no more than 90 ppm", "Breathed air holds no more than 5 ppm hydrogen sulphide"
    assert answer["in_words"].startswith(f"Stop. Not met: {stop}. Act at once. Not met: {act}. ")


def test_a_little_methane_is_a_leak_to_look_for_and_no_alarm() -> None:
    answer = ask("safety-check", {"gas": {"methane_in_room_air": {"value": 0.12, "unit": "%"}}})
    [found] = [one for one in answer["findings"] if one["verdict"] == "fail"]
    assert (found["severity"], "leak" in found["do"]) == ("caution", True)
    assert "Act at once" not in answer["in_words"]
