"""Batch digesters in turn: the charge and its gas, the retention, the number of digesters, storage, dates, and requests that cannot be."""

from __future__ import annotations

import datetime as dt
import json
import math
from functools import cache
from itertools import pairwise
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules.conftest import Json, answer_or_refusal, ask, assert_sound, assumed, base, findings, like, questions, value

from kilisho.farm import Ledger, Shelf
from kilisho.faults import RefusedError
from kilisho.formulas.gas import normal_factor
from kilisho.formulas.gas_storage import run_store
from kilisho.formulas.rotation import YEAR, Timetable, supply_of
from kilisho.messages import LANGUAGES
from kilisho.process import Conditions, History, feedstock, simulate
from kilisho.questions.batch_rotation.limits import LONGEST_RETENTION, MOST_DIGESTERS
from kilisho.questions.batch_rotation.request import EXAMPLE, BatchRotationRequest
from kilisho.questions.batch_rotation.work import Work, work_out
from kilisho.questions.climate import warmth_of

NAME = "batch-rotation"
TANK: Json = {
    "digester": {"structure": "batch_tank", "total_volume": 9},
    "feed": [{"substrate": "cattle_dung"}],
    "dilution": {"water_to_feed_by_volume": 1},
    "gas_demand": 1.5,
    "climate": {"digester_temperature": 26},
    "starter_share": 0.2,
    "first_charge_on": "2027-02-01",
}
SEASONS: Json = {"mean_air_temperature": 20, "yearly_swing": 8, "warmest_month": 1}
FEW = settings(max_examples=12)


@cache
def _asked(body: str) -> Json:
    return ask(NAME, json.loads(body))


def asked(**changes: Any) -> Json:
    return _asked(json.dumps(like(TANK, **changes)))


def needed(answer: Json) -> float:
    """Digesters needed; infinity where none serve."""
    return value(answer, "digesters_needed") if "digesters_needed" in answer else math.inf


@cache
def _worked(body: str) -> Work:
    return work_out(BatchRotationRequest.model_validate_json(body, context=questions()[NAME].ids), Ledger(Shelf(base().data)))


def worked(**changes: Any) -> Work:
    # The request model outside an opened question has no facts; the work itself does not read them.
    return _worked(json.dumps(like(TANK, **changes)))


def refused(**changes: Any) -> dict[str, str]:
    """Faults by pointer."""
    with pytest.raises(RefusedError) as caught:
        ask(NAME, like(TANK, **changes))
    return {fault.pointer: fault.code for fault in caught.value.faults}


# The charge


def test_a_charge_fills_the_working_volume_beside_the_starter() -> None:
    """9 m3 at 0.85 are 7.65 m3 of slurry; a fifth of starter leaves 6.12 m3: 3.06 m3 of dung and as much water."""
    charge = asked()["charge"]
    assert value(charge, "slurry_volume") == pytest.approx(7.65)
    assert value(charge, "starter_volume") == pytest.approx(1.53)
    assert value(charge, "substrate_mass") == pytest.approx(3060)
    assert value(charge, "water_volume") == pytest.approx(3.06)
    assert value(charge, "slurry_total_solids") == pytest.approx(7.5)


def test_stated_masses_are_charged_as_they_are() -> None:
    charge = asked(feed=[{"substrate": "cattle_dung", "mass": 1000}, {"substrate": "buffalo_dung", "mass": 500}])["charge"]
    assert value(charge, "substrate_mass") == 1500
    assert [value(one, "mass") for one in charge["substrates"]] == [1000, 500]
    assert value(charge, "slurry_volume") < 7.65


def test_feed_that_starts_unaided_needs_no_starter_and_other_feed_gets_the_rulebooks() -> None:
    dung = asked(starter_share=None)
    assert value(dung["charge"], "starter_volume") == 0
    assert ("starter_share", None) not in assumed(dung)
    other = asked(starter_share=None, feed=[{"substrate": "pig_manure"}])
    assert ("starter_share", None) in assumed(other)
    assert value(other["charge"], "starter_volume") == pytest.approx(0.2 * 7.65)
    assert value(other["charge"], "first_starter_volume") == value(other["charge"], "starter_volume")


def test_slurry_brought_for_the_first_charge_changes_only_the_first_charge() -> None:
    usual, brought = asked(starter_share=0), asked(starter_share=0, starter_slurry=1500)
    assert value(brought["charge"], "first_starter_volume") == pytest.approx(1.5)
    assert value(brought, "first_burnable_gas_day") < value(usual, "first_burnable_gas_day")
    for name in ("gas_curve", "options", "retention", "digesters_needed", "later_burnable_gas_day"):
        assert brought[name] == usual[name]


