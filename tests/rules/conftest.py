"""What the tests of the rules share: the base rulebook's questions, small helpers on answers, packs made on the spot, random requests."""

from __future__ import annotations

import copy
import datetime as dt
import json
import math
import os
from collections.abc import Callable, Iterator, Mapping
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, Phase, settings
from hypothesis import strategies as st

from kilisho.faults import Fault, RefusedError
from kilisho.packs import Rulebook, load
from kilisho.questions import Question, open_questions

Json = dict[str, Any]

# Shared machines pause for seconds; a test here fails for what it finds, never for how long one example took. Failures are shown as
# they were found: shrinking a whole farm takes minutes, and the blob that is printed brings it back. Many random farms are refused, in
# an unlucky row of them most; a test to which none at all was left still fails by itself.
settings.register_profile(
    "kilisho",
    deadline=None,
    # The same examples in every run of CI: a landing must not depend on luck; elsewhere new ones are tried each time.
    derandomize=os.environ.get("CI") == "true",
    max_examples=60,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.filter_too_much],
    print_blob=True,
    phases=[Phase.explicit, Phase.reuse, Phase.generate],
)
settings.load_profile("kilisho")


@cache
def base() -> Rulebook:
    return load()


@cache
def questions() -> Mapping[str, Question]:
    return open_questions(base())


def ask(name: str, body: Json, explain: bool = False, among: Mapping[str, Question] | None = None) -> Json:
    """The answer to ``body``, asked as bytes the way a caller does."""
    return (among or questions())[name].ask(json.dumps(body).encode(), explain)


def like(body: Json, **changes: Any) -> Json:
    """``body`` with members replaced; None takes one out."""
    return {name: value for name, value in {**copy.deepcopy(body), **changes}.items() if value is not None}


def value(answer: Json, path: str) -> float:
    """The number at a dotted path, such as ``stockpile.collected``."""
    found: Any = answer
    for part in path.split("."):
        found = found[int(part)] if isinstance(found, list) else found[part]
    return float(found["value"] if isinstance(found, dict) else found)


def findings(answer: Json) -> dict[str, str]:
    """Verdict by check id."""
    return {one["check"]: one["verdict"] for one in answer["findings"]}


def assumed(answer: Json) -> set[tuple[str, str | None]]:
    return {(one["quantity"], one.get("of")) for one in answer["assumptions"]}


def numbers(answer: Any, path: str = "") -> Iterator[tuple[str, float]]:
    """Every number of an answer with its path."""
    if isinstance(answer, bool) or answer is None or isinstance(answer, str):
        return
    if isinstance(answer, int | float):
        yield path, float(answer)
    else:
        for key, inner in answer.items() if isinstance(answer, dict) else enumerate(answer):
            yield from numbers(inner, f"{path}/{key}")


def assert_sound(name: str, answer: Json, among: Mapping[str, Question] | None = None) -> None:
    """The answer fits its published shape and every number in it is finite."""
    (among or questions())[name].response.model_validate(answer)
    endless = [path for path, number in numbers(answer) if not math.isfinite(number)]
    assert not endless, f"not finite: {endless}"


def resolves(pointer: str, body: Any) -> bool:
    """Whether an RFC 6901 pointer leads to something in ``body``, or to a missing member of something in it."""
    if pointer == "":
        return True
    *parents, last = [part.replace("~1", "/").replace("~0", "~") for part in pointer.removeprefix("/").split("/")]
    here: Any = body
    for part in parents:
        if isinstance(here, dict) and part in here:
            here = here[part]
        elif isinstance(here, list) and part.isdigit() and int(part) < len(here):
            here = here[int(part)]
        else:
            return False
    return isinstance(here, dict) or (isinstance(here, list) and last.isdigit() and int(last) < len(here))


def answer_or_refusal(name: str, body: Json, explain: bool = True) -> Json | None:
    """A sound answer, or None where the request was refused with faults that point into it. Anything else fails the test."""
    answer: Json | None = None
    faults: tuple[Fault, ...] = ()
    try:
        answer = ask(name, body, explain)
    except RefusedError as refused:
        faults = refused.faults
    if answer is None:
        assert faults
        assert not [fault for fault in faults if not (fault.code and fault.detail and resolves(fault.pointer, body))]
    else:
        assert_sound(name, answer)
    return answer


@pytest.fixture
def pack(tmp_path: Path) -> Callable[..., Path]:
    """Writes a pack of one file and gives its path."""

    def write(text: str, name: str = "layer.yaml") -> Path:
        path = tmp_path / name
        path.write_text(text, encoding="utf-8")
        return path

    return write


