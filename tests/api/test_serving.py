"""Starting and stopping: light, and with words for everything that can be wrong. How soon is measured in tests/load/compare.py."""

from __future__ import annotations

import os
import re
import signal
import socket
import subprocess
import sys
from collections.abc import Mapping
from pathlib import Path

import httpx
import pytest
from tests.api.asking import ask
from tests.api.running import KILISHO, free_port, serving

from kilisho.questions import Question

# 110 after start; the solver of feed mixes adds 45, a year of the process model in 70 columns and its charges another 45,
# and the contract 75: its examples load the libraries of calendars, pages, drawings and tables.
LARGEST_RESIDENT_MEGABYTES = 310


def _refused(*options: str, **environment: str) -> str:
    """What `kilisho serve` says when it cannot start."""
    clean = {name: value for name, value in os.environ.items() if not name.startswith("KILISHO_")}
    done = subprocess.run([*KILISHO, "serve", *options], env=clean | environment, capture_output=True, text=True, timeout=30, check=False)
    assert done.returncode == 2, done
    assert "Traceback" not in done.stderr
    assert done.stdout == ""
    return done.stderr


def test_it_is_light_after_every_question_was_asked(tmp_path: Path, questions: Mapping[str, Question]) -> None:
    """A service of its own: the one that tests share has also read whatever tables and faults came before."""
    with serving(tmp_path / "log") as server, httpx.Client(base_url=server.url, timeout=30) as client:
        for name, question in questions.items():
            assert ask(client, name, question.example, explain="true").status_code == 200
        assert client.get("/openapi.json").status_code == 200
        assert _resident_megabytes(server.process.pid) < LARGEST_RESIDENT_MEGABYTES


def _resident_megabytes(pid: int) -> float:
    found = re.search(r"VmRSS:\s+(\d+) kB", Path(f"/proc/{pid}/status").read_text())
    assert found is not None
    return int(found[1]) / 1000


def test_starting_loads_neither_pint_nor_scipy() -> None:
    program = (
        "import sys; from kilisho_api.app import create_app; from kilisho_api.settings import Settings; create_app(Settings());"
        "print(sorted({'pint', 'scipy', 'pandas', 'jinja2'} & sys.modules.keys()))"
    )
    assert subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True).stdout == "[]\n"


def test_settings_that_cannot_be_used_are_all_told() -> None:
    told = _refused("--port", "http", KILISHO_WORKERS="none")
    assert "KILISHO_PORT: expected a whole number from 1 to 65535" in told
    assert "KILISHO_WORKERS: expected a whole number from 1 to 64" in told


@pytest.mark.parametrize("workers", ["1", "2"])
def test_broken_packs_are_told_with_file_and_line(tmp_path: Path, workers: str) -> None:
    pack = tmp_path / "region.yaml"
    pack.write_text("pack: {id: region, version: 0.0.1, title: A region}\nsubstrates:\n  cattle_dung:\n    total_solid: {typical: 1}\n")
    told = _refused("--port", str(free_port()), "--workers", workers, "--packs", str(pack))
    assert f"{pack}:4: substrates.cattle_dung.total_solid: no such key here" in told
    assert told.count("no such key here") == 1


def test_a_pack_that_is_not_there_is_told() -> None:
    assert "nowhere.yaml" in _refused("--port", str(free_port()), KILISHO_PACKS="nowhere.yaml")


def test_a_taken_port_is_told() -> None:
    with socket.create_server(("127.0.0.1", 0)) as taken:
        port = taken.getsockname()[1]
        assert f"cannot listen on 127.0.0.1 port {port}: another program listens there" in _refused("--port", str(port))


def test_a_host_that_is_not_this_machine_is_told() -> None:
    assert "cannot listen on 192.0.2.1 port 8080" in _refused("--host", "192.0.2.1")
    assert "cannot listen on no.such.host.invalid" in _refused("--host", "no.such.host.invalid")


@pytest.mark.parametrize("order", [signal.SIGTERM, signal.SIGINT])
def test_it_stops_when_told_without_a_trace(tmp_path: Path, order: signal.Signals) -> None:
    with serving(tmp_path / "log") as server:
        server.process.send_signal(order)
        server.process.wait(timeout=10)
    assert "Traceback" not in (tmp_path / "log").read_text()


def test_a_request_that_is_under_way_is_answered_before_it_stops(tmp_path: Path) -> None:
    body = b"{}"
    head = b"POST /v1/sizing HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\ncontent-length: %d\r\n\r\n" % len(body)
    with serving(tmp_path / "log") as server, socket.create_connection(("127.0.0.1", server.port), timeout=10) as connection:
        connection.sendall(head + body[:1])
        httpx.get(f"{server.url}/health")  # by now the first request has been taken up
        server.process.send_signal(signal.SIGTERM)
        connection.sendall(body[1:])
        assert connection.recv(100).startswith(b"HTTP/1.1 422")


def test_two_workers_answer_and_count_together(tmp_path: Path, questions: Mapping[str, Question]) -> None:
    with serving(tmp_path / "log", "--workers", "2") as server:
        for _ in range(20):
            with httpx.Client(base_url=server.url) as client:  # a connection of its own, so that either worker may take it
                assert ask(client, "sizing", questions["sizing"].example).status_code == 200
        figures = httpx.get(f"{server.url}/metrics").text
    assert 'kilisho_requests_total{method="POST",operation="/v1/sizing",status="200"} 20.0' in figures
    assert "Traceback" not in (tmp_path / "log").read_text()


def test_packs_are_laid_over_the_base_pack(tmp_path: Path) -> None:
    pack = tmp_path / "farm.yaml"
    pack.write_text(
        "pack: {id: measured, version: 0.0.1, title: Measured on an invented farm}\n"
        "substrates: {cattle_dung: {total_solids: {typical: 12.5, unit: '%', basis: judgement}}}\n"
    )
    with serving(tmp_path / "log", KILISHO_PACKS=str(pack)) as server, httpx.Client(base_url=server.url) as client:
        dung = client.get("/v1/substrates/cattle_dung").json()
        assert (dung["total_solids"]["typical"], dung["total_solids"]["unit"]) == (12.5, "%")
        assert dung["rulebook"]["id"] == "base_measured"
        assert client.get("/ready").json()["rulebook"] == dung["rulebook"]
