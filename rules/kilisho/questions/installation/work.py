"""Works out installations: many at once, or one as a table of one row. What follows from what nobody stated is NaN, that is unknown."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any

import numpy as np

from kilisho.check_columns import Array, Coded, Codes, Column, ColumnCheck, Evaluation, Mask, both, either
from kilisho.farm import GRAPH, Shelf
from kilisho.formulas.temperature import atmospheric_pressure
from kilisho.questions.feeding import NO_URINE
from kilisho.questions.installation.figures import HOUSINGS, Figures
from kilisho.questions.installation.gas_range import UNKNOWN_TEMPERATURE, UNKNOWN_WATER, GasRange
from kilisho.questions.same import Same
from kilisho.questions.stated_facts import FED_BESIDE, TOLERANCE

NUMBERS = (
    "total_volume",
    "gas_storage_volume",
    "animal_count",
    "feed_mass",
    "water_volume",
    "feeding_interval",
    "biogas_measured",
    "gas_pressure",
    "ph",
    "mean_air_temperature",
    "digester_temperature",
    "altitude",
    "distance_to_well",
)
CODES = ("structure", "animal", "housing", "substrate")
UNKNOWN = float("nan")
# What an answer assumes where the record does not say, in the order of their bits.
ASSUMED = ("substrate", "housing", "temperature", "water_volume", "altitude")
OF_FEED = ("displaced_volume_per_day", "feed_volume_per_day", "total_solids_per_day", "volatile_solids_per_day")
OF_SLURRY = ("slurry_per_day", "hydraulic_retention_time", "slurry_total_solids")
READINGS = {
    "feeding_interval": "feeding_interval",
    "ph": "slurry_ph",
    "gas_pressure": "gas_pressure",
    "distance_to_well": "distance_to_well",
}
GAS_RATIOS = ("gas_ratio", "gas_ratio_to_low", "gas_ratio_to_high")


@dataclass(frozen=True, slots=True)
class Records:
    """Rows of records. ``numbers`` are in canonical units with NaN for what is not stated, ``codes`` places in the rulebook's lists with
    -1 for it, ``facts`` stated facts by id; a name that no row states is left out. ``age`` is that at the visit [d].
    """

    rows: int
    numbers: Mapping[str, Array]
    codes: Mapping[str, Codes]
    age: Array | None = None
    facts: Mapping[str, Column] = field(default_factory=dict)

    def code(self, name: str) -> Codes:
        """The codes of a member, -1 in all rows where no row states it."""
        found = self.codes.get(name)
        return np.full(self.rows, -1, np.intp) if found is None else found

    def part(self, start: int, stop: int) -> Records:
        """The rows from ``start`` to before ``stop``."""
        here = slice(start, stop)
        numbers = {name: column[here] for name, column in self.numbers.items()}
        codes = {name: column[here] for name, column in self.codes.items()}
        facts = {name: _part(column, here) for name, column in self.facts.items()}
        return Records(min(stop, self.rows) - start, numbers, codes, None if self.age is None else self.age[here], facts)


def _part(column: Column, here: slice) -> Column:
    if isinstance(column, Coded):
        return Coded(column.codes[here], column.values)
    return column if isinstance(column, float) else column[here]


@dataclass(frozen=True)
class Desk:
    """What is made once for a rulebook and used for every record: figures by code, and the grid of gas ranges."""

    figures: Figures
    gas_range: GasRange
    checks: tuple[ColumnCheck, ...]
    suspects: Mapping[str, tuple[ColumnCheck, ...]]


def desk_of(shelf: Shelf) -> Desk:
    """The desk of a rulebook, made once."""
    return _desk_of(Same(shelf))


@lru_cache(maxsize=4)
def _desk_of(same: Same[Shelf]) -> Desk:
    figures = Figures(same.thing)
    suspects: dict[str, tuple[ColumnCheck, ...]] = {}
    for check in figures.checks:
        slip = check.compiled.check.slip
        if slip is not None:
            suspects[slip.member] = (*suspects.get(slip.member, ()), check)
    return Desk(figures, GasRange(figures), figures.checks, suspects)


@dataclass(slots=True)
class Work:
    """Installations worked out.

    ``values`` are quantities of the graph, with assumptions where the record is silent, ``derived`` those of them that the graph gave;
    ``facts`` are what checks may read, known only as far as the record tells; ``doubted`` says for each number in which rows it cannot
    be right, ``denied`` for each stated fact in which rows the rest of the record denies it. What the expected gas is ``guessed`` by is
    ``assumed`` where that gas is told.
    """

    records: Records
    desk: Desk
    values: dict[str, Any] = field(default_factory=dict)
    derived: dict[str, None] = field(default_factory=dict)
    facts: dict[str, Column] = field(default_factory=dict)
    doubted: dict[str, Mask] = field(default_factory=dict)
    denied: dict[str, Mask] = field(default_factory=dict)
    guessed: dict[str, Mask] = field(default_factory=dict)
    assumed: dict[str, Mask] = field(default_factory=dict)
    substrate: Codes = field(init=False)
    evaluation: Evaluation = field(init=False)

    def __post_init__(self) -> None:
        self.evaluation = Evaluation(self.facts)

    def number(self, name: str) -> Array | None:
        """A number of the record; None where no row states it."""
        return self.records.numbers.get(name)

    def solve(self, *wanted: str) -> None:
        """Derive quantities and keep them."""
        self.derived.update(dict.fromkeys(name for name in wanted if name not in self.values))
        self.values.update(GRAPH.solve(self.values, wanted))

    def tell(self, *names: str) -> None:
        """Take quantities as facts, unknown where one divided by nothing."""
        for name in names:
            self.facts[name] = _finite(self.values[name])

    def doubt(self, member: str, quantity: str) -> None:
        """Take a number that cannot be right as unknown, so that nothing is judged by it; what says so stays among the facts."""
        doubted = either(*(self.evaluation.failed(check) for check in self.desk.suspects.get(member, ())))
        self.doubted[member] = doubted
        if doubted is not False:
            self.values[quantity] = np.where(doubted, UNKNOWN, self.values[quantity])


def work_out(records: Records, desk: Desk) -> Work:
    """Everything of the records that the checks and the answer ask for. Shapes: every array has one entry for each row."""
    work = Work(records, desk)
    _take_size(work)
    _take_warmth(work)
    _take_age(work)
    _take_herd(work)
    _take_substrate(work)
    if work.number("feed_mass") is not None:
        _take_feed(work)
        _take_water(work)
        _take_gas(work)
    _take_readings(work)
    _take_stated(work)
    return work


def facts_told(desk: Desk) -> frozenset[str]:
    """The facts that a record can tell by itself, with everything stated."""
    full = Records(1, {name: np.ones(1) for name in NUMBERS}, {name: np.zeros(1, np.intp) for name in CODES}, np.ones(1))
    with np.errstate(all="ignore"):
        return frozenset(work_out(full, desk).facts)


def or_else(first: Array | None, second: Any) -> Any:
    """``first`` where it is known, ``second`` elsewhere."""
    if first is None:
        return second
    missing = np.isnan(first)
    return np.where(missing, second, first) if missing.any() else first


def known_where(value: Array, *needed: Array | None) -> Array | float:
    """``value`` where all of ``needed`` are known; unknown in all rows where one of them is stated in none."""
    for one in needed:
        if one is None:
            return UNKNOWN
        missing = np.isnan(one)
        if missing.any():
            value = np.where(missing, UNKNOWN, value)
    return value


def _finite(value: Any) -> Any:
    endless = np.isinf(value)
    return np.where(endless, UNKNOWN, value) if endless.any() else value


def _take_size(work: Work) -> None:
    structure, figures = work.records.code("structure"), work.desk.figures
    work.values.update({name: table.take(structure) for name, table in figures.of_structure.items()})
    work.values["total_volume"] = work.facts["total_volume"] = work.records.numbers["total_volume"]
    work.facts["structure_kind"] = Coded(structure, figures.kinds)
    work.solve("total_volume_to_smallest", "total_volume_to_largest")
    work.tell("total_volume_to_smallest", "total_volume_to_largest")
    work.doubt("total_volume", "total_volume")
    storage = work.number("gas_storage_volume")
    if storage is not None:
        work.values["gas_storage_volume"] = storage
        work.solve("gas_storage_to_usual")
        work.tell("gas_storage_to_usual")
        work.doubt("gas_storage_volume", "gas_storage_volume")


def _take_warmth(work: Work) -> None:
    """Slurry temperature as measured, or the air's with the usual offset; the design retentions at it."""
    air, measured, shelf = work.number("mean_air_temperature"), work.number("digester_temperature"), work.desk.figures.shelf
    known: Any = measured
    if air is not None:
        work.values["mean_air_temperature"] = work.facts["mean_air_temperature"] = air
        work.doubt("mean_air_temperature", "mean_air_temperature")
        known = or_else(measured, work.values["mean_air_temperature"] + shelf.figure("soil_offset").typical)
    guess = shelf.figure("unknown_digester_temperature").typical
    work.guessed["temperature"] = True if known is None else _some(np.isnan(known))
    work.values["digester_temperature"] = or_else(known, guess) if known is not None else np.full(work.records.rows, guess)
    if known is not None:
        work.facts["digester_temperature"] = known
        _take_design_retention(work, known)


