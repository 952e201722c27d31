"""What speaks for and against each cause: the rulebook's table made ready, and the causes of one farm judged by it."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any, get_args
from weakref import WeakKeyDictionary

import numpy as np

from kilisho.checks import Test, test_of
from kilisho.farm import Shelf
from kilisho.ranges import Array
from kilisho.rulebook import Cause, Evidence, HowCommon, RulebookData, Strength

STRENGTHS: tuple[str, ...] = get_args(Strength)
FREQUENCIES: tuple[str, ...] = get_args(HowCommon)
# The absence of a symptom says less than its presence, since not every trouble shows all its signs: one word less.
ONE_WORD_LESS = {"strong": "some", "some": "weak"}


@dataclass(frozen=True, slots=True)
class Clue:
    """Something stated that speaks for or against a cause. ``kind`` is symptom, not_seen or reading; ``of`` the symptom, or the facts."""

    kind: str
    of: str
    strength: str
    evidence: Evidence | None = None


@dataclass(slots=True)
class Judged:
    """A cause with what speaks for and against it."""

    id: str
    cause: Cause
    speaks_for: list[Clue] = field(default_factory=list)
    speaks_against: list[Clue] = field(default_factory=list)

    def powers(self) -> list[int]:
        """How often each word of strength multiplies the cause's weight, and one for the word of how common it is."""
        power = dict.fromkeys((*STRENGTHS, *FREQUENCIES), 0)
        power[self.cause.how_common] = 1
        for clues, sign in ((self.speaks_for, 1), (self.speaks_against, -1)):
            for clue in clues:
                power[clue.strength] += sign
        return list(power.values())


@dataclass(frozen=True, slots=True)
class _Ready:
    """A reading's evidence with its conditions as plain functions."""

    evidence: Evidence
    of: str
    tests: tuple[tuple[str, Test], ...]

    def holds(self, facts: Mapping[str, Any]) -> bool:
        return all(name in facts and test(facts[name]) for name, test in self.tests)


class Table:
    """The causes of a rulebook, ready to be judged."""

    def __init__(self, data: RulebookData) -> None:
        self.data = data
        self._ready = {name: [_made_ready(one, data) for one in cause.readings] for name, cause in data.causes.items()}

    def judge(
        self, seen: Collection[str], not_seen: Collection[str], facts: Mapping[str, Any], structure: str | None = None
    ) -> list[Judged]:
        """All causes that ``structure`` can have (all of them where it is None). What is not stated is unknown, never against."""
        return [
            self._judged(name, cause, seen, not_seen, facts)
            for name, cause in self.data.causes.items()
            if structure is None or not cause.structures or structure in cause.structures
        ]

    def _judged(
        self, name: str, cause: Cause, seen: Collection[str], not_seen: Collection[str], facts: Mapping[str, Any]
    ) -> Judged:
        found = Judged(name, cause)
        found.speaks_for += [Clue("symptom", one, cause.explains[one]) for one in seen if one in cause.explains]
        found.speaks_against += [Clue("symptom", one, cause.denied_by[one]) for one in seen if one in cause.denied_by]
        found.speaks_against += _absences(cause, not_seen)
        for ready in self._ready[name]:
            if ready.holds(facts):
                side = found.speaks_for if ready.evidence.speaks == "for" else found.speaks_against
                side.append(Clue("reading", ready.of, ready.evidence.strength, ready.evidence))
        return found


def _absences(cause: Cause, not_seen: Collection[str]) -> Iterator[Clue]:
    for one in not_seen:
        less = ONE_WORD_LESS.get(cause.explains.get(one, "weak"))
        if less is not None:
            yield Clue("not_seen", one, less)


def _made_ready(evidence: Evidence, data: RulebookData) -> _Ready:
    tests = tuple((name, test_of(condition, data.facts[name])) for name, condition in evidence.when.items())
    return _Ready(evidence, ", ".join(evidence.when), tests)


_TABLES: WeakKeyDictionary[Shelf, Table] = WeakKeyDictionary()


def table_of(shelf: Shelf) -> Table:
    """The table of the shelf's rulebook, made once."""
    found = _TABLES.get(shelf)
    if found is None:
        found = _TABLES[shelf] = Table(shelf.data)
    return found


def shares(judged: Collection[Judged], figures: Array) -> Array:
    """Each cause's part of the weight of all [1], shape (causes, ...).

    A cause weighs the figure of how common it is, times the figure of every clue for it, over the figure of every clue against it.
    ``figures`` has the figure of each word of strength, then of each word of frequency, in its rows; further axes are samples.
    """
    logarithms = np.array([one.powers() for one in judged], dtype=float) @ np.log(figures)
    weights = np.exp(logarithms - logarithms.max(axis=0))
    parts: Array = weights / weights.sum(axis=0)
    return parts
