"""Tables in files: every format gives the rows that it holds, rows that cannot be read keep their place, and nothing hangs on the cut."""

from __future__ import annotations

import csv
import io
import json
import math
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pyarrow as pa
import pyarrow.parquet as pq
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules.conftest import Json, base
from tests.rules.fleets import fleet, row, rows, table

from kilisho.fleet import FAULTS, read_rows
from kilisho.fleet.csv_rows import head_of
from kilisho.fleet.files import UnreadableError, format_of, look_at, read_block
from kilisho.fleet.invented import invent
from kilisho.fleet.labelled import labelled, schema_of
from kilisho.fleet.text_blocks import MARK, MOST_LINES, Size, cuts, rows_of
from kilisho.fleet.writing import write

FORMATS = ("parquet", "arrow", "csv", "ndjson")
COLUMNS = ("id", "structure", "total_volume", "remark")


@pytest.fixture(scope="session")
def folders(tmp_path_factory: pytest.TempPathFactory) -> pytest.TempPathFactory:
    return tmp_path_factory


def answers(file: Path, block: int = 1000, further: tuple[str, ...] = ()) -> list[Json]:
    """The rows of a file, answered, with blocks of about so many rows."""
    [looked] = look_at([str(file)], fleet().columns, block)
    found: list[Json] = []
    for one in looked.blocks:
        before = len(found)
        for batch, _ in read_block(one, fleet().columns, further):
            found += fleet().answer(batch).to_pylist()
        assert one.row == before
        assert len(found) - before == one.rows
    return found


def written(folder: Path, text: str | bytes, name: str = "fleet.csv") -> Path:
    file = folder / name
    file.write_bytes(text if isinstance(text, bytes) else text.encode())
    return file


def csv_of(cells: list[list[str]], **how: Any) -> str:
    """Rows as a general CSV library writes them."""
    stream = io.StringIO()
    csv.writer(stream, lineterminator="\n", **how).writerows([list(COLUMNS), *cells])
    return stream.getvalue()


# All formats


@pytest.mark.parametrize("kind", FORMATS)
@pytest.mark.parametrize("block", [100, 700, 10**6])
def test_every_format_gives_the_same_answers_as_the_table(tmp_path: Path, kind: str, block: int) -> None:
    batch = next(invent(1500, base(), seed=2))
    file = tmp_path / f"fleet.{kind}"
    pieces = [batch.slice(start, 400) for start in range(0, 1500, 400)]
    write(pieces, batch.schema, file, kind)
    assert answers(file, block) == fleet().answer(batch).to_pylist()


def test_an_arrow_stream_is_one_block(tmp_path: Path) -> None:
    batch = table([row(), row(id="INV-2", total_volume=-1.0)])
    with pa.ipc.new_stream(tmp_path / "fleet.arrow", batch.schema) as stream:
        stream.write(batch)
        stream.write(batch)
    [looked] = look_at([str(tmp_path / "fleet.arrow")], fleet().columns, 1)
    assert len(looked.blocks) == 1
    assert [one["verdict"] for one in answers(tmp_path / "fleet.arrow")] == ["unknown", "refused"] * 2


def test_small_row_groups_are_read_together(tmp_path: Path) -> None:
    pq.write_table(pa.Table.from_batches([table([row()] * 100)]), tmp_path / "fleet.parquet", row_group_size=10)
    [looked] = look_at([str(tmp_path / "fleet.parquet")], fleet().columns, 25)
    assert [(one.first, one.last, one.row, one.rows) for one in looked.blocks] == [
        (0, 3, 0, 30),
        (3, 6, 30, 30),
        (6, 9, 60, 30),
        (9, 10, 90, 10),
    ]


def test_rows_of_several_files_are_counted_on(tmp_path: Path) -> None:
    files = [str(written(tmp_path, csv_of([["a", "bag", "9", ""]] * 3), f"{name}.csv")) for name in "ab"]
    assert [one.row for looked in look_at(files, fleet().columns) for one in looked.blocks] == [0, 3]


