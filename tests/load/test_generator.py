"""The kept generator, against a server that answers as it is told, and what is made of its answers, against other libraries."""

from __future__ import annotations

import asyncio
import json
import math
import os
import threading
from collections import Counter
from collections.abc import Iterator
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

import numpy as np
import pytest
from scipy import stats
from tests.load import fuzz_requests, overload, slow_clients, soak, storms, workers
from tests.load.bodies import SLOW, bodies
from tests.load.figures import BLOCKS, Slope, counted, slope_of, summed_up
from tests.load.generator import LOST, Answer, Callers, all_of, at_rate, in_turn, request_of
from tests.load.measuring import Round, family, open_files
from tests.load.serving import Server

from kilisho import load, open_questions


class Obeying(BaseHTTPRequestHandler):
    """Answers with the status that the address names; 0 is no answer at all."""

    protocol_version = "HTTP/1.1"
    seen: list[tuple[str, bytes, str]]

    def do_POST(self) -> None:
        body = self.rfile.read(int(self.headers["Content-Length"]))
        self.seen.append((self.path, body, self.headers.get("Accept-Language", "")))
        status = int(self.path.strip("/"))
        if status == 0:
            self.close_connection = True
            return
        self.send_response(status)
        self.send_header("Content-Length", str(len(body)))
        if status == 503:
            self.send_header("Retry-After", "7")
        self.end_headers()
        self.wfile.write(body)

    def log_message(self, *_: object) -> None:
        pass


class Listening(ThreadingHTTPServer):
    request_queue_size = 128


@pytest.fixture
def port() -> Iterator[int]:
    Obeying.seen = []
    server = Listening(("127.0.0.1", 0), Obeying)
    threading.Thread(target=server.serve_forever).start()
    yield server.server_port
    server.shutdown()
    server.server_close()


def test_every_request_of_a_rate_is_sent_once_and_its_answer_noted(port: int) -> None:
    requests = [request_of("/200", b'{"name": "an invented farm"}', accept_language="sw"), request_of("/503", b"{}")]
    answers = asyncio.run(at_rate(port, requests, 200, 0.2))
    assert Counter(answer.status for answer in answers) == {200: 20, 503: 20}
    assert {answer.retry_after for answer in answers if answer.status == 503} == {"7"}
    assert {answer.retry_after for answer in answers if answer.status == 200} == {""}
    assert all(answer.seconds > 0 for answer in answers)
    assert Counter(Obeying.seen) == {("/200", b'{"name": "an invented farm"}', "sw"): 20, ("/503", b"{}", ""): 20}


def test_a_request_without_an_answer_is_lost_and_those_after_it_are_not(port: int) -> None:
    answers = asyncio.run(at_rate(port, [request_of("/0", b"{}"), request_of("/200", b"{}")], 100, 0.2))
    assert Counter(answer.status for answer in answers) == {LOST: 10, 200: 10}


def test_where_nobody_listens_all_is_lost(port: int) -> None:
    with Listening(("127.0.0.1", 0), Obeying) as closed:
        nobody = closed.server_port
    answers = asyncio.run(at_rate(nobody, [request_of("/200", b"{}")], 100, 0.05))
    assert [answer.status for answer in answers] == [LOST] * 5


def test_callers_in_turn_ask_until_the_time_is_over(port: int) -> None:
    answers = asyncio.run(in_turn(port, [request_of("/200", b"{}")], 3, 0.2))
    assert len(answers) == len(Obeying.seen) >= 3
    assert {answer.status for answer in answers} == {200}


def test_whoever_waits_for_a_connection_has_its_wait_counted(port: int) -> None:
    async def story() -> list[Answer]:
        callers = Callers(port, 1)
        due = asyncio.get_running_loop().time() - 5
        await asyncio.gather(*(callers.ask(request_of("/200", b"{}"), due) for _ in range(3)))
        callers.close()
        return callers.answers

    assert all(answer.seconds > 5 for answer in asyncio.run(story()))