def test_the_first_batch_structure_is_assumed_and_said_so() -> None:
    answer = asked(digester={"total_volume": 9})
    chosen = next(one for one in answer["assumptions"] if one["quantity"] == "structure")
    assert chosen["choice"] == next(name for name, entry in base().data.structures.items() if entry.operation == "batch")
    assert answer["charge"] == asked()["charge"]


# The gas of one charge


def test_the_curve_begins_with_gas_that_is_vented() -> None:
    rows = asked()["gas_curve"]
    burnable = value(asked(), "later_burnable_gas_day")
    for row in rows:
        whole, own = value(row, "gas"), value(row, "usable_gas")
        share = min(1.0, max(0.0, row["day"] + 1 - burnable))
        assert own == pytest.approx(whole * share, abs=2e-4)
    assert value(rows[0], "usable_gas") == 0 < value(rows[0], "gas")


def test_the_curve_adds_up() -> None:
    answer, total = asked(), 0.0
    for day, row in enumerate(answer["gas_curve"]):
        total += value(row, "gas")
        assert row["day"] == day
        assert value(row, "gas_so_far") == pytest.approx(total, abs=1e-4)
        assert row["date"] == (dt.date(2027, 2, 1) + dt.timedelta(days=day)).isoformat()
    kept = answer["gas_curve"][: int(value(answer, "retention"))]
    assert value(answer, "gas_of_charge") == pytest.approx(sum(value(row, "gas") for row in kept), abs=1e-3)
    assert value(answer, "vented_of_charge") == pytest.approx(sum(value(r, "gas") - value(r, "usable_gas") for r in kept), abs=1e-3)


@given(
    substrate=st.sampled_from(["cattle_dung", "pig_manure", "goat_droppings", "kitchen_waste", "maize_stover"]),
    temperature=st.floats(12, 40),
    starter=st.floats(0, 0.6),
)
@FEW
def test_a_charge_never_gives_more_than_its_potential(substrate: str, temperature: float, starter: float) -> None:
    work = worked(feed=[{"substrate": substrate}], climate={"digester_temperature": temperature}, starter_share=starter)
    total = work.curves.told.gas.sum(axis=0)
    # Working slurry brings its own dissolved acids, 0.1 kg/m3 and at most 0.5, which are gas too.
    brought = 0.5 * work.charge.starter.value
    assert (total <= work.curves.potential + brought).all()
    assert (work.curves.told.usable <= work.curves.told.gas + 1e-12).all()


def test_the_potential_is_that_of_the_graph() -> None:
    """The handbook's yield at 25 Cel and 60 d over the share that this state releases, times the volatile solids."""
    work = worked()
    one = work.charge.fed[0]
    solids = one.mass * one.values["total_solids"] * one.values["volatile_solids_share"]
    rate = one.values["degradation_rate"] * 1.106**5
    ultimate = one.values["biogas_yield"] * (1 + 1 / (rate * 60))
    assert work.curves.potential[0] == pytest.approx(solids * ultimate, rel=1e-6)


def test_a_measured_potential_is_taken() -> None:
    low, high = (value(asked(feed=[{"substrate": "cattle_dung", "methane_potential": b}])["charge"], "gas_potential") for b in (0.2, 0.3))
    assert high / low == pytest.approx(1.5, rel=1e-5)


# Retention


def test_the_retention_of_most_gas_is_where_the_days_gas_falls_to_the_mean() -> None:
    work = worked(gas_demand=None)
    days = int(work.yard.most_gas[0])
    usable = work.curves.told.usable[:, 0]
    mean = usable[:days].sum() / (days + work.yard.turn_round)
    assert usable[days - 1] >= mean >= usable[days]
    assert value(asked(gas_demand=None), "retention") == days
    assert asked(gas_demand=None)["chosen_for"] == "gas_per_day"


def test_with_a_demand_the_charge_stays_longer_and_the_demand_is_still_met() -> None:
    answer = asked()
    shortest, chosen, longest = (value(answer, n) for n in ("retention_for_gas_per_day", "retention", "longest_retention"))
    assert shortest < chosen < longest
    assert answer["chosen_for"] == "gas_per_feed"
    work = worked()
    count = work.needed.digesters if work.needed else 0
    assert work.yard.keeps_up(count, int(longest))[0]
    assert not any(work.yard.keeps_up(count, days)[0] for days in range(int(longest) + 1, LONGEST_RETENTION + 1))


