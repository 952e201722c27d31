"""Structs of Thrift's compact protocol, in which Parquet keeps its headers and its footer: as many kinds of value as these use."""

from __future__ import annotations

from typing import Any

from kilisho.deadline import keep_to_time

_TRUE, _FALSE, _BYTE, _DOUBLE, _BINARY, _LIST, _SET, _MAP, _STRUCT = 1, 2, 3, 7, 8, 9, 10, 11, 12
DEEPEST = 16
Fields = dict[int, Any]


def struct_at(data: Any, at: int, depth: int = 0) -> tuple[Fields, int]:
    """The fields of a struct by their ids, and where it ends; raises IndexError for what cannot be one."""
    if depth > DEEPEST:
        raise IndexError("nested too deeply")
    found, field = Fields(), 0
    while head := data[at]:
        at += 1
        if head >> 4:
            field += head >> 4
        else:
            number, at = _varint(data, at)
            field = _signed(number)
        found[field], at = _value(data, at, head & 15, depth)
    return found, at + 1


def number(fields: Fields, field: int) -> int:
    """A whole number, 0 where it is left out; raises IndexError where something else stands."""
    value = fields.get(field, 0)
    if not isinstance(value, int):
        raise IndexError("something else where a number stands")
    return value


def listed(fields: Fields, field: int) -> list[Any]:
    """A list, empty where it is left out; raises IndexError where something else stands."""
    value = fields.get(field, [])
    if not isinstance(value, list):
        raise IndexError("something else where a list stands")
    return value


def struct(fields: Fields, field: int) -> Fields:
    """A struct, empty where it is left out; raises IndexError where something else stands."""
    value = fields.get(field, {})
    if not isinstance(value, dict):
        raise IndexError("something else where a struct stands")
    return value


def _value(data: Any, at: int, kind: int, depth: int) -> tuple[Any, int]:
    if kind in (_TRUE, _FALSE):
        return kind == _TRUE, at
    if kind in (_BYTE, _DOUBLE):
        return None, at + (1 if kind == _BYTE else 8)
    if kind == _STRUCT:
        return struct_at(data, at, depth + 1)
    if kind in (_LIST, _SET, _MAP):
        return _items(data, at, kind, depth)
    value, at = _varint(data, at)
    return (bytes(data[at : at + value]), at + value) if kind == _BINARY else (_signed(value), at)


def _items(data: Any, at: int, kind: int, depth: int) -> tuple[list[Any], int]:
    if kind == _MAP:
        raise IndexError("a map, which Parquet does not use")
    count, item, at = data[at] >> 4, data[at] & 15, at + 1
    if count == 15:
        count, at = _varint(data, at)
    found = []
    for _ in range(count):
        keep_to_time()
        value, at = (None, at + 1) if item in (_TRUE, _FALSE) else _value(data, at, item, depth + 1)
        data[at - 1]  # nothing stands beyond the end
        found.append(value)
    return found, at


def _varint(data: Any, at: int) -> tuple[int, int]:
    value, shift = 0, 0
    while shift < 70:
        byte = data[at]
        value |= (byte & 127) << shift
        at, shift = at + 1, shift + 7
        if byte < 128:
            return value, at
    raise IndexError("a number without an end")


def _signed(value: int) -> int:
    return (value >> 1) ^ -(value & 1)
