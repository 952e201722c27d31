"""What HTTP asks of every address: negotiation, media types, query, HEAD, conditional requests, ids and headers."""

from __future__ import annotations

import uuid
from collections.abc import Mapping
from pathlib import Path

import httpx
import pytest
from tests.api.asking import JSON_BODY, OPERATIONS, ask, problem
from tests.api.running import serving

from kilisho.questions import Question

PAGES = (
    "/",
    "/health",
    "/ready",
    "/metrics",
    "/docs",
    "/docs/reference",
    "/docs/reference.js",
    "/docs/reference.css",
    "/docs/guide.css",
    "/docs/swagger-ui.css",
    "/docs/swagger-ui-bundle.js",
    "/docs/icon.svg",
    "/openapi.json",
    "/v1/substrates",
    "/v1/substrates/cattle_dung",
    "/v1/practice/containers",
    "/v1/quantities",
    "/v1/rulebook",
    "/problems/not-found",
)
CACHED = tuple(page for page in PAGES if page not in ("/health", "/ready", "/metrics"))
QUESTIONS = tuple(f"/v1/{name}" for name in OPERATIONS)


@pytest.mark.parametrize("page", PAGES)
def test_head_has_the_headers_of_get_and_no_body(client: httpx.Client, page: str) -> None:
    get, head = client.get(page), client.head(page)
    assert get.status_code == head.status_code == 200
    assert head.content == b""
    assert get.content
    assert head.headers["content-type"] == get.headers["content-type"]
    assert head.headers.get("etag") == get.headers.get("etag")
    if page != "/metrics":  # it has grown in between
        assert head.headers["content-length"] == get.headers["content-length"] == str(len(get.content))


@pytest.mark.parametrize("page", CACHED)
def test_whoever_holds_a_page_is_told_so(client: httpx.Client, page: str) -> None:
    first = client.get(page)
    tag = first.headers["etag"]
    assert tag.startswith('"')
    for held in (tag, f"W/{tag}", f'"x", {tag}', "*"):
        again = client.get(page, headers={"if-none-match": held})
        assert again.status_code == 304
        assert again.content == b""
        for name in ("etag", "cache-control", "vary"):
            assert again.headers[name] == first.headers[name]
    assert client.head(page, headers={"if-none-match": tag}).status_code == 304
    assert client.get(page, headers={"if-none-match": '"x"'}).status_code == 200


def test_catalogue_pages_may_be_kept_and_answers_may_not(client: httpx.Client) -> None:
    assert client.get("/v1/checks").headers["cache-control"] == "public, max-age=3600"
    assert ask(client, "sizing", {}).headers["cache-control"] == "no-store"
    assert client.get("/health").headers["cache-control"] == "no-store"


@pytest.mark.parametrize("page", [*PAGES, "/nothing", *QUESTIONS])
def test_every_answer_carries_its_id_and_the_security_headers(client: httpx.Client, page: str) -> None:
    answer = client.get(page)
    assert uuid.UUID(answer.headers["x-request-id"])
    assert answer.headers["x-content-type-options"] == "nosniff"
    assert answer.headers["content-security-policy"].startswith("default-src 'self'")
    for closed in ("base-uri 'none'", "form-action 'none'", "frame-ancestors 'none'"):
        assert closed in answer.headers["content-security-policy"]
    assert answer.headers["referrer-policy"] == "no-referrer"
    assert "geolocation=()" in answer.headers["permissions-policy"]
    assert answer.headers["cross-origin-opener-policy"] == answer.headers["cross-origin-resource-policy"] == "same-origin"
    # Whether there is TLS, and for how long there will be, only the proxy knows.
    assert "strict-transport-security" not in answer.headers
    assert answer.headers["vary"] == "Accept, Accept-Language"
    assert "server" not in answer.headers
    assert "set-cookie" not in answer.headers


def test_a_request_id_is_taken_over_when_it_is_a_uuid(client: httpx.Client) -> None:
    given = str(uuid.uuid4())
    assert client.get("/health", headers={"x-request-id": given}).headers["x-request-id"] == given
    assert client.get("/health", headers={"x-request-id": given.upper()}).headers["x-request-id"] == given
    for other in ("1", given + "0", "<script>", "a" * 500, given.replace("-", "")):
        assert client.get("/health", headers={"x-request-id": other}).headers["x-request-id"] != other


@pytest.mark.parametrize("page", [page for page in PAGES if page.startswith(("/v1", "/health", "/openapi"))])
def test_a_caller_that_admits_no_json_gets_none(client: httpx.Client, page: str) -> None:
    for accept in ("text/html", "application/xml, text/*;q=0.5", "application/json;q=0"):
        told = problem(client.get(page, headers={"accept": accept}), 406, "not-acceptable")
        assert "application/json" in told["detail"]
    assert client.get(page, headers={"accept": "text/html, application/*;q=0.1"}).status_code == 200


