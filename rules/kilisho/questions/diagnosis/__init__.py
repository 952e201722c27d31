"""Diagnosis: from what is seen and measured to the likeliest causes, the tests that tell them apart, and the remedies."""

from __future__ import annotations

from typing import Any

from kilisho.farm import Ledger
from kilisho.questions.answers import Answer, in_whole_percent
from kilisho.questions.diagnosis import told
from kilisho.questions.diagnosis.evidence import table_of
from kilisho.questions.diagnosis.request import EXAMPLE, DiagnosisRequest
from kilisho.questions.diagnosis.separating import SOMETHING_ELSE
from kilisho.questions.diagnosis.shape import DiagnosisAnswer
from kilisho.questions.diagnosis.work import Work, work_out
from kilisho.questions.digester import digester_contradictions
from kilisho.questions.findings import Inspector
from kilisho.questions.gas import trace_of
from kilisho.questions.measuring import measure_first
from kilisho.questions.opening import Form


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    work = work_out(asked, ledger)
    findings = inspector.inspect(work.facts)
    alarmed, named, tests = told.alarms(work, findings), told.causes(work), _tests(work)
    return {
        "alarms": alarmed,
        "in_words": told.in_words(alarmed, named),
        "causes": named,
        "something_else": in_whole_percent(*work.something_else.told),
        "other_causes": told.others(work),
        "tests": tests,
        "gas": told.gas(work),
        "statement": told.STATEMENT,
        "measure_first": _measure_first(work),
        "findings": inspector.shown(findings, _contradictions(work)),
        "cautions": inspector.cautions(*told.cautions_of(work, named, tests)),
        **({"derivation": _derivation(work)} if explain else {}),
    }


def _tests(work: Work) -> list[Answer]:
    leading = {one.judged.id: one.share.value for one in work.ranked if one.leading}
    chosen = table_of(work.ledger.shelf).bench.choose({**leading, SOMETHING_ELSE: work.something_else.value}, work.measured)
    return told.separating_tests(chosen, list(leading), work)


def _measure_first(work: Work) -> list[Answer]:
    if work.expectation is None:
        return []
    return measure_first(work.ledger, **{"gas.expected": work.ledger.uncertain("biogas_per_day").samples})


def _contradictions(work: Work) -> list[Any]:
    if work.asked.digester is None:
        return []
    name = work.asked.digester.structure or work.ledger.shelf.first_structure
    return digester_contradictions(work.ledger.shelf.data.structures[name], work.ledger)


def _derivation(work: Work) -> list[Answer]:
    fed = trace_of(work.expectation.fed, work.ledger) if work.expectation is not None else []
    return [*fed, *work.ledger.trace()]


FORM = Form(
    "diagnosis",
    "diagnosis",
    "Find what is wrong",
    "From what a household sees, smells and measures: alarms first, then the likeliest causes with what speaks for and against each, the "
    "tests that tell them apart, the remedies, and the measured gas against what the feed should give. What is not stated is unknown.",
    DiagnosisRequest,
    DiagnosisAnswer,
    _answer,
    EXAMPLE,
)
