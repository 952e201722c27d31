"""Tables of text: every row in its place whatever is wrong with it, and column by column the same as row by row."""

from __future__ import annotations

import io
import json
import tempfile
from collections.abc import Iterator
from typing import Any

import orjson
import pyarrow as pa
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules import fleets
from tests.rules.conftest import Json, base

from kilisho.deadline import TooLongError, within
from kilisho.faults import Fault, RefusedError, TooManyRowsError
from kilisho.fleet import FAULTS, fleet_of, read_rows
from kilisho.fleet.exchange import FORMATS, SummaryWriter, Terms, told
from kilisho.fleet.gathering import of_rows
from kilisho.fleet.headings import MOST_FAULTS
from kilisho.fleet.json_rows import row_of
from kilisho.messages import LANGUAGES

NDJSON, CSV, ARROW, PARQUET = FORMATS
ROW = b'{"id":"INV-1","structure":"fixed_dome","total_volume":9}'
MOST = 100_000


def ask(body: bytes, sent: str, wanted: str | None = None, most: int = MOST, language: str = "en") -> bytes:
    """The answer to a table."""
    with tempfile.TemporaryFile(buffering=0) as file:
        file.write(body)
        writer = FORMATS[wanted or sent].writer(orjson.dumps)
        return b"".join(told(file, FORMATS[sent].read, writer, Terms(base(), most, orjson.dumps, LANGUAGES[language])).chunks)


def rows(body: bytes, sent: str, most: int = MOST, language: str = "en") -> list[Json]:
    """The answer to a table, row by row."""
    return [json.loads(line) for line in ask(body, sent, NDJSON, most, language).splitlines()]


def summary(body: bytes, sent: str) -> Json:
    """The summary of a table."""
    with tempfile.TemporaryFile(buffering=0) as file:
        file.write(body)
        terms = Terms(base(), MOST, orjson.dumps)
        found: Json = json.loads(b"".join(told(file, FORMATS[sent].read, SummaryWriter(orjson.dumps), terms).chunks))
        return found


def faults(row: Json) -> set[tuple[str, str]]:
    return {(fault["column"], fault["code"]) for fault in row.get("faults", ())}


def refused(body: bytes, sent: str) -> set[tuple[str, str]]:
    """The faults for which a table as a whole is refused."""
    with pytest.raises(RefusedError) as error:
        ask(body, sent)
    return {(fault.pointer, fault.code) for fault in error.value.faults}


# NDJSON


@pytest.mark.parametrize(
    ("line", "detail"),
    [
        (b'{"structure":"fixed_dome","total_volume":9,"total_volume":8}', "names a member twice"),
        (b'{"structure":"fixed_dome","total_vol', "not a JSON object on one line"),
        (b'{"structure":"fixed_dome","total_volume":NaN}', "not a JSON object on one line"),
        (b'{"structure":"fixed_dome","total_volume":Infinity}', "not a JSON object on one line"),
        (b'{"structure":"fixed_dome"} {"structure":"bag"}', "not a JSON object on one line"),
        (b'{"structure":"\xff"}', "not a JSON object on one line"),
        (b"[1]", "a row is an object with the columns as members"),
        (b"null", "a row is an object with the columns as members"),
        (b'{"a":' + b"[" * 5000 + b"]" * 5000 + b"}", "nests too deeply"),
    ],
)
@pytest.mark.parametrize("place", ["first", "last", "last without an end"])
def test_a_line_that_is_no_row_is_answered_in_its_place(line: bytes, detail: str, place: str) -> None:
    lines = [line, ROW] if place == "first" else [ROW, line]
    found = rows(b"\n".join(lines) + (b"" if place == "last without an end" else b"\n"), NDJSON)
    at = lines.index(line)
    assert found[at]["verdict"] == "refused"
    assert found[at]["faults"] == [{"column": "", "code": "row_unreadable", "detail": f"line {at + 1}: {detail}"}]
    assert found[1 - at]["id"] == "INV-1"
    assert found[1 - at]["verdict"] != "refused"


def test_empty_lines_are_no_rows_and_carriage_returns_are_no_matter() -> None:
    assert ask(b"\n\r\n" + ROW + b"\r\n\n  \n" + ROW, NDJSON) == ask(ROW + b"\n" + ROW + b"\n", NDJSON)


