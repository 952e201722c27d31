"""Tables in Arrow and Parquet: the same answers as the engine's, whatever else a sender has put into the file."""

from __future__ import annotations

import io
import json
import struct
from contextlib import suppress
from typing import Any

import orjson
import pyarrow as pa
import pyarrow.parquet as pq
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from tests.rules import fleets
from tests.rules.conftest import Json, base
from tests.rules.test_exchange_rows import MOST, ask, faults, refused, rows, summary

from kilisho.faults import RefusedError, TooManyRowsError
from kilisho.fleet import validate
from kilisho.fleet.exchange import FORMATS
from kilisho.fleet.exchange.incoming import LARGEST_PIECE, PIECE
from kilisho.fleet.exchange.pages import footer_of, pages_of
from kilisho.fleet.table import CANONICAL

NDJSON, CSV, ARROW, PARQUET = FORMATS
BINARY = pytest.mark.parametrize("sent", [ARROW, PARQUET])
GOOD: Json = {"id": "INV-1", "structure": "fixed_dome", "total_volume": 9.0}


def written(table: pa.Table, sent: str, **options: Any) -> bytes:
    """A table as a file."""
    out = io.BytesIO()
    if sent == PARQUET:
        pq.write_table(table, out, **options)
    else:
        with pa.ipc.new_stream(out, table.schema, options=pa.ipc.IpcWriteOptions(**options)) as stream:
            stream.write_table(table)
    return out.getvalue()


def read(body: bytes, wanted: str) -> pa.Table:
    return pa.ipc.open_stream(body).read_all() if wanted == ARROW else pq.read_table(io.BytesIO(body))


def plain(table: pa.Table) -> list[Json]:
    found: list[Json] = table.to_pylist()
    return found


@settings(deadline=None, max_examples=20)
@given(st.lists(fleets.rows(), min_size=1, max_size=6), st.sampled_from([ARROW, PARQUET]), st.sampled_from([ARROW, PARQUET]))
def test_a_file_says_what_the_engine_says(records: list[Json], sent: str, wanted: str) -> None:
    table = pa.Table.from_batches([fleets.table(records)])
    assume({"structure", "total_volume"} <= set(table.column_names))
    expected = pa.Table.from_batches(list(validate(table.to_batches(), base())))
    assert plain(read(ask(written(table, sent), sent, wanted), wanted)) == plain(expected)


@BINARY
def test_a_row_for_a_row_across_pieces_and_batches(sent: str) -> None:
    count = 2 * PIECE + 77
    table = pa.table({"id": pa.array(range(count)), "structure": ["bag"] * count, "total_volume": [float(at % 13) for at in range(count)]})
    options: Json = {"row_group_size": 5000} if sent == PARQUET else {"compression": "zstd"}
    for wanted in (ARROW, PARQUET):
        answer = read(ask(written(table, sent, **options), sent, wanted), wanted)
        assert answer.column("id").to_pylist() == list(range(count))
        assert answer.column("verdict").to_pylist().count("refused") == len(range(0, count, 13))
    assert summary(written(table, sent, **options), sent)["rows"] == count


def test_the_footer_of_a_parquet_answer_holds_the_summary() -> None:
    body = written(pa.Table.from_pylist([GOOD, {**GOOD, "structure": "igloo"}]), ARROW)
    metadata = pq.ParquetFile(io.BytesIO(ask(body, ARROW, PARQUET))).metadata.metadata
    assert json.loads(metadata[b"kilisho.summary"]) == summary(body, ARROW)
    assert json.loads(metadata[b"kilisho.rulebook"]) == base().identity
    assert pa.ipc.open_stream(ask(body, ARROW)).schema.metadata[b"kilisho.rulebook"] == metadata[b"kilisho.rulebook"]


@BINARY
def test_columns_of_every_type_that_can_hold_a_record(sent: str) -> None:
    expected = rows(orjson.dumps({**GOOD, "animal": "dairy_cow", "animal_count": 4, "visited_on": "2027-01-02"}), NDJSON)
    day = pa.array(["2027-01-02"]).cast(pa.date32())
    kinds = [
        {"total_volume": pa.array([9], pa.int8()), "animal_count": pa.array([4], pa.uint64()), "visited_on": day},
        {"total_volume": pa.array(["9"]), "animal_count": pa.array(["4"], pa.large_string()), "visited_on": pa.array(["2027-01-02"])},
        {"total_volume": pa.array([9], pa.decimal128(5, 2)), "animal_count": pa.array([4.0]), "visited_on": day.cast(pa.timestamp("ns"))},
        {
            "total_volume": pa.array([{"value": 9000.0, "unit": "L"}]),
            "animal_count": pa.array(["4"]).dictionary_encode(),
            "visited_on": day,
        },
    ]
    for kind in kinds:
        words = {name: pa.array([value]) for name, value in {**GOOD, "animal": "dairy_cow"}.items() if name != "total_volume"}
        assert rows(written(pa.table({"visited_on": day, **words, **kind}), sent), sent) == expected
    in_words = {"structure": pa.array(["fixed_dome"]).dictionary_encode(), "animal": pa.array(["dairy_cow"], pa.large_string())}
    assert rows(written(pa.table({**kinds[0], **in_words, "id": ["INV-1"]}), sent), sent) == expected


