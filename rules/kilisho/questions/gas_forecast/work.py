"""Works out a gas forecast: the doses, the steady state of the last plan, and a run of the process model through the days."""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass
from typing import Any, NamedTuple

import numpy as np

from kilisho.farm import Ledger
from kilisho.faults import Fault, Place, RefusedError
from kilisho.messages import say
from kilisho.process import Conditions, History, Routine, Run, simulate, steady_start, working_slurry
from kilisho.questions import refusals
from kilisho.questions.acidity import state_ph, take_slurry_ph
from kilisho.questions.climate import Warmth, days_of_year, warmth_of
from kilisho.questions.digester import take_digester
from kilisho.questions.digestion import Columns, feedstock_of, parameters_of
from kilisho.questions.feeding import NO_URINE, Fed, scaled, take_totals
from kilisho.questions.gas import take_gas
from kilisho.questions.gas_forecast.calendar import Span, faults_of_calendar, first_day_of, gaps_in, kept_of, spans_of
from kilisho.questions.gas_forecast.doses import Dose, charge_of, dose_of
from kilisho.questions.gas_forecast.request import MOST_SUBSTRATES
from kilisho.questions.gas_forecast.run import Change, Feeds, Planned, feeds_of, routine_of
from kilisho.questions.gas_state import take_gas_state
from kilisho.questions.herd import supply_of
from kilisho.ranges import Array, certain
from kilisho.rulebook import Structure

