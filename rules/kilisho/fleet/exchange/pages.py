"""The pages of a Parquet file, weighed by their own headers: the footer may be untrue of them, while their headers are kept to.

The footer is read here too (Apache Parquet format, ``parquet.thrift``): where it is damaged, Arrow's own objects end the process.
"""

from __future__ import annotations

import mmap
import struct as packing
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import IO, Any

from kilisho.deadline import keep_to_time
from kilisho.fleet.exchange.thrift import NUMBER, Fields, Walk, number, struct, structs

# Fields of a page's header,
_KIND, _UNPACKED, _PACKED, _DATA, _DICTIONARY, _DATA_2 = 1, 2, 3, 5, 7, 8
_BODIES = {0: _DATA, 2: _DICTIONARY, 3: _DATA_2}
_VALUES, _ENCODING, _ENCODING_2 = 1, 2, 4
_BODY = {_VALUES: NUMBER, _ENCODING: NUMBER, _ENCODING_2: NUMBER}
_HEADER = {_KIND: NUMBER, _UNPACKED: NUMBER, _PACKED: NUMBER, _DATA: _BODY, _DICTIONARY: _BODY, _DATA_2: _BODY}
# and of the footer: rows and row groups, their columns and rows, what is said of a column.
_ROWS, _GROUPS, _COLUMNS, _GROUP_ROWS, _COLUMN = 3, 4, 1, 3, 3
_COLUMN_VALUES, _FIRST_PAGE, _FIRST_DICTIONARY = 5, 9, 11
_ABOUT = {_COLUMN_VALUES: NUMBER, _FIRST_PAGE: NUMBER, _FIRST_DICTIONARY: NUMBER}
_FOOTER = {_ROWS: NUMBER, _GROUPS: {_COLUMNS: {_COLUMN: _ABOUT}, _GROUP_ROWS: NUMBER}}
_DELTA_BYTE_ARRAY = 7
TAIL = 8
# Row groups, and columns in all of them together: Arrow takes about a kilobyte for each.
MOST_CHUNKS = 1 << 17
# What a value takes beside its bytes, in bytes: one of a dictionary its place and length; an item of a list its code and two levels;
# a text in a page its length.
ENTRY, ITEM, LENGTH = 16, 8, 4


class ExplodingError(ValueError):
    """A page becomes too large; ``message`` is the id of the sentence."""

    def __init__(self, message: str) -> None:
        self.message = message
        super().__init__(message)


@dataclass(frozen=True)
class Page:
    """A page by its header: bytes that it becomes, bytes that it takes, its values, and where the next one begins."""

    unpacked: int
    packed: int
    values: int
    encoding: int
    is_dictionary: bool
    end: int


@dataclass(frozen=True, slots=True)
class Chunk:
    """A column in one row group: its values, and where its first page begins."""

    values: int
    begin: int


@dataclass(frozen=True)
class Footer:
    """What a file says of itself: its rows, and the columns of each row group in the order of the schema."""

    rows: int
    groups: list[list[Chunk]]


@dataclass(frozen=True)
class Leaf:
    """A column of the schema that holds values: its path, and whether these are text or bytes, and stand in lists."""

    path: str
    has_bytes: bool = False
    in_list: bool = False
    # Whether Arrow leaves its values in their dictionary, so that rows share them.
    stays_coded: bool = False

    def belongs(self, name: str) -> bool:
        """Whether it is the column of this name or a part of it."""
        return self.path == name or self.path.startswith(f"{name}.")


@dataclass(frozen=True)
class Weight:
    """Bytes of a column: its dictionary, what else is open whatever number of rows is read, and the longest cell."""

    dictionary: int
    open: int
    cell: int


def footer_of(data: Any) -> Footer:
    """The footer of a file; raises IndexError or ``struct.error`` for one that cannot be read, OverflowError for one that says too much."""
    [size] = packing.unpack("<I", data[len(data) - TAIL : len(data) - TAIL + 4])
    fields, _ = Walk(data, MOST_CHUNKS).struct_at(len(data) - TAIL - size, _FOOTER)
    groups = structs(fields, _GROUPS)
    rows = max(number(fields, _ROWS), sum(number(group, _GROUP_ROWS) for group in groups))
    return Footer(rows, [[_chunk(column) for column in structs(group, _COLUMNS)] for group in groups])


