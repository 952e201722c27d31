"""Evaluates declarative checks: each ends as pass, fail or unknown, and silence is never a pass.

The logic is three-valued. A check whose ``when`` is false does not apply; if anything its ``when`` or its subject needs was
not stated, the check is unknown and names what is missing.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Any, NamedTuple

from kilisho.rulebook import NUMERIC_OPERATORS, Check, Condition, Fact, RulebookData, Severity
from kilisho.units import unit_of


class Verdict(StrEnum):
    """How one check ends."""

    passed = "pass"
    failed = "fail"
    unknown = "unknown"


# Members of an enumeration are slow to look up; these are asked for at every check.
_PASSED, _FAILED, _UNKNOWN = Verdict.passed, Verdict.failed, Verdict.unknown
_DANGER = Severity.danger
Facts = Mapping[str, Any]
Test = Callable[[Any], bool]

_URGENCY = {severity: rank for rank, severity in enumerate(Severity)}
_TESTS: dict[str, Callable[[Any], Test]] = {
    "at_least": lambda bound: lambda value: value >= bound,
    "at_most": lambda bound: lambda value: value <= bound,
    "more_than": lambda bound: lambda value: value > bound,
    "less_than": lambda bound: lambda value: value < bound,
    "between": lambda bound: lambda value: bound[0] <= value <= bound[1],
    "is_": lambda bound: lambda value: value == bound,
    "one_of": lambda bound: lambda value: value in bound,
    "none_of": lambda bound: lambda value: value not in bound,
    "includes_none_of": lambda bound: lambda value: not set(bound) & set(value),
}


@dataclass(frozen=True, slots=True)
class Compiled:
    """A check ready to run: its condition and its ``when`` as plain functions of values in canonical units."""

    id: str
    subject: str
    test: Test
    when: tuple[tuple[str, Test], ...]
    severity: Severity
    urgency: int
    check: Check
    bound: dict[str, Any]


class Finding(NamedTuple):
    """The end of one check on one farm."""

    compiled: Compiled
    verdict: Verdict
    value: Any = None
    missing: tuple[str, ...] = ()


def compile_checks(data: RulebookData, asked_in: str) -> tuple[Compiled, ...]:
    """The checks that an operation evaluates, in falling severity."""
    chosen = [(name, check) for name, check in data.checks.items() if asked_in in check.asked_in]
    chosen.sort(key=lambda item: _URGENCY[item[1].severity])
    return tuple(_compile(name, check, data.facts) for name, check in chosen)


When = tuple[tuple[str, Test], ...]


@dataclass(frozen=True, slots=True)
class Parted:
    """Checks parted by what one set of stated names leaves open: work that need not be done again for the next farm."""

    answerable: tuple[Compiled, ...]
    conditional: tuple[Compiled, ...]
    unknown: tuple[Finding, ...]
    unless_excluded: tuple[tuple[Finding, When], ...]


def part(checks: Iterable[Compiled], stated: Collection[str]) -> Parted:
    """Part ``checks`` by the names that are stated: answerable (always, or if their ``when`` holds) and unknown (likewise).

    Those that are asked only of a stated subject are left out where it is not.
    """
    answerable, conditional = list[Compiled](), list[Compiled]()
    unknown, unless = list[Finding](), list[tuple[Finding, When]]()
    for check in checks:
        if check.check.only_if_stated and check.subject not in stated:
            continue
        missing = tuple(name for name in (*(name for name, _ in check.when), check.subject) if name not in stated)
        known = tuple(item for item in check.when if item[0] in stated)
        finding = Finding(check, Verdict.unknown, None, missing)
        if missing:
            unless.append((finding, known)) if known else unknown.append(finding)
        else:
            (conditional if check.when else answerable).append(check)
    return Parted(tuple(answerable), tuple(conditional), tuple(unknown), tuple(unless))


def evaluate(checks: Iterable[Compiled], facts: Facts) -> list[Finding]:
    """The findings of ``checks`` on one farm; for many farms with the same names stated, part once and conclude for each."""
    return conclude(part(checks, facts), facts)


def conclude(parted: Parted, facts: Facts) -> list[Finding]:
    """The findings of all checks that apply or may apply; those whose ``when`` is false are left out.

    ``facts`` must state exactly the names for which the checks were parted.
    """
    asked = [*parted.answerable, *[check for check in parted.conditional if _holds(check.when, facts)]]
    found = [_answer(check, facts[check.subject]) for check in asked]
    found += [finding for finding, known in parted.unless_excluded if _holds(known, facts)]
    found += parted.unknown
    return found


def _holds(when: When, facts: Facts) -> bool:
    for name, test in when:  # noqa: SIM110 a generator would cost more than the tests
        if not test(facts[name]):
            return False
    return True


def _answer(check: Compiled, value: Any) -> Finding:
    return Finding(check, _PASSED if check.test(value) else _FAILED, value)


def overall(findings: Sequence[Finding]) -> str:
    """One word for all findings: ``danger``, ``unknown``, ``warning``, ``caution``, ``notice`` or ``clear``.

    A failed danger-level check outweighs everything; then a danger-level check that could not be answered, which is never
    clear; then the signal word of the worst failed check.
    """
    failed = {finding.compiled.severity for finding in findings if finding.verdict is _FAILED}
    if _DANGER in failed:
        return "danger"
    if any(f.verdict is _UNKNOWN and f.compiled.severity is _DANGER for f in findings):
        return "unknown"
    return next((str(severity) for severity in Severity if severity in failed), "clear")


def _compile(name: str, check: Check, facts: Mapping[str, Fact]) -> Compiled:
    when = tuple((subject, test_of(condition, facts[subject])) for subject, condition in check.when.items())
    bound = check.must.model_dump(mode="json", by_alias=True, exclude_none=True)
    test = test_of(check.must, facts[check.subject])
    return Compiled(name, check.subject, test, when, check.severity, _URGENCY[check.severity], check, bound)


def test_of(condition: Condition, fact: Fact) -> Test:
    """A condition on a fact as a plain function of its value in canonical units."""
    operator, bound = bound_of(condition, fact)
    return _TESTS[operator](bound)


def bound_of(condition: Condition, fact: Fact) -> tuple[str, Any]:
    """The operator of a condition on a fact, and its bound (or both) in canonical units."""
    [(operator, bound)] = condition.operators
    if operator in NUMERIC_OPERATORS and condition.unit is not None:
        unit = unit_of(fact.kind, condition.unit)
        bound = tuple(b * unit.factor + unit.offset for b in bound) if isinstance(bound, tuple) else bound * unit.factor + unit.offset
    return operator, bound
