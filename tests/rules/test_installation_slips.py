"""Slipped units: which reading was probably meant, and when none explains the number."""

from __future__ import annotations

from typing import Any, get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import Json, base, findings
from tests.rules.fleets import one, single

from kilisho.packs import load
from kilisho.questions.installation.slips import DECIMAL_POINT, home_of, readings_of
from kilisho.questions.installation.work import desk_of
from kilisho.questions.opening import shelf_of
from kilisho.rulebook import Check, Slip, Slipping
from kilisho.units import to_canonical

SLIPPED: list[tuple[str, float, str, float]] = [
    ("total_volume", 9000.0, "L", 9.0),
    ("total_volume", 0.9, DECIMAL_POINT, 9.0),
    ("gas_storage_volume", 1800.0, "L", 1.8),
    ("feed_mass", 40_000.0, "g/d", 40.0),
    ("feed_mass", 0.04, "t/d", 40.0),
    ("feed_mass", 400.0, DECIMAL_POINT, 40.0),
    ("water_volume", 0.04, "m3/d", 40.0),
    ("water_volume", 400.0, DECIMAL_POINT, 40.0),
    ("biogas_measured", 1200.0, "L/d", 1.2),
    ("biogas_measured", 12.0, DECIMAL_POINT, 1.2),
    ("biogas_measured", 0.0012, DECIMAL_POINT, 1.2),
    ("mean_air_temperature", 71.6, "[degF]", 22.0),
    ("mean_air_temperature", 295.15, "K", 22.0),
    ("mean_air_temperature", 220.0, DECIMAL_POINT, 22.0),
    ("ph", 71.0, DECIMAL_POINT, 7.1),
    ("ph", 0.71, DECIMAL_POINT, 7.1),
    ("gas_pressure", 5_000_000.0, DECIMAL_POINT, 5000.0),
]


def probable(answer: Json) -> dict[str, Json]:
    return {one["probably"]["member"]: one["probably"] for one in answer["findings"] if "probably" in one}


@pytest.mark.parametrize(("member", "number", "read_as", "meant"), SLIPPED)
def test_a_slipped_number_is_told_with_the_reading_that_was_probably_meant(member: str, number: float, read_as: str, meant: float) -> None:
    answer = single(**{member: number})
    assert answer["verdict"] == "doubtful"
    assert probable(answer).keys() == {member}
    found = probable(answer)[member]
    assert found["read_as"] == read_as
    assert found["value"] == pytest.approx(meant, rel=1e-5)
    assert found["unit"] == home_of(member).code


@pytest.mark.parametrize(("member", "number", "read_as", "meant"), SLIPPED)
def test_the_same_of_a_row(member: str, number: float, read_as: str, meant: float) -> None:
    [slip] = one(**{member: number})["slips"]
    assert (slip["member"], slip["read_as"]) == (member, read_as)
    assert slip["value"] == pytest.approx(meant, rel=1e-9)


@pytest.mark.parametrize(("member", "number"), [(member, number) for member, number, _, _ in SLIPPED])
def test_what_follows_from_a_slipped_number_is_unknown_and_nothing_else_is_blamed(member: str, number: float) -> None:
    """One wrong number is one doubt: the others of the record are not called impossible because of it."""
    doubts = {name for name, end in findings(single(**{member: number})).items() if end == "fail" and NAMES.get(name)}
    assert {NAMES[name] for name in doubts} == {member}


NAMES = {name: check.slip.member for name, check in base().data.checks.items() if check.slip is not None}
UNEXPLAINED: list[tuple[str, float]] = [
    ("total_volume", 1200.0),
    ("feed_mass", 3.0e6),
    ("biogas_measured", 4.0),
    ("mean_air_temperature", -40.0),
    ("ph", 2.0),
]


@pytest.mark.parametrize(("member", "number"), UNEXPLAINED)
def test_where_no_reading_makes_it_likely_none_is_told(member: str, number: float) -> None:
    answer = single(**{member: number})
    assert answer["verdict"] == "doubtful"
    assert probable(answer) == {}


def test_two_slips_of_one_record_are_both_told() -> None:
    found = probable(single(total_volume=9000.0, ph=71.0))
    assert {name: one["read_as"] for name, one in found.items()} == {"total_volume": "L", "ph": DECIMAL_POINT}
    assert [slip["member"] for slip in one(total_volume=9000.0, ph=71.0)["slips"]] == ["total_volume", "ph"]


def test_a_number_that_is_possible_is_never_corrected() -> None:
    assert probable(single()) == {}
    assert one()["slips"] == []