def test_the_chosen_retention_is_nearly_as_sure_as_the_surest() -> None:
    work = worked()
    assert work.needed is not None
    count = work.needed.digesters
    sure = [work.yard.keeps_up(count, days, slice(None))[1:].mean() for days in (15, 20, 30, 40, work.needed.retention)]
    assert sure[-1] >= max(sure) - 0.05
    assert work.yard.keeps_up(count, work.needed.retention + 1, slice(None))[1:].mean() < max(sure) - 0.05


def test_recharging_early_gains_gas_per_day_and_loses_gas_per_feed() -> None:
    rows = asked()["other_retentions"]
    assert len(rows) == 5
    for early, late in pairwise(rows):
        assert value(early, "share_of_potential") < value(late, "share_of_potential")
        assert value(early, "gas_per_feed") < value(late, "gas_per_feed")
        assert value(early, "feed_per_year") > value(late, "feed_per_year")
    for row in rows:
        assert value(row, "share_of_potential") + value(row, "share_lost") == pytest.approx(100, abs=2e-4)
        cycle = value(row, "retention") + value(asked(), "turn_round")
        assert value(row, "gas_per_day") == pytest.approx(value(row, "gas_per_feed") * 3.06 / cycle, rel=1e-3)
    chosen = next(row for row in rows if row["retention"] == asked()["retention"])
    assert value(chosen, "against_chosen_per_feed") == 0


def test_a_stated_retention_is_kept_everywhere() -> None:
    answer = asked(retention=45)
    assert (value(answer, "retention"), answer["chosen_for"]) == (45, "stated")
    assert {value(option, "retention") for option in answer["options"]} == {45}
    assert {option["chosen_for"] for option in answer["options"]} == {"stated"}


@given(first=st.integers(0, 20), more=st.integers(1, 30))
@FEW
def test_a_longer_turn_round_never_gives_more_gas(first: int, more: int) -> None:
    short, long = (worked(gas_demand=None, turn_round=days).yard for days in (first, first + more))
    assert (long.cycle_gas <= short.cycle_gas + 1e-12).all()
    assert long.most_gas[0] >= short.most_gas[0]


def test_the_turn_round_is_whole_days_and_the_rulebooks_when_not_stated() -> None:
    assert value(asked(turn_round=2.2), "turn_round") == 3
    assert ("turn_round", None) in assumed(asked())
    assert ("turn_round", None) not in assumed(asked(turn_round=3))


# How many


def test_the_number_needed_meets_the_demand_and_one_fewer_does_not_at_any_retention() -> None:
    work = worked(gas_demand=4.0)
    assert work.needed is not None
    count = work.needed.digesters
    assert count >= 2
    assert work.yard.keeps_up(count, work.needed.retention)[0]
    assert not any(work.yard.keeps_up(count - 1, days)[0] for days in range(5, LONGEST_RETENTION + 1))


@pytest.mark.parametrize("changes", [{}, {"gas_demand": 4.0}, {"climate": SEASONS}, {"turn_round": 20, "starter_share": 0.0}])
def test_a_store_run_day_by_day_says_the_same(changes: Json) -> None:
    """The chosen rotation's supply of two years, through a store of what it needs and of a little less."""
    work = worked(**changes)
    assert work.chosen is not None
    plan, demand = work.chosen.plan, work.yard.demand
    timetable = Timetable(plan.digesters, plan.retention, work.yard.turn_round)
    days = np.arange(YEAR, 3 * YEAR)
    supply = supply_of(work.yard.usable, timetable, days, work.curves.day_of_year)[:, 0]
    storage = float(work.chosen.storage[0])
    enough = run_store(supply, np.full_like(supply, demand), storage, storage)
    assert enough.unmet.max() < 1e-9
    if storage > 0:
        short = run_store(supply, np.full_like(supply, demand), 0.98 * storage, 0.98 * storage)
        assert short.unmet.sum() > 0
    assert storage <= plan.digesters * work.yard.storage[0] + 1e-9


@given(first=st.floats(0.1, 12), more=st.floats(1.05, 4))
@FEW
def test_more_demand_never_needs_fewer_digesters(first: float, more: float) -> None:
    assert needed(asked(gas_demand=first * more)) >= needed(asked(gas_demand=first))


@given(temperatures=st.lists(st.integers(14, 32), min_size=2, max_size=2, unique=True), demand=st.sampled_from([0.8, 1.5, 3.0]))
@FEW
def test_colder_never_needs_fewer_digesters(temperatures: list[int], demand: float) -> None:
    cold, warm = (asked(climate={"digester_temperature": t}, gas_demand=demand) for t in sorted(temperatures))
    assert needed(cold) >= needed(warm)


