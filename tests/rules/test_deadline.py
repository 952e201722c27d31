"""Long work ends by itself when its time is over: at the next day of the process model, the next program of a mix, the next rotation."""

from __future__ import annotations

import contextvars
import time
from concurrent.futures import ThreadPoolExecutor
from itertools import pairwise

import pytest
from tests.rules.conftest import Json, like, questions

from kilisho import deadline
from kilisho.deadline import TooLongError, keep_to_time, within

SLOW = [name for name, question in questions().items() if question.slow]
# Beside the loops there is work that does not look at the clock: reading, tables, one step of a day. So much of it, at most, at a stretch,
# of an answer that takes ten times as long as the test lets it.
LOOKS = 20


class Clock:
    """A clock that is moved by being looked at, so that no busy machine decides a test."""

    def __init__(self, seconds_a_look: float) -> None:
        self.now, self.looks, self.step = 0.0, 0, seconds_a_look

    def monotonic(self) -> float:
        self.now += self.step
        self.looks += 1
        return self.now


@pytest.fixture
def clock(monkeypatch: pytest.MonkeyPatch) -> Clock:
    made = Clock(0.0)
    monkeypatch.setattr(deadline, "time", made)
    return made


def test_without_a_time_nothing_is_ever_too_long(clock: Clock) -> None:
    clock.step = 1e9
    for _ in range(10):
        keep_to_time()


def test_within_its_time_work_goes_on_and_after_it_ends(clock: Clock) -> None:
    with within(5):
        clock.now += 4.9
        keep_to_time()
        clock.now += 0.2
        with pytest.raises(TooLongError):
            keep_to_time()
    keep_to_time()


def test_an_inner_time_never_lengthens_an_outer_one(clock: Clock) -> None:
    with within(5):
        with within(100):
            clock.now += 6
            with pytest.raises(TooLongError):
                keep_to_time()
        with within(1), pytest.raises(TooLongError):
            keep_to_time()


def test_the_time_of_one_thread_is_not_that_of_another() -> None:
    with within(-1), ThreadPoolExecutor(1) as pool:
        pool.submit(keep_to_time).result()
        with pytest.raises(TooLongError):
            pool.submit(contextvars.copy_context().run, keep_to_time).result()


@pytest.mark.parametrize("name", SLOW)
def test_every_slow_question_keeps_to_its_time(name: str, clock: Clock) -> None:
    """Counted in looks at the clock: the answer is given up at the very look after the time, and takes many more when it is not."""
    question = questions()[name]
    asked = question.read(like(question.example))
    with within(0):
        clock.step = 1.0
        with pytest.raises(TooLongError):
            question.answer(asked, False)
    assert clock.looks == 2
    with within(1e9):
        question.answer(asked, False)
    assert clock.looks > LOOKS


@pytest.mark.parametrize("name", SLOW)
def test_a_slow_question_never_computes_long_without_a_look(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """In processor time, the longest stretch without a look is a small part of the answer: what the limit can be overrun by."""
    question = questions()[name]
    asked = question.read(question.example)
    question.answer(asked, False)  # so that libraries are loaded and caches are filled
    seen = [time.process_time()]

    class Noting:
        @staticmethod
        def monotonic() -> float:
            seen.append(time.process_time())
            return 0.0

    monkeypatch.setattr(deadline, "time", Noting)
    question.answer(asked, False)
    seen.append(time.process_time())
    stretches = [after - before for before, after in pairwise(seen)]
    assert max(stretches) < 0.6 * (seen[-1] - seen[0])
    assert max(stretches) < 0.5


def test_an_answer_that_was_given_up_leaves_nothing_behind() -> None:
    question = questions()["gas-forecast"]
    asked: Json = like(question.example, days=40, deviations=None)
    before = question.answer(question.read(asked), False)
    with within(-1), pytest.raises(TooLongError):
        question.answer(question.read(asked), False)
    assert question.answer(question.read(asked), False) == before
