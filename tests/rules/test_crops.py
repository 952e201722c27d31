"""Crops, slurry stores and ways of spreading in packs: what the base pack says, and what a pack must and may say."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import ask, base

from kilisho.packs import check, load
from kilisho.ranges import SAMPLES, Uncertain, certain
from kilisho.units import from_canonical

Pack = Callable[..., Path]
CROPS = base().data.crops
HEAD = "pack: {id: county, version: 0.1.0, title: A county (invented)}\n"


@pytest.mark.parametrize("name", sorted(CROPS))
def test_a_crop_s_need_is_one_that_farms_know(name: str) -> None:
    need = CROPS[name].nitrogen_need
    low, typical, high = (from_canonical(end, "areic_mass", "kg/har") for end in (need.least, need.typical, need.most))
    assert 5 <= low < typical < high <= 350
    assert need.basis in ("from_memory", "judgement"), "published only once somebody has seen the source"


def test_what_is_often_eaten_raw_is_so_in_the_rulebook() -> None:
    """Leaning to the safe side: a caller who cooks it says so."""
    raw = {name for name, crop in CROPS.items() if crop.eaten_raw}
    assert raw == {"leafy_vegetables", "tomato_pepper", "root_vegetables", "banana", "fruit_trees", "sugarcane"}
    in_soil = {name for name, crop in CROPS.items() if crop.edible_part_touches_soil}
    assert {"potato", "sweet_potato", "cassava", "root_vegetables", "leafy_vegetables", "pasture"} <= in_soil
    assert {name for name, crop in CROPS.items() if crop.fodder} == {"napier_grass", "pasture"}


def test_pulses_need_least_and_grass_that_is_carried_away_most() -> None:
    by_need = sorted(CROPS, key=lambda name: CROPS[name].nitrogen_need.typical)
    assert (by_need[0], by_need[-1]) == ("beans", "napier_grass")


def test_losses_in_store_and_field_are_shares_in_the_order_that_the_trade_knows() -> None:
    stores, ways = base().data.practice.slurry_stores, base().data.practice.spreadings
    assert stores["covered_pit"].ammonia_loss.most < stores["open_pit"].ammonia_loss.typical
    assert ways["covered_furrow"].ammonia_loss.most <= ways["broadcast"].ammonia_loss.least
    for entry in (*stores.values(), *ways.values()):
        assert 0 <= entry.ammonia_loss.least <= entry.ammonia_loss.most < 1


@pytest.mark.parametrize(
    ("text", "path"),
    [
        ("crops: {maize: {nitrogen_need: {typical: 90, unit: kg, basis: judgement}}}", "crops.maize.nitrogen_need"),
        ("crops: {maize: {nitrogen_need: {typical: 9000, unit: kg/har, basis: judgement}}}", "crops.maize.nitrogen_need"),
        ("crops: {maize: {eaten_raw: null}}", "crops.maize.eaten_raw"),
        ("crops: {maize: {colour: yellow}}", "crops.maize.colour"),
        (
            "crops: {maize: {nitrogen_need: {typical: 90, unit: kg/har, basis: published, source: [nobody]}}}",
            "crops.maize.nitrogen_need.source",
        ),
        ("practice: {spreadings: {broadcast: {ammonia_loss: {typical: 1.5, unit: '1', basis: judgement}}}}", "broadcast.ammonia_loss"),
        ("practice: {spreadings: {broadcast: null, covered_furrow: null, irrigation_water: null}}", "practice.spreadings"),
        ("practice: {slurry_stores: {open_pit: null, covered_pit: null}}", "practice.slurry_stores"),
        ("practice: {figures: {slurry_store_depth: null}}", "practice.figures.slurry_store_depth"),
        ("practice: {figures: {nitrogen_in_urea: {low: 0, typical: 0.4, high: 0.46}}}", "practice.figures.nitrogen_in_urea"),
    ],
)
def test_a_faulty_pack_is_told_where(pack: Pack, text: str, path: str) -> None:
    found = check(pack(HEAD + text + "\n"))
    assert found
    assert any(path in fault.path for fault in found), [str(fault) for fault in found]
    assert all(fault.line > 0 for fault in found)


def test_a_pack_replaces_one_figure_of_a_crop(pack: Pack) -> None:
    data = load(pack(HEAD + "crops: {maize: {nitrogen_need: {typical: 75, unit: kg/har, basis: judgement}}}\n")).data
    assert from_canonical(data.crops["maize"].nitrogen_need.typical, "areic_mass", "kg/har") == pytest.approx(75)
    assert data.crops["maize"].nitrogen_need.low is None
    assert data.crops["maize"].name == CROPS["maize"].name
    assert list(data.crops) == list(CROPS)


def test_the_checks_on_digestate_are_asked_in_the_safety_check_too() -> None:
    answer = ask("safety-check", {"digestate": {"days_to_harvest": 20, "digestate_on_fodder": True, "nitrogen_per_area": 200}})
    failed = {finding["check"] for finding in answer["findings"] if finding["verdict"] == "fail"}
    assert {"fodder_wait", "nitrogen_limit_elsewhere_kept"} <= failed


# The arithmetic of ranges that sharing out needs

VALUES = st.floats(0.1, 100)
DRAWS = st.lists(VALUES, min_size=SAMPLES, max_size=SAMPLES).map(np.array)
UNCERTAIN = st.builds(Uncertain, VALUES, DRAWS) | VALUES.map(certain)


@given(UNCERTAIN, UNCERTAIN)
def test_differences_ratios_and_the_smaller_of_two(one: Uncertain, other: Uncertain) -> None:
    smaller = one.at_most(other)
    rest = one.less(smaller)
    assert smaller.value == min(one.value, other.value)
    assert np.all(np.asarray(smaller.samples) <= np.asarray(one.samples))
    assert np.all(np.asarray(rest.samples) >= 0)
    whole = rest.plus(smaller)
    assert np.allclose(whole.samples, one.samples)
    assert whole.value == pytest.approx(one.value)
    back = one.over(other).by(other)
    assert back.value == pytest.approx(one.value)
    assert np.allclose(back.samples, one.samples)
