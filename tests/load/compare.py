#!/usr/bin/env python3
"""Benchmark: ``python tests/load/compare.py``, in the environment that tests/run.py makes, with wrk installed.

One worker of the service and one echo server (see echo.py) run side by side; for each operation wrk loads the service and
both echoes in turn, several rounds, so that a busy machine slows all three alike. The ratios are medians over the rounds.
Processor time a request is what to compare between machines' quiet and busy hours.
"""

from __future__ import annotations

import argparse
import os
import socket
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from http.client import HTTPConnection
from pathlib import Path
from statistics import median

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.load.bodies import loads, operation  # noqa: E402 - the checkout is on the path from here on
from tests.load.measuring import CONNECTIONS, Round, resident_megabytes, run_round  # noqa: E402

SERVICE = ("-m", "kilisho.cli", "serve", "--workers", "1")
ECHO = ("-m", "tests.load.echo")
HEADINGS = ("operation", "in B", "out B", "model B", "req/s", "to model", "to bytes", "p50 ms", "p99 ms", "cpu us", "echoes")
FIRST = "/v1/first-charge"
SECONDS_TO_START = 30


def post(port: int, path: str, body: bytes) -> bytes:
    """The body of the answer; raises OSError when it is not a success or nobody listens."""
    connection = HTTPConnection("127.0.0.1", port, timeout=10)
    try:
        connection.request("POST", path, body, {"Content-Type": "application/json"})
        answer = connection.getresponse()
        text = answer.read()
    finally:
        connection.close()
    if answer.status != 200:
        raise ConnectionError(f"{path} answered {answer.status}: {text[:500]!r}")
    return text


@dataclass(frozen=True)
class Server:
    """A running server: its process, its port, and the seconds until its first answer."""

    process: int
    port: int
    seconds: float


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


@contextmanager
def serving(module: Sequence[str], path: str, body: bytes) -> Iterator[Server]:
    """A server that has answered ``body`` at ``path`` once; it ends with the block."""
    with socket.create_server(("127.0.0.1", 0)) as free:
        port: int = free.getsockname()[1]
    began = time.perf_counter()
    # All that wrk asks at a time may wait: a slow answer that is turned away is no measurement.
    env = os.environ | {"KILISHO_SLOW_WAITING": str(CONNECTIONS)}
    with subprocess.Popen([sys.executable, *module, "--port", str(port)], cwd=ROOT, env=env, stderr=subprocess.DEVNULL) as server:
        try:
            while server.poll() is None and time.perf_counter() - began < SECONDS_TO_START:
                try:
                    post(port, path, body)
                    break
                except ConnectionRefusedError:
                    time.sleep(0.005)
            yield Server(server.pid, port, time.perf_counter() - began)
        finally:
            server.terminate()


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


def start_seconds(body: bytes, times: int) -> float:
    """Median time from starting the service to its first answer to a first charge."""
    taken = []
    for _ in range(times):
        with serving(SERVICE, FIRST, body) as server:
            taken.append(server.seconds)
    return median(taken)


def show(values: Sequence[object]) -> None:
    """Print one line of the table."""
    print(f"{values[0]!s:<27}" + "".join(f"{value!s:>11}" for value in values[1:]), flush=True)


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("operations", nargs="*", help="only these operations")
    parser.add_argument("--rounds", type=int, default=3)
    parser.add_argument("--seconds", type=int, default=3, help="length of a round")
    options = parser.parse_args()
    requests = loads()
    first = requests["first-charge"]
    print(f"first answer after {start_seconds(first, options.rounds):.2f} s (median of {options.rounds} starts)")
    with serving(SERVICE, FIRST, first) as service, serving(ECHO, "/bytes/first-charge", first) as echo:
        before = resident_megabytes(service.process)
        show(HEADINGS)
        for name in options.operations or requests:
            body = requests[name]
            targets = [Target(service, f"/v1/{operation(name)}"), Target(echo, f"/model/{name}"), Target(echo, f"/bytes/{name}")]
            sizes = (len(body), *(target.size(body) for target in targets[:2]))
            show(row(name, sizes, compare(targets, body, options.rounds, options.seconds)))
        print(f"resident memory {before:.0f} MB after the first answer, {resident_megabytes(service.process):.0f} MB after the load")


if __name__ == "__main__":
    main()
