"""The digester's temperature through the year from what is known of the climate, and the pressure of the place."""

from __future__ import annotations

import cmath
import datetime as dt
import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import TypeAlias

import numpy as np
import numpy.typing as npt

from kilisho.farm import Ledger
from kilisho.formulas.arrays import Numeric
from kilisho.formulas.temperature import atmospheric_pressure, ground_temperature, seasonal_amplitude_at_depth
from kilisho.questions.answers import Answer, in_celsius
from kilisho.questions.requests import Climate
from kilisho.questions.sharing import once
from kilisho.ranges import Uncertain, certain
from kilisho.units import to_canonical

MONTH = 365 / 12
HALF_YEAR = 365 / 2
Array: TypeAlias = npt.NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Air:
    """The air as far as known: mean of the year [Cel], warmest less coldest month [K], coldest month [Cel], coldest day of the year [d]."""

    mean: float
    swing: float | None
    coldest_month: float | None
    coldest_day: float | None


@dataclass(frozen=True, slots=True)
class Ground:
    """What the slurry of a digester in the ground follows: the air's mean [Cel], the slurry's offset from the soil [K], half of the
    air's swing [K], the depth of the slurry's middle [m], the soil's diffusivity [m2/d] and the coldest day of the year [d], if known.
    """

    air: float
    offset: float
    half_swing: float
    depth: float
    diffusivity: float
    coldest_day: float | None

    @property
    def amplitude(self) -> float:
        """Half of the yearly range of the slurry's temperature [K]."""
        return float(seasonal_amplitude_at_depth(self.half_swing, self.depth, self.diffusivity))

    def at(
        self, day_of_year: Numeric, offset: Numeric | None = None, depth: Numeric | None = None, diffusivity: Numeric | None = None
    ) -> Numeric:
        """Slurry temperature [Cel] on days of the year whose phase must be known.

        ``offset``, ``depth`` and ``diffusivity`` replace the typical ones; with arrays of shape (farms,) for them and days of shape
        (days, 1) the answer has the shape (days, farms).
        """
        if self.coldest_day is None:
            raise ValueError("the phase of the year is not known")
        mean = self.air + (self.offset if offset is None else offset)
        deep, conducting = self.depth if depth is None else depth, self.diffusivity if diffusivity is None else diffusivity
        return ground_temperature(mean, self.half_swing, deep, day_of_year, self.coldest_day, conducting)


@dataclass(frozen=True, slots=True)
class Warmth:
    """Slurry temperature [Cel]: the year's mean and the coldest month with their samples; what it follows where it follows the air.

    ``coldest_air`` is the coldest month's air where it was stated, as months or as a mean with its swing; a swing that is only
    assumed says nothing about frost.
    """

    uncertain: Uncertain
    uncertain_coldest: Uncertain
    known: bool
    ground: Ground | None = None
    coldest_air: float | None = None

    @property
    def mean(self) -> float:
        """The year's mean."""
        return self.uncertain.value

    @property
    def coldest(self) -> float:
        """The coldest month; the low end of the guess where nothing is known of the climate."""
        return self.uncertain_coldest.value

    @property
    def season_known(self) -> bool:
        """Whether mean and swing of the air were stated, so that the coldest and warmest months follow."""
        return self.ground is not None and self.coldest_air is not None

    def on(self, day: dt.date | None) -> Warmth:
        """The warmth around ``day``; the year's mean where the season or the day is not known."""
        if day is None or self.ground is None or self.ground.coldest_day is None:
            return self
        shift = float(self.ground.at(float(day.timetuple().tm_yday))) - self.mean
        return replace(self, uncertain=self.uncertain.plus(certain(shift)))

    def through(self, first_day: dt.date | None, days: int) -> Array:
        """Slurry temperature [Cel] on each of ``days`` days from ``first_day``; the mean on all where season or day is not known."""
        if first_day is None or self.ground is None or self.ground.coldest_day is None:
            return np.full(days, self.mean)
        return np.asarray(self.ground.at(days_of_year(first_day, days)))

    def told(self) -> Answer:
        """The temperatures as an answer shows them."""
        return {
            "mean": in_celsius(*self.uncertain.told),
            "coldest_month": in_celsius(*self.uncertain_coldest.told),
            "known": self.known,
        }


def days_of_year(first_day: dt.date, days: int) -> Array:
    """Day of the year, 1 to 366, of each of ``days`` days from ``first_day``."""
    dates = np.datetime64(first_day, "D") + np.arange(days)
    since_new_year: Array = (dates - dates.astype("datetime64[Y]")).astype(float)
    return since_new_year + 1.0


