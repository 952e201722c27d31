"""The types of request fields: what they accept is what they publish, and a fault stands at its place."""

from __future__ import annotations

import datetime as dt
from functools import cache
from typing import Any

import jsonschema
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError
from tests.rules.conftest import FIRST_CHARGE, REQUESTS, Json, ask, questions, resolves

from kilisho.faults import MalformedError, RefusedError
from kilisho.questions import fields as f
from kilisho.questions.fields import Checked, InUnit
from kilisho.units import KINDS, to_canonical

FIELDS = {name: field for name, field in vars(f).items() if isinstance(field, InUnit)}
WORDS = {name: field for name, field in vars(f).items() if isinstance(field, Checked) and name not in {"DAY"}}


def adapter(field: Any) -> TypeAdapter[Any]:
    from typing import Annotated

    return TypeAdapter(Annotated[Any, field])


def accepts(field: Any, said: Any) -> bool:
    try:
        adapter(field).validate_python(said)
    except ValidationError:
        return False
    return True


def published(field: Any, said: Any) -> bool:
    return bool(jsonschema.Draft202012Validator(adapter(field).json_schema()).is_valid(said))


JUNK = st.none() | st.booleans() | st.text(max_size=5) | st.lists(st.integers(), max_size=2) | st.just({})
NUMBERS = st.floats(allow_nan=False, allow_infinity=False) | st.integers(-(10**9), 10**9) | st.floats(-1, 2)


@given(st.sampled_from(sorted(FIELDS)), st.data())
def test_a_field_accepts_exactly_what_it_publishes(name: str, data: st.DataObject) -> None:
    field = FIELDS[name]
    codes = st.sampled_from([*KINDS[field.kind].units, "furlong", ""]) | JUNK
    near = st.sampled_from([n for w in field.windows().values() for n in (w.least, w.most)])
    number = data.draw(NUMBERS | near)
    obj = st.dictionaries(st.sampled_from(["value", field.key, "other"]), codes | NUMBERS, max_size=3)
    said = data.draw(st.just(number) | JUNK | obj | st.builds(lambda code: {"value": number, field.key: code}, codes))
    assert accepts(field, said) is published(field, said), said


@given(st.sampled_from(sorted(WORDS)), JUNK | NUMBERS | st.sampled_from(["stall", "Stall", "sheet", "x" * 64, "x" * 65, "x" * 201]))
def test_words_and_counts_accept_exactly_what_they_publish(name: str, said: Any) -> None:
    assert accepts(WORDS[name], said) is published(WORDS[name], said), said


@given(st.sampled_from(sorted(FIELDS)), st.data())
def test_the_validated_value_is_canonical(name: str, data: st.DataObject) -> None:
    field = FIELDS[name]
    code, window = data.draw(st.sampled_from(sorted(field.windows().items())))
    number = data.draw(st.floats(window.least, window.most))
    found = adapter(field).validate_python({"value": number, field.key: code})
    assert found == pytest.approx(to_canonical(number, field.kind, code), rel=1e-12, abs=1e-12)


@pytest.mark.parametrize("name", sorted(FIELDS))
def test_the_bounds_hold_in_every_unit(name: str) -> None:
    field = FIELDS[name]
    for code, window in field.windows().items():
        width = (window.most - window.least) * 1e-6
        assert accepts(field, {"value": window.most, field.key: code})
        assert accepts(field, {"value": window.least, field.key: code})
        assert not accepts(field, {"value": window.most + width, field.key: code})
        assert not accepts(field, {"value": window.least - width, field.key: code})


@pytest.mark.parametrize(
    "said", ["2027-02-29", "2027-13-01", "1989-12-31", "2151-01-01", "20270101", "2027-1-1", "2027-W01-1", "tomorrow", 20270101, None]
)
def test_days_that_do_not_exist(said: Any) -> None:
    assert not accepts(f.DAY, said)


@given(st.dates(dt.date(1990, 1, 1), dt.date(2150, 12, 31)))
def test_every_day_from_1990_to_2150(day: dt.date) -> None:
    assert adapter(f.DAY).validate_python(day.isoformat()) == day
    assert published(f.DAY, day.isoformat())


@pytest.mark.parametrize("said", [True, "3", 2.5, 13, 0, float("inf"), None, 1e300])
def test_whole_numbers_are_whole_and_within_bounds(said: Any) -> None:
    assert not accepts(f.whole_number(1, 12), said)


def test_a_whole_number_may_be_written_with_a_point() -> None:
    assert adapter(f.whole_number(1, 12)).validate_python(3.0) == 3


# Whole requests


@cache
def contract(name: str) -> jsonschema.Draft202012Validator:
    return jsonschema.Draft202012Validator(questions()[name].request.model_json_schema(mode="validation"))


@pytest.mark.parametrize("name", sorted(REQUESTS))
@given(data=st.data())
@settings(max_examples=30)
def test_generated_requests_fit_the_published_schema(name: str, data: Any) -> None:
    """The random requests of these tests are what the contract allows, and the schema allows what the code reads."""
    body = data.draw(REQUESTS[name]())
    assert contract(name).is_valid(body)
    questions()[name].read(body)


@pytest.mark.parametrize("name", sorted(REQUESTS))
def test_the_example_is_answered(name: str) -> None:
    answer = ask(name, questions()[name].example)
    assert answer["name"] == questions()[name].example["name"]
    assert "invented" in answer["name"]