@given(times=st.floats(0.2, 8))
@FEW
def test_so_many_times_the_volume_and_the_demand_need_the_same_number(times: float) -> None:
    usual = asked()
    scaled = asked(digester={"structure": "batch_tank", "total_volume": 9 * times}, gas_demand=1.5 * times)
    assert scaled["digesters_needed"] == usual["digesters_needed"]
    for name in ("retention", "longest_retention", "retention_for_gas_per_day", "share_of_potential", "recharge_every"):
        assert value(scaled, name) == pytest.approx(value(usual, name), rel=1e-3), name
    assert value(scaled, "gas_supply") == pytest.approx(times * value(usual, "gas_supply"), rel=1e-3)
    assert scaled["recharge_dates"] == usual["recharge_dates"]


@given(storage=st.floats(0, 3), more=st.floats(0, 4))
@FEW
def test_more_storage_never_needs_more_digesters(storage: float, more: float) -> None:
    tank = {"structure": "batch_tank", "total_volume": 9}
    small, large = (asked(digester={**tank, "gas_storage_volume": size}, gas_demand=3) for size in (storage, storage + more))
    assert needed(large) <= needed(small)


def test_each_sample_is_counted() -> None:
    """The low and high end are the numbers that the samples need; a demand near a step is between two numbers."""
    work = worked(gas_demand=2.6)
    assert work.needed_by_column is not None
    told = asked(gas_demand=2.6)["digesters_needed"]
    counts = np.sort(work.needed_by_column[1:])
    assert told["low"] <= told["value"] <= told.get("high", math.inf)
    assert told["low"] == min(counts[3], told["value"])
    assert told.get("high", math.inf) == max(counts[60], told["value"])


def test_samples_that_never_start_leave_the_number_without_a_high_end() -> None:
    """Fresh dung without starter sours in some samples when it is warm."""
    answer = asked(starter_share=0, climate={"digester_temperature": 37})
    assert 50 < value(answer, "starts") < 95
    assert "high" not in answer["digesters_needed"]
    assert "high" not in answer["first_burnable_gas_day"]
    assert findings(answer)["charge_surely_starts"] == "fail"
    assert value(answer, "demand_met") <= value(answer, "starts")


def test_starter_makes_a_start_sure() -> None:
    assert value(asked(), "starts") == 100
    assert "charge_surely_starts" not in findings(asked())
    warm = {"digester_temperature": 37}
    assert value(asked(climate=warm), "starts") > value(asked(climate=warm, starter_share=0), "starts")
    assert value(asked(), "later_burnable_gas_day") < value(asked(starter_share=0), "later_burnable_gas_day")


def test_beyond_the_most_digesters_nothing_is_made_up() -> None:
    answer = asked(gas_demand=900)
    assert not {"digesters_needed", "digesters", "storage_needed"} & set(answer)
    assert answer["recharge_dates"] == []
    assert findings(answer)["rotation_meets_demand"] == "fail"
    assert [option["digesters"] for option in answer["options"]] == [MOST_DIGESTERS - 2, MOST_DIGESTERS - 1, MOST_DIGESTERS]
    assert not any(option["demand_met"] for option in answer["options"])


def test_the_farms_own_number_is_told_beside_what_it_needs() -> None:
    few, enough = asked(gas_demand=6, digesters=2), asked(gas_demand=6, digesters=6)
    assert few["digesters_needed"] == enough["digesters_needed"]
    assert few["digesters"] == 2 < needed(few) <= 6 == enough["digesters"]
    assert findings(few)["rotation_meets_demand"] == "fail"
    assert "rotation_meets_demand" not in findings(enough)
    assert {one["digester"] for one in few["recharge_dates"]} == {1, 2}


def test_without_a_demand_the_even_supply_of_several_is_told() -> None:
    answer = asked(gas_demand=None)
    assert [option["digesters"] for option in answer["options"]] == [1, 2, 3, 4, 5, 6]
    even = [value(option, "even_supply") for option in answer["options"]]
    assert even == sorted(even)
    # Several give more than so many times one: their supply is more even.
    assert even[2] > 3 * even[0]
    assert not {"digesters_needed", "storage_needed", "gas_demand", "demand_met"} & set(answer)


def test_the_even_supply_is_a_demand_that_is_met() -> None:
    three = asked(gas_demand=None, retention=40, digesters=3)
    even = value(three, "even_supply")
    assert needed(asked(gas_demand=even * 0.999, retention=40)) <= 3
    assert needed(asked(gas_demand=even * 1.01, retention=40)) > 3


