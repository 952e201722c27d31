"""The table of start-up times: what is written is what full runs give, and what is read lies between."""

from __future__ import annotations

import json
import runpy
import warnings
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats
from tests.rules.process_cases import PARAMETERS, Array, cattle

import kilisho.start_up_table as written_table
from kilisho.packs import load
from kilisho.process import Parameters
from kilisho.process.start_up import STARTER_SHARES, TEMPERATURES, StartUpTable, first_charge_days, start_up_days, start_up_days_of
from kilisho.ranges import SAMPLES
from kilisho.start_up_table import DRAWN, FILE, Spread, basis_of, drawn, dung_of, start_up_table_of, values

BASE = load().data
BASIS = basis_of(BASE)
TABLE = start_up_table_of(BASE)
DAYS = {unaided: np.array(TABLE.days[unaided]) for unaided in (True, False)}
STARTED = {unaided: np.array(TABLE.started[unaided]) for unaided in (True, False)}
unaided_or_not = pytest.mark.parametrize("unaided", [True, False])
warmths, shares = st.floats(10, 35), st.floats(0, 0.5)


def test_the_file_is_that_of_the_base_pack() -> None:
    """If this fails, run ``python -m kilisho.start_up_table``."""
    assert json.loads(FILE.read_text("utf-8"))["key"] == BASIS.key


