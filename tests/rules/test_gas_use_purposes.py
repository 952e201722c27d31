"""What the gas is burnt for: only what cooks takes the place of cooking fuels, and what makes electricity that of electricity.

Expectations are worked by hand from the base pack's figures, or are relations that must hold whatever the figures are; the households
are invented.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any, get_args

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, assumed, base, clock, gas_uses, like, value

from kilisho.faults import RefusedError
from kilisho.messages import LANGUAGES, told_in
from kilisho.packs import check, load
from kilisho.questions import open_questions
from kilisho.rulebook import Purpose

STOVE: Json = {"appliance": "double_burner_stove", "use": [{"from": "06:00", "to": "07:30"}, {"from": "18:00", "to": "20:00"}]}
LAMP: Json = {"appliance": "mantle_lamp", "use": [{"from": "18:30", "to": "21:30"}]}
GENERATOR: Json = {"appliance": "generator_per_kilowatt", "use": [{"from": "18:00", "to": "21:00"}]}
WOOD: Json = {"fuel": "firewood"}
GRID: Json = {"fuel": "electricity"}
SEA: Json = {"altitude": 0}
HOUSE: Json = {
    "appliances": [STOVE, LAMP],
    "biogas_per_day": 2.4,
    "gas_storage_volume": 1.5,
    "methane_share": 0.6,
    "climate": SEA,
    "replaced_fuels": [WOOD],
}
COOKS = ("single_burner_stove", "double_burner_stove")
Pack = Callable[..., Path]


def use(body: Json = HOUSE, **changes: Any) -> Json:
    return ask("gas-use", like(body, **changes))


def fuel(answer: Json, name: str = "firewood") -> Json:
    found: Json = next(one for one in answer["replaced_fuels"] if one["fuel"] == name)
    return found


def wood(answer: Json) -> float:
    return value(fuel(answer), "per_day")


def by_purpose(answer: Json) -> dict[str, float]:
    return {one["purpose"]: value(one, "gas_per_day") for one in answer["gas_by_purpose"]}


def texts(answer: Json) -> dict[str, str]:
    return {one["purpose"]: one["text"] for one in answer["gas_by_purpose"]}


# What cooks nothing replaces no fuel for cooking


def test_a_generator_replaces_no_firewood() -> None:
    """The case that was reported: 3 m3 a day into a set of 1 kW said 13 kg of firewood a day."""
    answer = use(appliances=[GENERATOR], biogas_per_day=3, gas_storage_volume=3)
    assert wood(answer) == value(fuel(answer), "carbon_dioxide_avoided_per_year") == 0
    assert value(answer, "emissions.carbon_dioxide_avoided_per_year") == 0
    assert answer["emissions"]["verdict"] == "harms"
    assert by_purpose(answer) == {"electricity": 3.0}
    assert "counts for nothing" in texts(answer)["electricity"]
    assert "cooking: 3 m³ a day" in answer["other_uses_text"]
    assert any("not for cooking" in text for text in answer["emissions"]["left_out"])


@pytest.mark.parametrize("appliance", [name for name in base().data.appliances if name not in COOKS])
def test_only_stoves_replace_cooking_fuels(appliance: str) -> None:
    answer = use(appliances=[{"appliance": appliance, "hours_per_day": 2}], biogas_per_day=None, replaced_fuels=None)
    assert {value(one, "per_day") for one in answer["replaced_fuels"] if one["fuel"] != "electricity"} == {0.0}
    assert "other_uses_text" in answer
    assert "cooking" not in by_purpose(answer)


@pytest.mark.parametrize("appliance", COOKS)
def test_what_stoves_burn_all_replaces_fuel(appliance: str) -> None:
    """By hand: heat of the gas, 55 % in the pot; 15 % of wood of 16 MJ/kg."""
    answer = use(appliances=[{"appliance": appliance, "hours_per_day": 2}], biogas_per_day=None)
    assert wood(answer) == pytest.approx(value(answer, "gas.heat_per_day") * 0.55 / 0.15 / 16, rel=1e-4)
    assert "other_uses_text" not in answer
    assert not any("not for cooking" in text for text in answer["emissions"]["left_out"])


@pytest.mark.parametrize("stated", [{"people_cooked_for": 6}, {"gas_demand": 1.5}, {"biogas_per_day": 1.5}])
def test_without_appliances_all_gas_cooks(stated: Json) -> None:
    answer = use({**stated, "methane_share": 0.6, "climate": SEA, "replaced_fuels": [WOOD]})
    assert by_purpose(answer) == {"cooking": pytest.approx(1.5)}
    assert wood(answer) == pytest.approx(value(answer, "gas.heat_per_day") * 0.55 / 0.15 / 16, rel=1e-4)
    assert "other_uses_text" not in answer


def test_light_is_not_claimed_for_lamp_oil_and_it_is_said() -> None:
    """Stoves' efficiencies say nothing of light, and the pack has no figures of it: lamps replace no paraffin."""
    answer = use(appliances=[LAMP], replaced_fuels=[{"fuel": "paraffin"}])
    assert value(fuel(answer, "paraffin"), "volume_per_day") == 0
    assert "by their light" in texts(answer)["lighting"]


