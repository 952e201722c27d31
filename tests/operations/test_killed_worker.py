"""A worker that is killed takes its own requests with it and nothing else."""

from __future__ import annotations

import os
import signal
import time
from pathlib import Path

import httpx
import pytest
from tests.api.running import serving
from tests.operations.loading import SECONDS, under_load, until
from tests.operations.workers import alive

CALLERS = 4


def test_a_killed_worker_loses_only_what_it_had_in_hand_and_is_replaced(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    with serving(tmp_path / "log", "--workers", "2") as server, under_load(server.port, CALLERS) as load:
        until(lambda: "Started" in server.log.read_text())
        killed, other = alive(server)
        begun = time.perf_counter()
        os.kill(killed, signal.SIGKILL)
        load.wait_for(1)
        answered = time.perf_counter() - begun
        until(lambda: f"worker {killed} died (-9)" in server.log.read_text() and len(alive(server)) == 2)
        started = time.perf_counter() - begun
        assert killed not in alive(server)
        assert other in alive(server)
        load.wait_for(5 * CALLERS)
    assert len(load.lost) <= CALLERS
    assert load.statuses.keys() == {200}
    assert load.refused == 0
    with capsys.disabled():
        print(f"\nnext answer {answered:.3f} s after the kill, a new worker started after {started:.3f} s, {len(load.lost)} requests lost")


def test_the_only_figures_that_are_lost_are_those_of_what_was_under_way(tmp_path: Path) -> None:
    with serving(tmp_path / "log", "--workers", "2") as server:
        for _ in range(10):
            httpx.get(f"{server.url}/health", timeout=SECONDS)
        before = _figures(server.url)
        os.kill(alive(server)[0], signal.SIGKILL)
        until(lambda: "died" in server.log.read_text() and len(alive(server)) == 2)
        after = _figures(server.url)
    assert after['kilisho_requests_total{method="GET",operation="/health",status="200"}'] >= 10
    assert after.items() >= {name: count for name, count in before.items() if 'operation="/health",status' in name}.items()
    assert after["kilisho_requests_in_progress"] == 1


def _figures(url: str) -> dict[str, float]:
    lines = httpx.get(f"{url}/metrics", timeout=SECONDS).text.splitlines()
    return {name: float(value) for name, _, value in (line.rpartition(" ") for line in lines if not line.startswith("#"))}


def test_a_worker_that_dies_while_the_service_starts_is_replaced(tmp_path: Path) -> None:
    with serving(tmp_path / "log", "--workers", "2") as server:
        for _ in range(2):
            newest = alive(server)[-1]
            os.kill(newest, signal.SIGKILL)
            until(lambda gone=newest: f"worker {gone} died" in server.log.read_text() and len(alive(server)) == 2)
        assert httpx.get(f"{server.url}/health", timeout=SECONDS).status_code == 200
