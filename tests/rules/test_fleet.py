"""Fleets: a row of a table is answered as the same record is alone, in its place, however the table is cut, whatever else stands in it."""

from __future__ import annotations

import datetime as dt
import math
import subprocess
import sys
from typing import Any

import pyarrow as pa
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules import fleets
from tests.rules.conftest import Json, base
from tests.rules.fleets import ASPECTS, answered, asked, fleet, one, row, rows, table

from kilisho.faults import RefusedError
from kilisho.fleet import FAULTS, PART, validate
from kilisho.fleet.answers import NUMBERS
from kilisho.questions.answers import in_cubic_metres_per_day, in_number
from kilisho.questions.installation.told import OF_PROCESS
from kilisho.questions.installation.verdicts import WORDS
from kilisho.rulebook import Severity

URGENCY = {str(severity): rank for rank, severity in enumerate(Severity)}

# One row alone against the same row in a table


def assert_same(stated: Json, found: Json) -> None:
    """A row of a table says what the single request says: the same refusal, or the same verdicts, findings, numbers and slips."""
    alone = asked(stated)
    if isinstance(alone, RefusedError):
        assert found["verdict"] == "refused"
        assert_same_faults(alone, found[FAULTS])
        return
    assert found[FAULTS] is None
    assert found["id"] == alone.get("id")
    assert {name: found[name] for name in WORDS} == {"verdict": alone["verdict"], **alone["aspects"]}
    assert_same_findings(alone["findings"], found)
    assert_same_numbers(alone, found)
    assert_same_slips(alone["findings"], found["slips"])


def assert_same_faults(refused: RefusedError, faults: list[Json]) -> None:
    """Every fault of the request is one of the row, in the same words, and none more."""
    expected = {(fault.pointer.removeprefix("/facts").removeprefix("/"), fault.code) for fault in refused.faults}
    assert {(fault["column"], fault["code"]) for fault in faults} == expected
    details = {fault.detail for fault in refused.faults if fault.code != "stated_twice"}
    assert all(any(fault["detail"].startswith(detail) for detail in details) for fault in faults if fault["code"] != "stated_twice")


def assert_same_findings(findings: list[Json], found: Json) -> None:
    """Failed and unknown checks are the same, the most urgent first."""
    of = {end: [one for one in findings if one["verdict"] == end] for end in ("fail", "unknown")}
    assert sorted(found["failed"]) == sorted(one["check"] for one in of["fail"])
    assert sorted(found["unknown"]) == sorted(one["check"] for one in of["unknown"] if one["severity"] != "danger")
    assert sorted(found["open_dangers"]) == sorted(one["check"] for one in of["unknown"] if one["severity"] == "danger")
    for name in ("failed", "unknown"):
        severities = [URGENCY[str(base().data.checks[check].severity)] for check in found[name]]
        assert severities == sorted(severities)


def assert_same_numbers(alone: Json, found: Json) -> None:
    """Every number that is told of the single record is that of the row, told in the same way; what is unknown is unknown in both."""
    assert alone.get("expected") == told(in_cubic_metres_per_day, found, "expected", "expected_low", "expected_high")
    assert alone.get("gas_ratio") == told(in_number, found, "gas_ratio", "gas_ratio_low", "gas_ratio_high")
    for name, tell in OF_PROCESS.items():
        assert alone["worked_out"].get(name) == told(tell, found, name), name


def told(tell: Any, found: Json, *names: str) -> Json | None:
    values = [found[name] for name in names]
    return None if None in values else tell(*values)


def assert_same_slips(findings: list[Json], slips: list[Json]) -> None:
    """The same numbers are likely in another reading, in the same one."""
    probable = {one["probably"]["member"]: one["probably"] for one in findings if "probably" in one}
    assert {slip["member"] for slip in slips} == probable.keys()
    for slip in slips:
        assert slip["read_as"] == probable[slip["member"]]["read_as"]
        assert slip["value"] == pytest.approx(probable[slip["member"]]["value"], rel=1e-5)


@given(st.lists(rows(), min_size=1, max_size=12))
@settings(max_examples=150)
def test_a_row_says_what_the_same_record_says_alone(stated: list[Json]) -> None:
    for one_row, found in zip(stated, answered(stated), strict=True):
        assert_same(one_row, found)


@pytest.mark.parametrize("name", [*fleets.OPTIONAL, "structure", "total_volume"])
def test_leaving_one_member_out_is_the_same_in_both(name: str) -> None:
    full = row(**{member: value for member, value in EVERYTHING.items() if member != name})
    full.pop(name, None)
    assert_same(full, answered([full])[0])


