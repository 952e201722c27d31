"""What kitchens, handbooks and pipe standards say about the use of gas, against our answers and the pack's figures.

'Common practice' has no source that was read. Handbook ranges are compared by their ends or middles; the tolerance is half of the range
where a range is printed.
"""

from __future__ import annotations

from typing import Any

import fluids
import pytest
from CoolProp.CoolProp import PropsSI
from tests.reference.record import check, note
from tests.rules.conftest import Json, ask, value

from kilisho.packs import load

DATA = load().data
TRAINING = "Training notes on biogas in camps (as printed)"
WERNER = "Werner et al. 1989, p. 69 (as printed)"
KELLNER = "Kellner, GATE 1991 (as printed)"
CRITERIA = "Gutterer and Sasse 1993 (as printed)"
SCHEDULE = "fluids, pipe of schedule 40, ASME B36.10 (general library)"
SEA: Json = {"altitude": 0}
METERED = float(value(ask("gas-use", {"biogas_per_day": 1, "methane_share": 0.6, "climate": SEA}), "gas.heat_per_day"))


def test_a_litre_of_water_boils_on_thirty_to_forty_litres_of_gas() -> None:
    """From 20 to 100 Cel without boiling off, in a stove of 55 %: the middle of the range within half of it."""
    heat = (PropsSI("H", "T", 372.0, "P", 101325.0, "Water") - PropsSI("H", "T", 293.15, "P", 101325.0, "Water")) / 1e6
    litres = heat / (METERED * DATA.practice.figures["biogas_stove_efficiency"].typical) * 1000
    check("gas that boils 1 L of water", litres, 35.0, 5 / 35, "L", TRAINING)


def test_a_family_of_five() -> None:
    """1.5 to 2.4 m3 a day for two meals of five persons; ours, 0.25 m3 a head, counts lighter meals too."""
    ours = value(ask("gas-use", {"people_cooked_for": 5, "climate": SEA}), "demand_per_day")
    check("gas of five persons a day", ours, 1.5, 0.20, "m3/d", WERNER)
    note(
        WERNER,
        "Five persons with two cooked meals take 1.5 to 2.4 m3 a day; the same page's 0.15 to 0.30 m3 a head make 0.75 to 1.5. Ours lies "
        "between the two, and the range of an answer holds both.",
    )
    told = ask("gas-use", {"people_cooked_for": 5, "climate": SEA})["demand_per_day"]
    assert told["low"] < 1.5 < told["high"]


def test_a_family_s_heat() -> None:
    """5 to 8 kWh a day with the losses of the stove."""
    gas = ask("gas-use", {"people_cooked_for": 5, "methane_share": 0.6, "climate": SEA})
    check("heat of a family's gas", value(gas, "gas.heat_per_day_in_kilowatt_hours"), 6.5, 1.5 / 6.5, "kW.h/d", KELLNER)


@pytest.mark.parametrize(("methane", "published"), [(0.6, 6.0), (0.65, 6.5)])
def test_kilowatt_hours_of_a_cubic_metre(methane: float, published: float) -> None:
    """6 to 6.5 kWh for usual gas, of normal gas, as printed; as used it is 11 % less."""
    gas = ask("gas-use", {"biogas_per_day": 1, "methane_share": methane, "climate": SEA})["gas"]
    check(f"heat of 1 m3, {methane:.0%} methane", value(gas, "lower_heating_value_normal") / 3.6, published, 0.01, "kW.h", TRAINING)
    assert value(gas, "lower_heating_value") / value(gas, "lower_heating_value_normal") == pytest.approx(0.8876, abs=2e-4)


def test_megajoules_of_a_cubic_metre() -> None:
    """20 MJ at about 60 %: the manual does not say in which state; ours is 19.1 as used and 21.6 normal."""
    check("heat of 1 m3 as used", METERED, 20.0, 0.05, "MJ/m3", "FAO 1996, biogas manual (as printed)")


@pytest.mark.parametrize(
    ("appliance", "low", "high", "source"),
    [
        ("single_burner_stove", 0.20, 0.45, TRAINING),
        ("mantle_lamp", 0.12, 0.15, TRAINING),
        ("generator_per_kilowatt", 0.7, 1.0, CRITERIA),
        ("brooder_heater", 0.2, 0.3, CRITERIA),
    ],
)
def test_rates_of_appliances_lie_in_the_printed_ranges(appliance: str, low: float, high: float, source: str) -> None:
    rate = DATA.appliances[appliance].gas_per_hour.typical
    middle = (low + high) / 2
    check(f"gas of {appliance}", rate, middle, (high - low) / 2 / middle + 1e-9, "m3/h", source)


