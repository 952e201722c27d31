"""One farm's figures: the graph of all quantities, and the ledger of what was stated, assumed and derived."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from itertools import islice, pairwise
from typing import Any, cast

import numpy as np

from kilisho.formulas import acid_base, digester, feed, first_fill, gas_use, installation, nutrients, slurry_store
from kilisho.messages import Message
from kilisho.process import Parameters
from kilisho.process.start_up import StartUpTable
from kilisho.quantities import Graph, collect
from kilisho.ranges import Array, Numeric, Share, Uncertain, about, leading, sampled
from kilisho.rulebook import SECTIONS_OF_PRACTICE, Curve, Property, RulebookData
from kilisho.start_up_table import start_up_table_of
from kilisho.units import from_canonical

GRAPH = Graph.of(collect(feed, acid_base, digester, first_fill, gas_use, nutrients, slurry_store, installation))


def derive(figures: Mapping[str, Uncertain], wanted: tuple[str, ...]) -> dict[str, Uncertain]:
    """Quantities of the graph from others, each with its samples; for what is no quantity of a ledger, since a farm has several of it."""
    typical = GRAPH.solve({name: figure.value for name, figure in figures.items()}, wanted)
    samples = GRAPH.solve({name: figure.samples for name, figure in figures.items()}, wanted)
    return {name: Uncertain(typical[name], samples[name]) for name in wanted}


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
# Fields of other entries that go by another name in the graph and in answers.
QUANTITIES = {
    "substrates": SUBSTRATE_QUANTITIES,
    "structures": {"depth": "soil_depth"},
    "manure_managements": dict.fromkeys(
        ("methane_conversion_cool", "methane_conversion_temperate", "methane_conversion_warm"), "methane_conversion"
    ),
    "fuels": {"heating_value": "fuel_heating_value", "stove_efficiency": "fuel_stove_efficiency", "density": "fuel_density"},
}
TWELVE_DIGITS = 12
MOST_TO_MEASURE = 3


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
    """A figure of the rulebook as plain numbers and as samples (the typical value where it is exact), with the assumption that tells it."""

    key: str
    quantity: str
    of: str | None
    typical: float
    low: float
    high: float
    samples: Numeric
    assumption: dict[str, Any]
    uncertain: bool


@dataclass(frozen=True, slots=True)
class SubstrateFigures:
    """A substrate's figures by quantity: typical, and with samples in place of what is uncertain; the readings by field of the pack."""

    typical: dict[str, float]
    sampled: dict[str, Numeric]
    readings: dict[str, Reading]


