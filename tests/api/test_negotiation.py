"""The Accept header, as RFC 9110 weighs it."""

from __future__ import annotations

import timeit

import pytest

from kilisho_api.negotiation import MOST_RANGES, preferred, preferred_language

JSON, HTML = "application/json", "text/html"


@pytest.mark.parametrize(
    ("accept", "expected"),
    [
        (None, JSON),
        ("", JSON),
        ("*/*", JSON),
        ("application/*", JSON),
        ("APPLICATION/JSON", JSON),
        ("application/json; charset=utf-8", JSON),
        ("text/html", HTML),
        ("text/*", HTML),
        ("text/html, application/json;q=0.9", HTML),
        ("text/html;q=0.5, application/json;q=0.9", JSON),
        ("text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8", HTML),
        ("application/json;q=0, */*", HTML),
        ("*/*;q=0", None),
        ("application/json;q=0, text/html;q=0", None),
        ("application/json;q=2", None),
        ("application/json;q=nan", None),
        ("application/json;q=", None),
        ("image/png", None),
        ("json", None),
        (",,,", None),
    ],
)
def test_the_caller_gets_what_it_likes_best(accept: str | None, expected: str | None) -> None:
    assert preferred(accept, (JSON, HTML)) == expected


@pytest.mark.parametrize("part", ["a", "a/b;q=0.1", " ", ""])
def test_a_header_of_thousands_of_ranges_is_read_in_part(part: str) -> None:
    """64 kB of them, as many as a head may hold; the longest that is read whole costs as much as a hundred ranges."""
    assert preferred(",".join([part] * (MOST_RANGES - 1) + [HTML]), (JSON, HTML)) == HTML
    assert preferred(",".join([part] * MOST_RANGES + [HTML]), (JSON, HTML)) is None
    assert preferred_language(",".join([part or "x"] * MOST_RANGES + ["sw"]), ("en", "sw")) is None
    thousands = ",".join([part] * (65_536 // (len(part) + 1)))
    assert min(timeit.repeat(lambda: preferred(thousands, (JSON, HTML)), number=1)) < 2e-3
