#!/usr/bin/env python3
"""Fuzzed requests over HTTP: ``python tests/load/fuzz_requests.py --requests 100000``. Bodies of all operations, changed by their meaning.

Quick and slow operations are asked by callers of their own, so that nobody who could be answered at once waits behind a forecast. Prints
what was answered, the slowest answer of each operation, and what memory each process held after each tenth; a line through the second
half tells whether it still grew (see soak.py). Forecasts are kept short: a year of them takes a quarter of a second and shows no more. A
failure of the service leaves its request in ``--faults``. Ends with 1 where any answer was lost or a failure of ours (5xx but 503).
"""

from __future__ import annotations

import argparse
import asyncio
import json
import sys
import time
from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from random import Random

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.fuzz import mutating, targets  # noqa: E402 - the checkout is on the path from here on
from tests.load.bodies import SLOW, loads  # noqa: E402
from tests.load.figures import counted, show, slope_of  # noqa: E402
from tests.load.generator import LOST, Answer, all_of, request_of  # noqa: E402
from tests.load.measuring import family, resident_megabytes  # noqa: E402
from tests.load.serving import FIRST, Server, service, serving  # noqa: E402

from kilisho_api.settings import Settings  # noqa: E402

CORPUS = ROOT / "tests" / "fuzz" / "corpus" / "bodies"
LONGEST = 6_000
# A slow question takes as long as some fifty quick ones.
SLOW_SHARE = 0.01
QUICK_CALLERS, SLOW_CALLERS = 12, 4
# Each with JSON as a last resort: most operations lack most kinds, and a 406 reaches nothing behind it.
ACCEPTED = ("application/json", "application/json", "text/html", "text/calendar", "image/svg+xml", "text/csv")
LANGUAGES = ("en", "sw", "fr", "es")
# So often a caller hangs up and connects anew; a connection stays with the worker that took it up.
NEW_CONNECTION = 0.01
REFUSED = 503
TENTHS = 10
SECONDS_BETWEEN_SAMPLES = 1.0
Seed = tuple[str, bytes]


def seeds() -> list[Seed]:
    """What is changed: the kept corpus and the example of every operation, each by its operation, as a name, a line's end and a body."""
    kept = [file.read_bytes() for file in sorted(CORPUS.iterdir())] + [f"{name}\n".encode() + body for name, body in examples().items()]
    return [(one.partition(b"\n")[0].decode(), one) for one in kept]


def examples() -> dict[str, bytes]:
    """The example of every operation, those of forecasts as short as the service permits here."""
    return {name: json.dumps(question.example).encode() for name, question in targets.questions().items()}


def changed(seed: int, number: int, slow: bool) -> Iterator[tuple[str, bytes]]:
    """Operation and request, ``number`` times, of the slow operations or of the quick ones; the same for the same ``seed``.

    A body is now and then sent to another operation, so either kind reaches the other.
    """
    random = Random(f"{seed} {slow}")
    kept = [body for name, body in seeds() if (name in SLOW) == slow]
    for _ in range(number):
        name, _, body = (mutating.body(random.choice(kept), LONGEST, random.getrandbits(64)) or kept[0]).partition(b"\n")
        yield name.decode(), _request(name.decode(), body, random)


def _request(operation: str, body: bytes, random: Random) -> bytes:
    query = random.choice(("", "", "", "?explain=true"))
    headers = {"accept": f"{random.choice(ACCEPTED)}, */*;q=0.1", "accept_language": random.choice(LANGUAGES)}
    last = {"connection": "close"} if random.random() < NEW_CONNECTION else {}
    return request_of(f"/v1/{operation}{query}", body, **headers, **last)


@dataclass
class Findings:
    """What became of the requests, by operation, with the slowest of each, and the failures.

    ``memory`` is how many megabytes each process of the service held, by the number of requests that had been answered.
    """

    by_operation: dict[str, Counter[int]] = field(default_factory=lambda: defaultdict(Counter))
    slowest: dict[str, float] = field(default_factory=lambda: defaultdict(float))
    failures: list[bytes] = field(default_factory=list)
    memory: list[tuple[int, tuple[float, ...]]] = field(default_factory=list)

    @property
    def statuses(self) -> Counter[int]:
        """All operations' statuses."""
        return sum(self.by_operation.values(), Counter[int]())

    def note(self, operation: str, request: bytes, answer: Answer) -> None:
        """Take in one answer."""
        self.by_operation[operation][answer.status] += 1
        self.slowest[operation] = max(self.slowest[operation], answer.seconds)
        if answer.status == LOST or (answer.status >= 500 and answer.status != REFUSED):
            self.failures.append(request)

    def weigh(self, process: int) -> None:
        """Note what memory the service holds now."""
        self.memory.append((self.statuses.total(), tuple(map(resident_megabytes, family(process)))))


