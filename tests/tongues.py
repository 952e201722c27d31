"""A language made up for tests: the English of every sentence, stretched word by word, as a translation that nobody reviewed."""

from __future__ import annotations

import math
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any

from fluent.syntax import FluentParser, ast
from fluent.syntax.serializer import serialize_pattern
from fluent.syntax.visitor import Transformer
from pydantic import BaseModel

from kilisho.messages import DEFAULT, LANGUAGES, Language, Message
from kilisho.messages.fluent import source_of, stamp_of
from kilisho.packs import load

# Kiswahili is about a fifth longer than English.
LONGER = 0.2


def stretched(text: str) -> str:
    """Longer words at the same blanks: the last letters of each once more."""
    return re.sub(r"[^\W\d_]{3,}", lambda found: found[0] + found[0][-math.ceil(len(found[0]) * LONGER) :], text)


class _Stretch(Transformer):
    def visit_TextElement(self, node: ast.TextElement) -> ast.TextElement:
        return ast.TextElement(stretched(node.value))


def entry(name: str, english: str) -> str:
    """A stretched sentence as a file of translations has it."""
    message = FluentParser().parse_entry(f"{name} = {english}\n")
    assert isinstance(message, ast.Message), english
    assert message.value is not None
    return f"# of {stamp_of(english)}, reviewed: false\n{name} = {serialize_pattern(_Stretch().visit(message.value)).strip()}\n"


def sentences() -> Iterator[tuple[str, str]]:
    """Every English sentence by id: the code's as the sources of their patterns, the base rulebook's as they are."""
    yield from ((name, source_of(one.message)) for name, one in LANGUAGES[DEFAULT].entries.items())
    yield from ((one.id, str(one)) for one in _messages(load().data))


def _messages(value: Any) -> Iterator[Message]:
    if isinstance(value, Message):
        yield value
    elif isinstance(value, BaseModel):
        yield from _messages(tuple(getattr(value, name) for name in type(value).model_fields))
    elif isinstance(value, dict | tuple):
        for inner in value.values() if isinstance(value, dict) else value:
            yield from _messages(inner)


@cache
def stretched_language(folder: Path, tag: str = "sw") -> Language:
    """The language ``tag`` with every sentence of code and base rulebook in stretched English; its file is written into ``folder``."""
    file = folder / f"stretched.{tag}.ftl"
    file.write_text("".join(entry(name, english) for name, english in sentences()), "utf-8")
    return Language(tag, (file,))
