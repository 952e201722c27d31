"""Small files that would take gigabytes, each read in a process of its own whose memory is measured; shapes and sizes are invented.

Without their bounds these took from 0.6 to 2.6 GB. Arrow's memory is not Python's, so the process is asked what it took at most.
"""

from __future__ import annotations

import struct
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import numpy as np
import pyarrow as pa
import pyarrow.parquet as pq
import pytest
from tests.rules.test_exchange_arrow import ARROW, BINARY, PARQUET, faults, rows, written

from kilisho.fleet.exchange.bounding import LONGEST_LIST, LONGEST_TEXT, TOO_LONG, bounded
from kilisho.fleet.exchange.incoming import LARGEST_PIECE, PIECE, rows_of_short_cells, rows_that_fit
from kilisho.fleet.exchange.pages import MOST_CHUNKS, footer_of
from kilisho.fleet.exchange.parquet import LARGEST_FOOTER

ROWS = 8_192
VOLUME = pa.array([8.0] * ROWS)
READ = """
import resource, sys
from kilisho import packs
from kilisho.faults import RefusedError
from kilisho.fleet import fleet_of
from kilisho.fleet.exchange import FORMATS
from kilisho.fleet.exchange.incoming import Source
columns = fleet_of(packs.load()).columns
before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
with open(sys.argv[1], "rb") as file:
    try:
        rows = sum(piece.num_rows for piece in FORMATS[sys.argv[2]].read(Source(file, columns, 20_000_000)).pieces)
    except RefusedError:
        rows = -1
print(rows, (resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before) * 1024)
"""


def list_in_dictionary() -> bytes:
    """A kilobyte: the same long item in every row."""
    items = pa.array([["a" * 60_000]] * ROWS, pa.list_(pa.string()))
    table = pa.table({"structure": ["fixed_dome"] * ROWS, "total_volume": VOLUME, "feed_contains": items})
    return written(table, PARQUET, compression="zstd", write_statistics=False)


def long_text_in_many_pages() -> bytes:
    """Pages of a megabyte that are packed to next to nothing."""
    table = pa.table({"structure": ["a" * 80_000] * ROWS, "total_volume": VOLUME})
    pages = {"data_page_size": 1 << 20, "write_batch_size": 4, "write_statistics": False}
    return written(table, PARQUET, use_dictionary=False, compression="zstd", **pages)


def views(count: int, text: bytes) -> pa.Array:
    """As many views of one text that is longer than a view itself."""
    made = struct.pack("<i4sii", len(text), text[:4], 0, 0) * count
    return pa.Array.from_buffers(pa.string_view(), count, [None, pa.py_buffer(made), pa.py_buffer(text)])


def one_text_in_all_views() -> bytes:
    """A quarter of a megabyte, shown in every row."""
    return written(pa.table({"structure": views(ROWS, b"a" * 250_000), "total_volume": VOLUME}), ARROW)


def one_text_in_all_views_of_lists() -> bytes:
    """The same in the items of lists, all of them in the first row."""
    offsets = pa.array([0, *[8 * ROWS] * ROWS], pa.int32())
    lists = pa.ListArray.from_arrays(offsets, views(8 * ROWS, b"a" * 250_000))
    table = pa.table({"structure": ["bag"] * ROWS, "total_volume": VOLUME, "feed_contains": lists})
    return written(table, ARROW)


def footer_of_empty_structs() -> bytes:
    """A footer whose list of row groups has an item for every two bytes."""
    count = LARGEST_FOOTER // 2 - 8
    length = bytes([count & 127 | 128, count >> 7 & 127 | 128, count >> 14 & 127 | 128, count >> 21])
    footer = b"\x49\xfc" + length + b"\x11\x00" * count + b"\x00"
    return b"PAR1" + footer + struct.pack("<I", len(footer)) + b"PAR1"


@pytest.mark.parametrize(
    ("make", "sent", "expected"),
    [
        (list_in_dictionary, PARQUET, ROWS),
        (long_text_in_many_pages, PARQUET, ROWS),
        (one_text_in_all_views, ARROW, ROWS),
        (one_text_in_all_views_of_lists, ARROW, ROWS),
        (footer_of_empty_structs, PARQUET, -1),
    ],
)
def test_a_small_file_takes_little_memory(make: Callable[[], bytes], sent: str, expected: int, tmp_path: Path) -> None:
    file = tmp_path / "table"
    file.write_bytes(make())
    made = subprocess.run([sys.executable, "-c", READ, str(file), sent], capture_output=True, text=True, check=True)
    found, taken = map(int, made.stdout.split())
    assert found == expected
    assert taken < 3 * LARGEST_PIECE


def test_rows_fit_by_the_longest_cell_of_each_column() -> None:
    assert rows_of_short_cells(2) == rows_that_fit([8, 200]) == PIECE
    assert rows_of_short_cells(2**17) == 1
    assert rows_that_fit([LARGEST_PIECE, 8]) == 1
    assert 1 < rows_that_fit([80_000]) < LARGEST_PIECE // 80_000


