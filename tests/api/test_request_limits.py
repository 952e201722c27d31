"""Nothing that a caller sends is without a limit: every list, text and number of every request, nesting, and the bytes themselves."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from typing import Any

import httpx
import orjson
import pytest
from tests.api.asking import JSON_BODY, ask, problem

from kilisho.questions import Question

LIMITED_TEXT = {"maxLength", "enum", "const", "format"}
# A pattern of whole texts, in which nothing is repeated.
FIXED = re.compile(r"\^[^*+{}]+\$")
LONGEST_LIST, LONGEST_TEXT = 5_000, 1_000


def parts(schema: Any, root: Any, path: str = "", seen: frozenset[str] = frozenset()) -> Iterator[tuple[str, Any]]:
    """Every schema that a request's schema leads to, with its path."""
    reference = schema.get("$ref", "").rsplit("/", 1)[-1]
    if reference and reference not in seen:
        yield from parts(root["$defs"][reference], root, path, seen | {reference})
    yield path, schema
    for name, member in schema.get("properties", {}).items():
        yield from parts(member, root, f"{path}/{name}", seen)
    inner = [schema[key] for key in ("items", "additionalProperties") if isinstance(schema.get(key), dict)]
    for part in [*inner, *(one for key in ("anyOf", "oneOf", "allOf", "prefixItems") for one in schema.get(key, ()))]:
        yield from parts(part, root, path, seen)


def unlimited(schema: Any) -> str:
    match schema.get("type"):
        case "array" if not 0 < schema.get("maxItems", 0) <= LONGEST_LIST:
            return "a list of any length"
        case "string" if FIXED.fullmatch(schema.get("pattern", "")):
            return ""
        case "string" if not LIMITED_TEXT & schema.keys() or schema.get("maxLength", 0) > LONGEST_TEXT:
            return "a text of any length"
        case "number" | "integer" if not {"maximum", "exclusiveMaximum"} & schema.keys():
            return "a number of any size"
        case "object" if schema.get("additionalProperties") is not False and "maxProperties" not in schema:
            return "any number of members"
    return ""


def test_every_list_text_and_number_of_a_request_has_a_limit(questions: Mapping[str, Question]) -> None:
    found = {}
    for name, question in questions.items():
        schema = question.request.model_json_schema(mode="validation")
        met = [(path, unlimited(part)) for path, part in parts(schema, schema)]
        assert len(met) > 5
        found |= {f"{name}{path}": fault for path, fault in met if fault}
    assert found == {}


def test_a_limit_that_is_missing_would_be_found() -> None:
    for part in (
        {"type": "array"},
        {"type": "string"},
        {"type": "number", "minimum": 0},
        {"type": "object"},
        {"type": "string", "pattern": "a*"},
    ):
        assert unlimited(part)


@pytest.mark.parametrize("deep", [150, 250, 5_000, 100_000])
def test_nesting_ends_before_the_parser_does(client: httpx.Client, deep: int) -> None:
    for opening, closing in ((b"[", b"]"), (b'{"a":', b"}")):
        answer = ask(client, "sizing", b'{"feed":' + opening * deep + b"1" + closing * deep + b"}")
        assert answer.status_code in (400, 422)
        assert answer.json()["type"] in ("/problems/malformed-json", "/problems/invalid-request")


@pytest.mark.parametrize(
    "coding", ["gzip", "deflate", "br", "zstd", "compress", "x-gzip", "gzip, identity", "identity, gzip", "aws-chunked"]
)
def test_no_body_is_ever_unpacked(client: httpx.Client, coding: str) -> None:
    import gzip

    bomb = gzip.compress(b" " * 50_000_000)
    assert len(bomb) < 100_000
    answer = client.post("/v1/sizing", content=bomb, headers=JSON_BODY | {"content-encoding": coding})
    assert answer.headers["accept-encoding"] == "identity"
    problem(answer, 415, "unsupported-media-type")


def test_a_packed_body_that_does_not_say_so_is_no_json(client: httpx.Client) -> None:
    import gzip

    problem(ask(client, "sizing", gzip.compress(b"{}")), 400, "malformed-json")


@pytest.mark.parametrize("count", [2_000, 20_000])
def test_long_lists_are_refused_by_their_length(client: httpx.Client, count: int) -> None:
    body = orjson.dumps({"feed": [{"substrate": "cattle_dung"}] * count})
    told = problem(ask(client, "sizing", body), 422, "invalid-request")
    assert {error["code"] for error in told["errors"]} == {"too_long"}


def test_a_query_of_thousands_of_parameters_is_not_read(client: httpx.Client) -> None:
    query = "&".join(f"p{number}=1" for number in range(5_000))
    [fault] = problem(client.get(f"/v1/rulebook?{query}"), 422, "invalid-request")["errors"]
    assert fault["code"] == "too_many_parameters"
    for padding, expected in (("", 100), ("&", 1)):  # what stands behind a hundred is not passed over in silence
        query = "&".join(f"p{number}=1" for number in range(100)) + padding
        assert len(problem(client.get(f"/v1/rulebook?{query}"), 422, "invalid-request")["errors"]) == expected
