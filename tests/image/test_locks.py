"""The locks are what pyproject.toml asks for, pinned and hashed, and agree with one another."""

from __future__ import annotations

import re
import tomllib
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name
from packaging.version import Version

ROOT = Path(__file__).resolve().parents[2]
LOCKS = ("docker/build.lock", "docker/requirements.lock", "tests/requirements.lock")
PYTHONS = ("3.11", "3.12", "3.13")
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))
EXTRAS = PROJECT["project"]["optional-dependencies"]
RUN = [*PROJECT["project"]["dependencies"], *EXTRAS["api"], *EXTRAS["fleet"], *EXTRAS["otel"]]
TEST = [*RUN, *EXTRAS["test"]]
ASKED = {"docker/build.lock": PROJECT["build-system"]["requires"], "docker/requirements.lock": RUN, "tests/requirements.lock": TEST}


def entries(lock: str) -> list[str]:
    """Each pinned requirement with its hashes, on one line."""
    text = (ROOT / lock).read_text("utf-8").replace("\\\n", " ")
    return [line for line in text.splitlines() if line.strip() and not line.startswith("#")]


def pinned(lock: str, python: str) -> dict[str, Version]:
    """Version of each package that the lock installs on Linux under ``python``."""
    under = {"python_version": python, "python_full_version": f"{python}.0", "sys_platform": "linux"}
    requirements = [Requirement(entry.partition(" --hash")[0]) for entry in entries(lock)]
    wanted = [one for one in requirements if one.marker is None or one.marker.evaluate(under)]
    return {canonicalize_name(one.name): Version(str(one.specifier).removeprefix("==")) for one in wanted}


@pytest.mark.parametrize("lock", LOCKS)
def test_every_entry_is_pinned_and_hashed_and_names_no_place(lock: str) -> None:
    form = re.compile(r"[a-z0-9-]+==[\w.!+]+( ; [^:]+)?(\s+--hash=sha256:[0-9a-f]{64})+\s*")
    assert [entry[:60] for entry in entries(lock) if not form.fullmatch(entry)] == []
    assert "//" not in (ROOT / lock).read_text("utf-8")


@pytest.mark.parametrize("python", PYTHONS)
@pytest.mark.parametrize("lock", LOCKS)
def test_everything_that_the_project_asks_for_is_in_its_lock(lock: str, python: str) -> None:
    held = pinned(lock, python)
    wanted = [Requirement(text) for text in ASKED[lock]]
    unmet = [str(one) for one in wanted if not one.specifier.contains(held.get(canonicalize_name(one.name), "0"), prereleases=True)]
    assert unmet == []


@pytest.mark.parametrize("python", PYTHONS)
def test_tests_run_on_the_very_packages_that_the_service_runs_on(python: str) -> None:
    service, tests = pinned("docker/requirements.lock", python), pinned("tests/requirements.lock", python)
    assert service.items() <= tests.items()


def test_the_build_tools_agree_with_what_the_tests_install() -> None:
    build, tests = pinned("docker/build.lock", "3.11"), pinned("tests/requirements.lock", "3.11")
    assert {name: tests[name] for name in build.keys() & tests.keys()} == {name: build[name] for name in build.keys() & tests.keys()}
