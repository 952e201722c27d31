#!/usr/bin/env python3
"""Run every check of the project from a bare checkout: ``python3 tests/run.py [pytest arguments]``.

Builds the same ``.venv`` as ``api/start.py`` plus the test packages, then runs style, types, import contracts, the
comparison of the committed OpenAPI document, and pytest, whose own closing line stays the last line of output. Every
step runs whatever the ones before it did; the exit code is 1 when any failed. Where there is npm, the contract is linted
and clients are made from it, with packages pinned in ``tests/clients``. With ``CI=true`` a skipped test fails: there, the
browser, the image builder and Node 20 must be installed.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import time
from collections.abc import Sequence
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT / "api"))

import start  # noqa: E402 - api/ is on the path from here on

TEST_LOCKS = (*start.RUN_LOCKS, "tests/requirements.lock")
# No tool of the checks asks or tells anybody anything.
QUIET = {"REDOCLY_TELEMETRY": "off", "REDOCLY_SUPPRESS_UPDATE_NOTICE": "true", "NO_UPDATE_NOTIFIER": "1"}
# As a shell has it.
CANNOT_START = 127
SCRIPTS = ("api/start.py", "tests/run.py", "docker/build_here.py")


def steps() -> list[tuple[str, list[str]]]:
    """Every check before pytest: a name and its command."""
    return [
        ("style", [_tool("ruff"), "check", "."]),
        ("format", [_tool("ruff"), "format", "--check", "."]),
        ("types", [_tool("mypy")]),
        ("types of scripts", [_tool("mypy"), *SCRIPTS]),
        ("import contracts", [_tool("lint-imports")]),
        ("OpenAPI document", [_tool("python"), "-m", "kilisho_api.openapi", "--check"]),
    ]


def node_steps() -> list[tuple[str, list[str]]]:
    """The checks of the contract that need Node: its packages, and two linters that let no warning pass."""
    clients = ROOT / "tests" / "clients"
    run, document = str(clients / "node_modules" / ".bin"), "openapi/openapi.json"
    return [
        ("Node packages", [_tool("python"), str(clients / "packages.py")]),
        ("Spectral", [f"{run}/spectral", "lint", "--ruleset", str(clients / "spectral.yaml"), "--fail-severity", "hint", document]),
        ("Redocly", [f"{run}/redocly", "lint", "--config", str(clients / "redocly.yaml"), document]),
    ]


def pytest_command(arguments: Sequence[str], in_ci: bool) -> list[str]:
    """The last step, on all cores, a file to each; in CI a plugin turns every skip into a failure."""
    strict = ["-p", "tests.no_skips"] if in_ci else []
    return [_tool("python"), "-m", "pytest", "-n", "auto", "--dist", "loadfile", *strict, *arguments]


def run_step(name: str, command: Sequence[str]) -> bool:
    """Run one check, print its time, and its output when it fails."""
    began = time.monotonic()
    done = _run(command)
    print(f"{name:<18} {time.monotonic() - began:6.1f} s  {'failed' if done.returncode else 'ok'}", flush=True)
    if done.returncode:
        print(done.stdout, flush=True)
    return done.returncode == 0


def _run(command: Sequence[str]) -> subprocess.CompletedProcess[str]:
    """The command and its output; one that cannot be started has failed like any other."""
    try:
        return subprocess.run(
            command, cwd=ROOT, env=os.environ | QUIET, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, check=False
        )
    except OSError as error:
        return subprocess.CompletedProcess(command, CANNOT_START, f"{command[0]} cannot be started: {error.strerror}")


def main(arguments: Sequence[str]) -> int:
    """Run all checks; returns the exit code."""
    began = time.monotonic()
    try:
        start.prepare(TEST_LOCKS)
    except start.CannotStartError as error:
        print(f"The checks cannot run. {error}", file=sys.stderr)
        return 1
    print(f"{'environment':<18} {time.monotonic() - began:6.1f} s  ok", flush=True)
    in_ci = os.environ.get("CI") == "true"
    chosen = [*steps(), *(node_steps() if in_ci or shutil.which("npm") else ())]
    failed = [name for name, command in chosen if not run_step(name, command)]
    if failed:
        print(f"failed before pytest: {', '.join(failed)}", flush=True)
    tests = subprocess.run(pytest_command(arguments, in_ci), cwd=ROOT, check=False)
    return 1 if failed or tests.returncode else 0


def _tool(name: str) -> str:
    return str(start.tool(name))


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
