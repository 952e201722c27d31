"""The search for a mix against a grid, against scipy's other interface; limits, scaling, monotony."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from scipy.optimize import linprog
from tests.rules.mix_cases import DROPPINGS, DUNG, STRAW, accounts, best_of_grid, cost, gas, kept, mix_of, mixes

from kilisho.formulas.feed_mix import WHOLE, Mix, gas_at, gas_of_mix, limits_of, slurry_of
from kilisho.formulas.feed_mix_gains import cost_of, gain_of, gain_of_demand, holding, largest_use
from kilisho.formulas.feed_mix_program import GAS_DEMAND, Program, Wish
from kilisho.formulas.feed_mix_relaxing import Need, alone, together
from kilisho.formulas.feed_mix_search import CONTENT, best, gap

FARM = mix_of(DUNG, DROPPINGS, STRAW, available=(84.0, 20.0, 30.0), shares={2: 0.15})
ROUNDING = 2e-6  # the solver's tolerance, in ratios that are kept without a margin


def solved(mix: Mix, wish: Wish = "most_gas", demand: float = 0.0) -> tuple[list[float], float] | None:
    """Masses and water of the best mix."""
    found = best(Program(mix, wish, demand)).best
    return None if found is None else (found.unknowns[:-1].tolist(), float(found.unknowns[-1]))


def most_gas(mix: Mix) -> float:
    found = solved(mix)
    return 0.0 if found is None or not sum(found[0]) else float(gas(mix, *found))


# ---- the account of limits and gas ------------------------------------------------------------------------------------------------


@given(mixes(3), st.lists(st.floats(0.1, 100), min_size=4, max_size=4))
def test_ratios_of_limits_and_gas_are_those_of_their_definitions(mix: Mix, amounts: list[float]) -> None:
    masses, water = amounts[:3], amounts[3] / 1000
    told = {limit.key: limit.reached(np.array([*masses, water])) for limit in limits_of(mix)}
    expected = accounts(mix, masses, water)
    assert {key: pytest.approx(expected[key], rel=1e-12) for key in told} == told
    assert set(told) == set(mix.limits)
    assert gas_of_mix(mix, np.array([*masses, water])) == pytest.approx(gas(mix, masses, water), rel=1e-12)


@given(mixes(2), st.lists(st.floats(0.1, 100), min_size=3, max_size=3))
def test_a_row_is_kept_exactly_where_its_ratio_is(mix: Mix, amounts: list[float]) -> None:
    unknowns = np.array([*amounts[:2], amounts[2] / 1000])
    for limit in limits_of(mix):
        assume(abs(limit.reached(unknowns) / limit.bound - 1) > 1e-9)
        assert (limit.row().of(unknowns) <= 0) is (limit.sense * (limit.reached(unknowns) - limit.bound) <= 0)


# ---- the best mix ----------------------------------------------------------------------------------------------------------------


@given(mixes(2))
@settings(max_examples=40)
def test_no_point_of_a_grid_of_two_substrates_gives_more_gas(mix: Mix) -> None:
    found, rival = solved(mix), best_of_grid(mix, lambda m, w: gas(mix, m, w))
    if rival is None:
        return
    assert found is not None
    assert kept(mix, *found, slack=ROUNDING)
    assert gas(mix, *found) >= rival * (1 - 1e-4)


def test_the_grid_of_three_substrates_comes_near_the_search_and_never_beyond_it() -> None:
    found, rival = solved(FARM), best_of_grid(FARM, lambda m, w: gas(FARM, m, w), points=17, rounds=9)
    assert found is not None
    assert rival is not None
    assert kept(FARM, *found, slack=ROUNDING)
    assert rival <= gas(FARM, *found) * (1 + 1e-5)
    assert rival >= gas(FARM, *found) * 0.985


@given(mixes(2), st.floats(0.2, 0.95))
@settings(max_examples=30)
def test_no_point_of_a_grid_meets_the_demand_for_less(mix: Mix, part: float) -> None:
    demand = part * most_gas(mix)
    assume(demand > 1e-3)
    found = solved(mix, "cheapest", demand)
    assert found is not None
    assert kept(mix, *found, slack=ROUNDING)
    assert gas(mix, *found) >= demand * (1 - ROUNDING)
    rival = best_of_grid(mix, lambda m, w: -cost(mix, m, w), lambda m, w: gas(mix, m, w) >= demand)
    if rival is not None:
        assert cost(mix, *found) <= -rival + 1e-4 * abs(rival) + 1e-5


@given(mixes(2), st.floats(0.2, 0.95))
@settings(max_examples=30)
def test_no_point_of_a_grid_meets_the_demand_from_a_smaller_part_of_what_there_is(mix: Mix, part: float) -> None:
    demand = part * most_gas(mix)
    assume(demand > 1e-3)
    found = solved(mix, "most_even", demand)
    assert found is not None
    assert kept(mix, *found, slack=ROUNDING)
    assert gas(mix, *found) >= demand * (1 - ROUNDING)
    there = [mix.limits["available", i] for i in range(2)]
    rival = best_of_grid(mix, lambda m, w: -np.maximum(m[0] / there[0], m[1] / there[1]), lambda m, w: gas(mix, m, w) >= demand)
    if rival is not None:
        assert largest_use(mix, np.array([*found[0], found[1]])) <= -rival * (1 + 1e-4)


@given(mixes(3))
@settings(max_examples=10)
def test_the_proof_bounds_what_finer_searching_finds(mix: Mix) -> None:
    search = best(Program(mix, "most_gas"))
    before = most_gas(mix)
    proved = gap(search)
    assert proved >= 0
    top = mix.most_slurry()
    rivals = [search.program.at(slurry) for slurry in np.linspace(top / 100, top, 100)]
    finest = max((gas_of_mix(mix, one.unknowns) for one in rivals if one is not None), default=0.0)
    assert finest <= before * (1 + max(proved, CONTENT)) + 1e-9
    assert finest <= before * (1 + 1e-4) + 1e-9


@given(mixes(3), st.floats(0.1, 1))
@settings(max_examples=25)
def test_at_one_slurry_the_program_is_solved_as_scipys_linprog_solves_it(mix: Mix, part: float) -> None:
    """The same linear program written out anew and given to scipy.optimize.linprog's simplex."""
    slurry = part * mix.most_slurry()
    found = Program(mix, "most_gas").at(slurry)
    rows = [limit.row() for limit in limits_of(mix)]
    table = np.array([*(row.coefficients for row in rows), slurry_of(mix)])
    bounds = np.array([*(-row.constant for row in rows), slurry])
    worth = gas_at(mix, slurry)
    theirs = linprog(-worth, A_ub=table, b_ub=bounds, method="highs-ds")
    assert found is not None
    assert theirs.status == 0
    assert float(worth @ found.unknowns) == pytest.approx(-theirs.fun, rel=1e-4, abs=1e-6)


