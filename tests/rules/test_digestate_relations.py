"""How the answer on digestate moves when the question moves: units, place, order of the feed, independent arithmetic of a whole farm."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules.conftest import Json, ask, base, like, value

from kilisho.units import KINDS, from_canonical

DUNG: Json = {"substrate": "cattle_dung", "mass": 70}
FARM: Json = {
    "feed": [DUNG, {"substrate": "kitchen_waste", "mass": 6}],
    "water": 70,
    "urine": 12,
    "hydraulic_retention_time": 55,
    "climate": {"digester_temperature": 25},
    "crops": [{"crop": "coffee", "area": 0.3}, {"crop": "potato", "area": 0.2}],
    "spreading": "covered_furrow",
    "storage": {"store": "covered_pit", "time": 3, "volume": 20},
}
TOLD = (
    "digestate_per_day",
    "biogas_per_day",
    "nitrogen.per_year",
    "nitrogen.available_in_first_year",
    "phosphorus.per_year",
    "potassium.per_year",
    "area_served",
    "storage.volume_needed",
    "storage.lasts",
    "fertiliser.urea",
    "crops.1.digestate_given",
)


def digestate(**changes: Any) -> Json:
    return ask("digestate", like(FARM, **changes))


def agree(first: Json, second: Json, rel: float = 1e-4) -> None:
    for path in TOLD:
        assert value(first, path) == pytest.approx(value(second, path), rel=rel, abs=2e-3), path


@given(st.data())
@settings(max_examples=30)
def test_units_do_not_matter(data: Any) -> None:
    def said(number: float, kind: str) -> Json:
        code = data.draw(st.sampled_from(sorted(KINDS[kind].units)))
        return {"value": from_canonical(number, kind, code), "unit": code}

    def body(say: Any) -> Json:
        return like(
            FARM,
            feed=[{"substrate": "cattle_dung", "mass": say(70, "mass_flow"), "phosphorus": say(0.006, "share")}],
            water=say(0.07, "volume_flow"),
            urine=say(0.012, "volume_flow"),
            hydraulic_retention_time=say(55, "time"),
            crops=[
                {"crop": "coffee", "area": say(3000, "area"), "nitrogen_need": say(0.012, "areic_mass")},
                {"crop": "potato", "area": say(2000, "area")},
            ],
            nitrogen_limit=say(0.025, "areic_mass"),
            storage={"time": say(91, "time"), "depth": say(1.1, "length"), "freeboard": say(0.25, "length"), "volume": say(18, "volume")},
        )

    agree(ask("digestate", body(said)), ask("digestate", body(lambda n, kind: {"value": n, "unit": KINDS[kind].canonical.code})))


def test_the_order_of_the_feed_does_not_matter() -> None:
    agree(digestate(), digestate(feed=FARM["feed"][::-1]))


@given(st.floats(-400, 5500))
@settings(max_examples=30)
def test_the_height_of_the_place_moves_gas_volumes_and_nothing_that_weighs(altitude: float) -> None:
    low, high = digestate(), digestate(climate={**FARM["climate"], "altitude": altitude})
    assert value(low, "balance.organic_matter_to_gas") == pytest.approx(value(high, "balance.organic_matter_to_gas"), rel=2e-3)
    for path in ("nitrogen", "phosphorus", "potassium"):
        assert value(low, path) == value(high, path)
    if altitude > 50:
        assert value(high, "biogas_per_day") > value(low, "biogas_per_day")


@given(st.floats(10, 34), st.floats(10, 34))
@settings(max_examples=30)
def test_a_warmer_digester_leaves_no_more_organic_matter(first: float, second: float) -> None:
    cold, warm = (digestate(climate={"digester_temperature": degrees}) for degrees in sorted((first, second)))
    assert value(warm, "balance.organic_matter_left") <= value(cold, "balance.organic_matter_left") + 1e-4
    assert value(warm, "digestate_per_day") <= value(cold, "digestate_per_day") + 1e-4
    assert value(warm, "nitrogen.per_cubic_metre") >= value(cold, "nitrogen.per_cubic_metre") - 1e-4


@given(st.floats(5, 300), st.floats(5, 300))
@settings(max_examples=30)
def test_a_longer_stay_leaves_no_more_organic_matter(first: float, second: float) -> None:
    short, long = (digestate(hydraulic_retention_time=days) for days in sorted((first, second)))
    assert value(long, "balance.organic_matter_left") <= value(short, "balance.organic_matter_left") + 1e-4
    assert value(long, "nitrogen") == value(short, "nitrogen")


@given(st.lists(st.tuples(st.floats(1, 200), st.floats(0.05, 0.4), st.floats(0.005, 0.06), st.floats(0.2, 0.9)), min_size=1, max_size=3))
def test_a_whole_farm_by_independent_arithmetic(lots: list[tuple[float, float, float, float]]) -> None:
    """Nitrogen from feed to field, worked out here from nothing but the stated figures and the pack's losses."""
    names = ["cattle_dung", "pig_manure", "goat_droppings"]
    feed = [
        {"substrate": name, "mass": mass, "total_solids": solids, "nitrogen": nitrogen, "ammonium_share": share, "bulk_density": 1000}
        for name, (mass, solids, nitrogen, share) in zip(names, lots, strict=False)
    ]
    water = sum(lot[0] for lot in lots)
    answer = digestate(feed=feed, urine=0, water=water, crops=[{"crop": "maize", "nitrogen_need": 80}])
    total = sum(mass * solids * nitrogen for mass, solids, nitrogen, _ in lots)
    ammonium = sum(mass * solids * nitrogen * share for mass, solids, nitrogen, share in lots)
    practice = base().data.practice
    store, field = (part.ammonia_loss.typical for part in (practice.slurry_stores["covered_pit"], practice.spreadings["covered_furrow"]))
    release = practice.figures["organic_nitrogen_release"].typical
    found = ammonium * (1 - store) * (1 - field) + (total - ammonium) * release
    year = 365.25
    assert value(answer, "nitrogen") == pytest.approx(total, rel=1e-4, abs=1e-4)
    assert value(answer, "nitrogen.lost_in_storage") == pytest.approx(ammonium * store * year, rel=1e-4, abs=1e-3)
    assert value(answer, "nitrogen.lost_in_spreading") == pytest.approx(ammonium * (1 - store) * field * year, rel=1e-4, abs=1e-3)
    assert value(answer, "nitrogen.available_in_first_year") == pytest.approx(found * year, rel=1e-4, abs=1e-3)
    assert value(answer, "area_served") == pytest.approx(found * year / 80, rel=1e-3, abs=2e-4)
    assert value(answer, "slurry_per_day") == pytest.approx(2 * water, rel=1e-4, abs=1e-3)


def test_more_people_s_excreta_make_it_stricter_and_never_milder() -> None:
    usual = digestate(crops=[{"crop": "tomato_pepper", "area": 0.05}, {"crop": "maize", "area": 0.3}])
    latrine = digestate(
        feed=[*FARM["feed"], {"substrate": "human_excreta", "mass": 1}],
        crops=[{"crop": "tomato_pepper", "area": 0.05}, {"crop": "maize", "area": 0.3}],
    )
    assert usual["crops"][0]["waiting"]["allowed"] is True
    assert latrine["crops"][0]["waiting"]["allowed"] is False
    assert value(latrine, "crops.1.waiting.time") >= value(usual, "crops.1.waiting.time")
    assert {one["id"] for one in usual["cautions"]} < {one["id"] for one in latrine["cautions"]}
