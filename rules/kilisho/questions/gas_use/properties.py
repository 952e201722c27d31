"""The gas itself: composition, heat, density and Wobbe index, as used and normal."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from kilisho.farm import Ledger
from kilisho.formulas.digester import REFERENCE_TEMPERATURE
from kilisho.formulas.gas import (
    heating_value_higher,
    heating_value_lower,
    moist_biogas_density,
    normal_factor,
    relative_density,
    wobbe_index,
)
from kilisho.questions.answers import (
    Answer,
    in_cubic_metres_per_day,
    in_kilograms_per_cubic_metre,
    in_kilowatt_hours_per_day,
    in_megajoules_per_cubic_metre,
    in_megajoules_per_day,
    in_number,
    in_percent,
)
from kilisho.ranges import Uncertain, applied


def take_methane_share(stated: float | None, ledger: Ledger) -> None:
    """Put the methane share and the heat of the gas as used into the ledger."""
    if stated is not None:
        ledger.state("methane_share", stated)
    else:
        ledger.practice("methane_share", "unknown_methane_share")
    ledger.solve("lower_heating_value")


def told_gas(volume: Uncertain, ledger: Ledger) -> Answer:
    """Properties, and the heat of a day's gas [m3/d]."""
    methane, pressure = ledger.uncertain("methane_share"), ledger.values["gas_pressure"]
    heat = volume.by(ledger.uncertain("lower_heating_value")).told

    lower, relative = applied(heating_value_lower, methane), applied(relative_density, methane)

    def of(formula: Callable[..., Any], *parts: Uncertain) -> tuple[float, ...]:
        return applied(formula, *parts).told

    return {
        "methane_share": in_percent(*methane.told),
        "lower_heating_value": in_megajoules_per_cubic_metre(*ledger.of("lower_heating_value")),
        "lower_heating_value_normal": in_megajoules_per_cubic_metre(*lower.told),
        "higher_heating_value_normal": in_megajoules_per_cubic_metre(*of(heating_value_higher, methane)),
        "lower_wobbe_index_normal": in_megajoules_per_cubic_metre(*of(wobbe_index, lower, relative)),
        "density": in_kilograms_per_cubic_metre(*of(lambda share: moist_biogas_density(share, REFERENCE_TEMPERATURE, pressure), methane)),
        "relative_density": in_number(*relative.told),
        "gas_per_day": in_cubic_metres_per_day(*volume.told),
        "gas_per_day_normal": in_cubic_metres_per_day(*volume.times(float(normal_factor(REFERENCE_TEMPERATURE, pressure))).told),
        "heat_per_day": in_megajoules_per_day(*heat),
        "heat_per_day_in_kilowatt_hours": in_kilowatt_hours_per_day(*heat),
    }
