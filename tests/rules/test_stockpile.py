"""The heap: everything brought is accounted for, to the last milligram, whatever it loses."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from kilisho.formulas.stockpile import LONGEST_ACCOUNT, Losses, Material, account, left_by_day

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


HEAPS = [(DUNG, SHEET), (Material(0.8, 0.15, 0.05, 0.004), Losses(0.01, 0.02, 0.03)), (DUNG, Losses(0.0, 0.0, 0.0))]


def columns(part: str, which: int) -> np.ndarray:
    """One property of the materials (0) or losses (1) of HEAPS as samples side by side."""
    return np.array([getattr(heap[which], part) for heap in HEAPS])


def side_by_side() -> tuple[Material, Losses]:
    return (
        Material(*(columns(part, 0) for part in ("water", "volatile_solids", "ash", "nitrogen"))),
        Losses(*(columns(part, 1) for part in ("volatile_solids", "nitrogen", "moisture"))),
    )


def test_samples_of_heaps_are_the_heaps_one_by_one() -> None:
    left = left_by_day(*side_by_side())
    assert left.of_daily.shape == left.of_start.shape == (LONGEST_ACCOUNT + 1, len(HEAPS))
    for column, (material, lost) in enumerate(HEAPS):
        assert left.of_daily[:, column] == pytest.approx(account(material, lost, 1.0, 0.0, LONGEST_ACCOUNT).on_heap, rel=1e-9)
        assert left.of_start[:, column] == pytest.approx(account(material, lost, 0.0, 1.0, LONGEST_ACCOUNT).on_heap, rel=1e-9)


@pytest.mark.parametrize("days", [0, 1, 30, LONGEST_ACCOUNT])
def test_nitrogen_lost_of_samples_is_that_of_the_heaps(days: int) -> None:
    left = left_by_day(*side_by_side())
    of_daily, of_start = left.nitrogen_lost_of_daily(days), left.nitrogen_lost_of_start(days)
    for column, (material, lost) in enumerate(HEAPS):
        assert of_daily[column] == pytest.approx(account(material, lost, 1.0, 0.0, days).nitrogen_lost[days], rel=1e-6, abs=1e-6)
        assert of_start[column] == pytest.approx(account(material, lost, 0.0, 1.0, days).nitrogen_lost[days], rel=1e-9, abs=1e-15)


@pytest.mark.parametrize("on_hand", [0.0, 250.0])
@pytest.mark.parametrize("within", [0, 5, 60, LONGEST_ACCOUNT])
def test_samples_have_enough_on_the_day_of_their_heap_however_far_is_looked_first(on_hand: float, within: int) -> None:
    left = left_by_day(*side_by_side())
    for mass in (0.0, 250.0, 1000.0, 3000.0):
        found = left.days_until(mass, 40.0, on_hand, within)
        expected = [account(*heap, 40.0, on_hand, LONGEST_ACCOUNT).days_until(mass) for heap in HEAPS]
        # The second heap rots faster than 3000 kg can gather on it; the others have them.
        assert None not in expected[::2]
        assert found.tolist() == [LONGEST_ACCOUNT if day is None else day for day in expected]
    # 40 kg a day that lose nothing: 75 days for 3000 kg, less what lay there.
    assert found[2] == np.ceil((3000 - on_hand) / 40)


def test_exactly_enough_is_enough_and_a_heap_that_never_grows_so_far_is_told() -> None:
    left = left_by_day(DUNG, Losses(0.0, 0.0, 0.0))
    assert left.days_until(400.0, 40.0, 0.0).tolist() == [10.0]
    assert left.days_until(400.1, 40.0, 0.0).tolist() == [11.0]
    assert left.days_until(40.0 * LONGEST_ACCOUNT + 1, 40.0, 0.0).tolist() == [LONGEST_ACCOUNT]
    heap = account(DUNG, Losses(0.0, 0.0, 0.0), 40.0, 0.0, LONGEST_ACCOUNT)
    assert (heap.days_until(400.0), heap.days_until(400.1), heap.days_until(40.0 * LONGEST_ACCOUNT + 1)) == (10, 11, None)


def test_the_table_holds_whole_grams() -> None:
    table = account(DUNG, SHEET, 7.0, 3.0, 30).table(31)
    assert [len(row) for row in table] == [31] * 4
    assert all(number == round(number, 3) for row in table for number in row)
    assert table[1][1] != round(table[1][1], 2)
