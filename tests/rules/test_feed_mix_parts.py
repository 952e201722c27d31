"""The parts of the feed mix one by one: sums and rows, what slurry there can be, what is on hand, limits, words, program and search."""

from __future__ import annotations

import json
from dataclasses import replace
from types import SimpleNamespace
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, base, like, questions, value
from tests.rules.mix_cases import DROPPINGS, DUNG, STRAW, WHOLES, best_of_grid, gas, kept, mix_of, mixes

from kilisho.farm import Ledger, Shelf
from kilisho.faults import RefusedError
from kilisho.formulas.feed_mix import WHOLE, Limit, Mix, Sum, gas_at, gas_of_mix, limits_of, slurry_of
from kilisho.formulas.feed_mix_gains import LEAST_STEP, cost_of, gain_of, holding, largest_use, worth
from kilisho.formulas.feed_mix_program import EXACT, GAS_DEMAND, MARGIN, WIDEST_RELAXED, Program
from kilisho.formulas.feed_mix_relaxing import ROOM, Need, alone, together
from kilisho.formulas.feed_mix_search import CONTENT, Search, best, gap, near
from kilisho.formulas.kinetics import mixed_share
from kilisho.messages import LANGUAGES, Amount
from kilisho.questions.feed_mix.limits import PRACTICE
from kilisho.questions.feed_mix.request import MixLimits, OnHand
from kilisho.questions.feed_mix.supply import stores_of
from kilisho.questions.feed_mix.words import PHRASES, amount, place_of, said
from kilisho.questions.requests import HerdItem

FARM = mix_of(DUNG, DROPPINGS, STRAW, available=(84.0, 20.0, 30.0), shares={2: 0.15})
SHELF = Shelf(base().data)


class Asked:
    """What a request says of stores and herd."""

    def __init__(self, on_hand: list[OnHand], herd: list[HerdItem] | None = None, season: float | None = None) -> None:
        self.on_hand, self.herd, self.season = on_hand, herd or [], season


def item(substrate: str = "cattle_dung", **stated: Any) -> OnHand:
    return OnHand(substrate=substrate, **stated)


# ---- sums, rows and slurry -----------------------------------------------------------------------------------------------------------


def test_a_sum_has_coefficients_and_a_constant() -> None:
    assert Sum(np.array([2.0, 3.0]), 5.0).of(np.array([10.0, 100.0])) == 325.0


@pytest.mark.parametrize(("sense", "solids", "fits"), [(1, 0.1, True), (1, 0.3, False), (-1, 0.3, True), (-1, 0.1, False)])
def test_a_row_is_at_most_zero_where_the_limit_is_kept(sense: int, solids: float, fits: bool) -> None:
    limit = Limit(("largest_total_solids", WHOLE), Sum(np.array([solids])), Sum(np.array([1.0])), sense, 0.2)
    assert (limit.row().of(np.array([7.0])) <= 0) is fits
    assert limit.reached(np.array([7.0])) == pytest.approx(solids)


@pytest.mark.parametrize(("sense", "strict"), [(1, 0.198), (-1, 0.202)])
def test_a_margin_makes_a_bound_stricter_on_its_own_side(sense: int, strict: float) -> None:
    limit = Limit(("largest_total_solids", WHOLE), Sum(np.array([1.0])), Sum(np.array([0.0]), 1.0), sense, 0.2)
    assert limit.row(0.01).of(np.array([strict])) == pytest.approx(0, abs=1e-12)
    assert limit.row().of(np.array([strict])) < 0


def test_nothing_fed_reaches_nothing() -> None:
    assert {limit.reached(np.zeros(4)) for limit in limits_of(FARM) if limit.key[0] != "least_retention_time"} == {0.0}


def test_a_limit_without_a_bound_is_none() -> None:
    names = {limit.key[0] for limit in limits_of(mix_of(DUNG, available=(10.0,), water_available=None))}
    assert names == (set(WHOLES) - {"water_available"}) | {"available"}


def test_another_bound_leaves_the_first_mix_as_it_was() -> None:
    tighter = FARM.with_limit(("largest_total_solids", WHOLE), 0.08)
    assert tighter.limits["largest_total_solids", WHOLE] == 0.08
    assert FARM.limits["largest_total_solids", WHOLE] == 0.10


