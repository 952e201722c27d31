"""Works out a diagnosis: the facts, the gas against its expectation, and the causes in their order."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from kilisho.farm import Ledger
from kilisho.faults import Fault, RefusedError
from kilisho.messages import say
from kilisho.questions import refusals
from kilisho.questions.answers import known
from kilisho.questions.diagnosis.evidence import Judged, table_of
from kilisho.questions.diagnosis.expectation import Compared, Expectation, compare, expect, lacking, take_known_digester
from kilisho.questions.diagnosis.ranking import Ranked, rank
from kilisho.questions.diagnosis.request import READING_FACTS
from kilisho.questions.stated_facts import all_facts, values_by_id
from kilisho.ranges import Uncertain

SAME_TEMPERATURE = 0.05


@dataclass(slots=True)
class Work:
    """Everything worked out for one diagnosis, before it is told.

    ``missing`` is what the expected gas would need; ``measured`` are the facts that somebody stated or measured. ``ranked`` are the
    causes that something speaks for, or all of them where there is none; ``others`` are the rest.
    """

    asked: Any
    ledger: Ledger
    expectation: Expectation | None
    compared: Compared | None
    missing: list[str]
    facts: dict[str, Any]
    measured: set[str]
    ranked: list[Ranked]
    something_else: Uncertain
    others: list[Judged]


def work_out(asked: Any, ledger: Ledger) -> Work:
    """Everything of one diagnosis; raises :class:`RefusedError` for faults between members of the request."""
    _refuse(asked)
    missing = lacking(asked)
    expectation = expect(asked, ledger, take_known_digester(asked, ledger)) if asked.digester is not None else None
    compared = compare(asked.readings.biogas_per_day, expectation, ledger)
    own = _own_facts(asked, ledger, expectation, compared)
    stated = values_by_id(asked.facts)
    data = ledger.shelf.data
    # What symptoms imply is for the checks; the causes have the symptoms themselves, and nothing is counted twice.
    evidence = all_facts(data, own, stated)
    structure = evidence.get("structure_kind")
    judged = table_of(ledger.shelf).judge(asked.symptoms, asked.not_seen, evidence, structure)
    facts = all_facts(data, {**_implied(asked.symptoms, data), **own}, stated)
    measured = {*stated, *(fact for name, fact in READING_FACTS.items() if getattr(asked.readings, name) is not None)}
    measured |= {"gas_ratio"} if compared is not None else set()
    missing = missing or ([] if expectation is not None else ["feed"])
    supported = [one for one in judged if one.speaks_for]
    others = [one for one in judged if not one.speaks_for]
    return Work(asked, ledger, expectation, compared, missing, facts, measured, *rank(supported or judged, ledger), others)


def _implied(symptoms: list[str], data: Any) -> dict[str, Any]:
    return {fact: value for name in symptoms for fact, value in data.symptoms[name].implies.items()}


def _own_facts(asked: Any, ledger: Ledger, expectation: Expectation | None, compared: Compared | None) -> dict[str, Any]:
    """Facts that follow from the request's members; what was measured stands before what was worked out."""
    digester, readings = asked.digester, asked.readings
    farm = {} if digester is None else {"structure_kind": digester.structure, "digester_age": digester.age}
    total = {} if digester is None else {"total_volume": ledger.values["total_volume"]}
    gas = {} if compared is None else {"gas_ratio": compared.ratio.value, "gas_ratio_to_low": compared.to_low}
    climate = {} if asked.climate is None else {"digester_temperature": asked.climate.digester_temperature}
    measured = {fact: getattr(readings, name) for name, fact in READING_FACTS.items()}
    fed = {} if expectation is None else expectation.facts(ledger)
    return {**total, **known(**climate), **fed, **known(**farm, **gas, **measured)}


def _refuse(asked: Any) -> None:
    faults = [
        *_faults_of_symptoms(asked),
        *_faults_of_readings(asked),
        *(refusals.faults_of_digester(asked.digester) if asked.digester is not None else ()),
        *refusals.faults_of_dilution(asked.dilution),
        *refusals.faults_of_shares(asked.feed),
        *refusals.faults_of_months(asked.climate),
    ]
    if faults:
        raise RefusedError(faults)


def _faults_of_symptoms(asked: Any) -> list[Fault]:
    """A symptom is named once, as seen or as not seen; and something must be stated at all."""
    earlier: set[str] = set()
    faults = []
    for place in ("symptoms", "not_seen"):
        for i, name in enumerate(getattr(asked, place)):
            if name in earlier:
                faults.append(Fault((place, i), "symptom_twice", say("fault-symptom_twice")))
            earlier.add(name)
    if not earlier and not asked.readings.model_fields_set and not values_by_id(asked.facts):
        faults.append(Fault(("symptoms",), "nothing_to_diagnose", say("fault-nothing_to_diagnose")))
    return faults


def _faults_of_readings(asked: Any) -> list[Fault]:
    """The slurry has one temperature, and the water is stated in one way."""
    now, climate = asked.readings.slurry_temperature, asked.climate
    before = climate.digester_temperature if climate is not None else None
    faults = []
    if now is not None and before is not None and abs(now - before) > SAME_TEMPERATURE:
        faults.append(Fault(("readings", "slurry_temperature"), "stated_twice", say("fault-temperature_twice")))
    if asked.water is not None and asked.dilution is not None and asked.dilution.model_fields_set:
        faults.append(Fault(("dilution",), "water_and_dilution", say("fault-water_and_dilution")))
    return faults