async def stream(port: int, series: Iterator[tuple[str, bytes]], callers: int, found: Findings) -> None:
    """Send a series, ``callers`` at a time, each as soon as it is answered."""
    sent = dict[int, tuple[str, bytes]]()

    def requests() -> Iterator[bytes]:
        for place, one in enumerate(series):
            sent[place] = one
            yield one[1]

    await all_of(port, requests(), callers, lambda place, answer: found.note(*sent.pop(place), answer))


def until(end: float, series: Iterator[tuple[str, bytes]]) -> Iterator[tuple[str, bytes]]:
    """As much of a series as goes out before ``end``."""
    return (one for one in iter(lambda: next(series, None) if time.monotonic() < end else None, None))


async def fuzzed(server: Server, seed: int, number: int, seconds: float) -> Findings:
    """Send ``number`` changed requests, or as many as go out in ``seconds``."""
    found, end, slow = Findings(), time.monotonic() + seconds, round(SLOW_SHARE * number)
    watching = asyncio.create_task(watched(server.process, number, found))
    kinds = ((False, number - slow, QUICK_CALLERS), (True, slow, SLOW_CALLERS))
    streams = (stream(server.port, until(end, changed(seed, many, slow)), callers, found) for slow, many, callers in kinds)
    await asyncio.gather(*streams)
    watching.cancel()
    found.weigh(server.process)
    return found


async def watched(process: int, number: int, found: Findings) -> None:
    """Weigh the service now and then, and tell of each tenth of ``number`` requests, until cancelled."""
    begun, told = time.monotonic(), 0
    while True:
        found.weigh(process)
        answered, megabytes = found.memory[-1]
        if answered * TENTHS // number > told:
            told = answered * TENTHS // number
            show((f"{answered} answered", f"{time.monotonic() - begun:.0f} s", *(f"{one:.1f} MB" for one in megabytes)))
        await asyncio.sleep(SECONDS_BETWEEN_SAMPLES)


def growth(memory: Sequence[tuple[int, tuple[float, ...]]], among: int) -> str:
    """How a process's memory grew over the second half of the requests, in words; ``among`` is its place among the service's processes."""
    half = [(answered, megabytes[among]) for answered, megabytes in memory if answered >= memory[-1][0] / 2]
    slope = slope_of(*zip(*half, strict=True)).times(100_000)
    ends = f"{half[0][1]:.1f} MB at half, {half[-1][1]:.1f} MB at the end"
    return f"{ends}: {slope.rise:+.2f} MB in 100,000 requests (95 %: {slope.low:+.2f} to {slope.high:+.2f})"


def report(found: Findings, seconds: float) -> None:
    """Print the tables."""
    statuses = found.statuses
    print(f"{statuses.total()} requests in {seconds:.0f} s: {counted(statuses)}; failures: {len(found.failures)}")
    show(("operation", "requests", "200", "slowest s", "limit s", "  others"))
    for name, told in sorted(found.by_operation.items()):
        limit = Settings.longest_answer if name in SLOW else "-"
        others = Counter({status: count for status, count in told.items() if status != 200})
        show((name, told.total(), told[200], f"{found.slowest[name]:.2f}", limit, f"  {counted(others)}"))
    if len(found.memory) > TENTHS:
        for place in range(len(found.memory[-1][1])):
            print(f"process {place}: {growth(found.memory, place)}")


def main() -> int:
    """Fuzz and print; 1 where the service failed."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--requests", type=int, default=10_000)
    parser.add_argument("--seconds", type=float, default=float("inf"), help="send no more after that long")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--workers", type=int, default=1, help="processes that answer")
    parser.add_argument("--faults", type=Path, default=Path("fuzz-faults"), help="folder for requests that failed")
    options = parser.parse_args()
    begun = time.monotonic()
    settings = {"longest_forecast": targets.SHORT.forecast_days, "slow_waiting": SLOW_CALLERS + QUICK_CALLERS}
    with serving(service(options.workers), FIRST, loads()["first-charge"], **settings) as server:
        found = asyncio.run(fuzzed(server, options.seed, options.requests, options.seconds))
    report(found, time.monotonic() - begun)
    for place, request in enumerate(found.failures):
        options.faults.mkdir(exist_ok=True)
        (options.faults / f"{options.seed}-{place}").write_bytes(request)
    return 1 if found.failures else 0


if __name__ == "__main__":
    sys.exit(main())
