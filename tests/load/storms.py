#!/usr/bin/env python3
"""Connection storms: ``python tests/load/storms.py``. Many callers connect at the same moment, each to ask once and leave.

Every caller must get an answer, 200 or a refusal that says when to come back; after the storm a lone caller is answered as before.
"""

from __future__ import annotations

import argparse
import asyncio
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.load.bodies import loads  # noqa: E402 - the checkout is on the path from here on
from tests.load.figures import counted, show, summed_up  # noqa: E402
from tests.load.generator import Answer, Callers, request_of  # noqa: E402
from tests.load.measuring import open_files, resident_megabytes  # noqa: E402
from tests.load.serving import FIRST, Server, service, serving  # noqa: E402

HEADINGS = ("callers", "200", "p50 ms", "p99 ms", "worst ms", "lone ms", "MB", "open", "others")


async def storm(port: int, request: bytes, callers: int) -> list[Answer]:
    """The answers to ``callers`` that connect at once."""
    asked, loop = Callers(port, callers), asyncio.get_running_loop()
    await asyncio.gather(*(asked.ask(request, loop.time()) for _ in range(callers)))
    asked.close()
    return asked.answers


def row(server: Server, answers: list[Answer], lone: Answer) -> tuple[object, ...]:
    """One line of the table."""
    told = summed_up(answers, 1)
    latencies = (f"{one:.0f}" for one in (told.p50, told.p99, told.worst))
    memory, files = resident_megabytes(server.process), open_files(server.process)
    return len(answers), f"{told.accepted:.0f}", *latencies, f"{lone.seconds * 1e3:.1f}", f"{memory:.0f}", files, counted(told.others)


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("callers", type=int, nargs="*", default=[100, 500, 1_000, 2_000])
    options = parser.parse_args()
    body = loads()["first-charge"]
    request = request_of(FIRST, body, connection="close")
    show(HEADINGS, 12, 9)
    with serving(service(), FIRST, body) as server:
        for callers in options.callers:
            answers = asyncio.run(storm(server.port, request, callers))
            [lone] = asyncio.run(storm(server.port, request, 1))
            show(row(server, answers, lone), 12, 9)


if __name__ == "__main__":
    main()
