"""Checks and cautions as an answer shows them."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from kilisho.checks import Compiled, Finding, Parted, Verdict, compile_checks, conclude, part
from kilisho.farm import GRAPH
from kilisho.messages import say
from kilisho.quantities import Contradiction
from kilisho.rulebook import RulebookData, Severity
from kilisho.units import KINDS, Unit, unit_of

# Callers choose which facts they state; each choice is kept in 7 to 20 kB, by each of two dozen inspectors.
MOST_SHAPES = 64
# Members of an enumeration are slow to look up; these are asked for at every request.
FAILED, UNKNOWN, PASSED = Verdict.failed, Verdict.unknown, Verdict.passed


def _urgency(finding: Finding) -> int:
    return finding.compiled.urgency


def alarming(findings: Iterable[Finding]) -> list[Finding]:
    """Failed checks that call for action at once: all of danger level; of other subjects the first that is marked as an alarm.

    Findings must be in falling urgency, as :meth:`Inspector.inspect` gives them, so that a reading is told by its worst level alone.
    """
    failed = [one for one in findings if one.verdict is FAILED]
    dangers = [one for one in failed if one.compiled.severity is Severity.danger]
    told = {one.compiled.subject for one in dangers}
    lesser = {one.compiled.subject: one for one in reversed(failed) if one.compiled.check.alarm and one.compiled.subject not in told}
    return dangers + [one for one in failed if one is lesser.get(one.compiled.subject)]


class Inspector:
    """The checks and cautions of one operation, ready to be shown."""

    def __init__(self, data: RulebookData, operation: str) -> None:
        self.data = data
        self.checks = compile_checks(data, operation)
        self._static = {(check.id, end): _static(check, end) for check in self.checks for end in (FAILED, UNKNOWN, PASSED)}
        self._units = {check.id: self._unit_of(check) for check in self.checks}
        self._read = frozenset(name for check in self.checks for name in (check.subject, *(name for name, _ in check.when)))
        self._parted: dict[frozenset[str], Parted] = {}
        self._unknown: dict[tuple[str, tuple[str, ...]], dict[str, Any]] = {}
        self._cautions = {name: _caution(name, entry) for name, entry in data.cautions.items()}
        self._others: dict[str, Inspector] = {operation: self}
        self._always = [self._cautions[name] for name, entry in data.cautions.items() if operation in entry.shown_in]

    def of(self, operation: str) -> Inspector:
        """The inspector of another operation over the same rulebook."""
        found = self._others.get(operation)
        if found is None:
            found = self._others[operation] = Inspector(self.data, operation)
        return found

    def inspect(self, facts: Mapping[str, Any]) -> list[Finding]:
        """Run every check of the operation: those that failed first, then those that cannot be answered, then those that passed."""
        key = self._read.intersection(facts)
        parted = self._parted.get(key)
        if parted is None:
            if len(self._parted) >= MOST_SHAPES:
                self._parted.clear()  # safe while other threads read: each keeps the value that it has found or made
            parted = self._parted[key] = part(self.checks, key)
        findings = conclude(parted, facts)
        failed, unknown, passed = ([one for one in findings if one.verdict is end] for end in (FAILED, UNKNOWN, PASSED))
        return sorted(failed, key=_urgency) + sorted(unknown, key=_urgency) + sorted(passed, key=_urgency)

    def shown(self, findings: Iterable[Finding], denied: Iterable[Contradiction] = (), *, passes: bool = False) -> list[dict[str, Any]]:
        """The contradictions and findings as an answer lists them, passes only when asked for."""
        return [contradiction(one) for one in denied] + [
            self._show(finding) for finding in findings if passes or finding.verdict is not PASSED
        ]

    def cautions(self, *more: Sequence[str]) -> list[dict[str, Any]]:
        """The operation's own cautions and those that come with substrates and structure, each once."""
        extra = dict.fromkeys(name for names in more for name in names)
        have = {entry["id"] for entry in self._always}
        return self._always + [self._cautions[name] for name in extra if name not in have]

    def _show(self, finding: Finding) -> dict[str, Any]:
        name, missing = finding.compiled.id, finding.missing
        if not missing:
            static = self._static[name, finding.verdict]
            # What was divided by nothing has no number to show.
            return static if finding.value == math.inf else {**static, "value": self._value(finding)}
        shown = self._unknown.get((name, missing))
        if shown is None:
            shown = self._unknown[name, missing] = {**self._static[name, UNKNOWN], "missing": list(missing)}
        return shown

    def _value(self, finding: Finding) -> Any:
        unit = self._units[finding.compiled.id]
        return finding.value if unit is None else {"value": six_digits((finding.value - unit.offset) / unit.factor), "unit": unit.code}

    def _unit_of(self, check: Compiled) -> Unit | None:
        """The unit in which a check's value is shown: that of its bound; None for what is no quantity."""
        kind = self.data.facts[check.subject].kind
        return unit_of(kind, check.check.must.unit or KINDS[kind].canonical.code) if kind in KINDS else None


def six_digits(value: float) -> float:
    """To six significant digits, as a measured fact is shown."""
    return float(f"{value:.6g}")


def contradiction(found: Contradiction) -> dict[str, Any]:
    """A contradiction between stated values, as a finding."""
    unit = GRAPH.quantities[found.name].unit
    return {
        "check": "stated_values_agree",
        "verdict": "fail",
        "severity": "warning",
        "topic": "process",
        "title": say("values-agree"),
        "subject": found.name,
        "value": {"value": six_digits(found.stated), "unit": unit},
        "must": {"between": [six_digits(found.least), six_digits(found.most)], "unit": unit},
        "why": say("values-agree-why", inputs=", ".join(found.inputs)),
        "do": say("values-agree-do"),
        "basis": "derived",
        "source": [],
    }


def _static(check: Compiled, verdict: Verdict) -> dict[str, Any]:
    """All of a finding but the fact's value, or what is missing of it."""
    entry = check.check
    return {
        "check": check.id,
        "verdict": str(verdict),
        "severity": str(entry.severity),
        "topic": entry.topic,
        "title": entry.title,
        "subject": check.subject,
        "must": check.bound,
        "why": entry.why,
        "do": entry.do,
        "basis": str(entry.basis),
        "source": list(entry.source),
    }


def _caution(name: str, entry: Any) -> dict[str, Any]:
    return {"id": name, "signal": str(entry.signal), "text": entry.text, "basis": str(entry.basis), "source": list(entry.source)}
