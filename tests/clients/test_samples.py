"""The samples of the guide, taken from the page as it is served and run exactly as they are printed."""

from __future__ import annotations

import html
import json
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

import httpx
import pytest
from tests.api.running import Server
from tests.clients import packages

TYPES = {"type": "module"}


@pytest.fixture(scope="module")
def page(server: Server) -> str:
    return httpx.get(f"{server.url}/docs", timeout=30).text


@pytest.fixture
def folder(page: str, tmp_path: Path) -> Path:
    """A folder with every sample under the name that the page gives it."""
    for name, text in printed(page).items():
        (tmp_path / name).write_text(text + "\n", "utf-8")
    return tmp_path


def printed(page: str) -> dict[str, str]:
    """The samples of the page by name, as a reader would copy them."""
    return {
        name: html.unescape(text) for name, text in re.findall(r'<code class="\w+" data-sample="([\w.]+)">(.*?)</code>', page, re.DOTALL)
    }


def output(page: str) -> list[str]:
    [text] = re.findall(r'<output data-output="ask">(.*?)</output>', page, re.DOTALL)
    return html.unescape(text).splitlines()


def run(folder: Path, server: Server, *command: str) -> str:
    path = os.pathsep.join([str(Path(sys.executable).parent), os.environ["PATH"]])
    environment = os.environ | {"KILISHO": server.url, "PATH": path, "npm_config_offline": "true"}
    done = subprocess.run(command, cwd=folder, env=environment, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


def assert_told(told: str, page: str, server: Server, folder: Path) -> None:
    """What was printed is what the page says, and then every danger of the answer."""
    answer = json.loads(run(folder, server, "bash", "ask.sh"))
    dangers = [f"DANGER {one['text']}" for one in answer["cautions"] if one["signal"] == "danger"]
    assert dangers
    assert told.splitlines() == [*output(page), *dangers]


def test_the_page_holds_the_samples_that_are_run_here(page: str) -> None:
    assert set(printed(page)) == {"address", "ask.sh", "ask.py", "ask.ts", "refused.sh", "install.sh", "build.sh", "client.sh"}


def test_the_question_in_curl(folder: Path, server: Server) -> None:
    if shutil.which("curl") is None:
        pytest.skip("needs curl")
    answer = json.loads(run(folder, server, "bash", "ask.sh"))
    assert (answer["name"], answer["substrate_mass"]["value"]) == ("Highfold (invented)", 4000)


def test_the_slip_in_curl_is_refused_as_the_page_says(folder: Path, server: Server, page: str) -> None:
    problem = json.loads(run(folder, server, "bash", "refused.sh"))
    [fault] = problem["errors"]
    assert (problem["status"], fault["pointer"], fault["code"]) == (422, "/digester/total_volme", "extra_forbidden")
    assert "total_volume" in fault["nearest"]
    said = page[page.index('id="errors"') :]
    assert all(f"<code>{word}</code>" in said for word in (fault["pointer"], fault["code"], "total_volume"))


def test_the_question_in_python(folder: Path, server: Server, page: str) -> None:
    assert_told(run(folder, server, "python", "ask.py"), page, server, folder)


def test_the_question_in_typescript(node: None, folder: Path, server: Server, page: str) -> None:
    """The packages that the page installs are here already, in the versions that the lock pins."""
    (folder / "node_modules").symlink_to(packages.MODULES)
    (folder / "package.json").write_text(json.dumps(TYPES), "utf-8")
    built = run(folder, server, "bash", "-e", "build.sh")
    # The tool that writes the types says so first.
    assert_told(built[built.index("substrate_mass") :], page, server, folder)
    pinned = json.loads((packages.HERE / "package.json").read_text("utf-8"))["devDependencies"]
    assert set(printed(page)["install.sh"].split()[2:]) <= set(pinned)


def test_the_client_in_python_is_made(folder: Path, server: Server) -> None:
    run(folder, server, "bash", "client.sh")
    assert list(folder.glob("kilisho-client/*/api/questions/ask_first_charge.py"))
