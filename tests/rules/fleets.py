"""What the tests of installations and fleets share: rows on the spot, random rows, tables of them, and the two ways to answer one."""

from __future__ import annotations

import datetime as dt
import math
from functools import cache
from typing import Any

import pyarrow as pa
from hypothesis import strategies as st
from tests.rules.conftest import Json, base, questions

from kilisho.faults import RefusedError
from kilisho.fleet import Fleet, fleet_of

NAME = "installations/validate"
# A household's dome in order: fed at three quarters of the design, with a day's gas in the middle of what that gives.
ROW: Json = {
    "id": "INV-1",
    "structure": "fixed_dome",
    "total_volume": 9.0,
    "animal": "dairy_cow",
    "animal_count": 4,
    "substrate": "cattle_dung",
    "feed_mass": 40.0,
    "water_volume": 40.0,
    "feeding_interval": 1.0,
    "biogas_measured": 1.2,
    "mean_air_temperature": 22.0,
}
WORDS = ("structure", "animal", "substrate", "housing")
DAYS = ("commissioned_on", "visited_on")
ASPECTS = ("record", "size", "feeding", "gas", "safety")
# Facts of every kind that a table may hold, among them some that the record tells itself and some that imply others.
FACTS = (
    "gas_smell_indoors",
    "leak_test_method",
    "methane_in_room_air",
    "hydrogen_sulfide_in_breathed_air",
    "carbon_monoxide_in_room_air",
    "gas_in_use",
    "entry_planned",
    "plant_valve",
    "human_excreta_fed",
    "hydraulic_retention_time",
    "fed_share_of_design",
    "gas_ratio_to_low",
    "slurry_ph",
    "pressure_relief",
    "feed_contains",
)


@cache
def fleet() -> Fleet:
    return fleet_of(base())


def row(**changes: Any) -> Json:
    """``ROW`` with members replaced; None takes one out."""
    return {name: value for name, value in {**ROW, **changes}.items() if value is not None}


def table(rows: list[Json]) -> pa.RecordBatch:
    """Rows as a batch with a column for each member that any of them has; numbers as floats, words as text."""
    names = list(dict.fromkeys(name for one in rows for name in one))
    fields = [pa.field(name, _type_of(name)) for name in names]
    return pa.RecordBatch.from_arrays([pa.array([one.get(f.name) for one in rows], f.type) for f in fields], schema=pa.schema(fields))


def _type_of(name: str) -> pa.DataType:
    fact = base().data.facts.get(name)
    if name in ("id", *WORDS) or (fact is not None and fact.kind == "one_of"):
        return pa.string()
    if name in DAYS:
        return pa.date32()
    if fact is not None and fact.kind == "list_of":
        return pa.list_(pa.string())
    return pa.bool_() if fact is not None and fact.kind == "yes_no" else pa.float64()


def answered(rows: list[Json]) -> list[Json]:
    """The rows of a table answered by the fleet."""
    found: list[Json] = fleet().answer(table(rows)).to_pylist()
    return found


def one(**changes: Any) -> Json:
    """``ROW`` with changes, answered as a table of one row."""
    [found] = answered([row(**changes)])
    return found


def request_of(stated: Json) -> Json:
    """A row as the body of a single request: facts that are no members of a record go among the facts."""
    members = questions()[NAME].request.model_fields
    body = {name: value.isoformat() if isinstance(value, dt.date) else value for name, value in stated.items() if name in members}
    facts = {name: value for name, value in stated.items() if name not in members}
    return {**body, **({"facts": facts} if facts else {})}


def asked(stated: Json, **flags: Any) -> Json | RefusedError:
    """A row asked as a single request; the refusal where it is refused."""
    question = questions()[NAME]
    try:
        return question.answer(question.read(request_of(stated)), flags.get("explain", False))
    except RefusedError as refused:
        return refused


