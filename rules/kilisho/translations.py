"""Work on translations: what a language lacks, what is stale or not reviewed, and the mark that binds a message to its English."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from typing import Any

from pydantic import BaseModel

from kilisho.messages import DEFAULT, LANGUAGES, Language, Message
from kilisho.messages.fluent import source_of, stamp_of
from kilisho.packs import Rulebook

MESSAGE = re.compile(r"^(?P<id>[a-zA-Z][\w-]*) *=", re.MULTILINE)
MARKED = re.compile(r"^# of [0-9a-f]{8}, reviewed: (?:true|false)\n$")


def english_of(rulebook: Rulebook) -> dict[str, str]:
    """The stamp of every English message by id: those of the code, and those of the rulebook."""
    code = {name: stamp_of(source_of(entry.message)) for name, entry in LANGUAGES[DEFAULT].entries.items()}
    return {**code, **{message.id: stamp_of(str(message)) for message in _messages(rulebook.data)}}


def _messages(value: Any) -> Iterator[Message]:
    if isinstance(value, Message):
        yield value
    elif isinstance(value, BaseModel):
        for name in type(value).model_fields:
            yield from _messages(getattr(value, name))
    elif isinstance(value, dict | tuple):
        for inner in value.values() if isinstance(value, dict) else value:
            yield from _messages(inner)


def state_of(language: Language, english: Mapping[str, str]) -> dict[str, list[str]]:
    """Ids of the messages that the language lacks, whose English has changed, that nobody has reviewed, and that have no English."""
    found = language.entries
    return {
        "missing": [name for name in english if name not in found],
        "stale": [name for name, stamp in english.items() if name in found and found[name].stamp != stamp],
        "unreviewed": [
            name for name, stamp in english.items() if name in found and found[name].stamp == stamp and not found[name].reviewed
        ],
        "unknown": [name for name in found if name not in english],
    }


def stamped(text: str, english: Mapping[str, str]) -> str:
    """A message file's text with a mark above every message that has none yet, as not reviewed; marks that are there stay."""
    out: list[str] = []
    for line in text.splitlines(keepends=True):
        found = MESSAGE.match(line)
        if found and found["id"] in english and not (out and MARKED.match(out[-1])):
            out.append(f"# of {english[found['id']]}, reviewed: false\n")
        out.append(line)
    return "".join(out)
