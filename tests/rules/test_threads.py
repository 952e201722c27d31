"""Questions answered from several threads at once give the answers that they give one after the other."""

from __future__ import annotations

import json
import sys
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from typing import Any

import pytest
from tests.rules.conftest import FARM, FIRST_CHARGE, SIZING, Json, base, like

from kilisho import quantities
from kilisho.farm import GRAPH, Ledger, Shelf
from kilisho.quantities import Graph
from kilisho.questions import findings, maintenance_feed, open_questions
from kilisho.questions.findings import Inspector

THREADS, ROUNDS = 8, 6
FEEDING: Json = {name: FARM[name] for name in ("digester", "herd", "dilution", "climate")}
FACTS: Json = {"facts": {"distance_to_well": 20}}
# Different sets of stated names, so that the caches of plans, checks and assumptions are filled and cleared all the time.
ASKED: list[tuple[str, Json]] = [
    ("first-charge", FIRST_CHARGE),
    ("first-charge", like(FIRST_CHARGE, climate=None, herd=None)),
    ("maintenance-feed", FEEDING),
    ("maintenance-feed", like(FEEDING, dilution={"target_total_solids": 0.07}, slurry_ph=7)),
    (
        "maintenance-feed",
        like(FEEDING, climate=None, feed=[{"substrate": "cattle_dung", "mass": 40}, {"substrate": "maize_stover", "mass": 2}]),
    ),
    ("feed-mix", {"working_volume": 6, "on_hand": [{"substrate": "cattle_dung", "available": 60}], "climate": FARM["climate"]}),
    ("sizing", SIZING),
    ("sizing", {"people_cooked_for": 5}),
    ("safety-check", {}),
    ("safety-check", FACTS),
]


@pytest.fixture
def crowded(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """Caches of two entries, and a thread switched every few instructions."""
    monkeypatch.setattr(quantities, "MOST_PLANS", 2)
    monkeypatch.setattr(findings, "MOST_SHAPES", 2)
    before = sys.getswitchinterval()
    sys.setswitchinterval(1e-6)
    yield
    sys.setswitchinterval(before)
    GRAPH._plans.clear()


def test_threads_share_an_engine_and_change_no_answer(crowded: None) -> None:
    bodies = [(name, json.dumps(body).encode()) for name, body in ASKED]
    apart = open_questions(base())
    expected = [apart[name].ask(body, explain=True) for name, body in bodies]
    # A fresh engine, so that the threads also race for filling its caches for the first time.
    shared = open_questions(base())
    work = [
        (place, *bodies[place])
        for turn in range(ROUNDS)
        for place in sorted(range(len(bodies)), key=lambda one: (one * 7 + turn) % len(bodies))
    ]
    with ThreadPoolExecutor(THREADS) as pool:
        told = list(pool.map(lambda one: (one[0], shared[one[1]].ask(one[2], explain=True)), work))
    assert len(told) == ROUNDS * len(bodies)
    assert [place for place, answer in told if answer != expected[place]] == []


class Forgetful(dict[Any, Any]):
    """A cache that another thread clears at the worst moment: right after something was put into it."""

    puts = 0

    def __setitem__(self, key: Any, value: Any) -> None:
        super().__setitem__(key, value)
        self.puts += 1
        self.clear()


def test_a_cache_that_is_cleared_at_the_worst_moment_changes_no_answer(monkeypatch: pytest.MonkeyPatch) -> None:
    shelf, steady, robbed = Shelf(base().data), *(Inspector(base().data, "maintenance_feed") for _ in range(2))
    question = open_questions(base())["maintenance-feed"]
    asked = question.read(FEEDING)

    def answer(inspector: Inspector) -> Json:
        return maintenance_feed.FORM.answer(asked, Ledger(shelf), inspector, True)

    expected = answer(steady)
    plans, shapes = Forgetful(), Forgetful()
    robbed._parted = shapes
    monkeypatch.setattr("kilisho.farm.GRAPH", Graph(GRAPH.quantities, plans))
    assert answer(robbed) == expected
    assert plans.puts > 1
    assert shapes.puts == 1
