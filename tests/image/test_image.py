"""The image, built from docker/Dockerfile as it stands and run as docker/compose.yaml runs it.

There is no Docker daemon in this: buildah builds, and the kernel's own namespaces stand in for the container: its files
mounted read-only, a small /tmp, a folder for tables, no capability, no new privileges, and a network of its own with nothing but loopback.
"""

from __future__ import annotations

import json
import os
import shutil
import signal
import subprocess
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from docker import build_here

ROOT = Path(__file__).resolve().parents[2]
EXAMPLE = (ROOT / "openapi/examples/askFirstCharge.request.json").read_text(encoding="utf-8")
# SciPy and NumPy, and Arrow for tables of installations, which is a third of it.
LARGEST_MEGABYTES = 440
BUILD_BYTES = 4e9
SPOOL = "/var/spool/kilisho"
SETTING = f"KILISHO_TABLE_FOLDER={SPOOL}"
NEEDED = ("unshare", "nsenter", "setpriv", "ip")

CONTAINED = """
set -e
root=$1; shift
mount --bind "$root" "$root"
mount -t proc proc "$root/proc"
mount -t tmpfs -o size=64m,mode=1777,noexec,nosuid,nodev tmpfs "$root/tmp"
mount -t tmpfs -o size=64m,mode=700,uid=10001,gid=10001 tmpfs "$root/var/spool/kilisho"
mount -o remount,bind,ro "$root"
ip link set lo up
exec chroot "$root" "$@"
"""

PROBE = """
import http.client, json, os, sys
def ask(method, path, body=None):
    connection = http.client.HTTPConnection("127.0.0.1", int(os.environ["KILISHO_PORT"]), timeout=20)
    connection.request(method, path, body, {"Content-Type": "application/json"})
    answer = connection.getresponse()
    return answer.status, json.loads(answer.read())
def writable():
    for folder, inner, _ in os.walk("/"):
        inner[:] = [name for name in inner if os.path.join(folder, name) not in ("/proc", "/sys")]
        try:
            open(os.path.join(folder, "written"), "x").close()
            yield folder
        except OSError:
            pass
status = dict(line.split(":", 1) for line in open("/proc/self/status"))
print(json.dumps({
    "health": ask("GET", "/health"), "first_charge": ask("POST", "/v1/first-charge", sys.argv[1]), "uid": os.getuid(),
    "capabilities": int(status["CapBnd"], 16), "no_new_privileges": int(status["NoNewPrivs"]), "writable": list(writable()),
}))
"""


TABLE = """
import http.client, os
connection = http.client.HTTPConnection("127.0.0.1", int(os.environ["KILISHO_PORT"]), timeout=50)
table = b"structure;total_volume [L]\\nbag;9000\\n"
connection.request("POST", "/v1/installations/validate-table", table, {"Content-Type": "text/csv"})
answer = connection.getresponse()
print(answer.status, answer.read().count(b"\\n"))
"""


class Container:
    """The image's own command, running in namespaces of its own."""

    def __init__(self, image: build_here.Image) -> None:
        self.root, config = str(image.root), image.config
        user, group = config["User"].split(":")
        restricted = ["--clear-groups", "--bounding-set=-all", "--inh-caps=-all", "--no-new-privs"]
        self.as_configured = [
            "setpriv",
            f"--reuid={user}",
            f"--regid={group}",
            *restricted,
            "env",
            "-i",
            *config["Env"],
            f"KILISHO_TABLE_FOLDER={SPOOL}",
        ]
        self.health_command = config["Healthcheck"]["Test"][1:]
        namespaces = ["unshare", "--mount", "--net", "--pid", "--fork"]
        contained = ["sh", "-c", CONTAINED, "sh", self.root, *self.as_configured, *config["Entrypoint"], *config["Cmd"]]
        self.process = subprocess.Popen([*namespaces, *contained])

    def service(self) -> int:
        """Process number of the service, seen from outside."""
        children = Path(f"/proc/{self.process.pid}/task/{self.process.pid}/children").read_text(encoding="ascii")
        return int(children.split()[0])

    def run_inside(self, *command: str) -> subprocess.CompletedProcess[str]:
        """Run ``command`` beside the service: same files, network, user and rights."""
        entered = ["nsenter", f"--target={self.service()}", "--mount", "--net", "--pid", "chroot", self.root, *self.as_configured]
        return subprocess.run([*entered, *command], capture_output=True, text=True, check=False, timeout=60)

    def wait_until_healthy(self, seconds: float = 30) -> None:
        """Repeat the image's health check until it passes; raises AssertionError when it never does."""
        deadline = time.monotonic() + seconds
        while self.process.poll() is None and time.monotonic() < deadline:
            time.sleep(0.3)
            if self.run_inside(*self.health_command).returncode == 0:
                return
        raise AssertionError(f"not healthy; exit code {self.process.poll()}")

    def signal(self, number: signal.Signals) -> int:
        """Send the service a signal, as a container engine does; returns its exit code. A service that stays raises TimeoutExpired."""
        os.kill(self.service(), number)
        return self.process.wait(timeout=10)


