#!/usr/bin/env python3
"""Benchmark of the process model: ``python tests/load/process.py``. A year of 1,000 invented farms in one run, on one core.

Prints seconds of the processor and of the clock, the best of several repeats.
"""

from __future__ import annotations

import argparse
import os
import sys
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT), str(ROOT / "rules")]
# One core: the threads of a linear algebra library would only wait here.
os.environ.setdefault("OMP_NUM_THREADS", "1")

import numpy as np  # noqa: E402

from kilisho.farm import Shelf  # noqa: E402
from kilisho.packs import load  # noqa: E402
from kilisho.process import Conditions, Feedstock, History, feedstock, mixed, simulate, working_slurry  # noqa: E402

DAYS = 365
PARAMETERS = Shelf(load().data).process


def dung(rng: np.random.Generator, farms: int) -> Feedstock:
    """One substrate with the spread of a sample of farms."""
    return feedstock(
        biogas_yield=rng.uniform(0.20, 0.31, farms), degradation_rate=rng.uniform(0.006, 0.020, farms), methane_share=0.6,
        nitrogen=0.0225, ammonium_share=0.6, potassium=0.014, starts_unaided=True, of_dung=True, parameters=PARAMETERS,
    )  # fmt: skip


def case(farms: int, substrates: int) -> tuple[History, Conditions]:
    """A charge with some starter on the first day, then feeds every day with some missed, at temperatures of a year."""
    rng = np.random.default_rng(1)
    slurry = rng.uniform(0.06, 0.14, (DAYS, farms)) * (rng.random((DAYS, farms)) < 0.9)
    slurry[0] = 4.0
    solids = 60.0 / substrates * slurry[:, None, :] * rng.uniform(0.8, 1.2, (DAYS, substrates, farms))
    season = 22.0 - 5.0 * np.cos(2 * np.pi * np.arange(DAYS) / DAYS)
    temperature = season[:, None] + rng.uniform(-3, 3, farms)
    history = History(mixed(*[dung(rng, farms) for _ in range(substrates)]), solids, slurry, working_slurry(1.0, PARAMETERS))
    return history, Conditions(rng.uniform(5.5, 7.0, farms), temperature)


def request(columns: int) -> tuple[History, Conditions]:
    """What one request runs: a first charge with a sixth of starter, then the same feed every day, for columns that differ a little."""
    rng = np.random.default_rng(2)
    slurry = np.full((DAYS, 1), 0.1)
    slurry[0] = 5.0
    solids = 60.0 * slurry[:, None, :] * rng.uniform(0.8, 1.2, (1, 1, columns))
    season = 22.0 - 5.0 * np.cos(2 * np.pi * np.arange(DAYS) / DAYS)
    temperature = season[:, None] + rng.uniform(-3, 3, columns)
    return History(dung(rng, columns), solids, slurry, working_slurry(1.0, PARAMETERS)), Conditions(6.0, temperature)


def measure(told: tuple[History, Conditions], repeats: int) -> tuple[float, float]:
    """Best processor and clock seconds of one run."""
    history, conditions = told
    taken = []
    for _ in range(repeats):
        processor, clock = time.process_time(), time.perf_counter()
        simulate(history, conditions, PARAMETERS)
        taken.append((time.process_time() - processor, time.perf_counter() - clock))
    return min(one for one, _ in taken), min(one for _, one in taken)


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--farms", type=int, default=1000)
    parser.add_argument("--repeats", type=int, default=3)
    told = parser.parse_args()
    cases = {f"{told.farms} farms, {substrates} substrates": case(told.farms, substrates) for substrates in (1, 3)}
    cases |= {f"one request, {columns} columns": request(columns) for columns in (1, 70)}
    print(f"{f'{DAYS} days':<28}{'processor s':>14}{'clock s':>10}")
    for name, one in cases.items():
        processor, clock = measure(one, told.repeats)
        print(f"{name:<28}{processor:>14.3f}{clock:>10.3f}", flush=True)


if __name__ == "__main__":
    main()
