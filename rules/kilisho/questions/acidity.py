"""pH of the slurry: as measured, or from the balance of its charges, so that free ammonia never rests on a pH that was only assumed."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from kilisho.farm import Ledger
from kilisho.formulas.acid_base import CARBONATE_PER_CHARGE, POTASSIUM_MASS
from kilisho.questions.feeding import Fed, brings_lime
from kilisho.questions.stated_facts import values_by_id
from kilisho.ranges import Uncertain, certain
from kilisho.rulebook import Substrate


def state_ph(measured: float | None, facts: Any, ledger: Ledger) -> None:
    """Take the pH of the slurry from the caller, as measured or as a fact, where there is one."""
    ph = values_by_id(facts).get("slurry_ph") if measured is None else measured
    if ph is not None:
        ledger.state("slurry_ph", ph)


def take_slurry_ph(fed: Sequence[Fed], ledger: Ledger) -> None:
    """Put the pH that a digester in good health settles at into the ledger, with its samples, unless the caller stated one.

    The ledger has the mix of a day with its liquid and urine, its gas, and the slurry's temperature.
    """
    if "slurry_ph" in ledger.stated:
        return
    alkalinity = certain(0.0)
    for one in fed:
        alkalinity = alkalinity.plus(_solids(one).by(alkalinity_of(one.id, one.entry, ledger)))
    ledger.put(fixed_alkalinity_per_day=alkalinity.value)
    ledger.sample(fixed_alkalinity_per_day=alkalinity.samples)
    ledger.practice("slurry_ph_against_balance")
    if not ledger.values["biogas_per_day"]:
        _take_unknown_gas(ledger)
    ledger.solve("slurry_ph")


def alkalinity_of(name: str, entry: Substrate, ledger: Ledger) -> Uncertain:
    """Alkalinity beside ammonia's, as calcium carbonate, in the total solids of a substrate [kg/kg], as the process model takes it."""
    if entry.potassium is not None:
        potassium = ledger.figure("substrates", name, "potassium")
    else:  # Unknown is not none.
        potassium = ledger.figure("figures", "unknown_potassium", "potassium")
    base = "base_of_dung" if brings_lime(entry) else "base_of_others"
    return potassium.by(ledger.figure("process", base, base)).times(CARBONATE_PER_CHARGE / POTASSIUM_MASS)


def _solids(one: Fed) -> Uncertain:
    """Total solids of one substrate [kg/d]."""
    return Uncertain(*(side.mass * side.values["total_solids"] for side in (one, one.sampled or one)))


def _take_unknown_gas(ledger: Ledger) -> None:
    """A feed that gives no gas has no methane share of its own; its slurry stands under the gas of what was fed before."""
    methane = ledger.figure("figures", "unknown_methane_share", "methane_share")
    ledger.put(carbon_dioxide_share=1.0 - methane.value)
    ledger.sample(carbon_dioxide_share=1.0 - methane.samples)
