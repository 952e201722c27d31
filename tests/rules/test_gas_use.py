"""The use of gas as a household sees it: what balances, when the gas runs out, what moves it and how, and what is refused."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, assumed, base, clock, findings, gas_uses, like, questions, value

from kilisho.faults import RefusedError
from kilisho.messages import LANGUAGES
from kilisho.packs import load
from kilisho.questions import open_questions

STOVE: Json = {
    "appliance": "double_burner_stove",
    "use": [{"from": "05:30", "to": "07:00"}, {"from": "11:30", "to": "13:00"}, {"from": "18:00", "to": "20:00"}],
}
LAMP: Json = {"appliance": "mantle_lamp", "use": [{"from": "18:30", "to": "21:30"}]}
SEA: Json = {"altitude": 0}
HOUSE: Json = {"appliances": [STOVE, LAMP], "biogas_per_day": 2.4, "gas_storage_volume": 1.5, "climate": SEA}
EXACT = """
appliances:
  double_burner_stove: {gas_per_hour: {typical: 0.6, unit: m3/h, basis: judgement}}
  mantle_lamp: {gas_per_hour: {typical: 0.13, unit: m3/h, basis: judgement}}
"""
Pack = Callable[..., Path]


def use(body: Json = HOUSE, **changes: Any) -> Json:
    return ask("gas-use", like(body, **changes))


def refused(body: Json) -> list[tuple[str, str]]:
    with pytest.raises(RefusedError) as caught:
        ask("gas-use", body)
    return [(fault.pointer, fault.code) for fault in caught.value.faults]


def hours(answer: Json, name: str, end: str = "value") -> list[float]:
    return [row[name].get(end, row[name]["value"]) for row in answer["cover_by_hour"]]


# The day balances


def by_minutes(body: Json, rates: dict[str, float]) -> dict[str, list[float]]:
    """The same day by a plain loop over minutes; sums by hour [m3]. Where gas is left over the store begins full, else empty."""
    wanted = [0.0] * 1440
    for one in body["appliances"]:
        for spell in one["use"]:
            start, end = (int(spell[name][:2]) * 60 + int(spell[name][3:]) for name in ("from", "to"))
            for minute in range(start, end if end > start else end + 1440):
                wanted[minute % 1440] += one.get("count", 1) * rates[one["appliance"]] / 60
    store, gain = body["gas_storage_volume"], body["biogas_per_day"] / 1440
    level = store if body["biogas_per_day"] >= sum(wanted) else 0.0
    for _ in range(3):
        sums = {name: [0.0] * 24 for name in ("unmet", "vented", "stored", "demand")}
        for minute, asked in enumerate(wanted):
            free = level + gain - asked
            sums["unmet"][minute // 60] += max(0.0, -free)
            sums["vented"][minute // 60] += max(0.0, free - store)
            sums["demand"][minute // 60] += asked
            level = min(max(free, 0.0), store)
            sums["stored"][minute // 60] = level
    return sums


DAYS = st.lists(
    st.tuples(st.integers(0, 1439), st.integers(1, 300)).map(lambda t: {"from": clock(t[0]), "to": clock((t[0] + t[1]) % 1440)}),
    min_size=1,
    max_size=2,
)


@given(DAYS, DAYS, st.floats(0, 6), st.floats(0, 3))
@settings(max_examples=40)
def test_the_hours_are_those_of_a_plain_loop_over_minutes(cooking: Any, light: Any, supply: float, store: float) -> None:
    stove, lamp = {**STOVE, "use": cooking}, {**LAMP, "use": light}
    body = like(HOUSE, appliances=[stove, lamp], biogas_per_day=supply, gas_storage_volume=store)
    try:
        answer = ask("gas-use", body)
    except RefusedError as refusal:
        assume(not any(fault.code == "use_overlaps" for fault in refusal.faults))
        raise
    expected = by_minutes(body, {"double_burner_stove": 0.6, "mantle_lamp": 0.13})
    for name, sums in expected.items():
        # A store that empties within a minute leaves less than a minute's gas of difference.
        assert hours(answer, name) == pytest.approx(sums, abs=0.02), name
    assert value(answer, "unmet_per_day") == pytest.approx(sum(expected["unmet"]), abs=0.05)


@given(gas_uses())
@settings(max_examples=80)
def test_gas_is_neither_made_nor_lost(body: Json) -> None:
    try:
        answer = ask("gas-use", body)
    except RefusedError:
        assume(False)
    if "supply_per_day" in answer and "demand_per_day" in answer:
        assert value(answer, "burnt_per_day") + value(answer, "vented_per_day") == pytest.approx(value(answer, "supply_per_day"), abs=1e-4)
        assert value(answer, "burnt_per_day") <= value(answer, "demand_per_day") + 1e-6
    if "cover_by_hour" not in answer:
        return
    assert value(answer, "burnt_per_day") + value(answer, "unmet_per_day") == pytest.approx(value(answer, "demand_per_day"), abs=1e-4)
    stored = hours(answer, "stored")
    for place, row in enumerate(answer["cover_by_hour"]):
        met = row["demand"]["value"] - row["unmet"]["value"]
        after = stored[place - 1] + row["supply"]["value"] - met - row["vented"]["value"]
        assert after == pytest.approx(stored[place], abs=1e-4)
        assert -1e-6 <= stored[place] <= value(answer, "gas_storage_volume") + 1e-6
    for name, total in (("demand", "demand_per_day"), ("unmet", "unmet_per_day"), ("vented", "vented_per_day")):
        assert sum(hours(answer, name)) == pytest.approx(value(answer, total), abs=1e-4), name


def test_a_household_that_has_too_little_gas() -> None:
    """At typical rates 3.39 m3 are wanted and 2.40 there: 71 %. The store of 1.50 holds 0.25 at midnight; 0.90 are burnt by 07:00."""
    answer = use()
    assert value(answer, "demand_per_day") == pytest.approx(5 * 0.6 + 3 * 0.13)
    assert value(answer, "covered") == pytest.approx(100 * 2.4 / 3.39, abs=0.01)
    assert value(answer, "unmet_per_day") == pytest.approx(0.99)
    spells = [(one["from"], one["to"]) for one in answer["without_gas"]]
    assert spells == [("12:30", "13:00"), ("18:54", "21:30")]
    assert value(answer, "hours_without_gas") == pytest.approx(sum(one["hours"]["value"] for one in answer["without_gas"]), abs=0.01)
    assert hours(answer, "stored")[6] == pytest.approx(0.05)
    assert {"gas_supply_covers_demand", "gas_there_when_wanted"} <= {name for name, end in findings(answer).items() if end == "fail"}


def test_without_gas_nothing_is_covered_and_it_is_said() -> None:
    answer = use(biogas_per_day=0)
    assert value(answer, "covered") == value(answer, "burnt_per_day") == value(answer, "vented_per_day") == 0
    assert value(answer, "unmet_per_day") == value(answer, "demand_per_day")
    assert hours(answer, "stored") == [0.0] * 24
    assert value(answer, "hours_without_gas") == pytest.approx(6.5)
    assert [one["from"] for one in answer["without_gas"]] == ["05:30", "11:30", "18:00"]
    assert findings(answer)["gas_supply_covers_demand"] == findings(answer)["gas_there_when_wanted"] == "fail"
    assert value(answer, "gas.heat_per_day") == 0
    assert [value(one, "per_day") for one in answer["replaced_fuels"]] == [0.0] * len(base().data.fuels)
    assert "breakeven_leak_share" not in answer["replaced_fuels"][0]


def test_with_plenty_of_gas_nothing_is_missing_and_the_rest_is_let_off() -> None:
    answer = use(biogas_per_day=8)
    assert answer["without_gas"] == []
    assert value(answer, "covered") == 100
    assert value(answer, "vented_per_day") == pytest.approx(8 - 3.39)
    ends = findings(answer)
    assert ends["gas_not_wasted"] == "fail"
    assert "gas_supply_covers_demand" not in ends
    assert "gas_there_when_wanted" not in ends


def test_a_use_over_midnight() -> None:
    heater = {"appliance": "brooder_heater", "use": [{"from": "20:00", "to": "06:00"}]}
    answer = use(appliances=[heater], biogas_per_day=1.2, gas_storage_volume=0.3)
    assert value(answer, "demand_per_day") == pytest.approx(2.5)
    asked = hours(answer, "demand")
    assert asked == pytest.approx([0.25] * 6 + [0.0] * 14 + [0.25] * 4)
    # 0.30 m3 last 0.30 / (0.25 - 0.05) = 1.5 h from 20:00.
    [spell] = answer["without_gas"]
    assert (spell["from"], spell["to"], spell["hours"]["value"]) == ("21:30", "06:00", 8.5)
    assert value(answer, "hours_without_gas") == pytest.approx(8.5)


def test_gas_that_never_suffices_is_one_spell_of_a_whole_day() -> None:
    fridge = {"appliance": "refrigerator_100_litre", "use": [{"from": "00:00", "to": "24:00"}]}
    answer = use(appliances=[fridge], biogas_per_day=0.2, gas_storage_volume=1)
    [spell] = answer["without_gas"]
    assert (spell["from"], spell["to"], spell["hours"]["value"]) == ("00:00", "24:00", 24.0)


def test_the_table_has_a_row_for_each_hour() -> None:
    question = questions()["gas-use"]
    rows = list(csv.DictReader(io.StringIO(question.representations["text/csv"](use(), LANGUAGES["en"]))))
    assert [row["from"] for row in rows] == [clock(60 * hour) for hour in range(24)]
    assert [float(row["stored [m3]"]) for row in rows] == hours(use(), "stored")
    assert question.representations["text/csv"](use(appliances=None, gas_demand=2), LANGUAGES["en"]) == ""


# The store


@given(st.floats(0.5, 8))
@settings(max_examples=25)
def test_the_needed_store_is_just_enough(supply: float) -> None:
    needed = value(use(biogas_per_day=supply), "storage_needed")
    best = min(1.0, supply / 3.39) * 100
    assert value(use(biogas_per_day=supply, gas_storage_volume=needed + 2e-6), "covered") == pytest.approx(best, abs=0.01)
    assert value(use(biogas_per_day=supply, gas_storage_volume=0.9 * needed), "covered") < best - 0.01


def test_a_store_that_nobody_stated_is_as_large_as_needed() -> None:
    answer = use(gas_storage_volume=None)
    assert value(answer, "gas_storage_volume") == value(answer, "storage_needed")
    assert ("gas_storage_volume", None) in assumed(answer)
    assert ("gas_storage_volume", None) not in assumed(use())


@given(st.tuples(st.floats(0, 4), st.floats(0, 4)).map(sorted), st.tuples(st.floats(0, 3), st.floats(0, 3)).map(sorted))
@settings(max_examples=30)
def test_more_gas_and_more_store_cover_no_less(gas: list[float], store: list[float]) -> None:
    poor, rich = (use(biogas_per_day=g, gas_storage_volume=s) for g, s in zip(gas, store, strict=True))
    for end in ("value", "low", "high"):
        assert rich["covered"].get(end, rich["covered"]["value"]) >= poor["covered"].get(end, poor["covered"]["value"]) - 1e-3
    assert value(rich, "hours_without_gas") <= value(poor, "hours_without_gas") + 2e-3


def test_without_hours_the_day_is_told_as_a_whole() -> None:
    answer = use(appliances=[STOVE, {"appliance": "mantle_lamp", "hours_per_day": 3}])
    assert "cover_by_hour" not in answer
    assert answer["storage_method"] == "share_of_a_day_s_gas"
    assert value(answer, "storage_needed") == pytest.approx(0.6 * 2.4)
    assert "hours" in answer["hours_unknown"]
    assert value(answer, "covered") == pytest.approx(100 * 2.4 / 3.39, abs=0.01)
    plenty = use(appliances=[{"appliance": "mantle_lamp", "hours_per_day": 3}])
    assert value(plenty, "vented_per_day") == pytest.approx(2.4 - 0.39)


def test_exact_rates_give_exact_hours(pack: Pack) -> None:
    exact = ask(
        "gas-use", HOUSE, among=open_questions(load(pack(EXACT.replace("{gas_per_hour: {", "{gas_per_hour: {low: null, high: null, "))))
    )
    assert "low" not in exact["covered"]
    assert all("low" not in row["stored"] for row in exact["cover_by_hour"])
    assert [row["stored"]["value"] for row in exact["cover_by_hour"]] == hours(use(), "stored")
    assert exact["without_gas"] == use()["without_gas"]


# What must not matter, and what must follow along


def shifted(spells: list[Json], minutes: int) -> list[Json]:
    def later(text: str) -> str:
        return clock((int(text[:2]) * 60 + int(text[3:]) + minutes) % 1440)

    return [{"from": later(spell["from"]), "to": later(spell["to"])} for spell in spells]


@given(st.integers(1, 23), st.floats(0.5, 5), st.floats(0.2, 2))
@settings(max_examples=25)
def test_a_household_that_rises_later_has_the_same_day_later(hour: int, supply: float, store: float) -> None:
    # In balance a day may begin at any level, so that case is left out.
    assume(abs(supply - 3.39) > 0.01)
    later = [{**one, "use": shifted(one["use"], 60 * hour)} for one in (STOVE, LAMP)]
    here, there = (use(appliances=used, biogas_per_day=supply, gas_storage_volume=store) for used in ([STOVE, LAMP], later))
    for name in ("demand", "unmet", "vented", "stored"):
        rotated = hours(here, name)[-hour:] + hours(here, name)[:-hour]
        assert hours(there, name) == pytest.approx(rotated, abs=2e-6), name
    for name in ("storage_needed", "covered", "unmet_per_day", "hours_without_gas"):
        assert value(there, name) == pytest.approx(value(here, name), abs=2e-3), name
    assert len(there["without_gas"]) == len(here["without_gas"])


def test_the_order_of_appliances_and_the_words_for_their_number_do_not_matter() -> None:
    first, second = use(appliances=[STOVE, LAMP]), use(appliances=[LAMP, STOVE])
    assert first["cover_by_hour"] == second["cover_by_hour"]
    assert first["replaced_fuels"] == second["replaced_fuels"]
    twice, two = use(appliances=[LAMP, LAMP], biogas_per_day=0.5), use(appliances=[{**LAMP, "count": 2}], biogas_per_day=0.5)
    assert twice["cover_by_hour"] == two["cover_by_hour"]
    assert twice["demand_per_day"] == two["demand_per_day"]
    assert twice["emissions"] == two["emissions"]


@given(st.integers(2, 20))
@settings(max_examples=15)
def test_n_households_with_n_times_the_gas_and_store(times: int) -> None:
    many = use(appliances=[{**STOVE, "count": times}, {**LAMP, "count": times}], biogas_per_day=2.4 * times, gas_storage_volume=1.5 * times)
    one = use()
    for name in ("demand_per_day", "storage_needed", "unmet_per_day", "burnt_per_day", "gas.heat_per_day", "replaced_fuels.0.per_day"):
        assert value(many, name) == pytest.approx(times * value(one, name), rel=1e-4, abs=1e-4), name
    for name in ("covered", "hours_without_gas", "gas.lower_heating_value"):
        assert value(many, name) == pytest.approx(value(one, name), rel=1e-5), name
    assert many["without_gas"] == one["without_gas"]


def test_a_spell_in_two_parts_is_one() -> None:
    parts = [{"from": "18:30", "to": "20:00"}, {"from": "20:00", "to": "21:30"}]
    assert use(appliances=[STOVE, {**LAMP, "use": parts}]) == use()


def test_units_of_gas_do_not_matter() -> None:
    said = {
        "biogas_per_day": {"value": 100, "unit": "L/h"},
        "gas_storage_volume": {"value": 1500, "unit": "L"},
        "methane_share": {"value": 62, "unit": "%"},
        "gas_pressure": {"value": 40, "unit": "mbar"},
    }
    plain = {"biogas_per_day": 2.4, "gas_storage_volume": 1.5, "methane_share": 0.62, "gas_pressure": 4000}
    first, second = (use(pipe=PIPE, **stated) for stated in (said, plain))
    for part in ("cover_by_hour", "gas", "pipe", "replaced_fuels", "emissions"):
        assert json.dumps(first[part]) == json.dumps(second[part]), part


# Demand and supply alone


def test_people_cooked_for() -> None:
    answer = use({"people_cooked_for": 6, "climate": SEA})
    assert value(answer, "demand_per_day") == pytest.approx(6 * 0.25)
    assert answer["demand_by_appliance"] == []


def test_demand_alone_tells_the_feed_that_it_needs() -> None:
    answer = use({"gas_demand": 2, "substrate": "pig_manure", "climate": SEA})
    pig = base().data.substrates["pig_manure"]
    per_mass = pig.total_solids.typical * pig.volatile_solids.typical * pig.biogas_yield.typical
    assert value(answer, "feed_needed.mass_per_day") == pytest.approx(2 / per_mass, rel=1e-6)
    assert answer["feed_needed"]["mass_per_day"]["low"] < 2 / per_mass < answer["feed_needed"]["mass_per_day"]["high"]
    assert answer["feed_needed"]["substrate"] == "pig_manure"
    assert "supply_per_day" not in answer
    dung = use({"gas_demand": 2})
    assert dung["feed_needed"]["substrate"] == "cattle_dung"
    assert ("substrate", None) in assumed(dung)


def test_demand_alone_sizes_the_store_for_a_digester_that_gives_just_it() -> None:
    asked = like(HOUSE, biogas_per_day=None, gas_storage_volume=None)
    assert value(use(asked), "storage_needed") == pytest.approx(value(use(biogas_per_day=3.39), "storage_needed"))
    assert "cover_by_hour" not in use(asked)


def test_gas_alone_tells_what_it_could_do() -> None:
    answer = use({"biogas_per_day": 1.8, "climate": SEA})
    runs = {one["appliance"]: value(one, "hours_per_day") for one in answer["runs_for"]}
    assert list(runs) == list(base().data.appliances)
    assert runs["single_burner_stove"] == pytest.approx(6.0)
    assert runs["generator_per_kilowatt"] == pytest.approx(1.8)
    assert "demand_per_day" not in answer
    assert value(use({"biogas_per_day": 1.8, "gas_storage_volume": 1}), "gas_storage_volume") == 1


@pytest.mark.parametrize(
    ("body", "fault"),
    [
        ({}, ("", "nothing_to_use")),
        ({"gas_storage_volume": 2}, ("", "nothing_to_use")),
        ({"gas_demand": 1, "people_cooked_for": 2}, ("", "demand_twice")),
        ({"gas_demand": 1, "appliances": [LAMP]}, ("", "demand_twice")),
        ({"appliances": [{**LAMP, "use": [{"from": "07:00", "to": "07:00"}]}]}, ("/appliances/0/use/0", "use_without_length")),
        ({"appliances": [{**LAMP, "use": [{"from": "07:00", "to": "09:00"}] * 2}]}, ("/appliances/0/use", "use_overlaps")),
        ({"gas_demand": 1, "replaced_fuels": [{"fuel": "firewood", "share": 0.1}] * 2}, ("/replaced_fuels", "fuel_twice")),
        (
            {"gas_demand": 1, "replaced_fuels": [{"fuel": "firewood"}, {"fuel": "charcoal", "share": 0.1}]},
            ("/replaced_fuels", "shares_disordered"),
        ),
        ({"gas_demand": 1, "replaced_fuels": [{"fuel": "fire_wood"}]}, ("/replaced_fuels/0/fuel", "unknown_id")),
        ({"gas_demand": 1, "pipe": {"length": 10, "material": "glass"}}, ("/pipe/material", "not_one_of")),
        ({"gas_demand": 1, "pipe": {"length": 10, "inner_diameter": 0.021}}, ("/pipe/inner_diameter", "out_of_range")),
        ({"gas_demand": 1, "pipe": {"inner_diameter": 21}}, ("/pipe/length", "missing")),
        ({"biogas_per_day": -1}, ("/biogas_per_day", "out_of_range")),
        ({"gas_demand": 1, "gas_pressure": 4000, "facts": {"gas_pressure": 3000}}, ("/facts/gas_pressure", "stated_twice")),
        ({**HOUSE, "facts": {"gas_sufficiency": 1.0}}, ("/facts/gas_sufficiency", "stated_twice")),
    ],
)
def test_what_cannot_be_is_refused(body: Json, fault: tuple[str, str]) -> None:
    assert refused(body) == [fault]


def test_feed_that_gives_no_gas_is_refused(pack: Pack) -> None:
    text = "substrates: {whey: {biogas_yield: {low: 0, typical: 0, high: 0, unit: m3/kg, basis: judgement}}}\n"
    among = open_questions(load(pack(text)))
    with pytest.raises(RefusedError) as caught:
        ask("gas-use", {"gas_demand": 1, "substrate": "whey"}, among=among)
    assert [(fault.pointer, fault.code) for fault in caught.value.faults] == [("/substrate", "feed_gives_no_gas")]


# The gas


def test_the_state_of_the_gas() -> None:
    answer = use(methane_share=0.6)
    gas = answer["gas"]
    assert value(gas, "lower_heating_value_normal") == pytest.approx(21.571, abs=0.001)
    assert value(gas, "lower_heating_value") == pytest.approx(21.571 * value(answer, "gas_state.normal_volume"), abs=0.002)
    assert value(gas, "gas_per_day_normal") == pytest.approx(2.4 * value(answer, "gas_state.normal_volume"), abs=1e-5)
    normal_heat = value(gas, "gas_per_day_normal") * value(gas, "lower_heating_value_normal")
    assert value(gas, "heat_per_day") == pytest.approx(normal_heat, rel=1e-4)
    assert value(gas, "heat_per_day_in_kilowatt_hours") == pytest.approx(value(gas, "heat_per_day") / 3.6, abs=1e-4)
    assert "low" not in gas["lower_heating_value"]
    assert ("methane_share", None) not in assumed(answer)
    assert gas["relative_density"]["value"] < 1 < value(use(methane_share=0.5), "gas.relative_density")


def test_a_methane_share_that_nobody_measured_is_assumed_with_its_range() -> None:
    gas = use()["gas"]
    assert ("methane_share", None) in assumed(use())
    assert gas["lower_heating_value"]["low"] < gas["lower_heating_value"]["value"] < gas["lower_heating_value"]["high"]
    assert gas["relative_density"]["low"] < 1 < gas["relative_density"]["high"]


def test_higher_up_the_same_stove_takes_more_volume_and_the_same_heat() -> None:
    body = {"appliances": [STOVE], "methane_share": 0.6}
    low, high = (use({**body, "climate": {"altitude": altitude}}) for altitude in (0, 2500))
    assert value(high, "demand_per_day") > 1.2 * value(low, "demand_per_day")
    assert value(high, "gas.heat_per_day") == pytest.approx(value(low, "gas.heat_per_day"), rel=1e-4)
    assert value(high, "feed_needed.mass_per_day") == pytest.approx(value(low, "feed_needed.mass_per_day"), rel=1e-4)


# The pipe


def piped(answer: Json) -> Json:
    found: Json = answer["pipe"]
    return found


PIPE: Json = {"length": 30, "inner_diameter": 21}


def test_the_busiest_hour_fills_the_pipe() -> None:
    assert value(piped(use(pipe=PIPE)), "busiest_flow") == pytest.approx(730)
    apart = [STOVE, {**LAMP, "use": [{"from": "21:00", "to": "23:00"}]}]
    assert value(piped(use(pipe=PIPE, appliances=apart)), "busiest_flow") == pytest.approx(600)
    by_hours = [{"appliance": "double_burner_stove"}, {"appliance": "mantle_lamp", "count": 2}]
    assert value(piped(use(pipe=PIPE, appliances=by_hours)), "busiest_flow") == pytest.approx(860)
    assert value(piped(use({"gas_demand": 3, "pipe": PIPE})), "busiest_flow") == pytest.approx(1000)
    assert value(piped(use({"biogas_per_day": 3, "pipe": PIPE})), "busiest_flow") == pytest.approx(1000)
    assert value(piped(use({"biogas_per_day": 0, "pipe": PIPE})), "pressure_drop") == 0


@given(st.floats(1, 500), st.integers(1, 40))
@settings(max_examples=30)
def test_the_recommended_pipe_is_the_narrowest_that_keeps_the_limit(length: float, count: int) -> None:
    told = piped(use(appliances=[{**STOVE, "count": count}], pipe={"length": length}))
    limit = value(told, "pressure_drop_limit")
    kept = [size["keeps_limit"] for size in told["sizes"]]
    assert kept == sorted(kept)
    assert kept == [size["pressure_drop"].get("high", size["pressure_drop"]["value"]) <= limit for size in told["sizes"]]
    assert told.get("recommended") == next((size for size in told["sizes"] if size["keeps_limit"]), None)
    drops = [value(size, "pressure_drop") for size in told["sizes"]]
    assert drops == sorted(drops, reverse=True)


def test_no_pipe_of_the_rulebook_is_wide_enough_for_a_village() -> None:
    told = piped(use(appliances=[{**STOVE, "count": 1000}], pipe={"length": 2000}))
    assert "recommended" not in told
    assert "No size" in told["text"]
    assert "pipe_pressure_drop" not in {one["subject"] for one in use(pipe={"length": 5})["findings"] if one["verdict"] == "unknown"}


def test_longer_narrower_and_more_bent_pipes_lose_more() -> None:
    def drop(**changes: Any) -> float:
        return value(piped(use(pipe={**PIPE, **changes})), "pressure_drop")

    assert drop(length=60) == pytest.approx(2 * drop(), rel=1e-3)
    assert drop(inner_diameter=15) > 2 * drop()
    assert drop(fittings=0) < drop(fittings=1) < drop(fittings=10)
    assert drop(fittings=0) == pytest.approx(drop() / 1.25, rel=1e-3)
    assert value(piped(use(pipe={**PIPE, "fittings": 10})), "equivalent_length") == pytest.approx(30 + 10 * 30 * 0.021)
    # Rough and smooth are one while the flow is laminar, and part where it is turbulent.
    assert drop(material="plastic") == drop(material="galvanised_steel") == drop()
    many = [{**STOVE, "count": 20}]
    steel, plastic = (piped(use(appliances=many, pipe={**PIPE, "material": m})) for m in ("galvanised_steel", "plastic"))
    assert (steel["flow"], piped(use(pipe=PIPE))["flow"]) == ("turbulent", "laminar")
    assert value(steel, "pressure_drop") > value(plastic, "pressure_drop")
    assert {size["pipe"].split("_")[0] for size in plastic["sizes"]} == {"plastic"}


def test_the_pressure_of_the_plant_limits_what_the_pipe_may_lose() -> None:
    answer = use(pipe=PIPE, gas_pressure={"value": 9, "unit": "mbar"})
    told = piped(answer)
    assert value(told, "least_appliance_pressure") == 800
    assert value(told, "pressure_drop_limit") == pytest.approx(100)
    assert value(told, "appliance_pressure") == pytest.approx(900 - value(told, "pressure_drop"), abs=0.01)
    assert "appliance_pressure_enough" not in findings(answer)
    assert findings(use(pipe={**PIPE, "length": 300}, gas_pressure=900))["appliance_pressure_enough"] == "fail"
    assert findings(use(pipe=PIPE, gas_pressure=500))["appliance_pressure_enough"] == "fail"
    assert value(piped(use(pipe=PIPE, gas_pressure=500)), "pressure_drop_limit") == 200
    assert findings(use(pipe=PIPE))["appliance_pressure_enough"] == "unknown"
    by_fact = use(pipe=PIPE, facts={"gas_pressure": 900})
    assert piped(by_fact) == told


def test_a_pipe_that_loses_too_much_is_found() -> None:
    assert "pipe_drop_usual" not in findings(use(pipe=PIPE))
    assert findings(use(pipe={"length": 60, "inner_diameter": 8}))["pipe_drop_usual"] == "fail"
    assert findings(use())["pipe_drop_usual"] == "unknown"


def test_units_of_a_pipe_do_not_matter() -> None:
    feet = {"length": {"value": 98.4251968504, "unit": "[ft_i]"}, "inner_diameter": {"value": 2.1, "unit": "cm"}}
    assert piped(use(pipe=feet)) == piped(use(pipe=PIPE))


# Fuels and the climate


def test_useful_heat_is_the_same_on_both_sides() -> None:
    answer = use(methane_share=0.6, appliances=[STOVE])
    useful = value(answer, "gas.heat_per_day") * 0.55
    fuels = base().data.fuels
    for told in answer["replaced_fuels"]:
        fuel = fuels[told["fuel"]]
        heat = value(told, "per_day") * (fuel.heating_value.typical if fuel.heating_value else 3.6)
        assert heat * fuel.stove_efficiency.typical == pytest.approx(useful, rel=1e-3), told["fuel"]
        assert value(told, "per_year") == pytest.approx(365.25 * value(told, "per_day"), rel=1e-3)
    paraffin = next(one for one in answer["replaced_fuels"] if one["fuel"] == "paraffin")
    assert value(paraffin, "volume_per_day") == pytest.approx(value(paraffin, "per_day") / 0.8, rel=1e-3)
    assert paraffin["volume_per_day"]["unit"] == "L/d"
    electricity = next(one for one in answer["replaced_fuels"] if one["fuel"] == "electricity")
    assert electricity["per_day"]["unit"] == "kW.h/d"


def test_stated_fuels_share_the_heat() -> None:
    both = use(replaced_fuels=[{"fuel": "firewood", "share": 0.75}, {"fuel": "bottled_gas", "share": 0.25}])
    alone = {one["fuel"]: one for one in use()["replaced_fuels"]}
    assert [one["fuel"] for one in both["replaced_fuels"]] == ["firewood", "bottled_gas"]
    for told, share in zip(both["replaced_fuels"], (0.75, 0.25), strict=True):
        assert value(told, "per_day") == pytest.approx(share * value(alone[told["fuel"]], "per_day"), rel=1e-3)
        assert "net_per_year" not in told
    avoided = sum(value(one, "carbon_dioxide_avoided_per_year") for one in both["replaced_fuels"])
    assert value(both, "emissions.carbon_dioxide_avoided_per_year") == pytest.approx(avoided, abs=0.2)
    assert not {("fuel_heating_value", "charcoal"), ("fuel_heating_value", "paraffin")} & assumed(both)


WOOD: Json = {**HOUSE, "replaced_fuels": [{"fuel": "firewood"}]}


def test_what_is_won_is_what_is_saved_less_what_is_lost() -> None:
    answer = use(WOOD)["emissions"]
    lost = value(answer, "warming_of_methane_lost_per_year")
    assert value(answer, "net_per_year") == pytest.approx(value(answer, "carbon_dioxide_avoided_per_year") - lost, abs=0.2)
    methane = value(answer, "methane_leaked_per_year") + value(answer, "methane_vented_per_year")
    assert lost == pytest.approx(27 * methane, rel=3e-3)
    assert answer["net_per_year"]["low"] < answer["net_per_year"]["value"] < answer["net_per_year"]["high"]
    assert len(answer["left_out"]) >= 4
    alternative = next(one for one in use()["replaced_fuels"] if one["fuel"] == "firewood")
    assert value(alternative, "net_per_year") == value(answer, "net_per_year")
    assert alternative["verdict"] == answer["verdict"]
    assert "net_per_year" not in use()["emissions"]


def test_the_leak_that_undoes_the_saving_does(pack: Pack) -> None:
    leak = value(use(WOOD), "emissions.breakeven_leak_share") / 100
    text = f"practice: {{figures: {{leak_share: {{low: null, typical: {leak}, high: null}}}}}}\n"
    answer = ask("gas-use", WOOD, among=open_questions(load(pack(text))))["emissions"]
    assert value(answer, "net_per_year") == pytest.approx(0, abs=1.0)
    assert answer["verdict"] == "uncertain"
    worse = f"practice: {{figures: {{leak_share: {{low: null, typical: {3 * leak}, high: null}}}}}}\n"
    found = ask("gas-use", WOOD, among=open_questions(load(pack(worse))))
    assert value(found, "emissions.net_per_year") < 0
    assert findings(found)["losses_do_not_undo_savings"] == "fail"
    assert "losses_do_not_undo_savings" not in findings(use(WOOD))
    assert findings(use())["losses_do_not_undo_savings"] == "unknown"


def test_gas_that_is_let_off_harms() -> None:
    answer = use(WOOD, biogas_per_day=30)["emissions"]
    assert value(answer, "methane_vented_per_year") > 10 * value(use(WOOD), "emissions.methane_leaked_per_year")
    assert answer["verdict"] == "harms"
    assert answer["net_per_year"]["high"] < 0
    assert value(answer, "breakeven_leak_share") == 0


def test_what_leaks_comes_on_top_of_what_is_metered() -> None:
    [step] = [one for one in ask("gas-use", HOUSE, explain=True)["derivation"] if one["quantity"] == "gas_leaked_per_day"]
    made = step["value"] + step["inputs"]["gas_burnt_per_day"] + step["inputs"]["gas_vented_per_day"]
    assert step["value"] / made == pytest.approx(step["inputs"]["leak_share"])


# What stands beside the answer


def test_the_derivation_reaches_from_gas_to_fuel_and_pipe() -> None:
    answer = ask("gas-use", {**WOOD, "pipe": PIPE}, explain=True)
    steps = {(one["quantity"], one.get("of")): one for one in answer["derivation"]}
    assert {("useful_heat_per_day", None), ("fuel_mass_per_day", "firewood"), ("pipe_pressure_drop", None)} <= set(steps)
    assert steps["fuel_mass_per_day", "firewood"]["value"] == pytest.approx(value(answer, "replaced_fuels.0.per_day"), abs=1e-4)
    assert steps["pipe_pressure_drop", None]["value"] == pytest.approx(value(answer, "pipe.pressure_drop"), abs=0.01)
    assert steps["lower_heating_value", None]["value"] == pytest.approx(value(answer, "gas.lower_heating_value"), abs=1e-3)


@pytest.mark.parametrize(
    ("appliance", "caution"),
    [
        ("generator_per_kilowatt", "engine_exhaust"),
        ("petrol_engine_per_kilowatt", "engine_exhaust"),
        ("refrigerator_100_litre", "unattended_flame"),
        ("brooder_heater", "unattended_flame"),
        ("mantle_lamp", "lamp_heat_and_mantle"),
    ],
)
def test_an_appliance_brings_its_caution(appliance: str, caution: str) -> None:
    with_it = {one["id"] for one in use({"appliances": [{"appliance": appliance}]})["cautions"]}
    without = {one["id"] for one in use({"appliances": [{"appliance": "single_burner_stove"}]})["cautions"]}
    assert with_it - without == {caution}
    always = {"carbon_monoxide", "first_gas", "first_flame", "gas_smell", "gas_line_by_licensed", "flame_gone_out", "local_codes"}
    assert always <= without


def test_silence_about_the_gas_is_not_safety() -> None:
    ends = findings(use(pipe=PIPE))
    for name in ("first_gas_vented", "flame_is_blue", "flame_arrester_fitted", "condensate_trap", "kitchen_openings", "pipe_tightness"):
        assert ends[name] == "unknown", name
    said = {"first_gas_vented": False, "flame_colour": "yellow", "flame_arrester": False, "kitchen_openings": 0, "hose_as_fixed_line": True}
    ends = findings(use(pipe=PIPE, facts=said))
    for name in ("first_gas_vented", "flame_is_blue", "flame_arrester_fitted", "kitchen_openings", "no_hose_as_fixed_line"):
        assert ends[name] == "fail", name
    good = {"first_gas_vented": True, "flame_colour": "blue", "flame_arrester": True, "kitchen_openings": 2}
    assert not {"first_gas_vented", "flame_is_blue", "flame_arrester_fitted", "kitchen_openings"} & set(findings(use(facts=good)))


def test_high_pressure_is_found() -> None:
    assert findings(use(gas_pressure=6000))["household_pressure_scope"] == "fail"
    assert findings(use(gas_pressure=0, facts={"gas_in_use": True}))["no_suction_with_flame"] == "fail"
    assert findings(use(gas_pressure=11_000, facts={"structure_kind": "fixed_dome"}))["dome_pressure_most"] == "fail"


def test_what_is_worth_measuring_is_what_the_range_comes_from() -> None:
    first = use(WOOD)["measure_first"]
    assert [one["of"] for one in first if one["answer"] == "demand_per_day"] == ["double_burner_stove"]
    assert {one["quantity"] for one in first if one["answer"] == "emissions.net_per_year"} <= {
        "fuel_stove_efficiency",
        "leak_share",
        "biogas_stove_efficiency",
        "gas_per_hour",
        "methane_share",
    }
    assert all(one["how"] for one in first)


# Packs


def test_a_region_adds_fuels_pipes_and_its_own_cautions(pack: Pack) -> None:
    text = """
