"""The rulebook's figures in the order of codes, so that a column of codes looks them up at once. The last entry answers for -1, unknown."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np

from kilisho.check_columns import Array, Coded, Codes, ColumnCheck, for_columns
from kilisho.checks import compile_checks
from kilisho.farm import GRAPH, Shelf
from kilisho.rulebook import GROUPS_OF_FACTS, Substrate

OPERATION = "validate_installation"
HOUSINGS = ("stall", "night_pen", "grazing")
PER_MASS = ("displaced_volume_per_day", "feed_volume_per_day", "total_solids_per_day", "volatile_solids_per_day")
FACTS_OF_SUBSTRATES: dict[str, Callable[[Substrate], Any]] = {
    "poultry_share": lambda entry: float(entry.group == GROUPS_OF_FACTS["poultry_share"]),
    "crop_residue_share": lambda entry: float(entry.group == GROUPS_OF_FACTS["crop_residue_share"]),
    "human_excreta_fed": lambda entry: entry.group == GROUPS_OF_FACTS["human_excreta_fed"],
}


def column(values: Iterable[float | None]) -> Array:
    """Values in the order of codes, and NaN for the unknown one."""
    return np.array([*(np.nan if value is None else value for value in values), np.nan])


@dataclass(frozen=True)
class Lines:
    """Curves through the same places, read by straight lines and flat beyond their ends, as :func:`kilisho.farm.read_curve` reads one.

    ``values`` has a row for each curve. numpy's own interpolation searches for every place anew, which costs three times as much.
    """

    at: Array
    values: Array

    @cached_property
    def _slopes(self) -> Array:
        rises = np.diff(self.values, axis=1) / np.diff(self.at)
        return np.pad(rises, ((0, 0), (1, 1)))

    def read(self, place: Array) -> list[Array]:
        """The value of each curve at a place; NaN at NaN."""
        piece = np.zeros(place.shape, np.int8)
        for at in self.at:
            piece += place >= at
        before = np.maximum(piece, 1) - 1
        ahead = place - self.at.take(before)
        return [curve.take(before) + slopes.take(piece) * ahead for curve, slopes in zip(self.values, self._slopes, strict=True)]


@dataclass(frozen=True)
class Figures:
    """What the rulebook says of structures, substrates and animals, by code."""

    shelf: Shelf

    @cached_property
    def structures(self) -> tuple[str, ...]:
        """Ids of structures in the order of their codes."""
        return tuple(self.shelf.data.structures)

    @cached_property
    def substrates(self) -> tuple[str, ...]:
        """Ids of substrates in the order of their codes."""
        return tuple(self.shelf.data.substrates)

    @cached_property
    def animals(self) -> tuple[str, ...]:
        """Ids of animals in the order of their codes."""
        return tuple(self.shelf.data.animals)

    @cached_property
    def checks(self) -> tuple[ColumnCheck, ...]:
        """The checks of the operation, the most urgent first."""
        return for_columns(compile_checks(self.shelf.data, OPERATION), self.shelf.data)

    @cached_property
    def of_structure(self) -> dict[str, Array]:
        """Quantities by code of structure. A batch structure is not fed daily: what follows from feeding is unknown there."""
        entries = self.shelf.data.structures.values()
        return {
            "smallest_built": column(min(one.buildable_sizes.total_volumes) for one in entries),
            "largest_built": column(max(one.buildable_sizes.total_volumes) for one in entries),
            "fill_share": column(one.fill_share.typical if one.operation == "continuous" else None for one in entries),
            "gas_storage_share": column(one.gas_storage_share.typical for one in entries),
            "tanks_in_series": column(float(one.tanks_in_series) for one in entries),
            "highest_operating_pressure": column(one.operating_pressure.most or None for one in entries),
        }

    @cached_property
    def kinds(self) -> tuple[str, ...]:
        """Whose checks hold for each structure."""
        return tuple(entry.checked_as or name for name, entry in self.shelf.data.structures.items())

    @cached_property
    def of_substrate(self) -> dict[str, Array]:
        """Quantities by code of substrate."""
        found = [self._typical(name) for name in self.substrates]
        names = ("total_solids", "volatile_solids_share", "bulk_density", "degradation_rate", "biogas_potential", "usual_water_to_feed")
        return {name: column(one[name] for one in found) for name in (*names, "wettest_water_to_feed")}

    def _typical(self, name: str) -> dict[str, Any]:
        values = {**self.shelf.substrates[name].typical, "water_density": self.water_density}
        usual, wettest = water_of(self.shelf.data.substrates[name], values)
        return {**values, **GRAPH.solve(values, ("biogas_potential",)), "usual_water_to_feed": usual, "wettest_water_to_feed": wettest}

    @cached_property
    def facts_of_substrate(self) -> dict[str, tuple[Any, ...]]:
        """Facts that follow from the substrate alone, by code."""
        entries = self.shelf.data.substrates.values()
        return {name: tuple(read(entry) for entry in entries) for name, read in FACTS_OF_SUBSTRATES.items()}

    def fact_of_substrate(self, name: str, codes: Codes) -> Coded:
        """A fact that follows from the substrate, as a column."""
        return Coded(codes, self.facts_of_substrate[name])

    @cached_property
    def of_animal(self) -> dict[str, Array]:
        """Quantities of a head by animal and housing: three housings to an animal, in the order of ``HOUSINGS``."""
        heads = [self._head(animal, housing) for animal in self.shelf.data.animals.values() for housing in HOUSINGS]
        return {name: column(one[name] for one in heads) for name in ("dung_per_head", "most_dung_per_head", "slurry_per_head")}

    def _head(self, animal: Any, housing: str) -> dict[str, Any]:
        gathered, dung = getattr(animal.collectable, housing), animal.dung_per_day
        mass = dung.typical * gathered.typical
        values = {**self._typical(animal.substrate), "feed_mass_per_day": mass}
        slurry = GRAPH.solve(values, ("usual_slurry_per_day",))["usual_slurry_per_day"]
        return {"dung_per_head": mass, "most_dung_per_head": dung.most * gathered.most or None, "slurry_per_head": slurry}

    @cached_property
    def substrate_of_animal(self) -> Codes:
        """Code of the substrate that an animal gives; -1 for the unknown animal."""
        return np.array([*(self.substrates.index(one.substrate) for one in self.shelf.data.animals.values()), -1], dtype=np.intp)

    @cached_property
    def design_retention(self) -> Lines:
        """The low, typical and high retention to design for [d] by temperature [Cel]."""
        points = self.shelf.data.practice.curves["design_retention"].points
        return Lines(np.array([point.at for point in points]), np.array([(point.low, point.typical, point.high) for point in points]).T)

    @property
    def water_density(self) -> float:
        """Density of the mixing water [kg/m3]."""
        return self.shelf.figure("water_density").typical


def water_of(entry: Substrate, values: dict[str, Any]) -> tuple[float, float | None]:
    """Volumes of water per volume of a substrate: the usual, and the most that its practice knows, None where it knows none."""
    ratio, target = entry.dilution.water_to_feed_by_volume, entry.dilution.target_total_solids
    usual = 0.0 if ratio is None else ratio.typical
    if ratio is None and target is not None:
        usual = _to_target(values, target.typical)
    ends = [ratio.most] if ratio is not None else []
    ends += [_to_target(values, target.least)] if target is not None else []
    return usual, max(ends, default=0.0) or None


def _to_target(values: dict[str, Any], target: float) -> float:
    found = GRAPH.solve({**values, "target_total_solids": target}, ("water_to_feed_for_target",))["water_to_feed_for_target"]
    return max(0.0, float(found))
