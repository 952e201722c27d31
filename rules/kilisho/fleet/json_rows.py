"""Lines of JSON as a record batch, with the faults of lines that are no objects.

A column whose cells are all plain numbers, or all text, is taken as it is; any other is read cell by cell. Both say the same of a cell.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import jiter
import pyarrow as pa

from kilisho.faults import Fault
from kilisho.fleet.members import Member
from kilisho.fleet.rows import NOT_AN_OBJECT, read_rows
from kilisho.fleet.table import ID
from kilisho.fleet.text_blocks import rows_of

UNREADABLE = NOT_AN_OBJECT.code
# Names that nobody reads are told; a file that makes up a new one on every line does not fill the memory.
MOST_NAMES = 100
# The whole numbers that a float holds exactly.
EXACT = 2**53
Row = Mapping[str, Any] | Fault


def batch_of(data: bytes, line: int, members: Mapping[str, Member], wanted: frozenset[str]) -> tuple[pa.RecordBatch, frozenset[str]]:
    """The rows of a block that begins after ``line`` lines, and names in them that are not wanted."""
    rows = rows_of(data)
    places = zip(rows.begins.tolist(), rows.ends.tolist(), rows.lines.tolist(), strict=True)
    read = [_row(data[begin:end], line + number + 1) for begin, end, number in places]
    names = set().union(*(row.keys() for row in read if not isinstance(row, Fault)))
    further = [name for name in sorted(names & wanted) if name not in members and name != ID]
    return _batch(read, names, members, further), frozenset(sorted(names - wanted)[:MOST_NAMES])


def _row(text: bytes, line: int) -> Row:
    try:
        found = jiter.from_json(text, allow_inf_nan=False, catch_duplicate_keys=True, cache_mode="keys")
    except ValueError as error:
        return Fault((), UNREADABLE, f"line {line}: not one JSON object: {error}")
    return found if isinstance(found, dict) else Fault((), UNREADABLE, f"line {line}: {NOT_AN_OBJECT.detail}")


def _batch(rows: Sequence[Row], names: set[str], members: Mapping[str, Member], further: Sequence[str]) -> pa.RecordBatch:
    columns: dict[str, pa.Array] = {}
    slow = {}
    for name in (name for name in members if name in names):
        cells = [None if isinstance(row, Fault) else row.get(name) for row in rows]
        kind = _kind_of(cells)
        if kind is None:
            slow[name] = members[name]
        else:
            columns[name] = pa.array(cells, kind)
    read = read_rows([_some(row, slow) for row in rows], slow)
    fields = [*(pa.field(name, column.type) for name, column in columns.items()), *read.schema]
    texts = {name: pa.array([_text(None if isinstance(row, Fault) else row.get(name)) for row in rows], pa.string()) for name in further}
    fields += [pa.field(name, pa.string()) for name in texts]
    return pa.RecordBatch.from_arrays([*columns.values(), *read.columns, *texts.values()], schema=pa.schema(fields))


def _some(row: Row, names: Mapping[str, Any]) -> Row:
    return row if isinstance(row, Fault) else {name: row[name] for name in (ID, *names) if name in row}


def _kind_of(cells: Sequence[Any]) -> pa.DataType | None:
    """The type of a column that can be taken as it is; None where its cells must be read one by one."""
    kinds = set(map(type, cells)) - {type(None)}
    if kinds == {str}:
        return pa.string()
    if kinds == {float}:
        return pa.float64()
    if kinds and kinds <= {int, float} and all(cell is None or abs(cell) <= EXACT for cell in cells):
        return pa.float64()
    return None


def _text(cell: Any) -> str | None:
    return None if cell is None else cell if isinstance(cell, str) else str(cell)
