"""Combinations of checks: numbered without loss, told once, laid out as lists without a seam."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from typing import Any

import numpy as np
import pyarrow as pa
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.fleets import answered, fleet, row

from kilisho.check_columns import Coded, Evaluation
from kilisho.fleet import patterns
from kilisho.fleet.patterns import LISTS, Packing, Page, Teller, bitmap, combinations, every_list_of, lists, with_validity
from kilisho.questions.installation.verdicts import WORDS, Judge
from kilisho.questions.installation.work import facts_told

CHECKS = fleet().desk.checks
JUDGE = Judge(CHECKS)
PACKING = Packing(JUDGE, facts_told(fleet().desk))
WORD_BITS = st.integers(0, 2**64 - 1)
IDS = pa.array([f"check_{number}" for number in range(20)])


def column(values: list[int]) -> Any:
    return np.array(values, np.uint64)


# Combinations


@given(st.integers(1, 30).flatmap(lambda rows: st.lists(st.lists(st.sampled_from([0, 1, 2, 2**63, 5]), min_size=rows, max_size=rows))))
def test_every_row_finds_its_own_words_again(words: list[list[int]]) -> None:
    rows = len(words[0]) if words else 3
    found = combinations([column(word) for word in words], rows)
    assert len(set(found.distinct)) == len(found.distinct)
    for at in range(rows):
        assert found.distinct[found.number[at]] == tuple(word[at] for word in words)


@given(st.lists(WORD_BITS, min_size=2, max_size=20), WORD_BITS)
def test_a_word_that_is_the_same_throughout_is_part_of_every_combination(varying: list[int], constant: int) -> None:
    found = combinations([constant, column(varying), constant], len(varying))
    for at, one in enumerate(varying):
        assert found.distinct[found.number[at]] == (constant, one, constant)


def test_no_combination_is_told_that_no_row_has() -> None:
    found = combinations([column([1, 2, 1, 2]), column([7, 7, 9, 7])], 4)
    assert sorted(found.distinct) == [(1, 7), (1, 9), (2, 7)]


def test_many_combinations_are_numbered_by_hashing_as_by_the_table(monkeypatch: pytest.MonkeyPatch) -> None:
    chance = np.random.default_rng(5)
    words = [chance.integers(0, 40, 500).astype(np.uint64) for _ in range(3)]
    by_table = combinations(words, 500)
    monkeypatch.setattr(patterns, "LARGEST_TABLE", 0)
    by_hash = combinations(words, 500)
    assert [by_table.distinct[one] for one in by_table.number] == [by_hash.distinct[one] for one in by_hash.number]


def test_rows_of_none_at_all() -> None:
    assert combinations([3, 4], 5).distinct == [(3, 4)]
    assert combinations([3, 4], 5).number.tolist() == [0] * 5
    assert combinations([], 2).distinct == [()]


# Packing


def test_every_check_has_a_bit_of_its_own() -> None:
    words = len(PACKING.ends(Evaluation({}), 2)[0])
    # All checks unknown is every bit once: read back, it is every check but those that are asked only of a reading.
    every = [word for word in PACKING.ends(Evaluation({}), 2)[1] if isinstance(word, int)]
    assert len(every) == words
    assert PACKING.in_order(every) == sum(1 << place for place, one in enumerate(CHECKS) if not one.compiled.check.only_if_stated)


def test_the_checks_of_a_record_fill_one_word() -> None:
    """What differs from row to row of a standard record is hashed at once."""
    own = [check for check in CHECKS if check.subject.name in facts_told(fleet().desk)]
    assert 40 < len(own) <= 64
    failed, _ = PACKING.ends(Evaluation({"feeding_interval": np.array([0.5, 2.0, 20.0])}), 3)
    assert [isinstance(word, int) for word in failed] == [False, True]


def test_packed_ends_come_back_in_the_order_of_the_checks() -> None:
    names = [check.compiled.id for check in CHECKS]
    evaluation = Evaluation({"feeding_interval": np.array([0.5, 2.0, 20.0]), "entry_planned": Coded(np.array([1, 0, -1]), (False, True))})
    failed, unknown = PACKING.ends(evaluation, 3)
    for at, expected in enumerate([{"no_entry"}, {"feeding_daily"}, {"feeding_daily", "feeding_three_days", "feeding_weekly"}]):
        bits = PACKING.in_order([word if isinstance(word, int) else int(word[at]) for word in failed])
        assert expected <= {name for place, name in enumerate(names) if bits >> place & 1}
        open_ = PACKING.in_order([word if isinstance(word, int) else int(word[at]) for word in unknown])
        assert bits & open_ == 0
        assert bool(open_ >> names.index("no_entry") & 1) == (at == 2)


def test_a_check_whose_condition_may_exclude_it_is_evaluated_without_its_subject() -> None:
    """The pressure of a dome is not asked of a bag, although nobody stated any pressure."""
    kinds = Coded(np.array([0, 1]), ("bag", "fixed_dome"))
    _, unknown = PACKING.ends(Evaluation({"structure_kind": kinds}), 2)
    place = [check.compiled.id for check in CHECKS].index("dome_pressure_most")
    found = [PACKING.in_order([word if isinstance(word, int) else int(word[at]) for word in unknown]) >> place & 1 for at in (0, 1)]
    assert found == [0, 1]


# Telling


def test_a_combination_is_told_in_words_and_lists() -> None:
    teller = Teller(JUDGE, PACKING)
    failed, unknown = PACKING.ends(Evaluation({"feeding_interval": np.array([20.0])}), 1)
    key = tuple(word if isinstance(word, int) else int(word[0]) for word in (*failed, *unknown))
    told = teller.tell([key, key])
    words = {name: WORDS[name][code] for name, code in zip(WORDS, told.words[0].tolist(), strict=True)}
    assert words["feeding"] == "too_seldom"
    assert words["verdict"] == "faulty"
    of = {
        name: [teller.ids[place].as_py() for place in table[0, : lengths[0]]]
        for name, (lengths, table) in zip(LISTS, told.lists, strict=True)
    }
    assert "feeding_weekly" in of["failed"]
    assert "no_entry" in of["open_dangers"]
    assert "ph_least" in of["unknown"]
    assert not set(of["unknown"]) & set(of["open_dangers"])


def test_what_was_told_is_forgotten_in_time_and_told_the_same_again(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(patterns, "MOST_KEPT", 3)
    teller = Teller(JUDGE, PACKING)
    keys = [(number, 0, 0, 0) for number in range(12)]
    one_by_one = [teller.tell([key]) for key in keys]
    assert len(teller._rows) <= 3
    for key, before in zip(keys, one_by_one, strict=True):
        assert teller.tell([key]).words.tolist() == before.words.tolist()


def test_threads_may_share_a_teller() -> None:
    stated = [
        [row(feed_mass=float(1 + (7 * number + at) % 190), feeding_interval=float(1 + at % 9)) for at in range(40)] for number in range(8)
    ]
    alone = [answered(rows) for rows in stated]
    with ThreadPoolExecutor(4) as pool:
        assert list(pool.map(answered, stated * 3)) == alone * 3


# Lists


@given(st.lists(st.lists(st.integers(0, 19), max_size=6), min_size=1, max_size=8), st.data())
def test_lists_are_laid_out_as_arrow_would(of_each: list[list[int]], data: Any) -> None:
    number = np.array(data.draw(st.lists(st.integers(0, len(of_each) - 1), max_size=25)), np.int64)
    told = data.draw(st.none() | st.lists(st.booleans(), min_size=number.size, max_size=number.size).map(lambda one: np.array(one, bool)))
    page = Page(20)
    for at, one in enumerate(of_each):
        page.write(at, one)
    found = lists(page.take(np.arange(len(of_each))), number, IDS, told)
    found.validate(full=True)
    expected = [[IDS[place].as_py() for place in of_each[one]] for one in number]
    answered_rows = [True] * number.size if told is None else told.tolist()
    assert found.to_pylist() == [one if there else None for one, there in zip(expected, answered_rows, strict=True)]


def test_a_page_grows_as_lists_are_written() -> None:
    page = Page(3)
    for number in range(1000):
        page.write(number, [number % 3] * (number % 4 % 3))
    lengths, table = page.take(np.array([999, 5, 0]))
    assert lengths.tolist() == [0, 1, 0]
    assert table.tolist() == [[-1], [2], [-1]]


def test_a_page_of_many_checks_has_room_for_their_places() -> None:
    page = Page(300)
    page.write(0, [299])
    assert page.take(np.array([0]))[1].tolist() == [[299]]


def test_every_list_of_some_bits() -> None:
    lengths, table = every_list_of(2)
    assert lengths.tolist() == [0, 1, 1, 2]
    assert table.tolist() == [[-1, -1], [0, -1], [1, -1], [0, 1]]


@given(st.lists(st.booleans(), max_size=40))
def test_a_bitmap_is_its_mask(mask: list[bool]) -> None:
    assert bitmap(np.array(mask, bool)).to_pylist() == mask


@given(st.lists(st.tuples(st.floats(allow_nan=False), st.booleans()), max_size=40))
def test_numbers_with_validity(cells: list[tuple[float, bool]]) -> None:
    values, known = np.array([one for one, _ in cells]), np.array([there for _, there in cells], bool)
    found = with_validity(values, known, pa.float64())
    assert found.to_pylist() == [one if there else None for one, there in cells]
    assert found.null_count == len(cells) - sum(known)
