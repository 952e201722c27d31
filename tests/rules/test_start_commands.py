"""The two commands that a newcomer types: api/start.py and tests/run.py."""

from __future__ import annotations

import json
import signal
import socket
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pytest
from tests import run
from tests.api.running import free_port

import start

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture
def checkout(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """A checkout of nothing but a lock and pyproject.toml; holds what was done in it, without the minutes that doing it takes."""
    done: list[str] = []

    def run_nothing(command: list[str]) -> subprocess.CompletedProcess[str]:
        done.append("environment" if "venv" in command else command[-1])
        start.tool("python").parent.mkdir(parents=True, exist_ok=True)
        start.tool("python").touch()
        return subprocess.CompletedProcess(command, 0, "", "")

    (tmp_path / "a.lock").write_text("one\n")
    (tmp_path / "pyproject.toml").write_text("two\n")
    monkeypatch.setattr(start, "ROOT", tmp_path)
    monkeypatch.setattr(start, "VENV", tmp_path / ".venv")
    monkeypatch.setattr(start, "STAMP", tmp_path / ".venv/kilisho.json")
    monkeypatch.setattr(start, "_run", run_nothing)
    return done


def test_an_environment_is_built_once_and_again_for_what_has_changed(checkout: list[str]) -> None:
    start.prepare(["a.lock"])
    assert checkout == ["environment", "a.lock", "."]
    start.prepare(["a.lock"])
    assert checkout == ["environment", "a.lock", "."]
    (start.ROOT / "a.lock").write_text("three\n")
    start.prepare(["a.lock"])
    assert checkout == ["environment", "a.lock", ".", "a.lock"]


@pytest.mark.parametrize("other", [{"checkout": "/elsewhere"}, {"python": "3.9"}])
def test_an_environment_of_another_place_or_python_is_built_anew(other: dict[str, str], checkout: list[str]) -> None:
    start.prepare(["a.lock"])
    start.STAMP.write_text(json.dumps(json.loads(start.STAMP.read_text()) | other))
    start.prepare(["a.lock"])
    assert checkout == ["environment", "a.lock", "."] * 2


def test_an_old_python_is_refused_with_the_command_to_type_instead() -> None:
    with pytest.raises(start.CannotStartError, match=r"needs Python 3\.11 or newer; this is Python 3\.10\. Try: python3\.11 "):
        start.require_python((3, 10))
    start.require_python((3, 12))


@pytest.mark.usefixtures("checkout")
def test_a_python_without_venv_says_what_to_install(monkeypatch: pytest.MonkeyPatch) -> None:
    failed = subprocess.CompletedProcess([], 1, "", "ensurepip is not available")
    monkeypatch.setattr(start, "_run", lambda command: failed)
    with pytest.raises(start.CannotStartError, match="apt install python3-venv"):
        start.prepare(["a.lock"])


def test_without_a_network_it_says_how_to_bring_the_packages(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    failed = subprocess.CompletedProcess([], 1, "", "no matching distribution")
    monkeypatch.setattr(start, "_run", lambda command: failed)
    with pytest.raises(start.CannotStartError, match=r"(?s)PIP_FIND_LINKS=wheels.*no matching distribution"):
        start._install("-r", "a.lock")


def test_a_taken_port_is_told_before_anything_is_installed(capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(start, "prepare", lambda: pytest.fail("installed"))
    monkeypatch.setattr(signal, "signal", lambda *_: None)
    with socket.create_server(("127.0.0.1", 0)) as taken:
        port = taken.getsockname()[1]
        assert start.main(["--port", str(port)]) == 1
    told = capsys.readouterr().err
    assert f"Port {port} on 127.0.0.1" in told
    assert f"--port {port + 1}" in told


@pytest.mark.parametrize(
    ("quantity", "text"),
    [
        ({"value": 3000.0, "unit": "kg"}, "3,000 kg"),
        ({"value": 22.8, "unit": "d", "low": 13.0, "high": 34.0}, "22.8 d (13 to 34)"),
        ({"value": 0.75, "unit": "1"}, "0.75"),
        ({"value": None, "unit": "kg"}, "unknown"),
    ],
)
def test_an_amount_is_read_with_its_unit_and_range(quantity: dict[str, Any], text: str) -> None:
    assert start.amount(quantity) == text


def test_what_is_not_known_is_never_shown_as_passed() -> None:
    findings = [{"verdict": verdict, "severity": "danger", "title": verdict, "do": "Do it."} for verdict in ("pass", "fail", "unknown")]
    cautions = [{"signal": "danger", "text": "Keep out."}, {"signal": "notice", "text": "Read the code."}]
    shown = "\n".join(start.readable({"findings": findings, "schedule": [], "cautions": cautions}))
    assert "danger, not met" in shown
    assert "1 checks could not be made, and none counts as passed" in shown
    assert "Keep out." in shown
    assert "Read the code." not in shown


def ready() -> bool:
    """Whether ``.venv`` is as api/start.py would leave it, so that starting takes seconds and no network."""
    return start._usable(start._stamp()) and not start._stale([*start.RUN_LOCKS, "pyproject.toml"])


needs_environment = pytest.mark.skipif(not ready(), reason="needs the .venv that tests/run.py makes")


@needs_environment
def test_start_answers_the_example_and_stops(capfd: pytest.CaptureFixture[str]) -> None:
    port = free_port()
    done = subprocess.run([sys.executable, "api/start.py", "--once", "--port", str(port)], cwd=ROOT, check=False, timeout=90)
    shown = capfd.readouterr().out
    assert done.returncode == 0
    assert f"http://127.0.0.1:{port}/docs" in shown
    assert "substrate mass" in shown
    assert "never" in shown.lower()


@needs_environment
def test_start_serves_until_interrupted(tmp_path: Path) -> None:
    port, log = free_port(), tmp_path / "log"
    with log.open("w") as output:
        process = subprocess.Popen([sys.executable, "api/start.py", "--port", str(port)], cwd=ROOT, stdout=output, stderr=output)
        deadline = time.monotonic() + 60
        while "Serving until" not in log.read_text() and process.poll() is None and time.monotonic() < deadline:
            time.sleep(0.1)
        assert start.call("127.0.0.1", port, "/health")
        process.send_signal(signal.SIGINT)
        assert process.wait(timeout=20) == 0
    assert log.read_text().endswith("Stopped.\n")
    start.require_free("127.0.0.1", port)


def test_a_failed_check_fails_the_run_although_the_tests_pass(monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str]) -> None:
    says = {code: [sys.executable, "-c", f"print('told {code}'); raise SystemExit({code})"] for code in (0, 3)}
    monkeypatch.setattr(start, "prepare", lambda locks: None)
    monkeypatch.setattr(run, "pytest_command", lambda arguments, in_ci: says[0])
    monkeypatch.setattr(run, "steps", lambda: [("fine", says[0]), ("broken", says[3])])
    monkeypatch.setattr(run, "node_steps", list)
    assert run.main([]) == 1
    shown = capfd.readouterr().out
    assert "told 3" in shown
    assert "failed before pytest: broken" in shown
    assert shown.rstrip().endswith("told 0")
    monkeypatch.setattr(run, "steps", lambda: [("fine", says[0])])
    monkeypatch.setattr(run, "node_steps", list)
    assert run.main([]) == 0


def test_a_check_whose_program_is_missing_has_failed_and_the_next_ones_run(
    monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    (tmp_path / "no-program").write_text("")
    fine = [sys.executable, "-c", "print('the tests')"]
    monkeypatch.setattr(start, "prepare", lambda locks: None)
    monkeypatch.setattr(run, "pytest_command", lambda arguments, in_ci: fine)
    monkeypatch.setattr(run, "steps", lambda: [("missing", [str(tmp_path / "linter")]), ("no program", [str(tmp_path / "no-program")])])
    monkeypatch.setattr(run, "node_steps", lambda: [("fine", fine)])
    monkeypatch.setattr(run.shutil, "which", lambda name: name)
    assert run.main([]) == 1
    shown = capfd.readouterr().out
    assert f"{tmp_path / 'linter'} cannot be started: No such file or directory" in shown
    assert f"{tmp_path / 'no-program'} cannot be started: Permission denied" in shown
    assert "failed before pytest: missing, no program\n" in shown
    assert shown.rstrip().endswith("the tests")


@pytest.mark.parametrize(("in_ci", "code"), [(True, 1), (False, 0)])
def test_in_ci_a_skip_is_a_failure(in_ci: bool, code: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "test_one.py").write_text("import pytest\n@pytest.mark.skip(reason='no browser')\ndef test(): ...\ndef test_two(): ...\n")
    monkeypatch.setattr(start, "tool", lambda name: Path(sys.executable))
    command = run.pytest_command(["-c", "/dev/null", "-p", "no:cacheprovider", str(tmp_path)], in_ci)
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
    assert done.returncode == code, done.stdout
    assert ("skipped where nothing may be" in done.stdout) is in_ci


def test_pytest_comes_last_with_the_arguments_that_were_given() -> None:
    assert run.pytest_command(["-k", "units"], in_ci=False)[1:] == ["-m", "pytest", "-n", "auto", "--dist", "loadfile", "-k", "units"]
