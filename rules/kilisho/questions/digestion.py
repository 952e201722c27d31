"""From a rulebook and a farm to a run of the process model: one column for the typical farm, one for each sample, more for variants."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from kilisho.farm import Ledger
from kilisho.formulas.digester import reference_share
from kilisho.process import Feedstock, Parameters, feedstock, mixed
from kilisho.questions.feeding import Fed, brings_lime, sampled
from kilisho.ranges import SAMPLES, Array, Numeric, Uncertain, about


@dataclass(frozen=True, slots=True)
class Columns:
    """The columns of a run: the typical farm first, then ``SAMPLES`` samples of it, then ``variants`` that are typical but for a change."""

    variants: int = 0

    @property
    def count(self) -> int:
        """All columns."""
        return 1 + SAMPLES + self.variants

    def of(self, value: Numeric, samples: Numeric) -> Array:
        """A value and its samples, (columns,)."""
        found = np.full(self.count, value)
        found[1 : 1 + SAMPLES] = samples
        return found

    def laid(self, uncertain: Uncertain) -> Array:
        """An uncertain value, (columns,)."""
        return self.of(uncertain.value, uncertain.samples)


def typical_of(columns: Array) -> Any:
    """The typical farm's part of (..., columns)."""
    return columns[..., 0]


def samples_of(columns: Array) -> Array:
    """The samples' part of (..., columns)."""
    return columns[..., 1 : 1 + SAMPLES]


def ends_of(columns: Array) -> tuple[float, ...]:
    """Value, low and high of one number in all columns, (columns,)."""
    return about(float(columns[0]), samples_of(columns))


def parameters_of(ledger: Ledger, columns: Columns) -> Parameters:
    """The parameters of the process model in all columns, listed as assumptions."""
    names = type(ledger.shelf.data.process).model_fields
    return Parameters(**{name: _as_column(ledger.figure("process", name, name), columns) for name in names})


def _as_column(figure: Uncertain, columns: Columns) -> Numeric:
    return columns.laid(figure) if isinstance(figure.samples, np.ndarray) else figure.value


def feedstock_of(fed: Sequence[Fed], parameters: Parameters, columns: Columns) -> Feedstock:
    """The substrates as the process model takes them; what was measured counts as measured."""
    pairs = zip(fed, sampled(fed), strict=True)
    return mixed(*(_feedstock(one.entry, _values(one.values, other.values, columns), parameters) for one, other in pairs))


def _values(typical: dict[str, Any], samples: dict[str, Any], columns: Columns) -> dict[str, Numeric]:
    return {name: columns.of(value, samples[name]) for name, value in typical.items()}


def _feedstock(entry: Any, values: dict[str, Any], parameters: Parameters) -> Feedstock:
    """Nitrogen and potassium of packs are per total solids, those of the model per volatile solids."""
    volatile = values["volatile_solids_share"]
    yields = values["biogas_yield"]
    if "biogas_potential" in values:
        yields = values["biogas_potential"] * reference_share(values["degradation_rate"])
    quick, potassium = (getattr(entry, name) for name in ("quick_share", "potassium"))
    return feedstock(
        biogas_yield=yields,
        degradation_rate=values["degradation_rate"],
        methane_share=values["methane_share"],
        nitrogen=values["nitrogen_share"] / volatile,
        ammonium_share=values["ammonium_share"],
        potassium=(potassium.typical if potassium else 0.0) / volatile,
        starts_unaided=entry.starts_unaided,
        of_dung=brings_lime(entry),
        parameters=parameters,
        quick_share=quick.typical if quick else 0.0,
    )


def volatile_solids_of(one: Fed, columns: Columns) -> Array:
    """Volatile solids in one substrate's mass [kg], (columns,)."""
    first, second = (side.mass * side.values["total_solids"] * side.values["volatile_solids_share"] for side in (one, sampled([one])[0]))
    return columns.of(first, second)
