"""Works out what goes into the digester and what comes out of it: slurry, gas, solids and nutrients."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from kilisho.farm import Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.messages import say
from kilisho.questions.climate import Warmth
from kilisho.questions.feeding import NO_URINE, Fed, menu_of, resolve, sampled, take_totals, uncertain_mass, water_to_feed
from kilisho.questions.gas import take_gas
from kilisho.questions.herd import supply_of
from kilisho.questions.requests import DailyFeedItem
from kilisho.ranges import Uncertain, certain
from kilisho.ranges import sampled as samples_of

URINE = "cattle_urine"
GAS = ("methane_per_day", "biogas_per_day_normal", "biogas_mass_per_day", "digestate_mass_per_day", "digestate_per_day")
SOLIDS = ("volatile_solids_destroyed_per_day", "volatile_solids_left_per_day", "total_solids_left_per_day", "digestate_total_solids")
NITROGEN = (
    "digestate_nitrogen_per_day",
    "digestate_ammonium_per_day",
    "digestate_ammonium_share",
    "nitrogen_concentration",
    "nitrogen_lost_in_storage",
    "nitrogen_lost_in_spreading",
    "nitrogen_spread_per_day",
    "available_nitrogen_per_day",
    "nitrogen_for_later_years",
    "nitrogen_availability",
    "available_nitrogen_concentration",
    "spread_nitrogen_concentration",
)
PHOSPHORUS = ("settled_phosphorus_per_day", "digestate_phosphorus_per_day", "phosphorus_concentration", "phosphate_per_day")
POTASSIUM = ("digestate_potassium_per_day", "potassium_concentration", "potash_per_day")


def take_feed(asked: Any, ledger: Ledger) -> list[Fed]:
    """Put the day's feed, urine and water into the ledger; returns the substrates, the urine as the last of them.

    Raises :class:`RefusedError` where nothing says how much is fed.
    """
    menu = menu_of(asked.feed, supply_of(asked.herd, ledger), ledger)
    if not menu.known:
        raise RefusedError([Fault(("feed",), "amount_unknown", say("fault-daily_mass_unknown"))])
    fed = [_with_ammonium(one, ledger) for one in menu.fed]
    everything = [*fed, *_urine(asked.urine, ledger)]
    ledger.put(**NO_URINE)  # urine is counted as a substrate here, so that its nutrients and their ranges count like any other's
    take_totals(everything, ledger)
    _take_liquid(asked, fed, ledger)
    ledger.solve("slurry_per_day", "slurry_mass_per_day", "water_per_day")
    return everything


def _with_ammonium(one: Fed, ledger: Ledger) -> Fed:
    """The substrate with a guess of its ammonium where neither the rulebook nor the caller has one: unknown is not none."""
    if one.entry.ammonium_share is not None or one.values["ammonium_share"]:
        return one
    guess = ledger.figure("figures", "unknown_ammonium_share", "unknown_ammonium_share")
    twin = one.sampled or one
    twin = replace(twin, values={**twin.values, "ammonium_share": guess.samples})
    return replace(one, values={**one.values, "ammonium_share": guess.value}, sampled=twin)


def _urine(volume: float | None, ledger: Ledger) -> list[Fed]:
    if not volume:
        if volume is None:
            ledger.choose("urine_per_day", "none", say("digestate-urine-unknown"))
        return []
    density = ledger.figure("substrates", URINE, "bulk_density")
    return [resolve(DailyFeedItem.model_construct(substrate=URINE), density.times(volume), ledger)]


def _take_liquid(asked: Any, fed: Sequence[Fed], ledger: Ledger) -> None:
    """Water as stated, or what the dilution asks less the urine."""
    if asked.water is not None:
        ledger.put(liquid_per_day=asked.water)
        return
    ratio, urine = water_to_feed(fed, asked.dilution, ledger), asked.urine or 0.0
    volume = Uncertain(sum(one.volume for one in fed), sum(one.volume for one in sampled(fed)))
    wanted = volume.times(ratio)
    water = wanted.less(wanted.at_most(certain(urine)))
    ledger.put(liquid_per_day=water.value)
    ledger.sample(liquid_per_day=water.samples)


def take_retention(asked: Any, warmth: Warmth, ledger: Ledger) -> None:
    """Put the hydraulic retention time into the ledger: as stated, from the digester, or the design retention with its range."""
    if asked.hydraulic_retention_time is not None:
        ledger.state("hydraulic_retention_time", asked.hydraulic_retention_time)
    elif asked.digester is not None:
        ledger.solve("hydraulic_retention_time")
    else:
        low, typical, high = ledger.curve("design_retention", "hydraulic_retention_time", warmth.mean)
        ledger.put(hydraulic_retention_time=typical)
        ledger.sample(hydraulic_retention_time=samples_of("curves/design_retention", low, typical, high))


def take_outflow(fed: Sequence[Fed], ledger: Ledger) -> None:
    """Put gas, digestate and what is left of the solids into the ledger; refuses properties that make more gas than there is matter."""
    take_gas([one for one in fed if one.entry.group != "urine"] or fed, ledger)
    ledger.practice("solids_in_gas")
    found = ledger.solve(*GAS, *SOLIDS)
    if found["digestate_mass_per_day"] <= 0:
        raise RefusedError([Fault(("feed",), "gas_exceeds_feed", say("fault-gas_exceeds_feed"))])


def take_nutrients(asked: Any, fed: Sequence[Fed], ledger: Ledger) -> dict[str, list[str]]:
    """Put the nutrients in the digestate into the ledger; returns the substrates whose phosphorus and potassium nobody knows."""
    ledger.practice("organic_nitrogen_release")
    ledger.solve(*NITROGEN)
    unknown = {"phosphorus": _take(asked, "phosphorus", fed, ledger), "potassium": _take(asked, "potassium", fed, ledger)}
    if not unknown["phosphorus"]:
        ledger.practice("phosphorus_settling")
        ledger.solve(*PHOSPHORUS)
    if not unknown["potassium"]:
        ledger.solve(*POTASSIUM)
    return unknown


def _take(asked: Any, nutrient: str, fed: Sequence[Fed], ledger: Ledger) -> list[str]:
    """Put what is fed of a nutrient per day into the ledger, or return the ids of the substrates that leave it unknown."""
    stated = {item.substrate: value for item in asked.feed if (value := getattr(item, nutrient)) is not None}
    unknown = [one.id for one in fed if one.id not in stated and getattr(one.entry, nutrient) is None]
    if unknown:
        return unknown
    total = certain(0.0)
    for one in fed:
        share = certain(stated[one.id]) if one.id in stated else ledger.figure("substrates", one.id, nutrient)
        total = total.plus(_solids(one).by(share))
    ledger.put(**{f"{nutrient}_per_day": total.value})
    ledger.sample(**{f"{nutrient}_per_day": total.samples})
    return []


def _solids(one: Fed) -> Uncertain:
    twin = one.sampled or one
    return uncertain_mass(one).by(Uncertain(one.values["total_solids"], twin.values["total_solids"]))