# Relations


SPELLS = st.lists(
    st.tuples(st.integers(0, 1439), st.integers(5, 400)).map(lambda t: {"from": clock(t[0]), "to": clock((t[0] + t[1]) % 1440)}),
    min_size=1,
    max_size=1,
)
OTHERS = st.sampled_from([name for name in base().data.appliances if name not in COOKS])


GASES = st.fixed_dictionaries({"biogas_per_day": st.floats(0, 5), "gas_storage_volume": st.floats(0, 3)})


@given(SPELLS, SPELLS, OTHERS, st.integers(1, 4), GASES)
@settings(max_examples=60)
def test_one_more_lamp_or_engine_never_raises_what_is_replaced(cooking: Any, beside: Any, other: str, count: int, gas: Json) -> None:
    stove, added = {**STOVE, "use": cooking}, {"appliance": other, "count": count, "use": beside}
    alone, both = use(appliances=[stove], **gas), use(appliances=[stove, added], **gas)
    assert wood(both) <= wood(alone) + 2e-4
    avoided = "emissions.carbon_dioxide_avoided_per_year"
    assert value(both, avoided) <= value(alone, avoided) + 0.1


@given(OTHERS, st.integers(1, 4), GASES)
@settings(max_examples=30)
def test_without_hours_neither(other: str, count: int, gas: Json) -> None:
    stove = {"appliance": "double_burner_stove", "hours_per_day": 3}
    added = {"appliance": other, "count": count, "hours_per_day": 2}
    assert wood(use(appliances=[stove, added], **gas)) <= wood(use(appliances=[stove], **gas)) + 2e-4


@given(gas_uses())
@settings(max_examples=80)
def test_gas_to_cooking_and_to_other_uses_is_the_gas_used(body: Json) -> None:
    try:
        answer = ask("gas-use", body)
    except RefusedError:
        return
    used = value(answer, "burnt_per_day" if "burnt_per_day" in answer else "demand_per_day")
    purposes = by_purpose(answer)
    assert sum(purposes.values()) == pytest.approx(used, abs=1e-5 + 1e-9 * used)
    assert min(purposes.values()) >= 0
    assert ("other_uses_text" in answer) == bool(purposes.keys() - {"cooking"})
    stated = {base().data.appliances[one["appliance"]].purpose for one in body.get("appliances") or ()}
    assert set(purposes) == (stated or {"cooking"})


@given(st.integers(2, 20))
@settings(max_examples=15)
def test_n_households_replace_and_make_n_times_as_much(times: int) -> None:
    house = [STOVE, LAMP, GENERATOR]
    fuels = [{"fuel": "firewood", "share": 1}, {"fuel": "electricity", "share": 0}]
    one = use(appliances=house, replaced_fuels=fuels)
    scaled = [{**appliance, "count": times} for appliance in house]
    many = use(appliances=scaled, replaced_fuels=fuels, biogas_per_day=2.4 * times, gas_storage_volume=1.5 * times)
    for name in ("firewood", "electricity"):
        assert value(fuel(many, name), "per_day") == pytest.approx(times * value(fuel(one, name), "per_day"), rel=1e-3), name
    for name, gas in by_purpose(one).items():
        assert by_purpose(many)[name] == pytest.approx(times * gas, rel=1e-4), name


