"""What a diagnosis is asked with."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import Field

from kilisho.questions import fields as f
from kilisho.questions.requests import Ask, Climate, Digester, Dilution, Enquiry, Feed, Herd

MOST_SYMPTOMS = 60
PRESSURE = f.InUnit("pressure", "Pa", -50_000, 100_000)
AMMONIA = f.InUnit("density", "g/L", 0, 50)
FREE_AMMONIA = f.InUnit("density", "mg/L", 0, 20_000)
MEASURED_GAS = f.InUnit("volume_flow", "m3/d", 0, 1e3)
SULFIDE = f.InUnit("share", "[ppm]", 0, 100_000)
SINCE = f.InUnit("time", "d", 0, 36_525)
# A reading by its name in the request, and the fact that it is; the measured gas becomes a fact by what is expected of the feed.
READING_FACTS = {
    "ph": "slurry_ph",
    "gas_pressure": "gas_pressure",
    "slurry_temperature": "digester_temperature",
    "volatile_acids_to_alkalinity": "volatile_acids_to_alkalinity",
    "total_ammonia_nitrogen": "total_ammonia_nitrogen",
    "free_ammonia": "free_ammonia",
    "methane_share": "methane_in_gas",
    "hydrogen_sulfide": "hydrogen_sulfide_in_gas",
    "days_since_feeding": "days_since_feeding",
}
SymptomIds = Annotated[list[Annotated[str, f.Identifier("symptoms")]], Field(max_length=MOST_SYMPTOMS)]


class Readings(Ask):
    """What was measured. Other facts (lengths of pipe, results of tests ...) go into ``facts``."""

    ph: Annotated[float | None, f.SLURRY_PH] = Field(None, description="pH of fresh slurry.")
    gas_pressure: Annotated[float | None, PRESSURE] = Field(None, description="In the digester, against the open air.")
    biogas_per_day: Annotated[float | None, MEASURED_GAS] = Field(None, description="Gas used and let off in a day, as metered.")
    slurry_temperature: Annotated[float | None, f.TEMPERATURE] = Field(None, description="In the digester now.")
    volatile_acids_to_alkalinity: Annotated[float | None, f.plain_number(0, 100)] = Field(None, description="Both in the same unit.")
    total_ammonia_nitrogen: Annotated[float | None, AMMONIA] = Field(None, description="In the slurry.")
    free_ammonia: Annotated[float | None, FREE_AMMONIA] = Field(None, description="In the slurry.")
    methane_share: Annotated[float | None, f.MASS_SHARE] = Field(None, description="Methane in the gas by volume.")
    hydrogen_sulfide: Annotated[float | None, SULFIDE] = Field(None, description="In the gas.")
    days_since_feeding: Annotated[float | None, SINCE] = Field(None, description="Time since the last feeding.")


class DiagnosisRequest(Enquiry):
    """What is wrong with a digester: what is seen, what was measured, and as much of the farm as is known."""

    symptoms: SymptomIds = Field([], description="What the household sees, smells or remembers; ids of /v1/symptoms.")
    not_seen: SymptomIds = Field([], description="Symptoms that somebody looked for and did not find; what is in neither list is unknown.")
    readings: Readings = Readings()
    digester: Digester | None = None
    feed: Feed = Field([], description="What is fed now; with it and the digester the gas that should come is worked out.")
    herd: Herd = Field([], description="Animals of the farm, where the feed's mass is not stated.")
    water: Annotated[float | None, f.DAILY_WATER] = Field(None, description="Water mixed in per day.")
    dilution: Dilution | None = Field(None, description="Instead of water.")
    climate: Climate | None = None


EXAMPLE: dict[str, Any] = {
    "name": "Highfold (invented)",
    "symptoms": ["gas_fell_slowly", "flame_yellow", "sour_smell"],
    "not_seen": ["scum_seen"],
    "readings": {
        "ph": 6.5,
        "gas_pressure": {"value": 25, "unit": "cm[H2O]"},
        "biogas_per_day": {"value": 0.8, "unit": "m3/d"},
        "slurry_temperature": {"value": 23, "unit": "Cel"},
    },
    "digester": {"structure": "fixed_dome", "total_volume": {"value": 12, "unit": "m3"}, "age": {"value": 4, "unit": "a"}},
    "feed": [{"substrate": "cattle_dung", "mass": {"value": 95, "unit": "kg/d"}}],
    "water": {"value": 95, "unit": "L/d"},
}
