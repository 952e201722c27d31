#!/usr/bin/env python3
"""Benchmark: ``python tests/load/compare.py``, in the environment that tests/run.py makes, with wrk installed.

One worker of the service and one echo server (see echo.py) run side by side; for each operation wrk loads the service and
both echoes in turn, several rounds, so that a busy machine slows all three alike. The ratios are medians over the rounds.
Processor time a request is what to compare between machines' quiet and busy hours.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from statistics import median

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.load.bodies import loads, operation  # noqa: E402 - the checkout is on the path from here on
from tests.load.figures import show  # noqa: E402
from tests.load.measuring import CONNECTIONS, Round, resident_megabytes, run_round  # noqa: E402
from tests.load.serving import ECHO, FIRST, Server, post, service, serving  # noqa: E402

HEADINGS = ("operation", "in B", "out B", "model B", "req/s", "to model", "to bytes", "p50 ms", "p99 ms", "cpu us", "echoes")
ECHO_FIRST = "/bytes/first-charge"
# All that wrk asks at a time may wait: a slow answer that is turned away is no measurement.
PATIENT = {"slow_waiting": CONNECTIONS}


@dataclass(frozen=True)
class Target:
    """One of the addresses that answer an operation."""

    server: Server
    path: str

    def size(self, body: bytes) -> int:
        """Bytes of its answer."""
        return len(post(self.server.port, self.path, body))

    def load(self, body: bytes, seconds: int, folder: Path) -> Round:
        """One round of load."""
        return run_round(f"http://127.0.0.1:{self.server.port}{self.path}", body, seconds, self.server.process, folder)


def compare(targets: Sequence[Target], body: bytes, rounds: int, seconds: int) -> list[list[Round]]:
    """Each target's rounds, taken in turn."""
    with tempfile.TemporaryDirectory() as folder:
        taken = [[target.load(body, seconds, Path(folder)) for target in targets] for _ in range(rounds)]
    return [list(of_target) for of_target in zip(*taken, strict=True)]


def ratio(mine: Sequence[Round], echo: Sequence[Round]) -> float:
    """Median share of the echo's requests a second that the service reaches."""
    return median(a.per_second / b.per_second for a, b in zip(mine, echo, strict=True))


def row(name: str, sizes: Sequence[int], rounds: Sequence[Sequence[Round]]) -> tuple[object, ...]:
    """One line of the table."""
    mine, model, plain = rounds
    figures = [median(getattr(one, part) for one in mine) for part in ("per_second", "p50", "p99", "processor")]
    per_second, p50, p99, processor = figures
    echo_processor = "/".join(f"{median(one.processor for one in echo):.0f}" for echo in (model, plain))
    ratios = (f"{ratio(mine, model):.2f}", f"{ratio(mine, plain):.2f}")
    return name, *sizes, f"{per_second:.0f}", *ratios, f"{p50:.1f}", f"{p99:.1f}", f"{processor:.0f}", echo_processor


def start_seconds(body: bytes, times: int) -> tuple[float, float]:
    """Median times from starting the service, and the echo, to the first answer to a first charge, taken in turn."""
    taken: tuple[list[float], list[float]] = [], []
    for _ in range(times):
        for program, path, of_program in ((service(), FIRST, taken[0]), (ECHO, ECHO_FIRST, taken[1])):
            with serving(program, path, body) as server:
                of_program.append(server.seconds)
    return median(taken[0]), median(taken[1])


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("operations", nargs="*", help="only these operations")
    parser.add_argument("--rounds", type=int, default=3)
    parser.add_argument("--seconds", type=int, default=3, help="length of a round")
    options = parser.parse_args()
    requests = loads()
    first = requests["first-charge"]
    mine, echoes = start_seconds(first, options.rounds)
    print(f"first answer after {mine:.2f} s, {mine / echoes:.1f} times the echo's (medians of {options.rounds} starts)")
    with serving(service(), FIRST, first, **PATIENT) as asked, serving(ECHO, ECHO_FIRST, first) as echo:
        before = resident_megabytes(asked.process)
        show(HEADINGS)
        for name in options.operations or requests:
            body = requests[name]
            targets = [Target(asked, f"/v1/{operation(name)}"), Target(echo, f"/model/{name}"), Target(echo, f"/bytes/{name}")]
            sizes = (len(body), *(target.size(body) for target in targets[:2]))
            show(row(name, sizes, compare(targets, body, options.rounds, options.seconds)))
        print(f"resident memory {before:.0f} MB after the first answer, {resident_megabytes(asked.process):.0f} MB after the load")


if __name__ == "__main__":
    main()