class Shelf:
    """The rulebook made ready for the hot path: figures as plain numbers and as samples, assumptions as finished dictionaries."""

    def __init__(self, data: RulebookData) -> None:
        self.data = data
        self._described: dict[tuple[str, str, str], dict[str, Any]] = {}
        self._readings: dict[tuple[str, str, str], Reading] = {}
        # Keys of the uncertain figures that a farm can measure, as far as they were read.
        self.measurable: set[str] = set()
        self.substrates = {name: self._substrate(name, entry) for name, entry in data.substrates.items()}

    def _substrate(self, name: str, entry: Any) -> SubstrateFigures:
        readings = {field: self.reading("substrates", name, field) for field in SUBSTRATE_QUANTITIES if getattr(entry, field) is not None}
        typical = {"ammonium_share": 0.0} | {one.quantity: one.typical for one in readings.values()}
        samples: dict[str, Numeric] = {one.quantity: one.samples for one in readings.values()}
        return SubstrateFigures(typical, {"ammonium_share": 0.0, **samples}, readings)

    def reading(self, section: str, of: str, field: str) -> Reading:
        """A figure of practice (section ``figures``; ``field`` is the quantity it stands for) or of an entry of a section.

        ``collectable`` and ``urine_collectable`` are sections too: shares of an animal's dung and urine by housing.
        """
        key = (section, of, field)
        found = self._readings.get(key)
        if found is None:
            found = self._readings[key] = self._read(*key)
        return found

    def _read(self, section: str, of: str, field: str) -> Reading:
        figure, told = self._figure(section, of, field), self.assumption(section, of, field)
        # A figure of practice has the same samples whatever it stands for in a question.
        key = f"{section}/{of}" if section == "figures" else f"{section}/{of}/{field}"
        samples = sampled(key, figure.least, figure.typical, figure.most)
        uncertain = isinstance(samples, np.ndarray)
        if uncertain and told["quantity"] in self.data.practice.measurements:
            self.measurable.add(key)
        return Reading(key, told["quantity"], told.get("of"), figure.typical, figure.least, figure.most, samples, told, uncertain)

    def _figure(self, section: str, of: str, field: str) -> Property:
        data, practice = self.data, self.data.practice
        if section == "figures":
            return practice.figures[of]
        if section == "process":
            return cast("Property", getattr(data.process, of))
        if section in ("collectable", "urine_collectable"):
            return cast("Property", getattr(getattr(data.animals[of], section), field))
        entry = getattr(practice if section in SECTIONS_OF_PRACTICE else data, section)[of]
        return cast("Property", getattr(entry, field))

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
        if section == "curves":
            curve = self.data.practice.curves[of]
            return {"quantity": field, "curve": of, "basis": str(curve.basis), "source": list(curve.source)}
        figure = self._figure(section, of, field)
        if section in ("figures", "process"):
            return describe(field, None, figure)
        if section in ("collectable", "urine_collectable"):
            return describe(f"{section}_share_{field}", of, figure)
        return describe(QUANTITIES.get(section, {}).get(field, field), of, figure)

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
    def start_up(self) -> StartUpTable:
        """Days to burnable gas by temperature and starter."""
        return start_up_table_of(self.data)

    @cached_property
    def process(self) -> Parameters:
        """The parameters of the process model at their typical values; ``dataclasses.replace`` puts sampled ones in their place."""
        return Parameters(**{name: getattr(self.data.process, name).typical for name in type(self.data.process).model_fields})

    @cached_property
    def ids(self) -> dict[str, tuple[str, ...]]:
        """Ids by section, for reading requests."""
        sections = {
            name: tuple(getattr(self.data, name))
            for name in ("substrates", "animals", "structures", "appliances", "fuels", "crops", "facts", "checks", "symptoms")
        }
        parts = {name: tuple(getattr(self.data.practice, name)) for name in ("covers", "slurry_stores", "spreadings", "manure_managements")}
        return {**sections, **parts}

    @cached_property
    def first_structure(self) -> str:
        """The structure that is assumed when nobody names one."""
        return "fixed_dome" if "fixed_dome" in self.data.structures else next(iter(self.data.structures))


