"""Properties of the formulas of nutrients and of the slurry store, on one farm and on arrays of farms."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from kilisho.farm import GRAPH
from kilisho.formulas import nutrients, slurry_store
from kilisho.quantities import collect, prove_units
from kilisho.units import KINDS, from_canonical, to_canonical

FLOW = st.floats(1e-3, 1e3)
SHARE = st.floats(0, 1)
NITROGEN = {
    "nitrogen_per_day": FLOW,
    "urine_nitrogen_per_day": st.floats(0, 100),
    "ammonium_share": SHARE,
    "urine_ammonium_per_day": st.just(0.0),
    "ammonia_loss_in_storage": SHARE,
    "ammonia_loss_in_spreading": SHARE,
    "organic_nitrogen_release": SHARE,
}
PATHS = ("nitrogen_lost_in_storage", "nitrogen_lost_in_spreading", "available_nitrogen_per_day", "nitrogen_for_later_years")


def test_every_formula_is_in_the_graph_and_its_units_are_proved() -> None:
    own = {item.name for item in collect(nutrients, slurry_store)}
    assert own <= GRAPH.quantities.keys()
    assert prove_units(GRAPH) == []
    assert {item.name for item in collect(nutrients, slurry_store) if item.empirical} == {"dry_biogas_mass_per_day"}


@given(st.fixed_dictionaries(NITROGEN))
def test_nitrogen_closes_whatever_the_losses(farm: dict[str, float]) -> None:
    found = GRAPH.solve(farm, ("digestate_nitrogen_per_day", *PATHS))
    total = farm["nitrogen_per_day"] + farm["urine_nitrogen_per_day"]
    assert found["digestate_nitrogen_per_day"] == pytest.approx(total, rel=1e-12)
    assert sum(found[name] for name in PATHS) == pytest.approx(total, rel=1e-9)
    assert min(found[name] for name in PATHS) >= -1e-9 * total


@given(st.fixed_dictionaries(NITROGEN), st.sampled_from(["ammonia_loss_in_storage", "ammonia_loss_in_spreading"]), SHARE)
def test_a_greater_loss_leaves_no_more(farm: dict[str, float], which: str, other: float) -> None:
    small, great = sorted((farm[which], other))
    less, more = (GRAPH.solve({**farm, which: loss}, ("available_nitrogen_per_day",)) for loss in (small, great))
    assert more["available_nitrogen_per_day"] <= less["available_nitrogen_per_day"] * (1 + 1e-12) + 1e-12


@given(st.fixed_dictionaries(NITROGEN), SHARE)
def test_covering_what_is_spread_cannot_save_what_the_store_lost(farm: dict[str, float], loss: float) -> None:
    found = GRAPH.solve({**farm, "ammonia_loss_in_storage": 1.0, "ammonia_loss_in_spreading": loss}, PATHS)
    assert found["nitrogen_lost_in_spreading"] == 0


@given(FLOW, SHARE, st.floats(0, 1e3), st.floats(0.05, 0.95))
def test_no_more_matter_becomes_gas_than_there_is(solids: float, organic: float, gas: float, methane: float) -> None:
    farm: dict[str, Any] = {
        "total_solids_per_day": solids,
        "volatile_solids_per_day": solids * organic,
        "biogas_per_day_normal": gas,
        "methane_share": methane,
        "solids_in_gas": 0.9,
    }
    wanted = ("volatile_solids_destroyed_per_day", "volatile_solids_left_per_day", "total_solids_left_per_day", "dry_biogas_mass_per_day")
    found = GRAPH.solve(farm, wanted)
    assert 0 <= found["volatile_solids_destroyed_per_day"] <= 0.9 * found["dry_biogas_mass_per_day"] + 1e-12
    assert found["volatile_solids_left_per_day"] >= 0
    assert found["total_solids_left_per_day"] >= solids * (1 - organic) - 1e-9
    # 0.717 kg of methane and 1.977 kg of carbon dioxide in a normal cubic metre.
    assert found["dry_biogas_mass_per_day"] == pytest.approx(gas * (0.717 * methane + 1.977 * (1 - methane)), rel=5e-3)


@given(FLOW, FLOW, SHARE)
def test_phosphorus_and_potassium_close(phosphorus: float, potassium: float, settling: float) -> None:
    farm = {"phosphorus_per_day": phosphorus, "potassium_per_day": potassium, "phosphorus_settling": settling}
    found = GRAPH.solve(farm, ("digestate_phosphorus_per_day", "settled_phosphorus_per_day", "digestate_potassium_per_day"))
    assert found["digestate_phosphorus_per_day"] + found["settled_phosphorus_per_day"] == pytest.approx(phosphorus, rel=1e-12)
    assert found["digestate_potassium_per_day"] == potassium


@given(st.floats(0, 100), st.floats(0, 100), st.floats(0, 100))
def test_fertilisers_bring_the_nutrients_back(nitrogen: float, phosphate: float, potash: float) -> None:
    grades = {
        "nitrogen_in_urea": 0.46,
        "nitrogen_in_diammonium_phosphate": 0.18,
        "phosphate_in_diammonium_phosphate": 0.46,
        "potash_in_potassium_chloride": 0.6,
    }
    farm = {**grades, "available_nitrogen_per_day": nitrogen, "phosphate_per_day": phosphate, "potash_per_day": potash}
    found = GRAPH.solve(farm, ("urea_equivalent", "diammonium_phosphate_equivalent", "potassium_chloride_equivalent"))
    salt = found["diammonium_phosphate_equivalent"]
    assert 0.46 * salt == pytest.approx(phosphate, rel=1e-9)
    assert 0.46 * found["urea_equivalent"] + 0.18 * salt == pytest.approx(max(nitrogen, 0.18 * salt), rel=1e-9, abs=1e-12)
    assert 0.6 * found["potassium_chloride_equivalent"] == pytest.approx(potash, rel=1e-9)


@given(st.floats(0.01, 10), st.floats(0.1, 800), st.floats(0.2, 6), st.floats(0, 2))
def test_a_store_as_large_as_needed_lasts_exactly_as_long(flow: float, days: float, depth: float, freeboard: float) -> None:
    farm = {
        "digestate_per_day": flow,
        "slurry_storage_time": days,
        "slurry_store_depth": depth,
        "slurry_store_freeboard": freeboard,
    }
    needed = GRAPH.solve(farm, ("slurry_store_needed",))["slurry_store_needed"]
    assert needed >= flow * days * (1 - 1e-12)
    lasts = GRAPH.solve({**farm, "slurry_store_volume": needed}, ("slurry_store_lasts",))["slurry_store_lasts"]
    assert lasts == pytest.approx(days, rel=1e-9)


def test_arrays_of_farms_are_worked_out_as_one_by_one() -> None:
    rng = np.random.default_rng(20270301)
    farms = {name: rng.uniform(0.05, 0.95, 200) for name in NITROGEN}
    together = GRAPH.solve(farms, PATHS)
    for place in range(0, 200, 7):
        alone = GRAPH.solve({name: float(column[place]) for name, column in farms.items()}, PATHS)
        for name in PATHS:
            assert together[name][place] == pytest.approx(alone[name], rel=1e-12)


@pytest.mark.parametrize(
    ("kind", "stated", "code", "canonical"),
    [
        ("areic_mass", 100, "kg/har", 0.01),
        ("areic_mass", 1, "t/har", 0.1),
        ("areic_mass", 10, "g/m2", 0.01),
        ("areic_mass", 89.21791, "[lb_av]/[acr_us]", 0.01),
        ("areic_volume", 60, "m3/har", 0.006),
        ("areic_volume", 6, "L/m2", 0.006),
        ("volume_flow", 365.25, "m3/a", 1.0),
    ],
)
def test_units_of_land(kind: str, stated: float, code: str, canonical: float) -> None:
    assert to_canonical(stated, kind, code) == pytest.approx(canonical, rel=1e-5)
    assert from_canonical(canonical, kind, code) == pytest.approx(stated, rel=1e-5)
    assert code in KINDS[kind].units
