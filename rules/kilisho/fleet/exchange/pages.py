"""The pages of a Parquet file, weighed by their own headers: what the footer says of them may be untrue, what the headers say is kept to.

Page headers are structs of Thrift's compact protocol (Apache Parquet format, ``parquet.thrift``).
"""

from __future__ import annotations

import mmap
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import IO, Any

from kilisho.deadline import keep_to_time

_TRUE, _FALSE, _BYTE, _DOUBLE, _BINARY, _LIST, _SET, _MAP, _STRUCT = 1, 2, 3, 7, 8, 9, 10, 11, 12
_UNPACKED, _PACKED, _DATA, _DICTIONARY, _DATA_2 = 2, 3, 5, 7, 8
_VALUES, _ENCODING, _ENCODING_2 = 1, 2, 4
_DELTA_BYTE_ARRAY = 7
DEEPEST = 16


class ExplodingError(ValueError):
    """A page becomes too large; ``message`` is the id of the sentence."""

    def __init__(self, message: str) -> None:
        self.message = message
        super().__init__(message)


@dataclass
class Page:
    """A page by its header: bytes that it becomes, bytes that it takes, its values, and where the next one begins."""

    unpacked: int
    packed: int
    values: int
    encoding: int
    is_dictionary: bool
    end: int


def weigh(file: IO[bytes], metadata: Any, wanted: Sequence[str], most: int) -> set[str]:
    """Those of the ``wanted`` columns that have a dictionary.

    Raises :class:`ExplodingError` where pages that are open together would take more than ``most`` bytes, IndexError for no pages.
    """
    coded = set[str]()
    with mmap.mmap(file.fileno(), 0, access=mmap.ACCESS_READ) as data:
        for group in range(metadata.num_row_groups):
            chunks = [metadata.row_group(group).column(at) for at in range(metadata.num_columns)]
            chosen = [chunk for chunk in chunks if any(_belongs(chunk.path_in_schema, name) for name in wanted)]
            weights = [(chunk.path_in_schema, *_weight(data, chunk, most)) for chunk in chosen]
            if sum(dictionary + page for _, dictionary, page in weights) > most:
                raise ExplodingError("fault-table_explodes")
            coded |= {path for path, dictionary, _ in weights if dictionary}
    return coded


def _belongs(path: str, name: str) -> bool:
    return path == name or path.startswith(f"{name}.")


def _weight(data: mmap.mmap, chunk: Any, most: int) -> tuple[int, int]:
    """The dictionary and the largest page of a column, in bytes."""
    dictionary, largest, nested = 0, 0, "." in chunk.path_in_schema
    for page in pages_of(data, chunk):
        if min(page.unpacked, page.packed, page.values) < 0 or page.encoding == _DELTA_BYTE_ARRAY:
            raise ExplodingError("fault-table_encoding" if page.encoding == _DELTA_BYTE_ARRAY else "fault-table_explodes")
        if page.is_dictionary:
            dictionary = max(dictionary, page.unpacked)
        else:
            # Values of lists are spread at once: each could be as long as the whole dictionary.
            spread = page.values * max(dictionary, 8) if nested else 0
            largest = max(largest, page.unpacked, spread if spread > 4 * most else 0)
    return dictionary, largest


def pages_of(data: mmap.mmap, chunk: Any) -> Iterator[Page]:
    """The pages of a column in one row group, until all its values are there; raises IndexError where they do not fit the file."""
    at, seen = chunk.data_page_offset, 0
    if chunk.has_dictionary_page and 0 < chunk.dictionary_page_offset < at:
        at = chunk.dictionary_page_offset
    while seen < chunk.num_values:
        keep_to_time()
        page = page_at(data, at)
        if page.end + page.packed > len(data):
            raise IndexError("a page beyond the end of the file")
        yield page
        at, seen = page.end + page.packed, seen + (0 if page.is_dictionary else page.values)


def page_at(data: Any, at: int) -> Page:
    """The page whose header begins at ``at``."""
    header, end = _struct(data, at, 0)
    body = next((header[kind] for kind in (_DATA, _DATA_2, _DICTIONARY) if isinstance(header.get(kind), dict)), {})
    encoding = _number(body, _ENCODING_2 if _DATA_2 in header else _ENCODING)
    return Page(_number(header, _UNPACKED), _number(header, _PACKED), _number(body, _VALUES), encoding, _DICTIONARY in header, end)


def _number(found: dict[int, Any], field: int) -> int:
    value = found.get(field, 0)
    if not isinstance(value, int):
        raise IndexError("a header with something else where a number stands")
    return value


def _struct(data: Any, at: int, depth: int) -> tuple[dict[int, Any], int]:
    """Numbers and structs of a struct by their field ids, and where it ends; all else is passed over."""
    if depth > DEEPEST:
        raise IndexError("nested too deeply")
    found, field = dict[int, Any](), 0
    while head := data[at]:
        at += 1
        if head >> 4:
            field += head >> 4
        else:
            number, at = _varint(data, at)
            field = _signed(number)
        found[field], at = _value(data, at, head & 15, depth)
    return found, at + 1


def _value(data: Any, at: int, kind: int, depth: int) -> tuple[Any, int]:
    if kind in (_TRUE, _FALSE):
        return kind == _TRUE, at
    if kind in (_BYTE, _DOUBLE):
        return None, at + (1 if kind == _BYTE else 8)
    if kind == _STRUCT:
        return _struct(data, at, depth + 1)
    if kind in (_LIST, _SET, _MAP):
        return None, _after_items(data, at, kind, depth)
    number, at = _varint(data, at)
    return (None, at + number) if kind == _BINARY else (_signed(number), at)


def _after_items(data: Any, at: int, kind: int, depth: int) -> int:
    """Where a list ends. Headers of pages have no maps."""
    if kind == _MAP:
        raise IndexError("a map in a header")
    count, item, at = data[at] >> 4, data[at] & 15, at + 1
    if count == 15:
        count, at = _varint(data, at)
    for _ in range(count):
        _, at = (None, at + 1) if item in (_TRUE, _FALSE) else _value(data, at, item, depth + 1)
    return at


def _varint(data: Any, at: int) -> tuple[int, int]:
    number, shift = 0, 0
    while shift < 70:
        byte = data[at]
        number |= (byte & 127) << shift
        at, shift = at + 1, shift + 7
        if byte < 128:
            return number, at
    raise IndexError("a number without an end")


def _signed(number: int) -> int:
    return (number >> 1) ^ -(number & 1)
