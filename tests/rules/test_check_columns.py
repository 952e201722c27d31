"""Checks on columns: each row ends as the same facts end alone, whatever the operator, the condition and what is not known."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import base

from kilisho.check_columns import Coded, Column, Evaluation, both, either, for_columns, opposite, packed
from kilisho.checks import Verdict, compile_checks, evaluate
from kilisho.rulebook import Check, Fact, RulebookData

FACTS = {
    "depth": Fact(name="Depth", group="site", field="depth", kind="length", unit="cm", at_least=0, at_most=1000),
    "warmth": Fact(name="Warmth", group="site", field="warmth", kind="temperature", unit="[degF]", at_least=-80, at_most=200),
    "lid": Fact(name="Lid", group="site", field="lid", kind="yes_no"),
    "soil": Fact(name="Soil", group="site", field="soil", kind="one_of", values=("clay", "sand", "rock")),
    "found": Fact(name="Found", group="site", field="found", kind="list_of", values=("glass", "wood")),
}
MUST: dict[str, list[dict[str, Any]]] = {
    "depth": [
        {"at_least": 50, "unit": "cm"},
        {"at_most": 0.5, "unit": "m"},
        {"more_than": 50, "unit": "cm"},
        {"less_than": 500, "unit": "mm"},
        {"between": [40, 60], "unit": "cm"},
    ],
    "warmth": [{"at_least": 68, "unit": "[degF]"}, {"between": [10, 20], "unit": "Cel"}],
    "lid": [{"is": True}, {"is": False}],
    "soil": [{"is": "clay"}, {"one_of": ["clay", "sand"]}, {"none_of": ["rock"]}],
    "found": [{"includes_none_of": ["glass"]}, {"includes_none_of": ["glass", "wood"]}],
}
# On both sides of every bound and on it, in canonical units.
VALUES: dict[str, tuple[Any, ...]] = {
    "depth": (0.0, 0.4, 0.499, 0.5, 0.501, 0.6, 9.0),
    "warmth": (-3.0, 10.0, 19.9, 20.0, 20.1),
    "lid": (True, False),
    "soil": ("clay", "sand", "rock"),
    "found": ((), ("glass",), ("wood", "glass")),
}
NAMES = sorted(FACTS)


def rulebook_of(checks: dict[str, Check]) -> RulebookData:
    return RulebookData.model_construct(checks=checks, facts=FACTS)


def check_of(subject: str, must: dict[str, Any], when: dict[str, dict[str, Any]], only_if_stated: bool = False) -> Check:
    words = {"title": "A made check", "topic": "siting", "why": "made", "do": "made", "severity": "warning", "basis": "judgement"}
    conditions = {"subject": subject, "must": must, "when": when, "only_if_stated": only_if_stated}
    return Check.model_validate({**words, **conditions, "asked_in": ("safety_check",)})


@st.composite
def conditions(draw: Any) -> tuple[str, dict[str, Any]]:
    name = draw(st.sampled_from(NAMES))
    return name, draw(st.sampled_from(MUST[name]))


@st.composite
def made_checks(draw: Any) -> dict[str, Check]:
    found = {}
    for number in range(draw(st.integers(1, 5))):
        subject, must = draw(conditions())
        when = dict(draw(st.lists(conditions(), max_size=2)))
        found[f"check_{number}"] = check_of(subject, must, when, draw(st.booleans()))
    return found


def rows_of(draw: Any) -> list[dict[str, Any]]:
    """Rows in which any fact may be unknown."""
    one = st.fixed_dictionaries({}, optional={name: st.sampled_from(VALUES[name]) for name in NAMES})
    found: list[dict[str, Any]] = draw(st.lists(one, min_size=1, max_size=7))
    return found


def columns_of(rows: list[dict[str, Any]]) -> dict[str, Column]:
    """The rows as columns; a fact that no row states is left out."""
    found: dict[str, Column] = {}
    for name in NAMES:
        if not any(name in row for row in rows):
            continue
        if FACTS[name].kind in ("length", "temperature"):
            found[name] = np.array([row.get(name, np.nan) for row in rows])
        else:
            codes = [VALUES[name].index(row[name]) if name in row else -1 for row in rows]
            found[name] = Coded(np.array(codes, np.intp), VALUES[name])
    return found


def ends(mask: Any, rows: int) -> list[bool]:
    return [bool(mask)] * rows if isinstance(mask, bool) else [bool(one) for one in mask]


@given(st.data())
def test_every_row_ends_as_its_facts_end_alone(data: Any) -> None:
    checks, rows = data.draw(made_checks()), rows_of(data.draw)
    compiled = compile_checks(rulebook_of(checks), "safety_check")
    evaluation = Evaluation(columns_of(rows))
    for check in for_columns(compiled, rulebook_of(checks)):
        failed, unknown = ends(evaluation.failed(check), len(rows)), ends(evaluation.unknown(check), len(rows))
        for row, is_failed, is_unknown in zip(rows, failed, unknown, strict=True):
            alone = {finding.verdict for finding in evaluate([check.compiled], row)}
            assert is_failed == (Verdict.failed in alone)
            assert is_unknown == (Verdict.unknown in alone)


@given(st.data())
def test_a_constant_column_ends_as_an_array_of_it(data: Any) -> None:
    """One number for all rows, as for a member that is the same throughout, is no shortcut past a check."""
    checks = data.draw(made_checks())
    number = data.draw(st.sampled_from([*VALUES["depth"], float("nan")]))
    compiled = for_columns(compile_checks(rulebook_of(checks), "safety_check"), rulebook_of(checks))
    once, spread = Evaluation({"depth": number}), Evaluation({"depth": np.full(3, number)})
    for check in compiled:
        assert ends(once.failed(check), 3) == ends(spread.failed(check), 3)
        assert ends(once.unknown(check), 3) == ends(spread.unknown(check), 3)


def test_a_fact_that_no_row_states_costs_one_boolean() -> None:
    [check] = for_columns(compile_checks(rulebook_of({"a": check_of("lid", {"is": True}, {})}), "safety_check"), rulebook_of({}))
    evaluation = Evaluation({})
    assert (evaluation.failed(check), evaluation.unknown(check)) == (False, True)


def test_a_condition_that_does_not_hold_leaves_the_check_out_even_where_its_subject_is_unknown() -> None:
    made = check_of("depth", {"at_least": 50, "unit": "cm"}, {"soil": {"is": "sand"}})
    [check] = for_columns(compile_checks(rulebook_of({"a": made}), "safety_check"), rulebook_of({}))
    soil = Coded(np.array([0, 1, -1]), ("clay", "sand"))
    evaluation = Evaluation({"soil": soil})
    assert ends(evaluation.unknown(check), 3) == [False, True, True]
    assert ends(evaluation.failed(check), 3) == [False, False, False]


@pytest.mark.parametrize("name", sorted(base().data.checks))
def test_every_base_check_can_be_read_on_columns(name: str) -> None:
    data = RulebookData.model_construct(checks={name: base().data.checks[name]}, facts=base().data.facts)
    [check] = for_columns(compile_checks(data, base().data.checks[name].asked_in[0]), base().data)
    assert check.subject.name == base().data.checks[name].subject
    assert len(check.when) == len(base().data.checks[name].when)


# Masks


MASKS = st.booleans() | st.lists(st.booleans(), min_size=4, max_size=4).map(np.array)


@given(MASKS, MASKS)
def test_masks_join_like_booleans_row_by_row(first: Any, second: Any) -> None:
    rows = list(zip(ends(first, 4), ends(second, 4), strict=True))
    assert ends(either(first, second), 4) == [one or other for one, other in rows]
    assert ends(both(first, second), 4) == [one and other for one, other in rows]
    assert ends(opposite(first), 4) == [not one for one, _ in rows]


def test_no_masks_at_all() -> None:
    assert either() is False
    assert both() is True


@given(st.lists(MASKS, min_size=1, max_size=150))
def test_packed_bits_are_the_masks_in_their_order(masks: list[Any]) -> None:
    words = packed(masks, 4)
    assert len(words) == -(-len(masks) // 64)
    for place, mask in enumerate(masks):
        word = words[place // 64]
        bits = [int(one) >> (place % 64) & 1 for one in (np.full(4, word, object) if isinstance(word, int) else word)]
        assert [bool(bit) for bit in bits] == ends(mask, 4)


def test_a_word_that_is_the_same_in_all_rows_is_one_number() -> None:
    assert packed([True, False, True], 1000) == [5]
    assert packed([], 1000) == []


# Coded columns


def test_the_unknown_code_answers_to_nothing() -> None:
    column = Coded(np.array([0, -1, 1]), (1.0, 2.0))
    assert ends(column.where(lambda value: value > 1), 3) == [False, False, True]
    assert ends(column.where(lambda value: value > 1, unknown=True), 3) == [False, True, True]
    assert ends(column.where(lambda _: True), 3) == [True, False, True]
    assert column.where(lambda _: False) is False
    assert column.where(lambda _: True, unknown=True) is True
