"""An invented farm worked on paper, as an officer would with a pencil: every line of the sheet against the graph of formulas.

Each figure is the handbooks' definition of the quantity applied to round numbers by hand; where it is more, the source stands beside it.
"""

from __future__ import annotations

import pytest

from kilisho.farm import GRAPH
from kilisho.formulas import digester, first_fill, gas_use, installation, labour, nutrients
from kilisho.formulas.temperature import saturation_vapour_pressure
from kilisho.quantities import collect

# Partial pressure of water vapour over water at 25 Cel [Pa] (steam tables, from memory).
VAPOUR_AT_25 = 3169.0
# A place at 1500 m [Pa] (ICAO's standard atmosphere, from memory).
HIGHLAND = 84556.0
KELVIN = 273.15

FED = {
    "feed_mass_per_day": 50.0,
    "total_solids": 0.16,
    "volatile_solids_share": 0.8,
    "bulk_density": 800.0,
    "nitrogen_share": 0.02,
    "carbon_to_nitrogen_of_feed": 24.0,
    "ammonium_share": 0.5,
    "water_to_feed_by_volume": 1.2,
    "urine_per_day": 0.005,
    "urine_solids_per_day": 0.2,
    "urine_mass_per_day": 5.1,
    "urine_nitrogen_per_day": 0.04,
    "urine_carbon_per_day": 0.04,
    "urine_ammonium_per_day": 0.035,
    "water_density": 1000.0,
    "slurry_ph": 8.0,
    "digester_temperature": 20.0,
    "target_total_solids": 0.08,
}
FED_ON_PAPER = {
    "feed_volume_per_day": 0.0625,
    # Loose feed soaks: 50 kg take the room of 50 kg of water, not that of the heap (Archimedes).
    "displaced_volume_per_day": 0.05,
    "total_solids_per_day": 8.0,
    "volatile_solids_per_day": 6.4,
    "ash_per_day": 1.6,
    "nitrogen_per_day": 0.16,
    "carbon_per_day": 3.84,
    "ammonium_nitrogen_per_day": 0.08,
    "liquid_per_day": 0.075,
    "water_per_day": 0.07,
    "slurry_per_day": 0.125,
    "slurry_mass_per_day": 125.1,
    "slurry_total_solids": 8.2 / 125.1,
    "carbon_to_nitrogen": 19.4,
    "total_ammonia_nitrogen": 0.92,
    # One litre of feed holds 0.8 kg with 0.128 kg of solids: 1.6 kg of slurry at 8 %, so 0.8 kg of water.
    "water_to_feed_for_target": 0.8,
}
PLANT = {
    "total_volume": 12.0,
    "fill_share": 0.75,
    "gas_storage_share": 0.2,
    "tanks_in_series": 1.0,
    "biogas_yield": 0.3,
    # At 20 Cel and 72 d the product of rate and retention is 2, of which one stirred tank releases two thirds.
    "degradation_rate": 1 / 36,
    "methane_share": 0.6,
    "gas_pressure": 101325.0,
    "settling_share": 0.25,
    "grit_held_in_mixing_tank": 0.5,
    "sludge_density": 1250.0,
    "sludge_allowance": 0.1,
    "design_retention_time": 60.0,
    "gas_storage_of_daily_gas": 0.6,
    "water_available": 0.105,
}
PLANT_ON_PAPER = {
    "working_volume": 9.0,
    "gas_storage_volume": 2.4,
    "hydraulic_retention_time": 72.0,
    "organic_loading_rate": 6.4 / 9,
    "rate_at_temperature": 1 / 36,
    "share_of_potential": 2 / 3,
    "gas_volume_factor": 1.0,
    "grit_per_day": 0.4,
    "sludge_per_day": 0.00016,
    "desludging_interval": 5625.0,
    "water_sufficiency": 1.5,
    "required_working_volume": 7.5,
    "required_total_volume": 10.0,
}
CHARGE = {
    "first_fill_share": 0.75,
    "starter_volume": 0.9,
    "displacement": 0.8,
    "main_substrate_mass": 2430.0,
    "dung_per_animal_day": 8.1,
    "mixing_rate": 0.9,
}
CHARGE_ON_PAPER = {
    "slurry_volume": 9.0,
    "fresh_slurry_volume": 8.1,
    "substrate_volume": 4.05,
    "substrate_mass": 3240.0,
    "water_volume": 4.86,
    "water_mass": 4860.0,
    "first_charge_total_solids": 518.4 / 8100,
    "starter_share": 0.1,
    "animal_days": 300.0,
    "mixing_hours": 9.0,
}