def test_a_score_between_two_slurries_bounds_every_mix_between_them() -> None:
    program = Program(FARM, "most_gas")
    top = FARM.most_slurry()
    for low, high in ((0.0, top / 8), (top / 8, top / 2), (top / 2, top)):
        bound = program.between(low, high)
        inside = [found for slurry in np.linspace(max(low, top / 100), high, 20) if (found := program.at(float(slurry))) is not None]
        assert all(found.score >= bound - 1e-9 for found in inside if low <= float(slurry_of(FARM) @ found.unknowns) <= high)


# ---- scaling and monotony ---------------------------------------------------------------------------------------------------------


def larger(mix: Mix, times: float) -> Mix:
    """A farm ``times`` as large in all that has a size."""
    sized = ("available", "water_available")
    limits = {key: bound * times if key[0] in sized else bound for key, bound in mix.limits.items()}
    return replace(mix, working_volume=mix.working_volume * times, limits=limits)


@given(mixes(3), st.sampled_from([0.1, 2.0, 7.0, 100.0]))
@settings(max_examples=25)
def test_a_farm_n_times_as_large_gives_n_times_the_gas(mix: Mix, times: float) -> None:
    assert most_gas(larger(mix, times)) == pytest.approx(times * most_gas(mix), rel=1e-4, abs=1e-9)


