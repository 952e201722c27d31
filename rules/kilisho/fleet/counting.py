"""What a fleet's answers come to: counts that are added up block by block, so that millions of rows need no memory.

Counts are plain numbers by name, which JSON can keep; adding them in any order and cut gives the same. The summary over HTTP is made of
those of the answers alone (:func:`counted`), the report on files of those of :class:`Counting`, which looks at what was stated too.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from typing import Any

import numpy as np
import pyarrow as pa
import pyarrow.compute as pc

from kilisho.fleet import Fleet
from kilisho.fleet.patterns import LISTS
from kilisho.fleet.table import FAULTS, ID, NOTICE, NOTICE_COLUMN
from kilisho.questions.installation.verdicts import REFUSED, WORDS
from kilisho.rulebook import Severity

MOST_WORST = 10
# Rows that are refused of which it is told why, and faults of each.
MOST_REFUSED, MOST_FAULTS = 10, 20
# Values of a column by which a fleet is told.
MOST_PLACES = 1000
MOST_NAMES = 100
# What a report counts of each place: a column of the answers, and the words in it.
GROUPS: dict[str, tuple[str, tuple[str, ...]]] = {
    "dangerous": ("verdict", ("danger",)),
    "doubtful": ("verdict", ("doubtful",)),
    "mis_sized": ("size", ("too_small", "too_large")),
    "starved": ("feeding", ("starved",)),
    "fed_wrongly": ("feeding", ("overfed", "too_wet", "too_dry", "too_seldom")),
    "underperforming": ("gas", ("below",)),
    "unknown": ("verdict", ("unknown",)),
    "refused": ("verdict", (REFUSED,)),
    "sound": ("verdict", ("sound",)),
}
# A number that cannot be right is a matter for the desk; what is at fault on the farm goes before it.
WORST = ("danger", "faulty", "doubtful", "attention")
_RANK = np.array([WORST.index(word) if word in WORST else len(WORST) for word in WORDS["verdict"]])
Counts = dict[str, Any]


class TooManyPlacesError(ValueError):
    """The column by which a fleet is to be told has a value of its own for nearly every row."""


def counted(answer: pa.RecordBatch, row: int) -> Counts:
    """The counts of the answers of one batch, whose first row is row number ``row`` of the fleet."""
    slips, faults = answer["slips"].flatten(), answer[FAULTS].flatten()
    return {
        "rows": answer.num_rows,
        "words": {name: _by_word(_codes(answer[name]), WORDS[name]) for name in WORDS},
        **{name: _by_check(answer[name]) for name in LISTS},
        "slips": _by_two(slips.field("member"), slips.field("read_as")),
        "faults": _by_two(faults.field("column"), faults.field("code")),
        "refused": _refused(answer, row),
    }


class Counting:
    """Counts answers; ``by`` names a column of the table whose values are counted apart."""

    def __init__(self, fleet: Fleet, by: str | None = None) -> None:
        self.fleet, self.by = fleet, by
        severities = [check.compiled.severity for check in fleet.desk.checks]
        self._grave = [np.array([one is severity for one in severities]) for severity in (Severity.danger, Severity.warning)]

    def of(self, batch: pa.RecordBatch, answer: pa.RecordBatch, row: int, unread: Iterable[str]) -> Counts:
        """The counts of one batch, whose first row is row number ``row`` of the fleet."""
        words = {name: _codes(answer[name]) for name in WORDS}
        return {
            **counted(answer, row),
            "invented": _invented(batch),
            "stated": {name: _stated(batch[name]) for name in batch.schema.names if name in self.fleet.members},
            "places": self._places(batch, words),
            "worst": self._worst(batch, answer, words["verdict"], row),
            "unread": dict.fromkeys(unread, 1),
        }

    def _places(self, batch: pa.RecordBatch, words: Mapping[str, Any]) -> dict[str, dict[str, int]]:
        if self.by is None:
            return {}
        place = self._place(batch).dictionary_encode()
        names, number = place.dictionary.to_pylist(), place.indices.to_numpy()
        _keep_few(len(names), self.by)
        found = {"rows": np.bincount(number, minlength=len(names))}
        for group, (column, chosen) in GROUPS.items():
            here = np.isin(words[column], [WORDS[column].index(word) for word in chosen])
            found[group] = np.bincount(number[here], minlength=len(names))
        return {name: {group: int(counts[at]) for group, counts in found.items()} for at, name in enumerate(names)}

    def _place(self, batch: pa.RecordBatch) -> pa.Array:
        """Each row's value of the column by which the fleet is told, as text; empty where nothing is stated."""
        if self.by not in batch.schema.names:
            return pa.array([""] * batch.num_rows, pa.string())
        return batch[self.by].cast(pa.string()).fill_null("")

    def _worst(self, batch: pa.RecordBatch, answer: pa.RecordBatch, verdict: Any, row: int) -> list[list[Any]]:
        """The gravest rows: by verdict, failed checks of danger and of warning level, failed checks, and how little gas they give."""
        # With what stands under rows that have no list: the offsets count it too.
        codes = answer["failed"].values.indices.to_numpy()
        ends = answer["failed"].offsets.to_numpy()
        grave = [_within(grave[codes], ends) for grave in self._grave]
        gas = answer["gas_ratio"].fill_null(np.inf).to_numpy()
        rank = _RANK[verdict]
        keys = [rank, *(-count for count in grave), -np.diff(ends), gas]
        chosen = np.flatnonzero(rank < len(WORST))
        order = chosen[np.lexsort([key[chosen] for key in reversed(keys)])][:MOST_WORST]
        told = zip(answer.take(pa.array(order)).to_pylist(), self._names(batch, order), order.tolist(), strict=True)
        return [[*(_plain(key[at]) for key in keys), row + at, _about(one, place)] for one, place, at in told]

    def _names(self, batch: pa.RecordBatch, rows: Any) -> list[str]:
        return self._place(batch).take(pa.array(rows)).to_pylist() if self.by else [""] * len(rows)


