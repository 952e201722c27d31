"""The questions that Kilisho answers, bound to a rulebook by :func:`open_questions`."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from kilisho.packs import Rulebook
from kilisho.questions import (
    batch_rotation,
    diagnosis,
    digestate,
    farm_plan,
    feed_mix,
    first_charge,
    gas_forecast,
    gas_use,
    installation,
    maintenance_feed,
    safety_check,
    sizing,
)
from kilisho.questions.asking import Question
from kilisho.questions.limits import DEFAULTS, Limits
from kilisho.questions.opening import AnyForm, open_form
from kilisho.questions.stated_facts import fact_groups
from kilisho.start_up_table import start_up_table_of

__all__ = ("Limits", "Question", "open_questions")

FORMS: tuple[AnyForm, ...] = (
    sizing.FORM,
    first_charge.FORM,
    maintenance_feed.FORM,
    feed_mix.FORM,
    gas_forecast.form,
    batch_rotation.FORM,
    gas_use.FORM,
    digestate.FORM,
    diagnosis.FORM,
    installation.FORM,
)


def open_questions(rulebook: Rulebook, limits: Limits = DEFAULTS) -> Mapping[str, Question]:
    """Every question by its address below the version, such as ``first-charge``; none takes a request beyond ``limits``."""
    # A rulebook with a process model of its own takes some seconds here rather than at somebody's first question.
    start_up_table_of(rulebook.data)
    # The safety check's body has a member for each group of the rulebook's facts, the farm plan's for those whose names it does not need.
    groups = fact_groups(rulebook.data.facts)
    others = {name: group for name, group in groups.items() if name not in farm_plan.FORM.request.model_fields}
    checking, planning = open_form(safety_check.FORM, rulebook, limits, **groups), open_form(farm_plan.FORM, rulebook, limits, **others)
    found = [*(open_form(form, rulebook, limits) for form in FORMS), planning, checking]
    return MappingProxyType({question.name: question for question in found})
