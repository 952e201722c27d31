"""The limits of a mix in words and units."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from kilisho.formulas.feed_mix import WHOLE, Key
from kilisho.messages import Amount, Message, say
from kilisho.questions.answers import (
    Answer,
    Tell,
    in_cubic_metres_per_day,
    in_days,
    in_grams_per_litre,
    in_kilograms_per_cubic_metre_and_day,
    in_kilograms_per_day,
    in_litres_per_day,
    in_number,
    in_percent,
)
from kilisho.questions.feeding import Fed

FOUR_DIGITS = ".4g"


@dataclass(frozen=True, slots=True)
class Phrase:
    """How a limit is told: its unit, the step that counts as one more, and the ids of its name, of how it holds, of what gives way."""

    tell: Tell
    step: float
    name: str
    holds: str
    allow: str


PHRASES = {
    "least_total_solids": Phrase(
        in_percent, 0.01, "mix-limit-least-total-solids", "mix-holds-least-total-solids", "mix-allow-least-total-solids"
    ),
    "largest_total_solids": Phrase(
        in_percent, 0.01, "mix-limit-largest-total-solids", "mix-holds-largest-total-solids", "mix-allow-largest-total-solids"
    ),
    "least_carbon_to_nitrogen": Phrase(in_number, 1.0, "mix-limit-least-ratio", "mix-holds-least-ratio", "mix-allow-least-ratio"),
    "largest_carbon_to_nitrogen": Phrase(
        in_number,
        1.0,
        "mix-limit-largest-ratio",
        "mix-holds-largest-ratio",
        "mix-allow-largest-ratio",
    ),
    "largest_total_ammonia_nitrogen": Phrase(in_grams_per_litre, 0.1, "mix-limit-ammonia", "mix-holds-ammonia", "mix-allow-ammonia"),
    "largest_organic_loading_rate": Phrase(
        in_kilograms_per_cubic_metre_and_day, 0.1, "mix-limit-loading", "mix-holds-loading", "mix-allow-loading"
    ),
    "least_retention_time": Phrase(in_days, 1.0, "mix-limit-retention", "mix-holds-retention", "mix-allow-retention"),
    "largest_crop_residue_share": Phrase(in_percent, 0.01, "mix-limit-crop-residues", "mix-holds-crop-residues", "mix-allow-crop-residues"),
    "water_available": Phrase(in_litres_per_day, 0.001, "mix-limit-water", "mix-holds-water", "mix-allow-water"),
    "available": Phrase(in_kilograms_per_day, 1.0, "mix-limit-available", "mix-holds-available", "mix-allow-available"),
    "largest_share": Phrase(in_percent, 0.01, "mix-limit-share", "mix-holds-share", "mix-allow-share"),
    "gas_demand": Phrase(in_cubic_metres_per_day, 0.1, "mix-limit-gas-demand", "mix-holds-gas-demand", "mix-allow-gas-demand"),
}


def place_of(key: Key, fed: Sequence[Fed]) -> Answer:
    """The limit's id and name, with the id of the substrate that it belongs to."""
    told = {"limit": key[0], "name": said(PHRASES[key[0]].name, key, fed)}
    return told if key[1] == WHOLE else {**told, "of": fed[key[1]].id}


def said(message: str, key: Key, fed: Sequence[Fed], **amounts: Amount) -> Message:
    """A message about a limit, with the name of the substrate that it belongs to."""
    return say(message, **amounts) if key[1] == WHOLE else say(message, of=fed[key[1]].entry.name, **amounts)


def amount(told: Answer) -> Amount:
    """An amount of an answer to four significant digits: a limit that is asked for again must not be rounded away."""
    _, _, decimals = f"{float(format(told['value'], FOUR_DIGITS)):f}".rstrip("0").partition(".")
    return Amount(told["value"], told["unit"], decimals=len(decimals))
