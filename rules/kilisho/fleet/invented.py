"""Invented fleets of any size with planted faults, for demonstrations, benchmarks and for measuring what validation finds.

Nothing here is a real installation. Each honest row is a household's digester that is sized and fed near the rulebook's design, with
the scatter that the rulebook's own ranges give to dung, solids and gas, and with meters that err; each planted fault then changes one
thing. The gas of an honest row is drawn for itself, figure by figure, and not read from the grid of ranges that validation uses.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

import numpy as np
import numpy.typing as npt
import pyarrow as pa
import pyarrow.compute as pc

from kilisho.farm import GRAPH
from kilisho.fleet.planted import FAULTS, NONE, PLANTED, UNREAD, plant
from kilisho.fleet.table import NOTICE
from kilisho.formulas.digester import REFERENCE_TEMPERATURE, SEA_LEVEL_PRESSURE
from kilisho.formulas.gas import normal_factor
from kilisho.formulas.kinetics import chen_hashimoto_share
from kilisho.packs import Rulebook
from kilisho.questions.gas import GROWTH_PARAMETERS, LEAST_GROWTH_TEMPERATURE, MOST_SOLIDS_CONCENTRATION
from kilisho.questions.installation.figures import HOUSINGS, Figures
from kilisho.questions.installation.work import desk_of
from kilisho.questions.opening import shelf_of
from kilisho.ranges import triangular
from kilisho.rulebook import Property

Array = npt.NDArray[np.float64]
Columns = dict[str, Any]

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


def invent(rows: int, rulebook: Rulebook, seed: int = 1, faulty: float = FAULTY) -> Iterator[pa.RecordBatch]:
    """Record batches of ``rows`` invented installations; ``faulty`` of them bear one planted fault, named in the column ``planted``.

    The same seed gives the same rows, whatever their number; the columns are those of a standard record.
    """
    figures = desk_of(shelf_of(rulebook.data)).figures
    for number, start in enumerate(range(0, rows, ROWS)):
        chance = np.random.default_rng([seed, number])
        columns = _honest(figures, chance)
        planted = plant(columns, chance, faulty)
        yield _batch(columns, planted, start, figures).slice(0, min(ROWS, rows - start))


def _honest(figures: Figures, chance: np.random.Generator) -> Columns:
    structure, animal = _pick(STRUCTURES, figures.structures, chance), _pick(ANIMALS, figures.animals, chance)
    substrate = figures.substrate_of_animal.take(animal)
    air = _drawn(*AIR, chance)
    volume = _sizes(figures, structure, chance)
    working = volume * figures.of_structure["fill_share"].take(structure)
    warmth = air + figures.shelf.figure("soil_offset").typical
    feed = _fed(figures, substrate, working, warmth, chance)
    water = _usual(figures, substrate, feed)["usual_slurry_per_day"] - _usual(figures, substrate, feed)["displaced_volume_per_day"]
    water = water * _drawn(*WATER, chance)
    columns = {"structure": structure, "total_volume": volume, "substrate": substrate, "animal": animal, "mean_air_temperature": air}
    run = {"feed_mass_per_day": feed, "liquid_per_day": water, "digester_temperature": warmth}
    gas = _gas(figures, columns, run, chance)
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
    _, typical, _ = figures.design_retention.read(warmth)
    slurry = working / typical
    feed: Array = slurry / _usual(figures, substrate, np.ones(ROWS))["usual_slurry_per_day"] * _drawn(*FED_SHARE, chance)
    return feed


def _heads(figures: Figures, animal: Any, feed: Array, chance: np.random.Generator) -> Array:
    """Animals whose dung, as much as these animals drop, is the feed and some more."""
    dung = _drawn_by_code(animal, [entry.dung_per_day for entry in figures.shelf.data.animals.values()], chance)
    gathered = [getattr(entry.collectable, HOUSINGS[0]) for entry in figures.shelf.data.animals.values()]
    return np.maximum(1.0, np.round(feed * _drawn(*SPARE_DUNG, chance) / (dung * _drawn_by_code(animal, gathered, chance))))


def _drawn(low: Any, typical: Any, high: Any, chance: np.random.Generator) -> Array:
    """A draw for each row, triangular between the ends."""
    return triangular(chance.random(ROWS), low, typical, high)


def _drawn_by_code(code: Any, figures: list[Property], chance: np.random.Generator) -> Array:
    """A draw from each row's figure, triangular between its ends."""
    low, typical, high = (np.array([getattr(one, end) for one in figures]).take(code) for end in ("least", "typical", "most"))
    return _drawn(low, typical, high, chance)