def _codes(column: pa.DictionaryArray) -> Any:
    return column.indices.fill_null(-1).to_numpy(zero_copy_only=False)


def _by_word(codes: Any, words: tuple[str, ...]) -> dict[str, int]:
    found = np.bincount(codes + 1, minlength=len(words) + 1)[1:]
    return {word: count for word, count in zip(words, found.tolist(), strict=True) if count}


def _by_check(column: pa.ListArray) -> dict[str, int]:
    codes = column.flatten()
    found = np.bincount(codes.indices.to_numpy(), minlength=len(codes.dictionary))
    return {name: count for name, count in zip(codes.dictionary.to_pylist(), found.tolist(), strict=True) if count}


def _by_two(outer: pa.Array, inner: pa.Array) -> dict[str, dict[str, int]]:
    """How often each pair stands there."""
    found: dict[str, dict[str, int]] = {}
    for (one, other), count in Counter(zip(outer.to_pylist(), inner.to_pylist(), strict=True)).items():
        found.setdefault(one, {})[other] = count
    return found


def _refused(answer: pa.RecordBatch, row: int) -> list[dict[str, Any]]:
    """The first rows that are refused, by number from 1, with what is wrong with them."""
    rows = np.flatnonzero(answer[FAULTS].is_valid().to_numpy(zero_copy_only=False))[:MOST_REFUSED]
    told = zip(rows.tolist(), *(answer[name].take(pa.array(rows)).to_pylist() for name in (ID, FAULTS)), strict=True)
    return [{"row": row + at + 1, "id": identity, "faults": faults[:MOST_FAULTS]} for at, identity, faults in told]


def _within(chosen: Any, ends: Any) -> Any:
    return np.diff(np.concatenate([[0], np.cumsum(chosen)])[ends])


def _plain(value: Any) -> float | None:
    return None if value == np.inf else float(value)


def _about(row: Mapping[str, Any], place: str) -> dict[str, Any]:
    """What is kept of one of the worst rows."""
    identity = row[ID] if row[ID] is None else str(row[ID])
    return {"id": identity, "place": place, "verdict": row["verdict"], "failed": row["failed"], "slips": row["slips"][:1]}


def _invented(batch: pa.RecordBatch) -> int:
    """Rows that say of themselves that they are invented."""
    if NOTICE_COLUMN not in batch.schema.names:
        return 0
    return int(pc.sum(pc.equal(batch[NOTICE_COLUMN].cast(pa.string()), NOTICE)).as_py() or 0)


def _stated(column: pa.Array) -> int:
    if pa.types.is_string(column.type) or pa.types.is_large_string(column.type):
        return int(pc.sum(pc.not_equal(pc.utf8_trim_whitespace(column), "")).as_py() or 0)
    return int(len(column) - column.null_count)


def _keep_few(places: int, by: str | None) -> None:
    if places > MOST_PLACES:
        raise TooManyPlacesError(
            f"the column {by!r} has more than {MOST_PLACES} different values; a report needs a column such as a region"
        )


def nothing() -> Counts:
    """The counts of no rows."""
    by_name = ("words", *LISTS, "slips", "faults", "stated", "places", "unread")
    return {"rows": 0, "invented": 0, **{name: {} for name in by_name}, "refused": [], "worst": []}


def added(one: Counts, other: Counts, by: str | None = None) -> Counts:
    """The counts of both, the first naming everything; raises :class:`TooManyPlacesError` where ``by`` tells too many places apart."""
    found = {name: _sum(count, other[name]) if name in other else count for name, count in one.items()}
    found["worst"] = sorted(found["worst"], key=_order)[:MOST_WORST]
    found["refused"] = sorted(found["refused"], key=lambda told: int(told["row"]))[:MOST_REFUSED]
    found["unread"] = dict(sorted(found["unread"].items())[:MOST_NAMES])
    _keep_few(len(found["places"]), by)
    return found


def by_frequency(counts: Mapping[str, Mapping[str, int]]) -> list[tuple[str, str, int]]:
    """What is counted by two names: both and their count, the most frequent first, then in the order of the names."""
    found = [(one, other, count) for one, others in counts.items() for other, count in others.items()]
    return sorted(found, key=lambda told: (-told[2], *told[:2]))


def _sum(one: Any, other: Any) -> Any:
    if not isinstance(one, dict):
        return one + other
    both = {name: _sum(count, other[name]) for name, count in one.items() if name in other}
    return {**one, **other, **both}


def _order(entry: list[Any]) -> list[float]:
    return [np.inf if key is None else key for key in entry[:-1]]