@pytest.mark.parametrize("changes", [{}, {"climate": SEASONS}, {"gas_demand": 4.0}])
def test_options_agree_with_themselves(changes: Json) -> None:
    answer = asked(**changes)
    options = answer["options"]
    assert answer["digesters"] in [option["digesters"] for option in options]
    for option in options:
        least, mean, greatest = (value(option, name) for name in ("least_gas", "gas_supply", "greatest_gas"))
        assert least <= mean <= greatest
        assert least * 0.9999 <= value(option, "even_supply") <= mean * 1.0001
        assert option["demand_met"] == (value(option, "even_supply") >= value(answer, "gas_demand") * 0.9999)
        assert not option["demand_met"] or value(option, "days_met") == 365
        assert option["demand_met"] or value(option, "days_met") < 365 or value(option, "gas_supply") < value(answer, "gas_demand")
    assert all(option["demand_met"] for option in options if option["digesters"] == needed(answer))
    assert not any(option["demand_met"] for option in options if option["digesters"] < needed(answer))


def test_gas_is_used_or_left_over() -> None:
    """Over two years with a full store at both ends what comes in is used or vented, within a store of gas."""
    answer = asked()
    met = next(option for option in answer["options"] if option["digesters"] == answer["digesters"])
    spare = value(met, "gas_supply") - value(answer, "gas_demand")
    assert value(met, "left_over") == pytest.approx(spare, abs=value(answer, "storage_available") / 730 + 1e-6)


# Storage


def test_storage_is_told_apart_and_adds_up() -> None:
    answer = asked(turn_round=12, retention=90)
    whole, between, within = (value(answer, f"storage_{name}") for name in ("needed", "between_days", "within_day"))
    assert whole == pytest.approx(between + within)
    assert within == pytest.approx(0.6 * 1.5)
    assert value(answer, "storage_lacking") == pytest.approx(max(0.0, whole - value(answer, "storage_available")), abs=1e-6)
    assert value(answer, "storage_available") == pytest.approx(answer["digesters"] * 0.15 * 9)


def test_one_digester_alone_would_need_the_gas_of_its_idle_days_in_store() -> None:
    answer = asked(digesters=1, gas_demand=1.0, retention=60)
    idle = value(answer, "turn_round") + value(answer, "later_burnable_gas_day")
    assert value(answer, "storage_between_days") == pytest.approx(idle * 1.0, abs=1.0)
    assert value(answer, "storage_lacking") > 3
    assert not next(option for option in answer["options"] if option["digesters"] == 1)["demand_met"]


# Seasons


def test_between_two_starts_gas_is_right_within_two_hundredths_of_the_greatest() -> None:
    """A charge that begins halfway between two starts of the year, run by itself, against the straight line between them."""
    climate = {**SEASONS, "yearly_swing": 12}
    work = worked(climate=climate, first_charge_on="2027-04-16")
    place = work.curves.day_of_year * 12 / YEAR
    before, part = int(place), place - int(place)
    assert 0.3 < part < 0.7
    first, second = (work.curves.through_year[i].usable[:, 0] for i in (before, before + 1))
    between = (1 - part) * first + part * second
    own = work.curves.told.usable[:, 0]
    after = slice(math.ceil(work.curves.told.burnable[0]) + 1, None)
    assert np.abs(between - own)[after].max() < 0.02 * own.max()


def test_the_cold_season_gives_least_and_counts() -> None:
    even, swinging = (asked(climate={**SEASONS, "yearly_swing": swing}, retention=40, digesters=4, gas_demand=None) for swing in (0, 14))
    assert value(swinging, "even_supply") < value(even, "even_supply")
    spread = [value(one["options"][2], "greatest_gas") - value(one["options"][2], "least_gas") for one in (even, swinging)]
    assert spread[1] > spread[0]


def test_a_year_without_swing_is_a_flat_year() -> None:
    seasons = asked(climate={"mean_air_temperature": 22, "yearly_swing": 0, "warmest_month": 6}, digester={"total_volume": 9})
    flat = asked(climate={"mean_air_temperature": 22, "yearly_swing": 0}, digester={"total_volume": 9})
    for name in ("retention", "digesters_needed", "gas_supply", "storage_needed"):
        assert seasons[name] == flat[name]


def test_a_charge_of_the_warm_season_starts_sooner() -> None:
    warm, cold = (asked(climate=SEASONS, first_charge_on=day) for day in ("2027-01-10", "2027-07-10"))
    assert value(warm, "later_burnable_gas_day") < value(cold, "later_burnable_gas_day")
    assert value(warm["gas_curve"][0], "temperature") > value(cold["gas_curve"][0], "temperature")