FARM: Json = {
    "digester": {"structure": "fixed_dome", "total_volume": 12},
    "feed": [{"substrate": "cattle_dung"}],
    "dilution": {"water_to_feed_by_volume": 1},
    "herd": [{"animal": "dairy_cow", "count": 8, "housing": "stall"}],
    "climate": {"mean_air_temperature": 22, "yearly_swing": 4},
}
FIRST_CHARGE: Json = {**FARM, "stockpile": {"starts_on": "2027-01-04", "cover": "sheet"}, "digester_ready_on": "2027-02-03"}
SIZING: Json = {"structure": "fixed_dome", **{name: FARM[name] for name in ("herd", "dilution", "climate")}}


# Random requests that keep to the published schema: anything a caller may send, near the ends of what is allowed as well as usual.


def measure(least: float, most: float, *units: str) -> st.SearchStrategy[Any]:
    """A bare number from ``least`` to ``most``, or the same with its unit stated."""
    number = st.floats(least, most, allow_nan=False) | st.sampled_from([least, most])
    return number | st.builds(lambda n, u: {"value": n, "unit": u}, number, st.sampled_from(units)) if units else number


def maybe(required: Mapping[str, Any], **optional: Any) -> st.SearchStrategy[Json]:
    return st.fixed_dictionaries(dict(required), optional=optional)


def ids(section: str) -> st.SearchStrategy[str]:
    practice = {"covers", "containers", "slurry_stores", "spreadings", "manure_managements"}
    data: Any = base().data.practice if section in practice else base().data
    return st.sampled_from(sorted(getattr(data, section)))


DATES = st.dates(min_value=dt.date(2026, 1, 1), max_value=dt.date(2027, 12, 31)).map(str)
SHARES = measure(0.001, 1, "1")


def digesters() -> st.SearchStrategy[Json]:
    shared = {"structure": ids("structures"), "gas_storage_volume": measure(0, 5, "m3"), "age": measure(0, 3000, "d")}
    by_total = maybe({"total_volume": measure(0.1, 1000, "m3")}, **shared)
    by_working = maybe({"working_volume": measure(0.05, 1000, "m3")}, **shared)
    return by_total | by_working | maybe({"total_volume": measure(20, 30), "working_volume": measure(10, 20)}, **shared)


def overrides() -> dict[str, st.SearchStrategy[Any]]:
    return {
        "total_solids": SHARES,
        "volatile_solids": SHARES,
        "nitrogen": measure(0.0001, 0.6, "1"),
        "carbon_to_nitrogen": measure(0.1, 1000),
        "bulk_density": measure(20, 2000, "kg/m3"),
        "biogas_yield": measure(0, 2, "m3/kg"),
        "methane_potential": measure(0, 2, "m3/kg"),
        "methane_share": measure(0.05, 0.95, "1"),
    }


def feeds(least: int, **amounts: Any) -> st.SearchStrategy[list[Json]]:
    """Up to three different substrates; none or all of them with a mass, or with shares that make up a whole."""
    item = maybe({"substrate": ids("substrates")}, **overrides())
    plain = st.lists(item, min_size=least, max_size=3, unique_by=lambda one: one["substrate"])
    shared = plain.map(lambda feed: [{**one, "share": 1 / len(feed)} for one in feed])
    weighed = st.lists(
        maybe({"substrate": ids("substrates")}, **overrides(), **amounts),
        min_size=least,
        max_size=3,
        unique_by=lambda one: one["substrate"],
    )
    return plain | shared | weighed


def herds() -> st.SearchStrategy[list[Json]]:
    return st.lists(
        maybe(
            {"animal": ids("animals"), "count": st.integers(0, 40) | st.sampled_from([0, 1_000_000])},
            housing=st.sampled_from(["stall", "night_pen", "grazing"]),
            dung_per_day=measure(0.001, 200, "kg/d"),
            live_weight=measure(0.02, 2000, "kg"),
            urine_per_day=measure(0, 100, "L/d"),
        ),
        max_size=3,
    )


def dilutions() -> st.SearchStrategy[Json]:
    return maybe({"water_to_feed_by_volume": measure(0, 30)}) | maybe({"target_total_solids": SHARES}) | st.just({})


