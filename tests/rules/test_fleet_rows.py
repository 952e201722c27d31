"""Loosely typed rows, as files of text and of JSON lines give them."""

from __future__ import annotations

import csv
import datetime as dt
import io
import json
from pathlib import Path
from typing import Any

import pyarrow as pa
import pytest
from hypothesis import given, settings
from tests.rules import fleets
from tests.rules.conftest import Json
from tests.rules.fleets import fleet, row, table

from kilisho.faults import Fault
from kilisho.fleet import FAULTS, read_rows
from kilisho.fleet.gathering import of_rows
from kilisho.fleet.nested_facts import width

CONTRACT = Path(__file__).parents[1] / "contract"


def answered(rows: list[Any]) -> list[Json]:
    found: list[Json] = fleet().answer(read_rows(rows, fleet().members)).to_pylist()
    return found


def reasons(found: Json) -> list[tuple[str, str]]:
    return [(fault["column"], fault["code"]) for fault in found[FAULTS] or ()]


NOT_JSON = Fault((), "row_unreadable", "not one JSON document")


def lines(name: str) -> list[Any]:
    """The rows of a file of JSON lines, or the fault of a line that is none."""
    found: list[Any] = []
    for line in (CONTRACT / name).read_text("utf-8").splitlines():
        try:
            found.append(json.loads(line))
        except ValueError:
            found.append(NOT_JSON)
    return found


def test_the_fleet_of_the_contract_as_text() -> None:
    rows = list(csv.DictReader(io.StringIO((CONTRACT / "fleet.csv").read_text("utf-8"))))
    found = answered(rows)
    assert [one["id"] for one in found] == [one["id"] for one in rows]
    assert [one["verdict"] for one in found] == ["attention", "faulty", "refused", "refused", "refused", "doubtful"]
    assert found[1]["feeding"] == "starved"
    assert [reasons(one) for one in found[2:5]] == [
        [("structure", "unknown_id")],
        [("total_volume", "out_of_range")],
        [("feed_mass", "number_expected")],
    ]


def test_the_fleet_of_the_contract_as_lines_of_json() -> None:
    rows = lines("fleet.ndjson")
    found = answered(rows)
    assert len(found) == len(rows)
    assert [one["verdict"] for one in found] == ["attention", "faulty", "refused", "refused", "refused", "refused", "doubtful"]
    assert reasons(found[5]) == [("", "row_unreadable")]


def test_both_files_say_the_same_of_the_same_rows() -> None:
    by_text = {one["id"]: one for one in answered(list(csv.DictReader(io.StringIO((CONTRACT / "fleet.csv").read_text("utf-8")))))}
    by_json = {one["id"]: one for one in answered(lines("fleet.ndjson"))}
    for name in ("K-000002", "K-000003", "K-000004", "K-000005", "K-000007"):
        assert by_text[name] == by_json[name]


@given(fleets.rows())
@settings(max_examples=60)
def test_a_row_of_plain_cells_is_that_of_a_typed_column(stated: Json) -> None:
    plain = {name: cell.isoformat() if isinstance(cell, dt.date) else cell for name, cell in stated.items()}
    [typed] = fleet().answer(table([stated])).to_pylist()
    [loose] = answered([plain])
    assert loose == typed


@given(fleets.rows(with_facts=False))
@settings(max_examples=60)
def test_a_row_of_text_says_what_its_numbers_say(stated: Json) -> None:
    finite = {name: cell for name, cell in stated.items() if not isinstance(cell, float) or abs(cell) < 1e300}
    as_text = {name: cell.isoformat() if isinstance(cell, dt.date) else str(cell) for name, cell in finite.items()}
    [typed] = fleet().answer(table([finite])).to_pylist()
    [loose] = answered([as_text])
    assert loose == typed


IN_MANY_WAYS: list[tuple[Any, float]] = [
    (40, 40.0),
    (40.0, 40.0),
    ("40", 40.0),
    (" 4e1 ", 40.0),
    ({"value": 40, "unit": "kg/d"}, 40.0),
    ({"value": 0.04, "unit": "t/d"}, 40.0),
]


