"""Ids, amounts and dates as people read them."""

from __future__ import annotations

import unicodedata


def in_words(id_: str) -> str:
    """An id as words: ``flame_test`` is "Flame test"."""
    return id_.replace("_", " ").capitalize()


def printable(text: str) -> str:
    """``text`` without control characters, which neither calendars nor drawings may hold; each becomes a blank."""
    return "".join(" " if unicodedata.category(mark) in {"Cc", "Cs"} or mark in "\ufffe\uffff" else mark for mark in text)
