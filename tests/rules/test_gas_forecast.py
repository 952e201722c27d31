"""The gas forecast as its users see it: what the series adds up to, what moves it and how, and what is refused."""

from __future__ import annotations

import csv
import datetime as dt
import io
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, like, questions, value

from kilisho.faults import RefusedError
from kilisho.messages import LANGUAGES
from kilisho.packs import load
from kilisho.questions import Limits, open_questions
from kilisho.questions.gas_forecast.calendar import Span, gaps_in

MONTHS = [19, 20, 20, 19, 18, 17, 16, 17, 18, 19, 19, 19]
CHARGE: Json = {"on": "2027-02-01", "feed": [{"substrate": "cattle_dung", "mass": 3000}], "water": 3000}
PLAN: Json = {"from": "2027-03-01", "feed": [{"substrate": "cattle_dung", "mass": 84}], "water": 84}
NEW: Json = {
    "digester": {"structure": "fixed_dome", "total_volume": 9},
    "first_charge": CHARGE,
    "maintenance_feed": [PLAN],
    "climate": {"monthly_air_temperature": {"values": MONTHS}},
    "days": 240,
}
WORKING: Json = {
    "digester": {"total_volume": 9},
    "maintenance_feed": [PLAN],
    "climate": {"digester_temperature": 25},
    "days": 150,
}
FEW = settings(max_examples=6)


def forecast(base: Json = NEW, **changes: Any) -> Json:
    return ask("gas-forecast", like(base, **changes))


def gas(answer: Json) -> list[float]:
    return [row["gas"]["value"] for row in answer["series"]]


# What the answer says of itself


def test_days_weeks_and_months_add_up_to_the_same_gas() -> None:
    answers = {step: forecast(interval=step) for step in ("day", "week", "month")}
    for answer in answers.values():
        days = [row.get("days", 1) for row in answer["series"]]
        assert sum(days) == 240
        total = sum(n * row["gas"]["value"] for n, row in zip(days, answer["series"], strict=True))
        assert total == pytest.approx(value(answer, "total_gas"), rel=1e-5)
    months = answers["month"]["series"]
    assert [row["date"][8:] for row in months] == ["01"] * 8
    assert answers["week"]["series"][1]["day"] == 7
    assert len({str({k: v for k, v in a.items() if k not in ("series", "interval")}) for a in answers.values()}) == 1


def test_methane_is_normal_and_gas_is_as_used() -> None:
    """Standard BMP Methods, document 201: 0.8876 normal cubic metres in one moist one at 25 Cel and sea level."""
    answer = forecast()
    assert value(answer, "gas_state.normal_volume") == pytest.approx(0.8876, abs=1e-4)
    last = answer["series"][-1]
    assert last["methane"]["value"] / last["gas"]["value"] == pytest.approx(0.60 * 0.8876, abs=0.01)
    assert value(answer, "steady_gas_normal") == pytest.approx(0.8876 * value(answer, "steady_gas"), rel=1e-4)


def test_gas_takes_more_room_in_the_mountains_and_is_no_more_gas() -> None:
    high, low = (forecast(climate={"digester_temperature": 22, "altitude": height}) for height in (2000, 0))
    assert value(high, "total_gas") > 1.2 * value(low, "total_gas")
    assert value(high, "total_methane_normal") == pytest.approx(value(low, "total_methane_normal"), rel=1e-9)
    assert value(high, "steady_gas_normal") == pytest.approx(value(low, "steady_gas_normal"), rel=1e-4)


def test_every_number_that_is_uncertain_has_a_range_around_it() -> None:
    answer = forecast(interval="week")
    for row in answer["series"]:
        for name in ("gas", "methane", "temperature", "acid_ratio"):
            assert row[name]["low"] <= row[name]["value"] <= row[name]["high"]
    for name in ("total_gas", "steady_gas", "first_burnable_gas_day", "share_of_potential"):
        assert answer[name]["low"] < answer[name]["high"], name
    assert answer["measure_first"][0]["answer"] == "total_gas"


def test_the_first_flame_is_dated_and_vented_first() -> None:
    answer = forecast()
    first = answer["first_burnable_gas_day"]
    start = dt.date(2027, 2, 1)
    assert answer["first_burnable_gas"]["earliest"] == (start + dt.timedelta(days=int(first["low"]))).isoformat()
    assert dt.date.fromisoformat(answer["first_burnable_gas"]["latest"]) >= start + dt.timedelta(days=int(first["high"]))
    assert any("vent" in caution["text"].lower() or "unburnt" in caution["text"].lower() for caution in answer["cautions"])
    assert {"first_gas", "first_flame"} <= {caution["id"] for caution in answer["cautions"]}
    assert value(answer, "starts") >= 90


