"""One farm's figures: the graph of all quantities, and the ledger of what was stated, assumed and derived."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from typing import Any

from kilisho.formulas import digester, feed, first_fill
from kilisho.quantities import Graph, collect
from kilisho.rulebook import Curve, Property, RulebookData
from kilisho.units import from_canonical

GRAPH = Graph.of(collect(feed, digester, first_fill))

# Fields of a pack's substrate and the quantities of the graph that they are.
SUBSTRATE_QUANTITIES = {
    "total_solids": "total_solids",
    "volatile_solids": "volatile_solids_share",
    "bulk_density": "bulk_density",
    "nitrogen": "nitrogen_share",
    "carbon_to_nitrogen": "carbon_to_nitrogen_of_feed",
    "ammonium_share": "ammonium_share",
    "biogas_yield": "biogas_yield",
    "degradation_rate": "degradation_rate",
    "methane_share": "methane_share",
    "settling_share": "settling_share",
}
TWELVE_DIGITS = 12


def plain(value: float) -> float:
    """Without the noise of a conversion: twelve significant digits."""
    return float(f"{value:.{TWELVE_DIGITS}g}")


def describe(quantity: str, of: str | None, figure: Property) -> dict[str, Any]:
    """A figure of the rulebook as an assumption of an answer, in the unit in which the pack states it."""
    out: dict[str, Any] = {"quantity": quantity, **({"of": of} if of else {})}
    for name, number in (("value", figure.typical), ("low", figure.low), ("high", figure.high)):
        if number is not None:
            out[name] = plain(from_canonical(number, figure.kind, figure.unit))
    return {**out, "unit": figure.unit, "basis": str(figure.basis), "source": list(figure.source)}


def read_curve(curve: Curve, temperature: float) -> tuple[float, float, float]:
    """Low, typical and high of a curve at ``temperature`` [Cel], by straight lines, flat beyond its ends."""
    points = curve.points
    if temperature <= points[0].at:
        return points[0].low, points[0].typical, points[0].high
    for left, right in pairwise(points):
        if temperature <= right.at:
            part = (temperature - left.at) / (right.at - left.at)
            return (
                left.low + part * (right.low - left.low),
                left.typical + part * (right.typical - left.typical),
                left.high + part * (right.high - left.high),
            )
    return points[-1].low, points[-1].typical, points[-1].high


@dataclass(frozen=True, slots=True)
class Reading:
    """A figure of the rulebook as plain numbers, with the assumption that tells it."""

    typical: float
    low: float
    high: float
    assumption: dict[str, Any]


@dataclass(frozen=True, slots=True)
class SubstrateFigures:
    """A substrate's figures by quantity: typical, low and high, and all of them as assumptions."""

    typical: dict[str, float]
    low: dict[str, float]
    high: dict[str, float]
    assumptions: dict[str, dict[str, Any]]


