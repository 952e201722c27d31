"""How far digestate reaches: fields in turn, the stricter of need and limit, what is left over and what is left without."""

from __future__ import annotations

from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, assumed, base, digestates, findings, like, value

from kilisho.faults import RefusedError

FARM: Json = {
    "feed": [{"substrate": "cattle_dung", "mass": 80}],
    "water": 80,
    "urine": 20,
    "hydraulic_retention_time": 50,
    "climate": {"digester_temperature": 23},
    "crops": [{"crop": "maize", "nitrogen_need": 90}],
}
SQUARE_METRES = 10_000


def spread(*crops: Json, **changes: Any) -> Json:
    return ask("digestate", like(FARM, crops=list(crops) or FARM["crops"], **changes))


def field(crop: str, area: float | None = None, need: float = 90, **more: Any) -> Json:
    return {"crop": crop, "nitrogen_need": need, **({} if area is None else {"area": area}), **more}


AREAS = st.floats(0.001, 3)
NEEDS = st.floats(10, 400)
FIELDS = st.lists(st.tuples(st.sampled_from(["maize", "coffee", "napier_grass", "beans"]), AREAS, NEEDS), min_size=1, max_size=4)


@given(FIELDS)
def test_what_is_given_and_what_is_left_is_the_year_s_digestate(fields: list[tuple[str, float, float]]) -> None:
    answer = spread(*(field(*one) for one in fields))
    given_out = sum(crop["digestate_given"]["value"] for crop in answer["crops"])
    assert given_out + value(answer, "surplus") == pytest.approx(value(answer, "digestate_per_year"), abs=2e-3)
    for crop in answer["crops"]:
        assert crop["digestate_given"]["value"] <= crop["digestate_wanted"]["value"] + 1e-6
        assert crop["area_served"]["value"] + crop["area_left_without"]["value"] == pytest.approx(crop["area"]["value"], abs=2e-4)
        rate = crop["digestate_per_area"]["value"]
        assert crop["digestate_given"]["value"] == pytest.approx(crop["area_served"]["value"] * rate, rel=2e-2, abs=0.05)


@given(FIELDS)
def test_a_field_gets_nothing_before_those_ahead_of_it_are_full(fields: list[tuple[str, float, float]]) -> None:
    crops = spread(*(field(*one) for one in fields))["crops"]
    for ahead, behind in pairwise(crops):
        if behind["digestate_given"]["value"] > 1e-6:
            assert ahead["digestate_given"]["value"] == pytest.approx(ahead["digestate_wanted"]["value"], abs=1e-5)


def test_the_area_served_of_one_crop_is_the_available_nitrogen_over_its_need() -> None:
    for need in (45.0, 90.0, 180.0):
        answer = spread(field("maize", 0.2, need))
        assert value(answer, "area_served") == pytest.approx(value(answer, "nitrogen.available_in_first_year") / need, rel=1e-3)
        assert value(answer, "crops.0.area_served") == 0.2
        assert value(answer, "area_served") > 0.2


def test_a_field_without_an_area_takes_what_is_left() -> None:
    answer = spread(field("coffee", 0.1), field("maize"))
    rest = answer["crops"][1]
    assert "area" not in rest
    assert "digestate_wanted" not in rest
    assert value(answer, "surplus") == 0
    assert value(answer, "area_served") == pytest.approx(0.1 + rest["area_served"]["value"], abs=2e-4)
    assert rest["digestate_given"]["value"] == pytest.approx(
        value(answer, "digestate_per_year") - value(answer, "crops.0.digestate_given"), abs=1e-3
    )


def test_one_field_may_be_split_in_two() -> None:
    whole = spread(field("maize", 0.4))
    split = spread(field("maize", 0.1), field("maize", 0.3))
    assert value(whole, "area_served") == pytest.approx(value(split, "area_served"), abs=2e-4)
    assert value(whole, "surplus") == pytest.approx(value(split, "surplus"), abs=1e-4)
    parts = sum(crop["digestate_given"]["value"] for crop in split["crops"])
    assert parts == pytest.approx(value(whole, "crops.0.digestate_given"), abs=1e-4)


@given(NEEDS, NEEDS)
def test_a_hungrier_crop_is_served_on_no_more_land(first: float, second: float) -> None:
    modest, hungry = (spread(field("maize", None, need)) for need in sorted((first, second)))
    for end in ("value", "low", "high"):
        assert hungry["area_served"][end] <= modest["area_served"][end] + 1e-4
    assert value(hungry, "crops.0.digestate_per_area") >= value(modest, "crops.0.digestate_per_area") - 1e-2


def test_buckets_on_a_piece_of_land() -> None:
    """A rate of 60 m3/ha is 6 L on a square metre: 600 L, so thirty cans of 20 L, on a hundred."""
    answer = spread(field("maize", 0.3), containers=[{"name": "can", "volume": 20}, {"name": "drum", "volume": 200}])
    can, drum = answer["crops"][0]["containers"]
    litres = value(answer, "crops.0.digestate_per_area") * 1000 / SQUARE_METRES * 100
    assert can["on_100_square_metres"]["value"] == pytest.approx(litres / 20, rel=1e-3)
    assert drum["on_100_square_metres"]["value"] == pytest.approx(litres / 200, rel=1e-3)


