"""The kept generator, against a server that answers as it is told, and what is made of its answers, against other libraries."""

from __future__ import annotations

import asyncio
import math
import os
import threading
import time
from collections import Counter

import numpy as np
import pytest
from tests.load import overload, slow_clients, storms, workers
from tests.load.bodies import SLOW, bodies
from tests.load.conftest import Listening, Obeying
from tests.load.figures import counted, summed_up
from tests.load.generator import CATCHING_UP, LOST, Answer, Callers, all_of, at_rate, in_turn, request_of
from tests.load.measuring import Round, family, open_files
from tests.load.serving import Server

from kilisho import load, open_questions


def test_every_request_of_a_rate_is_sent_once_and_its_answer_noted(port: int) -> None:
    requests = [request_of("/200", b'{"name": "an invented farm"}', accept_language="sw"), request_of("/503", b"{}")]
    answers = asyncio.run(at_rate(port, requests, 200, 0.2))
    assert Counter(answer.status for answer in answers) == {200: 20, 503: 20}
    assert {answer.retry_after for answer in answers if answer.status == 503} == {"7"}
    assert {answer.retry_after for answer in answers if answer.status == 200} == {""}
    assert all(answer.seconds > 0 for answer in answers)
    assert Counter(Obeying.seen) == {("/200", b'{"name": "an invented farm"}', "sw"): 20, ("/503", b"{}", ""): 20}


def test_a_generator_that_was_held_up_sends_no_burst(port: int) -> None:
    """A hundred that are sent at once, since a second was missed, are a load of the generator's making."""

    async def story() -> list[Answer]:
        held_up = asyncio.get_running_loop().call_later(0.1, time.sleep, 0.4)
        answers = await at_rate(port, [request_of("/200", b"{}")], 100, 1.0)
        held_up.cancel()
        return answers

    answers = asyncio.run(story())
    sent = sorted(answer.at for answer in answers)
    assert [answer.status for answer in answers] == [200] * 100
    # Once it goes on, forty are overdue; they come beside the others, a quarter more than the rate asks for.
    most = max(sum(start <= one < start + 0.2 for one in sent) for start in sent)
    assert most <= 0.2 * 100 * CATCHING_UP * 1.6
    assert max(answer.seconds for answer in answers) > 0.3
    # What it lost is told apart from what the answer took.
    assert max(answer.late for answer in answers) > 0.3
    assert all(0 <= answer.late <= answer.seconds for answer in answers)


def test_an_answer_has_its_time(port: int) -> None:
    answers = asyncio.run(at_rate(port, [request_of("/200", b"{}")], 50, 0.2))
    times = sorted(answer.at for answer in answers)
    assert times[-1] - times[0] == pytest.approx(0.18, abs=0.15)
    assert times[0] > 0


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


def test_the_slow_operations_are_those_that_the_service_calls_slow() -> None:
    opened = open_questions(load())
    assert {name for name in bodies() if opened[name].slow} == SLOW


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
