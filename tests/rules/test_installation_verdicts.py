"""The words of a verdict: closed sets, in their order, and never a good word where something is not known."""

from __future__ import annotations

import datetime as dt
from typing import Any, get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import base, questions
from tests.rules.fleets import NAME, fleet, one, single

from kilisho.questions.installation.shape import Aspects, InstallationAnswer
from kilisho.questions.installation.told import TEXTS
from kilisho.questions.installation.verdicts import ASPECTS, FAULTS, REFUSED, WORDS, Judge, Overall, places
from kilisho.rulebook import Severity, Word

CHECKS = fleet().desk.checks
JUDGE = Judge(CHECKS)
PLACE = {check.compiled.id: place for place, check in enumerate(CHECKS)}
EVERY = (1 << len(CHECKS)) - 1


def bits(*names: str) -> int:
    return sum(1 << PLACE[name] for name in names)


def finding(word: str) -> str:
    """A check that finds the word."""
    return next(check.compiled.id for check in CHECKS if check.compiled.check.finds == word)


def test_every_word_that_a_check_may_find_belongs_to_one_aspect() -> None:
    for word in get_args(Word):
        assert [aspect for aspect, words in ASPECTS.items() if word in words] != []
        assert sum(word in words for words in ASPECTS.values()) == 1


@pytest.mark.parametrize("word", get_args(Word))
def test_every_word_is_found_by_some_check(word: str) -> None:
    assert finding(word)


def test_nothing_failed_and_nothing_unknown_is_sound() -> None:
    assert JUDGE.judge(0, 0) == ("sound", "possible", "fitting", "fitting", "inside", "clear")


def test_all_unknown_is_unknown() -> None:
    assert JUDGE.judge(0, EVERY) == ("unknown", "possible", "unknown", "unknown", "unknown", "open")


def test_all_failed_is_danger() -> None:
    assert JUDGE.judge(EVERY, 0) == ("danger", "doubtful", "too_small", "starved", "below", "danger")


@pytest.mark.parametrize("word", get_args(Word))
def test_a_failed_check_puts_its_word_into_its_aspect(word: str) -> None:
    found = JUDGE.judge(bits(finding(word)), 0)
    aspect = next(name for name, words in ASPECTS.items() if word in words)
    assert getattr(found, aspect) == word
    others = {name: getattr(found, name) for name in ASPECTS if name != aspect}
    assert others == {name: ASPECTS[name][-1] for name in others}
    assert found.verdict in ("doubtful", "faulty", "attention", "sound")


@pytest.mark.parametrize("word", sorted(FAULTS))
def test_a_fault_makes_the_installation_faulty_whatever_is_open(word: str) -> None:
    assert JUDGE.judge(bits(finding(word)), 0).verdict == "faulty"
    assert JUDGE.judge(bits(finding(word)), EVERY ^ bits(finding(word))).verdict == "faulty"


@pytest.mark.parametrize("aspect", ["size", "feeding", "gas"])
def test_where_faults_meet_the_first_word_is_told(aspect: str) -> None:
    words = [word for word in ASPECTS[aspect] if word in get_args(Word)]
    for place, word in enumerate(words):
        assert getattr(JUDGE.judge(bits(*(finding(one) for one in words[place:])), 0), aspect) == word


def test_a_doubtful_record_comes_before_faults_and_a_danger_before_all() -> None:
    fault, doubt, danger = finding("starved"), finding("doubtful"), "no_gas_smell_indoors"
    assert JUDGE.judge(bits(fault, doubt), 0).verdict == "doubtful"
    assert JUDGE.judge(bits(fault, doubt, danger), 0).verdict == "danger"


@pytest.mark.parametrize("severity", Severity)
def test_a_check_without_a_word_calls_for_attention_by_its_severity(severity: Severity) -> None:
    plain = [check.compiled for check in CHECKS if check.compiled.severity is severity and check.compiled.check.finds is None]
    expected = {Severity.danger: "danger", Severity.warning: "attention", Severity.caution: "attention", Severity.notice: "sound"}
    assert {JUDGE.judge(bits(check.id), 0).verdict for check in plain} == {expected[severity]}


