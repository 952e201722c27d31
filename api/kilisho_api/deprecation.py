"""What of the contract will go: one table, which adds headers to answers (RFC 9745, RFC 8594) and ``deprecated`` to the contract.

An entry is made when there is something better, and stays until its sunset, at least :data:`NOTICE` after it was made. Only then may the
operation or member go, and only under a new address (/v2).
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from email.utils import format_datetime
from typing import Any

from kilisho_api.layers import App, Receive, Scope, Send, adding

NOTICE = timedelta(days=365)
POLICY = "/docs#versions"
Part = dict[str, Any]


@dataclass(frozen=True)
class Deprecation:
    """An operation that will go, or where ``member`` names one, a member of the requests or answers of that operation.

    ``path`` is as in the contract, with its parameters in braces. ``member`` is a schema of the contract and one of its properties,
    ``Digester.depth``. ``since`` and ``sunset`` are days (UTC). ``instead`` says what to use.
    """

    method: str
    path: str
    since: date
    sunset: date
    instead: str
    member: str = ""

    def __post_init__(self) -> None:
        if self.sunset - self.since < NOTICE:
            raise ValueError(f"{self.method} {self.path} {self.member}: at least {NOTICE.days} days lie between deprecation and sunset")

    @property
    def headers(self) -> list[tuple[bytes, bytes]]:
        """The headers of every answer of the operation."""
        since, sunset = (datetime.combine(day, time(), UTC) for day in (self.since, self.sunset))
        links = f'<{POLICY}>; rel="deprecation"; type="text/html", <{POLICY}>; rel="sunset"; type="text/html"'
        return [
            (b"deprecation", f"@{int(since.timestamp())}".encode()),
            (b"sunset", format_datetime(sunset, usegmt=True).encode()),
            (b"link", links.encode()),
        ]

    def concerns(self, method: str, path: str) -> bool:
        """Is this a request to the operation?"""
        pattern = re.sub(r"\\\{\w+\\\}", "[^/]+", re.escape(self.path))
        return method in (self.method, "HEAD" if self.method == "GET" else "") and re.fullmatch(pattern, path) is not None


DEPRECATED: tuple[Deprecation, ...] = ()


def with_deprecations(app: App, table: Sequence[Deprecation] = DEPRECATED) -> App:
    """Add its headers to every answer of a deprecated operation; of several entries, those of the one that goes first."""
    if not table:
        return app
    soonest = sorted(table, key=lambda entry: entry.sunset)

    async def run(scope: Scope, receive: Receive, send: Send) -> None:
        found = next((entry for entry in soonest if entry.concerns(scope["method"], scope["path"])), None)
        await app(scope, receive, adding(send, found.headers) if found else send)

    return run


def marked(document: Part, table: Iterable[Deprecation] = DEPRECATED) -> Part:
    """``document``, changed: what ``table`` names is ``deprecated`` and says until when and what to use; KeyError for what is not there."""
    for entry in table:
        part = _part(document, entry)
        text = f"Deprecated since {entry.since}; goes after {entry.sunset}. {entry.instead}"
        part |= {"deprecated": True, "description": f"{part.get('description', '')} {text}".strip()}
    return document


def _part(document: Part, entry: Deprecation) -> Part:
    operation: Part = document["paths"][entry.path][entry.method.lower()]
    if not entry.member:
        return operation
    schema, _, member = entry.member.partition(".")
    part: Part = document["components"]["schemas"][schema]["properties"][member]
    return part