def test_every_one_of_a_series_is_told_by_its_place(port: int) -> None:
    told: dict[int, int] = {}
    series = iter([request_of(f"/{status}", b"{}") for status in (200, 404, 503, 422, 200)])
    asyncio.run(all_of(port, series, 2, lambda place, answer: told.__setitem__(place, answer.status)))
    assert told == {0: 200, 1: 404, 2: 503, 3: 422, 4: 200}


def test_a_summary_tells_accepted_from_refused_and_lost() -> None:
    taken = [Answer(200, millisecond / 1e3) for millisecond in range(1, 101)]
    told = summed_up([*taken, Answer(503, 9), Answer(503, 9), Answer(LOST, 9)], 4)
    assert (told.accepted, told.worst, told.lost) == (25, 100, 1)
    assert (told.p50, told.p99) == pytest.approx(np.percentile(range(1, 101), (50, 99)))
    assert told.others == {503: 2, LOST: 1}
    assert counted(told.others) == "lost: 1, 503: 2"
    assert counted(Counter()) == "none"
    assert math.isnan(summed_up([Answer(503, 1)], 1).p99)


def test_a_slope_and_its_interval_are_those_of_another_library() -> None:
    """numpy's polyfit gives the covariance of the line's parameters by another way than scipy's regression."""
    random = np.random.default_rng(1)
    times = np.arange(BLOCKS, dtype=float)
    values = 100 + 0.25 * times + random.normal(0, 2, BLOCKS)
    (line, _), covariance = np.polyfit(times, values, 1, cov=True)
    half = stats.t.ppf(0.975, BLOCKS - 2) * math.sqrt(covariance[0, 0])
    told = slope_of(times, values)
    assert (told.per_second, told.low, told.high) == pytest.approx((line, line - half, line + half))
    assert not told.none


def test_memory_that_stays_has_no_slope_and_memory_that_grows_has_one() -> None:
    random, times = np.random.default_rng(2), np.arange(600.0)
    noise = random.normal(0, 1, 600)
    assert slope_of(times, 150 + noise).none
    grown = slope_of(times, 150 + 0.02 * times + noise)
    assert grown.low < 0.02 < grown.high
    assert not grown.none


def test_an_interval_holds_the_true_slope_as_often_as_it_says() -> None:
    random, times = np.random.default_rng(3), np.arange(90.0)
    held = [slope_of(times, random.normal(0, 1, 90)).none for _ in range(400)]
    assert 0.91 < np.mean(held) < 0.98


def test_the_slow_operations_are_those_that_the_service_calls_slow() -> None:
    opened = open_questions(load())
    assert {name for name in bodies() if opened[name].slow} == SLOW


def test_warm_up_does_not_count() -> None:
    samples = [(float(second), 100.0 + min(second, 50)) for second in range(200)]
    first, last, slope = soak.memory(samples, 60)
    assert (first, last) == (150, 150)
    assert slope.none
    assert "there is a slope" in soak.told(soak.memory(samples, 0)[2])
    assert soak.told(Slope(0, -1 / 3600, 1 / 3600)) == "+0.00 MB/h (95 %: -1.00 to +1.00), none can be told"


def test_memory_is_sampled_beside_the_load(port: int) -> None:
    answers, samples = asyncio.run(soak.soaked(os.getpid(), port, [request_of("/200", b"{}")], 50, 0.2))
    assert len(answers) == 10
    assert samples[0][1] > 5


def test_overload_is_told_with_refusals_that_say_nothing() -> None:
    answers = [Answer(200, 0.5), Answer(503, 0.1, "1"), Answer(503, 0.1), Answer(429, 0.1, "soon"), Answer(LOST, 1)]
    line = overload.row("3 times", 2.5, answers, summed_up(answers, 2))
    assert line == ("3 times", "2", "0", "500.0", "500.0", "500.0", 1, 2, "lost: 1, 429: 1, 503: 2")
    assert overload.bound(1_000, 100) == 200