def test_a_digester_that_never_starts_promises_no_flame() -> None:
    """Pig manure alone, cold and without starter: no day is invented, and the acids are shown."""
    charge = like(CHARGE, feed=[{"substrate": "pig_manure", "mass": 3000}])
    answer = forecast(first_charge=charge, maintenance_feed=[], climate={"digester_temperature": 16}, days=120)
    assert "first_burnable_gas_day" not in answer
    assert value(answer, "starts") < 50
    assert "steady_gas" not in answer
    failed = {one["check"] for one in answer["findings"] if one["verdict"] == "fail"}
    assert "acids_forecast" in failed or value(answer, "total_methane_normal") < 1


def test_the_series_is_a_table_too() -> None:
    question = questions()["gas-forecast"]
    answer = forecast(interval="month")
    rows = list(csv.DictReader(io.StringIO(question.representations["text/csv"](answer, LANGUAGES["en"]))))
    assert len(rows) == len(answer["series"])
    assert float(rows[3]["gas [m3/d]"]) == answer["series"][3]["gas"]["value"]
    assert rows[0]["acid_risk"] == answer["series"][0]["acid_risk"]
    assert float(rows[0]["gas low [m3/d]"]) <= float(rows[0]["gas [m3/d]"])


# Against the closed form


@pytest.mark.parametrize("structure", ["fixed_dome", "bag"])
@pytest.mark.parametrize("temperature", [18, 25, 32])
def test_a_long_forecast_comes_to_the_steady_gas(structure: str, temperature: float) -> None:
    """The typical digester within 2 %; what is missing are the acids that run out."""
    answer = forecast(
        WORKING, digester={"structure": structure, "total_volume": 9}, days=700, climate={"digester_temperature": temperature}
    )
    last = np.mean(gas(answer)[-60:])
    steady = value(answer, "steady_gas")
    assert 0.96 * steady < last < 1.02 * steady


def test_a_working_digester_begins_in_its_steady_state() -> None:
    found = gas(forecast(WORKING))
    assert min(found) > 0.95 * max(found)


def test_steady_gas_is_that_of_the_maintenance_feed() -> None:
    """The same farm asked the other way gives the same number, to the last digit."""
    plan = {"digester": WORKING["digester"], "climate": WORKING["climate"], "dilution": {"water_to_feed_by_volume": 1}}
    plan["feed"] = [{"substrate": "cattle_dung", "mass": 84}]
    asked = ask("maintenance-feed", plan)
    forecast_plan = like(PLAN, water=None)
    answer = forecast(WORKING, maintenance_feed=[forecast_plan], dilution={"water_to_feed_by_volume": 1})
    for ours, theirs in (("steady_gas", "biogas_per_day"), ("hydraulic_retention_time",) * 2, ("share_of_potential",) * 2):
        assert answer[ours] == asked[theirs]


# What moves it, and which way


@FEW
@given(times=st.floats(1.5, 4))
def test_twice_everything_is_twice_the_gas(times: float) -> None:
    once = forecast(WORKING)
    plan = like(PLAN, feed=[{"substrate": "cattle_dung", "mass": 84 * times}], water=84 * times)
    more = forecast(WORKING, digester={"total_volume": 9 * times}, maintenance_feed=[plan])
    for end in ("value", "low", "high"):
        assert more["total_gas"][end] == pytest.approx(times * once["total_gas"][end], rel=1e-4)


@FEW
@given(day=st.integers(5, 60), length=st.integers(1, 10))
def test_missed_feeds_cost_no_more_than_they_would_have_given(day: int, length: int) -> None:
    first = dt.date(2027, 3, 1) + dt.timedelta(days=day)
    missed = {"from": first.isoformat(), "until": (first + dt.timedelta(days=length - 1)).isoformat()}
    regular, skipped = forecast(WORKING), forecast(WORKING, deviations=[missed])
    lost = value(regular, "total_gas") - value(skipped, "total_gas")
    potential = value(regular, "steady_gas") / (value(regular, "share_of_potential") / 100) * length
    assert 0 < lost <= potential
    before = slice(0, day)
    assert gas(skipped)[before] == gas(regular)[before]


def test_doubled_feeds_give_more_and_halved_ones_less() -> None:
    span = {"from": "2027-04-01", "until": "2027-04-20"}
    totals = [value(forecast(WORKING, deviations=[{**span, "share_of_feed": share}]), "total_gas") for share in (0, 0.5, 1, 2)]
    assert totals == sorted(totals)
    assert totals[2] == pytest.approx(value(forecast(WORKING), "total_gas"))


def test_a_colder_place_never_gives_more() -> None:
    totals = [value(forecast(climate={"digester_temperature": t}), "total_gas") for t in (14, 18, 22, 26, 30)]
    assert totals == sorted(totals)


