"""Arrow's streaming format. All headers are walked before the first row, so a stream that is cut off or explodes is refused as a whole."""

from __future__ import annotations

import struct
from collections.abc import Iterator
from typing import Any

import pyarrow as pa

from kilisho.deadline import keep_to_time
from kilisho.fleet.exchange.cleaning import cleaned, heading_of, id_type_of
from kilisho.fleet.exchange.incoming import BROKEN, LARGEST_PIECE, Incoming, Source, rows_of_short_cells
from kilisho.fleet.headings import Heading, unreadable

# Places in Arrow's flatbuffers (format/Message.fbs of the Arrow specification).
_HEADER, _DATA, _LENGTH, _BUFFERS, _COMPRESSION = 2, 1, 0, 2, 3
_BATCH, _DICTIONARY = "record batch", "dictionary"


def read_arrow(source: Source) -> Incoming:
    """The table in ``source``; raises :class:`RefusedError` and :class:`TooManyRowsError`."""
    try:
        _walk(source)
        stream = pa.ipc.open_stream(_mapped(source))
        heading = heading_of(stream.schema, source.columns)
    except BROKEN as error:
        raise unreadable("fault-table_not_arrow") from error
    return Incoming(_pieces(source, heading), id_type_of(stream.schema, heading), dict.fromkeys(heading.unread))


def _mapped(source: Source) -> Any:
    """The file in memory as the system pages it in: batches that are not packed are not copied."""
    return pa.memory_map(f"/dev/fd/{source.file.fileno()}")


def _pieces(source: Source, heading: Heading) -> Iterator[pa.RecordBatch]:
    with pa.ipc.open_stream(_mapped(source)) as stream:
        empty = True
        step = rows_of_short_cells(len(heading.wanted))
        for batch in stream:
            for start in range(0, batch.num_rows, step):
                empty = False
                yield cleaned(batch.slice(start, step), heading)
        if empty:
            yield cleaned(pa.RecordBatch.from_pylist([], stream.schema), heading)


def _walk(source: Source) -> None:
    """Read every header: how many rows there are, and what packed parts say that they become."""
    rows, dictionaries = 0, 0
    for message in pa.ipc.MessageReader.open_stream(_mapped(source)):
        keep_to_time()
        if message.type not in (_BATCH, _DICTIONARY):
            continue
        length, unpacked = measured(message.metadata.to_pybytes(), message.body, message.type == _DICTIONARY)
        rows += 0 if message.type == _DICTIONARY else length
        dictionaries += unpacked if message.type == _DICTIONARY else 0
        if length < 0 or max(unpacked, dictionaries) > LARGEST_PIECE:
            raise unreadable("fault-table_explodes")
        source.check_rows(rows)


def measured(metadata: bytes, body: Any, dictionary: bool) -> tuple[int, int]:
    """Rows of a message, and the bytes that its packed buffers say they become; 0 where nothing is packed."""
    table = _follow(metadata, _field(metadata, _follow(metadata, 0), _HEADER))
    batch = _follow(metadata, _field(metadata, table, _DATA)) if dictionary else table
    at = _field(metadata, batch, _LENGTH)
    length = struct.unpack_from("<q", metadata, at)[0] if at else 0
    if not _field(metadata, batch, _COMPRESSION):
        return length, 0
    vector = _follow(metadata, _field(metadata, batch, _BUFFERS))
    buffers = struct.iter_unpack("<qq", metadata[vector + 4 : vector + 4 + 16 * _u32(metadata, vector)])
    packed = memoryview(body) if body is not None else memoryview(b"")
    return length, sum(_unpacked(packed, offset, size) for offset, size in buffers)


def _unpacked(body: memoryview, offset: int, size: int) -> int:
    """What a packed buffer says it becomes: its first eight bytes, or -1 for one that is stored as it is."""
    if size < 8 or offset < 0 or offset + size > len(body):
        return 0
    says = int(struct.unpack_from("<q", body, offset)[0])
    return size if says == -1 else says if says >= 0 else LARGEST_PIECE + 1


def _u32(data: bytes, at: int) -> int:
    return int(struct.unpack_from("<I", data, at)[0])


def _follow(data: bytes, at: int) -> int:
    return at + _u32(data, at)


def _field(data: bytes, table: int, slot: int) -> int:
    """Where a field of a flatbuffers table stands; 0 where it is left out."""
    vtable = table - int(struct.unpack_from("<i", data, table)[0])
    size = int(struct.unpack_from("<H", data, vtable)[0])
    offset = int(struct.unpack_from("<H", data, vtable + 4 + 2 * slot)[0]) if 4 + 2 * slot < size else 0
    return table + offset if offset else 0
