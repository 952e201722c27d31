"""The feed mix on problems whose answer is known beforehand: searches over curves with a known valley, mixes worked out by hand."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from itertools import pairwise
from typing import Any, cast

import numpy as np
import pytest
from tests.rules.mix_cases import DROPPINGS, DUNG, STRAW, mix_of

from kilisho.formulas.feed_mix import WHOLE, Key, Mix, gas_at, gas_of_mix, limits_of, slurry_of
from kilisho.formulas.feed_mix_gains import gain_of, gain_of_demand, holding, worth
from kilisho.formulas.feed_mix_program import GAS_DEMAND, MARGIN, WIDEST_RELAXED, Found, Program
from kilisho.formulas.feed_mix_relaxing import ROOM, Need, alone, together
from kilisho.formulas.feed_mix_search import COARSE, CONTENT, MOST_HALVINGS, WIDEST, Search, best, gap, near

# ---- a search over a curve that is known -------------------------------------------------------------------------------------------

# Retention sets it: 9 m3 for 45 d let 0.2 m3 a day in; there is far more dung than that.
TOP = 0.2


@dataclass
class Curve:
    """In place of a program: a score for each slurry, and a mix that makes the part ``made`` of the slurry that was let in."""

    score: Callable[[float], float]
    made: float = 1.0
    usual_slurry: float = TOP
    below: float = 0.0
    mix: Mix = field(default_factory=lambda: mix_of(DUNG, available=(1000.0,), volume=9.0))
    tried: list[float] = field(default_factory=list)
    bounded: list[tuple[float, float]] = field(default_factory=list)

    def at(self, slurry: float) -> Found | None:
        self.tried.append(slurry)
        score = self.score(slurry)
        return None if math.isinf(score) else Found(np.array([0.0, slurry * self.made]), score)

    def between(self, least: float, most: float) -> float:
        """The least score of the interval, from many places in it, less ``below``."""
        self.bounded.append((least, most))
        return min(self.score(one) for one in np.geomspace(max(least, 1e-6), most, 400)) - self.below

    def search(self, *arguments: Any, **named: Any) -> Search:
        return best(cast("Program", self), *arguments, **named)


def valley(bottom: float, depth: float = -1.0) -> Callable[[float], float]:
    """A score that falls to ``depth`` at one amount of slurry and rises by the square of its logarithm on both sides."""
    return lambda slurry: depth + math.log(slurry / bottom) ** 2


@pytest.mark.parametrize("bottom", [0.0041, 0.02, 0.07, 0.16, 0.199])
def test_the_lowest_place_of_a_valley_is_found(bottom: float) -> None:
    search = Curve(valley(bottom)).search()
    assert search.slurry == pytest.approx(bottom, rel=1e-4)
    assert search.best is not None
    assert search.best.score == pytest.approx(-1.0, abs=1e-8)


@pytest.mark.parametrize(("bottom", "end"), [(0.5, TOP), (0.001, TOP / WIDEST)])
def test_where_the_valley_lies_beyond_an_end_the_end_is_found(bottom: float, end: float) -> None:
    assert Curve(valley(bottom)).search().slurry == pytest.approx(end, rel=1e-3)


@pytest.mark.parametrize("usual", [TOP, 0.1])
def test_it_begins_at_places_as_many_times_apart(usual: float) -> None:
    curve = Curve(valley(0.05), usual_slurry=usual)
    curve.search()
    places = curve.tried[:COARSE]
    assert (places[0], places[-1]) == (pytest.approx(usual / WIDEST), pytest.approx(TOP))
    assert [after / before for before, after in pairwise(places)] == pytest.approx(
        [(TOP * WIDEST / usual) ** (1 / (COARSE - 1))] * (COARSE - 1)
    )


@pytest.mark.parametrize("bottom", [0.0035, 0.012, 0.05, 0.195])
def test_it_goes_on_between_the_neighbours_of_the_best_place_alone(bottom: float) -> None:
    curve = Curve(valley(bottom))
    curve.search()
    places, further = curve.tried[:COARSE], curve.tried[COARSE:]
    middle = min(range(COARSE), key=lambda place: abs(math.log(places[place] / bottom)))
    low, high = places[max(0, middle - 1)], places[min(COARSE - 1, middle + 1)]
    assert further
    assert all(low < one < high for one in further)
    assert min(further) < bottom < max(further)


def test_a_valley_too_narrow_for_the_first_places_is_found_from_a_seed() -> None:
    def score(slurry: float) -> float:
        return min(valley(0.02)(slurry), -5.0 + (100 * math.log(slurry / 0.0613)) ** 2)

    assert Curve(score).search().slurry == pytest.approx(0.02, rel=1e-3)
    assert Curve(score).search((0.0615,)).slurry == pytest.approx(0.0613, rel=1e-3)


def test_seeds_beyond_the_ends_are_left_out_and_the_end_itself_is_one() -> None:
    curve = Curve(valley(0.05))
    curve.search((0.0, -1.0, 0.3, 0.123456, TOP))
    assert 0.123456 in curve.tried
    assert all(0.0 < one <= TOP * (1 + 1e-12) for one in curve.tried)
    once = Curve(valley(0.05))
    once.search((0.15,), most=0.15)
    assert 0.15 in once.tried


def test_the_most_slurry_can_be_another() -> None:
    assert Curve(valley(0.7)).search(most=2.0).slurry == pytest.approx(0.7, rel=1e-4)
    assert Curve(valley(0.7)).search(most=0.1).slurry == pytest.approx(0.1, rel=1e-3)


def test_what_need_not_be_precise_takes_fewer_programs() -> None:
    def cleft(slurry: float) -> float:
        return abs(math.log(slurry / 0.0613)) ** 1.2

    fine, rough = Curve(cleft), Curve(cleft)
    assert fine.search().slurry == pytest.approx(0.0613, rel=1e-3)
    assert rough.search(precision=0.1).slurry == pytest.approx(0.0613, rel=0.15)
    assert COARSE < len(rough.tried) < len(fine.tried) <= COARSE + 32


def test_slurries_without_a_mix_are_passed_over() -> None:
    def score(slurry: float) -> float:
        return math.inf if slurry > 0.1 else valley(0.15)(slurry)

    search = Curve(score).search()
    assert search.best is not None
    assert 0.09 < search.slurry <= 0.1
    assert Curve(lambda _: math.inf).search().best is None


def test_a_mix_that_makes_less_slurry_than_was_let_in_is_counted_at_its_own() -> None:
    curve = Curve(valley(0.1), made=0.5)
    search = curve.search()
    assert curve.tried[-1] == pytest.approx(0.05, rel=1e-3)
    assert search.slurry == pytest.approx(0.1, rel=1e-3)
    whole = Curve(valley(0.1))
    whole.search()
    assert len(curve.tried) == len(whole.tried) + 1
    # A mix of nothing makes no slurry to be counted at.
    nothing = Curve(valley(0.1), made=0.0)
    nothing.search()
    assert min(nothing.tried) > 0.0


@pytest.mark.parametrize(("start", "bottom", "expected"), [(0.1, 0.11, 0.11), (0.1, 0.09, 0.09), (0.1, 0.3, 0.125), (0.1, 0.01, 0.08)])
def test_near_looks_from_a_fifth_less_to_a_quarter_more(start: float, bottom: float, expected: float) -> None:
    curve = Curve(valley(bottom))
    search = near(cast("Program", curve), start)
    assert curve.tried[0] == start
    assert search.slurry == pytest.approx(expected, rel=1e-3)
    assert all(0.8 * start < one < 1.25 * start for one in curve.tried[1:])


def test_near_stays_below_the_most_slurry() -> None:
    curve = Curve(valley(0.19))
    assert near(cast("Program", curve), 0.3).slurry == pytest.approx(0.19, rel=1e-3)
    assert curve.tried[0] == pytest.approx(TOP)
    assert max(curve.tried) <= TOP * (1 + 1e-12)
    assert min(curve.tried) > 0.8 * TOP


@pytest.mark.parametrize("depth", [-1.0, -0.001, -40.0])
def test_the_proof_is_the_part_by_which_the_bound_lies_below_the_best(depth: float) -> None:
    """A bound that lies 5 % too low everywhere can prove no more than 5 %, however finely it is parted."""
    curve = Curve(lambda slurry: depth + abs(depth) * math.log(slurry / 0.06) ** 2, below=0.05 * abs(depth))
    assert gap(curve.search()) == pytest.approx(0.05, rel=0.02)
    assert len(curve.bounded) == 1 + 2 * MOST_HALVINGS


def test_the_proof_parts_the_worst_interval_and_leaves_nothing_out() -> None:
    curve = Curve(valley(0.06), below=0.05)
    gap(curve.search())
    top = curve.bounded[0][1]
    assert curve.bounded[0] == (0.0, pytest.approx(TOP))
    assert curve.bounded[1:3] == [(0.0, top / 2), (top / 2, top)]
    open_ones = {curve.bounded[0]}
    for left, right in zip(curve.bounded[1::2], curve.bounded[2::2], strict=True):
        parted = (left[0], right[1])
        assert parted in open_ones
        assert left[1] == right[0] == pytest.approx(math.sqrt(parted[0] * parted[1]) if parted[0] else parted[1] / 2)
        assert curve.between(*parted) <= min(curve.between(*one) for one in open_ones) + 1e-12
        open_ones = (open_ones - {parted}) | {left, right}


def test_a_proof_that_is_content_at_once_parts_nothing() -> None:
    curve = Curve(valley(0.06), below=0.9 * CONTENT)
    assert gap(curve.search()) == pytest.approx(0.9 * CONTENT, rel=0.02)
    assert len(curve.bounded) == 1
    assert gap(Search(cast("Program", Curve(valley(0.06), below=1.0)))) == 0.0


def test_a_bound_above_the_best_proves_all() -> None:
    assert gap(Curve(valley(0.06), below=-0.3).search()) == 0.0


# ---- programs worked out by hand ---------------------------------------------------------------------------------------------------


def relaxed(mix: Mix, key: Key, slurry: float = 0.1, **need: float) -> tuple[float, Found]:
    """The part by which one limit gives way at a slurry, and the mix."""
    found = Program(mix, "least_relaxation", elastic=[key], **need).at(slurry)
    assert found is not None
    assert found.score == pytest.approx(found.relaxed[key], abs=1e-5)
    return found.relaxed[key], found


def test_twice_the_dung_is_asked_for_where_half_of_it_is_there() -> None:
    """2.56 kg of volatile solids are 20 kg of dung; 10 kg are there."""
    part, found = relaxed(mix_of(DUNG, available=(10.0,), volume=9.0), ("available", 0), volatile_demand=20 * DUNG.volatile)
    assert part == pytest.approx(1.0, rel=1e-5)
    assert found.unknowns[0] == pytest.approx(20.0, rel=1e-5)


def test_a_loading_gives_way_by_what_is_fed_beyond_it() -> None:
    """0.25 kg/m3/d in 6 m3 bear 1.5 kg a day; 2 kg are a third more."""
    mix = mix_of(DUNG, available=(84.0,), largest_organic_loading_rate=0.25)
    part, _ = relaxed(mix, ("largest_organic_loading_rate", WHOLE), volatile_demand=2.0)
    assert part == pytest.approx(1 / 3, rel=1e-4)


def test_solids_are_weighed_at_a_usual_slurry() -> None:
    """A kilogram of droppings without water has 0.15 kg of solids too many for 10 %. All droppings with water to 8 % are 62.5 kg in
    0.0625 m3; the most slurry, at 5 %, is 0.12 m3, so a whole relaxation weighs 10 % of 120 kg: 0.15 kg are an eightieth of it.
    """
    mix = mix_of(DROPPINGS, available=(20.0,), water_available=1e-9, least_carbon_to_nitrogen=None, largest_total_ammonia_nitrogen=None)
    part, _ = relaxed(mix, ("largest_total_solids", WHOLE), volatile_demand=DROPPINGS.volatile)
    assert mix.most_slurry() == pytest.approx(0.12)
    assert part == pytest.approx(0.15 / 12, rel=1e-4)


def test_a_demand_gives_way_by_what_is_missing_of_it() -> None:
    mix = mix_of(DUNG, available=(10.0,))
    part, found = relaxed(mix, GAS_DEMAND, gas_demand=10.0)
    promised = float(gas_at(mix, 0.1) @ found.unknowns)
    assert found.unknowns[0] == pytest.approx(10.0, rel=1e-6)
    assert part == pytest.approx(1 - promised / 10.0, rel=1e-5)


def gives_way(mix: Mix, name: str, volatile: float) -> bool:
    """Whether one limit can give way for so much of volatile solids [kg/d], within what is offered at all."""
    return Program(mix, "least_relaxation", volatile_demand=volatile, elastic=[(name, WHOLE)]).at(1.0) is not None


def test_a_loading_gives_way_by_thrice_itself_and_no_more() -> None:
    mix = mix_of(DUNG, available=(84.0,), largest_organic_loading_rate=0.25)
    assert [gives_way(mix, "largest_organic_loading_rate", part * 4 * 1.5) for part in (0.98, 1.02)] == [True, False]


def test_a_lower_bound_gives_way_by_three_quarters_of_itself_and_no_more() -> None:
    """9 m3 for 45 d let 0.2 m3 in; a kilogram of volatile solids makes 0.0125 m3 at 10 %: 28 kg make three quarters more."""
    mix = mix_of(DUNG, available=(1000.0,), volume=9.0, water_available=1.0, largest_organic_loading_rate=None)
    assert [gives_way(mix, "least_retention_time", part * 28.0) for part in (0.98, 1.02)] == [True, False]


def test_a_demand_is_met_to_the_margin_and_no_further() -> None:
    mix = mix_of(replace(DUNG, price=0.01), available=(60.0,))
    found = Program(mix, "cheapest", 0.6).at(0.03)
    assert found is not None
    assert float(gas_at(mix, 0.03) @ found.unknowns) / 0.6 - 1 == pytest.approx(MARGIN, rel=0.3)


def test_no_mix_makes_more_slurry_than_there_is_dung_for() -> None:
    """10 kg of dung at 5 % are 0.032 m3."""
    mix = mix_of(DUNG, available=(10.0,))
    assert Program(mix, "most_gas").between(0.03, 0.05) < 0
    assert Program(mix, "most_gas").between(0.035, 0.05) == math.inf
    # What must make much slurry costs what the dung in it costs: at 5 %, 0.12 m3 hold 37.5 kg, and 0.03 m3 a quarter.
    priced = Program(mix_of(replace(DUNG, price=0.01), available=(60.0,)), "cheapest")
    assert priced.between(0.12, 0.13) == pytest.approx(4 * priced.between(0.03, 0.13), rel=1e-3)


def test_the_most_slurry_counts_each_substrate_with_its_own_room() -> None:
    """Straw that takes 2 L a kilogram, and water for 5 % of all: 10 kg of dung and 1 kg of straw."""
    straw = replace(STRAW, displaced=0.002)
    mix = mix_of(DUNG, straw, available=(10.0, 1.0))
    assert mix.most_slurry() == pytest.approx(10 * (0.001 + 0.16 / 50) + 1 * (0.002 + 0.85 / 50))


def test_upper_bounds_count_once_upwards_and_lower_ones_once_downwards() -> None:
    senses = {limit.key[0]: limit.sense for limit in limits_of(scaled(1.0))}
    assert senses == {name: -1 if name.startswith("least_") else 1 for name in senses}
    assert len(senses) == 11


def test_the_unit_of_slurry_is_tenfold_of_what_may_meet_a_small_demand() -> None:
    plenty, few = (mix_of(DUNG, available=(mass,), volume=9.0) for mass in (1000.0, 100.0))
    # 0.2 m3 hold 200 kg of the thousand, and all of the hundred.
    for mix, mass in ((plenty, 200.0), (few, 100.0)):
        assert Program(mix, "cheapest", 0.1).usual_slurry == pytest.approx(0.2 * 10 * 0.1 / (mass * DUNG.potential))
        assert Program(mix, "cheapest", 100.0).usual_slurry == pytest.approx(0.2)
        assert Program(mix, "least_relaxation", 0.1, elastic=[GAS_DEMAND]).usual_slurry == pytest.approx(0.2)
    barren = mix_of(replace(DUNG, potential=0.0), available=(100.0,), volume=9.0)
    assert Program(barren, "cheapest", 0.1).usual_slurry == pytest.approx(0.2)


def test_of_two_free_dungs_the_one_that_is_lighter_to_carry_for_its_gas_is_taken() -> None:
    """The same dung with half its water gone: each kilogram brings twice as much, and nothing costs anything."""
    doubled = ("solids", "volatile", "nitrogen", "carbon", "ammonium", "potential")
    dense = replace(DUNG, **{name: 2 * getattr(DUNG, name) for name in doubled})
    mix = mix_of(DUNG, dense, available=(60.0, 60.0), largest_total_solids=0.9, largest_total_ammonia_nitrogen=None)
    found = best(Program(mix, "cheapest", 0.5)).best
    assert found is not None
    assert found.unknowns[[0, 2]].tolist() == [0.0, 0.0]
    assert found.unknowns[1] > 0


def test_the_cheaper_of_two_like_dungs_is_taken_and_water_counts_too() -> None:
    dear, cheap = replace(DUNG, price=0.02), replace(DUNG, price=0.01)
    found = best(Program(mix_of(dear, cheap, available=(60.0, 60.0)), "cheapest", 0.5)).best
    assert found is not None
    assert found.unknowns[0] == 0.0
    thick, thin = (replace(DUNG, solids=DUNG.solids * times) for times in (0.6, 1.4))
    # With free dung of two thicknesses and dear water, what needs no water is fed.
    free = replace(mix_of(thick, thin, available=(80.0, 80.0)), water_price=50.0)
    dry = best(Program(free, "cheapest", 0.5)).best
    assert dry is not None
    assert dry.unknowns[2] == pytest.approx(0.0, abs=1e-6)
    assert dry.unknowns[0] > 0


@pytest.mark.parametrize("wish", ["most_gas", "cheapest", "most_even"])
@pytest.mark.parametrize("times", [0.01, 40.0])
def test_a_farm_so_many_times_as_large_mixes_so_many_times_as_much(wish: Any, times: float) -> None:
    farm, demand = scaled(1.0), 0.0 if wish == "most_gas" else 0.9
    usual, other = (best(Program(one, wish, demand * factor)) for one, factor in ((farm, 1.0), (scaled(times), times)))
    assert usual.best is not None
    assert other.best is not None
    assert other.slurry == pytest.approx(times * usual.slurry, rel=1e-6)
    assert other.best.unknowns == pytest.approx(times * usual.best.unknowns, rel=1e-5)
    assert other.best.score == pytest.approx(usual.best.score, rel=1e-6)


def scaled(times: float) -> Mix:
    """The same farm, so many times as large."""
    amounts = tuple(times * mass for mass in (84.0, 20.0, 30.0))
    paid = replace(DUNG, price=0.004)
    return mix_of(paid, DROPPINGS, STRAW, available=amounts, volume=6.0 * times, shares={2: 0.15}, water_available=0.15 * times)


def test_scores_differ_as_the_gas_that_is_promised() -> None:
    program = Program(scaled(1.0), "most_gas")
    found = [(slurry, program.at(slurry)) for slurry in (0.03, 0.05, 0.08, 0.12)]
    pairs = [(float(gas_at(program.mix, slurry) @ one.unknowns), one.score) for slurry, one in found if one is not None]
    slopes = [(right[1] - left[1]) / (right[0] - left[0]) for left, right in pairwise(pairs)]
    assert len(slopes) == 3
    assert slopes == pytest.approx([slopes[0]] * 3, rel=1e-4)
    assert slopes[0] < 0


@pytest.mark.parametrize("wish", ["most_gas", "cheapest", "most_even"])
def test_no_mix_that_makes_so_much_slurry_beats_the_bound_of_its_interval(wish: Any) -> None:
    program = Program(scaled(1.0), wish, 0.0 if wish == "most_gas" else 0.5)
    for least, most in ((0.02, 0.04), (0.04, 0.07), (0.05, 0.13)):
        bound = program.between(least, most)
        for slurry in np.linspace(least, most, 7):
            found = program.at(float(slurry))
            if found is not None and float(slurry_of(program.mix) @ found.unknowns) >= least:
                assert bound <= found.score + 1e-7
    assert program.between(0.10, 0.11) >= program.between(0.02, 0.13)


# ---- gains -------------------------------------------------------------------------------------------------------------------------


def gains(mix: Mix) -> dict[Key, float]:
    """What a tenth more of each limit brings under most gas."""
    search = best(Program(mix, "most_gas"))
    return {limit.key: gain_of(search, limit, 0.1 * limit.bound) for limit in limits_of(mix)}


def test_what_does_not_hold_a_mix_brings_nothing_and_some_of_what_does_brings_gas() -> None:
    mix = scaled(1.0)
    search, found = best(Program(mix, "most_gas")), gains(mix)
    assert search.best is not None
    held = {limit.key for limit in holding(mix, search.best.unknowns)}
    assert {found[key] for key in found.keys() - held} == {0.0}
    assert any(found[key] > 0 for key in held)


@pytest.mark.parametrize("times", [1e-4, 50.0])
def test_a_farm_so_many_times_as_large_gains_so_many_times_as_much(times: float) -> None:
    usual, other = gains(scaled(1.0)), gains(scaled(times))
    assert other == {key: pytest.approx(times * gain, rel=0.01) for key, gain in usual.items()}


def test_nothing_is_gained_where_there_was_no_mix() -> None:
    mix = scaled(1.0)
    nowhere = Search(Program(mix, "cheapest", 1000.0), None, 0.1)
    limit = next(iter(limits_of(mix)))
    assert gain_of(nowhere, limit, 0.01) == 0.0
    assert gain_of_demand(nowhere, 1.0) == 0.0
    # Neither where only the one or the other has a mix.
    assert gain_of_demand(Search(Program(mix, "cheapest", 0.5), None, 0.1), 0.1) == 0.0
    some = best(Program(mix, "cheapest", 0.5))
    assert gain_of_demand(Search(nowhere.program, some.best, some.slurry), 1.0) == 0.0


@pytest.mark.parametrize("wish", ["cheapest", "most_even"])
def test_more_of_the_own_dung_saves_what_the_richer_farm_saves(wish: Any) -> None:
    mix, step = mix_of(DUNG, DROPPINGS, available=(20.0, 30.0)), 0.3
    richer = mix.with_limit(("available", 0), 20.0 + step)
    search, other = (best(Program(one, wish, 0.9)) for one in (mix, richer))
    assert search.best is not None
    assert other.best is not None
    saved = worth(search.program, search.best.unknowns) - worth(other.program, other.best.unknowns)
    [own] = [limit for limit in limits_of(mix) if limit.key == ("available", 0)]
    assert saved > 0
    assert gain_of(search, own, step) == pytest.approx(saved, rel=0.01)


def test_a_lower_bound_cannot_be_relaxed_beyond_nothing() -> None:
    """Ammonia asks for water and 5 % of solids forbid it: without that bound the water that there is decides."""
    mix = mix_of(DROPPINGS, available=(20.0,), least_carbon_to_nitrogen=None, largest_total_ammonia_nitrogen=1.7, water_available=0.08)
    search = best(Program(mix, "most_gas"))
    [limit] = [one for one in limits_of(mix) if one.key[0] == "least_total_solids"]
    without = best(Program(mix.with_limit(limit.key, 0.01 * limit.bound), "most_gas"))
    assert search.best is not None
    assert without.best is not None
    gained = gas_of_mix(mix, without.best.unknowns) - gas_of_mix(mix, search.best.unknowns)
    assert gain_of(search, limit, 2 * limit.bound) >= 0
    assert gain_of(search, limit, 2 * limit.bound) <= gained * (1 + 1e-3) + 1e-9


# ---- limits that give way, by hand -------------------------------------------------------------------------------------------------

BARE: dict[str, Any] = {"least_carbon_to_nitrogen": None, "largest_total_ammonia_nitrogen": None}


def test_the_loading_that_would_do_is_that_of_the_feed() -> None:
    mix, need = mix_of(DUNG, available=(84.0,), largest_organic_loading_rate=0.25), Need(volatile_demand=2.0)
    key = ("largest_organic_loading_rate", WHOLE)
    for found in (alone(mix, need, key), together(mix, need)):
        assert found is not None
        assert found.bounds == {key: pytest.approx(2.0 / 6.0 * (1 + ROOM), rel=1e-5)}
    assert alone(mix, need, ("available", 0)) is None


def test_the_water_that_would_do_thins_what_must_be_fed() -> None:
    """A kilogram of droppings at 25 % of solids wants 1.5 kg of water for 10 %; what there is may grow without end."""
    mix, need = mix_of(DROPPINGS, available=(20.0,), water_available=1e-5, **BARE), Need(volatile_demand=DROPPINGS.volatile)
    found = alone(mix, need, ("water_available", WHOLE))
    assert found is not None
    assert found.bounds == {("water_available", WHOLE): pytest.approx(0.0015 * (1 + ROOM), rel=1e-4)}


@pytest.mark.parametrize(("part", "offered"), [(0.98, True), (0.9985, True), (1.02, False)])
def test_solids_and_carbon_to_nitrogen_give_way_fourfold_and_no_further(part: float, offered: bool) -> None:
    """Droppings without water have 25 % of solids, and 7.97 of carbon to nitrogen with any."""
    times, need, ratio = part * WIDEST_RELAXED, Need(volatile_demand=DROPPINGS.volatile), DROPPINGS.carbon / DROPPINGS.nitrogen
    thick = mix_of(DROPPINGS, available=(20.0,), water_available=1e-9, least_total_solids=0.01, largest_total_solids=0.25 / times, **BARE)
    rich = mix_of(DROPPINGS, available=(20.0,), **{**BARE, "least_carbon_to_nitrogen": times * ratio, "largest_carbon_to_nitrogen": None})
    for mix, name, reached in ((thick, "largest_total_solids", 0.25 * (1 + ROOM)), (rich, "least_carbon_to_nitrogen", ratio * (1 - ROOM))):
        found = alone(mix, need, (name, WHOLE))
        assert (found is not None) is offered
        assert found is None or found.bounds == {(name, WHOLE): pytest.approx(reached, rel=1e-3)}


def test_the_demand_that_can_be_met_is_the_most_gas() -> None:
    mix = scaled(1.0)
    most = best(Program(mix, "most_gas")).best
    assert most is not None
    gas = gas_of_mix(mix, most.unknowns)
    found = alone(mix, Need(gas_demand=2 * gas), GAS_DEMAND)
    assert found is not None
    assert found.bounds == {GAS_DEMAND: pytest.approx(gas * (1 - ROOM), rel=3e-4)}
    enough = alone(mix, Need(gas_demand=0.9 * gas), GAS_DEMAND)
    assert enough is not None
    assert enough.bounds == {}


def test_without_a_need_nothing_is_fed_and_nothing_told() -> None:
    assert together(mix_of(DUNG, available=(84.0,)), Need()) is None


def test_two_limits_that_stand_in_the_way_give_way_together_and_neither_alone() -> None:
    """2 kg of volatile solids are 15.6 kg of dung: more than is there, and more than the loading bears."""
    mix, need = mix_of(DUNG, available=(10.0,), largest_organic_loading_rate=0.25), Need(volatile_demand=2.0)
    loading, there = ("largest_organic_loading_rate", WHOLE), ("available", 0)
    assert alone(mix, need, loading) is None
    assert alone(mix, need, there) is None
    found = together(mix, need)
    assert found is not None
    assert found.bounds == {
        loading: pytest.approx(2.0 / 6.0 * (1 + ROOM), rel=1e-5),
        there: pytest.approx(2.0 / DUNG.volatile * (1 + ROOM), rel=1e-5),
    }


def test_a_ratio_alone_comes_as_near_as_all_the_dung_that_there_is_brings_it() -> None:
    """A kilogram of volatile solids: 2 kg of dung bring 0.256 of it, droppings the rest, and no mix has more carbon for its nitrogen."""
    mix = mix_of(DUNG, DROPPINGS, available=(2.0, 20.0), largest_total_ammonia_nitrogen=None)
    droppings = (1.0 - 2.0 * DUNG.volatile) / DROPPINGS.volatile
    ratio = (2.0 * DUNG.carbon + droppings * DROPPINGS.carbon) / (2.0 * DUNG.nitrogen + droppings * DROPPINGS.nitrogen)
    key = ("least_carbon_to_nitrogen", WHOLE)
    found = alone(mix, Need(volatile_demand=1.0), key)
    assert found is not None
    assert found.bounds == {key: pytest.approx(ratio * (1 - ROOM), rel=1e-4)}
    assert found.unknowns[:2] == pytest.approx([2.0, droppings], rel=1e-3)


def test_ammonia_alone_comes_down_to_what_the_thinnest_slurry_has() -> None:
    """Droppings at 4 % of solids: 0.25 kg in 6.25 L, and 0.0103 kg of ammonia nitrogen with them."""
    bounds = {**BARE, "largest_total_ammonia_nitrogen": 1.0}
    mix = mix_of(DROPPINGS, available=(20.0,), least_total_solids=0.04, **bounds)
    key = ("largest_total_ammonia_nitrogen", WHOLE)
    found = alone(mix, Need(volatile_demand=0.1), key)
    assert found is not None
    assert found.bounds == {key: pytest.approx(DROPPINGS.ammonium / 0.00625 * (1 + ROOM), rel=1e-3)}


def test_a_ratio_alone_is_the_best_that_can_be_reached_and_not_the_nearest_in_kilograms() -> None:
    """For a kilogram of volatile solids the lean droppings miss 16 to 1 by 0.3 kg of carbon and the rich by 0.354, yet theirs is 8 to 1
    and that of the rich 10 to 1.
    """
    lean, rich = (replace(DROPPINGS, nitrogen=0.185 * n, carbon=0.185 * c) for n, c in ((0.0375, 0.30), (0.059, 0.59)))
    mix = mix_of(lean, rich, available=(20.0, 20.0), largest_total_ammonia_nitrogen=None)
    key = ("least_carbon_to_nitrogen", WHOLE)
    found = alone(mix, Need(volatile_demand=0.5), key)
    assert found is not None
    assert found.bounds == {key: pytest.approx(10.0 * (1 - ROOM), rel=1e-4)}
    assert found.unknowns[0] == pytest.approx(0.0, abs=1e-6)
