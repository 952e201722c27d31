"""Works out a farm plan, part by part: size, first charge, feed, gas over time, its use, digestate, safety."""

from __future__ import annotations

import datetime as dt
from types import SimpleNamespace
from typing import Any

from kilisho.farm import Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.messages import say
from kilisho.questions import digestate, first_charge, gas_forecast, gas_use, maintenance_feed, safety_check
from kilisho.questions.answers import Answer
from kilisho.questions.digestate.request import DigestedFeedItem
from kilisho.questions.farm_plan.daily import digester_of, fed_daily, full_feed
from kilisho.questions.farm_plan.parts import Plan, as_item, number
from kilisho.questions.findings import Inspector
from kilisho.questions.gas_forecast.request import DoseItem
from kilisho.questions.gas_use.manure import MANURE
from kilisho.questions.gas_use.request import ManureBefore
from kilisho.questions.limits import DEFAULTS
from kilisho.questions.maintenance_feed.request import Feeding
from kilisho.questions.requests import Ask, ChargeItem, DailyFeedItem, Digester
from kilisho.questions.stated_facts import GROUPS, stated_facts, values_by_id, worst_of
from kilisho.rulebook import RulebookData
from kilisho.units import to_canonical

YEAR = 365
RAMP = "feed_"
FULL = "feed_100_per_cent"
# The pressure of a planned dome that is full says nothing of the pressure now: it must not answer whether air is sucked in.
OF_THE_PLAN = ("gas_pressure",)
FORECAST = gas_forecast.form(DEFAULTS)
# What is not asked of a digester that is charged once and left.
REGULAR = ("maintenance_feed", "gas_forecast", "gas_use", "digestate")


