"""Bytes of a CSV file as a record batch of text, with the faults of rows that cannot be read."""

from __future__ import annotations

import csv
from collections.abc import Sequence
from functools import partial
from pathlib import Path
from typing import Any, NamedTuple

import numpy as np
import pyarrow as pa
import pyarrow.csv as pacsv

from kilisho.fleet.members import Reason
from kilisho.fleet.rows import NOT_AN_OBJECT
from kilisho.fleet.table import FAULTS, FAULTS_TYPE
from kilisho.fleet.text_blocks import Quoting, Rows, rows_of

DELIMITERS = ",;\t"
LONGEST_HEAD = 1 << 20
MARK = b"\xef\xbb\xbf"
csv.field_size_limit(1 << 28)


class Head(NamedTuple):
    """What the first row of a file says: its columns, what parts its cells, and how many bytes it takes."""

    columns: tuple[str, ...]
    delimiter: str
    size: int


def head_of(file: str) -> Head:
    """Reads the first row, in which the columns are named; raises ``ValueError`` for a file that has none."""
    with Path(file).open("rb") as stream:
        data = stream.read(LONGEST_HEAD)
    start = len(MARK) if data.startswith(MARK) else 0
    end = data.find(b"\n", start) + 1 or len(data)
    try:
        text = data[start:end].decode()
    except UnicodeDecodeError:
        raise ValueError("not UTF-8 text") from None
    if not text.strip() or "\0" in text:
        raise ValueError("the first line must name the columns, as UTF-8 text")
    delimiter = max(DELIMITERS, key=text.count)
    columns = tuple(cell.strip() for cell in next(csv.reader([text], delimiter=delimiter)))
    return Head(columns, delimiter, end)


def quoting_of(head: Head) -> Quoting:
    """How rows of this file are told from their lines."""
    return Quoting(partial(_cells, head.delimiter), len(head.columns))


def _cells(delimiter: str, row: bytes) -> int | None:
    """Latin-1 reads any byte; only commas, quotes and line ends matter."""
    try:
        return len(next(csv.reader([row.decode("latin-1")], delimiter=delimiter, strict=True), ()))
    except csv.Error as error:
        return None if "end of data" in str(error) else 0


def batch_of(data: bytes, head: Head, line: int, wanted: frozenset[str]) -> pa.RecordBatch:
    """The rows of a block that begins after ``line`` lines: the wanted columns as text, and the faults of rows that are none."""
    rows = rows_of(data, quoting_of(head))
    reading = _Reading(data, rows, head, wanted)
    reading.read()
    return reading.batch(line)


class _Reading:
    """Rows that are read together, in halves where they cannot be, so that each row is read as it would be alone."""

    def __init__(self, data: bytes, rows: Rows, head: Head, wanted: frozenset[str]) -> None:
        self.data, self.rows, self.head = data, rows, head
        self.names = [name for name in head.columns if name in wanted]
        self.whole = not rows.begins.size or bool((rows.begins[1:] == rows.ends[:-1]).all())
        self.tables: list[pa.Table] = []
        self.at: list[Any] = []
        self.bad: dict[int, str] = {}

    def read(self) -> None:
        """Read everything; what is no row is in ``bad`` afterwards."""
        self.bad |= dict.fromkeys(np.flatnonzero(self.rows.open).tolist(), "a quoted cell does not end")
        try:
            self.data.decode()
        except UnicodeDecodeError:
            self._find_undecodable()
        good = np.setdiff1d(np.arange(self.rows.begins.size), list(self.bad))
        if good.size:
            self._read(good)

    def _find_undecodable(self) -> None:
        for row in range(self.rows.begins.size):
            try:
                self._bytes(row).decode()
            except UnicodeDecodeError:
                self.bad[row] = "not UTF-8 text"

    def _bytes(self, row: int) -> bytes:
        return self.data[self.rows.begins[row] : self.rows.ends[row]]

    def _read(self, rows: Any) -> None:
        found = self._parsed(rows)
        if found is not None:
            self.tables.append(found[0])
            self.at.append(found[1])
        elif rows.size == 1:
            self.bad[int(rows[0])] = "cannot be read as a row"
        else:
            self._read(rows[: rows.size // 2])
            self._read(rows[rows.size // 2 :])

    def _parsed(self, rows: Any) -> tuple[pa.Table, Any] | None:
        """The table of some rows and which of them it holds; None where it does not hold each row for a row."""
        ragged: list[Any] = []

        def pass_over(row: Any) -> str:
            ragged.append(row)
            return "skip"

        try:
            table = _table(self._text(rows), self.head, self.names, pass_over)
        except pa.ArrowInvalid:
            return None
        if table.num_rows + len(ragged) != rows.size:
            return None
        left = rows[[row.number - 1 for row in ragged]] if ragged else rows[:0]
        told = (f"{row.actual_columns} cells, where {row.expected_columns} columns are named" for row in ragged)
        self.bad |= dict(zip(left.tolist(), told, strict=True))
        return table, np.setdiff1d(rows, left)

    def _text(self, rows: Any) -> bytes:
        if rows.size == self.rows.begins.size and self.whole:
            return self.data
        return b"".join(map(self._ended, rows.tolist()))

    def _ended(self, row: int) -> bytes:
        found = self._bytes(row)
        return found if found.endswith(b"\n") else found + b"\n"

    def batch(self, line: int) -> pa.RecordBatch:
        """Good and bad rows in the order of the file."""
        count = self.rows.begins.size
        schema = pa.schema([pa.field(name, pa.string()) for name in self.names])
        table = pa.concat_tables(self.tables) if self.tables else schema.empty_table()
        if self.bad:
            place = np.full(count, -1, np.int64)
            place[np.concatenate([*self.at, np.zeros(0, np.int64)]).astype(np.int64)] = np.arange(table.num_rows)
            table = table.take(pa.array(place, mask=place < 0))
        columns = [_one(table[name]) for name in self.names]
        if self.bad:
            schema = schema.append(pa.field(FAULTS, FAULTS_TYPE))
            columns.append(self._faults(count, line))
        return pa.RecordBatch.from_arrays(columns, schema=schema)

    def _faults(self, rows: int, line: int) -> pa.Array:
        told: list[Any] = [None] * rows
        for row, why in self.bad.items():
            detail = f"line {line + int(self.rows.lines[row]) + 1}: {why}"
            told[row] = [Reason("", NOT_AN_OBJECT.code, detail)._asdict()]
        return pa.array(told, FAULTS_TYPE)


def _one(column: pa.ChunkedArray) -> pa.Array:
    found = column.combine_chunks()
    return found if isinstance(found, pa.Array) else pa.concat_arrays(found.chunks)


def _table(text: bytes, head: Head, names: Sequence[str], pass_over: Any) -> pa.Table:
    return pacsv.read_csv(
        pa.BufferReader(text),
        read_options=pacsv.ReadOptions(column_names=head.columns, use_threads=False, block_size=len(text) + 1),
        parse_options=pacsv.ParseOptions(delimiter=head.delimiter, newlines_in_values=True, invalid_row_handler=pass_over),
        convert_options=pacsv.ConvertOptions(column_types=dict.fromkeys(names, pa.string()), include_columns=list(names)),
    )
