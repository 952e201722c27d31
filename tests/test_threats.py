"""The page of threats names, for each, tests that exist and stand against it."""

from __future__ import annotations

import ast
import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
PAGE = (ROOT / "api" / "THREATS.md").read_text("utf-8")
ROWS = [line for line in PAGE.splitlines() if line.startswith("| ") and not line.startswith("| threat")]
ONE_PAGE = 1_000


def names_in(file: Path) -> set[str]:
    """Names of the test functions of a file."""
    return {node.name for node in ast.parse(file.read_text("utf-8")).body if isinstance(node, ast.FunctionDef)}


def test_every_threat_is_held_by_tests_that_exist() -> None:
    assert len(ROWS) >= 14
    for row in ROWS:
        named = re.findall(r"`(tests/[\w/]+\.py)::(\w+)`", row.split("|")[3])
        assert named, row
        assert [f"{file}::{test}" for file, test in named if test not in names_in(ROOT / file)] == []


def test_it_is_one_page_with_all_its_parts() -> None:
    assert len(PAGE.split()) < ONE_PAGE
    for part in ("**Assets.**", "**Attackers.**", "**Entry points.**", "**Left to whoever deploys**"):
        assert part in PAGE


def test_what_is_left_to_the_proxy_is_said() -> None:
    left = PAGE.partition("**Left to whoever deploys**")[2]
    for word in ("TLS", "Strict-Transport-Security", "Slow readers", "per process", "/ready"):
        assert word in left
