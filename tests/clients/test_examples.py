"""Every example of the contract is executed against the running service; none is only words."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import httpx
import pytest
from jsonschema import Draft202012Validator
from tests.api.running import Server
from tests.clients.contract import JSON, Operation, contract, operations

from kilisho_api.openapi.document import shortened

# What nobody can bring about from outside, or only with a service of its own settings.
NOT_FROM_HERE = {"TooLarge", "InternalError", "NotReady", "Overloaded", "TookTooLong", "BadRequest", "RequestStalled", "NoRoom"}
Case = tuple[Operation, str]
EVERY = [(one, media_type) for one in operations() for media_type in one.content]


def label(value: Any) -> str:
    return value.name if isinstance(value, Operation) else str(value)


@pytest.fixture(scope="module")
def client(server: Server) -> Iterator[httpx.Client]:
    with httpx.Client(base_url=server.url, timeout=60) as opened:
        yield opened


def ask(client: httpx.Client, operation: Operation, media_type: str = JSON, **changed: Any) -> httpx.Response:
    body = {} if operation.body is None else {"json": operation.body}
    return client.request(operation.method, operation.address, **{"headers": {"accept": media_type}, **body, **changed})


def validator(schema: dict[str, Any]) -> Draft202012Validator:
    whole = {**schema, "components": contract()["components"]}
    return Draft202012Validator(whole, format_checker=Draft202012Validator.FORMAT_CHECKER)


def resolved(response: dict[str, Any]) -> dict[str, Any]:
    name = response.get("$ref", "").rpartition("/")[2]
    found: dict[str, Any] = contract()["components"]["responses"][name] if name else response
    return found


@pytest.mark.parametrize(("operation", "media_type"), EVERY, ids=label)
def test_the_example_is_what_is_answered(client: httpx.Client, operation: Operation, media_type: str) -> None:
    answer, content = ask(client, operation, media_type), operation.content[media_type]
    assert answer.status_code == 200
    assert answer.headers["content-type"].partition(";")[0] == media_type
    if media_type != JSON:
        # The examples of views are made of the shortened answer: the kind of text is the same, its length is not.
        assert answer.text[:5] == content.get("example", answer.text)[:5]
        return
    told = answer.json()
    validator(content["schema"]).validate(told)
    if "example" in content:
        assert shortened(told) == shortened(content["example"])
        validator(content["schema"]).validate(content["example"])
    else:
        assert operation.name.startswith("list")


def test_every_example_of_a_request_fits_its_schema() -> None:
    seen = 0
    for operation in operations():
        if operation.body is not None:
            validator(operation.described["requestBody"]["content"][JSON]["schema"]).validate(operation.body)
            seen += 1
    assert seen > 5


def test_every_problem_can_be_had_and_has_the_members_of_its_example(client: httpx.Client) -> None:
    asked = next(one for one in operations() if one.body is not None)
    stored = next(one for one in operations() if one.in_path)
    ways = {
        "MalformedJson": ask(client, asked, json=None, content=b"{", headers={"content-type": JSON}),
        "NotFound": client.get(stored.path.format(**dict.fromkeys(stored.in_path, "nothing"))),
        "NotAcceptable": ask(client, asked, "audio/ogg"),
        "UnsupportedMediaType": ask(client, asked, json=None, content=b"a=1", headers={"content-type": "text/plain"}),
        "InvalidRequest": ask(client, asked, json={"no_such_member": 1}),
    }
    responses = contract()["components"]["responses"]
    assert ways.keys() | NOT_FROM_HERE == responses.keys()
    for name, answer in ways.items():
        example = responses[name]["content"]["application/problem+json"]["example"]
        told = answer.json()
        assert {key: told[key] for key in ("type", "title", "status")} == {key: example[key] for key in ("type", "title", "status")}
        assert ("errors" in told) == ("errors" in example), name
        assert answer.status_code == example["status"]


def test_every_example_of_a_problem_fits_its_schema_and_stands_under_its_status() -> None:
    seen = set()
    for operation in operations():
        for status, response in operation.described["responses"].items():
            content = resolved(response).get("content", {}).get("application/problem+json")
            if content:
                validator(content["schema"]).validate(content["example"])
                assert content["example"]["status"] == int(status)
                seen.add(status)
    assert seen >= {"400", "404", "406", "413", "415", "422", "500", "503"}


def test_the_way_of_comparing_sees_a_difference() -> None:
    assert shortened({"a": [1, 2, 3, 4, 5]}) == {"a": [1, 2, 3, 4]}
    assert not validator({"$ref": "#/components/schemas/Problem"}).is_valid({"status": 200})