def test_a_storm_asks_once_for_each_caller(port: int) -> None:
    answers = asyncio.run(storms.storm(port, request_of("/200", b"{}", connection="close"), 30))
    assert len(answers) == len(Obeying.seen) == 30
    line = storms.row(Server(os.getpid(), port, 0), answers, Answer(200, 0.002))
    assert (line[0], line[1], line[5], line[-1]) == (30, "30", "2.0", "none")


def test_slow_clients_are_there_while_quick_ones_ask_and_gone_after(port: int) -> None:
    async def idle(port: int) -> None:
        _, writer = await asyncio.open_connection("127.0.0.1", port)
        try:
            await asyncio.sleep(60)
        finally:
            writer.close()

    before = open_files(os.getpid())
    server = Server(os.getpid(), port, 0)
    slow_clients.FIRST, kept = "/200", slow_clients.FIRST
    try:
        answers, memory, files = asyncio.run(slow_clients.beside(server, idle, 5, 50, 0.2))
    finally:
        slow_clients.FIRST = kept
    assert {answer.status for answer in answers} == {200}
    assert memory > 5
    assert files >= before + 10  # both ends are ours


def test_workers_are_compared_with_one() -> None:
    measured = {1: [Round(100, 1, 2, 9_000)], 2: [Round(180, 1, 3, 9_500)]}
    first, second = workers.rows("sizing", measured)
    assert first == ("sizing", 1, "100", "1.00", "1.0", "2.0", "0.90")
    assert second == ("sizing", 2, "180", "1.80", "1.0", "3.0", "1.71")


def test_a_family_is_a_process_and_its_children() -> None:
    assert family(os.getpid())[0] == os.getpid()
    child = os.fork()
    if child == 0:
        threading.Event().wait()
    try:
        assert child in family(os.getpid())
    finally:
        os.kill(child, 9)
        os.waitpid(child, 0)


def test_fuzzed_requests_are_those_of_their_seed_and_reach_every_operation() -> None:
    made = list(fuzz_requests.changed(1, 400))
    assert made == list(fuzz_requests.changed(1, 400))
    assert made[:100] != list(fuzz_requests.changed(2, 100))
    assert {name for name, _ in made} >= fuzz_requests.examples().keys() - SLOW
    for name, request in made:
        head, _, body = request.partition(b"\r\n\r\n")
        assert head.startswith(f"POST /v1/{name}".encode())
        assert f"content-length: {len(body)}".encode() in head
        json.loads(body)


def test_a_failure_of_the_service_is_found_and_kept(port: int, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    found = fuzz_requests.Findings()
    for status, seconds in ((200, 0.5), (422, 0.1), (503, 0.1), (500, 0.2), (LOST, 0.3)):
        found.note("sizing", str(status).encode(), Answer(status, seconds))
    assert found.failures == [b"500", b"0"]
    assert found.slowest == {"sizing": 0.5}
    fuzz_requests.report(found, 2)
    told = capsys.readouterr().out
    assert "5 requests in 2 s: lost: 1, 200: 1, 422: 1, 500: 1, 503: 1; failures: 2" in told


def test_fuzzing_ends_with_its_requests_or_its_time(port: int) -> None:
    kept, fuzz_requests.changed = fuzz_requests.changed, lambda seed, number: (("sizing", request_of("/422", b"{}")) for _ in range(number))
    try:
        whole = asyncio.run(fuzz_requests.fuzzed(port, os.getpid(), 1, 20, 60))
        none = asyncio.run(fuzz_requests.fuzzed(port, os.getpid(), 1, 20, -1))
    finally:
        fuzz_requests.changed = kept
    assert whole.statuses == {422: 20}
    assert whole.samples
    assert none.statuses.total() == 0
