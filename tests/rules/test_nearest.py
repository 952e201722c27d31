"""Names that are offered to whoever wrote another."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import base

from kilisho.nearest import nearest
from kilisho.units import KINDS, UnknownUnitError, unit_of

DATA = base().data


@pytest.mark.parametrize(
    ("written", "meant"),
    [("cow", "dairy_cow"), ("Dairy Cow", "dairy_cow"), ("dairy-cows", "dairy_cow"), ("hen", "layer_hen"), ("PIG", "fattening_pig")],
)
def test_an_animal_is_offered_for_its_everyday_name(written: str, meant: str) -> None:
    assert nearest(written, DATA.animals)[0] == meant


def test_a_whole_word_goes_before_a_likeness() -> None:
    """By letters alone a sow is nearer to a cow than a dairy cow is."""
    assert nearest("cow", ["sow", "dairy_cow", "goat"]) == ["dairy_cow", "sow"]


@pytest.mark.parametrize(
    ("kind", "written", "meant"),
    [("volume", "l", "L"), ("volume", "M3", "m3"), ("mass_flow", "KG/D", "kg/d"), ("temperature", "cel", "Cel")],
)
def test_a_unit_in_another_case_is_offered_first(kind: str, written: str, meant: str) -> None:
    with pytest.raises(UnknownUnitError) as unknown:
        unit_of(kind, written)
    assert unknown.value.nearest[0] == meant


@given(st.text(max_size=40), st.sampled_from(sorted(KINDS)))
def test_no_more_than_three_known_names_are_offered_and_none_twice(text: str, kind: str) -> None:
    found = nearest(text, KINDS[kind].units)
    assert len(found) == len(set(found)) <= 3
    assert set(found) <= set(KINDS[kind].units)


@given(st.sampled_from(sorted(DATA.structures)))
def test_a_known_name_is_nearest_to_itself_in_any_writing(name: str) -> None:
    assert nearest(name.replace("_", " ").title(), DATA.structures)[0] == name
    assert nearest("", DATA.structures) == nearest("qqqqqqqq", DATA.structures) == []
