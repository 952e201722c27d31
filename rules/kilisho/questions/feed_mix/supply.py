"""What is on hand for a mix: how much of each substrate there is per day."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from kilisho.farm import Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.messages import say
from kilisho.questions.feed_mix.request import OnHand
from kilisho.questions.feeding import Fed, resolve
from kilisho.questions.herd import Supply, supply_of
from kilisho.ranges import certain


@dataclass(frozen=True, slots=True)
class Stores:
    """The items with their substrates and what there is of each per day [kg/d]; ``season`` [d] where a stock is spread over it."""

    items: list[OnHand]
    fed: list[Fed]
    available: list[float]
    season: float | None

    def inflow(self, i: int) -> float:
        """What comes per day without the stock [kg/d]."""
        return self.available[i] - (self.items[i].stock or 0.0) / (self.season or 1.0)


def stores_of(asked: Any, ledger: Ledger) -> Stores:
    """What is on hand: as stated, or from the herd. Raises :class:`RefusedError` where nothing says how much there is."""
    supply = supply_of(asked.herd, ledger)
    items = list(asked.on_hand) or [OnHand.model_construct(substrate=name) for name, mass in supply.by_substrate.items() if mass.value]
    season = _season(asked, items, ledger)
    available = [_per_day(item, supply, season) for item in items]
    _refuse(items, available)
    fed = [resolve(item, certain(0.0), ledger) for item in items]
    for item in items:
        if item.price is None:
            ledger.choose("price", "free", say("mix-price-unknown"), of=item.substrate)
    return Stores(items, fed, available, season)


def _season(asked: Any, items: Sequence[OnHand], ledger: Ledger) -> float | None:
    if not any(item.stock for item in items):
        return None
    if asked.season is not None:
        return float(asked.season)
    return ledger.figure("figures", "season_of_stock", "season").value


def _per_day(item: OnHand, supply: Supply, season: float | None) -> float:
    spread = (item.stock or 0.0) / season if season else 0.0
    if item.available is not None:
        return item.available + spread
    return spread if item.stock is not None else supply.of(item.substrate).value


def _refuse(items: Sequence[OnHand], available: Sequence[float]) -> None:
    unknown = [
        Fault(("on_hand", i), "amount_unknown", say("fault-available_unknown"))
        for i, (item, mass) in enumerate(zip(items, available, strict=True))
        if not mass and item.available is None and item.stock is None
    ]
    if unknown:
        raise RefusedError(unknown)
    if not any(available):
        raise RefusedError([Fault(("on_hand",), "nothing_to_mix", say("fault-nothing_to_mix"))])