@BINARY
def test_a_unit_beside_a_field_holds_for_its_cells(sent: str) -> None:
    metres = rows(written(pa.Table.from_pylist([GOOD]), sent), sent)
    schema = pa.schema([("id", pa.string()), ("structure", pa.string()), pa.field("total_volume", pa.float64(), metadata={"unit": "L"})])
    assert rows(written(pa.Table.from_pylist([{**GOOD, "total_volume": 9000.0}], schema), sent), sent) == metres
    named = pa.Table.from_pylist([{"id": "INV-1", "structure": "fixed_dome", "total_volume [L]": 9000.0}])
    assert rows(written(named, sent), sent) == metres


@BINARY
def test_what_is_no_number_is_a_fault_of_its_row(sent: str) -> None:
    table = pa.table({"structure": ["bag"] * 5, "total_volume": [9.0, float("nan"), float("inf"), None, -1.0]})
    codes = [{code for _, code in faults(row)} for row in rows(written(table, sent), sent)]
    assert codes == [set(), {"out_of_range"}, {"out_of_range"}, {"missing"}, {"out_of_range"}]


@BINARY
def test_a_column_cannot_pass_for_one_that_is_checked_already(sent: str) -> None:
    """Nor do faults that stand in the table count: an answer may be sent in again."""
    field = pa.field("total_volume", pa.float64(), metadata={CANONICAL: b"1"})
    table = pa.table([["bag"], [-1.0]], schema=pa.schema([("structure", pa.string()), field]))
    assert faults(rows(written(table, sent), sent)[0]) == {("total_volume", "out_of_range")}
    again = written(pa.Table.from_pylist([{**GOOD, "faults": "everything", "verdict": "sound"}]), sent)
    assert rows(again, sent)[0]["verdict"] != "refused"
    assert [one["column"] for one in summary(again, sent)["unread_columns"]] == ["verdict"]


@BINARY
@pytest.mark.parametrize(
    ("column", "code"),
    [
        (pa.array([[1.0]]), "column_type"),
        (pa.array([b"9"]), "column_type"),
        (pa.array([{"value": 9.0}]), "column_type"),
        (pa.array([[("a", 1)]], pa.map_(pa.string(), pa.int64())), "column_type"),
        (pa.array([1], pa.duration("s")), "column_type"),
    ],
)
def test_a_column_of_a_type_that_it_cannot_have_refuses_the_table(column: pa.Array, code: str, sent: str) -> None:
    assert refused(written(pa.table({"structure": ["bag"], "total_volume": column}), sent), sent) == {("/total_volume", code)}


@BINARY
def test_a_schema_that_cannot_be_used_refuses_the_table(sent: str) -> None:
    assert refused(written(pa.table({"a": [1], "id": ["x"]}), sent), sent) == {("", "no_column")}
    twice = pa.table([["bag"], [9.0], [9.0]], names=["structure", "total_volume", "total_volume"])
    assert refused(written(twice, sent), sent) == {("/total_volume", "column_twice")}
    misspelt = pa.table({"structure": ["bag"], "total_volum": [9.0]})
    assert refused(written(misspelt, sent), sent) == {("/total_volume", "no_column"), ("/total_volum", "no_column")}
    assert refused(written(pa.table({"structure": ["bag"], "total_volume": [9.0], "id": [[1]]}), sent), sent) == {("/id", "column_type")}


