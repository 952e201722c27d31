"""Faults that are planted in an invented fleet, and how many of them validation finds."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import numpy as np
import numpy.typing as npt
import pyarrow as pa
import pyarrow.compute as pc

Columns = dict[str, Any]
Planting = Callable[[Columns, Any, np.random.Generator], None]
PLANTED, NONE = "planted", "none"
# The id of no structure.
UNREAD = "igloo"


@dataclass(frozen=True)
class Fault:
    """A fault that can be planted, and where an answer shows that it was found: a column, and the word in it."""

    plant: Planting
    column: str
    word: str


def _scale(name: str, low: float, high: float) -> Planting:
    """Multiply a column by a factor between two ends."""

    def plant_one(columns: Columns, rows: Any, chance: np.random.Generator) -> None:
        columns[name][rows] *= chance.uniform(low, high, rows.size)

    return plant_one


def _starve(columns: Columns, rows: Any, chance: np.random.Generator) -> None:
    share = chance.uniform(0.15, 0.4, rows.size)
    for name in ("feed_mass", "water_volume", "biogas_measured"):
        columns[name][rows] *= share


def _overfeed(columns: Columns, rows: Any, chance: np.random.Generator) -> None:
    share = chance.uniform(4.0, 6.0, rows.size)
    for name in ("feed_mass", "water_volume", "animal_count"):
        columns[name][rows] = np.ceil(columns[name][rows] * share)
    columns["biogas_measured"][rows] *= share / 2


def _write(name: str, value: Any) -> Planting:
    """Write a value, or that of a function, into a column."""

    def plant_one(columns: Columns, rows: Any, _: np.random.Generator) -> None:
        columns[name][rows] = value(columns[name][rows]) if callable(value) else value

    return plant_one


FAULTS: dict[str, Fault] = {
    "volume_in_litres": Fault(_scale("total_volume", 1000, 1000), "slips", "total_volume"),
    "feed_in_grams": Fault(_scale("feed_mass", 1000, 1000), "slips", "feed_mass"),
    "feed_in_tonnes": Fault(_scale("feed_mass", 0.001, 0.001), "slips", "feed_mass"),
    "feed_decimal_point": Fault(_scale("feed_mass", 10, 10), "slips", "feed_mass"),
    "water_in_cubic_metres": Fault(_scale("water_volume", 0.001, 0.001), "slips", "water_volume"),
    "gas_in_litres": Fault(_scale("biogas_measured", 1000, 1000), "slips", "biogas_measured"),
    "gas_decimal_point": Fault(_scale("biogas_measured", 10, 10), "slips", "biogas_measured"),
    "air_in_fahrenheit": Fault(_write("mean_air_temperature", lambda value: value * 1.8 + 32), "slips", "mean_air_temperature"),
    "too_large": Fault(_scale("animal_count", 0.1, 0.2), "size", "too_large"),
    "too_small": Fault(_scale("animal_count", 5, 8), "size", "too_small"),
    "starved": Fault(_starve, "feeding", "starved"),
    "overfed": Fault(_overfeed, "feeding", "overfed"),
    "too_wet": Fault(_scale("water_volume", 2.5, 4), "feeding", "too_wet"),
    "too_dry": Fault(_scale("water_volume", 0.05, 0.15), "feeding", "too_dry"),
    "too_seldom": Fault(_write("feeding_interval", 10.0), "feeding", "too_seldom"),
    "leaking": Fault(_scale("biogas_measured", 0.2, 0.5), "gas", "below"),
    "negative_volume": Fault(_scale("total_volume", -1, -1), "faults", "total_volume"),
    "unknown_structure": Fault(_write("structure", -1), "faults", "structure"),
}


def plant(columns: Columns, chance: np.random.Generator, faulty: float) -> npt.NDArray[np.intp]:
    """Plant faults in a share of the rows; gives the number of each row's fault, 0 for none."""
    rows = columns["total_volume"].size
    planted = np.where(chance.random(rows) < faulty, chance.integers(1, len(FAULTS) + 1, rows), 0)
    for number, fault in enumerate(FAULTS.values(), start=1):
        fault.plant(columns, np.flatnonzero(planted == number), chance)
    columns["animal_count"] = np.maximum(1.0, np.round(columns["animal_count"]))
    return planted


@dataclass(frozen=True)
class Found:
    """How well validation does on an invented fleet: rows and found rows by planted fault, and honest rows that are called faulty."""

    planted: dict[str, int]
    found: dict[str, int]
    honest: int
    falsely: dict[str, int]

    def recall(self, fault: str) -> float:
        """Share of the rows with a fault in which it is found."""
        return self.found[fault] / self.planted[fault]

    @property
    def false_alarms(self) -> float:
        """Share of honest rows that are called doubtful, faulty or dangerous, or are refused."""
        return sum(self.falsely.values()) / self.honest


CALLED = ("refused", "danger", "doubtful", "faulty")


def measure(fleet: pa.Table, answers: pa.Table) -> Found:
    """Hold the answers against what was planted."""
    planted = fleet[PLANTED].cast(pa.string())
    counts = {name: pc.equal(planted, name) for name in FAULTS}
    seen = {name: pc.and_(rows, _shows(answers, FAULTS[name])) for name, rows in counts.items()}
    honest = answers.filter(pc.equal(planted, NONE))["verdict"].cast(pa.string())
    falsely = {word: pc.sum(pc.equal(honest, word)).as_py() or 0 for word in CALLED}
    totals, found = ({name: pc.sum(rows).as_py() or 0 for name, rows in which.items()} for which in (counts, seen))
    return Found(totals, found, len(honest), falsely)


def _shows(answers: pa.Table, fault: Fault) -> Any:
    column = answers[fault.column]
    if fault.column not in ("slips", "faults"):
        return pc.fill_null(pc.equal(column.cast(pa.string()), fault.word), False)
    member = "member" if fault.column == "slips" else "column"
    shown = [any(one[member] == fault.word for one in cell or ()) for cell in column.to_pylist()]
    return pa.array(shown)
