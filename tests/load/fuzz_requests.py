#!/usr/bin/env python3
"""Fuzzed requests over HTTP: ``python tests/load/fuzz_requests.py --requests 100000``. Bodies of all operations, changed by their meaning.

Prints what was answered, the slowest answer of each operation, and whether memory grew after the first tenth (see soak.py).
Forecasts are kept short: a year of them takes a quarter of a second and shows no more. A failure of the service leaves its body in
``--faults``. Ends with 1 where any answer was lost or a failure of ours (5xx but 503).
"""

from __future__ import annotations

import argparse
import asyncio
import sys
import time
from collections import Counter, defaultdict
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from random import Random

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.fuzz import mutating  # noqa: E402 - the checkout is on the path from here on
from tests.load.bodies import SLOW, loads  # noqa: E402
from tests.load.figures import counted, show  # noqa: E402
from tests.load.generator import LOST, Answer, all_of, request_of  # noqa: E402
from tests.load.measuring import family, resident_megabytes  # noqa: E402
from tests.load.serving import FIRST, service, serving  # noqa: E402
from tests.load.soak import Samples, memory, told  # noqa: E402

CORPUS = ROOT / "tests" / "fuzz" / "corpus" / "bodies"
LONGEST = 6_000
CALLERS = 4
# A slow question takes as long as hundreds of quick ones; asked as often, it would leave time for little else.
SLOW_SHARE = 0.02
# Each with JSON as a last resort: most operations lack most kinds, and a 406 reaches nothing behind it.
ACCEPTED = ("application/json", "application/json", "text/html", "text/calendar", "image/svg+xml", "text/csv")
LANGUAGES = ("en", "sw", "fr", "es")
REFUSED = 503


def seeds() -> list[bytes]:
    """What is changed: the kept corpus and the example of every operation, each a name, a line's end and a body."""
    return [file.read_bytes() for file in sorted(CORPUS.iterdir())] + [f"{name}\n".encode() + body for name, body in examples().items()]


def examples() -> dict[str, bytes]:
    """The loads whose names are operations."""
    return {name: body for name, body in loads().items() if name != "farm-plan-without-forecast"}


def chosen(kept: list[bytes], random: Random) -> bytes:
    """One of ``kept``, a slow question as seldom as ``SLOW_SHARE``."""
    slow = [one for one in kept if one.partition(b"\n")[0].decode() in SLOW]
    quick = [one for one in kept if one.partition(b"\n")[0].decode() not in SLOW]
    return random.choice(slow if random.random() < SLOW_SHARE else quick)


def changed(seed: int, number: int) -> Iterator[tuple[str, bytes]]:
    """Operation and request, ``number`` times; the same for the same ``seed``."""
    random, kept = Random(seed), seeds()
    for place in range(number):
        name, _, body = (mutating.body(chosen(kept, random), LONGEST, seed + place) or kept[0]).partition(b"\n")
        operation = name.decode()
        query = random.choice(("", "", "", "?explain=true"))
        headers = {"accept": f"{random.choice(ACCEPTED)}, */*;q=0.1", "accept_language": random.choice(LANGUAGES)}
        yield operation, request_of(f"/v1/{operation}{query}", body, **headers)


@dataclass
class Findings:
    """What became of the requests, by operation, with the slowest of each, the failures, and samples of memory."""

    statuses: Counter[int] = field(default_factory=Counter)
    by_operation: dict[str, Counter[int]] = field(default_factory=lambda: defaultdict(Counter))
    slowest: dict[str, float] = field(default_factory=lambda: defaultdict(float))
    failures: list[bytes] = field(default_factory=list)
    samples: Samples = field(default_factory=list)

    def note(self, operation: str, request: bytes, answer: Answer) -> None:
        """Take in one answer."""
        self.statuses[answer.status] += 1
        self.by_operation[operation][answer.status] += 1
        self.slowest[operation] = max(self.slowest[operation], answer.seconds)
        if answer.status == LOST or (answer.status >= 500 and answer.status != REFUSED):
            self.failures.append(request)


async def fuzzed(port: int, process: int, seed: int, number: int, seconds: float) -> Findings:
    """Send ``number`` changed requests, or as many as go out in ``seconds``, ``CALLERS`` at a time."""
    found, sent, end = Findings(), dict[int, tuple[str, bytes]](), time.monotonic() + seconds

    def requests() -> Iterator[bytes]:
        for place, one in enumerate(changed(seed, number)):
            if time.monotonic() > end:
                return
            sent[place] = one
            yield one[1]

    def note(place: int, answer: Answer) -> None:
        found.note(*sent.pop(place), answer)
        if not found.samples or time.monotonic() - found.samples[-1][0] > 1:
            found.samples.append((time.monotonic(), sum(map(resident_megabytes, family(process)))))

    await all_of(port, requests(), CALLERS, note)
    return found


def report(found: Findings, seconds: float) -> None:
    """Print the tables."""
    print(f"{found.statuses.total()} requests in {seconds:.0f} s: {counted(found.statuses)}; failures: {len(found.failures)}")
    show(("operation", "requests", "200", "slowest s"))
    for name, statuses in sorted(found.by_operation.items()):
        show((name, statuses.total(), statuses[200], f"{found.slowest[name]:.2f}"))
    if len(found.samples) > 10:
        first, last, slope = memory(found.samples, (found.samples[-1][0] - found.samples[0][0]) / 10)
        print(f"memory {first:.1f} MB after a tenth, {last:.1f} MB at the end: {told(slope)}")


def main() -> int:
    """Fuzz and print; 1 where the service failed."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--requests", type=int, default=10_000)
    parser.add_argument("--seconds", type=float, default=float("inf"), help="send no more after that long")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--faults", type=Path, default=Path("fuzz-faults"), help="folder for requests that failed")
    options = parser.parse_args()
    begun = time.monotonic()
    with serving(service(), FIRST, loads()["first-charge"], longest_forecast=20, slow_waiting=CALLERS) as server:
        found = asyncio.run(fuzzed(server.port, server.process, options.seed, options.requests, options.seconds))
    report(found, time.monotonic() - begun)
    for place, request in enumerate(found.failures):
        options.faults.mkdir(exist_ok=True)
        (options.faults / f"{options.seed}-{place}").write_bytes(request)
    return 1 if found.failures else 0


if __name__ == "__main__":
    sys.exit(main())
