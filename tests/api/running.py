"""A real server for the tests: `kilisho serve` on a free port of this machine, stopped the way an operator stops it."""

from __future__ import annotations

import os
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from threading import Thread

import httpx
import uvicorn
from litestar import Litestar

KILISHO = [sys.executable, "-m", "kilisho.cli"]
SECONDS_TO_START = 60.0


@dataclass(frozen=True)
class Server:
    """A running server: its process, its address, and where it logs."""

    process: subprocess.Popen[bytes]
    url: str
    log: Path

    @property
    def port(self) -> int:
        return int(self.url.rsplit(":", 1)[1])


def free_port() -> int:
    """A port that nobody listens on."""
    with socket.create_server(("127.0.0.1", 0)) as listener:
        return int(listener.getsockname()[1])


@contextmanager
def serving(log: Path, *options: str, port: int | None = None, group: bool = False, **environment: str) -> Iterator[Server]:
    """Run `kilisho serve` until the block ends, in a ``group`` of processes of its own where wanted.

    Whatever the environment sets for it is taken out first.
    """
    port = port or free_port()
    url = f"http://127.0.0.1:{port}"
    clean = {name: value for name, value in os.environ.items() if not name.startswith("KILISHO_")}
    command = [*KILISHO, "serve", "--port", str(port), *options]
    with log.open("wb") as output:
        process = subprocess.Popen(command, stdout=output, stderr=output, env=clean | environment, start_new_session=group)
        try:
            _await_first_answer(process, url, log)
            yield Server(process, url, log)
        finally:
            process.send_signal(signal.SIGTERM)
            process.wait(timeout=60)


def _await_first_answer(process: subprocess.Popen[bytes], url: str, log: Path) -> None:
    begun = time.perf_counter()
    while process.poll() is None and time.perf_counter() - begun < SECONDS_TO_START:
        try:
            httpx.get(f"{url}/health", timeout=SECONDS_TO_START)
        except httpx.TransportError:
            time.sleep(0.01)
        else:
            return
    raise AssertionError(f"the server did not answer:\n{log.read_text()}")


@contextmanager
def listening(app: Litestar) -> Iterator[str]:
    """Serve ``app``, put together by a test, over real HTTP from a thread of this process; gives its address."""
    port = free_port()
    server = uvicorn.Server(uvicorn.Config(app, "127.0.0.1", port, log_level="warning", lifespan="off", ws="none"))
    thread = Thread(target=server.run)
    thread.start()
    try:
        begun = time.perf_counter()
        while not server.started:
            assert thread.is_alive()
            assert time.perf_counter() - begun < SECONDS_TO_START
            time.sleep(0.01)
        yield f"http://127.0.0.1:{port}"
    finally:
        server.should_exit = True
        thread.join(timeout=20)