def test_the_gas_follows_the_season() -> None:
    answer = forecast(NEW, days=365, interval="month")
    by_month = {row["date"][5:7]: row for row in answer["series"][2:]}
    assert by_month["08"]["temperature"]["value"] < by_month["04"]["temperature"]["value"]
    assert by_month["08"]["gas"]["value"] < by_month["04"]["gas"]["value"]
    assert answer["least_gas"]["date"][5:7] in ("08", "09")


def test_starter_slurry_brings_the_flame_forward() -> None:
    days = []
    for starter in (0, 300, 1200):
        fresh = 3000 - starter / 2
        charge = like(CHARGE, feed=[{"substrate": "cattle_dung", "mass": fresh}], water=fresh, starter_slurry=starter)
        days.append(value(forecast(first_charge=charge), "first_burnable_gas_day"))
    assert days[0] > days[1] > days[2]


def test_more_water_makes_less_of_the_same_feed() -> None:
    changes = {one["change"]: one for one in forecast()["changes"]}
    assert value(changes["more_water"], "against_plan") < 0 < value(changes["less_water"], "against_plan")
    assert value(changes["less_feed"], "against_plan") < 0 < value(changes["more_feed"], "against_plan")
    assert abs(value(changes["weekly"], "against_plan")) < 5
    assert value(changes["more_feed"], "hydraulic_retention_time") < value(changes["less_feed"], "hydraulic_retention_time")


def test_a_change_that_is_the_plan_changes_nothing() -> None:
    """The column of a change against a forecast that states it from the beginning."""
    changed = next(one for one in forecast(WORKING)["changes"] if one["change"] == "weekly")
    weekly = like(PLAN, every=7, feed=[{"substrate": "cattle_dung", "mass": 588}], water=588)
    stated = forecast(WORKING, maintenance_feed=[weekly])
    assert value(stated, "total_gas") == pytest.approx(value(changed, "total_gas"), rel=0.01)


def test_the_herd_gives_what_is_not_stated() -> None:
    bare = like(PLAN, feed=[{"substrate": "cattle_dung"}], water=None)
    herd = [{"animal": "dairy_cow", "count": 6, "housing": "stall"}]
    answer = forecast(maintenance_feed=[bare], herd=herd)
    asked = ask("maintenance-feed", {"digester": NEW["digester"], "herd": herd, "climate": NEW["climate"]})
    assert value(answer, "steady_gas") == pytest.approx(value(asked, "biogas_per_day"), rel=1e-6)
    assert "dung_per_day" in {one["quantity"] for one in answer["measure_first"]}


def test_a_charge_without_masses_fills_the_digester() -> None:
    open_charge = {"on": "2027-02-01", "feed": [{"substrate": "cattle_dung"}]}
    stated = forecast(first_charge=CHARGE, maintenance_feed=[], days=60, dilution={"water_to_feed_by_volume": 1})
    filled = forecast(first_charge=open_charge, maintenance_feed=[], days=60, dilution={"water_to_feed_by_volume": 1})
    assert value(filled, "total_gas") == pytest.approx(value(stated, "total_gas"), rel=1e-6)


# The calendar


@given(first=st.integers(0, 30), length=st.integers(0, 60), every=st.floats(0.25, 20), days=st.integers(1, 80))
def test_a_plan_feeds_as_often_as_it_says(first: int, length: int, every: float, days: int) -> None:
    counts = Span(first, first + length, every).doses(days)
    within = min(first + length, days - 1) - first + 1
    assert counts[:first].sum() == 0
    assert counts[first + length + 1 :].sum() == 0
    if within > 0:
        assert counts.sum() == pytest.approx(within / every, abs=1.0 + 1e-9)
        assert counts[first] >= 1


@pytest.mark.parametrize(
    ("spans", "gaps"),
    [([], []), ([(0, 9)], []), ([(0, 3), (6, 9)], [(4, 5)]), ([(2, 3)], [(4, 9)]), ([(0, 1), (3, 4), (6, 9)], [(2, 2), (5, 5)])],
)
def test_gaps_are_found(spans: list[tuple[int, int]], gaps: list[tuple[int, int]]) -> None:
    assert gaps_in([Span(*span, 1.0) for span in spans], np.ones(10)) == gaps


def test_a_gap_is_told_and_a_long_one_found() -> None:
    plans = [like(PLAN, until="2027-04-30"), like(PLAN, **{"from": "2027-06-01"})]
    answer = forecast(maintenance_feed=plans)
    assert answer["gaps"] == [{"first_day": 89, "last_day": 119, "date": "2027-05-01", "until": "2027-05-31"}]
    assert "feeding_without_gap" in {one["check"] for one in answer["findings"] if one["verdict"] == "fail"}


