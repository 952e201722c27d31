"""Stories of farms, and what somebody who knows digesters would expect of their mix. Where no source is named it is common practice."""

from __future__ import annotations

import pytest
from tests.rules.conftest import Json, ask, assert_sound, findings, like, value

HENS: Json = {
    "name": "Ferny Bottom (invented)",
    "on_hand": [
        {"substrate": "layer_droppings", "available": 30},
        {"substrate": "cattle_dung", "available": 60, "price": {"value": 5, "per": "t"}, "brought_in": True},
        {"substrate": "rice_straw", "available": 10},
    ],
    "working_volume": 8,
    "climate": {"digester_temperature": 27},
}
COWS: Json = {
    "name": "Highfold (invented)",
    "herd": [{"animal": "dairy_cow", "count": 6, "housing": "stall"}],
    "digester": {"structure": "fixed_dome", "total_volume": 12},
    "climate": {"mean_air_temperature": 24},
}


def mix(body: Json, **changes: object) -> Json:
    answer = ask("feed-mix", like(body, **changes))
    assert_sound("feed-mix", answer)
    return answer


def masses(answer: Json) -> dict[str, float]:
    return {part["substrate"]: part["mass"]["value"] for part in answer["recipe"]}


def test_hen_droppings_are_blended_with_dung_and_not_fed_alone() -> None:
    fed = masses(mix(HENS))
    assert 0 < fed["layer_droppings"] < 0.5 * fed["cattle_dung"]


def test_hen_droppings_alone_are_refused_with_the_reason() -> None:
    answer = mix(HENS, on_hand=HENS["on_hand"][:1])
    assert answer["feasible"] is False
    changed = {one["limit"] for one in answer["relax"]["together"]["changes"]}
    assert "least_carbon_to_nitrogen" in changed
    assert any(one["id"] == "ammonia_feed" for one in answer["cautions"])


def test_straw_lets_more_droppings_in() -> None:
    with_straw, without = mix(HENS), mix(HENS, on_hand=HENS["on_hand"][:2])
    assert masses(with_straw)["layer_droppings"] > masses(without).get("layer_droppings", 0)
    assert value(with_straw, "biogas_per_day") > value(without, "biogas_per_day")


def test_straw_stays_below_what_floats() -> None:
    """Pack: rice straw is usually no more than 15 % of the volatile solids in simple digesters."""
    answer = mix(HENS, on_hand=[*HENS["on_hand"][:2], {"substrate": "rice_straw", "available": 200}])
    [straw] = [part for part in answer["recipe"] if part["substrate"] == "rice_straw"]
    assert straw["share_of_volatile_solids"]["value"] <= 15.001
    assert any("hop" in text for text in straw["handling"])
    assert any(one["id"] == "floating_feed" for one in answer["cautions"])


def test_bought_dung_costs_and_brings_the_question_of_disease() -> None:
    answer = mix(HENS)
    [dung] = [part for part in answer["recipe"] if part["substrate"] == "cattle_dung"]
    assert answer["cost_per_day"] == pytest.approx(dung["mass"]["value"] * 0.005, abs=1e-3)
    assert any(one["id"] == "animal_disease_import" for one in answer["cautions"])


def test_cows_alone_get_about_the_water_that_the_trade_pours() -> None:
    """Equal volumes of dung and water is the trade's rule; the thickest slurry that is allowed takes somewhat less."""
    answer = mix(COWS)
    ratio = value(answer, "water_per_day") / masses(answer)["cattle_dung"]
    assert 0.4 < ratio <= 1.0
    thinner = mix(COWS, limits={"largest_total_solids": 0.075})
    assert value(thinner, "water_per_day") / masses(thinner)["cattle_dung"] == pytest.approx(1.0, rel=0.01)


def test_a_family_that_wants_two_cubic_metres_need_not_feed_all() -> None:
    answer = mix(COWS, wish="most_even", gas_demand=1.2)
    assert answer["feasible"]
    assert 0 < value(answer, "largest_use") < 100
    [left] = answer["left_over"]
    assert left["mass"]["value"] > 0


def test_a_feast_that_asks_for_too_much_is_told_what_there_can_be() -> None:
    answer = mix(COWS, wish="cheapest", gas_demand=20)
    assert answer["feasible"] is False
    alone = {one["changes"][0]["limit"]: one["changes"][0]["to"]["value"] for one in answer["relax"]["alone"]}
    assert alone["gas_demand"] == pytest.approx(value(mix(COWS), "biogas_per_day"), rel=5e-3)


