"""Sizing's gas store: exact where the hours of use are known, and the pressure that a full dome puts on itself."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import SIZING, Json, ask, assumed, base, clock, findings, like, questions, value

from kilisho.farm import Ledger, Shelf
from kilisho.faults import RefusedError
from kilisho.formulas.dome_pressure import dome_gas_pressure
from kilisho.formulas.gas_storage import Interval, steady, storage_needed
from kilisho.questions.sizing.size import size as size_of
from kilisho.questions.sizing.work import work_out

DATA = base().data
WARM = {"digester_temperature": 25}
MEALS = [{"from": "05:30", "to": "07:00"}, {"from": "11:30", "to": "13:00"}, {"from": "18:00", "to": "20:00"}]
COOKS: Json = {"appliance": "double_burner_stove", "use": MEALS}
LAMP: Json = {"appliance": "mantle_lamp", "use": [{"from": "18:30", "to": "21:30"}]}


def size(**changes: object) -> Json:
    return ask("sizing", like(SIZING, climate=WARM, **changes))


def faults(appliance: Json) -> list[tuple[str, str]]:
    with pytest.raises(RefusedError) as refused:
        size(appliances=[appliance])
    return [(fault.pointer, fault.code) for fault in refused.value.faults]


def test_by_hand() -> None:
    """Stove of 0.6 m3/h from half past five, noon and evening, lamp of 0.13 m3/h: what the formula says of these hours."""
    answer = size(appliances=[COOKS, LAMP])
    assert answer["gas_storage_method"] == "hours_of_use"
    assert value(answer, "gas_demand") == pytest.approx(5 * 0.6 + 3 * 0.13)
    uses = [Interval(5.5, 7, 0.6), Interval(11.5, 13, 0.6), Interval(18, 20, 0.6), Interval(18.5, 21.5, 0.13)]
    assert value(answer, "gas_storage_needed") == pytest.approx(storage_needed(steady(value(answer, "biogas_per_day")), uses), abs=1e-4)
    needed = answer["gas_storage_needed"]
    assert needed["low"] < needed["value"] < needed["high"]


def test_a_share_of_a_day_s_gas_is_assumed_only_where_hours_are_missing() -> None:
    """One appliance without hours is enough: nobody knows when it burns."""
    known, half = size(appliances=[COOKS, LAMP]), size(appliances=[COOKS, {"appliance": "mantle_lamp", "hours_per_day": 3}])
    assert ("gas_storage_of_daily_gas", None) not in assumed(known)
    assert ("gas_storage_of_daily_gas", None) in assumed(half)
    assert (half["gas_storage_method"], half["gas_storage_method_name"]) == ("share_of_a_day_s_gas", "share of a day's gas")
    assert value(half, "gas_storage_needed") == pytest.approx(0.6 * value(half, "biogas_per_day"), abs=1e-3)
    assert value(half, "gas_demand") == value(known, "gas_demand")


def test_use_all_day_needs_no_storage_and_use_at_once_a_day() -> None:
    """A refrigerator that burns as fast as the gas comes, and a stove that burns the day's gas in half an hour."""
    always = [{"appliance": "refrigerator_100_litre", "use": [{"from": "00:00", "to": "24:00"}]}]
    assert value(size(appliances=always), "gas_storage_needed") == pytest.approx(0, abs=1e-6)
    at_once = [{"appliance": "double_burner_stove", "count": 40, "use": [{"from": "12:00", "to": "12:30"}]}]
    answer = size(appliances=at_once)
    assert value(answer, "gas_storage_needed") == pytest.approx(value(answer, "biogas_per_day") * 23.5 / 24, rel=1e-3)


@given(st.integers(0, 1439), st.integers(30, 600), st.integers(0, 1439))
def test_the_same_hours_at_another_time_need_the_same_storage(start: int, length: int, later: int) -> None:
    def needed(at: int) -> float:
        use = [{"from": clock(at % 1440), "to": clock((at + length) % 1440)}]
        return value(size(appliances=[{"appliance": "double_burner_stove", "use": use}]), "gas_storage_needed")

    assert needed(start + later) == pytest.approx(needed(start), abs=2e-6)


