"""W3C Trace Context (Recommendation, 23 November 2021): the caller's trace goes on, and a header that is malformed starts a new one."""

from __future__ import annotations

import re
import secrets
from collections.abc import Iterable
from dataclasses import dataclass

from kilisho_api.layers import App, Receive, Scope, Send
from kilisho_api.log_context import telling

# Section 3.2: lower case only; version ff is forbidden; a later version may append fields after one more dash.
_FORM = re.compile(rb"([0-9a-f]{2})-([0-9a-f]{32})-([0-9a-f]{16})-([0-9a-f]{2})(-.*)?")
_FIRST_VERSION, _FORBIDDEN_VERSION = b"00", b"ff"
_NO_TRACE, _NO_SPAN = b"0" * 32, b"0" * 16


@dataclass(frozen=True, slots=True)
class Trace:
    """Where a request belongs: its trace (32 hexadecimal digits), its own span (16), and the caller's span, if there is one."""

    trace_id: str
    span_id: str
    parent_id: str | None = None


def trace_of(headers: Iterable[tuple[bytes, bytes]]) -> Trace:
    """The caller's trace with a span of our own; a new trace where ``traceparent`` is missing, malformed or sent twice."""
    sent = [value for name, value in headers if name == b"traceparent"]
    found = parsed(sent[0]) if len(sent) == 1 else None
    trace_id, parent_id = found or (secrets.token_hex(16), None)
    return Trace(trace_id, secrets.token_hex(8), parent_id)


def parsed(value: bytes) -> tuple[str, str] | None:
    """Trace id and parent id of a ``traceparent``, or None when it must be ignored (section 3.2.2)."""
    match = _FORM.fullmatch(value.strip(b" \t"))
    if match is None:
        return None
    version, trace_id, parent_id, _flags, more = match.groups()
    if version == _FORBIDDEN_VERSION or trace_id == _NO_TRACE or parent_id == _NO_SPAN or (more and version == _FIRST_VERSION):
        return None
    return trace_id.decode(), parent_id.decode()


def with_trace(app: App) -> App:
    """Let everything that is logged during a request carry its request id and its place in the caller's trace."""

    async def run(scope: Scope, receive: Receive, send: Send) -> None:
        trace = trace_of(scope["headers"])
        with telling(request_id=scope["kilisho.request_id"], trace_id=trace.trace_id, span_id=trace.span_id):
            await app(scope, receive, send)

    return run
