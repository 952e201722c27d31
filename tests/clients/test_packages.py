"""The Node packages are pinned, hashed and name no registry; what reads them is run wherever there is npm."""

from __future__ import annotations

import json
import re

from tests import run
from tests.clients import packages

LOCK = (packages.HERE / "package-lock.json").read_text("utf-8")


def test_every_package_is_pinned_and_hashed_and_names_no_place() -> None:
    held = {name: entry for name, entry in json.loads(LOCK)["packages"].items() if name}
    assert len(held) > 100
    assert [name for name, entry in held.items() if not re.fullmatch(r"sha512-[\w+/=]+", entry["integrity"])] == []
    assert [name for name, entry in held.items() if "resolved" in entry] == []


def test_what_is_asked_for_is_what_is_locked() -> None:
    asked = json.loads((packages.HERE / "package.json").read_text("utf-8"))["devDependencies"]
    held = json.loads(LOCK)["packages"]
    assert {name: held[f"node_modules/{name}"]["version"] for name in asked} == asked


def test_a_step_of_the_checks_installs_them_before_others_use_them() -> None:
    names = [name for name, _ in run.node_steps()]
    assert names == ["Node packages", "Spectral", "Redocly"]
    configs = [word for _, command in run.node_steps() for word in command if word.endswith(".yaml")]
    assert all((packages.HERE / config.rpartition("/")[2]).exists() for config in configs)


def test_a_rule_that_is_off_says_why() -> None:
    for name in ("spectral.yaml", "redocly.yaml"):
        lines = (packages.HERE / name).read_text("utf-8").splitlines()
        off = [place for place, line in enumerate(lines) if line.endswith(": off")]
        assert off
        assert all(lines[place - 1].strip().startswith("# ") for place in off)
