"""Untrusted Arrow columns to columns in which nothing is invalid and no cell is beyond measure.

What could be long is cut before anything copies it: many rows may share one text, in a dictionary or in a buffer of views.
"""

from __future__ import annotations

from typing import Any

import numpy as np
import pyarrow as pa
import pyarrow.compute as pc

from kilisho.fleet.rows import LONGEST_ID

# No id, word, day or number of a record is longer.
LONGEST_TEXT = LONGEST_ID
# No list of a record has more items; of one that is longer so many are left, so that it stays a fault.
LONGEST_LIST = 64
TOO_LONG = "\N{HORIZONTAL ELLIPSIS}"
# A view (Arrow's columnar format): its length, and in the same sixteen bytes a text of up to twelve.
_VIEW = pa.binary(16)
_SHORT_VIEW = np.frombuffer(TOO_LONG.encode().ljust(12, b"\0"), "<i4")


def bounded(array: pa.Array, most_items: int = LONGEST_LIST) -> pa.Array:
    """The column without texts and lists that are too long for anything; raises ``pa.ArrowInvalid`` where it is not what it says."""
    kind = array.type
    array.validate()
    if is_list(kind):
        return _list(array, most_items)
    if pa.types.is_struct(kind):
        fields = [_decoded(bounded(array.field(at))) for at in range(kind.num_fields)]
        return pa.StructArray.from_arrays(fields, names=[field.name for field in kind], mask=array.is_null())
    if pa.types.is_dictionary(kind):
        return pa.DictionaryArray.from_arrays(array.indices, bounded(array.dictionary))
    if pa.types.is_string_view(kind):
        return _text_of(_views(array), array.buffers()[2:])
    array.validate(full=True)
    return _text(array) if is_plain_text(kind) else array


def is_list(kind: pa.DataType) -> bool:
    """Whether cells are lists."""
    return bool(pa.types.is_list(kind) or pa.types.is_large_list(kind))


def is_plain_text(kind: pa.DataType) -> bool:
    """Whether each cell has its own text, neither a view nor a place in a dictionary."""
    return bool(pa.types.is_string(kind) or pa.types.is_large_string(kind))


def _text(array: pa.Array) -> pa.Array:
    long = pc.greater(pc.binary_length(array), LONGEST_TEXT)
    return pc.if_else(long, TOO_LONG, array) if pc.any(long).as_py() else array


def _decoded(array: pa.Array) -> pa.Array:
    return array.dictionary_decode() if pa.types.is_dictionary(array.type) else array


def _list(array: pa.Array, most_items: int) -> pa.Array:
    """Lists of which items are picked while these are still small: places in a dictionary, or views."""
    in_views = pa.types.is_string_view(array.type.value_type)
    items = _views(array.values) if in_views else array.values
    kind = pa.list_(items.type) if pa.types.is_list(array.type) else pa.large_list(items.type)
    lists = pa.Array.from_buffers(kind, len(array), array.buffers()[:2], offset=array.offset, children=[items])
    lists.validate(full=True)
    picked, ends = _first_items(lists, most_items)
    texts = _text_of(picked, array.values.buffers()[2:]) if in_views else _decoded(bounded(picked))
    return pa.ListArray.from_arrays(pa.array([0, *ends], pa.int32()), texts, mask=lists.is_null())


def _first_items(lists: pa.Array, most: int) -> tuple[pa.Array, list[int]]:
    """At most so many items of each list, one after the other, and where those of each end."""
    there = pc.fill_null(pc.list_value_length(lists), 0).to_numpy(zero_copy_only=False)
    lengths = np.minimum(there, most)
    ends = np.cumsum(lengths)
    begins = lists.offsets.to_numpy()[:-1]
    places = np.arange(lengths.sum()) + np.repeat(begins - (ends - lengths), lengths)
    return lists.values.take(pa.array(places, pa.int64())), ends.tolist()


def _views(array: pa.Array) -> pa.Array:
    """Views as bytes without a meaning, which can be picked like numbers."""
    return pa.Array.from_buffers(_VIEW, len(array), array.buffers()[:2], offset=array.offset)


def _text_of(views: pa.Array, data: list[Any]) -> pa.Array:
    """The texts that views show in ``data``; the long ones are cut off by the length that a view states itself."""
    found = np.frombuffer(views.buffers()[1], "<i4")[4 * views.offset : 4 * (views.offset + len(views))].reshape(-1, 4).copy()
    found[found[:, 0] > LONGEST_TEXT] = (len(TOO_LONG.encode()), *_SHORT_VIEW)
    known = pc.is_valid(views).buffers()[1]
    array = pa.Array.from_buffers(pa.string_view(), len(views), [known, pa.py_buffer(found), *data])
    array.validate(full=True)
    return array.cast(pa.string())
