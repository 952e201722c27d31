"""Checks are three-valued: silence is never a pass, and leaving a fact out never makes a farm look safer."""

from __future__ import annotations

import json
from functools import cache
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pydantic import ValidationError
from tests.rules.conftest import ask, base, stated_facts

from kilisho.checks import Compiled, Finding, Verdict, compile_checks, evaluate, overall
from kilisho.rulebook import Check, RulebookData, Severity

RANK = [str(severity) for severity in Severity]
OPERATIONS = ["sizing", "first_charge", "maintenance_feed", "feed_mix", "batch_rotation", "safety_check", "diagnosis"]


@cache
def compiled(operation: str = "safety_check") -> tuple[Compiled, ...]:
    return compile_checks(base().data, operation)


def made(must: dict[str, Any], subject: str, when: dict[str, Any] | None = None, severity: str = "danger", **more: Any) -> Compiled:
    """One check on facts of the base pack."""
    check = Check.model_validate(
        {
            "title": "A rule for a test",
            "topic": "gas",
            "subject": subject,
            "must": must,
            "when": when or {},
            "severity": severity,
            "why": "Because.",
            "do": "Do it.",
            "basis": "judgement",
            **more,
        }
    )
    [found] = compile_checks(RulebookData.model_construct(checks={"made": check}, facts=base().data.facts), "safety_check")
    return found


def verdict(check: Compiled, **facts: Any) -> str | None:
    found = evaluate([check], facts)
    return str(found[0].verdict) if found else None


@pytest.mark.parametrize(
    ("must", "passing", "failing"),
    [
        ({"at_least": 5, "unit": "m"}, [5.0, 5.1], [4.999, 0.0]),
        ({"at_most": 5, "unit": "m"}, [5.0, 0.0], [5.001]),
        ({"more_than": 5, "unit": "m"}, [5.001], [5.0]),
        ({"less_than": 5, "unit": "m"}, [4.999], [5.0]),
        ({"between": [5, 6], "unit": "m"}, [5.0, 6.0], [4.99, 6.01]),
        ({"at_least": 500, "unit": "cm"}, [5.0], [4.999]),
    ],
)
def test_numeric_operators_at_their_edges(must: dict[str, Any], passing: list[float], failing: list[float]) -> None:
    check = made(must, "flame_distance")
    assert {verdict(check, flame_distance=number) for number in passing} == {"pass"}
    assert {verdict(check, flame_distance=number) for number in failing} == {"fail"}


def test_word_operators() -> None:
    place = "first_flame_place"
    assert verdict(made({"is": "at_digester"}, place), first_flame_place="at_digester") == "pass"
    assert verdict(made({"none_of": ["at_digester"]}, place), first_flame_place="at_digester") == "fail"
    assert verdict(made({"one_of": ["at_digester"]}, place), first_flame_place="on_appliance_indoors") == "fail"
    contains = made({"includes_none_of": ["soil", "sand"]}, "feed_contains")
    assert verdict(contains, feed_contains=("stones",)) == "pass"
    assert verdict(contains, feed_contains=()) == "pass"
    assert verdict(contains, feed_contains=("stones", "sand")) == "fail"


def test_what_is_not_stated_is_unknown_and_named() -> None:
    check = made({"at_least": 5, "unit": "m"}, "flame_distance", {"gas_in_use": {"is": True}})
    [found] = evaluate([check], {})
    assert (found.verdict, found.missing) == (Verdict.unknown, ("gas_in_use", "flame_distance"))
    assert verdict(check, gas_in_use=True) == "unknown"
    assert verdict(check, flame_distance=1.0) == "unknown"
    assert verdict(check, gas_in_use=False) is None
    assert verdict(check, gas_in_use=False, flame_distance=1.0) is None
    assert verdict(check, gas_in_use=True, flame_distance=1.0) == "fail"


