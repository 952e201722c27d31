"""The questions that Kilisho answers, bound to a rulebook by :func:`open_questions`."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from kilisho.packs import Rulebook
from kilisho.questions.asking import Question
from kilisho.questions.first_charge import question as open_first_charge
from kilisho.questions.maintenance_feed import question as open_maintenance_feed
from kilisho.questions.safety import question as open_safety_check
from kilisho.questions.sizing import question as open_sizing

__all__ = ("Question", "open_questions")


def open_questions(rulebook: Rulebook) -> Mapping[str, Question]:
    """Every question by the last segment of its address, such as ``first-charge``."""
    found = [open_question(rulebook) for open_question in (open_sizing, open_first_charge, open_maintenance_feed, open_safety_check)]
    return MappingProxyType({question.name: question for question in found})
