"""Digestate: mass, solids and nutrients close from the feed to the field, whatever is asked, and what is unknown is not told as 0."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, assert_sound, assumed, base, digestates, findings, like, value

from kilisho.faults import RefusedError
from kilisho.formulas.nutrients import PHOSPHATE_PER_PHOSPHORUS, POTASH_PER_POTASSIUM
from kilisho.packs import load
from kilisho.questions import open_questions

YEAR = 365.25
DUNG: Json = {"substrate": "cattle_dung", "mass": 84}
FARM: Json = {
    "feed": [DUNG],
    "water": 84,
    "urine": 30,
    "hydraulic_retention_time": 36,
    "climate": {"digester_temperature": 24},
    "crops": [{"crop": "maize", "nitrogen_need": 90, "area": 0.8, "eaten_raw": False}],
}


def digestate(explain: bool = False, **changes: Any) -> Json:
    return ask("digestate", like(FARM, **changes), explain)


def faults(**changes: Any) -> dict[str, str]:
    with pytest.raises(RefusedError) as refused:
        digestate(**changes)
    return {fault.pointer: fault.code for fault in refused.value.faults}


def ends(answer: Json, path: str) -> tuple[float, float, float]:
    """Low, value and high of a number; the value itself where it has no range."""
    found: Any = answer
    for part in path.split("."):
        found = found[int(part)] if isinstance(found, list) else found[part]
    return found.get("low", found["value"]), found["value"], found.get("high", found["value"])


# Mass and solids


@given(digestates())
def test_mass_and_solids_close(body: Json) -> None:
    try:
        answer = ask("digestate", body)
    except RefusedError:
        return
    told = {name: value(answer, f"balance.{name}") for name in answer["balance"] if name != "text"}
    size = told["slurry_in"]
    assert told["digestate_out"] + told["gas_out"] == pytest.approx(size, rel=1e-6, abs=3e-4)
    assert told["organic_matter_to_gas"] + told["organic_matter_left"] == pytest.approx(told["organic_matter_in"], rel=1e-6, abs=3e-4)
    assert told["total_solids_in"] - told["total_solids_left"] == pytest.approx(told["organic_matter_to_gas"], rel=1e-6, abs=3e-4)
    assert told["organic_matter_left"] >= 0
    assert told["total_solids_left_per_year"] == pytest.approx(YEAR * told["total_solids_left"], rel=1e-4, abs=0.1)


def test_the_contract_s_farm_by_hand() -> None:
    """84 kg of dung of 15 % solids with 1.8 % nitrogen, 30 L of urine of 1.02 kg/L, 5 % solids and 18 % nitrogen."""
    answer = digestate()
    assert value(answer, "balance.slurry_in") == pytest.approx(84 + 84 + 30 * 1.02)
    nitrogen = 84 * 0.15 * 0.018 + 30 * 1.02 * 0.05 * 0.18
    assert value(answer, "nitrogen") == pytest.approx(nitrogen, abs=1e-4)
    assert value(answer, "nitrogen.per_year") == pytest.approx(nitrogen * YEAR, abs=1e-2)
    assert value(answer, "balance.total_solids_in") == pytest.approx(84 * 0.15 + 30 * 1.02 * 0.05, abs=1e-4)
    assert value(answer, "digestate_per_year") == pytest.approx(value(answer, "digestate_per_day") * YEAR / 1000, abs=1e-3)
    ammonium = 84 * 0.15 * 0.018 * 0.6 + 30 * 1.02 * 0.05 * 0.18 * 0.9
    assert value(answer, "nitrogen.ammonium_share") == pytest.approx(100 * ammonium / nitrogen, abs=1e-3)


def test_gas_that_leaves_takes_organic_matter_and_no_nutrient() -> None:
    cold, warm = (digestate(climate={"digester_temperature": degrees}) for degrees in (12, 33))
    assert value(warm, "biogas_per_day") > 2 * value(cold, "biogas_per_day")
    assert value(warm, "balance.organic_matter_left") < value(cold, "balance.organic_matter_left")
    assert value(warm, "digestate_per_day") < value(cold, "digestate_per_day")
    for nutrient in ("nitrogen", "phosphorus", "potassium"):
        assert value(warm, nutrient) == value(cold, nutrient)
        assert value(warm, f"{nutrient}.per_cubic_metre") > value(cold, f"{nutrient}.per_cubic_metre")


def test_more_gas_than_there_is_matter_is_refused() -> None:
    feed = [{**DUNG, "total_solids": 1, "volatile_solids": 1, "biogas_yield": 2}]
    assert faults(feed=feed, water=0, urine=0, hydraulic_retention_time=1000) == {"/feed": "gas_exceeds_feed"}


# Nitrogen, phosphorus, potassium


@given(digestates())
def test_nitrogen_that_is_fed_is_lost_or_found(body: Json) -> None:
    try:
        answer = ask("digestate", body)
    except RefusedError:
        return
    nitrogen = answer["nitrogen"]
    assert nitrogen["fed_per_day"]["value"] == nitrogen["value"]
    parts = ("lost_in_storage", "lost_in_spreading", "available_in_first_year", "for_later_years")
    assert all(nitrogen[name]["value"] >= 0 for name in parts)
    assert sum(nitrogen[name]["value"] for name in parts) == pytest.approx(nitrogen["per_year"]["value"], rel=1e-6, abs=3e-3)
    assert 0 <= nitrogen["availability"]["value"] <= 100


@given(digestates())
def test_what_is_fed_of_phosphorus_leaves_or_settles(body: Json) -> None:
    try:
        answer = ask("digestate", body, explain=True)
    except RefusedError:
        return
    if answer["phosphorus"].get("unknown_for"):
        assert "value" not in answer["phosphorus"]
        return
    steps = {step["quantity"]: step for step in answer["derivation"] if "of" not in step}
    fed = steps["settled_phosphorus_per_day"]["inputs"]["phosphorus_per_day"]
    told = value(answer, "phosphorus.per_year") + value(answer, "phosphorus.settled_per_year")
    assert told == pytest.approx(fed * YEAR, rel=1e-6, abs=2e-3)
    assert value(answer, "phosphorus.as_phosphate.per_year") == pytest.approx(
        value(answer, "phosphorus.per_year") * PHOSPHATE_PER_PHOSPHORUS, rel=1e-5, abs=3e-3
    )


@pytest.mark.parametrize("nutrient", ["nitrogen", "phosphorus", "potassium"])
def test_nutrients_per_day_year_volume_and_container_agree(nutrient: str) -> None:
    answer = digestate(containers=[{"name": "jerrycan", "volume": 20}, {"name": "drum", "volume": 200}])
    per_day, litres = value(answer, nutrient), value(answer, "digestate_per_day")
    assert value(answer, f"{nutrient}.per_year") == pytest.approx(per_day * YEAR, rel=1e-3)
    assert value(answer, f"{nutrient}.per_cubic_metre") == pytest.approx(per_day / litres * 1000, rel=1e-3)
    can, drum = answer[nutrient]["containers"]
    concentration = value(answer, f"{nutrient}.per_cubic_metre")  # grams a litre
    assert can["mass"]["value"] == pytest.approx(20 * concentration, abs=0.051)  # told in tenths of a gram
    assert drum["mass"]["value"] == pytest.approx(200 * concentration, abs=0.07)


def test_potassium_stays_and_is_told_as_potash_too() -> None:
    answer = digestate(feed=[{**DUNG, "potassium": 0.02}], urine=0)
    assert value(answer, "potassium") == pytest.approx(84 * 0.15 * 0.02, abs=1e-4)
    ratio = value(answer, "potassium.as_potash.per_cubic_metre") / value(answer, "potassium.per_cubic_metre")
    assert ratio == pytest.approx(POTASH_PER_POTASSIUM, rel=1e-3)


def test_a_nutrient_that_nobody_knows_is_not_told_as_nothing() -> None:
    dung, rabbit = DUNG, {"substrate": "rabbit_droppings", "mass": 5}
    assert base().data.substrates["rabbit_droppings"].potassium is None
    answer = digestate(feed=[dung, rabbit])
    assert answer["potassium"] == {"unknown_for": ["rabbit_droppings"], "text": answer["potassium"]["text"]}
    assert "potassium_chloride" not in answer["fertiliser"]
    assert "value" in answer["phosphorus"]
    measured = digestate(feed=[dung, {**rabbit, "potassium": 0.01}])
    assert value(measured, "potassium") > value(digestate(), "potassium")


def test_phosphorus_that_is_unknown_leaves_all_nitrogen_to_urea(tmp_path: Path) -> None:
    pack = tmp_path / "layer.yaml"
    pack.write_text("pack: {id: bare, version: 0.1.0, title: Nothing known}\nsubstrates: {cattle_dung: {phosphorus: null}}\n", "utf-8")
    answer = ask("digestate", FARM, explain=True, among=open_questions(load(pack)))
    assert answer["phosphorus"]["unknown_for"] == ["cattle_dung"]
    assert "diammonium_phosphate" not in answer["fertiliser"]
    nitrogen = value(answer, "nitrogen.available_in_first_year")
    assert value(answer, "fertiliser.urea") == pytest.approx(nitrogen / 0.46, rel=1e-4)


def test_ammonium_that_is_unknown_is_guessed_and_listed(tmp_path: Path) -> None:
    pack = tmp_path / "layer.yaml"
    pack.write_text("pack: {id: bare, version: 0.1.0, title: Nothing known}\nsubstrates: {cattle_dung: {ammonium_share: null}}\n", "utf-8")
    among = open_questions(load(pack))
    answer = ask("digestate", like(FARM, urine=0), among=among)
    assert ends(answer, "nitrogen.ammonium_share")[1] == pytest.approx(50)
    assert ("unknown_ammonium_share", None) in assumed(answer)
    stated = ask("digestate", like(FARM, urine=0, feed=[{**DUNG, "ammonium_share": 0.7}]), among=among)
    assert value(stated, "nitrogen.ammonium_share") == pytest.approx(70)
    assert ("unknown_ammonium_share", None) not in assumed(stated)


def test_urine_brings_nitrogen_and_potassium_in_place_of_water() -> None:
    without, some = digestate(urine=0, water=None), digestate(urine=30, water=None)
    assert value(without, "water_per_day") - value(some, "water_per_day") == pytest.approx(30, abs=1e-3)
    for nutrient in ("nitrogen", "potassium"):
        assert value(some, nutrient) > 1.5 * value(without, nutrient)
    assert value(some, "biogas_per_day") == pytest.approx(value(without, "biogas_per_day"), rel=0.01)
    flooded = digestate(urine=500, water=None)
    assert value(flooded, "water_per_day") == 0


def test_urine_that_was_not_stated_is_listed_as_none() -> None:
    assert ("urine_per_day", None) in assumed(digestate(urine=None))
    assert ("urine_per_day", None) not in assumed(digestate(urine=0))
    same = digestate(urine=None), digestate(urine=0)
    assert value(same[0], "nitrogen") == value(same[1], "nitrogen")


@given(st.floats(1, 500), st.integers(2, 9))
def test_a_feed_n_times_as_large(mass: float, times: int) -> None:
    def of(n: int) -> Json:
        crops = [{"crop": "maize", "area": 0.2 * n, "nitrogen_need": 90}]
        return digestate(feed=[{**DUNG, "mass": n * mass}], water=n * mass, urine=n * mass / 3, crops=crops)

    once, more = of(1), of(times)
    for path in (
        "digestate_per_day",
        "nitrogen.per_year",
        "phosphorus.per_year",
        "area_served",
        "storage.volume_needed",
        "fertiliser.urea",
    ):
        assert value(more, path) == pytest.approx(times * value(once, path), rel=2e-3, abs=2e-2), path
    for path in ("nitrogen.per_cubic_metre", "nitrogen.availability", "balance.digestate_total_solids", "crops.0.digestate_per_area"):
        assert value(more, path) == pytest.approx(value(once, path), rel=1e-3, abs=2e-3), path


@given(st.floats(0, 300), st.floats(0, 300))
def test_water_thins_and_neither_brings_nor_takes(first: float, second: float) -> None:
    thick, thin = (digestate(water=water) for water in sorted((first, second)))
    assert value(thin, "nitrogen.per_year") == value(thick, "nitrogen.per_year")
    assert value(thin, "nitrogen.per_cubic_metre") <= value(thick, "nitrogen.per_cubic_metre") + 1e-6
    assert value(thin, "area_served") == pytest.approx(value(thick, "area_served"), abs=2e-4)
    assert value(thin, "crops.0.digestate_per_area") >= value(thick, "crops.0.digestate_per_area") - 1e-6


# Store, spreading, retention


def test_losses_follow_the_way_of_storing_and_spreading() -> None:
    def available(store: str, spreading: str) -> float:
        return value(digestate(storage={"store": store}, spreading=spreading), "nitrogen.available_in_first_year")

    assert available("covered_pit", "covered_furrow") > available("covered_pit", "irrigation_water") > available("covered_pit", "broadcast")
    assert available("covered_pit", "broadcast") > available("open_pit", "broadcast")
    fresh = digestate(storage={"time": 0})
    assert value(fresh, "nitrogen.lost_in_storage") == 0
    assert "store" not in fresh["storage"]
    assert value(fresh, "storage.volume_needed") == 0


def test_storing_and_spreading_that_nobody_stated_take_the_poorer_way() -> None:
    """A missing fact must not read as the better one."""
    answer = digestate()
    stores, spreadings = base().data.practice.slurry_stores, base().data.practice.spreadings
    assert answer["storage"]["store"] == max(stores, key=lambda name: stores[name].ammonia_loss.typical)
    assert answer["nitrogen"]["spreading"] == max(spreadings, key=lambda name: spreadings[name].ammonia_loss.typical)
    assert {("slurry_store", None), ("spreading", None)} <= assumed(answer)


def test_retention_as_stated_from_the_digester_or_assumed() -> None:
    stated = digestate()
    assert ends(stated, "hydraulic_retention_time") == (36, 36, 36)
    litres = value(stated, "slurry_per_day")
    built = digestate(hydraulic_retention_time=None, digester={"working_volume": 36 * litres / 1000, "structure": "fixed_dome"})
    assert value(built, "hydraulic_retention_time") == pytest.approx(36, rel=1e-6)
    assert value(built, "biogas_per_day") == pytest.approx(value(stated, "biogas_per_day"), rel=1e-4)
    low, usual, high = ends(digestate(hydraulic_retention_time=None), "hydraulic_retention_time")
    assert low < usual < high
    both = faults(digester={"total_volume": 10})
    assert both == {"/hydraulic_retention_time": "stated_twice"}


def test_faults_between_members() -> None:
    assert faults(dilution={"water_to_feed_by_volume": 1}) == {"/water": "water_and_dilution"}
    assert faults(feed=[DUNG, {"substrate": "cattle_urine", "mass": 20}]) == {"/urine": "substrate_twice"}
    assert faults(feed=[{"substrate": "cattle_dung"}]) == {"/feed": "amount_unknown"}
    assert faults(feed=[]) == {"/feed": "amount_unknown"}
    assert faults(crops=[]) == {"/crops": "too_short"}
    assert faults(crops=[{"crop": "maise"}]) == {"/crops/0/crop": "unknown_id"}


def test_a_herd_may_stand_for_the_feed() -> None:
    answer = digestate(feed=[], herd=[{"animal": "dairy_cow", "count": 6}])
    by_mass = digestate(feed=[{"substrate": "cattle_dung", "mass": value(answer, "balance.slurry_in") - 84 - 30.6}])
    assert value(by_mass, "nitrogen") == pytest.approx(value(answer, "nitrogen"), rel=1e-4)
    assert {row["quantity"] for row in answer["measure_first"]} & {"dung_per_day", "collectable_share_stall", "total_solids"}


# Fertiliser, ranges, derivation


def test_bought_fertiliser_brings_what_the_digestate_brings() -> None:
    answer = digestate(prices={"nitrogen": {"value": 2, "per": "kg"}, "phosphate": 3, "potash": 1})
    salt = value(answer, "fertiliser.diammonium_phosphate")
    assert 0.46 * salt == pytest.approx(value(answer, "phosphorus.as_phosphate.per_year"), rel=1e-4)
    nitrogen = value(answer, "nitrogen.available_in_first_year")
    assert 0.18 * salt + 0.46 * value(answer, "fertiliser.urea") == pytest.approx(nitrogen, rel=1e-4)
    potash = value(answer, "potassium.as_potash.per_year")
    assert 0.60 * value(answer, "fertiliser.potassium_chloride") == pytest.approx(potash, rel=1e-4)
    worth = 2 * nitrogen + 3 * value(answer, "phosphorus.as_phosphate.per_year") + potash
    assert value(answer, "fertiliser.worth_per_year") == pytest.approx(worth, rel=1e-4)
    assert "worth_per_year" not in digestate()["fertiliser"]
    assert "worth_per_year" not in digestate(prices={})["fertiliser"]


def test_the_available_nitrogen_is_less_certain_than_the_nitrogen() -> None:
    answer = digestate()
    spread = {}
    for name in ("per_year", "available_in_first_year"):
        low, usual, high = ends(answer, f"nitrogen.{name}")
        assert low < usual < high
        spread[name] = (high - low) / usual
    assert spread["available_in_first_year"] > spread["per_year"]


def test_what_is_measured_narrows() -> None:
    measured = {**DUNG, "total_solids": 0.15, "nitrogen": 0.018, "phosphorus": 0.006, "potassium": 0.011, "ammonium_share": 0.6}
    answer = digestate(feed=[measured], urine=0)
    assert answer["nitrogen"].keys() & {"low", "high"} == set()
    assert answer["potassium"].keys() & {"low", "high"} == set()
    assert ends(answer, "nitrogen")[1] == pytest.approx(84 * 0.15 * 0.018, abs=1e-4)


def test_only_what_bears_on_a_number_is_proposed_for_measuring() -> None:
    rows = digestate(hydraulic_retention_time=None, climate=None)["measure_first"]
    assert rows
    for row in rows:
        if row["quantity"] in ("phosphorus", "potassium"):
            assert row["answer"] == row["quantity"]
    assert not {row["quantity"] for row in rows} & {"biogas_yield", "methane_share", "digester_temperature"}


def test_the_derivation_names_its_formulas() -> None:
    answer = digestate(explain=True)
    told = {step["quantity"] for step in answer["derivation"]}
    assert {"digestate_per_day", "available_nitrogen_per_day", "volatile_solids_destroyed_per_day", "slurry_store_needed"} <= told
    assert {"digestate_per_area", "phosphate_per_day", "urea_equivalent", "biogas_per_day"} <= told
    assert [step["of"] for step in answer["derivation"] if step["quantity"] == "digestate_per_area"] == ["maize"]


@given(digestates())
@settings(max_examples=40)
def test_the_range_of_every_nutrient_holds_its_value(body: Json) -> None:
    try:
        answer = ask("digestate", body)
    except RefusedError:
        return
    assert_sound("digestate", answer)
    for path in ("nitrogen", "nitrogen.available_in_first_year", "digestate_per_day", "area_served", "storage.volume_needed"):
        low, usual, high = ends(answer, path)
        assert low <= usual <= high, path


def test_what_is_not_known_of_the_farm_stays_unknown() -> None:
    found = findings(digestate())
    for check in ("openings_fenced", "hands_washed", "sludge_treated_as_infective", "digestate_not_sprayed", "cooked_crops_wait"):
        assert found[check] == "unknown", check
    stated = findings(digestate(facts={"openings_fenced": False, "days_to_harvest": 20, "digestate_sprayed": False}))
    assert (stated["openings_fenced"], stated["cooked_crops_wait"]) == ("fail", "fail")
    assert "digestate_not_sprayed" not in stated
