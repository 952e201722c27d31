"""Pressure lost in gas pipes against fluids, capacity tables, other printed formulas, and the handbook's table of galvanised pipe.

fluids works out the friction factor by the equation of Colebrook; Haaland's form departs from it by less than 2 % where it was fitted,
from a Reynolds number of 4000, and by up to 2.5 % below, and so does the drop.
fluids calls flow turbulent from a Reynolds number of 2040, we from 2300, so the cases lie outside.

The capacity table is for black steel pipe (roughness 0.046 mm, recalled) and gas of 0.60 of air's density at a drop of 0.3 inch of water;
printed flows are whole cubic feet an hour from a fitted power law, 13 % in pressure. Spitzglass' formula is an old fit of the same kind, on
the safe side by some 20 % at high flow.

Examples at true bores were worked by hand with 1.1 kg/m3, 1.3e-5 Pa.s and 0.15 mm over 10 m: one unit of the last digit.
"""

import math

import fluids
import pytest
from chemicals.viscosity import Wilke
from CoolProp.CoolProp import PropsSI
from tests.reference.record import check, note

from kilisho.formulas import gas_pipe
from kilisho.formulas.gas import moist_biogas_viscosity
from kilisho.formulas.temperature import saturation_vapour_pressure

FLUIDS = "fluids, Colebrook by Clamond (general library)"
HAND = "worked by hand, Darcy and Weisbach at true bores"
CAPACITY = "Capacity table of a boiler manual, gas of 0.60, 0.3 in of water (as printed)"
SPITZGLASS = "Spitzglass, low pressure, printed example of 2 in and 50 ft (as printed)"
TABLE = "Werner et al. 1989, table 5.13, galvanised pipe (as printed)"
INCH, FOOT, CUBIC_FOOT, INCH_OF_WATER = 0.0254, 0.3048, 0.3048**3, 249.089
AIR = 1.2250
CENTIMETRE_OF_WATER = 98.0665


@pytest.mark.parametrize("reynolds", [2400.0, 4000.0, 1e4, 1e5])
@pytest.mark.parametrize("relative", [0.0, 1e-4, 0.0072, 0.015])
def test_friction_factor(reynolds: float, relative: float) -> None:
    ours = float(gas_pipe.turbulent_friction_factor(reynolds, relative))
    expected = fluids.friction_factor(reynolds, relative)
    tolerance = 0.02 if reynolds >= 4000 else 0.025
    check(f"friction factor, Reynolds {reynolds:g}, roughness {relative:g}", ours, expected, tolerance, "1", FLUIDS)


def by_fluids(flow: float, length: float, bore: float, roughness: float) -> float:
    density, viscosity = 1.10, 1.33e-5
    velocity = flow / 3600 / (math.pi / 4 * bore**2)
    reynolds = fluids.Reynolds(V=velocity, D=bore, rho=density, mu=viscosity)
    losses = fluids.K_from_f(fluids.friction_factor(reynolds, roughness / bore), length, bore)
    return float(fluids.dP_from_K(losses, rho=density, V=velocity))


@pytest.mark.parametrize(
    ("flow", "length", "bore", "roughness"),
    [
        (0.3, 30.0, 0.0158, 1.5e-4),
        (0.9, 25.0, 0.0209, 1.5e-4),
        (1.0, 80.0, 0.0266, 1.5e-6),
        (3.0, 30.0, 0.0209, 1.5e-4),
        (6.0, 100.0, 0.0351, 1.5e-4),
        (12.0, 60.0, 0.043, 1.5e-6),
    ],
)
def test_drop(flow: float, length: float, bore: float, roughness: float) -> None:
    ours = float(gas_pipe.pressure_drop(flow, length, bore, roughness, 1.10, 1.33e-5))
    tolerance = 0.02 if flow > 2 else 1e-6
    expected = by_fluids(flow, length, bore, roughness)
    check(f"drop, {flow:g} m3/h, {length:g} m of {bore * 1000:g} mm", ours, expected, tolerance, "Pa", FLUIDS)


@pytest.mark.parametrize(
    ("bore", "flow", "published"),
    [
        *((15.8, 0.4, 9.4), (15.8, 1, 23.6), (15.8, 2, 137)),
        *((20.9, 0.4, 3.1), (20.9, 1, 7.7), (20.9, 2, 34.6)),
        *((26.6, 0.4, 1.2), (26.6, 1, 2.9), (26.6, 2, 5.9)),
    ],
)
def test_examples_at_true_bores(bore: float, flow: float, published: float) -> None:
    """Turbulent ones were worked with Colebrook, so the last digit and Haaland's 1 % are allowed."""
    ours = float(gas_pipe.pressure_drop(flow, 10.0, bore / 1000, 1.5e-4, 1.1, 1.3e-5))
    last_digit = 0.05 / published if published < 100 else 0.5 / published
    check(f"drop over 10 m, {bore:g} mm, {flow:g} m3/h", ours, published, max(0.01, last_digit), "Pa", HAND)


@pytest.mark.parametrize(("bore", "length", "flow"), [(0.622, 10, 132), (0.824, 10, 278), (1.049, 20, 350), (0.622, 100, 38)])
def test_capacity_table(bore: float, length: float, flow: float) -> None:
    ours = gas_pipe.pressure_drop(flow * CUBIC_FOOT, length * FOOT, bore * INCH, 4.6e-5, 0.6 * AIR, 1.1e-5)
    check(f"drop, {bore:g} in, {length:g} ft, {flow:g} ft3/h", float(ours), 0.3 * INCH_OF_WATER, 0.13, "Pa", CAPACITY)


