"""CSV (RFC 4180) in UTF-8 with a header. A record that cannot be right is one bad row, and the lines that it would swallow stay rows."""

from __future__ import annotations

import csv
from collections import deque
from collections.abc import Iterable, Iterator
from itertools import chain, islice

import pyarrow as pa

from kilisho.faults import Fault
from kilisho.fleet.exchange.gathering import of_texts
from kilisho.fleet.exchange.headings import Heading
from kilisho.fleet.exchange.incoming import Incoming, Source, rows_at_once, unreadable
from kilisho.fleet.exchange.lines import blocks_of_lines
from kilisho.fleet.table import FAULTS
from kilisho.fleet.text_blocks import MOST_LINES
from kilisho.messages import say

Record = list[str] | Fault
_TOO_LONG = Fault((), "row_unreadable", say("fault-row_too_long"))
_NOT_UTF8 = Fault((), "row_unreadable", say("fault-row_not_utf8"))
_NOT_CSV = Fault((), "row_unreadable", say("fault-row_not_csv"))


def read_csv(source: Source) -> Incoming:
    """The table in ``source``; raises :class:`RefusedError` where the header cannot be used and :class:`TooManyRowsError`."""
    source.check_lines()
    records = records_of(chain.from_iterable(blocks_of_lines(source.file)))
    names = next(records, None)
    if names is None:
        raise unreadable("fault-table_empty")
    if isinstance(names, Fault):
        raise unreadable("fault-table_not_csv")
    heading = source.columns.heading(names)
    unread = dict.fromkeys(name for name in heading.unread if name != FAULTS)
    return Incoming(_pieces(records, names, heading), unread=unread)


def _pieces(records: Iterator[Record], names: list[str], heading: Heading) -> Iterator[pa.RecordBatch]:
    rows = rows_at_once(len(names))
    taken = list(islice(records, rows))
    yield _piece(taken, names, heading)
    while taken := list(islice(records, rows)):
        yield _piece(taken, names, heading)


def _piece(records: list[Record], names: list[str], heading: Heading) -> pa.RecordBatch:
    width, nothing = len(names), [""] * len(names)
    bad = [(at, fault) for at, record in enumerate(records) if (fault := _fault_of(record, width)) is not None]
    for at, _ in bad:
        records[at] = nothing
    cells = list(zip(*records, strict=True)) if records else [()] * width
    return of_texts(cells, heading, names, bad)


def _fault_of(record: Record, width: int) -> Fault | None:
    if isinstance(record, Fault) or len(record) == width:
        return record if isinstance(record, Fault) else None
    return Fault((), "row_unreadable", say("fault-row_width", cells=len(record), columns=width))


def records_of(lines: Iterable[bytes | None]) -> Iterator[Record]:
    """The records in ``lines``; one that spans lines and cannot be right is told once, and its further lines are read for themselves."""
    waiting = _Lines(lines)
    reader = csv.reader(waiting, strict=True)
    width: int | None = None
    while True:
        waiting.begin()
        try:
            record: Record = next(reader)
        except StopIteration:
            return
        except csv.Error:
            record = _NOT_CSV
        except _BadLineError as error:
            record = error.fault
            reader = csv.reader(waiting, strict=True)
        ragged = isinstance(record, Fault) or (width is not None and record and len(record) != width)
        if ragged and len(waiting.used) > 1:
            record, reader = record if isinstance(record, Fault) else _NOT_CSV, csv.reader(waiting, strict=True)
            waiting.give_back()
        if record:
            width = len(record) if width is None and isinstance(record, list) else width
            yield record


class _BadLineError(Exception):
    """A line that cannot be text of a table."""

    def __init__(self, fault: Fault) -> None:
        self.fault = fault
        super().__init__(fault.detail)


class _Lines:
    """Lines as text; it remembers those of the record that is being read, so that they can be read again."""

    def __init__(self, lines: Iterable[bytes | None]) -> None:
        self._lines, self._again = iter(lines), deque[bytes | None]()
        self.used: list[bytes | None] = []

    def begin(self) -> None:
        """A record begins."""
        self.used = []

    def give_back(self) -> None:
        """All lines of the record but its first will come once more."""
        self._again.extendleft(reversed(self.used[1:]))

    def __iter__(self) -> _Lines:
        return self

    def __next__(self) -> str:
        if len(self.used) >= MOST_LINES:
            raise _BadLineError(_NOT_CSV)
        line = self._again.popleft() if self._again else next(self._lines)
        self.used.append(line)
        if line is None:
            raise _BadLineError(_TOO_LONG)
        try:
            return line.decode() + "\n"
        except UnicodeDecodeError:
            raise _BadLineError(_NOT_UTF8) from None
