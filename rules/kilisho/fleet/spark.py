"""Validation of a Spark DataFrame by ``mapInArrow``: the same rows on as many machines as the cluster has.

Every executor needs Kilisho with pyarrow, and packs at the paths that are named. Nothing of Spark is imported here but what the caller
already holds.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import lru_cache
from typing import Any

import pyarrow as pa

from kilisho.fleet import fleet_of, validate
from kilisho.fleet.table import ID
from kilisho.fleet.writing import plain, plain_type
from kilisho.packs import Rulebook, load


def validated(frame: Any, packs: Sequence[str] = ()) -> Any:
    """The answers to the rows of ``frame``, a DataFrame of :func:`answer_schema`; Spark keeps no order, so rows need an ``id``."""
    as_text = dict(frame.dtypes).get(ID) not in (None, "string")
    named = frame.withColumn(ID, frame[ID].cast("string")) if as_text else frame
    return named.mapInArrow(answering(packs), answer_schema(packs))


def answering(packs: Sequence[str] = ()) -> Callable[[Iterable[pa.RecordBatch]], Iterator[pa.RecordBatch]]:
    """The function that ``mapInArrow`` calls on each executor: batches of rows to batches of answers, without dictionaries."""
    layers = tuple(packs)

    def answer(batches: Iterable[pa.RecordBatch]) -> Iterator[pa.RecordBatch]:
        for found in validate(batches, _rulebook(layers)):
            yield decoded(found)

    return answer


def decoded(batch: pa.RecordBatch) -> pa.RecordBatch:
    """A batch with words in the place of codes, for engines that know no dictionaries."""
    return pa.RecordBatch.from_arrays([plain(column) for column in batch.columns], names=batch.schema.names)


def answer_schema(packs: Sequence[str] = ()) -> str:
    """The columns of an answer in the words of Spark's SQL."""
    return ", ".join(f"{field.name} {_sql(plain_type(field.type))}" for field in fleet_of(_rulebook(tuple(packs))).schema)


def _sql(kind: pa.DataType) -> str:
    if pa.types.is_list(kind):
        return f"array<{_sql(kind.value_type)}>"
    if pa.types.is_struct(kind):
        return f"struct<{', '.join(f'{field.name}: {_sql(field.type)}' for field in kind)}>"
    return "double" if pa.types.is_floating(kind) else "string"


@lru_cache(maxsize=4)
def _rulebook(layers: tuple[str, ...]) -> Rulebook:
    return load(*layers)