def test_a_dry_season_with_little_water_gives_less_gas_and_says_that_water_is_short() -> None:
    plenty, dry = mix(COWS), mix(COWS, water_available=10)
    assert value(dry, "biogas_per_day") < value(plenty, "biogas_per_day")
    assert "water_available" in {one["limit"] for one in dry["binding_limits"]}
    assert value(dry, "total_solids") <= 10.0001


def test_without_any_water_urine_wets_the_dung() -> None:
    items: list[Json] = [{"substrate": "cattle_dung", "available": 80}, {"substrate": "cattle_urine", "available": 40}]
    room = {"least_carbon_to_nitrogen": 4, "largest_total_ammonia_nitrogen": {"value": 6, "unit": "g/L"}}
    dry = mix(COWS, herd=None, on_hand=items[:1], water_available=0, limits=room)
    wet = mix(COWS, herd=None, on_hand=items, water_available=0, limits=room)
    assert dry["feasible"] is False
    assert wet["feasible"]
    assert masses(wet)["cattle_urine"] > 0


@pytest.mark.parametrize("degrees", [12, 17, 22, 28, 33])
def test_the_warmer_the_slurry_the_more_may_be_fed_and_the_more_gas_it_gives(degrees: int) -> None:
    herd = [{"animal": "dairy_cow", "count": 40}]
    cool, warm = (mix(COWS, herd=herd, climate={"digester_temperature": t}) for t in (degrees - 2, degrees))
    assert value(warm, "feed_per_day") >= value(cool, "feed_per_day") * (1 - 1e-4)
    assert value(warm, "biogas_per_day") > value(cool, "biogas_per_day")


def test_a_large_digester_with_few_cows_is_said_to_be_starved() -> None:
    answer = mix(COWS, digester={"structure": "fixed_dome", "total_volume": 60})
    assert findings(answer)["fed_share_least"] == "fail"
    assert {"available"} <= {one["limit"] for one in answer["binding_limits"]}


def test_kitchen_waste_stays_a_side_dish() -> None:
    """Pack: what sours quickly is a quarter of the volatile solids at most, until a digester has run for months."""
    items = [{"substrate": "cattle_dung", "available": 60}, {"substrate": "kitchen_waste", "available": 60}]
    strict = mix(COWS, herd=None, on_hand=items)
    assert set(masses(strict)) == {"cattle_dung"}  # the waste is a little richer in nitrogen than the usual limit, and dung lies on it
    assert "least_carbon_to_nitrogen" in {one["limit"] for one in strict["binding_limits"]}
    easy = mix(COWS, herd=None, on_hand=items, limits={"least_carbon_to_nitrogen": 16})
    [waste] = [part for part in easy["recipe"] if part["substrate"] == "kitchen_waste"]
    assert 0 < waste["share_of_volatile_solids"]["value"] <= 25.001


def test_the_answer_never_tells_an_empty_recipe_as_advice() -> None:
    answer = mix(HENS, on_hand=HENS["on_hand"][2:])
    assert (answer["feasible"], answer["recipe"]) == (False, [])
    assert "water_per_day" not in answer
    assert "No mix" in answer["relax"]["text"]


def test_a_yard_with_a_dozen_substrates_gets_a_recipe_that_keeps_all_limits() -> None:
    names = [
        "cattle_dung",
        "pig_manure",
        "layer_droppings",
        "goat_droppings",
        "horse_dung",
        "maize_stover",
        "wheat_straw",
        "napier_grass",
        "banana_stem",
        "vegetable_waste",
        "kitchen_waste",
        "whey",
    ]
    answer = mix(COWS, herd=None, on_hand=[{"substrate": name, "available": 15} for name in names])
    assert answer["feasible"]
    for one in answer["limits"]:
        least = one["limit"].startswith("least_")
        over = (one["reached"]["value"] - one["bound"]["value"]) * (-1 if least else 1)
        assert over <= 1e-4 * one["bound"]["value"], one["limit"]
    assert value(answer, "biogas_per_day") > value(
        mix(COWS, herd=None, on_hand=[{"substrate": "cattle_dung", "available": 15}]), "biogas_per_day"
    )
