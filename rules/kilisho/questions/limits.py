"""How much one request may ask for: what whoever serves the questions may set, since it decides how long an answer takes."""

from __future__ import annotations

from dataclasses import dataclass, field, fields
from typing import Any


def _limit(default: int, least: int, most: int) -> Any:
    return field(default=default, metadata={"range": (least, most)})


@dataclass(frozen=True)
class Limits:
    """The limits in force; a form that needs one is a function of them. Raises ValueError outside a limit's own range.

    forecast_days : days that a forecast may cover, 1 to 3660 (ten years).
    """

    forecast_days: int = _limit(1098, 1, 3660)

    def __post_init__(self) -> None:
        for item in fields(self):
            least, most = range_of(item.name)
            if not least <= getattr(self, item.name) <= most:
                raise ValueError(f"{item.name} must be at least {least} and at most {most}")


def range_of(name: str) -> tuple[int, int]:
    """The least and the most that the limit ``name`` may be set to."""
    found: tuple[int, int] = Limits.__dataclass_fields__[name].metadata["range"]
    return found


DEFAULTS = Limits()
