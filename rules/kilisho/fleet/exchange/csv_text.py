"""CSV, read as files of it are: :mod:`kilisho.fleet.csv_rows`."""

from __future__ import annotations

from collections.abc import Iterator

import pyarrow as pa

from kilisho.fleet.csv_rows import CsvReader, head_of
from kilisho.fleet.exchange.incoming import BLOCK, Incoming, Source, rows_of_short_cells
from kilisho.fleet.text_blocks import Size, cuts


def read_csv(source: Source) -> Incoming:
    """The table in ``source``; raises :class:`RefusedError` where the header cannot be used and :class:`TooManyRowsError`."""
    source.check_lines()
    head = head_of(source.file)
    heading = source.columns.heading(head.columns)
    return Incoming(_pieces(source, CsvReader(head, heading)), unread=dict.fromkeys(heading.unread))


def _pieces(source: Source, reader: CsvReader) -> Iterator[pa.RecordBatch]:
    head = reader.head
    size = Size(BLOCK, rows_of_short_cells(len(reader.heading.wanted)))
    yield from map(reader.batch, cuts(source.file, size, head.quoting, head.size, head.lines))