def climates() -> st.SearchStrategy[Json]:
    months = st.lists(st.floats(-40, 45), min_size=12, max_size=12)
    return (
        maybe({"digester_temperature": measure(-40, 70, "Cel")})
        | maybe({"mean_air_temperature": measure(-40, 70, "Cel")}, yearly_swing=measure(0, 60, "K"), warmest_month=st.integers(1, 12))
        | months.map(lambda values: {"monthly_air_temperature": {"values": values, "unit": "Cel"}})
        | st.just({})
    )


def containers() -> st.SearchStrategy[list[Json]]:
    return st.lists(maybe({"name": st.sampled_from(["bucket", "cart"]), "volume": measure(0.5, 20_000, "L")}), max_size=2)


def purchases() -> st.SearchStrategy[list[Json]]:
    shared = {
        "substrate": ids("substrates"),
        "distance": measure(0, 500_000, "m"),
        "price": st.floats(0, 1e6).map(lambda number: {"value": number, "per": "t"}),
        "load": measure(1, 1e5, "kg"),
    }
    in_all = maybe({"name": st.just("neighbour"), "available": measure(0, 1e6, "kg")}, **shared)
    daily = maybe({"name": st.just("dairy"), "per_day": measure(0.001, 1e5, "kg/d")}, **shared)
    return st.lists(in_all | daily, max_size=4)


def first_charges() -> st.SearchStrategy[Json]:
    return maybe(
        {"digester": digesters(), "feed": feeds(1, mass=measure(0.001, 1e5, "kg"), gathered_per_day=measure(0.001, 1e5, "kg/d"))},
        dilution=dilutions(),
        first_fill_share=SHARES,
        starter_slurry=measure(0, 1e6, "kg") | st.floats(0, 500),
        herd=herds(),
        stockpile=maybe({}, starts_on=DATES, cover=ids("covers"), on_hand=measure(0, 1e6, "kg")),
        digester_ready_on=DATES,
        purchases=purchases(),
        containers=containers(),
        labour=maybe({"people": st.integers(1, 1000), "hours_per_day": measure(0.1, 24, "h/d")}),
        climate=climates(),
        water_available=measure(0, 1e6, "L/d"),
        water_distance=measure(0, 500_000, "m"),
    )


def maintenance_feeds() -> st.SearchStrategy[Json]:
    return maybe(
        {"digester": digesters()},
        herd=herds(),
        feed=feeds(0, mass=measure(0.001, 1e5, "kg/d")),
        dilution=dilutions(),
        urine=maybe({}, collected=st.booleans(), volume=measure(0, 1e6, "L/d")),
        feeding=maybe({}, every=measure(0.25, 60, "d"), starts_on=DATES, missed=st.integers(0, 60)),
        containers=containers(),
        climate=climates(),
        water_available=measure(0, 1e6, "L/d"),
        slurry_ph=measure(0, 14),
    )


def batch_rotations() -> st.SearchStrategy[Json]:
    return maybe(
        {"digester": digesters(), "feed": feeds(1, mass=measure(0.001, 1e5, "kg"))},
        dilution=dilutions(),
        gas_demand=measure(1e-3, 1e3, "m3/d"),
        climate=climates(),
        first_charge_on=DATES,
        starter_share=measure(0, 0.9, "1"),
        starter_slurry=measure(0, 1e6, "kg") | st.floats(0, 500),
        retention=measure(5, 300, "d"),
        turn_round=measure(0, 60, "d"),
        digesters=st.integers(1, 24),
    )


def clock_hours() -> st.SearchStrategy[Json]:
    minutes = st.integers(0, 24 * 60 - 1)
    return st.builds(lambda start, end: {"from": clock(start), "to": clock(end)}, minutes, minutes | st.just(24 * 60))


def clock(minutes: int) -> str:
    """A time of day as a caller writes it."""
    return f"{minutes // 60:02}:{minutes % 60:02}"


def sizings() -> st.SearchStrategy[Json]:
    return maybe(
        {},
        structure=ids("structures"),
        herd=herds(),
        feed=feeds(0, mass=measure(0.001, 1e5, "kg/d")),
        dilution=dilutions(),
        gas_demand=measure(1e-3, 1e3, "m3/d"),
        appliances=st.lists(
            maybe({"appliance": ids("appliances")}, count=st.integers(1, 1000), hours_per_day=measure(0.1, 24, "h/d"))
            | maybe({"appliance": ids("appliances"), "use": st.lists(clock_hours(), min_size=1, max_size=3)}, count=st.integers(1, 1000)),
            max_size=2,
        ),
        people_cooked_for=st.integers(1, 10_000),
        climate=climates(),
        water_available=measure(0, 1e6, "L/d"),
        hydraulic_retention_time=measure(5, 365, "d"),
    )