def test_a_farm_twice_as_large_feeds_twice_the_recipe() -> None:
    once, twice = solved(FARM), solved(larger(FARM, 2.0))
    assert once is not None
    assert twice is not None
    assert twice[0] == pytest.approx([2 * mass for mass in once[0]], rel=1e-3)
    assert twice[1] == pytest.approx(2 * once[1], rel=1e-3)


@given(mixes(3), st.integers(0, 2), st.floats(1.01, 3))
@settings(max_examples=25)
def test_more_of_a_substrate_never_gives_less_gas(mix: Mix, which: int, times: float) -> None:
    key = ("available", which)
    assert most_gas(mix.with_limit(key, mix.limits[key] * times)) >= most_gas(mix) * (1 - 1e-4)


@given(mixes(3), st.data(), st.floats(0.5, 0.99))
@settings(max_examples=40)
def test_a_tighter_limit_never_gives_more_gas(mix: Mix, data: st.DataObject, part: float) -> None:
    key = data.draw(st.sampled_from(sorted(mix.limits)))
    tighter = mix.limits[key] / part if key[0].startswith("least_") else mix.limits[key] * part
    assert most_gas(mix.with_limit(key, tighter)) <= most_gas(mix) * (1 + 1e-4)


@given(mixes(2), st.floats(0.1, 0.9), st.floats(0.1, 0.9))
@settings(max_examples=20)
def test_asking_for_less_gas_never_costs_more(mix: Mix, first: float, second: float) -> None:
    most = most_gas(mix)
    assume(most > 1e-3)
    less, more = (solved(mix, "cheapest", part * most) for part in sorted((first, second)))
    assert less is not None
    assert more is not None
    assert cost(mix, *less) <= cost(mix, *more) * (1 + 1e-4) + 1e-5


# ---- cost ------------------------------------------------------------------------------------------------------------------------


def test_of_two_equal_feeds_the_one_that_costs_nothing_is_taken() -> None:
    mix = mix_of(replace(DUNG, price=0.002), DUNG, available=(50.0, 50.0))
    found = solved(mix, "cheapest", 0.5 * most_gas(mix))
    assert found is not None
    assert found[0][0] == 0
    assert cost(mix, *found) == 0


def test_water_with_a_price_is_saved() -> None:
    mix = mix_of(DUNG, available=(84.0,), largest_total_solids=0.14)
    dear = replace(mix, water_price=10.0)
    found, paid = (solved(one, "cheapest", 0.6 * most_gas(mix)) for one in (mix, dear))
    assert found is not None
    assert paid is not None
    assert paid[1] <= found[1] + 1e-9
    assert cost_of(dear, np.array([*paid[0], paid[1]])) == pytest.approx(10 * paid[1])


# ---- what holds a mix, and what more would bring ------------------------------------------------------------------------------------


def test_a_limit_that_a_mix_has_not_reached_brings_nothing() -> None:
    search = best(Program(FARM, "most_gas"))
    assert search.best is not None
    held = {limit.key for limit in holding(FARM, search.best.unknowns)}
    assert ("water_available", WHOLE) not in held
    assert held
    for limit in limits_of(FARM):
        gain = gain_of(search, limit, 0.05 * limit.bound)
        assert gain >= 0
        assert limit.key in held or gain <= 1e-4 * gas_of_mix(FARM, search.best.unknowns), limit.key


@pytest.mark.parametrize("key", [("largest_total_solids", WHOLE), ("largest_organic_loading_rate", WHOLE), ("largest_share", 2)])
def test_a_gain_is_what_searching_everything_again_finds(key: tuple[str, int]) -> None:
    search = best(Program(FARM, "most_gas"))
    [limit] = [one for one in limits_of(FARM) if one.key == key]
    step = 0.03 * limit.bound
    again = most_gas(FARM.with_limit(key, limit.bound + limit.sense * step)) - most_gas(FARM)
    assert again > 0
    assert gain_of(search, limit, step) == pytest.approx(again, rel=2e-3)


