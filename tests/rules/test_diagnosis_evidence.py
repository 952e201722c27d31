"""How causes are judged and weighed: clue by clue against plain loops, words against their figures, ties against urgency and id."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import ask, base

from kilisho.farm import Ledger, Shelf
from kilisho.questions.diagnosis.evidence import FREQUENCIES, STRENGTHS, Clue, Judged, Table, shares, table_of
from kilisho.questions.diagnosis.ranking import FIGURES, rank

DATA = base().data
FIGURE = {name: DATA.practice.figures[name].typical for name in FIGURES}
SYMPTOM_LISTS = st.lists(st.sampled_from(sorted(DATA.symptoms)), max_size=8, unique=True)


def typical() -> Any:
    return np.array([FIGURE[name] for name in FIGURES])


def by_hand(seen: list[str], not_seen: list[str]) -> dict[str, float]:
    """Weights by plain multiplication, from the table as its authors wrote it."""
    less = {"strong": "some", "some": "weak"}
    found = {}
    for name, cause in DATA.causes.items():
        weight = FIGURE[f"prior_{cause.how_common}"]
        for symptom in seen:
            weight *= FIGURE[f"evidence_{cause.explains[symptom]}"] if symptom in cause.explains else 1
            weight /= FIGURE[f"evidence_{cause.denied_by[symptom]}"] if symptom in cause.denied_by else 1
        for symptom in not_seen:
            word = less.get(cause.explains.get(symptom, "weak"))
            weight /= FIGURE[f"evidence_{word}"] if word else 1
        found[name] = weight
    return found


@given(SYMPTOM_LISTS, SYMPTOM_LISTS)
def test_weights_are_the_product_of_the_words_figures(seen: list[str], others: list[str]) -> None:
    not_seen = [one for one in others if one not in seen]
    judged = Table(DATA).judge(seen, not_seen, {})
    expected = by_hand(seen, not_seen)
    total = math.fsum([*expected.values(), FIGURE["prior_common"]])
    found = shares(judged, typical())
    assert len(found) == len(judged) + 1
    assert found.sum() == pytest.approx(1.0)
    for one, share in zip(judged, found, strict=False):
        assert share == pytest.approx(expected[one.id] / total, rel=1e-9), one.id
    assert found[-1] == pytest.approx(FIGURE["prior_common"] / total, rel=1e-9)


@given(SYMPTOM_LISTS)
def test_facts_that_nobody_stated_add_no_clue(seen: list[str]) -> None:
    for one in Table(DATA).judge(seen, [], {}):
        assert not [clue for clue in (*one.speaks_for, *one.speaks_against) if clue.kind != "symptom"]


def test_evidence_of_several_facts_needs_them_all() -> None:
    """A bag above 1.5 kPa speaks for a stuck relief; the same gauge on an unknown structure says nothing."""
    table = Table(DATA)

    def clues(**facts: Any) -> list[str]:
        [one] = [one for one in table.judge([], [], facts) if one.id == "relief_stuck"]
        return [clue.of for clue in one.speaks_for]

    assert clues(gas_pressure=2000.0) == []
    assert clues(structure_kind="bag") == []
    assert clues(structure_kind="fixed_dome", gas_pressure=2000.0) == []
    assert clues(structure_kind="bag", gas_pressure=2000.0) == ["structure_kind, gas_pressure"]


@pytest.mark.parametrize(
    ("fact", "value", "cause", "spoken"),
    [
        ("slurry_ph", 6.79, "overfed", "for"),
        ("slurry_ph", 6.8, "overfed", "against"),
        ("slurry_ph", 8.0, "overfed", "against"),
        ("slurry_ph", 8.01, "overfed", ""),
        ("digester_temperature", 14.9, "cold_slurry", "for"),
        ("digester_temperature", 20.1, "cold_slurry", ""),
        ("digester_temperature", 24.0, "cold_slurry", "against"),
        ("gas_ratio_to_low", 0.999, "dome_leaks_gas", "for"),
        ("gas_ratio_to_low", 1.0, "dome_leaks_gas", "against"),
        ("total_ammonia_nitrogen", 3.01, "ammonia_from_droppings", "for"),
        ("total_ammonia_nitrogen", 2.0, "ammonia_from_droppings", ""),
        ("total_ammonia_nitrogen", 1.49, "ammonia_from_droppings", "against"),
        ("level_above_port", 0.19, "port_uncovered", "for"),
        ("level_above_port", 0.2, "port_uncovered", "against"),
    ],
)
def test_bounds_of_the_readings(fact: str, value: float, cause: str, spoken: str) -> None:
    [one] = [one for one in Table(DATA).judge([], [], {fact: value}) if one.id == cause]
    assert ("for" if one.speaks_for else "against" if one.speaks_against else "") == spoken


def test_more_than_one_word_of_a_kind_counts_as_often_as_it_stands() -> None:
    cause = DATA.causes["overfed"]
    two = [Clue("symptom", "a", "some"), Clue("symptom", "b", "some")]
    power = dict(zip((*STRENGTHS, *FREQUENCIES), Judged("x", cause, two, [Clue("symptom", "c", "weak")]).powers(), strict=True))
    assert (power["some"], power["weak"], power["strong"], power["common"]) == (2, -1, 0, 1)


@pytest.mark.parametrize(("first", "second"), [("port_uncovered", "drum_stuck"), ("tank_leaks_slurry", "unconverted_burner")])
def test_equal_weights_are_ordered_by_urgency_and_then_by_id(first: str, second: str) -> None:
    """Both occasional and with no clue: at_once stands before today; with the same urgency the alphabet decides."""
    pair = [Judged(name, DATA.causes[name]) for name in (first, second)]
    for order in (pair, pair[::-1]):
        ranked, _ = rank(order, Ledger(Shelf(DATA)))
        assert [one.judged.id for one in ranked] == [first, second]
        assert ranked[0].share.value == ranked[1].share.value


def test_ranges_of_shares_come_from_the_words_ranges() -> None:
    """A lone strong sign of an occasional cause: 2 to 4 times 5 to 15 against 4 to 8; the told range lies inside these corners."""
    [told] = ask("diagnosis", {"symptoms": ["ammonia_smell"]})["causes"]
    corners = 100 * 10 / (10 + 8), 100 * 60 / (60 + 4)
    assert corners[0] < told["share"]["low"] < told["share"]["value"] < told["share"]["high"] < corners[1]


def test_the_figures_are_listed_as_assumptions_once() -> None:
    assumed = [one["quantity"] for one in ask("diagnosis", {"symptoms": ["foam"]})["assumptions"]]
    assert sorted(name for name in assumed if name.startswith(("evidence_", "prior_"))) == sorted(FIGURES)


def test_a_shelf_has_one_table() -> None:
    first, second = Shelf(DATA), Shelf(DATA)
    assert table_of(first) is table_of(first)
    assert table_of(first) is not table_of(second)
