#!/usr/bin/env python3
"""Benchmark of tables over HTTP: ``python tests/load/tables.py``. Rows in a second of the server's processor, and the memory it held.

Each media type goes in and comes out of one running server, from an invented fleet; the best of several rounds, since the rest is what the
machine was doing meanwhile. Processor time is the server's alone: what the client needs to send and read is not in it.
"""

from __future__ import annotations

import argparse
import io
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT), str(ROOT / "rules"), str(ROOT / "api")]

import httpx  # noqa: E402
import orjson  # noqa: E402
import pyarrow as pa  # noqa: E402
import pyarrow.csv as pa_csv  # noqa: E402
import pyarrow.parquet as pq  # noqa: E402
from tests.api.running import Server, serving  # noqa: E402
from tests.load.measuring import processor_seconds  # noqa: E402

from kilisho_api.table_types import ARROW, CSV, NDJSON, PARQUET, TABLES  # noqa: E402

PATH = "/v1/installations/validate-table"


def fleet(rows: int) -> pa.Table:
    """Invented installations: sizes, herds and feeds that go round, so that verdicts differ."""
    at = range(rows)
    return pa.table(
        {
            "id": [f"INV-{one:07}" for one in at],
            "structure": [("fixed_dome", "floating_drum", "bag")[one % 3] for one in at],
            "total_volume": [6.0 + one % 7 for one in at],
            "animal": ["dairy_cow"] * rows,
            "animal_count": [2 + one % 9 for one in at],
            "substrate": ["cattle_dung"] * rows,
            "feed_mass": [20.0 + one % 61 for one in at],
            "water_volume": [20.0 + one % 59 for one in at],
            "feeding_interval": [1.0 + one % 2 for one in at],
            "biogas_measured": [0.3 + one % 23 / 10 for one in at],
            "mean_air_temperature": [16.0 + one % 11 for one in at],
        }
    )


def body(table: pa.Table, kind: str) -> bytes:
    """The table as a file."""
    if kind == NDJSON:
        return b"".join(orjson.dumps(row) + b"\n" for row in table.to_pylist())
    out = io.BytesIO()
    if kind == CSV:
        pa_csv.write_csv(table, out)
    elif kind == PARQUET:
        pq.write_table(table, out)
    elif kind == ARROW:
        with pa.ipc.new_stream(out, table.schema) as stream:
            stream.write_table(table, max_chunksize=65_536)
    return out.getvalue()


def own_megabytes(process: int) -> float:
    """What a process holds for itself, without pages of files."""
    status = Path(f"/proc/{process}/status").read_text("ascii")
    return next(int(line.split()[1]) / 1024 for line in status.splitlines() if line.startswith("RssAnon"))


def one_round(server: Server, client: httpx.Client, content: bytes, kind: str) -> tuple[float, float, int]:
    """Processor seconds of the server, the most megabytes it held, and the bytes of the answer."""
    began, most, size = processor_seconds(server.process.pid), 0.0, 0
    with client.stream("POST", PATH, content=content, headers={"content-type": kind}) as answer:
        answer.raise_for_status()
        for part in answer.iter_raw():
            size += len(part)
            most = max(most, own_megabytes(server.process.pid))
    return processor_seconds(server.process.pid) - began, most, size


def measured(server: Server, rows: int, rounds: int) -> Iterator[str]:
    """A line for each media type."""
    table = fleet(rows)
    with httpx.Client(base_url=server.url, timeout=600) as client:
        for kind in TABLES:
            content = body(table, kind)
            found = [one_round(server, client, content, kind) for _ in range(rounds)]
            seconds, most, size = min(one[0] for one in found), max(one[1] for one in found), found[0][2]
            yield f"{kind:<38}{rows / seconds:>12,.0f}{most:>10.0f}{len(content) / rows:>10.0f}{size / rows:>10.0f}"


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--rows", type=int, default=200_000)
    parser.add_argument("--rounds", type=int, default=3)
    chosen = parser.parse_args()
    print(f"{'':<38}{'rows/s':>12}{'MB':>10}{'bytes in':>10}{'out':>10}")
    with tempfile.TemporaryDirectory() as folder, serving(Path(folder) / "log") as server:
        for line in measured(server, chosen.rows, chosen.rounds):
            print(line, flush=True)


if __name__ == "__main__":
    main()
