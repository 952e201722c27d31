#!/usr/bin/env python3
"""Start Kilisho from a bare checkout: ``python3 api/start.py``.

Needs Python 3.11 or newer and nothing else: the first run builds ``.venv`` in the checkout from the hashed locks, later
runs reuse it. The service then listens on this computer only, answers one example question to show that it works, and
goes on serving until Ctrl-C. ``--once`` stops after that first answer.
"""

from __future__ import annotations

import argparse
import hashlib
import http.client
import json
import os
import signal
import socket
import subprocess
import sys
import textwrap
import time
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parent.parent
VENV = ROOT / ".venv"
STAMP = VENV / "kilisho.json"
OLDEST_PYTHON = (3, 11)
RUN_LOCKS = ("docker/build.lock", "docker/requirements.lock")
EXAMPLE = ROOT / "openapi" / "examples" / "askFirstCharge.request.json"
SECONDS_TO_START = 60


class CannotStartError(Exception):
    """Says in one paragraph what is missing and what to do about it."""


def tool(name: str) -> Path:
    """Path of a command of the virtual environment."""
    return VENV / ("Scripts" if os.name == "nt" else "bin") / name


def require_python(version: Sequence[int] = sys.version_info[:2]) -> None:
    """Refuse a Python that the engine cannot run on; raises :class:`CannotStartError`."""
    if tuple(version[:2]) < OLDEST_PYTHON:
        found, needed = (".".join(map(str, v[:2])) for v in (version, OLDEST_PYTHON))
        raise CannotStartError(f"Kilisho needs Python {needed} or newer; this is Python {found}. Try: python{needed} {' '.join(sys.argv)}")


def prepare(locks: Sequence[str] = RUN_LOCKS) -> None:
    """Bring ``.venv`` into step with ``locks`` and ``pyproject.toml``; does nothing when it already is.

    Raises :class:`CannotStartError` when the environment cannot be made or filled.
    """
    require_python()
    if not _usable(_stamp()):
        _make_environment()
    for lock in _stale(locks):
        print(f"Installing {lock} ...", flush=True)
        _install("--require-hashes", "-r", lock)
        _remember(lock)
    if _stale(["pyproject.toml"]):
        _install("--no-deps", "--no-build-isolation", "--editable", ".")
        _remember("pyproject.toml")


def _stamp() -> dict[str, str]:
    """What ``.venv`` was built from; empty when there is none or it is not ours."""
    try:
        built: dict[str, str] = json.loads(STAMP.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return {}
    return built


def _identity() -> dict[str, str]:
    # A virtual environment holds absolute paths: after a move of the checkout its commands are broken.
    return {"checkout": str(ROOT), "python": ".".join(map(str, sys.version_info[:2]))}


def _usable(built: dict[str, str]) -> bool:
    return _identity().items() <= built.items() and tool("python").exists()


def _digest(name: str) -> str:
    return hashlib.sha256((ROOT / name).read_bytes()).hexdigest()


def _stale(names: Sequence[str]) -> list[str]:
    built = _stamp()
    return [name for name in names if built.get(name) != _digest(name)]


def _remember(name: str) -> None:
    STAMP.write_text(json.dumps(_stamp() | _identity() | {name: _digest(name)}, indent=1), encoding="utf-8")


def _make_environment() -> None:
    print(f"Creating {VENV} ...", flush=True)
    made = _run([sys.executable, "-m", "venv", "--clear", str(VENV)])
    if made.returncode:
        raise CannotStartError(
            "Python could not create a virtual environment. On Debian and Ubuntu the module is a package of its own:"
            f" apt install python3-venv\n{made.stdout}{made.stderr}".rstrip()
        )
    STAMP.write_text(json.dumps(_identity()), encoding="utf-8")


def _install(*arguments: str) -> None:
    done = _run([str(tool("python")), "-m", "pip", "install", "--quiet", "--disable-pip-version-check", *arguments])
    if done.returncode:
        raise CannotStartError(
            "The packages could not be installed (pip's own words below). The first run needs the network. Without one, fetch the wheels"
            " elsewhere with 'pip download -r docker/requirements.lock -r docker/build.lock -d wheels', bring the folder here"
            f" and set PIP_NO_INDEX=1 PIP_FIND_LINKS=wheels.\n{done.stderr}".rstrip()
        )


def _run(command: Sequence[str]) -> subprocess.CompletedProcess[str]:
    return subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)  # noqa: S603 - fixed commands


def require_free(host: str, port: int) -> None:
    """Refuse a port that something else listens on; raises :class:`CannotStartError`."""
    with socket.socket() as probe:
        probe.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            probe.bind((host, port))
        except OSError as error:
            raise CannotStartError(
                f"Port {port} on {host} cannot be used ({error.strerror}). Choose another: python3 api/start.py --port {port + 1}"
            ) from None


