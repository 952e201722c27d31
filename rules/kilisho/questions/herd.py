"""What a herd gives per day: dung by substrate, urine, and the gas that the trade expects of it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from kilisho.farm import Ledger
from kilisho.questions.requests import HerdItem


@dataclass(slots=True)
class Supply:
    """What a herd gives per day, by substrate, and its gathered urine."""

    by_substrate: dict[str, float]
    heads: dict[str, int]
    urine: float
    rule_of_thumb_gas: float | None


def supply_of(herd: Sequence[HerdItem], ledger: Ledger) -> Supply:
    """What the herd gives per day, as stated for each head or from the rulebook."""
    data = ledger.shelf.data
    supply = Supply({}, {}, 0.0, None)
    for item in herd:
        animal = data.animals[item.animal]
        housing = item.housing or ledger.choose("housing", "stall", f"Housing of {item.animal} was not stated.")
        gathered = item.count * _dung_per_head(item, housing, ledger)
        supply.by_substrate[animal.substrate] = supply.by_substrate.get(animal.substrate, 0.0) + gathered
        supply.heads[animal.substrate] = supply.heads.get(animal.substrate, 0) + item.count
        supply.urine += item.count * _urine_per_head(item, housing, ledger)
    supply.rule_of_thumb_gas = _rule_of_thumb(herd, ledger)
    return supply


def _rule_of_thumb(herd: Sequence[HerdItem], ledger: Ledger) -> float | None:
    """The trade's gas for the herd; None unless it has a word for every animal in it."""
    rules = [(item.count, ledger.shelf.data.animals[item.animal].rule_of_thumb_gas) for item in herd]
    if not rules or any(rule is None for _, rule in rules):
        return None
    return float(sum(count * rule.typical for count, rule in rules if rule is not None))


def _dung_per_head(item: HerdItem, housing: str, ledger: Ledger) -> float:
    if item.dung_per_day is not None:
        return item.dung_per_day
    animal, shelf = ledger.shelf.data.animals[item.animal], ledger.shelf
    share = getattr(animal.collectable, housing)
    if item.live_weight is not None:
        ledger.assumptions.append(shelf.assumption("animals", item.animal, "dung_per_live_weight"))
        return float(item.live_weight * animal.dung_per_live_weight.typical * share.typical)
    ledger.assumptions.append(shelf.assumption("animals", item.animal, "dung_per_day"))
    ledger.assumptions.append(shelf.collected(item.animal, housing))
    return float(animal.dung_per_day.typical * share.typical)


def _urine_per_head(item: HerdItem, housing: str, ledger: Ledger) -> float:
    if item.urine_per_day is not None:
        return item.urine_per_day
    animal = ledger.shelf.data.animals[item.animal]
    return float(animal.urine_per_day.typical * getattr(animal.urine_collectable, housing).typical)