def appliance_uses() -> st.SearchStrategy[list[Json]]:
    by_hours = maybe({"appliance": ids("appliances")}, count=st.integers(1, 1000), hours_per_day=measure(0.1, 24, "h/d"))
    use = st.lists(clock_hours(), min_size=1, max_size=3)
    return st.lists(by_hours | maybe({"appliance": ids("appliances"), "use": use}, count=st.integers(1, 1000)), max_size=3)


def manures() -> st.SearchStrategy[Json]:
    """Manure with the way in which it was kept; what is no manure is refused and tried elsewhere."""
    substrates = [name for name, entry in base().data.substrates.items() if entry.group in {"dung", "droppings", "poultry", "urine"}]
    told = {"substrate": st.sampled_from(substrates), "mass": measure(0.001, 1e5, "kg/d"), "management": ids("manure_managements")}
    return maybe(told, **overrides())


def gas_uses() -> st.SearchStrategy[Json]:
    pipe = maybe(
        {"length": measure(0.1, 2000, "m")},
        inner_diameter=measure(3, 500, "mm"),
        material=st.sampled_from(["galvanised_steel", "plastic"]),
        fittings=st.integers(0, 500),
    )
    shared = {
        "biogas_per_day": measure(0, 1e3, "m3/d") | st.floats(0, 5),
        "gas_storage_volume": measure(0, 1000, "m3") | st.floats(0, 3),
        "methane_share": measure(0.05, 0.95, "1"),
        "gas_pressure": measure(0, 100_000, "Pa"),
        "pipe": pipe,
        "replaced_fuels": st.lists(
            maybe({"fuel": ids("fuels")}, share=measure(0, 0.5, "1")), max_size=2, unique_by=lambda one: one["fuel"]
        ),
        "substrate": ids("substrates"),
        "manure_before": st.lists(manures(), max_size=2),
        "climate": maybe({}, altitude=measure(-400, 5500, "m")) | climates(),
    }
    return (
        maybe({"appliances": appliance_uses()}, **shared)
        | maybe({"people_cooked_for": st.integers(1, 10_000)}, **shared)
        | maybe({"gas_demand": measure(0.001, 1e3, "m3/d")}, **shared)
    )


def digestates() -> st.SearchStrategy[Json]:
    """Requests on digestate with a retention, a digester or neither, and water, a dilution or neither."""
    nutrients = {"phosphorus": measure(0, 0.5, "1"), "potassium": measure(0, 0.5, "1"), "ammonium_share": measure(0, 1, "1")}
    item = maybe({"substrate": ids("substrates"), "mass": measure(0.001, 1e5, "kg/d")}, **overrides(), **nutrients)
    crop = maybe(
        {"crop": ids("crops")},
        area=measure(0.0001, 10_000, "har"),
        nitrogen_need=measure(0.1, 2000, "kg/har"),
        eaten_raw=st.booleans(),
        edible_part_touches_soil=st.booleans(),
    )
    shared: dict[str, Any] = {
        "herd": herds(),
        "urine": measure(0, 1e6, "L/d"),
        "climate": climates(),
        "spreading": ids("spreadings"),
        "nitrogen_limit": measure(1, 2000, "kg/har"),
        "storage": maybe(
            {},
            store=ids("slurry_stores"),
            time=measure(0, 24, "mo"),
            volume=measure(0.01, 1e5, "m3"),
            depth=measure(0.2, 6, "m"),
            freeboard=measure(0, 2, "m"),
        ),
        "prices": maybe({}, **{name: st.floats(0, 1e6) for name in ("nitrogen", "phosphate", "potash")}),
        "containers": containers(),
    }
    required = {
        "feed": st.lists(item, min_size=1, max_size=3, unique_by=lambda one: one["substrate"]),
        "crops": st.lists(crop, min_size=1, max_size=3),
    }
    by_time = maybe(required, hydraulic_retention_time=measure(1, 1000, "d"), water=measure(0, 1e6, "L/d"), **shared)
    return by_time | maybe(required, digester=digesters(), dilution=dilutions(), **shared)


def fact_values(name: str) -> st.SearchStrategy[Any]:
    """What may be said of a fact, as a caller says it."""
    fact = base().data.facts[name]
    if fact.kind == "yes_no":
        return st.booleans()
    if fact.kind == "one_of":
        return st.sampled_from(fact.values)
    if fact.kind == "structure":
        return st.sampled_from(sorted(base().data.structures))
    if fact.kind == "list_of":
        return st.lists(st.sampled_from(fact.values), max_size=3, unique=True)
    assert fact.at_least is not None
    assert fact.at_most is not None
    return st.floats(fact.at_least, fact.at_most)


