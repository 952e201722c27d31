"""The Accept header, as RFC 9110 weighs it."""

from __future__ import annotations

import pytest

from kilisho_api.negotiation import preferred

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
