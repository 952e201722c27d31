"""The compose file and the Dockerfile say what the image test proves, so that a reader gets the same protection."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
import yaml

from kilisho_api import settings

DOCKER = Path(__file__).resolve().parents[2] / "docker"
DOCKERFILE = (DOCKER / "Dockerfile").read_text("utf-8").splitlines()


@pytest.fixture
def service() -> dict[str, Any]:
    written: dict[str, Any] = yaml.safe_load((DOCKER / "compose.yaml").read_text("utf-8"))["services"]["kilisho"]
    return written


def test_the_service_gets_no_right_and_no_disk_but_for_tables(service: dict[str, Any]) -> None:
    assert service["read_only"] is True
    assert service["cap_drop"] == ["ALL"]
    assert service["security_opt"] == ["no-new-privileges:true"]
    [temporary] = service["tmpfs"]
    place, _, options = temporary.partition(":")
    assert place == "/tmp"
    assert {"noexec", "nosuid", "nodev"} <= set(options.split(","))
    assert not {"privileged", "cap_add", "devices", "network_mode", "pid", "ipc"} & service.keys()
    assert service["volumes"] == [f"tables:{service['environment']['KILISHO_TABLE_FOLDER']}"]


def test_it_is_open_to_this_computer_only(service: dict[str, Any]) -> None:
    assert service["ports"] == ["127.0.0.1:8080:8080"]


def test_the_settings_shown_are_settings_that_can_be_read(service: dict[str, Any], tmp_path: Path) -> None:
    known = {name for name, _, _ in settings.table()}
    assert service["environment"].keys() <= known
    assert settings.read({**service["environment"], "KILISHO_TABLE_FOLDER": str(tmp_path)}).workers == 2


def test_a_folder_for_tables_that_cannot_be_written_is_told_at_the_start(service: dict[str, Any]) -> None:
    with pytest.raises(settings.SettingsError, match="KILISHO_TABLE_FOLDER: expected a folder that is there and can be written"):
        settings.read({**service["environment"], "KILISHO_TABLE_FOLDER": "/nowhere"})


def test_it_builds_from_the_dockerfile_in_the_checkout(service: dict[str, Any]) -> None:
    build = service["build"]
    assert (DOCKER / build["context"] / build["dockerfile"]).resolve() == (DOCKER / "Dockerfile").resolve()


def test_it_is_nobody_even_where_the_image_is_overridden(service: dict[str, Any]) -> None:
    assert f"USER {service['user']}" in DOCKERFILE
    assert not service["user"].startswith("0")


def test_it_cannot_take_the_machine_with_it(service: dict[str, Any]) -> None:
    assert service["pids_limit"] <= 200
    assert service["mem_limit"] == "1g"


def test_both_stages_stand_on_the_base_that_was_asked_for() -> None:
    assert [line.split()[1] for line in DOCKERFILE if line.startswith("FROM")] == ["${BASE}", "${BASE}"]
    assert DOCKERFILE.index("USER 10001:10001") > DOCKERFILE.index("FROM ${BASE}")


def test_only_what_the_build_reads_is_sent_to_it() -> None:
    allowed = [line[1:] for line in (DOCKER / "Dockerfile.dockerignore").read_text("utf-8").splitlines() if line.startswith("!")]
    copied = [word.strip("/") for line in DOCKERFILE if line.startswith("COPY") and "--from" not in line for word in line.split()[1:-1]]
    assert all(any(place == one or place.startswith(f"{one}/") for place in allowed) for one in copied)
    assert not any(place.startswith("tests") for place in allowed)
