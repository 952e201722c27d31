"""Works out a use of gas: demand, hours, store, pipe, heat and fuels, before any of it is told."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from kilisho.farm import Ledger, plain
from kilisho.faults import Fault, RefusedError
from kilisho.formulas.arrays import least
from kilisho.messages import say
from kilisho.questions import refusals
from kilisho.questions.gas_state import take_gas_state
from kilisho.questions.gas_use.demand import Demand, busiest_flow, demand_of, faults_of_demand
from kilisho.questions.gas_use.fuels import Climate, work_out_fuels
from kilisho.questions.gas_use.hours import Day, day_of, storage_of, take_storage_needed
from kilisho.questions.gas_use.manure import faults_of_manure
from kilisho.questions.gas_use.pipe import PipeWork, line_of, work_out_pipe
from kilisho.questions.gas_use.properties import take_methane_share
from kilisho.questions.gas_use.purposes import work_out_purposes
from kilisho.questions.stated_facts import all_facts, values_by_id
from kilisho.questions.storage_methods import StorageMethod
from kilisho.ranges import Uncertain, certain

SHARE_TOLERANCE = 1e-6


@dataclass(slots=True)
class Work:
    """Everything worked out for one use of gas, before it is told."""

    asked: Any
    ledger: Ledger
    demand: Demand | None
    supply: float | None
    gas_pressure: float | None
    storage_method: StorageMethod | None
    storage: float | None
    day: Day | None
    pipe: PipeWork | None
    climate: Climate

    @property
    def gas(self) -> Uncertain:
        """A day's gas [m3/d]: what there is, or what is wanted where that is not stated."""
        return certain(self.supply) if self.supply is not None else self.demand.per_day if self.demand else certain(0.0)


def work_out(asked: Any, ledger: Ledger) -> Work:
    """Everything of one use of gas; raises :class:`RefusedError` for faults between members of the request."""
    _refuse(asked, ledger)
    take_gas_state(asked.climate, ledger)
    take_methane_share(asked.methane_share, ledger)
    demand, supply = demand_of(asked, ledger), asked.biogas_per_day
    method, storage = None, asked.gas_storage_volume
    if demand is not None:
        method = take_storage_needed(demand, supply, ledger)
        storage = storage_of(storage, ledger)
    day = day_of(demand, supply, storage) if demand is not None and storage is not None else None
    _take_burnt(demand, supply, day, ledger)
    climate = work_out_fuels(asked, work_out_purposes(demand, day, ledger), ledger)
    pressure = asked.gas_pressure if asked.gas_pressure is not None else values_by_id(asked.facts).get("gas_pressure")
    pipe = _pipe(asked, demand, pressure, ledger)
    return Work(asked, ledger, demand, supply, pressure, method, storage, day, pipe, climate)


def _pipe(asked: Any, demand: Demand | None, pressure: float | None, ledger: Ledger) -> PipeWork | None:
    if asked.pipe is None:
        return None
    line = line_of(asked.pipe, *busiest_flow(demand, asked.biogas_per_day, ledger), ledger)
    return work_out_pipe(line, pressure, [use.appliance for use in asked.appliances], ledger)


def _take_burnt(demand: Demand | None, supply: float | None, day: Day | None, ledger: Ledger) -> None:
    """Put the gas that is burnt and that is vented per day into the ledger.

    Where the hours are not known the store is taken to bridge the day: all gas is burnt up to what is wanted.
    """
    burnt, vented = _burnt(demand, supply, day)
    ledger.put(gas_burnt_per_day=burnt.value, gas_vented_per_day=vented.value)
    ledger.sample(gas_burnt_per_day=burnt.samples, gas_vented_per_day=vented.samples)


def _burnt(demand: Demand | None, supply: float | None, day: Day | None) -> tuple[Uncertain, Uncertain]:
    if day is not None:
        vented = day.total("vented")
        return day.total("demand").plus(day.total("unmet").times(-1.0)), vented
    if demand is None or supply is None:
        return demand.per_day if demand is not None else certain(supply or 0.0), certain(0.0)
    wanted = demand.per_day
    burnt = Uncertain(min(wanted.value, supply), least(wanted.samples, supply))
    return burnt, certain(supply).plus(burnt.times(-1.0))


def _refuse(asked: Any, ledger: Ledger) -> None:
    faults = [*faults_of_demand(asked), *refusals.faults_of_months(asked.climate), *faults_of_manure(asked, ledger)]
    fuels = [one.fuel for one in asked.replaced_fuels]
    if len(set(fuels)) < len(fuels):
        faults.append(Fault(("replaced_fuels",), "fuel_twice", say("fault-fuel_twice")))
    if sum(one.share for one in asked.replaced_fuels) > 1 + SHARE_TOLERANCE:
        faults.append(Fault(("replaced_fuels",), "shares_disordered", say("fault-shares_of_fuels")))
    if faults:
        raise RefusedError(faults)


def facts_of(work: Work) -> dict[str, Any]:
    """The facts that checks ask of a use of gas: worked out, and as the caller stated them."""
    facts = {**_balance_facts(work), **_pipe_facts(work)}
    if work.asked.gas_pressure is not None:
        facts["gas_pressure"] = work.asked.gas_pressure
    avoided = work.climate.avoided
    if avoided is not None and (saved := work.climate.saved(avoided).value) > 0:
        facts["methane_loss_over_saving"] = work.climate.lost.value / saved
    return all_facts(work.ledger.shelf.data, facts, values_by_id(work.asked.facts))


def _balance_facts(work: Work) -> dict[str, Any]:
    facts: dict[str, Any] = {}
    if work.demand is not None and work.supply is not None and work.demand.per_day.value > 0:
        facts["gas_sufficiency"] = plain(work.supply / work.demand.per_day.value)
    if work.day is not None and work.demand is not None and work.demand.per_day.value > 0:
        facts["gas_use_covered"] = plain(work.ledger.values["gas_burnt_per_day"] / work.demand.per_day.value)
    if work.demand is not None and work.supply:
        facts["gas_vented_share"] = plain(work.ledger.values["gas_vented_per_day"] / work.supply)
    return facts


def _pipe_facts(work: Work) -> dict[str, Any]:
    pipe = work.pipe
    if pipe is None or pipe.drop is None:
        return {}
    facts: dict[str, Any] = {"pipe_pressure_drop": pipe.drop.value}
    reached = pipe.appliance_pressure(work.gas_pressure)
    if reached is not None and pipe.needed_pressure:
        facts["appliance_pressure_ratio"] = plain(reached.value / pipe.needed_pressure)
    return facts
