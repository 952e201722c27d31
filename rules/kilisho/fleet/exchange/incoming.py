"""A table on its way in: what every reader gives, and how each may refuse a file as a whole."""

from __future__ import annotations

import itertools
import struct
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from typing import IO

import pyarrow as pa

from kilisho.faults import TooManyRowsError
from kilisho.fleet.headings import Columns

# Rows of a piece: a fraction of a second of work, and as many as stay in the processor's cache.
PIECE = 8_192
# What one piece may become in memory, in bytes: a record batch that was packed, what is open of a Parquet file, or the cells of a piece.
LARGEST_PIECE = 128 << 20
# What a cell of a piece counts at least, in bytes: each could be a fault that is told at length.
CELL = 1 << 10
# How many times a text takes its bytes while a piece is read: Arrow copies it as its buffer grows, and the piece before is still there.
COPIES = 4
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


def rows_that_fit(longest: Iterable[int]) -> int:
    """How many rows make a piece, by the bytes that the longest cell of each column may take."""
    row = sum(max(COPIES * cell, CELL) for cell in longest)
    return max(1, min(PIECE, LARGEST_PIECE // max(1, row)))


def rows_of_short_cells(columns: int) -> int:
    """How many rows of so many columns make a piece, where each cell is bounded before anything copies it."""
    return rows_that_fit([0] * columns)
