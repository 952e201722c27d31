"""Properties that hold of any request: robustness, finiteness, balances, invariances, monotony and scaling."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules.conftest import REQUESTS, Json, ask, assert_sound, resolves

from kilisho.faults import RefusedError

EVERY = pytest.mark.parametrize("name", sorted(REQUESTS))


def answer_or_refusal(name: str, body: Json, explain: bool = True) -> Json | None:
    """A sound answer, or None where the request was refused with faults that point into it. Anything else fails the test."""
    try:
        answer = ask(name, body, explain)
    except RefusedError as refused:
        assert refused.faults
        for fault in refused.faults:
            assert resolves(fault.pointer, body), f"{fault.pointer} leads nowhere"
            assert fault.code
            assert fault.detail
        return None
    assert_sound(name, answer)
    return answer


@EVERY
@given(data=st.data())
@settings(max_examples=150)
def test_any_valid_request_is_answered_soundly_or_refused_with_reasons(name: str, data: Any) -> None:
    answer_or_refusal(name, data.draw(REQUESTS[name]()))
