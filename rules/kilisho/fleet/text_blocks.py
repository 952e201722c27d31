"""Where rows end in a text file: lines, and in CSV also rows of several lines, whose line ends stand in quotes.

A row is told by its own lines, at most ``MOST_LINES`` after them and ``LONGEST_ROW`` bytes, so that it never matters where a file is cut,
and no row fills the memory.
"""

from __future__ import annotations

import csv
from collections.abc import Iterator
from itertools import pairwise
from typing import IO, Any, NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.deadline import keep_to_time

NEWLINE, QUOTE, RETURN = b'\n"\r'
MARK = b"\xef\xbb\xbf"
# Lines of one row. A quote that is not closed by then is a fault of its line, which would otherwise read the rest of the file each time.
MOST_LINES = 100
# Bytes of one row, with its line end.
LONGEST_ROW = 1 << 20
# Bytes whose quotes are looked at together.
AT_ONCE = 1 << 18
# What is wrong with a row; the last is found only where a text is cut.
FINE, TOO_LONG, NOT_CSV, UNDECIDED = range(4)
Places = npt.NDArray[np.int64]
# A cell is as long as a row may be.
csv.field_size_limit(LONGEST_ROW)


class Quoting(NamedTuple):
    """How cells are told from one another, and how many a row has."""

    delimiter: str
    columns: int


class Rows(NamedTuple):
    """Where each row begins and ends, the number of its first line, and what is wrong with it."""

    begins: Places
    ends: Places
    lines: Places
    faults: npt.NDArray[np.int8]

    def kept(self, keep: Any) -> Rows:
        """Some of the rows."""
        return Rows(*(column[keep] for column in self))


class Size(NamedTuple):
    """How large a piece of a text is: about so many bytes, and at most so many rows, each of which could be a fault told at length."""

    bytes: int
    rows: int


class Cut(NamedTuple):
    """A piece of a text that ends where a row ends: its bytes, its rows, where it begins, and the lines before it."""

    data: bytes
    rows: Rows
    first: int
    line: int


def rows_of(data: bytes, quoting: Quoting | None = None, whole: bool = True) -> Rows:
    """The rows of a text; without quoting every line is a row. In a text that is not ``whole`` a row may go on.

    Blank lines are left out, and in CSV those of delimiters alone, which spreadsheets write below a table.
    """
    codes = np.frombuffer(data, np.uint8)
    ends = np.flatnonzero(codes == NEWLINE).astype(np.int64) + 1
    if len(data) and (not ends.size or ends[-1] < len(data)):
        ends = np.append(ends, len(data))
    begins = np.concatenate([np.zeros(min(1, ends.size), np.int64), ends[:-1]])
    rows = Rows(begins, ends, np.arange(ends.size), np.where(ends - begins > LONGEST_ROW, TOO_LONG, FINE).astype(np.int8))
    if quoting is not None:
        rows = _Joining(data, rows, quoting, whole).joined(_suspects(codes, rows, ord(quoting.delimiter)))
    return rows.kept(~_blank(data, codes, rows, b"\r\n" + quoting.delimiter.encode() if quoting else b" \t\r\n\v\f"))


def _blank(data: bytes, codes: Any, rows: Rows, marks: bytes) -> npt.NDArray[np.bool_]:
    """Rows of nothing but ``marks``."""
    first = codes[rows.begins] if rows.begins.size else codes[:0]
    blank: npt.NDArray[np.bool_] = first == NEWLINE
    for row in np.flatnonzero(np.isin(first, list(marks)) & ~blank).tolist():
        blank[row] = not data[rows.begins[row] : rows.ends[row]].strip(marks)
    return blank


def _suspects(codes: Any, lines: Rows, delimiter: int) -> list[int]:
    """Lines of which it is not plain that they are rows: each quote of a plain one opens, closes or repeats another as RFC 4180 has it."""
    found = np.zeros(lines.ends.size, bool)
    # Piece by piece, which stays in the processor's cache: each quote needs some eighty bytes of numbers.
    steps = [*np.unique(np.searchsorted(lines.ends, np.arange(0, codes.size, AT_ONCE))).tolist(), lines.ends.size]
    for first, last in pairwise(steps):
        if last > first:
            begin, end = lines.begins[first], lines.ends[last - 1]
            found[first:last] = _doubtful(codes[begin:end], lines.begins[first:last] - begin, lines.ends[first:last] - begin, delimiter)
    return np.flatnonzero(found & (lines.faults == FINE)).tolist()


def _doubtful(codes: Any, begins: Places, ends: Places, delimiter: int) -> npt.NDArray[np.bool_]:
    found = np.zeros(ends.size, bool)
    returns = np.flatnonzero(codes == RETURN)
    bare = returns[_following(codes, returns) != NEWLINE]
    found[np.searchsorted(ends, bare, "right")] = True
    quotes = np.flatnonzero(codes == QUOTE)
    line = np.searchsorted(ends, quotes, "right")
    counts = np.bincount(line, minlength=found.size)
    opens = (np.arange(quotes.size) - (np.cumsum(counts) - counts)[line]) & 1 == 0
    before, after = codes[quotes - 1], _following(codes, quotes)
    may_open = (quotes == begins[line]) | (before == delimiter) | (before == QUOTE)
    may_close = (after == delimiter) | (after == QUOTE) | (after == NEWLINE) | (after == RETURN)
    found[line[~np.where(opens, may_open, may_close)]] = True
    found |= counts & 1 == 1
    return found


