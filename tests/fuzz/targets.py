"""What fuzzing feeds: each target takes bytes, and whatever it raises beyond a refusal is a fault of ours.

``tests/fuzz/run.py`` drives them with coverage, ``tests/fuzz/test_fuzz.py`` for a short while with a fixed seed, and the corpus once
without any fuzzer.
"""

from __future__ import annotations

import asyncio
import contextlib
import tempfile
from collections.abc import Callable, Mapping
from functools import cache
from pathlib import Path
from typing import Any
from urllib.parse import unquote_to_bytes

from kilisho import packs
from kilisho.faults import MalformedError, RefusedError
from kilisho.messages import LANGUAGES, told_in
from kilisho.messages.fluent import MessageFileError, read, source_of
from kilisho.questions import Limits, Question, open_questions
from kilisho.questions.asking import parse
from kilisho_api.app import assemble
from kilisho_api.buckets import Rate
from kilisho_api.conditional import unchanged
from kilisho_api.encoding import encode
from kilisho_api.http_rules import read_query
from kilisho_api.negotiation import preferred, preferred_language
from kilisho_api.problems import PROBLEM_JSON, ProblemError
from kilisho_api.settings import Settings

REFUSALS = (MalformedError, RefusedError, packs.PackError, MessageFileError, ProblemError)
# A year of the process model takes a quarter of a second: much less shows as much.
SHORT = Limits(forecast_days=40)
KNOWN_QUERY = ("explain",)
Headers = list[tuple[bytes, bytes]]


@cache
def questions() -> Mapping[str, Question]:
    """Every question over the base pack, the slow ones made short."""
    return open_questions(packs.load(), SHORT)


def bodies(data: bytes) -> None:
    """``first-charge``, a line's end, a body: asked, and the answer written in each media type and told in each language."""
    name, _, body = data.partition(b"\n")
    question = questions().get(name.decode("latin-1"))
    with contextlib.suppress(*REFUSALS):
        if question is not None:
            _tell(question, question.answer(question.read(parse(body)), True))


def _tell(question: Question, answer: dict[str, Any]) -> None:
    for language in question.languages.values():
        encode(told_in(language, answer))
        for write in question.representations.values():
            with contextlib.suppress(RefusedError):
                write(answer, language)


def pack_files(data: bytes) -> None:
    """A pack's YAML, laid over the base pack; the base pack itself is parsed once."""
    with _written(data, "pack.yaml") as file, contextlib.suppress(*REFUSALS):
        _with_base_read_once()
        packs.load(file)


@cache
def _with_base_read_once() -> None:
    """The base pack's files are parsed once: they are ours, and reading them takes ten times as long as the fuzzed one."""
    fresh, kept = packs._read, dict[Path, Any]()

    def reading(file: Path, shown: str) -> Any:
        if file.parent != packs.BASE_PACK:
            return fresh(file, shown)
        return kept.get(file) or kept.setdefault(file, fresh(file, shown))

    packs._read = reading


def message_files(data: bytes) -> None:
    """A file of messages beside a pack."""
    with _written(data, "pack.sw.ftl") as file, contextlib.suppress(*REFUSALS):
        for _, entry in read([file]):
            source_of(entry.message)


@contextlib.contextmanager
def _written(data: bytes, name: str) -> Any:
    with tempfile.TemporaryDirectory(dir=_memory()) as folder:
        file = Path(folder) / name
        file.write_bytes(data)
        yield file


@cache
def _memory() -> Path | None:
    found = Path("/dev/shm")
    return found if found.is_dir() else None


def header_values(data: bytes) -> None:
    """Accept, Accept-Language, If-None-Match and the query, each read from the same bytes."""
    text = data.decode("latin-1")
    chosen = preferred(text, ("application/json", "text/html", "text/csv"))
    assert chosen in (None, "application/json", "text/html", "text/csv")
    assert preferred_language(text, LANGUAGES) in (None, *LANGUAGES)
    unchanged(text, '"0"')
    with contextlib.suppress(*REFUSALS):
        read_query(data, KNOWN_QUERY)


@cache
def service() -> Any:
    """The whole service, quick questions only: a slow one would be answered in a thread, whose coverage nobody sees."""
    rulebook = packs.load()
    quick = {name: question for name, question in questions().items() if not question.slow}
    return assemble(Settings(rate_limit=Rate(1_000_000, 1)), rulebook, quick)


def requests(data: bytes) -> None:
    """A request line, headers a line each, an empty line and a body, answered by the whole service: never with a failure of ours."""
    head, _, body = data.partition(b"\n\n")
    line, *lines = head.split(b"\n")
    method, _, target = line.partition(b" ")
    status, headers, told = asyncio.run(exchange(service(), method, target, [_header(one) for one in lines], body))
    assert status < 500, (status, told)
    assert dict(headers)[b"x-content-type-options"] == b"nosniff"
    assert status < 400 or method == b"HEAD" or dict(headers)[b"content-type"] == PROBLEM_JSON.encode()


def _header(line: bytes) -> tuple[bytes, bytes]:
    name, _, value = line.partition(b":")
    return name.strip().lower(), value.strip()


async def exchange(app: Any, method: bytes, target: bytes, headers: Headers, body: bytes) -> tuple[int, Headers, bytes]:
    """Status, headers and body of the answer to one request, as the server would hand it over."""
    path, _, query = target.partition(b"?")
    scope = {
        "type": "http",
        "asgi": {"version": "3.0"},
        "http_version": "1.1",
        "method": method.decode("ascii", "replace").upper(),
        "scheme": "http",
        # As uvicorn does it: percent signs undone, and what is no UTF-8 replaced.
        "path": unquote_to_bytes(path).decode("utf-8", "replace") or "/",
        "raw_path": path,
        "query_string": query,
        "root_path": "",
        "headers": headers,
        "client": ("127.0.0.1", 1),
        "server": ("127.0.0.1", 8080),
    }
    sent, waiting = list[Any](), [{"type": "http.request", "body": body, "more_body": False}]

    async def receive() -> Any:
        return waiting.pop() if waiting else {"type": "http.disconnect"}

    async def send(message: Any) -> None:
        sent.append(message)

    await app(scope, receive, send)
    return sent[0]["status"], list(sent[0]["headers"]), b"".join(part.get("body", b"") for part in sent[1:])


TARGETS: Mapping[str, Callable[[bytes], None]] = {
    "bodies": bodies,
    "packs": pack_files,
    "messages": message_files,
    "headers": header_values,
    "requests": requests,
}
