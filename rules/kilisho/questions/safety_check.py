"""Safety check: the declared facts of a site, plant and people against every check that applies."""

from __future__ import annotations

from typing import Any

from pydantic import ConfigDict, Field

from kilisho.checks import Finding as CheckFinding
from kilisho.checks import Verdict, overall
from kilisho.farm import Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.messages import Listed, Message, in_a_row, say
from kilisho.questions.answers import Answer, Common, Told
from kilisho.questions.findings import FAILED, UNKNOWN, Inspector, alarming
from kilisho.questions.opening import Form
from kilisho.questions.requests import Enquiry
from kilisho.questions.stated_facts import GROUPS, all_facts, cautions_beside, values_by_id
from kilisho.rulebook import Severity

DANGER = Severity.danger
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
NEXT = say("safety-statement")


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


def _answer(asked: Any, ledger: Ledger, inspector: Inspector, explain: bool) -> Answer:
    return {**verdict_of(stated_in(asked), inspector), **({"derivation": ledger.trace()} if explain else {})}


def verdict_of(stated: dict[str, Any], inspector: Inspector) -> Answer:
    """The verdict on facts by id, with every check that applies and the cautions."""
    facts = all_facts(inspector.data, {}, stated)
    findings = inspector.inspect(facts)
    verdict = overall(findings)
    kind = inspector.data.structures.get(str(stated.get("structure_kind")))
    return {
        "verdict": verdict,
        "stop": verdict == "danger",
        "in_words": _in_words(findings, verdict),
        "counts": {str(v): sum(1 for one in findings if one.verdict is v) for v in Verdict},
        "unanswered": _unanswered(findings),
        "statement": NEXT,
        "findings": inspector.shown(findings, passes=True),
        "cautions": inspector.cautions(kind.cautions if kind else (), cautions_beside(inspector.data, facts)),
    }


def stated_in(asked: Any) -> dict[str, Any]:
    """All stated facts; the same fact stated twice must agree."""
    facts = values_by_id(asked.facts)
    faults = []
    for group in GROUPS:
        for name, value in values_by_id(getattr(asked, group, None)).items():
            if name in facts and facts[name] != value:
                faults.append(Fault(("facts", name), "stated_twice", say("fault-differs_from_group", group=f"/{group}")))
            facts[name] = value
    if faults:
        raise RefusedError(faults)
    return facts


def _unanswered(findings: list[CheckFinding]) -> list[str]:
    dangers = [f for f in findings if f.verdict is UNKNOWN and f.compiled.severity is DANGER]
    return sorted({name for finding in dangers for name in finding.missing})


def _in_words(findings: list[CheckFinding], verdict: str) -> Message:
    failed = [f for f in findings if f.verdict is FAILED]
    dangers = [f.compiled.check.title for f in failed if f.compiled.severity is DANGER]
    alarms = [f.compiled.check.title for f in alarming(findings) if f.compiled.severity is not DANGER]
    at_once = [say("safety-act-at-once", titles=Listed(alarms))] if alarms else []
    unknown = sum(1 for f in findings if f.verdict is UNKNOWN and f.compiled.severity is DANGER)
    if verdict == "danger":
        more = [say("safety-more-unanswered", count=unknown)] if unknown else []
        return in_a_row(say("safety-stop", titles=Listed(dangers)), *at_once, *more)
    if verdict == "unknown":
        return in_a_row(*at_once, say("safety-unanswered", count=unknown), say("safety-lesser-failed", count=len(failed)))
    return say("safety-clear") if verdict == "clear" else in_a_row(*at_once, say("safety-failed", count=len(failed)))


FORM = Form(
    "safety-check",
    "safety_check",
    "Check safety",
    "The declared facts against every check of siting, gas, water, feed, structure, hygiene and handling. What is not stated is "
    "unknown, never passed; entry of a pit or dome is an absolute stop.",
    SafetyCheckRequest,
    SafetyAnswer,
    _answer,
    EXAMPLE,
)
