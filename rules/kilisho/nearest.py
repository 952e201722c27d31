"""Which of the known names somebody meant who wrote another."""

from __future__ import annotations

import re
from collections.abc import Iterable
from difflib import get_close_matches

# Longer than any name here: what is longer is compared by its beginning, since comparing takes the square of the length.
LONGEST = 64


def nearest(text: str, known: Iterable[str], cutoff: float = 0.4, most: int = 3) -> list[str]:
    """At most so many known names close to ``text``, whatever its case and blanks: first those of which it is a word, then by likeness.

    ``cutoff`` is the least likeness [1], of difflib's ratio.
    """
    asked = re.sub(r"[\s-]+", "_", text[:LONGEST].strip().lower())
    lowered = {name.lower(): name for name in known}
    words = [name for name in lowered if asked in name.split("_")]
    found = dict.fromkeys([*words, *get_close_matches(asked, lowered, n=most, cutoff=cutoff)])
    return [lowered[name] for name in found][:most]