@pytest.mark.parametrize(
    ("stated", "sheet"),
    [(FED, FED_ON_PAPER), (FED | PLANT, PLANT_ON_PAPER), (FED | PLANT | CHARGE, CHARGE_ON_PAPER)],
    ids=["feed", "plant", "first charge"],
)
def test_the_graph_gives_what_the_pencil_gives(stated: dict[str, float], sheet: dict[str, float]) -> None:
    assert GRAPH.solve(stated, tuple(sheet)) == pytest.approx(sheet, rel=1e-12)


def test_free_ammonia_is_the_published_share() -> None:
    # Emerson et al. 1975, table of un-ionised ammonia: 3.83 % at 20 Cel and pH 8 (from memory).
    found = GRAPH.solve(FED, ("free_ammonia", "total_ammonia_nitrogen"))
    assert found["free_ammonia"] / found["total_ammonia_nitrogen"] == pytest.approx(0.0383, rel=0.01)


def test_feed_denser_than_water_takes_its_own_room() -> None:
    found = GRAPH.solve({**FED, "bulk_density": 1250.0}, ("displaced_volume_per_day",))
    assert found["displaced_volume_per_day"] == pytest.approx(0.04)


def handbook_state(**changes: float) -> dict[str, float]:
    """The plant in the state of the handbooks' yield tables: 25 Cel and 60 d, stirred, at sea level."""
    return {**FED, **PLANT, "digester_temperature": 25.0, "hydraulic_retention_time": 60.0, **changes}


def test_in_the_state_of_the_yield_tables_the_yield_is_theirs() -> None:
    found = GRAPH.solve(
        handbook_state(), ("biogas_per_day", "methane_per_day", "gas_storage_needed", "biogas_potential", "reference_share")
    )
    assert found["biogas_per_day"] == pytest.approx(6.4 * 0.3, rel=1e-12)
    assert found["methane_per_day"] == pytest.approx(6.4 * 0.3 * 0.6, rel=1e-12)
    assert found["gas_storage_needed"] == pytest.approx(6.4 * 0.3 * 0.6, rel=1e-12)
    assert found["biogas_potential"] * found["reference_share"] == pytest.approx(0.3, rel=1e-12)


def test_the_same_gas_takes_more_room_in_the_highlands_and_its_normal_volume_stays() -> None:
    wanted = ("biogas_per_day", "biogas_per_day_normal", "gas_volume_factor")
    coast, high = GRAPH.solve(handbook_state(), wanted), GRAPH.solve(handbook_state(gas_pressure=HIGHLAND), wanted)
    # Boyle and Dalton: the dry gas keeps its moles, its pressure is that of the place less the vapour's.
    assert high["gas_volume_factor"] == pytest.approx((101325 - VAPOUR_AT_25) / (HIGHLAND - VAPOUR_AT_25), rel=1e-3)
    assert high["biogas_per_day"] / coast["biogas_per_day"] == pytest.approx(high["gas_volume_factor"], rel=1e-12)
    assert high["biogas_per_day_normal"] == pytest.approx(coast["biogas_per_day_normal"], rel=1e-12)
    dry = (101325 - VAPOUR_AT_25) / 101325 * KELVIN / (KELVIN + 25)
    assert coast["biogas_per_day_normal"] == pytest.approx(6.4 * 0.3 * dry, rel=2e-3)


