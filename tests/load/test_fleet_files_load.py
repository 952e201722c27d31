"""The benchmark of fleets in files reads processes and writes its table as it says."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest
from tests.load.fleet_files import BEGIN, END, found_in, table_of, watched, write_table

from kilisho.fleet.planted import FAULTS

HOLDS = "import time; held = bytearray(80_000_000); time.sleep(1)"
IN_A_CHILD = f"import subprocess, sys; subprocess.run([sys.executable, '-c', {HOLDS!r}])"


def test_the_most_memory_of_a_command_is_seen() -> None:
    used = watched([sys.executable, "-c", HOLDS])
    assert max(used.megabytes.values()) > 80
    assert used.seconds > 1


def test_children_are_seen_apart() -> None:
    own, child = watched([sys.executable, "-c", IN_A_CHILD]).megabytes.values()
    assert own < 80 < child


def test_a_command_that_fails_is_no_measurement() -> None:
    with pytest.raises(subprocess.CalledProcessError):
        watched([sys.executable, "-c", "raise SystemExit(3)"])


def test_every_planted_fault_has_a_row_and_honest_rows_have_theirs(tmp_path: Path) -> None:
    found = found_in(20_000)
    table = table_of(found, 20_000)
    lines = table.splitlines()
    assert [line.split(" | ")[0] for line in lines[2:-1]] == [f"| {name}" for name in FAULTS]
    assert f"| {found.honest:,} | {found.false_alarms:.2%} |" in lines[-1]
    assert sum(found.planted.values()) + found.honest == 20_000


def test_the_table_stands_between_its_marks(tmp_path: Path) -> None:
    file = tmp_path / "guide.md"
    file.write_text(f"before\n{BEGIN}\nold\n{END}\nafter\n")
    for _ in range(2):
        write_table("| new |", file)
    assert file.read_text() == f"before\n{BEGIN}\n| new |\n{END}\nafter\n"