def stated_facts() -> st.SearchStrategy[Json]:
    """Some of the rulebook's facts by id."""
    every = sorted(base().data.facts)
    return st.lists(st.sampled_from(every), max_size=40, unique=True).flatmap(
        lambda names: st.fixed_dictionaries({name: fact_values(name) for name in names})
    )


def safety_checks() -> st.SearchStrategy[Json]:
    facts = base().data.facts

    def grouped(stated: Json) -> Json:
        body: Json = {}
        for name, said in stated.items():
            body.setdefault(facts[name].group, {})[facts[name].field] = said
        return body

    return stated_facts().map(grouped) | stated_facts().map(lambda stated: {"facts": stated})


def day_of_2027(day: int) -> str:
    return str(dt.date(2027, 1, 10) + dt.timedelta(days=day))


def weighed_feeds() -> st.SearchStrategy[list[Json]]:
    item = maybe({"substrate": ids("substrates"), "mass": measure(0.001, 1e5, "kg")}, **overrides())
    return st.lists(item, min_size=1, max_size=3, unique_by=lambda one: one["substrate"])


def feeding_plans() -> st.SearchStrategy[list[Json]]:
    """Up to two plans, the second after the first; now and then one that ends before it begins."""
    plan = maybe({"feed": weighed_feeds()}, every=measure(0.25, 60, "d"), water=measure(0, 1e6, "L"))
    spans = st.tuples(st.integers(0, 15), st.integers(-1, 12)), st.tuples(st.integers(28, 40), st.integers(0, 30))
    dated = [st.builds(lambda one, s: {**one, "from": day_of_2027(s[0]), "until": day_of_2027(s[0] + s[1])}, plan, span) for span in spans]
    return st.just([]) | st.tuples(dated[0]).map(list) | st.tuples(*dated).map(list)


def gas_forecasts() -> st.SearchStrategy[Json]:
    """Short ones: what makes a forecast long is tried elsewhere."""
    charge = maybe({"on": st.just(day_of_2027(0)), "feed": feeds(1)}, water=measure(0, 1e6, "L"), starter_slurry=measure(0, 100, "kg"))
    days = st.integers(0, 50).map(day_of_2027)
    return maybe(
        {"digester": digesters(), "days": st.integers(45, 60), "maintenance_feed": feeding_plans()},
        first_charge=charge,
        deviations=st.lists(maybe({"from": days}, share_of_feed=st.floats(0, 5)), max_size=2),
        herd=herds(),
        dilution=dilutions(),
        climate=climates(),
        interval=st.sampled_from(["day", "week", "month"]),
    )


def farm_plans() -> st.SearchStrategy[Json]:
    """Without forecast: what makes a plan slow is tried with the forecast itself."""
    return maybe(
        {"with_forecast": st.just(False)},
        structure=ids("structures"),
        digester=digesters(),
        herd=herds(),
        feed=feeds(0, mass=measure(0.001, 1e5, "kg/d")),
        dilution=dilutions(),
        climate=climates(),
        water_available=measure(0, 1e6, "L/d"),
        people_cooked_for=st.integers(1, 10_000),
        construction=maybe({}, digester_ready_on=DATES),
        stockpile=maybe({}, starts_on=DATES, cover=ids("covers"), on_hand=measure(0, 1e6, "kg")),
        purchases=purchases(),
        containers=containers(),
        crops=st.lists(maybe({"crop": ids("crops")}, area=measure(0.0001, 10_000, "har")), max_size=2),
        manure_management_before=ids("manure_managements"),
    )


