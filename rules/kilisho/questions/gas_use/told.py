"""Tells a use of gas."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from kilisho.farm import Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.messages import say
from kilisho.questions.answers import (
    Answer,
    in_cubic_metres,
    in_cubic_metres_per_day,
    in_hours,
    in_kilograms_per_day,
    in_litres_per_hour,
    in_percent,
    known,
)
from kilisho.questions.gas_state import at_the_place
from kilisho.questions.gas_use.demand import Demand
from kilisho.questions.gas_use.fuels import told_emissions, told_fuels
from kilisho.questions.gas_use.hours import told_day
from kilisho.questions.gas_use.pipe import told_pipe
from kilisho.questions.gas_use.properties import told_gas
from kilisho.questions.gas_use.purposes import told_purposes
from kilisho.questions.gas_use.work import Work
from kilisho.questions.storage_methods import BY_HOURS, name_of
from kilisho.ranges import Uncertain

USUAL_FEED = "cattle_dung"


def told(work: Work) -> Answer:
    """The answer's own members; what nothing is known of is left out."""
    ledger = work.ledger
    return {
        **(_demand(work.demand, ledger) if work.demand is not None else {"runs_for": list(_runs_for(work))}),
        **(_supply(work) if work.supply is not None else {}),
        **(_feed_needed(work) if work.supply is None else {}),
        **_storage(work),
        **(told_day(work.day) if work.day is not None else {}),
        "gas": told_gas(work.gas, ledger),
        **(known(pipe=told_pipe(work.pipe, work.gas_pressure)) if work.pipe is not None else {}),
        **told_purposes(work.climate.purposes, work.climate.electricity_counts),
        "replaced_fuels": told_fuels(work.climate, ledger),
        "emissions": told_emissions(work.climate, ledger),
    }


def _demand(demand: Demand, ledger: Ledger) -> Answer:
    names = ledger.shelf.data.appliances
    return {
        "demand_per_day": in_cubic_metres_per_day(*demand.per_day.told),
        "demand_by_appliance": [
            {
                "appliance": use.appliance,
                "name": names[use.appliance].name,
                "purpose": use.purpose,
                "count": use.count,
                "gas_per_hour": in_litres_per_hour(*use.rate.told),
                "hours_per_day": in_hours(*use.hours.told),
                "gas_per_day": in_cubic_metres_per_day(*use.per_day.told),
            }
            for use in demand.uses
        ],
    }


def _supply(work: Work) -> Answer:
    values = work.ledger.values
    told: Answer = {
        "supply_per_day": in_cubic_metres_per_day(float(work.supply or 0.0)),
        "burnt_per_day": in_cubic_metres_per_day(*work.ledger.of("gas_burnt_per_day")),
        "vented_per_day": in_cubic_metres_per_day(*work.ledger.of("gas_vented_per_day")),
    }
    if work.demand is None or work.demand.per_day.value <= 0:
        return told
    wanted = work.demand.per_day
    covered = Uncertain(values["gas_burnt_per_day"] / wanted.value, work.ledger.uncertain("gas_burnt_per_day").samples / wanted.samples)
    return told | {"covered": in_percent(*covered.told)}


def _storage(work: Work) -> Answer:
    if work.storage is None:
        return {}
    if work.storage_method is None:
        return {"gas_storage_volume": in_cubic_metres(work.storage)}
    by_hours = work.storage_method == BY_HOURS
    return {
        "storage_needed": in_cubic_metres(*work.ledger.of("gas_storage_needed")),
        "storage_method": work.storage_method,
        "storage_method_name": name_of(work.storage_method),
        "gas_storage_volume": in_cubic_metres(work.storage),
        **({} if by_hours else {"hours_unknown": say("use-hours-unknown")}),
    }


def _runs_for(work: Work) -> Iterator[Answer]:
    """Hours a day for which the gas would keep one of each kind of appliance alight, each alone."""
    ledger, supply = work.ledger, float(work.supply or 0.0)
    for name, entry in ledger.shelf.data.appliances.items():
        rate = ledger.figure("appliances", name, "gas_per_hour").times(at_the_place(ledger))
        if rate.value > 0:
            hours = Uncertain(supply / rate.value, supply / rate.samples)
            yield {"appliance": name, "name": entry.name, "hours_per_day": in_hours(*hours.told)}


def _feed_needed(work: Work) -> Answer:
    """Fresh feed a day that gives the wanted gas at 25 Cel and 60 d, the state of the rulebook's yields."""
    ledger, demand = work.ledger, work.demand
    if demand is None:
        return {}
    substrate = work.asked.substrate or _usual(ledger)
    solids, organic, given = (ledger.figure("substrates", substrate, name) for name in ("total_solids", "volatile_solids", "biogas_yield"))
    per_mass = solids.by(organic).by(given).times(at_the_place(ledger))
    if per_mass.value <= 0:
        raise RefusedError([Fault(("substrate",), "feed_gives_no_gas", say("fault-substrate_gives_no_gas"))])
    mass = Uncertain(demand.per_day.value / per_mass.value, demand.per_day.samples / per_mass.samples)
    return {
        "feed_needed": {
            "substrate": substrate,
            "name": ledger.shelf.data.substrates[substrate].name,
            "mass_per_day": in_kilograms_per_day(*mass.told),
            "text": say("use-feed-needed"),
        }
    }


def _usual(ledger: Ledger) -> str:
    data = ledger.shelf.data
    name = USUAL_FEED if USUAL_FEED in data.substrates else next(iter(data.substrates))
    return ledger.choose("substrate", name, say("use-feed-unknown"))


def rows_of(answer: Answer) -> list[Any]:
    """The hours of an answer, as the rows of a table; none where the hours of use are not known."""
    found: list[Any] = answer.get("cover_by_hour", [])
    return found
