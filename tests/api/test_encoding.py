"""JSON out never loses a number."""

from __future__ import annotations

import math
from typing import Any

import pytest

from kilisho_api.encoding import NotFiniteError, encode


@pytest.mark.parametrize("number", [math.nan, math.inf, -math.inf])
@pytest.mark.parametrize("wrap", [lambda n: n, lambda n: {"a": {"b": n}}, lambda n: [1, [n]], lambda n: {"a": (n,)}])
def test_a_number_that_is_not_finite_is_refused(number: float, wrap: Any) -> None:
    with pytest.raises(NotFiniteError):
        encode(wrap(number))


def test_the_place_is_named() -> None:
    with pytest.raises(NotFiniteError, match="/gas/0/value"):
        encode({"gas": [{"value": math.inf}]})


def test_null_is_allowed_where_it_is_meant() -> None:
    assert encode({"next": None, "items": [1.5, "null"]}) == b'{"next":null,"items":[1.5,"null"]}'
    assert encode({"next": None, "name": "NaN of Infinity"}) == b'{"next":null,"name":"NaN of Infinity"}'
