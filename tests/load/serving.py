"""Runs a server for a load: the service or the echo, on a free port of this machine."""

from __future__ import annotations

import os
import socket
import subprocess
import sys
import time
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from http.client import HTTPConnection
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
ECHO = ("-m", "tests.load.echo")
FIRST = "/v1/first-charge"
SECONDS_TO_START = 30


@dataclass(frozen=True)
class Server:
    """A running server: its process, its port, and the seconds until its first answer."""

    process: int
    port: int
    seconds: float


def service(workers: int = 1) -> tuple[str, ...]:
    """The module and options that run the service."""
    return "-m", "kilisho.cli", "serve", "--workers", str(workers)


def post(port: int, path: str, body: bytes) -> bytes:
    """The body of the answer; raises OSError when it is not a success or nobody listens."""
    connection = HTTPConnection("127.0.0.1", port, timeout=10)
    try:
        connection.request("POST", path, body, {"Content-Type": "application/json"})
        answer = connection.getresponse()
        text = answer.read()
    finally:
        connection.close()
    if answer.status != 200:
        raise ConnectionError(f"{path} answered {answer.status}: {text[:500]!r}")
    return text


@contextmanager
def serving(module: Sequence[str], path: str, body: bytes, **settings: object) -> Iterator[Server]:
    """A server under ``settings`` that has answered ``body`` at ``path`` once; it ends with the block."""
    with socket.create_server(("127.0.0.1", 0)) as free:
        port: int = free.getsockname()[1]
    began = time.perf_counter()
    env = os.environ | {f"KILISHO_{name.upper()}": str(value) for name, value in settings.items()}
    with subprocess.Popen([sys.executable, *module, "--port", str(port)], cwd=ROOT, env=env, stderr=subprocess.DEVNULL) as server:
        try:
            while server.poll() is None and time.perf_counter() - began < SECONDS_TO_START:
                try:
                    post(port, path, body)
                    break
                except ConnectionRefusedError:
                    time.sleep(0.005)
            yield Server(server.pid, port, time.perf_counter() - began)
        finally:
            server.terminate()
