"""Columns of an untrusted Arrow batch to columns that are safe to read: valid, of a type that is known, with no cell beyond measure."""

from __future__ import annotations

import pyarrow as pa

from kilisho.faults import Fault, RefusedError
from kilisho.fleet.exchange.bounding import LONGEST_LIST, bounded, is_list, is_plain_text
from kilisho.fleet.gathering import Piece
from kilisho.fleet.headings import LONGEST_NAME, Columns, Heading, units_of
from kilisho.fleet.members import reason
from kilisho.fleet.table import ID
from kilisho.messages import say

_NOT_UTF8 = Fault((), "cell_unreadable", say("fault-cell_not_utf8"))


def heading_of(schema: pa.Schema, columns: Columns) -> Heading:
    """The heading of a table with this schema; a unit may also stand in the metadata of a field. Raises :class:`RefusedError`."""
    heading = columns.heading(schema.names, units_of(schema))
    units_there = {place.name for place in heading.places if place.unit is not None}
    bad = [name for name in heading.wanted if not _readable(schema.field(name), name == heading.identity, name in units_there)]
    if bad:
        raise RefusedError(Fault((name[:LONGEST_NAME],), "column_type", say("fault-column_type")) for name in bad)
    return heading


def id_type_of(schema: pa.Schema, heading: Heading) -> pa.DataType:
    """The type in which ids are given back: text as text, whole numbers as they are."""
    kind = pa.string() if heading.identity is None else schema.field(heading.identity).type
    return kind if pa.types.is_integer(kind) else pa.string()


def _readable(field: pa.Field, identity: bool, in_unit: bool) -> bool:
    kind = field.type
    if identity:
        return bool(_is_text(kind) or pa.types.is_integer(kind) or pa.types.is_null(kind))
    return _is_scalar(kind) or (not in_unit and (_is_list_of_text(kind) or _is_value_with_unit(kind)))


def _is_text(kind: pa.DataType) -> bool:
    kind = kind.value_type if pa.types.is_dictionary(kind) else kind
    return is_plain_text(kind) or bool(pa.types.is_string_view(kind))


def _is_number(kind: pa.DataType) -> bool:
    return bool(pa.types.is_integer(kind) or pa.types.is_floating(kind) or pa.types.is_decimal(kind))


def _is_scalar(kind: pa.DataType) -> bool:
    plain = (pa.types.is_boolean, pa.types.is_date, pa.types.is_timestamp, pa.types.is_null)
    return _is_text(kind) or _is_number(kind) or any(is_of(kind) for is_of in plain)


def _is_list_of_text(kind: pa.DataType) -> bool:
    return is_list(kind) and _is_text(kind.value_type) and not pa.types.is_dictionary(kind.value_type)


def _is_value_with_unit(kind: pa.DataType) -> bool:
    if not pa.types.is_struct(kind) or {field.name for field in kind} != {"value", "unit"} or kind.num_fields != 2:
        return False
    unit, value = kind.field("unit").type, kind.field("value").type
    return _is_number(value) and _is_text(unit) and not pa.types.is_dictionary(unit)


def cleaned(batch: pa.RecordBatch, heading: Heading) -> pa.RecordBatch:
    """The columns of ``batch`` that are read, without anything that its sender could have slipped in beside them."""
    piece = Piece(batch.num_rows, heading.language)
    if heading.identity is not None:
        piece.add(ID, _identities(_sound(batch, heading.identity, piece)))
    for place in heading.places:
        # For a member that holds no list, one item is enough to be a fault.
        array = _sound(batch, place.name, piece, LONGEST_LIST if place.member.kind == "list" else 1)
        # A column without a type has nothing in it.
        if not pa.types.is_null(array.type):
            piece.take(place, array)
    return piece.batch()


def _sound(batch: pa.RecordBatch, name: str, piece: Piece, most_items: int = 1) -> pa.Array:
    """A bounded column with nothing invalid in it; raises ``pa.ArrowInvalid`` where more is wrong than text that is not UTF-8."""
    array = batch.column(name)
    try:
        return bounded(array, most_items)
    except pa.ArrowInvalid:
        if not is_plain_text(array.type.value_type if pa.types.is_dictionary(array.type) else array.type):
            raise
        return bounded(_as_utf8(array, name, piece))


def _as_utf8(array: pa.Array, name: str, piece: Piece) -> pa.Array:
    """A text column without the cells that are no text; each is a fault of its row."""
    coded = array if pa.types.is_dictionary(array.type) else pa.DictionaryArray.from_arrays(pa.array(range(len(array))), array)
    coded.indices.validate(full=True)
    texts = [_decoded(text) for text in _as_bytes(coded.dictionary)]
    for row, code in enumerate(coded.indices.to_pylist()):
        if code is not None and texts[code] is False:
            piece.fail(row, reason(name, _NOT_UTF8))
    return pa.DictionaryArray.from_arrays(coded.indices, pa.array([text or None for text in texts], pa.string()))


def _as_bytes(array: pa.Array) -> list[bytes | None]:
    """The texts as bytes, once it is sure that these lie where the column says."""
    data = array.view(pa.binary() if pa.types.is_string(array.type) else pa.large_binary())
    data.validate(full=True)
    found: list[bytes | None] = data.to_pylist()
    return found


def _decoded(text: bytes | None) -> str | bool | None:
    try:
        return text if text is None else text.decode()
    except UnicodeDecodeError:
        return False


def _identities(array: pa.Array) -> pa.Array:
    return array if pa.types.is_integer(array.type) else array.cast(pa.string())
