#!/usr/bin/env python3
"""Soak: ``python tests/load/soak.py``. Ten minutes at 70 % of what one worker answers, all quick operations in turn.

What one worker answers is the least of three rounds, since others may use the machine. Memory is sampled each second. A straight line
through the samples after the warm-up is told with the 95 % confidence interval of its slope: where that holds zero, no growth can be told
from none, and how narrow it is says how small a growth would have been told. For each second in which somebody was turned away (503), it is
told how much of a core the service got: with less than it needs for the rate, requests pile up however well it works.
"""

from __future__ import annotations

import argparse
import asyncio
import sys
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.load.bodies import SLOW, loads, operation  # noqa: E402 - the checkout is on the path from here on
from tests.load.figures import Slope, counted, slope_of, summed_up  # noqa: E402
from tests.load.generator import Answer, at_rate, in_turn, request_of  # noqa: E402
from tests.load.measuring import family, machine_seconds, processor_seconds, resident_megabytes  # noqa: E402
from tests.load.serving import FIRST, Server, service, serving  # noqa: E402

CALLERS = 16
SHARE = 0.7
ROUNDS, ROUND_SECONDS = 3, 20
TURNED_AWAY = 503
# Wider than this many megabytes an hour on either side, an interval that holds zero says nothing.
WIDEST = 10.0


@dataclass(frozen=True)
class Sample:
    """Memory of the service at a time by the loop's clock, in megabytes; seconds of processor that it, and the whole machine, have used."""

    at: float
    megabytes: float
    used: float = 0.0
    machine: float = 0.0


@dataclass(frozen=True)
class Refusals:
    """How many were turned away between two samples, and how many cores the service and everything else on the machine had meanwhile."""

    count: int
    cores: float
    others: float


def sample(process: int) -> Sample:
    """How the service stands now."""
    those = family(process)
    used, megabytes = sum(map(processor_seconds, those)), sum(map(resident_megabytes, those))
    return Sample(asyncio.get_running_loop().time(), megabytes, used, machine_seconds())


async def sampled(process: int, samples: list[Sample]) -> None:
    """Take a sample each second, until cancelled."""
    while True:
        samples.append(sample(process))
        await asyncio.sleep(1)


async def soaked(server: Server, requests: Sequence[bytes], per_second: float, seconds: float) -> tuple[list[Answer], list[Sample]]:
    """The answers of the soak, and the samples beside it."""
    samples: list[Sample] = []
    sampling = asyncio.create_task(sampled(server.process, samples))
    answers = await at_rate(server.port, requests, per_second, seconds)
    sampling.cancel()
    return answers, samples


def capacity(server: Server, requests: Sequence[bytes]) -> list[float]:
    """Requests a second that the service answers when it always has some to do, in each of ``ROUNDS`` rounds."""
    rounds = (asyncio.run(in_turn(server.port, requests, CALLERS, ROUND_SECONDS)) for _ in range(ROUNDS))
    return [summed_up(answers, ROUND_SECONDS).accepted for answers in rounds]


def memory(samples: Sequence[Sample], warm_up: float) -> tuple[float, float, Slope]:
    """First and last megabytes after ``warm_up`` seconds, and the slope between them, in megabytes an hour."""
    kept = [one for one in samples if one.at - samples[0].at >= warm_up]
    slope = slope_of([one.at for one in kept], [one.megabytes for one in kept])
    return kept[0].megabytes, kept[-1].megabytes, slope.times(3600)


def told(slope: Slope) -> str:
    """A slope in megabytes an hour, in words."""
    ends = f"{slope.rise:+.2f} MB/h (95 %: {slope.low:+.2f} to {slope.high:+.2f})"
    if slope.high - slope.low > 2 * WIDEST:
        return f"{ends}, too unsure to tell"
    return f"{ends}, {'none can be told' if slope.none else 'there is a slope'}"


def refusals(answers: Sequence[Answer], samples: Sequence[Sample]) -> list[Refusals]:
    """The stretches between samples in which somebody was turned away."""
    away = sorted(answer.at for answer in answers if answer.status == TURNED_AWAY)
    found = []
    for before, after in pairwise(samples):
        count, seconds = sum(before.at < at <= after.at for at in away), after.at - before.at
        cores, all_cores = ((end - start) / seconds for start, end in ((before.used, after.used), (before.machine, after.machine)))
        found += [Refusals(count, cores, all_cores - cores)] if count else []
    return found


def explained(found: Sequence[Refusals]) -> str:
    """Refusals in words."""
    if not found:
        return "nobody was turned away"
    least, most = (end(one.cores for one in found) for end in (min, max))
    others = sum(one.others for one in found) / len(found)
    turned = sum(one.count for one in found)
    return (
        f"{turned} turned away in {len(found)} s; the service had {least:.2f} to {most:.2f} of a core in them, all else {others:.2f} cores"
    )


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("operations", nargs="*", help="instead of the quick ones")
    parser.add_argument("--seconds", type=float, default=600)
    parser.add_argument("--warm-up", type=float, default=240, help="seconds whose samples do not count")
    options = parser.parse_args()
    bodies = loads()
    names = options.operations or [name for name in bodies if operation(name) not in SLOW]
    requests = [request_of(f"/v1/{operation(name)}", bodies[name]) for name in names]
    with serving(service(), FIRST, bodies["first-charge"]) as server:
        rounds = capacity(server, requests)
        rate = SHARE * min(rounds)
        shown = ", ".join(f"{one:.0f}" for one in rounds)
        print(f"{', '.join(names)}: {shown} requests/s at the most; {rate:.0f} for {options.seconds:g} s", flush=True)
        answers, samples = asyncio.run(soaked(server, requests, rate, options.seconds))
        after = capacity(server, requests)
    report(answers, samples, options.warm_up, options.seconds)
    print(f"at the most after it: {', '.join(f'{one:.0f}' for one in after)} requests/s")


def report(answers: Sequence[Answer], samples: Sequence[Sample], warm_up: float, seconds: float) -> None:
    """Print what was found."""
    found, statuses = summed_up(from_sending(answers), seconds), Counter(answer.status for answer in answers)
    print(f"{len(answers)} requests: p50 {found.p50:.1f}, p99 {found.p99:.1f}, worst {found.worst:.0f} ms; {counted(statuses)}")
    print(f"the generator sent them up to {max(answer.late for answer in answers):.1f} s late")
    print(explained(refusals(answers, samples)))
    cores, others = mean_cores(samples)
    print(f"over the whole run the service had {cores:.2f} of a core, all else {others:.2f} cores")
    first, last, slope = memory(samples, warm_up)
    print(f"memory {first:.1f} MB after {warm_up:g} s, {last:.1f} MB at the end: {told(slope)}")


def from_sending(answers: Sequence[Answer]) -> list[Answer]:
    """The answers timed from when they were sent, not from when they were due: what the generator lost is not the service's."""
    return [replace(answer, seconds=answer.seconds - answer.late) for answer in answers]


def mean_cores(samples: Sequence[Sample]) -> tuple[float, float]:
    """How many cores the service had, and all else on the machine, from the first sample to the last."""
    first, last = samples[0], samples[-1]
    used, machine = last.used - first.used, last.machine - first.machine
    return used / (last.at - first.at), (machine - used) / (last.at - first.at)


if __name__ == "__main__":
    main()
