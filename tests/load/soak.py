#!/usr/bin/env python3
"""Soak: ``python tests/load/soak.py``. Ten minutes at 70 % of what one worker answers, all quick operations in turn.

Memory is sampled each second. After the warm-up a straight line through the means of thirty blocks of samples is told with the 95 %
confidence interval of its slope: where that holds zero, no growth can be told from none.
"""

from __future__ import annotations

import argparse
import asyncio
import sys
from collections.abc import Sequence
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.load.bodies import SLOW, loads, operation  # noqa: E402 - the checkout is on the path from here on
from tests.load.figures import Slope, counted, slope_of, summed_up  # noqa: E402
from tests.load.generator import Answer, at_rate, in_turn, request_of  # noqa: E402
from tests.load.measuring import family, resident_megabytes  # noqa: E402
from tests.load.serving import FIRST, service, serving  # noqa: E402

CALLERS = 16
SHARE = 0.7
Samples = list[tuple[float, float]]


async def sampled(process: int, samples: Samples) -> None:
    """Note memory in megabytes by the loop's clock, each second, until cancelled."""
    loop = asyncio.get_running_loop()
    while True:
        samples.append((loop.time(), sum(map(resident_megabytes, family(process)))))
        await asyncio.sleep(1)


async def soaked(process: int, port: int, requests: Sequence[bytes], per_second: float, seconds: float) -> tuple[list[Answer], Samples]:
    """The answers of the soak, and the samples of memory beside it."""
    samples: Samples = []
    sampling = asyncio.create_task(sampled(process, samples))
    answers = await at_rate(port, requests, per_second, seconds)
    sampling.cancel()
    return answers, samples


def memory(samples: Samples, warm_up: float) -> tuple[float, float, Slope]:
    """First and last sample after ``warm_up`` seconds, and the slope between them."""
    kept = [(time, size) for time, size in samples if time - samples[0][0] >= warm_up]
    times, sizes = zip(*kept, strict=True)
    return sizes[0], sizes[-1], slope_of(times, sizes)


def told(slope: Slope) -> str:
    """A slope in megabytes an hour, in words."""
    ends = f"{slope.low * 3600:+.2f} to {slope.high * 3600:+.2f}"
    return f"{slope.per_second * 3600:+.2f} MB/h (95 %: {ends}), {'none can be told' if slope.none else 'there is a slope'}"


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("operations", nargs="*", help="instead of the quick ones")
    parser.add_argument("--seconds", type=float, default=600)
    parser.add_argument("--warm-up", type=float, default=120, help="seconds whose samples do not count")
    options = parser.parse_args()
    bodies = loads()
    names = options.operations or [name for name in bodies if operation(name) not in SLOW]
    requests = [request_of(f"/v1/{operation(name)}", bodies[name]) for name in names]
    with serving(service(), FIRST, bodies["first-charge"]) as server:
        most = summed_up(asyncio.run(in_turn(server.port, requests, CALLERS, 10)), 10).accepted
        print(f"{', '.join(names)}: {most:.0f} requests/s at the most; {SHARE * most:.0f} for {options.seconds:g} s", flush=True)
        answers, samples = asyncio.run(soaked(server.process, server.port, requests, SHARE * most, options.seconds))
    found = summed_up(answers, options.seconds)
    first, last, slope = memory(samples, options.warm_up)
    print(
        f"{len(answers)} requests: p50 {found.p50:.1f}, p99 {found.p99:.1f}, worst {found.worst:.0f} ms; not 200: {counted(found.others)}"
    )
    print(f"memory {first:.1f} MB after {options.warm_up:g} s, {last:.1f} MB at the end: {told(slope)}")


if __name__ == "__main__":
    main()