def test_what_leaves_as_gas_is_missing_in_the_digestate() -> None:
    wanted = ("biogas_per_day", "biogas_mass_per_day", "digestate_mass_per_day", "digestate_per_day")
    found = GRAPH.solve(handbook_state(), wanted)
    # Ideal gas: 60 % methane and 40 % carbon dioxide weigh 27.23 g/mol, the vapour 18.015.
    moist = ((101325 - VAPOUR_AT_25) * 0.02723 + VAPOUR_AT_25 * 0.018015) / (8.314 * (KELVIN + 25))
    assert found["biogas_mass_per_day"] == pytest.approx(found["biogas_per_day"] * moist, rel=5e-3)
    assert found["digestate_mass_per_day"] + found["biogas_mass_per_day"] == pytest.approx(125.1, rel=1e-12)
    assert found["digestate_per_day"] / found["digestate_mass_per_day"] == pytest.approx(0.125 / 125.1, rel=1e-12)


def test_above_what_was_fitted_warmth_promises_no_more() -> None:
    rate = digester.rate_at_temperature
    assert rate(0.02, 40.0) == rate(0.02, 35.0) > rate(0.02, 34.0) > rate(0.02, 20.0) == pytest.approx(0.02, rel=1e-12)


HEARTH = {
    "methane_share": 0.6,
    "gas_pressure": 101325.0,
    "gas_burnt_per_day": 1.8,
    "gas_for_cooking_per_day": 0.9,
    "gas_for_electricity_per_day": 0.75,
    "electric_power": 7.2,
    "electric_gas_rate": 1.5,
    "electricity_replaced_per_day": 11.0,
    "gas_vented_per_day": 0.45,
    "leak_share": 0.1,
    "warming_potential": 28.0,
    "lower_heating_value": 20.0,
    "methane_in_gas": 0.4,
    "biogas_stove_efficiency": 0.55,
    "fuel_share": 0.5,
    "fuel_heating_value": 44.0,
    "fuel_stove_efficiency": 0.45,
    "fuel_density": 800.0,
    "emission_factor": 0.07,
    "non_renewable_share": 0.5,
    "volatile_solids_per_day": 6.4,
    "methane_potential": 0.13,
    "methane_conversion": 0.5,
}
HEARTH_ON_PAPER = {
    "cooking_heat_per_day": 18.0,
    "useful_heat_per_day": 9.9,
    # Two kilowatts for half an hour are a kilowatt hour.
    "electricity_made_per_day": 3.6,
    # 9.9 MJ in the pot, half of it by this fuel at 45 %, are 11; as much again is electricity.
    "fuel_heat_per_day": 22.0,
    "fuel_mass_per_day": 0.5,
    "fuel_volume_per_day": 0.000625,
    "carbon_dioxide_avoided": 0.77,
    # 2.25 m3 come through of 2.5 that were made.
    "gas_leaked_per_day": 0.25,
    "methane_lost_per_day": 0.28,
    "warming_of_methane_lost": 7.84,
    # The inventories' equation: volatile solids, potential, 0.67 kg/m3, conversion factor (IPCC 2019).
    "manure_methane_per_day": 6.4 * 0.13 * 0.67 * 0.5,
    "warming_of_manure_methane": 6.4 * 0.13 * 0.67 * 0.5 * 28,
}


def test_the_hearth_gives_what_the_pencil_gives() -> None:
    assert GRAPH.solve(HEARTH, tuple(HEARTH_ON_PAPER)) == pytest.approx(HEARTH_ON_PAPER, rel=1e-12)


def test_a_cubic_metre_as_used_holds_its_methane() -> None:
    # Methane: 0.717 kg and 35.8 MJ a normal cubic metre (tables, from memory); moist at 25 Cel it is 0.887 of one.
    normal = (101325 - saturation_vapour_pressure(25.0)) / 101325 * KELVIN / (KELVIN + 25)
    assert gas_use.methane_in_gas(0.6, 101325.0) == pytest.approx(0.6 * 0.717 * normal, rel=3e-3)
    assert gas_use.lower_heating_value(0.6, 101325.0) == pytest.approx(0.6 * 35.8 * normal, rel=5e-3)
    assert gas_use.methane_in_gas(0.6, HIGHLAND) < gas_use.methane_in_gas(0.6, 101325.0)


