"""Tells which limits hold a recipe back, and what a little more of each would bring."""

from __future__ import annotations

from kilisho.formulas.feed_mix import Key, Limit
from kilisho.formulas.feed_mix_gains import gain_of, gain_of_demand, holding
from kilisho.formulas.feed_mix_program import GAS_DEMAND
from kilisho.questions.answers import Answer, in_cubic_metres_per_day, in_percent
from kilisho.questions.feed_mix.words import in_words, phrase_of, place_of
from kilisho.questions.feed_mix.work import Work


def binding_limits(work: Work) -> list[Answer]:
    """The limits that the recipe has reached, those first that cost most."""
    names = [one.entry.name for one in work.stores.fed]
    found = [(limit.key, limit.bound, _gain(work, limit)) for limit in holding(work.mix, work.recipe)]
    if work.demand:
        found.append((GAS_DEMAND, work.demand, gain_of_demand(work.search, phrase_of(GAS_DEMAND, names)[0].step)))
    return [_told(work, key, bound, gain, names) for key, bound, gain in sorted(found, key=lambda one: -one[2])]


def _gain(work: Work, limit: Limit) -> float:
    return gain_of(work.search, limit, phrase_of(limit.key, [""] * len(work.stores.fed))[0].step)


def _told(work: Work, key: Key, bound: float, gain: float, names: list[str]) -> Answer:
    phrase, text, easing = phrase_of(key, names)
    ids = [one.id for one in work.stores.fed]
    one_more = phrase.tell(phrase.step)
    brings, words = _brings(work, gain)
    words = words if gain > 0.0 else "bring nothing by itself"
    return {
        **place_of(key, ids),
        "value": phrase.tell(bound),
        "one_more": one_more,
        **brings,
        "text": f"{text} ({in_words(phrase.tell(bound))}): {easing} by {in_words(one_more)} would {words}.",
    }


def _brings(work: Work, gain: float) -> tuple[Answer, str]:
    if work.asked.wish == "most_gas":
        told = in_cubic_metres_per_day(gain)
        return {"brings": told}, f"bring {in_words(told)} of biogas"
    if work.asked.wish == "cheapest":
        return {"saves": round(gain, 4)}, f"save {gain:.3g} a day in the currency of the prices"
    told = in_percent(gain)
    return {"eases": told}, f"lower the largest use of what there is by {in_words(told)} points"
