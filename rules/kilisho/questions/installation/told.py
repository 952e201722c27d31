"""Tells what an installation's record says: the verdict, what is expected and measured, and what follows from the record."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from kilisho.checks import Finding, Verdict
from kilisho.farm import Ledger
from kilisho.messages import say
from kilisho.questions.answers import (
    Answer,
    in_celsius,
    in_cubic_metres_per_day,
    in_days,
    in_kilograms_per_cubic_metre_and_day,
    in_kilograms_per_day,
    in_number,
    in_percent,
    known,
)
from kilisho.questions.findings import six_digits
from kilisho.questions.gas_state import gas_state
from kilisho.questions.installation.single import number_of, of_row
from kilisho.questions.installation.slips import home_of, readings_of, slips
from kilisho.questions.installation.verdicts import Judge, Verdicts
from kilisho.questions.installation.work import Work
from kilisho.rulebook import Severity

TEXTS = {
    "danger": say("installation-verdict-danger"),
    "doubtful": say("installation-verdict-doubtful"),
    "faulty": say("installation-verdict-faulty"),
    "attention": say("installation-verdict-attention"),
    "unknown": say("installation-verdict-unknown"),
    "sound": say("installation-verdict-sound"),
}
OF_PROCESS = {
    "digester_temperature": in_celsius,
    "hydraulic_retention_time": in_days,
    "organic_loading_rate": in_kilograms_per_cubic_metre_and_day,
    "slurry_total_solids": in_percent,
    "fed_share_of_design": in_percent,
    "herd_to_largest_herd": in_number,
    "herd_to_smallest_herd": in_number,
}


def verdicts_of(findings: Iterable[Finding], judge: Judge) -> Verdicts:
    """The verdicts of the one row, from its findings."""
    place = {check.compiled.id: bit for bit, check in enumerate(judge.checks)}
    bits = {Verdict.failed: 0, Verdict.unknown: 0, Verdict.passed: 0}
    for finding in findings:
        bits[finding.verdict] |= 1 << place[finding.compiled.id]
    return judge.judge(bits[Verdict.failed], bits[Verdict.unknown])


def verdict(words: Verdicts) -> Answer:
    """The verdict, in a word and in a sentence, and the word of each aspect."""
    aspects = words._asdict()
    return {"verdict": aspects.pop("verdict"), "text": TEXTS[words.verdict], "aspects": aspects}


def gas(work: Work, ledger: Ledger) -> Answer:
    """The expected gas with its range, the measured gas, and the one over the other."""
    expected = _amount(work, in_cubic_metres_per_day, "biogas_per_day", "low_biogas_per_day", "high_biogas_per_day")
    ledger.put(**known(gas_pressure=number_of(work, "gas_pressure")))
    return {
        **known(
            expected=expected,
            measured=_amount(work, in_cubic_metres_per_day, "biogas_measured"),
            # The more is expected, the less of it was measured.
            gas_ratio=_amount(work, in_number, "gas_ratio", "gas_ratio_to_high", "gas_ratio_to_low"),
        ),
        **({"gas_state": gas_state(ledger)} if expected is not None else {}),
    }


def _amount(work: Work, tell: Any, *names: str) -> Answer | None:
    values = [number_of(work, name) for name in names]
    return None if None in values else tell(*values)


def worked_out(work: Work) -> Answer:
    """What follows from the record, as typical values."""
    facts = {name: of_row(work.facts[name]) for name in OF_PROCESS if name in work.facts}
    process = {name: OF_PROCESS[name](value) for name, value in facts.items() if value is not None}
    design = _amount(work, in_days, "design_retention_time", "shortest_retention", "longest_retention")
    return {**process, **known(herd_dung_per_day=_amount(work, in_kilograms_per_day, "herd_dung_per_day"), design_retention_time=design)}


def unanswered(findings: Iterable[Finding]) -> list[str]:
    """Facts that would answer the checks of danger level that are open."""
    open_ones = [one for one in findings if one.verdict is Verdict.unknown and one.compiled.severity is Severity.danger]
    return sorted({name for finding in open_ones for name in finding.missing})


def with_slips(shown: list[Answer], work: Work, findings: Sequence[Finding]) -> list[Answer]:
    """The findings with the word that they put into the verdict, and with the reading that was probably meant."""
    probable = {slipped.member: _probably(slipped) for slipped in slips(work)}
    entries = {finding.compiled.id: finding.compiled.check for finding in findings}
    return [_with_slip(one, entries[one["check"]], probable) for one in shown]


def _with_slip(shown: Answer, entry: Any, probable: dict[str, Answer]) -> Answer:
    finds = {"finds": entry.finds} if entry.finds and shown["verdict"] == "fail" else {}
    slip = probable.get(entry.slip.member) if entry.slip is not None and shown["verdict"] == "fail" else None
    return {**shown, **finds, **({"probably": slip} if slip else {})}


def _probably(slipped: Any) -> Answer:
    home, value = home_of(slipped.member), float(slipped.values[0])
    number = six_digits((value - home.offset) / home.factor)
    read_as = readings_of(slipped.member)[int(slipped.reading[0])].read_as
    return {"member": slipped.member, "value": number, "unit": home.code, "read_as": read_as}
