#!/usr/bin/env python3
"""Micro-benchmark: ``python tests/load/engine.py``. Where the time of one question goes, without a web server.

Microseconds for reading the document, validating it, answering, and writing the answer, each the best of several repeats:
the best is what the code costs, the rest is what the machine was doing meanwhile. ``ranges`` is what the low and high ends add: the
answer against that of the same question with every figure taken as exact.
"""

from __future__ import annotations

import argparse
import math
import sys
from collections.abc import Callable, Iterator, Mapping
from pathlib import Path
from timeit import Timer

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.load.bodies import bodies, loads, operation  # noqa: E402

from kilisho import packs, ranges  # noqa: E402 - the checkout is on the path from here on
from kilisho.questions import Question, open_questions  # noqa: E402
from kilisho.questions.asking import parse  # noqa: E402
from kilisho_api.encoding import encode  # noqa: E402

STAGES = ("parse", "validate", "answer", "certain", "explain", "write", "whole")
REPEATS = 7
SLOW_CALLS = 3


def questions(exact: float = ranges.EXACT) -> Mapping[str, Question]:
    """The questions over the base pack; figures whose range is at most ``exact`` times their value count as exact."""
    usual, ranges.EXACT = ranges.EXACT, exact
    try:
        opened = open_questions(packs.load())
        for name, body in bodies().items():
            # Figures are read when they are first asked for.
            opened[name].ask(body)
    finally:
        ranges.EXACT = usual
    return opened


def stages(question: Question, certain: Question, body: bytes) -> Iterator[Callable[[], object]]:
    """The work of each stage of ``STAGES``, on what the stage before it gives."""
    document = parse(body)
    request = question.read(document)
    answer = question.answer(request, False)
    yield lambda: parse(body)
    yield lambda: question.read(document)
    yield lambda: question.answer(request, False)
    yield lambda: certain.answer(request, False)
    yield lambda: question.answer(request, True)
    yield lambda: encode(answer)
    yield lambda: encode(question.ask(body))


def microseconds(work: Callable[[], object], calls: int) -> float:
    """Best time of one call."""
    return min(Timer(work).repeat(REPEATS, calls)) / calls * 1e6


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--calls", type=int, default=200, help="calls in each of the repeats")
    calls = parser.parse_args().calls
    sampled, certain = questions(), questions(math.inf)
    print(f"{'microseconds':<27}" + "".join(f"{stage:>10}" for stage in (*STAGES, "ranges")))
    for name, body in loads().items():
        question, times = sampled[operation(name)], SLOW_CALLS if sampled[operation(name)].slow else calls
        taken = [microseconds(work, times) for work in stages(question, certain[operation(name)], body)]
        print(f"{name:<27}" + "".join(f"{one:>10.0f}" for one in (*taken, taken[2] - taken[3])), flush=True)


if __name__ == "__main__":
    main()
