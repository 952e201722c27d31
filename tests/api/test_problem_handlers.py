"""Every family of exceptions as a problem document, raised by an application made for the purpose that runs in the test's own process."""

from __future__ import annotations

import logging
from collections.abc import Iterator
from typing import Any

import pytest
from litestar import Litestar, get
from litestar.exceptions import ClientException, HTTPException, ServiceUnavailableException
from litestar.testing import TestClient
from litestar.types import ASGIApp, Receive, Scope, Send

from kilisho.faults import Fault, MalformedError, RefusedError
from kilisho_api.problem_types import BY_STATUS, PROBLEM_TYPES
from kilisho_api.problems import MOST_ERRORS, PROBLEM_JSON, ProblemError, body_of, handlers

ID = "4c1d5b0e-0000-4000-8000-000000000001"
RAISED: dict[str, Exception] = {}


@get("/raise", sync_to_thread=False)
def raising() -> None:
    raise RAISED["it"]


def numbered(app: Litestar) -> ASGIApp:
    """Gives each request its id, as the outermost layer of the service does."""

    async def outer(scope: Scope, receive: Receive, send: Send) -> None:
        scope["kilisho.request_id"] = ID  # type: ignore[typeddict-unknown-key]
        await app(scope, receive, send)

    return outer


@pytest.fixture(scope="module")
def client() -> Iterator[TestClient[Any]]:
    with TestClient(
        numbered(Litestar([raising], exception_handlers=handlers(), openapi_config=None)), raise_server_exceptions=False
    ) as made:
        yield made


def told(client: TestClient[Any], error: Exception, status: int, slug: str, language: str = "en") -> dict[str, Any]:
    """The problem of an exception, once what holds for all of them is confirmed."""
    RAISED["it"] = error
    answer = client.get("/raise", headers={"accept-language": language})
    body: dict[str, Any] = answer.json()
    assert (answer.status_code, answer.headers["content-type"], answer.headers["content-language"]) == (status, PROBLEM_JSON, language)
    assert (body["type"], body["status"], body["instance"]) == (f"/problems/{slug}", status, f"urn:uuid:{ID}")
    assert "language" not in body
    return body


def test_a_problem_goes_out_with_its_detail_errors_and_headers(client: TestClient[Any]) -> None:
    error = ProblemError("overloaded", "Come back.", [{"pointer": "/a"}], {"Retry-After": "7"})
    body = told(client, error, 503, "overloaded")
    assert (body["detail"], body["errors"], body["title"]) == ("Come back.", [{"pointer": "/a"}], PROBLEM_TYPES["overloaded"].title)
    assert client.get("/raise").headers["retry-after"] == "7"
    assert str(error) == "Come back."
    assert "errors" not in told(client, ProblemError("not-found", "Nothing here."), 404, "not-found")


def test_a_body_that_is_no_json_is_told_by_place_in_the_callers_language(client: TestClient[Any]) -> None:
    error = MalformedError("expected value at line 3 column 14")
    assert told(client, error, 400, "malformed-json")["detail"].endswith("(line 3, column 14).")
    spanish = told(client, error, 400, "malformed-json", "es")
    assert spanish["title"] == "El cuerpo no es JSON"
    assert "14" in spanish["detail"]


def many(count: int) -> RefusedError:
    return RefusedError([Fault(("feed", place), "missing", "It must be stated.") for place in range(count)])


@pytest.mark.parametrize("count", [1, 2, MOST_ERRORS])
def test_all_faults_are_told_up_to_the_most(client: TestClient[Any], count: int) -> None:
    body = told(client, many(count), 422, "invalid-request")
    assert [error["pointer"] for error in body["errors"]] == [f"/feed/{place}" for place in range(count)]
    assert str(count) in body["detail"] or count == 1
    assert "first" not in body["detail"]


