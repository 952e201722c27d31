"""Limits: each within its own range, published as they are in force, and felt by exactly the requests beyond them."""

from __future__ import annotations

import dataclasses
import json
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests import invented
from tests.rules.conftest import base

from kilisho import questions as package
from kilisho.faults import Fault, RefusedError
from kilisho.questions import Limits, Question, open_questions
from kilisho.questions.limits import DEFAULTS, range_of
from kilisho.questions.opening import open_form

NAMES = [field.name for field in dataclasses.fields(Limits)]


def under(days: int) -> Question:
    return open_form(invented.form, base(), Limits(forecast_days=days))


def ask(question: Question, days: Any) -> Any:
    return question.ask(json.dumps({"days": days}).encode())


def refusal(question: Question, days: int) -> list[Fault]:
    with pytest.raises(RefusedError) as caught:
        ask(question, days)
    return list(caught.value.faults)


@pytest.mark.parametrize("name", NAMES)
def test_a_limit_keeps_within_its_own_range(name: str) -> None:
    least, most = range_of(name)
    for good in (least, most):
        assert getattr(Limits(**{name: good}), name) == good
    for bad in (least - 1, most + 1):
        with pytest.raises(ValueError, match=f"{name} must be at least {least} and at most {most}"):
            Limits(**{name: bad})


def test_every_limit_is_explained_and_its_default_lies_within_its_range() -> None:
    assert Limits.__doc__ is not None
    assert all(f"    {name} : " in Limits.__doc__ for name in NAMES)
    assert all(range_of(name)[0] <= getattr(DEFAULTS, name) <= range_of(name)[1] for name in NAMES)


def test_a_forecast_covers_three_years_unless_somebody_sets_it() -> None:
    assert DEFAULTS.forecast_days == 3 * 366
    assert range_of("forecast_days")[1] >= 10 * 365 + 2


@given(st.integers(*range_of("forecast_days")), st.data())
def test_exactly_the_requests_beyond_a_limit_are_refused(limit: int, data: st.DataObject) -> None:
    question = under(limit)
    within = data.draw(st.integers(1, limit) | st.just(limit))
    assert len(ask(question, within)["rows"]) == within
    [fault] = refusal(question, data.draw(st.integers(limit + 1, 10**6) | st.just(limit + 1)))
    assert (fault.pointer, fault.code) == ("/days", "out_of_range")
    assert fault.detail == f"must be at least 1 and at most {limit}"


@pytest.mark.parametrize("limit", [1, 30, 1098, 3660])
def test_the_published_schema_states_the_limit_in_force(limit: int) -> None:
    days = under(limit).request.model_json_schema()["properties"]["days"]
    assert (days["minimum"], days["maximum"]) == (1, limit)


def test_a_limit_of_one_opening_is_not_felt_by_another() -> None:
    narrow, wide = under(10), under(20)
    assert refusal(narrow, 15)
    assert len(ask(wide, 15)["rows"]) == 15
    assert refusal(narrow, 15)


def test_all_questions_are_opened_under_the_same_limits(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(package, "FORMS", (*package.FORMS, invented.form))
    assert len(ask(open_questions(base())[invented.NAME], DEFAULTS.forecast_days)["rows"]) == DEFAULTS.forecast_days
    assert refusal(open_questions(base())[invented.NAME], DEFAULTS.forecast_days + 1)
    assert refusal(open_questions(base(), Limits(forecast_days=7))[invented.NAME], 8)
