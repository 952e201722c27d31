"""Which of the offered media types an Accept header admits (RFC 9110, section 12.5.1)."""

from __future__ import annotations

from collections.abc import Sequence


def preferred(accept: str | None, offered: Sequence[str]) -> str | None:
    """The offered type that the caller likes best, the first offered on a tie; None when none is admitted."""
    if not accept or accept.strip() == "*/*":
        return offered[0]
    ranges = [_read_range(part) for part in accept.split(",") if part.strip()]
    weighed = [(_weight(ranges, kind), -place) for place, kind in enumerate(offered)]
    weight, place = max(weighed, default=(0.0, 0))
    return offered[-place] if weight > 0 else None


def _read_range(text: str) -> tuple[str, float]:
    name, *parameters = (part.strip().lower() for part in text.split(";"))
    weight = 1.0
    for parameter in parameters:
        if parameter.startswith("q="):
            weight = _read_weight(parameter[2:])
    return name, weight


def _read_weight(text: str) -> float:
    try:
        weight = float(text)
    except ValueError:
        return 0.0
    return weight if 0.0 <= weight <= 1.0 else 0.0


def _weight(ranges: Sequence[tuple[str, float]], kind: str) -> float:
    """The weight of the most specific range that covers ``kind``, zero when none does."""
    for pattern in (kind, kind.split("/", maxsplit=1)[0] + "/*", "*/*"):
        found = [weight for name, weight in ranges if name == pattern]
        if found:
            return max(found)
    return 0.0
