#!/usr/bin/env python3
"""Benchmark of validation in files: ``python tests/load/fleet_files.py --rows 10000000 --folder FOLDER``.

Invents a fleet (once a folder), validates it with the command line into one file and into a folder, and prints rows a second and the most
memory that the command and its workers held. ``--planted`` measures instead how many planted faults are found, and writes the table
between its marks in DEVELOPERS.md.
"""

from __future__ import annotations

import argparse
import subprocess
import sys
import tempfile
import time
from dataclasses import dataclass, field
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT), str(ROOT / "rules")]

import pyarrow as pa  # noqa: E402

from kilisho.fleet import validate  # noqa: E402
from kilisho.fleet.invented import invent  # noqa: E402
from kilisho.fleet.planted import CALLED, FAULTS, Found, measure  # noqa: E402
from kilisho.packs import load  # noqa: E402

BEGIN, END = "<!-- planted: python tests/load/fleet_files.py --planted -->", "<!-- planted ends -->"
KILISHO = (sys.executable, "-m", "kilisho.cli")
EVERY = 0.2


@dataclass
class Used:
    """What a command used: seconds of the clock, seconds of processors, and the most megabytes resident, by process."""

    seconds: float = 0.0
    processor: float = 0.0
    megabytes: dict[int, float] = field(default_factory=dict)
    ticks: dict[int, float] = field(default_factory=dict)


def watched(command: list[str]) -> Used:
    """Run a command and look at it and its children until it ends; raises CalledProcessError unless it ends well."""
    used, began = Used(), time.monotonic()
    with subprocess.Popen(
        command, cwd=ROOT, stdout=subprocess.DEVNULL, env={"PYTHONPATH": str(ROOT / "rules"), "PATH": "/usr/bin:/bin"}
    ) as process:
        while process.poll() is None:
            for one in (process.pid, *_children(process.pid)):
                _look(one, used)
            time.sleep(EVERY)
    if process.returncode:
        raise subprocess.CalledProcessError(process.returncode, command)
    used.seconds, used.processor = time.monotonic() - began, sum(used.ticks.values())
    return used


def _children(process: int) -> list[int]:
    try:
        return [int(one) for one in Path(f"/proc/{process}/task/{process}/children").read_text("ascii").split()]
    except OSError:
        return []


def _look(process: int, used: Used) -> None:
    try:
        status = Path(f"/proc/{process}/status").read_text("ascii")
        stat = Path(f"/proc/{process}/stat").read_text("ascii").rpartition(")")[2].split()
    except OSError:
        return
    most = next((int(line.split()[1]) / 1024 for line in status.splitlines() if line.startswith("VmHWM")), 0.0)
    used.megabytes[process] = max(most, used.megabytes.get(process, 0.0))
    used.ticks[process] = (int(stat[11]) + int(stat[12])) / 100


def time_files(rows: int, folder: Path, workers: int, kind: str) -> None:
    """Validate a fleet of so many rows, in a file of one of the formats, and print what that took."""
    folder.mkdir(parents=True, exist_ok=True)
    fleet = folder / f"invented-{rows}.{kind}"
    if not fleet.exists():
        made = watched([*KILISHO, "invent-fleet", str(rows), "-o", str(fleet)])
        print(f"invented: {rows / made.seconds:,.0f} rows/s", flush=True)
    print("| into | rows/s | processor s a million rows | most MB, command | most MB, a worker |\n|---|---:|---:|---:|---:|")
    for name, out in {"one Parquet file": folder / "answers.parquet", "a folder of Parquet files": f"{folder}/answers/"}.items():
        used = watched([*KILISHO, "validate", str(fleet), "-o", str(out), "--workers", str(workers), "--restart"])
        own, *others = used.megabytes.values()
        cells = [name, f"{rows / used.seconds:,.0f}", f"{used.processor / rows * 1e6:.1f}", f"{own:.0f}", f"{max(others, default=0):.0f}"]
        print(f"| {' | '.join(cells)} |", flush=True)


def found_in(rows: int) -> Found:
    """How well validation does on an invented fleet."""
    rulebook = load()
    batches = list(invent(rows, rulebook, seed=7))
    return measure(pa.Table.from_batches(batches), pa.Table.from_batches(list(validate(batches, rulebook))))


def table_of(found: Found, rows: int) -> str:
    """What was found of each planted fault, and how many honest rows are called something, as a Markdown table."""
    lines = [f"| planted in {rows:,} invented rows | rows | found |", "|---|---:|---:|"]
    lines += [f"| {name} | {found.planted[name]:,} | {found.recall(name):.1%} |" for name in FAULTS]
    falsely = ", ".join(f"{word} {found.falsely[word] / found.honest:.2%}" for word in CALLED)
    return "\n".join([*lines, f"| nothing: called {falsely} | {found.honest:,} | {found.false_alarms:.2%} |"])


def write_table(table: str, file: Path) -> None:
    """Put the table between its marks."""
    before, _, rest = file.read_text("utf-8").partition(BEGIN)
    _, _, after = rest.partition(END)
    file.write_text(f"{before}{BEGIN}\n{table}\n{END}{after}", "utf-8")


def main() -> None:
    """Measure and print, or measure and write the table."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--rows", type=int, default=1_000_000)
    parser.add_argument("--folder", type=Path, default=Path(tempfile.gettempdir()) / "kilisho-fleet")
    parser.add_argument("--workers", type=int, default=2)
    parser.add_argument("--kind", choices=("parquet", "arrow", "csv", "ndjson"), default="parquet", help="format of the invented fleet")
    parser.add_argument("--planted", action="store_true")
    told = parser.parse_args()
    if told.planted:
        write_table(table_of(found_in(told.rows), told.rows), ROOT / "DEVELOPERS.md")
        return
    time_files(told.rows, told.folder, told.workers, told.kind)


if __name__ == "__main__":
    main()
