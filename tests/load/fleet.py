#!/usr/bin/env python3
"""How fast a fleet is validated: ``python tests/load/fleet.py --rows 1000000``.

One core, from Arrow memory to answers, of an invented fleet with the columns of a standard record; in the same run the same rules as one
lazy Polars query, once with the bits of failed and unknown checks only, and once with the lists of ids that the fleet gives. Times are
taken in turn; the best of each is what the code costs, the rest is what the machine was doing meanwhile. Processor time is told beside
it, since a shared machine takes its own. ``--found`` tells what validation finds of the planted faults instead.
"""

from __future__ import annotations

import argparse
import os
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

# Both libraries read these when they are imported.
os.environ["POLARS_MAX_THREADS"] = "1"
ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

import pyarrow as pa  # noqa: E402
from tests.load.fleet_rival import Rival, answer, with_lists  # noqa: E402

from kilisho import packs  # noqa: E402
from kilisho.fleet import fleet_of, validate  # noqa: E402
from kilisho.fleet.invented import invent  # noqa: E402
from kilisho.fleet.planted import FAULTS, PLANTED, measure  # noqa: E402


class Taken(NamedTuple):
    """Seconds that a piece of work took: on the clock, and of the processor."""

    clock: float
    processor: float


def taken(work: Callable[[], object]) -> Taken:
    """Time one run."""
    clock, processor = time.perf_counter(), time.process_time()
    work()
    return Taken(time.perf_counter() - clock, time.process_time() - processor)


def best(runs: list[Taken]) -> Taken:
    """The least of each time."""
    return Taken(min(run.clock for run in runs), min(run.processor for run in runs))


def on_one_core() -> None:
    """Keep to one processor and one thread."""
    if hasattr(os, "sched_setaffinity"):
        os.sched_setaffinity(0, {min(os.sched_getaffinity(0))})
    pa.set_cpu_count(1)
    pa.set_io_thread_count(1)


def drained(table: pa.Table, rulebook: packs.Rulebook) -> int:
    """Answer a table batch by batch and keep nothing, as a stream would."""
    return sum(batch.num_rows for batch in validate(table.to_batches(), rulebook))


def compare(rows: int, rounds: int) -> dict[str, Taken]:
    """The best times of the fleet and its rivals on the same table, run in turn."""
    rulebook = packs.load()
    rival = Rival(fleet_of(rulebook))
    table = pa.Table.from_batches(invent(rows, rulebook)).drop_columns([PLANTED]).combine_chunks()
    works: dict[str, Callable[[], object]] = {
        "fleet": lambda: drained(table, rulebook),
        "query, bits": lambda: answer(table, rival),
        "query, lists": lambda: with_lists(answer(table, rival), rival),
    }
    for work in works.values():
        work()
    runs: dict[str, list[Taken]] = {name: [] for name in works}
    for _ in range(rounds):
        for name, work in works.items():
            runs[name].append(taken(work))
    return {name: best(times) for name, times in runs.items()}


def tell_found(rows: int) -> None:
    """Recall of each planted fault, and how often an honest row is called faulty."""
    rulebook = packs.load()
    table = pa.Table.from_batches(invent(rows, rulebook))
    found = measure(table, pa.Table.from_batches(validate(table.to_batches(), rulebook)))
    for name in FAULTS:
        print(f"{name:<24}{found.planted[name]:>9} planted{found.recall(name):>9.1%} found")
    told = ", ".join(f"{word} {count}" for word, count in found.falsely.items())
    print(f"{'none':<24}{found.honest:>9} honest {found.false_alarms:>9.2%} called faulty ({told})")


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--rows", type=int, default=1_000_000)
    parser.add_argument("--rounds", type=int, default=5)
    parser.add_argument("--found", action="store_true", help="tell what is found instead of times")
    chosen = parser.parse_args()
    if chosen.found:
        tell_found(chosen.rows)
        return
    on_one_core()
    print(f"{'':<14}{'rows/s':>12}{'rows/s of processor':>22}")
    for name, one in compare(chosen.rows, chosen.rounds).items():
        print(f"{name:<14}{chosen.rows / one.clock:>12,.0f}{chosen.rows / one.processor:>22,.0f}")


if __name__ == "__main__":
    main()
