"""The slurry's temperature from the climate: measured, from the air, by season, or not known at all."""

from __future__ import annotations

import datetime as dt
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, base, like, value

from kilisho.farm import Ledger, Shelf
from kilisho.formulas.temperature import ground_temperature
from kilisho.questions.climate import Warmth, warmth_of
from kilisho.questions.requests import Climate, MonthlyTemperature

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
    assert (found.mean, found.low, found.high, found.coldest, found.known) == (24.5, 24.5, 24.5, 24.5, True)


def test_a_buried_digester_is_one_to_two_kelvin_warmer_than_the_air() -> None:
    """Biogas Digest volume II, p. 40: slurry temperature is the soil's and 1 to 2 K (seen)."""
    found = warmth(mean_air_temperature=20.0, yearly_swing=0.0)
    assert (found.low, found.mean, found.high, found.coldest) == (21.0, 21.5, 22.0, 21.5)


def test_without_any_climate_the_span_is_wide_and_said_to_be_unknown() -> None:
    found = warmth_of(None, Ledger(Shelf(base().data)))
    assert not found.known
    assert found.high - found.low >= 10
    assert found.coldest == found.low


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
    season = warmth(monthly_air_temperature=MonthlyTemperature(values=months, unit="Cel")).season
    assert season is not None
    assert math.cos(2 * math.pi * (season[2] - coldest_day) / 365) == pytest.approx(1, abs=1e-9)


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
