"""Works out a gas forecast: the doses, the steady state of the last plan, and a run of the process model through the days."""

from __future__ import annotations

import datetime as dt
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from kilisho.farm import Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.process import Conditions, History, Run, simulate
from kilisho.questions import refusals
from kilisho.questions.climate import Warmth, days_of_year, take_temperature, warmth_of
from kilisho.questions.digester import take_digester
from kilisho.questions.digestion import Columns, feedstock_of, parameters_of
from kilisho.questions.feeding import NO_URINE, Fed, scaled, take_totals
from kilisho.questions.gas import take_gas
from kilisho.questions.gas_forecast.calendar import Span, faults_of_calendar, first_day_of, kept_of, spans_of
from kilisho.questions.gas_forecast.doses import Dose, charge_of, dose_of
from kilisho.questions.gas_forecast.request import MOST_SUBSTRATES
from kilisho.questions.gas_forecast.run import Change, Feeds, Planned, feeds_of
from kilisho.questions.gas_state import take_gas_state
from kilisho.questions.herd import supply_of
from kilisho.ranges import Array, certain
from kilisho.rulebook import Structure

STEADY = (
    "liquid_per_day", "slurry_per_day", "hydraulic_retention_time", "organic_loading_rate", "water_per_day", "slurry_mass_per_day",
    "slurry_total_solids", "carbon_to_nitrogen", "total_ammonia_nitrogen", "free_ammonia",
)  # fmt: skip
COLDEST, WARMEST = 0.0, 45.0
CHANGES = (
    Change("more_feed", "A quarter more feed and water.", feed=1.25),
    Change("less_feed", "A quarter less feed and water.", feed=0.75),
    Change("more_water", "Half as much water again with the same feed.", water=1.5),
    Change("less_water", "Half the water with the same feed.", water=0.5),
    Change("weekly", "The same feed in one dose a week.", every=7.0),
)


@dataclass(slots=True)
class Work:
    """Everything worked out for one forecast, before it is told. Arrays of a run are (days, columns)."""

    asked: Any
    ledger: Ledger
    structure_id: str
    structure: Structure
    warmth: Warmth
    first_day: dt.date
    spans: list[Span]
    fed: list[Fed]
    columns: Columns
    changes: tuple[Change, ...]
    feeds: Feeds
    run: Run
    too_cold_or_hot: bool


def work_out(asked: Any, ledger: Ledger) -> Work:
    """Everything of one forecast; raises :class:`RefusedError` for faults between members of the request."""
    _refuse(asked)
    structure_id, structure = take_digester(asked.digester, ledger)
    ledger.practice("water_density")
    take_gas_state(asked.climate, ledger)
    warmth = warmth_of(asked.climate, ledger, structure_id, asked.digester.depth)
    first_day = first_day_of(asked)
    assert first_day is not None, "the calendar has been looked at"
    spans, planned = spans_of(asked, first_day), _planned(asked, first_day, ledger)
    plans = planned[1:] if asked.first_charge else planned
    take_temperature(warmth, ledger)
    if plans:
        _take_steady(plans[_latest(spans)], ledger)
    changes = CHANGES if plans else ()
    columns = Columns(len(changes))
    # What changes is the plan that runs last.
    ordered = [*planned[: len(planned) - len(plans)], *sorted(plans, key=lambda one: one.span.first)]
    feeds = feeds_of(ordered, changes, columns)
    if len(feeds.substrates) > MOST_SUBSTRATES:
        detail = f"at most {MOST_SUBSTRATES} different substrates in all, counting the same one with other measured values again"
        raise RefusedError([Fault(("maintenance_feed",), "too_many_substrates", detail)])
    temperature = temperature_of(warmth, first_day, asked.days, ledger, columns)
    run = _run(asked, ledger, structure, feeds, temperature, columns)
    fed = [one for plan in planned for one in plan.dose.fed]
    strange = bool((temperature < COLDEST).any() or (temperature > WARMEST).any())
    return Work(asked, ledger, structure_id, structure, warmth, first_day, spans, fed, columns, changes, feeds, run, strange)