# Figures of a substrate that a row's gas is drawn from, by the quantity that each of them is.
DRAWN = {
    "total_solids": "total_solids",
    "volatile_solids_share": "volatile_solids",
    "bulk_density": "bulk_density",
    "biogas_yield": "biogas_yield",
    "degradation_rate": "degradation_rate",
    "methane_share": "methane_share",
    "methane_potential": "methane_potential",
}


def _gas(figures: Figures, columns: Columns, run: dict[str, Any], chance: np.random.Generator) -> Array:
    """The gas of each row from its own draw of everything that the rulebook gives a range."""
    entries = list(figures.shelf.data.substrates.values())
    fill = [entry.fill_share for entry in figures.shelf.data.structures.values()]
    given = {
        **{name: _drawn_by_code(columns["substrate"], [getattr(one, field) for one in entries], chance) for name, field in DRAWN.items()},
        **run,
        "water_density": figures.water_density,
        "total_volume": columns["total_volume"],
        "fill_share": _drawn_by_code(columns["structure"], fill, chance),
        "tanks_in_series": figures.of_structure["tanks_in_series"].take(columns["structure"]),
        "digester_temperature": run["digester_temperature"] + _drawn(-0.5, 0.0, 0.5, chance),
        "gas_pressure": SEA_LEVEL_PRESSURE,
    }
    found = {**given, **GRAPH.solve(given, ("biogas_per_day", "volatile_solids_per_day", "slurry_per_day", "hydraulic_retention_time"))}
    gas: Array = found["biogas_per_day"]
    return gas + _spare_gas(figures, columns["substrate"], found, chance)


def _spare_gas(figures: Figures, substrate: Any, found: dict[str, Any], chance: np.random.Generator) -> Array:
    """What a well run plant gives beyond the handbooks' yields, up to the growth kinetics, where these hold."""
    reach, weight = (figures.shelf.figure(name) for name in ("growth_model_reach", "growth_model_weight"))
    solids = np.minimum(found["volatile_solids_per_day"] / found["slurry_per_day"], MOST_SOLIDS_CONCENTRATION)
    grown = np.zeros(ROWS)
    for family, parameter in GROWTH_PARAMETERS.items():
        here = np.array([entry.growth_model == family for entry in figures.shelf.data.substrates.values()]).take(substrate)
        share = chen_hashimoto_share(found["digester_temperature"], found["hydraulic_retention_time"], parameter(solids))
        grown = np.where(here & (found["digester_temperature"] >= LEAST_GROWTH_TEMPERATURE), share, grown)
    grown = grown * found["volatile_solids_per_day"] * found["methane_potential"] / found["methane_share"]
    most = grown / normal_factor(REFERENCE_TEMPERATURE, SEA_LEVEL_PRESSURE) * _drawn(reach.least, reach.typical, reach.most, chance)
    spare: Array = _drawn(weight.least, weight.typical, weight.most, chance) * np.maximum(most - found["biogas_per_day"], 0.0)
    return spare


def _batch(columns: Columns, planted: Any, start: int, figures: Figures) -> pa.RecordBatch:
    number = pc.utf8_lpad(pa.array(np.arange(start + 1, start + ROWS + 1)).cast(pa.string()), 9, "0")
    # The last word, which -1 leads to, is the id of no structure.
    structures = (*figures.structures, UNREAD)
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
