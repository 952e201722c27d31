"""The words of a verdict: a closed set for the whole and one for each aspect, told from which checks failed and which are unknown.

Checks are bits, the most urgent lowest, so that a table of a million rows, in which the same few thousand combinations come again and
again, is judged once for each combination and by the same function as a single installation.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Literal, NamedTuple, get_args

from kilisho.check_columns import ColumnCheck
from kilisho.rulebook import Severity

Overall = Literal["danger", "doubtful", "faulty", "attention", "unknown", "sound"]
Record = Literal["doubtful", "possible"]
Size = Literal["too_small", "too_large", "unknown", "fitting"]
Feeding = Literal["starved", "too_wet", "too_dry", "overfed", "too_seldom", "unknown", "fitting"]
Gas = Literal["below", "low", "above", "not_measured", "unknown", "inside"]
Safety = Literal["danger", "open", "clear"]
REFUSED = "refused"


class Verdicts(NamedTuple):
    """One word for the installation, and one for each aspect."""

    verdict: str
    record: str
    size: str
    feeding: str
    gas: str
    safety: str


# The words of each aspect, the first that a failed check finds first; then the one where a check cannot be answered, then the good one.
ASPECTS: dict[str, tuple[str, ...]] = {
    "record": get_args(Record),
    "size": get_args(Size),
    "feeding": get_args(Feeding),
    "gas": get_args(Gas),
}
WORDS: dict[str, tuple[str, ...]] = {"verdict": (*get_args(Overall), REFUSED), **ASPECTS, "safety": get_args(Safety)}
FAULTS = frozenset({"too_small", "too_large", "starved", "too_wet", "too_dry", "overfed", "too_seldom", "below"})
UNKNOWN = "unknown"


class Judge:
    """Tells verdicts from bits of checks."""

    def __init__(self, checks: Sequence[ColumnCheck]) -> None:
        self.checks = checks
        found = [check.compiled.check.finds for check in checks]
        words = {word for words in ASPECTS.values() for word in words}
        self._finding = {word: _bits(one == word for one in found) for word in words}
        self._asking = {aspect: sum(self._finding[word] for word in words) for aspect, words in ASPECTS.items()}
        severities = [check.compiled.severity for check in checks]
        self.danger = _bits(severity is Severity.danger for severity in severities)
        self._attention = _bits(severity in (Severity.warning, Severity.caution) for severity in severities)

    def judge(self, failed: int, unknown: int) -> Verdicts:
        """The verdicts where the checks of these bits failed and cannot be answered."""
        aspects = {aspect: self._aspect(aspect, failed, unknown) for aspect in ASPECTS}
        safety = "danger" if failed & self.danger else "open" if unknown & self.danger else "clear"
        return Verdicts(self._overall(failed, unknown, aspects, safety), **aspects, safety=safety)

    def _aspect(self, aspect: str, failed: int, unknown: int) -> str:
        *words, good = ASPECTS[aspect]
        word = next((word for word in words if failed & self._finding[word]), None)
        if word is not None:
            return word
        # A record is possible as far as it goes: what it does not state cannot be wrong in it.
        return UNKNOWN if UNKNOWN in words and unknown & self._asking[aspect] else good

    def _overall(self, failed: int, unknown: int, aspects: dict[str, str], safety: str) -> str:
        if safety == "danger":
            return "danger"
        if aspects["record"] == "doubtful":
            return "doubtful"
        if FAULTS.intersection(aspects.values()):
            return "faulty"
        if failed & self._attention:
            return "attention"
        return UNKNOWN if unknown else "sound"


def _bits(chosen: Iterable[bool]) -> int:
    return sum(1 << place for place, one in enumerate(chosen) if one)


def places(bits: int) -> list[int]:
    """The places of the bits that are set, the lowest first."""
    found = []
    while bits:
        lowest = bits & -bits
        found.append(lowest.bit_length() - 1)
        bits ^= lowest
    return found
