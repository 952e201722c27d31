"""The table of symptoms, causes and tests: complete, reachable, honest about danger, and open to other packs."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
import yaml
from hypothesis import assume, given
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, base

from kilisho.packs import check, load
from kilisho.questions import open_questions
from kilisho.rulebook import Severity

DATA = base().data
SYMPTOMS, CAUSES, TESTS = DATA.symptoms, DATA.causes, DATA.tests
EVERY_CAUSE = pytest.mark.parametrize("name", sorted(CAUSES))
EVERY_TEST = pytest.mark.parametrize("name", sorted(TESTS))


def ranks(symptoms: list[str], **more: Any) -> dict[str, int]:
    """The place of every cause; those that nothing speaks for keep their order behind the rest."""
    answer = ask("diagnosis", {"symptoms": symptoms, **more})
    told = {one["cause"]: one["rank"] for one in answer["causes"]}
    return told | {one["cause"]: 1000 + i for i, one in enumerate(answer["other_causes"])}


def body_for(name: str) -> Json:
    """A digester that can have the cause, and nothing else of the farm."""
    kinds = CAUSES[name].structures
    return {"digester": {"structure": kinds[0], "total_volume": 9}} if kinds else {}


# Completeness


def test_the_table_is_as_wide_as_household_troubles_are() -> None:
    assert len(CAUSES) >= 25
    assert len(SYMPTOMS) >= 30
    assert {"gas_fell_slowly", "flame_yellow"} <= SYMPTOMS.keys()


@EVERY_CAUSE
def test_every_cause_comes_first_when_all_its_signs_are_there(name: str) -> None:
    answer = ask("diagnosis", {"symptoms": list(CAUSES[name].explains), **body_for(name)})
    assert answer["causes"][0]["cause"] == name, [(one["cause"], one["share"]["value"]) for one in answer["causes"][:3]]


@pytest.mark.parametrize("name", sorted(SYMPTOMS))
def test_every_symptom_is_explained_by_a_cause_that_names_it_so(name: str) -> None:
    explaining = {cause for cause, entry in CAUSES.items() if name in entry.explains}
    answer = ask("diagnosis", {"symptoms": [name]})
    assert explaining
    assert {one["cause"] for one in answer["causes"]} == explaining
    for one in answer["causes"]:
        clue = {"kind": "symptom", "of": name, "name": SYMPTOMS[name].name, "strength": CAUSES[one["cause"]].explains[name]}
        assert clue in one["speaks_for"]


@EVERY_CAUSE
def test_the_test_of_a_cause_confirms_it_with_one_outcome_and_not_with_another(name: str) -> None:
    outcomes = TESTS[CAUSES[name].test].outcomes
    assert any(name in one.points_to for one in outcomes)
    assert any(name not in one.points_to for one in outcomes)


@EVERY_TEST
def test_every_test_names_causes_and_is_named_by_one_or_parts_some(name: str) -> None:
    named = {cause for one in TESTS[name].outcomes for cause in (*one.points_to, *one.rules_out)}
    assert named
    assert not any(set(one.points_to) & set(one.rules_out) for one in TESTS[name].outcomes)


# Danger

FORBIDDEN = [
    r"\b(?:climb|go|step|get|reach|lean) in(?:to)?\b(?!.{0,40}fresh air)",
    r"\benter(?:s|ed|ing)?\b",
    r"\b(?:match|candle|lighter|burning)\b.{0,40}\bleak",
    r"\bleak.{0,40}\b(?:match|candle|lighter)\b",
]
NEGATED = re.compile(r"\b(?:nobody|never|no one|not|without|none)\b[^.;]*$", re.IGNORECASE)


def texts() -> list[tuple[str, str]]:
    remedies = [(f"causes.{name}", entry.remedy) for name, entry in CAUSES.items()]
    tests = [(f"tests.{name}", text) for name, entry in TESTS.items() for text in (entry.how, *(one.seen for one in entry.outcomes))]
    return remedies + tests


@pytest.mark.parametrize(("where", "text"), texts())
def test_no_text_sends_anybody_into_a_pit_or_a_flame_after_a_leak(where: str, text: str) -> None:
    for pattern in FORBIDDEN:
        for found in re.finditer(pattern, text, re.IGNORECASE):
            assert NEGATED.search(text[: found.start()]), (where, found.group())


def test_the_guard_against_such_texts_bites() -> None:
    for text in ("Climb into the digester and look.", "Hold a match to the joint where it may leak.", "Let a boy enter the pit."):
        assert any(re.search(pattern, text, re.IGNORECASE) for pattern in FORBIDDEN), text
    assert not NEGATED.search("Climb ")


@EVERY_CAUSE
def test_what_is_urgent_has_cautions(name: str) -> None:
    cause = CAUSES[name]
    if cause.urgency == "at_once":
        assert any(DATA.cautions[one].signal is Severity.danger for one in cause.cautions)


ALARMS = sorted(name for name, entry in SYMPTOMS.items() if entry.alarm)


def test_what_can_kill_is_an_alarm() -> None:
    deadly = {
        "gas_smell_indoors",
        "flame_yellow",
        "person_collapsed",
        "gas_smells_of_rotten_eggs",
        "fire_or_explosion",
        "bulging_bag_or_lid",
    }
    assert deadly | {"headache_in_kitchen", "gas_smell_in_pit"} <= set(ALARMS)


@pytest.mark.parametrize("name", ALARMS)
def test_each_alarm_shows_with_what_to_do_at_once(name: str) -> None:
    answer = ask("diagnosis", {"symptoms": ["gas_fell_slowly", name]})
    [alarm] = [one for one in answer["alarms"] if one["alarm"] == name]
    assert alarm["signal"] == "danger"
    assert alarm["do"] == [DATA.cautions[one].text for one in SYMPTOMS[name].cautions]
    alarmed, likeliest = "; ".join(one["name"] for one in answer["alarms"]), answer["causes"][0]["name"]
    assert answer["in_words"].startswith(f"Act at once: {alarmed}. What was stated speaks most for: {likeliest} (")
    assert list(answer)[:2] == ["alarms", "in_words"]
    assert set(SYMPTOMS[name].cautions) <= {one["id"] for one in answer["cautions"]}


def test_alarms_and_causes_keep_their_names_in_the_sentence() -> None:
    answer = ask("diagnosis", {"symptoms": ["person_collapsed", "gas_smell_indoors"]})
    alarm, likeliest = answer["in_words"].parameters["first"], answer["in_words"].parameters["second"]
    assert list(alarm.parameters["names"].items) == [one["name"] for one in answer["alarms"]]
    assert likeliest.parameters["name"].id == f"causes-{answer['causes'][0]['cause']}-name"


def test_a_reading_is_told_by_the_names_of_its_facts() -> None:
    answer = ask("diagnosis", {"symptoms": ["gas_fell_slowly"], "readings": {"ph": 6.2}})
    clues = [clue for one in answer["causes"] for clue in (*one["speaks_for"], *one["speaks_against"]) if clue["kind"] == "reading"]
    assert clues
    assert all(clue["name"] == "; ".join(DATA.facts[fact].name for fact in clue["when"]) for clue in clues)


@given(st.lists(st.sampled_from(sorted(SYMPTOMS)), min_size=1, max_size=8, unique=True))
def test_no_alarm_is_lost_among_other_symptoms(symptoms: list[str]) -> None:
    answer = ask("diagnosis", {"symptoms": symptoms})
    assert {one["alarm"] for one in answer["alarms"] if one["kind"] == "symptom"} == set(symptoms) & set(ALARMS)


# Ranking


@given(st.data())
def test_a_symptom_more_never_puts_a_cause_that_explains_it_behind_one_that_does_not(data: Any) -> None:
    before = data.draw(st.lists(st.sampled_from(sorted(SYMPTOMS)), max_size=6, unique=True))
    more = data.draw(st.sampled_from(sorted(SYMPTOMS)))
    assume(more not in before)
    fixed = {"readings": {"ph": data.draw(st.floats(5, 9))}}
    earlier, later = ranks(before, **fixed), ranks([*before, more], **fixed)
    explaining = {name for name, cause in CAUSES.items() if more in cause.explains}
    for name in explaining:
        overtaken = {other for other in CAUSES.keys() - explaining if earlier[name] < earlier[other] and later[name] > later[other]}
        assert not overtaken, name


@given(st.lists(st.sampled_from(sorted(SYMPTOMS)), min_size=2, max_size=8, unique=True), st.randoms(use_true_random=False))
def test_the_order_of_symptoms_changes_no_rank_and_no_share(symptoms: list[str], random: Any) -> None:
    def told(order: list[str]) -> list[Any]:
        return [(one["cause"], one["share"]) for one in ask("diagnosis", {"symptoms": order})["causes"]]

    assert told(symptoms) == told(random.sample(symptoms, len(symptoms)))


@given(st.lists(st.sampled_from(sorted(SYMPTOMS)), min_size=1, max_size=6, unique=True), st.sampled_from(sorted(SYMPTOMS)))
def test_what_was_looked_for_and_not_seen_never_lifts_a_cause_that_explains_it(symptoms: list[str], absent: str) -> None:
    assume(absent not in symptoms)
    earlier, later = ranks(symptoms), ranks(symptoms, not_seen=[absent])
    without = [name for name, cause in CAUSES.items() if absent not in cause.explains]
    for name in CAUSES.keys() - set(without):
        assert not [one for one in without if earlier[one] < earlier[name] < 1000 and later[one] > later[name]], name


def test_the_same_symptom_not_seen_counts_one_word_less() -> None:
    answer = ask("diagnosis", {"symptoms": ["gas_fell_slowly"], "not_seen": ["scum_seen", "sour_smell"]})
    told = {one["cause"]: one["speaks_against"] for one in answer["causes"]}
    for name, cause in (("scum_seen", "scum_crust"), ("sour_smell", "overfed")):
        assert {"kind": "not_seen", "of": name, "name": SYMPTOMS[name].name, "strength": "some"} in told[cause]
    assert not [clue for clue in told["sand_and_sludge"] if clue["kind"] == "not_seen"]


# Other packs


NEW = """
symptoms:
  goats_on_the_dome: {name: Goats on the dome, group: structure, seen: "Goats lie on the warm dome."}
