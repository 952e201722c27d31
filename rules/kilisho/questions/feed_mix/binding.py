"""Tells which limits hold a recipe back, and what a little more of each would bring."""

from __future__ import annotations

from kilisho.formulas.feed_mix import Key, Limit
from kilisho.formulas.feed_mix_gains import gain_of, gain_of_demand, holding
from kilisho.formulas.feed_mix_program import GAS_DEMAND
from kilisho.messages import Message, Number, in_a_row, say
from kilisho.questions.answers import Answer, in_cubic_metres_per_day, in_percent
from kilisho.questions.feed_mix.words import PHRASES, amount, place_of, said
from kilisho.questions.feed_mix.work import Work


def binding_limits(work: Work) -> list[Answer]:
    """The limits that the recipe has reached, those first that cost most."""
    found = [(limit.key, limit.bound, _gain(work, limit)) for limit in holding(work.mix, work.recipe)]
    if work.demand:
        found.append((GAS_DEMAND, work.demand, gain_of_demand(work.search, PHRASES[GAS_DEMAND[0]].step)))
    return [_told(work, key, bound, gain) for key, bound, gain in sorted(found, key=lambda one: -one[2])]


def _gain(work: Work, limit: Limit) -> float:
    return gain_of(work.search, limit, PHRASES[limit.key[0]].step)


def _told(work: Work, key: Key, bound: float, gain: float) -> Answer:
    phrase, fed = PHRASES[key[0]], work.stores.fed
    value, one_more = phrase.tell(bound), phrase.tell(phrase.step)
    brings, then = _brings(work, gain)
    held = said(phrase.holds, key, fed, bound=amount(value), step=amount(one_more))
    then = then if gain > 0.0 else say("mix-step-nothing")
    return {**place_of(key, fed), "value": value, "one_more": one_more, **brings, "text": in_a_row(held, then)}


def _brings(work: Work, gain: float) -> tuple[Answer, Message]:
    """What one more of a limit brings, by what was wished for."""
    if work.asked.wish == "most_gas":
        told = in_cubic_metres_per_day(gain)
        return {"brings": told}, say("mix-step-brings-gas", gas=amount(told))
    if work.asked.wish == "cheapest":
        return {"saves": round(gain, 4)}, say("mix-step-saves", cost=Number(gain))
    told = in_percent(gain)
    return {"eases": told}, say("mix-step-eases", share=amount(told))
