"""Tells a recipe: each substrate, the slurry and its gas, what it costs and what stays on hand."""

from __future__ import annotations

from typing import Any

from kilisho.formulas.feed_mix import limits_of
from kilisho.formulas.feed_mix_gains import cost_of, largest_use
from kilisho.messages import say
from kilisho.questions.answers import (
    Answer,
    in_cubic_metres_per_day,
    in_days,
    in_grams_per_litre,
    in_kilograms_per_cubic_metre_and_day,
    in_kilograms_per_day,
    in_litres_per_day,
    in_milligrams_per_litre,
    in_number,
    in_percent,
)
from kilisho.questions.feed_mix.words import PHRASES, place_of
from kilisho.questions.feed_mix.work import Work
from kilisho.questions.gas_state import gas_state


def told(work: Work) -> Answer:
    """The recipe and what it does."""
    of, ledger, recipe = work.ledger.of, work.ledger, work.recipe
    return {
        "recipe": [_part(work, i, mass) for i, mass in enumerate(recipe[:-1].tolist()) if mass > 0.0],
        "feed_per_day": in_kilograms_per_day(*of("feed_mass_per_day")),
        "water_per_day": in_litres_per_day(float(recipe[-1])),
        "slurry_per_day": in_litres_per_day(*of("slurry_per_day")),
        "total_solids": in_percent(*of("slurry_total_solids")),
        "carbon_to_nitrogen": in_number(*of("carbon_to_nitrogen")),
        "total_ammonia_nitrogen": in_grams_per_litre(*of("total_ammonia_nitrogen")),
        "free_ammonia": in_milligrams_per_litre(*of("free_ammonia")),
        "hydraulic_retention_time": in_days(*of("hydraulic_retention_time")),
        "organic_loading_rate": in_kilograms_per_cubic_metre_and_day(*of("organic_loading_rate")),
        "biogas_per_day": in_cubic_metres_per_day(*of("biogas_per_day")),
        "biogas_per_day_normal": in_cubic_metres_per_day(*of("biogas_per_day_normal")),
        "gas_state": gas_state(ledger),
        "methane_share": in_percent(*of("methane_share")),
        **_demand(work),
        "cost_per_day": round(cost_of(work.mix, recipe), 4),
        "largest_use": in_percent(largest_use(work.mix, recipe)),
        "left_over": _left_over(work),
        "proved_within": {**in_percent(work.gap), "text": say("mix-proved")},
    }


def limits_told(work: Work) -> list[Answer]:
    """Every limit with its bound and, where there is a recipe, what the recipe reaches."""
    return [
        {
            **place_of(limit.key, work.stores.fed),
            "bound": PHRASES[limit.key[0]].tell(limit.bound),
            **({"reached": PHRASES[limit.key[0]].tell(limit.reached(work.recipe))} if work.feasible else {}),
        }
        for limit in limits_of(work.mix)
    ]


def _part(work: Work, i: int, mass: float) -> Answer:
    one, item, recipe = work.stores.fed[i], work.stores.items[i], work.recipe
    volatile = work.mix.each("volatile") * recipe
    return {
        "substrate": one.id,
        "name": one.entry.name,
        "mass": in_kilograms_per_day(mass),
        "share": in_percent(mass / float(recipe[:-1].sum())),
        "share_of_volatile_solids": in_percent(float(volatile[i] / volatile.sum())),
        "used": in_percent(mass / work.stores.available[i]),
        "cost_per_day": round(mass * (item.price or 0.0), 4),
        **_lasts(work, i, mass),
        "handling": list(one.entry.handling),
    }


def _lasts(work: Work, i: int, mass: float) -> Answer:
    """How long the stock lasts, where there is one and more is fed than comes in."""
    stock, drawn = work.stores.items[i].stock, mass - work.stores.inflow(i)
    return {"stock_lasts": in_days(stock / drawn)} if stock and drawn > 0.0 else {}


def _left_over(work: Work) -> list[Answer]:
    pairs = zip(work.stores.fed, work.stores.available, work.recipe[:-1].tolist(), strict=True)
    return [
        {"substrate": one.id, "name": one.entry.name, "mass": in_kilograms_per_day(max(0.0, there - used))} for one, there, used in pairs
    ]


def _demand(work: Work) -> Answer:
    wanted: Any = work.asked.gas_demand
    if wanted is None:
        return {}
    met = work.ledger.uncertain("biogas_per_day").times(1 / wanted)
    return {"gas_demand": in_cubic_metres_per_day(wanted), "demand_met": in_percent(*met.told)}