def test_days_on_which_all_feed_was_missed_are_a_gap_and_others_are_not() -> None:
    whole = forecast()
    missed = forecast(deviations=[{"from": "2027-06-01", "until": "2027-07-15"}, {"from": "2027-08-01", "share_of_feed": 0.2}])
    assert whole["gaps"] == []
    assert missed["gaps"] == [{"first_day": 120, "last_day": 164, "date": "2027-06-01", "until": "2027-07-15"}]
    assert "feeding_without_gap" in {one["check"] for one in missed["findings"] if one["verdict"] == "fail"}


def test_what_was_missed_leaves_the_retention_of_every_change_as_it_is() -> None:
    """Retention is volume over the slurry of a day (by definition): a quarter more feed and water stays 1/1.25 as long."""
    whole = forecast()
    missed = forecast(deviations=[{"from": "2027-06-01", "until": "2027-09-15"}])
    retention = {one["change"]: value(one, "hydraulic_retention_time") for one in whole["changes"]}
    assert retention == {one["change"]: value(one, "hydraulic_retention_time") for one in missed["changes"]}
    assert retention["more_feed"] == pytest.approx(value(whole, "hydraulic_retention_time") / 1.25, rel=1e-3)
    assert retention["less_feed"] == pytest.approx(value(whole, "hydraulic_retention_time") / 0.75, rel=1e-3)
    assert retention["weekly"] == value(whole, "hydraulic_retention_time")
    assert retention["more_water"] < value(whole, "hydraulic_retention_time") < retention["less_water"]


@pytest.mark.parametrize(
    ("change", "pointer"),
    [
        ({"maintenance_feed": [like(PLAN, until="2027-02-20")]}, "/maintenance_feed/0/until"),
        (
            {"maintenance_feed": [PLAN, like(PLAN, **{"from": "2027-04-01", "until": "2027-05-01"}), like(PLAN, **{"from": "2027-04-15"})]},
            "/maintenance_feed/2",
        ),
        ({"maintenance_feed": [PLAN, PLAN]}, "/maintenance_feed/1"),
        ({"maintenance_feed": [like(PLAN, **{"from": "2026-12-01"})]}, "/maintenance_feed/0/from"),
        ({"maintenance_feed": [like(PLAN, **{"from": "2029-12-01"})]}, "/maintenance_feed/0/from"),
        ({"maintenance_feed": [like(PLAN, feed=[{"substrate": "cattle_dung"}])]}, "/maintenance_feed/0/feed/0"),
        ({"maintenance_feed": [like(PLAN, feed=[{"substrate": "cattle_dung", "share": 1}])]}, "/maintenance_feed/0/feed/0/share"),
        ({"first_charge": None, "maintenance_feed": []}, ""),
        ({"first_charge": like(CHARGE, water=30_000)}, "/first_charge/feed"),
        ({"first_charge": like(CHARGE, starter_slurry=9000)}, "/first_charge/starter_slurry"),
        ({"first_charge": like(CHARGE, feed=[])}, "/first_charge/feed"),
        ({"deviations": [{"from": "2027-04-02", "until": "2027-04-01"}]}, "/deviations/0/until"),
        ({"deviations": [{"from": "2027-04-02", "share_of_feed": -1}]}, "/deviations/0/share_of_feed"),
        ({"days": 18_262}, "/days"),
        ({"days": 0}, "/days"),
        ({"digester": {"structure": "fixed_dome"}}, "/digester"),
        ({"climate": {"digester_temperature": 200}}, "/climate/digester_temperature"),
        ({"interval": "year"}, "/interval"),
    ],
)
def test_what_makes_no_sense_is_refused_where_it_stands(change: Json, pointer: str) -> None:
    body = {name: part for name, part in like(NEW, **change).items() if part is not None}
    with pytest.raises(RefusedError) as refused:
        ask("gas-forecast", body)
    assert pointer in {fault.pointer for fault in refused.value.faults}


def test_the_longest_forecast_is_a_limit_in_force() -> None:
    question = open_questions(load(), Limits(forecast_days=400))["gas-forecast"]
    days = question.request.model_json_schema()["properties"]["days"]
    assert days["maximum"] == 400


@pytest.mark.parametrize("temperature", [-5, 2, 44, 55])
def test_absurd_temperatures_end_in_a_finding(temperature: float) -> None:
    answer = forecast(climate={"digester_temperature": temperature}, days=40)
    failed = {one["check"] for one in answer["findings"] if one["verdict"] == "fail"}
    assert failed & {"temperature_freezing", "temperature_least", "temperature_most", "slurry_freezes", "slurry_too_hot"}


def test_nothing_known_of_the_climate_is_said_and_widens_the_range() -> None:
    known, unknown = forecast(climate={"digester_temperature": 22}), forecast(climate=None)
    width = [a["total_gas"]["high"] / a["total_gas"]["low"] for a in (known, unknown)]
    assert width[1] > width[0]
    assert unknown["digester_temperature"]["known"] is False
    assert "digester_temperature" in {one["quantity"] for one in unknown["assumptions"]}
