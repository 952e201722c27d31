"""Tells, where no mix keeps all limits, which to relax and by how much."""

from __future__ import annotations

from kilisho.formulas.feed_mix import Array, Key, limits_of, slurry_of
from kilisho.formulas.feed_mix_program import GAS_DEMAND, Program
from kilisho.formulas.feed_mix_relaxing import Need, Relaxed, alone, together
from kilisho.formulas.feed_mix_search import ROUGH, best
from kilisho.questions.answers import Answer, in_cubic_metres_per_day, in_kilograms_per_day, in_litres_per_day
from kilisho.questions.feed_mix.words import in_words, phrase_of, place_of
from kilisho.questions.feed_mix.work import Work

# Where no gas is asked for, a relaxation must let this part of the volatile solids be fed that there are, or that the digester bears.
SOME = 0.01
TEXT = (
    "No mix of what is on hand keeps all limits. A limit that is relaxed costs safety of operation: read the findings of a recipe that you "
    "ask for with it. No limit of operation is offered more than four times as wide; where that is not enough, other substrates are needed."
)


def relaxation(work: Work) -> Answer:
    """What could give way: all limits together as little as possible, and each alone where that is enough."""
    need = _need(work)
    keys = [limit.key for limit in limits_of(work.mix)] + ([GAS_DEMAND] if need.gas_demand else [])
    every = together(work.mix, need)
    singles = [found for key in keys if (found := alone(work.mix, need, key)) is not None and found.bounds]
    return {
        "text": TEXT,
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
    ids = [one.id for one in work.stores.fed]
    return {
        "changes": [_change(work, key, bound) for key, bound in relaxed.bounds.items()],
        "recipe": [{"substrate": ids[i], "mass": in_kilograms_per_day(mass)} for i, mass in enumerate(recipe[:-1].tolist()) if mass],
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
    names, ids = [one.entry.name for one in work.stores.fed], [one.id for one in work.stores.fed]
    phrase, _, easing = phrase_of(key, names)
    now = work.demand if key == GAS_DEMAND else work.mix.limits[key]
    before, after = phrase.tell(now), phrase.tell(bound)
    return {**place_of(key, ids), "from": before, "to": after, "text": f"Allow {easing}: {in_words(after)} instead of {in_words(before)}."}