def test_a_lamp_beside_a_stove_that_has_gas_enough_changes_no_firewood() -> None:
    plenty = {"biogas_per_day": 6, "gas_storage_volume": 6}
    assert fuel(use(**plenty)) == fuel(use(appliances=[STOVE], **plenty))


def test_gas_is_parted_hour_by_hour() -> None:
    """By hand: 1.2 m3 a day come evenly, 0.05 m3 an hour, with no store to speak of.

    The stove alone (0.6 m3/h) burns all that comes in its hours: 06:00 to 07:30 and 18:00 to 18:30 make 2 h, 0.1 m3. From 18:30 to
    20:00 it shares 0.075 m3 with the lamp as 0.60 to 0.13, and from 20:00 to 21:30 the lamp has 0.075 m3 for itself.
    """
    answer = use(biogas_per_day=1.2, gas_storage_volume=0)
    cooking = 0.1 + 0.075 * 0.60 / 0.73
    assert by_purpose(answer) == pytest.approx({"cooking": cooking, "lighting": 0.25 - cooking}, abs=2e-6)
    heat = value(answer, "gas.lower_heating_value")
    assert wood(answer) == pytest.approx(cooking * heat * 0.55 / 0.15 / 16, rel=1e-3)


def test_without_hours_each_has_its_part_of_what_it_wants() -> None:
    """2.1 of the stove's and 0.39 of the lamp's m3 are wanted, and 1.5 there."""
    by_day = [{"appliance": "double_burner_stove", "hours_per_day": 3.5}, {"appliance": "mantle_lamp", "hours_per_day": 3}]
    answer = use(appliances=by_day, biogas_per_day=1.5)
    assert by_purpose(answer) == pytest.approx({"cooking": 1.5 * 2.1 / 2.49, "lighting": 1.5 * 0.39 / 2.49}, abs=2e-6)


def test_the_order_of_appliances_does_not_matter() -> None:
    first, second = use(appliances=[STOVE, LAMP, GENERATOR]), use(appliances=[GENERATOR, LAMP, STOVE])
    assert first["gas_by_purpose"] == second["gas_by_purpose"]
    assert first["other_uses_text"] == second["other_uses_text"]
    assert [one["purpose"] for one in first["gas_by_purpose"]] == ["cooking", "lighting", "electricity"]


def test_without_gas_nothing_is_used_for_anything() -> None:
    answer = use(biogas_per_day=0, appliances=[STOVE, LAMP, GENERATOR], replaced_fuels=[GRID])
    assert set(by_purpose(answer).values()) == {0.0}
    assert value(fuel(answer, "electricity"), "per_day") == 0
    assert by_purpose(use(biogas_per_day=None, appliances=[LAMP])) == pytest.approx({"lighting": 0.39})


# Electricity


def test_two_kilowatts_for_three_hours_are_six_kilowatt_hours() -> None:
    """The case that was reported: 6 m3 said 23.4 kWh of a hot plate. By hand: 2 kW, 3 h; 0.5 kg of carbon dioxide a kWh, 365.25 d."""
    answer = use(appliances=[{**GENERATOR, "count": 2}], biogas_per_day=6, gas_storage_volume=6, replaced_fuels=[GRID])
    grid = fuel(answer, "electricity")
    assert value(grid, "per_day") == value(grid, "electricity_made_per_day") == pytest.approx(6)
    assert value(answer, "gas_by_purpose.0.electricity_made_per_day") == pytest.approx(6)
    assert value(grid, "carbon_dioxide_avoided_per_year") == pytest.approx(6 * 0.5 * 365.25, rel=1e-4)
    assert value(answer, "emissions.carbon_dioxide_avoided_per_year") == value(grid, "carbon_dioxide_avoided_per_year")
    assert not any("not for cooking" in text for text in answer["emissions"]["left_out"])
    assert ("electric_power", "generator_per_kilowatt") in assumed(answer)


