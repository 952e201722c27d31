"""The digester's temperature from what is known of the climate."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from kilisho.farm import Ledger
from kilisho.formulas.temperature import seasonal_amplitude_at_depth
from kilisho.questions.answers import Answer, in_celsius
from kilisho.questions.requests import Climate
from kilisho.units import to_canonical


@dataclass(frozen=True, slots=True)
class Warmth:
    """Slurry temperature through the year [Cel]: the mean with its range, and the coldest month."""

    mean: float
    low: float
    high: float
    coldest: float
    known: bool

    def told(self) -> Answer:
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
        warmth = _buried(*air, ledger)
    else:
        guess = ledger.practice("digester_temperature", "unknown_digester_temperature")
        warmth = Warmth(
            guess, ledger.low["digester_temperature"], ledger.high["digester_temperature"], ledger.low["digester_temperature"], known=False
        )
    ledger.put(digester_temperature=warmth.mean)
    return warmth


def _air(climate: Climate | None) -> tuple[float, float | None] | None:
    """Mean of the year and warmest less coldest month, as far as stated."""
    if climate is None:
        return None
    if climate.monthly_air_temperature is not None:
        months = [to_canonical(v, "temperature", climate.monthly_air_temperature.unit) for v in climate.monthly_air_temperature.values]
        return sum(months) / 12, max(months) - min(months)
    return None if climate.mean_air_temperature is None else (climate.mean_air_temperature, climate.yearly_swing)


def _buried(mean_air: float, swing: float | None, ledger: Ledger) -> Warmth:
    offset = ledger.practice("soil_offset")
    if swing is None:
        swing = ledger.practice("yearly_swing", "unknown_yearly_swing")
    depth, diffusivity = ledger.practice("soil_depth"), ledger.practice("soil_diffusivity")
    amplitude: Any = seasonal_amplitude_at_depth(swing / 2, depth, diffusivity)
    mean = mean_air + offset
    return Warmth(mean, mean_air + ledger.low["soil_offset"], mean_air + ledger.high["soil_offset"], mean - amplitude, known=True)