class Shelf:
    """The rulebook made ready for the hot path: figures as plain numbers, assumptions as finished dictionaries."""

    def __init__(self, data: RulebookData) -> None:
        self.data = data
        self._described: dict[tuple[str, str, str], dict[str, Any]] = {}
        self._readings: dict[tuple[str, str, str], Reading] = {}
        self.substrates = {name: self._substrate(name, entry) for name, entry in data.substrates.items()}

    def _substrate(self, name: str, entry: Any) -> SubstrateFigures:
        stated = {field: quantity for field, quantity in SUBSTRATE_QUANTITIES.items() if getattr(entry, field) is not None}
        figures = {quantity: getattr(entry, field) for field, quantity in stated.items()}
        return SubstrateFigures(
            {"ammonium_share": 0.0} | {quantity: figure.typical for quantity, figure in figures.items()},
            {"ammonium_share": 0.0} | {quantity: figure.least for quantity, figure in figures.items()},
            {"ammonium_share": 0.0} | {quantity: figure.most for quantity, figure in figures.items()},
            {field: self.assumption("substrates", name, field) for field in stated},
        )

    def reading(self, section: str, of: str, field: str) -> Reading:
        """A figure of practice (section ``figures``; ``field`` is the quantity it stands for) or of an entry of a section."""
        key = (section, of, field)
        found = self._readings.get(key)
        if found is None:
            figure = self.data.practice.figures[of] if section == "figures" else getattr(getattr(self.data, section)[of], field)
            found = self._readings[key] = Reading(figure.typical, figure.least, figure.most, self.assumption(*key))
        return found

    def figure(self, name: str) -> Property:
        """A single figure of practice."""
        return self.data.practice.figures[name]

    def curve(self, name: str, temperature: float) -> tuple[float, float, float]:
        """Low, typical and high of a curve of practice at ``temperature`` [Cel]."""
        return read_curve(self.data.practice.curves[name], temperature)

    def assumption(self, section: str, of: str, field: str) -> dict[str, Any]:
        """The finished assumption for ``field`` of an entry of a section (or a figure, cover or container of practice)."""
        key = (section, of, field)
        found = self._described.get(key)
        if found is None:
            found = self._described[key] = self._describe(*key)
        return found

    def _describe(self, section: str, of: str, field: str) -> dict[str, Any]:
        if section == "figures":
            figure = self.data.practice.figures[of]
            return describe(field, None, figure)
        if section == "curves":
            curve = self.data.practice.curves[of]
            return {"quantity": field, "curve": of, "basis": str(curve.basis), "source": list(curve.source)}
        entry = getattr(self.data.practice if section in ("covers", "containers") else self.data, section)[of]
        return describe(SUBSTRATE_QUANTITIES.get(field, field) if section == "substrates" else field, of, getattr(entry, field))

    def collected(self, animal: str, housing: str) -> dict[str, Any]:
        """The assumption of how much of an animal's dung can be gathered."""
        key = ("collectable", animal, housing)
        if key not in self._described:
            figure = getattr(self.data.animals[animal].collectable, housing)
            self._described[key] = describe(f"collectable_share_{housing}", animal, figure)
        return self._described[key]

    def dilution(self, substrate: str) -> dict[str, Any]:
        """The assumption of how a substrate is diluted."""
        key = ("dilution", substrate, "")
        if key not in self._described:
            rule = self.data.substrates[substrate].dilution
            figure, name = rule.water_to_feed_by_volume, "water_to_feed_by_volume"
            if figure is None and rule.target_total_solids is not None:
                figure, name = rule.target_total_solids, "target_total_solids"
            self._described[key] = (
                describe(name, substrate, figure) if figure else {"quantity": name, "of": substrate, "value": 0.0, "unit": "1"}
            )
        return self._described[key]

    @cached_property
    def ids(self) -> dict[str, tuple[str, ...]]:
        """Ids by section, for reading requests."""
        sections = {
            name: tuple(getattr(self.data, name)) for name in ("substrates", "animals", "structures", "appliances", "facts", "checks")
        }
        return {**sections, "covers": tuple(self.data.practice.covers)}

    @cached_property
    def first_structure(self) -> str:
        """The structure that is assumed when nobody names one."""
        return "fixed_dome" if "fixed_dome" in self.data.structures else next(iter(self.data.structures))


class Ledger:
    """Values of one farm by quantity, with what the caller stated, and every assumption made on the way.

    ``values`` holds typical values; ``low`` and ``high`` the ends of those that are uncertain.
    """

    __slots__ = ("assumptions", "derived", "high", "low", "shelf", "stated", "values")

    def __init__(self, shelf: Shelf) -> None:
        self.shelf = shelf
        self.values: dict[str, Any] = {}
        self.low: dict[str, Any] = {}
        self.high: dict[str, Any] = {}
        self.stated: dict[str, Any] = {}
        self.derived: dict[str, None] = {}
        self.assumptions: list[dict[str, Any]] = []

    def state(self, name: str, value: Any) -> None:
        """Take a value from the caller."""
        self.values[name] = self.stated[name] = value

    def put(self, **values: Any) -> None:
        """Take values that were worked out."""
        self.values.update(values)

    def assume(self, name: str, section: str, of: str, field: str) -> float:
        """Take a figure of the rulebook for ``name`` and list it as an assumption."""
        reading = self.shelf.reading(section, of, field)
        self.values[name], self.low[name], self.high[name] = reading.typical, reading.low, reading.high
        self.assumptions.append(reading.assumption)
        return reading.typical

    def practice(self, name: str, figure: str | None = None) -> float:
        """Take a figure of practice for ``name`` unless the caller stated it."""
        if name in self.stated:
            return float(self.stated[name])
        return self.assume(name, "figures", figure or name, name)

    def choose(self, what: str, value: str, why: str) -> str:
        """List a choice that is not a number (a structure, a housing) as an assumption."""
        self.assumptions.append({"quantity": what, "choice": value, "basis": "judgement", "source": [], "note": why})
        return value

    def solve(self, *wanted: str) -> dict[str, Any]:
        """Derive ``wanted`` and keep them in the ledger."""
        found = GRAPH.solve(self.values, wanted)
        self.derived.update(dict.fromkeys(name for name in wanted if name not in self.values))
        self.values.update(found)
        return found

    def trace(self) -> list[dict[str, Any]]:
        """How every derived quantity came about from what was stated, assumed and summed over the substrates."""
        start = {name: value for name, value in self.values.items() if name not in self.derived and name in GRAPH.quantities}
        return GRAPH.trace(start, tuple(self.derived))
