"""The media types of tables, each with what reads and what writes it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from types import MappingProxyType

from kilisho.fleet.exchange.arrow_stream import read_arrow
from kilisho.fleet.exchange.csv_text import read_csv
from kilisho.fleet.exchange.incoming import Incoming, Source
from kilisho.fleet.exchange.ndjson import read_ndjson
from kilisho.fleet.exchange.parquet import read_parquet
from kilisho.fleet.writers import ArrowWriter, CsvWriter, Encode, NdjsonWriter, ParquetWriter, Writer

NDJSON, CSV = "application/x-ndjson", "text/csv"
ARROW, PARQUET = "application/vnd.apache.arrow.stream", "application/vnd.apache.parquet"


@dataclass(frozen=True)
class Format:
    """One media type of a table."""

    read: Callable[[Source], Incoming]
    writer: Callable[[Encode], Writer]


FORMATS: Mapping[str, Format] = MappingProxyType(
    {
        NDJSON: Format(read_ndjson, NdjsonWriter),
        CSV: Format(read_csv, lambda _encode: CsvWriter()),
        ARROW: Format(read_arrow, lambda _encode: ArrowWriter()),
        PARQUET: Format(read_parquet, ParquetWriter),
    }
)
