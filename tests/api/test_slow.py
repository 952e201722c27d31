"""Slow questions: others are answered meanwhile, too many are turned away, and nothing that goes wrong holds the lane."""

from __future__ import annotations

import dataclasses
import json
import logging
import re
import socket
import time
from collections.abc import Callable, Iterator, Mapping
from concurrent.futures import Future, ThreadPoolExecutor
from contextlib import contextmanager
from threading import Event, Lock
from typing import Any

import anyio
import httpx
import pytest
from litestar import Litestar
from litestar.testing import TestClient
from tests import invented
from tests.api.asking import problem
from tests.api.running import listening

from kilisho.faults import Fault, RefusedError
from kilisho.packs import Rulebook
from kilisho.questions import Question
from kilisho.questions.opening import open_form
from kilisho_api.app import assemble
from kilisho_api.documents import Document, late_page
from kilisho_api.layers import with_request_id
from kilisho_api.openapi.document import document
from kilisho_api.problems import ProblemError
from kilisho_api.settings import Settings
from kilisho_api.slow import SlowLane
from kilisho_api.tables import NAME as TABLES

PATH, BODY = f"/v1/{invented.NAME}", {"days": 2}
SECONDS = 20


class Gate:
    """An answer that waits until it is let go; it tells how many have come in and how many were inside together."""

    def __init__(self, answer: Callable[[Any, bool], Any]) -> None:
        self.open, self.came, self.inside, self.most = Event(), 0, 0, 0
        self._answer, self._lock = answer, Lock()

    def __call__(self, asked: Any, explain: bool) -> Any:
        self._step(1)
        try:
            assert self.open.wait(SECONDS)
            return self._answer(asked, explain)
        finally:
            self._step(-1)

    def _step(self, by: int) -> None:
        with self._lock:
            self.inside += by
            self.came += by > 0
            self.most = max(self.most, self.inside)


def until(holds: Callable[[], bool]) -> None:
    """Wait until something holds, and fail when it never does."""
    begun = time.perf_counter()
    while not holds():
        assert time.perf_counter() - begun < SECONDS
        time.sleep(0.005)


@pytest.fixture
def gate(rulebook: Rulebook) -> Gate:
    return Gate(open_form(invented.form, rulebook).answer)


@pytest.fixture
def slow(rulebook: Rulebook, gate: Gate) -> Question:
    return dataclasses.replace(open_form(invented.form, rulebook), answer=gate)


@pytest.fixture
def lanes(monkeypatch: pytest.MonkeyPatch) -> list[SlowLane]:
    """The lanes of the slow questions of every service that a test puts together."""
    made: list[SlowLane] = []

    def note(at_once: int, waiting: int, longest: float) -> SlowLane:
        made.append(SlowLane(at_once, waiting, longest))
        return made[-1]

    monkeypatch.setattr("kilisho_api.app.SlowLane", note)
    return made


@pytest.fixture
def serve(rulebook: Rulebook, questions: Mapping[str, Question], slow: Question, gate: Gate) -> Any:
    """Serves all questions and the slow one over HTTP under given settings; gives a function that sends it a request from a thread."""

    @contextmanager
    def run(**settings: int) -> Iterator[tuple[httpx.Client, Callable[..., Future[httpx.Response]]]]:
        app = assemble(Settings(**settings), rulebook, {**questions, slow.name: slow})  # type: ignore[arg-type]
        with listening(app) as address, httpx.Client(base_url=address, timeout=SECONDS) as client, ThreadPoolExecutor(16) as pool:
            try:
                yield client, lambda body=BODY, **headers: pool.submit(client.post, PATH, json=body, headers=headers)
            finally:
                gate.open.set()

    return run


def test_quick_answers_come_while_a_slow_one_is_worked_out(serve: Any, gate: Gate, questions: Mapping[str, Question]) -> None:
    with serve() as (client, send):
        waiting = send()
        until(lambda: gate.inside == 1)
        assert client.get("/health").json() == {"status": "live"}
        assert client.get("/v1/substrates/cattle_dung").status_code == 200
        assert client.post("/v1/sizing", json=questions["sizing"].example).status_code == 200
        assert client.get("/metrics").status_code == 200
        assert not waiting.done()
        gate.open.set()
        assert waiting.result(SECONDS).status_code == 200
        assert len(waiting.result().json()["rows"]) == 2


def test_a_farm_plan_waits_for_a_place_only_where_it_forecasts_a_year(serve: Any, gate: Gate, questions: Mapping[str, Question]) -> None:
    example = questions["farm-plan"].example
    with serve(slow_at_once=1, slow_waiting=0) as (client, send):
        send()
        until(lambda: gate.inside == 1)
        assert client.post("/v1/farm-plan", json={**example, "with_forecast": False}).status_code == 200
        problem(client.post("/v1/farm-plan", json=example), 503, "overloaded")


