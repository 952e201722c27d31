"""The shape of the answer on digestate."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from kilisho.questions.answers import Amount, Common, Told
from kilisho.questions.gas_state import GasState


class Balance(Told):
    """Mass and solids of a day, in and out."""

    slurry_in: Amount
    gas_out: Amount
    digestate_out: Amount
    total_solids_in: Amount
    organic_matter_in: Amount
    organic_matter_to_gas: Amount = Field(description="Volatile solids that became gas.")
    organic_matter_left: Amount
    organic_matter_left_per_year: Amount
    total_solids_left: Amount
    total_solids_left_per_year: Amount
    digestate_total_solids: Amount
    grit_per_year: Amount = Field(description="Mineral matter of the feed that would settle.")
    text: str


class InContainer(Told):
    """A nutrient in one full container."""

    name: str
    volume: Amount
    mass: Amount


class Carried(Told):
    """A nutrient in the digestate as it leaves the digester; the value itself is per day. Absent where it is not known."""

    value: float | None = None
    unit: str | None = None
    low: float | None = None
    high: float | None = None
    per_year: Amount | None = None
    per_cubic_metre: Amount | None = None
    containers: list[InContainer] = Field([], description="What is carried.")
    unknown_for: list[str] = Field([], description="Substrates whose content nobody knows; then nothing is told rather than 0.")
    text: str


class NitrogenTold(Carried):
    """Nitrogen from the feed to the plants; what is fed is lost, found in the first year, or there for later years."""

    fed_per_day: Amount
    ammonium_share: Amount = Field(description="Part of the digestate's nitrogen that is ammonium.")
    lost_in_storage: Amount
    lost_in_spreading: Amount
    available_in_first_year: Amount
    for_later_years: Amount
    availability: Amount = Field(description="Part of the digestate's nitrogen that plants find in the first year.")
    available_per_cubic_metre: Amount
    spreading: str
    spreading_name: str


class AsOxide(Told):
    """A nutrient as fertilisers are counted."""

    per_year: Amount
    per_cubic_metre: Amount


class PhosphorusTold(Carried):
    """Phosphorus, as P."""

    as_phosphate: AsOxide | None = Field(None, description="The same phosphorus counted as P2O5.")
    settled_per_year: Amount | None = None


class PotassiumTold(Carried):
    """Potassium, as K."""

    as_potash: AsOxide | None = Field(None, description="The same potassium counted as K2O.")


class WaitingOfCrop(Told):
    """Whether digestate may go to a crop, and how long before harvest the last of it."""

    allowed: bool
    time: Amount | None = None
    checks: list[str] = Field(description="Ids of the checks that ask this wait.")


class OnArea(Told):
    """Containers to carry to a piece of land in a year."""

    name: str
    volume: Amount
    on_100_square_metres: Amount


class CropTold(Told):
    """One field: what it needs, what it gets in a year, and how long before harvest the last of it."""

    crop: str
    name: str
    nitrogen_need: Amount
    limited_by: Literal["nitrogen_need", "nitrogen_limit"]
    digestate_per_area: Amount = Field(description="A year.")
    total_nitrogen_per_area: Amount = Field(description="A year, as it is brought to the field.")
    containers: list[OnArea]
    area: Amount | None = None
    digestate_wanted: Amount | None = Field(None, description="For the whole area, a year.")
    digestate_given: Amount = Field(description="What there is for it a year, after the fields before it.")
    area_served: Amount
    area_left_without: Amount | None = None
    eaten_raw: bool
    waiting: WaitingOfCrop
    handling: list[str]


class NitrogenRule(Told):
    """A limit of manure nitrogen."""

    limit: Amount
    applied: bool = Field(description="Whether it was stated and so holds the amounts down.")
    area_to_keep_it: Amount = Field(description="Area over which all digestate of a year must be spread to keep it.")
    text: str


class WaitingTime(Told):
    """The longest wait of all fields that may get digestate; no value where none may."""

    value: float | None = None
    unit: str | None = None
    never_on: list[str] = Field(description="Crops that must get none of this digestate.")
    text: str


class Hygiene(Told):
    """What must not be promised."""

    sanitised: Literal[False]
    human_excreta_fed: bool
    storing_before_use: Amount | None = None
    text: str


class StorageTold(Told):
    """The store until the next spreading."""

    store: str | None = None
    name: str | None = Field(None, description="Of the store.")
    time: Amount
    digestate_to_store: Amount
    depth: Amount
    freeboard: Amount
    area: Amount
    volume_needed: Amount = Field(description="Up to the rim, freeboard included.")
    ammonia_loss: Amount
    lasts: Amount | None = Field(None, description="Until the store that there is reaches its freeboard.")
    overflows: bool | None = None
    text: str


class FertiliserTold(Told):
    """Bought fertiliser that the digestate of a year stands for."""

    urea: Amount = Field(
        description="For the nitrogen that diammonium phosphate does not bring; for all of it where phosphorus is unknown."
    )
    diammonium_phosphate: Amount | None = None
    potassium_chloride: Amount | None = None
    worth_per_year: Amount | None = Field(None, description="In the currency of the request's prices, for the nutrients with a price.")
    text: str


class DigestateAnswer(Common):
    """Digestate, what is in it, where it goes and how long to wait."""

    digestate_per_day: Amount
    digestate_per_year: Amount
    slurry_per_day: Amount
    water_per_day: Amount
    hydraulic_retention_time: Amount
    biogas_per_day: Amount = Field(description="As used; see gas_state.")
    gas_state: GasState
    balance: Balance
    nitrogen: NitrogenTold
    phosphorus: PhosphorusTold
    potassium: PotassiumTold
    area_served: Amount = Field(
        description="Area that the digestate of a year serves: the stated fields in turn, and what is left on more of the last crop."
    )
    surplus: Amount = Field(description="Digestate of a year beyond the stated areas.")
    crops: list[CropTold]
    nitrogen_rule: NitrogenRule
    waiting_time: WaitingTime
    hygiene: Hygiene
    storage: StorageTold
    fertiliser: FertiliserTold
