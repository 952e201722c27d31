"""Tells, where no mix keeps all limits, which to relax and by how much."""

from __future__ import annotations

from kilisho.formulas.feed_mix import Array, Key, limits_of, slurry_of
from kilisho.formulas.feed_mix_program import GAS_DEMAND, Program
from kilisho.formulas.feed_mix_relaxing import Need, Relaxed, alone, together
from kilisho.formulas.feed_mix_search import ROUGH, best
from kilisho.messages import say
from kilisho.questions.answers import Answer, in_cubic_metres_per_day, in_kilograms_per_day, in_litres_per_day
from kilisho.questions.feed_mix.words import PHRASES, amount, place_of, said
from kilisho.questions.feed_mix.work import Work

# Where no gas is asked for, a relaxation must let this part of the volatile solids be fed that there are, or that the digester bears.
SOME = 0.01


def relaxation(work: Work) -> Answer:
    """What could give way: all limits together as little as possible, and each alone where that is enough."""
    need = _need(work)
    keys = [limit.key for limit in limits_of(work.mix)] + ([GAS_DEMAND] if need.gas_demand else [])
    every = together(work.mix, need)
    singles = [found for key in keys if (found := alone(work.mix, need, key)) is not None and found.bounds]
    return {
        "text": say("mix-none"),
        "most_gas_within_limits": in_cubic_metres_per_day(work.most),
        **({"together": _told(work, every)} if every is not None and every.bounds else {}),
        "alone": [_told(work, one) for one in singles],
    }


def _need(work: Work) -> Need:
    if work.demand:
        return Need(gas_demand=work.demand)
    there = sum(one.volatile * work.mix.limits["available", i] for i, one in enumerate(work.mix.ingredients))
    return Need(volatile_demand=SOME * min(there, work.mix.limits["largest_organic_loading_rate", -1] * work.mix.working_volume))


def _told(work: Work, relaxed: Relaxed) -> Answer:
    recipe = _recipe_then(work, relaxed)
    masses = zip(work.stores.fed, recipe[:-1].tolist(), strict=True)
    return {
        "changes": [_change(work, key, bound) for key, bound in relaxed.bounds.items()],
        "recipe": [{"substrate": one.id, "name": one.entry.name, "mass": in_kilograms_per_day(mass)} for one, mass in masses if mass],
        "water": in_litres_per_day(float(recipe[-1])),
    }


def _recipe_then(work: Work, relaxed: Relaxed) -> Array:
    """The recipe that is wished for, under the relaxed limits; the one that showed that they do, where the search finds no better."""
    mix, demand = work.mix, relaxed.bounds.get(GAS_DEMAND, work.demand)
    for key, bound in relaxed.bounds.items():
        mix = mix if key == GAS_DEMAND else mix.with_limit(key, bound)
    own = float(slurry_of(mix) @ relaxed.unknowns)
    found = best(Program(mix, work.search.program.wish, demand), (own,), precision=ROUGH).best
    return relaxed.unknowns if found is None else found.unknowns


def _change(work: Work, key: Key, bound: float) -> Answer:
    phrase, fed = PHRASES[key[0]], work.stores.fed
    now = work.demand if key == GAS_DEMAND else work.mix.limits[key]
    before, after = phrase.tell(now), phrase.tell(bound)
    text = said(phrase.allow, key, fed, before=amount(before), after=amount(after))
    return {**place_of(key, fed), "from": before, "to": after, "text": text}