def test_a_slow_table_is_the_table(serve: Any, gate: Gate) -> None:
    gate.open.set()
    with serve() as (_, send):
        answer = send(accept="text/csv").result(SECONDS)
    assert answer.text.startswith(invented.HEADER)
    assert answer.headers["content-type"] == "text/csv; charset=utf-8; header=present"


@pytest.mark.parametrize(("at_once", "waiting"), [(1, 0), (1, 2), (2, 1), (3, 4)])
def test_beyond_those_that_may_wait_callers_are_told_when_to_come_back(serve: Any, gate: Gate, at_once: int, waiting: int) -> None:
    with serve(slow_at_once=at_once, slow_waiting=waiting) as (client, send):
        sent = [send() for _ in range(at_once + waiting + 3)]
        until(lambda: sum(one.done() for one in sent) == 3)
        until(lambda: gate.inside == at_once)
        for one in (one.result() for one in sent if one.done()):
            problem(one, 503, "overloaded")
            assert int(one.headers["retry-after"]) >= 1
        assert client.get("/health").status_code == 200
        gate.open.set()
        assert sorted(one.result(SECONDS).status_code for one in sent) == [200] * (at_once + waiting) + [503] * 3
        assert gate.most == at_once
        assert gate.came == at_once + waiting
        assert send().result(SECONDS).status_code == 200


def test_what_cannot_be_answered_is_refused_at_once_though_the_lane_is_full(serve: Any, gate: Gate) -> None:
    with serve(slow_at_once=1, slow_waiting=0) as (client, send):
        send()
        until(lambda: gate.inside == 1)
        assert problem(send({"days": 0}).result(SECONDS), 422, "invalid-request")["errors"][0]["pointer"] == "/days"
        problem(client.post(PATH, content=b"[", headers={"content-type": "application/json"}), 400, "malformed-json")
        problem(send(accept="image/png").result(SECONDS), 406, "not-acceptable")
        problem(send().result(SECONDS), 503, "overloaded")


def _refusing(_asked: Any, _explain: bool) -> Any:
    raise RefusedError([Fault(("days",), "dates_disordered", "too late")])


def _failing(_asked: Any, _explain: bool) -> Any:
    raise RuntimeError("secret-of-ours")


def _endless(_asked: Any, _explain: bool) -> Any:
    return {"value": float("inf")}


@pytest.mark.parametrize(
    ("answer", "expected"),
    [(_refusing, (422, "invalid-request")), (_failing, (500, "internal-error")), (_endless, (500, "internal-error"))],
)
def test_errors_in_the_thread_are_the_same_problems_as_elsewhere(
    rulebook: Rulebook, slow: Question, answer: Any, expected: tuple[int, str], caplog: pytest.LogCaptureFixture
) -> None:
    told = []
    for question in (dataclasses.replace(slow, answer=answer), dataclasses.replace(slow, answer=answer, slow=False)):
        app = assemble(Settings(slow_at_once=1, slow_waiting=0), rulebook, {question.name: question})
        with TestClient(app, raise_server_exceptions=False) as client, caplog.at_level(logging.CRITICAL):
            answers = [client.post(PATH, json=BODY) for _ in range(3)]  # three, to see that the lane is free again
        assert "secret" not in answers[-1].text
        told += [{**problem(one, *expected), "instance": ""} for one in answers]
    assert all(one == told[0] for one in told)


def _bare_request(address: httpx.URL) -> socket.socket:
    """A request over a bare connection, for the caller to cut."""
    connection = socket.create_connection((address.host, address.port or 80))
    body = json.dumps(BODY)
    head = f"POST {PATH} HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: {len(body)}\r\n\r\n"
    connection.sendall((head + body).encode())
    return connection


def test_whoever_leaves_while_waiting_is_passed_over_and_leaves_no_place_taken(serve: Any, gate: Gate, lanes: list[SlowLane]) -> None:
    with serve(slow_at_once=1, slow_waiting=2) as (client, send):
        first = send()
        until(lambda: gate.inside == 1)
        leaving = [_bare_request(client.base_url) for _ in range(2)]
        until(lambda: lanes[0]._inside == 3)
        for connection in leaving:
            connection.close()
        problem(send().result(SECONDS), 503, "overloaded")  # both hold their places until their turn comes
        gate.open.set()
        assert first.result(SECONDS).status_code == 200
        until(lambda: lanes[0]._inside == 0)
        after = [send() for _ in range(3)]
        assert [one.result(SECONDS).status_code for one in after] == [200] * 3
        assert gate.came == 4


