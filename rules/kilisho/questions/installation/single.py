"""One installation as a table of one row, and its work as the facts and assumptions of an answer."""

from __future__ import annotations

import math
from typing import Any

import numpy as np

from kilisho.check_columns import Coded
from kilisho.farm import GRAPH, Ledger
from kilisho.messages import say
from kilisho.questions.installation.figures import HOUSINGS, Figures
from kilisho.questions.installation.work import CODES, NUMBERS, Records, Work
from kilisho.questions.stated_facts import all_facts, values_by_id

WHY_SUBSTRATE = say("installation-substrate")
WHY_HOUSING = say("installation-housing")
WHY_ALTITUDE = say("assumed-altitude")
# Figures of a substrate that an answer hangs on, and those that the high end of its gas hangs on where it has a growth model.
USED = ("total_solids", "volatile_solids", "bulk_density", "biogas_yield", "degradation_rate")
USED_BY_GROWTH = ("methane_share", "methane_potential")


def ids_of(figures: Figures) -> dict[str, tuple[str, ...]]:
    """For each coded member the ids or words in the order of their codes."""
    return {"structure": figures.structures, "animal": figures.animals, "housing": HOUSINGS, "substrate": figures.substrates}


def records_of(asked: Any, figures: Figures) -> Records:
    """A validated request as a table of one row."""
    ids = ids_of(figures)
    numbers = {name: np.array([float(value)]) for name in NUMBERS if (value := getattr(asked, name)) is not None}
    codes = {name: np.array([ids[name].index(value)]) for name in CODES if (value := getattr(asked, name)) is not None}
    dates = asked.commissioned_on, asked.visited_on
    age = None if None in dates else np.array([float((dates[1] - dates[0]).days)])
    return Records(1, numbers, codes, age)


def facts_of(work: Work, asked: Any) -> dict[str, Any]:
    """The facts that are known of the one row, and those that were stated; raises :class:`RefusedError` where they deny each other."""
    known = {name: value for name, column in work.facts.items() if (value := fact_of_row(column)) is not None}
    return all_facts(work.desk.figures.shelf.data, known, values_by_id(asked.facts))


def fact_of_row(column: Any) -> Any:
    """What a column holds for the one row, endless for what was divided by nothing; None where it is not known."""
    if isinstance(column, Coded):
        code = int(column.codes[0])
        return None if code < 0 else column.values[code]
    value = float(column if np.ndim(column) == 0 else column[0])
    return None if math.isnan(value) else value


def of_row(column: Any) -> Any:
    """What a column holds for the one row as a number that can be told; None where there is none."""
    value = fact_of_row(column)
    return None if isinstance(value, float) and math.isinf(value) else value


def number_of(work: Work, name: str) -> float | None:
    """A quantity of the one row; None where it is not known."""
    value = work.values.get(name)
    return None if value is None else of_row(value)


def derivation(work: Work) -> list[dict[str, Any]]:
    """How each quantity of the one row came about, without the steps that divide by nothing."""
    known = {name: np.float64(value) for name in work.values if name in GRAPH.quantities and (value := number_of(work, name)) is not None}
    start = {name: value for name, value in known.items() if name not in work.derived}
    # What followed from a number that is doubted can no longer be derived.
    derivable = GRAPH.reachable(start)
    steps = GRAPH.trace(start, tuple(name for name in work.derived if name in known and name in derivable))
    return [_plain(step) for step in steps if all(map(math.isfinite, (step["value"], *step["inputs"].values())))]


def _plain(step: dict[str, Any]) -> dict[str, Any]:
    return {**step, "value": float(step["value"]), "inputs": {name: float(value) for name, value in step["inputs"].items()}}


def take_assumptions(work: Work, ledger: Ledger) -> None:
    """List what was assumed for the one row."""
    _assume_of_feed(work, ledger)
    _assume_of_warmth(work, ledger)
    _assume_of_herd(work, ledger)
    structure = _id(work, "structure")
    ledger.use(ledger.shelf.reading("structures", structure, "fill_share"))
    if work.number("gas_storage_volume") is not None:
        ledger.use(ledger.shelf.reading("structures", structure, "gas_storage_share"))


def _id(work: Work, member: str) -> str:
    return ids_of(work.desk.figures)[member][int(work.records.code(member)[0])]


def substrate_of(work: Work) -> str | None:
    """Id of what is fed; None where nobody knows."""
    code = int(work.substrate[0])
    return None if code < 0 else work.desk.figures.substrates[code]


def _assume_of_feed(work: Work, ledger: Ledger) -> None:
    substrate = substrate_of(work)
    if substrate is None:
        return
    if work.assumed["substrate"] is not False:
        ledger.choose("substrate", substrate, WHY_SUBSTRATE)
    if work.number("feed_mass") is None:
        return
    grows = ledger.shelf.data.substrates[substrate].growth_model is not None
    for field in (*USED, *(USED_BY_GROWTH if grows else ())):
        ledger.use(ledger.shelf.reading("substrates", substrate, field))
    if work.guessed["water_volume"] is not False:
        ledger.assumptions.append(ledger.shelf.dilution(substrate))
    if work.guessed["altitude"] is not False:
        ledger.choose("altitude", "sea_level", WHY_ALTITUDE)


def _assume_of_warmth(work: Work, ledger: Ledger) -> None:
    if work.guessed["temperature"] is not False:
        ledger.use(ledger.shelf.reading("figures", "unknown_digester_temperature", "digester_temperature"))
        return
    if work.number("digester_temperature") is None:
        ledger.use(ledger.shelf.reading("figures", "soil_offset", "soil_offset"))
    ledger.curve("design_retention", "design_retention_time", float(work.values["digester_temperature"][0]))


def _assume_of_herd(work: Work, ledger: Ledger) -> None:
    if "herd_dung_per_day" not in work.values:
        return
    animal = _id(work, "animal")
    housing = _id(work, "housing") if work.assumed["housing"] is False else ledger.choose("housing", "stall", WHY_HOUSING)
    ledger.use(ledger.shelf.reading("animals", animal, "dung_per_day"))
    ledger.use(ledger.shelf.reading("collectable", animal, housing))
