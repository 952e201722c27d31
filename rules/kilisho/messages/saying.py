"""Says a sentence of the code."""

from __future__ import annotations

from functools import cache, reduce

from kilisho.messages.amounts import Parameter
from kilisho.messages.languages import DEFAULT, LANGUAGES
from kilisho.messages.message import Message


def say(name: str, /, **parameters: Parameter) -> Message:
    """The English message ``name`` of ``en/*.ftl``; raises KeyError for one that is not there, ValueError for a missing parameter."""
    return Message(LANGUAGES[DEFAULT].say(name, **parameters), name, parameters) if parameters else _plain(name)


@cache
def _plain(name: str) -> Message:
    return Message(LANGUAGES[DEFAULT].say(name), name)


def in_a_row(*sentences: Message) -> Message:
    """At least one whole sentence, one after the other, as one message."""
    return reduce(lambda before, after: say("sentences-2", first=before, second=after), sentences)
