"""Parquet. The footer and the headers of all pages that will be read are looked at before the first row."""

from __future__ import annotations

import os
import struct
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import pyarrow as pa
import pyarrow.parquet as pq

from kilisho.fleet.exchange.cleaning import cleaned, heading_of, id_type_of
from kilisho.fleet.exchange.incoming import BROKEN, LARGEST_PIECE, Incoming, Source, rows_that_fit
from kilisho.fleet.exchange.pages import MOST_CHUNKS, ExplodingError, Footer, Leaf, Weight, footer_of, mapped, weigh
from kilisho.fleet.headings import Heading, unreadable

MAGIC = b"PAR1"
# As a thousand columns in sixty row groups need, or twenty in three thousand; Arrow's own objects take up to twenty-five times as much.
LARGEST_FOOTER = 8 << 20
# Bytes of a column that are read at once.
BUFFER = 64 << 10


def read_parquet(source: Source) -> Incoming:
    """The table in ``source``; raises :class:`RefusedError` and :class:`TooManyRowsError`."""
    _check_footer(source)
    try:
        return _read(source)
    except BROKEN as error:
        raise unreadable("fault-table_not_parquet") from error
    except ExplodingError as error:
        raise unreadable(error.message) from error


def _read(source: Source) -> Incoming:
    with mapped(source.file) as data:
        footer = _footer(data)
        source.check_rows(footer.rows)
        opened = pq.ParquetFile(_mapped(source), thrift_container_size_limit=MOST_CHUNKS)
        schema = opened.schema_arrow
        heading = heading_of(schema, source.columns)
        weights = weigh(data, footer, _leaves(opened.schema, heading.wanted), LARGEST_PIECE)
    plan = Plan(schema, heading, weights, opened.metadata)
    return Incoming(_pieces(source, plan), id_type_of(schema, heading), dict.fromkeys(heading.unread))


@dataclass(frozen=True)
class Plan:
    """What was found out about a file before its rows are read."""

    schema: pa.Schema
    heading: Heading
    weights: Mapping[Leaf, Weight]
    metadata: Any

    @property
    def coded(self) -> list[str]:
        """Text that stays in its dictionary: a long value that a file holds once would otherwise be copied to every row."""
        return [leaf.path for leaf, weight in self.weights.items() if leaf.stays_coded and weight.dictionary]

    @property
    def rows(self) -> int:
        """Rows that are read at once."""
        of_column = {name: sum(weight.cell for leaf, weight in self.weights.items() if leaf.belongs(name)) for name in self.heading.wanted}
        return rows_that_fit(of_column.values())


def _footer(data: Any) -> Footer:
    try:
        return footer_of(data)
    except OverflowError:
        raise ExplodingError("fault-table_explodes") from None


def _leaves(schema: Any, wanted: Sequence[str]) -> list[Leaf | None]:
    """The columns of a file that hold values, in their order; None for those that are not read."""
    found = [_leaf(schema.column(at)) for at in range(len(schema))]
    return [leaf if any(leaf.belongs(name) for name in wanted) else None for leaf in found]


def _leaf(column: Any) -> Leaf:
    has_bytes = column.physical_type == "BYTE_ARRAY"
    return Leaf(column.path, has_bytes, column.max_repetition_level > 0, has_bytes and column.logical_type.type != "DECIMAL")


def _check_footer(source: Source) -> None:
    size = source.file.seek(0, os.SEEK_END)
    source.file.seek(max(size - 8, 0))
    tail = source.file.read(8)
    if size < 12 or tail[4:] != MAGIC or struct.unpack("<I", tail[:4])[0] > size - 8:
        raise unreadable("fault-table_not_parquet")
    if struct.unpack("<I", tail[:4])[0] > LARGEST_FOOTER:
        raise unreadable("fault-table_explodes")


def _mapped(source: Source) -> Any:
    return pa.memory_map(f"/dev/fd/{source.file.fileno()}")


def _pieces(source: Source, plan: Plan) -> Iterator[pa.RecordBatch]:
    file = pq.ParquetFile(_mapped(source), metadata=plan.metadata, pre_buffer=False, buffer_size=BUFFER, read_dictionary=plan.coded)
    empty, heading = True, plan.heading
    # Arrow cannot join lists that stay in the dictionaries of several row groups.
    every = list(range(file.num_row_groups))
    parts = [[group] for group in every] if any("." in path for path in plan.coded) else [every]
    for groups in parts:
        for batch in file.iter_batches(plan.rows, row_groups=groups, columns=heading.wanted, use_threads=False):
            empty = False
            yield cleaned(batch, heading)
    if empty:
        yield cleaned(pa.RecordBatch.from_pylist([], plan.schema), heading)