def test_the_most_slurry_is_by_retention_or_by_all_there_is_at_its_thinnest() -> None:
    plenty = mix_of(DUNG, available=(1000.0,), volume=9.0, least_retention_time=45.0)
    assert plenty.most_slurry() == pytest.approx(0.2)
    few = mix_of(DUNG, available=(10.0,), volume=9.0, least_total_solids=0.05)
    # 10 kg at 16 % and 5 % in the slurry: 32 kg of it; dung counted as a litre a kilogram, and water for all of its mass.
    assert few.most_slurry() == pytest.approx(10 * 0.001 + 10 * 0.16 / 0.05 / 1000)


@given(mixes(3), st.lists(st.floats(0.0, 1.0), min_size=4, max_size=4))
def test_no_mix_within_the_limits_makes_more_than_the_most_slurry(mix: Mix, parts: list[float]) -> None:
    masses = [part * mix.limits["available", i] for i, part in enumerate(parts[:3])]
    water = parts[3] * mix.limits["water_available", WHOLE]
    if sum(masses) and kept(mix, masses, water):
        assert float(slurry_of(mix) @ np.array([*masses, water])) <= mix.most_slurry() * (1 + 1e-9)


def test_slurry_that_stays_for_ever_gives_all_its_gas() -> None:
    assert gas_at(FARM, 0.0) == pytest.approx([DUNG.potential, DROPPINGS.potential, STRAW.potential, 0.0])
    assert (gas_at(FARM, 0.01) < gas_at(FARM, 0.0))[:3].all()


@given(st.floats(0.001, 1), st.sampled_from([1.0, 2.0, 4.0]))
def test_gas_is_that_of_the_tanks_in_series(slurry: float, tanks: float) -> None:
    mix = replace(FARM, tanks_in_series=tanks)
    expected = [one.potential * mixed_share(one.rate, 6.0 / slurry, tanks) for one in mix.ingredients]
    assert gas_at(mix, slurry)[:3] == pytest.approx(expected)
    assert gas_at(mix, slurry)[3] == 0


@given(st.floats(0.001, 1), st.floats(0.001, 1))
def test_more_slurry_leaves_less_gas_in_a_kilogram(first: float, second: float) -> None:
    """What both the program's promise and its bound rest on."""
    less, more = sorted((first, second))
    assert (gas_at(FARM, more) <= gas_at(FARM, less) + 1e-15).all()


# ---- the program ---------------------------------------------------------------------------------------------------------------------


def test_a_slurry_of_nothing_has_no_mix_but_nothing() -> None:
    found = Program(FARM, "most_gas").at(1e-12)
    assert found is not None
    assert gas_of_mix(FARM, found.unknowns) == pytest.approx(0, abs=1e-9)


def test_a_demand_that_cannot_be_met_has_no_mix() -> None:
    program = Program(FARM, "cheapest", gas_demand=50.0)
    assert program.at(FARM.most_slurry()) is None
    assert program.between(0.0, FARM.most_slurry()) == float("inf")


def test_what_is_promised_at_a_slurry_is_no_more_than_the_mix_gives() -> None:
    for slurry in np.linspace(0.02, FARM.most_slurry(), 9):
        found = Program(FARM, "most_gas").at(float(slurry))
        assert found is not None
        assert float(gas_at(FARM, float(slurry)) @ found.unknowns) <= gas_of_mix(FARM, found.unknowns) * (1 + 1e-12)


@given(mixes(3), st.floats(0.05, 1))
@settings(max_examples=25)
def test_a_mix_of_the_program_keeps_all_limits_without_rounding(mix: Mix, part: float) -> None:
    found = Program(mix, "most_gas").at(part * mix.most_slurry())
    assert found is not None
    if found.unknowns[:-1].any():
        for limit in limits_of(mix):
            over = limit.sense * (limit.reached(found.unknowns) / limit.bound - 1)
            assert over <= (2e-6 if limit.key[0] in EXACT else 0.0), limit.key


def test_amounts_are_never_overdrawn() -> None:
    mix = mix_of(DUNG, available=(12.0,), volume=50.0, water_available=0.005)
    found = best(Program(mix, "most_gas")).best
    assert found is not None
    assert found.unknowns[0] <= 12.0
    assert found.unknowns[1] <= 0.005


def test_a_small_demand_is_met_as_exactly_as_a_large_one() -> None:
    for demand in (1e-4, 1e-2, 1.0):
        found = best(Program(FARM, "cheapest", gas_demand=demand)).best
        assert found is not None
        assert gas_of_mix(FARM, found.unknowns) == pytest.approx(demand, rel=1e-4)


