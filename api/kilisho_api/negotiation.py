"""Which of the offered media types and languages a request admits (RFC 9110, sections 12.5.1 and 12.5.4)."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

# A header of thousands of ranges must not hold a worker; those behind these are not read.
MOST_RANGES = 100


def preferred(accept: str | None, offered: Sequence[str]) -> str | None:
    """The offered type that the caller likes best, the first offered on a tie; None when none is admitted."""
    if not accept or accept.strip() == "*/*":
        return offered[0]
    ranges = [_read_range(part) for part in accept.split(",", MOST_RANGES)[:MOST_RANGES] if part.strip()]
    weighed = [(_weight(ranges, kind), -place) for place, kind in enumerate(offered)]
    weight, place = max(weighed, default=(0.0, 0))
    return offered[-place] if weight > 0 else None


def preferred_language(accept: str, offered: Iterable[str]) -> str | None:
    """The offered language that an Accept-Language header likes best (RFC 4647, lookup): ``sw-KE`` is served by ``sw``.

    ``*`` takes the first that is offered; None when none is admitted.
    """
    ranges = [one for one in map(_read_range, accept.split(",", MOST_RANGES)[:MOST_RANGES]) if one[1] > 0]
    tags = tuple(offered)
    for name, _ in sorted(ranges, key=lambda one: -one[1]):
        found = next((tag for tag in tags if name == tag or name.startswith(f"{tag}-") or name == "*"), None)
        if found is not None:
            return found
    return None


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
