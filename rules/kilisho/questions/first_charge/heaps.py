"""The stockpile of the first charge: one heap a substrate, by date, with what is short and the ways to close it."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache, reduce
from typing import Any

from kilisho.farm import Ledger, Shelf
from kilisho.formulas.arrays import Numeric, most
from kilisho.formulas.purchasing import SMALLEST_MASS, Offer, buy
from kilisho.formulas.stockpile import LONGEST_ACCOUNT, Heap, Left, Losses, Material, account, left_by_day
from kilisho.messages import say
from kilisho.questions.answers import Answer, in_days, in_kilograms, in_kilograms_per_day, in_kilometres, known, plus_days
from kilisho.questions.feeding import Fed, uncertain_mass
from kilisho.questions.requests import Purchase
from kilisho.ranges import Uncertain, about

SHORT = 0.5
AMOUNTS = ("days_needed", "collected", "on_heap", "shortfall")


@dataclass(slots=True)
class Pile:
    """One substrate's heap against its need [kg]."""

    fed: Fed
    needed: Uncertain
    per_day: Uncertain
    heap: Heap
    days: int
    days_needed: int | None
    spread: Spread

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
        missing = self.needed.value - self.on_heap
        return missing if missing > SHORT else 0.0

    def told(self, starts_on: dt.date | None) -> Answer:
        """The heap against its need, with its account day by day."""
        brought, on_heap, solids, water = self.heap.table(self.days + 1)
        return {
            "substrate": self.fed.id,
            "name": self.fed.entry.name,
            "per_day": in_kilograms_per_day(*self.per_day.told),
            "needed": in_kilograms(*self.needed.told),
            **amounts_of([self]),
            "nitrogen_lost": in_kilograms(*about(float(self.heap.nitrogen_lost[self.days]), self.spread.nitrogen_lost)),
            "account": {
                "unit": "kg",
                **known(first_day=plus_days(starts_on, 0)),
                "brought": brought,
                "on_heap": on_heap,
                "volatile_solids_lost": solids,
                "water_lost": water,
            },
        }


@dataclass(frozen=True, slots=True)
class Spread:
    """Samples of one heap: what was put on it and what is left of it at filling, what is missing, when there is enough, nitrogen lost."""

    collected: Numeric
    on_heap: Numeric
    shortfall: Numeric
    days_needed: Numeric
    nitrogen_lost: Numeric


def amounts_of(piles: Sequence[Pile]) -> Answer:
    """What was put on the heaps until filling, what is left of it, what is missing, and the days until there is enough, if ever."""
    needed = [pile.days_needed for pile in piles if pile.days_needed is not None]
    days = days_of(piles).get("days_needed")
    return {
        **known(days_needed=None if days is None else in_days(*about(float(max(needed)), days))),
        "collected": in_kilograms(*about(sum([p.collected for p in piles]), sum([p.spread.collected for p in piles]))),
        "on_heap": in_kilograms(*about(sum([p.on_heap for p in piles]), sum([p.spread.on_heap for p in piles]))),
        "shortfall": in_kilograms(*shortfall_of(piles).told),
    }


def shortfall_of(piles: Sequence[Pile]) -> Uncertain:
    """What is missing at filling, with its samples [kg]."""
    return Uncertain(sum([p.shortfall for p in piles]), sum([p.spread.shortfall for p in piles]))


def days_of(piles: Sequence[Pile]) -> dict[str, Numeric]:
    """Samples of the days until all heaps hold enough, as an answer to measure for; nothing where one never does."""
    ever = all(pile.days_needed is not None for pile in piles)
    return {"days_needed": reduce(most, [pile.spread.days_needed for pile in piles])} if ever else {}


def pile_up(fed: Fed, per_day: Uncertain, on_hand: float, cover: CoverUsed, days: int | None) -> Pile:
    """The heap of one substrate over ``days`` of collection; over as many as it takes when None."""
    material, losses = _material(fed.values), Losses(*(loss.value for loss in cover.losses))
    span = _span(fed.mass, per_day.value, on_hand, days)
    heap = account(material, losses, per_day.value, on_hand, span)
    enough = heap.days_until(fed.mass)
    if enough is None and span < LONGEST_ACCOUNT and per_day.value > 0:
        heap = account(material, losses, per_day.value, on_hand, LONGEST_ACCOUNT)
        enough = heap.days_until(fed.mass)
    until = min(days if days is not None else enough or 0, len(heap.brought) - 1)
    spread = _spread(fed, per_day, on_hand, cover, until, min(LONGEST_ACCOUNT, 2 * (enough or LONGEST_ACCOUNT) + 8))
    return Pile(fed, uncertain_mass(fed), per_day, heap, until, enough, spread)


def _spread(fed: Fed, per_day: Uncertain, on_hand: float, cover: CoverUsed, days: int, within: int) -> Spread:  # noqa: PLR0913, PLR0917
    needed, sampled = uncertain_mass(fed).samples, fed.sampled or fed
    left = cover.left_of(sampled)
    on_heap = per_day.samples * left.of_daily[days] + on_hand * left.of_start[days]
    enough = left.days_until(needed, per_day.samples, on_hand, within)
    nitrogen = per_day.samples * left.nitrogen_lost_of_daily(days) + on_hand * left.nitrogen_lost_of_start(days)
    return Spread(on_hand + per_day.samples * days, on_heap, most(needed - on_heap, 0.0), enough, nitrogen)


@dataclass(frozen=True, slots=True)
class CoverUsed:
    """A cover and its losses per day of volatile solids, nitrogen and water."""

    id: str
    losses: tuple[Uncertain, Uncertain, Uncertain]
    shelf: Shelf

    def left_of(self, sampled: Fed) -> Left:
        """What is left of a substrate under this cover; kept for substrates on which nothing was measured."""
        if sampled.values is self.shelf.substrates[sampled.id].sampled:
            return _left_of(self.shelf, sampled.id, self)
        return self.left_of_values(sampled.values)

    def left_of_values(self, values: Mapping[str, Any]) -> Left:
        """What is left of a material with these sampled values."""
        return left_by_day(_material(values), Losses(*(loss.samples for loss in self.losses)))

    def __hash__(self) -> int:
        return hash(self.id)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, CoverUsed) and (other.id, other.shelf) == (self.id, self.shelf)


@lru_cache(maxsize=16)
def _left_of(shelf: Shelf, substrate: str, cover: CoverUsed) -> Left:
    return cover.left_of_values(shelf.substrates[substrate].sampled)


def _material(values: Mapping[str, Any]) -> Material:
    solids = values["total_solids"]
    organic = solids * values["volatile_solids_share"]
    return Material(1 - solids, organic, solids - organic, solids * values["nitrogen_share"])


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


def cover_of(name: str | None, ledger: Ledger) -> CoverUsed:
    """The cover named, or an open heap: what is not known to be covered is counted as uncovered."""
    covers = ledger.shelf.data.practice.covers
    usual = "uncovered" if "uncovered" in covers else next(iter(covers))
    chosen = name or ledger.choose("cover", usual, say("assumed-cover"))
    ledger.figure("covers", chosen, "keeps_for")
    solids, nitrogen, water = (ledger.figure("covers", chosen, f"{name}_loss") for name in ("volatile_solids", "nitrogen", "moisture"))
    return CoverUsed(chosen, (solids, nitrogen, water), ledger.shelf)