@given(st.integers(0, EVERY), st.integers(0, EVERY))
def test_words_are_always_of_the_closed_sets_and_unknown_is_never_good(failed: int, open_: int) -> None:
    unknown = open_ & ~failed
    found = JUDGE.judge(failed, unknown)
    assert all(word in WORDS[name] for name, word in found._asdict().items())
    if unknown:
        assert found.verdict != "sound"
    if unknown & JUDGE.danger:
        assert found.safety != "clear"
    for aspect in ("size", "feeding", "gas"):
        asking = sum(1 << PLACE[check.compiled.id] for check in CHECKS if check.compiled.check.finds in ASPECTS[aspect])
        if unknown & asking:
            assert getattr(found, aspect) != ASPECTS[aspect][-1]


@given(st.integers(0, EVERY), st.integers(0, EVERY), st.integers(0, len(CHECKS) - 1))
def test_one_more_failure_never_makes_a_verdict_better(failed: int, unknown: int, more: int) -> None:
    order = get_args(Overall)
    before, after = JUDGE.judge(failed, unknown & ~failed), JUDGE.judge(failed | 1 << more, unknown & ~(failed | 1 << more))
    if not unknown >> more & 1:
        assert order.index(after.verdict) <= order.index(before.verdict)


def test_the_published_sets_are_those_that_are_told() -> None:
    schema = InstallationAnswer.model_json_schema(mode="serialization")
    assert tuple(schema["properties"]["verdict"]["enum"]) == WORDS["verdict"][:-1]
    assert WORDS["verdict"][-1] == REFUSED
    published = Aspects.model_json_schema()["properties"]
    assert {name: tuple(published[name]["enum"]) for name in published} == {name: WORDS[name] for name in WORDS if name != "verdict"}


def test_every_verdict_has_its_sentence_and_its_description() -> None:
    assert TEXTS.keys() == set(get_args(Overall))
    described: Any = questions()[NAME].response.model_fields["verdict"].description
    assert all(word in described for word in get_args(Overall))


def test_each_word_of_an_aspect_is_explained_where_it_is_published() -> None:
    for name, field in Aspects.model_fields.items():
        assert all(word in str(field.description) for word in WORDS[name]), name


@pytest.mark.parametrize(("number", "expected"), [(0, []), (1, [0]), (6, [1, 2]), (1 << 80 | 1, [0, 80])])
def test_places_of_bits(number: int, expected: list[int]) -> None:
    assert places(number) == expected


def test_a_sound_installation_is_possible_when_every_check_is_answered() -> None:
    """All facts stated as they should be: the only way to be sound."""
    good: dict[str, Any] = {}
    for check in CHECKS:
        for name in (check.compiled.subject, *check.compiled.check.when):
            fact = base().data.facts[name]
            if fact.kind == "yes_no":
                good[name] = GOOD.get(name, False)
            elif fact.kind == "one_of":
                good[name] = GOOD[name]
    good = {name: value for name, value in good.items() if name not in ("structure_kind", "gas_is_measured", "human_excreta_fed")}
    found = single(**STATED, **good)
    failed = [one["check"] for one in found["findings"] if one["verdict"] == "fail"]
    assert (failed, found["verdict"]) == ([], "sound")
    assert one(**STATED, **good)["verdict"] == "sound"
    less = one(**{**STATED, "feed_contains": None}, **good)
    assert (less["verdict"], less["open_dangers"]) == ("unknown", ["no_carbide", "no_carcass"])


GOOD: dict[str, Any] = {
    "first_flame_place": "on_appliance_outdoors",
    "leak_test_method": "soapy_water",
    "leak_found": "none",
    "pipe_tightness_test": "passed",
    "plant_valve": True,
    "openings_fenced": True,
    "overflow_guarded": True,
    "gas_space_coated": True,
    "pressure_relief": True,
}
STATED: dict[str, Any] = {
    "gas_storage_volume": 1.8,
    "gas_pressure": 3000.0,
    "ph": 7.1,
    "distance_to_well": 40.0,
    "commissioned_on": dt.date(2020, 1, 1),
    "visited_on": dt.date(2024, 1, 1),
    "flame_distance": 20.0,
    "feed_contains": [],
    "days_to_harvest": 200.0,
}
