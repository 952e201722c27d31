"""Does a merged rulebook hang together? Looks only at references between entries; each entry's own shape is checked before."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from kilisho.rulebook import NUMERIC_OPERATORS, Condition, Fact, RulebookData
from kilisho.units import KINDS, UnknownUnitError, unit_of

PathInPack = tuple[str | int, ...]


def incoherences(data: RulebookData) -> Iterator[tuple[PathInPack, str]]:
    """Path and expectation of every reference that leads nowhere and of every check that its subject cannot answer."""
    for path, ids in _cited(data):
        for name in ids:
            if name not in data.sources:
                yield (*path, "source"), f"a source listed under sources:, not {name!r}"
    for name, animal in data.animals.items():
        if animal.substrate not in data.substrates:
            yield ("animals", name, "substrate"), f"a substrate listed under substrates:, not {animal.substrate!r}"
    for section in ("substrates", "structures"):
        for name, entry in getattr(data, section).items():
            for caution in entry.cautions:
                if caution not in data.cautions:
                    yield (section, name, "cautions"), f"a caution listed under cautions:, not {caution!r}"
    for name, structure in data.structures.items():
        for fact in structure.confirm_before_filling:
            if fact not in data.facts:
                yield ("structures", name, "confirm_before_filling"), f"a fact listed under facts:, not {fact!r}"
    yield from _condition_faults(data)


def _cited(value: Any, path: PathInPack = ()) -> Iterator[tuple[PathInPack, tuple[str, ...]]]:
    if isinstance(value, dict):
        for key, inner in value.items():
            yield from _cited(inner, (*path, key))
    elif hasattr(type(value), "model_fields"):
        if getattr(value, "source", ()):
            yield path, value.source
        for name in type(value).model_fields:
            yield from _cited(getattr(value, name), (*path, name))


def _condition_faults(data: RulebookData) -> Iterator[tuple[PathInPack, str]]:
    """Checks that speak of unknown facts, or ask something of a fact that its kind cannot answer."""
    for name, check in data.checks.items():
        for where, subject, condition in [(("must",), check.subject, check.must), *((("when", s), s, c) for s, c in check.when.items())]:
            path = ("checks", name, *where)
            fact = data.facts.get(subject)
            if fact is None:
                yield path, f"a fact listed under facts:, not {subject!r}"
            else:
                yield from ((path, fault) for fault in _misfits(fact, condition))


def _misfits(fact: Fact, condition: Condition) -> Iterator[str]:
    [(operator, bound)] = condition.operators
    if fact.kind in KINDS:
        if operator not in NUMERIC_OPERATORS:
            yield f"a bound such as at_least, since the fact is a {fact.kind}"
        if condition.unit is None and KINDS[fact.kind].canonical.code != "1":
            yield f"a unit of {fact.kind}, such as {KINDS[fact.kind].canonical.code}"
        elif condition.unit is not None:
            try:
                unit_of(fact.kind, condition.unit)
            except UnknownUnitError as error:
                yield str(error)
    elif operator in NUMERIC_OPERATORS or (fact.kind == "list_of") != (operator == "includes_none_of"):
        yield f"an operator that fits a {fact.kind} fact, not {operator}"
    elif fact.values:
        known = set(bound) if isinstance(bound, tuple) else {bound}
        if known - set(fact.values):
            yield f"values among {', '.join(fact.values)}"
    elif fact.kind == "yes_no" and not isinstance(bound, bool):
        yield "is: true or is: false"
