"""Faults that were found once: each stands here with the farm that showed it."""

from __future__ import annotations

import pytest
from tests.rules.conftest import Json, ask, like, questions, value

from kilisho.faults import RefusedError
from kilisho.questions.asking import parse

HERD: Json = {"herd": [{"animal": "dairy_cow", "count": 8, "housing": "stall"}], "climate": {"digester_temperature": 25}}
CHARGE: Json = {"digester": {"total_volume": 9}, "feed": [{"substrate": "cattle_dung"}]}


def test_the_largest_buildable_digester_is_fed_once_not_scaled_twice() -> None:
    """The feed that meets a demand was scaled by the demand a second time when no digester was large enough."""
    answer = ask("sizing", {"gas_demand": 900, "climate": {"digester_temperature": 25}})
    assert answer["limited_by"] == "largest_buildable_size"
    assert value(answer, "hydraulic_retention_time") == pytest.approx(value(answer, "design_retention_time"), rel=1e-4)


def test_little_water_is_found_wanting_although_the_size_is_cut_to_it() -> None:
    answer = ask("sizing", {**HERD, "water_available": 60})
    assert answer["limited_by"] == "water"
    [finding] = [one for one in answer["findings"] if one["check"] == "water_enough"]
    assert (finding["verdict"], finding["value"]["value"]) == ("fail", 0.5)


def test_no_water_at_all_is_a_finding_not_a_fault() -> None:
    answer = ask("sizing", {**HERD, "water_available": 0})
    assert {one["check"]: one["verdict"] for one in answer["findings"]}["water_half"] == "fail"


def test_masses_that_overflow_the_digester_are_refused() -> None:
    with pytest.raises(RefusedError) as refused:
        ask("first-charge", like(CHARGE, feed=[{"substrate": "cattle_dung", "mass": 100_000}]))
    assert [fault.code for fault in refused.value.faults] == ["volume_impossible"]


def test_a_barrow_is_not_judged_as_a_load_that_somebody_lifts() -> None:
    barrow = {"name": "barrow", "volume": {"value": 65, "unit": "L"}}
    pushed, lifted = (ask("first-charge", like(CHARGE, containers=[{**barrow, **how}])) for how in ({}, {"carried_by": "hand"}))
    verdicts = [{one["check"]: one["verdict"] for one in answer["findings"]}["load_most"] for answer in (pushed, lifted)]
    assert verdicts == ["unknown", "fail"]


def test_pig_manure_without_a_starter_promises_no_quick_flame() -> None:
    alone, helped = (
        ask("first-charge", like(CHARGE, feed=[{"substrate": "pig_manure"}], starter_slurry=kilograms)) for kilograms in (0, 1300)
    )
    assert "days_to_first_burnable_gas" not in alone["start_up"]
    assert value(alone, "start_up.in_practice") > value(helped, "start_up.in_practice")
    assert value(helped, "start_up.days_to_first_burnable_gas") > 1


@pytest.mark.parametrize("count", [10**400, 1e300, -1, 0.5, True, "8", None])
def test_heads_that_are_no_heads_are_refused(count: object) -> None:
    document = {**CHARGE, "herd": [{"animal": "dairy_cow", "count": count}]}
    with pytest.raises(RefusedError) as refused:
        questions()["first-charge"].read(document)
    assert refused.value.faults[0].pointer == "/herd/0/count"


def test_a_week_date_is_not_a_date() -> None:
    with pytest.raises(RefusedError) as refused:
        ask("first-charge", like(CHARGE, digester_ready_on="2027-W01-1"))
    assert [fault.pointer for fault in refused.value.faults] == ["/digester_ready_on"]


def test_a_purchase_that_misses_by_a_rounding_error_is_complete() -> None:
    body = like(CHARGE, purchases=[{"name": f"farm {i}", "available": 1000 + 1 / (i + 3)} for i in range(4)])
    answer = ask("first-charge", body)
    assert value(answer, "stockpile.shortfall_after_purchases") == 0
    assert "Fill in one go" in {one["event"]: one["text"] for one in answer["schedule"]}["fill"]


def test_nothing_unknown_is_told_as_null() -> None:
    def nulls(part: object, path: str = "") -> list[str]:
        if part is None:
            return [path]
        inner = part.items() if isinstance(part, dict) else enumerate(part) if isinstance(part, list) else ()
        return [found for key, value in inner for found in nulls(value, f"{path}/{key}")]

    assert nulls(ask("first-charge", CHARGE)) == []
    assert nulls(ask("maintenance-feed", {"digester": {"total_volume": 9}})) == []
    assert nulls(ask("sizing", {"people_cooked_for": 5})) == []


def test_a_body_that_is_a_list_is_refused_at_its_root() -> None:
    with pytest.raises(RefusedError) as refused:
        questions()["sizing"].read(parse(b"[]"))
    assert [fault.pointer for fault in refused.value.faults] == [""]
