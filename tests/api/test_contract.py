"""The OpenAPI document: valid, up to date, complete, and true to what the service does."""

from __future__ import annotations

import json
import re
import tomllib
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any

import httpx
import pytest
from jsonschema import Draft202012Validator
from openapi_spec_validator import OpenAPIV31SpecValidator
from tests.api.asking import ask

from kilisho.questions import Question
from kilisho_api.openapi import manual
from kilisho_api.openapi.__main__ import files, main, stale
from kilisho_api.openapi.document import operation_id, shortened
from kilisho_api.openapi.pack_schema import pack_schema

ROOT = Path(__file__).resolve().parents[2]
Document = dict[str, Any]
# Neither a question of one JSON body nor explained: a row may have columns of the caller's own.
TABLES = "/v1/installations/validate-table"


@pytest.fixture(scope="module")
def document() -> Document:
    loaded: Document = json.loads((ROOT / "openapi" / "openapi.json").read_bytes())
    return loaded


@pytest.fixture(scope="module")
def generated() -> Mapping[str, bytes]:
    return files()


def _operations(document: Document) -> Iterator[tuple[str, str, Document]]:
    for path, item in document["paths"].items():
        for method, operation in item.items():
            yield path, method, operation


def test_the_committed_files_are_what_the_service_generates() -> None:
    assert stale(ROOT / "openapi") == []


def test_the_service_serves_the_committed_document(client: httpx.Client) -> None:
    assert client.get("/openapi.json").content == (ROOT / "openapi" / "openapi.json").read_bytes()


def test_generating_twice_gives_the_same_bytes(generated: Mapping[str, bytes]) -> None:
    assert files() == generated


def test_writing_and_checking(tmp_path: Path, capsys: pytest.CaptureFixture[str], generated: Mapping[str, bytes]) -> None:
    assert main([str(tmp_path)]) == 0
    assert {str(file.relative_to(tmp_path)) for file in tmp_path.rglob("*.json")} == set(generated)
    assert main([str(tmp_path), "--check"]) == 0
    (tmp_path / "openapi.json").write_text("{}")
    (tmp_path / "examples" / "left-over.json").write_text("{}")
    assert main([str(tmp_path), "--check"]) == 1
    told = capsys.readouterr().err
    assert "openapi.json" in told
    assert "left-over.json" in told


def test_it_is_a_valid_openapi_document(document: Document) -> None:
    assert document["openapi"].startswith("3.1")
    assert [error.message for error in OpenAPIV31SpecValidator(document).iter_errors()] == []


def test_its_version_is_the_version_of_the_package() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text())["project"]
    assert project["version"] == manual.VERSION


def test_operation_ids_are_unique_and_well_formed(document: Document) -> None:
    names = [operation["operationId"] for _, _, operation in _operations(document)]
    assert len(set(names)) == len(names)
    assert all(re.fullmatch(r"(ask|list|get)[A-Z][A-Za-z]+", name) for name in names)
    assert {"askSizing", "askFirstCharge", "askMaintenanceFeed", "askSafetyCheck", "listSubstrates", "getSubstrate"} <= set(names)


def test_every_operation_is_described_and_tagged(document: Document) -> None:
    tags = {tag["name"] for tag in document["tags"]}
    for path, _, operation in _operations(document):
        assert operation["summary"], path
        assert operation["description"], path
        assert set(operation["tags"]) <= tags
        assert "200" in operation["responses"]


def test_every_question_lists_every_way_to_be_refused(document: Document) -> None:
    for path, method, operation in _operations(document):
        expected = {"400", "406", "413", "415", "422", "500"} if method == "post" else {"406", "422", "500"}
        assert expected <= operation["responses"].keys(), path


def test_every_refusal_is_problem_json_with_an_example_that_fits(document: Document) -> None:
    validator = _validator(document, "Problem")
    for name, response in document["components"]["responses"].items():
        [(media_type, content)] = response["content"].items()
        assert media_type == "application/problem+json", name
        validator.validate(content["example"])
        assert content["example"]["instance"].startswith("urn:uuid:")


def test_requests_are_closed_and_answers_are_open(document: Document) -> None:
    for path, method, operation in _operations(document):
        if method == "post" and path != TABLES:
            for schema in _reached(document, operation["requestBody"]["content"]["application/json"]["schema"]):
                assert "properties" not in schema or schema["additionalProperties"] is False, path
        for schema in _reached(document, operation["responses"]["200"]["content"]):
            assert schema.get("additionalProperties") is not False, path


