"""The limits of a mix in words and units."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from kilisho.formulas.feed_mix import WHOLE, Key
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


@dataclass(frozen=True, slots=True)
class Phrase:
    """How a limit is told: its unit, the step that counts as one more, what is meant, and what giving way means."""

    tell: Tell
    step: float
    text: str
    easing: str


PHRASES = {
    "least_total_solids": Phrase(in_percent, 0.01, "The slurry is as thin as is allowed", "thinner slurry"),
    "largest_total_solids": Phrase(in_percent, 0.01, "The slurry is as thick as is allowed", "thicker slurry"),
    "least_carbon_to_nitrogen": Phrase(in_number, 1.0, "The feed is as rich in nitrogen as is allowed", "a lower carbon to nitrogen ratio"),
    "largest_carbon_to_nitrogen": Phrase(
        in_number, 1.0, "The feed is as poor in nitrogen as is allowed", "a higher carbon to nitrogen ratio"
    ),
    "largest_total_ammonia_nitrogen": Phrase(in_grams_per_litre, 0.1, "Ammonia is at its limit", "more ammonia"),
    "largest_organic_loading_rate": Phrase(
        in_kilograms_per_cubic_metre_and_day, 0.1, "The digester gets as much organic matter as it bears", "a higher loading"
    ),
    "least_retention_time": Phrase(in_days, 1.0, "The slurry stays as short as is allowed", "a shorter stay"),
    "largest_crop_residue_share": Phrase(in_percent, 0.01, "Crop residues, which float, are at their limit", "more crop residues"),
    "water_available": Phrase(in_litres_per_day, 0.001, "All water is used", "more water"),
    "available": Phrase(in_kilograms_per_day, 1.0, "All of {of} is used", "more {of}"),
    "largest_share": Phrase(in_percent, 0.01, "{of} is at its largest share of the volatile solids", "a larger share of {of}"),
    "gas_demand": Phrase(in_cubic_metres_per_day, 0.1, "The gas that is asked for decides", "asking for less gas"),
}


def place_of(key: Key, names: list[str]) -> Answer:
    """The limit's name, with the substrate that it belongs to."""
    name, place = key
    return {"limit": name} if place == WHOLE else {"limit": name, "of": names[place]}


def phrase_of(key: Key, names: list[str]) -> tuple[Phrase, str, str]:
    """The limit's phrase, and its text and easing with the substrate's name in them."""
    phrase, of = PHRASES[key[0]], names[key[1]] if key[1] != WHOLE else ""
    text = phrase.text.format(of=of)
    return phrase, text[:1].upper() + text[1:], phrase.easing.format(of=of)


def in_words(amount: Any) -> str:
    """An amount as text, to four significant digits."""
    number, unit = f"{amount['value']:.4g}", "" if amount["unit"] == "1" else f" {amount['unit']}"
    return number + unit
