"""The rate of a caller through the committed nginx configuration: nothing that it says of itself gives it another one."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import ExitStack
from pathlib import Path

import httpx
import pytest
from tests.api.running import free_port, serving
from tests.operations.test_rolling_restart import NGINX, proxy

PAGE = "/v1/rulebook"
# Two replicas, each with its own count.
RATE, ALLOWED = "3/hour", 6
MADE_UP = ("X-Forwarded-For", "Forwarded", "X-Real-IP", "Client-IP", "True-Client-IP", "X-Client-IP")
pytestmark = pytest.mark.skipif(not Path(NGINX).exists(), reason="nginx is not installed")


@pytest.fixture
def proxied(tmp_path: Path) -> Iterator[int]:
    """The port of the proxy before two replicas that believe it."""
    environment = {"KILISHO_RATE_LIMIT": RATE, "KILISHO_TRUSTED_PROXIES": "127.0.0.1"}
    with ExitStack() as ends:
        servers = [ends.enter_context(serving(tmp_path / f"log{number}", port=free_port(), **environment)) for number in range(2)]
        yield ends.enter_context(proxy(tmp_path, [server.port for server in servers]))


def answered(port: int, times: int, from_address: str, made_up: tuple[str, ...] = ()) -> int:
    """How many of so many requests from an address of this machine are answered; the rest must have been turned away for their rate."""
    with httpx.Client(transport=httpx.HTTPTransport(local_address=from_address), timeout=60) as client:
        told = [
            client.get(f"http://127.0.0.1:{port}{PAGE}", headers=dict.fromkeys(made_up, f"192.0.2.{place}")).status_code
            for place in range(times)
        ]
    assert set(told) <= {200, 429}
    return told.count(200)


def test_a_caller_who_makes_up_addresses_has_one_rate(proxied: int) -> None:
    assert answered(proxied, 3 * ALLOWED, "127.0.0.1", MADE_UP) == ALLOWED


def test_each_caller_behind_the_proxy_has_a_rate_of_its_own(proxied: int) -> None:
    """Else one of them would use up what all have."""
    for address in ("127.0.0.2", "127.0.0.3"):
        assert answered(proxied, 2 * ALLOWED, address) == ALLOWED
