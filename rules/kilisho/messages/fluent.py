"""Reads message files: Fluent, with one comment above each translated message.

The comment says of which English the message is a translation and whether a speaker has read it::

    # of 3f2a9c1e, reviewed: false
    sheet-notes = Vidokezo

``3f2a9c1e`` is :func:`stamp_of` the English. Once the English changes, the translation is stale and is not used any more.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources.abc import Traversable
from pathlib import Path

from fluent.runtime import FluentResource
from fluent.syntax import ast
from fluent.syntax.serializer import serialize_pattern
from fluent.syntax.visitor import Visitor

MARK = re.compile(r"of ([0-9a-f]{8}), reviewed: (true|false)")
# A language as a whole: two or three letters, no region and no script.
TAG = re.compile(r"[a-z]{2,3}")
File = Path | Traversable


class MessageFileError(ValueError):
    """A message file cannot be used: which file, and what was expected of it."""

    def __init__(self, file: File, expected: str) -> None:
        self.file, self.expected = str(file), expected
        super().__init__(f"{file}: {expected}")


@dataclass(frozen=True, slots=True)
class Entry:
    """One message of a file: its pattern, the stamp of the English that it translates (none in English), and whether it was reviewed."""

    message: ast.Message
    stamp: str | None
    reviewed: bool


@lru_cache(maxsize=4096)
def stamp_of(english: str) -> str:
    """Eight hexadecimal digits that stand for an English text or the source of an English pattern."""
    return hashlib.sha256(english.encode()).hexdigest()[:8]


def source_of(message: ast.Message) -> str:
    """The source of a message's pattern, as its stamp is taken of."""
    return serialize_pattern(message.value).strip() if message.value else ""


class _References(Visitor):
    def __init__(self) -> None:
        self.found: set[str] = set()

    def visit_VariableReference(self, node: ast.VariableReference) -> None:  # noqa: N802 - named after the node
        self.found.add(f"${node.id.name}")

    def other(self, node: ast.TermReference | ast.MessageReference | ast.FunctionReference) -> None:
        self.found.add(node.id.name)
        self.generic_visit(node)

    visit_TermReference = visit_MessageReference = visit_FunctionReference = other  # noqa: N815 - named after the nodes


def references_of(message: ast.Message) -> frozenset[str]:
    """What the braces of a message refer to: parameters as ``$count``; terms, functions and other messages by their names."""
    references = _References()
    for part in message.value.elements if message.value else ():
        references.visit(part)
    return frozenset(references.found)


def read(files: Iterable[File]) -> Iterator[tuple[str, Entry]]:
    """The messages of ``files`` by id; raises :class:`MessageFileError` where one is no Fluent."""
    for file in files:
        for item in FluentResource(_text(file)).body:
            if isinstance(item, ast.Junk):
                raise MessageFileError(file, f"Fluent messages; reading stopped at {(item.content or '').strip()[:80]!r}")
            if isinstance(item, ast.Message):
                yield item.id.name, _entry(item)


def _text(file: File) -> str:
    try:
        return file.read_text("utf-8")
    except UnicodeDecodeError:
        raise MessageFileError(file, "UTF-8 text") from None


def beside(pack: Path) -> Iterator[tuple[str, Path]]:
    """The message files beside a pack's YAML, by language: ``my-region.sw.ftl`` beside ``my-region.yaml``, or in a pack's folder."""
    for file in message_files(pack):
        tag = file.stem.rpartition(".")[2]
        if not TAG.fullmatch(tag):
            raise MessageFileError(file, "a name that ends in a language, such as my-region.sw.ftl")
        yield tag, file


def message_files(pack: Path) -> list[Path]:
    """The message files beside a pack's YAML, whatever language their names may end in; no dot files, which editors leave."""
    folder = pack if pack.is_dir() else pack.parent
    found = sorted(file for file in folder.glob("*.ftl") if not file.name.startswith("."))
    return [file for file in found if pack.is_dir() or file.stem.rpartition(".")[0] == pack.stem]


def _entry(message: ast.Message) -> Entry:
    mark = MARK.search(message.comment.content or "") if message.comment else None
    return Entry(message, mark[1] if mark else None, bool(mark) and mark[2] == "true")  # type: ignore[index]
