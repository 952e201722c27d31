"""What must hold between two diagnoses: of the same farm said otherwise, of a larger one, of one with more said about it."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, base, like, value

from kilisho.units import KINDS, from_canonical

FARM: Json = {
    "symptoms": ["gas_fell_slowly", "scum_seen"],
    "not_seen": ["crack_or_wet_patch"],
    "readings": {"ph": 7.0, "biogas_per_day": 0.7},
    "digester": {"structure": "fixed_dome", "total_volume": 9, "age": 2000},
    "feed": [{"substrate": "cattle_dung", "mass": 60}, {"substrate": "maize_stover", "mass": 4}],
    "water": {"value": 70, "unit": "L/d"},
    "climate": {"digester_temperature": 24},
}
SYMPTOMS = sorted(base().data.symptoms)


def told(answer: Json) -> list[Any]:
    """Causes in their order, with shares and clues but without the values of facts, which are rounded."""
    clues = [
        [(clue["kind"], clue["of"], clue["strength"]) for side in ("for", "against") for clue in one[f"speaks_{side}"]]
        for one in answer["causes"]
    ]
    return [(one["cause"], one["share"], clue) for one, clue in zip(answer["causes"], clues, strict=True)]


def in_unit(number: float, kind: str, code: str) -> Json:
    return {"value": from_canonical(number, kind, code), "unit": code}


# The same farm said otherwise


@given(st.data())
@settings(max_examples=40)
def test_units_do_not_matter(data: Any) -> None:
    def said(number: float, kind: str) -> Json:
        return in_unit(number, kind, data.draw(st.sampled_from(sorted(KINDS[kind].units))))

    other = like(
        FARM,
        readings={"ph": 7.0, "biogas_per_day": said(0.7, "volume_flow")},
        digester={"structure": "fixed_dome", "total_volume": said(9, "volume"), "age": said(2000, "time")},
        feed=[{"substrate": "cattle_dung", "mass": said(60, "mass_flow")}, {"substrate": "maize_stover", "mass": said(4, "mass_flow")}],
        water=said(0.07, "volume_flow"),
        climate={"digester_temperature": said(24, "temperature")},
    )
    first, second = ask("diagnosis", FARM), ask("diagnosis", other)
    assert told(first) == told(second)
    assert value(second, "gas.gas_ratio") == pytest.approx(value(first, "gas.gas_ratio"), rel=1e-4)


def test_the_order_of_the_feed_does_not_matter() -> None:
    first, second = ask("diagnosis", FARM), ask("diagnosis", like(FARM, feed=FARM["feed"][::-1]))
    assert told(first) == told(second)
    assert value(second, "gas.expected") == pytest.approx(value(first, "gas.expected"), rel=1e-6)


def test_water_by_day_and_by_ratio_are_the_same_water() -> None:
    """60 kg of dung at its bulk density and as much water by volume."""
    feed = [{"substrate": "cattle_dung", "mass": 60, "bulk_density": 1000}]
    by_day = ask("diagnosis", like(FARM, feed=feed, water={"value": 60, "unit": "L/d"}))
    by_ratio = ask("diagnosis", like(FARM, feed=feed, water=None, dilution={"water_to_feed_by_volume": 1}))
    assert by_day["gas"] == by_ratio["gas"]
    assert told(by_day) == told(by_ratio)


def test_the_slurry_s_temperature_may_stand_among_the_readings_or_in_the_climate() -> None:
    first, second = (
        ask("diagnosis", FARM),
        ask("diagnosis", like(FARM, climate=None, readings={**FARM["readings"], "slurry_temperature": 24})),
    )
    assert first["gas"] == second["gas"]
    assert told(first) == told(second)


@pytest.mark.parametrize(
    ("reading", "fact", "said"),
    [("ph", "slurry_ph", 6.2), ("methane_share", "methane_in_gas", 0.4), ("days_since_feeding", "days_since_feeding", 9)],
)
def test_a_reading_and_its_fact_say_the_same(reading: str, fact: str, said: float) -> None:
    """A bare fact is in its own unit, so the share is said with its unit."""
    stated = {"value": said, "unit": "1"} if reading == "methane_share" else said
    body = {"symptoms": ["gas_fell_slowly"]}
    assert told(ask("diagnosis", {**body, "readings": {reading: stated}})) == told(ask("diagnosis", {**body, "facts": {fact: stated}}))


# Larger farms


@given(st.integers(2, 8))
@settings(max_examples=7)
def test_a_farm_n_times_as_large_has_n_times_the_gas_and_the_same_causes(times: int) -> None:
    larger = like(
        FARM,
        readings={"ph": 7.0, "biogas_per_day": 0.7 * times},
        digester={**FARM["digester"], "total_volume": 9 * times},
        feed=[{**one, "mass": one["mass"] * times} for one in FARM["feed"]],
        water={"value": 70 * times, "unit": "L/d"},
    )
    first, second = ask("diagnosis", FARM), ask("diagnosis", larger)
    assert value(second, "gas.expected") == pytest.approx(times * value(first, "gas.expected"), rel=1e-4)
    assert value(second, "gas.gas_ratio") == pytest.approx(value(first, "gas.gas_ratio"), rel=1e-4)
    assert told(first) == told(second)


@given(st.floats(10, 200), st.floats(10, 200))
@settings(max_examples=20)
def test_more_feed_is_expected_to_give_no_less_gas(one: float, other: float) -> None:
    less, more = sorted((one, other))
    first, second = (ask("diagnosis", like(FARM, feed=[{"substrate": "cattle_dung", "mass": mass}])) for mass in (less, more))
    assert value(first, "gas.expected") <= value(second, "gas.expected") + 1e-6
    assert value(first, "gas.gas_ratio") >= value(second, "gas.gas_ratio") - 1e-6


# More said


@given(st.lists(st.sampled_from(SYMPTOMS), min_size=1, max_size=5, unique=True))
@settings(max_examples=40)
def test_a_farm_without_measured_gas_keeps_its_causes_when_its_name_or_meter_is_left_out(symptoms: list[str]) -> None:
    body = {"symptoms": symptoms}
    assert told(ask("diagnosis", body)) == told(ask("diagnosis", {**body, "not_seen": [], "readings": {}, "herd": []}))


@given(st.sampled_from(SYMPTOMS), st.floats(0, 14))
@settings(max_examples=40)
def test_a_reading_that_no_cause_of_a_symptom_reads_changes_none_of_them(symptom: str, ph: float) -> None:
    reads = {name for name, cause in base().data.causes.items() if any("slurry_ph" in one.when for one in cause.readings)}
    before, after = (ask("diagnosis", {"symptoms": [symptom], "readings": readings})["causes"] for readings in ({}, {"ph": ph}))
    kept = [one["cause"] for one in before if one["cause"] not in reads]
    assert [one["cause"] for one in after if one["cause"] not in reads] == kept


@given(st.lists(st.sampled_from(SYMPTOMS), min_size=1, max_size=6, unique=True))
@settings(max_examples=40)
def test_every_cause_is_told_once_or_cannot_be_had_by_the_structure(symptoms: list[str]) -> None:
    for structure in base().data.structures:
        answer = ask("diagnosis", {"symptoms": symptoms, "digester": {"structure": structure, "total_volume": 9}})
        named = [one["cause"] for one in (*answer["causes"], *answer["other_causes"])]
        assert len(named) == len(set(named))
        left = base().data.causes.keys() - set(named)
        assert all(structure not in base().data.causes[one].structures and base().data.causes[one].structures for one in left)


def test_a_younger_digester_is_less_likely_to_be_full_of_sand() -> None:
    shares = []
    for age in (30, 700, 4000):
        causes = ask("diagnosis", like(FARM, digester={**FARM["digester"], "age": age}))["causes"]
        shares.append(next(value(one, "share") for one in causes if one["cause"] == "sand_and_sludge"))
    assert shares == sorted(shares)
    assert shares[0] < shares[-1]


@pytest.mark.parametrize("structure", sorted(base().data.structures))
def test_the_structure_s_own_cautions_stand_beside_the_answer(structure: str) -> None:
    answer = ask("diagnosis", {"symptoms": ["gas_fell_slowly"], "digester": {"structure": structure, "total_volume": 9}})
    assert {"never_enter", "local_codes", *base().data.structures[structure].cautions} <= {one["id"] for one in answer["cautions"]}


@given(st.lists(st.sampled_from(SYMPTOMS), min_size=1, max_size=4, unique=True))
@settings(max_examples=30)
def test_no_answer_leaves_out_the_cautions_that_it_names(symptoms: list[str]) -> None:
    answer = ask("diagnosis", {"symptoms": symptoms})
    shown = {one["id"] for one in answer["cautions"]}
    named = {caution for one in answer["causes"] if one["leading"] for caution in (*one["cautions"], *one["test"]["cautions"])}
    assert named | {caution for one in answer["alarms"] for caution in one["cautions"]} <= shown
    assert {caution for one in answer["tests"] for caution in one["cautions"]} <= shown