def test_units_of_land_do_not_matter() -> None:
    usual = spread(field("maize", 0.5))
    for area in ({"value": 5000, "unit": "m2"}, {"value": 0.5 / 0.4046872609874252, "unit": "[acr_us]"}):
        answer = spread({**field("maize"), "area": area})
        assert value(answer, "crops.0.digestate_wanted") == pytest.approx(value(usual, "crops.0.digestate_wanted"), rel=1e-6)
    for need in ({"value": 9, "unit": "g/m2"}, {"value": 0.09, "unit": "t/har"}, {"value": 90 * 0.8921791, "unit": "[lb_av]/[acr_us]"}):
        answer = spread({"crop": "maize", "area": 0.5, "nitrogen_need": need})
        assert value(answer, "crops.0.digestate_wanted") == pytest.approx(value(usual, "crops.0.digestate_wanted"), rel=1e-5)


# The limit of manure nitrogen


def test_a_limit_that_nobody_stated_is_shown_and_not_applied() -> None:
    answer = spread(field("napier_grass", 0.1, 300))
    rule = answer["nitrogen_rule"]
    assert rule["applied"] is False
    assert rule["limit"] == {"value": 170.0, "unit": "kg/har"}
    assert "local rules first" in rule["text"]
    crop = answer["crops"][0]
    assert (crop["limited_by"], crop["total_nitrogen_per_area"]["value"] > 300) == ("nitrogen_need", True)
    assert findings(answer)["nitrogen_limit_elsewhere_kept"] == "fail"


def test_a_stated_limit_is_kept() -> None:
    free, held = (spread(field("napier_grass", 0.1, 300), nitrogen_limit=limit) for limit in (None, 120))
    crop = held["crops"][0]
    assert crop["limited_by"] == "nitrogen_limit"
    assert crop["total_nitrogen_per_area"]["value"] == pytest.approx(120, rel=1e-3)
    assert crop["digestate_per_area"]["value"] < value(free, "crops.0.digestate_per_area")
    assert held["nitrogen_rule"]["applied"] is True
    assert "nitrogen_limit_elsewhere_kept" not in findings(held)
    modest = spread(field("beans", 0.1, 20), nitrogen_limit=120)
    assert modest["crops"][0]["limited_by"] == "nitrogen_need"


def test_the_area_that_keeps_the_limit() -> None:
    answer = spread(field("maize", 0.5), nitrogen_limit={"value": 170, "unit": "kg/har"})
    brought = value(answer, "nitrogen.per_year") - value(answer, "nitrogen.lost_in_storage")
    assert value(answer, "nitrogen_rule.area_to_keep_it") == pytest.approx(brought / 170, rel=1e-3)


def test_nitrogen_of_a_field_that_gets_none_is_not_held_against_it() -> None:
    answer = spread(field("coffee", 50, 60), field("napier_grass", 1, 400))
    assert value(answer, "crops.1.digestate_given") == 0
    assert value(answer, "crops.1.total_nitrogen_per_area") > 170
    assert "nitrogen_limit_elsewhere_kept" not in findings(answer)


# The rulebook's crops


@pytest.mark.parametrize("crop", sorted(base().data.crops))
def test_each_crop_of_the_rulebook(crop: str) -> None:
    entry = base().data.crops[crop]
    answer = spread({"crop": crop, "area": 0.1})
    told = answer["crops"][0]
    assert told["nitrogen_need"]["value"] == pytest.approx(entry.nitrogen_need.typical * SQUARE_METRES, rel=1e-6)
    assert told["nitrogen_need"]["low"] < told["nitrogen_need"]["value"] < told["nitrogen_need"]["high"]
    assert told["eaten_raw"] is entry.eaten_raw
    assert told["waiting"]["time"]["value"] >= (90 if entry.eaten_raw else 42 if entry.fodder else 30)
    assert {("nitrogen_need", crop), ("eaten_raw", crop)} <= assumed(answer)
    assert entry.nitrogen_need.basis in ("from_memory", "judgement")


def test_what_is_stated_of_a_crop_replaces_the_rulebook() -> None:
    usual = spread({"crop": "banana", "area": 0.1})
    cooked = spread({"crop": "banana", "area": 0.1, "eaten_raw": False, "nitrogen_need": 100, "edible_part_touches_soil": False})
    assert (value(usual, "waiting_time"), value(cooked, "waiting_time")) == (90, 30)
    assert value(cooked, "crops.0.nitrogen_need") == 100
    assert "low" not in cooked["crops"][0]["nitrogen_need"]
    assert not {("nitrogen_need", "banana"), ("eaten_raw", "banana")} & assumed(cooked)


@given(digestates())
def test_no_field_of_any_farm_gets_more_than_there_is(body: Json) -> None:
    try:
        answer = ask("digestate", body)
    except RefusedError:
        return
    year = value(answer, "digestate_per_year")
    given_out = sum(crop["digestate_given"]["value"] for crop in answer["crops"])
    assert given_out <= year * (1 + 1e-6) + 2e-3
    assert value(answer, "surplus") >= 0
    assert value(answer, "area_served") >= 0
    for crop in answer["crops"]:
        if not crop["waiting"]["allowed"]:
            assert crop["digestate_given"]["value"] == 0
        if "nitrogen_limit" in body and crop["limited_by"] == "nitrogen_limit":
            limit = value(answer, "nitrogen_rule.limit")
            assert crop["total_nitrogen_per_area"]["value"] == pytest.approx(limit, rel=1e-4, abs=0.02)