class Ledger:
    """Values of one farm by quantity, with what the caller stated, and every assumption made on the way.

    ``values`` holds typical values; ``sampled`` holds samples of those that are uncertain, and of what follows from them. ``shared`` is
    what the ledgers of one request have in common, kept by ``kilisho.questions.sharing``; None for a ledger that stands alone.
    """

    __slots__ = ("assumptions", "derived", "inputs", "sampled", "shared", "shelf", "stated", "values")

    def __init__(self, shelf: Shelf, shared: dict[Any, Any] | None = None) -> None:
        self.shelf = shelf
        self.shared = shared
        self.values: dict[str, Any] = {}
        self.sampled: dict[str, Array] = {}
        self.stated: dict[str, Any] = {}
        self.derived: dict[str, None] = {}
        self.inputs: dict[str, Reading] = {}
        self.assumptions: list[dict[str, Any]] = []

    def state(self, name: str, value: Any) -> None:
        """Take a value from the caller."""
        self.values[name] = self.stated[name] = value
        self.sampled.pop(name, None)

    def put(self, **values: Any) -> None:
        """Take values that were worked out and are certain; uncertain ones need ``sample`` after it."""
        self.values.update(values)
        if self.sampled:
            for name in values:
                self.sampled.pop(name, None)

    def sample(self, **samples: Numeric) -> None:
        """Take the samples of values that were put; plain numbers are passed over."""
        for name, value in samples.items():
            if isinstance(value, np.ndarray):
                self.sampled[name] = value

    def take(self, other: Ledger) -> None:
        """Take all that another ledger holds, as if it had been put, sampled and assumed here."""
        self.put(**other.values)
        self.sampled |= other.sampled
        self.stated |= other.stated
        self.derived |= other.derived
        listed = {id(reading.assumption) for key, reading in other.inputs.items() if key in self.inputs}
        self.assumptions += [assumption for assumption in other.assumptions if id(assumption) not in listed]
        for key, reading in other.inputs.items():
            self.inputs.setdefault(key, reading)

    def use(self, reading: Reading) -> Reading:
        """List a figure of the rulebook as an assumption of this answer, and as an input of its ranges."""
        if reading.key not in self.inputs:
            self.assumptions.append(reading.assumption)
            self.inputs[reading.key] = reading
        return reading

    def figure(self, section: str, of: str, field: str) -> Uncertain:
        """A figure of the rulebook with its samples, listed as an assumption; it is not a quantity of the graph."""
        reading = self.use(self.shelf.reading(section, of, field))
        return Uncertain(reading.typical, reading.samples)

    def assume(self, name: str, section: str, of: str, field: str) -> float:
        """Take a figure of the rulebook for ``name`` and list it as an assumption."""
        reading = self.use(self.shelf.reading(section, of, field))
        self.values[name] = reading.typical
        if isinstance(reading.samples, float):
            self.sampled.pop(name, None)
        else:
            self.sampled[name] = reading.samples
        return reading.typical

    def practice(self, name: str, figure: str | None = None) -> float:
        """Take a figure of practice for ``name`` unless the caller stated it."""
        if name in self.stated:
            return float(self.stated[name])
        return self.assume(name, "figures", figure or name, name)

    def curve(self, name: str, quantity: str, temperature: float) -> tuple[float, float, float]:
        """Low, typical and high of a curve of practice at ``temperature`` [Cel], listed as an assumption for ``quantity`` once."""
        low, typical, high = found = self.shelf.curve(name, temperature)
        told = {"value": plain(typical), "low": plain(low), "high": plain(high), "unit": self.shelf.data.practice.curves[name].unit}
        assumption = {**self.shelf.assumption("curves", name, quantity), **told}
        if assumption not in self.assumptions:
            self.assumptions.append(assumption)
        return found

    def choose(self, what: str, value: str, why: Message, of: str | None = None) -> str:
        """List a choice that is not a number (a structure, a housing) as an assumption; ``of`` is what it belongs to."""
        owner = {"of": of} if of else {}
        self.assumptions.append({"quantity": what, **owner, "choice": value, "basis": "judgement", "source": [], "note": why})
        return value

    def solve(self, *wanted: str) -> dict[str, Any]:
        """Derive ``wanted`` and keep them in the ledger, with the samples of those that are uncertain."""
        plan = GRAPH.plan(self.values, wanted)
        found = plan.run(self.values)
        if not self.sampled.keys().isdisjoint(plan.needs):
            self.sample(**plan.run({**self.values, **self.sampled}))
        self.derived.update(dict.fromkeys(name for name in wanted if name not in self.values))
        self.values.update(found)
        return found

    def uncertain(self, name: str) -> Uncertain:
        """A value with its samples."""
        value = self.values[name]
        return Uncertain(value, self.sampled.get(name, value))

    def of(self, name: str) -> tuple[float, ...]:
        """The value, and its low and high end where it is uncertain: the arguments of the functions that tell a number."""
        samples = self.sampled.get(name)
        return (self.values[name],) if samples is None else about(self.values[name], samples)

    def leading(self, *answers: Numeric) -> list[list[tuple[Reading, Share]]]:
        """For each answer the inputs whose measurement would narrow its range most, those that a farm can measure."""
        keys = tuple([key for key, one in self.inputs.items() if one.uncertain])
        measurable = self.shelf.measurable
        found = [(share for share in leading(answer, keys) if share.key in measurable) for answer in answers]
        return [[(self.inputs[share.key], share) for share in islice(shares, MOST_TO_MEASURE)] for shares in found]

    def trace(self) -> list[dict[str, Any]]:
        """How every derived quantity came about from what was stated, assumed and summed over the substrates."""
        start = {name: value for name, value in self.values.items() if name not in self.derived and name in GRAPH.quantities}
        return GRAPH.trace(start, tuple(self.derived))