def test_cells_of_mixed_types_are_read_one_by_one() -> None:
    cells: list[Any] = [
        9,
        "9",
        {"value": 9000, "unit": "L"},
        None,
        True,
        [9],
        {"value": 9},
        {"value": 9, "unit": "ell"},
        "nine",
        10**400,
        "",
        -1,
    ]
    table = b"\n".join(
        orjson.dumps({"structure": "fixed_dome", "total_volume": cell})
        if cell != 10**400
        else b'{"structure":"fixed_dome","total_volume":1' + b"0" * 400 + b"}"
        for cell in cells
    )
    found = rows(table, NDJSON)
    codes = [next((code for column, code in faults(row)), None) for row in found]
    assert codes == [
        None,
        None,
        None,
        "missing",
        "number_expected",
        "number_expected",
        "value_and_unit",
        "unknown_unit",
        "number_expected",
        "out_of_range",
        "missing",
        "out_of_range",
    ]
    assert {json.dumps(row) for row in found[:3]} == {json.dumps(found[0])}


def test_ids_come_back_as_they_are_and_as_text_where_they_are_not() -> None:
    ids: list[Any] = ["a", "ä\n\"'", "", None, 7, "x" * 300, "=1+1"]
    found = rows(b"\n".join(orjson.dumps({"id": one, "structure": "fixed_dome", "total_volume": 9}) for one in ids), NDJSON)
    assert [row.get("id") for row in found] == ["a", "ä\n\"'", None, None, "7", "x" * 200, "=1+1"]


def test_nothing_in_a_file_of_lines_is_refused_as_a_whole() -> None:
    assert refused(b"", NDJSON) == refused(b"\n\n", NDJSON) == refused(b"PK\x03\x04\nabc", NDJSON) == {("", "table_unreadable")}


def test_more_rows_than_permitted_are_refused_before_the_first_is_answered() -> None:
    for sent, head in ((NDJSON, b""), (CSV, b"structure\n")):
        with pytest.raises(TooManyRowsError):
            ask(head + b"x\n" * 14, sent, most=10)
    with pytest.raises(TooManyRowsError):
        rows((ROW + b"\n") * 11, NDJSON, most=10)


cell = st.none() | st.booleans() | st.integers(-3, 10**20) | st.floats(allow_nan=False, allow_infinity=False) | st.text(max_size=4)
nested = st.dictionaries(st.sampled_from(["value", "unit"]), st.sampled_from([1, 9.5, "L", "m3", None]))


@settings(deadline=None, max_examples=60)
@given(
    st.lists(
        st.fixed_dictionaries(
            {},
            optional={
                name: cell | nested | st.sampled_from(["fixed_dome", "2020-02-30", "2020-02-28", "true"])
                for name in (
                    "id",
                    "structure",
                    "total_volume",
                    "feed_mass",
                    "animal_count",
                    "visited_on",
                    "gas_in_use",
                    "leak_test_method",
                    "other",
                )
            }
            | {"facts": cell | st.dictionaries(st.sampled_from(["gas_in_use", "feed_mass", "id", "other"]), cell | nested)},
        ),
        max_size=6,
    )
)
def test_column_by_column_is_row_by_row(table: list[Json]) -> None:
    """Against ``read_rows``, which reads each cell by the field of the single request."""
    fleet = fleet_of(base())
    batch, _ = of_rows(table, fleet.columns)
    expected = fleet.answer(read_rows(table, fleet.members)).to_pylist()
    assert [_sorted(row) for row in fleet.answer(batch).to_pylist()] == [_sorted(row) for row in expected]


def _sorted(row: Json) -> Json:
    return {**row, FAULTS: sorted(row[FAULTS] or (), key=lambda fault: (fault["column"], fault["code"]))}


def test_facts_as_in_the_single_request_are_read_in_lines_of_json() -> None:
    body = ROW[:-1] + b',"facts":{"gas_vented_indoors":true,"gas_vented_indors":true}}'
    [found] = rows(body, NDJSON)
    assert (found["verdict"], found["safety"]) == ("danger", "danger")
    assert [one["column"] for one in summary(body, NDJSON)["unread_columns"]] == ["facts.gas_vented_indors"]


# CSV

HEAD = b"id,structure,total_volume\n"


@pytest.mark.parametrize(
    ("line", "said"),
    [
        (b"INV-2,fixed_dome", "has 2 cells where the header has 3"),
        (b"INV-2,fixed_dome,9,9", "has 4 cells where the header has 3"),
        (b"INV-2,fixed_dome,\xff", "not text in UTF-8"),
        (b'INV-2,"fixed_dome"x,9', "a quotation mark"),
        (b'INV-2,"fixed_dome,9', "a quotation mark"),
        (b'"', "a quotation mark"),
        (b"INV-2,fixed\rdome,9", "a quotation mark"),
    ],
)
def test_a_bad_record_is_one_row_and_swallows_no_other(line: bytes, said: str) -> None:
    found = rows(HEAD + b"INV-1,fixed_dome,9\n" + line + b"\nINV-3,fixed_dome,9\nINV-4,bag,9\n", CSV)
    assert [row.get("id") for row in found] == ["INV-1", None, "INV-3", "INV-4"]
    assert [row["verdict"] == "refused" for row in found] == [False, True, False, False]
    [fault] = found[1]["faults"]
    assert (fault["column"], fault["code"]) == ("", "row_unreadable")
    assert said in fault["detail"]


