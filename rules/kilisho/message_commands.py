"""What `kilisho messages` does for whoever translates."""

from __future__ import annotations

from argparse import Namespace
from pathlib import Path

from kilisho import packs
from kilisho.commands import OK, REFUSED, UnusableError
from kilisho.messages import DEFAULT
from kilisho.translations import english_of, stamped, state_of


def check(chosen: Namespace) -> int:
    """Print what the translations lack or have too much; 1 where a language has messages that are stale or have no English."""
    rulebook = packs.load(*chosen.packs)
    english, wrong = english_of(rulebook), False
    for tag in chosen.languages or [tag for tag in rulebook.languages if tag != DEFAULT]:
        if tag not in rulebook.languages:
            raise UnusableError(f"no language is called {tag!r}; choose {' or '.join(rulebook.languages)}")
        state = state_of(rulebook.languages[tag], english)
        print(f"{tag}: {len(english) - len(state['missing']) - len(state['stale'])} of {len(english)} messages can be used", end="")
        print("".join(f", {len(names)} {kind}" for kind, names in state.items()))
        for kind in ("missing", "stale", "unknown"):
            print("".join(f"  {kind}: {name}\n" for name in state[kind]), end="")
        wrong = wrong or bool(state["stale"] or state["unknown"])
    return REFUSED if wrong else OK


def mark(chosen: Namespace) -> int:
    """Write the mark above every message of the files that has none: of which English it is the translation, and not reviewed."""
    english = english_of(packs.load(*chosen.packs))
    for file in map(Path, chosen.files):
        try:
            file.write_text(stamped(file.read_text("utf-8"), english), "utf-8")
        except (OSError, UnicodeDecodeError) as error:
            raise UnusableError(f"{file}: {getattr(error, 'strerror', None) or 'not UTF-8 text'}") from None
    return OK
