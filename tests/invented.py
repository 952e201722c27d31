"""A question that no farm asks: it shows what a form may say of itself (media types, slowness, a limit), for tests of the boundary."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import Field

from kilisho.farm import Ledger
from kilisho.messages import Language
from kilisho.questions import fields as f
from kilisho.questions.answers import Amount, Answer, Common, Told, in_cubic_metres_per_day
from kilisho.questions.findings import Inspector
from kilisho.questions.limits import Limits
from kilisho.questions.opening import Form
from kilisho.questions.requests import Enquiry
from kilisho.questions.tables import CSV, as_csv

NAME = "invented-forecast"
HEADER = "day,gas [m3/d],gas low [m3/d],gas high [m3/d],remark\r\n"


def _request(limits: Limits) -> type[Enquiry]:
    class InventedRequest(Enquiry):
        """How many days, and how much gas each gives."""

        days: Annotated[int, f.whole_number(1, limits.forecast_days)] = Field(description="Days to tell.")
        gas: Annotated[float, f.DAILY_GAS] = Field(1.0, description="Gas of each day.")

    return InventedRequest


class InventedDay(Told):
    """One day."""

    day: int
    gas: Amount
    remark: str


class InventedAnswer(Common):
    """A row for each day."""

    rows: list[InventedDay]


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    told = in_cubic_metres_per_day(asked.gas, 0.8 * asked.gas, 1.2 * asked.gas)
    rows = [{"day": day, "gas": told, "remark": asked.name or ""} for day in range(1, asked.days + 1)]
    return {"rows": rows, "findings": [], "cautions": inspector.cautions()}


def _table(answer: Answer, _language: Language) -> str:
    return as_csv(answer["rows"])


def form(limits: Limits) -> Form:
    """The form under limits, as a question's file would write it."""
    return Form(
        NAME,
        "invented_forecast",
        "Tell invented days",
        "The same gas for every day.",
        _request(limits),
        InventedAnswer,
        _answer,
        {"name": "Nowhere (invented)", "days": 6},
        representations={CSV: _table},
        slow=True,
    )
