"""Answered batches as bytes of a file, piece by piece."""

from __future__ import annotations

import io
import re
from collections.abc import Callable, Mapping
from typing import Any

import pyarrow as pa
import pyarrow.compute as pc
import pyarrow.parquet as pq

from kilisho.fleet.answers import NUMBERS
from kilisho.fleet.texts import Style, data_of, texts_of
from kilisho.questions.tables import harmless

Encode = Callable[[Any], bytes]
END = "\r\n"
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
        def as_json(value: Any) -> str:
            return encode(value).decode()

        self._style = Style(as_json, as_json, as_json, r"^[ !#-\[\]-~]*$")

    def piece(self, batch: pa.RecordBatch, /) -> bytes:
        """The rows as lines."""
        members = [self._member(name, array) for name, array in zip(batch.schema.names, batch.columns, strict=True)]
        joined = pc.binary_join_element_wise(*members, "", null_handling="replace", null_replacement="")
        # Each member has a comma before it.
        return data_of(pc.binary_join_element_wise("{", pc.utf8_slice_codeunits(joined, 1), "}\n", ""))

    def _member(self, name: str, array: pa.Array) -> pa.Array:
        return pc.binary_join_element_wise(f',"{name}":', texts_of(array, self._style), "")


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
        names = (f"{name} [{NUMBERS[name][2]}]" if name in NUMBERS else name for name in schema.names)
        return (",".join(names) + END).encode()

    def piece(self, batch: pa.RecordBatch, /) -> bytes:
        """The rows as lines."""
        cells = [texts_of(array, _CSV) for array in batch.columns]
        joined = pc.binary_join_element_wise(*cells, ",", null_handling="replace", null_replacement="")
        return data_of(pc.binary_join_element_wise(joined, END, ""))


def _cell(text: str) -> str:
    """A text that neither ends its cell nor runs in a spreadsheet."""
    told = harmless(text)
    return '"{}"'.format(told.replace('"', '""')) if _ENDS_CELL.search(told) else told


def _told(struct: Mapping[str, Any]) -> str:
    """A fault or a slip in words."""
    if "code" in struct:
        return "{column} {code}: {detail}".format(**struct).lstrip()
    return "{member} {value:.6g} ({read_as})".format(**struct)


_ENDS_CELL = re.compile('[",\r\n]')
_CSV = Style(
    _cell, lambda words: _cell("; ".join(words)), lambda structs: _cell("; ".join(map(_told, structs))), r"^[A-Za-z0-9_][A-Za-z0-9_ .:/-]*$"
)


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