def test_a_stove_s_power_and_efficiency() -> None:
    """A burner of 0.30 m3/h gives some 1.6 kW of heat and 0.9 kW in the pot: about what a small electric plate gives."""
    power = DATA.appliances["single_burner_stove"].gas_per_hour.typical * METERED / 3.6
    check("heat of one burner", power, 1.6, 0.05, "kW", "common practice, no source")


def test_a_generator_of_a_quarter() -> None:
    """1 m3 for 1 kWh of a small set means 19 % of the heat; 0.67 m3 would be 25 %, what larger sets reach."""
    efficiency = 3.6 / (METERED * DATA.appliances["generator_per_kilowatt"].gas_per_hour.typical)
    assert 0.12 < efficiency < 0.25
    check("electricity of 1 m3 normal at 25 %", 21.57 * 0.25 / 3.6, 1.49, 0.01, "kW.h", "worked by hand")


def test_wood_of_a_cubic_metre_in_nepal() -> None:
    """5.5 kg of wood for 1 m3; ours at the state of the place and 15 % efficiency."""
    fuels = ask("gas-use", {"biogas_per_day": 1, "methane_share": 0.6, "climate": SEA})["replaced_fuels"]
    wood = next(one for one in fuels if one["fuel"] == "firewood")
    check("wood in the place of 1 m3 as used", value(wood, "per_day"), 5.5, 0.25, "kg", "Notes on the burning of biogas (as printed)")
    assert wood["per_day"]["low"] < 5.0 < wood["per_day"]["high"]


# Pipes


@pytest.mark.parametrize(
    ("pipe", "inch"),
    [
        ("steel_half_inch", 0.5),
        ("steel_three_quarter_inch", 0.75),
        ("steel_one_inch", 1.0),
        ("steel_one_and_a_quarter_inch", 1.25),
        ("steel_one_and_a_half_inch", 1.5),
        ("steel_two_inch", 2.0),
    ],
)
def test_bores_of_steel_pipe(pipe: str, inch: float) -> None:
    _, bore, _, _ = fluids.nearest_pipe(NPS=inch, schedule="40")
    check(f"bore of {inch:g} inch pipe", DATA.pipes[pipe].inner_diameter.typical, bore, 0.004, "m", SCHEDULE)


@pytest.mark.parametrize("outside", [20, 25, 32, 40, 50])
def test_plastic_pipe_is_narrower_inside_by_a_usual_wall(outside: int) -> None:
    """Walls of SDR 17 to 9: the bore is the outside less two walls."""
    bore = DATA.pipes[f"plastic_{outside}"].inner_diameter
    assert outside * (1 - 2 / 8) / 1000 < bore.least <= bore.typical <= bore.most < outside * (1 - 2 / 26) / 1000


@pytest.mark.parametrize("name", ["steel_half_inch", "steel_three_quarter_inch"])
def test_half_and_three_quarter_inch_will_do_for_a_household_up_to_thirty_metres(name: str) -> None:
    """The handbook's rule, for small and middling plants."""
    use = [{"from": "06:00", "to": "07:00"}, {"from": "18:00", "to": "20:00"}]
    body: Json = {"appliances": [{"appliance": "double_burner_stove", "use": use}, {"appliance": "mantle_lamp", "use": use}]}
    sizes: dict[str, Any] = {one["pipe"]: one for one in ask("gas-use", {**body, "pipe": {"length": 30}})["pipe"]["sizes"]}
    assert sizes[name]["pressure_drop"]["high"] < 500
    assert sizes[name]["keeps_limit"]


def test_five_millibar_is_the_most_that_a_pipe_may_lose() -> None:
    limit = DATA.practice.figures["pipe_drop_limit"].most
    check("most that a pipe may lose", limit, 500.0, 1e-9, "Pa", "Biogas Digest, volume 2, p. 49 (as printed)")


# Methane


def test_a_tight_plant_with_a_wood_fire_helps_and_a_leaky_one_may_not() -> None:
    """The finding of inventories: some percent of leak are worth what a good part of the fuel saves."""
    body: Json = {"biogas_per_day": 2, "methane_share": 0.6, "climate": SEA, "replaced_fuels": [{"fuel": "firewood"}]}
    emissions = ask("gas-use", body)["emissions"]
    lost, saved = value(emissions, "warming_of_methane_lost_per_year"), value(emissions, "carbon_dioxide_avoided_per_year")
    assert 0.25 < lost / saved < 0.45
    assert 0.15 < value(emissions, "breakeven_leak_share") / 100 < 0.35
    assert emissions["verdict"] in {"saves", "uncertain"}


def test_warming_of_methane() -> None:
    """27.0 of living origin; 29.8 of fossil origin counts the carbon dioxide that it becomes, 44/16 = 2.75 more."""
    potential = DATA.practice.figures["warming_potential"].typical
    check("warming potential of methane", potential, 29.8 - 44.0095 / 16.0425, 0.01, "1", "IPCC 2021, by a later summary (as printed)")
