"""Files of installations as record batches: Parquet, Arrow, CSV and lines of JSON, a row for a row in their order.

A file is cut into blocks, which any worker can read for itself. What a text file holds and nobody can read as a row comes out as a row
with its fault, so that nothing is lost; a file that is no table at all raises :class:`UnreadableError`. No command line is known here.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, replace
from difflib import get_close_matches
from pathlib import Path
from typing import Any, NamedTuple

import pyarrow as pa
import pyarrow.parquet as pq

from kilisho.fleet import csv_rows, json_rows
from kilisho.fleet.members import REQUIRED, Member
from kilisho.fleet.table import FAULTS, ID
from kilisho.fleet.text_blocks import TextBlock, text_blocks

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
Batches = Iterator[tuple[pa.RecordBatch, frozenset[str]]]


class Wanted(NamedTuple):
    """The columns that are read: those of ``members``, and by name all that are kept."""

    members: Mapping[str, Member]
    names: frozenset[str]


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
    """A file that was looked at: its blocks, the columns that it says it has, and the type of its ids."""

    blocks: tuple[Block, ...]
    columns: tuple[str, ...]
    id_type: pa.DataType


def format_of(file: str) -> str:
    """The format of a file by the end of its name; raises :class:`UnreadableError` for one that is not known."""
    found = FORMATS.get(Path(file).suffix.lower())
    if found is None:
        raise UnreadableError(f"{file}: a name ends in one of {', '.join(FORMATS)}")
    return found


def look_at(files: Sequence[str], rows: int = ROWS) -> list[Table]:
    """Every file cut into blocks of about ``rows`` rows; raises :class:`UnreadableError` for the first that cannot be used."""
    found, before = [], 0
    for file in files:
        with _words_for(file):
            table = _LOOKS[format_of(file)](file, rows)
            _check_columns(file, table.columns)
        found.append(replace(table, blocks=tuple(replace(block, row=block.row + before) for block in table.blocks)))
        before += sum(block.rows for block in table.blocks)
    return found


def read_block(block: Block, members: Mapping[str, Member], further: Sequence[str] = ()) -> Batches:
    """The rows of a block as batches of the columns that are read and of ``further`` ones, each with the names that nobody reads."""
    wanted = Wanted(members, frozenset((*members, ID, *further)) - {FAULTS})
    with _words_for(block.file):
        yield from _READS[format_of(block.file)](block, wanted)


@contextmanager
def _words_for(file: str) -> Iterator[None]:
    try:
        yield
    except (pa.ArrowException, OSError, UnicodeDecodeError) as error:
        told = getattr(error, "strerror", None) or (str(error).splitlines() or ["cannot be read"])[0]
        raise UnreadableError(f"{file}: {told}") from None
    except UnreadableError:
        raise
    except ValueError as error:
        raise UnreadableError(f"{file}: {error}") from None


def _check_columns(file: str, columns: Sequence[str]) -> None:
    twice = [name for name, count in Counter(columns).items() if count > 1]
    if twice:
        raise UnreadableError(f"{file}: the column {twice[0]!r} stands there {columns.count(twice[0])} times")
    missing = [name for name in REQUIRED if name not in columns] if format_of(file) != "ndjson" else []
    if missing:
        near = get_close_matches(missing[0], columns, n=1, cutoff=0.6)
        meant = f"; is it {near[0]!r}?" if near else f" among {', '.join(columns[:12]) or 'none at all'}"
        raise UnreadableError(f"{file}: no column is called {missing[0]!r}{meant}")


# Parquet: blocks are row groups, small ones together.


def _look_at_parquet(file: str, rows: int) -> Table:
    with pq.ParquetFile(file) as opened:
        groups = [opened.metadata.row_group(number).num_rows for number in range(opened.num_row_groups)]
        return _of_schema(_gathered(file, groups, rows), opened.schema_arrow)


def _gathered(file: str, sizes: Sequence[int], rows: int) -> tuple[Block, ...]:
    """Neighbours put together until they hold enough rows."""
    found, first, held, before = [], 0, 0, 0
    for number, size in enumerate(sizes, start=1):
        held += size
        if held >= rows or number == len(sizes):
            found.append(Block(file, first, number, before, held))
            first, before, held = number, before + held, 0
    return tuple(found)


def _of_schema(blocks: tuple[Block, ...], schema: pa.Schema) -> Table:
    kind = schema.field(ID).type if schema.names.count(ID) == 1 else pa.string()
    return Table(blocks, tuple(schema.names), kind.value_type if pa.types.is_dictionary(kind) else kind)


def _read_parquet(block: Block, wanted: Wanted) -> Batches:
    with pq.ParquetFile(block.file, buffer_size=1 << 20) as opened:
        names = [name for name in opened.schema_arrow.names if name in wanted.names]
        for batch in opened.iter_batches(ROWS, list(range(block.first, block.last)), names, use_threads=False):
            yield batch, frozenset()


# Arrow: blocks are batches; a stream, which has no index, is one block.


def _look_at_arrow(file: str, rows: int) -> Table:
    with pa.memory_map(file) as source:
        try:
            opened = pa.ipc.open_file(source)
        except pa.ArrowInvalid:
            return _look_at_stream(file, pa.ipc.open_stream(source))
        sizes = [opened.get_batch(number).num_rows for number in range(opened.num_record_batches)]
        return _of_schema(_gathered(file, sizes, rows), opened.schema)


def _look_at_stream(file: str, opened: Any) -> Table:
    held = sum(batch.num_rows for batch in opened)
    return _of_schema((Block(file, 0, -1, 0, held),), opened.schema)


def _read_arrow(block: Block, wanted: Wanted) -> Batches:
    with pa.memory_map(block.file) as source:
        for batch in _arrow_batches(block, source):
            chosen = batch.select([name for name in batch.schema.names if name in wanted.names])
            for start in range(0, batch.num_rows, ROWS):
                yield chosen.slice(start, ROWS), frozenset()


def _arrow_batches(block: Block, source: Any) -> Iterator[pa.RecordBatch]:
    if block.last < 0:
        yield from pa.ipc.open_stream(source)
        return
    opened = pa.ipc.open_file(source)
    yield from map(opened.get_batch, range(block.first, block.last))


# Text: blocks are bytes that end where a row ends.


def _of_text(file: str, found: Sequence[TextBlock], columns: Sequence[str]) -> Table:
    blocks, before = [], 0
    for one in found:
        blocks.append(Block(file, one.first, one.last, before, one.rows, one.line))
        before += one.rows
    return Table(tuple(blocks), tuple(columns), pa.string())


def _look_at_csv(file: str, rows: int) -> Table:
    head = csv_rows.head_of(file)
    found = text_blocks(file, rows * BYTES_A_ROW, csv_rows.quoting_of(head), head.size)
    return _of_text(file, tuple(found), head.columns)


def _read_csv(block: Block, wanted: Wanted) -> Batches:
    head = csv_rows.head_of(block.file)
    yield csv_rows.batch_of(_bytes_of(block), head, block.line, wanted.names), frozenset()


def _look_at_ndjson(file: str, rows: int) -> Table:
    if not Path(file).stat().st_size:
        raise UnreadableError(f"{file}: holds nothing")
    return _of_text(file, tuple(text_blocks(file, rows * 2 * BYTES_A_ROW)), ())


def _read_ndjson(block: Block, wanted: Wanted) -> Batches:
    yield json_rows.batch_of(_bytes_of(block), block.line, wanted.members, wanted.names)


def _bytes_of(block: Block) -> bytes:
    with Path(block.file).open("rb") as stream:
        stream.seek(block.first)
        return stream.read(block.last - block.first)


_LOOKS: dict[str, Callable[[str, int], Table]] = {
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
