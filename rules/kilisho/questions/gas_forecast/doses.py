"""The doses of a forecast: what goes into the digester at one feeding, with its water, from what was stated or what the herd gives."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from kilisho.farm import Ledger
from kilisho.faults import Fault, Place, RefusedError
from kilisho.messages import say
from kilisho.questions.feeding import Fed, resolve, sampled, scale_to, shares_of, water_to_feed
from kilisho.questions.herd import Supply
from kilisho.ranges import Uncertain, certain


@dataclass(frozen=True, slots=True)
class Dose:
    """One feeding or the first charge: substrates with their mass [kg], the room that they take in slurry and their liquid [m3]."""

    fed: list[Fed]
    room: Uncertain
    liquid: Uncertain
    water_to_feed: Uncertain

    @property
    def slurry(self) -> Uncertain:
        """Slurry that the dose makes [m3]."""
        return self.room.plus(self.liquid)


def dose_of(plan: Any, place: Place, supply: Supply, dilution: Any, ledger: Ledger) -> Dose:
    """One feeding of a plan: stated masses, or what the herd gives between two feedings."""
    masses = [certain(item.mass) if item.mass is not None else supply.of(item.substrate).times(plan.every) for item in plan.feed]
    unknown = [i for i, mass in enumerate(masses) if not mass.value]
    if unknown:
        detail = say("fault-mass_unknown")
        raise RefusedError([Fault((*place, "feed", i), "amount_unknown", detail) for i in unknown])
    fed = [resolve(item, mass, ledger) for item, mass in zip(plan.feed, masses, strict=True)]
    return _mixed(fed, plan.water, dilution, ledger)


def charge_of(charge: Any, room: Uncertain, dilution: Any, ledger: Ledger) -> Dose:
    """The first charge: stated masses, or what fills ``room`` [m3] beside the starter slurry, by the dilution."""
    shares = shares_of(charge.feed, [0.0] * len(charge.feed))
    fed = [resolve(item, certain(share), ledger) for item, share in zip(charge.feed, shares, strict=True)]
    if all(item.mass is not None for item in charge.feed):
        return _mixed(fed, charge.water, dilution, ledger)
    water_to_feed(fed, dilution, ledger)
    scale_to(fed, room, ledger)
    return _mixed(fed, None, dilution, ledger)


def _mixed(fed: list[Fed], water: float | None, dilution: Any, ledger: Ledger) -> Dose:
    """The dose with its water: stated, or by the dilution."""
    volume = _both(fed, "volume")
    ratio = certain(water_to_feed(fed, dilution, ledger)) if water is None else certain(water).over(volume)
    density = ledger.values["water_density"]
    room = Uncertain(*(sum(one.displaced(density) for one in side) for side in (fed, sampled(fed))))
    return Dose(fed, room, volume.by(ratio), ratio)


def _both(fed: Sequence[Fed], name: str) -> Uncertain:
    return Uncertain(*(sum(getattr(one, name) for one in side) for side in (fed, sampled(fed))))
