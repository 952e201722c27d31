#!/usr/bin/env python3
"""Overload: ``python tests/load/overload.py``. Three times as many requests as one worker answers, then its usual load again.

First the worker's capacity (16 callers, each asking as soon as it is answered), then even rates of 0.5, of ``--times`` and of 0.5
times that. Latencies count from when a request was due and are those of accepted requests alone. The bound beside them is what
DEVELOPERS.md promises, worked out from the capacity that was measured.
"""

from __future__ import annotations

import argparse
import asyncio
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.load.bodies import loads, operation  # noqa: E402 - the checkout is on the path from here on
from tests.load.figures import Summary, counted, show, summed_up  # noqa: E402
from tests.load.generator import Answer, at_rate, in_turn, request_of  # noqa: E402
from tests.load.serving import Server, service, serving  # noqa: E402

from kilisho_api.settings import Settings  # noqa: E402

CALLERS = 16
HEADINGS = ("load", "asked/s", "taken/s", "p50 ms", "p99 ms", "worst ms", "lost", "no Retry", "others")
BESIDE = 0.5


def capacity(server: Server, request: bytes, seconds: float) -> float:
    """Requests a second that the server answers when it always has some to do."""
    answers = asyncio.run(in_turn(server.port, [request], CALLERS, seconds))
    return summed_up(answers, seconds).accepted


def without_word(answers: list[Answer]) -> int:
    """Refusals of load that do not say when to come back."""
    return sum(answer.status in (429, 503) and not answer.retry_after.isdigit() for answer in answers)


def row(name: str, rate: float, answers: list[Answer], told: Summary) -> tuple[object, ...]:
    """One line of the table."""
    latencies = (f"{one:.1f}" for one in (told.p50, told.p99, told.worst))
    return name, f"{rate:.0f}", f"{told.accepted:.0f}", *latencies, told.lost, without_word(answers), counted(told.others)


def bound(rate: float, most_waiting: int) -> float:
    """Milliseconds that 99 % of accepted requests may take: the longest queue, and as long again for what is turned away meanwhile."""
    return 1e3 * 2 * most_waiting / rate


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("operations", nargs="*", default=["first-charge"])
    parser.add_argument("--times", type=float, default=3, help="the overload, in capacities")
    parser.add_argument("--seconds", type=float, default=10, help="length of each stretch")
    parser.add_argument("--most-waiting", type=int, default=Settings.most_waiting, help="KILISHO_MOST_WAITING of the server")
    options = parser.parse_args()
    for name in options.operations:
        path, body = f"/v1/{operation(name)}", loads()[name]
        request = request_of(path, body)
        with serving(service(), path, body, most_waiting=options.most_waiting) as server:
            most = capacity(server, request, options.seconds / 2)
            print(f"{name}: {most:.0f} requests/s at the most, so p99 within {bound(most, options.most_waiting):.0f} ms")
            show(HEADINGS, 12, 10)
            for times in (BESIDE, options.times, BESIDE):
                answers = asyncio.run(at_rate(server.port, [request], most * times, options.seconds))
                show(row(f"{times:g} times", most * times, answers, summed_up(answers, options.seconds)), 12, 10)


if __name__ == "__main__":
    main()