@pytest.mark.parametrize(("cell", "kilograms"), IN_MANY_WAYS)
def test_a_number_may_come_in_many_ways(cell: Any, kilograms: float) -> None:
    assert answered([row(feed_mass=cell)]) == answered([row(feed_mass=kilograms)])


@pytest.mark.parametrize("nothing", [None, "", "   "])
def test_nothing_in_a_cell_says_nothing(nothing: Any) -> None:
    without = row(water_volume=None)
    assert answered([{**without, "water_volume": nothing}]) == answered([without])


@pytest.mark.parametrize(
    ("name", "cell", "code"),
    [
        ("feed_mass", "forty", "number_expected"),
        ("feed_mass", True, "number_expected"),
        ("feed_mass", {"value": 40}, "value_and_unit"),
        ("feed_mass", {"value": 40, "unit": "m3"}, "unknown_unit"),
        ("feed_mass", float("nan"), "out_of_range"),
        ("animal_count", "2.5", "whole_number_expected"),
        ("structure", 7, "text_expected"),
        ("visited_on", "yesterday", "date_expected"),
        ("entry_planned", 1, "yes_no_expected"),
    ],
)
def test_a_bad_cell_is_a_fault_of_its_row_and_of_no_other(name: str, cell: Any, code: str) -> None:
    before, bad, after = answered([row(), {**row(), name: cell}, row()])
    assert reasons(bad) == [(name, code)]
    assert bad["verdict"] == "refused"
    assert before == after == answered([row()])[0]


@pytest.mark.parametrize("thing", [[1, 2], "a word", 7, None])
def test_a_row_that_is_no_object_keeps_its_place(thing: Any) -> None:
    found = answered([row(), thing, row()])
    assert [one["verdict"] for one in found] == ["unknown", "refused", "unknown"]
    assert reasons(found[1]) == [("", "row_unreadable")]


def test_every_bad_cell_of_a_row_is_told() -> None:
    [bad] = answered([row(structure="igloo", feed_mass="x", ph=-3, total_volume=None)])
    assert sorted(reasons(bad)) == [
        ("feed_mass", "number_expected"),
        ("ph", "out_of_range"),
        ("structure", "unknown_id"),
        ("total_volume", "missing"),
    ]


@pytest.mark.parametrize(("cell", "told"), [("K-1", "K-1"), (417, "417"), ("", None), (None, None)])
def test_ids_are_given_back_as_text(cell: Any, told: str | None) -> None:
    assert answered([{**row(), "id": cell}])[0]["id"] == told


def test_columns_that_nobody_reads_are_passed_over() -> None:
    assert answered([{**row(), "district": "North", "feed_mas": 3}]) == answered([row()])


def test_no_rows_make_an_empty_batch() -> None:
    assert answered([]) == []


def test_a_batch_that_was_read_can_be_cut_like_any_other() -> None:
    rows = [row(id=str(number), feed_mass="x" if number % 3 == 0 else 40 + number) for number in range(9)]
    batch = read_rows(rows, fleet().members)
    at_once = fleet().answer(batch).to_pylist()
    parts = [one for start in range(0, 9, 2) for one in fleet().answer(batch.slice(start, 2)).to_pylist()]
    assert parts == at_once


# Facts as the single request has them


DANGEROUS = {"gas_vented_indoors": True, "gas_smell_indoors": False}


@pytest.mark.parametrize("facts", [DANGEROUS, {"leak_test_method": "soapy_water"}, {"distance_to_well": {"value": 900, "unit": "cm"}}])
def test_facts_in_an_object_say_what_the_single_request_says(facts: Json) -> None:
    """Against the single request with the same body, and the same facts as columns."""
    single = fleets.asked({**row(), **facts})
    assert not isinstance(single, Exception)
    [nested] = answered([{**row(), "facts": facts}])
    assert nested == answered([{**row(), **facts}])[0]
    assert (nested["verdict"], nested["safety"]) == (single["verdict"], single["aspects"]["safety"])


@given(fleets.rows())
@settings(max_examples=40)
def test_a_row_may_be_the_body_of_a_single_request(stated: Json) -> None:
    body = {"id": stated["id"], **fleets.request_of({name: value for name, value in stated.items() if name != "id"})}
    [typed] = fleet().answer(table([stated])).to_pylist()
    assert answered([body]) == [typed]


