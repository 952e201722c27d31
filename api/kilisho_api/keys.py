"""API keys: random, shown once, and known to the service only by their digests.

A key has 256 random bits, so nobody can guess it from its digest, and a plain SHA-256 does what passwords need slow hashes for.
"""

from __future__ import annotations

import hashlib
import hmac
import re
import secrets
from dataclasses import dataclass, field
from pathlib import Path

# The beginning tells whoever finds a key, or a scanner of leaked secrets, what it opens.
PREFIX = "kilisho_"
BYTES = 32
NAME = re.compile(r"[a-z0-9][a-z0-9_.-]{0,63}")
_LINE = re.compile(rf"({NAME.pattern}):([0-9a-f]{{64}})")


@dataclass(frozen=True)
class Keys:
    """Who may ask: the SHA-256 of each key by the name of its holder."""

    digests: dict[str, str] = field(repr=False)

    def holder(self, key: str) -> str | None:
        """The name of whoever holds ``key``. All are compared, each in constant time, so that no time tells how near a guess was."""
        shown = digest_of(key)
        names = [name for name, digest in self.digests.items() if hmac.compare_digest(shown, digest)]
        return names[0] if names else None


def new_key() -> str:
    """A key that nobody has had before."""
    return PREFIX + secrets.token_urlsafe(BYTES)


def digest_of(key: str) -> str:
    """What is kept of a key: its SHA-256 in hexadecimal."""
    return hashlib.sha256(key.encode()).hexdigest()


def line_of(name: str, key: str) -> str:
    """The line of the file of keys for ``key``."""
    return f"{name}:{digest_of(key)}"


def read_keys(path: str) -> Keys:
    """The keys in a file: a line ``name:digest`` each; empty lines and lines after ``#`` are passed over.

    Raises ValueError with what was expected, and never with what the file holds: it may be a key that was put there by mistake.
    """
    digests = dict[str, str]()
    for number, line in _lines(path):
        found = _LINE.fullmatch(line)
        if found is None or found[1] in digests:
            raise ValueError(f"a file of lines name:digest, each name once, as `kilisho keys new NAME` prints them; see its line {number}")
        digests[found[1]] = found[2]
    if not digests:
        raise ValueError("a file with at least one line name:digest; leave the setting out to let everybody ask")
    return Keys(digests)


def _lines(path: str) -> list[tuple[int, str]]:
    try:
        text = Path(path).read_text("utf-8")
    except (OSError, ValueError):
        raise ValueError("a file that can be read as UTF-8 text") from None
    lines = ((number, line.strip()) for number, line in enumerate(text.splitlines(), start=1))
    return [(number, line) for number, line in lines if line and not line.startswith("#")]
