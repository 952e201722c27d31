"""The parts of the process model one by one: acidity, uptake, the gas over the slurry, what a feed brings, and copies of some farms."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import solve_ivp
from tests.rules.process_cases import CATTLE, KITCHEN, LAYERS, PARAMETERS, both, cattle, of

from kilisho.formulas.ammonia import free_ammonia_share
from kilisho.process import Start
from kilisho.process.accounts import nitrogen_in, oxygen_demand
from kilisho.process.acidity import ammonia_factor, equilibria, hydrogen, ph_factor, ph_of
from kilisho.process.pace import pace_of
from kilisho.process.parameters import METHANE_PER_COD
from kilisho.process.state import ACIDS, AMMONIA, GAS_IN_ACIDS, INERT, METHANOGENS, State, brought_by, first_state
from kilisho.process.traits import of_farms, traits_of
from kilisho.process.uptake import gas_over, left_over, used_up

SOME = np.array([0, 2])


# Acidity


@given(seed=st.integers(0, 2**32 - 1))
def test_ph_of_many_is_that_of_each_alone_to_the_last_digits(seed: int) -> None:
    rng = np.random.default_rng(seed)
    farms = 6
    strength = rng.uniform(0, 300, (2, 1, farms))
    cations, share, warm = rng.uniform(0, 100, (1, farms)), rng.uniform(0, 1, (1, farms)), rng.uniform(5, 40, (1, farms))
    guess = 10.0 ** rng.uniform(-6, 1, (1, farms))
    together = hydrogen(guess, strength, cations, share, equilibria(warm))
    for farm in range(farms):
        one = np.s_[..., farm : farm + 1]
        alone = hydrogen(guess[one], strength[one], cations[one], share[one], equilibria(warm[one]))
        assert together[0, farm] == pytest.approx(alone[0, 0], rel=1e-13)


@given(ammonia=st.floats(1, 300), cations=st.floats(1, 80), share=st.floats(0.1, 0.8), more=st.floats(1, 100))
def test_acid_and_carbon_dioxide_sour_and_bases_do_not(ammonia: float, cations: float, share: float, more: float) -> None:
    def ph(ammonia: float, cations: float, acids: float, share: float) -> float:
        strength = np.array([[[ammonia]], [[acids]]])
        ions = hydrogen(np.array([[1e-4]]), strength, np.array([[cations]]), np.array([[share]]), equilibria(np.array([[25.0]])))
        return float(ph_of(ions)[0, 0])

    usual = ph(ammonia, cations, 5.0, share)
    assert ph(ammonia, cations, 5.0 + more, share) < usual
    assert ph(ammonia, cations, 5.0, min(share * 1.2, 1.0)) < usual
    assert ph(ammonia, cations + more, 5.0, share) > usual
    assert ph(ammonia + more, cations, 5.0, share) > usual


def test_pure_water_under_air_without_carbon_dioxide_is_neutral() -> None:
    zero = np.zeros((1, 1))
    ions = hydrogen(np.full((1, 1), 1e-4), np.zeros((2, 1, 1)), zero, zero, equilibria(np.array([[25.0]])))
    assert ph_of(ions)[0, 0] == pytest.approx(7.0, abs=1e-4)


def test_rain_under_the_carbon_dioxide_of_the_air_has_ph_5_6() -> None:
    """Common knowledge of chemistry: 400 ppm at 25 Cel."""
    zero = np.zeros((1, 1))
    ions = hydrogen(np.full((1, 1), 1e-4), np.zeros((2, 1, 1)), zero, np.full((1, 1), 4e-4), equilibria(np.array([[25.0]])))
    assert ph_of(ions)[0, 0] == pytest.approx(5.61, abs=0.03)


@given(upper=st.floats(6, 8), room=st.floats(0.2, 3), ph=st.floats(2, 10))
def test_the_hold_of_acidity_is_one_above_and_a_twentieth_at_its_lower_end(upper: float, room: float, ph: float) -> None:
    lower = upper - room
    told = ph_factor(np.array([upper, upper + 1, lower, ph]), upper, lower)
    assert told[:3] == pytest.approx([1.0, 1.0, np.exp(-3.0)])
    assert 0.0 <= told[3] <= 1.0


@given(ph=st.floats(6, 9), temperature=st.floats(5, 40), ammonia=st.floats(10, 500))
def test_growth_is_halved_where_free_ammonia_reaches_its_limit(ph: float, temperature: float, ammonia: float) -> None:
    ions, ammonium = np.array([10.0 ** (3.0 - ph)]), equilibria(np.array([temperature])).weak[0]
    free = ammonia * free_ammonia_share(ph, temperature)
    assert ammonia_factor(ions, np.array([ammonia]), ammonium, 0.0, free)[0] == pytest.approx(0.5, rel=1e-6)
    assert ammonia_factor(ions, np.array([ammonia]), ammonium, ammonia, 1e12)[0] == pytest.approx(0.5, rel=1e-6)


# Uptake and gas


@given(before=st.floats(0, 50), source=st.floats(0, 20), spread=st.floats(1e-6, 30))
def test_uptake_is_that_of_the_differential_equation(before: float, source: float, spread: float) -> None:
    """d(acids)/dt = source - spread * acids over a step of 1."""
    left = solve_ivp(lambda _, acids: source - spread * acids, (0, 1), [before], "Radau", rtol=1e-9, atol=1e-11).y[0, -1]
    ours = used_up(np.array([before]), np.array([source]), np.array([spread]))[0]
    assert ours == pytest.approx(before + source - left, rel=1e-5, abs=1e-7)


@given(before=st.floats(0, 50), source=st.floats(0, 20), spread=st.floats(0, 1e6))
def test_no_more_is_used_than_there_is(before: float, source: float, spread: float) -> None:
    ours = used_up(np.array([before]), np.array([source]), np.array([spread]))[0]
    assert -1e-9 <= ours <= before + source + 1e-9


def test_half_the_cells_work_at_half_saturation() -> None:
    left = left_over(np.array([1.0]), np.array([1.0]), np.array([0.5]))
    assert left[0] == pytest.approx(0.5)


@given(share=st.floats(0, 1), methane=st.floats(0, 1), carbon_dioxide=st.floats(0, 1), held=st.floats(1, 20))
def test_the_gas_over_the_slurry_moves_towards_what_is_made(share: float, methane: float, carbon_dioxide: float, held: float) -> None:
    after = float(gas_over(*(np.array([value]) for value in (share, methane, carbon_dioxide, held)))[0])
    made = carbon_dioxide / (methane + carbon_dioxide) if methane + carbon_dioxide > 1e-6 else share
    assert min(share, made) - 1e-6 <= after <= max(share, made) + 1e-6
    rate = (methane + carbon_dioxide) / held
    assert after == pytest.approx(made + (share - made) * np.exp(-rate), abs=0.1 * rate**2 + 1e-6)


# What a feed brings


@given(amounts=st.tuples(st.floats(0, 50), st.floats(0, 50)))
def test_a_feed_brings_all_its_oxygen_demand_and_nitrogen(amounts: tuple[float, float]) -> None:
    feed, solids = both(KITCHEN, LAYERS), np.array(amounts)[None, :, None]
    traits = traits_of(feed, PARAMETERS)
    rows, _ = brought_by(solids, feed, traits.release, 1)
    per_solids = feed.degradable + feed.inert + feed.methanogens
    assert oxygen_demand(rows)[0, 0] == pytest.approx((solids[0] * per_solids).sum())
    nitrogen = feed.ammonia + feed.releasable + feed.bound + 14 / 160 * feed.methanogens
    assert nitrogen_in(rows, traits.release[3, :, 0])[0, 0] == pytest.approx((solids[0] * nitrogen).sum())


def test_what_sours_at_once_comes_as_acids_with_its_gas_and_nitrogen() -> None:
    slow, quick = (of(KITCHEN, quick_share=share) for share in (0.0, 0.4))
    one = np.ones((1, 1, 1))
    (plain, none), (soured, gas) = (brought_by(one, feed, traits_of(feed, PARAMETERS).release, 1) for feed in (slow, quick))
    assert none[0, 0] == 0.0
    assert plain[0, ACIDS, 0] == 0.0
    acids = soured[0, ACIDS, 0]
    assert acids == pytest.approx(0.4 * quick.degradable[0, 0])
    # Carbon dioxide over methane as the methane share has it, two of three parts at once.
    carbon_dioxide = acids * METHANE_PER_COD * 0.95 * 0.4 / 0.6
    assert gas[0, 0] == pytest.approx(carbon_dioxide * 2 / 3)
    assert soured[0, GAS_IN_ACIDS, 0] == pytest.approx(carbon_dioxide / 3)
    assert soured[0, INERT, 0] > 0
    assert soured[0, AMMONIA, 0] > quick.ammonia[0, 0]


# Some farms of many


def three_farms() -> State:
    return first_state(Start(volume=np.array([1.0, 2.0, 3.0]), acids=1.0, methanogens=0.5, strong_cations=10.0), 3, 2, 1)


def test_what_is_written_into_the_first_farms_is_written_into_all() -> None:
    state = three_farms()
    part = state.first(2)
    assert part.pools[ACIDS].tolist() == [[0.5, 1.0], [0.5, 1.0]]
    part.pools[ACIDS] += 1.0
    part.ions[:] = 7.0
    assert state.pools[ACIDS, 0].tolist() == [1.5, 2.0, 1.5]
    assert state.ions[:, :2].min() == 7.0
    assert state.ions[:, 2].max() < 1.0
    assert state.pools[METHANOGENS, 0].tolist() == [0.25, 0.5, 0.75]


def test_farms_that_change_places_take_everything_along() -> None:
    state, expected = three_farms(), three_farms()
    state.ions[:] = expected.ions[:] = [1.0, 2.0, 3.0]
    first = state.first(1)
    state.reorder(np.array([2, 0, 1]))
    for name in ("pools", "ions", "gas_share", "growth", "forming", "methane", "carbon_dioxide"):
        assert np.array_equal(getattr(state, name), getattr(expected, name)[..., [2, 0, 1]]), name
    # Views stay views.
    assert first.ions[:, 0].tolist() == [3.0, 3.0]


def test_tanks_may_start_with_contents_of_their_own() -> None:
    contents = np.array([[1.0, 2.0], [3.0, 4.0]])
    state = first_state(Start(volume=2.0, acids=contents, degradable=contents[None], gas_share=contents / 10), 2, 2, 1)
    assert state.pools[ACIDS].tolist() == contents.tolist()
    assert state.pools[0].tolist() == contents.tolist()
    assert state.gas_share[1, 0] == pytest.approx(0.3)


def test_what_serves_all_farms_is_not_cut() -> None:
    assert of_farms(0.5, SOME) == 0.5
    assert of_farms(np.ones((4, 1)), SOME).shape == (4, 1)
    assert of_farms(np.arange(3.0), SOME).tolist() == [0.0, 2.0]
    feed = of(CATTLE, degradation_rate=np.array([0.006, 0.009, 0.02]), methane_share=np.array([0.55, 0.6, 0.65]))
    traits = traits_of(feed, PARAMETERS)
    assert traits.at(SOME).release.shape == (4, 1, 1, 2)
    assert np.array_equal(traits.at(SOME).release, traits.release[..., [0, 2]])
    assert np.array_equal(traits.first(2).release, traits.release[..., :2])
    assert traits.first(2).per_acids.shape == traits.per_acids.shape == (3, 1, 1)


def test_what_is_stacked_for_a_step_is_what_stands_alone() -> None:
    drawn = replace(PARAMETERS, upper_ph=np.array([6.8, 6.9]), cell_yield=np.array([0.05, 0.06]))
    traits = traits_of(cattle(), drawn)
    assert traits.begin[:, 0].tolist() == [[6.8, 6.9], [drawn.acidifiers_upper_ph] * 2]
    assert traits.end[:, 0].tolist() == [[drawn.lower_ph], [drawn.acidifiers_lower_ph]]
    assert traits.per_acids[:, 0].tolist() == [list(traits.cell_yield), list(traits.methane), list(traits.nitrogen)]


def test_the_pace_of_a_day_in_more_steps_is_the_same_day() -> None:
    """What outlives a step, to the power of the steps, outlives the day."""
    warm, steps = np.array([[15.0, 25.0], [20.0, 30.0]]), np.array([[1, 8], [8, 2]])
    paces = [pace_of(many, warm, np.full((2, 2), 6.0), 1, cattle().rate, PARAMETERS) for many in (np.ones_like(steps), steps)]
    for day in (0, 1):
        one, many = (pace.on(day) for pace in paces)
        assert many.outlive ** steps[day] == pytest.approx(one.outlive)
        assert (1.0 - many.formed) ** steps[day] == pytest.approx(1.0 - one.formed)
        assert steps[day] * many.half_uptake == pytest.approx(one.half_uptake)
        assert many.first(1).outlive == pytest.approx(many.outlive[:, :1])
        assert one.saturation == pytest.approx(6.0 * 0.6)


def test_a_pace_in_another_order_is_that_of_each_farm() -> None:
    warm, order = np.array([[15.0, 25.0], [20.0, 30.0]]), np.array([[1, 0], [0, 1]])
    steps, volume = np.array([[2, 4], [8, 1]]), np.array([[5.0, 6.0], [7.0, 8.0]])
    as_came = pace_of(steps, warm, volume, 1, cattle().rate, PARAMETERS)
    stood = as_came.ordered(order)
    for name in ("half_rate", "formed", "half_uptake", "outlive", "saturation", "per_mass", "per_volume"):
        came, stand = getattr(as_came, name), getattr(stood, name)
        assert np.array_equal(stand[0], came[0][..., ::-1]), name
        assert np.array_equal(stand[1], came[1]), name
    assert np.array_equal(stood.constants.weak[0], as_came.constants.weak[0][..., ::-1])