@BINARY
def test_a_file_that_is_cut_off_or_of_another_kind_is_refused(sent: str) -> None:
    body = written(pa.Table.from_pylist([GOOD] * 5000), sent)
    other = written(pa.Table.from_pylist([GOOD]), PARQUET if sent == ARROW else ARROW)
    for bad in (b"", b"x", body[:-9], body[: len(body) // 2], body[:40], other, b"PAR1" * 4, b"\xff" * 64, b"\x00" * 64):
        if sent == ARROW and bad == b"\x00" * 64:
            continue  # an end of stream in the old style
        assert {code for _, code in refused(bad, sent)} == {"table_unreadable"}, bad[:20]


@settings(deadline=None, max_examples=100)
@given(st.data(), st.sampled_from([ARROW, PARQUET]))
def test_a_file_with_changed_bytes_is_answered_or_refused(data: st.DataObject, sent: str) -> None:
    records = [{**GOOD, "id": str(at), "animal": "dairy_cow", "visited_on": "2027-01-02"} for at in range(20)]
    body = bytearray(written(pa.Table.from_pylist(records), sent, **({"compression": "lz4"} if sent == ARROW else {})))
    for _ in range(data.draw(st.integers(1, 4))):
        body[data.draw(st.integers(0, len(body) - 1))] = data.draw(st.integers(0, 255))
    with suppress(RefusedError, TooManyRowsError):
        assert len(rows(bytes(body), sent)) <= MOST


@BINARY
def test_text_that_is_not_utf8_is_a_fault_of_its_cell(sent: str) -> None:
    bad = pa.array([b"bag", b"\xff", b"bag"], pa.binary()).view(pa.string())
    found = rows(written(pa.table({"structure": bad, "total_volume": [9.0] * 3}), sent), sent)
    assert [faults(row) for row in found][0::2] == [set(), set()]
    assert ("structure", "cell_unreadable") in faults(found[1])


@BINARY
def test_more_rows_than_permitted_are_refused(sent: str) -> None:
    table = pa.table({"structure": ["bag"] * 11, "total_volume": [9.0] * 11})
    with pytest.raises(TooManyRowsError):
        ask(written(table, sent), sent, most=10)


# What explodes


def test_a_packed_batch_that_becomes_too_large_is_refused() -> None:
    long = pa.table({"structure": ["bag"], "total_volume": [9.0], "other": ["x" * (LARGEST_PIECE + 1)]})
    body = written(long, ARROW, compression="zstd")
    assert len(body) < 200_000
    assert refused(body, ARROW) == {("", "table_unreadable")}
    assert rows(written(long.slice(0, 1).set_column(2, "other", pa.array(["x"])), ARROW, compression="zstd"), ARROW)


def test_a_packed_page_that_becomes_too_large_is_refused_whatever_the_footer_says() -> None:
    # A column that is not read costs nothing.
    long = pa.table({"structure": ["bag"], "total_volume": [9.0], "other": ["x" * (LARGEST_PIECE + 1)]})
    assert len(rows(written(long, PARQUET, compression="zstd"), PARQUET)) == 1
    body = written(long.rename_columns(["structure", "total_volume", "animal"]), PARQUET, compression="zstd", use_dictionary=False)
    assert len(body) < 400_000
    assert refused(body, PARQUET) == {("", "table_unreadable")}


@BINARY
def test_a_long_text_in_a_dictionary_is_not_spread_over_its_rows(sent: str) -> None:
    """A megabyte in each of forty thousand rows would be forty gigabytes."""
    count = 40_000
    one = pa.DictionaryArray.from_arrays(pa.array([0] * count, pa.int32()), pa.array(["9" * 1_000_000]))
    table = pa.table({"id": one, "structure": one, "total_volume": one, "visited_on": one})
    found = summary(written(table, sent), sent)
    assert found["rows"] == found["refused"] == count


def test_prefixes_that_are_shared_between_values_are_refused() -> None:
    table = pa.table({"structure": ["bag"] * 9, "total_volume": [9.0] * 9})
    body = written(table, PARQUET, use_dictionary=False, column_encoding={"structure": "DELTA_BYTE_ARRAY"})
    assert refused(body, PARQUET) == {("", "table_unreadable")}
    assert rows(written(table, PARQUET, use_dictionary=False, column_encoding={"structure": "DELTA_LENGTH_BYTE_ARRAY"}), PARQUET)


@pytest.mark.parametrize("version", ["1.0", "2.0"])
@pytest.mark.parametrize("compression", ["none", "snappy", "zstd", "gzip"])
def test_pages_are_found_as_arrow_wrote_them(version: str, compression: str) -> None:
    """Against the footer, written by the same library: bytes and values of every column add up."""
    count = 30_000
    table = pa.table(
        {"a": [f"{at % 700}" for at in range(count)], "b": [float(at) for at in range(count)], "c": [[at, at] for at in range(count)]}
    )
    body = written(table, PARQUET, data_page_version=version, compression=compression, data_page_size=4096, row_group_size=9000)
    metadata = pq.ParquetFile(io.BytesIO(body)).metadata
    footer = footer_of(body)
    assert footer.rows == metadata.num_rows
    assert len(footer.groups) == metadata.num_row_groups
    for group, chunks in enumerate(footer.groups):
        for at, chunk in enumerate(chunks):
            told = metadata.row_group(group).column(at)
            pages = list(pages_of(body, chunk))
            assert chunk.values == told.num_values
            assert sum(page.values for page in pages if not page.is_dictionary) == told.num_values
            assert len(pages) > 1
            assert chunk.begin == min(filter(None, (told.dictionary_page_offset, told.data_page_offset)))
            assert pages[-1].end + pages[-1].packed == chunk.begin + told.total_compressed_size


def test_a_footer_that_is_larger_than_the_file_is_refused() -> None:
    body = written(pa.Table.from_pylist([GOOD]), PARQUET)
    assert refused(body[:-8] + struct.pack("<I", 2**31) + b"PAR1", PARQUET) == {("", "table_unreadable")}