def test_a_when_that_is_known_false_decides_even_if_another_is_unknown() -> None:
    when = {"separate_gas_holder": {"is": True}, "gas_in_use": {"is": True}}
    check = made({"at_least": 5, "unit": "m"}, "flame_distance", when)
    assert verdict(check, gas_in_use=False) is None


def ended(severity: str, how: Verdict) -> Finding:
    return Finding(made({"at_least": 5, "unit": "m"}, "flame_distance", severity=severity), how)


@given(st.lists(st.tuples(st.sampled_from(RANK), st.sampled_from(list(Verdict))), max_size=8))
def test_the_overall_word_is_the_worst_failure_and_never_clear_past_an_unknown_danger(ends: list[tuple[str, Verdict]]) -> None:
    word = overall([ended(*end) for end in ends])
    failed = [severity for severity, how in ends if how is Verdict.failed]
    if "danger" in failed:
        assert word == "danger"
    elif ("danger", Verdict.unknown) in ends:
        assert word == "unknown"
    elif failed:
        assert word == min(failed, key=RANK.index)
    else:
        assert word == "clear"


@pytest.mark.parametrize("operation", OPERATIONS)
def test_checks_stand_in_falling_severity(operation: str) -> None:
    ranks = [RANK.index(check.severity) for check in compiled(operation)]
    assert ranks
    assert ranks == sorted(ranks)


@pytest.mark.parametrize("check", compiled(), ids=lambda check: check.id)
def test_nothing_stated_passes_nothing(check: Compiled) -> None:
    if check.check.only_if_stated:
        assert verdict(check) is None
        graver = [one for one in compiled() if one.subject == check.subject and one.severity is Severity.danger]
        assert graver, "a missing fact would go by without a word"
    else:
        assert verdict(check) == "unknown"


def test_a_lesser_limit_is_asked_only_of_what_is_stated() -> None:
    check = made({"at_least": 5, "unit": "m"}, "flame_distance", {"gas_in_use": {"is": True}}, "warning", only_if_stated=True)
    assert verdict(check) is None
    assert verdict(check, gas_in_use=True) is None
    assert verdict(check, flame_distance=1.0) == "unknown"
    assert verdict(check, gas_in_use=True, flame_distance=1.0) == "fail"
    assert verdict(check, gas_in_use=False, flame_distance=1.0) is None


def test_a_danger_is_never_passed_over() -> None:
    with pytest.raises(ValidationError, match="whether its subject is known or not"):
        made({"at_least": 5, "unit": "m"}, "flame_distance", severity="danger", only_if_stated=True)


@cache
def plain_facts(said: str) -> dict[str, Any]:
    """Facts said the way a caller says them, as checks read them."""
    from kilisho.questions.stated_facts import stated_facts as model_of
    from kilisho.questions.stated_facts import values_by_id

    return values_by_id(model_of(base().data.facts).model_validate(json.loads(said)))


@given(st.data())
@settings(max_examples=100)
def test_leaving_a_fact_out_never_makes_anything_pass(data: st.DataObject) -> None:
    said = data.draw(stated_facts().filter(bool))
    facts = plain_facts(json.dumps(said))
    for operation in OPERATIONS:
        full = {found.compiled.id: found.verdict for found in evaluate(compiled(operation), facts)}
        left_out = data.draw(st.sampled_from(sorted(facts)))
        fewer = evaluate(compiled(operation), {name: fact for name, fact in facts.items() if name != left_out})
        for found in fewer:
            if found.verdict is Verdict.passed:
                assert full[found.compiled.id] is Verdict.passed
        # A check that did not apply may become unknown, but none that failed may vanish or pass.
        known = {found.compiled.id: found.verdict for found in fewer}
        for name, how in full.items():
            if how is Verdict.failed:
                assert known[name] in {Verdict.failed, Verdict.unknown}


