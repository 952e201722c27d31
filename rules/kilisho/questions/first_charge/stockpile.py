"""Tells the stockpile: own collection against the need, in numbers and words, and the ways to close what is short."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping, Sequence

from kilisho.formulas.arrays import most
from kilisho.messages import Amount, Day, Message, Number, in_a_row, say
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


def _in_words(work: Work, days: int | None, short: float) -> Message:
    heaps = [sentence for pile in work.piles for sentence in _of_one(pile)]
    if short == 0:
        return in_a_row(*heaps, say("stockpile-enough"))
    if days is None:
        return in_a_row(*heaps, say("stockpile-never"))
    # Without dates a heap grows until it is enough, so one that is short began on a day that is known.
    enough = say("stockpile-enough-on", days=days, date=Day(work.asked.stockpile.starts_on + dt.timedelta(days)))
    late = [say("stockpile-too-old", days=days, keeps=Number(work.keeps_for, 0))] if days > work.keeps_for else []
    return in_a_row(*heaps, enough, *late)


def _of_one(pile: Pile) -> list[Message]:
    """One substrate's heap in words."""
    there, gathered = float(pile.heap.brought[0]), pile.collected - float(pile.heap.brought[0])
    name, days, brought, left = pile.fed.entry.name, pile.days, _kilograms(gathered), _kilograms(pile.on_heap)
    if there:
        heap = say("heap-added", name=name, there=_kilograms(there), days=days, brought=brought, left=left)
    else:
        heap = say("heap-gathered", name=name, days=days, brought=brought, left=left)
    short = [say("heap-short", short=_kilograms(pile.shortfall))] if pile.shortfall else []
    return [heap, say("heap-needed", needed=_kilograms(pile.needed.value)), *short]


def _kilograms(mass: float) -> Amount:
    return Amount(mass, "kg", decimals=0)


def _remedies(work: Work, purchases: Sequence[Answer], short: float, still: float, days: int | None) -> list[Answer]:
    values, structure = work.ledger.values, work.structure
    per_volume = values["substrate_mass"] / values["fresh_slurry_volume"]
    starter = short / per_volume + values["starter_volume"]
    most_starter = work.ledger.practice("largest_starter_share") * values["slurry_volume"]
    share = (values["slurry_volume"] - short / per_volume) / values["total_volume"]
    bought = short - still
    keeps = days is not None and days <= work.keeps_for
    purchase = (
        [_remedy("purchase", still <= 0, say("remedy-purchase", bought=_kilograms(bought)), in_kilograms(bought))] if purchases else []
    )
    return [
        *purchase,
        _remedy(
            "wait",
            keeps,
            say("remedy-never") if days is None else say("remedy-wait", days=days, keeps=Amount(work.keeps_for, "d", decimals=0)),
            None if days is None else in_days(days),
            plus_days(work.asked.stockpile.starts_on, days),
        ),
        _remedy(
            "starter_slurry",
            starter <= most_starter,
            say("remedy-starter"),
            in_cubic_metres(starter),
        ),
        _remedy(
            "smaller_first_fill",
            share >= structure.least_fill_share.typical,
            say("remedy-smaller-fill", share=_percent(share), least=_percent(structure.least_fill_share.typical)),
            in_percent(share),
        ),
    ]


def _percent(share: float) -> Amount:
    return Amount(share * 100, "%", decimals=0)


def _remedy(name: str, possible: bool, text: Message, size: Answer | None, date: str | None = None) -> Answer:
    return {"remedy": name, "possible": possible, "text": text, **known(amount=size, date=date)}