def single(**changes: Any) -> Json:
    """``ROW`` with changes, asked as a single request that must be answered."""
    found = asked(row(**changes))
    assert not isinstance(found, RefusedError), found
    return found


# Numbers near what is real, and others that are only possible or not even that.
USUAL = {
    "total_volume": (2.0, 30.0),
    "gas_storage_volume": (0.5, 5.0),
    "animal_count": (0, 40),
    "feed_mass": (0.0, 200.0),
    "water_volume": (0.0, 300.0),
    "feeding_interval": (0.5, 15.0),
    "biogas_measured": (0.0, 6.0),
    "gas_pressure": (-200.0, 12_000.0),
    "ph": (4.0, 9.0),
    "mean_air_temperature": (2.0, 38.0),
    "digester_temperature": (-3.0, 45.0),
    "altitude": (0.0, 3000.0),
    "distance_to_well": (0.0, 60.0),
}
SCALES = (1e-3, 0.1, 10.0, 1e3, 1e6)
IMPOSSIBLE = (-1.0, math.nan, math.inf, -math.inf, 1e12)
OPTIONAL = (*USUAL, "animal", "housing", "substrate", *DAYS)


def numbers(name: str) -> st.SearchStrategy[float]:
    """What may stand in a column of numbers: mostly usual, sometimes slipped, seldom impossible."""
    low, high = USUAL[name]
    whole = isinstance(low, int)
    usual = st.integers(int(low), int(high)).map(float) if whole else st.floats(low, high)
    slipped = st.builds(lambda number, scale: number * scale, usual, st.sampled_from(SCALES))
    rare = st.sampled_from(IMPOSSIBLE) | (st.floats(0.1, 5) if whole else st.just(0.0))
    return st.integers(0, 39).flatmap(lambda at: rare if at == 0 else slipped if at < 6 else usual)


def words(name: str) -> st.SearchStrategy[str]:
    """Ids or words of a member, seldom one that is none."""
    data = base().data
    known = {
        "structure": data.structures,
        "animal": data.animals,
        "substrate": data.substrates,
        "housing": ("stall", "night_pen", "grazing"),
    }
    return st.integers(0, 39).flatmap(lambda at: st.just("igloo") if at == 0 else st.sampled_from(sorted(known[name])))


def facts() -> st.SearchStrategy[Json]:
    """A few stated facts as a table has them: bare numbers in the unit of the fact."""
    return st.lists(st.sampled_from(FACTS), max_size=4, unique=True).flatmap(
        lambda names: st.fixed_dictionaries({name: fact(name) for name in names})
    )


def fact(name: str) -> st.SearchStrategy[Any]:
    """What may be said of a fact."""
    entry = base().data.facts[name]
    if entry.kind == "yes_no":
        return st.booleans()
    if entry.kind == "one_of":
        return st.sampled_from(entry.values)
    if entry.kind == "list_of":
        return st.lists(st.sampled_from([*entry.values[:6], "gold"]), max_size=3, unique=True)
    assert entry.at_least is not None
    assert entry.at_most is not None
    return st.floats(entry.at_least, entry.at_most)


def members(name: str) -> st.SearchStrategy[Any]:
    """What may stand in a column."""
    if name in DAYS:
        return st.dates(dt.date(2015, 1, 1), dt.date(2027, 12, 31))
    return words(name) if name in WORDS else numbers(name)


@st.composite
def rows(draw: Any, with_facts: bool = True) -> Json:
    """A random row: what every record needs is seldom missing, everything else is stated or not."""
    chosen = draw(st.lists(st.sampled_from(OPTIONAL), unique=True, min_size=4))
    required = [name for name in ("structure", "total_volume") if draw(st.integers(0, 39))]
    found = {name: draw(members(name)) for name in dict.fromkeys([*required, *chosen])}
    return {"id": draw(st.uuids()).hex[:8], **found, **(draw(facts()) if with_facts and draw(st.booleans()) else {})}
