"""Addresses that are too long to be any of ours: answered as any other that is not there, and not remembered."""

from __future__ import annotations

import asyncio
import gc
import tracemalloc

import httpx
import pytest
from tests.api.asking import problem
from tests.fuzz.targets import exchange

from kilisho_api.app import create_app
from kilisho_api.catalogue import NAMES
from kilisho_api.layers import App
from kilisho_api.paths import LONGEST, NOTHING_THERE
from kilisho_api.settings import Settings

# As long as a proxy's request line may be with usual settings, and more of them than the router would keep of shorter ones.
LONG, MANY = 8_000, 1_500


@pytest.fixture(scope="module")
def app() -> App:
    made: App = create_app(Settings())  # type: ignore[assignment]
    return made


# The start of every address that may go on with something of the caller's.
STARTS = ("/", "/v1/", "/docs/", "/problems/", *(f"/v1/{name}/" for name in NAMES))


@pytest.mark.parametrize("start", STARTS)
@pytest.mark.parametrize("more", [1, LONG])
def test_nothing_is_at_a_long_address_and_the_refusal_is_the_usual_one(client: httpx.Client, start: str, more: int) -> None:
    long = client.get(start + "a" * (LONGEST + more - len(start)))
    short = client.get(start + "a" * (LONGEST - len(start)))
    told, _ = (problem(one, 404, "not-found") for one in (long, short))
    assert told["detail"] == str(NOTHING_THERE)


@pytest.mark.parametrize("method", ["POST", "PUT", "HEAD", "OPTIONS"])
def test_whatever_is_to_be_done_there(client: httpx.Client, method: str) -> None:
    assert client.request(method, "/v1/sizing/" + "a" * LONG).status_code == 404


def test_the_language_is_the_callers(client: httpx.Client) -> None:
    answer = client.get("/v1/substrates/" + "a" * LONG, headers={"accept-language": "fr"})
    assert answer.headers["content-language"] == "fr"


def test_a_long_query_is_told_for_what_it_is(client: httpx.Client) -> None:
    answer = client.get("/v1/substrates", params={"a" * LONG: "true"})
    assert problem(answer, 422, "invalid-request")["errors"][0]["code"] == "unknown_parameter"


def test_every_address_of_ours_is_short_enough(client: httpx.Client) -> None:
    contract = client.get("/openapi.json").json()["paths"]
    assert max(len(path.replace("{id}", "a" * 64)) for path in contract) < LONGEST


def test_long_addresses_fill_no_memory(app: App) -> None:
    def asked(number: int) -> int:
        return asyncio.run(exchange(app, b"GET", f"/v1/substrates/{number:0{LONG}}".encode(), [], b""))[0]

    assert asked(0) == 404  # what is made once is made
    tracemalloc.start()
    try:
        before = tracemalloc.get_traced_memory()[0]
        assert {asked(number) for number in range(1, MANY)} == {404}
        gc.collect()
        grown = tracemalloc.get_traced_memory()[0] - before
    finally:
        tracemalloc.stop()
    assert grown < MANY * LONG / 20
