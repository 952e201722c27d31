"""How often a caller may ask: the bucket against plain counting, and the service with keys, addresses and proxies."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Any

import httpx
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.api.asking import problem
from tests.api.running import serving

from kilisho.packs import Rulebook
from kilisho.questions import Question
from kilisho_api.addresses import network_of, read_networks
from kilisho_api.buckets import Buckets, Rate, read_rate
from kilisho_api.keys import Keys, digest_of, line_of, new_key
from kilisho_api.openapi.document import document
from kilisho_api.settings import Settings

GAPS = st.lists(st.integers(0, 64), min_size=1, max_size=60)


class Clock:
    """A clock that is moved by hand."""

    def __init__(self) -> None:
        self.now = 1_000.0

    def __call__(self) -> float:
        return self.now


def plainly(rate: Rate, gaps: list[float]) -> list[bool]:
    """A bucket as textbooks tell it (Tanenbaum, Computer Networks, token bucket; from memory): tokens added as time goes, one taken
    for each request that finds a whole one."""
    tokens, admitted = float(rate.requests), []
    for gap in gaps:
        tokens = min(rate.requests, tokens + gap * rate.requests / rate.seconds)
        admitted.append(tokens >= 1 - 1e-9)
        tokens -= admitted[-1]
    return admitted


@given(requests=st.sampled_from([1, 2, 4, 8, 16]), seconds=st.sampled_from([1, 16, 64]), gaps=GAPS)
def test_it_admits_what_plain_counting_admits(requests: int, seconds: int, gaps: list[int]) -> None:
    rate, clock = Rate(requests, seconds), Clock()
    buckets = Buckets(rate, clock=clock)
    parts = [gap / 16 for gap in gaps]  # sums of sixteenths are exact, so that both sides round nothing
    admitted = []
    for gap in parts:
        clock.now += gap
        admitted.append(buckets.seconds_to_wait("a") == 0)
    assert admitted == plainly(rate, parts)


@given(requests=st.integers(1, 1_000), seconds=st.sampled_from([1, 60, 3_600]), gap=st.floats(0, 10_000))
def test_who_waits_as_told_is_answered_and_who_waits_less_is_not(requests: int, seconds: int, gap: float) -> None:
    clock = Clock()
    buckets = Buckets(Rate(requests, seconds), clock=clock)
    clock.now += gap
    assert all(buckets.seconds_to_wait("a") == 0 for _ in range(requests))
    told = buckets.seconds_to_wait("a")
    assert told == pytest.approx(seconds / requests, rel=1e-6)
    clock.now += told * 0.9
    assert buckets.seconds_to_wait("a") > 0
    clock.now += told * 0.1
    assert buckets.seconds_to_wait("a") == 0
    assert buckets.seconds_to_wait("a") > 0


def test_in_the_long_run_nobody_gets_more_than_the_rate() -> None:
    clock = Clock()
    buckets = Buckets(Rate(30, 60), clock=clock)
    answered = 0
    for _ in range(36_000):  # ten requests a second for an hour
        clock.now += 0.1
        answered += buckets.seconds_to_wait("a") == 0
    assert 30 * 60 <= answered <= 30 * 60 + 30


def test_callers_do_not_take_from_each_other() -> None:
    buckets = Buckets(Rate(2, 60), clock=Clock())
    assert [buckets.seconds_to_wait(caller) == 0 for caller in "aabbab"] == [True, True, True, True, False, False]


def test_inventing_callers_fills_no_memory_and_forgets_the_most_silent_first() -> None:
    buckets = Buckets(Rate(1, 3_600), most=100, clock=Clock())
    for number in range(10_000):
        assert buckets.seconds_to_wait(str(number)) == 0
    assert len(buckets._full_at) == 100
    assert buckets.seconds_to_wait("9999") > 0
    assert buckets.seconds_to_wait("0") == 0


@pytest.mark.parametrize(("text", "requests", "seconds"), [("1/second", 1, 1), ("120/minute", 120, 60), ("1000000/hour", 1_000_000, 3_600)])
def test_rates_are_read(text: str, requests: int, seconds: int) -> None:
    assert read_rate(text) == Rate(requests, seconds)


@pytest.mark.parametrize(
    "text", ["", "0/minute", "-1/minute", "1/day", "120", "1.5/second", "1000001/hour", "9999999/hour", "٣/minute", "1 / hour"]
)
def test_rates_that_are_none_are_told(text: str) -> None:
    with pytest.raises(ValueError, match="such as 120/minute"):
        read_rate(text)


# ---- addresses ----------------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("host", "whom"),
    [
        ("192.0.2.7", "192.0.2.7"),
        ("2001:db8:1:2:3:4:5:6", "2001:db8:1:2::/64"),
        ("2001:db8:1:2::", "2001:db8:1:2::/64"),
        ("2001:db8:1:3::", "2001:db8:1:3::/64"),
        ("::ffff:192.0.2.7", "192.0.2.7"),
        ("fe80::1%eth0", "fe80::/64"),
        ("unix:", "unix:"),
        ("", ""),
        ("x" * 500, "x" * 64),
    ],
)
def test_whom_an_address_stands_for(host: str, whom: str) -> None:
    assert network_of(host) == whom


def test_proxies_are_addresses_or_networks() -> None:
    assert read_networks("10.0.0.7, 10.1.0.0/16,2001:db8::/32") == ("10.0.0.7/32", "10.1.0.0/16", "2001:db8::/32")
    assert read_networks("") == ()
    for wrong in ("*", "proxy.example", "10.0.0.1/8", "10.0.0.0/33", "10.0.0"):
        with pytest.raises(ValueError, match="no host names"):
            read_networks(wrong)


# ---- the service --------------------------------------------------------------------------------------------------------------------

RATE = "3/hour"


def answers(url: str, times: int, page: str = "/v1/rulebook", **headers: str) -> list[int]:
    sent = {name.replace("_", "-"): value for name, value in headers.items()}
    return [httpx.get(url + page, headers=sent).status_code for _ in range(times)]


def test_who_asks_too_often_is_told_when_to_come_again(tmp_path: Path) -> None:
    with serving(tmp_path / "log", KILISHO_RATE_LIMIT=RATE) as server:
        # The helper that waits for the start has asked /health until it answered, which takes no token.
        assert answers(server.url, 5) == [200, 200, 200, 429, 429]
        refused = httpx.post(f"{server.url}/v1/sizing", content=b"not read")
        problem(refused, 429, "too-many-requests")
        assert 1_100 < int(refused.headers["retry-after"]) <= 1_200
        assert answers(server.url, 20, "/health") == [200] * 20
        assert answers(server.url, 1, "/ready") == [429]
        assert answers(server.url, 1, "/nothing") == [429]


def test_nobody_gets_round_the_rate_with_a_header(tmp_path: Path) -> None:
    """Without trusted proxies X-Forwarded-For is only what the caller says of itself."""
    with serving(tmp_path / "log", KILISHO_RATE_LIMIT=RATE) as server:
        told = [answers(server.url, 1, x_forwarded_for=f"192.0.2.{number}", forwarded=f"for=192.0.2.{number}")[0] for number in range(5)]
        assert told == [200, 200, 200, 429, 429]


def test_behind_a_trusted_proxy_each_caller_has_a_bucket_of_its_own(tmp_path: Path) -> None:
    with serving(tmp_path / "log", KILISHO_RATE_LIMIT=RATE, KILISHO_TRUSTED_PROXIES="127.0.0.1,10.0.0.0/8") as server:
        for caller in ("192.0.2.1", "192.0.2.2", "2001:db8::1", "192.0.2.3, 10.1.2.3"):
            assert answers(server.url, 4, x_forwarded_for=caller) == [200, 200, 200, 429], caller
        # What a caller writes itself stands before what the proxy adds, and does not count.
        told = [answers(server.url, 1, x_forwarded_for=f"203.0.113.{number}, 192.0.2.4")[0] for number in range(5)]
        assert told == [200, 200, 200, 429, 429]
        # All addresses of one IPv6 network are one caller.
        assert answers(server.url, 1, x_forwarded_for="2001:db8::ffff") == [429]
        assert answers(server.url, 1, x_forwarded_for="2001:db8:1::1") == [200]


def test_a_proxy_that_is_not_named_is_not_believed(tmp_path: Path) -> None:
    with serving(tmp_path / "log", KILISHO_RATE_LIMIT=RATE, KILISHO_TRUSTED_PROXIES="192.0.2.99") as server:
        assert [answers(server.url, 1, x_forwarded_for=f"192.0.2.{number}")[0] for number in range(4)] == [200, 200, 200, 429]


def test_each_key_has_its_rate_and_guesses_count_by_address(tmp_path: Path) -> None:
    keys = [new_key(), new_key()]
    file = tmp_path / "keys"
    file.write_text("\n".join(line_of(f"app{place}", key) for place, key in enumerate(keys)))
    with serving(tmp_path / "log", KILISHO_RATE_LIMIT=RATE, KILISHO_API_KEYS=str(file)) as server:
        assert answers(server.url, 5, authorization="Bearer guess") == [401, 401, 401, 429, 429]
        for key in keys:
            assert answers(server.url, 4, authorization=f"Bearer {key}") == [200, 200, 200, 429]


def test_the_contract_speaks_of_rates_only_where_there_is_one(rulebook: Rulebook, questions: Mapping[str, Question]) -> None:
    def refusals(settings: Settings) -> dict[str, bool]:
        made: dict[str, Any] = document(rulebook, questions, settings)
        return {path: "429" in one["responses"] for path, item in made["paths"].items() for one in item.values()}

    assert not any(refusals(Settings()).values())
    told = refusals(Settings(rate_limit=Rate(3, 3_600)))
    assert told.pop("/health") is False
    assert all(told.values())
    both = Settings(rate_limit=Rate(7, 60), api_keys=Keys({"a": digest_of("x")}))
    assert "answers 7 requests of a caller in 60 s" in document(rulebook, questions, both)["info"]["description"]
