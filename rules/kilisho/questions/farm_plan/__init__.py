"""Farm plan: one farm in, everything that applies out, each part as the operation of its name answers it, with one calendar."""

from __future__ import annotations

from typing import Any

from kilisho.farm import Ledger
from kilisho.questions.answers import Answer
from kilisho.questions.farm_plan.request import EXAMPLE, FarmPlanRequest
from kilisho.questions.farm_plan.shape import FarmPlanAnswer
from kilisho.questions.farm_plan.told import assumptions_of, told
from kilisho.questions.farm_plan.work import work_out
from kilisho.questions.findings import Inspector
from kilisho.questions.opening import Form


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
    slow=True,
)
