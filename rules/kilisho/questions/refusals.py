"""Faults between members of a request, which no schema can say, shared by the questions."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from kilisho.faults import Fault, Place
from kilisho.messages import say
from kilisho.questions.requests import FeedItem
from kilisho.units import to_canonical

SHARE_TOLERANCE = 1e-6
# Means of months and of the year from different tables of one station differ by less [K] (judgement).
SAME_AIR = 1.0


def faults_of_digester(digester: Any) -> list[Fault]:
    """A digester needs a volume, and cannot hold more slurry or gas than it is large."""
    total, working, storage = digester.total_volume, digester.working_volume, digester.gas_storage_volume
    if total is None and working is None:
        return [Fault(("digester",), "volume_missing", say("fault-volume_missing"))]
    if total is not None and working is not None and working > total:
        return [Fault(("digester", "working_volume"), "volume_impossible", say("fault-exceeds_total_volume"))]
    if total is not None and storage is not None and storage > total:
        return [Fault(("digester", "gas_storage_volume"), "volume_impossible", say("fault-exceeds_total_volume"))]
    return []


def faults_of_dilution(dilution: Any) -> list[Fault]:
    """Dilution is stated by volume or by target, not both."""
    if dilution is None or None in (dilution.water_to_feed_by_volume, dilution.target_total_solids):
        return []
    return [Fault(("dilution",), "two_dilutions", say("fault-two_dilutions"))]


def faults_of_shares(feed: Sequence[FeedItem], *, whole: bool = False) -> list[Fault]:
    """Shares add up to one where all are stated, and to less where some are not; masses are stated for all or for none."""
    shares = [item.share for item in feed]
    total = sum(share for share in shares if share is not None)
    faults = []
    if total > 1 + SHARE_TOLERANCE or (feed and None not in shares and total < 1 - SHARE_TOLERANCE):
        faults.append(Fault(("feed",), "shares_disordered", say("fault-shares_of_substrates")))
    masses = [getattr(item, "mass", None) for item in feed]
    if whole and None in masses and any(m is not None for m in masses):
        faults.append(Fault(("feed",), "mass_for_some", say("fault-mass_for_some")))
    if any(m is not None for m in masses) and any(m is not None for m in shares):
        faults.append(Fault(("feed",), "mass_and_share", say("fault-mass_and_share")))
    if len({item.substrate for item in feed}) < len(feed):
        faults.append(Fault(("feed",), "substrate_twice", say("fault-substrate_twice")))
    return faults


def faults_of_purchases(purchases: Sequence[Any]) -> list[Fault]:
    """An offer says how much there is."""
    return [
        Fault(("purchases", i), "amount_missing", say("fault-amount_missing"))
        for i, purchase in enumerate(purchases)
        if purchase.available is None and purchase.per_day is None
    ]


def faults_of_months(climate: Any) -> list[Fault]:
    """Monthly means must be possible air temperatures, in whatever unit, and what else is stated of the year must be theirs."""
    months = climate.monthly_air_temperature if climate is not None else None
    if months is None:
        return []
    place: Place = ("climate", "monthly_air_temperature", "values")
    air = [to_canonical(value, "temperature", months.unit) for value in months.values]
    outside = [i for i, value in enumerate(air) if not -60 <= value <= 60]
    return [Fault((*place, i), "month_out_of_range", say("fault-month_out_of_range")) for i in outside] or _denied_by_months(climate, air)


def _denied_by_months(climate: Any, air: Sequence[float]) -> list[Fault]:
    """The year's mean and swing [Cel, K] where they are stated too and are not those of the months; the months would win in silence."""
    pairs = {"mean_air_temperature": sum(air) / len(air), "yearly_swing": max(air) - min(air)}
    denied = [name for name, value in pairs.items() if (said := getattr(climate, name)) is not None and abs(said - value) > SAME_AIR]
    return [Fault(("climate", name), "stated_twice", say("fault-months_deny")) for name in denied]
