"""How answers tell numbers, dates and what is not known; and how faults point."""

from __future__ import annotations

import datetime as dt
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import BaseModel, ConfigDict, ValidationError

from kilisho.faults import MOST_SUGGESTIONS, Fault, RefusedError, faults_of
from kilisho.questions.answers import in_celsius, in_kilograms, in_litres, in_percent, in_years, known, plus_days, told_in
from kilisho.questions.asking import parse
from kilisho.questions.findings import six_digits
from kilisho.units import KINDS, from_canonical


class Closed(BaseModel):
    """A request of two members, for the tests of faults."""

    model_config = ConfigDict(extra="forbid")

    count: int
    inner: dict[str, int] = {}


@given(st.floats(-1e9, 1e9), st.integers(0, 6))
def test_a_told_number_is_within_half_a_unit_of_its_last_place(value: float, decimals: int) -> None:
    told = told_in("mass", "kg", decimals)(value)["value"]
    assert abs(told - value) <= 0.5 * 10**-decimals * (1 + 1e-6) + abs(value) * 1e-12


@given(st.sampled_from(sorted(KINDS)), st.floats(0, 1e4), st.data())
def test_every_unit_tells_what_the_table_converts(kind: str, value: float, data: st.DataObject) -> None:
    code = data.draw(st.sampled_from(sorted(KINDS[kind].units)))
    told = told_in(kind, code, 9)(value)
    assert told["unit"] == code
    assert told["value"] == pytest.approx(from_canonical(value, kind, code), rel=1e-9, abs=1e-8)


def test_a_range_has_both_ends_or_none() -> None:
    assert in_kilograms(2.0) == {"value": 2.0, "unit": "kg"}
    assert in_kilograms(2.0, 1.0) == {"value": 2.0, "unit": "kg"}
    assert in_years(730.5, 365.25, 1461.0) == {"value": 2.0, "unit": "a", "low": 1.0, "high": 4.0}


def test_units_that_people_carry_in() -> None:
    assert in_litres(0.02) == {"value": 20.0, "unit": "L"}
    assert in_percent(0.075) == {"value": 7.5, "unit": "%"}
    assert in_celsius(-3.25) == {"value": -3.25, "unit": "Cel"}


def test_what_is_not_known_is_left_out() -> None:
    assert known(date=None, amount=0, text="") == {"amount": 0, "text": ""}
    assert known(date="2027-01-01") == {"date": "2027-01-01"}


@given(st.dates(), st.integers(-4_000_000, 4_000_000))
def test_days_are_added_or_lie_beyond_the_calendar(day: dt.date, days: int) -> None:
    told = plus_days(day, days)
    inside = 1 <= day.toordinal() + days <= dt.date.max.toordinal()
    assert told == (dt.date.fromordinal(day.toordinal() + days).isoformat() if inside else None)


def test_unknown_days_stay_unknown() -> None:
    assert plus_days(None, 3) is None
    assert plus_days(dt.date(2027, 1, 1), None) is None


@given(st.floats(1e-12, 1e12))
def test_a_measured_fact_keeps_six_digits(value: float) -> None:
    assert math.isclose(six_digits(value), value, rel_tol=1e-5)


@pytest.mark.parametrize(
    ("place", "pointer"),
    [((), ""), (("feed", 0, "mass"), "/feed/0/mass"), (("a/b", "c~d"), "/a~1b/c~0d"), (("", "x"), "//x"), (("~1",), "/~01")],
)
def test_a_place_becomes_a_json_pointer(place: tuple[str | int, ...], pointer: str) -> None:
    """RFC 6901, sections 3 to 5 (read): ~ becomes ~0 and / becomes ~1."""
    assert Fault(place, "any", "any").pointer == pointer


def test_all_faults_come_at_once_with_near_names_and_without_the_input() -> None:
    with pytest.raises(ValidationError) as caught:
        Closed.model_validate({"cuont": "secret-input", "inner": {"a": "secret-input"}})
    found = faults_of(caught.value, ("count", "inner"))
    assert {fault.pointer for fault in found} == {"/count", "/cuont", "/inner/a"}
    assert next(fault for fault in found if fault.pointer == "/cuont").nearest == ("count",)
    assert "secret-input" not in str([fault.as_dict() for fault in found])


def test_near_names_are_looked_up_for_the_first_faults_only() -> None:
    with pytest.raises(ValidationError) as caught:
        Closed.model_validate({"count": 1, **{f"coun{i}": 1 for i in range(3 * MOST_SUGGESTIONS)}})
    found = faults_of(caught.value, ("count",))
    assert len(found) == 3 * MOST_SUGGESTIONS
    assert sum(bool(fault.nearest) for fault in found) == MOST_SUGGESTIONS


def test_a_refusal_reads_as_one_line_for_the_command_line() -> None:
    refused = RefusedError([Fault(("feed",), "x", "is empty"), Fault((), "y", "is odd")])
    assert str(refused) == "/feed: is empty; /: is odd"


@pytest.mark.parametrize("body", [b"", b"{", b'{"a":1,"a":2}', b'{"a":NaN}', b'{"a":-Infinity}', b"\xff\xfe", b"{} {}", b"[" * 10_000])
def test_what_is_not_one_json_document_is_malformed(body: bytes) -> None:
    with pytest.raises(ValueError, match="not one JSON document"):
        parse(body)
