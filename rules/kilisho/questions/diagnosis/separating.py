"""Chooses the tests that part the leading causes best: by what they are expected to teach, then by effort."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import get_args

from kilisho.rulebook import Effort, FieldTest, Outcome

EFFORTS: tuple[str, ...] = get_args(Effort)
MOST_TESTS = 3
# A test that teaches less than this part of what is not known yet is not worth a farmer's time.
LEAST_TAUGHT = 0.05


@dataclass(frozen=True, slots=True)
class Chosen:
    """A test with the part of the doubt about the leading causes that it is expected to settle [1]."""

    id: str
    test: FieldTest
    settles: float


def choose(tests: Mapping[str, FieldTest], weights: Mapping[str, float]) -> list[Chosen]:
    """The few tests that settle most of the doubt between the causes of ``weights``, the easiest and most harmless first."""
    doubt = entropy(list(weights.values()))
    if doubt <= 0.0:
        return []
    taught = [Chosen(name, test, expected_gain(test.outcomes, weights) / doubt) for name, test in tests.items()]
    best = sorted((one for one in taught if one.settles >= LEAST_TAUGHT), key=lambda one: (-round(one.settles, 9), one.id))
    return sorted(best[:MOST_TESTS], key=lambda one: (EFFORTS.index(one.test.effort), -round(one.settles, 9), one.id))


def entropy(weights: Sequence[float]) -> float:
    """Shannon's entropy of weights that need not add up to one [bit]."""
    total = math.fsum(weights)
    return -math.fsum(w / total * math.log2(w / total) for w in weights if w > 0.0) if total > 0.0 else 0.0


def expected_gain(outcomes: Sequence[Outcome], weights: Mapping[str, float]) -> float:
    """Entropy of the causes that a test is expected to take away [bit]: before it, less the mean after each outcome."""
    total = math.fsum(weights.values())
    chances = {cause: likelihoods(outcomes, cause) for cause in weights}
    after = 0.0
    for i in range(len(outcomes)):
        joint = [weight * chances[cause][i] for cause, weight in weights.items()]
        after += math.fsum(joint) / total * entropy(joint)
    return max(0.0, entropy(list(weights.values())) - after)


def likelihoods(outcomes: Sequence[Outcome], cause: str) -> list[float]:
    """How likely each outcome is if ``cause`` is there: even among those that point to it, else among those that do not rule it out.

    Where every outcome rules it out, the test says nothing about it.
    """
    pointing = [i for i, one in enumerate(outcomes) if cause in one.points_to]
    open_ones = [i for i, one in enumerate(outcomes) if cause not in one.rules_out]
    possible = pointing or open_ones or list(range(len(outcomes)))
    return [1 / len(possible) if i in possible else 0.0 for i in range(len(outcomes))]