def call(host: str, port: int, path: str, body: bytes | None = None) -> Any:
    """The JSON answer of the service; a POST when there is a body. Raises :class:`CannotStartError` for any status but 200."""
    connection = http.client.HTTPConnection(host, port, timeout=30)
    try:
        connection.request("POST" if body else "GET", path, body, {"Content-Type": "application/json"})
        answer = connection.getresponse()
        text = answer.read()
    finally:
        connection.close()
    if answer.status != 200:
        raise CannotStartError(f"The service answered {answer.status} on {path}: {text.decode(errors='replace')}")
    return json.loads(text)


def wait_until_ready(server: subprocess.Popen[bytes], host: str, port: int) -> None:
    """Return once ``/health`` answers; raises :class:`CannotStartError` when the server ends or stays silent."""
    deadline = time.monotonic() + SECONDS_TO_START
    while time.monotonic() < deadline:
        if server.poll() is not None:
            raise CannotStartError(f"The server ended at once with exit code {server.returncode}; its messages are above.")
        try:
            call(host, port, "/health")
            return
        except OSError:
            time.sleep(0.1)
    raise CannotStartError(f"The server did not answer on {host}:{port} within {SECONDS_TO_START} seconds.")


def stop(server: subprocess.Popen[bytes]) -> None:
    """End the server and wait for it; by force when it does not go."""
    server.terminate()
    try:
        server.wait(timeout=10)
    except subprocess.TimeoutExpired:
        server.kill()
        server.wait()


def readable(answer: dict[str, Any]) -> Iterator[str]:
    """The essentials of a first-charge answer: the amounts, the dates, what fails, what is not known, and the dangers."""
    for name, value in answer.items():
        if isinstance(value, dict) and "value" in value:
            yield _line(name.replace("_", " "), amount(value))
    yield from (_line(event["date"], event["text"]) for event in answer["schedule"])
    failed, unknown = ([f for f in answer["findings"] if f["verdict"] == verdict] for verdict in ("fail", "unknown"))
    yield from (_line(f"{finding['severity']}, not met", f"{finding['title']}. {finding['do']}") for finding in failed)
    if unknown:
        yield _line("not known", f"{len(unknown)} checks could not be made, and none counts as passed; the answer names the missing facts.")
    yield from (_line("danger", caution["text"]) for caution in answer["cautions"] if caution["signal"] == "danger")


def amount(quantity: dict[str, Any]) -> str:
    """A quantity as a person reads it, with its range where it has one."""
    if quantity["value"] is None:
        return "unknown"
    unit = "" if quantity["unit"] == "1" else f" {quantity['unit']}"
    low, high = quantity.get("low"), quantity.get("high")
    return f"{quantity['value']:,.4g}{unit}" + ("" if low is None or high is None else f" ({low:,.4g} to {high:,.4g})")


def _line(label: str, text: str) -> str:
    return textwrap.fill(text, 110, initial_indent=f"  {label:<20} ", subsequent_indent=" " * 23)


def show_first_answer(host: str, port: int) -> None:
    """Ask the committed example and print what comes back."""
    answer = call(host, port, "/v1/first-charge", EXAMPLE.read_bytes())
    print("\nFirst charge of an invented farm (openapi/examples/askFirstCharge.request.json):")
    print("\n".join(readable(answer)))
    print(f"\nAsk it yourself: http://{host}:{port}/docs\n", flush=True)


def serve(host: str, port: int, once: bool) -> None:
    """Run the service, show its first answer, then serve until interrupted."""
    command = [str(tool("kilisho")), "serve", "--host", host, "--port", str(port)]
    with subprocess.Popen(command, cwd=ROOT) as server:  # noqa: S603 - our own command
        try:
            wait_until_ready(server, host, port)
            show_first_answer(host, port)
            if not once:
                print("Serving until Ctrl-C.", flush=True)
                raise SystemExit(server.wait())
        finally:
            stop(server)


def main(arguments: Sequence[str] | None = None) -> int:
    """Entry point; returns the exit code."""
    parser = argparse.ArgumentParser(prog="python3 api/start.py", description=(__doc__ or "").partition("\n\n")[2])
    parser.add_argument("--host", default="127.0.0.1", help="address to listen on (default: this computer only)")
    parser.add_argument("--port", type=int, default=8080, help="port to listen on (default: 8080)")
    parser.add_argument("--once", action="store_true", help="stop after the first answer")
    options = parser.parse_args(arguments)
    signal.signal(signal.SIGTERM, signal.default_int_handler)
    try:
        require_free(options.host, options.port)
        prepare()
        serve(options.host, options.port, options.once)
    except CannotStartError as error:
        print(f"Kilisho did not start. {error}", file=sys.stderr)
        return 1
    except KeyboardInterrupt:
        print("\nStopped.")
    return 0


if __name__ == "__main__":
    sys.exit(main())
