"""Text for the log: whatever a terminal or a reader of lines would obey is written out, so that no caller can forge a line."""

from __future__ import annotations

import unicodedata

# Control characters, formats such as the direction of writing, halves of a character, separators of lines and paragraphs.
_OBEYED = frozenset(("Cc", "Cf", "Cs", "Zl", "Zp"))


def escaped(text: str) -> str:
    """``text`` on one line, with ``\\n``, ``\\x1b`` and the like in the place of characters that do something."""
    if text.isascii() and text.isprintable():
        return text
    return "".join(_shown(mark) if unicodedata.category(mark) in _OBEYED else mark for mark in text)


def _shown(mark: str) -> str:
    return mark.encode("unicode_escape").decode("ascii")
