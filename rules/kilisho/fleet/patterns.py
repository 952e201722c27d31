"""What follows from which checks failed and which are unknown: told once for each combination, looked up for every row.

A million rows hold some thousand combinations. Each row's bits are turned into the number of its combination by hashing, and words and
lists of checks are taken by that number.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from functools import lru_cache
from threading import Lock
from typing import Any, NamedTuple, TypeAlias

import numpy as np
import numpy.typing as npt
import pyarrow as pa

from kilisho.check_columns import WORD, Bits, Evaluation, Mask, packed
from kilisho.questions.installation.verdicts import WORDS, Judge, places

MOST_KEPT = 100_000
# Combinations that there is room for at first.
FIRST_ROWS = 256
# Codes below this are numbered anew by a table instead of by hashing.
LARGEST_TABLE = 1 << 21
Numbers: TypeAlias = npt.NDArray[np.int64]
Padded: TypeAlias = tuple[npt.NDArray[np.int32], npt.NDArray[Any]]


LISTS = ("failed", "unknown", "open_dangers")


class Page:
    """Lists of places of checks, one after the other as rows of a padded table; grows as lists are added."""

    def __init__(self, width: int) -> None:
        self.kind = np.int8 if width <= 127 else np.int16
        self.lengths = np.zeros(FIRST_ROWS, np.int32)
        self._table = np.full((FIRST_ROWS, max(width, 1)), -1, self.kind)

    def write(self, row: int, places: Sequence[int]) -> None:
        """Put a list into a row."""
        if row >= len(self._table):
            self._table = np.concatenate([self._table, np.full_like(self._table, -1)])
            self.lengths = np.concatenate([self.lengths, np.zeros_like(self.lengths)])
        self._table[row, : len(places)] = places
        self.lengths[row] = len(places)

    def take(self, rows: Numbers) -> tuple[npt.NDArray[np.int32], npt.NDArray[Any]]:
        """The lengths of the lists of some rows, and the lists padded with -1 to the longest of them."""
        lengths = self.lengths.take(rows)
        return lengths, self.whole(rows)[:, : max(int(lengths.max(initial=0)), 1)]

    def whole(self, rows: Numbers) -> npt.NDArray[Any]:
        """The lists of some rows, padded with -1 to the width of the page."""
        return self._table.take(rows, axis=0)


class Packing:
    """Which bit a check has. Checks that the record itself can answer come first, so that what differs from row to row fills few words."""

    def __init__(self, judge: Judge, told: Collection[str]) -> None:
        self._checks = judge.checks
        own = [place for place, check in enumerate(judge.checks) if check.subject.name in told]
        others = [place for place, check in enumerate(judge.checks) if check.subject.name not in told]
        self._groups = (own, others)
        # How a check ends of whose facts no row knows any.
        self._unanswered = [not check.compiled.check.only_if_stated for check in judge.checks]
        self._places = [*own, *[0] * (-len(own) % WORD), *others]
        self._answerable = lru_cache(maxsize=256)(self._answerable_by)

    def ends(self, evaluation: Evaluation, rows: int) -> tuple[list[Bits | int], list[Bits | int]]:
        """The words of bits of failed and of unknown checks."""
        answerable = self._answerable(evaluation.names)
        failed: list[Mask] = [False] * len(self._checks)
        unknown: list[Mask] = [*self._unanswered]
        for place in answerable:
            failed[place], unknown[place] = evaluation.failed(self._checks[place]), evaluation.unknown(self._checks[place])
        return self._packed(failed, rows), self._packed(unknown, rows)

    def _answerable_by(self, names: frozenset[str]) -> tuple[int, ...]:
        """Checks that facts of these names can answer or exclude; all others are unknown whatever a row says."""
        return tuple(place for place, check in enumerate(self._checks) if any(one.name in names for one in (check.subject, *check.when)))

    def _packed(self, masks: Sequence[Mask], rows: int) -> list[Bits | int]:
        return [word for group in self._groups for word in packed([masks[place] for place in group], rows)]

    def in_order(self, words: Sequence[int]) -> int:
        """Words of bits as one number, in which a check's bit is at its place among the checks."""
        return sum(1 << self._places[number * WORD + bit] for number, word in enumerate(words) for bit in places(word))


class Combinations(NamedTuple):
    """The distinct combinations of a batch, each as words of failed and of unknown checks, and the number of each row's."""

    number: Numbers
    distinct: list[tuple[int, ...]]


def combinations(words: Sequence[Bits | int], rows: int) -> Combinations:
    """Number the combinations of ``rows`` rows from their words of bits."""
    number: Numbers = np.zeros(rows, np.int64)
    keys: list[tuple[int, ...]] = [()]
    for word in words:
        number, keys = _with_word(number, keys, word)
    return Combinations(number, keys)


