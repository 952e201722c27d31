"""The shape of a farm plan's answer: the parts without what all answers share, and that once for the whole."""

from __future__ import annotations

from typing import Any

from pydantic import Field, create_model

from kilisho.questions.answers import Amount, Common, Told
from kilisho.questions.digestate.shape import DigestateAnswer
from kilisho.questions.first_charge.shape import FirstChargeAnswer
from kilisho.questions.gas_forecast.shape import GasForecastAnswer
from kilisho.questions.gas_use.shape import GasUseAnswer
from kilisho.questions.maintenance_feed.shape import MaintenanceFeedAnswer
from kilisho.questions.safety_check import SafetyAnswer
from kilisho.questions.sizing.shape import SizingAnswer


def _part_of(answer: type[Common], text: str) -> type[Told]:
    """An answer without the members that the plan tells once for all parts."""
    own: dict[str, Any] = {name: (one.annotation, one) for name, one in answer.model_fields.items() if name not in Common.model_fields}
    made: type[Told] = create_model(answer.__name__.removesuffix("Answer") + "Part", __base__=Told, __doc__=text, **own)
    return made


class PlanEvent(Told):
    """Something to do, with the part of the plan that asks for it."""

    event: str
    operation: str
    day: int = Field(description="Counted as in that part.")
    date: str | None = None
    text: str
    repeats_every: Amount | None = None


class LeftOut(Told):
    """A part that is not answered."""

    operation: str
    because: str


class LeftOver(Told):
    """What the farm has to feed beyond what the digester is given."""

    mass_per_day: Amount
    text: str


class FarmPlanAnswer(Common):
    """One farm, whole. Each part is the answer of the operation of that name; what all share is told once."""

    sizing: _part_of(SizingAnswer, "The size.") | None = None  # type: ignore[valid-type]
    first_charge: _part_of(FirstChargeAnswer, "The first charge.") | None = None  # type: ignore[valid-type]
    maintenance_feed: _part_of(MaintenanceFeedAnswer, "The feed.") | None = None  # type: ignore[valid-type]
    gas_forecast: _part_of(GasForecastAnswer, "The first year's gas.") | None = None  # type: ignore[valid-type]
    gas_use: _part_of(GasUseAnswer, "The use of the gas.") | None = None  # type: ignore[valid-type]
    digestate: _part_of(DigestateAnswer, "The digestate.") | None = None  # type: ignore[valid-type]
    safety_check: _part_of(SafetyAnswer, "Every check on all that is stated and worked out.") | None = None  # type: ignore[valid-type]
    calendar: list[PlanEvent]
    left_out: list[LeftOut] = Field(description="Parts that are not answered, with the reason.")
    left_over: LeftOver | None = Field(None, description="Absent where all that there is is fed.")
