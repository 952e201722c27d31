"""Text for the log: whatever a terminal or a reader of lines would obey is written out, so that no caller can forge a line."""

from __future__ import annotations

import logging
import unicodedata
from typing import Any

# Control characters, formats such as the direction of writing, halves of a character, separators of lines and paragraphs.
_OBEYED = frozenset(("Cc", "Cf", "Cs", "Zl", "Zp"))


def escaped(text: str) -> str:
    """``text`` on one line, with ``\\n``, ``\\x1b`` and the like in the place of characters that do something."""
    if text.isascii() and text.isprintable():
        return text
    return "".join(_shown(mark) if unicodedata.category(mark) in _OBEYED else mark for mark in text)


def _shown(mark: str) -> str:
    return mark.encode("unicode_escape").decode("ascii")


class EscapingFormatter(logging.Formatter):
    """A line for each record; a traceback stands below, indented, so that none of its lines looks like a record."""

    INDENT = "    "

    def format(self, record: logging.LogRecord) -> str:
        """The record as text."""
        record.exc_text = None  # another formatter may have left its own there
        return super().format(record)

    def formatMessage(self, record: logging.LogRecord) -> str:  # noqa: N802 - the library's name
        """The line of the record: line ends in it are a caller's at worst."""
        return escaped(super().formatMessage(record))

    def formatException(self, ei: Any) -> str:  # noqa: N802 - the library's name
        """The traceback, whose own line ends stay."""
        return "\n".join(self.INDENT + escaped(line) for line in super().formatException(ei).split("\n"))
