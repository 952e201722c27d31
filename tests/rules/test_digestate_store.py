"""The store for the time without a crop: what gathers, room with freeboard, overflow, and the caution beside it."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, assumed, base, findings, like, value

from kilisho.packs import load
from kilisho.questions import open_questions

FARM: Json = {
    "feed": [{"substrate": "cattle_dung", "mass": 60, "bulk_density": 1000}],
    "water": 60,
    "urine": 0,
    "hydraulic_retention_time": 60,
    "crops": [{"crop": "maize", "area": 0.5, "nitrogen_need": 90}],
}
MONTH = 365.25 / 12


def stored(facts: Json | None = None, **storage: Any) -> Json:
    return ask("digestate", like(FARM, storage=storage, facts=facts))


@given(st.floats(0, 24), st.floats(0.2, 6), st.floats(0, 2))
def test_room_for_what_gathers_with_its_freeboard(months: float, depth: float, freeboard: float) -> None:
    answer = stored(time=months, depth=depth, freeboard=freeboard)
    gathers = value(answer, "digestate_per_day") / 1000 * months * MONTH
    assert value(answer, "storage.digestate_to_store") == pytest.approx(gathers, rel=1e-4, abs=1e-5)
    assert value(answer, "storage.area") == pytest.approx(gathers / depth, rel=1e-3, abs=0.006)
    assert value(answer, "storage.volume_needed") == pytest.approx(gathers * (depth + freeboard) / depth, rel=1e-4, abs=1e-5)


def test_four_months_of_a_small_farm_by_hand() -> None:
    """120 L a day for 122 days are 14.6 m3; 1.2 m deep that is 12.2 m2, and with 0.3 m above it 18.3 m3 up to the rim."""
    answer = stored(time=4, depth=1.2, freeboard=0.3)
    assert value(answer, "digestate_per_day") == pytest.approx(120, rel=0.02)
    assert value(answer, "storage.digestate_to_store") == pytest.approx(14.6, rel=0.02)
    assert value(answer, "storage.area") == pytest.approx(12.2, rel=0.02)
    assert value(answer, "storage.volume_needed") == pytest.approx(18.3, rel=0.02)


def test_what_nobody_stated_of_the_store_is_assumed_and_listed() -> None:
    figures, answer = base().data.practice.figures, ask("digestate", FARM)
    assert value(answer, "storage.time") == pytest.approx(figures["slurry_storage_time"].typical / MONTH, abs=0.01)
    assert value(answer, "storage.depth") == figures["slurry_store_depth"].typical
    assert value(answer, "storage.freeboard") == figures["slurry_store_freeboard"].typical
    names = {"slurry_storage_time", "slurry_store_depth", "slurry_store_freeboard"}
    assert {(name, None) for name in names} <= assumed(answer)
    assert not {(name, None) for name in names} & assumed(stored(time=3, depth=1, freeboard=0.3))


def test_a_store_that_is_planned_is_told_without_the_spread_of_guesses() -> None:
    """What somebody is to dig is an instruction: only the digestate's own range is left in it."""
    storage = ask("digestate", FARM)["storage"]
    assert storage["volume_needed"]["high"] / storage["volume_needed"]["value"] < 1.05
    assert storage["time"].keys() == storage["depth"].keys() == {"value", "unit"}


def test_a_store_that_is_too_small_overflows() -> None:
    needed = value(stored(time=4, depth=1.2, freeboard=0.3), "storage.volume_needed")
    for share, overflows in ((0.5, True), (0.99, True), (1.01, False), (3, False)):
        answer = stored(time=4, depth=1.2, freeboard=0.3, volume=share * needed)
        assert answer["storage"]["overflows"] is overflows
        assert value(answer, "storage.lasts") == pytest.approx(share * 4 * MONTH, rel=1e-3)
        assert (findings(answer).get("slurry_store_holds") == "fail") is overflows
        assert ("overflows before the next spreading" in answer["storage"]["text"]) is overflows


def test_a_store_that_nobody_stated_is_unknown_and_does_not_pass() -> None:
    answer = stored(time=4)
    assert not answer["storage"].keys() & {"overflows", "lasts"}
    assert findings(answer)["slurry_store_holds"] == "unknown"
    assert findings(stored(time=4, facts={"slurry_store_sufficiency": 0.5}))["slurry_store_holds"] == "fail"