def _take_design_retention(work: Work, temperature: Array) -> None:
    names = ("shortest_retention", "design_retention_time", "longest_retention")
    work.values.update(zip(names, work.desk.figures.design_retention.read(temperature), strict=True))


def _some(mask: Any) -> Mask:
    return mask if mask.any() else False


def _take_age(work: Work) -> None:
    """Age at the visit, and against the time after which the gas no longer grows."""
    if work.records.age is None:
        return
    work.values["digester_age"] = work.facts["age_at_visit"] = work.records.age
    if "design_retention_time" in work.values:
        work.solve("age_over_retention")
        work.tell("age_over_retention")


def _take_herd(work: Work) -> None:
    """What the herd gives a day, and the digester's size against it."""
    animal, count, housing = work.records.codes.get("animal"), work.number("animal_count"), work.records.codes.get("housing")
    if animal is None or count is None:
        return
    work.assumed["housing"] = _some((animal >= 0) & ~np.isnan(count) & (True if housing is None else housing < 0))
    place = animal * len(HOUSINGS) if housing is None else animal * len(HOUSINGS) + np.maximum(housing, 0)
    place = np.where(animal < 0, -1, place)
    work.values.update({name: table.take(place) for name, table in work.desk.figures.of_animal.items()}, animal_count=count)
    work.solve("herd_dung_per_day", "working_volume")
    if "design_retention_time" in work.values:
        work.solve("herd_to_largest_herd", "herd_to_smallest_herd")
        work.tell("herd_to_largest_herd", "herd_to_smallest_herd")


