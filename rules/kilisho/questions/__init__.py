"""The questions that Kilisho answers, bound to a rulebook by :func:`open_questions`."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from kilisho.packs import Rulebook
from kilisho.questions import first_charge, maintenance_feed, safety, sizing
from kilisho.questions.asking import Question

__all__ = ("Question", "open_questions")


def open_questions(rulebook: Rulebook) -> Mapping[str, Question]:
    """Every question by the last segment of its address, such as ``first-charge``."""
    found = [module.question(rulebook) for module in (sizing, first_charge, maintenance_feed, safety)]
    return MappingProxyType({question.name: question for question in found})