def test_seasons_without_a_date_are_counted_from_new_year_and_said_so() -> None:
    answer = asked(climate=SEASONS, first_charge_on=None)
    assert ("first_charge_on", None) in assumed(answer)
    assert not any("date" in one for one in (*answer["gas_curve"], *answer["recharge_dates"]))
    assert answer["options"] == asked(climate=SEASONS, first_charge_on="2027-01-01")["options"]


# Dates


@pytest.mark.parametrize("changes", [{}, {"gas_demand": 6.0}, {"gas_demand": None, "digesters": 5, "retention": 20}])
def test_every_digester_is_charged_in_turn(changes: Json) -> None:
    answer = asked(**changes)
    cycle = int(value(answer, "retention") + value(answer, "turn_round"))
    rows = answer["recharge_dates"]
    assert [row["day"] for row in rows] == sorted(row["day"] for row in rows)
    for number in range(1, answer["digesters"] + 1):
        own = [row for row in rows if row["digester"] == number]
        assert [row["event"] for row in own] == ["first_charge"] + ["recharge"] * (len(own) - 1)
        assert own[0]["day"] == (number - 1) * cycle // answer["digesters"]
        assert [row["day"] for row in own] == list(range(own[0]["day"], 365, cycle))
    for row in rows:
        assert row["date"] == (dt.date(2027, 2, 1) + dt.timedelta(days=row["day"])).isoformat()
        if row["event"] == "recharge":
            assert row["day"] - row["emptying_from_day"] == value(answer, "turn_round")
            assert "never enter" in row["text"]
        assert "unburnt" in row["text"]


def test_the_curve_as_a_table() -> None:
    answer = asked()
    text = questions()[NAME].representations["text/csv"](answer, LANGUAGES["en"])
    lines = text.splitlines()
    assert lines[0].startswith("day,date,gas [m3/d],gas low [m3/d],gas high [m3/d],usable_gas [m3/d]")
    assert len(lines) == 1 + len(answer["gas_curve"])
    assert lines[1].startswith("0,2027-02-01,")


# What warns


def test_opening_and_first_gas_are_warned_of_whatever_the_structure() -> None:
    for structure in ("batch_tank", "fixed_dome"):
        shown = {one["id"] for one in asked(digester={"structure": structure, "total_volume": 9})["cautions"]}
        assert {"batch_opening", "never_enter", "first_gas", "emptying_suction", "collapse_in_pit", "hygiene", "local_codes"} <= shown


def test_what_nobody_said_about_entry_and_tests_stays_unknown() -> None:
    found = findings(asked())
    for check in ("no_entry", "first_gas_vented", "gas_tightness_passed", "vent_open_while_emptying"):
        assert found[check] == "unknown"
    entered = ask(NAME, {**TANK, "facts": {"gas_tightness_test": "failed"}})
    assert findings(entered)["gas_tightness_passed"] == "fail"


def test_thick_charges_are_outside_what_the_model_was_held_against() -> None:
    assert "charge_mixes" not in findings(asked())
    thick = asked(dilution={"target_total_solids": 0.15})
    assert findings(thick)["charge_mixes"] == "fail"


def test_a_feed_without_help_fails_the_check_of_its_starter() -> None:
    assert findings(asked(feed=[{"substrate": "pig_manure"}], starter_share=0.02))["starter_for_other_feed"] == "fail"
    assert "starter_for_other_feed" not in findings(asked(feed=[{"substrate": "pig_manure"}], starter_share=None))


@pytest.mark.parametrize(
    "changes",
    [
        {"climate": {"digester_temperature": 2}},
        {"climate": {"digester_temperature": 65}},
        {"feed": [{"substrate": "cattle_dung", "biogas_yield": 0}]},
        {"feed": [{"substrate": "whey"}], "starter_share": 0},
    ],
    ids=["frozen", "boiled", "no gas in it", "sour"],
)
def test_charges_that_never_burn_give_a_finding_and_no_rotation(changes: Json) -> None:
    answer = asked(**changes)
    assert not {"retention", "digesters_needed", "storage_needed", "first_burnable_gas_day", "gas_of_charge"} & set(answer)
    assert answer["recharge_dates"] == answer["options"] == answer["other_retentions"] == []
    assert findings(answer)["charge_likely_starts"] == "fail"
    assert len(answer["gas_curve"]) == LONGEST_RETENTION
    assert not any(value(row, "usable_gas") for row in answer["gas_curve"])
    assert_sound(NAME, answer)


# Requests that cannot be


