"""Answered batches as bytes of a file, piece by piece."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable, Mapping
from typing import Any

import pyarrow as pa
import pyarrow.parquet as pq

from kilisho.fleet.answers import NUMBERS
from kilisho.fleet.exchange.telling import columns_of, rows_of
from kilisho.questions.tables import harmless

Encode = Callable[[Any], bytes]
SUMMARY = "kilisho.summary"
RULEBOOK = b"kilisho.rulebook"


class Writer:
    """Writes one file. Each method gives the bytes that are ready by then; ``end`` the last."""

    def begin(self, _schema: pa.Schema, /) -> bytes:
        """What stands before the first row."""
        return b""

    def piece(self, _batch: pa.RecordBatch, /) -> bytes:
        """The next rows."""
        return b""

    def end(self, _summary: Mapping[str, Any], /) -> bytes:
        """What stands after the last row; nothing where a last line would be taken for a row."""
        return b""


class NdjsonWriter(Writer):
    """An object a line; what is not known is left out."""

    def __init__(self, encode: Encode) -> None:
        self._encode = encode

    def piece(self, batch: pa.RecordBatch, /) -> bytes:
        """The rows as lines."""
        return b"".join([self._encode(row) + b"\n" for row in rows_of(batch)])


class SummaryWriter(Writer):
    """One JSON document once all rows are counted."""

    def __init__(self, encode: Encode) -> None:
        self._encode = encode

    def end(self, summary: Mapping[str, Any], /) -> bytes:
        """The summary."""
        return self._encode(summary)


class CsvWriter(Writer):
    """RFC 4180 with a header; lists stand in one cell, their parts after semicolons."""

    def begin(self, schema: pa.Schema, /) -> bytes:
        """The header; numbers name their unit."""
        return _lines([[f"{name} [{NUMBERS[name][2]}]" if name in NUMBERS else name for name in schema.names]])

    def piece(self, batch: pa.RecordBatch, /) -> bytes:
        """The rows as lines."""
        told = [_texts(name, column) for name, column in zip(batch.schema.names, columns_of(batch), strict=True)]
        return _lines(zip(*told, strict=True))


def _texts(name: str, column: list[Any]) -> list[Any]:
    return column if name in NUMBERS else [_text(value) for value in column]


def _text(value: Any) -> Any:
    if isinstance(value, list):
        return harmless("; ".join(_part(part) for part in value))
    return harmless(value) if isinstance(value, str) else value


def _part(part: Any) -> str:
    if not isinstance(part, dict):
        return str(part)
    if "code" in part:
        return f"{part['column']} {part['code']}: {part['detail']}".lstrip()
    return f"{part['member']} {part['value']:.6g} ({part['read_as']})"


def _lines(rows: Any) -> bytes:
    out = io.StringIO(newline="")
    csv.writer(out, lineterminator="\r\n").writerows(rows)
    return out.getvalue().encode()


class Outlet(io.RawIOBase):
    """A file that only grows, whose bytes are taken away as they come."""

    def __init__(self) -> None:
        super().__init__()
        self._parts, self._at = list[bytes](), 0

    def writable(self) -> bool:
        """True."""
        return True

    def tell(self) -> int:
        """How many bytes were written so far."""
        return self._at

    def write(self, data: Any) -> int:
        """Take ``data``."""
        self._parts.append(bytes(data))
        self._at += len(self._parts[-1])
        return len(self._parts[-1])

    def take(self) -> bytes:
        """What was written since the last time."""
        found, self._parts = b"".join(self._parts), []
        return found


class ArrowWriter(Writer):
    """Arrow's streaming format; the schema's metadata name the rulebook."""

    def __init__(self) -> None:
        self._outlet = Outlet()
        self._writer: Any = None

    def begin(self, schema: pa.Schema, /) -> bytes:
        """The schema."""
        self._writer = self._open(self._outlet, schema)
        return self._outlet.take()

    def _open(self, outlet: Outlet, schema: pa.Schema) -> Any:
        return pa.ipc.new_stream(outlet, schema)

    def piece(self, batch: pa.RecordBatch, /) -> bytes:
        """A record batch."""
        self._writer.write_batch(batch)
        return self._outlet.take()

    def end(self, _summary: Mapping[str, Any], /) -> bytes:
        """The end of the stream."""
        self._writer.close()
        return self._outlet.take()


class ParquetWriter(ArrowWriter):
    """Parquet, a row group a piece; the footer holds the summary as JSON."""

    def __init__(self, encode: Encode) -> None:
        super().__init__()
        self._encode = encode

    def _open(self, outlet: Outlet, schema: pa.Schema) -> Any:
        return pq.ParquetWriter(outlet, schema)

    def end(self, summary: Mapping[str, Any], /) -> bytes:
        """The footer."""
        self._writer.add_key_value_metadata({SUMMARY: self._encode(summary).decode()})
        return super().end(summary)
