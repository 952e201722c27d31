"""The shape of a feed mix's answer."""

from __future__ import annotations

from typing import Any

from pydantic import Field

from kilisho.questions.answers import Amount, Common, Told
from kilisho.questions.gas_state import GasState


class RecipePart(Told):
    """One substrate of the recipe."""

    substrate: str
    name: str
    mass: Amount = Field(description="Fresh mass per day.")
    share: Amount = Field(description="Of the fresh mass of all substrates.")
    share_of_volatile_solids: Amount
    used: Amount = Field(description="Of what there is per day.")
    cost_per_day: float = Field(description="In the currency of the request's prices.")
    stock_lasts: Amount | None = Field(None, description="At this recipe; absent where the stock is not drawn on.")
    handling: list[str]


class LeftOver(Told):
    """What of a substrate stays on hand per day."""

    substrate: str
    name: str
    mass: Amount


class LimitTold(Told):
    """One limit."""

    limit: str
    name: str = Field(description="What people call the limit.")
    of: str | None = Field(None, description="Id of the substrate that it belongs to.")
    bound: Amount
    reached: Amount | None = Field(None, description="What the recipe reaches, with typical figures.")


class BindingLimit(Told):
    """A limit that holds the recipe back."""

    limit: str
    name: str = Field(description="What people call the limit.")
    of: str | None = None
    value: Amount
    one_more: Amount = Field(description="The step for which the gain is told.")
    brings: Amount | None = Field(None, description="More biogas per day; with the wish most_gas.")
    saves: float | None = Field(None, description="Less cost per day; with the wish cheapest.")
    eases: Amount | None = Field(None, description="By how much the largest use falls; with the wish most_even.")
    text: str


class Change(Told):
    """A limit that would have to give way."""

    limit: str
    name: str = Field(description="What people call the limit.")
    of: str | None = None
    before: Amount = Field(alias="from")
    after: Amount = Field(alias="to")
    text: str


class Easing(Told):
    """Limits that would do if they were relaxed, and the recipe that is then possible."""

    changes: list[Change]
    recipe: list[LeftOver] = Field(description="Fresh mass per day of each substrate.")
    water: Amount


class Relaxation(Told):
    """What could give way where nothing keeps all limits."""

    text: str
    most_gas_within_limits: Amount
    together: Easing | None = Field(None, description="The least relaxation in all; absent where no relaxation of limits is enough.")
    alone: list[Easing] = Field(description="Limits whose relaxation alone is enough.")


class Proof(Amount):
    """How near the recipe is to the best possible."""

    text: str


class FeedMixAnswer(Common):
    """The recipe. Where ``feasible`` is false it is empty and ``relax`` says what could give way."""

    feasible: bool
    wish: str
    recipe: list[RecipePart]
    feed_per_day: Amount | None = None
    water_per_day: Amount | None = None
    slurry_per_day: Amount | None = None
    total_solids: Amount | None = Field(None, description="Of the slurry.")
    carbon_to_nitrogen: Amount | None = None
    total_ammonia_nitrogen: Amount | None = None
    free_ammonia: Amount | None = None
    hydraulic_retention_time: Amount | None = None
    organic_loading_rate: Amount | None = None
    biogas_per_day: Amount | None = Field(None, description="As used; see gas_state.")
    biogas_per_day_normal: Amount | None = None
    gas_state: GasState | None = None
    methane_share: Amount | None = None
    gas_demand: Amount | None = None
    demand_met: Amount | None = None
    cost_per_day: float | None = Field(None, description="In the currency of the request's prices; what has none is free.")
    largest_use: Amount | None = Field(None, description="Largest part of what there is of any substrate that the recipe uses.")
    left_over: list[LeftOver] | None = None
    proved_within: Proof | None = None
    limits: list[LimitTold]
    binding_limits: list[BindingLimit]
    relax: Relaxation | None = None
    digester_temperature: dict[str, Any]
