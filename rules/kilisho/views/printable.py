"""Text of a caller as every format may hold it."""

from __future__ import annotations

import unicodedata


def printable(text: str) -> str:
    """``text`` without control characters, which neither calendars nor drawings may hold; each becomes a blank."""
    return "".join(" " if unicodedata.category(mark) in {"Cc", "Cs"} or mark in "\ufffe\uffff" else mark for mark in text)
