"""Loosely typed rows, as a text file or lines of JSON give them, to a record batch with the faults of rows that cannot be read."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

import pyarrow as pa
from pydantic import ValidationError

from kilisho.faults import Fault
from kilisho.fleet.columns import as_written
from kilisho.fleet.members import FLAG, Member, Reason, reason, told_in
from kilisho.fleet.nested_facts import flat, says_nothing
from kilisho.fleet.table import CANONICAL, FAULTS, FAULTS_TYPE, ID
from kilisho.messages import DEFAULT, LANGUAGES, Language, say

NOT_AN_OBJECT = Fault((), "row_unreadable", say("fault-row_not_an_object"))
TOO_LONG = Fault((), "row_unreadable", say("fault-row_too_long"))
LONGEST_ID = 200


def read_rows(
    rows: Iterable[Mapping[str, Any] | Fault], members: Mapping[str, Member], language: Language = LANGUAGES[DEFAULT]
) -> pa.RecordBatch:
    """A batch of ``rows``: mappings of column to cell, or the fault of a row that could not even be parsed.

    The members of an object ``facts``, as a single request has it, are columns of the row.

    A cell may be a number, text that holds one, ``{"value", "unit"}``, a word, a day, yes or no; None, empty text and a column that is left
    out say nothing. Numbers come out in canonical units. Every bad cell becomes a fault of its row in ``language``, and the row keeps its
    place.
    """
    taken = [_Row.of(row, members) for row in rows]
    present = [name for name in members if any(name in row.cells for row in taken)]
    fields = [pa.field(ID, pa.string()), *(_field_of(members[name]) for name in present), pa.field(FAULTS, FAULTS_TYPE)]
    cells = [
        [row.id for row in taken],
        *([row.cells.get(name) for row in taken] for name in present),
        [[told_in(why, language)._asdict() for why in row.faults] or None for row in taken],
    ]
    arrays = [pa.array(column, field.type) for column, field in zip(cells, fields, strict=True)]
    return pa.RecordBatch.from_arrays(arrays, schema=pa.schema(fields))


def _field_of(member: Member) -> pa.Field:
    if member.kind == "number":
        return pa.field(member.name, pa.float64(), metadata={CANONICAL: b"1"})
    if member.kind == "code":
        return pa.field(member.name, pa.bool_() if member.values == FLAG else pa.string())
    return pa.field(member.name, {"date": pa.date32(), "list": pa.list_(pa.string())}[member.kind])


class _Row:
    """One row as it could be read."""

    def __init__(self) -> None:
        self.id: str | None = None
        self.cells: dict[str, Any] = {}
        self.faults: list[Reason] = []

    @classmethod
    def of(cls, row: Mapping[str, Any] | Fault, members: Mapping[str, Member]) -> _Row:
        """Read a row; what is wrong with it is kept."""
        found = cls()
        if not isinstance(row, Mapping):
            found.faults.append(reason("", row if isinstance(row, Fault) else NOT_AN_OBJECT))
            return found
        cells, found.faults = flat(row, members)
        found.id = _identity(cells.get(ID))
        for name in members.keys() & cells.keys():
            found.take(members[name], cells[name])
        return found

    def take(self, member: Member, cell: Any) -> None:
        """Read one cell."""
        if says_nothing(cell):
            return
        try:
            self.cells[member.name] = member.read(as_written(cell, member))
        except ValidationError:
            why = member.reason_of(as_written(cell, member))
            self.faults += [why] if why is not None else []


def _identity(cell: Any) -> str | None:
    return None if cell is None or cell == "" else str(cell)[:LONGEST_ID]
