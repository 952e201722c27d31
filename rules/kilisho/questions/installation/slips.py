"""Numbers that are possible in another unit only: litres written for cubic metres, a decimal point that slipped."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
import numpy.typing as npt

from kilisho.check_columns import Array, Codes, ColumnCheck
from kilisho.questions import fields as f
from kilisho.questions.installation.request import InstallationRequest
from kilisho.questions.installation.work import Desk, Work
from kilisho.units import KINDS, Unit, from_canonical, unit_of

DECIMAL_POINT = "decimal_point"
THOUSAND, TEN = 1e3, 1e1
_SAME = 1e-9


@dataclass(frozen=True, slots=True)
class Reading:
    """Another way to read a number of a record: ``canonical = number * factor + offset``, with the number as it was written."""

    read_as: str
    factor: float
    offset: float = 0.0


@dataclass(frozen=True, slots=True)
class Slipped:
    """Rows in which a number is likely in another reading: which of ``readings_of``, and the number as it would then be (canonical)."""

    member: str
    rows: Codes
    reading: Codes
    values: Array


@lru_cache(maxsize=64)
def home_of(member: str) -> Unit:
    """The unit in which a record has a number; that of pure numbers where it has none."""
    kind = InstallationRequest.model_fields[member].metadata[0]
    return unit_of(kind.kind, kind.unit) if isinstance(kind, f.InUnit) else unit_of("number", "1")


def written_as(member: str, value: float, code: str) -> float:
    """A number that a record has in its own unit, in another unit of its kind."""
    kind, home = InstallationRequest.model_fields[member].metadata[0], home_of(member)
    return from_canonical(value * home.factor + home.offset, kind.kind, code)


@lru_cache(maxsize=64)
def readings_of(member: str) -> tuple[Reading, ...]:
    """Other readings of a number, the likeliest first: a unit a thousand times off, another scale of temperature, ten, a thousand."""
    home, kind = home_of(member), InstallationRequest.model_fields[member].metadata[0]
    units = [] if not isinstance(kind, f.InUnit) else [unit for unit in KINDS[kind.kind].units.values() if unit.code != home.code]
    scaled = any(unit.offset for unit in units)
    named = [unit for unit in units if scaled or _thousandfold(unit.factor / home.factor)]
    found = [Reading(unit.code, unit.factor, unit.offset) for unit in named]
    shifts = [1 / TEN, TEN] if scaled else [1 / TEN, TEN, 1 / THOUSAND, THOUSAND]
    have = {one.factor / home.factor for one in found}
    return (*found, *(Reading(DECIMAL_POINT, home.factor * shift, home.offset) for shift in shifts if not _among(shift, have)))


def _thousandfold(ratio: float) -> bool:
    return _among(ratio, {THOUSAND, 1 / THOUSAND})


def _among(ratio: float, ratios: set[float]) -> bool:
    return any(abs(ratio / one - 1) < _SAME for one in ratios)


@dataclass(frozen=True, slots=True)
class Suspect:
    """Rows in which a number cannot be right: the number (canonical) and the subjects of the checks that say so, None where not known."""

    member: str
    rows: Codes
    written: Array
    subjects: tuple[Array | None, ...]


def suspects(work: Work) -> Iterator[Suspect]:
    """The numbers of a work that cannot be right, member by member."""
    for member, doubted in work.doubted.items():
        if not isinstance(doubted, bool):
            rows = np.flatnonzero(doubted)
            columns = (work.facts.get(check.compiled.subject) for check in work.desk.suspects[member])
            subjects = tuple(column[rows] if isinstance(column, np.ndarray) else None for column in columns)
            yield Suspect(member, rows, work.records.numbers[member][rows], subjects)


def together(parts: Sequence[tuple[int, Suspect]]) -> Suspect:
    """The suspects of one member from several parts of a table, each with the row at which its part begins."""
    of_checks = zip(*(suspect.subjects for _, suspect in parts), strict=True)
    return Suspect(
        parts[0][1].member,
        np.concatenate([suspect.rows + start for start, suspect in parts]),
        np.concatenate([suspect.written for _, suspect in parts]),
        tuple(_joined(subjects, [suspect.rows.size for _, suspect in parts]) for subjects in of_checks),
    )


def _joined(subjects: Sequence[Array | None], sizes: Sequence[int]) -> Array | None:
    if all(subject is None for subject in subjects):
        return None
    return np.concatenate([np.full(size, np.nan) if one is None else one for one, size in zip(subjects, sizes, strict=True)])


def slips(work: Work) -> list[Slipped]:
    """The numbers of a work that are likely in another reading; a number that no reading makes likely is left out."""
    return [found for suspect in suspects(work) if (found := slipped(suspect, work.desk)).rows.size]


def slipped(suspect: Suspect, desk: Desk) -> Slipped:
    """The rows of a suspect in which another reading makes the number likely, the first of ``readings_of``."""
    written, home, size = suspect.written, home_of(suspect.member), suspect.rows.size
    chosen, values = np.full(size, -1, np.intp), np.full(size, np.nan)
    ranges = [_likely_range(check, desk) for check in desk.suspects[suspect.member]]
    for place, reading in enumerate(readings_of(suspect.member)):
        read = (written - home.offset) / home.factor * reading.factor + reading.offset
        likely = (chosen < 0) & _all_likely(suspect.subjects, ranges, read / written)
        chosen[likely], values[likely] = place, read[likely]
    there = chosen >= 0
    return Slipped(suspect.member, suspect.rows[there], chosen[there], values[there])


def _all_likely(subjects: Sequence[Array | None], ranges: Sequence[tuple[float, float]], ratio: Array) -> npt.NDArray[np.bool_]:
    """Where the subjects of all checks that can be answered would be likely, and there is one."""
    known, likely = np.zeros(ratio.size, bool), np.ones(ratio.size, bool)
    for subject, (low, high) in zip(subjects, ranges, strict=True):
        if subject is not None:
            here, would_be = ~np.isnan(subject), subject * ratio
            known |= here
            likely &= ~here | ((would_be >= low) & (would_be <= high))
    return known & likely


def _likely_range(check: ColumnCheck, desk: Desk) -> tuple[float, float]:
    entry = check.compiled.check
    assert entry.slip is not None
    kind = desk.figures.shelf.data.facts[check.compiled.subject].kind
    unit = unit_of(kind, entry.must.unit or KINDS[kind].canonical.code)
    low, high = (end * unit.factor + unit.offset for end in entry.slip.likely)
    return low, high