def test_the_command_writes_the_file_without_a_warning(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setattr(written_table, "FILE", tmp_path / "table.json")
    monkeypatch.setattr(written_table, "computed", lambda basis: TABLE)
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        runpy.run_module("kilisho.start_up_table", run_name="__main__")
    assert (tmp_path / "table.json").read_text("utf-8") == FILE.read_text("utf-8")


@unaided_or_not
@pytest.mark.parametrize("point", [(1, 0), (2, 3), (4, 5), (6, 8), (8, 1), (10, 12)])
def test_the_file_is_what_the_command_works_out(unaided: bool, point: tuple[int, int]) -> None:
    row, column = point
    parameters = Parameters(**values(BASIS.process))
    warm, share = np.full(SAMPLES + 1, TEMPERATURES[row]), np.full(SAMPLES + 1, STARTER_SHARES[column])
    days = first_charge_days(warm, share, dung_of(BASIS, parameters, unaided), parameters)
    ordered = np.sort(days[1:])
    expected = min(ordered[3], days[0]), days[0], max(ordered[60], days[0])
    assert DAYS[unaided][row, column] == pytest.approx(expected, rel=5.1e-3)
    assert STARTED[unaided][row, column] == pytest.approx(np.isfinite(days[1:]).mean(), abs=1e-3)


@unaided_or_not
def test_what_is_read_agrees_with_full_runs(unaided: bool) -> None:
    """Between the points of the grid within 12 % or half a day, by runs in full steps."""
    rng = np.random.default_rng(11)
    warm, share = rng.uniform(16, 34, 60), rng.uniform(0.06, 0.5, 60)
    full = first_charge_days(warm, share, cattle(starts_unaided=unaided), PARAMETERS)
    told = np.array([start_up_days(TABLE, *place, unaided)[1] for place in zip(warm, share, strict=True)])
    assert np.isfinite(told).mean() > 0.8
    # A corner that sours makes the whole field one not to count on.
    certain = np.isfinite(told)
    assert told[certain] == pytest.approx(full[certain], rel=0.12, abs=0.5)


@unaided_or_not
@given(temperature=warmths, share=shares)
def test_low_typical_and_high_stand_in_order(unaided: bool, temperature: float, share: float) -> None:
    low, typical, high = start_up_days(TABLE, temperature, share, unaided)
    assert 0 < low <= typical <= high


@unaided_or_not
def test_the_grid_is_told_as_it_stands(unaided: bool) -> None:
    for row in (0, 3, 10):
        for column in (0, 4, 12):
            told = start_up_days(TABLE, TEMPERATURES[row], STARTER_SHARES[column], unaided)
            assert told == pytest.approx(tuple(DAYS[unaided][row, column]))


@unaided_or_not
@given(temperatures=st.lists(st.floats(0, 45), min_size=1, max_size=64), share=shares)
def test_many_temperatures_are_each_alone(unaided: bool, temperatures: list[float], share: float) -> None:
    together = start_up_days_of(TABLE, np.array(temperatures), share, unaided)
    assert together.shape == (3, len(temperatures))
    for place, temperature in enumerate(temperatures):
        assert together[:, place] == pytest.approx(start_up_days(TABLE, temperature, share, unaided))


@given(beyond=st.floats(0.01, 20), share=shares)
def test_beyond_the_ends_the_ends_are_told(beyond: float, share: float) -> None:
    assert start_up_days(TABLE, 10.0 - beyond, share, True) == start_up_days(TABLE, 10.0, share, True)
    assert start_up_days(TABLE, 35.0 + beyond, share, True) == start_up_days(TABLE, 35.0, share, True)
    assert start_up_days(TABLE, 20.0, 0.5 + beyond, True) == start_up_days(TABLE, 20.0, 0.5, True)
    assert start_up_days(TABLE, 20.0, -beyond, True) == start_up_days(TABLE, 20.0, 0.0, True)


def rises(days: Array, axis: int) -> Array:
    """Where days rise along an axis, by more than the rounding of the file."""
    before, after = np.delete(days, -1, axis), np.delete(days, 0, axis)
    risen: Array = after > np.where(np.isfinite(before), before, np.inf) * 1.01
    return risen


@unaided_or_not
def test_warmer_is_never_slower(unaided: bool) -> None:
    """But where warmth makes a charge with few microbes sour: acids form faster, and fewer samples start at all."""
    soured = np.diff(STARTED[unaided], axis=0) < 0
    assert not (rises(DAYS[unaided], 0) & ~soured[..., None]).any()
    assert not rises(DAYS[True][..., :2], 0).any()


@unaided_or_not
def test_more_starter_is_never_slower_up_to_three_tenths(unaided: bool) -> None:
    """Beyond that the dung that is left gives less gas to drive the air out."""
    last = STARTER_SHARES.index(0.20) + 1
    for end in (0, 1, 2):
        assert not rises(DAYS[unaided][:, :last, end], 1).any()
    assert rises(DAYS[unaided][:, -2:, 1], 1).any()
    assert (np.diff(STARTED[unaided], axis=1) >= 0).all()


def test_a_charge_without_microbes_never_starts_alone_and_one_with_them_starts_sooner() -> None:
    assert np.isinf(DAYS[False][:, 0]).all()
    assert (STARTED[False][:, 0] == 0).all()
    assert (DAYS[True][..., :2] <= DAYS[False][..., :2] * 1.01).all()
    assert np.isinf(start_up_days(TABLE, 25.0, 0.01, False)[1])


@given(low=st.floats(0.1, 1), first=st.floats(0, 1), second=st.floats(0, 1))
def test_samples_are_strata_of_a_triangular_distribution(low: float, first: float, second: float) -> None:
    """Against scipy's quantiles."""
    typical, high = low + first, low + first + second + 1e-3
    ours = drawn("growth_factor", Spread(low, typical, high))
    law = stats.triang((typical - low) / (high - low), low, high - low)
    assert ours[0] == typical
    assert np.sort(ours[1:]) == pytest.approx(law.ppf((np.arange(SAMPLES) + 0.5) / SAMPLES), rel=1e-9)


def test_no_two_figures_are_drawn_together() -> None:
    """Correlations of the samples of 64: by chance alone 0.125 is usual and 0.4 is not."""
    unit = Spread(0.0, 0.5, 1.0)
    columns = [drawn(name, unit)[1:] for name in sorted(DRAWN)]
    assert np.abs(np.corrcoef(columns) - np.eye(len(columns))).max() < 0.4
    assert drawn("cell_yield", Spread(2.0, 2.0, 2.0)) == pytest.approx(2.0)


def layered(tmp_path: Path, text: str) -> StartUpTable:
    file = tmp_path / "layer.yaml"
    file.write_text(text, "utf-8")
    return start_up_table_of(load(file).data)


def test_a_pack_that_changes_nothing_of_it_has_the_same_table(tmp_path: Path) -> None:
    assert layered(tmp_path, "substrates:\n  cattle_dung: {name: Dung of our cows}\n") is TABLE


def test_a_pack_that_slows_the_microbes_has_its_own_table(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """On a grid of two by two, so that it does not take long."""
    computed: Callable[[object], StartUpTable] = written_table.computed
    for name, axis in (("TEMPERATURES", (20.0, 30.0)), ("STARTER_SHARES", (0.1, 0.2))):
        monkeypatch.setattr(f"kilisho.process.start_up.{name}", axis)
    usual = computed(BASIS)
    slow = layered(tmp_path, "process:\n  growth_factor: {low: 0.5, typical: 0.6, high: 0.7, unit: '1', basis: judgement}\n")
    for row in range(2):
        for column in range(2):
            assert slow.days[True][row][column][1] > usual.days[True][row][column][1]


def test_more_of_anything_that_helps_starts_sooner() -> None:
    warm, share = np.array([22.0]), np.array([0.1])
    usual = first_charge_days(warm, share, cattle(), PARAMETERS)[0]
    for change in ({"growth_factor": 1.2}, {"slurry_methanogens": 1.0}, {"methanogens_of_ruminants": 0.004}):
        changed = replace(PARAMETERS, **change)
        assert first_charge_days(warm, share, cattle(parameters=changed), changed)[0] < usual, change
