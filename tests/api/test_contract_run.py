"""The running service against its own contract: valid and invalid requests made from the schemas, all checks on."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Mapping
from pathlib import Path

from tests import invented
from tests.api.running import Server, listening

from kilisho.packs import Rulebook
from kilisho.questions import Question
from kilisho.questions.opening import open_form
from kilisho_api.app import assemble
from kilisho_api.settings import Settings

FOLDER = Path(__file__).parent / "contract_run"
EXAMPLES_PER_OPERATION = 25
SEED = 20_270_104


def _run(address: str, folder: Path, *options: str) -> str:
    """What schemathesis says of the service at ``address`` when it has no fault to find."""
    command = [
        *(sys.executable, "-m", "schemathesis.cli"),
        *("--config-file", str(FOLDER / "schemathesis.toml")),
        *("run", f"{address}/openapi.json"),
        *("--checks", "all"),
        *("--phases", "examples,coverage,fuzzing"),
        *("--mode", "all"),
        *("--max-examples", str(EXAMPLES_PER_OPERATION)),
        *("--seed", str(SEED)),
        *("--generation-deterministic", "--continue-on-failure", "--no-color"),
        *options,
    ]
    environment = os.environ | {"SCHEMATHESIS_HOOKS": str(FOLDER / "hooks.py"), "PYTHONPATH": os.pathsep.join(sys.path)}
    done = subprocess.run(command, cwd=folder, env=environment, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


def test_the_service_keeps_its_contract(server: Server, tmp_path: Path) -> None:
    _run(server.url, tmp_path)


def test_a_question_in_several_media_types_keeps_its_contract(
    rulebook: Rulebook, questions: Mapping[str, Question], tmp_path: Path
) -> None:
    question = open_form(invented.form, rulebook)
    with listening(assemble(Settings(), rulebook, {**questions, question.name: question})) as address:
        _run(address, tmp_path, "--include-path", f"/v1/{question.name}", "--report", "har", "--report-har-path", "sent.har")
    sent = json.loads((tmp_path / "sent.har").read_text("utf-8"))["log"]["entries"]
    answered = {entry["response"]["content"]["mimeType"] for entry in sent if entry["response"]["status"] == 200}
    assert answered == {"application/json", "text/csv; charset=utf-8; header=present"}
