"""Farm plan: one farm in, everything that applies out, each part as the operation of its name answers it, with one calendar."""

from __future__ import annotations

from typing import Any

from kilisho.farm import Ledger
from kilisho.questions import first_charge, maintenance_feed
from kilisho.questions.answers import Answer
from kilisho.questions.farm_plan.request import EXAMPLE, FarmPlanRequest
from kilisho.questions.farm_plan.shape import FarmPlanAnswer
from kilisho.questions.farm_plan.told import assumptions_of, told
from kilisho.questions.farm_plan.work import work_out
from kilisho.questions.findings import Inspector
from kilisho.questions.opening import Form
from kilisho.views.calendars import CALENDAR, Layout, calendar_of, plan_of
from kilisho.views.sheets import HTML, sheet_of

CALENDAR_LAYOUT = Layout(
    "farm-plan",
    ("construction", "digester_ready_on"),
    {**first_charge.CALENDAR_LAYOUT.cautions, **maintenance_feed.CALENDAR_LAYOUT.cautions},
    plan_of,
)


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    plan = work_out(asked, ledger, inspector, explain)
    ledger.assumptions += assumptions_of(plan)
    return told(plan)


FORM = Form(
    "farm-plan",
    "farm_plan",
    "Plan a whole farm",
    "Size, first charge, feed, the first year's gas, its use, digestate and safety of one farm in one answer with one calendar. Every part "
    "is what the operation of its name answers to the same farm.",
    FarmPlanRequest,
    FarmPlanAnswer,
    _answer,
    EXAMPLE,
    {CALENDAR: calendar_of(CALENDAR_LAYOUT), HTML: sheet_of("farm-plan")},
    slow=True,
    quick=lambda asked: not asked.with_forecast,
)
