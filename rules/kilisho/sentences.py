"""The sentences of a rulebook as messages, so that an answer that carries one can be told in another language."""

from __future__ import annotations

from typing import Any

from pydantic import BaseModel

from kilisho.messages import Message
from kilisho.rulebook import RulebookData

# Fields that answers pass on. Notes, sources and descriptions of figures are evidence for whoever checks the rulebook: they stay English.
FIELDS = frozenset({"name", "title", "text", "why", "do", "seen", "how", "remedy", "description", "handling"})
EVIDENCE = frozenset({"pack", "sources", "process"})
FIGURES = frozenset({"figures", "curves"})


def with_messages(data: RulebookData) -> RulebookData:
    """``data`` itself, its sentences turned into messages with the path of the field as id: ``checks-distance_to_well-why``.

    Done once, before anybody else holds the data; lists count from 1.
    """
    for section in type(data).model_fields:
        if section not in EVIDENCE:
            _renew(section, getattr(data, section))
    return data


def _renew(path: str, value: Any) -> None:
    if isinstance(value, BaseModel):
        for name in type(value).model_fields:
            _renew_field(f"{path}-{name}", name, value)
    elif isinstance(value, dict):
        for name, entry in value.items():
            _renew(f"{path}-{name}", entry)
    elif isinstance(value, tuple):
        for place, entry in enumerate(value, start=1):
            _renew(f"{path}-{place}", entry)


def _renew_field(path: str, name: str, entry: BaseModel) -> None:
    value = getattr(entry, name)
    if name in FIELDS and isinstance(value, str):
        entry.__dict__[name] = Message(value, path)
    elif name in FIELDS and isinstance(value, tuple):
        entry.__dict__[name] = tuple(Message(text, f"{path}-{place}") for place, text in enumerate(value, start=1))
    elif name not in FIGURES:
        _renew(path, value)
