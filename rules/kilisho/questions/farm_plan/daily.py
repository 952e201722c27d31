"""What a farm plan is made for: its digester, the gas that is wanted of it, and the feed of every day.

One feed holds for the whole plan: what the digester was sized for or, where one is given, what it bears; never more than there is.
"""

from __future__ import annotations

from types import SimpleNamespace
from typing import Any

from kilisho.farm import Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.messages import Amount, say
from kilisho.questions import sizing
from kilisho.questions.answers import Answer, in_kilograms_per_day
from kilisho.questions.farm_plan.parts import Plan, as_item, number
from kilisho.questions.feeding import Fed, menu_of
from kilisho.questions.gas_state import take_gas_state
from kilisho.questions.herd import supply_of
from kilisho.questions.requests import DailyFeedItem, Digester
from kilisho.questions.sizing.work import demand_of_day

# The ways in which the gas that is wanted may be said, with what stands for one that is not.
WAYS: dict[str, Any] = {"gas_demand": None, "people_cooked_for": None, "appliances": []}
# Feed that differs by less is the same: answers tell six digits.
SAME = 1e-5


def digester_of(plan: Plan) -> Digester | None:
    """The digester as stated, or as sized for the farm; None where it cannot be sized."""
    stated, structure = plan.asked.digester, plan.asked.structure
    if stated is None:
        return _sized(plan)
    if structure is None or stated.structure is None:
        return stated.model_copy(update={"structure": stated.structure or structure})  # type: ignore[no-any-return]
    if structure != stated.structure:
        raise RefusedError([Fault(("digester", "structure"), "stated_twice", say("fault-structure_twice"))])
    return stated  # type: ignore[no-any-return]


def _sized(plan: Plan) -> Digester | None:
    answer = plan.ask(sizing.FORM, **wanted(plan))
    if answer is None:
        return None
    return Digester.model_construct(structure=plan.asked.structure, total_volume=number(answer, "total_volume"))


def wanted(plan: Plan) -> dict[str, Any]:
    """The way in which most gas a day is wanted, of those that are stated, without the others."""
    stated = [WAYS | {name: value} for name, empty in WAYS.items() if (value := getattr(plan.asked, name)) != empty]
    if len(stated) < 2:
        return stated[0] if stated else WAYS
    ledger = Ledger(plan.ledger.shelf, plan.shared)
    take_gas_state(plan.asked.climate, ledger)
    return max(stated, key=lambda way: demand_of_day(SimpleNamespace(**way), ledger) or 0.0)


def gathered(plan: Plan) -> list[Fed]:
    """What there is to feed a day, by substrate, as stated or from the herd; none where nothing says how much."""
    ledger = Ledger(plan.ledger.shelf, plan.shared)
    menu = menu_of(plan.asked.feed, supply_of(plan.asked.herd, ledger), ledger)
    return menu.fed if menu.known else []


def full_feed(plan: Plan, charged: Answer | None) -> float | None:
    """Feed of the working digester [kg/d]: what it was sized for, or what feeding grows to after the first charge; None of neither."""
    if "sizing" in plan.parts:
        return number(plan.parts["sizing"], "feed_per_day")
    ramp = charged["start_up"]["ramp"] if charged is not None else []
    return number(ramp[-1], "feed_per_day") if ramp else None


def fed_daily(plan: Plan, full: float | None) -> list[DailyFeedItem]:
    """The substrates of a day: as the farm states them; cut in proportion where there is more than ``full``, which the plan tells."""
    there = gathered(plan)
    mass = sum(one.mass for one in there)
    if full is None or mass <= full * (1 + SAME):
        return list(plan.asked.feed)
    plan.left_over = left_over_of(mass - full)
    stated = {item.substrate: item for item in plan.asked.feed}
    blank = {one.id: DailyFeedItem.model_construct(substrate=one.id) for one in there}
    return [as_item(DailyFeedItem, stated.get(one.id, blank[one.id]), mass=one.mass * full / mass) for one in there]


def left_over_of(mass: float) -> Answer:
    """What the farm has and the digester is not given [kg/d]."""
    return {"mass_per_day": in_kilograms_per_day(mass), "text": say("plan-left-over", mass=Amount(mass, "kg/d", decimals=0))}