STEADY = (
    "liquid_per_day", "slurry_per_day", "hydraulic_retention_time", "organic_loading_rate", "water_per_day", "slurry_mass_per_day",
    "slurry_total_solids", "carbon_to_nitrogen", "total_ammonia_nitrogen",
)  # fmt: skip
# What the process model takes [Cel]; checks speak of slurry that would freeze or cook.
COLDEST, WARMEST = 0.0, 45.0
ROUNDING = 1e-9
CHANGES = (
    Change("more_feed", say("forecast-more-feed"), feed=1.25),
    Change("less_feed", say("forecast-less-feed"), feed=0.75),
    Change("more_water", say("forecast-more-water"), water=1.5),
    Change("less_water", say("forecast-less-water"), water=0.5),
    Change("weekly", say("forecast-weekly"), every=7.0),
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
    planned: list[Planned]
    steady_fed: list[Fed]
    columns: Columns
    changes: tuple[Change, ...]
    feeds: Feeds
    run: Run

    @property
    def fed(self) -> list[Fed]:
        """All substrates of all doses."""
        return [one for plan in self.planned for one in plan.dose.fed]

    @property
    def spans(self) -> list[Span]:
        """The feeding plans, by their first day."""
        return [plan.span for plan in self.planned if plan.regular]

    @property
    def gaps(self) -> list[tuple[int, int]]:
        """First and last day of every stretch without feed."""
        return gaps_in(self.spans, self.planned[-1].kept)


class _Prepared(NamedTuple):
    """What a run needs."""

    asked: Any
    ledger: Ledger
    warmth: Warmth
    planned: list[Planned]
    columns: Columns
    feeds: Feeds


def work_out(asked: Any, ledger: Ledger) -> Work:
    """Everything of one forecast; raises :class:`RefusedError` for faults between members of the request."""
    _refuse(asked)
    structure_id, structure = take_digester(asked.digester, ledger)
    ledger.practice("water_density")
    state_ph(None, asked.facts, ledger)
    take_gas_state(asked.climate, ledger)
    warmth = warmth_of(asked.climate, ledger, structure_id, asked.digester.depth)
    first_day = first_day_of(asked)
    assert first_day is not None, "a calendar without any day was refused"
    planned = _planned(asked, first_day, ledger)
    steady_fed = _take_steady(planned[-1], ledger) if planned[-1].regular else []
    changes = CHANGES if steady_fed else ()
    columns = Columns(len(changes))
    feeds = feeds_of(planned, changes, columns)
    _refuse_too_many(feeds)
    conditions = Conditions(
        columns.laid(ledger.uncertain("working_volume")),
        np.clip(temperature_of(warmth, first_day, asked.days, ledger, columns), COLDEST, WARMEST),
        structure.tanks_in_series,
    )
    prepared = _Prepared(asked, ledger, warmth, planned, columns, feeds)
    run = _run(prepared, conditions)
    return Work(asked, ledger, structure_id, structure, warmth, first_day, planned, steady_fed, columns, changes, feeds, run)


def _refuse(asked: Any) -> None:
    doses: list[tuple[Place, Any]] = [(("maintenance_feed", i), plan) for i, plan in enumerate(asked.maintenance_feed)]
    if asked.first_charge is not None:
        doses.append((("first_charge",), asked.first_charge))
    faults = [
        *refusals.faults_of_digester(asked.digester),
        *refusals.faults_of_dilution(asked.dilution),
        *refusals.faults_of_months(asked.climate),
        *faults_of_calendar(asked),
        *(fault for place, dose in doses for fault in _faults_of_dose(place, dose)),
    ]
    if faults:
        raise RefusedError(faults)


def _faults_of_dose(place: Place, dose: Any) -> list[Fault]:
    found = refusals.faults_of_shares(dose.feed, whole=place[0] == "first_charge")
    shares = [i for i, item in enumerate(dose.feed) if item.share is not None and place[0] != "first_charge"]
    detail = say("fault-mass_expected")
    return [
        *(Fault((*place, *one.place), one.code, one.detail) for one in found),
        *(Fault((*place, "feed", i, "share"), "mass_expected", detail) for i in shares),
    ]


def _refuse_too_many(feeds: Feeds) -> None:
    if len(feeds.substrates) > MOST_SUBSTRATES:
        detail = say("fault-too_many_substrates", most=MOST_SUBSTRATES)
        raise RefusedError([Fault(("maintenance_feed",), "too_many_substrates", detail)])


def _planned(asked: Any, first_day: dt.date, ledger: Ledger) -> list[Planned]:
    """The first charge, if any, and the plans by their first day: what changes are about is the last one."""
    supply, kept = supply_of(asked.herd, ledger), kept_of(asked, first_day, asked.days)
    order = sorted(enumerate(zip(asked.maintenance_feed, spans_of(asked, first_day), strict=True)), key=lambda one: one[1][1].first)
    charge = [Planned(_charge(asked, ledger), Span(0, 0, 1.0), np.ones(asked.days), regular=False)] if asked.first_charge else []
    return charge + [
        Planned(dose_of(plan, ("maintenance_feed", i), supply, asked.dilution, ledger), span, kept) for i, (plan, span) in order
    ]


def _charge(asked: Any, ledger: Ledger) -> Dose:
    starter = asked.first_charge.starter_slurry / ledger.values["water_density"]
    if starter >= ledger.values["working_volume"]:
        raise RefusedError([Fault(("first_charge", "starter_slurry"), "starter_fills_digester", say("fault-starter_fills_digester"))])
    dose = charge_of(asked.first_charge, ledger.uncertain("working_volume").plus(certain(-starter)), asked.dilution, ledger)
    if dose.slurry.value + starter > ledger.values["total_volume"] * (1 + ROUNDING):
        raise RefusedError([Fault(("first_charge", "feed"), "volume_impossible", say("fault-charge_too_large"))])
    return dose


def _take_steady(planned: Planned, ledger: Ledger) -> list[Fed]:
    """Put the steady state of a plan that is kept for ever into the ledger, what the forecast tends to; returns its feed per day."""
    per_day = scaled(planned.dose.fed, 1 / planned.span.every)
    ledger.put(water_to_feed_by_volume=planned.dose.water_to_feed.value, **NO_URINE)
    ledger.sample(water_to_feed_by_volume=planned.dose.water_to_feed.samples)
    take_totals(per_day, ledger)
    ledger.solve(*STEADY)
    take_gas(per_day, ledger)
    take_slurry_ph(per_day, ledger)
    ledger.solve("biogas_per_day_normal", "free_ammonia")
    return per_day


def temperature_of(warmth: Warmth, first_day: dt.date | None, days: int, ledger: Ledger, columns: Columns) -> Array:
    """Slurry temperature [Cel], (days, columns): through the seasons where they are known, the year's mean where not."""
    ground = warmth.ground
    if ground is None or ground.coldest_day is None or first_day is None:
        return np.broadcast_to(columns.laid(warmth.uncertain), (days, columns.count))
    parts = (columns.laid(ledger.uncertain(name)) for name in ("soil_offset", "soil_depth", "soil_diffusivity"))
    return np.asarray(ground.at(days_of_year(first_day, days)[:, None], *parts))


def _run(work: _Prepared, conditions: Conditions) -> Run:
    """The run of all columns: from the first charge with its starter, or from the steady state of the first plan."""
    asked, ledger, feeds = work.asked, work.ledger, work.feeds
    parameters = parameters_of(ledger, work.columns)
    feedstock = feedstock_of(feeds.substrates, parameters, work.columns)
    if asked.first_charge is not None:
        start = working_slurry(asked.first_charge.starter_slurry / ledger.values["water_density"], parameters)
    else:
        solids, slurry = routine_of(work.planned[0], feeds, work.columns)
        # Past seasons are not known by day; the year's mean stands for them.
        warmth = np.clip(work.columns.laid(work.warmth.uncertain), COLDEST, WARMEST)
        start = steady_start(Routine(feedstock, solids, slurry, conditions.working_volume, warmth, conditions.tanks_in_series), parameters)
    return simulate(History(feedstock, feeds.solids, feeds.slurry, start), conditions, parameters)