def _with_word(number: Numbers, keys: list[tuple[int, ...]], word: Bits | int) -> tuple[Numbers, list[tuple[int, ...]]]:
    if isinstance(word, int):
        return number, [(*key, word) for key in keys]
    coded = pa.array(word).dictionary_encode()
    values = coded.dictionary.to_pylist()
    if len(keys) == 1:
        return coded.indices.to_numpy().astype(np.int64), [(*keys[0], value) for value in values]
    both, present = _renumbered(number * len(values) + coded.indices.to_numpy(), len(keys) * len(values))
    return both, [(*keys[before], values[here]) for before, here in (divmod(one, len(values)) for one in present)]


def _renumbered(codes: Numbers, most: int) -> tuple[Numbers, list[int]]:
    """Codes below ``most`` as numbers without gaps, and the code of each number."""
    if most > LARGEST_TABLE:
        coded = pa.array(codes).dictionary_encode()
        return coded.indices.to_numpy().astype(np.int64), coded.dictionary.to_pylist()
    there = np.zeros(most, bool)
    there[codes] = True
    present = np.flatnonzero(there)
    table = np.zeros(most, np.int64)
    table[present] = np.arange(present.size)
    return table.take(codes), present.tolist()


class Told(NamedTuple):
    """Some combinations: the words of each as places in ``WORDS``, and its lists of places of checks, the most urgent first."""

    words: npt.NDArray[Any]
    lists: tuple[Padded, ...]


class Teller:
    """Tells combinations, and keeps what it has told; threads may share it."""

    def __init__(self, judge: Judge, packing: Packing) -> None:
        self.judge, self.packing = judge, packing
        self.ids = pa.array([check.compiled.id for check in judge.checks], pa.string())
        self._lock = Lock()
        self._forget()

    def _forget(self) -> None:
        self._rows: dict[tuple[int, ...], int] = {}
        self._words = Page(len(WORDS))
        self._lists = tuple(Page(len(self.ids)) for _ in LISTS)

    def tell(self, distinct: Sequence[tuple[int, ...]]) -> Told:
        """The words of each combination, and its lists in the order of ``LISTS``."""
        with self._lock:
            if len(self._rows) + len(distinct) > MOST_KEPT:
                self._forget()
            rows = np.array([self._rows[key] if key in self._rows else self._told(key) for key in distinct], np.int64)
            return Told(self._words.whole(rows), tuple(page.take(rows) for page in self._lists))

    def _told(self, key: tuple[int, ...]) -> int:
        failed, unknown = (self.packing.in_order(half) for half in (key[: len(key) // 2], key[len(key) // 2 :]))
        verdicts, danger, row = self.judge.judge(failed, unknown)._asdict(), self.judge.danger, len(self._rows)
        self._words.write(row, [WORDS[name].index(word) for name, word in verdicts.items()])
        for page, bits in zip(self._lists, (failed, unknown & ~danger, unknown & danger), strict=True):
            page.write(row, places(bits))
        self._rows[key] = row
        return row


def lists(padded: Padded, number: Numbers, ids: pa.Array, told: npt.NDArray[np.bool_] | None) -> pa.ListArray:
    """A column of lists of ``ids``, by the number of each row's list; null where not ``told``.

    Lists of all lengths are taken as rows of a padded table, and the padding is filtered out: much faster than taking lists.
    """
    lengths, table = padded
    offsets = np.zeros(number.size + 1, np.int32)
    np.cumsum(lengths.take(number), out=offsets[1:])
    flat = table.take(number, axis=0).ravel()
    values = pa.array(flat) if (lengths == table.shape[1]).all() else pa.array(flat).filter(bitmap(flat >= 0))
    coded = pa.DictionaryArray.from_arrays(values, ids, safe=False)
    buffers = [None if told is None else bitmap(told).buffers()[1], pa.py_buffer(offsets)]
    return pa.ListArray.from_buffers(pa.list_(coded.type), number.size, buffers, children=[coded])


def every_list_of(bits: int) -> Padded:
    """The places of the set bits of every number of so many bits, as padded lists in the order of the numbers."""
    page = Page(bits)
    for number in range(1 << bits):
        page.write(number, places(number))
    return page.take(np.arange(1 << bits))


def bitmap(mask: npt.NDArray[np.bool_]) -> pa.BooleanArray:
    """A mask as Arrow has it, a bit a row."""
    return pa.Array.from_buffers(pa.bool_(), mask.size, [None, pa.py_buffer(np.packbits(mask, bitorder="little"))])


def with_validity(values: npt.NDArray[Any], known: npt.NDArray[np.bool_], kind: pa.DataType) -> pa.Array:
    """Numbers as an Arrow array, null where not known, without a copy."""
    validity = None if known.all() else pa.py_buffer(np.packbits(known, bitorder="little"))
    return pa.Array.from_buffers(kind, values.size, [validity, pa.py_buffer(values)])
