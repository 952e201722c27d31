"""Problem documents and the pages that explain them."""

from __future__ import annotations

import dataclasses
import logging
from collections.abc import Mapping
from typing import Any

import httpx
import pytest
from litestar.testing import TestClient
from tests.api.asking import JSON_BODY, problem

from kilisho.packs import Rulebook
from kilisho.questions import Question
from kilisho_api.app import assemble
from kilisho_api.problem_types import PROBLEM_TYPES
from kilisho_api.problems import syntax_detail
from kilisho_api.settings import Settings

ENGLISH = {"tag": "en", "reviewed": True, "untranslated": 0}


@pytest.mark.parametrize("slug", PROBLEM_TYPES)
def test_every_kind_of_problem_has_a_page(client: httpx.Client, slug: str) -> None:
    kind = PROBLEM_TYPES[slug]
    assert client.get(kind.address).json() == {**kind.as_dict(), "language": ENGLISH}
    page = client.get(kind.address, headers={"accept": "text/html"})
    assert page.headers["content-type"] == "text/html; charset=utf-8"
    assert f"<h1>{kind.title}</h1>" in page.text
    assert page.headers["etag"] != client.get(kind.address).headers["etag"]


@pytest.mark.parametrize(
    ("tag", "title"), [("sw", "Mwili wa ombi si JSON"), ("fr", "Le corps n'est pas du JSON"), ("es", "El cuerpo no es JSON")]
)
def test_a_page_and_a_problem_speak_the_language_that_is_asked_for(client: httpx.Client, tag: str, title: str) -> None:
    wanted = {"accept-language": f"{tag}-KE, en;q=0.3"}
    page = client.get("/problems/malformed-json", headers=wanted)
    assert (page.json()["title"], page.headers["content-language"]) == (title, tag)
    html = client.get("/problems/malformed-json", headers={**wanted, "accept": "text/html"}).text
    assert f'<html lang="{tag}">' in html
    refused = client.post("/v1/sizing", content=b"{", headers={**wanted, "content-type": "application/json"})
    assert (refused.json()["title"], refused.headers["content-language"]) == (title, tag)


def test_a_kind_that_is_none_is_not_found(client: httpx.Client) -> None:
    problem(client.get("/problems/nothing"), 404, "not-found")


def test_titles_are_told_apart_and_hold_nothing_that_changes() -> None:
    titles = [kind.title for kind in PROBLEM_TYPES.values()]
    assert len(set(titles)) == len(titles)
    assert not any("{" in title for title in titles)


@pytest.mark.parametrize(
    ("message", "expected"),
    [
        ('Detected duplicate key "a at line 9" at line 1 column 12', "The body names a member twice (line 1, column 12)."),
        ("recursion limit exceeded at line 1 column 202", "The body nests too deeply (line 1, column 202)."),
        ("expected value at line 2 column 6", "The body is not one JSON document (line 2, column 6)."),
        ("something else", "The body is not one JSON document."),
    ],
)
def test_syntax_is_told_by_place_alone(message: str, expected: str) -> None:
    assert syntax_detail(message) == expected


def _failing(_request: Any, _explain: bool) -> dict[str, Any]:
    raise RuntimeError("secret-of-ours")


def _not_finite(_request: Any, _explain: bool) -> dict[str, Any]:
    return {"value": float("nan")}


@pytest.mark.parametrize("answer", [_failing, _not_finite])
def test_our_own_failure_is_logged_and_not_told(
    rulebook: Rulebook, questions: Mapping[str, Question], answer: Any, caplog: pytest.LogCaptureFixture
) -> None:
    broken = {"sizing": dataclasses.replace(questions["sizing"], answer=answer)}
    with TestClient(assemble(Settings(), rulebook, broken), raise_server_exceptions=False) as client, caplog.at_level(logging.ERROR):
        answered = client.post("/v1/sizing", json=broken["sizing"].example, headers=JSON_BODY)
    told = problem(answered, 500, "internal-error")
    assert "secret" not in answered.text
    assert "errors" not in told
    [record] = caplog.records
    assert answered.headers["x-request-id"] in record.getMessage()
    assert record.exc_info
