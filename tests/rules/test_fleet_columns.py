"""Columns of every type that tables have: what is read, what says nothing, and which cells are bad."""

from __future__ import annotations

import datetime as dt
import decimal
import math
from typing import Any

import numpy as np
import pyarrow as pa
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import base
from tests.rules.fleets import fleet

from kilisho.check_columns import Coded
from kilisho.fleet import columns
from kilisho.fleet.members import MOST_KEPT, REQUIRED, Member
from kilisho.questions.installation.work import CODES, NUMBERS

MEMBERS = fleet().members


def read(name: str, column: pa.Array) -> tuple[list[Any], list[int]]:
    """What a column says, None where nothing, and the rows whose cells are bad."""
    member = MEMBERS[name]
    reader = {"number": columns.numbers, "code": columns.codes, "date": columns.days, "list": columns.lists}[member.kind]
    found, bad = reader(column, member)
    return [said(one, member) for one in (found.codes if isinstance(found, Coded) else found).tolist()], bad.tolist()


def said(one: Any, member: Member) -> Any:
    if member.kind == "code":
        return None if one < 0 else member.values[one]
    return None if isinstance(one, float) and math.isnan(one) else one


NINE = [9.0, None, 12.5]
OF_NUMBERS: dict[str, pa.Array] = {
    "double": pa.array(NINE),
    "float": pa.array(NINE, pa.float32()),
    "half": pa.array([np.float16(9), None, np.float16(12.5)], pa.float16()),
    "decimal": pa.array([decimal.Decimal("9.0"), None, decimal.Decimal("12.5")], pa.decimal128(6, 2)),
    "text": pa.array(["9", None, " 12.5 "]),
    "large text": pa.array(["9.0", "", "1.25e1"], pa.large_string()),
    "dictionary of text": pa.array(["9", "  ", "12.5"]).dictionary_encode(),
    "values with units": pa.array([{"value": 9.0, "unit": "m3"}, None, {"value": 12_500.0, "unit": "L"}]),
    "a slice": pa.array([1.0, 9.0, None, 12.5, 3.0]).slice(1, 3),
    "a slice of text": pa.array(["1", "9", None, "12.5", "3"]).slice(1, 3),
}


@pytest.mark.parametrize("kind", OF_NUMBERS)
def test_numbers_of_every_type(kind: str) -> None:
    found, bad = read("total_volume", OF_NUMBERS[kind])
    assert found == pytest.approx([9.0, None, 12.5])
    assert bad == []


@pytest.mark.parametrize("kind", [pa.int8(), pa.int64(), pa.uint16(), pa.uint64()])
def test_whole_numbers_of_every_size(kind: pa.DataType) -> None:
    assert read("total_volume", pa.array([9, None, 12], kind)) == ([9.0, None, 12.0], [])


def test_numbers_come_out_in_canonical_units() -> None:
    assert read("water_volume", pa.array([40.0]))[0] == [40.0 * 0.001]
    assert read("ph", pa.array([7.1]))[0] == [7.1]


@pytest.mark.parametrize(
    ("column", "bad"),
    [
        (pa.array([9.0, math.nan, math.inf, -1.0, 0.0, 1e9]), [1, 2, 3, 4, 5]),
        (pa.array(["9", "nine", "nan", "inf", "1e999", "-9", "9,5", "0x9", "9 m3"]), [1, 2, 3, 4, 5, 6, 7, 8]),
        (pa.array([True, None, False]), [0, 2]),
        (pa.array([[9.0], None]), [0]),
        (pa.array([{"value": 9.0, "unit": "kg"}, {"value": 9.0, "unit": "m3"}]), [0]),
        (pa.array([dt.date(2020, 1, 1), None]), [0]),
        (pa.array([b"9", None]), [0]),
        (pa.array([2**63, 9], pa.uint64()), [0]),
    ],
)
def test_bad_cells_of_a_column_of_numbers(column: pa.Array, bad: list[int]) -> None:
    found, rows = read("total_volume", column)
    assert rows == bad
    assert [row for row, one in enumerate(found) if one is None and column[row].is_valid] == bad


def test_half_an_animal_is_bad_and_three_point_nought_is_not() -> None:
    assert read("animal_count", pa.array([3.0, 2.5, 0.0, -1.0, None])) == ([3.0, None, 0.0, None, None], [1, 3])


@pytest.mark.parametrize("name", NUMBERS)
def test_the_bounds_of_a_column_are_those_of_the_request(name: str) -> None:
    """A number is bad in a table exactly where the request's own field refuses it."""
    member = MEMBERS[name]
    edges = [member.least, member.most]
    trials = [*edges, *np.nextafter(edges, [-math.inf, math.inf]).tolist(), (member.least + member.most) / 2, math.nan]
    _, bad = read(name, pa.array(trials))
    assert bad == [row for row, trial in enumerate(trials) if member.reason_of(trial) is not None]


@given(st.data())
def test_a_number_is_read_as_the_request_reads_it(data: Any) -> None:
    name = data.draw(st.sampled_from(NUMBERS))
    member = MEMBERS[name]
    number = data.draw(st.integers(0, 1000) if member.whole else st.floats(max(member.least, -1e6), min(member.most, 1e6)))
    assert read(name, pa.array([float(number)]))[0] == [member.read(number)]


