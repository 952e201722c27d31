"""CSV (RFC 4180) in UTF-8 as record batches of the columns that are read, with the faults of rows that cannot be.

Cells are parted by comma, semicolon or tab: whichever parts the first row into most, a comma on a tie. Arrow parses. Rows that are not
plainly those of RFC 4180 are read by the standard library before (:mod:`kilisho.fleet.text_blocks`), and bad ones never reach Arrow.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Mapping, Sequence
from functools import lru_cache
from typing import IO, Any, NamedTuple

import numpy as np
import pyarrow as pa
import pyarrow.csv as pacsv

from kilisho.faults import Fault
from kilisho.fleet import text_blocks
from kilisho.fleet.gathering import Piece, identities_of_text, in_parts
from kilisho.fleet.headings import Heading, unreadable
from kilisho.fleet.members import at_line, reason
from kilisho.fleet.rows import TOO_LONG
from kilisho.fleet.table import ID
from kilisho.fleet.text_blocks import LONGEST_ROW, MARK, MOST_LINES, Cut, Quoting
from kilisho.messages import say

DELIMITERS = ",;\t"
_NOT_UTF8 = Fault((), "row_unreadable", say("fault-row_not_utf8"))
_FAULTS = {text_blocks.TOO_LONG: TOO_LONG, text_blocks.NOT_CSV: Fault((), "row_unreadable", say("fault-row_not_csv"))}


class Head(NamedTuple):
    """What the first row of a text says: its columns, what parts its cells, and how many bytes and lines it takes."""

    columns: tuple[str, ...]
    delimiter: str
    size: int
    lines: int

    @property
    def quoting(self) -> Quoting:
        """How the rows of this text are told from its lines."""
        return Quoting(self.delimiter, len(self.columns))


def head_of(stream: IO[bytes]) -> Head:
    """Reads the first row that is not blank, in which the columns are named; raises :class:`RefusedError` for a text that has none."""
    stream.seek(0)
    data = stream.read(LONGEST_ROW + 1)
    mark = len(MARK) if data.startswith(MARK) else 0
    lines = io.BytesIO(data[mark:]).readlines()
    blank = next((at for at, line in enumerate(lines) if line.strip(b"\r\n" + DELIMITERS.encode())), None)
    if blank is None:
        raise unreadable("fault-table_empty")
    before = mark + sum(map(len, lines[:blank]))
    found = [one for delimiter in DELIMITERS if (one := _head(lines[blank : blank + MOST_LINES + 1], delimiter)) is not None]
    head = max(found, key=lambda one: len(one.columns), default=None)
    if head is None or before + head.size > LONGEST_ROW:
        raise unreadable("fault-table_not_csv")
    return head._replace(size=before + head.size, lines=blank + head.lines)


def _head(lines: Sequence[bytes], delimiter: str) -> Head | None:
    """The head by one delimiter; None where the first row is none. Latin-1 reads any byte, in lines of which the head is not yet known."""
    reader = csv.reader((line.decode("latin-1") for line in lines), delimiter=delimiter, strict=True)
    try:
        cells = [cell.encode("latin-1").decode().strip() for cell in next(reader)]
    except (csv.Error, UnicodeDecodeError):
        return None
    size = sum(map(len, lines[: reader.line_num]))
    return None if any("\0" in cell for cell in cells) else Head(tuple(cells), delimiter, size, reader.line_num)


class CsvReader:
    """Reads pieces of one text: the columns of its heading, and by name ``further`` ones."""

    def __init__(self, head: Head, heading: Heading, further: Sequence[str] = ()) -> None:
        self.head, self.heading, self.further = head, heading, [name for name in further if name in head.columns]
        wanted = dict.fromkeys([*heading.wanted, *self.further])
        # Arrow knows columns by their places: names that nobody reads may stand there twice.
        self._places = {name: str(head.columns.index(name)) for name in wanted}
        self._names = [str(place) for place in range(len(head.columns))]
        types = dict.fromkeys(self._places.values(), pa.string())
        self._convert = pacsv.ConvertOptions(column_types=types, include_columns=list(types))

    def batch(self, cut: Cut) -> pa.RecordBatch:
        """The rows of a piece, good and bad in their order."""
        count = cut.rows.begins.size
        bad = _unreadable(cut)
        rows = np.setdiff1d(np.arange(count), list(bad))
        table, ragged = self._parsed(_bytes_of(cut, rows), rows.size)
        bad |= {int(rows[at]): fault for at, fault in ragged.items()}
        if bad:
            place = np.full(count, -1, np.int64)
            place[np.delete(rows, list(ragged))] = np.arange(table.num_rows)
            table = table.take(pa.array(place, mask=place < 0))
        told = {row: at_line(bad[row], cut.line + int(cut.rows.lines[row]) + 1) for row in sorted(bad)}
        return self._batch({name: _one(table[place]) for name, place in self._places.items()}, count, told)

    def _parsed(self, text: bytes, rows: int) -> tuple[pa.Table, dict[int, Fault]]:
        """The rows that have a cell for each column, and the faults of the others by number."""
        ragged: dict[int, Fault] = {}

        def pass_over(row: Any) -> str:
            ragged[row.number - 1] = _width(row.actual_columns, row.expected_columns)
            return "skip"

        if not rows:
            return pa.table({name: pa.array([], pa.string()) for name in self._names}), ragged
        table = pacsv.read_csv(
            pa.BufferReader(text),
            read_options=pacsv.ReadOptions(column_names=self._names, use_threads=False, block_size=len(text) + 1),
            parse_options=pacsv.ParseOptions(delimiter=self.head.delimiter, newlines_in_values=True, invalid_row_handler=pass_over),
            convert_options=self._convert,
        )
        if table.num_rows + len(ragged) != rows:
            raise pa.ArrowInvalid("rows are not those that were counted")
        return table, ragged

    def _batch(self, cells: Mapping[str, pa.Array], rows: int, bad: Mapping[int, Fault]) -> pa.RecordBatch:
        piece = Piece(rows, self.heading.language)
        for row, fault in bad.items():
            piece.fail(row, reason("", fault))
        if self.heading.identity is not None:
            piece.add(ID, identities_of_text(cells[self.heading.identity]))
        for place in self.heading.places:
            array = cells[place.name]
            piece.take(place, in_parts(array) if place.member.kind == "list" else array)
        for name in self.further:
            piece.add(name, cells[name])
        return piece.batch()


@lru_cache(maxsize=1000)
def _width(cells: int, columns: int) -> Fault:
    return Fault((), "row_unreadable", say("fault-row_width", cells=cells, columns=columns))


def _unreadable(cut: Cut) -> dict[int, Fault]:
    """The rows of a piece that are not to be parsed, with their faults."""
    found = np.flatnonzero(cut.rows.faults)
    bad = {row: _FAULTS[fault] for row, fault in zip(found.tolist(), cut.rows.faults[found].tolist(), strict=True)}
    try:
        cut.data.decode()
    except UnicodeDecodeError:
        for row, (begin, end) in enumerate(zip(cut.rows.begins.tolist(), cut.rows.ends.tolist(), strict=True)):
            if row not in bad and not _is_text(cut.data[begin:end]):
                bad[row] = _NOT_UTF8
    return bad


def _is_text(data: bytes) -> bool:
    try:
        data.decode()
    except UnicodeDecodeError:
        return False
    return True


def _bytes_of(cut: Cut, rows: Any) -> bytes:
    """Some rows of a piece, one after the other, after the mark that Arrow takes away: one in a cell of the first row stays."""
    if not rows.size:
        return MARK
    begins, ends = cut.rows.begins[rows], cut.rows.ends[rows]
    breaks = np.flatnonzero(begins[1:] != ends[:-1])
    runs = zip(begins[[0, *(breaks + 1)]].tolist(), ends[[*breaks, -1]].tolist(), strict=True)
    return b"".join((MARK, *(cut.data[begin:end] for begin, end in runs)))


def _one(column: pa.ChunkedArray) -> pa.Array:
    found = column.combine_chunks()
    return found if isinstance(found, pa.Array) else pa.concat_arrays(found.chunks)
