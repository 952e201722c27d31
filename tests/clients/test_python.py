"""A Python client that is generated from the contract and used against the running service for every operation."""

from __future__ import annotations

import importlib
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest
from tests.api.running import Server
from tests.clients.contract import CONTRACT, JSON, Operation, contract, counts, operations

PACKAGE = "kilisho_client_made_for_this_run"
EVERY = pytest.mark.parametrize("operation", list(operations()), ids=lambda one: one.name)
ASKED = pytest.mark.parametrize("operation", [one for one in operations() if one.body is not None], ids=lambda one: one.name)


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Path]:
    """The folder of the generated package, which can be imported from there while the tests run."""
    folder = tmp_path_factory.mktemp("python")
    command = [str(Path(sys.executable).with_name("openapi-python-client")), "generate", "--path", str(CONTRACT), "--meta", "none"]
    options = ["--output-path", str(folder / PACKAGE), "--config", str(Path(__file__).with_name("python.yaml")), "--fail-on-warning"]
    done = subprocess.run([*command, *options], capture_output=True, text=True, check=False)
    assert done.returncode == 0, (done.stdout + done.stderr)[-8000:]
    sys.path.insert(0, str(folder))
    yield folder / PACKAGE
    sys.path.remove(str(folder))


@pytest.fixture(scope="module")
def client(made: Path, server: Server) -> Iterator[Any]:
    with importlib.import_module(PACKAGE).Client(base_url=server.url, timeout=30, raise_on_unexpected_status=True) as opened:
        yield opened


def module_of(operation: Operation) -> ModuleType:
    return importlib.import_module(f"{PACKAGE}.api.{operation.described['tags'][0].lower()}.{snake(operation.name)}")


def snake(name: str) -> str:
    return "".join(f"_{letter.lower()}" if letter.isupper() else letter for letter in name)


def model(name: str) -> Any:
    """The class of the schema ``name``, if the generator made one."""
    return getattr(importlib.import_module(f"{PACKAGE}.models"), name, None)


def schema_name(media_types: Any) -> str:
    return str(media_types[JSON]["schema"]["$ref"]).rsplit("/", 1)[1]


def body_of(operation: Operation, **more: Any) -> Any:
    return model(schema_name(operation.described["requestBody"]["content"])).from_dict({**operation.body, **more})


def test_the_generator_drops_no_operation_and_no_schema(made: Path) -> None:
    modules = {path.stem for path in (made / "api").rglob("*.py")} - {"__init__"}
    assert modules == {snake(one.name) for one in operations()} | {"ask_installations_validate_table"}
    objects = [name for name, schema in contract()["components"]["schemas"].items() if "properties" in schema]
    # Rows of tables are described for people; in a client a table is a file.
    assert [name for name in objects if model(name) is None and not name.startswith("InstallationRow")] == []


@EVERY
def test_every_operation_is_asked_and_answered_through_models(client: Any, operation: Operation) -> None:
    asked = {} if operation.body is None else {"body": body_of(operation)}
    slugs = {"slug": importlib.import_module(f"{PACKAGE}.models").GetProblemTypeSlug} if "slug" in operation.in_path else {}
    path = [slugs.get(name, str)(value) for name, value in operation.in_path.items()]
    answer = module_of(operation).sync_detailed(*path, client=client, **asked)
    assert answer.status_code == 200
    if JSON not in operation.content:
        assert answer.parsed.startswith("# HELP")
        return
    told, expected = answer.parsed.to_dict(), operation.expected()
    if expected is None:
        assert len(answer.parsed.items) == counts()[operation.path.rsplit("/", 1)[1]]
    else:
        assert {name: told[name] for name in expected} == expected


@ASKED
def test_an_answer_is_a_model_by_its_name_and_loses_nothing(client: Any, operation: Operation) -> None:
    body = body_of(operation)
    assert body.to_dict() == operation.body
    answer = module_of(operation).sync(client=client, body=body, explain=True)
    assert type(answer).__name__ == schema_name(operation.content)
    assert answer.rulebook.hash_
    assert "derivation" in answer.to_dict()


@ASKED
def test_a_refusal_is_a_problem_that_points_at_the_fault(client: Any, operation: Operation) -> None:
    body = body_of(operation)
    body.name = "x" * 500
    answer = module_of(operation).sync_detailed(client=client, body=body)
    assert answer.status_code == 422
    assert type(answer.parsed).__name__ == "Problem"
    assert answer.parsed.type_ == "/problems/invalid-request"
    assert [(one.pointer, one.code) for one in answer.parsed.errors] == [("/name", "text_expected")]