def test_half_a_row_at_the_end_is_a_row() -> None:
    assert faults(rows(HEAD + b"INV-1,fixed_dome,9\nINV-2,fix", CSV)[1]) == {("", "row_unreadable")}
    assert faults(rows(HEAD + b'INV-1,fixed_dome,9\nINV-2,"fix', CSV)[1]) == {("", "row_unreadable")}


def test_quoted_cells_may_hold_line_ends_commas_and_quotation_marks() -> None:
    found = rows(HEAD + b'"a\nb, ""c""",fixed_dome,9\nINV-2,fixed_dome,9\n', CSV)
    assert [row["id"] for row in found] == ['a\nb, "c"', "INV-2"]


def test_a_unit_in_the_name_of_a_column_holds_for_its_cells() -> None:
    litres = rows(
        b"structure,total_volume [L],mean_air_temperature [K],biogas_measured\nbag,9000,295.15,1\nbag,9e9,295.15,1\nbag,x,,1\n", CSV
    )
    metres = rows(b"structure,total_volume,mean_air_temperature,biogas_measured\nbag,9,22,1\n", CSV)
    assert litres[0]["verdict"] == metres[0]["verdict"]
    assert litres[0]["digester_temperature"] == pytest.approx(metres[0]["digester_temperature"])
    assert faults(litres[1]) == {("total_volume", "out_of_range")}
    assert faults(litres[2]) == {("total_volume", "number_expected")}


@pytest.mark.parametrize(
    ("header", "expected"),
    [
        (b"a;b", {("", "no_column")}),
        (b"id,name", {("", "no_column")}),
        (b"structure,total_volume,total_volume [L]", {("total_volume", "column_twice")}),
        (b"structure,structure,id,id,total_volume", {("structure", "column_twice"), ("id", "column_twice")}),
        (b"structure,ph", {("total_volume", "no_column")}),
        (b"structure,total_volum", {("total_volume", "no_column"), ("total_volum", "no_column")}),
        (b"structure,total_volume [kg]", {("/total_volume [kg]", "unknown_unit")}),
        (b"structure [m3],ph [m]", {("/structure [m3]", "unknown_unit"), ("/ph [m]", "unknown_unit"), ("total_volume", "no_column")}),
        (b"\xff\xfes\x00t\x00", {("", "table_unreadable")}),
        (b"", {("", "table_unreadable")}),
    ],
)
def test_a_header_that_cannot_be_used_refuses_the_table(header: bytes, expected: set[tuple[str, str]]) -> None:
    found = refused(header + b"\n1,2\n", CSV) if header else refused(b"", CSV)
    assert {
        (pointer if pointer.startswith("/") and "[" in pointer else pointer.removeprefix("/"), code) for pointer, code in found
    } == expected


@pytest.mark.parametrize(
    ("plain", "other", "cells"),
    [
        ("total_volume", "total_volume (m3)", "9"),
        ("total_volume", " Total_Volume ", "9"),
        ("total_volume", "TOTAL_VOLUME (m³)", "9"),
        ("total_volume [L]", "total_volume (L)", "9000"),
        ("total_volume [L]", "total_volume ( l )", "9000"),
    ],
)
def test_a_volume_is_known_however_its_heading_is_spelt(plain: str, other: str, cells: str) -> None:
    """Spellings as registers have them (common practice), against the plain one."""
    assert rows(f"structure,{other}\nbag,{cells}\n".encode(), CSV) == rows(f"structure,{plain}\nbag,{cells}\n".encode(), CSV)


@pytest.mark.parametrize(
    ("plain", "other", "cells"),
    [
        ("feed_mass,biogas_measured [L/d]", "feed_mass (kg/d),Biogas_measured [l/d]", "40,1200"),
        ("mean_air_temperature,ph", "mean_air_temperature (°C),PH", "22,7"),
    ],
)
def test_units_are_known_as_people_write_them(plain: str, other: str, cells: str) -> None:
    tables = [f"id,structure,total_volume,{names}\na,bag,9,{cells}\n".encode() for names in (plain, other)]
    assert rows(tables[0], CSV) == rows(tables[1], CSV)


