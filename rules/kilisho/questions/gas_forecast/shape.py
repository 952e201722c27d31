"""The shape of a gas forecast's answer."""

from __future__ import annotations

from typing import Any, Literal

from pydantic import Field

from kilisho.questions.answers import Amount, Common, Told
from kilisho.questions.gas_state import GasState


class SeriesRow(Told):
    """One day, week or month; gas is the mean of its days."""

    day: int = Field(description="First day of the step, counted from the first day of the forecast.")
    date: str | None = None
    days: int | None = Field(None, description="Days of the step; absent for a single day.")
    gas: Amount = Field(description="Per day, as used; see gas_state.")
    methane: Amount = Field(description="Per day, normal volume.")
    temperature: Amount = Field(description="Of the slurry.")
    acid_risk: Literal["low", "raised", "high"] = Field(
        description="high: the acids of the typical digester call for a stop of feeding; raised: they call for watching, or those of one "
        "sample in twenty for a stop; low: neither. A forecast, not a measurement."
    )
    acid_ratio: Amount = Field(
        description="Volatile acids over alkalinity, highest day of the step: above 0.3 watch, above 0.4 stop feeding."
    )


class FlameDates(Told):
    """Between which days the gas first burns, for nine in ten samples. The flame is tried outdoors and after venting, whatever the date."""

    earliest: str | None = None
    latest: str | None = None


class LeastGas(Told):
    """The day with the least gas once the digester works."""

    day: int
    date: str | None = None
    gas: Amount


class ChangeTold(Told):
    """What a change of the last feeding plan would do, for the typical farm."""

    change: str
    text: str
    total_gas: Amount
    against_plan: Amount = Field(description="Gas of the whole forecast more (or less) than with the plan as stated.")
    gas_at_the_end: Amount = Field(description="Mean of the last 90 days of the plan, or of as many as there are.")
    against_plan_at_the_end: Amount
    hydraulic_retention_time: Amount
    acid_risk: Literal["low", "raised", "high"]


class GapTold(Told):
    """Days that no feeding plan covers."""

    first_day: int
    last_day: int
    date: str | None = None
    until: str | None = None


class GasForecastAnswer(Common):
    """Gas over time."""

    first_day: str
    days: int
    interval: str
    gas_state: GasState
    digester_temperature: dict[str, Any]
    starts: Amount | None = Field(None, description="Samples in which a new digester comes to burnable gas within the forecast.")
    first_burnable_gas_day: Amount | None = Field(
        None,
        description="Days from the first charge until the gas space holds gas that burns; absent where it does not within the forecast.",
    )
    first_burnable_gas: FlameDates | None = None
    steady_gas: Amount | None = Field(
        None, description="What the last plan gives for ever at the year's mean temperature; absent without a plan."
    )
    steady_gas_normal: Amount | None = None
    share_of_potential: Amount | None = None
    methane_share: Amount | None = None
    hydraulic_retention_time: Amount | None = None
    organic_loading_rate: Amount | None = None
    slurry_total_solids: Amount | None = None
    total_gas: Amount
    total_methane_normal: Amount
    least_gas: LeastGas
    highest_acid_risk: Literal["low", "raised", "high"]
    series: list[SeriesRow]
    changes: list[ChangeTold]
    gaps: list[GapTold] = Field(description="Stretches without feed after the first feeding; empty where there are none.")