def test_whoever_leaves_in_the_middle_leaves_the_lane_free(serve: Any, gate: Gate) -> None:
    with serve(slow_at_once=1, slow_waiting=0) as (client, send):
        connection = _bare_request(client.base_url)
        until(lambda: gate.inside == 1)
        connection.close()
        problem(send().result(SECONDS), 503, "overloaded")  # a thread cannot be stopped, so its place is not given away either
        gate.open.set()
        until(lambda: gate.inside == 0)
        until(lambda: send().result(SECONDS).status_code == 200)


class _Request:
    """As much of a request as the lane looks at."""

    async def receive(self) -> dict[str, Any]:
        await anyio.sleep_forever()
        return {}


REQUEST: Any = _Request()


def test_a_cancelled_task_leaves_the_lane_free() -> None:
    gate = Gate(lambda asked, explain: "done")

    async def story() -> list[str]:
        lane = SlowLane(1, 1)
        async with anyio.create_task_group() as tasks:
            tasks.start_soon(lane.run, lambda: gate(None, False), REQUEST)
            while gate.inside == 0:
                await anyio.sleep(0.001)
            with anyio.move_on_after(0.02):
                await lane.run(lambda: "never", REQUEST)
            waiting_left = lane._inside == 1
            tasks.cancel_scope.cancel()  # reaches the one that computes, too
            gate.open.set()
        return [await lane.run(lambda: "again", REQUEST), str(waiting_left), str(lane._inside)]

    assert anyio.run(story) == ["again", "True", "0"]


def test_the_time_to_wait_grows_with_those_who_wait() -> None:
    async def story() -> list[int]:
        lane, gate, told = SlowLane(1, 4), Gate(lambda asked, explain: None), list[int]()
        await lane.run(lambda: time.sleep(0.4), REQUEST)
        async with anyio.create_task_group() as tasks:
            for _ in range(5):
                tasks.start_soon(lane.run, lambda: gate(None, False), REQUEST)
            while lane._inside < 5:
                await anyio.sleep(0.001)
            try:
                await lane.run(lambda: None, REQUEST)
            except ProblemError as error:
                told.append(int(error.headers["Retry-After"]))
            gate.open.set()
        return told

    assert anyio.run(story) in ([2], [3])  # five times 0.4 s and a little


def test_readiness_recomputes_slow_examples_without_holding_up_others(serve: Any, gate: Gate) -> None:
    with serve(slow_at_once=1, slow_waiting=0) as (client, _), ThreadPoolExecutor(16) as pool:
        probes = [pool.submit(client.get, "/ready") for _ in range(12)]
        until(lambda: gate.inside == 1)
        assert client.get("/health").status_code == 200
        assert not any(one.done() for one in probes)
        gate.open.set()
        assert [one.result(SECONDS).json()["status"] for one in probes] == ["ready"] * 12
        assert (gate.came, gate.most) == (1, 1)


def test_only_slow_questions_say_that_they_may_be_given_up(
    rulebook: Rulebook, questions: Mapping[str, Question], slow: Question, gate: Gate
) -> None:
    gate.open.set()
    made = document(rulebook, {**questions, slow.name: slow}, Settings(slow_at_once=3, slow_waiting=5))
    answers = {path: item["post"]["responses"] for path, item in made["paths"].items() if "post" in item}
    assert answers.pop(PATH)["504"] == {"$ref": "#/components/responses/TookTooLong"}
    assert answers.pop(f"/v1/{TABLES}")["504"] == {"$ref": "#/components/responses/TookTooLong"}
    told = {path.removeprefix("/v1/") for path, responses in answers.items() if "504" in responses}
    assert told == {name for name, question in questions.items() if question.slow}
    headers = made["components"]["responses"]["Overloaded"]["headers"]
    assert headers["Retry-After"] == {"$ref": "#/components/headers/RetryAfter"}
    assert re.search(r"works on 3 such at a time and lets 5 wait", made["info"]["description"])


def test_a_page_that_takes_long_is_made_once_and_holds_up_nobody() -> None:
    made, gate = [], Event()

    def make() -> Document:
        made.append(1)
        assert gate.wait(SECONDS)
        return Document(b"{}")

    app = Litestar([late_page("/late", make), late_page("/quick", lambda: Document(b"[]"))], openapi_config=None)
    app.asgi_handler = with_request_id(app.asgi_handler)  # type: ignore[assignment,arg-type]
    with listening(app) as address, ThreadPoolExecutor(8) as pool:
        asked = [pool.submit(httpx.get, f"{address}/late", timeout=SECONDS) for _ in range(4)]
        until(lambda: made == [1])
        assert httpx.get(f"{address}/quick").content == b"[]"
        gate.set()
        assert {one.result(SECONDS).content for one in asked} == {b"{}"}
    assert made == [1]
