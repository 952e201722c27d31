"""The question of the feed mix: recipe, limits, gas, cost, what binds, what to relax, and the words beside it."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, assert_sound, assumed, base, findings, like, questions, value

from kilisho.faults import RefusedError
from kilisho.units import from_canonical

FARM: Json = json.loads((Path(__file__).parents[1] / "contract" / "feed-mix.request.json").read_text("utf-8"))
PIGS: Json = {
    "on_hand": [{"substrate": "pig_manure", "available": 30}, {"substrate": "wheat_straw", "available": 12}],
    "working_volume": 6,
    "climate": {"digester_temperature": 26},
}
PIGS_ONLY: Json = like(PIGS, on_hand=PIGS["on_hand"][:1])
RELAXED_IN_REQUEST = ("least_", "largest_total", "largest_carbon", "largest_organic", "largest_crop")


def mix(body: Json, **changes: Any) -> Json:
    answer = ask("feed-mix", like(body, **changes))
    assert_sound("feed-mix", answer)
    return answer


def masses(answer: Json) -> dict[str, float]:
    return {part["substrate"]: part["mass"]["value"] for part in answer["recipe"]}


def bound(answer: Json, limit: str, of: str | None = None) -> Json:
    [found] = [one for one in answer["limits"] if (one["limit"], one.get("of")) == (limit, of)]
    return dict(found)


def binding(answer: Json) -> set[tuple[str, str | None]]:
    return {(one["limit"], one.get("of")) for one in answer["binding_limits"]}


# ---- the recipe --------------------------------------------------------------------------------------------------------------------


def test_the_masses_balance() -> None:
    answer = mix(FARM)
    there = {one["substrate"]: one["available"]["value"] for one in FARM["on_hand"]}
    left = {one["substrate"]: one["mass"]["value"] for one in answer["left_over"]}
    fed = masses(answer)
    assert {name: fed.get(name, 0) + left[name] for name in there} == pytest.approx(there, abs=2e-4)
    assert sum(fed.values()) == pytest.approx(value(answer, "feed_per_day"), abs=1e-3)
    assert sum(part["share"]["value"] for part in answer["recipe"]) == pytest.approx(100, abs=1e-3)
    assert sum(part["share_of_volatile_solids"]["value"] for part in answer["recipe"]) == pytest.approx(100, abs=1e-3)
    assert sum(part["cost_per_day"] for part in answer["recipe"]) == pytest.approx(answer["cost_per_day"], abs=1e-3)
    assert value(answer, "feed_per_day") + value(answer, "water_per_day") >= value(answer, "slurry_per_day") - 1e-3


def test_the_recipe_keeps_every_limit_that_is_told() -> None:
    for body in (
        FARM,
        like(FARM, wish="most_even"),
        like(FARM, wish="cheapest", gas_demand=1.2),
        like(PIGS, limits={"least_carbon_to_nitrogen": 12}),
    ):
        answer = mix(body)
        assert answer["feasible"]
        for one in answer["limits"]:
            slack = 1e-4 * one["bound"]["value"]
            least = one["limit"].startswith("least_")
            over = one["bound"]["value"] - one["reached"]["value"] if least else one["reached"]["value"] - one["bound"]["value"]
            assert over <= slack, one


def test_fed_as_told_the_maintenance_feed_finds_the_same_gas_and_slurry() -> None:
    """The same recipe through another question of the engine."""
    answer = mix(FARM)
    volume = sum(part["mass"]["value"] / base().data.substrates[part["substrate"]].bulk_density.typical for part in answer["recipe"])
    feed = [{"substrate": part["substrate"], "mass": part["mass"]["value"]} for part in answer["recipe"]]
    ratio = value(answer, "water_per_day") / 1000 / volume
    body = {"digester": {"working_volume": 6}, "feed": feed, "dilution": {"water_to_feed_by_volume": ratio}, "climate": FARM["climate"]}
    again = ask("maintenance-feed", body)
    pairs = {"total_solids": "slurry_total_solids"}
    for name in (
        "biogas_per_day",
        "hydraulic_retention_time",
        "organic_loading_rate",
        "carbon_to_nitrogen",
        "total_solids",
        "slurry_per_day",
    ):
        assert value(again, pairs.get(name, name)) == pytest.approx(value(answer, name), rel=1e-4), name


def test_every_share_of_the_feed_is_tried_against_the_maintenance_feed() -> None:
    """No other recipe on a coarse net that keeps the limits gives more gas, asked of another question."""
    best = value(mix(FARM), "biogas_per_day")
    for dung in (40, 50, 58, 60, 70, 84):
        for droppings in (0, 2.5, 5):
            for stover in (0, 1, 1.8):
                feed = [("cattle_dung", dung), ("layer_droppings", droppings), ("maize_stover", stover)]
                items = [{"substrate": name, "mass": mass} for name, mass in feed if mass]
                body = {"digester": {"working_volume": 6}, "feed": items, "dilution": {"target_total_solids": 0.0999}}
                told = ask("maintenance-feed", {**body, "climate": FARM["climate"]})
                fits = value(told, "carbon_to_nitrogen") >= 20 and value(told, "organic_loading_rate") <= 1.5
                if fits and value(told, "hydraulic_retention_time") >= bound(mix(FARM), "least_retention_time")["bound"]["value"]:
                    assert value(told, "biogas_per_day") <= best * (1 + 1e-6)


def test_a_recipe_by_default_fails_no_warning_about_what_it_was_made_to_keep() -> None:
    answer = mix(FARM, climate={"digester_temperature": 26})
    subjects = {"slurry_total_solids", "carbon_to_nitrogen", "total_ammonia_nitrogen", "organic_loading_rate", "hydraulic_retention_time"}
    failed = [one for one in answer["findings"] if one["verdict"] == "fail" and one["subject"] in subjects]
    assert [one["check"] for one in failed if one["severity"] in ("danger", "warning")] == []


@given(st.sampled_from([0.5, 2.0, 5.0]))
@settings(max_examples=3)
def test_a_farm_n_times_as_large_gets_n_times_the_recipe(times: float) -> None:
    def sized(factor: float) -> Json:
        items = [{**one, "available": one["available"]["value"] * factor} for one in FARM["on_hand"]]
        return mix(FARM, on_hand=items, working_volume=6 * factor, water_available=0.15 * 1000 * factor)

    once, scaled = sized(1), sized(times)
    assert masses(scaled) == pytest.approx({name: times * mass for name, mass in masses(once).items()}, rel=1e-3)
    assert value(scaled, "biogas_per_day") == pytest.approx(times * value(once, "biogas_per_day"), rel=1e-4)
    assert value(scaled, "hydraulic_retention_time") == pytest.approx(value(once, "hydraulic_retention_time"), rel=1e-3)


def test_the_same_question_has_the_same_answer() -> None:
    assert ask("feed-mix", FARM, explain=True) == ask("feed-mix", FARM, explain=True)


def test_the_order_of_what_is_on_hand_does_not_matter() -> None:
    turned = mix(FARM, on_hand=FARM["on_hand"][::-1])
    assert masses(turned) == pytest.approx(masses(mix(FARM)), rel=1e-3)


# ---- wishes ------------------------------------------------------------------------------------------------------------------------


def test_the_cheapest_meets_the_demand_and_costs_no_more_than_the_most_gas() -> None:
    priced = [{**one, "price": {"value": price, "per": "t"}} for one, price in zip(FARM["on_hand"], (3, 2, 10), strict=True)]
    most = mix(FARM, on_hand=priced)
    cheap = mix(FARM, on_hand=priced, wish="cheapest", gas_demand=1.2)
    assert value(cheap, "biogas_per_day") >= 1.2 - 1e-6
    assert value(cheap, "demand_met") >= 100 - 1e-4
    assert cheap["cost_per_day"] < most["cost_per_day"]
    [demand] = [one for one in cheap["binding_limits"] if one["limit"] == "gas_demand"]
    assert demand["saves"] > 0


def test_the_even_recipe_uses_the_smallest_part_of_what_there_is() -> None:
    even, cheap = mix(FARM, wish="most_even", gas_demand=1.2), mix(FARM, wish="cheapest", gas_demand=1.2)
    assert value(even, "largest_use") <= value(cheap, "largest_use") + 1e-3
    assert value(even, "biogas_per_day") >= 1.2 - 1e-6
    assert max(part["used"]["value"] for part in even["recipe"]) == pytest.approx(value(even, "largest_use"), abs=1e-3)


def test_without_a_demand_the_even_recipe_keeps_most_of_the_gas() -> None:
    even, most = mix(FARM, wish="most_even"), mix(FARM)
    assert value(even, "biogas_per_day") == pytest.approx(0.9 * value(most, "biogas_per_day"), rel=1e-3)
    assert value(even, "largest_use") < value(most, "largest_use")
    assert ("gas_kept_when_even", None) in assumed(even)


def test_the_most_gas_says_how_far_it_meets_a_demand() -> None:
    answer = mix(FARM, gas_demand=3)
    assert answer["feasible"]
    assert value(answer, "demand_met") == pytest.approx(100 * value(answer, "biogas_per_day") / 3, rel=1e-4)


def test_a_stock_lasts_through_the_season() -> None:
    items = [FARM["on_hand"][0], {"substrate": "wheat_straw", "stock": 90}]
    answer = mix(FARM, on_hand=items, season=90)
    assert bound(answer, "available", "wheat_straw")["bound"]["value"] == 1
    [straw] = [part for part in answer["recipe"] if part["substrate"] == "wheat_straw"]
    assert straw["stock_lasts"]["value"] >= 90 - 1e-3
    assert straw["stock_lasts"]["value"] == pytest.approx(90 / straw["mass"]["value"], rel=1e-3)
    assert ("season", None) in assumed(mix(FARM, on_hand=items))


# ---- what there is -------------------------------------------------------------------------------------------------------------------


def test_the_herd_gives_what_is_not_stated() -> None:
    herd = [{"animal": "dairy_cow", "count": 5, "dung_per_day": 14}]
    answer = mix({"herd": herd, "working_volume": 6, "climate": FARM["climate"]})
    assert bound(answer, "available", "cattle_dung")["bound"]["value"] == 70
    with_straw = mix({"herd": herd, "on_hand": [{"substrate": "cattle_dung"}], "working_volume": 6, "climate": FARM["climate"]})
    assert masses(with_straw) == masses(answer)


def test_what_has_no_price_is_said_to_be_free() -> None:
    answer = mix(PIGS)
    assert ("price", "pig_manure") in assumed(answer)
    assert ("price", "cattle_dung") not in assumed(mix(FARM))


def test_measured_properties_replace_the_rulebooks() -> None:
    thin = [{**FARM["on_hand"][0], "total_solids": 0.10}]
    thick = [{**FARM["on_hand"][0], "total_solids": 0.18}]
    first, second = mix(FARM, on_hand=thin), mix(FARM, on_hand=thick)
    assert value(second, "biogas_per_day") > value(first, "biogas_per_day")
    assert ("total_solids", "cattle_dung") not in assumed(first)


@pytest.mark.parametrize(
    ("change", "pointer", "code"),
    [
        ({"working_volume": None}, "", "volume_unstated"),
        ({"digester": {"total_volume": 9}}, "/working_volume", "volume_twice"),
        ({"working_volume": None, "digester": {"structure": "batch_tank", "total_volume": 9}}, "/digester/structure", "not_fed_daily"),
        ({"on_hand": [{"substrate": "whey"}]}, "/on_hand/0", "amount_unknown"),
        ({"on_hand": []}, "/on_hand", "nothing_to_mix"),
        ({"on_hand": [{"substrate": "whey", "stock": 0}]}, "/on_hand", "nothing_to_mix"),
        ({"on_hand": [{"substrate": "whey", "available": 3}] * 2}, "/on_hand", "substrate_twice"),
        ({"wish": "cheapest"}, "/gas_demand", "demand_missing"),
        ({"limits": {"least_total_solids": 0.1, "largest_total_solids": 0.05}}, "/limits/least_total_solids", "limits_disordered"),
    ],
)
def test_what_is_refused(change: Json, pointer: str, code: str) -> None:
    with pytest.raises(RefusedError) as refused:
        ask("feed-mix", like(FARM, **change))
    assert [(fault.pointer, fault.code) for fault in refused.value.faults] == [(pointer, code)]


# ---- limits --------------------------------------------------------------------------------------------------------------------------


def test_practice_gives_the_limits_and_the_caller_replaces_them() -> None:
    usual = mix(FARM)
    assert bound(usual, "largest_total_solids")["bound"] == {"value": 10, "unit": "%"}
    assert bound(usual, "largest_share", "maize_stover")["bound"]["value"] == 15
    assert {("largest_total_solids", None), ("least_retention_time", None), ("largest_share", "maize_stover")} <= assumed(usual)
    items = [*FARM["on_hand"][:2], {**FARM["on_hand"][2], "largest_share": 0.05}]
    own = mix(FARM, on_hand=items, limits={"largest_total_solids": 0.08})
    assert bound(own, "largest_total_solids")["bound"]["value"] == 8
    assert bound(own, "largest_share", "maize_stover")["bound"]["value"] == 5
    assert not {("largest_total_solids", None), ("largest_share", "maize_stover")} & assumed(own)
    assert value(own, "total_solids") <= 8.0001
    assert value(own, "biogas_per_day") <= value(usual, "biogas_per_day") + 1e-6


def test_cold_slurry_bears_less() -> None:
    cold, warm = (mix(FARM, climate={"digester_temperature": t}) for t in (16, 19))
    assert bound(cold, "largest_organic_loading_rate")["bound"]["value"] == 0.8
    assert bound(warm, "largest_organic_loading_rate")["bound"]["value"] == 1.5
    assert bound(cold, "least_retention_time")["bound"]["value"] > bound(warm, "least_retention_time")["bound"]["value"]


def test_without_stated_water_there_is_no_limit_of_it() -> None:
    assert not [one for one in mix(FARM, water_available=None)["limits"] if one["limit"] == "water_available"]


def test_short_water_binds_and_says_what_a_litre_would_bring() -> None:
    answer = mix(FARM, water_available=15)
    [water] = [one for one in answer["binding_limits"] if one["limit"] == "water_available"]
    more = mix(FARM, water_available=16)
    assert water["brings"]["value"] == pytest.approx(value(more, "biogas_per_day") - value(answer, "biogas_per_day"), rel=0.02, abs=1e-5)
    assert water["one_more"] == {"value": 1, "unit": "L/d"}
    assert "All water is used (15 L a day). One step more would be 1 L a day more water. That would bring " in water["text"]


def test_a_binding_amount_says_what_a_kilogram_would_bring() -> None:
    few = [{**FARM["on_hand"][0], "available": 25}]
    answer = mix(FARM, on_hand=few)
    [dung] = [one for one in answer["binding_limits"] if one["limit"] == "available"]
    more = mix(FARM, on_hand=[{**few[0], "available": 26}])
    assert (dung["of"], dung["value"]) == ("cattle_dung", {"value": 25, "unit": "kg/d"})
    assert dung["brings"]["value"] == pytest.approx(value(more, "biogas_per_day") - value(answer, "biogas_per_day"), rel=0.01)


def test_what_is_not_binding_is_not_listed() -> None:
    answer = mix(FARM)
    assert ("water_available", None) not in binding(answer)
    assert ("least_total_solids", None) not in binding(answer)
    gains = [one["brings"]["value"] for one in answer["binding_limits"]]
    assert gains == sorted(gains, reverse=True)
    assert gains[0] > 0


@given(st.sampled_from(sorted(one["substrate"] for one in FARM["on_hand"])), st.floats(1.05, 2))
@settings(max_examples=6)
def test_more_on_hand_never_gives_less_gas(which: str, times: float) -> None:
    items = [{**one, "available": one["available"]["value"] * (times if one["substrate"] == which else 1)} for one in FARM["on_hand"]]
    assert value(mix(FARM, on_hand=items), "biogas_per_day") >= value(mix(FARM), "biogas_per_day") * (1 - 1e-4)


# ---- where nothing keeps all limits ----------------------------------------------------------------------------------------------------


def asked_with(body: Json, easing: Json) -> Json:
    """The request with the relaxed limits in place."""
    changed: Json = {"limits": dict(body.get("limits", {}))}
    for one in easing["changes"]:
        amount = one["to"]["value"] if one["to"]["unit"] == "1" else one["to"]
        if one["limit"].startswith(RELAXED_IN_REQUEST):
            changed["limits"][one["limit"]] = amount
        elif one["limit"] in ("gas_demand", "water_available"):
            changed[one["limit"]] = amount
        else:
            items = changed.get("on_hand", body["on_hand"])
            changed["on_hand"] = [{**item, one["limit"]: amount} if item["substrate"] == one["of"] else item for item in items]
    return like(body, **changed)


@pytest.mark.parametrize(
    "body",
    [
        PIGS_ONLY,
        like(FARM, wish="cheapest", gas_demand=3),
        like(FARM, wish="most_even", gas_demand=2.2),
        like(FARM, limits={"least_carbon_to_nitrogen": 40}),
    ],
    ids=["pigs alone", "too much gas", "too much gas evenly", "too much carbon"],
)
def test_asked_again_with_the_relaxed_limits_there_is_a_recipe(body: Json) -> None:
    answer = mix(body)
    assert answer["feasible"] is False
    assert (answer["recipe"], answer["binding_limits"]) == ([], [])
    assert "biogas_per_day" not in answer
    easings = [answer["relax"]["together"], *answer["relax"]["alone"]]
    for easing in easings:
        again = mix(asked_with(body, easing))
        assert again["feasible"], easing["changes"]
        assert again["recipe"]


def test_pigs_alone_are_short_of_carbon_and_straw_mends_it() -> None:
    [change] = mix(PIGS_ONLY)["relax"]["together"]["changes"]
    assert change["limit"] == "least_carbon_to_nitrogen"
    assert change["from"]["value"] == 20
    assert change["to"]["value"] == pytest.approx(11, rel=2e-3)
    assert "lower carbon to nitrogen ratio: 10.99 instead of 20" in change["text"]
    blended = mix(PIGS, limits={"least_carbon_to_nitrogen": 12})
    assert set(masses(blended)) == {"pig_manure", "wheat_straw"}


def test_a_demand_beyond_all_limits_names_the_most_gas() -> None:
    answer = mix(FARM, wish="cheapest", gas_demand=3)
    most = value(mix(FARM), "biogas_per_day")
    assert value(answer, "relax.most_gas_within_limits") == pytest.approx(most, rel=1e-4)
    alone = {one["changes"][0]["limit"]: one["changes"][0]["to"]["value"] for one in answer["relax"]["alone"]}
    assert alone["gas_demand"] == pytest.approx(most, rel=3e-3)


def test_straw_alone_is_not_offered_beyond_reason() -> None:
    answer = mix(FARM, on_hand=[{"substrate": "wheat_straw", "available": 20}])
    assert answer["feasible"] is False
    assert "together" not in answer["relax"]
    assert answer["relax"]["alone"] == []


def test_where_there_is_no_recipe_nothing_of_it_passes() -> None:
    verdicts = findings(mix(PIGS_ONLY))
    assert verdicts["loading_simple"] == verdicts["total_ammonia_most"] == "unknown"


# ---- ranges, words and cautions ----------------------------------------------------------------------------------------------------


def test_the_instructions_are_exact_and_what_they_do_has_a_range() -> None:
    answer = mix(FARM)
    assert all("low" not in part["mass"] for part in answer["recipe"])
    assert "low" not in answer["water_per_day"]
    for name in ("biogas_per_day", "total_solids", "carbon_to_nitrogen", "total_ammonia_nitrogen", "organic_loading_rate"):
        assert answer[name]["low"] < answer[name]["value"] + 1e-9 < answer[name]["high"] + 2e-9, name
    assert {one["answer"] for one in answer["measure_first"]} == {"biogas_per_day"}


def test_what_to_do_with_each_substrate_stands_beside_it() -> None:
    answer = mix(FARM)
    words = {part["substrate"]: " ".join(part["handling"]) for part in answer["recipe"]}
    assert "feathers" in words["layer_droppings"]
    assert "Chop" in words["maize_stover"]
    shown = {one["id"] for one in answer["cautions"]}
    assert {"ammonia_feed", "floating_feed", "antibiotics_disinfectants", "pathogens_manure", "never_enter", "hygiene"} <= shown
    assert findings(answer)["no_antibiotics"] == "unknown"


def test_what_is_brought_in_may_carry_disease() -> None:
    own = {one["id"] for one in mix(PIGS_ONLY, limits={"least_carbon_to_nitrogen": 8})["cautions"]}
    bought = [{**PIGS_ONLY["on_hand"][0], "brought_in": True}]
    brought = {one["id"] for one in mix(PIGS_ONLY, on_hand=bought, limits={"least_carbon_to_nitrogen": 8})["cautions"]}
    assert brought - own == {"animal_disease_import"} or "animal_disease_import" in own
    assert "animal_disease_import" in brought


def test_stated_facts_are_read_and_may_not_deny_the_recipe() -> None:
    dosed = mix(FARM, facts={"feed_contains": ["antibiotics"]})
    assert findings(dosed)["no_antibiotics"] == "fail"
    with pytest.raises(RefusedError):
        mix(FARM, facts={"slurry_total_solids": {"value": 3, "unit": "%"}})


def test_the_proof_is_told() -> None:
    answer = mix(FARM)
    assert 0 <= value(answer, "proved_within") <= 1
    assert "No mix" in answer["proved_within"]["text"]


def test_the_derivation_goes_from_substrates_to_gas() -> None:
    steps = {one["quantity"] for one in ask("feed-mix", FARM, explain=True)["derivation"]}
    assert {"biogas_per_day", "carbon_to_nitrogen", "hydraulic_retention_time", "slurry_total_solids"} <= steps


def test_limits_of_practice_agree_with_the_checks() -> None:
    """What a mix is planned for by default lies where the checks warn of nothing."""
    figures, checks = base().data.practice.figures, base().data.checks
    pairs = [
        ("largest_slurry_total_solids", "slurry_total_solids_usual", 1),
        ("least_slurry_total_solids", "slurry_total_solids_usual", 0),
        ("least_mix_carbon_to_nitrogen", "carbon_to_nitrogen_usual", 0),
        ("largest_mix_carbon_to_nitrogen", "carbon_to_nitrogen_usual", 1),
    ]
    for figure, check, end in pairs:
        span = checks[check].must.between
        assert span is not None
        assert from_canonical(figures[figure].typical, figures[figure].kind, str(checks[check].must.unit)) == pytest.approx(span[end])
    for figure, check in (("largest_mix_loading", "loading_simple"), ("largest_cold_mix_loading", "loading_cold")):
        assert figures[figure].typical == checks[check].must.at_most
    assert figures["largest_mix_ammonia_nitrogen"].typical == checks["total_ammonia_usual"].must.at_most
    assert figures["largest_mix_crop_residue_share"].typical == (checks["crop_residue_more"].must.at_most or 0) / 100


def test_the_example_is_answered() -> None:
    assert mix(questions()["feed-mix"].example)["feasible"]