def test_each_sample_of_the_range_is_that_farm_worked_out() -> None:
    """Gas and rates are taken from the same sample: a farm with more gas and a thirstier stove, not the worst of both."""
    ledger = Ledger(Shelf(DATA))
    asked = questions()["sizing"].read(like(SIZING, climate=WARM, appliances=[{**COOKS, "count": 2}, LAMP]))
    size_of(work_out(asked, ledger))
    gas, found = ledger.sampled["biogas_per_day"], ledger.sampled["gas_storage_needed"]
    stove, lamp = (ledger.figure("appliances", name, "gas_per_hour").samples for name in ("double_burner_stove", "mantle_lamp"))
    assert found.shape == gas.shape
    for i in range(0, len(found), 7):
        meals = [Interval(start, end, 2 * stove[i]) for start, end in ((5.5, 7), (11.5, 13), (18, 20))]
        assert found[i] == pytest.approx(storage_needed(steady(gas[i]), [*meals, Interval(18.5, 21.5, lamp[i])]))
    assert ledger.values["gas_storage_needed"] > 0


def test_stated_hours_must_make_sense() -> None:
    stove: Json = {"appliance": "double_burner_stove"}
    assert faults({**stove, "use": [{"from": "07:00", "to": "07:00"}]}) == [("/appliances/0/use/0", "use_without_length")]
    twice = [{"from": "22:00", "to": "02:00"}, {"from": "01:30", "to": "03:00"}]
    assert faults({**stove, "use": twice}) == [("/appliances/0/use", "use_overlaps")]
    assert faults({**stove, "use": MEALS, "hours_per_day": 3}) == [("/appliances/0/hours_per_day", "stated_twice")]
    assert value(size(appliances=[{**stove, "use": MEALS, "hours_per_day": 5}]), "gas_demand") == pytest.approx(3.0)
    touching = [{"from": "22:00", "to": "00:00"}, {"from": "00:00", "to": "02:00"}]
    assert value(size(appliances=[{**stove, "use": touching}]), "gas_demand") == pytest.approx(4 * 0.6)


@pytest.mark.parametrize("text", ["7:00", "24:01", "12:60", "noon", "12:00\n", "１２:00", 7, None, ""])
def test_what_is_no_time_of_day_is_refused(text: object) -> None:
    assert faults({"appliance": "mantle_lamp", "use": [{"from": text, "to": "13:00"}]}) == [("/appliances/0/use/0/from", "clock_expected")]


def test_a_slip_in_a_member_s_name_is_told_by_the_name_that_callers_write() -> None:
    with pytest.raises(RefusedError) as refused:
        size(appliances=[{"appliance": "mantle_lamp", "use": [{"form": "18:00", "to": "20:00"}]}])
    faults = {fault.pointer: fault for fault in refused.value.faults}
    assert faults["/appliances/0/use/0/from"].code == "missing"
    assert "from" in faults["/appliances/0/use/0/form"].nearest


def test_a_day_begins_at_midnight_but_may_end_at_it() -> None:
    assert faults({"appliance": "mantle_lamp", "use": [{"from": "24:00", "to": "01:00"}]}) == [
        ("/appliances/0/use/0/from", "clock_expected")
    ]
    assert value(size(appliances=[{"appliance": "mantle_lamp", "use": [{"from": "20:00", "to": "24:00"}]}]), "gas_demand") == pytest.approx(
        0.52
    )


# ---- pressure ------------------------------------------------------------------------------------------------------------------


def cows(count: int, **changes: object) -> Json:
    return size(herd=[{"animal": "dairy_cow", "count": count, "housing": "stall"}], **changes)


def test_the_pressure_rises_from_nothing_to_that_of_the_full_dome() -> None:
    pressure = size()["gas_pressure"]
    curve = [(value(step, "stored_gas"), value(step, "gauge_pressure"), value(step, "water_column")) for step in pressure["curve"]]
    assert curve == sorted(curve)
    assert curve[0] == (0, 0, 0)
    assert curve[-1][0] == value(size(), "gas_storage_volume")
    assert curve[-1][1] == value(pressure, "when_full")
    assert all(column == pytest.approx(kilopascals * 10.19716, abs=0.06) for _, kilopascals, column in curve)
    assert "licensed engineer" in pressure["statement"]