def _following(codes: Any, places: Any) -> Any:
    """What stands after each place; a line end after the last byte."""
    return np.where(places + 1 < codes.size, codes[np.minimum(places + 1, codes.size - 1)], NEWLINE)


class _Joining:
    """Lines that are read as CSV, strictly, to find those that go on in the next ones and those that cannot be rows."""

    def __init__(self, data: bytes, lines: Rows, quoting: Quoting, whole: bool) -> None:
        self.data, self.lines, self.quoting, self.whole = data, lines, quoting, whole

    def joined(self, suspects: list[int]) -> Rows:
        """The rows. One of several lines that cannot be right costs its first line; the others are read for themselves."""
        keep, ends, faults = np.ones(self.lines.ends.size, bool), self.lines.ends.copy(), self.lines.faults.copy()
        done = 0
        for line in suspects:
            if line < done:
                continue
            keep_to_time()
            used, cells = self._read(line)
            if cells is None or (used > 1 and cells != self.quoting.columns):
                faults[line] = UNDECIDED if cells is None and line + used == ends.size and not self.whole else NOT_CSV
                continue
            done = line + used
            keep[line + 1 : done], ends[line] = False, ends[done - 1]
        return Rows(self.lines.begins, ends, self.lines.lines, faults).kept(keep)

    def _read(self, line: int) -> tuple[int, int | None]:
        """How many lines the row that begins in a line takes, and its cells; None where it cannot be read by then."""
        reader = csv.reader(self._from(line), delimiter=self.quoting.delimiter, strict=True)
        try:
            cells = len(next(reader, ()))
        except csv.Error:
            return reader.line_num, None
        return reader.line_num, cells

    def _from(self, line: int) -> Iterator[str]:
        """The lines of a row at most. Latin-1 reads any byte; only delimiters, quotes and line ends matter."""
        begins, ends = self.lines.begins, self.lines.ends
        for at in range(line, min(line + 1 + MOST_LINES, ends.size)):
            if ends[at] - begins[line] > LONGEST_ROW:
                return
            yield self.data[begins[at] : ends[at]].decode("latin-1")


def cuts(stream: IO[bytes], size: Size, quoting: Quoting | None = None, start: int = 0, line: int = 0) -> Iterator[Cut]:
    """A text from ``start`` on, before which there are ``line`` lines, in pieces of a size that end where a row ends.

    A mark of the order of bytes at the beginning is no part of it; of a line that is too long only the beginning is.
    """
    stream.seek(0)
    start, wanted = start or (len(MARK) if stream.read(len(MARK)) == MARK else 0), size.bytes
    while True:
        stream.seek(start)
        data = stream.read(wanted + 1)
        whole = len(data) <= wanted
        if not data:
            return
        until = len(data) if whole else data.rfind(b"\n") + 1
        if not until and len(data) > LONGEST_ROW:
            head = data[: LONGEST_ROW + 1]
            yield Cut(head, rows_of(head), start, line)
            start, line, wanted = _after_line(stream, start + len(data)), line + 1, size.bytes
            continue
        rows = rows_of(data[:until], quoting, whole or len(data) - until > LONGEST_ROW)
        rows, until = _decided(rows, until)
        if not until:
            wanted *= 2
            continue
        yield from _in_parts(Cut(data[:until], rows, start, line), size.rows)
        start, line, wanted = start + until, line + data.count(b"\n", 0, until), size.bytes


def _in_parts(cut: Cut, most: int) -> Iterator[Cut]:
    """A piece in parts of about as many rows, none of more than ``most``."""
    count = cut.rows.begins.size
    step = -(-count // max(1, -(-count // most)))
    firsts = list(range(step, count, step)) if step else []
    begins = [0, *cut.rows.begins[firsts].tolist(), len(cut.data)]
    before = [0, *cut.rows.lines[firsts].tolist()]
    for at, (begin, end), line in zip([0, *firsts], pairwise(begins), before, strict=True):
        rows = cut.rows.kept(slice(at, at + step))
        shifted = Rows(rows.begins - begin, rows.ends - begin, rows.lines - line, rows.faults)
        yield Cut(cut.data[begin:end], shifted, cut.first + begin, cut.line + line)


def _decided(rows: Rows, until: int) -> tuple[Rows, int]:
    """The rows that do not depend on what follows, and where they end."""
    late = np.flatnonzero(rows.faults == UNDECIDED)
    return (rows.kept(slice(late[0])), int(rows.begins[late[0]])) if late.size else (rows, until)


def _after_line(stream: IO[bytes], start: int) -> int:
    """Where the line ends that goes on at ``start``."""
    stream.seek(start)
    while data := stream.read(LONGEST_ROW):
        keep_to_time()
        found = data.find(b"\n") + 1
        if found:
            return start + found
        start += len(data)
    return start