fuels:
  dung_cake:
    name: Dung cake
    heating_value: {low: 11, typical: 12, high: 14, unit: MJ/kg, basis: judgement}
    stove_efficiency: {low: 8, typical: 10, high: 12, unit: "%", basis: judgement}
    emission_factor: {typical: 100, unit: g/MJ, basis: judgement}
    non_renewable_share: {typical: 0, unit: "1", basis: judgement}
pipes:
  bamboo: {name: Bamboo, material: plastic, inner_diameter: {typical: 60, unit: mm, basis: judgement}}
  plastic_20: null
appliances:
  milk_kettle:
    name: Milk kettle
    purpose: cooking
    gas_per_hour: {typical: 0.5, unit: m3/h, basis: judgement}
    usual_hours_per_day: {typical: 24, unit: "1", basis: judgement}
    least_pressure: {typical: 900, unit: Pa, basis: judgement}
    cautions: [unattended_flame]
"""
    among = open_questions(load(pack(text)))
    body: Json = {
        "appliances": [{"appliance": "milk_kettle"}],
        "replaced_fuels": [{"fuel": "dung_cake"}],
        "pipe": {"length": 10, "material": "plastic"},
        "gas_pressure": 1000,
        "climate": SEA,
    }
    answer = ask("gas-use", body, among=among)
    assert value(answer, "demand_per_day") == pytest.approx(12)
    assert value(answer, "replaced_fuels.0.per_day") == pytest.approx(value(answer, "gas.heat_per_day") * 0.55 / 0.1 / 12, rel=1e-3)
    assert value(answer, "emissions.carbon_dioxide_avoided_per_year") == 0
    assert [size["pipe"] for size in answer["pipe"]["sizes"]][-1] == "bamboo"
    assert "plastic_20" not in {size["pipe"] for size in answer["pipe"]["sizes"]}
    assert value(answer, "pipe.least_appliance_pressure") == 900
    assert value(answer, "pipe.pressure_drop_limit") == 100
    assert "unattended_flame" in {one["id"] for one in answer["cautions"]}


def test_an_answer_is_the_same_each_time_and_holds_no_endless_number() -> None:
    body = json.dumps({**WOOD, "pipe": PIPE, "gas_pressure": 3000}).encode()
    first, second = (json.dumps(questions()["gas-use"].ask(body, True), allow_nan=False) for _ in range(2))
    assert first == second
