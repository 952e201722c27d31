#!/usr/bin/env python3
"""Workers: ``python tests/load/workers.py``. Throughput of one to N workers, in the environment that tests/run.py makes, with wrk.

wrk needs a share of a core for itself, so that as many workers as there are cores cannot have all of them.
"""

from __future__ import annotations

import argparse
import os
import sys
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path
from statistics import median

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.load.bodies import loads, operation  # noqa: E402 - the checkout is on the path from here on
from tests.load.figures import show  # noqa: E402
from tests.load.measuring import Round, run_round  # noqa: E402
from tests.load.serving import service, serving  # noqa: E402

SECONDS_TO_START = 2
HEADINGS = ("operation", "workers", "req/s", "to one", "p50 ms", "p99 ms", "cores")


def rounds(name: str, workers: int, times: int, seconds: int) -> list[Round]:
    """Rounds of load on a service of its own."""
    path, body = f"/v1/{operation(name)}", loads()[name]
    with serving(service(workers), path, body) as server, tempfile.TemporaryDirectory() as folder:
        url = f"http://127.0.0.1:{server.port}{path}"
        # The first worker answers before the others have started, and would keep all connections of a round to itself.
        time.sleep(SECONDS_TO_START * workers)
        return [run_round(url, body, seconds, server.process, Path(folder)) for _ in range(times)]


def rows(name: str, measured: dict[int, list[Round]]) -> Iterator[tuple[object, ...]]:
    """The lines of an operation: by number of workers, the medians, the throughput to that of the first, and the cores kept busy."""
    first = median(one.per_second for one in next(iter(measured.values())))
    for workers, taken in measured.items():
        per_second, p50, p99 = (median(getattr(one, part) for one in taken) for part in ("per_second", "p50", "p99"))
        cores = median(one.processor * one.per_second for one in taken) / 1e6
        yield name, workers, f"{per_second:.0f}", f"{per_second / first:.2f}", f"{p50:.1f}", f"{p99:.1f}", f"{cores:.2f}"


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("operations", nargs="*", default=["first-charge"])
    parser.add_argument("--most", type=int, default=os.cpu_count(), help="the most workers")
    parser.add_argument("--rounds", type=int, default=3)
    parser.add_argument("--seconds", type=int, default=3, help="length of a round")
    options = parser.parse_args()
    show(HEADINGS)
    for name in options.operations:
        numbers = range(1, options.most + 1)
        for line in rows(name, {workers: rounds(name, workers, options.rounds, options.seconds) for workers in numbers}):
            show(line)


if __name__ == "__main__":
    main()