def test_half_the_gas_makes_half_the_electricity() -> None:
    """1 m3 a kilowatt hour: 1.5 of the 3 m3 that are wanted make 1.5 kWh."""
    answer = use(appliances=[{"appliance": "generator_per_kilowatt", "hours_per_day": 3}], biogas_per_day=1.5, replaced_fuels=[GRID])
    assert value(fuel(answer, "electricity"), "per_day") == pytest.approx(1.5)


def test_higher_up_a_kilowatt_hour_takes_more_gas_and_is_still_one() -> None:
    body = {"appliances": [GENERATOR], "methane_share": 0.6, "replaced_fuels": [GRID]}
    low, high = (use({**body, "climate": {"altitude": altitude}}) for altitude in (0, 2500))
    assert by_purpose(high)["electricity"] > 1.2 * by_purpose(low)["electricity"]
    assert [value(fuel(one, "electricity"), "per_day") for one in (low, high)] == pytest.approx([3, 3])


def test_a_hot_plate_and_a_generator_add_up() -> None:
    """A fifth of the useful heat on a plate of 75 %, and 3 kWh that the generator makes."""
    fuels = [{"fuel": "firewood", "share": 0.8}, {"fuel": "electricity", "share": 0.2}]
    body = {"biogas_per_day": 8, "gas_storage_volume": 8, "replaced_fuels": fuels}
    cooked, both = (fuel(use(appliances=appliances, **body), "electricity") for appliances in ([STOVE], [STOVE, GENERATOR]))
    assert "electricity_made_per_day" not in cooked
    assert value(both, "per_day") == pytest.approx(value(cooked, "per_day") + 3, abs=1e-3)
    assert value(both, "electricity_made_per_day") == pytest.approx(3)


def test_of_alternatives_only_electricity_counts_what_is_made() -> None:
    answer = use(appliances=[GENERATOR], biogas_per_day=3, gas_storage_volume=3, replaced_fuels=None)
    made = {one["fuel"]: value(one, "per_day") for one in answer["replaced_fuels"]}
    assert made.pop("electricity") == pytest.approx(3)
    assert set(made.values()) == {0.0}
    assert "where that is among the fuels" in texts(answer)["electricity"]
    assert any("not for cooking" in text for text in answer["emissions"]["left_out"])


@pytest.mark.parametrize(("shares", "parts"), [((0.6, 0.2), (3 / 4, 1 / 4)), ((0, 0), (1 / 2, 1 / 2)), ((0, 0.5), (0, 1))])
def test_two_kinds_of_electricity_part_what_is_made(pack: Pack, shares: tuple[float, float], parts: tuple[float, float]) -> None:
    text = """
fuels:
  village_grid:
    name: Electricity of the village's diesel set
    stove_efficiency: {typical: 75, unit: "%", basis: judgement}
    emission_factor: {typical: 0.8, unit: kg/kW.h, basis: judgement}
    non_renewable_share: {typical: 1, unit: "1", basis: judgement}
"""
    names = ("electricity", "village_grid")
    fuels = [{"fuel": name, "share": share} for name, share in zip(names, shares, strict=True)]
    body = like(HOUSE, appliances=[GENERATOR], biogas_per_day=3, gas_storage_volume=3, replaced_fuels=fuels)
    answer = ask("gas-use", body, among=open_questions(load(pack(text))))
    assert [value(fuel(answer, name), "per_day") for name in names] == pytest.approx([3 * part for part in parts])