def test_the_pressure_is_that_of_the_dimensions_told() -> None:
    answer = size()
    told = answer["dimensions"]
    radius, cap = value(told, "inner_height"), value(told, "gas_space_height")
    tank = 3.14159265 * value(told, "compensation_tank_diameter") ** 2 / 4
    density = (value(answer, "feed_per_day") + value(answer, "water_per_day")) / value(answer, "slurry_per_day") * 1000
    expected = dome_gas_pressure(value(answer, "gas_storage_volume"), radius, cap, tank, density) / 1000
    assert value(answer, "gas_pressure.when_full") == pytest.approx(expected, rel=1e-3)
    assert value(told, "reproduced.gas_storage_volume") == pytest.approx(tank * value(told, "compensation_tank_depth"), rel=1e-3)


def test_other_shapes_have_no_such_pressure() -> None:
    for structure in set(DATA.structures) - {"fixed_dome"}:
        answer = size(structure=structure)
        assert "gas_pressure" not in answer
        assert "full_gas_pressure" not in findings(answer)


def test_a_larger_dome_gets_a_shallower_tank_before_its_pressure_is_faulted() -> None:
    ratio = DATA.structures["fixed_dome"].geometry.ratios["tank_depth_to_dome_radius"]
    shares = {}
    for count in (2, 8, 12, 60):
        answer = cows(count)
        shares[count] = value(answer, "dimensions.compensation_tank_depth") / value(answer, "dimensions.inner_height")
        assert ratio.least - 1e-3 <= shares[count] <= ratio.typical + 1e-3
        failed = findings(answer).get("full_gas_pressure") == "fail"
        assert failed == (value(answer, "gas_pressure.when_full") > value(answer, "gas_pressure.limit") * (1 + 1e-6))
    assert shares[2] == pytest.approx(ratio.typical, abs=1e-3)
    assert shares[60] == pytest.approx(ratio.least, abs=1e-3)
    assert findings(cows(60))["full_gas_pressure"] == "fail"
    assert "full_gas_pressure" not in findings(cows(2)), "a small dome passes"


def test_the_limit_of_a_full_dome_is_kept_to_the_last_where_the_tank_allows_it() -> None:
    answer = cows(10)
    assert value(answer, "total_volume") > 15
    assert value(answer, "gas_pressure.when_full") == pytest.approx(value(answer, "gas_pressure.limit"), rel=1e-3)
    assert findings(answer).get("full_gas_pressure") != "fail"


def test_a_stated_pressure_margin_is_checked_with_the_plant() -> None:
    body: Json = {"structure": {"kind": "fixed_dome"}, "gas": {"full_gas_pressure_margin": 1.2}}
    assert findings(ask("safety-check", body))["full_gas_pressure"] == "fail"
    assert findings(ask("safety-check", {"structure": {"kind": "fixed_dome"}}))["full_gas_pressure"] == "unknown"


def test_a_drop_of_water_is_no_water() -> None:
    """A subnormal number of litres divided the other sides to no number at all."""
    answer = ask("sizing", {"gas_demand": 2, "water_available": 2.2e-313})
    assert answer["limited_by"] == "water"
    assert value(answer, "from_demand.feed_per_day") > 0


def test_a_breath_of_gas_is_no_gas() -> None:
    """A subnormal yield asked for endless feed."""
    with pytest.raises(RefusedError) as refused:
        ask("sizing", {"gas_demand": 900, "feed": [{"substrate": "maize_stover", "biogas_yield": 2.2e-309}]})
    assert [fault.code for fault in refused.value.faults] == ["feed_gives_no_gas"]
    answer = ask("sizing", {"gas_demand": 900, "feed": [{"substrate": "maize_stover", "biogas_yield": 2.2e-309, "mass": 5}]})
    assert answer["limited_by"] == "supply"


@pytest.mark.parametrize("appliances", [[COOKS, LAMP], [{"appliance": "mantle_lamp"}]])
def test_the_storage_is_derived_whichever_way_it_was_found(appliances: list[Json]) -> None:
    answer = ask("sizing", like(SIZING, climate=WARM, appliances=appliances), explain=True)
    [step] = [one for one in answer["derivation"] if one["quantity"] == "gas_storage_needed"]
    assert step["value"] == pytest.approx(value(answer, "gas_storage_needed"), abs=1e-6)
    assert step["inputs"]["biogas_per_day"] == pytest.approx(value(answer, "biogas_per_day"), abs=1e-6)
    assert set(step["inputs"]) == set(step["input_units"])