causes:
  goats:
    name: Goats wear off the cover of the dome
    group: structure
    how_common: rare
    explains: {goats_on_the_dome: strong}
    test: watch_the_goats
    remedy: Fence the dome.
    urgency: when_convenient
    basis: judgement
tests:
  watch_the_goats:
    name: Watch for a day
    effort: look
    how: Sit down and watch.
    outcomes: [{seen: Goats come, points_to: [goats]}, {seen: None comes, rules_out: [goats]}]
    basis: judgement
"""


def test_a_pack_adds_symptom_cause_and_test_without_code(pack: Callable[..., Path]) -> None:
    answer = ask("diagnosis", {"symptoms": ["goats_on_the_dome"]}, among=open_questions(load(pack(NEW))))
    [cause] = answer["causes"]
    assert (cause["cause"], cause["rank"], cause["test"]["test"]) == ("goats", 1, "watch_the_goats")


def test_a_pack_replaces_the_weight_of_a_word(pack: Callable[..., Path]) -> None:
    layer = {"practice": {"figures": {"evidence_strong": {"typical": 14.9}}}}
    body = {"symptoms": ["sour_smell", "gas_fell_suddenly"]}
    ours, theirs = (ask("diagnosis", body, among=some)["causes"][0] for some in (None, open_questions(load(pack(yaml.safe_dump(layer))))))
    assert ours["cause"] == theirs["cause"] == "overfed"
    assert theirs["share"]["value"] > ours["share"]["value"]


FAULTS: list[tuple[Json, str]] = [
    ({"symptoms": {"orphan": {"name": "An orphan", "group": "gas", "seen": "Nobody explains it."}}}, "symptoms.orphan"),
    ({"symptoms": {"gas_left_over": {"implies": {"flame_colour": "green"}}}}, "symptoms.gas_left_over.implies.flame_colour"),
    ({"symptoms": {"flame_lifts": {"implies": {"flame_colour": "lifting"}}}}, "symptoms.flame_lifts.implies.flame_colour"),
    ({"symptoms": {"gas_left_over": {"implies": {"nothing": True}}}}, "symptoms.gas_left_over.implies.nothing"),
    ({"symptoms": {"gas_left_over": {"alarm": True}}}, "symptoms.gas_left_over"),
    ({"causes": {"overfed": {"denied_by": {"sour_smell": "some"}}}}, "causes.overfed.denied_by"),
    ({"causes": {"overfed": {"explains": {"blue_moon": "some"}}}}, "causes.overfed.explains"),
    ({"causes": {"overfed": {"test": "turn_drum"}}}, "causes.overfed.test"),
    ({"causes": {"overfed": {"structures": ["tent"]}}}, "causes.overfed.structures"),
    ({"causes": {"overfed": {"cautions": ["hush"]}}}, "causes.overfed.cautions"),
    (
        {"causes": {"overfed": {"readings": [{"when": {"slurry_ph": {"is": True}}, "strength": "weak"}]}}},
        "causes.overfed.readings.0.when.slurry_ph",
    ),
    ({"causes": {"overfed": {"readings": [{"when": {"mood": {"is": True}}, "strength": "weak"}]}}}, "causes.overfed.readings.0.when.mood"),
    (
        {"tests": {"turn_drum": {"outcomes": [{"seen": "One", "points_to": ["elves"]}, {"seen": "Two"}]}}},
        "tests.turn_drum.outcomes.0.points_to",
    ),
    ({"tests": {"turn_drum": {"answered_by": ["mood"]}}}, "tests.turn_drum.answered_by"),
    (
        {
            "tests": {
                "turn_drum": {
                    "outcomes": [
                        {"seen": "One", "points_to": ["drum_stuck"], "rules_out": ["drum_stuck"]},
                        {"seen": "Two", "points_to": ["drum_leaks"]},
                    ]
                }
            }
        },
        "tests.turn_drum.outcomes.0",
    ),
    ({"practice": {"figures": {"evidence_some": {"high": 9}}}}, "practice.figures.evidence_strong"),
    ({"practice": {"figures": {"evidence_weak": {"low": 0.9}}}}, "practice.figures.evidence_weak"),
    ({"practice": {"figures": {"prior_rare": {"typical": 3}}}}, "practice.figures.prior_occasional"),
]


@pytest.mark.parametrize(("layer", "path"), FAULTS, ids=lambda part: part if isinstance(part, str) else "")
def test_a_table_that_does_not_hang_together_is_refused(layer: Json, path: str, pack: Callable[..., Path]) -> None:
    assert path in [fault.path for fault in check(pack(json.dumps(layer)))]
