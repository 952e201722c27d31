"""Told to stop under load: nobody who was let in is left without an answer."""

from __future__ import annotations

import signal
import socket
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import httpx
import pytest
from tests.api.asking import problem
from tests.api.running import Server, serving
from tests.operations.loading import EXAMPLE, HEADERS, SECONDS, under_load, until

from kilisho import load, open_questions


def ended(server: Server) -> bool:
    return server.process.poll() is not None


def status_of_ready(server: Server) -> int:
    return httpx.get(f"{server.url}/ready", timeout=SECONDS).status_code


@pytest.mark.parametrize(("workers", "drain"), [("1", "0"), ("1", "1"), ("2", "0"), ("2", "1")])
def test_told_to_stop_under_load_it_loses_nothing(tmp_path: Path, workers: str, drain: str) -> None:
    log = tmp_path / "log"
    with serving(log, "--workers", workers, KILISHO_DRAIN_SECONDS=drain) as server, under_load(server.port, callers=6) as load:
        server.process.send_signal(signal.SIGTERM)
        until(lambda: ended(server))
        until(lambda: load.refused > 0)
    assert load.lost == []
    assert load.statuses.keys() == {200}
    assert "Traceback" not in log.read_text()


def test_it_says_that_it_is_leaving_before_it_does(tmp_path: Path) -> None:
    with serving(tmp_path / "log", KILISHO_DRAIN_SECONDS="600") as server, httpx.Client(base_url=server.url, timeout=SECONDS) as client:
        assert client.get("/ready").status_code == 200
        assert "connection" not in client.get("/health").headers
        server.process.send_signal(signal.SIGTERM)
        until(lambda: status_of_ready(server) == 503)
        assert "being stopped" in problem(client.get("/ready"), 503, "not-ready")["detail"]
        answer = client.post("/v1/safety-check", content=EXAMPLE, headers=HEADERS)
        assert (answer.status_code, answer.headers["connection"]) == (200, "close")
        assert client.get("/health").status_code == 200
        assert not ended(server)
        server.process.send_signal(signal.SIGTERM)  # a second one ends the wait
        until(lambda: ended(server))


def test_from_a_terminal_it_stops_without_a_wait(tmp_path: Path) -> None:
    with serving(tmp_path / "log", KILISHO_DRAIN_SECONDS="600") as server:
        server.process.send_signal(signal.SIGINT)
        until(lambda: ended(server))


@pytest.mark.parametrize("workers", ["1", "2"])
def test_slow_work_that_has_begun_and_that_waits_is_answered_while_new_callers_are_refused(tmp_path: Path, workers: str) -> None:
    question = open_questions(load())["gas-forecast"]
    with serving(tmp_path / "log", "--workers", workers) as server, ThreadPoolExecutor(3) as pool:
        with httpx.Client(base_url=server.url, timeout=SECONDS) as client:
            sent = [pool.submit(client.post, "/v1/gas-forecast", json=question.example) for _ in range(3)]
            until(lambda: "kilisho_requests_in_progress" in client.get("/metrics").text and open_requests(client) >= 3)
            server.process.send_signal(signal.SIGTERM)
            until(lambda: refuses(server))
            assert [one.result(SECONDS).status_code for one in sent] == [200] * 3
        until(lambda: ended(server))


def open_requests(client: httpx.Client) -> float:
    lines = client.get("/metrics").text.splitlines()
    figure = next(line for line in lines if line.startswith("kilisho_requests_in_progress"))
    return float(figure.split()[1]) - 1  # less the one that asks


def refuses(server: Server) -> bool:
    try:
        socket.create_connection(("127.0.0.1", server.port), timeout=SECONDS).close()
    except ConnectionRefusedError:
        return True
    return False


def test_what_does_not_end_within_the_grace_is_cut(tmp_path: Path) -> None:
    head = b"POST /v1/sizing HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\ncontent-length: 2\r\n\r\n"
    with serving(tmp_path / "log", KILISHO_GRACE_SECONDS="1") as server, socket.create_connection(("127.0.0.1", server.port)) as connection:
        connection.settimeout(SECONDS)
        connection.sendall(head + b"{")
        httpx.get(f"{server.url}/health", timeout=SECONDS)  # by now the first request has been taken up
        server.process.send_signal(signal.SIGTERM)
        until(lambda: ended(server))
        assert not connection.recv(1000).startswith(b"HTTP/1.1 200")


def test_workers_leave_when_their_supervisor_is_killed(tmp_path: Path) -> None:
    with serving(tmp_path / "log", "--workers", "2") as server:
        server.process.kill()
        server.process.wait(timeout=SECONDS)
        until(lambda: refuses(server))
