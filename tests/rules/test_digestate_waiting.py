"""Waits before harvest come from the rulebook's checks; nothing calls digestate safe, and a missing fact never shortens a wait."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from tests.rules.conftest import Json, ask, base, digestates, findings, like, value

from kilisho.faults import RefusedError
from kilisho.packs import load
from kilisho.questions import open_questions
from kilisho.questions.digestate.waiting import Waiting, longest, waiting_of
from kilisho.questions.findings import Inspector

FARM: Json = {
    "feed": [{"substrate": "cattle_dung", "mass": 60}],
    "water": 60,
    "hydraulic_retention_time": 60,
    "crops": [{"crop": "maize", "area": 0.3}],
}
LATRINE: Json = {"feed": [*FARM["feed"], {"substrate": "human_excreta", "mass": 1.5}]}
RAW_IN_SOIL = {"crop": "root_vegetables", "area": 0.02}
RAW_ABOVE = {"crop": "fruit_trees", "area": 0.05}
INSPECTOR = Inspector(base().data, "digestate")


def spread(*crops: Json, **changes: Any) -> Json:
    return ask("digestate", like(FARM, **changes, **({"crops": list(crops)} if crops else {})))


# What the checks ask


@pytest.mark.parametrize(
    ("raw", "soil", "fodder", "days", "check"),
    [
        (False, False, False, 30, "cooked_crops_wait"),
        (False, True, False, 30, "cooked_crops_wait"),
        (False, False, True, 42, "fodder_wait"),
        (True, False, False, 90, "raw_crops_wait"),
        (True, True, False, 120, "raw_crops_in_soil_wait"),
    ],
)
def test_waits_of_livestock_slurry(raw: bool, soil: bool, fodder: bool, days: float, check: str) -> None:
    facts = {
        "human_excreta_fed": False,
        "digestate_on_raw_crops": raw,
        "edible_part_touches_soil": soil,
        "digestate_on_fodder": fodder,
    }
    assert waiting_of(INSPECTOR, facts) == Waiting(False, days, (check,), None)


def test_what_is_not_known_is_taken_for_the_worse() -> None:
    nothing = waiting_of(INSPECTOR, {"digestate_on_raw_crops": True})
    assert (nothing.never, nothing.days, nothing.stored) == (True, 120, 365)
    assert waiting_of(INSPECTOR, {"digestate_on_raw_crops": False}).days == 42
    for known in ({}, {"human_excreta_fed": False}):
        less = waiting_of(INSPECTOR, {"digestate_on_raw_crops": True, **known})
        more = waiting_of(INSPECTOR, {"digestate_on_raw_crops": True, "edible_part_touches_soil": False, **known})
        assert less.days is not None
        assert more.days is not None
        assert less.days >= more.days


def test_the_longest_wait_is_that_of_a_crop_that_may_get_any() -> None:
    short, long, never = Waiting(False, 30, ("a",), None), Waiting(False, 90, ("b",), None), Waiting(True, 120, ("c",), 365)
    assert longest([short, long, never]) == 90
    assert longest([never]) is None
    assert longest([]) is None


# In the answer


def test_the_answer_tells_the_longest_wait_and_each_field_s_own() -> None:
    answer = spread({"crop": "maize"}, RAW_ABOVE, RAW_IN_SOIL)
    assert answer["waiting_time"]["value"] == 120
    assert answer["waiting_time"]["unit"] == "d"
    assert [crop["waiting"]["time"]["value"] for crop in answer["crops"]] == [30, 90, 120]
    assert answer["waiting_time"]["never_on"] == []
    for crop in answer["crops"]:
        for check in crop["waiting"]["checks"]:
            assert base().data.checks[check].subject == "days_to_harvest"


def test_slurry_with_human_excreta_never_goes_on_what_is_eaten_raw() -> None:
    answer = spread(RAW_IN_SOIL, {"crop": "maize", "area": 0.1}, RAW_ABOVE, **LATRINE)
    assert answer["waiting_time"]["never_on"] == ["root_vegetables", "fruit_trees"]
    assert [crop["waiting"]["allowed"] for crop in answer["crops"]] == [False, True, False]
    assert [crop["digestate_given"]["value"] > 0 for crop in answer["crops"]] == [False, True, False]
    assert "time" not in answer["crops"][0]["waiting"]
    assert value(answer, "waiting_time") == 30
    assert findings(answer)["no_excreta_on_raw_crops"] == "fail"
    only_raw = spread(RAW_IN_SOIL, **LATRINE)
    assert "value" not in only_raw["waiting_time"]
    assert value(only_raw, "area_served") == 0
    assert value(only_raw, "surplus") == pytest.approx(value(only_raw, "digestate_per_year"), abs=1e-3)


def test_slurry_with_human_excreta_is_stored_a_year() -> None:
    answer = spread(**LATRINE)
    assert value(answer, "hygiene.storing_before_use") == 365
    assert answer["hygiene"]["human_excreta_fed"] is True
    found = findings(answer)
    assert found["excreta_digestate_stored"] == "unknown"
    assert found["excreta_harvest_wait"] == "unknown"
    assert "pathogens_human" in {caution["id"] for caution in answer["cautions"]}
    stated = findings(spread(**LATRINE, facts={"digestate_stored_for": 100, "days_to_harvest": 10}))
    assert (stated["excreta_digestate_stored"], stated["excreta_harvest_wait"]) == ("fail", "fail")
    without = spread()
    assert "storing_before_use" not in without["hygiene"]
    assert "excreta_digestate_stored" not in findings(without)


def test_a_person_in_the_herd_makes_it_slurry_with_human_excreta() -> None:
    herd = [{"animal": "dairy_cow", "count": 4}, {"animal": "person", "count": 5}]
    answer = spread(RAW_IN_SOIL, feed=[], herd=herd)
    assert answer["hygiene"]["human_excreta_fed"] is True
    assert answer["waiting_time"]["never_on"] == ["root_vegetables"]


def test_a_short_stay_with_human_excreta_is_faulted() -> None:
    assert findings(spread(**LATRINE, hydraulic_retention_time=25))["latrine_retention"] == "fail"
    assert "latrine_retention" not in findings(spread(**LATRINE, hydraulic_retention_time=45))
    assert "latrine_retention" not in findings(spread(hydraulic_retention_time=25))


@pytest.mark.parametrize(("fact", "said"), [("digestate_on_raw_crops", True), ("digestate_on_fodder", True)])
def test_a_stated_fact_neither_wins_nor_loses_in_silence(fact: str, said: bool) -> None:
    with pytest.raises(RefusedError) as refused:
        spread(facts={fact: said})
    assert [(fault.pointer, fault.code) for fault in refused.value.faults] == [(f"/facts/{fact}", "stated_twice")]
    assert spread(facts={fact: not said})


@pytest.mark.parametrize("fact", ["human_excreta_fed", "latrine_linked"])
def test_what_a_latrine_brings_counts_though_no_substrate_names_it(fact: str) -> None:
    """A list of substrates may leave out what flows in by itself: the crops that must not get human excreta must not get this slurry."""
    by_list, by_fact = spread(**LATRINE), spread(facts={fact: True})
    assert by_fact["hygiene"]["human_excreta_fed"] is by_list["hygiene"]["human_excreta_fed"] is True
    assert by_fact["waiting_time"]["never_on"] == by_list["waiting_time"]["never_on"]
    assert "pathogens_human" in {one["id"] for one in by_fact["cautions"]}
    assert spread(facts={fact: False})["hygiene"]["human_excreta_fed"] is False


def test_a_latrine_that_is_linked_denies_that_no_excreta_are_fed() -> None:
    with pytest.raises(RefusedError) as refused:
        spread(facts={"latrine_linked": True, "human_excreta_fed": False})
    assert [(fault.pointer, fault.code) for fault in refused.value.faults] == [("/facts/human_excreta_fed", "stated_twice")]


@given(digestates())
def test_nothing_is_ever_called_safe(body: Json) -> None:
    try:
        answer = ask("digestate", body)
    except RefusedError:
        return
    assert answer["hygiene"]["sanitised"] is False
    assert "does not sanitise" in answer["hygiene"]["text"]
    cautions = {caution["id"] for caution in answer["cautions"]}
    assert {"digestate_not_sanitised", "slurry_store_drowning", "never_enter", "local_codes", "hygiene"} <= cautions
    told = json.dumps({name: answer[name] for name in ("waiting_time", "hygiene", "crops", "storage", "nitrogen_rule")}).lower()
    assert not [word for word in ("safe", "harmless", "sterile", "germ-free", "free of germs") if word in told]


@given(digestates())
def test_every_field_that_may_get_digestate_waits_a_month_at_least(body: Json) -> None:
    try:
        answer = ask("digestate", body)
    except RefusedError:
        return
    excreta = any(one["substrate"] == "human_excreta" for one in body["feed"])
    for asked, told in zip(body["crops"], answer["crops"], strict=True):
        raw = asked.get("eaten_raw", base().data.crops[asked["crop"]].eaten_raw)
        assert told["eaten_raw"] is raw
        if raw and excreta:
            assert told["waiting"]["allowed"] is False
        elif told["waiting"]["allowed"]:
            assert told["waiting"]["time"]["value"] >= (90 if raw else 30)
    if "value" in answer["waiting_time"]:
        told_times = [crop["waiting"]["time"]["value"] for crop in answer["crops"] if crop["waiting"]["allowed"]]
        assert answer["waiting_time"]["value"] == max(told_times)


# Knowledge is data


def test_a_stricter_check_of_a_pack_lengthens_the_wait(pack: Callable[..., Path]) -> None:
    text = """
