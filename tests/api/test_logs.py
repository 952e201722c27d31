"""The log: one object or one line for each record, with the request's ids, and nothing of a caller's that could forge another."""

from __future__ import annotations

import json
import logging
import re
import sys
import uuid
from collections.abc import Iterator
from datetime import datetime
from pathlib import Path
from typing import Any

import httpx
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.api.running import serving

from kilisho_api.log_context import telling, told
from kilisho_api.logs import JsonLines, TextLines, fields, moment

TRACE, SPAN = "4bf92f3577b34da6a3ce929d0e0e4736", "00f067aa0ba902b7"
FORGED = "x\n2027-01-01T00:00:00Z ERROR kilisho.api: forged\r\x1b[31m\u2028\x00\x85"


def record(message: str, *arguments: object, **more: Any) -> logging.LogRecord:
    return logging.getLogger("kilisho.test").makeRecord(
        "kilisho.test", logging.ERROR, "f", 1, message, arguments, more.pop("failed", None), **more
    )


def failure(text: str) -> Any:
    try:
        raise ValueError(text)
    except ValueError:
        return sys.exc_info()


def test_a_record_is_one_object() -> None:
    with telling(request_id="r", trace_id=TRACE):
        line = JsonLines().format(record("took %d s", 3, extra=fields(status=200, seconds=0.5)))
    read = json.loads(line)
    assert datetime.fromisoformat(read.pop("time")).tzinfo is not None
    assert read == {
        "level": "error",
        "logger": "kilisho.test",
        "message": "took 3 s",
        "request_id": "r",
        "trace_id": TRACE,
        "status": 200,
        "seconds": 0.5,
    }


def test_outside_of_a_request_nothing_is_told_of_one() -> None:
    with telling(request_id="r"), telling(span_id="s"):
        assert told() == {"request_id": "r", "span_id": "s"}
    assert told() == {}
    assert json.loads(JsonLines().format(record("m"))).keys() == {"time", "level", "logger", "message"}


def test_an_exception_is_told_within_its_record() -> None:
    read = json.loads(JsonLines().format(record("failed", failed=failure(FORGED))))
    assert read["exception"].startswith("Traceback")
    assert FORGED in read["exception"]


def test_nothing_that_is_sent_begins_a_line_of_text() -> None:
    lines = TextLines().format(record("failed on %s", FORGED, failed=failure(FORGED))).split("\n")
    assert re.match(r"[\d-]+T[\d:.]+Z ERROR kilisho\.test: failed on x\\n2027", lines[0])
    assert all(line.startswith("    ") for line in lines[1:])
    assert any("ERROR kilisho.api: forged" in line for line in lines[1:])


@given(st.text())
@pytest.mark.parametrize("formatter", [JsonLines(), TextLines()], ids=["json", "text"])
def test_whatever_is_logged_is_one_line_that_can_be_written(formatter: logging.Formatter, text: str) -> None:
    line = formatter.format(record("%s", text))
    assert line.splitlines() == [line]
    assert line.encode("utf-8")


@pytest.mark.parametrize(("seconds", "written"), [(0, "1970-01-01T00:00:00.000Z"), (1_700_000_000.25, "2023-11-14T22:13:20.250Z")])
def test_a_moment_is_written_in_utc(seconds: float, written: str) -> None:
    assert moment(seconds) == written


@pytest.fixture(scope="module")
def log(tmp_path_factory: pytest.TempPathFactory) -> Iterator[list[dict[str, Any]]]:
    """What a service logs, as JSON, of three requests."""
    file: Path = tmp_path_factory.mktemp("json") / "log"
    with (
        serving(file, KILISHO_LOG_FORMAT="json", KILISHO_ACCESS_LOG="on") as server,
        httpx.Client(base_url=server.url, timeout=60) as client,
    ):
        client.get("/v1/substrates/cattle_dung", headers={"traceparent": f"00-{TRACE}-{SPAN}-01", "x-request-id": str(uuid.UUID(int=7))})
        client.get("/secret/%0aforged?token=secret", headers={"traceparent": "00-no"})
        client.request("BREW", "/health")
    return [json.loads(line) for line in file.read_text().splitlines()]


def accesses(log: list[dict[str, Any]]) -> list[dict[str, Any]]:
    return [line for line in log if line["logger"] == "kilisho.access" and line["operation"] != "/health"]


def test_every_line_of_a_service_is_an_object_the_servers_own_too(log: list[dict[str, Any]]) -> None:
    assert {"uvicorn.error", "kilisho.access"} <= {line["logger"] for line in log}
    assert all({"time", "level", "logger", "message"} <= line.keys() for line in log)


def test_the_access_log_tells_the_operation_and_goes_on_with_the_callers_trace(log: list[dict[str, Any]]) -> None:
    line = accesses(log)[0]
    assert (line["method"], line["operation"], line["status"]) == ("GET", "/v1/substrates/{id}", 200)
    assert line["bytes"] > 500
    assert line["seconds"] > 0
    assert (line["request_id"], line["trace_id"]) == (str(uuid.UUID(int=7)), TRACE)
    assert line["span_id"] != SPAN


def test_the_access_log_holds_no_address_that_a_caller_made_up(log: list[dict[str, Any]]) -> None:
    line = accesses(log)[1]
    assert (line["operation"], line["status"]) == ("unknown", 404)
    assert re.fullmatch(r"[0-9a-f]{32}", line["trace_id"])
    assert "secret" not in json.dumps(log)
    assert "BREW" not in json.dumps(log)


def test_without_the_setting_no_request_is_logged(tmp_path: Path) -> None:
    with serving(tmp_path / "log") as server:
        httpx.get(f"{server.url}/v1/substrates", timeout=60)
    text = (tmp_path / "log").read_text()
    assert "Started server process" in text
    assert "kilisho.access" not in text