RECORD = {
    "total_volume": 12.0,
    "smallest_built": 4.0,
    "largest_built": 20.0,
    "gas_storage_volume": 3.0,
    "gas_storage_share": 0.2,
    "animal_count": 4.0,
    "dung_per_head": 10.0,
    "most_dung_per_head": 25.0,
    "feed_mass_per_day": 50.0,
    "slurry_per_head": 0.025,
    "shortest_retention": 45.0,
    "longest_retention": 90.0,
    "working_volume": 9.0,
    "displaced_volume_per_day": 0.05,
    "feed_volume_per_day": 0.0625,
    "usual_water_to_feed": 0.8,
    "wettest_water_to_feed": 1.6,
    "liquid_per_day": 0.05,
    "slurry_per_day": 0.135,
    "design_retention_time": 60.0,
    "feeding_interval": 2.0,
    "biogas_per_day": 2.0,
    "biogas_measured": 1.2,
    "low_gas_share": 0.75,
    "high_gas_share": 1.5,
    "gauge_pressure": 6000.0,
    "highest_operating_pressure": 8000.0,
    "digester_age": 90.0,
}
RECORD_ON_PAPER = {
    "total_volume_to_smallest": 3.0,
    "total_volume_to_largest": 0.6,
    # Usual is 2.4 m3 of the 12.
    "gas_storage_to_usual": 1.25,
    "herd_dung_per_day": 40.0,
    "supply_sufficiency": 0.8,
    "feed_to_herd_most": 0.5,
    # Four head bring 0.1 m3 a day: 4.5 m3 in 45 days, 9 m3 in 90.
    "herd_to_largest_herd": 0.5,
    "herd_to_smallest_herd": 1.0,
    "usual_slurry_per_day": 0.1,
    "fed_share_of_design": 2 / 3,
    "water_to_wettest": 0.5,
    "dose_share": 0.03,
    "low_biogas_per_day": 1.5,
    "high_biogas_per_day": 3.0,
    "gas_ratio": 0.6,
    "gas_ratio_to_low": 0.8,
    "gas_ratio_to_high": 0.4,
    "gas_pressure_to_highest": 0.75,
    "age_over_retention": 1.5,
}


def test_a_record_is_held_against_the_usual_as_on_paper() -> None:
    assert GRAPH.solve(RECORD, tuple(RECORD_ON_PAPER)) == pytest.approx(RECORD_ON_PAPER, rel=1e-12)


