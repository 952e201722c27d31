"""The slurry's temperature from the climate: measured, from the air, by season, or not known at all."""

from __future__ import annotations

import datetime as dt
import math

import numpy as np
import pytest
from fluids.atmosphere import ATMOSPHERE_1976
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import Json, answer_or_refusal, ask, assumed, base, findings, ids, like, value

from kilisho.farm import Ledger, Shelf
from kilisho.faults import RefusedError
from kilisho.formulas.kinetics import mixed_share, temperature_corrected_rate
from kilisho.formulas.temperature import ground_temperature
from kilisho.questions.climate import Warmth, days_of_year, pressure_of, warmth_of
from kilisho.questions.requests import Climate, MonthlyTemperature

EARTH_RADIUS = 6_356_766.0
MONTHS = [19.5, 20.1, 20.3, 19.6, 18.4, 17.1, 16.5, 16.9, 18.0, 19.2, 19.0, 19.0]
FEED: Json = {
    "digester": {"structure": "fixed_dome", "total_volume": 9},
    "feed": [{"substrate": "cattle_dung", "mass": 84}],
    "dilution": {"water_to_feed_by_volume": 1},
}
CHARGE: Json = {"digester": {"total_volume": 9}, "feed": [{"substrate": "cattle_dung"}], "digester_ready_on": "2027-07-15"}


def warmth(**climate: object) -> Warmth:
    return warmth_of(Climate.model_construct(**dict.fromkeys(Climate.model_fields) | climate), Ledger(Shelf(base().data)))


def fahrenheit(celsius: float) -> float:
    return celsius * 9 / 5 + 32


def test_a_measured_temperature_is_taken_as_it_is() -> None:
    found = warmth(digester_temperature=24.5, mean_air_temperature=10.0)
    assert (found.uncertain.told, found.coldest, found.known) == ((24.5,), 24.5, True)


def test_a_buried_digester_is_one_to_two_kelvin_warmer_than_the_air() -> None:
    """Biogas Digest volume II, p. 40: slurry temperature is the soil's and 1 to 2 K (seen)."""
    found = warmth(mean_air_temperature=20.0, yearly_swing=0.0)
    mean, low, high = found.uncertain.told
    assert 21.0 < low < mean == 21.5 < high < 22.0
    assert found.coldest == 21.5


def test_without_any_climate_the_span_is_wide_and_said_to_be_unknown() -> None:
    found = warmth_of(None, Ledger(Shelf(base().data)))
    assert not found.known
    _, low, high = found.uncertain.told
    assert high - low >= 9
    assert found.coldest < low


@given(swing=st.floats(0, 60), more=st.floats(0.1, 20))
def test_a_larger_swing_makes_a_colder_coldest_month(swing: float, more: float) -> None:
    assert (
        warmth(mean_air_temperature=20.0, yearly_swing=swing + more).coldest < warmth(mean_air_temperature=20.0, yearly_swing=swing).coldest
    )


def test_the_soil_damps_the_swing() -> None:
    found = warmth(mean_air_temperature=20.0, yearly_swing=10.0)
    assert 0 < found.mean - found.coldest < 5


def test_twelve_months_give_mean_swing_and_season() -> None:
    monthly = warmth(monthly_air_temperature=MonthlyTemperature(values=MONTHS, unit="Cel"))
    by_hand = warmth(mean_air_temperature=sum(MONTHS) / 12, yearly_swing=max(MONTHS) - min(MONTHS))
    assert monthly.mean == pytest.approx(by_hand.mean)
    assert monthly.coldest == pytest.approx(by_hand.coldest)


@given(coldest_day=st.floats(0, 364), mean=st.floats(5, 30), half=st.floats(0.5, 12))
def test_the_phase_of_a_pure_wave_is_found_again(coldest_day: float, mean: float, half: float) -> None:
    months = [mean - half * math.cos(2 * math.pi * ((i + 0.5) * 365 / 12 - coldest_day) / 365) for i in range(12)]
    ground = warmth(monthly_air_temperature=MonthlyTemperature(values=months, unit="Cel")).ground
    assert ground is not None
    assert ground.coldest_day is not None
    assert math.cos(2 * math.pi * (ground.coldest_day - coldest_day) / 365) == pytest.approx(1, abs=1e-9)


