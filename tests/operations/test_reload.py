"""Packs are read anew under load: every answer is of one whole rulebook, and a broken pack changes nothing."""

from __future__ import annotations

import os
import signal
import time
from pathlib import Path

import httpx
import pytest
from tests.api.running import Server, serving
from tests.operations.loading import SECONDS, under_load, until
from tests.operations.workers import alive

WORKERS = pytest.mark.parametrize("workers", ["1", "2"])


def write(pack: Path, solids: float, version: str) -> None:
    """A pack of an invented farm, put in place as a whole."""
    new = pack.with_suffix(".new")
    new.write_text(
        f"pack: {{id: measured, version: {version}, title: Measured on an invented farm}}\n"
        f"substrates: {{cattle_dung: {{total_solids: {{typical: {solids}, unit: '%', basis: judgement}}}}}}\n"
    )
    new.replace(pack)


def seen(server: Server, times: int = 1) -> set[tuple[float, str]]:
    """Total solids and version as the service tells them, each time on a new connection, so that any worker may answer."""
    found = (httpx.get(f"{server.url}/v1/substrates/cattle_dung", timeout=SECONDS).json() for _ in range(times))
    return {(one["total_solids"]["typical"], one["rulebook"]["version"]) for one in found}


def tell(server: Server, times: int) -> None:
    """Send SIGHUP and wait until every worker has read its packs, ``times`` in all since the start."""
    server.process.send_signal(signal.SIGHUP)
    until(lambda: server.log.read_text().count("is in force") == times)


@WORKERS
def test_new_packs_are_in_force_at_once_and_whole(tmp_path: Path, workers: str) -> None:
    pack = tmp_path / "farm.yaml"
    write(pack, 12.5, "0.0.1")
    with serving(tmp_path / "log", "--workers", workers, KILISHO_PACKS=str(pack)) as server, under_load(server.port) as load:
        [(solids, first)] = seen(server)
        assert solids == 12.5
        write(pack, 13.5, "0.0.2")
        assert seen(server, 4) == {(12.5, first)}  # a file by itself changes nothing
        tell(server, int(workers))
        load.wait_for(8)
        [(solids, second)] = seen(server, 8)
        assert solids == 13.5
        assert first != second
        figures = httpx.get(f"{server.url}/metrics", timeout=SECONDS).text
        assert f'kilisho_rulebook_reloads_total{{result="in_force"}} {float(workers)}' in figures
        assert httpx.get(f"{server.url}/ready", timeout=SECONDS).status_code == 200
    assert load.lost == []
    assert load.refused == 0
    assert load.statuses.keys() == {200}
    versions = [answer.version for answer in load.answers]
    assert set(versions) == {first, second}


@WORKERS
def test_a_broken_pack_is_told_with_file_and_line_and_changes_nothing(tmp_path: Path, workers: str) -> None:
    pack = tmp_path / "farm.yaml"
    write(pack, 12.5, "0.0.1")
    with serving(tmp_path / "log", "--workers", workers, KILISHO_PACKS=str(pack)) as server, under_load(server.port) as load:
        before = seen(server)
        pack.write_text("pack: {id: measured, version: 0.0.2, title: Broken}\nsubstrates:\n  cattle_dung:\n    total_solid: 1\n")
        server.process.send_signal(signal.SIGHUP)
        until(lambda: "the old rulebook stays in force" in server.log.read_text())
        assert f"pack: {pack}:4: substrates.cattle_dung.total_solid: no such key here" in server.log.read_text()
        load.wait_for(8)
        assert seen(server, 4) == before
        write(pack, 14.5, "0.0.3")
        tell(server, int(workers))
        assert {solids for solids, _ in seen(server, 4)} == {14.5}
    assert (load.lost, load.statuses.keys()) == ([], {200})


@WORKERS
def test_a_pack_folder_that_cannot_be_read_is_told_and_changes_nothing(tmp_path: Path, workers: str) -> None:
    folder = tmp_path / "region"
    folder.mkdir()
    write(folder / "farm.yaml", 12.5, "0.0.1")
    with serving(tmp_path / "log", "--workers", workers, KILISHO_PACKS=str(folder)) as server:
        until(lambda: server.log.read_text().count("Started server") == int(workers))
        (folder / "gone.yaml").symlink_to("nowhere")
        server.process.send_signal(signal.SIGHUP)
        until(lambda: "the old rulebook stays in force" in server.log.read_text())
        assert f"pack: {folder / 'gone.yaml'}:0: the file: a file that can be read (No such file or directory)" in server.log.read_text()
        assert {solids for solids, _ in seen(server, 4)} == {12.5}
        (folder / "gone.yaml").rename(folder / ".#farm.yaml")  # as an editor leaves it beside the file that it has open
        write(folder / "farm.yaml", 14.5, "0.0.2")
        tell(server, int(workers))
        assert {solids for solids, _ in seen(server, 4)} == {14.5}


@WORKERS
def test_the_whole_group_may_be_told(tmp_path: Path, workers: str) -> None:
    """As a terminal does that closes: also while the service starts, and to processes that have said nothing of the signal yet."""
    pack = tmp_path / "farm.yaml"
    write(pack, 12.5, "0.0.1")
    with serving(tmp_path / "log", "--workers", workers, group=True, KILISHO_PACKS=str(pack)) as server:
        for _ in range(20):
            os.killpg(server.process.pid, signal.SIGHUP)
            time.sleep(0.1)
        until(lambda: server.log.read_text().count("Started server") == int(workers))
        write(pack, 14.5, "0.0.2")
        os.killpg(server.process.pid, signal.SIGHUP)
        until(lambda: {solids for solids, _ in seen(server, 4)} == {14.5})
        assert server.process.poll() is None
        assert "died" not in server.log.read_text()


def test_a_worker_that_is_started_later_reads_what_is_in_force_whatever_has_become_of_the_file(tmp_path: Path) -> None:
    pack = tmp_path / "farm.yaml"
    write(pack, 12.5, "0.0.1")
    with serving(tmp_path / "log", "--workers", "2", KILISHO_PACKS=str(pack)) as server:
        until(lambda: server.log.read_text().count("Started server") == 2)
        pack.write_text("broken")
        for pid in alive(server):
            os.kill(pid, signal.SIGKILL)
        until(lambda: server.log.read_text().count("Started server") == 4)
        assert {solids for solids, _ in seen(server, 8)} == {12.5}


def test_a_service_without_packs_may_be_told_too(tmp_path: Path) -> None:
    with serving(tmp_path / "log") as server:
        before = httpx.get(f"{server.url}/ready", timeout=SECONDS).json()
        tell(server, 1)
        tell(server, 2)
        assert httpx.get(f"{server.url}/ready", timeout=SECONDS).json() == before
