"""Urine in place of part of the mixing water, with what it brings."""

from __future__ import annotations

import math
from typing import Any

from kilisho.farm import Ledger
from kilisho.questions.acidity import alkalinity_of
from kilisho.questions.feeding import NO_URINE
from kilisho.questions.herd import Supply
from kilisho.ranges import certain

URINE = "cattle_urine"


def take_urine(urine: Any, supply: Supply, ledger: Ledger) -> None:
    """Put the urine used per day, and the solids, nitrogen and carbon it brings, into the ledger.

    Urine takes the place of water litre for litre: up to what is gathered, up to the practice's largest share of the mixing
    liquid, and only as far as the mix keeps the least carbon to nitrogen ratio. ``urine_limited_by`` says which of these it was.
    Other animals' urine is counted with the cattle urine's composition.
    """
    ledger.put(**NO_URINE, urine_gathered=0.0, urine_limited_by="gathered")
    if urine is None or not urine.collected:
        return
    gathered = certain(urine.volume) if urine.volume is not None else supply.urine
    per_volume = _per_volume(ledger)
    limits = {
        "gathered": gathered.value,
        "largest_share_of_liquid": ledger.practice("largest_urine_share") * ledger.values["liquid_per_day"],
        "carbon_to_nitrogen": _within_carbon_to_nitrogen(ledger, per_volume),
    }
    limited_by = min(limits, key=lambda name: limits[name])
    used = limits[limited_by]
    brought = {f"urine_{name}_per_day": used * value for name, value in per_volume.items()}
    ledger.put(urine_gathered=gathered.value, urine_limited_by=limited_by, urine_per_day=used, **brought)
    ledger.sample(urine_gathered=gathered.samples)


def _per_volume(ledger: Ledger) -> dict[str, float]:
    """Mass, solids, nitrogen, carbon, ammonium nitrogen and alkalinity in a cubic metre of urine [kg]."""
    figures = ledger.shelf.substrates[URINE].typical
    for field in ("total_solids", "nitrogen", "bulk_density", "carbon_to_nitrogen"):
        ledger.figure("substrates", URINE, field)
    mass = figures["bulk_density"]
    solids = mass * figures["total_solids"]
    nitrogen = solids * figures["nitrogen_share"]
    carbon = nitrogen * figures["carbon_to_nitrogen_of_feed"]
    return {
        "mass": mass,
        "solids": solids,
        "nitrogen": nitrogen,
        "carbon": carbon,
        "ammonium": nitrogen * figures["ammonium_share"],
        "alkalinity": solids * alkalinity_of(URINE, ledger.shelf.data.substrates[URINE], ledger).value,
    }


def _within_carbon_to_nitrogen(ledger: Ledger, urine: dict[str, float]) -> float:
    """Urine that the feed takes before its carbon to nitrogen ratio falls to the least that is wanted."""
    least, values = ledger.practice("least_carbon_to_nitrogen_with_urine"), ledger.values
    spare = values["carbon_per_day"] - least * values["nitrogen_per_day"]
    per_volume = least * urine["nitrogen"] - urine["carbon"]
    return max(0.0, float(spare / per_volume)) if per_volume > 0 else math.inf
