"""What speaks for and against each cause: the rulebook's table made ready, and the causes of one farm judged by it."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, get_args
from weakref import WeakKeyDictionary

import numpy as np

from kilisho.checks import Test, test_of
from kilisho.farm import Shelf
from kilisho.questions.diagnosis.separating import Bench
from kilisho.ranges import Array
from kilisho.rulebook import Cause, Evidence, HowCommon, RulebookData, Strength

STRENGTHS: tuple[str, ...] = get_args(Strength)
FREQUENCIES: tuple[str, ...] = get_args(HowCommon)
_POWER = {word: i for i, word in enumerate((*STRENGTHS, *FREQUENCIES))}
_ELSE = [int(word == "common") for word in _POWER]
# The absence of a symptom says less than its presence, since not every trouble shows all its signs: one word less.
ONE_WORD_LESS = {"strong": "some", "some": "weak"}


@dataclass(frozen=True, slots=True)
class Clue:
    """Something stated that speaks for or against a cause.

    ``kind`` is symptom, not_seen or reading; ``of`` the symptom, or the facts; ``when`` the conditions that the facts of a reading meet.
    """

    kind: str
    of: str
    strength: str
    when: Mapping[str, dict[str, Any]] | None = None


@dataclass(slots=True)
class Judged:
    """A cause with what speaks for and against it."""

    id: str
    cause: Cause
    speaks_for: list[Clue] = field(default_factory=list)
    speaks_against: list[Clue] = field(default_factory=list)

    def powers(self) -> list[int]:
        """How often each word of strength multiplies the cause's weight, and one for the word of how common it is."""
        power = [0] * len(_POWER)
        power[_POWER[self.cause.how_common]] = 1
        for clue in self.speaks_for:
            power[_POWER[clue.strength]] += 1
        for clue in self.speaks_against:
            power[_POWER[clue.strength]] -= 1
        return power


@dataclass(frozen=True, slots=True)
class _Reading:
    """A reading's clue with its conditions as plain functions."""

    clue: Clue
    speaks_for: bool
    tests: tuple[tuple[str, Test], ...]

    def holds(self, facts: Mapping[str, Any]) -> bool:
        for name, test in self.tests:  # noqa: SIM110 a generator would cost more than the tests
            if name not in facts or not test(facts[name]):
                return False
        return True


class Table:
    """The causes of a rulebook, ready to be judged, and the tests that part them."""

    def __init__(self, data: RulebookData) -> None:
        self.data = data
        self.bench = Bench(data.tests, list(data.causes))
        self._readings = {name: [_reading(one, data) for one in cause.readings] for name, cause in data.causes.items()}

    def judge(
        self, seen: Collection[str], not_seen: Collection[str], facts: Mapping[str, Any], structure: str | None = None
    ) -> list[Judged]:
        """All causes that ``structure`` can have (all of them where it is None). What is not stated is unknown, never against."""
        return [
            self._judged(Judged(name, cause), seen, not_seen, facts)
            for name, cause in self.data.causes.items()
            if structure is None or not cause.structures or structure in cause.structures
        ]

    def _judged(self, one: Judged, seen: Collection[str], not_seen: Collection[str], facts: Mapping[str, Any]) -> Judged:
        cause = one.cause
        one.speaks_for += [Clue("symptom", name, cause.explains[name]) for name in seen if name in cause.explains]
        one.speaks_against += [Clue("symptom", name, cause.denied_by[name]) for name in seen if name in cause.denied_by]
        one.speaks_against += _absences(cause, not_seen)
        for reading in self._readings[one.id]:
            if reading.holds(facts):
                (one.speaks_for if reading.speaks_for else one.speaks_against).append(reading.clue)
        return one


def _absences(cause: Cause, not_seen: Collection[str]) -> Iterator[Clue]:
    for name in not_seen:
        less = ONE_WORD_LESS.get(cause.explains.get(name, "weak"))
        if less is not None:
            yield Clue("not_seen", name, less)


def _reading(evidence: Evidence, data: RulebookData) -> _Reading:
    when = {name: condition.model_dump(mode="json", by_alias=True, exclude_none=True) for name, condition in evidence.when.items()}
    tests = tuple((name, test_of(condition, data.facts[name])) for name, condition in evidence.when.items())
    return _Reading(Clue("reading", ", ".join(when), evidence.strength, when), evidence.speaks == "for", tests)


_TABLES: WeakKeyDictionary[Shelf, Table] = WeakKeyDictionary()


def table_of(shelf: Shelf) -> Table:
    """The table of the shelf's rulebook, made once."""
    found = _TABLES.get(shelf)
    if found is None:
        found = _TABLES[shelf] = Table(shelf.data)
    return found


def shares(judged: Sequence[Judged], figures: Array) -> Array:
    """Each cause's part of the weight of all [1], and in the last row that of something else, shape (causes + 1, ...).

    A cause weighs the figure of how common it is, times the figure of every clue for it, over the figure of every clue against it.
    Something else weighs as much as a common cause of which nothing is known, so that a lone cause is never certain.
    ``figures`` has the figure of each word of strength, then of each word of frequency, in its rows; further axes are samples.
    """
    logarithms = np.array([*(one.powers() for one in judged), _ELSE], dtype=float) @ np.log(figures)
    weights = np.exp(logarithms - logarithms.max(axis=0))
    parts: Array = weights / weights.sum(axis=0)
    return parts
