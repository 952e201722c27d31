"""Two replicas behind the committed nginx configuration are replaced under load, one after the other, and no request is lost."""

from __future__ import annotations

import os
import shutil
import signal
import subprocess
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path

import httpx
import pytest
from tests.api.running import Server, free_port, serving
from tests.operations.loading import Load, under_load, until

from kilisho import packs

CONFIGURATION = (Path(__file__).resolve().parents[2] / "docker/nginx.conf").read_text("utf-8")
REPLICAS = ("172.30.83.11:8080", "172.30.83.12:8080")
NGINX = shutil.which("nginx") or "/usr/sbin/nginx"
# Its workers read nothing of root's folders otherwise.
AS_ROOT = "user root;" if os.geteuid() == 0 else ""
pytestmark = pytest.mark.skipif(not Path(NGINX).exists(), reason="nginx is not installed")


def configured(folder: Path, port: int, replicas: list[int]) -> list[str]:
    """The command that runs nginx with the committed configuration, on this machine's ports and folder."""
    text = CONFIGURATION.replace("/var/cache/nginx/", f"{folder}/").replace("listen 8080;", f"listen 127.0.0.1:{port};")
    for address, replica in zip(REPLICAS, replicas, strict=True):
        assert text.count(address) == 1
        text = text.replace(address, f"127.0.0.1:{replica}")
    (folder / "nginx.conf").write_text(text)
    return [NGINX, "-p", str(folder), "-e", "stderr", "-c", str(folder / "nginx.conf"), "-g", f"daemon off; {AS_ROOT}"]


@contextmanager
def proxy(folder: Path, replicas: list[int]) -> Iterator[int]:
    """nginx before ``replicas``; gives its port."""
    port = free_port()
    with (folder / "nginx.log").open("wb") as log, subprocess.Popen(configured(folder, port, replicas), stderr=log) as process:
        try:
            until(lambda: _answers(port))
            yield port
        finally:
            process.terminate()
            process.wait(timeout=60)


@pytest.fixture
def replicas(tmp_path: Path) -> Iterator[list[tuple[ExitStack, Server]]]:
    """Two running replicas, each with what ends it."""
    with ExitStack() as ends:
        started = [ends.enter_context(ExitStack()) for _ in range(2)]
        yield [(end, start(end, tmp_path / f"replica{number}", free_port())) for number, end in enumerate(started)]


def start(end: ExitStack, log: Path, port: int) -> Server:
    """A replica with the drain of the compose file, in short, but longer than nginx leaves one that was away alone."""
    return end.enter_context(serving(log, port=port, KILISHO_DRAIN_SECONDS="3"))


def test_the_configuration_is_one_that_nginx_takes(tmp_path: Path) -> None:
    command = [*configured(tmp_path, free_port(), [1, 2]), "-t"]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    assert "warn" not in done.stderr


def test_a_rolling_restart_loses_nothing(
    tmp_path: Path, replicas: list[tuple[ExitStack, Server]], capsys: pytest.CaptureFixture[str]
) -> None:
    ports = [server.port for _, server in replicas]
    with proxy(tmp_path, ports) as port, under_load(port, callers=6) as load:
        for number, (end, server) in enumerate(replicas):
            end.close()
            assert server.process.poll() is not None
            load.wait_for(20)  # by the other one alone
            start(end, tmp_path / f"next{number}", ports[number])
            load.wait_for(20)
    assert_nothing_lost(load)
    with capsys.disabled():
        print(f"\n{len(load.answers)} requests through two restarts, {len(load.lost)} lost")


def test_a_killed_replica_loses_only_answers_that_were_half_way_out(tmp_path: Path, replicas: list[tuple[ExitStack, Server]]) -> None:
    """What had not begun to come back, the proxy asks of the other replica; an answer whose head is through cannot be taken back."""
    with proxy(tmp_path, [server.port for _, server in replicas]) as port, under_load(port, callers=6) as load:
        replicas[0][1].process.send_signal(signal.SIGKILL)
        load.wait_for(40)
    assert all("IncompleteRead" in one for one in load.lost), load.lost
    assert len(load.lost) <= load.callers
    assert (load.refused, load.statuses.keys()) == (0, {200})


def assert_nothing_lost(load: Load) -> None:
    """Every caller got every answer, and it was the answer."""
    assert load.lost == []
    assert load.refused == 0
    assert load.statuses.keys() == {200}
    assert {answer.rulebook for answer in load.answers} == {packs.load().hash}


def test_figures_and_self_checks_are_not_for_callers(tmp_path: Path, replicas: list[tuple[ExitStack, Server]]) -> None:
    with proxy(tmp_path, [server.port for _, server in replicas]) as port:
        for page in ("/metrics", "/ready"):
            assert httpx.get(f"{replicas[0][1].url}{page}/", timeout=60).status_code == 200
            for spelled in (page, f"{page}/", f"/{page}//", f"/.{page}", f"{page}?a=1", f"/%{ord(page[1]):x}{page[2:]}"):
                assert httpx.get(f"http://127.0.0.1:{port}{spelled}").status_code == 403, spelled
        answer = httpx.get(f"http://127.0.0.1:{port}/health")
        assert answer.json() == {"status": "live"}
        assert answer.headers["server"] == "nginx"  # and not which one


def _answers(port: int) -> bool:
    try:
        return httpx.get(f"http://127.0.0.1:{port}/health", timeout=60).status_code == 200
    except httpx.TransportError:
        return False
