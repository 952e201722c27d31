"""W3C Trace Context: what must be gone on with, what must be ignored, and what stands in the log of it.

The examples of headers are those of the Recommendation of 23 November 2021 (sections 3.2.2 and 4), recalled, and their negations.
"""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kilisho_api.trace_context import parsed, trace_of

TRACE, SPAN = b"4bf92f3577b34da6a3ce929d0e0e4736", b"00f067aa0ba902b7"


@pytest.mark.parametrize(
    "value",
    [
        b"00-" + TRACE + b"-" + SPAN + b"-01",
        b"00-" + TRACE + b"-" + SPAN + b"-00",
        b"00-" + TRACE + b"-" + SPAN + b"-ff",
        b" 00-" + TRACE + b"-" + SPAN + b"-01\t",
        b"cc-" + TRACE + b"-" + SPAN + b"-01",
        b"cc-" + TRACE + b"-" + SPAN + b"-01-what-the-future-will-be-like",
    ],
)
def test_the_trace_goes_on(value: bytes) -> None:
    assert parsed(value) == (TRACE.decode(), SPAN.decode())
    trace = trace_of([(b"host", b"x"), (b"traceparent", value)])
    assert (trace.trace_id, trace.parent_id) == (TRACE.decode(), SPAN.decode())
    assert trace.span_id != SPAN.decode()


@pytest.mark.parametrize(
    "value",
    [
        b"",
        b"00",
        b"00-" + TRACE + b"-" + SPAN,
        b"00-" + TRACE + b"-" + SPAN + b"-01-more",  # version 00 has four fields
        b"00-" + TRACE + b"-" + SPAN + b"-01-",
        b"cc-" + TRACE + b"-" + SPAN + b"-01.more",
        b"ff-" + TRACE + b"-" + SPAN + b"-01",
        b"00-" + TRACE.upper() + b"-" + SPAN + b"-01",
        b"00-" + TRACE + b"-" + SPAN.upper() + b"-01",
        b"00-" + TRACE + b"-" + SPAN + b"-0G",
        b"00-" + b"0" * 32 + b"-" + SPAN + b"-01",
        b"00-" + TRACE + b"-" + b"0" * 16 + b"-01",
        b"00-" + TRACE[:-1] + b"-" + SPAN + b"-01",
        b"00-" + TRACE + b"0-" + SPAN + b"-01",
        b"00_" + TRACE + b"_" + SPAN + b"_01",
        b"00-" + TRACE + b"-" + SPAN + b"-01\n2027-01-01 ERROR forged",
        b"\xff" * 55,
    ],
)
def test_what_is_malformed_begins_a_new_trace(value: bytes) -> None:
    assert parsed(value) is None
    trace = trace_of([(b"traceparent", value)])
    assert trace.parent_id is None
    assert trace.trace_id != TRACE.decode()


def test_two_headers_cannot_both_be_right() -> None:
    sent = (b"traceparent", b"00-" + TRACE + b"-" + SPAN + b"-01")
    assert trace_of([sent, sent]).parent_id is None


@given(st.lists(st.tuples(st.just(b"traceparent"), st.binary(max_size=80)), max_size=2))
def test_whatever_is_sent_the_ids_are_ids(headers: list[tuple[bytes, bytes]]) -> None:
    trace = trace_of(headers)
    assert re.fullmatch(r"[0-9a-f]{32}", trace.trace_id)
    assert re.fullmatch(r"[0-9a-f]{16}", trace.span_id)


def test_new_ids_are_new() -> None:
    traces = [trace_of([]) for _ in range(100)]
    assert len({trace.trace_id for trace in traces}) == len({trace.span_id for trace in traces}) == 100
