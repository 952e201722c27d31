"""The digester's temperature through the year from what is known of the climate."""

from __future__ import annotations

import cmath
import datetime as dt
import math
from collections.abc import Sequence
from dataclasses import dataclass

from kilisho.farm import Ledger
from kilisho.formulas.temperature import ground_temperature, seasonal_amplitude_at_depth
from kilisho.questions.answers import Answer, in_celsius
from kilisho.questions.requests import Climate
from kilisho.ranges import Uncertain, sampled
from kilisho.units import to_canonical

MONTH = 365 / 12
HALF_YEAR = 365 / 2


@dataclass(frozen=True, slots=True)
class Air:
    """The air as far as known: mean of the year [Cel], warmest less coldest month [K], and the coldest day of the year [d]."""

    mean: float
    swing: float | None
    coldest_day: float | None


@dataclass(frozen=True, slots=True)
class Warmth:
    """Slurry temperature [Cel]: the year's mean with its range, the coldest month, and the season if its phase is known."""

    mean: float
    low: float
    high: float
    coldest: float
    known: bool
    season: tuple[float, float, float, float] | None = None

    def on(self, day: dt.date | None) -> Warmth:
        """The warmth around ``day``; the year's mean where the season or the day is not known."""
        if day is None or self.season is None:
            return self
        half_swing, depth, coldest_day, diffusivity = self.season
        shift = float(ground_temperature(0.0, half_swing, depth, day.timetuple().tm_yday, coldest_day, diffusivity))
        return Warmth(self.mean + shift, self.low + shift, self.high + shift, self.coldest, self.known, self.season)

    @property
    def uncertain(self) -> Uncertain:
        """The year's mean with its samples."""
        return Uncertain(self.mean, sampled("climate/digester_temperature", self.low, self.mean, self.high))

    def told(self) -> Answer:
        """The temperatures as an answer shows them."""
        return {
            "mean": in_celsius(self.mean, self.low, self.high),
            "coldest_month": in_celsius(self.coldest),
            "known": self.known,
        }


def warmth_of(climate: Climate | None, ledger: Ledger) -> Warmth:
    """Slurry temperature: as measured, or the soil's from the air's mean and swing, a little warmer (see ``soil_offset``).

    Without any climate the rulebook's wide guess is used, and ``known`` is false.
    """
    air = _air(climate)
    if climate is not None and climate.digester_temperature is not None:
        measured = climate.digester_temperature
        warmth = Warmth(measured, measured, measured, measured, known=True)
    elif air is not None:
        warmth = _buried(air, ledger)
    else:
        guess = ledger.practice("digester_temperature", "unknown_digester_temperature")
        reading = ledger.shelf.reading("figures", "unknown_digester_temperature", "digester_temperature")
        low, high = reading.low, reading.high
        warmth = Warmth(guess, low, high, low, known=False)
    take_temperature(warmth, ledger)
    return warmth


def take_temperature(warmth: Warmth, ledger: Ledger) -> None:
    """Put the slurry's mean temperature into the ledger, with its samples."""
    ledger.put(digester_temperature=warmth.mean)
    ledger.sample(digester_temperature=warmth.uncertain.samples)


def _air(climate: Climate | None) -> Air | None:
    if climate is None:
        return None
    if climate.monthly_air_temperature is not None:
        months = [to_canonical(v, "temperature", climate.monthly_air_temperature.unit) for v in climate.monthly_air_temperature.values]
        return Air(sum(months) / 12, max(months) - min(months), _coldest_day(months))
    if climate.mean_air_temperature is None:
        return None
    warmest = None if climate.warmest_month is None else ((climate.warmest_month - 0.5) * MONTH + HALF_YEAR) % 365
    return Air(climate.mean_air_temperature, climate.yearly_swing, warmest)


def _coldest_day(months: Sequence[float]) -> float:
    """Day of the year on which the first harmonic of twelve monthly means is lowest."""
    wave = sum(value * cmath.exp(-2j * math.pi * (i + 0.5) / 12) for i, value in enumerate(months))
    return ((-cmath.phase(wave) / (2 * math.pi)) * 365 + HALF_YEAR) % 365


def _buried(air: Air, ledger: Ledger) -> Warmth:
    offset = ledger.practice("soil_offset")
    reading = ledger.shelf.reading("figures", "soil_offset", "soil_offset")
    swing = ledger.practice("yearly_swing", "unknown_yearly_swing") if air.swing is None else air.swing
    depth, diffusivity = ledger.practice("soil_depth"), ledger.practice("soil_diffusivity")
    amplitude = float(seasonal_amplitude_at_depth(swing / 2, depth, diffusivity))
    mean, low, high = air.mean + offset, air.mean + reading.low, air.mean + reading.high
    season = None if air.coldest_day is None else (swing / 2, depth, air.coldest_day, diffusivity)
    return Warmth(mean, low, high, mean - amplitude, known=True, season=season)
