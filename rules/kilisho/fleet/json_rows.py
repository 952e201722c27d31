"""Lines of JSON in a file as a record batch, with the faults of lines that are no objects."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

import pyarrow as pa

from kilisho.faults import Fault
from kilisho.fleet.exchange.gathering import Row, of_rows
from kilisho.fleet.exchange.ndjson import row_of
from kilisho.fleet.members import Member
from kilisho.fleet.table import ID
from kilisho.fleet.text_blocks import rows_of

# Names that nobody reads are told; a file that makes up a new one on every line does not fill the memory.
MOST_NAMES = 100


def batch_of(data: bytes, line: int, members: Mapping[str, Member], wanted: frozenset[str]) -> tuple[pa.RecordBatch, frozenset[str]]:
    """The rows of a block that begins after ``line`` lines, and names in them that are not wanted."""
    found = rows_of(data)
    places = zip(found.begins.tolist(), found.ends.tolist(), found.lines.tolist(), strict=True)
    rows = [_row(data[begin:end], line + number + 1) for begin, end, number in places]
    batch, names = of_rows(rows, members)
    for name in sorted(names & wanted - members.keys() - {ID}):
        batch = batch.append_column(name, pa.array([_text(row, name) for row in rows], pa.string()))
    return batch, frozenset(sorted(names - wanted)[:MOST_NAMES])


def _row(text: bytes, line: int) -> Row:
    found = row_of(text)
    return replace(found, detail=f"line {line}: {found.detail}") if isinstance(found, Fault) else found


def _text(row: Row, name: str) -> str | None:
    cell: Any = None if isinstance(row, Fault) else row.get(name)
    return None if cell is None else str(cell)
