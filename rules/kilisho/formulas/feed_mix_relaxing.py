"""Where no mix keeps all limits: which of them to relax, and by how much (elastic programming)."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import dataclass

from kilisho.formulas.feed_mix import Array, Key, Limit, Mix, gas_of_mix, limits_of
from kilisho.formulas.feed_mix_program import GAS_DEMAND, MARGIN, WIDEST_RELAXED, Found, Program
from kilisho.formulas.feed_mix_search import ROUGH, best

# A relaxed bound is told this much beyond what the mix reaches, so that whoever asks with it finds a mix.
ROOM = 0.001
MOST_ROUNDS = 6
WIDER = 4.0


@dataclass(frozen=True, slots=True)
class Relaxed:
    """Bounds that would do, by limit, and the mix that they allow."""

    bounds: dict[Key, float]
    unknowns: Array


@dataclass(frozen=True, slots=True)
class Need:
    """What a mix must give: gas [m3/d], or where no gas is asked for some volatile solids [kg/d]."""

    gas_demand: float = 0.0
    volatile_demand: float = 0.0


def together(mix: Mix, need: Need) -> Relaxed | None:
    """The relaxation of any limits, but not of what is needed, that is least in all: the sum of the parts by which each gives way,
    weighed at a usual slurry.
    """
    found, _ = _least(mix, need, [limit.key for limit in limits_of(mix)])
    return _relaxed(mix, need, found)


def alone(mix: Mix, need: Need, key: Key) -> Relaxed | None:
    """The least relaxation of one limit while all others hold; None where that is not enough.

    Where a ratio's own bottom changes with the mix, the bound that was reached becomes the bound and is tightened again, until it gives
    no more (the method of Dinkelbach 1967 for fractional programs).
    """
    found, slurry = _least(mix, need, [key])
    for _ in range(MOST_ROUNDS if key != GAS_DEMAND else 0):
        reached = _reached(mix, found, key) if found is not None else 0.0
        if reached <= 0.0:
            break
        tighter = Program(mix.with_limit(key, reached), "least_relaxation", need.gas_demand, need.volatile_demand, [key], True).at(slurry)
        if tighter is None or tighter.relaxed[key] >= -MARGIN:
            break
        found = tighter
    return _relaxed(mix, need, found)


def _least(mix: Mix, need: Need, keys: Collection[Key]) -> tuple[Found | None, float]:
    made, kept = mix.most_slurry(), mix.working_volume / mix.limits["least_retention_time", -1]
    program = Program(mix, "least_relaxation", need.gas_demand, need.volatile_demand, keys)
    search = best(program, (made / WIDER, made, made * WIDER), kept * WIDER, ROUGH)
    return search.best, search.slurry


def _reached(mix: Mix, found: Found, key: Key) -> float:
    [limit] = [one for one in limits_of(mix) if one.key == key]
    return limit.reached(found.unknowns)


def _relaxed(mix: Mix, need: Need, found: Found | None) -> Relaxed | None:
    if found is None or not found.unknowns[:-1].any():
        return None
    bounds = dict(_broken(mix, need, found.unknowns))
    return Relaxed(bounds, found.unknowns) if all(_in_reason(mix, key, bound) for key, bound in bounds.items()) else None


def _in_reason(mix: Mix, key: Key, bound: float) -> bool:
    """Whether a bound is no more than so many times as wide; the program sees to it only as far as its weights are right."""
    if key[0] in ("available", "water_available", GAS_DEMAND[0]):
        return True
    times = bound / mix.limits[key]
    return max(times, 1 / times) <= WIDEST_RELAXED * (1 + 2 * ROOM)


def _broken(mix: Mix, need: Need, unknowns: Array) -> Iterator[tuple[Key, float]]:
    """The limits that a mix does not keep, each with a bound that it does."""
    for limit in limits_of(mix):
        reached = limit.reached(unknowns)
        if limit.sense * (reached - limit.bound) > 10 * MARGIN * limit.bound:
            yield limit.key, _beyond(limit, reached)
    gas = gas_of_mix(mix, unknowns)
    if need.gas_demand and gas < need.gas_demand * (1 - 10 * MARGIN):
        yield GAS_DEMAND, gas * (1 - ROOM)


def _beyond(limit: Limit, reached: float) -> float:
    return reached * (1 + limit.sense * ROOM)
