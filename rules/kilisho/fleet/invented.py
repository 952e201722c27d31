"""Invented fleets of any size with planted faults, for demonstrations, benchmarks and for measuring what validation finds.

Nothing here is a real installation. Each honest row is a household's digester that is sized and fed near the rulebook's design, with
the scatter that the rulebook's own ranges give to dung, solids and gas, and with meters that err; each planted fault then changes one
thing. The gas of an honest row is drawn for itself, figure by figure, and not read from the grid of ranges that validation uses.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np
import numpy.typing as npt
import pyarrow as pa
import pyarrow.compute as pc

from kilisho.farm import GRAPH, Shelf
from kilisho.formulas.digester import SEA_LEVEL_PRESSURE
from kilisho.packs import Rulebook
from kilisho.questions.installation.figures import HOUSINGS, Figures
from kilisho.questions.installation.work import desk_of
from kilisho.questions.opening import shelf_of
from kilisho.rulebook import Property

Array = npt.NDArray[np.float64]
Columns = dict[str, Any]

NOTICE = "Invented installations: no row is a real one."
PLANTED, NONE = "planted", "none"
ROWS = 65_536
FAULTY = 0.2
STRUCTURES = {"fixed_dome": 0.6, "floating_drum": 0.2, "bag": 0.2}
ANIMALS = {"dairy_cow": 0.45, "local_cow": 0.2, "buffalo": 0.15, "fattening_pig": 0.2}
SIZES = (4.0, 20.0)
AIR = (14.0, 22.0, 29.0)
FED_SHARE = (0.85, 1.0, 1.25)
WATER = (0.85, 1.0, 1.15)
SPARE_DUNG = (1.0, 1.1, 1.4)
METER_ERROR = 0.03
INTERVALS = {1.0: 0.8, 2.0: 0.2}


@dataclass(frozen=True)
class Fault:
    """A fault that can be planted, and where an answer shows that it was found: a column, and the word in it."""

    plant: Callable[[Columns, Any, np.random.Generator], None]
    column: str
    word: str


def _scale(name: str, low: float, high: float) -> Callable[[Columns, Any, np.random.Generator], None]:
    """Multiply a column by a factor between two ends."""

    def plant(columns: Columns, rows: Any, chance: np.random.Generator) -> None:
        columns[name][rows] *= chance.uniform(low, high, rows.size)

    return plant


def _starve(columns: Columns, rows: Any, chance: np.random.Generator) -> None:
    share = chance.uniform(0.15, 0.4, rows.size)
    for name in ("feed_mass", "water_volume", "biogas_measured"):
        columns[name][rows] *= share


def _overfeed(columns: Columns, rows: Any, chance: np.random.Generator) -> None:
    share = chance.uniform(4.0, 6.0, rows.size)
    for name in ("feed_mass", "water_volume", "animal_count"):
        columns[name][rows] = np.ceil(columns[name][rows] * share)
    columns["biogas_measured"][rows] *= share / 2


def _write(name: str, value: Any) -> Callable[[Columns, Any, np.random.Generator], None]:
    """Write a value, or that of a function, into a column."""

    def plant(columns: Columns, rows: Any, chance: np.random.Generator) -> None:
        columns[name][rows] = value(columns[name][rows]) if callable(value) else value

    return plant


UNKNOWN_STRUCTURE = -1
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
    "unknown_structure": Fault(_write("structure", UNKNOWN_STRUCTURE), "faults", "structure"),
}


def invent(rows: int, rulebook: Rulebook, seed: int = 1, faulty: float = FAULTY) -> Iterator[pa.RecordBatch]:
    """Record batches of ``rows`` invented installations; ``faulty`` of them bear one planted fault, named in the column ``planted``.

    The same seed gives the same rows, whatever their number; the columns are those of a standard record.
    """
    figures = desk_of(shelf_of(rulebook.data)).figures
    for number, start in enumerate(range(0, rows, ROWS)):
        chance = np.random.default_rng([seed, number])
        columns = _honest(figures, chance)
        planted = _plant(columns, chance, faulty)
        yield _batch(columns, planted, start, figures).slice(0, min(ROWS, rows - start))


def _honest(figures: Figures, chance: np.random.Generator) -> Columns:
    structure, animal = _pick(STRUCTURES, figures.structures, chance), _pick(ANIMALS, figures.animals, chance)
    substrate = figures.substrate_of_animal.take(animal)
    air = chance.triangular(*AIR, ROWS)
    volume = _sizes(figures, structure, chance)
    working = volume * figures.of_structure["fill_share"].take(structure)
    warmth = air + figures.shelf.figure("soil_offset").typical
    feed = _fed(figures, substrate, working, warmth, chance)
    water = _usual(figures, substrate, feed)["usual_slurry_per_day"] - _usual(figures, substrate, feed)["displaced_volume_per_day"]
    water = water * chance.triangular(*WATER, ROWS)
    columns = {"structure": structure, "total_volume": volume, "substrate": substrate, "animal": animal, "mean_air_temperature": air}
    gas = _gas(figures, columns, feed, water, warmth, chance)
    return {
        **columns,
        "feed_mass": np.round(feed, 1),
        "water_volume": np.round(water * 1000, 1),
        "feeding_interval": chance.choice(list(INTERVALS), ROWS, p=list(INTERVALS.values())),
        "biogas_measured": np.round(gas * chance.normal(1, METER_ERROR, ROWS), 3),
        "animal_count": _heads(figures, animal, feed, chance),
    }


def _pick(shares: Mapping[str, float], ids: tuple[str, ...], chance: np.random.Generator) -> npt.NDArray[np.intp]:
    """Codes of the ids that the rulebook has, with their shares."""
    known = {ids.index(name): share for name, share in shares.items() if name in ids} or {0: 1.0}
    total = sum(known.values())
    return chance.choice(np.array(list(known), np.intp), ROWS, p=[share / total for share in known.values()])


def _sizes(figures: Figures, structure: Any, chance: np.random.Generator) -> Array:
    found, low, high = np.empty(ROWS), *SIZES
    for code in np.unique(structure).tolist():
        built = figures.shelf.data.structures[figures.structures[code]].buildable_sizes.total_volumes
        here = structure == code
        found[here] = chance.choice([size for size in built if low <= size <= high] or list(built), int(here.sum()))
    return found


def _usual(figures: Figures, substrate: Any, feed: Any) -> dict[str, Any]:
    values = {name: table.take(substrate) for name, table in figures.of_substrate.items()}
    given = {**values, "feed_mass_per_day": feed, "water_density": figures.water_density}
    return GRAPH.solve(given, ("usual_slurry_per_day", "displaced_volume_per_day"))


def _fed(figures: Figures, substrate: Any, working: Array, warmth: Array, chance: np.random.Generator) -> Array:
    """Feed near the design: what keeps the design retention with the usual water, more or less."""
    at, _, typical, _ = figures.design_retention
    slurry = working / np.interp(warmth, at, typical)
    feed: Array = slurry / _usual(figures, substrate, np.ones(ROWS))["usual_slurry_per_day"] * chance.triangular(*FED_SHARE, ROWS)
    return feed


def _heads(figures: Figures, animal: Any, feed: Array, chance: np.random.Generator) -> Array:
    """Animals whose dung, as much as these animals drop, is the feed and some more."""
    dung = _drawn_by_code(animal, [entry.dung_per_day for entry in figures.shelf.data.animals.values()], chance)
    gathered = [getattr(entry.collectable, HOUSINGS[0]) for entry in figures.shelf.data.animals.values()]
    return np.maximum(1.0, np.round(feed * chance.triangular(*SPARE_DUNG, ROWS) / (dung * _drawn_by_code(animal, gathered, chance))))


def _drawn_by_code(code: Any, figures: list[Property], chance: np.random.Generator) -> Array:
    """A draw from each row's figure, triangular between its ends."""
    low, typical, high = (np.array([getattr(one, end) for one in figures]).take(code) for end in ("least", "typical", "most"))
    return np.where(high > low, chance.triangular(low, typical, np.maximum(high, low + 1e-9)), typical)