OF_WORDS: dict[str, pa.Array] = {
    "text": pa.array(["bag", None, "fixed_dome"]),
    "large text": pa.array(["bag", "", "fixed_dome"], pa.large_string()),
    "dictionary": pa.array(["bag", None, "fixed_dome"]).dictionary_encode(),
    "dictionary with an unused word": pa.DictionaryArray.from_arrays(
        pa.array([1, None, 2], pa.int8()), pa.array(["igloo", "bag", "fixed_dome"])
    ),
    "dictionary with a null in it": pa.DictionaryArray.from_arrays(pa.array([0, 1, 2]), pa.array(["bag", None, "fixed_dome"])),
    "a slice": pa.array(["igloo", "bag", None, "fixed_dome"]).dictionary_encode().slice(1),
}


@pytest.mark.parametrize("kind", OF_WORDS)
def test_words_of_every_type(kind: str) -> None:
    assert read("structure", OF_WORDS[kind]) == (["bag", None, "fixed_dome"], [])


def test_unknown_words_are_bad_cells() -> None:
    assert read("structure", pa.array(["igloo", "Bag", "bag "])) == ([None, None, None], [0, 1, 2])
    assert read("structure", pa.array([1, None])) == ([None, None], [0])
    assert read("structure", pa.array([True, None])) == ([None, None], [0])


def test_yes_and_no() -> None:
    assert read("entry_planned", pa.array([True, None, False])) == ([True, None, False], [])
    assert read("entry_planned", pa.array(["true", "", "false", "yes"])) == ([True, None, False, None], [3])
    assert read("entry_planned", pa.array([1, 0, None])) == ([None, None, None], [0, 1])


def test_days() -> None:
    day = dt.date(2024, 5, 10)
    since = (day - dt.date(1970, 1, 1)).days
    for column in (pa.array([day, None]), pa.array([dt.datetime(2024, 5, 10, 23, 59), None]), pa.array(["2024-05-10", ""])):
        assert read("visited_on", column) == ([since, None], [])
    assert read("visited_on", pa.array([day, None]).cast(pa.date64())) == ([since, None], [])


@pytest.mark.parametrize("cell", ["10.5.2024", "2024-13-01", dt.date(1900, 1, 1), dt.date(2200, 1, 1), 20240510])
def test_bad_days(cell: Any) -> None:
    assert read("visited_on", pa.array([cell])) == ([None], [0])


def test_lists_of_words() -> None:
    column = pa.array([["glass", "metal"], [], None, ["gold"], ["glass", "metal"]])
    found, bad = columns.lists(column, MEMBERS["feed_contains"])
    assert bad.tolist() == [3]
    assert [found.values[code] if code >= 0 else None for code in found.codes] == [("glass", "metal"), (), None, None, ("glass", "metal")]


# Members


def test_every_member_of_a_record_and_every_fact_is_a_column() -> None:
    facts = {name for name, fact in base().data.facts.items() if fact.kind != "structure"}
    assert MEMBERS.keys() == {*NUMBERS, *CODES, "commissioned_on", "visited_on"} | facts
    assert REQUIRED == ("structure", "total_volume")


def test_a_member_of_the_record_comes_before_a_fact_of_its_name() -> None:
    assert MEMBERS["feeding_interval"].least == 0.04
    assert base().data.facts["feeding_interval"].at_least == 0


@pytest.mark.parametrize(
    ("name", "cell", "code"),
    [
        ("feed_mass", "forty", "number_expected"),
        ("feed_mass", True, "number_expected"),
        ("feed_mass", [1], "number_expected"),
        ("feed_mass", -1.0, "out_of_range"),
        ("animal_count", 1.5, "whole_number_expected"),
        ("structure", "igloo", "unknown_id"),
        ("structure", 3, "text_expected"),
        ("housing", "field", "not_one_of"),
        ("visited_on", "soon", "date_expected"),
        ("entry_planned", "maybe", "yes_no_expected"),
        ("leak_found", "somewhere", "not_one_of"),
        ("feed_contains", ["gold"], "not_one_of"),
    ],
)
def test_a_fault_has_the_words_of_the_request(name: str, cell: Any, code: str) -> None:
    reason = MEMBERS[name].reason_of(cell)
    assert reason is not None
    assert (reason.code, reason.column) == (code, name)
    assert reason.detail
    assert MEMBERS[name].reason_of(cell) == reason


def test_a_good_cell_has_no_reason_and_true_is_not_one() -> None:
    assert MEMBERS["animal_count"].reason_of(1) is None
    assert MEMBERS["animal_count"].reason_of(True) is not None
    assert MEMBERS["animal_count"].reason_of(1) is None


def test_faults_that_are_kept_do_not_fill_the_memory() -> None:
    member = MEMBERS["ph"]
    for number in range(MOST_KEPT + 10):
        member.reason_of(-1.0 - number)
    assert len(member._kept) <= MOST_KEPT


def test_a_misspelt_id_is_told_its_nearest() -> None:
    reason = MEMBERS["substrate"].reason_of("cow_dung")
    assert reason is not None
    assert "cattle_dung" in reason.detail
