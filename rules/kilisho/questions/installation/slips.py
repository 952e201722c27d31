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
from kilisho.questions.installation.work import Work
from kilisho.units import KINDS, Unit, unit_of

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


def slips(work: Work) -> Iterator[Slipped]:
    """The numbers that are likely in another reading, member by member; a number that no reading makes likely is left out."""
    for member, doubted in work.doubted.items():
        if not isinstance(doubted, bool):
            rows = np.flatnonzero(doubted)
            found = _likely(work, member, rows)
            if found.rows.size:
                yield found


def _likely(work: Work, member: str, rows: Codes) -> Slipped:
    written, home = work.records.numbers[member][rows], home_of(member)
    chosen, values = np.full(rows.size, -1, np.intp), np.full(rows.size, np.nan)
    for place, reading in enumerate(readings_of(member)):
        read = (written - home.offset) / home.factor * reading.factor + reading.offset
        likely = (chosen < 0) & _all_likely(work, work.desk.suspects[member], rows, read / written)
        chosen[likely], values[likely] = place, read[likely]
    there = chosen >= 0
    return Slipped(member, rows[there], chosen[there], values[there])


def _all_likely(work: Work, checks: Sequence[ColumnCheck], rows: Codes, ratio: Array) -> npt.NDArray[np.bool_]:
    """Where the subjects of all checks that can be answered would be likely, and there is one."""
    known, likely = np.zeros(rows.size, bool), np.ones(rows.size, bool)
    for check in checks:
        column = work.facts.get(check.compiled.subject)
        if not isinstance(column, np.ndarray):
            continue
        subject, (low, high) = column[rows] * ratio, _likely_range(work, check)
        here = ~np.isnan(subject)
        known |= here
        likely &= ~here | ((subject >= low) & (subject <= high))
    return known & likely


def _likely_range(work: Work, check: ColumnCheck) -> tuple[float, float]:
    entry = check.compiled.check
    assert entry.slip is not None
    kind = work.desk.figures.shelf.data.facts[check.compiled.subject].kind
    unit = unit_of(kind, entry.must.unit or KINDS[kind].canonical.code)
    low, high = (end * unit.factor + unit.offset for end in entry.slip.likely)
    return low, high
