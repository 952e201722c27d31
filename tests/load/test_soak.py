"""The soak's parts: what counts of its samples, and what is told of those who were turned away."""

from __future__ import annotations

import asyncio
import math
import os

import pytest
from tests.load import soak
from tests.load.figures import Slope
from tests.load.generator import Answer, request_of
from tests.load.measuring import machine_seconds, processor_seconds
from tests.load.serving import Server
from tests.load.soak import Refusals, Sample


def series(number: int, cores: float = 0.5, all_cores: float = 1.5) -> list[Sample]:
    """A service that holds a megabyte more in each of fifty seconds, then no more."""
    return [Sample(float(second), 100.0 + min(second, 50), cores * second, all_cores * second) for second in range(number)]


def test_warm_up_does_not_count() -> None:
    first, last, slope = soak.memory(series(200), 60)
    assert (first, last) == (150, 150)
    assert slope.none
    assert soak.memory(series(50), 0)[2].rise == pytest.approx(3600)


@pytest.mark.parametrize(
    ("slope", "words"),
    [
        (Slope(0, -1, 1), "+0.00 MB/h (95 %: -1.00 to +1.00), none can be told"),
        (Slope(2, 1, 3), "+2.00 MB/h (95 %: +1.00 to +3.00), there is a slope"),
        (Slope(2, -19, 23), "+2.00 MB/h (95 %: -19.00 to +23.00), too unsure to tell"),
        (Slope(2, -math.inf, math.inf), "+2.00 MB/h (95 %: -inf to +inf), too unsure to tell"),
    ],
)
def test_a_slope_is_told_with_its_verdict(slope: Slope, words: str) -> None:
    assert soak.told(slope) == words


def test_whoever_is_turned_away_is_counted_between_two_samples() -> None:
    samples = [Sample(0, 100, 0, 0), Sample(1, 100, 0.9, 1.9), Sample(2, 100, 1.2, 3.8), Sample(4, 100, 2.2, 5.8)]
    answers = [Answer(503, 0.1, "1", at) for at in (1.5, 1.6, 2.0, 3.0)] + [Answer(200, 0.1, "", 0.5)]
    found = soak.refusals(answers, samples)
    assert [one.count for one in found] == [3, 1]
    assert [(one.cores, one.others) for one in found] == [pytest.approx((0.3, 1.6)), pytest.approx((0.5, 0.5))]


def test_refusals_are_told_with_what_the_service_had_of_the_machine() -> None:
    assert soak.explained([]) == "nobody was turned away"
    words = soak.explained([Refusals(3, 0.31, 1.6), Refusals(2, 0.5, 1.4)])
    assert words == "5 turned away in 2 s; the service had 0.31 to 0.50 of a core in them, all else 1.50 cores"


def test_the_cores_of_a_whole_run_are_those_from_its_first_sample_to_its_last() -> None:
    assert soak.mean_cores(series(100, 0.5, 1.5)) == pytest.approx((0.5, 1.0))


def test_memory_and_processor_are_sampled_beside_the_load(port: int) -> None:
    server = Server(os.getpid(), port, 0)
    answers, samples = asyncio.run(soak.soaked(server, [request_of("/200", b"{}")], 50, 1.2))
    assert len(answers) == 60
    assert len(samples) >= 2
    first, last = samples[0], samples[-1]
    assert first.megabytes > 5
    assert 0 < last.used - first.used <= 1.5 * (last.machine - first.machine) + 0.1
    assert {answer.at > first.at for answer in answers} == {True}


def test_the_whole_machine_uses_at_least_what_one_process_does() -> None:
    before, used = machine_seconds(), processor_seconds(os.getpid())
    assert sum(range(8_000_000)) > 0
    took = processor_seconds(os.getpid()) - used
    assert took > 0.05
    assert machine_seconds() - before >= took - 0.1


@pytest.fixture
def short(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(soak, "ROUND_SECONDS", 0.2)


@pytest.mark.usefixtures("short")
def test_capacity_is_measured_in_rounds(port: int) -> None:
    rounds = soak.capacity(Server(os.getpid(), port, 0), [request_of("/200", b"{}")])
    assert len(rounds) == soak.ROUNDS
    assert min(rounds) > 10


def test_a_report_tells_all_of_it(capsys: pytest.CaptureFixture[str]) -> None:
    answers = [Answer(200, 2.01, "", second + 0.5, 2.0) for second in range(100)] + [Answer(503, 0.01, "1", 20.5)]
    soak.report(answers, series(100), 60, 100)
    lines = capsys.readouterr().out.splitlines()
    assert lines == [
        "101 requests: p50 10.0, p99 10.0, worst 10 ms; 200: 100, 503: 1",
        "the generator sent them up to 2.0 s late",
        "1 turned away in 1 s; the service had 0.50 to 0.50 of a core in them, all else 1.00 cores",
        "over the whole run the service had 0.50 of a core, all else 1.00 cores",
        "memory 150.0 MB after 60 s, 150.0 MB at the end: +0.00 MB/h (95 %: +0.00 to +0.00), none can be told",
    ]