@BINARY
def test_a_list_with_an_item_that_is_too_long_is_a_fault_of_its_row_and_no_other(sent: str) -> None:
    lists = pa.array([["a" * 900], [], None, ["a"] * 900], pa.list_(pa.string()))
    table = pa.table({"structure": ["bag"] * 4, "total_volume": [9.0] * 4, "feed_contains": lists})
    bad = [{column for column, _ in faults(row)} for row in rows(written(table, sent), sent)]
    assert bad == [{"feed_contains"}, set(), set(), {"feed_contains"}]


@pytest.mark.parametrize("kind", [pa.string(), pa.large_string(), pa.string_view()])
def test_text_is_bounded_whatever_holds_it(kind: pa.DataType) -> None:
    texts = ["x", None, "m\N{LATIN SMALL LETTER A WITH GRAVE}" * 9, "a" * LONGEST_TEXT, "b" * (LONGEST_TEXT + 1), ""]
    expected = [*texts[:4], TOO_LONG, ""]
    plain = pa.array(texts, kind)
    assert bounded(plain).to_pylist() == expected
    assert bounded(plain.slice(3)).to_pylist() == expected[3:]
    lists = pa.array([texts[:2], None, [], texts[2:]], pa.list_(kind))
    assert bounded(lists).to_pylist() == [expected[:2], None, [], expected[2:]]
    assert bounded(lists.slice(1)).to_pylist() == [None, [], expected[2:]]
    assert [len(items) for items in bounded(pa.array([texts * 50, texts], pa.large_list(kind))).to_pylist()] == [LONGEST_LIST, 6]
    inside = pa.array([{"value": 1.0, "unit": text} for text in texts], pa.struct([("value", pa.float64()), ("unit", kind)]))
    assert [one["unit"] for one in bounded(inside.slice(2)).to_pylist()] == expected[2:]


@pytest.mark.parametrize("place", [(-1, 0), (0, 1), (7, 0)])
def test_a_view_of_what_is_not_there_is_refused(place: tuple[int, int]) -> None:
    made = struct.pack("<i4sii", 40, b"aaaa", place[1], place[0])
    bad = pa.Array.from_buffers(pa.string_view(), 1, [None, pa.py_buffer(made), pa.py_buffer(b"a" * 41)])
    with pytest.raises(pa.ArrowException):
        bounded(bad)


@pytest.mark.parametrize(("columns", "groups"), [(1000, 20), (20, 1500)])
def test_the_footer_of_an_honest_file_has_room(columns: int, groups: int) -> None:
    """20 million rows in row groups of a million, as Arrow writes them; and many small ones."""
    numbers: Any = np.arange(groups)
    table = pa.table({f"some_measured_column_{at}": numbers for at in range(columns)})
    body = written(table, PARQUET, row_group_size=1)
    assert struct.unpack("<I", body[-8:-4])[0] < LARGEST_FOOTER / 2
    assert [len(group) for group in footer_of(body).groups] == [columns] * groups
    assert columns * groups < MOST_CHUNKS / 2


def test_pages_are_those_of_the_schemas_columns_whatever_a_footer_calls_them() -> None:
    """Arrow finds columns by their places: a name in the footer that is another must hide nothing."""
    table = pa.table({"structure": ["x" * (LARGEST_PIECE + 1)], "total_volume": [9.0]})
    body = bytearray(written(table, PARQUET, compression="zstd", use_dictionary=False, store_schema=False, write_statistics=False))
    at = bytes(body).rindex(b"structure")
    body[at : at + 9] = b"elsewhere"
    assert pq.ParquetFile(pa.BufferReader(bytes(body))).schema_arrow.names == ["structure", "total_volume"]
    with pytest.raises(Exception, match="too large"):
        rows(bytes(body), PARQUET)


def test_what_is_read_in_many_small_pieces_is_read_whole() -> None:
    table = pa.table({"id": [str(at) for at in range(40)], "structure": ["a" * 3_000_000] * 20 + ["bag"] * 20, "total_volume": [9.0] * 40})
    found = rows(written(table, PARQUET, use_dictionary=False, compression="zstd", data_page_size=1 << 20, write_batch_size=1), PARQUET)
    assert [row["id"] for row in found] == [str(at) for at in range(40)]
    assert [bool(faults(row)) for row in found] == [True] * 20 + [False] * 20


def test_lists_in_the_dictionaries_of_several_row_groups_are_read_as_elsewhere() -> None:
    count = 3000
    lists = [None if at % 3 else ["straw"] for at in range(count)]
    table = pa.table({"structure": ["bag"] * count, "total_volume": [9.0] * count, "feed_contains": lists})
    assert rows(written(table, PARQUET, row_group_size=700), PARQUET) == rows(written(table, ARROW), ARROW)
