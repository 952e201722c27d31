"""NDJSON, read as files of it are: :mod:`kilisho.fleet.json_rows`."""

from __future__ import annotations

from collections.abc import Iterator

import pyarrow as pa

from kilisho.faults import Fault
from kilisho.fleet.exchange.incoming import BLOCK, PIECE, Incoming, Source, rows_of_short_cells
from kilisho.fleet.gathering import Row, of_rows
from kilisho.fleet.headings import LONGEST_NAME, MOST_NAMES, unreadable
from kilisho.fleet.json_rows import rows_in
from kilisho.fleet.nested_facts import width
from kilisho.fleet.text_blocks import Size, cuts


def read_ndjson(source: Source) -> Incoming:
    """The table in ``source``; raises :class:`RefusedError` where no line is a row and :class:`TooManyRowsError`."""
    source.check_lines()
    incoming = Incoming(iter(()))
    incoming.pieces = _pieces(source, incoming)
    return incoming


def _pieces(source: Source, incoming: Incoming) -> Iterator[pa.RecordBatch]:
    first = True
    for part in _parts(source):
        if first and all(isinstance(row, Fault) for row in part):
            raise unreadable("fault-table_not_ndjson")
        first = False
        yield _piece(part, source, incoming)
    if first:
        raise unreadable("fault-table_empty")


def _parts(source: Source) -> Iterator[list[Row]]:
    for cut in cuts(source.file, Size(BLOCK, PIECE)):
        found = rows_in(cut)
        step = rows_of_short_cells(max((width(row) for row in found if not isinstance(row, Fault)), default=1))
        yield from (found[start : start + step] for start in range(0, len(found), step))


def _piece(rows: list[Row], source: Source, incoming: Incoming) -> pa.RecordBatch:
    batch, names = of_rows(rows, source.columns)
    for name in source.columns.unread(sorted(names)):
        if len(incoming.unread) < MOST_NAMES:
            incoming.unread[name[:LONGEST_NAME]] = None
    return batch