FIELD = {
    "dry_biogas_mass_per_day": 2.0,
    "solids_in_gas": 0.9,
    "volatile_solids_per_day": 6.4,
    "total_solids_per_day": 8.0,
    "digestate_mass_per_day": 124.0,
    "digestate_per_day": 0.125,
    "nitrogen_per_day": 0.16,
    "urine_nitrogen_per_day": 0.04,
    "ammonium_nitrogen_per_day": 0.08,
    "urine_ammonium_per_day": 0.035,
    "ammonia_loss_in_storage": 0.2,
    "ammonia_loss_in_spreading": 0.25,
    "organic_nitrogen_release": 0.4,
    # 103 kg/ha.
    "nitrogen_need": 0.0103,
    "phosphorus_per_day": 0.05,
    "phosphorus_settling": 0.3,
    "potassium_per_day": 0.3,
    "nitrogen_in_urea": 0.46,
    "nitrogen_in_diammonium_phosphate": 0.18,
    "phosphate_in_diammonium_phosphate": 0.46,
    "potash_in_potassium_chloride": 0.6,
}
# Phosphate is 2.291 times its phosphorus and potash 1.205 times its potassium (molar masses; any fertiliser handbook).
FIELD_ON_PAPER = {
    "volatile_solids_destroyed_per_day": 1.8,
    "volatile_solids_left_per_day": 4.6,
    "total_solids_left_per_day": 6.2,
    "digestate_total_solids": 0.05,
    "digestate_nitrogen_per_day": 0.2,
    "digestate_ammonium_per_day": 0.115,
    "organic_nitrogen_per_day": 0.085,
    "digestate_ammonium_share": 0.575,
    "nitrogen_concentration": 1.6,
    "nitrogen_lost_in_storage": 0.023,
    "ammonium_after_storage": 0.092,
    "nitrogen_lost_in_spreading": 0.023,
    "nitrogen_spread_per_day": 0.177,
    "available_nitrogen_per_day": 0.103,
    "nitrogen_for_later_years": 0.051,
    "nitrogen_availability": 0.515,
    "available_nitrogen_concentration": 0.824,
    "spread_nitrogen_concentration": 1.416,
    # 12.5 L a square metre, 125 m3 a hectare.
    "digestate_per_area": 0.0125,
    "settled_phosphorus_per_day": 0.015,
    "digestate_phosphorus_per_day": 0.035,
    "digestate_potassium_per_day": 0.3,
    "phosphorus_concentration": 0.28,
    "potassium_concentration": 2.4,
    "phosphate_per_day": 0.035 * 2.291,
    "potash_per_day": 0.3 * 1.205,
    "diammonium_phosphate_equivalent": 0.035 * 2.291 / 0.46,
    "urea_equivalent": (0.103 - 0.035 * 2.291 / 0.46 * 0.18) / 0.46,
    "potassium_chloride_equivalent": 0.3 * 1.205 / 0.6,
}


def test_the_field_gets_what_the_pencil_gives() -> None:
    assert GRAPH.solve(FIELD, tuple(FIELD_ON_PAPER)) == pytest.approx(FIELD_ON_PAPER, rel=1e-3)


def test_phosphate_that_brings_all_the_nitrogen_asks_for_no_urea() -> None:
    rich = {**FIELD, "phosphorus_per_day": 0.5}
    assert GRAPH.solve(rich, ("urea_equivalent",))["urea_equivalent"] == 0


def test_no_more_becomes_gas_than_was_fed() -> None:
    much = GRAPH.solve({**FIELD, "dry_biogas_mass_per_day": 8.0}, ("volatile_solids_destroyed_per_day", "volatile_solids_left_per_day"))
    assert much == {"volatile_solids_destroyed_per_day": 6.4, "volatile_solids_left_per_day": 0.0}


def test_dry_gas_weighs_what_its_gases_weigh() -> None:
    # A normal cubic metre of methane weighs 0.717 kg and of carbon dioxide 1.977 kg (tables, from memory).
    assert nutrients.dry_biogas_mass_per_day(2.0, 0.6) == pytest.approx(2 * (0.6 * 0.717 + 0.4 * 1.977), rel=2e-3)


def test_the_sheets_leave_no_formula_of_their_subjects_out() -> None:
    for module, sheet in ((first_fill, CHARGE_ON_PAPER), (installation, RECORD_ON_PAPER)):
        assert {item.name for item in collect(module) if item.inputs} == set(sheet)


def test_containers_are_whole_and_a_rounding_error_is_none() -> None:
    assert [labour.whole_containers(volume, 0.02) for volume in (0.0, 0.001, 0.02, 0.0201, 0.1)] == [0, 1, 1, 2, 5]
    # In binary 0.1 + 0.2 is a little more than 0.3.
    assert labour.whole_containers(0.1 + 0.2, 0.1) == 3
    assert labour.whole_containers(0.02 * (1 + 1e-6), 0.02) == 2


def test_a_trip_goes_there_and_back() -> None:
    # 180 m at 1 m/s is six minutes there and back, two more to load: ten trips take 80 minutes.
    assert labour.carrying_hours(10, 180.0, 1.0, 120.0) == pytest.approx(80 / 60)
    assert labour.carrying_hours(10, 180.0, 1.5, 0.0) == pytest.approx(40 / 60)
