"""The running service against its own contract: valid and invalid requests made from the schemas, all checks on."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

from tests.api.running import Server

FOLDER = Path(__file__).parent / "contract_run"
EXAMPLES_PER_OPERATION = 25
SEED = 20_270_104


def test_the_service_keeps_its_contract(server: Server, tmp_path: Path) -> None:
    command = [
        *(sys.executable, "-m", "schemathesis.cli"),
        *("--config-file", str(FOLDER / "schemathesis.toml")),
        *("run", f"{server.url}/openapi.json"),
        *("--checks", "all"),
        *("--phases", "examples,coverage,fuzzing"),
        *("--mode", "all"),
        *("--max-examples", str(EXAMPLES_PER_OPERATION)),
        *("--seed", str(SEED)),
        *("--generation-deterministic", "--continue-on-failure", "--no-color"),
    ]
    environment = os.environ | {"SCHEMATHESIS_HOOKS": str(FOLDER / "hooks.py"), "PYTHONPATH": os.pathsep.join(sys.path)}
    done = subprocess.run(command, cwd=tmp_path, env=environment, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