EVERYTHING: Json = {
    "gas_storage_volume": 1.8,
    "housing": "stall",
    "gas_pressure": 5000.0,
    "ph": 7.1,
    "altitude": 1200.0,
    "digester_temperature": 24.0,
    "distance_to_well": 22.0,
    "commissioned_on": dt.date(2020, 5, 1),
    "visited_on": dt.date(2023, 5, 1),
}


def test_a_row_with_everything_has_no_unknown_check_but_those_of_facts() -> None:
    found = one(**EVERYTHING)
    assert found["unknown"] == []
    assert found["assumed"] == []


# Where a row stands and how the table is cut


def whole(batches: list[pa.RecordBatch], **cut: int) -> list[Json]:
    return pa.Table.from_batches(list(validate(batches, base(), **cut))).to_pylist()


def same_rows(first: list[Json], second: list[Json]) -> bool:
    """Equal to the last bit; NaN never stands in an answer."""
    return first == second


@given(st.lists(rows(), min_size=2, max_size=14), st.integers(1, 5), st.data())
@settings(max_examples=60)
def test_neither_cutting_nor_order_changes_an_answer(stated: list[Json], size: int, data: Any) -> None:
    batch = table(stated)
    at_once = whole([batch])
    assert same_rows(whole([batch], largest=size), at_once)
    cut = data.draw(st.integers(0, len(stated)))
    assert same_rows(whole([batch.slice(0, cut), batch.slice(cut)]), at_once)
    order = data.draw(st.permutations(range(len(stated))))
    assert same_rows(whole([batch.take(pa.array(order))]), [at_once[place] for place in order])


def test_parts_of_a_large_batch_join_without_a_seam() -> None:
    stated = [row(id=f"INV-{n}", feed_mass=10.0 + n % 97, total_volume=(6.0, 9.0, -9.0, 9000.0)[n % 4]) for n in range(PART + 50)]
    found = fleet().answer(table(stated)).to_pylist()
    assert [one["id"] for one in found] == [one["id"] for one in stated]
    for place in (0, 1, 2, 3, PART - 2, PART - 1, PART, PART + 1, PART + 49):
        assert found[place] == answered([stated[place]])[0]


def test_memory_is_bounded_by_the_largest_batch() -> None:
    batch = table([row()] * 1000)
    sizes = [answer.num_rows for answer in validate(iter([batch, batch.slice(0, 1), batch.slice(0, 0)]), base(), largest=300)]
    assert sizes == [300, 300, 300, 100, 1]


def test_batches_are_answered_as_they_come() -> None:
    taken = []

    def coming() -> Any:
        for number in range(3):
            taken.append(number)
            yield table([row(id=str(number))])

    stream = validate(coming(), base())
    assert next(stream)["id"].to_pylist() == ["0"]
    assert taken == [0]


# Rows that cannot be read


BAD: dict[str, tuple[Json, list[tuple[str, str]]]] = {
    "an unknown id": ({"structure": "igloo"}, [("structure", "unknown_id")]),
    "a misspelt substrate": ({"substrate": "cattle_dun"}, [("substrate", "unknown_id")]),
    "a housing that is none": ({"housing": "field"}, [("housing", "not_one_of")]),
    "a negative volume": ({"total_volume": -9.0}, [("total_volume", "out_of_range")]),
    "a volume of nothing": ({"total_volume": 0.0}, [("total_volume", "out_of_range")]),
    "not a number": ({"feed_mass": math.nan}, [("feed_mass", "out_of_range")]),
    "endless water": ({"water_volume": math.inf}, [("water_volume", "out_of_range")]),
    "half a cow": ({"animal_count": 2.5}, [("animal_count", "whole_number_expected")]),
    "no structure": ({"structure": None}, [("structure", "missing")]),
    "no volume": ({"total_volume": None}, [("total_volume", "missing")]),
    "neither": ({"structure": None, "total_volume": None}, [("structure", "missing"), ("total_volume", "missing")]),
    "several at once": (
        {"structure": "igloo", "feed_mass": -1.0, "ph": 9999.0},
        [("structure", "unknown_id"), ("feed_mass", "out_of_range"), ("ph", "out_of_range")],
    ),
    "a fact that the record denies": ({"hydraulic_retention_time": 400.0}, [("hydraulic_retention_time", "stated_twice")]),
}


@pytest.mark.parametrize("name", BAD)
def test_a_bad_row_is_answered_in_its_place_with_every_reason(name: str) -> None:
    changes, reasons = BAD[name]
    before, bad, after = answered([row(), row(**changes), row(total_volume=10.0)])
    assert sorted((fault["column"], fault["code"]) for fault in bad[FAULTS]) == sorted(reasons)
    assert all(fault["detail"] for fault in bad[FAULTS])
    assert bad["verdict"] == "refused"
    assert bad["id"] == "INV-1"
    assert [before, after] == answered([row(), row(total_volume=10.0)])


