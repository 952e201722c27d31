#!/usr/bin/env python3
"""Tails: ``python tests/load/tails.py``. How far p99 lies above p50 at a steady part of what one worker answers.

Stretch by stretch in turn with the model echo at the same part of its own capacity: a pause that both show is the machine's. Latencies
count from when a request was due. The middle of the stretches is what to quote, beside the echo's.
"""

from __future__ import annotations

import argparse
import asyncio
import sys
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from statistics import median

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.load.bodies import loads, operation  # noqa: E402 - the checkout is on the path from here on
from tests.load.figures import Summary, counted, show, summed_up  # noqa: E402
from tests.load.generator import at_rate, request_of  # noqa: E402
from tests.load.overload import capacity  # noqa: E402
from tests.load.serving import ECHO, Server, service, serving  # noqa: E402

HEADINGS = ("answered by", "asked/s", "p50 ms", "p99 ms", "worst ms", "p99/p50", "others")
PART = 0.7
# A machine that other guests share is at times a third slower than a moment before: the least of these is what it surely answers.
TRIALS, TRIAL_SECONDS = 3, 1.0


@dataclass(frozen=True)
class Stretch:
    """One stretch of load: the rate that was asked for and what became of it."""

    rate: float
    told: Summary

    @property
    def spread(self) -> float:
        """How many times the middle latency the slow end is."""
        return self.told.p99 / self.told.p50


def stretch(server: Server, request: bytes, part: float, seconds: float) -> Stretch:
    """A stretch at ``part`` of the least capacity of a few trials just before."""
    rate = part * min(capacity(server, request, TRIAL_SECONDS) for _ in range(TRIALS))
    return Stretch(rate, summed_up(asyncio.run(at_rate(server.port, [request], rate, seconds)), seconds))


def row(name: str, one: Stretch) -> tuple[object, ...]:
    """One line of the table."""
    figures = (one.told.p50, one.told.p99, one.told.worst, one.spread)
    return name, f"{one.rate:.0f}", *(f"{figure:.1f}" for figure in figures), counted(one.told.others)


def middles(measured: dict[str, Sequence[Stretch]]) -> Iterator[str]:
    """A sentence for each server: the middle and the ends of its stretches."""
    for name, stretches in measured.items():
        spreads = sorted(one.spread for one in stretches)
        p50, p99 = (median(getattr(one.told, part) for one in stretches) for part in ("p50", "p99"))
        yield (
            f"{name}: p50 {p50:.1f} ms, p99 {p99:.1f} ms; p99 {median(spreads):.1f} times p50 ({spreads[0]:.1f} to {spreads[-1]:.1f} "
            f"over {len(spreads)} stretches)"
        )


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("operations", nargs="*", default=["first-charge"])
    parser.add_argument("--part", type=float, default=PART, help="the load, in capacities")
    parser.add_argument("--stretches", type=int, default=5)
    parser.add_argument("--seconds", type=float, default=10, help="length of a stretch")
    options = parser.parse_args()
    for name in options.operations:
        body = loads()[name]
        mine, echo = f"/v1/{operation(name)}", f"/model/{name}"
        with serving(service(), mine, body) as asked, serving(ECHO, echo, body) as echoing:
            targets = {name: (asked, request_of(mine, body)), "its echo": (echoing, request_of(echo, body))}
            measured: dict[str, list[Stretch]] = {label: [] for label in targets}
            show(HEADINGS)
            for _ in range(options.stretches):
                for label, (server, request) in targets.items():
                    measured[label].append(stretch(server, request, options.part, options.seconds))
                    show(row(label, measured[label][-1]))
            print(*middles(measured), sep="\n")


if __name__ == "__main__":
    main()
