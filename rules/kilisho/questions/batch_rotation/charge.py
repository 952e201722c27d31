"""The charge of one digester: substrates, water and the old slurry that is left in it as starter."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from kilisho.farm import Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.formulas.arrays import most
from kilisho.messages import say
from kilisho.questions.feeding import Fed, mix_starts_unaided, resolve, sampled, scale_to, shares_of, slurry_of, water_to_feed
from kilisho.ranges import Uncertain, certain

# Of the working volume: what starter slurry from elsewhere leaves to fresh slurry at the least, in every sample.
LEAST_FRESH = 0.02


@dataclass(frozen=True, slots=True)
class Charge:
    """What every charge of one digester holds: substrates [kg], fresh slurry and starter [m3]; what differs in its first charge."""

    fed: list[Fed]
    fresh: Uncertain
    starter: Uncertain
    first_fresh: Uncertain
    first_starter: Uncertain
    water: Uncertain
    total_solids: Uncertain
    starter_share: float

    @property
    def slurry(self) -> Uncertain:
        """Fresh slurry and starter [m3]."""
        return self.fresh.plus(self.starter)


def charge_of(asked: Any, ledger: Ledger) -> Charge:
    """The charge as stated, or what fills the working volume beside the starter."""
    shares = shares_of(asked.feed, [0.0] * len(asked.feed))
    fed = [resolve(item, certain(share), ledger) for item, share in zip(asked.feed, shares, strict=True)]
    water_to_feed(fed, asked.dilution, ledger)
    kept, working = _starter_share(asked, fed, ledger), ledger.uncertain("working_volume")
    starter, whole = working.times(kept), asked.feed[0].mass is not None
    if not whole:
        scale_to(fed, working.times(1.0 - kept), ledger)
    fresh = Uncertain(slurry_of(fed, ledger), slurry_of(sampled(fed), ledger))
    first = starter if asked.starter_slurry is None else certain(asked.starter_slurry / ledger.values["water_density"])
    first_fresh = fresh if whole else _beside(first, working)
    _refuse_too_much(asked, ledger, fresh, starter, first)
    water = _both(fed, "volume").times(ledger.values["water_to_feed_by_volume"])
    return Charge(fed, fresh, starter, first_fresh, first, water, _total_solids(fed, water, ledger), kept)


def _starter_share(asked: Any, fed: list[Fed], ledger: Ledger) -> float:
    """Share of the working volume that is left as starter; it is told to be followed, so it is as certain as an instruction."""
    if asked.starter_share is not None:
        return float(asked.starter_share)
    return 0.0 if mix_starts_unaided(fed) else ledger.practice("starter_share")


def _beside(starter: Uncertain, working: Uncertain) -> Uncertain:
    """Fresh slurry that fills the working volume beside the starter of the first charge."""
    value, samples = (most(full - own, LEAST_FRESH * full) for full, own in _pairs(working, starter))
    return Uncertain(float(value), samples)


def _pairs(one: Uncertain, other: Uncertain) -> tuple[tuple[Any, Any], tuple[Any, Any]]:
    return (one.value, other.value), (one.samples, other.samples)


def _both(fed: list[Fed], name: str) -> Uncertain:
    return Uncertain(*(sum(getattr(one, name) for one in side) for side in (fed, sampled(fed))))


def _total_solids(fed: list[Fed], water: Uncertain, ledger: Ledger) -> Uncertain:
    """Total solids of the freshly mixed charge; put into the ledger for checks."""
    density = ledger.values["water_density"]
    solids = (sum(one.mass * one.values["total_solids"] for one in side) for side in (fed, sampled(fed)))
    mass = _both(fed, "mass")
    found = Uncertain(*(dry / (fresh + wet * density) for dry, (fresh, wet) in zip(solids, _pairs(mass, water), strict=True)))
    ledger.put(slurry_total_solids=found.value)
    ledger.sample(slurry_total_solids=found.samples)
    return found


def _refuse_too_much(asked: Any, ledger: Ledger, fresh: Uncertain, starter: Uncertain, first: Uncertain) -> None:
    """Stated masses and starter must go into the digester."""
    total = ledger.values["total_volume"] * (1 + 1e-9)
    faults = []
    if asked.starter_slurry is not None and first.value >= ledger.values["working_volume"]:
        faults.append(Fault(("starter_slurry",), "starter_fills_digester", say("fault-starter_fills_digester")))
    elif asked.feed[0].mass is not None and fresh.value + max(starter.value, first.value) > total:
        faults.append(Fault(("feed",), "volume_impossible", say("fault-charge_and_starter_too_large")))
    if faults:
        raise RefusedError(faults)