@pytest.mark.parametrize("name", BAD)
def test_a_bad_row_tells_nothing_else(name: str) -> None:
    [bad] = answered([row(**BAD[name][0])])
    assert {key for key, value in bad.items() if value is not None} == {"id", "verdict", FAULTS}


def test_a_table_of_bad_rows_only_is_answered_whole() -> None:
    found = answered([row(total_volume=-1.0 - n) for n in range(40)])
    assert {one["verdict"] for one in found} == {"refused"}
    assert len(found) == 40


def test_a_table_without_a_required_column_refuses_every_row() -> None:
    found = fleet().answer(pa.RecordBatch.from_pydict({"id": ["a", "b"], "structure": ["bag", "bag"]})).to_pylist()
    assert [[fault["column"] for fault in one[FAULTS]] for one in found] == [["total_volume"], ["total_volume"]]


def test_an_empty_batch_gives_an_empty_batch_of_the_same_columns() -> None:
    empty = fleet().answer(table([row()]).slice(0, 0))
    assert empty.num_rows == 0
    assert empty.schema == fleet().answer(table([row()])).schema


# Nothing that is missing may read as a pass


@given(rows(with_facts=False), st.data())
@settings(max_examples=100)
def test_taking_a_value_away_never_turns_a_failure_into_a_pass(stated: Json, data: Any) -> None:
    """What is left out leaves its checks unknown: a check that failed is then failed, unknown, or does not apply, but never passed."""
    gone = data.draw(st.sampled_from(WITHOUT_SUBSTITUTE))
    full, less = answered([stated, {name: value for name, value in stated.items() if name != gone}])
    if "refused" in (full["verdict"], less["verdict"]) or gone not in stated:
        return
    assumed = OF_GAS if gone == "water_volume" else set()
    silent = set(full["failed"]) - set(less["failed"]) - set(less["unknown"]) - set(less["open_dangers"]) - {"gas_is_measured"} - assumed
    assert not silent, (gone, silent)


# Members that nothing else of a record stands in for. Without water the gas is held against a wider range, and the answer says so.
WITHOUT_SUBSTITUTE = ("feed_mass", "water_volume", "feeding_interval", "biogas_measured", "gas_pressure", "ph", "animal_count")
OF_GAS = {name for name, check in base().data.checks.items() if check.subject.startswith("gas_ratio")}


def test_an_empty_record_is_unknown_and_never_sound() -> None:
    [found] = answered([{"structure": "fixed_dome", "total_volume": 9.0}])
    assert [found[name] for name in ("verdict", *ASPECTS)] == ["unknown", "possible", "unknown", "unknown", "not_measured", "open"]
    assert len(found["open_dangers"]) > 20


@pytest.mark.parametrize("name", ["feed_mass", "water_volume", "feeding_interval", "mean_air_temperature"])
def test_without_any_part_of_it_feeding_is_unknown(name: str) -> None:
    assert one()["feeding"] == "fitting"
    assert one(**{name: None})["feeding"] == "unknown"


# The answer's columns


def test_the_columns_are_those_of_the_schema_with_their_units() -> None:
    answer = fleet().answer(table([row()]))
    assert answer.schema == fleet().schema
    units = {field.name: field.metadata[b"unit"].decode() for field in answer.schema if field.metadata}
    assert units == {name: unit for name, (_, _, unit) in NUMBERS.items()}


def test_an_id_keeps_its_type() -> None:
    batch = table([row(id=None)]).append_column("id", pa.array([417]))
    answer = fleet().answer(batch)
    assert answer["id"].to_pylist() == [417]
    assert answer.schema.field("id").type == pa.int64()


def test_a_table_without_ids_is_answered_in_its_order() -> None:
    found = fleet().answer(table([row(id=None), row(id=None, total_volume=-1.0)])).to_pylist()
    assert [(one["id"], one["verdict"]) for one in found] == [(None, "unknown"), (None, "refused")]


def test_columns_that_nobody_reads_are_named() -> None:
    assert fleet().columns.unread(["id", "structure", "feed_mas", "district", "gas_smell_indoors", FAULTS]) == ["feed_mas", "district"]


def test_lists_of_checks_filter_and_join_like_any_column() -> None:
    answer = pa.Table.from_batches([fleet().answer(table([row(), row(id="INV-2", feed_mass=8.0)]))])
    starved = answer.filter(pa.compute.equal(answer["feeding"].cast(pa.string()), "starved"))
    assert starved["id"].to_pylist() == ["INV-2"]
    counts = {one["values"]: one["counts"] for one in pa.compute.value_counts(answer["failed"].combine_chunks().flatten()).to_pylist()}
    assert counts["fed_share_least"] == 1


def test_nothing_else_of_kilisho_waits_for_arrow() -> None:
    program = "import sys; import kilisho.cli, kilisho.questions; sys.exit('pyarrow' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", program], check=False).returncode == 0