@pytest.mark.parametrize(
    ("changes", "faults"),
    [
        ({"digester": {"structure": "batch_tank"}}, {"/digester": "volume_missing"}),
        ({"retention": 301}, {"/retention": "out_of_range"}),
        ({"retention": 4}, {"/retention": "out_of_range"}),
        ({"digesters": 25}, {"/digesters": "out_of_range"}),
        ({"digesters": 0}, {"/digesters": "out_of_range"}),
        ({"gas_demand": 0}, {"/gas_demand": "out_of_range"}),
        ({"gas_demand": 1e9}, {"/gas_demand": "out_of_range"}),
        ({"starter_share": 0.95}, {"/starter_share": "out_of_range"}),
        ({"starter_slurry": 7650}, {"/starter_slurry": "starter_fills_digester"}),
        ({"feed": []}, {"/feed": "too_short"}),
        ({"feed": [{"substrate": "cattle_dung", "mass": 9000}]}, {"/feed": "volume_impossible"}),
        ({"feed": [{"substrate": "cattle_dung", "mass": 100}, {"substrate": "whey"}]}, {"/feed": "mass_for_some"}),
        ({"feed": [{"substrate": "cattle_dung", "share": 0.5}]}, {"/feed": "shares_disordered"}),
        ({"dilution": {"water_to_feed_by_volume": 1, "target_total_solids": 0.1}}, {"/dilution": "two_dilutions"}),
        ({"first_charge_on": "2027-02-30"}, {"/first_charge_on": "date_expected"}),
        ({"rotation": 3}, {"/rotation": "extra_forbidden"}),
    ],
)
def test_bad_requests_are_refused_where_they_are_bad(changes: Json, faults: dict[str, str]) -> None:
    assert refused(**changes) == faults


def test_temperatures_out_of_the_usual_are_warned_of() -> None:
    hot, cold = (findings(asked(climate={"digester_temperature": t})) for t in (65, 8))
    assert hot["temperature_most"] == cold["temperature_least"] == "fail"


def test_frost_is_unknown_until_the_seasons_are_stated() -> None:
    mean, frosty = (findings(asked(climate={"mean_air_temperature": 12, **more})) for more in ({}, {"yearly_swing": 24}))
    assert mean["frost"] == mean["slurry_freezes"] == "unknown"
    assert frosty["frost"] == frosty["slurry_freezes"] == "fail"


def test_several_faults_come_at_once() -> None:
    found = refused(digester={"total_volume": 5, "working_volume": 6}, feed=[{"substrate": "cattle_dung", "share": 0.5}])
    assert found == {"/digester/working_volume": "volume_impossible", "/feed": "shares_disordered"}


# Answers as such


def test_the_example_is_answered_with_seasons_and_dates() -> None:
    answer = ask(NAME, EXAMPLE)
    assert_sound(NAME, answer)
    assert answer["name"] == "Highfold (invented)"
    assert answer["digesters_needed"]["low"] <= value(answer, "digesters_needed")
    assert answer["recharge_dates"][0]["date"] == "2027-02-01"


def test_units_make_no_difference() -> None:
    said = asked(
        digester={"structure": "batch_tank", "total_volume": {"value": 9000, "unit": "L"}},
        gas_demand={"value": 1500, "unit": "L/d"},
        climate={"digester_temperature": {"value": 299.15, "unit": "K"}},
        starter_share={"value": 20, "unit": "%"},
    )
    assert {name: told for name, told in said.items() if name != "assumptions"} == {
        name: told for name, told in asked().items() if name != "assumptions"
    }


def test_ranges_hold_their_values_and_narrow_where_something_is_measured() -> None:
    def width(answer: Json) -> float:
        told = answer["gas_of_charge"]
        assert told["low"] <= told["value"] <= told["high"]
        return float((told["high"] - told["low"]) / told["value"])

    first = asked(retention=50)["measure_first"][0]
    assert first["answer"] == "gas_of_charge"
    measured = {"substrate": "cattle_dung", "total_solids": 0.15, "volatile_solids": 0.8, "biogas_yield": 0.25}
    assert width(asked(retention=50, feed=[measured])) < 0.7 * width(asked(retention=50))


def test_explaining_adds_the_derivation_and_nothing_else() -> None:
    explained = ask(NAME, TANK, explain=True)
    assert {name: told for name, told in explained.items() if name != "derivation"} == asked()
    assert {"working_volume", "gas_storage_volume"} <= {step["quantity"] for step in explained["derivation"]}


def test_nothing_is_known_of_the_climate() -> None:
    answer = asked(climate=None)
    assert answer["digester_temperature"]["known"] is False
    assert ("digester_temperature", None) in assumed(answer)
    wide, narrow = (one["gas_of_charge"] for one in (asked(climate=None, retention=50), asked(retention=50)))
    assert wide["high"] - wide["low"] > narrow["high"] - narrow["low"]


