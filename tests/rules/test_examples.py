"""A question's example follows the rulebook: what is gone is exchanged or left out, and the base pack's is as it is written."""

from __future__ import annotations

import dataclasses
from collections.abc import Callable, Mapping
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from tests.rules.conftest import base

from kilisho.faults import Fault, RefusedError
from kilisho.packs import load
from kilisho.questions import Question, open_questions
from kilisho.questions.examples import illustrated

Pack = Callable[..., Path]
HEADER = "pack: {id: invented, version: 0.1.0, title: An invented region}\n"
ROTATION, MIX, USE = "batch-rotation", "feed-mix", "gas-use"


@cache
def questions() -> Mapping[str, Question]:
    return open_questions(base())


def over(pack: Pack, text: str) -> Mapping[str, Question]:
    return open_questions(load(pack(HEADER + text)))


def request_of(question: Question) -> Any:
    found = illustrated(question)
    assert found is not None
    assert found.answer == question.tell(question.read(found.request))
    return found.request


@pytest.mark.parametrize("name", ["sizing", "diagnosis", "safety-check", "installations/validate", USE])
def test_over_the_base_pack_it_is_the_one_that_is_written(name: str) -> None:
    assert request_of(questions()[name]) is questions()[name].example


def test_an_id_that_is_gone_is_exchanged_for_the_first_of_its_section(pack: Pack) -> None:
    found = over(pack, "animals: {dairy_cow: null}\ncrops: {maize: null}\n")
    first = next(iter(name for name in base().data.animals if name != "dairy_cow"))
    assert [one["animal"] for one in request_of(found["sizing"])["herd"]] == [first]
    assert request_of(found["installations/validate"])["animal"] == first
    crop = next(iter(name for name in base().data.crops if name not in ("maize", "napier_grass", "leafy_vegetables")))
    assert crop in [one["crop"] for one in request_of(found["digestate"])["crops"]]
    assert request_of(found["sizing"]) == request_of(over(pack, "animals: {dairy_cow: null}\ncrops: {maize: null}\n")["sizing"])


def test_several_ids_of_one_example_may_be_gone(pack: Pack) -> None:
    asked = request_of(over(pack, "appliances: {double_burner_stove: null, mantle_lamp: null}\nfuels: {firewood: null}\n")[USE])
    assert {one["appliance"] for one in asked["appliances"]}.isdisjoint({"double_burner_stove", "mantle_lamp"})
    assert len({one["fuel"] for one in asked["replaced_fuels"]}) == len(asked["replaced_fuels"]) == 2
    assert asked["gas_pressure"] == questions()[USE].example["gas_pressure"]


def test_a_section_without_ids_is_left_out(pack: Pack) -> None:
    taken_out = ", ".join(f"{name}: null" for name in base().data.fuels)
    found = over(pack, f"fuels: {{{taken_out}}}\n")[USE]
    assert request_of(found) == {name: value for name, value in questions()[USE].example.items() if name != "replaced_fuels"}


def test_a_fact_that_is_gone_is_left_out(pack: Pack) -> None:
    written = questions()["safety-check"].example
    fact = next(name for name, one in base().data.facts.items() if (one.group, one.field) == ("site", "distance_to_dwelling"))
    checks = ", ".join(f"{name}: null" for name, one in base().data.checks.items() if one.subject == fact or fact in one.when)
    asked = request_of(over(pack, f"facts: {{{fact}: null}}\nchecks: {{{checks}}}\n")["safety-check"])
    assert asked == {**written, "site": {name: value for name, value in written["site"].items() if name != "distance_to_dwelling"}}


def test_without_any_that_fits_there_is_none() -> None:
    def refusing(_asked: Any, _explain: bool) -> Any:
        raise RefusedError([Fault(("herd", 0, "count"), "invented", "another herd")])

    assert illustrated(dataclasses.replace(questions()["sizing"], answer=refusing)) is None


def test_what_only_the_answer_refuses_is_left_out() -> None:
    usual = questions()["sizing"]

    def answer(asked: Any, explain: bool) -> Any:
        if asked.water_available is not None:
            raise RefusedError([Fault(("water_available",), "invented", "no water")])
        return usual.answer(asked, explain)

    asked = request_of(dataclasses.replace(usual, answer=answer))
    assert asked == {name: value for name, value in usual.example.items() if name != "water_available"}


def test_a_failure_is_no_refusal() -> None:
    def failing(_asked: Any, _explain: bool) -> Any:
        raise IndexError

    with pytest.raises(IndexError):
        illustrated(dataclasses.replace(questions()["sizing"], answer=failing))