def test_beyond_the_most_the_first_are_told_and_all_are_counted(client: TestClient[Any]) -> None:
    body = told(client, many(MOST_ERRORS + 1), 422, "invalid-request")
    assert [error["pointer"] for error in body["errors"]] == [f"/feed/{place}" for place in range(MOST_ERRORS)]
    assert "101" in body["detail"]
    assert "100" in body["detail"].replace("101", "")


@pytest.mark.parametrize(
    ("raised", "status", "slug"),
    [
        (409, 400, "bad-request"),
        (499, 400, "bad-request"),
        (500, 500, "internal-error"),
        (502, 500, "internal-error"),
        (422, 422, "invalid-request"),
    ],
)
def test_a_status_of_the_framework_without_a_kind_is_told_by_its_class(
    client: TestClient[Any], raised: int, status: int, slug: str
) -> None:
    body = told(client, HTTPException(detail="secret of the framework", status_code=raised), status, slug)
    assert body["detail"] == PROBLEM_TYPES[slug].about
    assert "secret" not in str(body)


def test_the_framework_s_refusals_keep_their_headers_and_get_words_of_ours(client: TestClient[Any]) -> None:
    nowhere, method = client.get("/nowhere"), client.post("/raise")
    assert (nowhere.status_code, nowhere.json()["type"]) == (404, "/problems/not-found")
    assert (method.status_code, method.json()["type"], method.headers["allow"]) == (405, "/problems/method-not-allowed", "GET, OPTIONS")
    too_large = told(client, ClientException("x", status_code=413), 413, "too-large")
    own = {nowhere.json()["detail"], method.json()["detail"], too_large["detail"]}
    assert len(own | {PROBLEM_TYPES[slug].about for slug in ("not-found", "method-not-allowed", "too-large")}) == 6
    told(client, ServiceUnavailableException(headers={"Retry-After": "3"}), 503, "not-ready")
    assert client.get("/raise").headers["retry-after"] == "3"


def test_our_own_failure_is_logged_with_its_id_and_trace(client: TestClient[Any], caplog: pytest.LogCaptureFixture) -> None:
    with caplog.at_level(logging.ERROR, "kilisho.api"):
        body = told(client, ZeroDivisionError("secret"), 500, "internal-error")
    assert "secret" not in str(body)
    assert body["detail"]
    [record] = [one for one in caplog.records if one.name == "kilisho.api"]
    assert record.getMessage() == f"request {ID} failed"
    assert record.exc_info
    assert isinstance(record.exc_info[1], ZeroDivisionError)


def test_a_document_has_the_members_of_rfc_9457() -> None:
    kind = PROBLEM_TYPES["not-found"]
    body = body_of(kind, "Nothing here.", ID)
    assert body == {"type": kind.address, "title": kind.title, "status": 404, "detail": "Nothing here.", "instance": f"urn:uuid:{ID}"}
    assert body_of(kind, "Nothing here.", ID, ({"pointer": ""},)) == {**body, "errors": [{"pointer": ""}]}


def test_each_status_leads_to_its_first_kind_and_malformed_json_is_never_guessed() -> None:
    assert BY_STATUS[400].slug == "bad-request"
    assert BY_STATUS[503].slug == "not-ready"
    assert BY_STATUS.keys() == {kind.status for kind in PROBLEM_TYPES.values()}


@pytest.mark.parametrize("slug", PROBLEM_TYPES)
def test_a_kind_tells_words_of_its_own(slug: str) -> None:
    kind = PROBLEM_TYPES[slug]
    assert kind.as_dict() == {
        "type": f"/problems/{slug}", "status": kind.status, "title": kind.title, "about": kind.about, "remedy": kind.remedy,
    }  # fmt: skip
    assert len({kind.title, kind.about, kind.remedy}) == 3
    others = [one for one in PROBLEM_TYPES.values() if one is not kind]
    assert not [one for one in others if {one.title, one.about} & {kind.title, kind.about}]