def _refuse(asked: Any) -> None:
    faults = [
        *refusals.faults_of_digester(asked.digester),
        *refusals.faults_of_dilution(asked.dilution),
        *refusals.faults_of_months(asked.climate),
        *faults_of_calendar(asked),
    ]
    doses = [("first_charge", asked.first_charge)] if asked.first_charge else []
    for place, dose in [
        *((("first_charge",), d) for _, d in doses),
        *((("maintenance_feed", i), p) for i, p in enumerate(asked.maintenance_feed)),
    ]:
        faults += [
            Fault((*place, *one.place), one.code, one.detail)
            for one in refusals.faults_of_shares(dose.feed, whole=place[0] == "first_charge")
        ]
    if faults:
        raise RefusedError(faults)


def _planned(asked: Any, first_day: dt.date, ledger: Ledger) -> list[Planned]:
    """The first charge, if any, and the plans in the order of the request."""
    supply, kept = supply_of(asked.herd, ledger), kept_of(asked, first_day, asked.days)
    charge = [Planned(_charge(asked, ledger), Span(0, 0, 1.0), np.ones(asked.days))] if asked.first_charge else []
    spans = spans_of(asked, first_day)
    plans = [
        Planned(dose_of(plan, ("maintenance_feed", i), supply, asked.dilution, ledger), span, kept)
        for i, (plan, span) in enumerate(zip(asked.maintenance_feed, spans, strict=True))
    ]
    return [*charge, *plans]


def _charge(asked: Any, ledger: Ledger) -> Dose:
    starter = asked.first_charge.starter_slurry / ledger.values["water_density"]
    if starter >= ledger.values["working_volume"]:
        raise RefusedError([Fault(("first_charge", "starter_slurry"), "starter_fills_digester", "must leave room for fresh slurry")])
    dose = charge_of(asked.first_charge, ledger.uncertain("working_volume").plus(certain(-starter)), asked.dilution, ledger)
    if dose.slurry.value + starter > ledger.values["total_volume"] * (1 + 1e-9):
        raise RefusedError([Fault(("first_charge", "feed"), "volume_impossible", "the charge makes more slurry than total_volume holds")])
    return dose


def _latest(spans: Sequence[Span]) -> int:
    return max(range(len(spans)), key=lambda i: spans[i].first)


def _take_steady(planned: Planned, ledger: Ledger) -> None:
    """The steady state of a plan kept for ever, into the ledger: what the forecast tends to."""
    per_day = scaled(planned.dose.fed, 1 / planned.span.every)
    ledger.put(water_to_feed_by_volume=planned.dose.water_to_feed.value)
    ledger.sample(water_to_feed_by_volume=planned.dose.water_to_feed.samples)
    ledger.put(**NO_URINE)
    take_totals(per_day, ledger)
    ledger.practice("slurry_ph", "unknown_slurry_ph")
    ledger.solve(*STEADY)
    take_gas(per_day, ledger)


def temperature_of(warmth: Warmth, first_day: dt.date | None, days: int, ledger: Ledger, columns: Columns) -> Array:
    """Slurry temperature [Cel], (days, columns): through the seasons where they are known, the year's mean where not."""
    ground = warmth.ground
    if ground is None or ground.coldest_day is None or first_day is None:
        return np.broadcast_to(columns.laid(warmth.uncertain), (days, columns.count))
    parts = (columns.laid(ledger.uncertain(name)) for name in ("soil_offset", "soil_depth", "soil_diffusivity"))
    return np.asarray(ground.at(days_of_year(first_day, days)[:, None], *parts))


def _run(asked: Any, ledger: Ledger, structure: Structure, feeds: Feeds, temperature: Array, columns: Columns) -> Run:  # noqa: PLR0913, PLR0917
    parameters, volume = parameters_of(ledger, columns), columns.laid(ledger.uncertain("working_volume"))
    feedstock = feedstock_of(feeds.substrates, parameters, columns)
    within = np.clip(temperature, COLDEST, WARMEST)
    conditions = Conditions(volume, within, structure.tanks_in_series)
    start = _start(asked, ledger, feeds, conditions, parameters, feedstock)
    return simulate(History(feedstock, feeds.solids, feeds.slurry, start), conditions, parameters)
