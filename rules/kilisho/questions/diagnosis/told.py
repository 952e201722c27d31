"""Tells a diagnosis: alarms first, then the gas, then the causes with what speaks for and against them, then the tests."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from kilisho.checks import Finding
from kilisho.messages import Amount, Listed, Message, in_a_row, say
from kilisho.questions.answers import Answer, in_cubic_metres_per_day, in_number, in_whole_percent
from kilisho.questions.diagnosis.evidence import Clue
from kilisho.questions.diagnosis.ranking import Ranked
from kilisho.questions.diagnosis.separating import Chosen
from kilisho.questions.diagnosis.work import Work
from kilisho.questions.findings import alarming, six_digits
from kilisho.questions.gas_state import gas_state
from kilisho.rulebook import RulebookData, Severity
from kilisho.units import KINDS, from_canonical

SIGNALS = tuple(str(signal) for signal in Severity)
GAS = {
    "below": say("diagnosis-gas-below"),
    "inside": say("diagnosis-gas-inside"),
    "above": say("diagnosis-gas-above"),
    "not_measured": say("diagnosis-gas-not-measured"),
    "unknown": say("diagnosis-gas-unknown"),
}
STATEMENT = say("diagnosis-statement")


def alarms(work: Work, findings: Iterable[Finding]) -> list[Answer]:
    """What calls for action at once: symptoms that are alarms, and checks that failed and are; the worst signal word first."""
    data = work.ledger.shelf.data
    found = [_alarm_of_symptom(name, data) for name in work.asked.symptoms if data.symptoms[name].alarm]
    found += map(_alarm_of_check, alarming(findings))
    return sorted(found, key=lambda one: (SIGNALS.index(one["signal"]), one["kind"] != "symptom"))


def _alarm_of_symptom(name: str, data: RulebookData) -> Answer:
    symptom = data.symptoms[name]
    cautions = [data.cautions[one] for one in symptom.cautions]
    signal = min((str(one.signal) for one in cautions), key=SIGNALS.index)
    do = [one.text for one in cautions]
    return {"alarm": name, "kind": "symptom", "name": symptom.name, "signal": signal, "do": do, "cautions": list(symptom.cautions)}


def _alarm_of_check(finding: Finding) -> Answer:
    check = finding.compiled.check
    told = {"name": say("diagnosis-not-met", title=check.title), "signal": str(check.severity), "do": [check.do], "cautions": []}
    return {"alarm": finding.compiled.id, "kind": "check", **told}


def gas(work: Work) -> Answer:
    """The expected gas with its range, the measured gas, and the one against the other."""
    ledger, measured = work.ledger, work.asked.readings.biogas_per_day
    verdict = "unknown" if work.expectation is None else work.compared.verdict if work.compared is not None else "not_measured"
    return {
        "verdict": verdict,
        "text": GAS[verdict],
        **({"measured": in_cubic_metres_per_day(measured)} if measured is not None else {}),
        **({"expected": in_cubic_metres_per_day(*ledger.of("biogas_per_day"))} if work.expectation is not None else {}),
        **({"gas_ratio": in_number(*work.compared.ratio.told)} if work.compared is not None else {}),
        **({"gas_state": gas_state(ledger)} if work.expectation is not None else {}),
        **({"missing": work.missing} if work.missing else {}),
    }


def causes(work: Work) -> list[Answer]:
    """The causes that something stated speaks for, the likeliest first."""
    return [_cause(place + 1, one, work) for place, one in enumerate(work.ranked) if one.judged.speaks_for]


def others(work: Work) -> list[Answer]:
    """The causes that nothing stated speaks for, with what speaks against them."""
    return [{"cause": one.id, "name": one.cause.name, "speaks_against": _clues(one.speaks_against, work)} for one in work.others]


def _cause(place: int, one: Ranked, work: Work) -> Answer:
    entry = one.judged.cause
    return {
        "cause": one.judged.id,
        "rank": place,
        "name": entry.name,
        "group": entry.group,
        "share": in_whole_percent(*one.share.told),
        "leading": one.leading,
        "how_common": entry.how_common,
        "speaks_for": _clues(one.judged.speaks_for, work),
        "speaks_against": _clues(one.judged.speaks_against, work),
        "test": _test_told(entry.test, work.ledger.shelf.data),
        "remedy": entry.remedy,
        "urgency": entry.urgency,
        "cautions": list(entry.cautions),
        "basis": str(entry.basis),
        "source": list(entry.source),
    }


def _clues(clues: Iterable[Clue], work: Work) -> list[Answer]:
    return [_clue(clue, work) for clue in clues]


def _clue(clue: Clue, work: Work) -> Answer:
    told: Answer = {"kind": clue.kind, "of": clue.of, "name": _name_of(clue, work.ledger.shelf.data), "strength": clue.strength}
    if clue.when is None:
        return told
    return {**told, "when": clue.when, "values": {name: _value(name, must.get("unit"), work) for name, must in clue.when.items()}}


def _name_of(clue: Clue, data: RulebookData) -> str:
    """The symptom's name, or the names of the facts of a reading."""
    if clue.when is None:
        return data.symptoms[clue.of].name
    return say("diagnosis-facts", names=Listed([data.facts[one].name for one in clue.when]))


