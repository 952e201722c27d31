"""Tables: what is written is read back by the standard library's reader, and a spreadsheet runs nothing of it."""

from __future__ import annotations

import csv
import io
from collections.abc import Mapping
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kilisho.questions.tables import as_csv

Row = dict[str, Any]
NUMBERS = st.integers(-(10**12), 10**12) | st.floats(allow_nan=False, allow_infinity=False)
TEXTS = st.text(max_size=20) | st.sampled_from(["=1+1", " =1+1", "+1", "-1", "@sum", "\t=1", "\r1", '"', ",", "a\r\nb", "", "'", "＝1"])
NAMES = st.text("abcdefghij_", min_size=1, max_size=8)
AMOUNTS = st.fixed_dictionaries(
    {"value": NUMBERS, "unit": st.sampled_from(["kg", "m3/d", "1", "%"])}, optional={"low": NUMBERS, "high": NUMBERS}
)
ROWS = st.lists(st.dictionaries(NAMES, NUMBERS | TEXTS | AMOUNTS | st.booleans() | st.none(), min_size=1, max_size=6), max_size=6)
ENDS = {"value": "", "low": " low", "high": " high"}


def read(text: str) -> list[dict[str, str]]:
    """The rows as an ordinary reader finds them, every one as wide as the header."""
    found = list(csv.DictReader(io.StringIO(text, newline=""), strict=True))
    assert all(None not in row and None not in row.values() for row in found)
    return found


def columns(row: Mapping[str, Any]) -> dict[str, Any]:
    """The cells of a row by column, as the documentation says."""
    cells: dict[str, Any] = {}
    for name, value in row.items():
        if isinstance(value, dict):
            cells |= {f"{name}{mark} [{value['unit']}]": value[end] for end, mark in ENDS.items() if end in value}
        else:
            cells[name] = value
    return cells


def means(cell: str, value: Any) -> bool:
    """Whether ``cell`` says ``value``: numbers to the last digit, text with or without the apostrophe that disarms it."""
    if value is None or isinstance(value, bool):
        return cell == {None: "", True: "true", False: "false"}[value]
    return cell in (value, f"'{value}") if isinstance(value, str) else float(cell) == float(value)


@given(ROWS)
def test_every_value_is_read_back_in_its_own_column(rows: list[Row]) -> None:
    found = read(as_csv(rows))
    assert len(found) == len(rows)
    for row, cells in zip(rows, found, strict=True):
        expected = columns(row)
        for name, cell in cells.items():
            assert means(cell, expected.get(name)), (name, cell)
        assert expected.keys() <= cells.keys()


@given(ROWS)
def test_columns_stand_in_the_order_in_which_they_are_first_seen(rows: list[Row]) -> None:
    wanted = list(dict.fromkeys(name for row in rows for name in columns(row)))
    assert (next(csv.reader(io.StringIO(as_csv(rows), newline="")), [])) == wanted


@given(TEXTS)
def test_no_text_is_taken_for_a_formula(text: str) -> None:
    [row] = read(as_csv([{"note": text}]))
    told = row["note"]
    assert not told.lstrip().startswith(("=", "+", "-", "@", "＝", "＋", "－", "＠"))
    assert not told.startswith(("\t", "\r", "\n"))
    assert told.removeprefix("'") == text or told == text


@given(NUMBERS)
def test_a_number_stays_a_number(number: float) -> None:
    [row] = read(as_csv([{"gas": {"value": number, "unit": "m3"}, "plain": number}]))
    assert float(row["gas [m3]"]) == float(row["plain"]) == float(number)


@given(ROWS)
def test_lines_end_as_rfc_4180_wants(rows: list[Row]) -> None:
    text = as_csv([{name: value for name, value in row.items() if not isinstance(value, str)} for row in rows])
    assert text == "" or text.endswith("\r\n")
    assert text.count("\n") == text.count("\r") == text.count("\r\n")


def test_a_table_as_it_looks() -> None:
    gas = {"value": 1.5, "unit": "m3/d", "low": 1, "high": 2.0}
    rows: list[Row] = [
        {"date": "2027-01-04", "gas": gas},
        {"date": "2027-01-05", "gas": {"value": -2, "unit": "m3/d"}, "note": 'stirred, "well"'},
        {"note": "-5 Cel"},
    ]
    assert as_csv(rows) == (
        "date,gas [m3/d],gas low [m3/d],gas high [m3/d],note\r\n"
        "2027-01-04,1.5,1,2.0,\r\n"
        '2027-01-05,-2,,,"stirred, ""well"""\r\n'
        ",,,,'-5 Cel\r\n"
    )


def test_one_name_in_two_units_is_two_columns() -> None:
    rows = [{"mass": {"value": 1, "unit": "kg"}}, {"mass": {"value": 2, "unit": "t"}}]
    assert read(as_csv(rows)) == [{"mass [kg]": "1", "mass [t]": ""}, {"mass [kg]": "", "mass [t]": "2"}]


def test_no_rows_are_no_text() -> None:
    assert as_csv([]) == as_csv([{}]) == ""


@pytest.mark.parametrize("number", [float("nan"), float("inf"), float("-inf")])
def test_a_number_that_is_none_is_refused(number: float) -> None:
    with pytest.raises(ValueError, match="finite"):
        as_csv([{"gas": {"value": 1, "unit": "m3", "high": number}}])


@pytest.mark.parametrize("value", [[1], object(), b"x"])
def test_what_a_cell_cannot_hold_is_refused(value: Any) -> None:
    with pytest.raises(TypeError, match="cannot hold"):
        as_csv([{"gas": value}])


def test_two_values_in_one_column_are_refused() -> None:
    with pytest.raises(ValueError, match=r"gas \[m3\]"):
        as_csv([{"gas": {"value": 1, "unit": "m3"}, "gas [m3]": 2}])
