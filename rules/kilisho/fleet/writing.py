"""Answers as files: Parquet, Arrow, CSV and lines of JSON, text as over HTTP (:mod:`kilisho.fleet.writers`).

A file stands under its name only once it is whole.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager
from functools import partial
from pathlib import Path
from shutil import copyfileobj
from typing import Any

import pyarrow as pa
import pyarrow.parquet as pq
from pydantic_core import to_json

from kilisho.fleet.writers import CsvWriter, NdjsonWriter, Writer

Write = Callable[[pa.RecordBatch], Any]
SUFFIX = {"parquet": ".parquet", "arrow": ".arrow", "csv": ".csv", "ndjson": ".ndjson"}


@contextmanager
def whole_file(path: Path) -> Iterator[Path]:
    """A name to write under; what stands there at the end gets the right name, on the disk and in one step, or is taken away."""
    begun = path.with_name(f".{path.name}.{os.getpid()}.begun")
    try:
        yield begun
        _to_disk(begun)
        begun.replace(path)
    finally:
        begun.unlink(missing_ok=True)


def _to_disk(path: Path) -> None:
    with path.open("rb") as written:
        os.fsync(written.fileno())


def write(batches: Iterable[pa.RecordBatch], schema: pa.Schema, path: Path, kind: str) -> None:
    """Write a file of one of the formats; nothing stands under its name if that fails."""
    with whole_file(path) as begun, _WRITERS[kind](begun, schema) as write_batch:
        for batch in batches:
            write_batch(batch)


@contextmanager
def _parquet(path: Path, schema: pa.Schema) -> Iterator[Write]:
    coded = [field.name for field in schema if not pa.types.is_floating(field.type) and field.name != "id"]
    names = [name for field in schema for name in _leaves(field) if field.name in coded]
    with pq.ParquetWriter(path, schema, use_dictionary=names, write_statistics=_simple(schema)) as writer:
        yield writer.write_batch


def _leaves(field: pa.Field, before: str = "") -> list[str]:
    """The paths by which Parquet calls the columns of a field."""
    name = f"{before}{field.name}"
    if pa.types.is_list(field.type):
        return _leaves(field.type.value_field.with_name("element"), f"{name}.list.")
    if pa.types.is_struct(field.type):
        return [leaf for inner in field.type for leaf in _leaves(inner, f"{name}.")]
    return [name]


def _simple(schema: pa.Schema) -> list[str]:
    return [field.name for field in schema if not pa.types.is_nested(field.type)]


@contextmanager
def _arrow(path: Path, schema: pa.Schema) -> Iterator[Write]:
    with pa.ipc.new_file(path, schema, options=pa.ipc.IpcWriteOptions(compression="lz4", unify_dictionaries=True)) as writer:
        yield writer.write_batch


@contextmanager
def _text(writer: Writer, path: Path, schema: pa.Schema) -> Iterator[Write]:
    with path.open("wb") as stream:
        stream.write(writer.begin(schema))
        yield lambda batch: stream.write(writer.piece(batch))


_WRITERS: dict[str, Any] = {
    "parquet": _parquet,
    "arrow": _arrow,
    "csv": partial(_text, CsvWriter()),
    "ndjson": partial(_text, NdjsonWriter(to_json)),
}


def plain_type(kind: pa.DataType) -> pa.DataType:
    """A type without dictionaries, at any depth."""
    if pa.types.is_dictionary(kind):
        return kind.value_type
    if pa.types.is_list(kind):
        return pa.list_(plain_type(kind.value_type))
    if pa.types.is_struct(kind):
        return pa.struct([field.with_type(plain_type(field.type)) for field in kind])
    return kind


def plain(column: pa.Array) -> pa.Array:
    """A column with words in the place of codes."""
    return column.cast(plain_type(column.type))


def join(parts: Sequence[Path], schema: pa.Schema, out: Path, kind: str) -> None:
    """One file of all parts in their order, in constant memory. Parts of text are text; others are Arrow."""
    if kind in ("parquet", "arrow"):
        write(_batches(parts), schema, out, kind)
        return
    with whole_file(out) as begun, begun.open("wb") as stream:
        for number, part in enumerate(parts):
            with part.open("rb") as source:
                if number and kind == "csv":
                    source.readline()
                copyfileobj(source, stream, 1 << 20)


def _batches(parts: Iterable[Path]) -> Iterator[pa.RecordBatch]:
    for part in parts:
        with pa.memory_map(str(part)) as source:
            opened = pa.ipc.open_file(source)
            yield from map(opened.get_batch, range(opened.num_record_batches))
