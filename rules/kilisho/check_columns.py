"""The declarative checks on columns of farms: the same three-valued logic as :mod:`kilisho.checks`, a row for each farm.

A column is an array of numbers in canonical units, where NaN says that nobody knows; or codes into a list of values, where -1 says so.
A single number stands for a column that is the same in all rows. Every mask is an array of booleans, or one boolean for all rows, so
that what no row states costs nothing per row.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, TypeAlias

import numpy as np
import numpy.typing as npt

from kilisho.checks import Compiled, Test, bound_of
from kilisho.rulebook import RulebookData

Array: TypeAlias = npt.NDArray[np.float64]
Codes: TypeAlias = npt.NDArray[np.intp]
Bits: TypeAlias = npt.NDArray[np.uint64]
Mask: TypeAlias = npt.NDArray[np.bool_] | bool
WORD = 64


@dataclass(frozen=True, slots=True)
class Coded:
    """A column of places in ``values``; -1 where nobody knows."""

    codes: Codes
    values: tuple[Any, ...]

    def where(self, test: Test, unknown: bool = False) -> Mask:
        """Whether the value passes ``test``; ``unknown`` where it is not known."""
        # The last entry is the one that -1 leads to.
        table = np.array([*(bool(test(value)) for value in self.values), unknown])
        return table.take(self.codes) if table.any() and not table.all() else bool(table[0])


Column: TypeAlias = Array | float | Coded

# Whether a number passes, and whether it fails: NaN does neither.
_PASSES: dict[str, Any] = {"at_least": np.greater_equal, "at_most": np.less_equal, "more_than": np.greater, "less_than": np.less}
_FAILS: dict[str, Any] = {"at_least": np.less, "at_most": np.greater, "more_than": np.less_equal, "less_than": np.greater_equal}


@dataclass(frozen=True, slots=True)
class Asked:
    """What a check asks of one fact: the operator and bound for numbers, the plain test for everything else.

    ``key`` is the same for the same question, whatever check asks it.
    """

    name: str
    operator: str
    bound: Any
    test: Test
    key: tuple[str, str, Any]


@dataclass(frozen=True, slots=True)
class ColumnCheck:
    """A compiled check, ready for columns."""

    compiled: Compiled
    subject: Asked
    when: tuple[Asked, ...]


def for_columns(checks: Iterable[Compiled], data: RulebookData) -> tuple[ColumnCheck, ...]:
    """The checks in the same order, ready for columns."""
    return tuple(_for_columns(check, data) for check in checks)


def _for_columns(compiled: Compiled, data: RulebookData) -> ColumnCheck:
    conditions = [(compiled.subject, compiled.check.must, compiled.test)]
    conditions += [(name, compiled.check.when[name], test) for name, test in compiled.when]
    subject, *when = (_asked(name, *bound_of(condition, data.facts[name]), test) for name, condition, test in conditions)
    return ColumnCheck(compiled, subject, tuple(when))


def _asked(name: str, operator: str, bound: Any, test: Test) -> Asked:
    return Asked(name, operator, bound, test, (name, operator, bound))


def either(*masks: Mask) -> Mask:
    """Where any of the masks holds."""
    found: Mask = False
    for mask in masks:
        found = _or(found, mask)
    return found


def both(*masks: Mask) -> Mask:
    """Where all masks hold."""
    found: Mask = True
    for mask in masks:
        found = _and(found, mask)
    return found


def _or(first: Mask, second: Mask) -> Mask:
    if isinstance(first, bool):
        return first or second
    return first | second if not isinstance(second, bool) else second or first


def _and(first: Mask, second: Mask) -> Mask:
    if isinstance(first, bool):
        return first and second
    return first & second if not isinstance(second, bool) else second and first


def opposite(mask: Mask) -> Mask:
    """Where the mask does not hold."""
    return not mask if isinstance(mask, bool) else ~mask


class Evaluation:
    """How checks end on the rows of ``facts``; what several checks ask is looked up once."""

    def __init__(self, facts: Mapping[str, Column]) -> None:
        self.facts = facts
        self._known: dict[Any, Mask] = {}

    @property
    def names(self) -> frozenset[str]:
        """The facts of which at least one row may know something."""
        return frozenset(name for name, column in self.facts.items() if not isinstance(column, float) or not np.isnan(column))

    def failed(self, check: ColumnCheck) -> Mask:
        """Rows in which the check applies and fails."""
        if not check.when:
            return self._fails(check.subject)
        return both(self._fails(check.subject), *map(self._passes, check.when))

    def unknown(self, check: ColumnCheck) -> Mask:
        """Rows in which the check applies or may apply, and cannot be answered."""
        no_subject = self._missing(check.subject.name)
        if check.compiled.check.only_if_stated:
            asked: Mask = opposite(no_subject)
        elif not check.when:
            return no_subject
        else:
            asked = True
        missing = either(*(self._missing(one.name) for one in (check.subject, *check.when)))
        return both(asked, missing, *(opposite(self._fails(one)) for one in check.when))

    def _missing(self, name: str) -> Mask:
        found = self._known.get(name)
        if found is None:
            found = self._known[name] = _missing(self.facts.get(name, np.nan))
        return found

    def _passes(self, asked: Asked) -> Mask:
        return self._asked("passes", asked, _PASSES)

    def _fails(self, asked: Asked) -> Mask:
        return self._asked("fails", asked, _FAILS)

    def _asked(self, which: str, asked: Asked, compare: Mapping[str, Any]) -> Mask:
        key = (which, asked.key)
        found = self._known.get(key)
        if found is None:
            column = self.facts.get(asked.name, np.nan)
            found = _of_codes(column, asked, which) if isinstance(column, Coded) else _of_numbers(column, asked, compare)
            self._known[key] = found
        return found


def _missing(column: Column) -> Mask:
    if isinstance(column, Coded):
        return _plain(column.codes < 0)
    return _plain(np.isnan(column))


def _plain(mask: Any) -> Mask:
    """One boolean where all rows agree on False, so that it costs nothing further on."""
    if mask.ndim == 0:
        return bool(mask)
    return mask if mask.any() else False


def _of_codes(column: Coded, asked: Asked, which: str) -> Mask:
    if which == "passes":
        return column.where(asked.test)
    return column.where(lambda value: not asked.test(value))


def _of_numbers(column: Array | float, asked: Asked, compare: Mapping[str, Any]) -> Mask:
    if isinstance(column, float) and np.isnan(column):
        return False
    if asked.operator != "between":
        return _plain(compare[asked.operator](column, asked.bound))
    low, high = compare["at_least"](column, asked.bound[0]), compare["at_most"](column, asked.bound[1])
    return _plain(low & high if compare is _PASSES else low | high)


def packed(masks: Sequence[Mask], rows: int) -> list[Bits | int]:
    """The masks as bits of words of 64, the first mask in the lowest bit; one number for a word that is the same in all rows."""
    return [_word(masks[start : start + WORD], rows) for start in range(0, len(masks), WORD)]


def _word(masks: Sequence[Mask], rows: int) -> Bits | int:
    constant = sum(1 << place for place, mask in enumerate(masks) if mask is True)
    varying = [(place, mask) for place, mask in enumerate(masks) if not isinstance(mask, bool)]
    if not varying:
        return constant
    # A byte for eight masks: work on bytes is eight times as fast as on words.
    octets = np.zeros((rows, 8), np.uint8)
    for byte in sorted({place // 8 for place, _ in varying}):
        octets[:, byte] = _byte([(place % 8, mask) for place, mask in varying if place // 8 == byte], rows)
    word: Bits = octets.view("<u8")[:, 0]
    return word | np.uint64(constant) if constant else word


def _byte(masks: Sequence[tuple[int, Any]], rows: int) -> npt.NDArray[np.uint8]:
    found, shifted = np.zeros(rows, np.uint8), np.empty(rows, np.uint8)
    for bit, mask in masks:
        found |= np.multiply(mask.view(np.uint8), np.uint8(1 << bit), out=shifted)
    return found