def _value(name: str, code: str | None, work: Work) -> Any:
    """A fact in the unit in which the evidence speaks of it."""
    value, kind = work.facts[name], work.ledger.shelf.data.facts[name].kind
    if kind not in KINDS:
        return value
    unit = code or KINDS[kind].canonical.code
    return {"value": six_digits(from_canonical(value, kind, unit)), "unit": unit}


def _test_told(name: str, data: RulebookData) -> Answer:
    test = data.tests[name]
    return {"test": name, "name": test.name, "effort": test.effort, "how": test.how, "cautions": list(test.cautions)}


def separating_tests(chosen: Sequence[Chosen], leading: Sequence[str], work: Work) -> list[Answer]:
    """The tests that part the leading causes, in the order in which to make them, with what each outcome means for these."""
    return [
        {**_test_told(one.id, work.ledger.shelf.data), "settles": in_whole_percent(one.settles), "outcomes": _outcomes(one, leading)}
        for one in chosen
    ]


def _outcomes(one: Chosen, leading: Sequence[str]) -> list[Answer]:
    def among(names: Sequence[str]) -> list[str]:
        return [name for name in leading if name in names]

    return [{"seen": out.seen, "points_to": among(out.points_to), "rules_out": among(out.rules_out)} for out in one.test.outcomes]


def in_words(alarmed: Sequence[Answer], named: Sequence[Answer]) -> Message:
    """One or two sentences: the alarm if there is one, and the likeliest cause."""
    alarm = [say("diagnosis-act-at-once", names=Listed([one["name"] for one in alarmed]))] if alarmed else []
    return in_a_row(*alarm, _likeliest(named[0]) if named else say("diagnosis-nothing-speaks"))


def _likeliest(cause: Answer) -> Message:
    return say("diagnosis-likeliest", name=cause["name"], share=Amount(cause["share"]["value"], "%", decimals=0))


def cautions_of(work: Work, named: Sequence[Answer], chosen: Sequence[Answer]) -> list[tuple[str, ...]]:
    """Cautions that come with the symptoms, the leading causes, the tests to make, the substrates and the structure."""
    data, fed = work.ledger.shelf.data, work.expectation.fed if work.expectation is not None else []
    structure = data.structures.get(str(work.facts.get("structure_kind")))
    leading = [data.causes[one["cause"]] for one in named if one["leading"]]
    tests = [*(data.tests[cause.test] for cause in leading), *(data.tests[one["test"]] for one in chosen)]
    symptoms = [data.symptoms[name] for name in work.asked.symptoms]
    carriers: list[Any] = [*symptoms, *leading, *tests, *(one.entry for one in fed), *([structure] if structure else [])]
    return [tuple(one.cautions) for one in carriers]
