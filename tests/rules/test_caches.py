"""What is kept between requests has a bound, so that no series of requests, however odd, fills the memory."""

from __future__ import annotations

import functools
import gc
import importlib
import pkgutil
import tracemalloc
from collections.abc import Callable, Iterator
from random import Random
from typing import Any

import pytest
from tests.rules.conftest import FARM, Json, base

import kilisho
import kilisho_api
from kilisho import quantities
from kilisho.checks import evaluate
from kilisho.farm import GRAPH
from kilisho.formulas import stockpile
from kilisho.formulas.stockpile import Losses, Material
from kilisho.quantities import Graph, MissingQuantityError
from kilisho.questions import findings, open_questions
from kilisho.questions.findings import Inspector
from kilisho.units import KINDS

MEGABYTE = 2**20
# Caches without a bound of their own, by what bounds their keys.
BOUNDED_BY_THEIR_KEYS = {
    "no key": {"registry", "stylesheet", "style_source", "_written"},
    "messages of the code": {"_plain", "stamp_of_english"},
    "languages": {"_own_files"},
    "classes of the code and of the rulebook": {"_defaults", "_blank", "_kinds"},
}


def modules() -> Iterator[Any]:
    for package in (kilisho, kilisho_api):
        for one in pkgutil.walk_packages(package.__path__, f"{package.__name__}."):
            if not one.name.endswith("__main__"):
                yield importlib.import_module(one.name)


def caches() -> dict[str, Any]:
    """Every function of ours that remembers its results, by its name."""
    kept = (one for module in modules() for one in vars(module).values() if isinstance(one, functools._lru_cache_wrapper))
    return {one.__name__: one for one in kept if one.__module__.startswith("kilisho")}


def test_every_function_that_remembers_has_a_bound_or_keys_that_no_caller_chooses() -> None:
    unbounded = {name for name, one in caches().items() if one.cache_parameters()["maxsize"] is None}
    assert unbounded == set().union(*BOUNDED_BY_THEIR_KEYS.values())


def grown(work: Callable[[], object]) -> float:
    """Megabytes that ``work`` leaves behind."""
    tracemalloc.start()
    try:
        before = tracemalloc.get_traced_memory()[0]
        work()
        gc.collect()
        return (tracemalloc.get_traced_memory()[0] - before) / MEGABYTE
    finally:
        tracemalloc.stop()


def shapes(number: int) -> Iterator[frozenset[str]]:
    """Distinct sets of stated facts of the base rulebook."""
    random, facts = Random(1), sorted(base().data.facts)
    seen: set[frozenset[str]] = set()
    while len(seen) < number:
        shape = frozenset(random.sample(facts, random.randint(1, len(facts))))
        if shape not in seen:
            seen.add(shape)
            yield shape


def stated(shape: frozenset[str]) -> Json:
    """A value for each fact: a number where it is a quantity, and a word that is none of the known ones elsewhere."""
    return {name: 1.0 if base().data.facts[name].kind in KINDS else "" for name in shape}


def test_an_inspector_keeps_so_many_shapes_of_stated_facts_and_answers_all_of_them() -> None:
    inspector = Inspector(base().data, "safety_check")
    for shape in shapes(3 * findings.MOST_SHAPES):
        facts = stated(shape)
        found = inspector.inspect(facts)
        assert {(one.compiled.id, one.verdict) for one in found} == {
            (one.compiled.id, one.verdict) for one in evaluate(inspector.checks, facts)
        }
        assert len(inspector._parted) <= findings.MOST_SHAPES


def test_facts_that_no_check_of_an_operation_reads_make_no_further_shape() -> None:
    inspector = Inspector(base().data, "gas_use")
    read = {name for one in inspector.checks for name in (one.subject, *(name for name, _ in one.when))}
    unread = base().data.facts.keys() - read
    assert len(unread) > 10
    expected = inspector.inspect({})
    assert [inspector.inspect(stated(frozenset((name,)))) for name in unread] == [expected] * len(unread)
    assert len(inspector._parted) == 1


def test_what_the_inspectors_keep_weighs_little() -> None:
    """All questions together have some two dozen inspectors, and the safety check reads the most facts."""
    inspector = Inspector(base().data, "safety_check")
    asked = [stated(shape) for shape in shapes(findings.MOST_SHAPES)]

    def fill() -> None:
        for facts in asked:
            inspector.inspect(facts)

    assert 0.05 < grown(fill) < 2


