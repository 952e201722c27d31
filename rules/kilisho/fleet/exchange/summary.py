"""What a whole table says: how many rows have which verdict, which finding and which fault, and the first rows that are refused."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from typing import Any

import numpy as np
import pyarrow as pa

from kilisho.fleet.headings import Columns
from kilisho.fleet.patterns import LISTS
from kilisho.fleet.table import FAULTS, ID
from kilisho.questions.installation.verdicts import REFUSED, WORDS

MOST_SHOWN = 10
MOST_FAULTS_SHOWN = 20


class Summary:
    """Counts answered batches, one after the other."""

    def __init__(self, identity: Mapping[str, str]) -> None:
        self.rows = 0
        self._identity = dict(identity)
        self._words: dict[str, Counter[str]] = {name: Counter() for name in WORDS}
        self._checks: dict[str, Counter[str]] = {name: Counter() for name in LISTS}
        self._slips: Counter[tuple[str, str]] = Counter()
        self._faults: Counter[tuple[str, str]] = Counter()
        self._shown: list[dict[str, Any]] = []

    def add(self, batch: pa.RecordBatch) -> None:
        """Count the rows of the next batch."""
        for name, words in self._words.items():
            _count(words, batch.column(name))
        for name, checks in self._checks.items():
            _count(checks, batch.column(name).flatten())
        slips = batch.column("slips").flatten()
        self._slips.update(zip(_words(slips.field("member")), _words(slips.field("read_as")), strict=True))
        faults = batch.column(FAULTS).flatten()
        self._faults.update(zip(faults.field("column").to_pylist(), faults.field("code").to_pylist(), strict=True))
        self._show(batch)
        self.rows += batch.num_rows

    def _show(self, batch: pa.RecordBatch) -> None:
        missing = MOST_SHOWN - len(self._shown)
        if missing <= 0 or batch.column(FAULTS).null_count == batch.num_rows:
            return
        for at in np.flatnonzero(batch.column(FAULTS).is_valid().to_numpy(zero_copy_only=False))[:missing].tolist():
            identity, faults = batch.column(ID)[at].as_py(), batch.column(FAULTS)[at].as_py()
            told = {} if identity is None else {"id": identity}
            self._shown.append({"row": self.rows + at + 1, **told, "faults": faults[:MOST_FAULTS_SHOWN]})

    def told(self, unread: Iterable[str], columns: Columns) -> dict[str, Any]:
        """The summary as plain data, the most frequent first."""
        aspects = {name: _sorted(words) for name, words in self._words.items() if name != "verdict"}
        return {
            "rows": self.rows,
            "refused": self._words["verdict"][REFUSED],
            "verdicts": _sorted(self._words["verdict"]),
            "aspects": aspects,
            "checks": {name: _sorted(checks) for name, checks in self._checks.items()},
            "slips": [{"member": member, "read_as": unit, "rows": count} for (member, unit), count in self._slips.most_common()],
            "faults": [{"column": column, "code": code, "rows": count} for (column, code), count in self._faults.most_common()],
            "first_refused": self._shown,
            "unread_columns": [_unread(name, columns) for name in unread],
            "rulebook": self._identity,
        }


def _count(counter: Counter[str], array: pa.DictionaryArray) -> None:
    codes = array.indices.drop_null().to_numpy(zero_copy_only=False)
    for word, count in zip(array.dictionary.to_pylist(), np.bincount(codes, minlength=len(array.dictionary)).tolist(), strict=True):
        if count:
            counter[word] += count


def _words(array: pa.DictionaryArray) -> list[str]:
    words = array.dictionary.to_pylist()
    return [words[code] for code in array.indices.to_pylist()]


def _sorted(counter: Counter[str]) -> dict[str, int]:
    return dict(sorted(counter.items(), key=lambda item: (-item[1], item[0])))


def _unread(name: str, columns: Columns) -> dict[str, Any]:
    nearest = columns.nearest(name)
    return {"column": name, **({"nearest": nearest} if nearest else {})}
