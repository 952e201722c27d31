"""A table validated: bytes of the answer, piece by piece, a row for a row."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from typing import IO, Any

import pyarrow as pa

from kilisho.deadline import keep_to_time
from kilisho.fleet import Fleet, fleet_of
from kilisho.fleet.answers import schema_of
from kilisho.fleet.exchange.headings import Columns
from kilisho.fleet.exchange.incoming import Incoming, Source
from kilisho.fleet.exchange.summary import Summary
from kilisho.fleet.exchange.writers import RULEBOOK, Encode, Writer
from kilisho.packs import Rulebook

Read = Callable[[Source], Incoming]


@dataclass
class Told:
    """An answer under way. ``chunks`` may be empty bytes where nothing can be told yet; ``unread`` holds what is known by then."""

    chunks: Iterator[bytes]
    unread: dict[str, None]


def told(file: IO[bytes], read: Read, writer: Writer, rulebook: Rulebook, most_rows: int, encode: Encode) -> Told:
    """The answer to the table in ``file``; raises :class:`RefusedError` and :class:`TooManyRowsError`, as may the first chunk."""
    fleet = fleet_of(rulebook)
    columns = Columns(fleet.members, fleet.shelf)
    source = Source(file, columns, most_rows)
    incoming = read(source)
    metadata = {RULEBOOK: encode(dict(rulebook.identity))}
    return Told(_chunks(fleet, incoming, writer, Summary(rulebook.identity), source, metadata), incoming.unread)


def _chunks(
    fleet: Fleet, incoming: Incoming, writer: Writer, summary: Summary, source: Source, metadata: Mapping[bytes, Any]
) -> Iterator[bytes]:
    schema = schema_of(len(fleet.desk.checks), incoming.id_type).with_metadata(metadata)
    head = writer.begin(schema)
    for piece in incoming.pieces:
        answered = _answered(fleet, piece, schema)
        summary.add(answered)
        source.check_rows(summary.rows)
        yield head + writer.piece(answered)
        head = b""
        keep_to_time()
    yield head + writer.end(summary.told(incoming.unread, source.columns))


def _answered(fleet: Fleet, piece: pa.RecordBatch, schema: pa.Schema) -> pa.RecordBatch:
    return pa.RecordBatch.from_arrays(fleet.answer(piece).columns, schema=schema)