@given(st.data())
@settings(max_examples=60)
def test_never_clear_while_a_danger_is_unanswered(data: st.DataObject) -> None:
    said = data.draw(stated_facts())
    answer = ask("safety-check", {"facts": said} if said else {})
    dangers = [one for one in answer["findings"] if one["severity"] == "danger"]
    if any(one["verdict"] == "fail" for one in dangers):
        assert answer["verdict"] == "danger"
        assert answer["stop"]
    elif any(one["verdict"] == "unknown" for one in dangers):
        assert answer["verdict"] == "unknown"
        assert answer["unanswered"]
        assert not answer["stop"]
    else:
        assert answer["verdict"] != "unknown"


@given(st.data())
@settings(max_examples=60)
def test_planned_entry_is_danger_whatever_else_is_true(data: st.DataObject) -> None:
    said = {**data.draw(stated_facts()), "entry_planned": True}
    answer = ask("safety-check", {"facts": said})
    assert (answer["verdict"], answer["stop"]) == ("danger", True)
    assert ("no_entry", "fail") in [(one["check"], one["verdict"]) for one in answer["findings"]]


def everything(**changes: Any) -> dict[str, Any]:
    """Every fact stated so that as few checks as possible fail: the first value that passes all checks on it alone."""
    facts: dict[str, Any] = {}
    for name, fact in base().data.facts.items():
        tests = [check for check in compiled() if check.subject == name]
        candidates = _candidates(name, fact, tests)
        facts[name] = next((c for c in candidates if all(check.test(c) for check in tests)), candidates[0])
    return {**facts, **changes}


def _candidates(name: str, fact: Any, tests: list[Compiled]) -> list[Any]:
    if fact.kind == "yes_no":
        return [False, True]
    if fact.kind == "one_of":
        return list(fact.values)
    if fact.kind == "structure":
        return sorted(base().data.structures)
    if fact.kind == "list_of":
        return [()]
    from kilisho.units import to_canonical

    ends = [to_canonical(end, fact.kind, fact.unit) for end in (fact.at_least, fact.at_most)]
    bounds = [bound for check in tests for bound in _bounds(check, fact.kind)]
    inner = [*ends, *bounds, *(b * 1.001 for b in bounds), *(b * 0.999 for b in bounds)]
    return sorted(inner)


def _bounds(check: Compiled, kind: str) -> list[float]:
    from kilisho.units import to_canonical

    numbers = [v for k, v in check.bound.items() if k != "unit"]
    flat = [n for v in numbers for n in (v if isinstance(v, list) else [v])]
    code = check.bound.get("unit")
    return [to_canonical(n, kind, code) if code else n for n in flat if not isinstance(n, bool | str)]


def test_a_farm_that_answers_everything_well_has_no_unknown() -> None:
    found = evaluate(compiled(), everything())
    assert not [one.compiled.id for one in found if one.verdict is Verdict.unknown]
    assert overall(found) != "unknown"
    assert overall(evaluate(compiled(), everything(entry_planned=True))) == "danger"


@pytest.mark.parametrize("name", sorted(base().data.facts))
def test_a_value_that_may_be_stated_is_accepted_at_its_bounds(name: str) -> None:
    fact = base().data.facts[name]
    if fact.at_least is None:
        by_kind: dict[str, list[Any]] = {"yes_no": [True], "structure": ["bag"]}
        said = by_kind.get(fact.kind) or ([fact.values[0]] if fact.kind == "one_of" else [[], list(fact.values)])
    else:
        said = [fact.at_least, fact.at_most, {"value": fact.at_most, "unit": fact.unit}]
    for one in said:
        assert list(plain_facts(json.dumps({name: one}))) == [name]


def test_a_check_shows_its_bound_as_the_pack_states_it() -> None:
    check = made({"at_least": 500, "unit": "cm"}, "distance_to_well")
    assert check.bound == {"at_least": 500, "unit": "cm"}
    # The test itself is in canonical units.
    assert (verdict(check, distance_to_well=5.0), verdict(check, distance_to_well=4.99)) == ("pass", "fail")