pack: {id: county, version: 0.1.0, title: "County rules (invented)"}
checks:
  raw_crops_wait: {must: {at_least: 26, unit: wk}}
  coffee_wait:
    title: Half a year before picking
    topic: hygiene
    subject: days_to_harvest
    must: {at_least: 6, unit: mo}
    when: {digestate_on_raw_crops: {is: false}, edible_part_touches_soil: {is: false}}
    severity: warning
    why: The buyer asks for it.
    do: Spread after the picking.
    asked_in: [digestate, safety_check]
    basis: judgement
"""
    among = open_questions(load(pack(text)))
    raw = ask("digestate", like(FARM, crops=[RAW_ABOVE]), among=among)
    assert value(raw, "waiting_time") == 182
    coffee = ask("digestate", like(FARM, crops=[{"crop": "coffee", "area": 0.1}]), among=among)
    assert value(coffee, "waiting_time") == pytest.approx(365.25 / 2, abs=1e-3)
    assert coffee["crops"][0]["waiting"]["checks"] == ["coffee_wait"]


def test_a_pack_adds_a_crop_a_store_and_a_way_of_spreading(pack: Callable[..., Path]) -> None:
    text = """
pack: {id: hills, version: 0.1.0, title: "Hills (invented)"}
crops:
  ginger:
    name: Ginger
    nitrogen_need: {low: 60, typical: 75, high: 120, unit: kg/har, basis: judgement}
    eaten_raw: true
    edible_part_touches_soil: true
practice:
  slurry_stores:
    lined_pond: {name: Lined pond, covered: false, ammonia_loss: {typical: 0.5, unit: "1", basis: judgement}}
  spreadings:
    drip: {name: Drip lines, ammonia_loss: {typical: 0, unit: "1", basis: judgement}}
"""
    among = open_questions(load(pack(text)))
    body = like(FARM, crops=[{"crop": "ginger", "area": 0.1}], storage={"store": "lined_pond"}, spreading="drip")
    answer = ask("digestate", body, among=among)
    assert value(answer, "waiting_time") == 120
    assert value(answer, "nitrogen.lost_in_spreading") == 0
    ammonium = value(answer, "nitrogen.per_year") * value(answer, "nitrogen.ammonium_share") / 100
    assert value(answer, "nitrogen.lost_in_storage") == pytest.approx(ammonium / 2, rel=1e-4)
    with pytest.raises(RefusedError):
        ask("digestate", body)