def _gas(figures: Figures, columns: Columns, feed: Array, water: Array, warmth: Array, chance: np.random.Generator) -> Array:
    """The gas of each row from its own draw of everything that the rulebook gives a range."""
    entries = list(figures.shelf.data.substrates.values())
    fields = {"total_solids": "total_solids", "volatile_solids": "volatile_solids_share", "bulk_density": "bulk_density"}
    fields |= {"biogas_yield": "biogas_yield", "degradation_rate": "degradation_rate"}
    drawn = {
        name: _drawn_by_code(columns["substrate"], [getattr(entry, field) for entry in entries], chance) for field, name in fields.items()
    }
    fill = [entry.fill_share for entry in figures.shelf.data.structures.values()]
    given = {
        **drawn,
        "feed_mass_per_day": feed,
        "liquid_per_day": water,
        "water_density": figures.water_density,
        "total_volume": columns["total_volume"],
        "fill_share": _drawn_by_code(columns["structure"], fill, chance),
        "tanks_in_series": figures.of_structure["tanks_in_series"].take(columns["structure"]),
        "digester_temperature": warmth + chance.triangular(-0.5, 0.0, 0.5, ROWS),
        "gas_pressure": SEA_LEVEL_PRESSURE,
    }
    gas: Array = GRAPH.solve(given, ("biogas_per_day",))["biogas_per_day"]
    return gas


def _plant(columns: Columns, chance: np.random.Generator, faulty: float) -> Any:
    """Plant faults in a share of the rows; gives the number of each row's fault, 0 for none."""
    planted = np.where(chance.random(ROWS) < faulty, chance.integers(1, len(FAULTS) + 1, ROWS), 0)
    for number, fault in enumerate(FAULTS.values(), start=1):
        fault.plant(columns, np.flatnonzero(planted == number), chance)
    columns["animal_count"] = np.maximum(1.0, np.round(columns["animal_count"]))
    return planted


def _batch(columns: Columns, planted: Any, start: int, figures: Figures) -> pa.RecordBatch:
    number = pc.utf8_lpad(pa.array(np.arange(start + 1, start + ROWS + 1)).cast(pa.string()), 9, "0")
    # The last id is that of no structure.
    structures = (*figures.structures, "igloo")
    arrays = {
        "id": pc.binary_join_element_wise("INV", number, "-"),
        "structure": _words(columns["structure"] % len(structures), structures),
        "total_volume": pa.array(columns["total_volume"]),
        "substrate": _words(columns["substrate"], figures.substrates),
        **{name: pa.array(columns[name]) for name in ("feed_mass", "water_volume", "feeding_interval", "biogas_measured")},
        "mean_air_temperature": pa.array(np.round(columns["mean_air_temperature"], 1)),
        "animal": _words(columns["animal"], figures.animals),
        "animal_count": pa.array(columns["animal_count"]),
        PLANTED: _words(planted, (NONE, *FAULTS)),
    }
    return pa.RecordBatch.from_pydict(arrays).replace_schema_metadata({"notice": NOTICE})


def _words(codes: Any, words: tuple[str, ...]) -> pa.DictionaryArray:
    return pa.DictionaryArray.from_arrays(pa.array(codes.astype(np.int32)), pa.array(words, pa.string()))


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