def _chunk(column: Fields) -> Chunk:
    about = struct(column, _COLUMN)
    begin, dictionary = number(about, _FIRST_PAGE), number(about, _FIRST_DICTIONARY)
    return Chunk(number(about, _COLUMN_VALUES), dictionary if 0 < dictionary < begin else begin)


def mapped(file: IO[bytes]) -> mmap.mmap:
    """The bytes of a file that is not empty."""
    return mmap.mmap(file.fileno(), 0, access=mmap.ACCESS_READ)


def weigh(data: Any, footer: Footer, leaves: Sequence[Leaf | None], most: int) -> dict[Leaf, Weight]:
    """What each of the ``leaves`` weighs in the row group in which it weighs most; they stand in the order of the schema, None not read.

    Raises :class:`ExplodingError` where what is open together would take more than ``most`` bytes, IndexError for no pages.
    """
    found = dict.fromkeys(filter(None, leaves), Weight(0, 0, 0))
    for group in footer.groups:
        if len(group) != len(leaves):
            raise IndexError("another number of columns than the schema has")
        weights = {leaf: _weight(data, chunk, leaf) for leaf, chunk in zip(leaves, group, strict=True) if leaf is not None}
        if sum(weight.dictionary + weight.open for weight in weights.values()) > most:
            raise ExplodingError("fault-table_explodes")
        found = {leaf: _larger(found[leaf], weight) for leaf, weight in weights.items()}
    return found


def _larger(one: Weight, other: Weight) -> Weight:
    return Weight(max(one.dictionary, other.dictionary), max(one.open, other.open), max(one.cell, other.cell))


def _weight(data: Any, chunk: Chunk, leaf: Leaf) -> Weight:
    """What a column weighs in one row group.

    Rows that are read at once cut two pages at most, and take all of those between: so many times the mean cell of the fullest page.
    A list may take any number of pages, and a value that Arrow copies out of a dictionary may be the longest there each time.
    """
    dictionary, longest, first, second, whole, cell = 0, 0, 0, 0, 0, 0
    for page in pages_of(data, chunk):
        if page.encoding == _DELTA_BYTE_ARRAY:
            raise ExplodingError("fault-table_encoding")
        if page.is_dictionary:
            dictionary = max(dictionary, page.unpacked + ENTRY * page.values)
            longest = max(longest, page.unpacked - LENGTH * (page.values - 1))
        else:
            first, second = max(first, page.unpacked), max(min(first, page.unpacked), second)
            whole, cell = whole + page.unpacked + ITEM * page.values, max(cell, page.unpacked // max(1, page.values))
    spread = longest if leaf.has_bytes and not leaf.stays_coded else 0
    return Weight(dictionary, whole if leaf.in_list else first + second * leaf.has_bytes, max(cell, spread))


def pages_of(data: Any, chunk: Chunk) -> Iterator[Page]:
    """The pages of a column in one row group, until all its values are there; raises IndexError where they do not fit the file."""
    at, seen = chunk.begin, 0
    while seen < chunk.values:
        keep_to_time()
        page = page_at(data, at)
        if min(at, page.unpacked, page.packed, page.values) < 0 or page.end + page.packed > len(data):
            raise IndexError("a page beyond the end of the file")
        yield page
        at, seen = page.end + page.packed, seen + (0 if page.is_dictionary else page.values)


def page_at(data: Any, at: int) -> Page:
    """The page whose header begins at ``at``."""
    header, end = Walk(data).struct_at(at, _HEADER)
    kind = _BODIES.get(number(header, _KIND), 0)
    body = struct(header, kind)
    encoding = number(body, _ENCODING_2 if kind == _DATA_2 else _ENCODING)
    return Page(number(header, _UNPACKED), number(header, _PACKED), number(body, _VALUES), encoding, kind == _DICTIONARY, end)