@pytest.mark.parametrize("kind", FORMATS)
def test_a_column_that_is_called_faults_is_the_callers_and_is_not_read(tmp_path: Path, kind: str) -> None:
    batch = table([row()]).append_column(FAULTS, pa.array(["leaks"]))
    write([batch], batch.schema, tmp_path / f"fleet.{kind}", kind)
    assert answers(tmp_path / f"fleet.{kind}")[0]["verdict"] == "unknown"


def test_each_row_of_an_invented_fleet_says_that_it_is_invented() -> None:
    [batch] = labelled(5, base(), 1, 0.2)
    assert batch.schema == schema_of(base())
    assert set(batch["notice"].to_pylist()) == {"Invented installations: no row is a real one."}
    assert all(one.startswith("INV-") for one in batch["id"].to_pylist())


# Rows of text that cannot be read


def test_ragged_rows_are_refused_in_their_place(tmp_path: Path) -> None:
    text = "id,structure,total_volume\na,bag,9\nb,bag\n\nc,bag,9,9,9\nd,bag,9\n"
    found = answers(written(tmp_path, text))
    assert [(one["id"], one["verdict"]) for one in found] == [("a", "unknown"), (None, "refused"), (None, "refused"), ("d", "unknown")]
    details = [[(fault["column"], fault["code"], fault["detail"]) for fault in one[FAULTS]] for one in found if one[FAULTS]]
    assert details == [
        [("", "row_unreadable", "line 3: has 2 cells where the header has 3")],
        [("", "row_unreadable", "line 5: has 5 cells where the header has 3")],
    ]


def test_a_quote_that_nobody_closes_costs_its_line_alone(tmp_path: Path) -> None:
    lines = [f"{number},bag,9,fine" for number in range(300)]
    lines[7] = '7,bag,9,"never closed'
    found = answers(written(tmp_path, ",".join(COLUMNS) + "\n" + "\n".join(lines) + "\n"), 20)
    assert [one["id"] for one in found] == [None if number == 7 else str(number) for number in range(300)]
    assert found[7][FAULTS][0]["detail"] == "line 9: a quotation mark stands where none may, or nothing closes it"


def test_text_that_is_not_utf8_costs_its_row_alone(tmp_path: Path) -> None:
    text = b"id,structure,total_volume\nM\xfcller,bag,9\nb,bag,9\n"
    found = answers(written(tmp_path, text))
    assert [one["verdict"] for one in found] == ["refused", "unknown"]
    assert found[0][FAULTS][0]["detail"] == "line 2: not text in UTF-8"


def test_quotes_in_the_middle_and_lines_in_quotes_are_text(tmp_path: Path) -> None:
    text = csv_of([["a", "bag", "9", 'pipe of 5"'], ["b", "bag", "9", "two\nlines, and a comma"], ["c", "bag", "9", ""]])
    text += 'd,bag,9,pipe of 5"\ne,bag,9,again 5"\n'
    found = answers(written(tmp_path, text), 1)
    assert [(one["id"], one["verdict"]) for one in found] == [(name, "unknown") for name in "abcde"]


@pytest.mark.parametrize("delimiter", [",", ";", "\t"])
@pytest.mark.parametrize("start", [b"", b"\xef\xbb\xbf"])
@pytest.mark.parametrize("end", ["\n", "\r\n"])
def test_what_spreadsheets_write_is_read(tmp_path: Path, delimiter: str, start: bytes, end: str) -> None:
    text = csv_of([["a", "bag", "9", "fine"], ["b", "igloo", "x", "fine"]], delimiter=delimiter).replace("\n", end)
    found = answers(written(tmp_path, start + text.encode()))
    assert [(one["id"], one["verdict"]) for one in found] == [("a", "unknown"), ("b", "refused")]
    assert sorted(fault["column"] for fault in found[1][FAULTS]) == ["structure", "total_volume"]


