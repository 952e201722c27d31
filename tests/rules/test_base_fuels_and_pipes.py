"""The base pack's fuels and pipes, how packs change them, and the formulas of what gas is worth."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import base

from kilisho.farm import GRAPH, Shelf
from kilisho.packs import check, load
from kilisho.rulebook import Basis

Pack = Callable[..., Path]
FUELS, PIPES = base().data.fuels, base().data.pipes
FOSSIL = ("bottled_gas", "paraffin", "electricity")
USED: dict[str, float] = {
    "gas_burnt_per_day": 2.0,
    "gas_for_cooking_per_day": 2.0,
    "electricity_replaced_per_day": 0.0,
    "gas_vented_per_day": 0.3,
    "methane_share": 0.6,
    "gas_pressure": 101325.0,
    "biogas_stove_efficiency": 0.55,
    "leak_share": 0.1,
    "warming_potential": 27.0,
    "fuel_share": 1.0,
    "fuel_heating_value": 16.0,
    "fuel_stove_efficiency": 0.15,
    "fuel_density": 800.0,
    "emission_factor": 0.112,
    "non_renewable_share": 0.5,
}


def solved(*wanted: str, **changes: float) -> dict[str, Any]:
    return GRAPH.solve(USED | changes, wanted)


# The pack


@pytest.mark.parametrize("name", FUELS)
def test_a_fuel_is_possible(name: str) -> None:
    fuel = FUELS[name]
    assert (fuel.heating_value is None) == (name == "electricity")
    assert (fuel.density is not None) == (name == "paraffin")
    assert 0.05 <= fuel.stove_efficiency.least < fuel.stove_efficiency.most <= 0.95
    if fuel.heating_value is not None:
        assert 10 < fuel.heating_value.least <= fuel.heating_value.most < 50
        # No fuel holds more carbon than its mass: 44/12 of carbon dioxide a kilogram at most.
        assert fuel.heating_value.typical * fuel.emission_factor.typical < 44 / 12
    assert (fuel.non_renewable_share.typical == 1) == (name in FOSSIL)


def test_better_fuels_burn_in_better_stoves() -> None:
    by_efficiency = sorted(FUELS, key=lambda name: FUELS[name].stove_efficiency.typical)
    assert by_efficiency == ["firewood", "charcoal", "paraffin", "bottled_gas", "electricity"]


def test_nothing_recalled_is_called_published() -> None:
    figures = [figure for fuel in FUELS.values() for figure in (fuel.stove_efficiency, fuel.emission_factor, fuel.non_renewable_share)]
    figures += [pipe.inner_diameter for pipe in PIPES.values()]
    assert {figure.basis for figure in figures}.isdisjoint({Basis.published})


def test_pipes_of_a_material_differ_in_bore_and_names_say_the_material() -> None:
    for material in ("galvanised_steel", "plastic"):
        bores = [pipe.inner_diameter.typical for pipe in PIPES.values() if pipe.material == material]
        assert len(set(bores)) == len(bores) >= 5
        assert bores == sorted(bores)
    assert all(name.startswith(pipe.material.split("_")[-1]) for name, pipe in PIPES.items())


def test_the_shelf_names_a_fuel_s_figures_as_the_graph_does() -> None:
    shelf = Shelf(base().data)
    assert shelf.reading("fuels", "firewood", "heating_value").quantity == "fuel_heating_value"
    assert shelf.reading("fuels", "firewood", "stove_efficiency").of == "firewood"
    assert shelf.ids["fuels"] == tuple(FUELS)


@pytest.mark.parametrize(
    ("text", "path", "expected"),
    [
        ("fuels: {firewood: {heating_value: {low: 14, typical: 16, high: 18, unit: m3, basis: judgement}}}\n", "heating_value", "MJ/kg"),
        ("fuels: {firewood: {stove_efficiency: {low: 0, typical: 15, high: 20, unit: '%', basis: judgement}}}\n", "stove_efficiency", ""),
        ("fuels: {peat: {name: Peat}}\n", "fuels.peat", ""),
        ("pipes: {steel_half_inch: {inner_diameter: {typical: 15.8, unit: m, basis: judgement}}}\n", "inner_diameter", "1"),
        ("pipes: {steel_half_inch: {material: lead}}\n", "material", "plastic"),
        ("appliances: {mantle_lamp: {cautions: [no_such_caution]}}\n", "mantle_lamp.cautions", "no_such_caution"),
        ("practice: {figures: {leak_share: {high: 1, unit: '1'}}}\n", "leak_share", "less than 1"),
        ("practice: {figures: {cooking_hours: {low: 0}}}\n", "cooking_hours", "more than 0"),
        ("practice: {figures: {pipe_drop_limit: null}}\n", "pipe_drop_limit", "pressure"),
    ],
)
def test_what_cannot_be_a_fuel_or_pipe_is_refused_where_it_stands(pack: Pack, text: str, path: str, expected: str) -> None:
    found = [str(fault) for fault in check(pack(text))]
    assert [fault for fault in found if path in fault and expected in fault], found


def test_a_pack_may_take_a_fuel_out_and_change_a_figure(pack: Pack) -> None:
    data = load(pack("fuels: {charcoal: null, firewood: {non_renewable_share: {typical: 0.9, unit: '1', basis: judgement}}}\n")).data
    assert list(data.fuels) == [name for name in FUELS if name != "charcoal"]
    assert data.fuels["firewood"].non_renewable_share.typical == 0.9
    assert data.fuels["firewood"].heating_value == FUELS["firewood"].heating_value


# The formulas


def test_heat_goes_from_gas_to_pot_to_wood() -> None:
    found = solved("cooking_heat_per_day", "useful_heat_per_day", "fuel_heat_per_day", "fuel_mass_per_day", "fuel_volume_per_day")
    assert found["useful_heat_per_day"] == pytest.approx(0.55 * found["cooking_heat_per_day"])
    assert found["fuel_mass_per_day"] * 16 * 0.15 == pytest.approx(found["useful_heat_per_day"])
    assert found["fuel_volume_per_day"] * 800 == pytest.approx(found["fuel_mass_per_day"])


@given(st.floats(0.1, 10), st.floats(1.1, 5))
def test_all_scales_with_the_gas(gas: float, times: float) -> None:
    names = ("fuel_mass_per_day", "carbon_dioxide_avoided", "methane_lost_per_day", "warming_of_methane_lost")
    once = solved(*names, gas_burnt_per_day=gas, gas_for_cooking_per_day=gas, gas_vented_per_day=gas / 4)
    more = solved(*names, gas_burnt_per_day=times * gas, gas_for_cooking_per_day=times * gas, gas_vented_per_day=times * gas / 4)
    for name in names:
        assert more[name] == pytest.approx(times * once[name]), name


@given(st.floats(0.1, 0.9), st.floats(0.1, 0.9))
def test_a_better_stove_for_the_fuel_saves_less_of_it(first: float, second: float) -> None:
    poor, good = sorted((first, second))
    assert (
        solved("fuel_mass_per_day", fuel_stove_efficiency=good)["fuel_mass_per_day"]
        <= (solved("fuel_mass_per_day", fuel_stove_efficiency=poor)["fuel_mass_per_day"])
    )


@given(st.floats(0, 0.9))
def test_a_leak_is_a_share_of_what_is_made(leak: float) -> None:
    leaked = solved("gas_leaked_per_day", leak_share=leak)["gas_leaked_per_day"]
    assert leaked / (leaked + 2.3) == pytest.approx(leak, abs=1e-12)
    assert solved("gas_leaked_per_day", leak_share=0.0)["gas_leaked_per_day"] == 0


def test_wood_that_grows_again_saves_nothing() -> None:
    assert solved("carbon_dioxide_avoided", non_renewable_share=0.0)["carbon_dioxide_avoided"] == 0


@given(st.floats(60000, 105000), st.floats(0.4, 0.8))
def test_heat_and_methane_of_a_cubic_metre_go_together(pressure: float, methane: float) -> None:
    """50.0 MJ of lower heat in a kilogram of methane, whatever the place and the gas; the gas's departure from the ideal is 0.3 %."""
    found = solved("lower_heating_value", "methane_in_gas", gas_pressure=pressure, methane_share=methane)
    assert found["lower_heating_value"] / found["methane_in_gas"] == pytest.approx(50.03, rel=5e-3)


def test_arrays_give_what_numbers_give() -> None:
    leaks = np.array([0.0, 0.05, 0.2])
    found = GRAPH.solve(USED | {"leak_share": leaks}, ("warming_of_methane_lost",))["warming_of_methane_lost"]
    single = [solved("warming_of_methane_lost", leak_share=leak)["warming_of_methane_lost"] for leak in leaks.tolist()]
    assert found.tolist() == pytest.approx(single)
