"""An invented fleet as a file may hold it: each row says that it is invented, whatever becomes of the file's name."""

from __future__ import annotations

from collections.abc import Iterator

import pyarrow as pa

from kilisho.fleet.invented import invent
from kilisho.fleet.table import NOTICE, NOTICE_COLUMN
from kilisho.packs import Rulebook


def labelled(rows: int, rulebook: Rulebook, seed: int, faulty: float) -> Iterator[pa.RecordBatch]:
    """The batches of :func:`kilisho.fleet.invented.invent`, with the notice as a column."""
    for batch in invent(rows, rulebook, seed, faulty):
        said = pa.DictionaryArray.from_arrays(pa.array([0] * batch.num_rows, pa.int8()), pa.array([NOTICE]))
        yield batch.append_column(NOTICE_COLUMN, said)


def schema_of(rulebook: Rulebook) -> pa.Schema:
    """The columns of an invented fleet."""
    return next(labelled(1, rulebook, 1, 0.0)).schema
