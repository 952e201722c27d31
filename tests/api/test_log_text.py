"""What callers send never reaches the log as they sent it: no line of its own, no colours, nothing that a terminal obeys."""

from __future__ import annotations

import dataclasses
import logging
import re
import socket
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any

import httpx
import pytest
from litestar.testing import TestClient
from tests.api.asking import JSON_BODY
from tests.api.running import Server, serving

from kilisho.packs import Rulebook
from kilisho.questions import Question
from kilisho_api.app import assemble
from kilisho_api.escaping import escaped
from kilisho_api.logs import TextLines
from kilisho_api.settings import Settings

FORGED = "2027-01-01 00:00:00,000 INFO kilisho.api: FORGED"
NASTY = (
    "\x1b[31mFORGED\x1b[0m",
    "\x1b]0;FORGED\x07",
    "a\rFORGED",
    "a\nFORGED",
    "FORGED\x00",
    "\x7fFORGED",
    "\x9b31mFORGED",
    "\u2028FORGED\u202e",
)
ENCODED = ("%1b[31mFORGED", "%0d%0aFORGED", "%00FORGED", "%e2%80%a8FORGED", "%c2%9b31mFORGED")
CONTROL = re.compile(r"[\x00-\x09\x0b-\x1f\x7f-\x9f\u2028\u2029\u202a-\u202e\u2066-\u2069]")


@pytest.fixture(scope="module")
def logged(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Server]:
    """A server that logs all that it ever does."""
    with serving(tmp_path_factory.mktemp("log") / "log", KILISHO_LOG_LEVEL="debug") as server:
        yield server


def send_raw(server: Server, data: bytes) -> bytes:
    """What comes back for bytes that no client library would send."""
    with socket.create_connection(("127.0.0.1", server.port), timeout=10) as connection:
        connection.sendall(data)
        connection.shutdown(socket.SHUT_WR)
        found = b""
        while part := connection.recv(65_536):
            found += part
    return found


def assert_nothing_got_in(server: Server, before: int) -> None:
    text = server.log.read_bytes()[before:].decode("utf-8")
    assert "FORGED" not in text
    assert not CONTROL.search(text)
    assert "Traceback" not in text
    assert httpx.get(f"{server.url}/health").status_code == 200


def raw_requests(text: bytes) -> dict[str, bytes]:
    """Requests that carry ``text`` where HTTP has a place for it."""
    body = b"content-length: 2\r\n\r\n{}"
    return {
        "method": b"GE" + text + b" /health HTTP/1.1\r\nhost: x\r\n\r\n",
        "path": b"GET /v1/" + text + b" HTTP/1.1\r\nhost: x\r\n\r\n",
        "query": b"GET /health?" + text + b"=1 HTTP/1.1\r\nhost: x\r\n\r\n",
        "version": b"GET /health HTTP/" + text + b"\r\nhost: x\r\n\r\n",
        "name of a header": b"GET /health HTTP/1.1\r\nhost: x\r\n" + text + b": 1\r\n\r\n",
        "header": b"GET /health HTTP/1.1\r\nhost: x\r\nuser-agent: " + text + b"\r\n\r\n",
        "host": b"GET /health HTTP/1.1\r\nhost: " + text + b"\r\n\r\n",
        "request id": b"GET /health HTTP/1.1\r\nhost: x\r\nx-request-id: " + text + b"\r\n\r\n",
        "key": b"GET /health HTTP/1.1\r\nhost: x\r\nauthorization: Bearer " + text + b"\r\n\r\n",
        "forwarded": b"GET /health HTTP/1.1\r\nhost: x\r\nx-forwarded-for: " + text + b"\r\n\r\n",
        "upgrade": b"GET /health HTTP/1.1\r\nhost: x\r\nconnection: upgrade\r\nupgrade: " + text + b"\r\n\r\n",
        "type": b"POST /v1/sizing HTTP/1.1\r\nhost: x\r\ncontent-type: " + text + b"\r\n" + body,
    }


