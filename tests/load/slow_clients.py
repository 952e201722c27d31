#!/usr/bin/env python3
"""Slow clients: ``python tests/load/slow_clients.py``. What quick callers notice of those that send or read slowly.

Slow senders send a body a byte at a time; slow readers ask on and on for large answers and read none of them. Neither ends by itself.
Quick callers ask beside them at half of what one worker answers.
"""

from __future__ import annotations

import argparse
import asyncio
import sys
from collections.abc import Awaitable, Callable
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.load.bodies import loads  # noqa: E402 - the checkout is on the path from here on
from tests.load.figures import counted, show, summed_up  # noqa: E402
from tests.load.generator import HOST, Answer, at_rate, in_turn, request_of  # noqa: E402
from tests.load.measuring import open_files, resident_megabytes  # noqa: E402
from tests.load.serving import FIRST, Server, service, serving  # noqa: E402

HEADINGS = ("beside", "clients", "asked/s", "taken/s", "p50 ms", "p99 ms", "MB", "open", "others")
PACE = 0.5
UNREAD = 200
Slow = Callable[[int], Awaitable[None]]


async def sender(port: int) -> None:
    """Send the head of a request, then its body a byte at a time, until cancelled."""
    _, writer = await asyncio.open_connection(HOST, port)
    try:
        writer.write(request_of(FIRST, b" " * 100_000)[:-100_000])
        while True:
            writer.write(b" ")
            await asyncio.sleep(PACE)
    finally:
        writer.close()


async def reader(port: int) -> None:
    """Ask for many large answers on one connection and read none, until cancelled."""
    _, writer = await asyncio.open_connection(HOST, port, limit=1)
    try:
        writer.write(request_of("/v1/safety-check", loads()["safety-check"]) * UNREAD)
        await asyncio.sleep(float("inf"))
    finally:
        writer.transport.abort()


async def beside(server: Server, slow: Slow, clients: int, per_second: float, seconds: float) -> tuple[list[Answer], float, int]:
    """Quick callers' answers beside ``clients`` slow ones; then the server's memory in megabytes and its open files."""
    request = request_of(FIRST, loads()["first-charge"])
    tasks = [asyncio.ensure_future(slow(server.port)) for _ in range(clients)]
    await asyncio.sleep(2)
    answers = await at_rate(server.port, [request], per_second, seconds)
    memory, files = resident_megabytes(server.process), open_files(server.process)
    for task in tasks:
        task.cancel()
    await asyncio.gather(*tasks, return_exceptions=True)
    return answers, memory, files


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--clients", type=int, default=500)
    parser.add_argument("--seconds", type=float, default=5)
    options = parser.parse_args()
    body = loads()["first-charge"]
    stretches: list[tuple[str, Slow, int]] = [("nobody", sender, 0), ("slow senders", sender, options.clients)]
    stretches += [("slow readers", reader, options.clients // 10), ("nobody again", sender, 0)]
    with serving(service(), FIRST, body) as server:
        rate = summed_up(asyncio.run(in_turn(server.port, [request_of(FIRST, body)], 16, 3)), 3).accepted / 2
        show(HEADINGS, 16, 9)
        for name, slow, clients in stretches:
            answers, memory, files = asyncio.run(beside(server, slow, clients, rate, options.seconds))
            told = summed_up(answers, options.seconds)
            figures = (f"{rate:.0f}", f"{told.accepted:.0f}", f"{told.p50:.1f}", f"{told.p99:.1f}", f"{memory:.0f}", files)
            show((name, clients, *figures, counted(told.others)), 16, 9)


if __name__ == "__main__":
    main()