def pressure_of(climate: Climate | None) -> float:
    """Mean atmospheric pressure [Pa] of the place; that of sea level where its altitude is not stated."""
    altitude = climate.altitude if climate is not None else None
    return float(atmospheric_pressure(altitude or 0.0))


@once
def warmth_of(climate: Climate | None, ledger: Ledger, structure: str | None = None, depth: float | None = None) -> Warmth:
    """Slurry temperature: as measured, or the soil's from the air's mean and swing, a little warmer (see ``soil_offset``).

    ``depth`` of the slurry's middle [m], 0 above ground, is the caller's; the structure's where it is None, and the practice's where
    that has none. Without any climate the rulebook's wide guess is used, and ``known`` is false.
    """
    air = _air(climate)
    if climate is not None and climate.digester_temperature is not None:
        measured = certain(climate.digester_temperature)
        warmth = Warmth(measured, measured, known=True, coldest_air=air.coldest_month if air else None)
    elif air is not None:
        warmth = _buried(air, _depth(ledger, structure, depth), ledger)
    else:
        ledger.practice("digester_temperature", "unknown_digester_temperature")
        reading = ledger.shelf.reading("figures", "unknown_digester_temperature", "digester_temperature")
        warmth = Warmth(Uncertain(reading.typical, reading.samples), Uncertain(reading.low, reading.samples), known=False)
    take_temperature(warmth, ledger)
    return warmth


def take_temperature(warmth: Warmth, ledger: Ledger) -> None:
    """Put the slurry's mean temperature into the ledger, with its samples."""
    ledger.put(digester_temperature=warmth.mean)
    ledger.sample(digester_temperature=warmth.uncertain.samples)


def mean_air_of(climate: Climate | None) -> float | None:
    """Mean air temperature of the year [Cel] as stated, outright or by months; None where it was not."""
    air = _air(climate)
    return None if air is None else air.mean


def _air(climate: Climate | None) -> Air | None:
    if climate is None:
        return None
    if climate.monthly_air_temperature is not None:
        months = [to_canonical(v, "temperature", climate.monthly_air_temperature.unit) for v in climate.monthly_air_temperature.values]
        return Air(sum(months) / 12, max(months) - min(months), min(months), _coldest_day(months))
    mean, swing = climate.mean_air_temperature, climate.yearly_swing
    if mean is None:
        return None
    coldest_day = None if climate.warmest_month is None else ((climate.warmest_month - 0.5) * MONTH + HALF_YEAR) % 365
    return Air(mean, swing, None if swing is None else mean - swing / 2, coldest_day)


def _coldest_day(months: Sequence[float]) -> float:
    """Day of the year on which the first harmonic of twelve monthly means is lowest."""
    wave = sum(value * cmath.exp(-2j * math.pi * (i + 0.5) / 12) for i, value in enumerate(months))
    return ((-cmath.phase(wave) / (2 * math.pi)) * 365 + HALF_YEAR) % 365


def _depth(ledger: Ledger, structure: str | None, stated: float | None) -> float:
    if stated is not None:
        ledger.state("soil_depth", stated)
        return stated
    if structure is not None and ledger.shelf.data.structures[structure].depth is not None:
        return ledger.assume("soil_depth", "structures", structure, "depth")
    return ledger.practice("soil_depth")


def _buried(air: Air, depth: float, ledger: Ledger) -> Warmth:
    offset = ledger.practice("soil_offset")
    swing = ledger.practice("yearly_swing", "unknown_yearly_swing") if air.swing is None else air.swing
    ground = Ground(air.mean, offset, swing / 2, depth, ledger.practice("soil_diffusivity"), air.coldest_day)
    mean = ledger.uncertain("soil_offset").plus(certain(air.mean))
    coldest = Uncertain(mean.value - ground.amplitude, mean.samples - _sampled_amplitude(air, swing, ledger))
    return Warmth(mean, coldest, known=True, ground=ground, coldest_air=air.coldest_month)


def _sampled_amplitude(air: Air, swing: float, ledger: Ledger) -> Numeric:
    """Samples of half of the yearly range of the slurry's temperature [K]."""
    swings = ledger.uncertain("yearly_swing").samples if air.swing is None else swing
    depth, diffusivity = ledger.uncertain("soil_depth").samples, ledger.uncertain("soil_diffusivity").samples
    return seasonal_amplitude_at_depth(swings / 2, depth, diffusivity)
