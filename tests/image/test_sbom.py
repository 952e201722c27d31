"""The bill of materials: every locked package of the image, with version, address and hashes, in CycloneDX."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from packaging.utils import canonicalize_name
from tests.image.test_locks import entries

ROOT = Path(__file__).resolve().parents[2]
LOCK = "docker/requirements.lock"
# As DEVELOPERS.md has it. The packages are read from the lock alone: nothing is asked of a network.
COMMAND = ("cyclonedx_py", "requirements", "--pyproject", "pyproject.toml", "--output-reproducible", "--validate", LOCK)


def made() -> str:
    """The bill as the command writes it; it is checked against CycloneDX's own schema on the way."""
    return subprocess.run([sys.executable, "-W", "ignore", "-m", *COMMAND], cwd=ROOT, capture_output=True, text=True, check=True).stdout


@pytest.fixture(scope="module")
def bill() -> dict[str, Any]:
    read: dict[str, Any] = json.loads(made())
    return read


def locked() -> dict[str, tuple[str, set[str]]]:
    """Version and hashes of each package of the lock."""
    found = {}
    for entry in entries(LOCK):
        requirement, *hashes = entry.split("--hash=sha256:")
        name, _, version = requirement.partition(";")[0].strip().partition("==")
        found[canonicalize_name(name)] = (version.strip(), {one.strip() for one in hashes})
    return found


def test_every_locked_package_is_in_it_and_nothing_else(bill: dict[str, Any]) -> None:
    told = {canonicalize_name(one["name"]): one["version"] for one in bill["components"]}
    assert told == {name: version for name, (version, _) in locked().items()}
    assert len(told) > 30


def test_each_is_named_so_that_a_scanner_knows_it_and_with_the_hashes_of_the_lock(bill: dict[str, Any]) -> None:
    for one in bill["components"]:
        name = canonicalize_name(one["name"])
        assert one["purl"] == f"pkg:pypi/{name}@{one['version']}"
        told = {item["content"] for reference in one["externalReferences"] for item in reference.get("hashes", ())}
        assert told == locked()[name][1]
        assert all(len(content) == 64 for content in told)


def test_it_is_a_bill_of_this_project(bill: dict[str, Any]) -> None:
    assert bill["bomFormat"] == "CycloneDX"
    assert bill["metadata"]["component"]["name"] == "kilisho"


def test_the_same_lock_gives_the_same_bill(bill: dict[str, Any]) -> None:
    assert json.loads(made()) == bill
    assert str(ROOT) not in json.dumps(bill)


def test_the_command_is_the_one_that_developers_read() -> None:
    assert "python -m " + " ".join(COMMAND) in (ROOT / "DEVELOPERS.md").read_text("utf-8")