def test_the_derivation_tells_the_electricity() -> None:
    body = like(HOUSE, appliances=[STOVE, {**GENERATOR, "count": 2}], biogas_per_day=9, gas_storage_volume=9)
    answer = ask("gas-use", {**body, "replaced_fuels": [WOOD, {**GRID, "share": 0}]}, explain=True)
    steps = {(one["quantity"], one.get("of")): one for one in answer["derivation"]}
    made = steps["electricity_made_per_day", "generator_per_kilowatt"]
    assert made["value"] == pytest.approx(6 * 3.6)
    assert made["inputs"] == pytest.approx({"gas_for_electricity_per_day": 6, "electric_power": 3.6, "electric_gas_rate": 1})
    assert steps["fuel_heat_per_day", "electricity"]["inputs"]["electricity_replaced_per_day"] == pytest.approx(6 * 3.6)
    assert steps["cooking_heat_per_day", None]["inputs"]["gas_for_cooking_per_day"] == pytest.approx(2.1)


# The pack


def test_every_appliance_of_the_base_pack_says_what_it_is_for() -> None:
    said = {name: entry.purpose for name, entry in base().data.appliances.items()}
    assert said == {
        "single_burner_stove": "cooking",
        "double_burner_stove": "cooking",
        "mantle_lamp": "lighting",
        "refrigerator_100_litre": "refrigeration",
        "petrol_engine_per_kilowatt": "shaft_power",
        "generator_per_kilowatt": "electricity",
        "brooder_heater": "heating",
    }
    assert set(said.values()) < set(get_args(Purpose))


NEW = """
appliances:
  incubator:
    name: Incubator
    gas_per_hour: {typical: 0.5, unit: m3/h, basis: judgement}
    usual_hours_per_day: {typical: 24, unit: "1", basis: judgement}
"""
POWER = "    electric_power: {typical: 500, unit: W, basis: judgement}\n"


def test_an_appliance_that_says_nothing_counts_for_no_fuel(pack: Pack) -> None:
    answer = ask("gas-use", like(HOUSE, appliances=[{"appliance": "incubator"}]), among=open_questions(load(pack(NEW))))
    assert wood(answer) == 0
    assert list(by_purpose(answer)) == ["other"]
    assert answer["other_uses_text"]


def test_a_pack_s_own_generator_makes_what_it_says(pack: Pack) -> None:
    """500 W on 0.5 m3/h: 2.4 m3 run it for 4.8 h."""
    among = open_questions(load(pack(NEW + "    purpose: electricity\n" + POWER)))
    body = like(HOUSE, appliances=[{"appliance": "incubator"}], replaced_fuels=[GRID])
    assert value(fuel(ask("gas-use", body, among=among), "electricity"), "per_day") == pytest.approx(2.4)


def test_a_pack_may_change_the_rate_and_keeps_the_purpose(pack: Pack) -> None:
    data = load(pack("appliances: {mantle_lamp: {gas_per_hour: {typical: 0.1, unit: m3/h, basis: judgement}}}\n")).data
    assert data.appliances["mantle_lamp"].purpose == "lighting"


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (NEW + "    purpose: electricity\n", "go together"),
        (NEW + "    purpose: lighting\n" + POWER, "go together"),
        (NEW + POWER, "go together"),
        (NEW + "    purpose: baking\n", "purpose"),
        (NEW.replace("0.5", "0") + "    purpose: electricity\n" + POWER, "takes gas"),
        (NEW + "    purpose: electricity\n" + POWER.replace("500", "0"), "must lie from 1.0 to"),
    ],
)
def test_a_generator_without_power_and_power_without_a_generator_are_refused(pack: Pack, text: str, expected: str) -> None:
    found = [str(fault) for fault in check(pack(text))]
    assert any("incubator" in fault and expected in fault for fault in found), found


# In words


@pytest.mark.parametrize("language", sorted(set(LANGUAGES) - {"en"}))
def test_it_is_said_in_every_language(language: str) -> None:
    answer = use(appliances=[STOVE, LAMP, GENERATOR, {"appliance": "brooder_heater", "use": LAMP["use"]}])
    told = told_in(LANGUAGES[language], answer)
    assert told["other_uses_text"] != answer["other_uses_text"]
    for here, there in zip(answer["gas_by_purpose"], told["gas_by_purpose"], strict=True):
        assert here["text"] != there["text"]
        assert here["purpose"] == there["purpose"]
