"""The table of start-up times of a rulebook: read where it is that of the base pack, worked out where a pack changed what it rests on.

``python -m kilisho.start_up_table`` works the base pack's table out and writes it (some seconds); do so after every change of the process
model, of its parameters, or of the dung.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable
from functools import cache, lru_cache
from pathlib import Path
from typing import Any, NamedTuple

import numpy as np
import numpy.typing as npt

from kilisho.packs import load
from kilisho.process import Feedstock, Parameters, feedstock
from kilisho.process.start_up import StartUpTable, start_up_table
from kilisho.ranges import SAMPLES, strata, triangular
from kilisho.rulebook import Property, RulebookData

Array = npt.NDArray[np.float64]

FILE = Path(__file__).parents[1] / "process" / "start_up_table.json"
DUNG = "cattle_dung"
# What is drawn; all else is typical.
DRAWN = frozenset(
    {
        "growth_factor",
        "cell_yield",
        "half_saturation",
        "base_of_dung",
        "methanogens_of_ruminants",
        "methanogens_of_others",
        "slurry_methanogens",
        "degradation_rate",
    }
)


class Spread(NamedTuple):
    """A figure's low, typical and high."""

    low: float
    typical: float
    high: float


class Basis(NamedTuple):
    """All that the table rests on, by name."""

    process: tuple[tuple[str, Spread], ...]
    dung: tuple[tuple[str, Spread], ...]

    @property
    def key(self) -> str:
        """A hash of it."""
        return hashlib.sha256(json.dumps(self).encode()).hexdigest()


def start_up_table_of(data: RulebookData) -> StartUpTable:
    """The table of a rulebook; of one whose process parameters or cattle dung differ from the base pack's it takes some seconds, once."""
    return _table(basis_of(data))


@lru_cache(maxsize=4)
def _table(basis: Basis) -> StartUpTable:
    told = _written()
    return _read(told) if told["key"] == basis.key else computed(basis)


@cache
def _written() -> dict[str, Any]:
    told: dict[str, Any] = json.loads(FILE.read_text("utf-8"))
    return told


def basis_of(data: RulebookData) -> Basis:
    """What the table of a rulebook rests on; a rulebook without cattle dung has the base pack's."""
    dung = data.substrates[DUNG] if DUNG in data.substrates else load().data.substrates[DUNG]
    per_total = ("nitrogen", "potassium")
    of_dung = {name: getattr(dung, name) for name in ("biogas_yield", "degradation_rate", "methane_share", "ammonium_share", *per_total)}
    figures = {name: _spread(figure) for name, figure in of_dung.items()}
    solids = dung.volatile_solids.typical
    figures |= {name: Spread(*(value / solids for value in figures[name])) for name in per_total}
    process = ((name, _spread(getattr(data.process, name))) for name in type(data.process).model_fields)
    return Basis(tuple(process), tuple(figures.items()))


def _spread(figure: Property | None) -> Spread:
    return Spread(0.0, 0.0, 0.0) if figure is None else Spread(figure.least, figure.typical, figure.most)


def drawn(name: str, spread: Spread) -> Array:
    """The typical value of a figure, then samples of it, (1 + samples,)."""
    samples = triangular(strata(name), *spread) if spread.high > spread.low else np.full(SAMPLES, spread.typical)
    return np.concatenate([[spread.typical], samples])


def computed(basis: Basis) -> StartUpTable:
    """The table by full runs."""
    parameters = Parameters(**values(basis.process))
    return start_up_table({unaided: dung_of(basis, parameters, unaided) for unaided in (True, False)}, parameters)


def values(spreads: Iterable[tuple[str, Spread]]) -> dict[str, Any]:
    """Figures by name, with samples where they are drawn."""
    return {name: drawn(name, spread) if name in DRAWN else spread.typical for name, spread in spreads}


def dung_of(basis: Basis, parameters: Parameters, unaided: bool) -> Feedstock:
    """The dung of the table with its samples, with or without the microbes of a rumen."""
    return feedstock(**values(basis.dung), starts_unaided=unaided, of_dung=True, parameters=parameters)


def _read(told: dict[str, Any]) -> StartUpTable:
    parts = {True: told["unaided"], False: told["aided"]}
    days = {
        unaided: [[[_never(day) for day in point] for point in row] for row in part["days"]] for unaided, part in parts.items()
    }  # fmt: skip
    return StartUpTable(days, {unaided: part["started"] for unaided, part in parts.items()})


def _never(days: float | None) -> float:
    return float("inf") if days is None else float(days)
