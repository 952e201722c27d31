"""The contract breaks no program that was written for the released one; and the comparison sees what would."""

from __future__ import annotations

import json
from collections.abc import Callable
from copy import deepcopy
from pathlib import Path
from typing import Any

import pytest
from tests.clients.compatibility import breaks
from tests.clients.contract import FOLDER, contract

from kilisho_api.openapi.__main__ import RELEASED, main

Part = dict[str, Any]
Change = Callable[[Part], Any]
SMALL: Part = {
    "paths": {
        "/v1/question": {
            "post": {
                "operationId": "askQuestion",
                "parameters": [
                    {"in": "query", "name": "explain", "schema": {"type": "boolean"}},
                    {"$ref": "#/components/parameters/Id"},
                ],
                "requestBody": {"required": True, "content": {"application/json": {"schema": {"$ref": "#/components/schemas/Asked"}}}},
                "responses": {
                    "200": {
                        "headers": {"ETag": {"schema": {"type": "string"}}},
                        "content": {
                            "application/json": {"schema": {"allOf": [{"$ref": "#/components/schemas/Told"}, {"required": ["more"]}]}},
                            "text/csv": {"schema": {"type": "string"}},
                        },
                    },
                    "422": {"content": {"application/problem+json": {"schema": {"type": "object"}}}},
                },
            }
        }
    },
    "components": {
        "parameters": {"Id": {"in": "header", "name": "X-Request-Id", "schema": {"type": "string"}}},
        "schemas": {
            "Asked": {
                "type": "object",
                "additionalProperties": False,
                "properties": {
                    "kind": {"type": "string", "enum": ["dome", "bag"]},
                    "depth": {"type": "number", "minimum": 0, "maximum": 10},
                    "name": {"type": "string", "maxLength": 200},
                    "amount": {
                        "anyOf": [{"type": "number", "maximum": 5}, {"type": "object", "properties": {"unit": {"enum": ["L", "m3"]}}}]
                    },
                    "feeds": {"type": "array", "maxItems": 12, "items": {"type": "string"}},
                    "inner": {"$ref": "#/components/schemas/Inner"},
                },
                "required": ["kind"],
            },
            "Inner": {"type": "object", "additionalProperties": False, "properties": {"again": {"$ref": "#/components/schemas/Inner"}}},
            "Told": {
                "type": "object",
                "properties": {
                    "value": {"type": ["number", "null"]},
                    "verdict": {"type": "string", "enum": ["pass", "fail"]},
                    "list": {"type": "array", "items": {"type": "object", "properties": {"date": {"type": "string", "format": "date"}}}},
                    "more": {"type": "string"},
                },
                "required": ["value", "list"],
            },
        },
    },
}


def operation(contract: Part) -> Part:
    found: Part = contract["paths"]["/v1/question"]["post"]
    return found


def asked(contract: Part, *names: str) -> Part:
    return inside(contract["components"]["schemas"]["Asked"], names)


def told(contract: Part, *names: str) -> Part:
    return inside(contract["components"]["schemas"]["Told"], names)


def inside(schema: Part, names: tuple[str, ...]) -> Part:
    for name in names:
        schema = schema["items"] if name == "*" else schema["properties"][name]
    return schema


