"""What a message can take as a parameter beside plain text, other messages and whole numbers (which choose a plural)."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import Any


@dataclass(frozen=True, slots=True)
class Number:
    """A number, with three digits that mean something or with a stated count of decimals."""

    value: float
    decimals: int | None = None


@dataclass(frozen=True, slots=True)
class Amount:
    """A number with its UCUM unit and, where it is uncertain, the ends of its range."""

    value: float
    unit: str
    low: float | None = None
    high: float | None = None
    decimals: int | None = None

    @classmethod
    def of(cls, told: Mapping[str, Any]) -> Amount:
        """An amount as an answer tells it, with its range."""
        return cls(told["value"], told["unit"], told.get("low"), told.get("high"))


@dataclass(frozen=True, slots=True)
class Day:
    """A day of the calendar, told with its weekday."""

    date: dt.date


@dataclass(frozen=True, slots=True)
class Listed:
    """Several texts or messages in a row, parted by semicolons."""

    items: Sequence[str]


Parameter = str | int | Decimal | Number | Amount | Day | Listed
