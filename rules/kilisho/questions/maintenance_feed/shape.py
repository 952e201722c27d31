"""The shape of a maintenance feed's answer."""

from __future__ import annotations

from typing import Any, Literal

from pydantic import Field

from kilisho.questions.answers import Amount, Common, ContainerCount, Event, SubstrateShare, Told
from kilisho.questions.gas_state import GasState


class PerFeeding(Told):
    """What goes in at one feeding."""

    every: Amount
    substrate_mass: Amount
    substrates: list[SubstrateShare]
    water_volume: Amount
    urine_volume: Amount
    containers: list[ContainerCount]


class UrineTold(Told):
    """Urine in place of water."""

    gathered: Amount
    used: Amount
    limited_by: str = Field(description="gathered, largest_share_of_liquid or carbon_to_nitrogen.")
    nitrogen: Amount
    text: str


class RuleOfThumb(Told):
    """What the trade would expect of the herd, beside the model's figure."""

    biogas_per_day: Amount
    within_range: bool
    why: str


class BetweenFeedings(Told):
    """How the gas rises and falls between two feedings."""

    greatest_gas: Amount = Field(description="Just after a feeding.")
    least_gas: Amount = Field(description="Just before the next.")
    storage_needed: Amount = Field(description="For an even use of the gas.")
    text: str


class Operation(Told):
    """Whether the interval still counts as regular feeding."""

    kind: Literal["regular", "irregular", "batch_like", "batch_structure"]
    text: str


class Storing(Told):
    """Feed kept between feedings."""

    oldest: Amount
    text: str


class CatchingUp(Told):
    """How missed feedings are made up without shock."""

    missed_feedings: int
    largest_feeding: Amount
    feedings_to_make_up: int
    text: str


class Grit(Told):
    """What settles, and when it must come out."""

    sludge_per_year: Amount
    desludging_interval: Amount | None = Field(
        None, description="Until sludge fills its share of the digester; absent where nothing settles."
    )
    sludge_so_far: Amount | None = Field(None, description="Only where the digester's age is stated and it was never emptied since.")
    retention_left: Amount | None = Field(None, description="Retention in what the sludge leaves of the working volume.")
    clean_feed: list[str]


class MaintenanceFeedAnswer(Common):
    """The plan of a maintenance feed."""

    per_feeding: PerFeeding
    feed_per_day: Amount
    water_per_day: Amount
    urine_per_day: Amount
    slurry_per_day: Amount
    urine: UrineTold
    hydraulic_retention_time: Amount
    organic_loading_rate: Amount
    slurry_total_solids: Amount
    digester_temperature: dict[str, Any]
    share_of_potential: Amount = Field(description="Part of the ultimate gas that this retention releases at this temperature.")
    biogas_per_day: Amount = Field(description="As used; see gas_state.")
    biogas_per_day_normal: Amount
    gas_state: GasState
    methane_share: Amount
    carbon_to_nitrogen: Amount
    nitrogen_per_day: Amount
    total_ammonia_nitrogen: Amount
    free_ammonia: Amount
    digestate_per_day: Amount
    digestate_mass_per_day: Amount
    rule_of_thumb: RuleOfThumb | None = None
    between_feedings: BetweenFeedings
    operation: Operation
    storing: Storing
    catching_up: CatchingUp
    grit: Grit
    schedule: list[Event]