def test_broken_lines_of_json_are_refused_in_their_place(tmp_path: Path) -> None:
    good = {"id": "a", "structure": "bag", "total_volume": {"value": 9000, "unit": "L"}, "village": "Highfold (invented)"}
    lines = [
        json.dumps(good),
        '{"id": "b", "structure"',
        "[1]",
        "",
        '{"id": "c", "id": "d"}',
        json.dumps({**good, "id": 7, "total_volume": True}),
    ]
    found = answers(written(tmp_path, "\n".join(lines), "fleet.ndjson"))
    assert [(one["id"], one["verdict"]) for one in found] == [("a", "unknown"), *[(None, "refused")] * 3, ("7", "refused")]
    starts = [one[FAULTS][0]["detail"][:6] for one in found[1:4]]
    assert starts == ["line 2", "line 3", "line 5"]
    assert found[4][FAULTS][0]["column"] == "total_volume"


def test_names_in_lines_of_json_that_nobody_reads_are_told(tmp_path: Path) -> None:
    file = written(tmp_path, '{"structure": "bag", "total_volume": 9, "volum": 1, "village": "x"}\n', "fleet.ndjson")
    [looked] = look_at([str(file)], fleet().columns)
    [(batch, unread)] = read_block(looked.blocks[0], fleet().columns, ["village"])
    assert unread == {"volum"}
    assert batch["village"].to_pylist() == ["x"]


@given(st.lists(rows(with_facts=False), min_size=1, max_size=8), st.integers(1, 4))
@settings(max_examples=60, deadline=None)
def test_lines_of_json_say_what_rows_say_that_are_read_one_by_one(folders: pytest.TempPathFactory, stated: list[Json], cut: int) -> None:
    bodies = [{name: value if isinstance(value, int | float) else str(value) for name, value in one.items()} for one in stated]
    bodies = [
        {name: value for name, value in one.items() if value is not None and not (isinstance(value, float) and not math.isfinite(value))}
        for one in bodies
    ]
    file = written(folders.mktemp("json"), "".join(json.dumps(one) + "\n" for one in bodies), "fleet.ndjson")
    expected = fleet().answer(read_rows(bodies, fleet().members)).to_pylist()
    assert answers(file, cut) == expected


# What must not hang on the cut

CELL = st.text(alphabet='ab9,";\n\r é', max_size=6)


@given(st.lists(st.lists(CELL, min_size=4, max_size=4), max_size=30), st.integers(1, 12), st.integers(1, 12))
@settings(max_examples=150, deadline=None)
def test_whatever_a_csv_library_writes_is_read_row_for_row(
    folders: pytest.TempPathFactory, cells: list[list[str]], one: int, other: int
) -> None:
    kept = [[cell.replace("\r", "") for cell in row] for row in cells if any(row)]
    file = written(folders.mktemp("csv"), csv_of(kept, quoting=csv.QUOTE_MINIMAL))
    found = answers(file, one)
    assert [row["id"] for row in found] == [row[0] or None for row in kept]
    assert found == answers(file, other)


@given(st.text(alphabet='ab,"\n', max_size=300), st.integers(1, 40), st.integers(1, 40))
@settings(max_examples=300, deadline=None)
def test_whatever_a_csv_file_holds_the_cut_changes_nothing(folders: pytest.TempPathFactory, text: str, one: int, other: int) -> None:
    file = written(folders.mktemp("csv"), "id,structure,total_volume\n" + text)
    assert answers(file, one) == answers(file, other)


@given(st.binary(max_size=400) | st.text("ab\n", max_size=200).map(str.encode), st.integers(1, 100), st.integers(1, 9))
@settings(max_examples=200, deadline=None)
def test_pieces_of_text_hold_every_byte_once(data: bytes, size: int, most: int) -> None:
    data = data.removeprefix(MARK)
    found = list(cuts(io.BytesIO(data), Size(size, most)))
    assert b"".join(one.data for one in found) == data
    assert all(one.rows.ends.size <= most for one in found)
    assert [one.first for one in found] == [sum(len(one.data) for one in found[:at]) for at in range(len(found))]
    assert [one.line for one in found] == [data.count(b"\n", 0, one.first) for one in found]
    assert sum(one.rows.ends.size for one in found) == rows_of(data).ends.size


def test_a_row_of_very_many_lines_is_a_fault(tmp_path: Path) -> None:
    long = "x\n" * (MOST_LINES + 5)
    found = answers(written(tmp_path, csv_of([["a", "bag", "9", long], ["b", "bag", "9", ""]])))
    assert found[0]["verdict"] == "refused"
    assert (found[-1]["id"], found[-1]["verdict"]) == ("b", "unknown")