@pytest.mark.parametrize("text", NASTY, ids=map(ascii, NASTY))
def test_raw_bytes_of_a_request_never_reach_the_log(logged: Server, text: str) -> None:
    before = logged.log.stat().st_size
    for place, data in raw_requests(text.encode()).items():
        answer = send_raw(logged, data)
        assert b"\x1b" not in answer, place
        assert not answer.startswith(b"HTTP/1.1 5"), place
    assert_nothing_got_in(logged, before)


@pytest.mark.parametrize("text", ENCODED)
def test_what_is_hidden_behind_percent_signs_never_reaches_the_log(logged: Server, text: str) -> None:
    before = logged.log.stat().st_size
    for target in (f"/{text}", f"/v1/substrates/{text}", f"/problems/{text}", f"/health?{text}=1", f"/health?a={text}", f"/docs/{text}"):
        answer = send_raw(logged, f"GET {target} HTTP/1.1\r\nhost: x\r\nconnection: close\r\n\r\n".encode())
        assert answer.split(b" ", 2)[1] in (b"200", b"400", b"404", b"422"), target
        assert not re.search(rb"[\x00-\x08\x0b\x0c\x0e-\x1f\x7f]", answer), target
    assert_nothing_got_in(logged, before)


@pytest.mark.parametrize("text", NASTY, ids=map(ascii, NASTY))
def test_what_stands_in_a_body_never_reaches_the_log(logged: Server, questions: Mapping[str, Question], text: str) -> None:
    before = logged.log.stat().st_size
    for name, question in questions.items():
        for body in ({text: 1}, {**question.example, "name": text}, {"feed": [{"substrate": text}]}):
            answer = httpx.post(f"{logged.url}/v1/{name}", json=body, headers=JSON_BODY, timeout=60) if not question.slow else None
            assert answer is None or answer.status_code in (200, 422)
    assert_nothing_got_in(logged, before)


# ---- our own failures, whose words may hold a caller's text ------------------------------------------------------------------------


@pytest.mark.parametrize("text", [*NASTY, f"x\n{FORGED}"], ids=ascii)
def test_a_failure_that_repeats_a_callers_text_is_logged_on_lines_of_its_own(
    rulebook: Rulebook, questions: Mapping[str, Question], text: str, tmp_path: Path
) -> None:
    def failing(_request: Any, _explain: bool) -> dict[str, Any]:
        raise RuntimeError(text)

    handler = logging.FileHandler(tmp_path / "log", encoding="utf-8")
    handler.setFormatter(TextLines())
    logger = logging.getLogger("kilisho.api")
    logger.addHandler(handler)
    try:
        broken = {"sizing": dataclasses.replace(questions["sizing"], answer=failing)}
        with TestClient(assemble(Settings(), rulebook, broken), raise_server_exceptions=False) as client:
            answer = client.post("/v1/sizing", json=broken["sizing"].example)
    finally:
        logger.removeHandler(handler)
        handler.close()
    assert answer.status_code == 500
    assert "FORGED" not in answer.text
    written = (tmp_path / "log").read_bytes().decode("utf-8")
    assert not CONTROL.search(written)
    first, *others = written.splitlines()
    assert re.match(r"[\d-]+T[\d:.]+Z ERROR kilisho\.api: request [0-9a-f-]{36} failed", first)
    assert "Traceback" in others[0]
    assert all(line.startswith("    ") for line in others)


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("plain", "plain"),
        ("Vidokezo — ąč 牛", "Vidokezo — ąč 牛"),
        ("a\nb", "a\\nb"),
        ("a\r\n\tb", "a\\r\\n\\tb"),
        ("\x1b[31m", "\\x1b[31m"),
        ("\x00\x7f\x9b", "\\x00\\x7f\\x9b"),
        ("\u2028\u202e\ud800", "\\u2028\\u202e\\ud800"),
        ("back\\slash", "back\\slash"),
    ],
)
def test_text_is_shown_with_what_a_terminal_obeys_written_out(text: str, shown: str) -> None:
    assert escaped(text) == shown
    assert not CONTROL.search(escaped(text))
