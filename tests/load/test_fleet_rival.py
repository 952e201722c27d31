"""The fleet and the query written by hand give the same answers, so that their times can be compared."""

from __future__ import annotations

from functools import cache
from typing import Any

import numpy as np
import pyarrow as pa
import pytest
from tests.load.fleet_rival import COLUMNS, Rival, answer
from tests.rules.conftest import base
from tests.rules.fleets import fleet

from kilisho.fleet import validate
from kilisho.fleet.answers import NUMBERS
from kilisho.fleet.invented import invent
from kilisho.fleet.planted import PLANTED
from kilisho.questions.installation.verdicts import WORDS

SIZE = 12_000


def table() -> pa.Table:
    """An invented fleet in which a tenth of the cells of every optional column says nothing."""
    found = pa.Table.from_batches(invent(SIZE, base(), seed=3)).drop_columns([PLANTED]).combine_chunks()
    chance = np.random.default_rng(11)
    for name in COLUMNS[3:]:
        column = found[name].combine_chunks()
        hidden = pa.compute.if_else(pa.array(chance.random(SIZE) < 0.1), pa.scalar(None, column.type), column)
        found = found.set_column(found.schema.get_field_index(name), name, hidden)
    return found


@cache
def both() -> tuple[pa.Table, Any, list[str]]:
    rival, rows = Rival(fleet()), table()
    return pa.Table.from_batches(validate(rows.to_batches(), base())), answer(rows, rival), rival.order


@pytest.mark.parametrize("name", WORDS)
def test_the_same_words(name: str) -> None:
    ours, theirs, _ = both()
    assert ours[name].to_pylist() == theirs[name].to_list()


@pytest.mark.parametrize("name", NUMBERS)
def test_the_same_numbers(name: str) -> None:
    ours, theirs, _ = both()
    mine, other = ours[name].to_numpy(), theirs[name].fill_null(np.nan).to_numpy()
    assert np.isfinite(mine).sum() > SIZE / 3
    np.testing.assert_allclose(mine, other, rtol=1e-9, equal_nan=True)


@pytest.mark.parametrize(("bits", "names"), [("failed", ["failed"]), ("unknown", ["unknown", "open_dangers"])])
def test_the_same_checks(bits: str, names: list[str]) -> None:
    ours, theirs, order = both()
    lists = [[set(cell or ()) for cell in ours[name].to_pylist()] for name in names]
    halves = [theirs[f"{bits}_{half}"].to_list() for half in (0, 1)]
    for first, second, *cells in zip(*halves, *lists, strict=True):
        number = 0 if first is None else first | second << 64
        assert set().union(*cells) == {name for place, name in enumerate(order) if number >> place & 1}


def test_the_fleet_that_is_compared_has_every_verdict_and_some_rows_of_each_kind() -> None:
    ours, _, _ = both()
    counts = {one["values"]: one["counts"] for one in ours["verdict"].combine_chunks().cast(pa.string()).value_counts().to_pylist()}
    assert counts.keys() == {"refused", "doubtful", "faulty", "attention", "unknown"}
    assert min(counts.values()) > 100