def feed_mixes() -> st.SearchStrategy[Json]:
    """Mixes of up to three substrates, with limits anywhere in their meaning, so that many have no recipe."""
    item = maybe(
        {"substrate": ids("substrates"), "available": measure(0.001, 1e5, "kg/d") | st.floats(5, 100)},
        **overrides(),
        stock=measure(0, 1e6, "kg"),
        price=st.floats(0, 1e6).map(lambda number: {"value": number, "per": "t"}),
        largest_share=SHARES,
        brought_in=st.booleans(),
    )
    limits = maybe(
        {},
        least_total_solids=measure(0.005, 0.4, "1"),
        largest_total_solids=measure(0.005, 0.4, "1"),
        least_carbon_to_nitrogen=measure(1, 300),
        largest_carbon_to_nitrogen=measure(1, 300),
        largest_total_ammonia_nitrogen=measure(0.05, 20, "g/L"),
        least_retention_time=measure(2, 400, "d"),
        largest_organic_loading_rate=measure(0.01, 20, "kg/m3/d"),
        largest_crop_residue_share=SHARES,
    )
    shared = {
        "on_hand": st.lists(item, min_size=1, max_size=3, unique_by=lambda one: one["substrate"]),
        "herd": herds(),
        "climate": climates(),
        "wish": st.sampled_from(["most_gas", "cheapest", "most_even"]),
        "gas_demand": measure(1e-3, 1e3, "m3/d") | st.floats(0.2, 3),
        "season": measure(1, 3660, "d"),
        "water_available": measure(0, 1e6, "L/d") | st.floats(20, 200),
        "water_price": st.floats(0, 1e6).map(lambda number: {"value": number, "per": "t"}),
        "limits": limits,
        "slurry_ph": measure(0, 14),
    }
    by_digester = maybe({"digester": digesters()}, **shared)
    return (by_digester | maybe({"working_volume": measure(0.05, 1000, "m3") | st.floats(2, 20)}, **shared)).map(with_demand)


def with_demand(body: Json) -> Json:
    """The cheapest mix is asked for with the gas that it must give."""
    return {"gas_demand": 0.5, **body} if body.get("wish") == "cheapest" else body


def readings() -> st.SearchStrategy[Json]:
    return maybe(
        {},
        ph=measure(0, 14),
        gas_pressure=measure(-50_000, 100_000, "Pa"),
        biogas_per_day=measure(0, 1e3, "m3/d"),
        slurry_temperature=measure(-40, 70, "Cel"),
        volatile_acids_to_alkalinity=measure(0, 100),
        total_ammonia_nitrogen=measure(0, 50, "g/L"),
        free_ammonia=measure(0, 20_000, "mg/L"),
        methane_share=measure(0, 1, "1"),
        hydrogen_sulfide=measure(0, 100_000, "[ppm]"),
        days_since_feeding=measure(0, 36_525, "d"),
    )


def diagnoses() -> st.SearchStrategy[Json]:
    symptoms = st.lists(ids("symptoms"), max_size=8)
    farm = {"feed": feeds(0, mass=measure(0.001, 1e5, "kg/d")), "herd": herds(), "climate": climates(), "facts": stated_facts()}
    return maybe(
        {"symptoms": symptoms},
        not_seen=symptoms,
        readings=readings(),
        digester=digesters(),
        water=measure(0, 1e6, "L/d"),
        dilution=dilutions(),
        **farm,
    )


def installations() -> st.SearchStrategy[Json]:
    numbers = {
        "gas_storage_volume": measure(0, 1e6, "m3"),
        "animal_count": st.integers(0, 10_000_000),
        "feed_mass": measure(0, 1e7, "kg/d"),
        "water_volume": measure(0, 1e7, "L/d"),
        "feeding_interval": measure(0.04, 365, "d"),
        "biogas_measured": measure(0, 1e6, "m3/d"),
        "gas_pressure": measure(-1e6, 1e8, "Pa"),
        "ph": st.floats(0, 1400),
        "mean_air_temperature": measure(-100, 400, "Cel"),
        "digester_temperature": measure(-40, 70, "Cel"),
        "altitude": measure(-400, 5500, "m"),
        "distance_to_well": measure(0, 10_000, "m"),
    }
    words = {"animal": ids("animals"), "substrate": ids("substrates"), "housing": st.sampled_from(["stall", "night_pen", "grazing"])}
    dates = {"commissioned_on": DATES, "visited_on": DATES}
    built = {"structure": ids("structures"), "total_volume": measure(1e-4, 1e6, "m3") | measure(2, 50, "m3")}
    return maybe(built, id=st.just("INV-1"), facts=stated_facts(), **numbers, **words, **dates)


REQUESTS = {
    "farm-plan": farm_plans,
    "first-charge": first_charges,
    "maintenance-feed": maintenance_feeds,
    "sizing": sizings,
    "gas-forecast": gas_forecasts,
    "batch-rotation": batch_rotations,
    "gas-use": gas_uses,
    "digestate": digestates,
    "feed-mix": feed_mixes,
    "safety-check": safety_checks,
    "diagnosis": diagnoses,
    "installations/validate": installations,
}