def ways(number: int) -> Iterator[tuple[frozenset[str], tuple[str, ...]]]:
    """Distinct sets of given names with as many names to derive from them as a long answer wants."""
    random, names = Random(2), sorted(GRAPH.quantities)
    bare = [name for name in names if GRAPH.quantities[name].formula is None]
    seen = set[frozenset[str]]()
    while len(seen) < number:
        given = frozenset((*random.sample(bare, len(bare) - 3), *random.sample(names, 4)))
        derived = tuple(name for name in names if name in GRAPH.reachable(given) and name not in given)
        if given not in seen:
            seen.add(given)
            yield given, tuple(random.sample(derived, min(25, len(derived))))


def test_a_graph_keeps_so_many_plans_and_they_weigh_little() -> None:
    graph, asked = Graph(GRAPH.quantities), list(ways(60))
    for given, wanted in asked:
        graph.plan(given, wanted)
    assert len(graph._plans) == 60
    graph._plans.clear()

    def fill() -> None:
        for given, wanted in asked:
            graph.plan(given, wanted)

    assert grown(fill) / 60 * quantities.MOST_PLANS < 40


def test_a_graph_never_keeps_more_plans_than_it_may(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(quantities, "MOST_PLANS", 7)
    graph, roomy = Graph(GRAPH.quantities), Graph(GRAPH.quantities)
    for given, wanted in ways(40):
        assert graph.plan(given, wanted).source == roomy.plan(given, wanted).source
        assert len(graph._plans) <= 7
        assert len(graph._behind) <= 7


def test_names_that_change_no_route_make_no_further_plan() -> None:
    graph = Graph(GRAPH.quantities)
    wanted = ("organic_loading_rate",)
    behind = graph._back_from(wanted)
    apart = sorted(GRAPH.quantities.keys() - behind)
    assert len(apart) > 20
    given = frozenset(name for name in behind if GRAPH.quantities[name].formula is None)
    expected = graph.plan(given, wanted)
    assert all(graph.plan({*given, name}, wanted) is expected for name in (*apart, "a_name_of_nothing"))
    assert len(graph._plans) == 1


def test_a_name_on_the_way_that_is_given_makes_a_plan_of_its_own() -> None:
    graph, wanted = Graph(GRAPH.quantities), ("organic_loading_rate",)
    behind = graph._back_from(wanted)
    bare = frozenset(name for name in behind if GRAPH.quantities[name].formula is None)
    shorter = [graph.plan({*bare, name}, wanted) for name in sorted(behind - bare)]
    assert len({id(one) for one in shorter}) == len(shorter) > 3
    for name, plan in zip(sorted(behind - bare), shorter, strict=True):
        assert name not in plan.steps


def test_what_cannot_be_derived_is_told_each_time_and_keeps_no_plan() -> None:
    graph = Graph(GRAPH.quantities)
    for _ in range(3):
        with pytest.raises(MissingQuantityError):
            graph.plan((), ("organic_loading_rate",))
    assert not graph._plans


def test_heaps_of_measured_dung_are_not_kept_for_ever() -> None:
    """Each has its own table of every day for more than a year."""
    most = stockpile._tables.cache_parameters()["maxsize"]
    stockpile._tables.cache_clear()

    def fill() -> None:
        for number in range(most + 20):
            solids = 0.1 + number / 1e4
            stockpile.account(Material(1 - solids, 0.8 * solids, 0.2 * solids, 0.002), Losses(0.001, 0.002, 0.003), 1.0, 0.0, 30)

    assert grown(fill) < 8
    assert stockpile._tables.cache_info().currsize == most


def test_a_question_asked_with_ever_other_facts_leaves_little_behind() -> None:
    question, random = open_questions(base())["maintenance-feed"], Random(3)
    feeding = {name: FARM[name] for name in ("digester", "herd", "dilution", "climate")}
    lengths = [name for name, fact in base().data.facts.items() if fact.kind == "length"]

    def ask(times: int) -> None:
        for _ in range(times):
            facts = dict.fromkeys(random.sample(lengths, random.randint(0, len(lengths))), 5)
            question.tell(question.read({**feeding, "facts": facts}))

    ask(2 * findings.MOST_SHAPES)
    assert grown(lambda: ask(100)) < 0.5
