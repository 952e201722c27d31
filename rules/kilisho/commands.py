"""What the commands of :mod:`kilisho.cli` do, once their words are read. Each returns an exit code."""

from __future__ import annotations

import sys
from argparse import Namespace
from collections.abc import Mapping, Sequence
from pathlib import Path

from pydantic import BaseModel
from pydantic_core import to_json

from kilisho import packs
from kilisho.faults import Fault, MalformedError, RefusedError
from kilisho.nearest import nearest
from kilisho.questions import Question, open_questions
from kilisho.questions.asking import parse

OK, REFUSED, UNUSABLE = 0, 1, 2
JSON = "application/json"
LARGEST_REQUEST = 1_000_000


class UnusableError(Exception):
    """The user's mistake outside the request itself: shown as it is, exit code 2."""


def ask(chosen: Namespace) -> int:
    """Answer the request in a file."""
    question = _question(chosen)
    try:
        written = _written(question, question.read(parse(_read(chosen.file))), chosen)
    except MalformedError as error:
        return fail(REFUSED, str(error))
    except RefusedError as error:
        return fail(REFUSED, *map(_line, error.faults))
    sys.stdout.buffer.write(written)
    return OK


def _question(chosen: Namespace) -> Question:
    questions = _questions(chosen.packs)
    question = questions.get(chosen.operation)
    if question is None:
        meant = nearest(chosen.operation, questions, 0.6) or list(questions)
        raise UnusableError(f"no operation is called {chosen.operation!r}; did you mean {' or '.join(meant)}?")
    offers = (JSON, *question.representations)
    if chosen.accept not in offers:
        raise UnusableError(f"{question.name} is not written as {chosen.accept!r}; choose {' or '.join(offers)}")
    if chosen.language not in question.languages:
        raise UnusableError(f"no language is called {chosen.language!r}; choose {' or '.join(question.languages)}")
    return question


def _written(question: Question, asked: BaseModel, chosen: Namespace) -> bytes:
    if chosen.accept != JSON:
        return question.write(asked, chosen.explain, chosen.accept, chosen.language).encode()
    return to_json(question.tell(asked, chosen.explain, chosen.language), indent=2 if chosen.pretty else None) + b"\n"


def operations(chosen: Namespace) -> int:
    """List the questions."""
    questions = _questions(chosen.packs)
    widest = max(map(len, questions))
    for name, question in questions.items():
        print(f"{name:{widest}}  {question.title}")
    return OK


def check(chosen: Namespace) -> int:
    """Print what is wrong with packs, a line for each fault."""
    faults = packs.check(*chosen.files)
    for fault in faults:
        print(fault)
    return REFUSED if faults else OK


def show(chosen: Namespace) -> int:
    """Print what the rulebook is."""
    rulebook = packs.load(*chosen.packs)
    for name, value in rulebook.identity.items():
        print(f"{name}: {value}")
    for section in type(rulebook.data).model_fields:
        entries = getattr(rulebook.data, section)
        if isinstance(entries, dict):
            print(f"{section}: {len(entries)}")
    return OK


def _questions(layers: Sequence[str]) -> Mapping[str, Question]:
    return open_questions(packs.load(*layers))


def _read(file: str) -> bytes:
    try:
        with sys.stdin.buffer if file == "-" else Path(file).open("rb") as stream:
            body = stream.read(LARGEST_REQUEST + 1)
    except (OSError, ValueError) as error:
        raise UnusableError(f"{file}: {getattr(error, 'strerror', None) or 'not a file name'}") from None
    if len(body) > LARGEST_REQUEST:
        raise UnusableError(f"{file}: more than {LARGEST_REQUEST} bytes")
    try:
        body.decode()
    except UnicodeDecodeError:
        raise UnusableError(f"{file}: not UTF-8 text") from None
    return body


def _line(fault: Fault) -> str:
    nearest = f" (nearest: {', '.join(fault.nearest)})" if fault.nearest else ""
    return f"{fault.pointer or '/'}: {fault.detail}{nearest}"


def fail(code: int, *lines: str) -> int:
    """Print ``lines`` as an error and return ``code``."""
    for line in lines:
        print(line, file=sys.stderr)
    return code
