"""The time scheme of the process model: against scipy, against halved steps, and in arrays against one farm at a time."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.linalg import expm
from tests.rules.process_cases import (
    KITCHEN,
    LAYERS,
    PARAMETERS,
    SOLIDS,
    Array,
    Reference,
    both,
    cattle,
    charge,
    healthy,
    hydrogen_by_bracketing,
    of,
    run_of,
    steady,
)

from kilisho.process import Conditions, Feedstock, History, Start, simulate
from kilisho.process.acidity import equilibria, hydrogen
from kilisho.process.flow import pour
from kilisho.process.uptake import left_over


@given(
    temperature=st.floats(0, 45),
    amounts=st.tuples(st.floats(0, 500), st.floats(0, 200), st.floats(0, 800)),
    gas_share=st.floats(0, 1),
    guess=st.floats(-8, 2),
)
def test_ph_solves_the_balance_of_charges(temperature: float, amounts: tuple[float, float, float], gas_share: float, guess: float) -> None:
    wrap = [np.array([[value]]) for value in amounts]
    ours = hydrogen(np.array([[10.0**guess]]), (wrap[0], wrap[1], wrap[2]), np.array([[gas_share]]), equilibria(np.array([temperature])))
    expected = hydrogen_by_bracketing(temperature, amounts, gas_share)
    assert np.log10(ours[0, 0]) == pytest.approx(np.log10(expected), abs=2e-5)


@given(acids=st.floats(0, 1e3), capacity=st.floats(0, 1e4), half=st.floats(1e-3, 10))
def test_implicit_uptake_solves_its_equation(acids: float, capacity: float, half: float) -> None:
    left = float(left_over(np.array([acids]), np.array([capacity]), np.array([half]))[0])
    assert 0 <= left <= acids * (1 + 1e-12)
    assert left + capacity * left / (half + left) == pytest.approx(acids, rel=1e-9, abs=1e-9)


@pytest.mark.parametrize("tanks", [1, 2, 4])
def test_pouring_through_tanks_is_the_matrix_exponential(tanks: int) -> None:
    rng = np.random.default_rng(7)
    pools, volume, slurry = rng.uniform(0, 5, (1, tanks, 1)), np.array([6.0]), np.array([2.5])
    moved, after, left = pour(pools, volume, np.array([[30.0]]), slurry, volume)
    chain = np.zeros((tanks + 1, tanks + 1))
    for tank in range(tanks):
        chain[tank, tank], chain[tank, tank - 1 if tank else tanks] = -1.0, 1.0
    start = np.append(pools[0, :, 0], 30.0 / 2.5 * 6.0 / tanks)
    expected = expm(chain * 2.5 * tanks / 6.0) @ start
    assert moved[0, :, 0] == pytest.approx(expected[:tanks], rel=1e-12)
    assert after[0] == 6.0
    assert left[0, 0] == pytest.approx(pools.sum() + 30.0 - moved.sum(), rel=1e-12)


def test_filling_lets_nothing_out_and_spreads_over_the_tanks() -> None:
    moved, after, left = pour(np.zeros((1, 3, 1)), np.array([0.0]), np.array([[9.0]]), np.array([2.0]), np.array([6.0]))
    assert after[0] == 2.0
    assert moved[0, :, 0] == pytest.approx([3.0, 3.0, 3.0])
    assert left[0, 0] == 0.0


BATCHES: dict[str, tuple[float, float, Feedstock, float]] = {
    "start-up at 25 Cel": (25.0, 60.0, cattle(), 0.0),
    "cold start at 12 Cel": (12.0, 60.0, cattle(), 0.0),
    "overload that sours": (25.0, 90.0, cattle(starts_unaided=False), 0.3),
    "ammonia of poultry": (30.0, 60.0, of(LAYERS), 0.3),
}


@pytest.mark.parametrize("name", BATCHES)
def test_batches_follow_scipy(name: str) -> None:
    temperature, strength, feed, starter = BATCHES[name]
    days, volume = 40, 6.0
    dung = volume * (1 - starter)
    ours = run_of(charge(days, dung, strength), temperature, healthy(volume * starter), feed, substeps=48)
    coarse = run_of(charge(days, dung, strength), temperature, healthy(volume * starter), feed)
    solids, slurry = dung * strength, volume * starter
    state = np.array([
        solids * feed.degradable[0, 0], 0.1 * slurry, solids * feed.methanogens[0, 0] + 0.7 * slurry,
        solids * feed.ammonia[0, 0] + 0.8 * slurry, 0.0, 0.0, 0.0, 0.4,
    ])  # fmt: skip
    cations = (solids * feed.strong_cations[0, 0] + 15.0 * slurry) / volume
    told = Reference(feed, volume, temperature, PARAMETERS).days(state, cations, days)
    gas = told[:, 5] + told[:, 6]
    for run, share in ((ours, 2e-4), (coarse, 3e-3)):
        assert np.cumsum(run.biogas_normal[:, 0]) == pytest.approx(gas, rel=share)
        assert np.cumsum(run.methane[:, 0]) == pytest.approx(told[:, 5], rel=5 * share, abs=share * gas[-1])
        assert run.acids[:, 0] * volume == pytest.approx(told[:, 1], rel=10 * share, abs=10 * share * told[:, 1].max())
        assert run.ammonia[:, 0] * volume == pytest.approx(told[:, 3], rel=share)
        assert run.methanogens[:, 0] * volume == pytest.approx(told[:, 2], rel=10 * share)


def test_fed_days_follow_scipy() -> None:
    days, volume, temperature = 30, 6.0, 25.0
    feed = cattle()
    solids, slurry = steady(days, volume, 40.0)
    ours = run_of((solids, slurry), temperature, healthy(volume))
    reference = Reference(feed, volume, temperature, PARAMETERS)
    state = np.array([0.0, 0.6, 4.2, 4.8, 0.0, 0.0, 0.0, 0.4])
    cations, gas = 15.0, []
    kept = np.exp(-slurry[0, 0] / volume)
    per_volume = SOLIDS * np.array([feed.degradable, feed.methanogens, feed.ammonia])[:, 0, 0] * volume * (1 - kept)
    for _ in range(days):
        state[:5] *= kept
        state[[0, 2, 3]] += per_volume
        cations = cations * kept + (1 - kept) * SOLIDS * feed.strong_cations[0, 0]
        state[5:7] = 0.0
        state = reference.days(state, cations, 1)[-1]
        gas.append(state[5] + state[6])
    # On the second day the acids of the start run out, within hours.
    assert ours.biogas_normal[:, 0] == pytest.approx(gas, rel=2e-3)
    assert ours.biogas_normal[2:, 0] == pytest.approx(gas[2:], rel=1e-3)
    assert ours.methanogens[-1, 0] * volume == pytest.approx(state[2], rel=1e-3)


@pytest.mark.parametrize("temperature", [10.0, 18.0, 25.0, 30.0])
def test_halving_the_step_changes_no_day_by_a_thousandth(temperature: float) -> None:
    solids, slurry = steady(120, 6.0, 50.0)
    slurry[0], solids[0] = 6.0, 6.0 * SOLIDS
    for start in (Start(), healthy(2.0)):
        solids[0], slurry[0] = SOLIDS * (6.0 - start.volume), 6.0 - start.volume
        whole, half = (run_of((solids, slurry), temperature, start, substeps=count).biogas for count in (8, 16))
        assert whole == pytest.approx(half, rel=1e-3)


def test_halving_the_step_where_acids_run_out_within_a_day() -> None:
    """A fresh charge at 35 Cel: the one day on which the acids run out moves by up to 0.3 %, the gas in all by less than 0.1 %."""
    whole, half = (run_of(charge(60, 6.0), 35.0, substeps=count).biogas for count in (8, 16))
    assert whole == pytest.approx(half, rel=3e-3)
    assert np.cumsum(whole) == pytest.approx(np.cumsum(half), rel=1e-3)


def test_many_farms_at_once_are_each_farm_alone() -> None:
    rng = np.random.default_rng(3)
    farms, days, feed = 5, 90, both(KITCHEN, LAYERS)
    solids, slurry = rng.uniform(0, 6, (days, 2, farms)), rng.uniform(0.05, 0.3, (days, farms))
    volume, warm = rng.uniform(4, 8, farms), rng.uniform(12, 35, (days, farms))
    held = rng.uniform(0, 4, farms)
    many = simulate(History(feed, solids, slurry, healthy_array(held)), Conditions(volume, warm, 2), PARAMETERS)
    for farm in range(farms):
        one = slice(farm, farm + 1)
        history = History(feed, solids[:, :, one], slurry[:, one], healthy_array(held[one]))
        alone = simulate(history, Conditions(volume[one], warm[:, one], 2), PARAMETERS)
        for name in ("biogas", "acids", "ph", "ammonia", "methanogens", "cod_held"):
            # The rounds of the pH solver follow the slowest farm, so the last digits differ.
            assert getattr(many, name)[:, farm] == pytest.approx(getattr(alone, name)[:, 0], rel=1e-4), name


def healthy_array(volume: Array) -> Start:
    """A start with one volume a farm."""
    return Start(volume=volume, methanogens=0.7, acids=0.1, ammonia=0.8, strong_cations=15.0)
