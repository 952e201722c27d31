"""The state of the gas volumes of an answer: as used, moist, at 25 Cel and the pressure of the place, and what that is as normal volume."""

from __future__ import annotations

from pydantic import Field

from kilisho.farm import Ledger
from kilisho.formulas.digester import REFERENCE_TEMPERATURE, SEA_LEVEL_PRESSURE
from kilisho.formulas.gas import normal_factor
from kilisho.messages import say
from kilisho.questions.answers import Amount, Answer, Told, in_celsius, in_kilopascals, in_number
from kilisho.questions.climate import pressure_of
from kilisho.questions.requests import Climate
from kilisho.questions.sharing import once


class GasState(Told):
    """The state of every gas volume of the answer whose name does not end in ``_normal``."""

    temperature: Amount
    pressure: Amount
    moist: bool
    normal_volume: Amount = Field(description="Dry gas at 0 Cel and 101.325 kPa in one cubic metre of this state.")


@once
def take_gas_state(climate: Climate | None, ledger: Ledger) -> None:
    """Put the pressure of the place into the ledger; sea level, listed as an assumption, where its altitude is not stated."""
    if climate is None or climate.altitude is None:
        ledger.choose("altitude", "sea_level", say("assumed-altitude"))
    ledger.put(gas_pressure=pressure_of(climate))


def gas_state(ledger: Ledger) -> Answer:
    """The state as an answer tells it."""
    pressure = ledger.values["gas_pressure"]
    return {
        "temperature": in_celsius(REFERENCE_TEMPERATURE),
        "pressure": in_kilopascals(pressure),
        "moist": True,
        "normal_volume": in_number(float(normal_factor(REFERENCE_TEMPERATURE, pressure))),
    }


def at_the_place(ledger: Ledger) -> float:
    """What a handbook's gas volume, told at sea level, takes up at the place [1]; the same gas, so the same heat."""
    pressure = ledger.values["gas_pressure"]
    return float(normal_factor(REFERENCE_TEMPERATURE, SEA_LEVEL_PRESSURE) / normal_factor(REFERENCE_TEMPERATURE, pressure))