@pytest.fixture(scope="module")
def image() -> Iterator[build_here.Image]:
    lacking = build_here.missing() + [name for name in NEEDED if shutil.which(name) is None]
    if lacking:
        pytest.skip(f"building the image needs {', '.join(lacking)}")
    # Tens of thousands of small files, three times over: in memory, where there is room, they cost a minute less than on a disk.
    memory = Path("/dev/shm")
    roomy = memory.is_dir() and shutil.disk_usage(memory).free > BUILD_BYTES
    with tempfile.TemporaryDirectory(dir=memory if roomy else None) as directory:
        yield build_here.build(Path(directory))


@pytest.fixture(scope="module")
def container(image: build_here.Image) -> Iterator[Container]:
    running = Container(image)
    try:
        running.wait_until_healthy()
        yield running
    finally:
        running.signal(signal.SIGKILL)


@pytest.fixture(scope="module")
def seen_inside(container: Container) -> dict[str, Any]:
    probed = container.run_inside("python3", "-c", PROBE, EXAMPLE)
    assert probed.returncode == 0, probed.stderr
    seen: dict[str, Any] = json.loads(probed.stdout)
    return seen


pytestmark = pytest.mark.image


def test_it_answers_a_first_charge_without_any_network_but_loopback(seen_inside: dict[str, Any]) -> None:
    status, answer = seen_inside["first_charge"]
    assert seen_inside["health"][0] == status == 200
    assert answer["substrate_mass"]["value"] > 1000
    assert answer["rulebook"]["hash"]


def test_it_runs_without_root_or_any_right(seen_inside: dict[str, Any]) -> None:
    assert seen_inside["uid"] == 10001
    assert seen_inside["capabilities"] == 0
    assert seen_inside["no_new_privileges"] == 1


def test_it_can_write_nowhere_but_in_its_tmp(seen_inside: dict[str, Any]) -> None:
    """And in the folder for tables that is mounted."""
    assert sorted(seen_inside["writable"]) == ["/tmp", SPOOL]


def test_an_engine_gives_the_volume_for_tables_to_the_service(image: build_here.Image) -> None:
    """A new volume takes the owner of the folder in the image that it is mounted over."""
    folder = (image.root / SPOOL.strip("/")).lstat()
    assert f"{folder.st_uid}:{folder.st_gid}" == image.config["User"]
    assert not list((image.root / SPOOL.strip("/")).iterdir())


def test_a_table_is_kept_in_the_folder_for_tables(container: Container) -> None:
    asked = container.run_inside("python3", "-c", TABLE)
    assert (asked.returncode, asked.stdout) == (0, "200 2\n"), asked.stderr


def test_its_user_could_not_change_the_service_even_on_a_writable_disk(image: build_here.Image) -> None:
    installed = [path.lstat() for path in (image.root / "srv").rglob("*") if not path.is_symlink()]
    assert len(installed) > 1000
    assert all(entry.st_uid == 0 and not entry.st_mode & 0o022 for entry in installed)


def test_it_holds_no_compiler_or_installer_and_stays_small(image: build_here.Image, capsys: pytest.CaptureFixture[str]) -> None:
    commands = {path.name for folder in ("usr/bin", "usr/local/bin", "srv/kilisho/bin") for path in (image.root / folder).glob("*")}
    assert "kilisho" in commands
    assert not commands & {"cc", "gcc", "c99", "ld", "pip", "pip3"}
    with capsys.disabled():
        print(f"image {image.total_bytes / 1e6:.0f} MB, of which Kilisho {image.own_bytes / 1e6:.0f} MB")
    assert image.own_bytes < LARGEST_MEGABYTES * 1e6


def test_its_health_check_fails_when_nothing_answers(container: Container) -> None:
    assert container.run_inside(*container.health_command).returncode == 0
    assert container.run_inside("env", "KILISHO_PORT=1", *container.health_command).returncode != 0


def test_it_stops_when_asked(image: build_here.Image) -> None:
    running = Container(image)
    running.wait_until_healthy()
    assert running.signal(signal.SIGTERM) == 0
