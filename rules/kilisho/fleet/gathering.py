"""Cells of a piece to a record batch with the faults of its bad rows, column by column: the same as ``fleet.read_rows``, only faster."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
import pyarrow as pa
import pyarrow.compute as pc

from kilisho.faults import Fault
from kilisho.fleet import columns as arrow
from kilisho.fleet.headings import Columns, Place
from kilisho.fleet.members import FLAG, Member, Reason, reason, told_in
from kilisho.fleet.nested_facts import flat
from kilisho.fleet.rows import LONGEST_ID, read_rows
from kilisho.fleet.table import CANONICAL, FAULTS, FAULTS_TYPE, ID
from kilisho.messages import Language

Row = Mapping[str, Any] | Fault
_NOTHING: dict[str, Any] = {}


class Piece:
    """Columns and faults of some rows, gathered one by one."""

    def __init__(self, rows: int, language: Language) -> None:
        self.rows, self.language = rows, language
        self._fields: list[pa.Field] = []
        self._arrays: list[pa.Array] = []
        self.faults: dict[int, list[dict[str, str]]] = {}

    def add(self, name: str, array: pa.Array, *, canonical: bool = False) -> None:
        """One more column; ``canonical`` if its numbers are checked already and in canonical units."""
        self._fields.append(pa.field(name, array.type, metadata={CANONICAL: b"1"} if canonical else None))
        self._arrays.append(array)

    def fail(self, row: int, why: Reason) -> None:
        """One more thing that is wrong with a row."""
        self.faults.setdefault(row, []).append(told_in(why, self.language)._asdict())

    def take(self, place: Place, array: pa.Array) -> None:
        """A column as it stands in the table, which is read in the unit that its name states."""
        if place.unit is None:
            self.add(place.member.name, array)
            return
        found, bad = arrow.numbers(array, place.member)
        for row, cell in zip(bad.tolist(), arrow.cells(array, bad, place.member) if bad.size else (), strict=True):
            self.fail(row, place.reason_of(cell) or reason(place.member.name))
        self.add(place.member.name, pa.array(found, mask=np.isnan(found)), canonical=True)

    def batch(self) -> pa.RecordBatch:
        """The piece as ``fleet`` reads it."""
        if self.faults:
            self._fields.append(pa.field(FAULTS, FAULTS_TYPE))
            self._arrays.append(pa.array([self.faults.get(row) for row in range(self.rows)], FAULTS_TYPE))
        if not self._arrays:
            self.add(ID, pa.nulls(self.rows, pa.string()))
        return pa.RecordBatch.from_arrays(self._arrays, schema=pa.schema(self._fields))


def of_rows(rows: Sequence[Row], columns: Columns) -> tuple[pa.RecordBatch, set[str]]:
    """A batch of ``rows``, each a mapping of column to cell or the fault of one that could not be parsed; and all names that were seen."""
    piece = Piece(len(rows), columns.language)
    mapped = [_mapped(row, at, piece, columns) for at, row in enumerate(rows)]
    names: set[str] = set().union(*mapped)
    piece.add(ID, _identities([row.get(ID) for row in mapped]))
    for name, member in columns.members.items():
        if name in names:
            _take(piece, member, [row.get(name) for row in mapped])
    return piece.batch(), names


def _mapped(row: Row, at: int, piece: Piece, columns: Columns) -> Mapping[str, Any]:
    """The cells of a row; what is wrong with it as a whole or with its facts is kept."""
    cells, faults = (_NOTHING, [reason("", row)]) if isinstance(row, Fault) else flat(row, columns.members)
    for why in faults:
        piece.fail(at, why)
    return cells


def _take(piece: Piece, member: Member, cells: list[Any]) -> None:
    """One column of cells of any type: whole where all are alike, one by one where not."""
    types = set(map(type, cells)) - {type(None)}
    if not types:
        return
    plain = _plain(cells, types, member)
    if plain is not None:
        piece.add(member.name, plain)
        return
    read = read_rows([{member.name: cell} for cell in cells], {member.name: member}, piece.language)
    if member.name in read.schema.names:
        field = read.schema.field(member.name)
        piece.add(member.name, read.column(member.name), canonical=bool(field.metadata))
    found = read.column(FAULTS)
    for row in np.flatnonzero(found.is_valid().to_numpy(zero_copy_only=False)).tolist():
        piece.faults.setdefault(row, []).extend(found[row].as_py())


def _plain(cells: list[Any], types: set[type], member: Member) -> pa.Array | None:
    """The column where Arrow can hold it as it is; None where it cannot."""
    kind = _arrow_type(types, member)
    try:
        return None if kind is None else pa.array(cells, kind)
    except (pa.ArrowException, OverflowError, UnicodeError):
        return None


def _arrow_type(types: set[type], member: Member) -> pa.DataType | None:
    if types <= {int, float}:
        return pa.float64() if member.kind == "number" else None
    if types == {bool}:
        return pa.bool_() if member.values == FLAG else None
    return pa.string() if types == {str} and member.kind != "list" and member.values != FLAG else None


def _identities(cells: list[Any]) -> pa.Array:
    if set(map(type, cells)) <= {str, type(None)} and "" not in cells and max((len(cell or "") for cell in cells), default=0) <= LONGEST_ID:
        try:
            return pa.array(cells, pa.string())
        except UnicodeError:
            pass
    return read_rows([{ID: _sayable(cell)} for cell in cells], {}).column(ID)


def _sayable(cell: Any) -> Any:
    """A cell without halves of characters, which no text in UTF-8 can hold."""
    return cell.encode("utf-8", "replace").decode() if isinstance(cell, str) else cell


def identities_of_text(array: pa.Array) -> pa.Array:
    """Ids in a text file: an empty cell says nothing."""
    return pc.if_else(pc.equal(array, ""), None, pc.utf8_slice_codeunits(array, 0, LONGEST_ID))


def in_parts(array: pa.Array) -> pa.Array:
    """A list in a cell of text: its parts stand between semicolons; an empty cell says nothing."""
    parts = [[part.strip() for part in text.split(";")] if text and text.strip() else None for text in array.to_pylist()]
    return pa.array(parts, pa.list_(pa.string()))