def test_a_gain_of_the_last_kilogram_is_its_part_in_the_gas_where_nothing_else_holds() -> None:
    """One substrate in a vast digester: a kilogram more with its water brings its own gas, less the shorter stay of all."""
    mix = mix_of(DUNG, available=(20.0,), volume=50.0, water_available=None)
    search = best(Program(mix, "most_gas"))
    [limit] = [one for one in limits_of(mix) if one.key == ("available", 0)]
    per_kilogram = most_gas(mix) / 20
    assert 0.6 * per_kilogram < gain_of(search, limit, 1.0) < per_kilogram


def test_asking_for_less_saves_money() -> None:
    mix = replace(FARM, ingredients=(replace(DUNG, price=0.01), DROPPINGS, STRAW))
    search = best(Program(mix, "cheapest", 0.7 * most_gas(mix)))
    saved = gain_of_demand(search, 0.05)
    assert saved > 0


# ---- where nothing keeps all limits ------------------------------------------------------------------------------------------------


def test_the_demand_that_cannot_be_met_may_give_way_to_the_most_gas() -> None:
    need = Need(gas_demand=3 * most_gas(FARM))
    found = alone(FARM, need, GAS_DEMAND)
    assert found is not None
    assert found.bounds[GAS_DEMAND] == pytest.approx(most_gas(FARM), rel=3e-3)


@given(mixes(2), st.floats(1.05, 2))
@settings(max_examples=20)
def test_relaxed_limits_let_the_need_be_met(mix: Mix, times: float) -> None:
    need = Need(gas_demand=times * most_gas(mix))
    assume(need.gas_demand > 1e-3)
    found = together(mix, need)
    assume(found is not None)
    assert found is not None
    assert found.bounds
    relaxed = mix
    for key, bound in found.bounds.items():
        assert bound != mix.limits[key]
        relaxed = relaxed.with_limit(key, bound)
    assert most_gas(relaxed) >= need.gas_demand * (1 - 1e-4)


def test_one_limit_alone_is_relaxed_no_further_than_it_must_be() -> None:
    """Pure droppings have a fixed carbon to nitrogen ratio: the bound must come down to it and no further."""
    mix = mix_of(DROPPINGS, available=(20.0,), largest_total_ammonia_nitrogen=None)
    need = Need(volatile_demand=0.1)
    key = ("least_carbon_to_nitrogen", WHOLE)
    found = alone(mix, need, key)
    assert found is not None
    assert found.bounds == {key: pytest.approx(DROPPINGS.carbon / DROPPINGS.nitrogen, rel=2e-3)}
    assert alone(mix, need, ("largest_total_solids", WHOLE)) is None


def test_the_least_relaxation_of_a_ratio_is_found_where_its_bottom_moves() -> None:
    """Droppings with ammonia as the only obstacle: the most water thins it best, so that decides the least bound."""
    mix = mix_of(DROPPINGS, available=(20.0,), least_carbon_to_nitrogen=None, largest_total_ammonia_nitrogen=1.0, least_total_solids=0.04)
    key = ("largest_total_ammonia_nitrogen", WHOLE)
    found = alone(mix, Need(volatile_demand=0.1), key)
    assert found is not None
    thinnest = DROPPINGS.ammonium / (DROPPINGS.solids / 0.04 / 1000)
    assert found.bounds == {key: pytest.approx(thinnest, rel=3e-3)}


def test_dry_straw_without_water_is_not_offered_as_slurry() -> None:
    mix = mix_of(STRAW, available=(10.0,), largest_crop_residue_share=None, largest_carbon_to_nitrogen=None, water_available=0.0)
    assert together(mix, Need(volatile_demand=0.1)) is None
    wet = mix.with_limit(("water_available", WHOLE), 0.02)
    assert solved(wet) is not None
    assert most_gas(wet) > 0
