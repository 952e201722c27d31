"""Sizing: supply, demand and water each have their say, the digester is buildable, and it runs as it was designed."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import SIZING, Json, answer_or_refusal, ask, base, findings, ids, like, sizings, value

from kilisho.faults import RefusedError

DATA = base().data
WARM = {"digester_temperature": 25}


def size(**changes: Any) -> Json:
    return ask("sizing", like(SIZING, **changes))


def test_the_trade_s_size_says_why_it_differs() -> None:
    assert size(climate=WARM, hydraulic_retention_time=41)["rule_of_thumb"]["why"] == (
        "The trade sizes by dung per plant volume whatever the temperature; this size keeps 41 days of retention in the coldest month at "
        "25 °C. A smaller plant costs less and gives less gas from the same dung."
    )


def test_what_is_assumed_for_want_of_a_statement_says_so() -> None:
    answer = ask("sizing", {"herd": [{"animal": "dairy_cow", "count": 4}]})
    notes = {one["quantity"]: one["note"] for one in answer["assumptions"] if "note" in one}
    assert notes == {
        "structure": "The kind of digester was not stated.",
        "housing": "Housing of dairy_cow was not stated.",
        "altitude": "Nobody said how high the place lies; gas takes more room the higher it is.",
    }
    unfed = ask("sizing", {"gas_demand": 1})
    assert "Neither herd nor feed was stated." in {one.get("note") for one in unfed["assumptions"]}


def test_by_hand() -> None:
    """120 kg of dung and 120 L of water stay 57.5 d: 13.8 m3 of slurry, two thirds of 20.7 m3, so the next size above that is taken."""
    answer = size(climate=WARM)
    total = min(offered for offered in DATA.structures["fixed_dome"].buildable_sizes.total_volumes if offered >= 20.7)
    assert answer["limited_by"] == "supply"
    assert value(answer, "design_retention_time") == pytest.approx(57.5)
    assert value(answer, "needed_total_volume") == pytest.approx(0.24 * 57.5 * 1.5, abs=1e-3)
    assert value(answer, "total_volume") == total
    assert value(answer, "working_volume") == pytest.approx(total * 2 / 3, abs=1e-3)
    assert value(answer, "gas_storage_volume") == pytest.approx(total / 5)
    assert value(answer, "hydraulic_retention_time") == pytest.approx(total / 1.5 / 0.24, abs=1e-2)
    assert value(answer, "organic_loading_rate") == pytest.approx(120 * 0.12 / (total / 1.5), abs=1e-3)


@given(sizings())
def test_the_size_is_buildable_and_large_enough_or_the_largest(body: Json) -> None:
    try:
        answer = ask("sizing", body)
    except RefusedError:
        return
    structure = DATA.structures[body.get("structure", "fixed_dome")]
    offered = sorted(structure.buildable_sizes.total_volumes)
    total, needed = value(answer, "total_volume"), value(answer, "needed_total_volume")
    assert total in [pytest.approx(size) for size in offered]
    if answer["limited_by"] == "largest_buildable_size":
        assert total == pytest.approx(offered[-1])
        assert needed > total
    else:
        assert total >= needed - 1e-5
        assert all(smaller < needed + 1e-5 for smaller in offered if smaller < total - 1e-9)
        assert value(answer, "hydraulic_retention_time") >= value(answer, "design_retention_time") * (1 - 1e-3) - 0.01


@given(sizings())
def test_what_limits_is_the_smallest_side(body: Json) -> None:
    try:
        answer = ask("sizing", body)
    except RefusedError:
        return
    sides = {name: value(answer, f"from_{name}.feed_per_day") for name in ("supply", "demand", "water") if answer.get(f"from_{name}")}
    assert sides
    if body.get("water_available") in (0, {"value": 0}) or answer["limited_by"] not in sides:
        assert answer["limited_by"] in ("water", "largest_buildable_size")
    else:
        assert sides[answer["limited_by"]] == pytest.approx(min(sides.values()), rel=1e-4, abs=1e-3)
        assert value(answer, "feed_per_day") == pytest.approx(min(sides.values()), rel=1e-4, abs=1e-3)


@given(st.integers(1, 60), ids("structures"), st.floats(5, 35), st.floats(0, 4))
def test_the_sized_digester_runs_as_it_was_sized(count: int, structure: str, temperature: float, water: float) -> None:
    shared: Json = {
        "herd": [{"animal": "dairy_cow", "count": count}],
        "dilution": {"water_to_feed_by_volume": water},
        "climate": {"digester_temperature": temperature},
    }
    sized = ask("sizing", {**shared, "structure": structure})
    digester = {"structure": structure, "total_volume": value(sized, "total_volume")}
    fed = [{"substrate": "cattle_dung", "mass": value(sized, "feed_per_day")}]
    run = ask("maintenance-feed", {**like(shared, herd=None), "digester": digester, "feed": fed})
    for name in ("hydraulic_retention_time", "organic_loading_rate", "biogas_per_day", "slurry_per_day", "slurry_total_solids"):
        assert value(run, name) == pytest.approx(value(sized, name), rel=1e-3, abs=2e-3), name


@given(st.floats(0.05, 8), st.sampled_from(["cattle_dung", "pig_manure", "kitchen_waste"]))
def test_the_feed_for_a_demand_gives_that_gas(demand: float, substrate: str) -> None:
    answer = ask("sizing", {"gas_demand": demand, "feed": [{"substrate": substrate}], "climate": WARM})
    if answer["limited_by"] == "demand":
        # The buildable size is a little larger than needed, so there is a little more gas.
        assert value(answer, "from_demand.biogas_per_day") == pytest.approx(demand, abs=1e-3)
        assert value(answer, "biogas_per_day") >= demand * (1 - 1e-3) - 1e-3
        assert value(answer, "demand_met") >= 99.8


def test_demand_below_supply_limits_and_above_it_does_not() -> None:
    small, large = size(gas_demand=1, climate=WARM), size(gas_demand=50, climate=WARM)
    assert (small["limited_by"], large["limited_by"]) == ("demand", "supply")
    assert value(small, "feed_per_day") < 120
    assert value(large, "feed_per_day") == 120
    assert value(large, "demand_met") < 100


def feed_against_demand(answer: Json) -> tuple[str | None, float | None]:
    """The verdict of the check and its figure, where it says something."""
    found = next((one for one in answer["findings"] if one["check"] == "feed_covers_demand"), {})
    return found.get("verdict"), found.get("value", {}).get("value")


def test_a_feed_that_gives_too_little_gas_is_found_for_what_it_is() -> None:
    """Three cows for eight people, with no feed stated: the feed falls short, and nothing that was said of it is wrong.

    The figure is that of the answer itself: gas of the supply over gas of the demand.
    """
    answer = ask("sizing", {"herd": [{"animal": "dairy_cow", "count": 3}], "people_cooked_for": 8})
    expected = value(answer, "from_supply.biogas_per_day") / value(answer, "from_demand.biogas_per_day")
    assert feed_against_demand(answer) == ("fail", pytest.approx(expected, rel=1e-3))
    assert "herd_covers_feed" not in findings(answer)


@pytest.mark.parametrize(
    ("changes", "verdict"),
    [
        ({"gas_demand": 50}, "fail"),
        ({"gas_demand": 0.5}, None),
        ({}, "unknown"),  # nobody said what is wanted
        ({"herd": [], "feed": [{"substrate": "cattle_dung", "mass": 40}], "gas_demand": 50}, "fail"),
        ({"herd": [], "feed": [{"substrate": "cattle_dung"}], "gas_demand": 50}, "unknown"),  # nobody said what there is
        ({"feed": [{"substrate": "maize_stover"}], "gas_demand": 1}, "fail"),  # the herd gives nothing of it
    ],
)
def test_feed_is_held_against_demand_where_both_are_stated(changes: Json, verdict: str | None) -> None:
    assert feed_against_demand(size(**changes))[0] == verdict


def test_little_water_limits_and_is_found_wanting() -> None:
    answer = size(water_available=60)
    assert answer["limited_by"] == "water"
    assert value(answer, "water_per_day") == pytest.approx(60, abs=1e-2)
    assert value(answer, "feed_per_day") == pytest.approx(60, abs=1e-2)
    assert findings(answer).get("water_enough") == "fail", "half of what the farm's own dung asks for"


def test_no_water_at_all_is_answered_or_refused() -> None:
    for body in ({"gas_demand": 2, "water_available": 0}, {**SIZING, "water_available": 0}):
        answer = answer_or_refusal("sizing", body)
        assert answer is None or value(answer, "total_volume") > 0


def test_no_gas_meets_no_demand() -> None:
    """A feed measured to give no gas cannot be sized for a demand; a size of some other origin would be made up."""
    with pytest.raises(RefusedError):
        ask("sizing", {"gas_demand": 2, "feed": [{"substrate": "cattle_dung", "biogas_yield": 0}]})


def test_demand_by_appliances_and_by_people() -> None:
    stove = DATA.appliances["double_burner_stove"]
    lamp = DATA.appliances["mantle_lamp"]
    uses = [{"appliance": "double_burner_stove", "count": 2, "hours_per_day": 3}, {"appliance": "mantle_lamp"}]
    expected = 2 * 3 * stove.gas_per_hour.typical + lamp.gas_per_hour.typical * lamp.usual_hours_per_day.typical
    assert value(size(appliances=uses), "gas_demand") == pytest.approx(expected, abs=1e-3)
    per_person = DATA.practice.figures["gas_per_person"].typical
    assert value(size(people_cooked_for=6), "gas_demand") == pytest.approx(6 * per_person, abs=1e-3)


def test_the_coldest_month_decides() -> None:
    steady, swinging = (
        size(climate={"mean_air_temperature": 22, "yearly_swing": 0}),
        size(climate={"mean_air_temperature": 22, "yearly_swing": 15}),
    )
    assert value(swinging, "needed_total_volume") > value(steady, "needed_total_volume")
    assert value(swinging, "digester_temperature.coldest_month") < value(steady, "digester_temperature.coldest_month")


def test_a_stated_retention_is_kept() -> None:
    answer = size(hydraulic_retention_time={"value": 6, "unit": "wk"})
    assert value(answer, "design_retention_time") == 42
    assert value(answer, "needed_total_volume") == pytest.approx(0.24 * 42 * 1.5, abs=1e-3)


def test_a_substrate_that_needs_longer_gets_longer() -> None:
    factor = DATA.substrates["maize_stover"].retention_factor.typical
    dung, stover = (size(herd=[], feed=[{"substrate": name, "mass": 20}], climate=WARM) for name in ("cattle_dung", "maize_stover"))
    assert value(stover, "design_retention_time") == pytest.approx(factor * value(dung, "design_retention_time"), rel=1e-4)


@pytest.mark.parametrize("structure", sorted(DATA.structures))
@given(count=st.integers(1, 40))
def test_the_dimensions_give_the_volumes_back(structure: str, count: int) -> None:
    answer = size(structure=structure, herd=[{"animal": "dairy_cow", "count": count}], climate=WARM)
    dimensions = answer["dimensions"]
    assert dimensions["shape"] == DATA.structures[structure].geometry.shape
    assert value(dimensions, "reproduced.total_volume") == pytest.approx(value(answer, "total_volume"), rel=1e-3)
    assert value(dimensions, "reproduced.working_volume") == pytest.approx(value(answer, "working_volume"), rel=1e-3)
    assert value(dimensions, "reproduced.gas_storage_volume") == pytest.approx(value(answer, "gas_storage_volume"), rel=1e-3)
    lengths = [one["value"] for name, one in dimensions.items() if isinstance(one, dict) and one.get("unit") == "m"]
    assert lengths
    assert min(lengths) > 0
    assert "licensed engineer" in dimensions["statement"]


def test_storage_is_asked_for_by_the_days_gas() -> None:
    answer = size(climate=WARM)
    share = DATA.practice.figures["gas_storage_of_daily_gas"].typical
    assert value(answer, "gas_storage_needed") == pytest.approx(share * value(answer, "biogas_per_day"), abs=2e-3)


# The pressure of the planned dome


@pytest.mark.parametrize("total", [4, 9, 20, 50, 100])
def test_a_planned_dome_is_held_to_the_tested_pressure_as_one_that_is_there(total: float) -> None:
    """A gauge that read the planned pressure would be warned of by the safety check from 8 kPa: both must say the same."""
    answer = size(structure="fixed_dome", gas_demand=total / 10, herd=None, feed=[{"substrate": "cattle_dung"}])
    full = answer["gas_pressure"]["when_full"]["value"]
    checked = ask("safety-check", {"structure": {"kind": "fixed_dome"}, "gas": {"pressure": {"value": full, "unit": "kPa"}}})
    end = "fail" if full > 8 else "pass"
    assert findings(checked)["dome_pressure_tested"] == end
    assert findings(answer).get("dome_pressure_tested", "pass") == end


def test_domes_are_planned_on_both_sides_of_the_tested_pressure() -> None:
    answers = [size(gas_demand=demand, herd=None, feed=[{"substrate": "cattle_dung"}]) for demand in (0.3, 9)]
    assert {findings(answer).get("dome_pressure_tested") for answer in answers} == {None, "fail"}


def test_a_pressure_that_is_stated_neither_denies_nor_hides_the_planned_one() -> None:
    large = {"gas_demand": 9, "herd": None, "feed": [{"substrate": "cattle_dung"}]}
    assert findings(size(**large, facts={"gas_pressure": {"value": 4, "unit": "kPa"}}))["dome_pressure_tested"] == "fail"


def test_a_bag_has_no_dome_to_test() -> None:
    assert "dome_pressure_tested" not in findings(size(structure="bag"))
