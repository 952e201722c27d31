"""How long to wait between digestate and harvest, read from the rulebook's checks; nothing here calls digestate clean."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from kilisho.checks import Compiled
from kilisho.questions.findings import Inspector
from kilisho.units import to_canonical

WAIT, RAW, STORED = "days_to_harvest", "digestate_on_raw_crops", "digestate_stored_for"


@dataclass(frozen=True, slots=True)
class Waiting:
    """The longest wait [d] that any check asks of a crop and the checks that ask it; ``never`` where digestate must not go there.

    ``stored`` is how long the digestate must be kept before it is used at all [d], None where no check asks it.
    """

    never: bool
    days: float | None
    checks: tuple[str, ...]
    stored: float | None


def waiting_of(inspector: Inspector, facts: Mapping[str, Any]) -> Waiting:
    """The wait for a crop of which ``facts`` are known; a condition on something unknown is taken to hold."""
    waits = {check.id: days for check, days in _bounds(inspector, WAIT, facts)}
    stored = [days for _, days in _bounds(inspector, STORED, facts)]
    longest = max(waits.values(), default=None)
    asked_by = tuple(name for name, days in waits.items() if days == longest)
    return Waiting(_forbidden(inspector, facts), longest, asked_by, max(stored, default=None))


def longest(waits: Sequence[Waiting]) -> float | None:
    """The longest wait among the crops that may get digestate; None where none may or no check asks one."""
    return max((one.days for one in waits if one.days is not None and not one.never), default=None)


def _applying(inspector: Inspector, subject: str, facts: Mapping[str, Any]) -> Iterator[Compiled]:
    for check in inspector.checks:
        if check.subject == subject and all(test(facts[name]) for name, test in check.when if name in facts):
            yield check


def _bounds(inspector: Inspector, subject: str, facts: Mapping[str, Any]) -> Iterator[tuple[Compiled, float]]:
    kind = inspector.data.facts[subject].kind if subject in inspector.data.facts else ""
    for check in _applying(inspector, subject, facts):
        must = check.check.must
        if must.at_least is not None:
            yield check, to_canonical(must.at_least, kind, str(must.unit))


def _forbidden(inspector: Inspector, facts: Mapping[str, Any]) -> bool:
    """Whether a check forbids digestate on crops eaten raw and this one is."""
    return any(not check.test(facts[RAW]) for check in _applying(inspector, RAW, facts))