def _take_substrate(work: Work) -> None:
    """The substrate, that of the animal where nobody says, and what follows from it alone."""
    figures, substrate, animal = work.desk.figures, work.records.code("substrate"), work.records.codes.get("animal")
    work.assumed["substrate"] = False
    if animal is not None:
        silent = work.assumed["substrate"] = _some((substrate < 0) & (animal >= 0))
        if silent is not False:
            substrate = np.where(substrate < 0, figures.substrate_of_animal.take(animal), substrate)
    work.substrate = substrate
    work.facts.update({name: figures.fact_of_substrate(name, substrate) for name in figures.facts_of_substrate})
    work.values.update({name: table.take(substrate) for name, table in figures.of_substrate.items()}, water_density=figures.water_density)


def _take_feed(work: Work) -> None:
    """A day's feed: whether it can be right, and what it holds."""
    work.values["feed_mass_per_day"] = work.number("feed_mass")
    work.solve("working_volume", "organic_loading_rate")
    work.tell("organic_loading_rate")
    if "herd_dung_per_day" in work.values:
        _hold_against_herd(work)
    work.doubt("feed_mass", "feed_mass_per_day")
    work.solve(*OF_FEED)
    if "design_retention_time" in work.values:
        work.solve("fed_share_of_design")
        work.tell("fed_share_of_design")


def _hold_against_herd(work: Work) -> None:
    """The feed against the herd's dung; a herd that gives none of what is fed gives nothing towards it."""
    animal, herd = work.records.code("animal"), work.values["herd_dung_per_day"]
    own = work.desk.figures.substrate_of_animal.take(animal) == work.substrate
    work.solve("feed_to_herd_most")
    # Endless where there is feed of animals that are not there: more than any limit, not unknown.
    work.facts["feed_to_herd_most"] = np.where(own, work.values["feed_to_herd_most"], UNKNOWN)
    work.values["supply_sufficiency"] = np.where(own, herd, herd * 0.0) / work.values["feed_mass_per_day"]
    work.tell("supply_sufficiency")


def _take_water(work: Work) -> None:
    """Mixing water, and the slurry that it makes; the substrate's usual water where nobody says, by which nothing is judged."""
    water, interval, values = work.number("water_volume"), work.number("feeding_interval"), work.values
    usual = values["feed_volume_per_day"] * values["usual_water_to_feed"]
    if water is not None:
        values["liquid_per_day"] = water
        work.solve("water_to_wettest")
        work.tell("water_to_wettest")
        work.doubt("water_volume", "liquid_per_day")
        water = values["liquid_per_day"]
    work.guessed["water_volume"] = True if water is None else _some(np.isnan(water))
    values.update(NO_URINE, liquid_per_day=or_else(water, usual))
    work.solve(*OF_SLURRY)
    for name in OF_SLURRY[1:]:
        work.facts[name] = _finite(known_where(values[name], water))
    if interval is not None:
        values["feeding_interval"] = interval
        work.solve("dose_share")
        work.facts["dose_share"] = known_where(values["dose_share"], water)


