"""Maintenance feed: what goes in at each feeding, what it does to the digester, and how to keep it up for decades."""

from __future__ import annotations

from typing import Any

from kilisho.farm import Ledger
from kilisho.questions.answers import Answer
from kilisho.questions.digester import digester_contradictions
from kilisho.questions.findings import Inspector
from kilisho.questions.gas import trace_of
from kilisho.questions.maintenance_feed.between_feedings import between_feedings
from kilisho.questions.maintenance_feed.per_feeding import per_feeding, process
from kilisho.questions.maintenance_feed.request import EXAMPLE, MaintenanceFeedRequest
from kilisho.questions.maintenance_feed.shape import MaintenanceFeedAnswer
from kilisho.questions.maintenance_feed.upkeep import schedule, upkeep
from kilisho.questions.maintenance_feed.work import facts_of, work_out
from kilisho.questions.measuring import measure_first
from kilisho.questions.opening import Form
from kilisho.views.calendars import CALENDAR, Layout, calendar_of
from kilisho.views.sheets import HTML, sheet_of

CALENDAR_LAYOUT = Layout(
    "maintenance-feed",
    ("feeding", "starts_on"),
    {
        "feed": ["keep_openings_covered"],
        "clear_sand": ["never_enter"],
        "soap_test": ["gas_smell", "no_flame_no_smoking"],
        "desludging_due": ["never_enter", "collapse_in_pit", "emptying_suction"],
    },
)


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    work = work_out(asked, ledger)
    return {
        **per_feeding(work),
        **process(work),
        "between_feedings": between_feedings(work),
        **upkeep(work),
        "schedule": schedule(work),
        "measure_first": measure_first(ledger, biogas_per_day=ledger.uncertain("biogas_per_day").samples),
        "findings": inspector.shown(inspector.inspect(facts_of(work)), digester_contradictions(work.structure, ledger)),
        "cautions": inspector.cautions(work.structure.cautions, *(one.entry.cautions for one in work.fed)),
        **({"derivation": [*trace_of(work.fed, ledger), *ledger.trace()]} if explain else {}),
    }


FORM = Form(
    "maintenance-feed",
    "maintenance_feed",
    "Plan the maintenance feed",
    "Mass, water, urine and whole containers per feeding at any interval; retention, loading, gas and its range; storing between "
    "feedings, catching up, grit and desludging; digestate out; the schedule.",
    MaintenanceFeedRequest,
    MaintenanceFeedAnswer,
    _answer,
    EXAMPLE,
    {CALENDAR: calendar_of(CALENDAR_LAYOUT), HTML: sheet_of("maintenance-feed")},
)
