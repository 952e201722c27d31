"""The limits of a mix: the caller's, else the rulebook's for this digester at this temperature."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from kilisho.farm import Ledger
from kilisho.formulas.feed_mix import WHOLE, Key
from kilisho.questions.feeding import Fed

PRACTICE = {
    "least_total_solids": "least_slurry_total_solids",
    "largest_total_solids": "largest_slurry_total_solids",
    "least_carbon_to_nitrogen": "least_mix_carbon_to_nitrogen",
    "largest_carbon_to_nitrogen": "largest_mix_carbon_to_nitrogen",
    "largest_total_ammonia_nitrogen": "largest_mix_ammonia_nitrogen",
    "largest_crop_residue_share": "largest_mix_crop_residue_share",
}


def limits_for(asked: Any, fed: Sequence[Fed], available: Sequence[float], temperature: float, ledger: Ledger) -> dict[Key, float]:
    """Every bound of the mix; ``available`` [kg/d] goes with ``fed``, ``temperature`` [Cel] is the slurry's mean."""
    bounds = {**_of_practice(asked.limits, temperature, ledger), **_of_substrates(asked, fed, ledger)}
    if asked.water_available is not None:
        bounds["water_available", WHOLE] = asked.water_available
    return {**bounds, **{("available", i): mass for i, mass in enumerate(available)}}


def _of_practice(stated: Any, temperature: float, ledger: Ledger) -> dict[Key, float]:
    bounds: dict[Key, float] = {}
    for name in (*PRACTICE, "largest_organic_loading_rate", "least_retention_time"):
        own = getattr(stated, name) if stated is not None else None
        bounds[name, WHOLE] = own if own is not None else _usual(name, temperature, ledger)
    return bounds


def _usual(name: str, temperature: float, ledger: Ledger) -> float:
    """The rulebook's bound; the loading of cold slurry where it is cold, and the short end of the usual retention at the temperature."""
    if name == "least_retention_time":
        return ledger.curve("design_retention", "least_retention_time", temperature)[0]
    if name == "largest_organic_loading_rate":
        border = ledger.figure("figures", "cold_mix_temperature", "cold_mix_temperature").value
        figure = "largest_cold_mix_loading" if temperature < border else "largest_mix_loading"
        return ledger.figure("figures", figure, name).value
    return ledger.figure("figures", PRACTICE[name], name).value


def _of_substrates(asked: Any, fed: Sequence[Fed], ledger: Ledger) -> dict[Key, float]:
    bounds: dict[Key, float] = {}
    for i, (item, one) in enumerate(zip(asked.on_hand, fed, strict=False)):
        if item.largest_share is not None:
            bounds["largest_share", i] = item.largest_share
        elif one.entry.largest_share is not None:
            bounds["largest_share", i] = ledger.figure("substrates", one.id, "largest_share").value
    return bounds
