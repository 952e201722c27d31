"""NDJSON: a JSON object a line, with the faults of lines that are none; blank lines are no rows."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import jiter
import numpy as np
import pyarrow as pa

from kilisho.faults import Fault
from kilisho.fleet.gathering import Row, of_rows
from kilisho.fleet.headings import MOST_NAMES, Columns
from kilisho.fleet.members import at_line
from kilisho.fleet.rows import NOT_AN_OBJECT, TOO_LONG
from kilisho.fleet.text_blocks import Cut
from kilisho.messages import say

_MARKS = {"duplicate key": "fault-row_repeats_member", "recursion": "fault-row_too_deep"}
_NOT_JSON = "fault-row_not_json"


def batch_of(cut: Cut, columns: Columns, further: Sequence[str] = ()) -> tuple[pa.RecordBatch, frozenset[str]]:
    """The rows of a piece with ``further`` columns as text, and names in them that nobody reads; of very many only some."""
    rows = rows_in(cut)
    batch, names = of_rows(rows, columns)
    unread = columns.unread(sorted(names))
    for name in unread:
        if name in further:
            batch = batch.append_column(name, pa.array([_text(row, name) for row in rows], pa.string()))
    return batch, frozenset([name for name in unread if name not in further][:MOST_NAMES])


def rows_in(cut: Cut) -> list[Row]:
    """The rows of a piece of a text, or what is wrong with each."""
    places = zip(cut.rows.begins.tolist(), cut.rows.ends.tolist(), strict=True)
    found = [row_of(cut.data[begin:end]) for begin, end in places]
    for at in np.flatnonzero(cut.rows.faults).tolist():
        found[at] = TOO_LONG
    return [at_line(row, cut.line + int(cut.rows.lines[at]) + 1) if isinstance(row, Fault) else row for at, row in enumerate(found)]


def row_of(line: bytes) -> Row:
    """The row in a line, or what is wrong with it."""
    try:
        row: Any = jiter.from_json(line, allow_inf_nan=False, catch_duplicate_keys=True, cache_mode="keys")
    except ValueError as error:
        return Fault((), "row_unreadable", _detail(str(error)))
    return row if isinstance(row, dict) else NOT_AN_OBJECT


def _detail(message: str) -> str:
    """The parser's own words may repeat what the caller sent, so they are not passed on."""
    return say(next((name for mark, name in _MARKS.items() if mark in message.lower()), _NOT_JSON))


def _text(row: Row, name: str) -> str | None:
    cell: Any = None if isinstance(row, Fault) else row.get(name)
    return None if cell is None else str(cell)