def test_spitzglass() -> None:
    flow = 3550 * math.sqrt(2**5 / (1 + 3.6 / 2 + 0.03 * 2)) * math.sqrt(10 / (50 * 0.6))
    check("flow of the printed example", flow, 6856, 1e-4, "ft3/h", SPITZGLASS)
    ours = float(gas_pipe.pressure_drop(6856 * CUBIC_FOOT, 50 * FOOT, 2 * INCH, 1.5e-4, 0.6 * AIR, 1.1e-5))
    check("drop at the printed flow", ours, 10 * INCH_OF_WATER, 0.25, "Pa", SPITZGLASS)
    assert ours < 10 * INCH_OF_WATER


# Flow in m3/h, then velocity in m/s and drop in cm of water over 10 m, for pipe called 1/2, 3/4 and 1 inch.
GALVANISED = [
    (0.4, (1.4, 0.47), (0.64, 0.06), (0.36, 0.016)),
    (0.6, (2.1, 1.06), (0.94, 0.15), (0.53, 0.034)),
    (0.8, (2.8, 1.9), (1.3, 0.27), (0.72, 0.06)),
    (1.0, (3.5, 2.9), (1.6, 0.41), (0.88, 0.09)),
    (1.5, (5.3, 6.7), (2.3, 0.85), (1.33, 0.20)),
    (2.0, (7.0, 11.8), (3.2, 1.6), (1.8, 0.4)),
]


@pytest.mark.parametrize(("bore", "place"), [(0.010, 1), (0.015, 2), (0.020, 3)])
def test_the_handbook_s_table_is_one_of_hose_not_of_pipe(bore: float, place: int) -> None:
    """Its velocities are those of bores of 10, 15 and 20 mm, its drops Darcy's with a constant factor of 0.039 and 1.2 kg/m3."""
    for row in GALVANISED:
        flow, (velocity, drop) = row[0], row[place]
        ours = float(gas_pipe.mean_velocity(flow, bore))
        check(f"velocity, {flow:g} m3/h, {bore * 1000:g} mm", ours, velocity, 0.05, "m/s", TABLE)
        darcy = 0.039 * 10 / bore * 1.2 * ours**2 / 2 / CENTIMETRE_OF_WATER
        check(f"Darcy with 0.039, {flow:g} m3/h, {bore * 1000:g} mm", darcy, drop, 0.20 if drop < 0.07 else 0.10, "cm[H2O]", TABLE)


@pytest.mark.parametrize(("bore", "place"), [(0.0158, 1), (0.0209, 2), (0.0266, 3)])
def test_at_true_bores_the_handbook_s_table_promises_too_much_loss(bore: float, place: int) -> None:
    for row in GALVANISED:
        ours = float(gas_pipe.pressure_drop(row[0], 10.0, bore, 1.5e-4, 1.1, 1.3e-5)) / CENTIMETRE_OF_WATER
        assert 1.2 < row[place][1] / ours < 15
    note(
        TABLE,
        "Its columns of 1/2, 3/4 and 1 inch are worked with bores of 10, 15 and 20 mm; real pipe is 15.8, 20.9 and 26.6 mm wide and loses "
        "1.2 to 15 times less. It holds for hose of those bores. Not used as the truth for pipe.",
    )


@pytest.mark.parametrize("temperature", [5.0, 25.0, 40.0])
@pytest.mark.parametrize("methane", [0.5, 0.6, 0.7])
def test_viscosity_of_moist_gas(methane: float, temperature: float) -> None:
    """Wilke's rule by chemicals on CoolProp's viscosities of the parts; Sutherland's constants are good to 1 %."""
    pressure, kelvin = 101325.0, 273.15 + temperature
    vapour = float(saturation_vapour_pressure(temperature)) / pressure
    parts = [PropsSI("V", "T", kelvin, "P", pressure, name) for name in ("Methane", "CarbonDioxide")]
    parts.append(PropsSI("V", "T", kelvin, "Q", 1, "Water"))
    shares = [methane * (1 - vapour), (1 - methane) * (1 - vapour), vapour]
    expected = Wilke(shares, parts, [16.0425, 44.0095, 18.0153])
    ours = float(moist_biogas_viscosity(methane, temperature, pressure))
    source = "CoolProp for the parts, chemicals for Wilke's rule (general libraries)"
    check(f"viscosity, {methane:.0%} methane, {temperature:g} Cel", ours, expected, 0.01, "Pa.s", source)


def test_the_library_s_own_mixture_is_thinner() -> None:
    """CoolProp mixes viscosities with no term between unlike parts; Wilke lies 6 % above it and the drop of laminar flow with it."""
    mixture = PropsSI("V", "T", 298.15, "P", 101325.0, "HEOS::Methane[0.6]&CarbonDioxide[0.4]")
    ours = float(moist_biogas_viscosity(0.6, 25.0, 101325.0))
    check("viscosity against the library's simple mixture", ours, mixture, 0.07, "Pa.s", "CoolProp, mixture (general library)")
    assert ours > mixture
