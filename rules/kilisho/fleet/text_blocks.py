"""Where rows end in a text file: lines, and in CSV also rows of several lines, whose line ends stand in quotes.

A row is told by its own lines and at most ``MOST_LINES`` after them, so that it never matters where a file is cut.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any, NamedTuple

import numpy as np
import numpy.typing as npt

NEWLINE, QUOTE, RETURN = b'\n"\r'
# Lines of one row. A quote that is not closed by then is a fault of its line, which would otherwise read the rest of the file each time.
MOST_LINES = 100
LARGEST = 1 << 28
Places = npt.NDArray[np.int64]


class Quoting(NamedTuple):
    """Counts the cells of a row, None where a quoted cell is still open at its end; and how many cells a row has."""

    cells: Callable[[bytes], int | None]
    columns: int


class TextBlock(NamedTuple):
    """Bytes from ``first`` to before ``last``, the lines of the file before them, and how many rows they hold."""

    first: int
    last: int
    line: int
    rows: int


class Rows(NamedTuple):
    """Where each row begins and ends, the number of its first line, and whether its quotes are never closed."""

    begins: Places
    ends: Places
    lines: Places
    open: npt.NDArray[np.bool_]

    def kept(self, keep: Any) -> Rows:
        """Some of the rows."""
        return Rows(*(column[keep] for column in self))


def rows_of(data: bytes, quoting: Quoting | None = None) -> Rows:
    """The rows of a text, blank lines left out; without quoting every line is a row."""
    codes = np.frombuffer(data, np.uint8)
    ends = np.flatnonzero(codes == NEWLINE).astype(np.int64) + 1
    if len(data) and (not ends.size or ends[-1] < len(data)):
        ends = np.append(ends, len(data))
    begins = np.concatenate([np.zeros(min(1, ends.size), np.int64), ends[:-1]])
    rows = Rows(begins, ends, np.arange(ends.size), np.zeros(ends.size, bool))
    if quoting is not None and b'"' in data:
        rows = _joined(data, rows, codes, quoting)
    return rows.kept(~_blank(rows, codes))


def _blank(rows: Rows, codes: Any) -> npt.NDArray[np.bool_]:
    first = codes[rows.begins] if rows.begins.size else np.zeros(0, np.uint8)
    size = rows.ends - rows.begins
    found: npt.NDArray[np.bool_] = (first == NEWLINE) | ((first == RETURN) & (size <= 2))
    return found


def _joined(data: bytes, lines: Rows, codes: Any, quoting: Quoting) -> Rows:
    """Lines joined to the line in which the quote that they leave open is closed."""
    of_quote = np.searchsorted(lines.ends, np.flatnonzero(codes == QUOTE), "right")
    odd = np.flatnonzero(np.bincount(of_quote, minlength=lines.ends.size) & 1).tolist()
    keep, ends, still_open = np.ones(lines.ends.size, bool), lines.ends.copy(), lines.open.copy()
    place = 0
    while place < len(odd):
        line, place = odd[place], place + 1
        if quoting.cells(data[lines.begins[line] : lines.ends[line]]) is not None:
            continue
        closing = odd[place] if place < len(odd) else line
        if line < closing <= line + MOST_LINES and quoting.cells(data[lines.begins[line] : lines.ends[closing]]) == quoting.columns:
            keep[line + 1 : closing + 1], ends[line] = False, lines.ends[closing]
            place += 1
        else:
            still_open[line] = True
    return Rows(lines.begins, ends, lines.lines, still_open).kept(keep)


def text_blocks(file: str, size: int, quoting: Quoting | None = None, start: int = 0) -> Iterator[TextBlock]:
    """A file in blocks of about ``size`` bytes that end where a row ends; with a ``start``, without the line that ends there."""
    line = 1 if start else 0
    with Path(file).open("rb") as stream:
        while True:
            data, whole = _read_from(stream, start, size)
            if not data:
                return
            until = len(data) if whole else _last_end(data, quoting)
            if not until:
                size = _doubled(size)
                continue
            rows = rows_of(data[:until], quoting).ends.size
            yield TextBlock(start, start + until, line, rows)
            line, start = line + data.count(b"\n", 0, until), start + until


def _read_from(stream: Any, start: int, size: int) -> tuple[bytes, bool]:
    """Bytes from ``start`` on, and whether these are all."""
    stream.seek(start)
    data = stream.read(size + 1)
    return (data, True) if len(data) <= size else (data[:size], False)


def _doubled(size: int) -> int:
    if size >= LARGEST:
        raise ValueError(f"no row ends within {size} bytes")
    return size * 2


def _last_end(data: bytes, quoting: Quoting | None) -> int:
    """Where the last row ends that does not depend on what follows."""
    until = data.rfind(b"\n") + 1
    if quoting is None or b'"' not in data:
        return until
    rows = rows_of(data[:until], quoting)
    total = data.count(b"\n", 0, until)
    late = np.flatnonzero(rows.open & (rows.lines >= total - MOST_LINES))
    return int(rows.begins[late[0]]) if late.size else until
