"""The shape of a batch rotation's answer."""

from __future__ import annotations

from typing import Any, Literal

from pydantic import Field

from kilisho.questions.answers import Amount, Common, SubstrateShare, Told
from kilisho.questions.batch_rotation.limits import LONGEST_RETENTION, MOST_DIGESTERS
from kilisho.questions.gas_state import GasState

ChosenFor = Literal["stated", "gas_per_day", "gas_per_feed"]


class ChargeTold(Told):
    """What one charge of one digester holds."""

    slurry_volume: Amount = Field(description="Fresh slurry and starter.")
    substrates: list[SubstrateShare]
    substrate_mass: Amount
    water_volume: Amount
    starter_volume: Amount = Field(description="Old slurry that is left in the digester at every recharge.")
    first_starter_volume: Amount = Field(description="Slurry from a working digester that the first charge is reckoned with.")
    slurry_total_solids: Amount = Field(description="Of the fresh mix, without the starter.")
    gas_potential: Amount = Field(description="Gas of a charge that would degrade wholly, as used.")


class CurveRow(Told):
    """One day of a charge."""

    day: int
    date: str | None = None
    gas: Amount = Field(description="On this day, as used; see gas_state.")
    usable_gas: Amount = Field(description="The part that counts as supply: from the first burnable gas on; before that it is vented.")
    gas_so_far: Amount
    share_of_potential: Amount
    temperature: Amount = Field(description="Of the slurry.")


class RetentionTold(Told):
    """What recharging after so long gains and loses, for the typical charge of the mean year."""

    retention: Amount
    share_of_potential: Amount
    share_lost: Amount = Field(description="Part of the charge's potential that is not gained.")
    gas_per_feed: Amount = Field(description="Usable gas per fresh mass.")
    against_chosen_per_feed: Amount = Field(description="More (or less) per fresh mass than with the retention told.")
    gas_per_day: Amount = Field(description="Usable gas of one digester per day of the whole cycle.")
    feed_per_year: Amount = Field(description="Fresh mass that one digester takes in a year.")


class RotationTold(Told):
    """A number of digesters that are recharged in turn, in the second and third year."""

    digesters: int
    retention: Amount
    chosen_for: ChosenFor
    recharge_every: Amount = Field(description="Mean time from the recharge of one digester to that of the next.")
    gas_supply: Amount = Field(description="Usable gas per day, mean of the years.")
    least_gas: Amount = Field(description="On the day with least.")
    greatest_gas: Amount = Field(description="On the day with most.")
    even_supply: Amount = Field(description="Greatest demand, the same every day, that these digesters and their storage keep up with.")
    storage_between_days: Amount | None = Field(None, description="That carries gas from day to day; absent where none is enough.")
    days_met: Amount | None = Field(None, description="Days a year on which the demand is met in full.")
    demand_met: bool | None = Field(None, description="Whether the typical farm has its demand met on every day.")
    left_over: Amount | None = Field(None, description="Gas per day that finds the store full.")


class RechargeTold(Told):
    """A charge of one digester."""

    digester: int
    day: int = Field(description="From the first charge of the first digester.")
    date: str | None = None
    event: Literal["first_charge", "recharge"]
    text: str
    emptying_from_day: int | None = Field(None, description="Day on which it is opened.")
    emptying_from: str | None = None
    emptying_text: str | None = Field(None, description="How it is opened and emptied.")


class BatchRotationAnswer(Common):
    """Batch digesters recharged in turn."""

    gas_state: GasState
    digester_temperature: dict[str, Any]
    charge: ChargeTold
    starts: Amount = Field(description="Samples in which every charge comes to gas that burns.")
    first_burnable_gas_day: Amount | None = Field(None, description="Of a digester's first charge; absent where its gas never burns.")
    later_burnable_gas_day: Amount | None = Field(None, description="Of a later charge on the same day of the year.")
    turn_round: Amount
    retention: Amount | None = Field(None, description="Days that a charge stays, whole days; absent where no charge gives gas that burns.")
    chosen_for: ChosenFor | None = Field(
        None,
        description="stated; gas_per_day: most gas per day of the cycle; gas_per_feed: the longest with which these digesters keep the "
        "demand met about as surely as they can.",
    )
    longest_retention: Amount | None = Field(
        None, description="With which the typical farm just keeps the demand met; many of its samples do not."
    )
    retention_for_gas_per_day: Amount | None = Field(
        None, description="Retention of most gas per day: there the day's gas has fallen to the mean of the cycle."
    )
    gas_of_charge: Amount | None = Field(None, description="Gas of one charge until it is opened, as used, the vented part with it.")
    vented_of_charge: Amount | None = Field(None, description="Of it, what comes before the gas burns and is let off.")
    share_of_potential: Amount | None = None
    gas_curve: list[CurveRow] = Field(
        description=f"A charge that begins on the first day, at most {LONGEST_RETENTION} days; charges of other seasons differ."
    )
    other_retentions: list[RetentionTold]
    digesters_needed: Amount | None = Field(
        None,
        description=f"Fewest that keep the demand met on every day, 1 to {MOST_DIGESTERS}; absent without a demand and where that many do "
        "not. Without a high end where some samples need more than that.",
    )
    digesters: int | None = Field(None, description="Of the rotation that is told: the farm's, or as many as needed.")
    recharge_every: Amount | None = None
    gas_supply: Amount | None = None
    even_supply: Amount | None = None
    gas_demand: Amount | None = None
    demand_met: Amount | None = Field(None, description="Samples in which this rotation keeps the demand met on every day.")
    storage_needed: Amount | None = Field(
        None, description="storage_between_days and storage_within_day together; absent where no storage is enough."
    )
    storage_between_days: Amount | None = Field(None, description="That carries gas from day to day, exact for the days of two years.")
    storage_within_day: Amount | None = Field(None, description="What the hours of a day ask for.")
    storage_lacking: Amount | None = Field(None, description="What a gas holder beside the digesters would have to add.")
    storage_available: Amount | None = Field(None, description="Of these digesters together.")
    options: list[RotationTold] = Field(description="A few digesters fewer and more.")
    recharge_dates: list[RechargeTold] = Field(description="Of the first year; empty where no rotation is told.")
