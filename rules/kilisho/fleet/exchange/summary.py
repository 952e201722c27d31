"""What a whole table says: how many rows have which verdict, which finding and which fault, and the first rows that are refused."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from kilisho.fleet.counting import Counts, by_frequency
from kilisho.fleet.headings import Columns
from kilisho.fleet.patterns import LISTS
from kilisho.questions.installation.verdicts import REFUSED, WORDS


def summary_of(counts: Counts, unread: Iterable[str], columns: Columns, identity: Mapping[str, str]) -> dict[str, Any]:
    """The summary of the counts of a table as plain data, the most frequent first."""
    words = {name: _sorted(counts["words"].get(name, {})) for name in WORDS}
    verdicts = words.pop("verdict")
    return {
        "rows": counts["rows"],
        "refused": verdicts.get(REFUSED, 0),
        "verdicts": verdicts,
        "aspects": words,
        "checks": {name: _sorted(counts[name]) for name in LISTS},
        "slips": _pairs(counts["slips"], "member", "read_as"),
        "faults": _pairs(counts["faults"], "column", "code"),
        "first_refused": [{name: value for name, value in told.items() if value is not None} for told in counts["refused"]],
        "unread_columns": [_unread(name, columns) for name in unread],
        "rulebook": dict(identity),
    }


def _sorted(counts: Mapping[str, int]) -> dict[str, int]:
    return dict(sorted(counts.items(), key=lambda item: (-item[1], item[0])))


def _pairs(counts: Mapping[str, Mapping[str, int]], outer: str, inner: str) -> list[dict[str, Any]]:
    return [{outer: one, inner: other, "rows": count} for one, other, count in by_frequency(counts)]


def _unread(name: str, columns: Columns) -> dict[str, Any]:
    nearest = columns.nearest(name)
    return {"column": name, **({"nearest": nearest} if nearest else {})}