def test_the_season_follows_the_published_ground_temperature() -> None:
    """Kusuda and Achenbach 1965, at the rulebook's depth and soil."""
    found = warmth(mean_air_temperature=20.0, yearly_swing=10.0, warmest_month=1)
    figures = base().data.practice.figures
    depth, diffusivity = figures["soil_depth"].typical, figures["soil_diffusivity"].typical
    day = dt.date(2027, 7, 15)
    coldest_day = 0.5 * 365 / 12 + 365 / 2
    ours = found.on(day).mean - found.mean
    assert ours == pytest.approx(float(ground_temperature(0.0, 5.0, depth, day.timetuple().tm_yday, coldest_day, diffusivity)))


def test_the_south_is_cold_in_july_and_the_north_in_january() -> None:
    south, north = (warmth(mean_air_temperature=20.0, yearly_swing=10.0, warmest_month=month) for month in (1, 7))
    july, january = dt.date(2027, 8, 15), dt.date(2027, 2, 15)
    assert south.on(july).mean < south.mean < south.on(january).mean
    assert north.on(january).mean < north.mean < north.on(july).mean


def test_without_a_phase_or_a_day_the_year_s_mean_stands() -> None:
    found = warmth(mean_air_temperature=20.0, yearly_swing=10.0)
    assert found.on(dt.date(2027, 7, 15)) is found
    assert warmth(mean_air_temperature=20.0, yearly_swing=10.0, warmest_month=1).on(None).mean == found.mean


def test_a_first_charge_in_the_cold_season_waits_longer_for_its_flame() -> None:
    climate = {"mean_air_temperature": 20, "yearly_swing": 12}
    cold, warm = (ask("first-charge", like(CHARGE, climate={**climate, "warmest_month": month})) for month in (1, 7))
    assert value(cold, "start_up.days_to_first_burnable_gas") > value(warm, "start_up.days_to_first_burnable_gas")
    assert value(cold, "start_up.digester_temperature.mean") < value(warm, "start_up.digester_temperature.mean")


@pytest.mark.parametrize(
    "climate",
    [
        {"monthly_air_temperature": {"values": [t + 273.15 for t in MONTHS], "unit": "K"}},
        {"monthly_air_temperature": {"values": [fahrenheit(t) for t in MONTHS], "unit": "[degF]"}},
    ],
)
def test_the_unit_of_the_months_does_not_change_the_answer(climate: Json) -> None:
    celsius = ask("maintenance-feed", like(FEED, climate={"monthly_air_temperature": {"values": MONTHS}}))
    other = ask("maintenance-feed", like(FEED, climate=climate))
    assert value(other, "biogas_per_day") == pytest.approx(value(celsius, "biogas_per_day"), rel=1e-6)
    assert value(other, "digester_temperature.coldest_month") == pytest.approx(
        value(celsius, "digester_temperature.coldest_month"), abs=1e-3
    )


# ---- day by day ------------------------------------------------------------------------------------------------------------------


SEASONAL = {"mean_air_temperature": 18.0, "yearly_swing": 14.0, "warmest_month": 7}


