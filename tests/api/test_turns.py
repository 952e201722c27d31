"""Requests take turns: one in a round of the event loop, in the order in which they came; those beyond the limit are refused at once."""

from __future__ import annotations

import asyncio
import signal
import socket
from collections.abc import Awaitable, Callable, Mapping
from http.client import HTTPResponse
from pathlib import Path
from typing import Any

import orjson
import pytest
from tests.api.running import Server, serving
from tests.fuzz.targets import exchange

from kilisho.packs import Rulebook
from kilisho.questions import Question
from kilisho_api.app import assemble
from kilisho_api.openapi.document import document
from kilisho_api.settings import Settings
from kilisho_api.turns import NEVER_TURNED_AWAY, Turns

JSON = [(b"content-type", b"application/json")]
Exchanged = tuple[int, list[tuple[bytes, bytes]], bytes]


async def _noted(turns: Turns, name: int, notes: list[int]) -> bool:
    taken = await turns.take()
    if taken:
        notes.append(name)
    return taken


@pytest.mark.parametrize(("most", "asking"), [(1, 1), (1, 2), (3, 4), (3, 9), (50, 120)])
def test_the_first_goes_at_once_the_next_wait_and_the_rest_is_refused(most: int, asking: int) -> None:
    async def story() -> list[bool]:
        turns, notes = Turns(most), list[int]()
        taken = await asyncio.gather(*(_noted(turns, name, notes) for name in range(asking)))
        assert notes == list(range(min(asking, most + 1)))
        return taken

    taken = asyncio.run(story())
    assert taken == [True] * min(asking, most + 1) + [False] * max(0, asking - most - 1)


def test_there_is_one_turn_in_a_round_so_that_newcomers_are_heard_between() -> None:
    async def story() -> None:
        turns, notes = Turns(10), list[int]()
        tasks = [asyncio.create_task(_noted(turns, name, notes)) for name in range(6)]
        before = 0
        while len(notes) < 6:
            await asyncio.sleep(0)
            assert len(notes) - before <= 1
            before = len(notes)
        await asyncio.gather(*tasks)

    asyncio.run(story())


def test_a_request_that_is_given_up_is_passed_over_and_holds_no_place() -> None:
    async def story() -> None:
        turns, notes = Turns(3), list[int]()
        tasks = [asyncio.create_task(_noted(turns, name, notes)) for name in range(4)]
        await asyncio.sleep(0)
        tasks[1].cancel()
        tasks[3].cancel()
        done = await asyncio.gather(*tasks, return_exceptions=True)
        assert notes == [0, 2]
        assert [type(one) for one in done] == [bool, asyncio.CancelledError, bool, asyncio.CancelledError]
        assert await asyncio.gather(*(_noted(turns, name, notes) for name in (4, 5))) == [True, True]

    asyncio.run(story())


def test_after_a_crowd_the_next_goes_at_once_again() -> None:
    async def story() -> None:
        turns = Turns(1)
        for _ in range(3):
            assert [await turns.take() for _ in range(2)] == [True, True]
            await asyncio.gather(*(turns.take() for _ in range(9)))
            for _ in range(3):
                await asyncio.sleep(0)
            assert not turns._busy
            assert not turns._waiting

    asyncio.run(story())


@pytest.fixture
def together(rulebook: Rulebook, questions: Mapping[str, Question]) -> Callable[..., list[Exchanged]]:
    """What the whole service, which lets two requests wait, answers to requests that are all there at once."""

    def ask(*asked: tuple[bytes, bytes, bytes]) -> list[Exchanged]:
        app = assemble(Settings(most_waiting=2), rulebook, questions)

        async def story() -> list[Exchanged]:
            work: list[Awaitable[Exchanged]] = [exchange(app, method, path, JSON, body) for method, path, body in asked]
            return list(await asyncio.gather(*work))

        return asyncio.run(story())

    return ask


def test_what_is_turned_away_is_told_as_a_problem_and_what_is_taken_is_answered(
    together: Callable[..., list[Exchanged]], questions: Mapping[str, Question]
) -> None:
    body = orjson.dumps(questions["sizing"].example)
    answers = together(*[(b"POST", b"/v1/sizing", body)] * 6)
    assert [status for status, _, _ in answers] == [200] * 3 + [503] * 3
    assert len({text for status, _, text in answers if status == 200}) == 1
    for _, headers, text in answers[3:]:
        told: dict[bytes, bytes] = dict(headers)
        assert int(told[b"retry-after"]) >= 1
        assert told[b"content-type"] == b"application/problem+json"
        assert told[b"x-content-type-options"] == b"nosniff"
        shown: dict[str, Any] = orjson.loads(text)
        assert (shown["type"], shown["status"]) == ("/problems/overloaded", 503)
        assert shown["instance"] == f"urn:uuid:{told[b'x-request-id'].decode()}"


def test_pages_take_turns_as_well_and_what_watches_the_process_does_not(together: Callable[..., list[Exchanged]]) -> None:
    pages = [b"/v1/fuels", b"/docs", b"/openapi.json", b"/v1/crops", b"/nowhere"]
    answers = together(*[(b"GET", page, b"") for page in (*pages, b"/health", b"/metrics", b"/ready")])
    assert [status for status, _, _ in answers] == [200, 200, 200, 503, 503, 200, 200, 200]


def test_the_contract_says_where_callers_may_be_turned_away(rulebook: Rulebook, questions: Mapping[str, Question]) -> None:
    made = document(rulebook, questions, Settings(most_waiting=7))
    told = {path: one["responses"].get("503") for path, item in made["paths"].items() for one in item.values()}
    overloaded = {"$ref": "#/components/responses/Overloaded"}
    assert {path for path, response in told.items() if response != overloaded} == NEVER_TURNED_AWAY
    assert "lets 7 requests wait for their turn" in made["info"]["description"]


def _asking(server: Server, request: bytes) -> socket.socket:
    connection = socket.create_connection(("127.0.0.1", server.port), timeout=60)
    connection.sendall(request)
    return connection


def _answer(connection: socket.socket) -> tuple[int, str]:
    with connection:
        answer = HTTPResponse(connection)
        answer.begin()
        answer.read()
        return answer.status, answer.headers["retry-after"] or ""


def test_those_who_knock_at_once_are_all_heard_and_none_is_lost(tmp_path: Path, questions: Mapping[str, Question]) -> None:
    """Forty connections that stand before the process can look: taken up one by one, they would wait unseen, and none be turned away."""
    body = orjson.dumps(questions["first-charge"].example)
    head = f"POST /v1/first-charge HTTP/1.1\r\nhost: a\r\ncontent-type: application/json\r\ncontent-length: {len(body)}\r\n\r\n"
    with serving(tmp_path / "log", KILISHO_MOST_WAITING="2") as server:
        server.process.send_signal(signal.SIGSTOP)
        connections = [_asking(server, head.encode() + body) for _ in range(40)]
        server.process.send_signal(signal.SIGCONT)
        answers = [_answer(connection) for connection in connections]
        again = _answer(_asking(server, head.encode() + body))
    refused = [after for status, after in answers if status == 503]
    assert {status for status, _ in answers} == {200, 503}
    assert len(refused) > 10
    assert all(int(after) >= 1 for after in refused)
    assert again == (200, "")