@pytest.mark.parametrize("fahrenheit", ["71.6", " 71.6 "])
def test_degrees_fahrenheit_are_known_by_their_sign(fahrenheit: str) -> None:
    """By definition 22 Cel are 22 * 1.8 + 32 degrees Fahrenheit."""
    [found] = rows(f"structure,total_volume,digester_temperature (°F)\nbag,9,{fahrenheit}\n".encode(), CSV)
    assert found["digester_temperature"] == pytest.approx(22.0)


@pytest.mark.parametrize("heading", ["ph (laboratory)", "remark (old)", "total_volume (2019)", "id (old)"])
def test_remarks_in_round_brackets_are_no_units(heading: str) -> None:
    found = summary(f"id,structure,total_volume,{heading}\na,bag,9,7\n".encode(), CSV)
    assert [one["column"] for one in found["unread_columns"]] == [heading]
    assert found["refused"] == 0


def test_what_was_meant_is_told_whatever_stands_in_brackets() -> None:
    [told_of] = summary(b"structure,total_volume,feed_mas (kg/d)\nbag,9,7\n", CSV)["unread_columns"]
    assert told_of["nearest"][0] == "feed_mass"


def test_a_unit_that_is_none_refuses_the_table_in_round_brackets_too() -> None:
    assert refused(b"structure,total_volume,feed_mass (kg a week)\nbag,9,7\n", CSV) == {("/feed_mass (kg a week)", "unknown_unit")}
    assert refused(b"structure,Structure,total_volume\nbag,bag,9\n", CSV) == {("/structure", "column_twice")}


def test_the_header_that_was_read_is_quoted_where_no_column_is_known() -> None:
    names = ["Register of plants", "a\u202e\x1b[31m", "x" * 99, *map(str, range(20))]
    with pytest.raises(RefusedError) as error:
        ask((",".join(names) + "\n1\n").encode(), CSV)
    [fault] = error.value.faults
    assert "'Register of plants', 'a\\u202e\\x1b[31m', '" + "x" * 32 + "', '0'" in fault.detail
    assert "'7'" not in fault.detail


@pytest.mark.parametrize(("delimiter", "name"), [(",", "comma"), (";", "semicolon"), ("\t", "tab")])
def test_rows_of_nothing_but_delimiters_are_blank(delimiter: str, name: str) -> None:
    lines = ["id,structure,total_volume", "a,bag,9", ",,", "b,bag,9", ",", ",,,,,", ",bag,9"]
    found = rows("\r\n".join([",,,", *lines]).replace(",", delimiter).encode(), CSV)
    assert [row.get("id") for row in found] == ["a", "b", None]
    assert all(row["verdict"] != "refused" for row in found), name


@pytest.mark.parametrize(
    ("column", "detail"),
    [
        ("biogas_measured", "a number in m3/d; decimals follow a point; leave the cell empty if it is not known"),
        ("biogas_measured [L/d]", "a number in L/d; decimals follow a point; leave the cell empty if it is not known"),
        ("ph", "a number; decimals follow a point; leave the cell empty if it is not known"),
    ],
)
def test_a_cell_that_is_no_number_is_told_in_words_for_tables(column: str, detail: str) -> None:
    [found] = rows(f'structure,total_volume,{column}\nbag,9,"7,5"\n'.encode(), CSV)
    assert found["faults"] == [{"column": column.split(" ", maxsplit=1)[0], "code": "number_expected", "detail": detail}]


def test_a_plain_number_with_a_unit_is_told_without_one() -> None:
    [found] = rows(ROW[:-1] + b',"ph":{"value":7,"unit":null}}', NDJSON)
    assert found["faults"][0]["detail"] == "a number; decimals follow a point; leave the cell empty if it is not known"


def test_a_table_without_rows_is_answered_without_rows() -> None:
    for wanted in (CSV, NDJSON):
        assert ask(HEAD, CSV, wanted).count(b"\n") == (wanted == CSV)
    assert pa.ipc.open_stream(ask(HEAD, CSV, ARROW)).read_all().num_rows == 0
    assert summary(HEAD, CSV)["rows"] == 0


def test_facts_and_lists_are_columns() -> None:
    data = base().data
    listed = next(name for name, fact in data.facts.items() if fact.kind not in ("yes_no", "one_of", "structure") and not fact.at_most)
    values = data.facts[listed].values
    head = f"structure,total_volume,gas_smell_indoors,{listed}\n"
    found = rows(f"{head}bag,9,true,{values[0]}; {values[1]}\nbag,9,maybe,{values[0]};nothing\n".encode(), CSV)
    assert "no_gas_smell_indoors" in found[0]["failed"]
    assert faults(found[1]) == {("gas_smell_indoors", "yes_no_expected"), (listed, "not_one_of")}


