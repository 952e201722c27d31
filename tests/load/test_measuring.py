"""The benchmark's own parts, so that its figures can be believed. The benchmark itself is no test: it measures a machine's hour."""

from __future__ import annotations

import json
import os
import shutil
import threading
from collections.abc import Iterator
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

import pytest
from tests.load.bodies import bodies, loads, operation
from tests.load.compare import ratio, row
from tests.load.engine import microseconds
from tests.load.measuring import LoadError, Round, processor_seconds, read_report, resident_megabytes, run_round

REPORT = 'Running 1s test\n{"requests":500,"microseconds":2000000,"refused":%d,"p50":1500,"p99":12000}\n'


class Answering(BaseHTTPRequestHandler):
    """Sends a body back, or refuses it when it is empty."""

    protocol_version = "HTTP/1.1"

    def do_POST(self) -> None:
        body = self.rfile.read(int(self.headers["Content-Length"]))
        self.send_response(200 if self.path == "/good" else 503)
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        self.wfile.write(body)

    def log_message(self, *_: object) -> None:
        pass


@pytest.fixture
def address() -> Iterator[str]:
    server = ThreadingHTTPServer(("127.0.0.1", 0), Answering)
    threading.Thread(target=server.serve_forever).start()
    yield f"http://127.0.0.1:{server.server_port}"
    server.shutdown()
    server.server_close()


def test_a_report_becomes_rates_milliseconds_and_processor_time() -> None:
    assert read_report(REPORT % 0, processor_used=0.25) == Round(per_second=250, p50=1.5, p99=12, processor=500)


def test_a_load_with_a_refused_request_is_no_measurement() -> None:
    with pytest.raises(LoadError, match="1 of 500"):
        read_report(REPORT % 1, processor_used=0.25)


@pytest.mark.skipif(shutil.which("wrk") is None, reason="needs wrk")
def test_wrk_posts_the_body_and_hands_over_its_numbers(address: str, tmp_path: Path) -> None:
    taken = run_round(f"{address}/good", b'{"name": "an invented farm"}', 1, os.getpid(), tmp_path)
    assert taken.per_second > 1
    assert 0 < taken.p50 <= taken.p99
    assert taken.processor > 0


@pytest.mark.skipif(shutil.which("wrk") is None, reason="needs wrk")
def test_a_server_that_refuses_is_told(address: str, tmp_path: Path) -> None:
    with pytest.raises(LoadError, match="requests failed"):
        run_round(f"{address}/bad", b"{}", 1, os.getpid(), tmp_path)


def test_the_ratio_is_the_median_of_rounds_taken_together() -> None:
    mine, echo = ([Round(rate, 1, 2, 3) for rate in rates] for rates in ((100, 10, 60), (200, 20, 80)))
    assert ratio(mine, echo) == 0.5


def test_a_row_shows_the_service_and_what_it_is_compared_with() -> None:
    rounds = [[Round(rate, 1.25, 9.5, cost)] for rate, cost in ((100, 900), (400, 300), (1000, 100))]
    assert row("sizing", (10, 20, 30), rounds) == ("sizing", 10, 20, 30, "100", "0.25", "0.10", "1.2", "9.5", "900", "300/100")


def test_a_process_is_read_from_the_kernel() -> None:
    began = processor_seconds(os.getpid())
    assert sum(range(3_000_000)) > 0
    assert processor_seconds(os.getpid()) > began
    assert 5 < resident_megabytes(os.getpid()) < 5000


def test_micro_times_grow_with_the_work() -> None:
    assert 0 < microseconds(lambda: sum(range(10)), 100) < microseconds(lambda: sum(range(10_000)), 100)


def test_there_is_an_example_for_every_load(tmp_path: Path) -> None:
    (tmp_path / "askFirstCharge.request.json").write_text("{}")
    assert bodies(tmp_path) == {"first-charge": b"{}"}
    with pytest.raises(FileNotFoundError, match=r"request\.json"):
        bodies(tmp_path / "absent")


def test_a_farm_plan_is_measured_with_and_without_its_forecast() -> None:
    measured, examples = loads(), bodies()
    assert measured["farm-plan"] == examples["farm-plan"]
    without = json.loads(measured["farm-plan-without-forecast"])
    assert without == json.loads(examples["farm-plan"]) | {"with_forecast": False}
    assert operation("farm-plan-without-forecast") == operation("farm-plan") == "farm-plan"
    assert {operation(name) for name in measured} == set(examples)
