"""Work that the parts of a request share: done once, and in every ledger as if it had been done there."""

from __future__ import annotations

import importlib
from collections import Counter
from collections.abc import Callable
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from tests.rules.conftest import Json, answer_or_refusal, ask, base, farm_plans, like, questions

from kilisho.farm import Ledger, Shelf
from kilisho.questions.climate import warmth_of
from kilisho.questions.digester import take_digester
from kilisho.questions.gas_state import take_gas_state
from kilisho.questions.herd import supply_of
from kilisho.questions.requests import Climate, Digester, HerdItem
from kilisho.questions.sharing import once

SHELF = Shelf(base().data)
FARM: Json = {**questions()["farm-plan"].example, "with_forecast": False}
CLIMATES = [
    None,
    Climate.model_construct(**dict.fromkeys(Climate.model_fields) | {"mean_air_temperature": 19.0}),
    Climate.model_construct(**dict.fromkeys(Climate.model_fields) | {"mean_air_temperature": 19.0, "yearly_swing": 6.0, "altitude": 900.0}),
    Climate.model_construct(**dict.fromkeys(Climate.model_fields) | {"digester_temperature": 28.0}),
]
HERD = [HerdItem.model_construct(animal=name, count=3) for name in ("dairy_cow", "goat")]
DIGESTERS = [
    Digester.model_construct(**dict.fromkeys(Digester.model_fields) | stated)
    for stated in ({"total_volume": 12.0}, {"structure": "bag", "total_volume": 10.0, "working_volume": 7.0})
]
Work = Callable[[Ledger], Any]
WORKS: list[Work] = [
    *(lambda ledger, one=one: warmth_of(one, ledger, "fixed_dome", None) for one in CLIMATES),
    *(lambda ledger, one=one: warmth_of(one, ledger, None, 1.5) for one in CLIMATES),
    *(lambda ledger, one=one: take_gas_state(one, ledger) for one in CLIMATES),
    lambda ledger: supply_of(HERD, ledger),
    lambda ledger: supply_of(HERD, ledger, with_urine=True),
    *(lambda ledger, one=one: take_digester(one, ledger) for one in DIGESTERS),
]


def in_use(shared: dict[Any, Any] | None) -> Ledger:
    """A ledger that holds something already: a stated value, figures that the work may use as well, samples, a choice."""
    ledger = Ledger(SHELF, shared)
    ledger.state("slurry_ph", 7.2)
    ledger.practice("water_density")
    ledger.practice("soil_offset")
    ledger.choose("structure", "fixed_dome", "Invented.")
    ledger.put(digester_temperature=20.0)
    ledger.sample(digester_temperature=np.linspace(18.0, 22.0, 64))
    return ledger


def held(ledger: Ledger) -> Any:
    """Everything that a ledger holds, in its order, with samples as lists."""
    samples = {name: values.tolist() for name, values in ledger.sampled.items()}
    return ledger.values, sorted(samples.items()), ledger.stated, list(ledger.derived), list(ledger.inputs), ledger.assumptions


@pytest.mark.parametrize("work", WORKS)
def test_a_ledger_that_takes_shared_work_holds_what_it_would_have_found_itself(work: Work) -> None:
    alone, shared = in_use(None), dict[Any, Any]()
    work(alone)
    first, second, fresh = in_use(shared), in_use(shared), Ledger(SHELF, shared)
    assert [work(one) for one in (first, second, fresh)].count(work(Ledger(SHELF, shared))) == 3
    assert held(first) == held(second) == held(alone)
    lone = Ledger(SHELF)
    work(lone)
    assert held(fresh) == held(lone)


@pytest.mark.parametrize("work", WORKS)
def test_shared_work_hangs_on_nothing_that_a_ledger_held_before(work: Work) -> None:
    """Else it could not be shared: a full ledger and an empty one must come to the same."""
    full, empty = in_use(None), Ledger(SHELF)
    work(full)
    work(empty)
    assert {name: full.values[name] for name in empty.values} == empty.values
    assert {name: list(full.sampled.get(name, ())) for name in empty.values} == {
        name: list(empty.sampled.get(name, ())) for name in empty.values
    }
    assert set(full.values) - set(empty.values) <= {"slurry_ph", "water_density", "soil_offset", "digester_temperature"}