# Files that are no tables


def truncated(folder: Path) -> Path:
    pq.write_table(pa.Table.from_batches([table([row()] * 100)]), folder / "whole.parquet")
    return written(folder, (folder / "whole.parquet").read_bytes()[:-40], "fleet.parquet")


def twice(folder: Path) -> Path:
    return written(folder, "structure,total_volume,structure\nbag,9,bag\n")


BAD: dict[str, tuple[Callable[[Path], Path], str]] = {
    "truncated Parquet": (truncated, "magic bytes"),
    "text called Parquet": (lambda folder: written(folder, "a,b\n", "fleet.parquet"), "Parquet"),
    "text called Arrow": (lambda folder: written(folder, "a,b\n", "fleet.arrow"), ""),
    "empty Parquet": (lambda folder: written(folder, "", "fleet.parquet"), "0 bytes"),
    "empty Arrow": (lambda folder: written(folder, "", "fleet.arrow"), ""),
    "empty CSV": (lambda folder: written(folder, ""), "has no row"),
    "empty lines of JSON": (lambda folder: written(folder, "", "fleet.ndjson"), "has no row"),
    "UTF-16": (lambda folder: written(folder, "structure,total_volume\n".encode("utf-16")), "no header of CSV in UTF-8"),
    "another table": (lambda folder: written(folder, "structures,price\n1,2\n"), "by this name (nearest: structure)"),
    "no such table": (lambda folder: written(folder, "x,y\n1,2\n"), "no column has the name"),
    "a misspelt table": (lambda folder: written(folder, "structure,total_volum\nbag,9\n"), "total_volume: no column is called that"),
    "a column twice": (twice, "structure: two columns hold this member"),
    "missing": (lambda folder: folder / "nowhere.csv", "No such file"),
    "a folder": (lambda folder: written(folder, "", "inner.csv").parent.rename(folder.with_name("x.csv")), "s a directory"),
    "another format": (lambda folder: written(folder, "", "fleet.xlsx"), "a name ends in one of .parquet"),
}


@pytest.mark.parametrize("name", BAD)
def test_a_file_that_is_no_table_is_named_with_the_reason(tmp_path: Path, name: str) -> None:
    make, words = BAD[name]
    folder = tmp_path / "within"
    folder.mkdir()
    file = make(folder)
    with pytest.raises(UnreadableError) as refused:
        look_at([str(file)], fleet().columns)
    assert str(refused.value).startswith(f"{file}: ")
    assert words in str(refused.value)
    assert "\n" not in str(refused.value)


def test_a_table_without_rows_is_no_fault(tmp_path: Path) -> None:
    [looked] = look_at([str(written(tmp_path, "structure,total_volume\n"))], fleet().columns)
    assert looked.blocks == ()
    empty = table([row()]).slice(0, 0)
    write([empty], empty.schema, tmp_path / "fleet.parquet", "parquet")
    [looked] = look_at([str(tmp_path / "fleet.parquet")], fleet().columns)
    assert sum(one.rows for one in looked.blocks) == 0


def test_formats_are_told_by_the_end_of_the_name() -> None:
    names = {"a.parquet": "parquet", "a.FEATHER": "arrow", "b.c/a.csv": "csv", "a.jsonl": "ndjson"}
    assert {name: format_of(name) for name in names} == names
    with pytest.raises(UnreadableError):
        format_of("a.tsv")


def test_text_parted_by_tabs_is_read_by_its_own_name(tmp_path: Path) -> None:
    text = csv_of([["a", "bag", "9", "fine"]], delimiter="\t")
    assert answers(written(tmp_path, text, "fleet.tsv")) == answers(written(tmp_path, text))


def test_a_head_is_read_with_its_delimiter() -> None:
    head = head_of(io.BytesIO(b'id;" structure ";"total_volume, m3"\n1;bag;9\n'))
    assert head.columns == ("id", "structure", "total_volume, m3")
    assert head.delimiter == ";"
