"""What a herd gives per day: dung by substrate, urine, and the gas that the trade expects of it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from kilisho.farm import Ledger
from kilisho.messages import say
from kilisho.questions.requests import HerdItem
from kilisho.questions.sharing import once
from kilisho.ranges import Uncertain, certain

NOTHING = certain(0.0)


@dataclass(slots=True)
class Supply:
    """What a herd gives per day, by substrate, and its gathered urine."""

    by_substrate: dict[str, Uncertain]
    heads: dict[str, int]
    urine: Uncertain
    rule_of_thumb_gas: float | None

    def of(self, substrate: str) -> Uncertain:
        """What it gives of a substrate; 0 for what no animal of it gives."""
        return self.by_substrate.get(substrate, NOTHING)


@once
def supply_of(herd: Sequence[HerdItem], ledger: Ledger, *, with_urine: bool = False) -> Supply:
    """What the herd gives per day, as stated for each head or from the rulebook; urine only where it is asked for."""
    data = ledger.shelf.data
    supply = Supply({}, {}, NOTHING, None)
    for item in herd:
        animal = data.animals[item.animal]
        housing = item.housing or ledger.choose("housing", "stall", say("assumed-housing", animal=item.animal))
        gathered = _dung_per_head(item, housing, ledger).times(item.count)
        supply.by_substrate[animal.substrate] = supply.of(animal.substrate).plus(gathered)
        supply.heads[animal.substrate] = supply.heads.get(animal.substrate, 0) + item.count
        if with_urine:
            supply.urine = supply.urine.plus(_urine_per_head(item, housing, ledger).times(item.count))
    supply.rule_of_thumb_gas = _rule_of_thumb(herd, ledger)
    return supply


def _rule_of_thumb(herd: Sequence[HerdItem], ledger: Ledger) -> float | None:
    """The trade's gas for the herd; None unless it has a word for every animal in it."""
    rules = [(item.count, ledger.shelf.data.animals[item.animal].rule_of_thumb_gas) for item in herd]
    if not rules or any(rule is None for _, rule in rules):
        return None
    return float(sum(count * rule.typical for count, rule in rules if rule is not None))


def _dung_per_head(item: HerdItem, housing: str, ledger: Ledger) -> Uncertain:
    if item.dung_per_day is not None:
        return certain(item.dung_per_day)
    share = ledger.figure("collectable", item.animal, housing)
    if item.live_weight is not None:
        return ledger.figure("animals", item.animal, "dung_per_live_weight").by(share).times(item.live_weight)
    return ledger.figure("animals", item.animal, "dung_per_day").by(share)


def _urine_per_head(item: HerdItem, housing: str, ledger: Ledger) -> Uncertain:
    if item.urine_per_day is not None:
        return certain(item.urine_per_day)
    return ledger.figure("animals", item.animal, "urine_per_day").by(ledger.figure("urine_collectable", item.animal, housing))
