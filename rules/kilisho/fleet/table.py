"""A record batch as records: which columns are read, and the faults of rows that cannot be."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any

import numpy as np
import pyarrow as pa

from kilisho.check_columns import Coded, Column
from kilisho.farm import Shelf
from kilisho.fleet import columns
from kilisho.fleet.columns import Rows
from kilisho.fleet.members import DATES, FLAG, REQUIRED, Member, Reason, reason, told_in
from kilisho.messages import DEFAULT, LANGUAGES, Language, say
from kilisho.questions.installation.work import CODES, NUMBERS, Records

ID, FAULTS = "id", "faults"
FAULT_TYPE = pa.struct({"column": pa.string(), "code": pa.string(), "detail": pa.string()})
FAULTS_TYPE = pa.list_(FAULT_TYPE)
# Marks a column of numbers that were read one by one, so that they are in canonical units and within their bounds.
CANONICAL = b"kilisho.canonical"
# By which a row says that it is invented, and in which column.
NOTICE, NOTICE_COLUMN = "Invented installations: no row is a real one.", "notice"
TWICE = "stated_twice"
MISSING = say("fault-missing")
DENIED = say("fault-row_denied")


@dataclass
class Refusals:
    """The rows that cannot be answered, each with everything that is wrong with it, which is told in a language."""

    rows: int
    language: Language = LANGUAGES[DEFAULT]
    found: dict[int, list[Reason]] = field(default_factory=dict)

    def add(self, row: int, why: Reason) -> None:
        """One more thing that is wrong with a row."""
        self.found.setdefault(row, []).append(why)

    def add_denied(self, rows: Iterable[int], fact: str) -> None:
        """Rows whose stated fact is denied by the rest; as in a request, only once every cell can be read."""
        denied = Reason(fact, TWICE, DENIED)
        for row in rows:
            if all(one.code == TWICE for one in self.found.get(row, ())):
                self.add(row, denied)

    def add_missing(self, rows: Iterable[int], column: str) -> None:
        """Rows in which nothing stands in a column where something must, unless something is wrong there already, or with the row."""
        missing = Reason(column, "missing", MISSING)
        for row in rows:
            if not any(one.column in (column, "") for one in self.found.get(row, ())):
                self.add(row, missing)

    def add_cells(self, rows: Rows, member: Member, column: pa.Array) -> None:
        """Bad cells, in the words in which a request would be refused."""
        cells = columns.cells(column, rows, member) if rows.size else []
        for row, cell in zip(rows.tolist(), cells, strict=True):
            self.add(row, member.reason_of(cell) or reason(member.name))

    def add_given(self, given: pa.Array) -> None:
        """Faults that were found before, while rows were read."""
        for row in np.flatnonzero(given.is_valid().to_numpy(zero_copy_only=False)).tolist():
            for fault in given[row].as_py():
                self.add(row, Reason(**fault))

    @property
    def refused(self) -> Rows:
        """The rows that are refused, in order."""
        return np.array(sorted(self.found), np.intp)

    def told(self) -> pa.Array:
        """The faults as a column, by column in each row; nothing in rows that are answered."""
        places: dict[Reason, int] = {}
        lengths, answered, flat = np.zeros(self.rows + 1, np.int32), np.ones(self.rows, bool), list[int]()
        for row in sorted(self.found):
            reasons = sorted(self.found[row])
            flat += [places.setdefault(why, len(places)) for why in reasons]
            lengths[row + 1], answered[row] = len(reasons), False
        distinct = pa.array([told_in(why, self.language)._asdict() for why in places], FAULT_TYPE)
        offsets = pa.array(np.cumsum(lengths, dtype=np.int32))
        return pa.ListArray.from_arrays(offsets, distinct.take(pa.array(flat, pa.int32())), mask=pa.array(answered))


def read(
    batch: pa.RecordBatch, members: Mapping[str, Member], shelf: Shelf, language: Language = LANGUAGES[DEFAULT]
) -> tuple[Records, Refusals]:
    """The records of a batch. Columns that no member or fact is called by are passed over; see ``fleet.unread``."""
    refusals = Refusals(batch.num_rows, language)
    if FAULTS in batch.schema.names:
        refusals.add_given(batch.column(FAULTS))
    found: dict[str, Any] = {}
    for name in batch.schema.names:
        column = _usable(batch.column(name), members.get(name))
        if column is not None:
            member = members[name]
            found[name], bad = _read(column, member, batch.schema.field(name))
            refusals.add_cells(bad, member, column)
            _refuse_nothing(found[name], member, refusals)
    for name in REQUIRED:
        if name not in found:
            refusals.add_missing(range(batch.num_rows), name)
    return _records(found, batch.num_rows, members, shelf), refusals


def _usable(column: pa.Array, member: Member | None) -> pa.Array | None:
    """A column that is read and in which something stands."""
    return column if member is not None and column.null_count < len(column) else None


_READERS: dict[str, Any] = {"number": columns.numbers, "code": columns.codes, "date": columns.days, "list": columns.lists}


def _read(column: pa.Array, member: Member, field: pa.Field) -> tuple[Any, Rows]:
    if field.metadata and CANONICAL in field.metadata:
        return column.fill_null(np.nan).to_numpy(zero_copy_only=False), np.zeros(0, np.intp)
    found: tuple[Any, Rows] = _READERS[member.kind](column, member)
    return found


def _refuse_nothing(found: Any, member: Member, refusals: Refusals) -> None:
    """Rows in which nothing stands where something must."""
    if member.name in REQUIRED:
        nothing = found < 0 if member.kind == "code" else np.isnan(found)
        if nothing.any():
            refusals.add_missing(np.flatnonzero(nothing).tolist(), member.name)


def _records(found: Mapping[str, Any], rows: int, members: Mapping[str, Member], shelf: Shelf) -> Records:
    numbers = {"total_volume": np.full(rows, np.nan)} | {name: found[name] for name in NUMBERS if name in found}
    codes = {name: found[name] for name in CODES if name in found}
    age = found["visited_on"] - found["commissioned_on"] if set(DATES) <= found.keys() else None
    facts = {name: _fact(column, members[name]) for name, column in found.items() if name not in (*NUMBERS, *CODES, *DATES)}
    return Records(rows, numbers, codes, age, _with_implied(facts, shelf))


def _fact(column: Any, member: Member) -> Column:
    return Coded(column, member.values) if member.kind == "code" else column


def _with_implied(facts: dict[str, Column], shelf: Shelf) -> dict[str, Column]:
    """The stated facts with what holds where one of them is stated at all."""
    found = dict(facts)
    for name, column in facts.items():
        known = column.codes >= 0 if isinstance(column, Coded) else ~np.isnan(column)
        for implied, value in shelf.data.facts[name].implies.items():
            before = found.get(implied)
            codes = before.codes if isinstance(before, Coded) else np.full(known.size, -1, np.intp)
            found[implied] = Coded(np.where(known, FLAG.index(value), codes), FLAG)
    return found