def _reached(document: Document, start: Any) -> Iterator[Document]:
    """Every schema that can be reached from ``start``."""
    seen, waiting = set[str](), [start]
    while waiting:
        part = waiting.pop()
        if isinstance(part, list):
            waiting += part
        elif isinstance(part, dict):
            yield part
            waiting += [inner for key, inner in part.items() if key not in ("example", "$ref")]
            name = part.get("$ref", "").removeprefix("#/components/schemas/")
            if name and name not in seen:
                seen.add(name)
                waiting.append(document["components"]["schemas"][name])


def test_every_named_schema_is_used(document: Document) -> None:
    text = json.dumps(document)
    for name in document["components"]["schemas"]:
        assert f'"#/components/schemas/{name}"' in text, name


def _validator(document: Document, name: str) -> Draft202012Validator:
    schema = {"$ref": f"#/components/schemas/{name}", "components": document["components"]}
    return Draft202012Validator(schema, format_checker=Draft202012Validator.FORMAT_CHECKER)


def _schema_name(operation: Document, part: str) -> str:
    content = operation["requestBody"] if part == "request" else operation["responses"]["200"]
    return str(content["content"]["application/json"]["schema"]["$ref"]).rsplit("/", 1)[1]


def test_examples_are_asked_and_answered_as_they_stand(document: Document, client: httpx.Client, questions: Mapping[str, Question]) -> None:
    for name in questions:
        operation = document["paths"][f"/v1/{name}"]["post"]
        folder = ROOT / "openapi" / "examples"
        request = json.loads((folder / f"{operation_id(name)}.request.json").read_bytes())
        expected = json.loads((folder / f"{operation_id(name)}.response.json").read_bytes())
        _validator(document, _schema_name(operation, "request")).validate(request)
        answer = ask(client, name, request)
        assert answer.status_code == 200
        assert answer.json() == expected
        _validator(document, _schema_name(operation, "answer")).validate(expected)
        assert operation["requestBody"]["content"]["application/json"]["example"] == request
        assert operation["responses"]["200"]["content"]["application/json"]["example"] == shortened(expected)


def test_examples_carry_no_real_farm(questions: Mapping[str, Question]) -> None:
    assert all("invented" in question.example.get("name", "(invented)") for question in questions.values())


def test_the_examples_of_pages_are_what_the_pages_say(document: Document, client: httpx.Client) -> None:
    seen = 0
    for path, method, operation in _operations(document):
        content = operation["responses"]["200"]["content"].get("application/json", {})
        if method == "get" and "example" in content:
            address = path
            for parameter in operation["parameters"]:
                if parameter.get("in") == "path":
                    address = address.replace(f"{{{parameter['name']}}}", parameter["example"])
            assert client.get(address).json() == content["example"], path
            seen += 1
    assert seen > 10


def test_ids_are_listed_so_that_a_client_can_offer_them(document: Document) -> None:
    assert "cattle_dung" in document["components"]["schemas"]["SubstrateId"]["enum"]
    assert "fixed_dome" in document["components"]["schemas"]["StructureId"]["enum"]


def test_explain_is_documented_on_every_question(document: Document) -> None:
    for path, method, operation in _operations(document):
        named = {parameter.get("$ref", "") for parameter in operation["parameters"]}
        assert ("#/components/parameters/Explain" in named) == (method == "post" and path != TABLES), path


def test_the_schema_of_a_pack_accepts_the_base_pack_and_a_layer_and_refuses_slips() -> None:
    import yaml

    from kilisho.packs import BASE_PACK

    validator = Draft202012Validator(pack_schema())
    Draft202012Validator.check_schema(pack_schema())
    for file in BASE_PACK.glob("*.yaml"):
        assert [error.message for error in validator.iter_errors(yaml.safe_load(file.read_text("utf-8")))] == [], file.name
    measured = {"typical": 16, "unit": "%", "basis": "judgement"}
    assert validator.is_valid({"substrates": {"cattle_dung": {"total_solids": measured}, "whey": None}})
    for slip in (
        {"substrate": {}},
        {"substrates": {"cattle_dung": {"total_solid": measured}}},
        {"substrates": {"cattle_dung": {"total_solids": {**measured, "unit": "kg"}}}},
        {"substrates": {"cattle_dung": {"total_solids": {"typical": 16, "unit": "%"}}}},
        {"substrates": {"Cattle dung": {}}},
    ):
        assert not validator.is_valid(slip), slip