def test_spread_as_it_comes_needs_no_store() -> None:
    answer = stored(time=0)
    assert "store" not in answer["storage"]
    assert value(answer, "storage.ammonia_loss") == 0
    assert value(answer, "nitrogen.lost_in_storage") == 0
    there = stored(time=0, volume=5)
    assert there["storage"]["overflows"] is False
    assert value(there, "storage.lasts") > 0


def test_children_and_animals_are_kept_away() -> None:
    answer = ask("digestate", FARM)
    assert "no child and no animal falls in" in answer["storage"]["text"]
    caution = next(one for one in answer["cautions"] if one["id"] == "slurry_store_drowning")
    assert caution["signal"] == "danger"
    assert "children" in caution["text"]


@given(st.floats(0, 12), st.floats(0, 12))
def test_a_longer_time_needs_no_smaller_store_and_moves_no_nutrient(first: float, second: float) -> None:
    short, long = (stored(time=months) for months in sorted((first, second)))
    assert value(long, "storage.volume_needed") >= value(short, "storage.volume_needed") - 1e-6
    assert value(long, "nitrogen") == value(short, "nitrogen")
    if min(first, second) > 0:
        assert value(long, "nitrogen.available_in_first_year") == value(short, "nitrogen.available_in_first_year")


# A hole that is dug

COLLAPSE = "excavation_collapse"
HEAD = "pack: {id: tanks, version: 0.0.1, title: Tanks (invented)}\n"


def dug(answer: Json) -> tuple[str | None, bool]:
    return findings(answer).get("pit_walls_supported"), COLLAPSE in {one["id"] for one in answer["cautions"]}


def test_a_pit_deep_enough_to_bury_somebody_asks_for_its_walls_and_warns() -> None:
    """1.2 m of slurry and 0.3 m above it: deeper than the 1.2 m from which props are commonly required (recalled)."""
    answer = stored(time=4, depth=1.2, freeboard=0.3, store="open_pit")
    [asked] = [one for one in answer["findings"] if one["check"] == "pit_walls_supported"]
    assert dug(answer) == ("unknown", True)
    assert asked["missing"] == ["pit_walls_supported"]
    assert dug(stored({"pit_walls_supported": False}, time=4, depth=1.2, freeboard=0.3)) == ("fail", True)


def test_a_shallow_pit_has_the_caution_and_no_walls_to_prop() -> None:
    assert dug(stored(time=4, depth=0.8, freeboard=0.2)) == (None, True)


def test_no_hole_is_dug_where_nothing_is_stored_or_the_store_is_large_enough() -> None:
    needed = value(stored(time=4), "storage.volume_needed")
    assert not dug(stored(time=0))[1]
    assert not dug(stored(time=4, volume=needed * 1.01))[1]
    assert dug(stored(time=4, volume=needed * 0.5))[1]


@pytest.mark.parametrize(("stated", "planned", "end"), [(0.5, 1.5, "unknown"), (2.5, 1.0, "unknown"), (0.5, 1.0, None)])
def test_the_deeper_of_the_stated_and_the_planned_pit_decides(stated: float, planned: float, end: str | None) -> None:
    """The pit of the digester and that of the store are two: neither denies the other."""
    assert dug(stored({"pit_depth": stated}, time=4, depth=planned - 0.2, freeboard=0.2))[0] == end


def test_a_store_that_stands_on_the_ground_is_not_dug(pack: Callable[..., Path]) -> None:
    tank = "  slurry_stores: {standing_tank: {name: Tank on the ground, covered: true, dug: false, ammonia_loss: "
    loss = "{low: 0.01, typical: 0.04, high: 0.1, unit: '1', basis: judgement}}}"
    among = open_questions(load(pack(HEAD + "practice:\n" + tank + loss)))
    body = like(FARM, storage={"time": 4, "depth": 2, "freeboard": 0.3, "store": "standing_tank"})
    assert not dug(ask("digestate", body, among=among))[1]
    assert dug(ask("digestate", like(body, storage={**body["storage"], "store": "open_pit"}), among=among))[1]
