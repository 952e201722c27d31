"""Callers who ask without a pause, and what became of every request that they sent."""

from __future__ import annotations

import http.client
import time
from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from threading import Event, Thread
from typing import NamedTuple

import orjson

from kilisho import load, open_questions

SECONDS = 120.0
EXAMPLE = orjson.dumps(open_questions(load())["safety-check"].example)
HEADERS = {"content-type": "application/json"}


def until(holds: Callable[[], bool], seconds: float = SECONDS) -> float:
    """Wait until something holds, and fail when it never does; gives the seconds that it took."""
    begun = time.perf_counter()
    while not holds():
        assert time.perf_counter() - begun < seconds
        time.sleep(0.02)
    return time.perf_counter() - begun


class Told(NamedTuple):
    """What is kept of an answer: whole ones would be walked by this process's collector, for seconds in which nobody asks."""

    status: int
    version: str
    rulebook: str


@dataclass
class Load:
    """Callers on ``port``. A request counts as lost when its connection was taken and no whole answer came back."""

    port: int
    callers: int
    answers: list[Told] = field(default_factory=list)
    lost: list[str] = field(default_factory=list)
    refused: int = 0
    done: Event = field(default_factory=Event)

    @property
    def statuses(self) -> Counter[int]:
        """How many answers had which status."""
        return Counter(answer.status for answer in self.answers)

    def wait_for(self, more: int) -> None:
        """Wait until ``more`` answers have come."""
        wanted = len(self.answers) + more
        until(lambda: len(self.answers) >= wanted)

    def call(self) -> None:
        """Ask on one connection for as long as the service keeps it, then on another, until told to end."""
        connection = http.client.HTTPConnection("127.0.0.1", self.port, timeout=SECONDS)
        while not self.done.is_set():
            try:
                if connection.sock is None:
                    connection.connect()
            except ConnectionRefusedError:
                self.refused += 1
                time.sleep(0.05)
                continue
            self._ask(connection)
        connection.close()

    def _ask(self, connection: http.client.HTTPConnection) -> None:
        try:
            connection.request("POST", "/v1/safety-check", EXAMPLE, HEADERS)
            answer = connection.getresponse()
            rulebook = orjson.loads(answer.read()).get("rulebook", {})
        except (OSError, http.client.HTTPException, ValueError) as error:
            self.lost.append(repr(error))
            connection.close()
        else:
            self.answers.append(Told(answer.status, rulebook.get("version", ""), rulebook.get("hash", "")))


@contextmanager
def under_load(port: int, callers: int = 4) -> Iterator[Load]:
    """Callers at work until the block ends, the first answers in."""
    load = Load(port, callers)
    threads = [Thread(target=load.call) for _ in range(callers)]
    for thread in threads:
        thread.start()
    try:
        load.wait_for(5 * callers)
        yield load
    finally:
        load.done.set()
        for thread in threads:
            thread.join(timeout=SECONDS)
    assert not any(thread.is_alive() for thread in threads)
