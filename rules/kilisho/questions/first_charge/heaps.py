"""The stockpile of the first charge: one heap a substrate, by date, with what is short and the ways to close it."""

from __future__ import annotations

import datetime as dt
from collections.abc import Sequence
from dataclasses import dataclass

from kilisho.farm import Ledger
from kilisho.formulas.purchasing import SMALLEST_MASS, Offer, buy
from kilisho.formulas.stockpile import LONGEST_ACCOUNT, Heap, Losses, Material, account
from kilisho.questions.answers import Answer, in_days, in_kilograms, in_kilograms_per_day, in_kilometres, known, plus_days
from kilisho.questions.feeding import Fed
from kilisho.questions.requests import Purchase
from kilisho.rulebook import Cover

SHORT = 0.5


@dataclass(slots=True)
class Pile:
    """One substrate's heap against its need [kg]."""

    fed: Fed
    needed: float
    per_day: float
    heap: Heap
    days: int
    days_needed: int | None

    @property
    def collected(self) -> float:
        """Fresh mass put on the heap until filling."""
        return float(self.heap.brought[self.days])

    @property
    def on_heap(self) -> float:
        """What is left of it at filling."""
        return float(self.heap.on_heap[self.days])

    @property
    def shortfall(self) -> float:
        """Mass that is missing on the day of filling; less than half a kilogram is nothing."""
        missing = self.needed - self.on_heap
        return missing if missing > SHORT else 0.0

    def told(self, starts_on: dt.date | None) -> Answer:
        """The heap against its need, with its account day by day."""
        brought, on_heap, solids, water = self.heap.table(self.days + 1)
        return {
            "substrate": self.fed.id,
            "per_day": in_kilograms_per_day(self.per_day),
            "needed": in_kilograms(self.needed),
            "collected": in_kilograms(self.collected),
            "on_heap": in_kilograms(self.on_heap),
            "shortfall": in_kilograms(self.shortfall),
            **known(days_needed=None if self.days_needed is None else in_days(self.days_needed)),
            "nitrogen_lost": in_kilograms(float(self.heap.nitrogen_lost[self.days])),
            "account": {
                "unit": "kg",
                **known(first_day=plus_days(starts_on, 0)),
                "brought": brought,
                "on_heap": on_heap,
                "volatile_solids_lost": solids,
                "water_lost": water,
            },
        }


def pile_up(fed: Fed, per_day: float, on_hand: float, cover: Cover, days: int | None) -> Pile:
    """The heap of one substrate over ``days`` of collection; over as many as it takes when None."""
    values = fed.values
    solids = values["total_solids"]
    organic = solids * values["volatile_solids_share"]
    material = Material(1 - solids, organic, solids - organic, solids * values["nitrogen_share"])
    losses = Losses(cover.volatile_solids_loss.typical, cover.nitrogen_loss.typical, cover.moisture_loss.typical)
    span = _span(fed.mass, per_day, on_hand, days)
    heap = account(material, losses, per_day, on_hand, span)
    enough = heap.days_until(fed.mass)
    if enough is None and span < LONGEST_ACCOUNT and per_day > 0:
        heap = account(material, losses, per_day, on_hand, LONGEST_ACCOUNT)
        enough = heap.days_until(fed.mass)
    return Pile(fed, fed.mass, per_day, heap, min(days if days is not None else enough or 0, len(heap.brought) - 1), enough)


def _span(needed: float, per_day: float, on_hand: float, days: int | None) -> int:
    """Days to keep account of: to the filling and to the day when there is enough, with a margin for losses."""
    to_enough = int(max(0.0, needed - on_hand) / per_day * 1.1) + 2 if per_day > 0 else 0
    return min(LONGEST_ACCOUNT, max(to_enough, days or 0))


def offers_for(purchases: Sequence[Purchase], substrate: str, main: str, days: int) -> list[tuple[Purchase, Offer]]:
    """The offers of a substrate, with what each can give within ``days``."""
    return [
        (purchase, Offer(_reach(purchase, days), purchase.price or 0.0, purchase.distance or 0.0, purchase.load))
        for purchase in purchases
        if (purchase.substrate or main) == substrate
    ]


def _reach(purchase: Purchase, days: int) -> float:
    limits = [] if purchase.available is None else [purchase.available]
    if purchase.per_day is not None:
        limits.append(purchase.per_day * max(days, 1))
    return min(limits)


def purchases_for(piles: Sequence[Pile], purchases: Sequence[Purchase], main: str) -> tuple[list[Answer], dict[str, float]]:
    """What to buy, and what each substrate still lacks after it [kg]."""
    bought: list[Answer] = []
    lacking: dict[str, float] = {}
    for pile in piles:
        offers = offers_for(purchases, pile.fed.id, main, pile.days)
        masses = buy([offer for _, offer in offers], pile.shortfall)
        still = pile.shortfall - sum(masses)
        lacking[pile.fed.id] = still if still > SHORT else 0.0
        bought += [_told(p, offer, mass, pile.fed) for (p, offer), mass in zip(offers, masses, strict=True) if mass > SMALLEST_MASS]
    return bought, lacking


def _told(purchase: Purchase, offer: Offer, mass: float, fed: Fed) -> Answer:
    return {
        "name": purchase.name,
        "substrate": fed.id,
        "mass": in_kilograms(mass),
        "cost": round(mass * offer.price, 2),
        "distance": in_kilometres(offer.distance),
        **({"loads": round(mass / offer.load)} if offer.load else {}),
    }


def cover_of(name: str | None, ledger: Ledger) -> tuple[str, Cover]:
    """The cover named, or an open heap: what is not known to be covered is counted as uncovered."""
    covers = ledger.shelf.data.practice.covers
    chosen = name or ledger.choose(
        "cover", "uncovered" if "uncovered" in covers else next(iter(covers)), "Nobody said that the heap is covered."
    )
    for field in ("volatile_solids_loss", "nitrogen_loss", "moisture_loss", "keeps_for"):
        ledger.assumptions.append(ledger.shelf.assumption("covers", chosen, field))
    return chosen, covers[chosen]
