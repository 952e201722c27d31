"""Files of installations as record batches: Parquet, Arrow, CSV and lines of JSON, a row for a row in their order.

A file is cut into blocks, which any worker can read for itself. What a text file holds and nobody can read as a row comes out as a row
with its fault, so that nothing is lost; a file that is no table at all raises :class:`UnreadableError`. No command line is known here.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path
from typing import IO, Any, NamedTuple

import pyarrow as pa
import pyarrow.parquet as pq

from kilisho.faults import RefusedError
from kilisho.fleet import json_rows
from kilisho.fleet.csv_rows import CsvReader, head_of
from kilisho.fleet.gathering import Piece
from kilisho.fleet.headings import Columns, Heading, units_of, unreadable
from kilisho.fleet.members import in_a_line, reason, told_in
from kilisho.fleet.table import FAULTS, ID
from kilisho.fleet.text_blocks import Cut, Quoting, Size, cuts, rows_of
from kilisho.messages import Language

# Rows of a block, about: what one worker reads and answers before it tells that it did.
ROWS = 131_072
# Bytes of text that a row takes, about.
BYTES_A_ROW = 96
FORMATS = {
    ".parquet": "parquet",
    ".arrow": "arrow",
    ".feather": "arrow",
    ".ipc": "arrow",
    ".csv": "csv",
    ".ndjson": "ndjson",
    ".jsonl": "ndjson",
}
# What is read and not written: text that tabs part is told from CSV by its first row.
READ = FORMATS | {".tsv": "csv"}
Batches = Iterator[tuple[pa.RecordBatch, frozenset[str]]]


class Wanted(NamedTuple):
    """The columns that are read: those of members, and by name ``further`` ones."""

    columns: Columns
    further: tuple[str, ...] = ()


class UnreadableError(ValueError):
    """A file that is no table of installations; the text names it and says why."""


@dataclass(frozen=True)
class Block:
    """A piece of a file.

    ``first`` and ``last`` are row groups, batches or bytes, the last not among them; ``row`` counts the rows of all files before it.
    """

    file: str
    first: int
    last: int
    row: int
    rows: int
    line: int = 0


@dataclass(frozen=True)
class Table:
    """A file that was looked at: its blocks, its columns (none where it does not say beforehand), the unread ones, the type of its ids."""

    blocks: tuple[Block, ...]
    columns: tuple[str, ...]
    unread: tuple[str, ...]
    id_type: pa.DataType


def format_of(file: str, known: Mapping[str, str] = FORMATS) -> str:
    """The format of a file by the end of its name; raises :class:`UnreadableError`."""
    found = known.get(Path(file).suffix.lower())
    if found is None:
        raise UnreadableError(f"{file}: a name ends in one of {', '.join(known)}")
    return found


def look_at(files: Sequence[str], columns: Columns, rows: int = ROWS) -> list[Table]:
    """Every file cut into blocks of about ``rows`` rows; raises :class:`UnreadableError` for the first that cannot be used."""
    found, before = [], 0
    for file in files:
        with _words_for(file, columns.language):
            table = _LOOKS[format_of(file, READ)](file, columns, rows)
        found.append(replace(table, blocks=tuple(replace(block, row=block.row + before) for block in table.blocks)))
        before += sum(block.rows for block in table.blocks)
    return found


def read_block(block: Block, columns: Columns, further: Sequence[str] = ()) -> Batches:
    """The rows of a block as batches of the columns that are read and of ``further`` ones, each with the names that nobody reads."""
    others = tuple(name for name in further if name not in columns.members and name not in (ID, FAULTS))
    with _words_for(block.file, columns.language):
        yield from _READS[format_of(block.file, READ)](block, Wanted(columns, others))


@contextmanager
def _words_for(file: str, language: Language) -> Iterator[None]:
    try:
        yield
    except RefusedError as refused:
        told = (told_in(reason(": ".join(map(str, fault.place)), fault), language) for fault in refused.faults)
        raise UnreadableError(f"{file}: {'; '.join(in_a_line(one.column, one.detail) for one in told)}") from None
    except (pa.ArrowException, OSError) as error:
        why = getattr(error, "strerror", None) or (str(error).splitlines() or ["cannot be read"])[0]
        raise UnreadableError(f"{file}: {why}") from None


# Parquet: blocks are row groups, small ones together.


def _look_at_parquet(file: str, columns: Columns, rows: int) -> Table:
    with pq.ParquetFile(file) as opened:
        groups = [opened.metadata.row_group(number).num_rows for number in range(opened.num_row_groups)]
        return _of_schema(_gathered(file, groups, rows), opened.schema_arrow, columns)


def _gathered(file: str, sizes: Sequence[int], rows: int) -> tuple[Block, ...]:
    """Neighbours put together until they hold enough rows."""
    found, first, held, before = [], 0, 0, 0
    for number, size in enumerate(sizes, start=1):
        held += size
        if held >= rows or number == len(sizes):
            found.append(Block(file, first, number, before, held))
            first, before, held = number, before + held, 0
    return tuple(found)


def _of_schema(blocks: tuple[Block, ...], schema: pa.Schema, columns: Columns) -> Table:
    heading = _heading(schema, columns)
    kind = pa.string() if heading.identity is None else schema.field(heading.identity).type
    return Table(blocks, tuple(schema.names), heading.unread, kind.value_type if pa.types.is_dictionary(kind) else kind)


def _members_of(batch: pa.RecordBatch, heading: Heading, further: Sequence[str]) -> pa.RecordBatch:
    """The columns of a batch that are read, under the names of their members, and ``further`` ones."""
    piece = Piece(batch.num_rows, heading.language)
    if heading.identity is not None:
        piece.add(ID, batch.column(heading.identity))
    for place in heading.places:
        piece.take(place, batch.column(place.name))
    for name in further:
        if name in batch.schema.names:
            piece.add(name, batch.column(batch.schema.names.index(name)))
    return piece.batch()


def _heading(schema: pa.Schema, columns: Columns) -> Heading:
    return columns.heading(schema.names, units_of(schema))


def _read_parquet(block: Block, wanted: Wanted) -> Batches:
    with pq.ParquetFile(block.file, buffer_size=1 << 20) as opened:
        heading = _heading(opened.schema_arrow, wanted.columns)
        names = [name for name in opened.schema_arrow.names if name in (*heading.wanted, *wanted.further)]
        for batch in opened.iter_batches(ROWS, list(range(block.first, block.last)), names, use_threads=False):
            yield _members_of(batch, heading, wanted.further), frozenset()


# Arrow: blocks are batches; a stream, which has no index, is one block.


def _look_at_arrow(file: str, columns: Columns, rows: int) -> Table:
    with pa.memory_map(file) as source:
        try:
            opened = pa.ipc.open_file(source)
        except pa.ArrowInvalid:
            return _look_at_stream(file, columns, pa.ipc.open_stream(source))
        sizes = [opened.get_batch(number).num_rows for number in range(opened.num_record_batches)]
        return _of_schema(_gathered(file, sizes, rows), opened.schema, columns)


def _look_at_stream(file: str, columns: Columns, opened: Any) -> Table:
    held = sum(batch.num_rows for batch in opened)
    return _of_schema((Block(file, 0, -1, 0, held),), opened.schema, columns)


def _read_arrow(block: Block, wanted: Wanted) -> Batches:
    with pa.memory_map(block.file) as source:
        for batch in _arrow_batches(block, source):
            heading = _heading(batch.schema, wanted.columns)
            for start in range(0, batch.num_rows, ROWS):
                yield _members_of(batch.slice(start, ROWS), heading, wanted.further), frozenset()


def _arrow_batches(block: Block, source: Any) -> Iterator[pa.RecordBatch]:
    if block.last < 0:
        yield from pa.ipc.open_stream(source)
        return
    opened = pa.ipc.open_file(source)
    yield from map(opened.get_batch, range(block.first, block.last))


# Text: blocks are bytes that end where a row ends.


def _of_text(file: str, found: Iterator[Cut], columns: tuple[str, ...] = (), unread: tuple[str, ...] = ()) -> Table:
    blocks, before = [], 0
    for one in found:
        blocks.append(Block(file, one.first, one.first + len(one.data), before, one.rows.begins.size, one.line))
        before += blocks[-1].rows
    return Table(tuple(blocks), columns, unread, pa.string())


def _cut_of(block: Block, stream: IO[bytes], quoting: Quoting | None = None) -> Cut:
    stream.seek(block.first)
    data = stream.read(block.last - block.first)
    return Cut(data, rows_of(data, quoting), block.first, block.line)


def _look_at_csv(file: str, columns: Columns, rows: int) -> Table:
    with Path(file).open("rb") as stream:
        head = head_of(stream)
        unread = columns.heading(head.columns).unread
        found = cuts(stream, Size(rows * BYTES_A_ROW, rows), head.quoting, head.size, head.lines)
        return _of_text(file, found, tuple(head.columns), unread)


def _read_csv(block: Block, wanted: Wanted) -> Batches:
    with Path(block.file).open("rb") as stream:
        head = head_of(stream)
        reader = CsvReader(head, wanted.columns.heading(head.columns), wanted.further)
        yield reader.batch(_cut_of(block, stream, head.quoting)), frozenset()


def _look_at_ndjson(file: str, _: Columns, rows: int) -> Table:
    with Path(file).open("rb") as stream:
        found = _of_text(file, cuts(stream, Size(rows * 2 * BYTES_A_ROW, rows)))
    if not found.blocks:
        raise unreadable("fault-table_empty")
    return found


def _read_ndjson(block: Block, wanted: Wanted) -> Batches:
    with Path(block.file).open("rb") as stream:
        yield json_rows.batch_of(_cut_of(block, stream), *wanted)


_LOOKS: dict[str, Callable[[str, Columns, int], Table]] = {
    "parquet": _look_at_parquet,
    "arrow": _look_at_arrow,
    "csv": _look_at_csv,
    "ndjson": _look_at_ndjson,
}
_READS: dict[str, Callable[[Block, Wanted], Batches]] = {
    "parquet": _read_parquet,
    "arrow": _read_arrow,
    "csv": _read_csv,
    "ndjson": _read_ndjson,
}
