"""Columns of an answer as columns of text, put together into lines by Arrow: a Python object for every cell would take five times as long.

Words and lists are written once for each that is different, since the rows of a fleet say the same few things.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
import pyarrow as pa
import pyarrow.compute as pc


@dataclass(frozen=True)
class Style:
    """How a format writes a text, a list of words and a list of structs; ``plain`` is what texts that can stand as they are consist of."""

    text: Callable[[str], str]
    words: Callable[[list[str]], str]
    structs: Callable[[list[dict[str, Any]]], str]
    plain: str


def texts_of(array: pa.Array, style: Style) -> pa.Array:
    """A column as text, null where nothing is known."""
    if pa.types.is_dictionary(array.type):
        return _coded(array.indices, [style.text(word) for word in array.dictionary.to_pylist()])
    if pa.types.is_list(array.type):
        return _structs(array, style) if pa.types.is_struct(array.type.value_type) else _lists(array, style)
    text = array.cast(pa.string())
    return text if _as_they_stand(array.type) else _strings(text, style)


def _as_they_stand(kind: pa.DataType) -> bool:
    """Whether a type's values are written alike in every format."""
    return bool(pa.types.is_integer(kind) or pa.types.is_floating(kind) or pa.types.is_boolean(kind) or pa.types.is_null(kind))


def _coded(codes: Any, values: Sequence[str]) -> pa.Array:
    return pa.DictionaryArray.from_arrays(codes, pa.array(values, pa.string()), safe=False).cast(pa.string())


def _strings(array: pa.Array, style: Style) -> pa.Array:
    """Texts of callers; those that need care are written one by one."""
    care = pc.fill_null(pc.invert(pc.match_substring_regex(array, style.plain)), False)
    if pc.any(care).as_py():
        return pa.array([None if one is None else style.text(one) for one in array.to_pylist()], pa.string())
    # What stands around every text, such as quotation marks.
    around = style.text("")
    return pc.binary_join_element_wise(around[:1], array, around[1:], "") if around else array


def _lists(array: pa.ListArray, style: Style) -> pa.Array:
    values = array.values if pa.types.is_dictionary(array.values.type) else array.values.dictionary_encode()
    codes, words = values.indices.to_numpy(zero_copy_only=False), values.dictionary.to_pylist()
    data, width = codes.tobytes(), codes.itemsize
    ends = (array.offsets.to_numpy() * width).tolist()
    known: dict[bytes, int] = {}
    numbers = [known.setdefault(data[start:end], len(known)) for start, end in zip(ends[:-1], ends[1:], strict=True)]  # noqa: RUF007
    texts = [style.words([words[code] for code in np.frombuffer(key, codes.dtype).tolist()]) for key in known]
    return _coded(_masked(numbers, array), texts)


def _structs(array: pa.ListArray, style: Style) -> pa.Array:
    """Slips and faults, which few rows have."""
    lengths = pc.fill_null(pc.list_value_length(array), 0).to_numpy(zero_copy_only=False)
    some = np.flatnonzero(lengths)
    texts = [style.structs([]), *(style.structs(row) for row in array.take(pa.array(some)).to_pylist())]
    numbers = np.zeros(len(array), np.int32)
    numbers[some] = np.arange(1, some.size + 1)
    return _coded(_masked(numbers, array), texts)


def _masked(numbers: Any, array: pa.Array) -> pa.Array:
    nothing = array.is_null().to_numpy(zero_copy_only=False) if array.null_count else None
    return pa.array(np.asarray(numbers, np.int32), mask=nothing)


def data_of(lines: pa.Array) -> bytes:
    """All texts of a column, one after the other."""
    joined = lines.cast(pa.large_string())
    ends = np.frombuffer(joined.buffers()[1], np.int64)[joined.offset : joined.offset + len(joined) + 1]
    return bytes(joined.buffers()[2].slice(int(ends[0]), int(ends[-1] - ends[0]))) if len(joined) else b""
