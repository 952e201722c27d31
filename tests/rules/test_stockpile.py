"""The heap: everything brought is accounted for, to the last milligram, whatever it loses."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kilisho.formulas.stockpile import LONGEST_ACCOUNT, Losses, Material, account

LOSS, MASS, DAYS = st.floats(0, 1), st.floats(0, 1e5), st.integers(0, LONGEST_ACCOUNT)


@st.composite
def materials(draw: st.DrawFn) -> Material:
    solids, organic, nitrogen = draw(st.floats(0.001, 1)), draw(st.floats(0, 1)), draw(st.floats(0, 0.6))
    return Material(1 - solids, solids * organic, solids - solids * organic, solids * nitrogen)


losses = st.builds(Losses, LOSS, LOSS, LOSS) | st.builds(Losses, st.floats(0, 0.02), st.floats(0, 0.02), st.floats(0, 0.03))
DUNG, SHEET = Material(0.85, 0.12, 0.03, 0.0027), Losses(0.003, 0.004, 0.0005)


def day_by_day(material: Material, lost: Losses, per_day: float, on_hand: float, days: int) -> list[tuple[float, float]]:
    """The definition: each day's dung comes on the heap, then the night takes its share. Heap mass and nitrogen each morning."""
    solids, water, ash, nitrogen = (on_hand * s for s in (material.volatile_solids, material.water, material.ash, material.nitrogen))
    rows = [(on_hand, nitrogen)]
    for _ in range(days):
        solids = (solids + per_day * material.volatile_solids) * (1 - lost.volatile_solids)
        water = (water + per_day * material.water) * (1 - lost.moisture)
        nitrogen = (nitrogen + per_day * material.nitrogen) * (1 - lost.nitrogen)
        ash += per_day * material.ash
        rows.append((solids + water + ash, nitrogen))
    return rows


@given(materials(), losses, MASS, MASS, DAYS)
def test_what_is_brought_is_on_the_heap_or_lost(material: Material, lost: Losses, per_day: float, on_hand: float, days: int) -> None:
    heap = account(material, lost, per_day, on_hand, days)
    assert len(heap.brought) == days + 1
    total = heap.on_heap + heap.volatile_solids_lost + heap.water_lost
    scale = 1e-9 * max(1.0, on_hand + per_day * days)
    assert abs(total - heap.brought).max() <= scale
    assert heap.brought[-1] == pytest.approx(on_hand + per_day * days, rel=1e-12)
    assert min(heap.on_heap.min(), heap.volatile_solids_lost.min(), heap.water_lost.min(), heap.nitrogen_lost.min()) >= -scale


@given(materials(), losses, MASS, MASS, DAYS)
def test_the_closed_form_is_the_account_day_by_day(material: Material, lost: Losses, per_day: float, on_hand: float, days: int) -> None:
    heap = account(material, lost, per_day, on_hand, days)
    scale = 1e-9 * max(1.0, on_hand + per_day * days)
    for day, (held, nitrogen) in enumerate(day_by_day(material, lost, per_day, on_hand, days)):
        assert heap.on_heap[day] == pytest.approx(held, rel=1e-9, abs=scale)
        assert heap.nitrogen_lost[day] == pytest.approx(heap.brought[day] * material.nitrogen - nitrogen, rel=1e-9, abs=scale)


def test_a_heap_that_loses_nothing_is_what_was_brought() -> None:
    heap = account(DUNG, Losses(0, 0, 0), 120, 50, 30)
    assert heap.on_heap == pytest.approx(heap.brought)
    assert heap.brought[30] == pytest.approx(3650)


def test_a_heap_that_loses_all_keeps_its_ash() -> None:
    heap = account(DUNG, Losses(1, 1, 1), 100, 0, 10)
    assert heap.on_heap[10] == pytest.approx(100 * 10 * DUNG.ash)
    assert heap.nitrogen_lost[10] == pytest.approx(100 * 10 * DUNG.nitrogen)


@given(st.floats(1, 1000), st.floats(1, 20_000))
def test_the_first_day_with_enough_is_the_first(per_day: float, wanted: float) -> None:
    heap = account(DUNG, SHEET, per_day, 0, LONGEST_ACCOUNT)
    day = heap.days_until(wanted)
    if day is None:
        assert heap.on_heap.max() < wanted
    else:
        assert heap.on_heap[day] >= wanted * (1 - 1e-9)
        assert day == 0 or heap.on_heap[day - 1] < wanted


def test_nothing_wanted_is_there_at_once() -> None:
    assert account(DUNG, SHEET, 10, 0, 5).days_until(0) == 0


@given(losses, st.floats(0, 500), st.floats(0, 500), st.floats(0, 5000))
def test_two_heaps_side_by_side_are_one_heap(lost: Losses, first: float, second: float, on_hand: float) -> None:
    together = account(DUNG, lost, first + second, on_hand, 60)
    apart = account(DUNG, lost, first, on_hand, 60).on_heap + account(DUNG, lost, second, 0, 60).on_heap
    assert together.on_heap == pytest.approx(apart, rel=1e-9, abs=1e-6)


def test_the_table_is_the_account_to_the_gram() -> None:
    heap = account(DUNG, SHEET, 84, 10, 28)
    brought, on_heap, solids, water = heap.table(29)
    assert len(brought) == 29
    for day in range(29):
        assert brought[day] == pytest.approx(on_heap[day] + solids[day] + water[day], abs=0.002)
        assert on_heap[day] == pytest.approx(heap.on_heap[day], abs=0.0005)
