"""Faults of a request: their pointers, their words, what is offered in their place, and that nothing of the caller's comes back."""

from __future__ import annotations

from typing import Any

import pytest
from pydantic import BaseModel, ConfigDict, Field, TypeAdapter, ValidationError
from pydantic_core import PydanticCustomError

from kilisho import faults as faults_module
from kilisho.faults import MOST_SUGGESTIONS, Fault, RefusedError, faults_of

KNOWN = ("total_volume", "working_volume", "structure")


class Tank(BaseModel):
    """A shape with one of each kind of member."""

    model_config = ConfigDict(extra="forbid", strict=True)

    total_volume: float = Field(gt=0)
    months: list[int] = Field(default=[1], min_length=1, max_length=2)
    parts: dict[str, int] = {}
    pair: tuple[int, int] = (1, 2)


def refused(shape: Any, body: Any) -> ValidationError:
    with pytest.raises(ValidationError) as told:
        TypeAdapter(shape).validate_python(body)
    return told.value


def only(body: Any, *known: str) -> Fault:
    [fault] = faults_of(refused(Tank, body), known)
    return fault


# RFC 6901, section 5: "a/b" is /a~1b, "m~n" is /m~0n, "" is / and the whole document is the empty string.
@pytest.mark.parametrize(
    ("place", "pointer"),
    [((), ""), (("",), "/"), (("a/b",), "/a~1b"), (("m~n",), "/m~0n"), (("~1",), "/~01"), (("foo", 0), "/foo/0"), (("~~//",), "/~0~0~1~1")],
)
def test_pointers_are_those_of_the_standard(place: tuple[str | int, ...], pointer: str) -> None:
    assert Fault(place, "missing", "It is missing.").pointer == pointer


def test_a_fault_offers_what_is_near_only_where_something_is() -> None:
    assert Fault(("a",), "c", "d").as_dict() == {"pointer": "/a", "code": "c", "detail": "d"}
    assert Fault(("a",), "c", "d", ("b",)).as_dict() == {"pointer": "/a", "code": "c", "detail": "d", "nearest": ["b"]}


def test_a_refusal_holds_and_names_every_fault() -> None:
    faults = [Fault(("a", 1), "c", "is wrong"), Fault((), "c", "is empty")]
    told = RefusedError(iter(faults))
    assert told.faults == tuple(faults)
    assert str(told) == "/a/1: is wrong; /: is empty"


@pytest.mark.parametrize(
    ("body", "place", "code", "detail"),
    [
        ({}, "/total_volume", "missing", "this member is required"),
        ({"total_volume": 1.0, "months": []}, "/months", "too_short", "has too few items"),
        ({"total_volume": 1.0, "months": [1, 2, 3]}, "/months", "too_long", "has too many items"),
        ({"total_volume": 1.0, "months": 3}, "/months", "list_type", "a list was expected"),
        ({"total_volume": 1.0, "pair": 3}, "/pair", "tuple_type", "a list was expected"),
        ({"total_volume": 1.0, "parts": 3}, "/parts", "dict_type", "an object was expected"),
        (3, "", "model_type", "an object was expected"),
        ({"total_volume": 1.0, "depth": 1}, "/depth", "extra_forbidden", "no such member here"),
        ({"total_volume": -1.0}, "/total_volume", "greater_than", "Input should be greater than 0"),
    ],
)
def test_each_kind_of_fault_has_its_words_and_place(body: Any, place: str, code: str, detail: str) -> None:
    fault = only(body)
    assert (fault.pointer, fault.code, fault.detail, fault.nearest) == (place, code, detail, ())


def test_a_slip_of_the_pen_is_offered_its_member_and_a_stranger_is_not() -> None:
    def near(name: str) -> list[str]:
        return list(only({"total_volume": 1.0, name: 1}, *KNOWN).nearest)

    assert near("total_volum")[0] == "total_volume"
    assert near("strukture") == ["structure"]
    assert near("xyz") == []
    # The nearest come first, three at most.
    many = only({"total_volume": 1.0, "volume_1": 1}, *(f"volume_{number}" for number in range(2, 9)), "structure").nearest
    assert len(many) == 3
    assert "structure" not in many


def test_looking_for_near_names_ends_and_the_faults_go_on() -> None:
    body = {"total_volume": 1.0, **{f"structur{number:02}": 1 for number in range(MOST_SUGGESTIONS + 3)}}
    faults = faults_of(refused(Tank, body), KNOWN)
    assert [bool(fault.nearest) for fault in faults] == [True] * MOST_SUGGESTIONS + [False] * 3
    assert len({fault.pointer for fault in faults}) == MOST_SUGGESTIONS + 3


def test_a_misspelling_is_looked_up_once_for_each_set_of_members() -> None:
    faults_module._near.cache_clear()
    for _ in range(5):
        assert only({"total_volume": 1.0, "strukture": 1}, *KNOWN).nearest == ("structure",)
        assert only({"total_volume": 1.0, "strukture": 1}, "strukture_1").nearest == ("strukture_1",)
    assert faults_module._near.cache_info().misses == 2
    assert faults_module._near.cache_info().hits == 8


def test_a_long_name_is_cut_before_it_is_compared() -> None:
    # 64 characters that are a known name; what follows them is not looked at.
    known = "v" * 64
    fault = only({"total_volume": 1.0, known + "w" * 5000: 1}, known)
    assert list(fault.nearest) == [known]


def test_nothing_that_was_sent_comes_back_but_in_the_pointer() -> None:
    for fault in faults_of(refused(Tank, {"total_volume": "secret", "months": ["secret"]})):
        assert "secret" not in str(fault)
        assert "pydantic" not in fault.detail


def raised(message: str, context: dict[str, Any]) -> Fault:
    """The fault of an error of our own, which carries the id of its message and what the message takes."""
    error = ValidationError.from_exception_data(
        "Tank",
        [{"type": PydanticCustomError("of_ours", message, context), "loc": ("volumes",), "input": 1}],  # type: ignore[arg-type]
    )
    [fault] = faults_of(error)
    return fault


def test_an_error_of_ours_is_placed_and_told_by_its_message() -> None:
    fault = raised("fault-substrate_twice", {"at": 3, "nearest": ["cattle_dung"]})
    assert (fault.pointer, fault.code, list(fault.nearest)) == ("/volumes/3", "of_ours", ["cattle_dung"])
    assert fault.detail == "name each substrate once"
    assert raised("fault-substrate_twice", {}).pointer == "/volumes"


def test_numbers_in_a_message_are_told_to_twelve_digits() -> None:
    assert raised("fault-too_many_substrates", {"most": 0.1 + 0.2}).detail.startswith("at most 0.3 substrates")
    assert raised("fault-too_many_substrates", {"most": 12.0}).detail.startswith("at most 12 substrates")
    assert raised("fault-outside_forecast", {"first": "2027-01-04", "last": "2027-02-03"}).detail.endswith("2027-01-04 to 2027-02-03")