def counting() -> tuple[Callable[..., tuple[str, object]], list[object]]:
    calls: list[object] = []

    @once
    def work(subject: list[int], ledger: Ledger, more: int = 0, *, named: bool = False) -> tuple[str, object]:
        calls.append((tuple(subject), more, named))
        ledger.put(biogas_per_day=float(sum(subject) + more))
        return "found", more

    return work, calls


def test_work_is_done_once_for_the_same_subject_and_arguments() -> None:
    work, calls = counting()
    shared: dict[Any, Any] = {}
    herd, other = [1, 2], [1, 2]
    ledgers = [Ledger(SHELF, shared) for _ in range(3)]
    assert [work(herd, ledger, 4) for ledger in ledgers] == [("found", 4)] * 3
    assert [ledger.values["biogas_per_day"] for ledger in ledgers] == [7.0] * 3
    assert len(calls) == 1
    work(herd, ledgers[0], 5)
    work(herd, ledgers[0], 4, named=True)
    work(other, ledgers[0], 4)
    assert len(calls) == 4
    # However the same arguments are written.
    work(herd, ledgers[0], more=4)
    work(herd, ledgers[0], 4, named=False)
    assert len(calls) == 4
    work(herd, ledgers[0])
    work(herd, ledgers[0], 0, named=False)
    assert len(calls) == 5
    work(herd, ledgers[0], 4)
    assert ledgers[0].values["biogas_per_day"] == 7.0


def test_ledgers_of_different_requests_share_nothing() -> None:
    work, calls = counting()
    herd = [3]
    for ledger in (Ledger(SHELF), Ledger(SHELF), Ledger(SHELF, {}), Ledger(SHELF, {})):
        work(herd, ledger)
    assert len(calls) == 4


def test_what_was_shared_is_not_taken_for_something_new_at_the_same_place_in_memory() -> None:
    work, calls = counting()
    ledger = Ledger(SHELF, {})
    for number in range(50):
        work([number], ledger)
        assert ledger.values["biogas_per_day"] == number
    assert len(calls) == 50


# In a farm plan

# Where the herd of one kind of animal, the climate and the digester of the example are worked out.
INNER = (
    ("climate", "_buried"),
    ("climate", "_sampled_amplitude"),
    ("herd", "_dung_per_head"),
    ("digester", "_fill_share"),
    ("gas_state", "pressure_of"),
)


def counted(monkeypatch: pytest.MonkeyPatch, body: Json) -> Counter[str]:
    """Calls of the functions of ``INNER`` while a plan is asked."""
    calls: Counter[str] = Counter()
    for module, name in INNER:
        where = importlib.import_module(f"kilisho.questions.{module}")
        monkeypatch.setattr(where, name, _noting(calls, name, getattr(where, name)))
    ask("farm-plan", body)
    return calls


def _noting(calls: Counter[str], name: str, work: Callable[..., Any]) -> Callable[..., Any]:
    def noted(*given: Any, **named: Any) -> Any:
        calls[name] += 1
        return work(*given, **named)

    return noted


@pytest.mark.parametrize("change", [{}, {"digester": {"structure": "fixed_dome", "total_volume": 12}}, {"with_forecast": True}])
def test_a_plan_works_nothing_out_twice(change: Json, monkeypatch: pytest.MonkeyPatch) -> None:
    assert counted(monkeypatch, like(FARM, **change)) == {name: 1 for _, name in INNER}


def test_without_sharing_it_would(monkeypatch: pytest.MonkeyPatch) -> None:
    apart(monkeypatch)
    assert min(counted(monkeypatch, FARM).values()) >= 2


def apart(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let the parts of a plan share nothing."""
    monkeypatch.setattr("kilisho.questions.farm_plan.parts.Ledger", lambda shelf, shared: Ledger(shelf))


@given(farm_plans())
def test_parts_that_share_answer_to_the_last_digit_as_parts_that_do_not(body: Json) -> None:
    together = answer_or_refusal("farm-plan", body)
    with pytest.MonkeyPatch.context() as monkeypatch:
        apart(monkeypatch)
        assert answer_or_refusal("farm-plan", body) == together
