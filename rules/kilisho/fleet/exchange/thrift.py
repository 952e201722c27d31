"""Structs of Thrift's compact protocol, in which Parquet keeps its headers and its footer: as many kinds of value as these use.

Only the fields that are asked for are built; all else is passed over, so that a header takes no more memory than what is read of it.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from kilisho.deadline import keep_to_time

_TRUE, _FALSE, _BYTE, _DOUBLE, _BINARY, _LIST, _SET, _MAP, _STRUCT = 1, 2, 3, 7, 8, 9, 10, 11, 12
DEEPEST = 16
Fields = dict[int, Any]
# The ids of the fields that are kept, each with those of the struct, or of the structs of the list, that stands there.
Shape = Mapping[int, Any]
NUMBER: Shape = {}


class Walk:
    """A way through ``data``; ``room`` is how many items of lists may still be kept."""

    def __init__(self, data: Any, room: int = 0) -> None:
        self.data, self.room = data, room

    def struct_at(self, at: int, shape: Shape, depth: int = 0) -> tuple[Fields, int]:
        """The fields of a struct that ``shape`` names, and where it ends.

        Raises IndexError for what cannot be one, and OverflowError where there is no room.
        """
        if depth > DEEPEST:
            raise IndexError("nested too deeply")
        found, field = Fields(), 0
        while head := self.data[at]:
            at += 1
            if head >> 4:
                field += head >> 4
            else:
                number, at = self._varint(at)
                field = _signed(number)
            kept = shape.get(field)
            value, at = self._value(at, head & 15, kept, depth)
            if kept is not None:
                found[field] = value
        return found, at + 1

    def _value(self, at: int, kind: int, kept: Shape | None, depth: int) -> tuple[Any, int]:
        if kind in (_TRUE, _FALSE):
            return kind == _TRUE, at
        if kind in (_BYTE, _DOUBLE):
            return None, at + (1 if kind == _BYTE else 8)
        if kind == _STRUCT:
            return self.struct_at(at, kept or NUMBER, depth + 1)
        if kind in (_LIST, _SET, _MAP):
            return self._items(at, kind, kept, depth)
        value, at = self._varint(at)
        return (None, at + value) if kind == _BINARY else (_signed(value), at)

    def _items(self, at: int, kind: int, kept: Shape | None, depth: int) -> tuple[list[Any], int]:
        if kind == _MAP:
            raise IndexError("a map, which Parquet does not use")
        count, item, at = self.data[at] >> 4, self.data[at] & 15, at + 1
        if count == 15:
            count, at = self._varint(at)
        found = []
        for _ in range(count):
            keep_to_time()
            value, at = (None, at + 1) if item in (_TRUE, _FALSE) else self._value(at, item, kept, depth + 1)
            self.data[at - 1]  # nothing stands beyond the end
            if kept is not None:
                self._take_room()
                found.append(value)
        return found, at

    def _take_room(self) -> None:
        self.room -= 1
        if self.room < 0:
            raise OverflowError("more items than are kept")

    def _varint(self, at: int) -> tuple[int, int]:
        value, shift = 0, 0
        while shift < 70:
            byte = self.data[at]
            value |= (byte & 127) << shift
            at, shift = at + 1, shift + 7
            if byte < 128:
                return value, at
        raise IndexError("a number without an end")


def number(fields: Fields, field: int) -> int:
    """A whole number, 0 where it is left out; raises IndexError where something else stands."""
    value = fields.get(field, 0)
    if not isinstance(value, int):
        raise IndexError("something else where a number stands")
    return value


def structs(fields: Fields, field: int) -> list[Fields]:
    """A list of structs, empty where it is left out; raises IndexError where something else stands."""
    value = fields.get(field, [])
    if not isinstance(value, list) or not all(isinstance(item, dict) for item in value):
        raise IndexError("something else where a list of structs stands")
    return value


def struct(fields: Fields, field: int) -> Fields:
    """A struct, empty where it is left out; raises IndexError where something else stands."""
    value = fields.get(field, {})
    if not isinstance(value, dict):
        raise IndexError("something else where a struct stands")
    return value


def _signed(value: int) -> int:
    return (value >> 1) ^ -(value & 1)
