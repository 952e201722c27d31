"""What follows from which checks failed and which are unknown: told once for each combination, looked up for every row.

A million rows hold some thousand combinations. Each row's bits are turned into the number of its combination by hashing, and words and
lists of checks are taken by that number.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import reduce
from typing import Any, NamedTuple

import numpy as np
import numpy.typing as npt
import pyarrow as pa

from kilisho.check_columns import WORD, Bits
from kilisho.questions.installation.verdicts import REFUSED, WORDS, Judge, Verdicts, places

MOST_KEPT = 100_000
Numbers = npt.NDArray[np.int64]


class Told(NamedTuple):
    """One combination: its words as places in ``WORDS``, and its checks by place, the most urgent first."""

    words: tuple[int, ...]
    failed: list[int]
    unknown: list[int]
    open_dangers: list[int]


class Combinations(NamedTuple):
    """The distinct combinations of a batch, each as bits of failed and of unknown checks, and the number of each row's."""

    number: Numbers
    distinct: list[tuple[int, int]]


def combinations(failed: Sequence[Bits | int], unknown: Sequence[Bits | int], rows: int) -> Combinations:
    """Number the combinations of ``rows`` rows from their words of bits."""
    number, keys = np.zeros(rows, np.int64), [()]
    for word in (*failed, *unknown):
        number, keys = _with_word(number, keys, word)
    distinct = [(_joined(key[: len(failed)]), _joined(key[len(failed) :])) for key in keys]
    return Combinations(number, distinct)


def _with_word(number: Numbers, keys: list[Any], word: Bits | int) -> tuple[Numbers, list[Any]]:
    if isinstance(word, int):
        return number, [(*key, word) for key in keys]
    coded = pa.array(word).dictionary_encode()
    values = coded.dictionary.to_pylist()
    both = number * len(values) + coded.indices.to_numpy()
    if len(keys) == 1:
        return both, [(*keys[0], value) for value in values]
    recoded = pa.array(both).dictionary_encode()
    pairs = (divmod(one, len(values)) for one in recoded.dictionary.to_pylist())
    return recoded.indices.to_numpy().astype(np.int64), [(*keys[before], values[here]) for before, here in pairs]


def _joined(words: Sequence[int]) -> int:
    return reduce(lambda found, item: found | item[1] << (WORD * item[0]), enumerate(words), 0)


class Teller:
    """Tells combinations, and keeps what it has told."""

    def __init__(self, judge: Judge) -> None:
        self.judge = judge
        self.ids = pa.array([check.compiled.id for check in judge.checks], pa.string())
        self._kept: dict[tuple[int, int], Told] = {}

    def tell(self, distinct: Iterable[tuple[int, int]]) -> list[Told]:
        """Each combination in words and lists."""
        if len(self._kept) > MOST_KEPT:
            self._kept.clear()
        return [self._kept.get(bits) or self._told(bits) for bits in distinct]

    def _told(self, bits: tuple[int, int]) -> Told:
        failed, unknown = bits
        danger = self.judge.danger
        found = Told(_coded(self.judge.judge(failed, unknown)), places(failed), places(unknown & ~danger), places(unknown & danger))
        self._kept[bits] = found
        return found


def _coded(verdicts: Verdicts) -> tuple[int, ...]:
    return tuple(WORDS[name].index(word) for name, word in verdicts._asdict().items())


def words(name: str, codes: npt.NDArray[np.int8], refused: npt.NDArray[np.intp]) -> pa.DictionaryArray:
    """A column of the words of the verdict or of an aspect; of refused rows only the verdict has one."""
    if not refused.size:
        return _dictionary(codes, WORDS[name], None)
    codes = codes.copy()
    if name == "verdict":
        codes[refused] = WORDS[name].index(REFUSED)
        return _dictionary(codes, WORDS[name], None)
    nothing = np.zeros(codes.size, bool)
    nothing[refused] = True
    return _dictionary(codes, WORDS[name], nothing)


def _dictionary(codes: npt.NDArray[np.int8], values: Sequence[str], mask: Any) -> pa.DictionaryArray:
    return pa.DictionaryArray.from_arrays(pa.array(codes, mask=mask), pa.array(values, pa.string()))


def lists(of_each: Sequence[Sequence[int] | None], number: pa.Array, ids: pa.Array) -> pa.ListArray:
    """A column of lists of ``ids``, by the number of each row's list; a null number is a null list."""
    kind = pa.int8() if len(ids) <= 127 else pa.int16()
    taken = pa.array(of_each, pa.list_(kind)).take(number)
    values = pa.DictionaryArray.from_arrays(taken.values, ids, safe=False)
    validity = taken.buffers()[0]
    return pa.ListArray.from_buffers(pa.list_(values.type), len(taken), [validity, taken.buffers()[1]], taken.null_count, children=[values])
