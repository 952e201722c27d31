"""Safety check: the declared facts of a site, plant and people against every check that applies."""

from __future__ import annotations

from typing import Any

from pydantic import ConfigDict, Field

from kilisho.checks import Finding as CheckFinding
from kilisho.checks import Verdict, overall
from kilisho.farm import Shelf
from kilisho.faults import Fault, RefusedError
from kilisho.packs import Rulebook
from kilisho.questions.answers import Answer, Common, Told
from kilisho.questions.asking import Question
from kilisho.questions.findings import Inspector
from kilisho.questions.requests import Enquiry
from kilisho.questions.stated_facts import fact_groups, values_by_id, with_facts

EXAMPLE: dict[str, Any] = {
    "name": "Highfold (invented)",
    "site": {"distance_to_well": {"value": 25, "unit": "m"}, "distance_to_dwelling": {"value": 12, "unit": "m"}},
    "structure": {
        "kind": "fixed_dome",
        "cured_for": {"value": 14, "unit": "d"},
        "water_tightness_test": "passed",
        "gas_tightness_test": "not_done",
    },
    "gas": {"first_gas_vented": False, "pressure": {"value": 60, "unit": "cm[H2O]"}},
    "people": {"entry_planned": False},
}
NEXT = (
    "A clear verdict means that no check failed on what was stated, not that the plant is safe: local codes and licensed practice decide."
)


class SafetyCheckRequest(Enquiry):
    """What is known of the site, the plant and the people. Leave out what nobody knows: it is then unknown, never passed."""


class Counts(Told):
    """How many checks ended which way."""

    passed: int = Field(alias="pass")
    failed: int = Field(alias="fail")
    unknown: int

    model_config = ConfigDict(extra="allow", populate_by_name=True)


class SafetyAnswer(Common):
    """The verdict with every check that applies: danger first."""

    verdict: str = Field(
        description="danger: a danger-level check failed. unknown: a danger-level check could not be answered. Otherwise the signal "
        "word of the worst failed check (warning, caution, notice), or clear."
    )
    stop: bool = Field(description="True when work or use must stop until the failed danger-level checks are put right.")
    in_words: str
    counts: Counts
    unanswered: list[str] = Field(description="Facts that would answer danger-level checks now unknown.")
    statement: str


def question(rulebook: Rulebook) -> Question:
    """The question bound to a rulebook. Its request has a member for each group of the rulebook's facts."""
    shelf, inspector = Shelf(rulebook.data), Inspector(rulebook.data, "safety_check")
    groups = fact_groups(rulebook.data.facts)
    request = with_facts("SafetyCheckQuestion", SafetyCheckRequest, rulebook.data.facts, **groups)

    def answer(asked: Any, explain: bool) -> Answer:
        return {**_answer(asked, tuple(groups), inspector, explain), "rulebook": rulebook.identity}

    return Question(
        "safety-check",
        "Check safety",
        "The declared facts against every check of siting, gas, water, feed, structure, hygiene and handling. What is not stated is "
        "unknown, never passed; entry of a pit or dome is an absolute stop.",
        request,
        SafetyAnswer,
        answer,
        EXAMPLE,
        shelf.ids,
    )


def _answer(asked: Any, groups: tuple[str, ...], inspector: Inspector, explain: bool) -> Answer:
    facts = _stated(asked, groups)
    findings = inspector.inspect(facts)
    verdict = overall(findings)
    kind = inspector.data.structures.get(str(facts.get("structure_kind")))
    answer: Answer = {
        **({"name": asked.name} if asked.name else {}),
        "verdict": verdict,
        "stop": verdict == "danger",
        "in_words": _in_words(findings, verdict),
        "counts": {str(v): sum(1 for one in findings if one.verdict is v) for v in Verdict},
        "unanswered": _unanswered(findings),
        "statement": NEXT,
        "assumptions": [],
        "findings": inspector.shown(findings, passes=True),
        "cautions": inspector.cautions(kind.cautions if kind else ()),
    }
    return {**answer, "derivation": []} if explain else answer


def _stated(asked: Any, groups: tuple[str, ...]) -> dict[str, Any]:
    """All stated facts; the same fact stated twice must agree."""
    facts = values_by_id(asked.facts)
    faults = []
    for group in groups:
        for name, value in values_by_id(getattr(asked, group)).items():
            if name in facts and facts[name] != value:
                faults.append(Fault(("facts", name), "stated_twice", f"differs from what /{group} says"))
            facts[name] = value
    if faults:
        raise RefusedError(faults)
    return facts


def _unanswered(findings: list[CheckFinding]) -> list[str]:
    dangers = [f for f in findings if f.verdict is Verdict.unknown and f.compiled.severity == "danger"]
    return sorted({name for finding in dangers for name in finding.missing})


def _in_words(findings: list[CheckFinding], verdict: str) -> str:
    failed = [f for f in findings if f.verdict is Verdict.failed]
    dangers = [f.compiled.check.title for f in failed if f.compiled.severity == "danger"]
    unknown = sum(1 for f in findings if f.verdict is Verdict.unknown and f.compiled.severity == "danger")
    if verdict == "danger":
        return f"Stop. Not met: {'; '.join(dangers)}." + (f" {unknown} more checks of danger level are not answered." if unknown else "")
    if verdict == "unknown":
        return f"{unknown} checks of danger level are not answered, so this cannot be called safe. {len(failed)} lesser checks failed."
    return "No check failed on what was stated." if verdict == "clear" else f"{len(failed)} checks failed, none of them of danger level."