def work_out(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Plan:
    """The parts that apply; raises :class:`RefusedError` for faults of the farm itself."""
    _refuse(asked)
    plan = Plan(asked, ledger, inspector, explain, facts_stated=facts_stated(asked, ledger.shelf.data))
    digester = digester_of(plan)
    if digester is None:
        return plan
    charged = _first_charge(plan, digester)
    fed = _maintenance_feed(plan, digester, charged)
    if fed is not None:
        _forecast(plan, digester, charged, fed)
        _use(plan, digester, fed)
        _digestate(plan, fed)
    _safety(plan, digester)
    return plan


def _refuse(asked: Any) -> None:
    begun, ready = asked.construction.starts_on, asked.construction.digester_ready_on
    if begun and ready and ready < begun:
        raise RefusedError([Fault(("construction", "digester_ready_on"), "dates_disordered", say("fault-ready_before_building"))])


def _feed_of(plan: Plan) -> list[DailyFeedItem]:
    """What is fed: as stated, or what the animals give."""
    if plan.asked.feed:
        return list(plan.asked.feed)
    animals = plan.ledger.shelf.data.animals
    names = dict.fromkeys(animals[item.animal].substrate for item in plan.asked.herd if item.count)
    return [DailyFeedItem.model_construct(substrate=name) for name in names]


def _item(plan: Plan, substrate: str) -> DailyFeedItem:
    """What is stated of a substrate; nothing of one that a part assumed."""
    return next((item for item in _feed_of(plan) if item.substrate == substrate), DailyFeedItem.model_construct(substrate=substrate))


def _first_charge(plan: Plan, digester: Digester) -> Answer | None:
    if digester.age:
        plan.leave_out("first_charge", say("plan-digester-working"))
        return None
    feed = [as_item(ChargeItem, item) for item in _feed_of(plan)]
    if not feed:
        plan.leave_out("first_charge", say("plan-nothing-to-charge"))
        return None
    ready = plan.asked.construction.digester_ready_on
    return plan.ask(first_charge.FORM, digester=digester, feed=feed, digester_ready_on=ready, full_feed_per_day=full_feed(plan, None))


def _maintenance_feed(plan: Plan, digester: Digester, charged: Answer | None) -> Answer | None:
    if plan.ledger.shelf.data.structures[_kind_of(plan, digester)].operation == "batch":
        for operation in REGULAR:
            plan.leave_out(operation, say("plan-charged-once"))
        return None
    starts = next((row.get("date") for row in (charged or {}).get("schedule", ()) if row["event"] == FULL), None)
    feeding = Feeding.model_construct(every=1.0, starts_on=dt.date.fromisoformat(starts) if starts else None, missed=0)
    return plan.ask(maintenance_feed.FORM, digester=digester, feeding=feeding, feed=fed_daily(plan, full_feed(plan, charged)))


def _kind_of(plan: Plan, digester: Digester) -> str:
    """The id of the digester's structure, that which is assumed where nobody names one."""
    return digester.structure or plan.ledger.shelf.first_structure


def _forecast(plan: Plan, digester: Digester, charged: Answer | None, fed: Answer) -> None:
    """The first year's gas: the charge, the quarters of the feed as scheduled, then the whole feed."""
    asked, ready = plan.asked, plan.asked.construction.digester_ready_on
    if not asked.with_forecast:
        return
    if charged is None or ready is None:
        plan.leave_out("gas_forecast", say("plan-no-day-of-charge"))
        return
    masses = {one["substrate"]: number(one, "mass") for one in charged["substrates"]}
    charge = SimpleNamespace(
        on=ready,
        feed=[as_item(DoseItem, item, mass=masses[item.substrate]) for item in _feed_of(plan)],
        water=number(charged, "water_volume"),
        starter_slurry=asked.starter_slurry,
    )
    fed_by = _steps(plan, charged, fed)
    plan.ask(FORECAST, digester=digester, first_charge=charge, maintenance_feed=fed_by, days=YEAR, interval="month", dilution=None)


def _steps(plan: Plan, charged: Answer, fed: Answer) -> list[SimpleNamespace]:
    """The feeding plans of the first year, a quarter more at each step of the schedule."""
    days = [row["date"] for row in charged["schedule"] if row["event"].startswith(RAMP)]
    water = to_canonical(number(fed, "per_feeding", "water_volume") + number(fed, "per_feeding", "urine_volume"), "volume", "L")
    return [
        SimpleNamespace(
            from_=dt.date.fromisoformat(day),
            until=None,
            every=1.0,
            feed=[
                as_item(DoseItem, _item(plan, one["substrate"]), mass=number(one, "mass") * (step + 1) / len(days))
                for one in fed["per_feeding"]["substrates"]
            ],
            water=water * (step + 1) / len(days),
        )
        for step, day in enumerate(days)
    ]


def _use(plan: Plan, digester: Digester, fed: Answer) -> None:
    asked = plan.asked
    if not asked.appliances and asked.people_cooked_for is None and asked.gas_demand is None:
        plan.leave_out("gas_use", say("plan-no-use-stated"))
        return
    one_way: dict[str, Any] = {"appliances": asked.appliances, "people_cooked_for": None, "gas_demand": None}
    if not asked.appliances:
        one_way |= {"gas_demand": asked.gas_demand, "people_cooked_for": None if asked.gas_demand else asked.people_cooked_for}
    size = plan.parts.get("sizing")
    storage = digester.gas_storage_volume if size is None else number(size, "gas_storage_volume")
    gas = number(fed, "biogas_per_day")
    plan.ask(gas_use.FORM, **one_way, biogas_per_day=gas, gas_storage_volume=storage, manure_before=_manure(plan, fed))


def _manure(plan: Plan, fed: Answer) -> list[ManureBefore]:
    """The manure of the daily feed, as it was kept before; none where nobody said how."""
    before, substrates = plan.asked.manure_management_before, plan.ledger.shelf.data.substrates
    masses = [(one["substrate"], number(one, "mass")) for one in fed["per_feeding"]["substrates"]] if before is not None else []
    return [
        as_item(ManureBefore, _item(plan, name), mass=mass, management=before) for name, mass in masses if substrates[name].group in MANURE
    ]


def _digestate(plan: Plan, fed: Answer) -> None:
    if not plan.asked.crops:
        plan.leave_out("digestate", say("plan-no-crops"))
        return
    feed = [as_item(DigestedFeedItem, _item(plan, one["substrate"]), mass=number(one, "mass")) for one in fed["per_feeding"]["substrates"]]
    flows = {name: to_canonical(number(fed, f"{name}_per_day"), "volume_flow", "L/d") for name in ("water", "urine")}
    retention = number(fed, "hydraulic_retention_time")
    plan.ask(digestate.FORM, feed=feed, herd=[], dilution=None, digester=None, hydraulic_retention_time=retention, **flows)


def facts_stated(asked: Any, data: RulebookData) -> Ask:
    """All facts of the farm by id, whether they were stated by id or in the groups of a safety check."""
    # Members of the farm that are named like a group of facts (its structure, its feed) are no facts.
    groups = {name: part for name in GROUPS if isinstance(part := getattr(asked, name, None), Ask)}
    return stated_facts(data.facts).model_construct(**safety_check.stated_in(SimpleNamespace(facts=asked.facts, **groups)))


def _safety(plan: Plan, digester: Digester) -> None:
    """Every check on what is stated and on what the parts found."""
    found = {name: value for name, value in plan.facts.items() if name not in OF_THE_PLAN}
    deepest = {name: value for name, value in found.items() if name == "pit_depth"}
    stated = {**found, **worst_of(values_by_id(plan.facts_stated), **deepest), "structure_kind": _kind_of(plan, digester)}
    plan.parts["safety_check"] = safety_check.verdict_of(stated, plan.inspector.of("safety_check"))
