"""Engines that hold tables already: Spark by mapInArrow, DuckDB and Polars by Arrow. Each gives the answers that validation gives."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import duckdb
import polars
import pyarrow as pa
import pyarrow.parquet
import pytest
from pyspark.sql import SparkSession
from tests.rules.conftest import Json, base
from tests.rules.fleets import fleet, row, table

from kilisho.fleet import validate
from kilisho.fleet.invented import invent
from kilisho.fleet.spark import answer_schema, answering, decoded, validated

ROWS = 400
# Spark looks for pandas before it hands over Arrow, and minds the newest one.
pytestmark = pytest.mark.filterwarnings("ignore:PySpark does not yet fully support pandas:FutureWarning")


@pytest.fixture(scope="module")
def rows() -> pa.Table:
    return pa.Table.from_batches(decoded(batch) for batch in invent(ROWS, base(), seed=5))


@pytest.fixture(scope="module")
def expected(rows: pa.Table) -> list[Json]:
    return by_id(decoded(answer) for answer in validate(rows.to_batches(), base()))


def by_id(batches: Any) -> list[Json]:
    return sorted((one for batch in batches for one in batch.to_pylist()), key=lambda one: one["id"])


@pytest.fixture(scope="module")
def spark(tmp_path_factory: pytest.TempPathFactory) -> Iterator[SparkSession]:
    """A cluster of two workers on this machine; they import Kilisho as this process does."""
    builder = SparkSession.builder.master("local[2]").config("spark.ui.enabled", "false").config("spark.driver.host", "127.0.0.1")
    builder = builder.config("spark.executorEnv.PYTHONPATH", ":".join(sys.path)).config("spark.sql.shuffle.partitions", "2")
    builder = builder.config("spark.sql.warehouse.dir", str(tmp_path_factory.mktemp("warehouse")))
    session = builder.config("spark.pyspark.python", sys.executable).getOrCreate()
    session.sparkContext.setLogLevel("ERROR")
    yield session
    session.stop()


def test_spark_gives_the_same_answers_from_every_partition(
    spark: SparkSession, rows: pa.Table, expected: list[Json], tmp_path: Path
) -> None:
    pa.parquet.write_table(rows, tmp_path / "fleet.parquet")
    frame = spark.read.parquet(str(tmp_path / "fleet.parquet")).repartition(3)
    found = sorted((one.asDict(recursive=True) for one in validated(frame).collect()), key=lambda one: one["id"])
    assert len(found) == ROWS
    assert found == expected


def test_spark_reads_ids_that_are_numbers(spark: SparkSession) -> None:
    frame = spark.createDataFrame([(417, "fixed_dome", 9.0), (418, "igloo", 9.0)], "id long, structure string, total_volume double")
    found = {one["id"]: one["verdict"] for one in validated(frame).collect()}
    assert found == {"417": "unknown", "418": "refused"}


def test_the_columns_in_the_words_of_sql_are_those_of_an_answer() -> None:
    words = answer_schema()
    assert words.startswith("id string, verdict string, record string")
    assert "failed array<string>" in words
    assert "slips array<struct<member: string, value: double, read_as: string>>" in words
    [answer] = answering()([table([row()])])
    assert answer.schema.names == fleet().schema.names
    assert not any(pa.types.is_dictionary(field.type) for field in answer.schema)


def test_duckdb_reads_and_writes_the_stream(rows: pa.Table, expected: list[Json], tmp_path: Path) -> None:
    database = duckdb.connect()
    database.register("fleet", rows)
    asked = database.sql("from fleet where total_volume > 0").to_arrow_reader(100)
    answers = pa.RecordBatchReader.from_batches(fleet().schema, validate(asked, base()))
    assert answers.schema.names[0] == "id"
    file = tmp_path / "answers.parquet"
    # The stream is read while it is written, so each needs a connection.
    duckdb.connect().sql(f"copy (from answers) to '{file}'")
    found = by_id(decoded(batch) for batch in pa.parquet.read_table(file).to_batches())
    kept = {one["id"] for one in rows.to_pylist() if one["total_volume"] > 0}
    assert [(one["id"], one["verdict"], one["failed"]) for one in found] == [
        (one["id"], one["verdict"], one["failed"]) for one in expected if one["id"] in kept
    ]


def test_polars_gives_and_takes_arrow(rows: pa.Table, expected: list[Json]) -> None:
    frame = polars.from_arrow(rows)
    assert isinstance(frame, polars.DataFrame)
    answers = polars.from_arrow(pa.Table.from_batches(validate(frame.to_arrow().to_batches(), base())))
    assert isinstance(answers, polars.DataFrame)
    assert answers["id"].to_list() == rows["id"].to_pylist()
    found = {one["id"]: one for one in answers.to_dicts()}
    assert all(found[one["id"]]["verdict"] == one["verdict"] and found[one["id"]]["failed"] == one["failed"] for one in expected)
