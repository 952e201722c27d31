"""What is told of the slow end of latencies."""

from __future__ import annotations

import os
from collections import Counter

import pytest
from tests.load import tails
from tests.load.figures import Summary
from tests.load.generator import request_of
from tests.load.serving import Server
from tests.load.tails import Stretch


def of(p50: float, p99: float) -> Stretch:
    """A stretch with these latencies."""
    return Stretch(100, Summary(10, 100, p50, p99, 2 * p99, Counter()))


def test_the_middle_of_the_stretches_is_told_beside_the_best_and_the_worst() -> None:
    measured = {"first-charge": [of(2, 30), of(2, 4), of(4, 12)], "its echo": [of(1, 2)]}
    assert list(tails.middles(measured)) == [
        "first-charge: p50 2.0 ms, p99 12.0 ms; p99 3.0 times p50 (2.0 to 15.0 over 3 stretches)",
        "its echo: p50 1.0 ms, p99 2.0 ms; p99 2.0 times p50 (2.0 to 2.0 over 1 stretches)",
    ]


def test_a_stretch_asks_for_its_part_of_the_least_that_was_answered(port: int, monkeypatch: pytest.MonkeyPatch) -> None:
    trials = iter([400.0, 200.0, 300.0])
    monkeypatch.setattr(tails, "capacity", lambda server, request, seconds: next(trials))
    found = tails.stretch(Server(os.getpid(), port, 0), request_of("/200", b"{}"), 0.5, 0.3)
    assert found.rate == 100
    assert found.told.accepted == pytest.approx(100)
    assert found.told.others == {}
    assert tails.row("safety-check", found)[:2] == ("safety-check", "100")
