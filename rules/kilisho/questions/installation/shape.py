"""The shape of a validated installation."""

from __future__ import annotations

from typing import get_args

from pydantic import Field

from kilisho.questions.answers import Amount, Common, Finding, Told
from kilisho.questions.gas_state import GasState
from kilisho.questions.installation.verdicts import Feeding, Gas, Overall, Record, Safety, Size


class Aspects(Told):
    """One word for each aspect, each from a closed set. Where several faults meet, the first of the order below is told."""

    record: Record = Field(description="doubtful: a number of the record cannot be right. possible: nothing that was stated cannot be.")
    size: Size = Field(
        description="The digester against its herd and climate. too_small: the herd's dung would leave it undigested. too_large: the herd "
        "does not fill it. fitting: neither. unknown: herd, climate or size is not known."
    )
    feeding: Feeding = Field(
        description="starved, too_wet, too_dry, overfed, too_seldom (in this order), or fitting. unknown: something of it is not known."
    )
    gas: Gas = Field(
        description="The measured gas against the expected range: below (clearly), low (a little less, as one healthy plant in twenty), "
        "above, inside; not_measured; or unknown where no gas can be expected or it has not yet been fed for one retention."
    )
    safety: Safety = Field(
        description="danger: a danger-level check failed. open: one cannot be answered. clear: all were answered and none failed."
    )


class Probably(Told):
    """The reading that was probably meant by a number."""

    member: str = Field(description="Member of the record.")
    value: float = Field(description="The number as it would be in its own unit.")
    unit: str
    read_as: str = Field(description="UCUM code of the unit in which it was probably written, or decimal_point.")


class InstallationFinding(Finding):
    """How one check ended, with the word that its failure puts into the verdict."""

    finds: str | None = None
    probably: Probably | None = Field(None, description="Only where another unit, or a shifted decimal point, explains the number.")


class WorkedOut(Told):
    """What follows from the record, as typical values; absent where the record does not tell it."""

    digester_temperature: Amount | None = None
    design_retention_time: Amount | None = Field(None, description="At the digester's temperature, with its shortest and longest.")
    hydraulic_retention_time: Amount | None = None
    organic_loading_rate: Amount | None = None
    slurry_total_solids: Amount | None = None
    fed_share_of_design: Amount | None = Field(None, description="Feed against the feed that keeps the design retention.")
    herd_dung_per_day: Amount | None = None
    herd_to_largest_herd: Amount | None = Field(None, description="The herd's dung against the most that the digester takes.")
    herd_to_smallest_herd: Amount | None = Field(None, description="The herd's dung against the least that fills the digester.")


class InstallationAnswer(Common):
    """What an installation's record says."""

    id: str | None = None
    verdict: Overall = Field(
        description="danger: a danger-level check failed. doubtful: the record cannot be right. faulty: size, feeding or gas is at fault. "
        "attention: another check of warning or caution level failed. unknown: nothing failed, not everything was stated. sound: every "
        f"check was answered. The first of {', '.join(get_args(Overall))} that holds."
    )
    text: str
    aspects: Aspects
    expected: Amount | None = Field(None, description="Biogas that feed and digester give a day; see gas_state. Absent if unknown.")
    measured: Amount | None = Field(None, description="Biogas of a day as stated.")
    gas_ratio: Amount | None = Field(None, description="Measured over expected, with the range that the expected gas gives it.")
    gas_state: GasState | None = None
    worked_out: WorkedOut
    unanswered: list[str] = Field(description="Facts that would answer the danger-level checks that are open.")
    findings: list[InstallationFinding]  # type: ignore[assignment]
