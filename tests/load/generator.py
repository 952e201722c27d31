"""Callers that ask at a set rate, or each as soon as it is answered, and what became of every request.

wrk knows no set rate, and tells of refused requests only how many there were: under overload its latencies mix the two.
"""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field
from itertools import cycle

import httptools

HOST = "127.0.0.1"
PATIENCE = 90.0
LOST = 0
# A generator that was held up sends what is overdue no faster than this many times its rate: sent at once, it would be a load of its own.
CATCHING_UP = 1.25
# A timer of the loop rings to the millisecond, so several may be due at once; a round that takes longer than this was held up.
SHORTEST_SLEEP, LONGEST_ROUND = 0.0005, 0.01


@dataclass(frozen=True, slots=True)
class Answer:
    """What became of one request: its status (0 where no whole answer came), the seconds since it was due, its Retry-After.

    ``at`` is when it came, by the loop's clock; ``late`` how many of the seconds went by before the generator came round to it.
    """

    status: int
    seconds: float
    retry_after: str = ""
    at: float = 0.0
    late: float = 0.0


def request_of(path: str, body: bytes, **headers: str) -> bytes:
    """A POST of JSON as it goes over the wire; ``headers`` with underscores for hyphens."""
    lines = [f"{name.replace('_', '-')}: {value}\r\n" for name, value in headers.items()]
    head = f"POST {path} HTTP/1.1\r\nhost: {HOST}\r\ncontent-type: application/json\r\ncontent-length: {len(body)}\r\n"
    return (head + "".join(lines) + "\r\n").encode() + body


class Connection(asyncio.Protocol):
    """One connection, which asks one thing at a time."""

    def __init__(self) -> None:
        self._parser, self._coming = httptools.HttpResponseParser(self), asyncio.Future[tuple[int, str]]()
        self._retry_after, self.open = "", True

    def connection_made(self, transport: asyncio.BaseTransport) -> None:
        """Asyncio's call: the connection stands."""
        assert isinstance(transport, asyncio.Transport)
        self._transport = transport

    def data_received(self, data: bytes) -> None:
        """Asyncio's call: a piece of an answer."""
        self._parser.feed_data(data)

    def connection_lost(self, exc: Exception | None) -> None:
        """Asyncio's call: the service has hung up."""
        self.open = False
        if not self._coming.done():
            self._coming.set_exception(exc or ConnectionResetError())
            self._coming.exception()  # seen, whether somebody waits for it or not

    def on_header(self, name: bytes, value: bytes) -> None:
        """The parser's call."""
        if name.lower() == b"retry-after":
            self._retry_after = value.decode("latin-1")

    def on_message_complete(self) -> None:
        """The parser's call."""
        self.open = self.open and self._parser.should_keep_alive()
        if not self._coming.done():
            self._coming.set_result((self._parser.get_status_code(), self._retry_after))

    async def ask(self, request: bytes) -> tuple[int, str]:
        """Status and Retry-After of the answer; raises OSError when the connection ends before it, TimeoutError after ``PATIENCE``."""
        self._coming, self._retry_after = asyncio.Future(), ""
        self._transport.write(request)
        return await asyncio.wait_for(self._coming, PATIENCE)

    def close(self) -> None:
        """Hang up."""
        self.open = False
        self._transport.close()


@dataclass
class Callers:
    """Up to ``most`` connections to a port; whoever finds none free waits, and its waiting counts."""

    port: int
    most: int
    answers: list[Answer] = field(default_factory=list)

    def __post_init__(self) -> None:
        """Nobody has called yet."""
        self._idle, self._places = list[Connection](), asyncio.Semaphore(self.most)

    async def ask(self, request: bytes, due: float) -> None:
        """Note the answer to ``request``, which was due at ``due`` by the loop's clock."""
        begun = asyncio.get_running_loop().time()
        async with self._places:
            status, retry_after = await self.exchange(request)
        now = asyncio.get_running_loop().time()
        self.answers.append(Answer(status, now - due, retry_after, now, begun - due))

    async def exchange(self, request: bytes) -> tuple[int, str]:
        """Status and Retry-After of one answer, whatever the number of connections; LOST where none came."""
        try:
            connection = await self._free()
            told = await connection.ask(request)
        except (OSError, TimeoutError, httptools.HttpParserError):
            return LOST, ""
        if connection.open:
            self._idle.append(connection)
        return told

    async def _free(self) -> Connection:
        while self._idle:
            if (connection := self._idle.pop()).open:
                return connection
        return (await asyncio.get_running_loop().create_connection(Connection, HOST, self.port))[1]

    def close(self) -> None:
        """Hang up on all connections."""
        for connection in self._idle:
            connection.close()


async def at_rate(port: int, requests: Iterable[bytes], per_second: float, seconds: float, most: int = 1_000) -> list[Answer]:
    """The answers to ``requests``, taken in turn and sent evenly, whether or not those before are answered."""
    loop, callers, tasks = asyncio.get_running_loop(), Callers(port, most), set[asyncio.Task[None]]()
    begun, turn, number = loop.time(), cycle(requests), 0
    # What is due by this clock is sent: the loop's own, but for the time that the generator was held up, which it makes up for slowly.
    clock = looked = begun
    while number < round(per_second * seconds):
        await asyncio.sleep(max(SHORTEST_SLEEP, begun + number / per_second - loop.time()))
        now = loop.time()
        clock, looked = min(now, clock + CATCHING_UP * min(now - looked, max(LONGEST_ROUND, 1 / per_second))), now
        while number < round(per_second * seconds) and (due := begun + number / per_second) <= clock:
            tasks.add(task := asyncio.create_task(callers.ask(next(turn), due)))
            task.add_done_callback(tasks.discard)
            number += 1
    await asyncio.gather(*tasks)
    callers.close()
    return callers.answers


async def in_turn(port: int, requests: Iterable[bytes], callers: int, seconds: float) -> list[Answer]:
    """The answers to as much as ``callers`` ask, each as soon as it has its answer."""
    loop, asked, turn = asyncio.get_running_loop(), Callers(port, callers), cycle(requests)
    end = loop.time() + seconds

    async def call() -> None:
        while loop.time() < end:
            await asked.ask(next(turn), loop.time())

    await asyncio.gather(*(call() for _ in range(callers)))
    asked.close()
    return asked.answers


async def all_of(port: int, requests: Iterator[bytes], callers: int, note: Callable[[int, Answer], None]) -> None:
    """Send every one of ``requests`` once, ``callers`` at a time; ``note`` is told each one's place in the order and its answer."""
    loop, asked, numbered = asyncio.get_running_loop(), Callers(port, callers), enumerate(requests)

    async def call() -> None:
        for number, request in numbered:
            begun = loop.time()
            status, retry_after = await asked.exchange(request)
            note(number, Answer(status, loop.time() - begun, retry_after, loop.time()))

    await asyncio.gather(*(call() for _ in range(callers)))
    asked.close()
