"""Does a merged rulebook hang together? Looks only at references between entries; each entry's own shape is checked before."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from kilisho.rulebook import NUMERIC_OPERATORS, Condition, Fact, RulebookData
from kilisho.units import KINDS, UnknownUnitError, unit_of

PathInPack = tuple[str | int, ...]


def incoherences(data: RulebookData) -> Iterator[tuple[PathInPack, str]]:
    """Path and expectation of every reference that leads nowhere and of every check that its subject cannot answer."""
    for path, section, name in _references(data):
        if name not in getattr(data, section):
            yield path, f"one of the {section} listed under {section}:, not {name!r}"
    yield from _condition_faults(data)


def _references(data: RulebookData) -> Iterator[tuple[PathInPack, str, str]]:
    """Every reference of an entry to another: where it stands, the section it points into, and the id."""
    for path, ids in _cited(data):
        yield from (((*path, "source"), "sources", name) for name in ids)
    for name, animal in data.animals.items():
        yield ("animals", name, "substrate"), "substrates", animal.substrate
    for name, substrate in data.substrates.items():
        yield from ((("substrates", name, "cautions"), "cautions", caution) for caution in substrate.cautions)
    for name, structure in data.structures.items():
        yield from ((("structures", name, "cautions"), "cautions", caution) for caution in structure.cautions)
        yield from ((("structures", name, "confirm_before_filling"), "facts", fact) for fact in structure.confirm_before_filling)


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
