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
from kilisho.fleet.exchange.thrift import Fields, listed, number, struct, struct_at

# Fields of a page's header,
_UNPACKED, _PACKED, _DATA, _DICTIONARY, _DATA_2 = 2, 3, 5, 7, 8
_VALUES, _ENCODING, _ENCODING_2 = 1, 2, 4
# and of the footer: rows and row groups, their columns and rows, what is said of a column.
_ROWS, _GROUPS, _COLUMNS, _GROUP_ROWS, _COLUMN = 3, 4, 1, 3, 3
_PATH, _COLUMN_VALUES, _FIRST_PAGE, _FIRST_DICTIONARY = 3, 5, 9, 11
_DELTA_BYTE_ARRAY = 7
TAIL = 8


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


@dataclass(frozen=True)
class Chunk:
    """A column in one row group: its path, its values, and where its first page begins."""

    path: str
    values: int
    begin: int


@dataclass(frozen=True)
class Footer:
    """What a file says of itself: its rows, and the columns of each row group."""

    rows: int
    groups: list[list[Chunk]]


def footer_of(data: Any) -> Footer:
    """The footer of a file; raises IndexError, ``struct.error`` or UnicodeError for one that cannot be read."""
    [size] = packing.unpack("<I", data[len(data) - TAIL : len(data) - TAIL + 4])
    fields, _ = struct_at(data, len(data) - TAIL - size)
    groups = listed(fields, _GROUPS)
    if not all(isinstance(group, dict) for group in groups):
        raise IndexError("something else where a row group stands")
    rows = max(number(fields, _ROWS), sum(number(group, _GROUP_ROWS) for group in groups))
    return Footer(rows, [[_chunk(column) for column in listed(group, _COLUMNS)] for group in groups])


def _chunk(column: Any) -> Chunk:
    if not isinstance(column, dict):
        raise IndexError("something else where a column stands")
    about: Fields = struct(column, _COLUMN)
    parts = [part.decode() if isinstance(part, bytes) else "" for part in listed(about, _PATH)]
    begin, dictionary = number(about, _FIRST_PAGE), number(about, _FIRST_DICTIONARY)
    return Chunk(".".join(parts), number(about, _COLUMN_VALUES), dictionary if 0 < dictionary < begin else begin)


def mapped(file: IO[bytes]) -> mmap.mmap:
    """The bytes of a file that is not empty."""
    return mmap.mmap(file.fileno(), 0, access=mmap.ACCESS_READ)


def weigh(data: Any, footer: Footer, wanted: Sequence[str], most: int) -> set[str]:
    """Those of the ``wanted`` columns that have a dictionary.

    Raises :class:`ExplodingError` where pages that are open together would take more than ``most`` bytes, IndexError for no pages.
    """
    coded = set[str]()
    for group in footer.groups:
        chosen = [chunk for chunk in group if any(_belongs(chunk.path, name) for name in wanted)]
        weights = [(chunk.path, *_weight(data, chunk, most)) for chunk in chosen]
        if sum(dictionary + page for _, dictionary, page in weights) > most:
            raise ExplodingError("fault-table_explodes")
        coded |= {path for path, dictionary, _ in weights if dictionary}
    return coded


def _belongs(path: str, name: str) -> bool:
    return path == name or path.startswith(f"{name}.")


def _weight(data: Any, chunk: Chunk, most: int) -> tuple[int, int]:
    """The dictionary and the largest page of a column, in bytes."""
    dictionary, largest, nested = 0, 0, "." in chunk.path
    for page in pages_of(data, chunk):
        if page.encoding == _DELTA_BYTE_ARRAY:
            raise ExplodingError("fault-table_encoding")
        if page.is_dictionary:
            dictionary = max(dictionary, page.unpacked)
        else:
            # Values of lists are spread at once: each could be as long as the whole dictionary.
            spread = page.values * max(dictionary, 8) if nested else 0
            largest = max(largest, page.unpacked, spread if spread > 4 * most else 0)
    return dictionary, largest


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
    header, end = struct_at(data, at)
    body = next((struct(header, kind) for kind in (_DATA, _DATA_2, _DICTIONARY) if kind in header), {})
    encoding = number(body, _ENCODING_2 if _DATA_2 in header else _ENCODING)
    return Page(number(header, _UNPACKED), number(header, _PACKED), number(body, _VALUES), encoding, _DICTIONARY in header, end)