def test_a_tank_above_ground_follows_the_air_through_the_year() -> None:
    """The curve's temperature is the slurry's on that day of the year, as the climate says it."""
    work = worked(climate=SEASONS)
    ledger = Ledger(Shelf(base().data))
    asked_climate = BatchRotationRequest.model_validate_json(json.dumps(like(TANK, climate=SEASONS)), context=questions()[NAME].ids).climate
    warmth = warmth_of(asked_climate, ledger, "batch_tank")
    expected = warmth.through(dt.date(2027, 2, 1), LONGEST_RETENTION)
    assert work.curves.told.temperature[:, 0] == pytest.approx(expected, abs=1e-9)


@given(
    volume=st.floats(0.1, 1000),
    demand=st.none() | st.floats(0.001, 1000),
    temperature=st.floats(-10, 60),
    substrates=st.lists(st.sampled_from(sorted(base().data.substrates)), min_size=1, max_size=4, unique=True),
    starter=st.none() | st.floats(0, 0.9),
)
@settings(max_examples=25)
def test_anything_that_may_be_asked_is_answered(
    volume: float, demand: float | None, temperature: float, substrates: list[str], starter: Any
) -> None:
    body = like(
        TANK,
        digester={"total_volume": volume},
        gas_demand=demand,
        climate={"digester_temperature": temperature},
        feed=[{"substrate": name} for name in substrates],
        starter_share=starter,
    )
    answer = answer_or_refusal(NAME, body)
    assert answer is not None
    assert answer["recharge_dates"] or "digesters" not in answer


# Runs


@pytest.mark.parametrize("side_by_side", [1, 5, 20])
def test_it_does_not_matter_how_many_starts_share_a_run(monkeypatch: pytest.MonkeyPatch, side_by_side: int) -> None:
    usual = worked(climate=SEASONS, starter_slurry=500)
    monkeypatch.setattr("kilisho.questions.batch_rotation.curves.SIDE_BY_SIDE", side_by_side)
    body = json.dumps(like(TANK, climate=SEASONS, starter_slurry=500))
    other = work_out(BatchRotationRequest.model_validate_json(body, context=questions()[NAME].ids), Ledger(Shelf(base().data)))
    assert other.curves.usable == pytest.approx(usual.curves.usable, abs=1e-9)
    assert other.curves.first.gas == pytest.approx(usual.curves.first.gas, abs=1e-9)
    assert other.chosen is not None
    assert usual.chosen is not None
    assert other.chosen.plan == usual.chosen.plan


def test_a_charge_is_the_process_model_run_by_itself() -> None:
    """The typical column against a run of one farm with the same charge: nothing is lost between the columns."""
    work = worked(starter_share=0, starter_slurry=None)
    parameters = Shelf(base().data).process
    one = work.charge.fed[0]
    entry, values = one.entry, one.values
    per_volatile = 1 / values["volatile_solids_share"]
    dung = feedstock(
        biogas_yield=values["biogas_yield"],
        degradation_rate=values["degradation_rate"],
        methane_share=values["methane_share"],
        nitrogen=values["nitrogen_share"] * per_volatile,
        ammonium_share=values["ammonium_share"],
        potassium=(entry.potassium.typical if entry.potassium else 0.0) * per_volatile,
        starts_unaided=entry.starts_unaided,
        of_dung=True,
        parameters=parameters,
        quick_share=entry.quick_share.typical if entry.quick_share else 0.0,
    )
    solids, slurry = np.zeros((LONGEST_RETENTION, 1, 1)), np.zeros((LONGEST_RETENTION, 1))
    solids[0] = one.mass * values["total_solids"] * values["volatile_solids_share"]
    slurry[0] = work.charge.slurry.value
    run = simulate(History(dung, solids, slurry), Conditions(work.charge.slurry.value, 26.0), parameters)
    told = work.curves.told.gas[:, 0] * normal_factor(25.0, 101325.0)
    assert told == pytest.approx(run.biogas_normal[:, 0], rel=1e-6, abs=1e-9)


def test_high_places_take_the_same_gas_in_more_room() -> None:
    low, high = (value(asked(climate={"digester_temperature": 26, "altitude": h}, retention=50), "gas_of_charge") for h in (0, 2500))
    assert 1.3 < high / low < 1.4


def test_a_smaller_gas_space_burns_sooner() -> None:
    full, roomy = (
        asked(digester={"structure": "batch_tank", "total_volume": total, "working_volume": 6}, retention=50) for total in (6.5, 12)
    )
    assert value(full, "later_burnable_gas_day") < value(roomy, "later_burnable_gas_day")
    assert value(full, "vented_of_charge") < value(roomy, "vented_of_charge")
