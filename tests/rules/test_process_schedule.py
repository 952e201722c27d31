"""How many steps a day takes: more where something happens, one in a routine, and nothing but feeds and warmth decide."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import numpy.typing as npt
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.process_cases import KITCHEN, PARAMETERS, SOLIDS, Array, cattle, charge, of, steady

from kilisho.process import Feedstock, History, Parameters
from kilisho.process.schedule import scaled, steps_of

Steps = npt.NDArray[np.intp]
DAYS = 365


def steps(
    feeds: tuple[Array, Array],
    temperature: float = 25.0,
    feed: Feedstock | None = None,
    tanks: int = 1,
    parameters: Parameters = PARAMETERS,
) -> Steps:
    """Steps a day in a full digester of 6 m3."""
    solids, slurry = feeds
    warm = np.full((slurry.shape[0], 1), temperature)
    told = steps_of(History(feed or cattle(), solids, slurry), np.full(slurry.shape, 6.0), warm, parameters, tanks)
    return np.broadcast_to(told, slurry.shape)[:, 0]


def test_a_routine_takes_one_step_a_day_after_its_first_days() -> None:
    told = steps(steady(DAYS, 6.0, 50.0))
    assert told[0] == 8
    assert (told[10:] == 1).all()


@pytest.mark.parametrize("temperature", [15.0, 20.0, 25.0, 30.0, 35.0])
def test_a_charge_is_followed_closely_until_its_acids_are_caught_up_with(temperature: float) -> None:
    told = steps(charge(DAYS, 6.0), temperature)
    assert told[0] >= 8
    quiet = int(np.flatnonzero(told > 1).max())
    # Nine to ten foldings by e at the greatest growth: a month when warm, five when cold.
    assert 20 < quiet < 160
    assert (np.diff(told) <= 0).all()


def test_cold_takes_fewer_steps_for_longer() -> None:
    cold, warm = (steps(charge(DAYS, 6.0), temperature) for temperature in (15.0, 30.0))
    assert (cold > 1).sum() > (warm > 1).sum()
    assert cold[10:20].max() < warm[10:20].max()


@given(factor=st.floats(0.5, 0.95))
def test_slower_microbes_are_followed_for_longer(factor: float) -> None:
    slow = steps(charge(DAYS, 6.0), parameters=replace(PARAMETERS, growth_factor=factor))
    assert (slow > 1).sum() >= (steps(charge(DAYS, 6.0)) > 1).sum()


@given(day=st.integers(20, 300), times=st.floats(1, 30), more=st.floats(1, 4))
def test_a_larger_dose_is_never_followed_less(day: int, times: float, more: float) -> None:
    told = []
    for dose in (times, times * more):
        solids, slurry = steady(DAYS, 6.0, 60.0)
        solids[day], slurry[day] = solids[day] * dose, slurry[day] * dose
        told.append(steps((solids, slurry)))
    assert (told[1] >= told[0])[day:].all()
    assert (told[1] == told[0])[:day].all()


def test_a_dose_after_months_of_routine_is_followed_and_forgotten() -> None:
    solids, slurry = steady(DAYS, 6.0, 60.0)
    solids[200], slurry[200] = 10 * solids[200], 10 * slurry[200]
    told = steps((solids, slurry))
    assert told[199] == 1
    assert told[200] > 2
    assert (told[250:] == 1).all()


def test_fresh_sugar_is_followed_more_closely_than_slow_matter() -> None:
    slow, quick = (steps(steady(DAYS, 6.0, 60.0), feed=of(KITCHEN, quick_share=share)) for share in (0.0, 0.5))
    assert quick[100:].min() > slow[100:].max()


def test_the_first_of_many_tanks_gets_the_dose_undiluted() -> None:
    one, three = (steps(steady(DAYS, 6.0, 70.0), tanks=tanks) for tanks in (1, 3))
    assert (three >= one).all()
    assert three[100:].max() > one[100:].max()


def test_every_number_of_steps_is_a_power_of_two() -> None:
    rng = np.random.default_rng(4)
    slurry = rng.uniform(0.02, 2.0, (DAYS, 1)) * (rng.random((DAYS, 1)) < 0.3)
    told = steps((SOLIDS * slurry[:, None, :], slurry), 28.0)
    assert set(told) <= {1, 2, 4, 8, 16}
    assert len(set(told)) > 2


@given(substeps=st.integers(1, 96))
def test_the_callers_steps_scale_all_days_alike(substeps: int) -> None:
    told = steps(charge(DAYS, 6.0))[:, None]
    assert scaled(told, substeps)[:, 0].tolist() == [max(int(count) * substeps // 8, 1) for count in told[:, 0]]


def test_a_digester_that_is_never_fed_is_never_lively_for_long() -> None:
    told = steps((np.zeros((DAYS, 1, 1)), np.zeros((DAYS, 1))))
    assert (told[10:] == 1).all()
