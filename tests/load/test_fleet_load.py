"""The benchmark itself: that it runs, keeps to its terms and tells times that are times. It decides no test by speed."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

from tests.load import fleet as benchmark
from tests.load.fleet_rival import Rival, with_lists
from tests.load.test_fleet_rival import both
from tests.rules.fleets import fleet

SCRIPT = Path(benchmark.__file__)


def test_the_best_of_each_time_is_told() -> None:
    runs = [benchmark.Taken(3.0, 1.0), benchmark.Taken(2.0, 1.5)]
    assert benchmark.best(runs) == benchmark.Taken(2.0, 1.0)


def test_a_piece_of_work_is_timed() -> None:
    found = benchmark.taken(lambda: sum(range(200_000)))
    assert 0 < found.processor < 5
    assert 0 < found.clock < 60


def test_the_lists_of_the_rival_are_those_of_the_fleet() -> None:
    ours, theirs, _ = both()
    lists = with_lists(theirs, Rival(fleet()))["failed"].to_list()
    assert [sorted(cell) if cell is not None else None for cell in ours["failed"].to_pylist()] == [
        sorted(cell) if cell is not None else None for cell in lists
    ]


def test_it_runs_and_tells_rows_a_second_of_all_three() -> None:
    done = subprocess.run([sys.executable, str(SCRIPT), "--rows", "3000", "--rounds", "1"], capture_output=True, text=True, check=True)
    lines = done.stdout.splitlines()
    assert [line[:14].strip() for line in lines] == ["", "fleet", "query, bits", "query, lists"]
    assert all(int(number.replace(",", "")) > 1000 for line in lines[1:] for number in line[14:].split())


def test_it_tells_what_is_found() -> None:
    done = subprocess.run([sys.executable, str(SCRIPT), "--rows", "4000", "--found"], capture_output=True, text=True, check=True)
    told = {line.split()[0]: line for line in done.stdout.splitlines()}
    assert "100.0%" in told["volume_in_litres"]
    assert "honest" in told["none"]
