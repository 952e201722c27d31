"""A table validated: bytes of the answer, piece by piece, a row for a row."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from typing import IO

import pyarrow as pa

from kilisho.deadline import keep_to_time
from kilisho.fleet import Fleet, fleet_of
from kilisho.fleet.answers import schema_of
from kilisho.fleet.counting import added, counted, nothing
from kilisho.fleet.exchange.incoming import BROKEN, Incoming, Source
from kilisho.fleet.exchange.summary import summary_of
from kilisho.fleet.headings import unreadable
from kilisho.fleet.writers import RULEBOOK, Encode, Writer
from kilisho.messages import DEFAULT, LANGUAGES, Language
from kilisho.packs import Rulebook

Read = Callable[[Source], Incoming]


@dataclass(frozen=True)
class Terms:
    """On which rulebook a table is validated, its most rows, how plain data become JSON, and in which language faults of rows are told."""

    rulebook: Rulebook
    most_rows: int
    encode: Encode
    language: Language = LANGUAGES[DEFAULT]


@dataclass
class Told:
    """An answer under way. ``chunks`` may be empty bytes where nothing can be told yet; ``unread`` holds what is known by then."""

    chunks: Iterator[bytes]
    unread: dict[str, None]


def told(file: IO[bytes], read: Read, writer: Writer, terms: Terms) -> Told:
    """The answer to the table in ``file``; raises :class:`RefusedError` and :class:`TooManyRowsError`, as may the first chunk."""
    fleet = fleet_of(terms.rulebook)
    source = Source(file, replace(fleet.columns, language=terms.language), terms.most_rows)
    incoming = read(source)
    return Told(_chunks(fleet, incoming, writer, source, terms), incoming.unread)


def _chunks(fleet: Fleet, incoming: Incoming, writer: Writer, source: Source, terms: Terms) -> Iterator[bytes]:
    identity, counts = terms.rulebook.identity, nothing()
    schema = schema_of(len(fleet.desk.checks), incoming.id_type).with_metadata({RULEBOOK: terms.encode(dict(identity))})
    head = writer.begin(schema)
    for piece in _whole(incoming.pieces):
        answered = _answered(fleet, piece, schema, terms.language)
        counts = added(counts, counted(answered, counts["rows"]))
        source.check_rows(counts["rows"])
        yield head + writer.piece(answered)
        head = b""
        keep_to_time()
    yield head + writer.end(summary_of(counts, incoming.unread, source.columns, identity))


def _answered(fleet: Fleet, piece: pa.RecordBatch, schema: pa.Schema, language: Language) -> pa.RecordBatch:
    return pa.RecordBatch.from_arrays(fleet.answer(piece, language).columns, schema=schema)


def _whole(pieces: Iterator[pa.RecordBatch]) -> Iterator[pa.RecordBatch]:
    """The pieces of a table; what Arrow finds wrong on the way is wrong with the table."""
    try:
        yield from pieces
    except BROKEN as error:
        raise unreadable("fault-table_broken") from error