@given(st.sampled_from(SLIPPED), st.floats(0.9, 1.1))
def test_the_reading_hangs_on_no_exact_number(slipped: tuple[str, float, str, float], about: float) -> None:
    member, number, read_as, _ = slipped
    if member == "mean_air_temperature":
        return
    found = probable(single(**{member: number * about}))
    assert found[member]["read_as"] == read_as


# Readings


@pytest.mark.parametrize("member", get_args(Slipping))
def test_readings_are_those_of_the_table_of_units(member: str) -> None:
    kinds = {"total_volume": "volume", "gas_storage_volume": "volume", "feed_mass": "mass_flow", "gas_pressure": "pressure"}
    kinds |= {"water_volume": "volume_flow", "biogas_measured": "volume_flow", "mean_air_temperature": "temperature", "ph": "number"}
    for reading in readings_of(member):
        if reading.read_as != DECIMAL_POINT:
            assert 3.0 * reading.factor + reading.offset == pytest.approx(to_canonical(3.0, kinds[member], reading.read_as))


@pytest.mark.parametrize("member", get_args(Slipping))
def test_no_reading_is_the_number_s_own_and_none_comes_twice(member: str) -> None:
    home, readings = home_of(member), readings_of(member)
    assert all((one.factor, one.offset) != (home.factor, home.offset) for one in readings)
    assert len({(round(one.factor / home.factor, 12), one.offset) for one in readings}) == len(readings)


@pytest.mark.parametrize("member", get_args(Slipping))
def test_a_decimal_point_may_slip_either_way(member: str) -> None:
    home = home_of(member)
    shifts = {round(one.factor / home.factor, 9) for one in readings_of(member) if one.read_as == DECIMAL_POINT}
    assert {0.1, 10.0} <= shifts


@pytest.mark.parametrize("member", get_args(Slipping))
def test_every_number_that_may_slip_is_suspected_by_some_check(member: str) -> None:
    assert member in desk_of(shelf_of(base().data)).suspects


@pytest.mark.parametrize("name", sorted(NAMES))
def test_the_likely_range_of_a_check_passes_it(name: str) -> None:
    """A reading that is told as likely must itself be possible."""
    check = base().data.checks[name]
    assert check.slip is not None
    low, high = check.slip.likely
    [(operator, bound)] = check.must.operators
    bounds = {"at_least": (bound, float("inf")), "at_most": (float("-inf"), bound), "between": bound}
    least, most = bounds[operator]
    one_sided = {"at_least": (low >= least), "at_most": (high <= most), "between": low >= least and high <= most}
    assert one_sided[operator]


# In a pack


def made(**changes: Any) -> Json:
    words = {"title": "A made check", "topic": "structure", "why": "made", "do": "made", "severity": "warning", "basis": "judgement"}
    asks = {"subject": "total_volume_to_largest", "must": {"at_most": 2, "unit": "1"}, "asked_in": ["validate_installation"]}
    return {**words, **asks, **changes}


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"slip": {"member": "total_volume", "likely": [2, 1]}}, "must rise"),
        ({"slip": {"member": "colour", "likely": [1, 2]}}, "member"),
        ({"subject": "gas_is_measured", "must": {"is": True}, "slip": {"member": "ph", "likely": [1, 2]}}, "bounds a number"),
        ({"finds": "splendid"}, "finds"),
    ],
)
def test_a_pack_is_told_what_is_wrong_with_a_slip(changes: Json, words: str) -> None:
    with pytest.raises(ValueError, match=words):
        Check.model_validate(made(**changes))


def test_a_pack_s_own_bound_moves_the_doubt(pack: Any) -> None:
    """A programme that builds nothing above 12 m3 says so with one figure, and the slip follows."""
    text = """
pack: {id: small_domes, version: 0.1.0, title: Small domes (invented)}
checks:
  total_volume_possible_most:
    must: {at_most: 0.12, unit: "1"}
    slip: {member: total_volume, likely: [0.04, 0.12]}
"""
    from kilisho.questions import open_questions

    extended = open_questions(load(pack(text)))["installations/validate"]
    body = {"structure": "fixed_dome", "total_volume": 80}
    answer = extended.answer(extended.read(body), False)
    assert answer["verdict"] == "doubtful"
    assert probable(answer)["total_volume"]["value"] == 8.0
    assert probable(single(total_volume=80.0)) == {}


def test_a_slip_is_a_range_that_rises() -> None:
    assert Slip.model_validate({"member": "ph", "likely": [5, 8]}).likely == (5.0, 8.0)