def faults(name: str, body: Json) -> dict[str, Any]:
    with pytest.raises(RefusedError) as caught:
        ask(name, body)
    assert all(resolves(fault.pointer, body) for fault in caught.value.faults)
    return {fault.pointer: fault for fault in caught.value.faults}


def test_all_faults_at_once_each_at_its_place() -> None:
    body = {
        "digester": {"total_volume": -1, "colour": "red"},
        "feed": [{"substrate": 7}, {"substrate": "whey", "nitrogen": {"value": 1, "unit": "kg"}}],
        "herd": [{"animal": "goat", "count": 1.5}],
        "digester_ready_on": "soon",
        "labor": {},
    }
    found = faults("first-charge", body)
    assert set(found) == {
        "/digester/total_volume",
        "/digester/colour",
        "/feed/0/substrate",
        "/feed/1/nitrogen/unit",
        "/herd/0/count",
        "/digester_ready_on",
        "/labor",
    }
    assert list(found["/labor"].nearest)[:1] == ["labour"]
    assert found["/digester/colour"].code == "extra_forbidden"


def test_unknown_ids_are_all_named_with_their_neighbours() -> None:
    body = {
        **FIRST_CHARGE,
        "digester": {"structure": "fixed_doom", "total_volume": 12},
        "feed": [{"substrate": "catle_dung"}],
        "herd": [{"animal": "dairy_cows", "count": 1}],
        "stockpile": {"cover": "sheets"},
        "purchases": [{"name": "a", "available": 1, "substrate": "straw"}],
    }
    found = faults("first-charge", body)
    assert {pointer: fault.nearest[0] for pointer, fault in found.items() if fault.code == "unknown_id"}.items() >= {
        "/digester/structure": "fixed_dome",
        "/feed/0/substrate": "cattle_dung",
        "/herd/0/animal": "dairy_cow",
        "/stockpile/cover": "sheet",
    }.items()
    assert "/purchases/0/substrate" in found


@pytest.mark.parametrize(
    ("name", "change", "pointer", "code"),
    [
        ("first-charge", {"digester": {"structure": "bag"}}, "/digester", "volume_missing"),
        ("first-charge", {"digester": {"total_volume": 5, "working_volume": 6}}, "/digester/working_volume", "volume_impossible"),
        ("first-charge", {"digester": {"total_volume": 5, "gas_storage_volume": 6}}, "/digester/gas_storage_volume", "volume_impossible"),
        ("first-charge", {"dilution": {"water_to_feed_by_volume": 1, "target_total_solids": 0.08}}, "/dilution", "two_dilutions"),
        ("first-charge", {"feed": [{"substrate": "whey", "share": 0.4}]}, "/feed", "shares_disordered"),
        ("first-charge", {"feed": [{"substrate": "whey"}, {"substrate": "whey"}]}, "/feed", "substrate_twice"),
        ("first-charge", {"feed": [{"substrate": "whey", "share": 1, "mass": 3}]}, "/feed", "mass_and_share"),
        ("first-charge", {"feed": []}, "/feed", "too_short"),
        ("first-charge", {"purchases": [{"name": "a"}]}, "/purchases/0", "amount_missing"),
        ("first-charge", {"digester_ready_on": "2026-01-01"}, "/digester_ready_on", "dates_disordered"),
        ("first-charge", {"digester_ready_on": "2029-01-01"}, "/digester_ready_on", "dates_disordered"),
        ("first-charge", {"starter_slurry": 9000}, "/starter_slurry", "starter_fills_digester"),
        (
            "maintenance-feed",
            {"climate": {"monthly_air_temperature": {"values": [*[20] * 11, 99], "unit": "Cel"}}},
            "/climate/monthly_air_temperature/values/11",
            "month_out_of_range",
        ),
        ("sizing", {"gas_demand": 1, "people_cooked_for": 4}, "", "demand_twice"),
        ("sizing", {"herd": [], "feed": []}, "", "nothing_to_size_for"),
    ],
)
def test_faults_between_members(name: str, change: Json, pointer: str, code: str) -> None:
    body = {
        **(FIRST_CHARGE if name == "first-charge" else {"digester": {"total_volume": 12}} if name == "maintenance-feed" else {}),
        **change,
    }
    assert {(fault.pointer, fault.code) for fault in faults(name, body).values()} == {(pointer, code)}


@pytest.mark.parametrize(
    "body",
    [
        b"",
        b"{",
        b"[1,2",
        b'{"name": "a", "name": "b"}',
        b'{"water_available": NaN}',
        b'{"water_available": Infinity}',
        b"\xff\xfe",
        b"{}{}",
    ],
)
def test_what_is_not_one_json_document(body: bytes) -> None:
    with pytest.raises(MalformedError):
        questions()["first-charge"].ask(body)


@pytest.mark.parametrize("body", [b"[]", b"null", b"7", b'"text"', b"true"])
def test_a_document_that_is_no_object(body: bytes) -> None:
    with pytest.raises(RefusedError) as caught:
        questions()["first-charge"].ask(body)
    assert [fault.pointer for fault in caught.value.faults] == [""]


def test_a_fault_never_repeats_what_the_caller_sent() -> None:
    secret = "SECRET-TEXT"
    body = {
        "digester": {"structure": secret, "total_volume": secret},
        "feed": [{"substrate": secret, "total_solids": {"value": 1, "unit": secret}}],
    }
    for fault in faults("first-charge", body).values():
        assert secret not in fault.detail