def test_what_a_spreadsheet_would_run_has_an_apostrophe_before_it() -> None:
    answer = ask(HEAD + b'=1+1,fixed_dome,9\n" @x",fixed_dome,9\n"a,""b",fixed_dome,9\n-5,fixed_dome,9\n', CSV).decode()
    lines = answer.splitlines()[1:]
    assert [line.startswith(start) for line, start in zip(lines, ("'=1+1,", "' @x,", '"a,""b",', "'-5,"), strict=True)] == [True] * 4


def test_the_csv_answer_is_what_the_standard_library_reads() -> None:
    import csv

    body = HEAD + b'INV-1,fixed_dome,9\n"a\nb",igloo,x\n'
    header, *told_rows = list(csv.reader(io.StringIO(ask(body, CSV).decode(), newline="")))
    by_json = rows(body, CSV)
    assert len(told_rows) == 2
    for row, other in zip(told_rows, by_json, strict=True):
        found = dict(zip(header, row, strict=True))
        assert found["verdict"] == other["verdict"]
        assert found["id"] == other["id"]
        assert found["open_dangers"] == "; ".join(other.get("open_dangers", ()))
        assert all(float(found[name]) == other[name.split(" ")[0]] for name in header if "[" in name and found[name])


# The summary


def test_the_summary_counts_every_row() -> None:
    good, bad = ROW + b"\n", b'{"id":"INV-9","structure":"igloo","total_volum":1}\n'
    found = summary(good * 9000 + bad * 2 + b"{\n", NDJSON)
    answers = rows(good * 9000 + bad * 2 + b"{\n", NDJSON)
    assert found["rows"] == 9003
    assert found["refused"] == found["verdicts"]["refused"] == 3
    assert found["verdicts"][answers[0]["verdict"]] == 9000
    assert found["checks"]["open_dangers"] == dict.fromkeys(sorted(answers[0]["open_dangers"]), 9000)
    assert {(one["column"], one["code"]): one["rows"] for one in found["faults"]} == {
        ("structure", "unknown_id"): 2,
        ("total_volume", "missing"): 2,
        ("", "row_unreadable"): 1,
    }
    assert [one["row"] for one in found["first_refused"]] == [9001, 9002, 9003]
    assert found["first_refused"][0]["id"] == "INV-9"
    assert (
        found["unread_columns"] == [{"column": "total_volum", "nearest": ["total_volume"]}]
        or found["unread_columns"][0]["nearest"][0] == "total_volume"
    )
    assert found["rulebook"] == base().identity


@settings(deadline=None, max_examples=20)
@given(st.lists(fleets.rows(), min_size=1, max_size=5))
def test_a_text_says_what_the_engine_says(table: list[Json]) -> None:
    """NDJSON in and out against the engine on the same rows."""
    plain = [{name: value.isoformat() if hasattr(value, "isoformat") else value for name, value in row.items()} for row in table]
    finite = [{name: value for name, value in row.items() if not isinstance(value, float) or abs(value) < 1e300} for row in plain]
    fleet = fleet_of(base())
    expected = fleet.answer(read_rows(finite, fleet.members)).to_pylist()
    found = rows(b"\n".join(map(orjson.dumps, finite)), NDJSON)
    assert found == [{name: value for name, value in row.items() if value is not None} for row in json.loads(orjson.dumps(expected))]


def parts() -> Iterator[bytes]:
    yield from (b"", b"{", b"}", b'"')


@pytest.mark.parametrize("line", [*parts(), b"\x00", b"{}", b'{"id":null}', b'{"id":{"a":[1]}}', b'{"\xc3\xa4":1}'])
def test_no_line_fails_the_service(line: bytes) -> None:
    if line.strip():
        assert isinstance(row_of(line), dict | Fault)
        assert len(rows(ROW + b"\n" + line, NDJSON)) == 2


def test_of_very_many_bad_columns_some_are_told_within_the_time() -> None:
    """A near unit is looked for for each that is told; these 50,000 took seconds."""
    names = [f"total_volume [x{at}]" for at in range(50_000)]
    with within(20), pytest.raises(RefusedError) as refusal:
        fleet_of(base()).columns.heading(["structure", *names])
    assert [fault.code for fault in refusal.value.faults] == ["column_twice", *["unknown_unit"] * MOST_FAULTS]
    with within(0), pytest.raises(TooLongError):
        fleet_of(base()).columns.heading(["structure", "total_volume"])
