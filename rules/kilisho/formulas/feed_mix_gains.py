"""What a mix is worth under its wish, which limits hold it, and what a little more of each would bring, by searching again."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from kilisho.formulas.feed_mix import Array, Limit, Mix, gas_of_mix, limits_of
from kilisho.formulas.feed_mix_program import Program
from kilisho.formulas.feed_mix_search import Search, near

# A limit holds a mix that reaches it to within this part.
TOUCHED = 2e-5
# A change is tried at this part of the bound at least, since smaller ones drown in the precision of the search.
LEAST_STEP = 0.01


def worth(program: Program, unknowns: Array) -> float:
    """Gas [m3/d], cost per day, or the largest part of an available substrate that is used, by the program's wish."""
    if program.wish == "most_gas":
        return gas_of_mix(program.mix, unknowns)
    return cost_of(program.mix, unknowns) if program.wish == "cheapest" else largest_use(program.mix, unknowns)


def cost_of(mix: Mix, unknowns: Array) -> float:
    """Cost per day in the currency of the prices."""
    return float(mix.each("price", mix.water_price) @ unknowns)


def largest_use(mix: Mix, unknowns: Array) -> float:
    """The largest part of what is available of an ingredient that a mix uses [1]."""
    available = np.array([mix.limits["available", i] for i in range(len(mix.ingredients))])
    return float(np.max(np.divide(unknowns[:-1], available, out=np.zeros_like(available), where=available > 0.0)))


def holding(mix: Mix, unknowns: Array) -> Iterator[Limit]:
    """The limits that a mix has reached."""
    for limit in limits_of(mix):
        # Nothing available of an ingredient is a fact, not a limit that anybody could move a little.
        if limit.bound > 0.0 and limit.sense * (limit.bound - limit.reached(unknowns)) <= TOUCHED * limit.bound:
            yield limit


def gain_of(search: Search, limit: Limit, step: float) -> float:
    """What relaxing a limit by ``step`` brings: more gas, less cost, or a smaller largest use.

    Found by searching again with the limit relaxed; where the step is less than a hundredth of the bound, by that hundredth, in proportion.
    """
    tried = max(step, LEAST_STEP * limit.bound)
    program = search.program
    mix = program.mix.with_limit(limit.key, max(LEAST_STEP * limit.bound, limit.bound + limit.sense * tried))
    return _better(search, Program(mix, program.wish, program.gas_demand)) * step / tried


def gain_of_demand(search: Search, step: float) -> float:
    """What asking for less gas by ``step`` [m3/d] brings, as :func:`gain_of`."""
    program = search.program
    tried = max(step, LEAST_STEP * program.gas_demand)
    return _better(search, Program(program.mix, program.wish, max(0.0, program.gas_demand - tried))) * step / tried


def _better(search: Search, program: Program) -> float:
    found = near(program, search.slurry).best
    if search.best is None or found is None:
        return 0.0
    before, after = worth(search.program, search.best.unknowns), worth(program, found.unknowns)
    gained = after - before if program.wish == "most_gas" else before - after
    return gained if gained > 1e-5 * abs(before) else 0.0
