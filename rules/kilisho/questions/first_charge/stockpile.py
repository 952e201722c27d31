"""Tells the stockpile: own collection against the need, in numbers and words, and the ways to close what is short."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from kilisho.formulas.arrays import most
from kilisho.questions.answers import Answer, in_cubic_metres, in_days, in_kilograms, in_percent, known, plus_days
from kilisho.questions.first_charge.heaps import AMOUNTS, Pile, amounts_of, shortfall_of
from kilisho.questions.first_charge.work import Work, oldest_dung
from kilisho.ranges import about


def stockpile(work: Work, purchases: Sequence[Answer], lacking: Mapping[str, float]) -> Answer:
    """Own collection against the need, in numbers and words, and the ways to close what is short."""
    asked, piles = work.asked, work.piles
    short, still = sum([pile.shortfall for pile in piles]), sum(lacking.values())
    needed = [pile.days_needed for pile in piles]
    days = None if None in needed else max(n for n in needed if n is not None)
    start, ready = asked.stockpile.starts_on, asked.digester_ready_on
    heaps = [pile.told(start) for pile in piles]
    # One heap is the whole stockpile, so its ranges need no second look.
    whole = {name: heaps[0][name] for name in AMOUNTS if name in heaps[0]} if len(heaps) == 1 else amounts_of(piles)
    after = whole["shortfall"] if short == still else in_kilograms(*about(still, most(shortfall_of(piles).samples - (short - still), 0.0)))
    oldest = oldest_dung(work)
    return {
        **whole,
        **known(start_by=plus_days(ready, None if days is None else -days), enough_on=plus_days(start, days)),
        "shortfall_after_purchases": after,
        "enough": short == 0,
        "in_words": _in_words(work, days, short),
        **known(oldest=None if oldest is None else in_days(oldest)),
        "within_keeping_time": oldest is not None and oldest <= work.keeps_for,
        "keeps_for": in_days(work.keeps_for),
        "cover": work.cover_id,
        "purchases": list(purchases),
        "remedies": _remedies(work, purchases, short, still, days) if short else [],
        "heaps": heaps,
    }


def _in_words(work: Work, days: int | None, short: float) -> str:
    text = " ".join(_of_one(pile) for pile in work.piles)
    if short == 0:
        return f"{text} That is enough."
    if days is None:
        return f"{text} Own collection alone never suffices."
    enough = plus_days(work.asked.stockpile.starts_on, days)
    text = f"{text} Own collection suffices after {days} days" + (f", on {enough}." if enough else ".")
    late = f" By then the oldest dung is {days} days old, past the {work.keeps_for:.0f} that it keeps under this cover."
    return text + late if days > work.keeps_for else text


def _of_one(pile: Pile) -> str:
    """One substrate's heap in words."""
    there = f"{pile.heap.brought[0]:,.0f} kg lay there, and " if pile.heap.brought[0] else ""
    gathered = pile.collected - float(pile.heap.brought[0])
    text = f"{pile.fed.entry.name}: {there}{pile.days} days bring {gathered:,.0f} kg, of which {pile.on_heap:,.0f} kg are left at filling. "
    text += f"The charge needs {pile.needed.value:,.0f} kg."
    return f"{text} That is {pile.shortfall:,.0f} kg too little." if pile.shortfall else text


def _remedies(work: Work, purchases: Sequence[Answer], short: float, still: float, days: int | None) -> list[Answer]:
    values, structure = work.ledger.values, work.structure
    per_volume = values["substrate_mass"] / values["fresh_slurry_volume"]
    starter = short / per_volume + values["starter_volume"]
    most_starter = work.ledger.practice("largest_starter_share") * values["slurry_volume"]
    share = (values["slurry_volume"] - short / per_volume) / values["total_volume"]
    bought = short - still
    keeps = days is not None and days <= work.keeps_for
    purchase = [_remedy("purchase", still <= 0, f"Take {bought:,.0f} kg from others.", in_kilograms(bought))] if purchases else []
    return [
        *purchase,
        _remedy(
            "wait",
            keeps,
            "Own collection never suffices."
            if days is None
            else f"Wait until {days} days of own dung lie there; dung keeps {work.keeps_for:.0f} days under this cover.",
            None if days is None else in_days(days),
            plus_days(work.asked.stockpile.starts_on, days),
        ),
        _remedy(
            "starter_slurry",
            starter <= most_starter,
            "Replace the missing part by digested slurry from a working digester whose animals are healthy.",
            in_cubic_metres(starter),
        ),
        _remedy(
            "smaller_first_fill",
            share >= structure.least_fill_share.typical,
            f"Fill to {share * 100:.0f} % of the total volume and add the rest as dung comes in; inlet and outlet must stay under slurry "
            f"(usually from {structure.least_fill_share.typical * 100:.0f} %).",
            in_percent(share),
        ),
    ]


def _remedy(name: str, possible: bool, text: str, size: Answer | None, date: str | None = None) -> Answer:
    return {"remedy": name, "possible": possible, "text": text, **known(amount=size, date=date)}
