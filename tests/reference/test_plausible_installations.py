"""The bounds between which a record is possible, held against installations and climates that are published as real.

None of these may be called impossible; and what lies an order of magnitude beyond them must be.
"""

from __future__ import annotations

from typing import Any

import pytest
from tests.rules.conftest import findings
from tests.rules.fleets import asked

from kilisho.faults import RefusedError

# Plants as they are built and fed. The first two follow from figures that are printed (6 kg of dung a day to the cubic metre, equal water,
# sizes of 4 to 20 m3: Bajgain 1994, as read for the rulebook); the others are recalled from the works named, and round.
PUBLISHED: list[tuple[str, dict[str, Any]]] = [
    (
        "Bajgain 1994, Nepalese programme, 4 m3, hills: 24 kg of dung with as much water",
        {"structure": "fixed_dome", "total_volume": 4, "substrate": "cattle_dung", "feed_mass": 24, "water_volume": 24},
    ),
    (
        "Bajgain 1994, Nepalese programme, 20 m3: 120 kg of dung with as much water",
        {"structure": "fixed_dome", "total_volume": 20, "substrate": "buffalo_dung", "feed_mass": 120, "water_volume": 120},
    ),
    (
        "Family plant of the handbooks (recalled, after Sasse 1988): 60 kg of nine local cattle with 60 L on 12 m3, warm",
        {
            "structure": "fixed_dome",
            "total_volume": 12,
            "animal": "local_cow",
            "animal_count": 9,
            "substrate": "cattle_dung",
            "feed_mass": 60,
            "water_volume": 60,
            "mean_air_temperature": 25,
        },
    ),
    (
        "Pig farm of the Red River delta (recalled, after Pham 2014): 12 m3, twenty pigs, at 24 Cel",
        {
            "structure": "fixed_dome",
            "total_volume": 12,
            "animal": "fattening_pig",
            "animal_count": 20,
            "feed_mass": 30,
            "mean_air_temperature": 24,
        },
    ),
    (
        "Tube of the high Andes (recalled, after Marti-Herrero 2012): 7 m3, 20 kg of dung with 60 L of water at 9 Cel of air",
        {"structure": "bag", "total_volume": 7, "substrate": "cattle_dung", "feed_mass": 20, "water_volume": 60, "mean_air_temperature": 9},
    ),
    (
        "Community plant (recalled): a dome of 100 m3 on 500 kg of dung, among the largest that masons build",
        {"structure": "fixed_dome", "total_volume": 100, "substrate": "cattle_dung", "feed_mass": 500, "water_volume": 500},
    ),
]
# Means of the year of weather stations (from memory, to the degree): the coldest and hottest places where people keep stock in stalls.
STATIONS = {"Ulaanbaatar": -1, "Yakutsk": -9, "El Alto": 7, "Kathmandu": 18, "Nairobi": 19, "Khartoum": 30, "Timbuktu": 29, "Djibouti": 30}


def doubts(record: dict[str, Any]) -> set[str]:
    answer = asked(record)
    assert not isinstance(answer, RefusedError), answer
    return {name for name, end in findings(answer).items() if end == "fail" and name in POSSIBLE}


POSSIBLE = {
    "total_volume_possible_least",
    "total_volume_possible_most",
    "gas_storage_possible",
    "air_temperature_possible",
    "feed_mass_possible_most",
    "feed_mass_possible_least",
    "feed_within_herd",
    "water_volume_possible_most",
    "water_volume_possible_least",
    "gas_measured_possible_most",
    "gas_measured_possible_least",
    "gas_pressure_possible",
    "ph_possible",
}


@pytest.mark.parametrize(("source", "record"), PUBLISHED, ids=[source.split(":")[0] for source, _ in PUBLISHED])
def test_published_installations_are_possible(source: str, record: dict[str, Any]) -> None:
    assert doubts(record) == set()


@pytest.mark.parametrize("member", ["total_volume", "feed_mass", "water_volume"])
@pytest.mark.parametrize(("source", "record"), PUBLISHED, ids=[source.split(":")[0] for source, _ in PUBLISHED])
def test_the_same_with_a_slip_of_a_thousand_are_not(source: str, record: dict[str, Any], member: str) -> None:
    if member in record:
        assert doubts({**record, member: record[member] * 1000})
        assert doubts({**record, member: record[member] / 1000})


@pytest.mark.parametrize(("place", "mean"), STATIONS.items())
def test_the_climates_of_real_places_are_possible_and_in_fahrenheit_they_are_not(place: str, mean: float) -> None:
    record = {"structure": "fixed_dome", "total_volume": 9}
    assert doubts({**record, "mean_air_temperature": mean}) == set()
    if mean >= 3:
        assert doubts({**record, "mean_air_temperature": mean * 1.8 + 32}) == {"air_temperature_possible"}


@pytest.mark.parametrize("ph", [4.5, 5.5, 6.8, 7.4, 8.6])
def test_the_ph_of_sour_and_of_ammoniacal_slurry_is_possible(ph: float) -> None:
    """Soured household digesters are reported down to some 4.5, digesters on droppings up to some 8.6 (from memory)."""
    assert doubts({"structure": "fixed_dome", "total_volume": 9, "ph": ph}) == set()


@pytest.mark.parametrize(("structure", "centimetres"), [("fixed_dome", 120), ("floating_drum", 15), ("bag", 12)])
def test_pressures_in_use_are_possible_and_a_hundred_times_as_much_is_not(structure: str, centimetres: float) -> None:
    """Domes to 120 cm of water, drums 10 to 15, bags 8 to 12 by their relief (handbooks, from memory)."""
    pressure = {"value": centimetres, "unit": "cm[H2O]"}
    assert doubts({"structure": structure, "total_volume": 9, "gas_pressure": pressure}) == set()
    assert doubts({"structure": structure, "total_volume": 9, "gas_pressure": {"value": centimetres, "unit": "mbar"}}) <= POSSIBLE
    wrong = {"value": centimetres * 100, "unit": "cm[H2O]"}
    assert doubts({"structure": structure, "total_volume": 9, "gas_pressure": wrong}) == {"gas_pressure_possible"}


@pytest.mark.parametrize(("share", "possible"), [(0.1, True), (0.2, True), (0.35, True), (0.9, False), (0.02, False)])
def test_gas_storage_between_a_tenth_and_a_third_of_a_dome_is_possible(share: float, possible: bool) -> None:
    """Handbook domes store a tenth to a third of their volume (from memory)."""
    assert (doubts({"structure": "fixed_dome", "total_volume": 9, "gas_storage_volume": 9 * share}) == set()) == possible