def test_the_size_of_units_follows_a_small_demand() -> None:
    large, small = (Program(FARM, "cheapest", gas_demand=demand) for demand in (1.5, 1e-3))
    assert large.usual_slurry == pytest.approx(1500 * small.usual_slurry)
    assert Program(FARM, "most_gas").usual_slurry == FARM.most_slurry()


def test_relaxations_are_told_by_limit_and_only_where_they_are_asked_for() -> None:
    key = ("least_carbon_to_nitrogen", WHOLE)
    mix = mix_of(DROPPINGS, available=(20.0,), largest_total_ammonia_nitrogen=None)
    assert Program(mix, "least_relaxation", volatile_demand=0.1).at(mix.most_slurry()) is None
    found = Program(mix, "least_relaxation", volatile_demand=0.1, elastic=[key]).at(mix.most_slurry())
    assert found is not None
    assert set(found.relaxed) == {key}
    assert found.relaxed[key] > 0


# ---- the search ----------------------------------------------------------------------------------------------------------------------


def test_nothing_is_searched_where_there_is_nothing() -> None:
    search = best(Program(mix_of(DUNG, available=(0.0,)), "most_gas"))
    assert search.best is None
    assert gap(Search(Program(FARM, "most_gas"))) == 0.0


def test_a_score_is_kept_only_if_it_is_better() -> None:
    search = Search(Program(FARM, "most_gas"))
    top = FARM.most_slurry()
    scores = [search.try_at(part * top) for part in (0.2, 0.9, 0.1)]
    assert search.best is not None
    assert search.best.score == min(scores)


def test_the_proof_betters_a_poor_find_until_it_is_content() -> None:
    search = Search(Program(FARM, "most_gas"))
    search.try_at(FARM.most_slurry() / 10)
    assert search.best is not None
    poor = search.best.score
    assert gap(search) <= CONTENT
    assert search.best.score < poor


def test_near_a_known_mix_the_same_is_found() -> None:
    found = best(Program(FARM, "most_gas"))
    again = near(Program(FARM, "most_gas"), found.slurry)
    assert found.best is not None
    assert again.best is not None
    assert again.best.score == pytest.approx(found.best.score, rel=1e-5)


@given(mixes(2), st.sampled_from([2.0, 3.0]))
@settings(max_examples=10)
def test_in_a_bag_of_several_tanks_too_no_point_of_a_grid_gives_more(mix: Mix, tanks: float) -> None:
    bag = replace(mix, tanks_in_series=tanks)

    def score(masses: Any, water: Any) -> Any:
        slurry = sum(masses) * 0.001 + water
        parts = zip(bag.ingredients, masses, strict=True)
        return sum(one.potential * mass * (1 - (1 + one.rate * bag.working_volume / slurry / tanks) ** -tanks) for one, mass in parts)

    rival, found = best_of_grid(bag, score), best(Program(bag, "most_gas")).best
    if rival is not None:
        assert found is not None
        assert gas_of_mix(bag, found.unknowns) >= rival * (1 - 1e-4)


# ---- worth and gains -----------------------------------------------------------------------------------------------------------------


def test_worth_is_gas_cost_or_largest_use() -> None:
    unknowns = np.array([42.0, 5.0, 3.0, 0.05])
    assert worth(Program(FARM, "most_gas"), unknowns) == pytest.approx(float(gas(FARM, unknowns[:3], 0.05)))
    assert worth(Program(FARM, "cheapest"), unknowns) == pytest.approx(5 * 0.003 + 3 * 0.012) == cost_of(FARM, unknowns)
    assert worth(Program(FARM, "most_even"), unknowns) == pytest.approx(0.5) == largest_use(FARM, unknowns)


def test_what_there_is_none_of_is_not_used_and_holds_nothing() -> None:
    none = FARM.with_limit(("available", 1), 0.0)
    unknowns = np.array([42.0, 0.0, 3.0, 0.05])
    assert largest_use(none, unknowns) == pytest.approx(0.5)
    assert ("available", 1) not in {limit.key for limit in holding(none, unknowns)}


def test_a_step_smaller_than_a_hundredth_is_told_in_proportion() -> None:
    search = best(Program(FARM, "most_gas"))
    [limit] = [one for one in limits_of(FARM) if one.key == ("largest_total_solids", WHOLE)]
    hundredth = gain_of(search, limit, LEAST_STEP * limit.bound)
    assert gain_of(search, limit, LEAST_STEP * limit.bound / 10) == pytest.approx(hundredth / 10, rel=1e-9)


