"""The parts of the fuzzing over HTTP: what is sent, what is kept of it, and when it ends."""

from __future__ import annotations

import asyncio
import json
import os
import time
from collections import Counter
from collections.abc import Iterator
from itertools import count

import pytest
from tests.load import fuzz_requests
from tests.load.bodies import SLOW
from tests.load.fuzz_requests import Findings, changed, fuzzed
from tests.load.generator import LOST, Answer, request_of
from tests.load.serving import Server

OPERATIONS = fuzz_requests.examples().keys()


@pytest.mark.parametrize("slow", [False, True])
def test_requests_are_those_of_their_seed(slow: bool) -> None:
    made = list(changed(1, 300, slow))
    assert made == list(changed(1, 300, slow))
    assert made[:100] == list(changed(1, 100, slow))
    assert made[:100] != list(changed(2, 100, slow))
    assert len({request for _, request in made}) > 290


def test_each_kind_is_mostly_of_its_own_operations_and_reaches_the_others() -> None:
    quick, slow = (Counter(name for name, _ in changed(1, 2_000, kind)) for kind in (False, True))
    assert sum(quick[name] for name in SLOW) / quick.total() < 0.1
    assert sum(slow[name] for name in SLOW) / slow.total() > 0.9
    assert quick.keys() == slow.keys() == OPERATIONS


def test_a_request_is_whole_and_of_the_media_types_and_languages_that_are_offered() -> None:
    heads = []
    for name, request in changed(3, 600, False):
        head, _, body = request.partition(b"\r\n\r\n")
        assert head.startswith(f"POST /v1/{name}".encode())
        assert f"content-length: {len(body)}".encode() in head
        assert len(body) <= fuzz_requests.LONGEST
        json.loads(body)
        heads.append(head.decode())
    for one in (*fuzz_requests.ACCEPTED, *(f"accept-language: {tag}" for tag in fuzz_requests.LANGUAGES), "?explain=true"):
        assert any(one in head for head in heads)
    assert 0 < sum("connection: close" in head for head in heads) < 30


def findings(*told: tuple[int, float]) -> Findings:
    found = Findings()
    for status, seconds in told:
        found.note("sizing", str(status).encode(), Answer(status, seconds))
    return found


def test_a_failure_of_the_service_is_found_and_kept() -> None:
    found = findings((200, 0.5), (422, 0.1), (503, 0.1), (500, 0.2), (504, 0.1), (LOST, 0.3))
    assert found.failures == [b"500", b"504", b"0"]
    assert found.slowest == {"sizing": 0.5}
    assert found.statuses == {200: 1, 422: 1, 503: 1, 500: 1, 504: 1, LOST: 1}


def test_a_report_tells_counts_limits_and_growth_of_each_process(capsys: pytest.CaptureFixture[str]) -> None:
    found = findings((200, 0.5), (422, 0.1), (500, 0.2))
    found.note("gas-forecast", b"", Answer(200, 2.5))
    found.memory = [(place * 1_000, (10.0, 150.0 + max(place, 30) * 0.5)) for place in range(100)]
    fuzz_requests.report(found, 2)
    told = capsys.readouterr().out.splitlines()
    assert told[0] == "4 requests in 2 s: 200: 2, 422: 1, 500: 1; failures: 1"
    assert told[2].split() == ["gas-forecast", "1", "1", "2.50", "60", "none"]
    assert told[3].split() == ["sizing", "3", "1", "0.50", "-", "422:", "1,", "500:", "1"]
    assert told[4].startswith("process 0: 10.0 MB at half, 10.0 MB at the end: +0.00 MB in 100,000 requests")
    assert told[5].startswith("process 1: 175.0 MB at half, 199.5 MB at the end: +50.00 MB in 100,000 requests")


@pytest.fixture
def refused(monkeypatch: pytest.MonkeyPatch) -> None:
    """Series of requests that the server refuses."""

    def series(_seed: int, number: int, slow: bool) -> Iterator[tuple[str, bytes]]:
        name = "gas-forecast" if slow else "sizing"
        return ((name, request_of("/422", b"{}")) for _ in range(number))

    monkeypatch.setattr(fuzz_requests, "changed", series)


@pytest.mark.usefixtures("refused")
def test_fuzzing_sends_its_requests_in_their_shares(port: int, capsys: pytest.CaptureFixture[str]) -> None:
    found = asyncio.run(fuzzed(Server(os.getpid(), port, 0), 1, 300, 60))
    assert found.by_operation == {"sizing": {422: 297}, "gas-forecast": {422: 3}}
    assert found.memory[-1][0] == 300
    assert all(megabytes > 5 for _, each in found.memory for megabytes in each[:1])


@pytest.mark.usefixtures("refused")
def test_fuzzing_ends_with_its_time(port: int) -> None:
    found = asyncio.run(fuzzed(Server(os.getpid(), port, 0), 1, 300, -1))
    assert found.statuses.total() == 0


def test_a_series_ends_in_time_or_with_itself() -> None:
    endless = (("sizing", str(number).encode()) for number in count())
    assert list(fuzz_requests.until(time.monotonic() - 1, endless)) == []
    begun = time.monotonic()
    assert len(list(fuzz_requests.until(begun + 0.05, endless))) > 10
    assert time.monotonic() - begun < 5
    assert list(fuzz_requests.until(begun + 60, iter([("sizing", b"1")]))) == [("sizing", b"1")]


@pytest.mark.usefixtures("refused")
def test_quick_ones_do_not_wait_for_slow_ones(port: int, monkeypatch: pytest.MonkeyPatch) -> None:
    """Slow answers take a second each here; a hundred quick ones are in before the first of them."""
    order: list[str] = []
    note = Findings.note

    def noted(self: Findings, operation: str, request: bytes, answer: Answer) -> None:
        order.append(operation)
        note(self, operation, request, answer)

    def series(_seed: int, number: int, slow: bool) -> Iterator[tuple[str, bytes]]:
        return (("gas-forecast", request_of("/late", b"{}")) if slow else ("sizing", request_of("/422", b"{}")) for _ in range(number))

    monkeypatch.setattr(Findings, "note", noted)
    monkeypatch.setattr(fuzz_requests, "changed", series)
    asyncio.run(fuzzed(Server(os.getpid(), port, 0), 1, 100, 60))
    assert order == ["sizing"] * 99 + ["gas-forecast"]


def test_tenths_are_told_while_it_runs(capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(fuzz_requests, "SECONDS_BETWEEN_SAMPLES", 0.01)
    found = Findings()

    async def story() -> None:
        watching = asyncio.create_task(fuzz_requests.watched(os.getpid(), 40, found))
        for _ in range(10):
            found.note("sizing", b"", Answer(422, 0.1))
            await asyncio.sleep(0.03)
        watching.cancel()

    asyncio.run(story())
    told = [line.split()[0] for line in capsys.readouterr().out.splitlines()]
    assert told == ["4", "8"]