BREAKING: dict[str, tuple[Change, str]] = {
    "an operation goes": (lambda c: c["paths"].clear(), "the operation is gone"),
    "an operation is renamed": (lambda c: operation(c).update(operationId="other"), "operationId was askQuestion"),
    "a query parameter goes": (lambda c: operation(c)["parameters"].pop(0), "the query parameter explain is gone"),
    "a parameter becomes required": (lambda c: c["components"]["parameters"]["Id"].update(required=True), "X-Request-Id is now required"),
    "a new parameter is required": (
        lambda c: operation(c)["parameters"].append({"in": "query", "name": "key", "required": True, "schema": {}}),
        "the query parameter key is now required",
    ),
    "a media type goes": (lambda c: operation(c)["responses"]["200"]["content"].pop("text/csv"), "text/csv is gone"),
    "the answer goes": (lambda c: operation(c)["responses"].pop("200"), "the answer is gone"),
    "a header goes": (lambda c: operation(c)["responses"]["200"]["headers"].clear(), "the header ETag is gone"),
    "a member of the answer goes": (lambda c: told(c)["properties"].pop("verdict"), "200/verdict: the member is gone"),
    "a member deep in the answer goes": (lambda c: told(c, "list", "*")["properties"].clear(), "200/list/*/date: the member is gone"),
    "a promised member becomes optional": (lambda c: told(c)["required"].remove("list"), "200/list: the member is no longer always there"),
    "an answer's type changes": (lambda c: told(c, "more").update(type="number"), "200/more: the type was string and is number"),
    "an answer may now be null": (lambda c: told(c, "more").update(type=["string", "null"]), "the type was string and is null or string"),
    "an answer's format changes": (lambda c: told(c, "list", "*", "date").update(format="date-time"), "format has changed"),
    "an answer's list is freed": (lambda c: told(c, "verdict").pop("enum"), "newly tells values that are not listed"),
    "a member of the request goes": (lambda c: asked(c)["properties"].pop("name"), "request/name: the member is gone"),
    "a member becomes required": (lambda c: asked(c)["required"].append("name"), "request/name: the member is now required"),
    "a new member is required": (
        lambda c: (asked(c)["properties"].update(fresh={}), asked(c)["required"].append("fresh")),
        "request/fresh: the member is now required",
    ),
    "a value is no longer taken": (lambda c: asked(c, "kind")["enum"].remove("bag"), "request/kind: no longer takes bag"),
    "values become a list": (lambda c: asked(c, "name").update(enum=["a"]), "request/name: newly takes listed values only"),
    "a lower bound rises": (lambda c: asked(c, "depth").update(minimum=1), "minimum was 0 and is 1"),
    "an upper bound falls": (lambda c: asked(c, "depth").update(maximum=9), "maximum was 10 and is 9"),
    "a bound is new": (lambda c: asked(c, "name").update(minLength=1), "minLength was absent and is 1"),
    "a list gets shorter": (lambda c: asked(c, "feeds").update(maxItems=11), "maxItems was 12 and is 11"),
    "a pattern is new": (lambda c: asked(c, "name").update(pattern="^a"), "request/name: pattern has changed"),
    "a request's type changes": (lambda c: asked(c, "feeds", "*").update(type="number"), "request/feeds/*: the type was string"),
    "a way of asking goes": (lambda c: asked(c, "amount")["anyOf"].pop(0), "request/amount: no longer takes"),
    "a way of asking narrows": (lambda c: asked(c, "amount")["anyOf"][0].update(maximum=4), "request/amount: no longer takes"),
    "a unit is no longer taken": (
        lambda c: asked(c, "amount")["anyOf"][1]["properties"]["unit"]["enum"].remove("L"),
        "request/amount: no longer takes",
    ),
    "a condition is new": (lambda c: asked(c).update({"not": {"required": ["name"]}}), "request: not has changed"),
}
HARMLESS: dict[str, Change] = {
    "an operation is new": lambda c: c["paths"].update({"/v1/other": {"post": {}}}),
    "a parameter is new": lambda c: operation(c)["parameters"].append({"in": "query", "name": "brief", "schema": {}}),
    "a media type is new": lambda c: operation(c)["responses"]["200"]["content"].update({"text/html": {"schema": {"type": "string"}}}),
    "a refusal goes": lambda c: operation(c)["responses"].pop("422"),
    "a member of the answer is new": lambda c: told(c)["properties"].update(fresh={"type": "string"}),
    "a member of the answer is now promised": lambda c: told(c)["required"].append("verdict"),
    "an answer is never null any more": lambda c: told(c, "value").update(type="number"),
    "a verdict is new": lambda c: told(c, "verdict")["enum"].append("unknown"),
    "a member of the request is new": lambda c: asked(c)["properties"].update(fresh={"type": "string"}),
    "a member is no longer required": lambda c: asked(c)["required"].clear(),
    "a value is newly taken": lambda c: asked(c, "kind")["enum"].append("tank"),
    "bounds widen": lambda c: asked(c, "depth").update(minimum=-1, maximum=11),
    "a bound goes": lambda c: asked(c, "name").pop("maxLength"),
    "a way of asking is new": lambda c: asked(c, "amount")["anyOf"].append({"type": "string"}),
    "words change": lambda c: asked(c, "name").update(description="Other words.", deprecated=True),
}


def changed(change: Change) -> Part:
    new = deepcopy(SMALL)
    change(new)
    return new


def test_the_contract_breaks_nothing_that_was_released() -> None:
    """A break needs a new address (/v2). At a release: python -m kilisho_api.openapi --release"""
    assert breaks(json.loads((FOLDER / RELEASED).read_bytes()), contract()) == []


@pytest.mark.parametrize(("change", "expected"), BREAKING.values(), ids=BREAKING)
def test_a_breaking_change_is_told_with_its_place(change: Change, expected: str) -> None:
    [found] = breaks(SMALL, changed(change))
    assert found.startswith("POST /v1/question")
    assert expected in found


@pytest.mark.parametrize("change", HARMLESS.values(), ids=HARMLESS)
def test_a_harmless_change_is_let_through(change: Change) -> None:
    assert changed(change) != SMALL
    assert breaks(SMALL, changed(change)) == []


def test_the_whole_contract_is_within_reach() -> None:
    """In the real contract, with its references and parts in parts: the last unit of a volume, and the last member of every answer."""
    new = deepcopy(contract())
    del new["components"]["schemas"]["Amount"]["properties"]["unit"]
    new["components"]["schemas"]["SubstrateId"]["enum"].remove("cattle_dung")
    found = breaks(contract(), new)
    assert {one.partition(" request")[0] for one in found if one.endswith("no longer takes cattle_dung")} >= {"POST /v1/sizing"}
    assert [one for one in found if "/unit: the member is gone" in one]


def test_a_release_writes_the_contract_beside_the_released_one_and_drift_leaves_it_alone(tmp_path: Path) -> None:
    assert main([str(tmp_path), "--release"]) == 0
    assert (tmp_path / RELEASED).read_bytes() == (tmp_path / "openapi.json").read_bytes()
    (tmp_path / RELEASED).write_text("{}", "utf-8")
    assert main([str(tmp_path), "--check"]) == 0