# ---- relaxing ------------------------------------------------------------------------------------------------------------------------


def test_a_need_that_is_met_relaxes_nothing() -> None:
    found = together(FARM, Need(gas_demand=0.5))
    assert found is not None
    assert found.bounds == {}


def test_a_relaxed_bound_leaves_a_little_room() -> None:
    mix = mix_of(DROPPINGS, available=(20.0,), largest_total_ammonia_nitrogen=None)
    key = ("least_carbon_to_nitrogen", WHOLE)
    found = alone(mix, Need(volatile_demand=0.1), key)
    assert found is not None
    ratio = DROPPINGS.carbon / DROPPINGS.nitrogen
    assert found.bounds[key] == pytest.approx(ratio * (1 - ROOM), rel=1e-5)


def test_no_limit_of_operation_gives_way_more_than_fourfold() -> None:
    mix = mix_of(STRAW, available=(20.0,), shares={0: 0.15}, largest_carbon_to_nitrogen=None, largest_crop_residue_share=None)
    assert WIDEST_RELAXED < 1 / 0.15
    assert together(mix, Need(volatile_demand=0.1)) is None
    wider = mix.with_limit(("largest_share", 0), 0.3)
    found = together(wider, Need(volatile_demand=0.1))
    assert found is not None
    assert found.bounds == {("largest_share", 0): pytest.approx(1 + ROOM)}


def test_what_there_is_may_be_asked_for_without_end() -> None:
    need = Need(gas_demand=1.0)
    mix = mix_of(DUNG, available=(2.0,))
    found = alone(mix, need, ("available", 0))
    assert found is not None
    [bound] = found.bounds.values()
    assert bound > 5 * 2.0
    assert alone(mix, need, GAS_DEMAND) is not None
    enough = mix.with_limit(("available", 0), bound)
    most = best(Program(enough, "most_gas"))
    assert most.best is not None
    assert 1.0 <= gas_of_mix(enough, most.best.unknowns) <= 1.002
    assert best(Program(enough, "cheapest", 1.0), (most.slurry,)).best is not None


# ---- what is on hand, limits and words -----------------------------------------------------------------------------------------------


def test_what_comes_and_what_lies_ready_add_up() -> None:
    stores = stores_of(Asked([item(available=10, stock=600), item("wheat_straw", stock=300)], season=100), Ledger(SHELF))
    assert stores.available == [16.0, 3.0]
    assert [stores.inflow(i) for i in range(2)] == pytest.approx([10.0, 0.0])


def test_a_stock_without_a_season_is_spread_over_the_usual() -> None:
    ledger = Ledger(SHELF)
    stores = stores_of(Asked([item("wheat_straw", stock=240)]), ledger)
    assert stores.available == [2.0]
    assert "season" in {one["quantity"] for one in ledger.assumptions}
    assert stores_of(Asked([item(available=5)]), Ledger(SHELF)).season is None


def test_what_is_stated_goes_before_the_herd() -> None:
    herd = [HerdItem(animal="dairy_cow", count=4, dung_per_day=10)]
    assert stores_of(Asked([item()], herd), Ledger(SHELF)).available == [40.0]
    assert stores_of(Asked([item(available=7)], herd), Ledger(SHELF)).available == [7.0]
    assert [one.id for one in stores_of(Asked([], herd), Ledger(SHELF)).fed] == ["cattle_dung"]


def test_a_herd_that_gives_nothing_is_nothing_to_mix() -> None:
    with pytest.raises(RefusedError):
        stores_of(Asked([], [HerdItem(animal="dairy_cow", count=0)]), Ledger(SHELF))


def test_every_limit_has_its_words_and_can_be_stated() -> None:
    keys = {limit.key[0] for limit in limits_of(FARM)} | {GAS_DEMAND[0]}
    assert keys == set(PHRASES)
    assert set(MixLimits.model_fields) == {*PRACTICE, "largest_organic_loading_rate", "least_retention_time"}
    assert {"available", "largest_share"} <= set(OnHand.model_fields)


def dung_and_straw() -> list[Any]:
    names = {"cattle_dung": "Dung", "wheat_straw": "Straw"}
    return [SimpleNamespace(id=id_, entry=SimpleNamespace(name=name)) for id_, name in names.items()]


