"""The questions that Kilisho answers, bound to a rulebook by :func:`open_questions`."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from kilisho.packs import Rulebook
from kilisho.questions import first_charge, maintenance_feed, safety_check, sizing
from kilisho.questions.asking import Question
from kilisho.questions.opening import open_form
from kilisho.questions.stated_facts import fact_groups

__all__ = ("Question", "open_questions")


def open_questions(rulebook: Rulebook) -> Mapping[str, Question]:
    """Every question by the last segment of its address, such as ``first-charge``."""
    forms = (sizing.FORM, first_charge.FORM, maintenance_feed.FORM)
    # The safety check's body has a member for each group of the rulebook's facts.
    found = [*(open_form(form, rulebook) for form in forms), open_form(safety_check.FORM, rulebook, **fact_groups(rulebook.data.facts))]
    return MappingProxyType({question.name: question for question in found})
