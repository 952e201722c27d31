"""Gas properties against equations of state (CoolProp), safety data (chemicals), ISO 6976, ISO 2533 and DIN 51857.

CoolProp: mixtures of methane and carbon dioxide by multiparameter equations of state. The square-root rule of ISO 6976 understates the
compression factor of mixtures by 0.03 % because it has no cross term; tolerance 0.05 %. Water vapour: the Magnus form is good to 0.4 %
by its authors' statement (Alduchov and Eskridge 1996), and so is the tolerance.

ISO 6976 and DIN 51857 values for pure methane are recalled, to be confirmed. The standards' ideal-gas value is divided here by Z =
0.9976. DIN burns at 25 Cel, we at 15 Cel: 0.02 %; tolerance 0.1 %.

ISO 2533 (recalled, to be confirmed) and fluids' 1976 atmosphere differ by geopotential against geometric altitude, 0.02 % at 3 km.

The explosive limit in chemicals is 4.4 % for methane, from IEC 60079-20-1, measured in a vessel with the more sensitive criterion; ours
is the 5 % of common use, which the handbooks divide by the methane share. The difference of 14 % is one of method, and on the unsafe
side: see the note. Measured for 73 % methane and 17 % carbon dioxide: 7.5 % (as printed); ours, 6.8 %, leaves out the damping by carbon
dioxide and errs low, tolerance 10 %.
"""

import chemicals
import fluids
import pytest
from CoolProp.CoolProp import PropsSI
from tests.reference.record import check, note

from kilisho.formulas import gas
from kilisho.formulas.temperature import atmospheric_pressure, saturation_vapour_pressure

COOLPROP = "CoolProp, equations of state (general library)"
NORMAL = 101325.0


@pytest.mark.parametrize("temperature", [5.0, 15.0, 25.0, 35.0, 50.0])
def test_vapour_pressure(temperature: float) -> None:
    expected = PropsSI("P", "T", 273.15 + temperature, "Q", 0, "Water")
    check(f"vapour pressure, {temperature:g} Cel", float(saturation_vapour_pressure(temperature)), expected, 0.004, "Pa", COOLPROP)


@pytest.mark.parametrize(
    ("methane", "temperature", "pressure"),
    [(0.5, 0.0, NORMAL), (0.6, 0.0, NORMAL), (0.6, 30.0, NORMAL), (0.7, 15.0, 85000.0), (0.55, 35.0, 110000.0)],
)
def test_density(methane: float, temperature: float, pressure: float) -> None:
    mixture = f"HEOS::Methane[{methane}]&CarbonDioxide[{1 - methane}]"
    expected = PropsSI("D", "T", 273.15 + temperature, "P", pressure, mixture)
    what = f"density, {methane:.0%} methane, {temperature:g} Cel, {pressure / 1000:g} kPa"
    check(what, float(gas.biogas_density(methane, temperature, pressure)), expected, 5e-4, "kg/m3", COOLPROP)


@pytest.mark.parametrize("methane", [0.55, 0.65])
def test_relative_density(methane: float) -> None:
    state = ("T", 273.15, "P", NORMAL)
    expected = PropsSI("D", *state, f"HEOS::Methane[{methane}]&CarbonDioxide[{1 - methane}]") / PropsSI("D", *state, "Air")
    check(f"relative density, {methane:.0%} methane", float(gas.relative_density(methane)), expected, 5e-4, "1", COOLPROP)


def test_gas_as_heavy_as_air() -> None:
    """Ideal gases: (44.0095 - 28.9655) / (44.0095 - 16.0425) = 53.8 %; real ones 54 %."""
    heavier, lighter = gas.relative_density(0.53), gas.relative_density(0.55)
    assert heavier > 1 > lighter
    note(
        "A journal table of biogas properties (as printed)",
        "0.91 kg/m3 at 288 K for 60 % methane is the relative density taken for a density: the gas weighs 1.155 kg/m3. Not used.",
    )


def test_heating_value_of_methane() -> None:
    ours = float(gas.heating_value_lower(1.0))
    check(
        "lower heating value of methane, real gas",
        ours,
        35.818 / 0.9976,
        0.001,
        "MJ/m3",
        "ISO 6976:1995, 0 Cel/0 Cel (recalled, to be confirmed)",
    )
    check("lower heating value of methane, real gas", ours, 35.883, 0.001, "MJ/m3", "DIN 51857 (recalled, to be confirmed)")
    heat = chemicals.combustion.combustion_data(formula="CH4", Hf=-74534.0)
    evaporation = 2 * 44004.0
    volume = gas.GAS_CONSTANT * 273.15 / NORMAL * PropsSI("Z", "T", 273.15, "P", NORMAL, "Methane")
    check(
        "lower heating value of methane, from formation",
        ours,
        (-heat.HHV - evaporation) / volume / 1e6,
        0.001,
        "MJ/m3",
        "chemicals (general library)",
    )


def test_heating_value_of_biogas() -> None:
    volume = gas.GAS_CONSTANT * 273.15 / NORMAL * PropsSI("Z", "T", 273.15, "P", NORMAL, "HEOS::Methane[0.6]&CarbonDioxide[0.4]")
    check("lower heating value, 60 % methane", float(gas.heating_value_lower(0.6)), 0.6 * 0.80269 / volume, 5e-4, "MJ/m3", COOLPROP)


@pytest.mark.parametrize(("altitude", "pressure"), [(1000.0, 89874.6), (2000.0, 79495.2), (3000.0, 70108.5)])
def test_atmosphere(altitude: float, pressure: float) -> None:
    ours = float(atmospheric_pressure(altitude))
    check(f"atmosphere at {altitude:g} m", ours, pressure, 1e-4, "Pa", "ISO 2533:1975 (recalled, to be confirmed)")
    check(
        f"atmosphere at {altitude:g} m", ours, fluids.ATMOSPHERE_1976(altitude).P, 5e-4, "Pa", "fluids, 1976 atmosphere (general library)"
    )


def test_explosive_limit() -> None:
    source = "IEC 60079-20-1 by chemicals (general library)"
    check("lower explosive limit of methane", float(gas.lower_explosive_limit(1.0)), chemicals.LFL(CASRN="74-82-8"), 0.14, "1", source)
    note(
        source,
        "4.4 % against the 5 % of common use: another test method. Checks on safety take the lower figure, or a small share of either.",
    )
    measured = "Measured limits, 73 % methane, 17 % carbon dioxide, in a journal table (as printed)"
    check("lower explosive limit of that gas", float(gas.lower_explosive_limit(0.73)), 0.075, 0.10, "1", measured)
    assert gas.lower_explosive_limit(0.73) < 0.075


def test_moist_gas_is_lighter_and_water_column_is_conventional() -> None:
    dry, moist = gas.biogas_density(0.6, 30.0, NORMAL), gas.moist_biogas_density(0.6, 30.0, NORMAL)
    assert 0.97 * dry < moist < dry
    check(
        "pressure of 1 m of water",
        float(gas.water_column(9806.65)),
        1.0,
        1e-12,
        "m",
        "ISO 80000-4, conventional metre of water (recalled, to be confirmed)",
    )