@pytest.mark.parametrize("address", QUESTIONS)
def test_a_question_wants_json_and_answers_json(client: httpx.Client, address: str) -> None:
    problem(client.post(address, content=b"{}", headers=JSON_BODY | {"accept": "image/png"}), 406, "not-acceptable")
    for kind in ("text/plain", "application/x-www-form-urlencoded", "application/json; charset=latin-1", "application/jsonp", ""):
        answer = client.post(address, content=b"{}", headers={"content-type": kind})
        problem(answer, 415, "unsupported-media-type")
        assert answer.headers["accept"] == "application/json"
    problem(client.post(address, content=b"{}"), 415, "unsupported-media-type")
    problem(client.post(address, content=b"{}", headers=JSON_BODY | {"content-encoding": "gzip"}), 415, "unsupported-media-type")


@pytest.mark.parametrize(
    "kind", ["application/json", "application/json; charset=utf-8", "Application/JSON;charset=UTF-8", 'application/json; charset="utf-8"']
)
def test_every_way_to_say_json_is_understood(client: httpx.Client, kind: str) -> None:
    assert client.post("/v1/sizing", content=b"[", headers={"content-type": kind}).status_code == 400


@pytest.mark.parametrize("page", PAGES)
def test_an_unknown_query_parameter_is_refused(client: httpx.Client, page: str) -> None:
    told = problem(client.get(page, params={"expand": "1"}), 422, "invalid-request")
    assert told["errors"] == [
        {"parameter": "expand", "code": "unknown_parameter", "detail": "no such query parameter here", "nearest": []},
    ]


def test_a_misspelt_parameter_of_a_question_is_answered_with_the_right_one(client: httpx.Client) -> None:
    told = problem(ask(client, "sizing", {}, explian="true"), 422, "invalid-request")
    assert told["errors"][0]["nearest"] == ["explain"]


@pytest.mark.parametrize("value", ["yes", "1", "True", "", "true "])
def test_explain_is_true_or_false(client: httpx.Client, value: str) -> None:
    told = problem(ask(client, "sizing", {}, explain=value), 422, "invalid-request")
    assert (told["errors"][0]["parameter"], told["errors"][0]["code"]) == ("explain", "yes_no_expected")


def test_explain_is_said_once(client: httpx.Client) -> None:
    answer = client.post("/v1/sizing?explain=true&explain=false", content=b"{}", headers=JSON_BODY)
    assert problem(answer, 422, "invalid-request")["errors"][0]["code"] == "repeated_parameter"


@pytest.mark.parametrize("operation", OPERATIONS)
def test_explain_adds_the_derivation_and_changes_nothing_else(
    client: httpx.Client, questions: Mapping[str, Question], operation: str
) -> None:
    example = questions[operation].example
    plain, shown = (ask(client, operation, example, explain=flag).json() for flag in ("false", "true"))
    derivation = shown.pop("derivation")
    assert plain == shown
    assert operation == "safety-check" or derivation


@pytest.mark.parametrize("page", [*PAGES, "/v1/substrates/nothing"])
def test_a_page_takes_no_other_method_and_says_which(client: httpx.Client, page: str) -> None:
    for method in ("POST", "PUT", "DELETE", "PATCH", "TRACE", "PROPFIND"):
        answer = client.request(method, page)
        problem(answer, 405, "method-not-allowed")
        assert answer.headers["allow"] == "GET, HEAD, OPTIONS"


@pytest.mark.parametrize("address", QUESTIONS)
def test_a_question_is_posted(client: httpx.Client, address: str) -> None:
    for method in ("GET", "PUT", "DELETE", "PATCH"):
        answer = client.request(method, address)
        problem(answer, 405, "method-not-allowed")
        assert answer.headers["allow"] == "OPTIONS, POST"
    assert client.head(address).status_code == 405


def test_options_names_the_methods(client: httpx.Client) -> None:
    answer = client.options("/v1/substrates")
    assert (answer.status_code, answer.headers["allow"]) == (204, "GET, HEAD, OPTIONS")


@pytest.mark.parametrize(
    "page", ["/nothing", "/v1", "/v1/", "/v1/sizing/x", "/docs/../app.py", "/docs/NOTICE.md", "/%00", "/v1/substrates/a/b"]
)
def test_what_is_not_there_is_not_found(client: httpx.Client, page: str) -> None:
    problem(client.get(page), 404, "not-found")


def test_no_page_of_another_origin_may_read_unless_it_is_named(client: httpx.Client, tmp_path: Path) -> None:
    origin = {"origin": "https://app.example"}
    asked = origin | {"access-control-request-method": "POST"}
    assert "access-control-allow-origin" not in client.get("/health", headers=origin).headers
    with serving(tmp_path / "log", KILISHO_CORS_ORIGINS="https://app.example") as other, httpx.Client(base_url=other.url) as named:
        answer = named.get("/health", headers=origin)
        assert answer.headers["access-control-allow-origin"] == "https://app.example"
        assert answer.headers.get_list("vary") == ["Accept, Accept-Language", "Origin"]
        assert "etag" in answer.headers["access-control-expose-headers"]
        assert "access-control-allow-credentials" not in answer.headers
        ahead = named.options("/v1/sizing", headers=asked)
        assert (ahead.status_code, ahead.headers["access-control-allow-methods"]) == (204, "GET, HEAD, POST")
        assert "access-control-allow-origin" in named.get("/nothing", headers=origin).headers
        for stranger in ("https://evil.example", "https://app.example.evil", "null"):
            assert "access-control-allow-origin" not in named.get("/health", headers={"origin": stranger}).headers
