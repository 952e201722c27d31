"""What the wishes of a feed mix mean on farms so small that the answer is seen without a solver."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from tests.rules.mix_cases import DROPPINGS, DUNG, best_of_grid, cost, gas, mix_of

from kilisho.formulas.feed_mix import Mix, gas_of_mix, limits_of
from kilisho.formulas.feed_mix_gains import LEAST_STEP, cost_of, gain_of, gain_of_demand, holding, largest_use, worth
from kilisho.formulas.feed_mix_program import Program, Wish
from kilisho.formulas.feed_mix_search import CONTENT, Search, best, gap

PRICED = replace(DUNG, price=0.01)
# Forty kilograms of one's own, and a neighbour's droppings for money.
SMALL = mix_of(DUNG, DROPPINGS, available=(40.0, 30.0))


def found(mix: Mix, wish: Wish, demand: float = 0.0) -> Search:
    search = best(Program(mix, wish, demand))
    assert search.best is not None
    return search


def unknowns(search: Search) -> np.ndarray:
    assert search.best is not None
    return search.best.unknowns


def own_gas() -> float:
    """The most gas of one's own dung alone."""
    return worth(Program(SMALL, "most_gas"), unknowns(found(mix_of(DUNG, DROPPINGS, available=(40.0, 0.0)), "most_gas")))


def dear_demand() -> float:
    """More than one's own dung gives, and less than the neighbour's with it."""
    both = worth(Program(SMALL, "most_gas"), unknowns(found(SMALL, "most_gas")))
    assert both > 1.02 * own_gas()
    return (own_gas() + both) / 2


def test_nothing_is_bought_for_a_demand_that_the_own_dung_meets() -> None:
    search = found(SMALL, "cheapest", 0.5 * own_gas())
    assert cost_of(SMALL, unknowns(search)) == pytest.approx(0.0, abs=1e-9)
    assert gas_of_mix(SMALL, unknowns(search)) >= 0.5 * own_gas() * (1 - 1e-6)
    # What costs nothing cannot cost less.
    assert gain_of_demand(search, 0.05) == 0.0


def test_asking_for_less_saves_what_the_cheaper_mix_costs_less() -> None:
    demand = dear_demand()
    search = found(SMALL, "cheapest", demand)
    for step in (0.02 * demand, 0.1 * demand):
        less = found(SMALL, "cheapest", demand - step)
        saved = cost_of(SMALL, unknowns(search)) - cost_of(SMALL, unknowns(less))
        assert saved > 0
        assert gain_of_demand(search, step) == pytest.approx(saved, rel=0.01)
    # Steps below a hundredth of the demand are its part of what the hundredth saves.
    hundredth = gain_of_demand(search, LEAST_STEP * demand)
    assert gain_of_demand(search, LEAST_STEP * demand / 4) == pytest.approx(hundredth / 4, rel=1e-9)


def test_asking_for_nothing_at_all_saves_all() -> None:
    mix = mix_of(PRICED, available=(60.0,))
    demand = 0.6
    search = found(mix, "cheapest", demand)
    assert gain_of_demand(search, demand) == pytest.approx(cost_of(mix, unknowns(search)), rel=1e-6)
    assert gain_of_demand(search, 2 * demand) == pytest.approx(cost_of(mix, unknowns(search)), rel=1e-6)


def test_the_cheapest_is_no_dearer_than_any_of_a_grid() -> None:
    demand = dear_demand()
    search = found(SMALL, "cheapest", demand)
    rival = best_of_grid(
        SMALL, lambda masses, water: -cost(SMALL, masses, water), lambda masses, water: gas(SMALL, masses, water) >= demand
    )
    assert rival is not None
    assert cost_of(SMALL, unknowns(search)) <= -rival * (1 + 1e-4)


@pytest.mark.parametrize("available", [(20.0, 60.0), (60.0, 20.0)])
def test_the_most_even_recipe_takes_the_same_part_of_two_heaps_of_one_dung(available: tuple[float, float]) -> None:
    mix = mix_of(DUNG, DUNG, available=available)
    search = found(mix, "most_even", 0.5 * own_gas())
    used = unknowns(search)[:2] / np.array(available)
    assert used[0] == pytest.approx(used[1], rel=1e-4)
    assert worth(search.program, unknowns(search)) == largest_use(mix, unknowns(search)) == pytest.approx(used.max())


def test_the_largest_use_looks_at_every_heap_and_leaves_empty_ones_out() -> None:
    taken = np.array([10.0, 6.0, 0.05])
    assert largest_use(mix_of(DUNG, DROPPINGS, available=(40.0, 30.0)), taken) == pytest.approx(0.25)
    assert largest_use(mix_of(DUNG, DROPPINGS, available=(40.0, 12.0)), taken) == pytest.approx(0.5)
    assert largest_use(mix_of(DUNG, DROPPINGS, available=(0.0, 30.0)), np.array([0.0, 6.0, 0.05])) == pytest.approx(0.2)


def test_what_is_all_used_holds_a_mix_and_what_is_left_over_does_not() -> None:
    mix = mix_of(DUNG, DROPPINGS, available=(5.0, 30.0))
    full, spare = np.array([5.0, 1.0, 0.006]), np.array([4.99, 1.0, 0.006])
    assert ("available", 0) in {limit.key for limit in holding(mix, full)}
    assert ("available", 0) not in {limit.key for limit in holding(mix, spare)}
    # Bounds from below hold as those from above do: solids of exactly 5 %.
    thin = next(limit for limit in limits_of(mix) if limit.key[0] == "least_total_solids")
    water = (5 * DUNG.solids / 0.05 - 5) / 1000
    assert thin.key in {limit.key for limit in holding(mix, np.array([5.0, 0.0, water]))}
    assert thin.key not in {limit.key for limit in holding(mix, np.array([5.0, 0.0, 0.9 * water]))}


def test_a_limit_is_reached_to_a_part_of_its_bound() -> None:
    mix = mix_of(DUNG, available=(50.0,))

    def held(mass: float) -> bool:
        return ("available", 0) in {limit.key for limit in holding(mix, np.array([mass, 0.06]))}

    # Half a gram of fifty kilograms is nothing, five grams are something.
    assert [held(mass) for mass in (50.0, 49.9995, 49.995)] == [True, True, False]
    thin = 50 * (DUNG.solids / 0.0502 - 1) / 1000
    assert "least_total_solids" not in {limit.key[0] for limit in holding(mix, np.array([50.0, thin]))}


def test_one_more_kilogram_brings_what_the_richer_farm_gets_more() -> None:
    search = found(SMALL, "most_gas")
    own = next(limit for limit in limits_of(SMALL) if limit.key == ("available", 0))
    for step in (1.0, 4.0):
        richer = found(SMALL.with_limit(own.key, 40.0 + step), "most_gas")
        gained = gas_of_mix(richer.program.mix, unknowns(richer)) - gas_of_mix(SMALL, unknowns(search))
        assert gained > 0
        assert gain_of(search, own, step) == pytest.approx(gained, rel=0.01)


def test_the_proof_betters_a_search_that_stopped_too_soon() -> None:
    program = Program(SMALL, "most_gas")
    right = worth(program, unknowns(best(program)))
    # Begun from one single amount of slurry, far too little of it.
    poor = Search(program)
    poor.try_at(0.3 * SMALL.most_slurry())
    assert worth(program, unknowns(poor)) < 0.98 * right
    proved = gap(poor)
    assert 0 <= proved <= CONTENT
    assert worth(program, unknowns(poor)) == pytest.approx(right, rel=2 * CONTENT)
