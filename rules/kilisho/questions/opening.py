"""A form is a question without a rulebook; opening it binds it to one."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any

import numpy as np

from kilisho.farm import Ledger, Shelf
from kilisho.packs import Rulebook
from kilisho.questions.answers import Answer, Common
from kilisho.questions.asking import Question, Representations, never
from kilisho.questions.findings import Inspector
from kilisho.questions.limits import DEFAULTS, Limits
from kilisho.questions.requests import Ask, Enquiry
from kilisho.questions.same import Same
from kilisho.questions.stated_facts import with_facts
from kilisho.rulebook import RulebookData


@dataclass(frozen=True)
class Form:
    """A question as its file writes it down.

    ``answer`` takes the validated request, a fresh ledger and the operation's inspector, and gives the answer's own members;
    ``operation`` is the name under which checks and cautions are asked for. ``representations`` write an answer, unchanged, as
    another media type than JSON, such as ``{"text/csv": days_as_csv}``. ``slow`` says that an answer takes 0.1 s or more,
    and ``quick`` which requests of a slow question take a few milliseconds all the same.
    """

    name: str
    operation: str
    title: str
    description: str
    request: type[Enquiry]
    response: type[Common]
    answer: Callable[[Any, Ledger, Inspector, bool], Answer]
    example: dict[str, Any]
    representations: Representations = field(default_factory=dict)
    slow: bool = False
    quick: Callable[[Any], bool] = never


def shelf_of(data: RulebookData) -> Shelf:
    """One shelf for everything that is asked of a rulebook."""
    return _shelf_of(Same(data))


@lru_cache(maxsize=4)
def _shelf_of(same: Same[RulebookData]) -> Shelf:
    return Shelf(same.thing)


# A form whose request or answer depends on a limit is a function of the limits.
AnyForm = Form | Callable[[Limits], Form]


def open_form(form: AnyForm, rulebook: Rulebook, limits: Limits = DEFAULTS, **members: type[Ask]) -> Question:
    """The question over a rulebook, under ``limits``; ``members`` are optional members that only the rulebook knows."""
    form = form if isinstance(form, Form) else form(limits)
    shelf, inspector = shelf_of(rulebook.data), Inspector(rulebook.data, form.operation)
    request = with_facts(f"{form.request.__name__.removesuffix('Request')}Question", form.request, rulebook.data.facts, **members)

    def answer(asked: Any, explain: bool) -> Answer:
        ledger = Ledger(shelf)
        # Among the samples one may divide by nothing; what is not finite is not told as a range.
        with np.errstate(all="ignore"):
            own = form.answer(asked, ledger, inspector, explain)
        named = {"name": asked.name} if asked.name else {}
        return {**named, **own, "assumptions": ledger.assumptions, "rulebook": rulebook.identity}

    return Question(
        name=form.name,
        title=form.title,
        description=form.description,
        request=request,
        response=form.response,
        answer=answer,
        example=form.example,
        ids=shelf.ids,
        representations=form.representations,
        slow=form.slow,
        quick=form.quick,
        languages=rulebook.languages,
    )
