"""The head of a request has an end: whoever goes on is hung up on, and what was gathered of it is given back."""

from __future__ import annotations

import socket
import time
from collections.abc import Iterator
from http.client import HTTPConnection

import pytest
from tests.api.running import Server, serving
from tests.load.measuring import resident_megabytes

from kilisho_api.heads import LARGEST_HEAD

START = b"POST /v1/sizing HTTP/1.1\r\nhost: localhost\r\n"
CHUNKED = START + b"content-type: application/json\r\ntransfer-encoding: chunked\r\n\r\n"
# What goes on for ever, and how: each a start and what follows it again and again.
ENDLESS = {
    "a target": (b"GET /", b"a" * 1000),
    "a name": (START, b"x" * 1000),
    "a value": (START + b"x-one: ", b"a" * 1000),
    "many headers": (START, b"x-one: " + b"a" * 1000 + b"\r\n"),
    "small headers": (START, b"x: a\r\n" * 200),
    "an extension of a chunk": (CHUNKED + b"1;", b"a" * 1000),
    "trailers": (CHUNKED + b"0\r\n", b"x-one: " + b"a" * 1000 + b"\r\n"),
}
MOST_SENT = 60_000_000


@pytest.fixture(scope="module")
def alone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Server]:
    """A server that no other test uses, so that its memory is what was done to it here."""
    with serving(tmp_path_factory.mktemp("heads") / "log") as server:
        yield server


def sent_until_hung_up(port: int, start: bytes, again: bytes) -> tuple[int, bytes]:
    """How many bytes a server took of an endless request, and what it answered."""
    with socket.create_connection(("127.0.0.1", port), timeout=30) as connection:
        count = _pour(connection, start, again * (20_000 // len(again)))
        try:
            return count, connection.recv(1000)
        except ConnectionError:
            return count, b""


def _pour(connection: socket.socket, start: bytes, piece: bytes) -> int:
    count = len(start)
    try:
        connection.sendall(start)
        while count < MOST_SENT:
            connection.sendall(piece)
            count += len(piece)
    except ConnectionError:
        pass
    return count


@pytest.mark.parametrize("kind", ENDLESS)
def test_whoever_never_ends_its_head_is_hung_up_on(alone: Server, kind: str) -> None:
    count, answer = sent_until_hung_up(alone.port, *ENDLESS[kind])
    # What lies in the buffers of the connection was sent and never read.
    assert LARGEST_HEAD < count < MOST_SENT / 2
    assert not answer or answer.split(b" ")[1] in (b"431", b"400", b"413", b"422")


def test_endless_heads_fill_no_memory(alone: Server) -> None:
    before = resident_megabytes(alone.process.pid)
    for _ in range(20):
        sent_until_hung_up(alone.port, *ENDLESS["many headers"])
    assert resident_megabytes(alone.process.pid) - before < 15


def asked(port: int, headers: dict[str, str], body: bytes = b"{}") -> int:
    connection = HTTPConnection("127.0.0.1", port, timeout=30)
    try:
        connection.request("POST", "/v1/safety-check", body, {"Content-Type": "application/json", **headers})
        return connection.getresponse().status
    finally:
        connection.close()


def test_a_head_that_is_just_small_enough_is_answered(alone: Server) -> None:
    assert asked(alone.port, {f"x-{number}": "a" * 1000 for number in range(LARGEST_HEAD // 1100)}) == 200


def test_a_refusal_is_told(alone: Server) -> None:
    with socket.create_connection(("127.0.0.1", alone.port), timeout=30) as connection:
        connection.sendall(START + b"x-one: " + b"a" * (LARGEST_HEAD - len(START)))
        time.sleep(0.2)  # so that no byte is left unread, which would reset the connection
        connection.sendall(b"a" * 20)
        assert connection.recv(100).startswith(b"HTTP/1.1 431 ")


def test_bodies_are_no_part_of_it(alone: Server) -> None:
    assert asked(alone.port, {}, b"{}" + b" " * (LARGEST_HEAD * 5)) == 200


def test_requests_after_each_other_are_counted_each_by_itself(alone: Server) -> None:
    connection = HTTPConnection("127.0.0.1", alone.port, timeout=30)
    for _ in range(5):
        connection.request("GET", "/health", headers={"x-one": "a" * (LARGEST_HEAD // 2)})
        answer = connection.getresponse()
        assert (answer.status, bool(answer.read())) == (200, True)
    connection.close()


def test_a_body_in_many_small_chunks_is_answered(alone: Server) -> None:
    with socket.create_connection(("127.0.0.1", alone.port), timeout=30) as connection:
        chunks = b"1\r\n \r\n" * (LARGEST_HEAD // 4)
        connection.sendall(CHUNKED.replace(b"sizing", b"safety-check") + chunks + b"2\r\n{}\r\n0\r\n\r\n")
        assert connection.recv(100).startswith(b"HTTP/1.1 200 ")


def test_the_server_is_well_after_all_that(alone: Server) -> None:
    assert asked(alone.port, {}) == 200
    assert "Traceback" not in alone.log.read_text()
