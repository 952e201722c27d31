"""NDJSON: a JSON object a line; empty lines are no rows."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import jiter
import pyarrow as pa

from kilisho.faults import Fault
from kilisho.fleet.exchange.gathering import Row, of_rows
from kilisho.fleet.exchange.headings import LONGEST_NAME, MOST_NAMES
from kilisho.fleet.exchange.incoming import Incoming, Source, rows_at_once, unreadable
from kilisho.fleet.exchange.lines import blocks_of_lines
from kilisho.fleet.rows import NOT_AN_OBJECT
from kilisho.fleet.table import FAULTS, ID
from kilisho.messages import say

_MARKS = {"duplicate key": "fault-row_repeats_member", "recursion": "fault-row_too_deep"}
_NOT_JSON = "fault-row_not_json"


def read_ndjson(source: Source) -> Incoming:
    """The table in ``source``; raises :class:`RefusedError` where no line is a row and :class:`TooManyRowsError`."""
    source.check_lines()
    incoming = Incoming(iter(()))
    incoming.pieces = _pieces(source, incoming)
    return incoming


def _pieces(source: Source, incoming: Incoming) -> Iterator[pa.RecordBatch]:
    first, rows = True, 0
    for block in blocks_of_lines(source.file):
        found = [row_of(line) for line in block if line is None or line.strip()]
        step = rows_at_once(max((len(row) for row in found if not isinstance(row, Fault)), default=1))
        for start in range(0, len(found), step):
            part = found[start : start + step]
            if first and all(isinstance(row, Fault) for row in part) and part:
                raise unreadable("fault-table_not_ndjson")
            first, rows = False, rows + len(part)
            yield _piece(part, source, incoming)
    if not rows:
        raise unreadable("fault-table_empty")


def _piece(rows: list[Row], source: Source, incoming: Incoming) -> pa.RecordBatch:
    batch, names = of_rows(rows, source.columns.members)
    for name in sorted(names - source.columns.members.keys() - {ID, FAULTS}):
        if len(incoming.unread) < MOST_NAMES:
            incoming.unread[name[:LONGEST_NAME]] = None
    return batch


def row_of(line: bytes | None) -> Row:
    """The row in a line, or what is wrong with it."""
    if line is None:
        return Fault((), "row_unreadable", say("fault-row_too_long"))
    try:
        row: Any = jiter.from_json(line, allow_inf_nan=False, catch_duplicate_keys=True, cache_mode="keys")
    except ValueError as error:
        return Fault((), "row_unreadable", _detail(str(error)))
    return row if isinstance(row, dict) else NOT_AN_OBJECT


def _detail(message: str) -> str:
    """The parser's own words may repeat what the caller sent, so they are not passed on."""
    return say(next((name for mark, name in _MARKS.items() if mark in message.lower()), _NOT_JSON))
