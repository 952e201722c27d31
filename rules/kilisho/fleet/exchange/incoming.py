"""A table on its way in: what every reader gives, and how each may refuse a file as a whole."""

from __future__ import annotations

import itertools
import struct
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import IO

import pyarrow as pa

from kilisho.faults import TooManyRowsError
from kilisho.fleet.headings import Columns

# Rows of a piece: a fraction of a second of work, and as many as stay in the processor's cache.
PIECE = 8_192
# Cells of a piece; each could be a fault that is told at length.
MOST_CELLS = 1 << 17
# What one piece of a packed file may become in memory, in bytes: a record batch, or the pages that are open at once.
LARGEST_PIECE = 128 << 20
# Bytes of text that are read at once.
BLOCK = 1 << 20
# What Arrow, and our own looking at headers, raise on a file that is not what it says.
BROKEN = (pa.ArrowException, OSError, UnicodeError, OverflowError, KeyError, IndexError, struct.error)


@dataclass
class Incoming:
    """A table as pieces of at most some ten thousand rows.

    ``unread`` names columns that nothing is read from; it may grow with the pieces.
    """

    pieces: Iterator[pa.RecordBatch]
    id_type: pa.DataType = field(default_factory=pa.string)
    unread: dict[str, None] = field(default_factory=dict)


@dataclass(frozen=True)
class Source:
    """A file to be read from its start, the columns that are known, and the most rows that it may have."""

    file: IO[bytes]
    columns: Columns
    most_rows: int

    def check_lines(self) -> None:
        """Raises :class:`TooManyRowsError` for a text of more lines than rows are permitted."""
        self.file.seek(0)
        blocks = iter(lambda: self.file.read(BLOCK), b"")
        counts = itertools.accumulate(block.count(b"\n") for block in blocks)
        # A header, and a last line without an end.
        if any(count > self.most_rows + 2 for count in counts):
            raise TooManyRowsError
        self.file.seek(0)

    def check_rows(self, rows: int) -> None:
        """Raises :class:`TooManyRowsError`."""
        if rows > self.most_rows:
            raise TooManyRowsError


def rows_at_once(columns: int) -> int:
    """How many rows of so many columns make a piece."""
    return max(1, min(PIECE, MOST_CELLS // max(1, columns)))