@given(st.dates(dt.date(2026, 1, 1), dt.date(2029, 12, 31)), st.integers(1, 800))
def test_the_daily_series_is_the_days_one_by_one(first: dt.date, days: int) -> None:
    found = warmth(**SEASONAL)
    series = found.through(first, days)
    assert series.shape == (days,)
    for day in {0, days // 3, days - 1}:
        assert series[day] == pytest.approx(found.on(first + dt.timedelta(day)).mean, abs=1e-9)


@given(st.dates(dt.date(1990, 1, 1), dt.date(2150, 12, 31)), st.integers(1, 1500))
def test_days_of_the_year_are_the_calendar_s(first: dt.date, days: int) -> None:
    expected = [(first + dt.timedelta(i)).timetuple().tm_yday for i in range(days)]
    assert list(days_of_year(first, days)) == expected


def test_a_year_s_series_has_the_mean_and_the_extremes_that_are_told() -> None:
    found = warmth(**SEASONAL)
    series = found.through(dt.date(2027, 1, 1), 365)
    assert series.mean() == pytest.approx(found.mean, abs=1e-9)
    assert series.min() == pytest.approx(found.coldest, abs=0.01)
    assert found.ground is not None
    assert np.ptp(series) == pytest.approx(2 * found.ground.amplitude, abs=0.01)


def test_without_a_phase_or_a_day_the_series_is_flat() -> None:
    unphased = warmth(mean_air_temperature=18.0, yearly_swing=14.0)
    for series in (unphased.through(dt.date(2027, 1, 1), 30), warmth(**SEASONAL).through(None, 30)):
        assert list(series) == pytest.approx([unphased.mean] * 30)
    assert list(warmth(digester_temperature=27.0).through(dt.date(2027, 1, 1), 3)) == [27.0] * 3


def test_asking_for_a_day_twice_moves_the_season_once() -> None:
    found, day = warmth(**SEASONAL), dt.date(2027, 2, 1)
    assert found.on(day).on(day).mean == pytest.approx(found.on(day).mean)
    assert found.on(dt.date(2027, 8, 1)).on(day).uncertain.told == pytest.approx(found.on(day).uncertain.told)


def test_the_same_formula_for_many_samples_at_once() -> None:
    ground = warmth(**SEASONAL).ground
    assert ground is not None
    offset, depth, diffusivity = np.array([1.0, 1.5, 2.0]), np.array([0.0, 1.5, 3.0]), np.array([0.03, 0.05, 0.07])
    days = days_of_year(dt.date(2027, 1, 1), 365)
    together = np.asarray(ground.at(days[:, None], offset, depth, diffusivity))
    assert together.shape == (365, 3)
    for i in range(3):
        alone = np.asarray(ground.at(days, offset[i], depth[i], diffusivity[i]))
        assert together[:, i] == pytest.approx(alone)
    assert np.ptp(together, axis=0)[0] == pytest.approx(14, abs=0.01), "above ground the whole swing of the air"
    with pytest.raises(ValueError, match="phase"):
        warmth(mean_air_temperature=18.0).ground.at(1.0)  # type: ignore[union-attr]


# ---- depth -----------------------------------------------------------------------------------------------------------------------


@given(st.floats(0, 19), st.floats(0.1, 1), st.floats(0.5, 40))
def test_deeper_soil_keeps_the_winter_out(depth: float, more: float, swing: float) -> None:
    def coldest(depth: float) -> float:
        climate = Climate.model_construct(**dict.fromkeys(Climate.model_fields) | {"mean_air_temperature": 15.0, "yearly_swing": swing})
        return warmth_of(climate, Ledger(Shelf(base().data)), "fixed_dome", depth).coldest

    assert coldest(depth + more) > coldest(depth)
    assert coldest(0.0) == pytest.approx(16.5 - swing / 2)


def test_a_stated_depth_goes_before_the_structure_s_and_that_before_practice() -> None:
    climate = {"mean_air_temperature": 20, "yearly_swing": 12}
    feed = like(FEED, climate=climate)
    month = "digester_temperature.coldest_month"
    coldest = {
        depth: value(
            ask("maintenance-feed", like(feed, digester={**FEED["digester"], "depth": depth})), "digester_temperature.coldest_month"
        )
        for depth in (0, 1.5, 4)
    }
    usual = ask("maintenance-feed", feed)
    assert coldest[0] < coldest[1.5] < coldest[4]
    assert value(usual, month) == coldest[1.5]
    told = {"value": 1.5, "low": 1.0, "high": 2.0, "unit": "m", "basis": "judgement", "source": []}
    assert [one for one in usual["assumptions"] if one["quantity"] == "soil_depth"] == [
        {"quantity": "soil_depth", "of": "fixed_dome", **told}
    ]
    stated = ask("maintenance-feed", like(feed, digester={**FEED["digester"], "depth": {"value": 150, "unit": "cm"}}))
    assert not {("soil_depth", "fixed_dome"), ("soil_depth", None)} & assumed(stated)
    assert [one.get("of") for one in _assumptions_without_structure() if one["quantity"] == "soil_depth"] == [None]


def _assumptions_without_structure() -> list[Json]:
    ledger = Ledger(Shelf(base().data))
    warmth_of(Climate.model_construct(**dict.fromkeys(Climate.model_fields) | {"mean_air_temperature": 15.0}), ledger)
    return ledger.assumptions


def test_a_measured_temperature_asks_for_no_depth() -> None:
    measured = ask("maintenance-feed", like(FEED, climate={"digester_temperature": 25}, digester={**FEED["digester"], "structure": "bag"}))
    assert not {("soil_depth", "bag"), ("soil_depth", None)} & assumed(measured)


def test_a_bag_in_its_trench_is_colder_in_winter_than_a_dome_and_a_tank_above_ground_than_both() -> None:
    climate = {"mean_air_temperature": 20, "yearly_swing": 12}
    coldest = [
        value(ask("sizing", {"structure": name, "gas_demand": 1, "climate": climate}), "digester_temperature.coldest_month")
        for name in ("batch_tank", "bag", "fixed_dome")
    ]
    assert coldest == sorted(coldest)
    assert coldest[0] == pytest.approx(20 + 1.5 - 6)


# ---- altitude --------------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("altitude", [-400, 0, 1700, 3800, 5500])
def test_the_pressure_of_a_place_is_the_standard_atmosphere_s(altitude: float) -> None:
    """fluids (general library), 1976 standard atmosphere, the same below 11 km.

    The standard counts geopotential height: as the crow climbs, 5,500 m are 4.8 m more, which is 0.06 % of the pressure.
    """
    geometric = EARTH_RADIUS * altitude / (EARTH_RADIUS - altitude)
    assert pressure_of(Climate.model_validate({"altitude": altitude})) == pytest.approx(ATMOSPHERE_1976(geometric).P, rel=2e-5)


def test_a_place_of_unknown_height_lies_at_the_sea() -> None:
    assert pressure_of(None) == pressure_of(Climate()) == 101325.0


def test_heights_of_no_farm_are_refused_and_feet_are_read() -> None:
    for height in (-401, 5501, {"value": 6, "unit": "km"}):
        with pytest.raises(RefusedError):
            ask("sizing", {"gas_demand": 1, "climate": {"altitude": height}})
    assert pressure_of(Climate.model_validate({"altitude": {"value": 5000, "unit": "[ft_i]"}})) == pytest.approx(84307, rel=1e-3)


# ---- the cold season -------------------------------------------------------------------------------------------------------------

COLD_CHECKS = ("frost", "slurry_freezes", "cold_season", "slurry_too_hot")


def verdicts(name: str, **climate: object) -> dict[str, str]:
    """How the checks of the season end; those that pass are not listed."""
    body = {"gas_demand": 1, "climate": climate} if name == "sizing" else like(FEED, climate=climate)
    found = findings(ask(name, body))
    return {check: found.get(check, "pass") for check in COLD_CHECKS}


BOTH = pytest.mark.parametrize("name", ["sizing", "maintenance-feed"])


@BOTH
def test_nothing_known_of_the_air_is_never_free_of_frost(name: str) -> None:
    for climate in ({}, {"digester_temperature": 25}, {"mean_air_temperature": 25}, {"altitude": 100}):
        assert set(verdicts(name, **climate).values()) == {"unknown"}, climate


@BOTH
def test_a_mild_and_a_hard_winter(name: str) -> None:
    assert set(verdicts(name, mean_air_temperature=24, yearly_swing=4).values()) == {"pass"}
    hard = verdicts(name, mean_air_temperature=8, yearly_swing=30)
    assert (hard["frost"], hard["cold_season"]) == ("fail", "fail")
    frosty = verdicts(name, monthly_air_temperature={"values": [2, *[15] * 11]})
    assert frosty["frost"] == "fail", "the coldest month counts, not the mean"


@BOTH
def test_a_stated_coldest_month_answers_where_the_climate_does_not(name: str) -> None:
    body = {"gas_demand": 1} if name == "sizing" else FEED
    for degrees, verdict in ((12, None), (1, "fail")):
        assert findings(ask(name, {**body, "facts": {"coldest_month_air_temperature": degrees}})).get("frost") == verdict


def test_measured_slurry_in_known_air_knows_the_frost_and_not_the_season() -> None:
    found = verdicts("maintenance-feed", digester_temperature=20, mean_air_temperature=10, yearly_swing=30)
    assert (found["frost"], found["cold_season"]) == ("fail", "unknown")


@pytest.mark.parametrize("swing", [10.0, 20.0])
def test_the_share_of_the_cold_month_is_the_closed_form_s(swing: float) -> None:
    """One substrate: share of the potential at the coldest over that at the mean, first order in one stirred tank."""
    answer = ask(
        "maintenance-feed",
        like(FEED, climate={"mean_air_temperature": 19, "yearly_swing": swing}, digester={"total_volume": 9, "depth": 0.3}),
    )
    [finding] = [one for one in answer["findings"] if one["check"] == "cold_season"]
    rate = base().data.substrates["cattle_dung"].degradation_rate.typical
    retention = value(answer, "hydraulic_retention_time")
    shares = [
        mixed_share(temperature_corrected_rate(rate, value(answer, f"digester_temperature.{which}")), retention, 1.0)
        for which in ("coldest_month", "mean")
    ]
    assert finding["verdict"] == "fail"
    assert finding["value"]["value"] == pytest.approx(100 * shares[0] / shares[1], rel=1e-3)


@given(ids("structures"), st.floats(-40, 70), st.floats(0, 60))
def test_impossible_slurry_is_a_finding_and_not_a_crash(structure: str, mean: float, swing: float) -> None:
    climate = {"mean_air_temperature": mean, "yearly_swing": swing}
    for name, body in (
        ("sizing", {"structure": structure, "gas_demand": 1, "climate": climate}),
        ("maintenance-feed", like(FEED, climate=climate, digester={"structure": structure, "total_volume": 9})),
    ):
        answer = answer_or_refusal(name, body)
        assert answer is not None
        found, coldest = findings(answer), value(answer, "digester_temperature.coldest_month")
        warmest = 2 * value(answer, "digester_temperature.mean") - coldest
        assert (found.get("slurry_freezes") == "fail") == (coldest < 4) or abs(coldest - 4) < 0.01
        assert (found.get("slurry_too_hot") == "fail") == (warmest > 45) or abs(warmest - 45) < 0.01


@given(st.floats(-40, 70))
def test_a_measured_slurry_that_freezes_or_cooks_is_found(measured: float) -> None:
    found = findings(ask("sizing", {"gas_demand": 1, "climate": {"digester_temperature": measured}}))
    assert ("temperature_freezing" in found) == (measured <= 0)
    assert ("temperature_least" in found) == (measured < 10)
    assert ("temperature_most" in found) == (measured > 40)


@pytest.mark.parametrize(
    ("beside", "denied"),
    [
        ({"mean_air_temperature": 30}, ["/climate/mean_air_temperature"]),
        ({"mean_air_temperature": {"value": 66, "unit": "[degF]"}}, []),
        ({"yearly_swing": {"value": 4, "unit": "K"}, "mean_air_temperature": 18.5}, []),
        ({"yearly_swing": {"value": 14, "unit": "K"}}, ["/climate/yearly_swing"]),
        ({"yearly_swing": 14, "mean_air_temperature": 10}, ["/climate/mean_air_temperature", "/climate/yearly_swing"]),
    ],
)
def test_a_year_that_its_months_deny_is_refused(beside: Json, denied: list[str]) -> None:
    """The months' mean is 18.6 Cel (65.5 degF) and they lie 3.8 K apart; neither statement may win in silence."""
    pointers = []
    try:
        ask("maintenance-feed", like(FEED, climate={"monthly_air_temperature": {"values": MONTHS}, **beside}))
    except RefusedError as refused:
        pointers = [fault.pointer for fault in refused.faults]
    assert pointers == denied