def _take_gas(work: Work) -> None:
    """The expected gas with its range, and the measured gas against it."""
    values, altitude, measured = work.values, work.number("altitude"), work.number("biogas_measured")
    work.guessed["altitude"] = True if altitude is None else _some(np.isnan(altitude))
    values["gas_pressure"] = atmospheric_pressure(or_else(altitude, 0.0))
    case = UNKNOWN_TEMPERATURE * _as_number(work.guessed["temperature"]) + UNKNOWN_WATER * _as_number(work.guessed["water_volume"])
    group = work.desk.gas_range.group(work.substrate, work.records.code("structure"), case)
    temperature, retention = values["digester_temperature"], values["hydraulic_retention_time"]
    values["low_gas_share"], values["high_gas_share"] = work.desk.gas_range.shares(group, temperature, retention)
    work.solve("biogas_per_day", "low_biogas_per_day", "high_biogas_per_day")
    missing = np.isnan(values["biogas_per_day"])
    told = ~missing if missing.any() else True
    work.assumed.update({name: both(guessed, told) for name, guessed in work.guessed.items()})
    if measured is not None:
        values["biogas_measured"] = measured
        work.solve(*GAS_RATIOS)
        _judge_gas(work)


def _judge_gas(work: Work) -> None:
    """The ratios as facts, except of a digester that has not yet been fed for a retention: its gas still grows."""
    young = _some(work.values["age_over_retention"] < 1) if "age_over_retention" in work.values else False
    for name in GAS_RATIOS:
        ratio, work.values[name] = work.values[name], _finite(work.values[name])
        # Endless is gas of no feed: more than any limit. How it stands to the usual gas of no feed is not to be said.
        ratio = ratio if name == "gas_ratio_to_high" else work.values[name]
        work.facts[name] = ratio if young is False else np.where(young, UNKNOWN, ratio)
    work.doubt("biogas_measured", "biogas_measured")


def _as_number(mask: Mask) -> Any:
    return int(mask) if isinstance(mask, bool) else mask.astype(np.intp)


def _take_readings(work: Work) -> None:
    """Readings that are facts as they stand, and whether they can be right."""
    pressure = work.number("gas_pressure")
    work.facts.update({fact: work.records.numbers[name] for name, fact in READINGS.items() if name in work.records.numbers})
    work.facts["gas_is_measured"] = _yes_where(work.number("biogas_measured"), work.records.rows)
    if pressure is not None:
        work.values["gauge_pressure"] = pressure
        work.solve("gas_pressure_to_highest")
        work.tell("gas_pressure_to_highest")
        work.doubt("gas_pressure", "gauge_pressure")
    if work.number("ph") is not None:
        work.values["ph"] = work.number("ph")
        work.doubt("ph", "ph")


def _yes_where(value: Array | None, rows: int) -> Coded:
    """Yes where the value is known, no where it is not: whether something was measured is always known."""
    return Coded(np.zeros(rows, np.intp) if value is None else (~np.isnan(value)).astype(np.intp), (False, True))


def _take_stated(work: Work) -> None:
    """Let the checks read stated facts too, where the record does not tell them; what it tells otherwise is denied."""
    if not work.records.facts:
        return
    _take_what_is_fed_beside(work)
    known = dict(work.facts)
    for name, column in work.records.facts.items():
        if name in work.facts:
            known[name], work.denied[name] = _merged(work.facts[name], column)
        else:
            known[name] = column
    work.evaluation = Evaluation(known)


def _take_what_is_fed_beside(work: Work) -> None:
    """Rows that say by another fact what is fed beside the substrate that they name."""
    for name, said_by in FED_BESIDE.items():
        said = [column for one in said_by if isinstance(column := work.records.facts.get(one), Coded)]
        if said:
            own = work.facts.get(name, Coded(np.full(work.records.rows, -1), ()))
            yes = np.logical_or.reduce([np.array([*(value is True for value in column.values), False])[column.codes] for column in said])
            assert isinstance(own, Coded), "a fact of yes or no"
            work.facts[name] = Coded(np.where(yes, len(own.values), own.codes), (*own.values, True))


def _merged(own: Column, stated: Column) -> tuple[Column, Mask]:
    """What is worked out, else what is stated; and where the two deny each other."""
    if isinstance(own, Coded) and isinstance(stated, Coded):
        values = (*own.values, *stated.values)
        shifted = np.where(stated.codes < 0, -1, stated.codes + len(own.values))
        table = np.array([*(values.index(value) for value in values), -1])
        denied = (own.codes >= 0) & (stated.codes >= 0) & (table.take(own.codes) != table.take(shifted))
        return Coded(np.where(own.codes < 0, shifted, own.codes), values), _some(denied)
    assert not isinstance(own, Coded), "a fact is a number in both places"
    assert not isinstance(stated, Coded), "a fact is a number in both places"
    known = np.asarray(own)
    return or_else(known, stated), _some(np.abs(stated - known) > TOLERANCE * np.abs(known))
