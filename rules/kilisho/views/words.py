"""Ids, amounts and dates as people read them."""

from __future__ import annotations

import datetime as dt
import math
import unicodedata
from collections.abc import Mapping
from typing import Any

Amount = Mapping[str, Any]
SIGNIFICANT = 3
WEEKDAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
UNITS = {
    "1": "",
    "Cel": "°C",
    "a": "years",
    "d": "days",
    "h": "hours",
    "har": "ha",
    "kg/d": "kg a day",
    "kg/m3/d": "kg/m³ a day",
    "L/d": "L a day",
    "m3": "m³",
    "m3/d": "m³ a day",
    "mg/L": "mg/L",
}

COUNTED = {"days", "hours", "years"}


def in_words(id_: str) -> str:
    """An id as words: ``flame_test`` is "Flame test"."""
    return id_.replace("_", " ").capitalize()


def printable(text: str) -> str:
    """``text`` without control characters, which neither calendars nor drawings may hold; each becomes a blank."""
    return "".join(" " if unicodedata.category(mark) in {"Cc", "Cs"} or mark in "\ufffe\uffff" else mark for mark in text)


def number(value: float) -> str:
    """A finite number with at most three digits that mean something: 3556.9 is "3,560", 0.98672 is "0.987"."""
    if value == 0:
        return "0"
    decimals = SIGNIFICANT - 1 - math.floor(math.log10(abs(value)))
    text = f"{round(value, decimals):,.{max(decimals, 0)}f}"
    text = text.rstrip("0").rstrip(".") if "." in text else text
    return "0" if text == "-0" else text


def unit(code: str) -> str:
    """A UCUM code as the trade writes it."""
    return UNITS.get(code, code)


def amount(told: Amount) -> str:
    """An amount with its unit: "3,560 kg", "1 day"."""
    shown, name = number(told["value"]), unit(told["unit"])
    return f"{shown} {name.removesuffix('s') if shown == '1' and name in COUNTED else name}".rstrip()


def amount_range(told: Amount) -> str:
    """An amount with its range where it is uncertain: "34 days (22 to 46)"."""
    low, high = told.get("low"), told.get("high")
    if low is None or high is None or number(low) == number(high):
        return amount(told)
    return f"{amount(told)} ({number(low)} to {number(high)})"


def long_date(day: str) -> str:
    """An ISO date with its weekday: "Wed 3 Feb 2027"."""
    read = dt.date.fromisoformat(day)
    return f"{WEEKDAYS[read.weekday()]} {read.day} {MONTHS[read.month - 1]} {read.year}"