@pytest.mark.parametrize("name", sorted(PHRASES))
def test_words_name_the_substrate_where_it_matters(name: str) -> None:
    key, phrase, told = (name, 1 if name in ("available", "largest_share") else WHOLE), PHRASES[name], Amount(2.0, "%")
    holds = said(phrase.holds, key, dung_and_straw(), bound=told, step=told)
    allow = said(phrase.allow, key, dung_and_straw(), before=told, after=told)
    assert ("Straw" in holds) is ("Straw" in allow) is (key[1] == 1)
    assert holds.count("2 %") == allow.count("2 %") == 2
    assert (holds.id, allow.id) == (phrase.holds, phrase.allow)
    assert phrase.step > 0


@pytest.mark.parametrize("name", sorted(PHRASES))
def test_a_limit_is_told_by_id_and_by_name(name: str) -> None:
    key = (name, 1 if name in ("available", "largest_share") else WHOLE)
    told = place_of(key, dung_and_straw())
    assert told["limit"] == name
    assert told["name"].id == PHRASES[name].name
    assert ("Straw" in told["name"]) is (told.get("of") == "wheat_straw") is (key[1] == 1)


def test_limits_keep_four_digits_in_words() -> None:
    def shown(value: float, unit: str) -> str:
        return LANGUAGES["en"].amount(amount({"value": value, "unit": unit}))

    assert shown(0.110427, "m3/d") == "0.1104 m³ a day"
    assert shown(20.0, "1") == "20"
    assert shown(123456.0, "kg/d") == "123,456 kg a day"
    assert shown(1.0, "d") == "1 day"
    assert shown(1e-6, "m3/d") == "0.000001 m³ a day"


def test_the_margin_is_less_than_any_answer_shows() -> None:
    assert MARGIN < 1e-5


# ---- rulebooks of others -------------------------------------------------------------------------------------------------------------


def test_a_pack_of_a_region_moves_a_limit(tmp_path: Any) -> None:
    from kilisho import load, open_questions

    layer = {
        "practice": {"figures": {"largest_slurry_total_solids": dict(base_figure("largest_slurry_total_solids"), typical=0.08, high=0.1)}}
    }
    file = tmp_path / "region.yaml"
    file.write_text(json.dumps(layer), "utf-8")
    asked: Json = {"working_volume": 6, "on_hand": [{"substrate": "cattle_dung", "available": 80}], "climate": {"digester_temperature": 24}}
    theirs = ask("feed-mix", asked, among=open_questions(load(file)))
    assert value(theirs, "total_solids") <= 8.0001
    assert value(theirs, "biogas_per_day") < value(ask("feed-mix", asked), "biogas_per_day")


def base_figure(name: str) -> Json:
    """A figure of practice as a pack states it."""
    figure = base().data.practice.figures[name]
    return {"kind": figure.kind, "description": figure.description, "low": figure.low, "typical": figure.typical, "high": figure.high} | {
        "unit": "1",
        "basis": "judgement",
    }


@pytest.mark.parametrize("substrate", sorted(base().data.substrates))
def test_every_substrate_can_be_asked_for_alone(substrate: str) -> None:
    """Each has a recipe, or it is said what stands in the way of one; a quarter of what there is binds nowhere."""
    asked: Json = {"working_volume": 6, "on_hand": [{"substrate": substrate, "available": 12}], "climate": {"digester_temperature": 24}}
    answer = ask("feed-mix", asked)
    assert answer["feasible"] is bool(answer["recipe"])
    assert answer["feasible"] or answer["relax"]["most_gas_within_limits"]["value"] == pytest.approx(0, abs=1e-6)
    assert answer["feasible"] is ("relax" not in answer)


@pytest.mark.parametrize("share", [0.0, 0.1, 0.3])
def test_dung_carries_any_other_substrate_within_limits(share: float) -> None:
    for other in ("pig_manure", "rice_straw", "vegetable_waste", "kitchen_waste"):
        items = [{"substrate": "cattle_dung", "available": 60}, {"substrate": other, "available": max(1.0, 60 * share)}]
        alone_ = ask("feed-mix", {"working_volume": 8, "on_hand": items[:1], "climate": {"digester_temperature": 24}})
        blended = ask("feed-mix", {"working_volume": 8, "on_hand": items, "climate": {"digester_temperature": 24}})
        assert value(blended, "biogas_per_day") >= value(alone_, "biogas_per_day") * (1 - 1e-4), other


def test_the_question_is_known_as_slow() -> None:
    assert questions()["feed-mix"].slow
    assert like({"a": 1}, a=None) == {}
