"""Tells a finished answer in another language."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from kilisho.messages.amounts import Listed
from kilisho.messages.fluent import Entry
from kilisho.messages.languages import DEFAULT, Language
from kilisho.messages.message import Message

DANGER = "danger"
Answer = dict[str, Any]


def told_in(language: Language, answer: Mapping[str, Any]) -> Answer:
    """``answer`` with every message in ``language``; ids, numbers and what the caller wrote stay as they are.

    It gains ``language``: the tag, whether speakers have reviewed every translation that was used, and how many sentences are English for
    want of one. An entry of danger level carries its sentences under ``english`` too, as long as one of them was not reviewed.
    """
    if language.tag == DEFAULT:
        return {**answer, "language": {"tag": DEFAULT, "reviewed": True, "untranslated": 0}}
    telling = _Telling(language)
    told = telling.entry(answer)
    return {**told, "language": {"tag": language.tag, "reviewed": telling.unreviewed == 0, "untranslated": telling.untranslated}}


class _Telling:
    """Walks through an answer and counts what it could not tell, and what nobody has reviewed."""

    def __init__(self, language: Language) -> None:
        self.language, self.unreviewed, self.untranslated = language, 0, 0

    def value(self, value: Any) -> Any:
        kind = type(value)
        if kind is Message:
            return self.text(value)
        if kind is dict:
            return self.entry(value)
        return [self.value(one) for one in value] if kind in (list, tuple) else value

    def entry(self, entry: Mapping[str, Any]) -> Answer:
        before = self.unreviewed
        told = {name: self.value(value) for name, value in entry.items()}
        if DANGER in (entry.get("signal"), entry.get("severity")) and self.unreviewed > before:
            told["english"] = {name: str(value) for name, value in entry.items() if type(value) is Message}
        return told

    def text(self, message: Message) -> str:
        told, found = self.language.tell(message)
        self._count(message, found)
        return told

    def _count(self, message: Message, found: Entry | None) -> None:
        """Counts a message, and where it was told in the language those that it holds too; untold it is English as a whole."""
        if found is None:
            self.untranslated += 1
            return
        self.unreviewed += not found.reviewed
        for inner in _within(message):
            self._count(inner, self.language.entry_of(inner))


def _within(message: Message) -> Iterator[Message]:
    """The messages among a message's parameters."""
    for value in message.parameters.values():
        yield from (one for one in (value.items if isinstance(value, Listed) else (value,)) if isinstance(one, Message))
