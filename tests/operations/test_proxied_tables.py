"""Tables through the committed nginx configuration: larger than any question may be, and as they come in both directions."""

from __future__ import annotations

import socket
from collections.abc import Iterator
from contextlib import ExitStack
from pathlib import Path

import httpx
import pytest
from tests.api.running import free_port, serving
from tests.operations.loading import until
from tests.operations.test_rolling_restart import NGINX, proxy

from kilisho_api.settings import Settings
from kilisho_api.table_types import CSV
from kilisho_api.tables import NAME

PATH = f"/v1/{NAME}"
LINE = b"INV-1,fixed_dome,9\n"
HEAD = b"id,structure,total_volume\n"
pytestmark = pytest.mark.skipif(not Path(NGINX).exists(), reason="nginx is not installed")


@pytest.fixture
def proxied(tmp_path: Path) -> Iterator[tuple[str, list[str], Path]]:
    """The address of the proxy, those of two replicas that take a table at a time, and the proxy's folder."""
    folder = tmp_path / "proxy"
    folder.mkdir()
    with ExitStack() as ends:
        environment = {"KILISHO_TABLES_AT_ONCE": "1", "KILISHO_TABLE_FOLDER": str(tmp_path)}
        servers = [ends.enter_context(serving(tmp_path / f"log{number}", port=free_port(), **environment)) for number in range(2)]
        port = ends.enter_context(proxy(folder, [server.port for server in servers]))
        yield f"http://127.0.0.1:{port}", [server.url for server in servers], folder


def post(address: str, body: bytes | Iterator[bytes], path: str = PATH) -> httpx.Response:
    return httpx.post(f"{address}{path}", content=body, headers={"content-type": CSV}, timeout=60)


def test_a_table_larger_than_a_question_goes_through_and_no_question_does(proxied: tuple[str, list[str], Path]) -> None:
    address, _, folder = proxied
    rows = 4 * Settings().largest_body // len(LINE)
    for body in (HEAD + LINE * rows, (part for part in (HEAD, *[LINE * 1000] * (rows // 1000), LINE * (rows % 1000)))):
        answer = post(address, body)
        assert answer.status_code == 200, answer.text[:500]
        assert answer.content.count(b"\r\n") == rows + 1
    assert post(address, HEAD + LINE * rows, "/v1/first-charge").status_code == 413
    assert not [path for path in folder.rglob("*") if path.is_file() and path.parent.name in ("body", "answers")]
    assert "buffered to a temporary file" not in (folder / "nginx.log").read_text()


def test_a_replica_has_what_was_sent_before_the_rest_comes(proxied: tuple[str, list[str], Path]) -> None:
    """Else the proxy would keep the whole table first, in a folder that is too small for it."""
    address, replicas, _ = proxied
    url = httpx.URL(address)
    with socket.create_connection((url.host, url.port or 80)) as half:
        half.sendall(f"POST {PATH} HTTP/1.1\r\nHost: a\r\nContent-Type: {CSV}\r\nContent-Length: 1000000\r\n\r\n".encode() + HEAD)
        until(lambda: sorted(post(one, HEAD + LINE).status_code for one in replicas) == [200, 503])
    until(lambda: [post(one, HEAD + LINE).status_code for one in replicas] == [200, 200])


def test_a_table_of_more_bytes_than_the_setting_is_refused_by_its_length_alone(proxied: tuple[str, list[str], Path]) -> None:
    address, _, _ = proxied
    for more, expected in ((1, b"413"), (0, b"")):
        url = httpx.URL(address)
        with socket.create_connection((url.host, url.port or 80), timeout=10) as sending:
            length = Settings().largest_table + more
            sending.sendall(f"POST {PATH} HTTP/1.1\r\nHost: a\r\nContent-Type: {CSV}\r\nContent-Length: {length}\r\n\r\n".encode())
            sending.settimeout(10 if more else 1)
            try:
                found = sending.recv(100)
            except TimeoutError:
                found = b""
            assert expected in found[:20]
            assert bool(found) == bool(more)
