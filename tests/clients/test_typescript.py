"""A TypeScript client that is generated from the contract, compiled strictly and used against the running service for every operation."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
from pathlib import Path

import pytest
from tests.api.running import Server
from tests.clients import packages
from tests.clients.contract import CONTRACT, contract, operations
from tests.clients.typescript_calls import program

SOURCES = Path(__file__).parent / "typescript"


def run(folder: Path, *command: str, **environment: str) -> str:
    """What the command prints; its own words when it fails."""
    done = subprocess.run(command, cwd=folder, env=os.environ | environment, capture_output=True, text=True, check=False)
    assert done.returncode == 0, (done.stdout + done.stderr)[-8000:]
    return done.stdout


@pytest.fixture(scope="module")
def project(node: None, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the generated types, the calls made from the contract, and what they need."""
    folder = tmp_path_factory.mktemp("typescript")
    shutil.copytree(SOURCES, folder, dirs_exist_ok=True)
    (folder / "package.json").write_text('{"type": "module"}', "utf-8")
    (folder / "node_modules").symlink_to(packages.MODULES)
    # Without the option every member that has a default would have to be sent.
    run(folder, packages.command("openapi-typescript"), str(CONTRACT), "--default-non-nullable", "false", "-o", "contract.d.ts")
    expected = {one.name: told for one in operations() if (told := one.expected()) is not None}
    (folder / "expected.json").write_text(json.dumps(expected), "utf-8")
    return folder


def test_every_operation_is_asked_and_answered_through_types(project: Path, server: Server) -> None:
    (project / "calls.ts").write_text(program(operations()), "utf-8")
    # Compiles refused.ts as well, whose faults must all be found.
    run(project, packages.command("tsc"))
    asked = json.loads(run(project, "node", "built/calls.js", KILISHO=server.url))
    assert asked == [f"{one.name} {media_type}" for one in operations() for media_type in one.content]
    # Tables are files: see operations().
    assert {one.split()[0] for one in asked} | {"askInstallationsValidateTable"} == {
        o["operationId"] for item in contract()["paths"].values() for o in item.values()
    }
