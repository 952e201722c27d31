"""Parquet. The footer and the headers of all pages that will be read are looked at before the first row."""

from __future__ import annotations

import os
import struct
from collections.abc import Iterator
from typing import Any

import pyarrow as pa
import pyarrow.parquet as pq

from kilisho.fleet.exchange.cleaning import cleaned, heading_of, id_type_of
from kilisho.fleet.exchange.incoming import BROKEN, LARGEST_PIECE, Incoming, Source, rows_at_once
from kilisho.fleet.exchange.pages import ExplodingError, footer_of, mapped, weigh
from kilisho.fleet.headings import Heading, unreadable

MAGIC = b"PAR1"
LARGEST_FOOTER = 16 << 20
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
        footer = footer_of(data)
        source.check_rows(footer.rows)
        schema = pq.ParquetFile(_mapped(source)).schema_arrow
        heading = heading_of(schema, source.columns)
        coded = weigh(data, footer, heading.wanted, LARGEST_PIECE)
    return Incoming(_pieces(source, schema, heading, coded), id_type_of(schema, heading), dict.fromkeys(heading.unread))


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


def _pieces(source: Source, schema: pa.Schema, heading: Heading, coded: set[str]) -> Iterator[pa.RecordBatch]:
    # Text stays in its dictionary: a long value that a file holds once would otherwise be copied to every row.
    texts = [name for name in heading.wanted if name in coded and _is_text(schema.field(name).type)]
    file = pq.ParquetFile(_mapped(source), pre_buffer=False, buffer_size=BUFFER, read_dictionary=texts)
    empty = True
    for batch in file.iter_batches(rows_at_once(len(heading.wanted)), columns=heading.wanted, use_threads=False):
        empty = False
        yield cleaned(batch, heading)
    if empty:
        yield cleaned(pa.RecordBatch.from_pylist([], schema), heading)


def _is_text(kind: pa.DataType) -> bool:
    return bool(pa.types.is_string(kind) or pa.types.is_large_string(kind))
