"""Chooses the tests that part the leading causes best: by what they are expected to teach, then told by effort."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from typing import get_args

import numpy as np

from kilisho.ranges import Array
from kilisho.rulebook import Effort, FieldTest, Outcome

EFFORTS: tuple[str, ...] = get_args(Effort)
MOST_TESTS = 3
# A test that settles less than this part of the doubt, beside those chosen before it, is not worth a farmer's time.
LEAST_SETTLED = 0.05
NINE_DIGITS = 9
# Stands for whatever no cause of the table explains; no outcome of a test names it.
SOMETHING_ELSE = ""


@dataclass(frozen=True, slots=True)
class Chosen:
    """A test with the part of the doubt about the leading causes that it is expected to settle by itself [1]."""

    id: str
    test: FieldTest
    settles: float


class Bench:
    """All tests of a rulebook, ready to be chosen from; how likely each outcome of each test is under each cause."""

    def __init__(self, tests: Mapping[str, FieldTest], causes: Sequence[str]) -> None:
        self.tests = dict(sorted(tests.items()))
        columns = (*causes, SOMETHING_ELSE)
        self._column = {cause: i for i, cause in enumerate(columns)}
        most = max((len(test.outcomes) for test in tests.values()), default=0)
        self._chances = np.zeros((len(tests), most, len(columns)))
        for row, test in enumerate(self.tests.values()):
            self._chances[row, : len(test.outcomes)] = np.transpose([likelihoods(test.outcomes, cause) for cause in columns])

    def choose(self, weights: Mapping[str, float], stated: Collection[str] = ()) -> list[Chosen]:
        """The few tests that together settle most of the doubt between the causes of ``weights``, the easiest and safest first.

        A test whose answer is among the ``stated`` facts is done already and left out.
        """
        rows = [i for i, test in enumerate(self.tests.values()) if not set(test.answered_by) & set(stated)]
        chances = self._chances[rows][:, :, [self._column[cause] for cause in weights]]
        states = np.array([list(weights.values())]) / sum(weights.values())
        doubt = entropy(states)
        if doubt <= 0.0 or not rows:
            return []
        alone, names = (doubt - _left(states, chances)) / doubt, list(self.tests)
        found = [(names[rows[i]], float(alone[i])) for i in _greedily(states, chances, doubt)]
        chosen = [Chosen(name, self.tests[name], settles) for name, settles in found]
        return sorted(chosen, key=lambda one: (EFFORTS.index(one.test.effort), -round(one.settles, NINE_DIGITS), one.id))


def _greedily(states: Array, chances: Array, doubt: float) -> list[int]:
    """Rows of the tests, each the one that settles most of what those before it left open, none twice."""
    rows: list[int] = []
    for _ in range(MOST_TESTS):
        left = np.round(_left(states, chances), NINE_DIGITS)
        left[rows] = np.inf
        row = int(left.argmin())
        if entropy(states) - left[row] < LEAST_SETTLED * doubt:
            break
        rows.append(row)
        states = (states[:, None, :] * chances[row][None, :, :]).reshape(-1, states.shape[1])
    return rows


def _left(states: Array, chances: Array) -> Array:
    """The mean entropy of the causes that each test leaves [bit], shape (tests,)."""
    joint = states[None, :, None, :] * chances[:, None, :, :]
    left: Array = (_terms(joint.sum(axis=-1)) - _terms(joint).sum(axis=-1)).sum(axis=(1, 2))
    return left


def entropy(states: Array) -> float:
    """Mean entropy [bit] of causes over states; ``states`` (states, causes) holds joint probabilities that add up to one."""
    return float((_terms(states.sum(axis=-1)) - _terms(states).sum(axis=-1)).sum())


def _terms(share: Array) -> Array:
    """x log2 x, 0 at 0."""
    found: Array = share * np.log2(np.where(share > 0.0, share, 1.0))
    return found


def likelihoods(outcomes: Sequence[Outcome], cause: str) -> list[float]:
    """How likely each outcome is if ``cause`` is there: even among those that point to it, else among those that do not rule it out.

    Where every outcome rules it out, the test says nothing about it.
    """
    pointing = [i for i, one in enumerate(outcomes) if cause in one.points_to]
    open_ones = [i for i, one in enumerate(outcomes) if cause not in one.rules_out]
    possible = pointing or open_ones or list(range(len(outcomes)))
    return [1 / len(possible) if i in possible else 0.0 for i in range(len(outcomes))]
