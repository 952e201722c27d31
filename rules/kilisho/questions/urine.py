"""Urine in place of part of the mixing water, with what it brings."""

from __future__ import annotations

from typing import Any

from kilisho.farm import Ledger
from kilisho.questions.feeding import Supply

URINE = "cattle_urine"
NONE = {
    name: 0.0
    for name in ("urine_per_day", "urine_mass_per_day", "urine_solids_per_day", "urine_nitrogen_per_day", "urine_carbon_per_day", "urine_ammonium_per_day")
}


def take_urine(urine: Any, supply: Supply, ledger: Ledger) -> None:
    """Put the urine used per day, and the solids, nitrogen and carbon it brings, into the ledger.

    Urine takes the place of water litre for litre, up to the practice's largest share of the mixing liquid; the ammonia checks
    then judge the mix. Other animals' urine is counted with the cattle urine's composition.
    """
    ledger.put(**NONE, urine_gathered=0.0)
    if urine is None or not urine.collected:
        return
    gathered = urine.volume if urine.volume is not None else supply.urine
    used = min(gathered, ledger.practice("largest_urine_share") * ledger.values["liquid_per_day"])
    figures = ledger.shelf.substrates[URINE][0]
    ledger.assumptions += [ledger.shelf.assumption("substrates", URINE, field) for field in ("total_solids", "nitrogen", "bulk_density")]
    mass = used * figures["bulk_density"]
    nitrogen = mass * figures["total_solids"] * figures["nitrogen_share"]
    ledger.put(
        urine_gathered=gathered,
        urine_per_day=used,
        urine_mass_per_day=mass,
        urine_solids_per_day=mass * figures["total_solids"],
        urine_nitrogen_per_day=nitrogen,
        urine_carbon_per_day=nitrogen * figures["carbon_to_nitrogen_of_feed"],
        urine_ammonium_per_day=nitrogen * figures.get("ammonium_share", 1.0),
    )