@pytest.mark.parametrize(
    ("column", "fact", "codes"),
    [
        (True, True, []),
        (None, True, []),
        ("  ", True, []),
        (True, None, []),
        (False, True, [("gas_vented_indoors", "stated_twice")]),
        (True, False, [("gas_vented_indoors", "stated_twice")]),
        (True, "perhaps", [("gas_vented_indoors", "stated_twice")]),
        (None, "perhaps", [("gas_vented_indoors", "yes_no_expected")]),
    ],
)
def test_a_fact_that_is_a_column_too_is_the_same_there(column: Any, fact: Any, codes: list[tuple[str, str]]) -> None:
    [found] = answered([row(gas_vented_indoors=column) | {"facts": {"gas_vented_indoors": fact}}])
    assert reasons(found) == codes
    assert found["verdict"] == ("refused" if codes else "danger")


def test_numbers_in_facts_agree_in_any_unit() -> None:
    same, other = ({"distance_to_well": {"value": number, "unit": "cm"}} for number in (900, 500))
    found = answered([row(distance_to_well=9, facts=same), row(distance_to_well=9, facts=other)])
    assert [reasons(one) for one in found] == [[], [("distance_to_well", "stated_twice")]]


@pytest.mark.parametrize(
    ("facts", "codes"),
    [([], ["object_expected"]), (7, ["object_expected"]), (True, ["object_expected"]), (None, []), ("a remark", []), ({}, [])],
)
def test_facts_that_are_no_object_are_a_fault_of_the_row(facts: Any, codes: list[str]) -> None:
    """Text is passed over, as a column of that name is in a text file."""
    [found] = answered([row() | {"facts": facts}])
    assert reasons(found) == [("facts", code) for code in codes]


def test_what_is_unknown_among_facts_is_named_as_unread_with_what_was_meant() -> None:
    row_of = {**row(), "facts": {"gas_vented_indoor": True, "id": "other", "entry_planned": False}}
    batch, names = of_rows([row_of, {**row(), "facts": "a remark"}], fleet().columns)
    assert batch["id"].to_pylist() == [row()["id"]] * 2
    assert sorted(fleet().columns.unread(names)) == ["facts", "facts.gas_vented_indoor", "facts.id"]
    assert fleet().columns.nearest("facts.gas_vented_indoor")[0] == "gas_vented_indoors"


def test_facts_in_an_object_count_as_cells() -> None:
    assert width({"id": 1, "facts": {"a": 1, "b": 2}}) == 4
    assert width({"id": 1, "facts": "a remark"}) == 2


# Days


@pytest.mark.parametrize(
    "day", ["2024-03-01", " 2024-03-01 ", "2024-03-01 00:00:00", "2024-03-01T00:00:00", "2024-03-01T00:00", "2024-03-01 00:00:00.000"]
)
def test_a_day_may_be_written_as_its_midnight(day: str) -> None:
    """As general libraries for tables write days (common practice)."""
    plain, other = ({**row(), "commissioned_on": said, "visited_on": "2024-03-20"} for said in ("2024-03-01", day))
    assert answered([other]) == answered([plain])
    assert fleet().answer(table_of_text(other)).to_pylist() == answered([plain])


@pytest.mark.parametrize(
    "day", ["2024-03-01 12:00:00", "2024-03-01T00:00:01", "00:00:00", "2024-03-01 00:00:00+03:00", "2024-02-30 00:00:00", "1.3.2024"]
)
def test_another_time_of_day_is_a_fault(day: str) -> None:
    assert reasons(answered([row(visited_on=day)])[0]) == [("visited_on", "date_expected")]
    [found] = fleet().answer(table_of_text(row(visited_on=day))).to_pylist()
    assert reasons(found) == [("visited_on", "date_expected")]


def table_of_text(stated: Json) -> pa.RecordBatch:
    """A row in columns of text, as a file of text has it."""
    return pa.RecordBatch.from_pydict({name: [str(cell)] for name, cell in stated.items()})
