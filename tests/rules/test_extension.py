"""Knowledge is data: a pack adds crops, animals, structures, appliances, facts and checks, and every question knows them at once."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path

import pytest
from tests.rules.conftest import Json, ask, assert_sound, assumed, findings, value

from kilisho.faults import RefusedError
from kilisho.packs import load
from kilisho.questions import Question, open_questions

PACK = """
pack: {id: wet-hills, version: 0.0.1, title: Wet hills (invented)}
sources:
  field-day: {title: Weighing on a field day (invented), year: 2026, kind: practice}
substrates:
  sorghum_stover:
    name: Sorghum stover, chopped
    group: crop_residue
    total_solids: {low: 80, typical: 85, high: 90, unit: "%", basis: published, source: [field-day]}
    volatile_solids: {typical: 90, unit: "%", basis: judgement}
    bulk_density: {typical: 100, unit: kg/m3, basis: published, source: [field-day]}
    nitrogen: {typical: 0.8, unit: "%", basis: judgement}
    carbon_to_nitrogen: {typical: 55, unit: "1", basis: judgement}
    biogas_yield: {low: 0.15, typical: 0.2, high: 0.3, unit: m3/kg, basis: judgement}
    methane_share: {typical: 53, unit: "%", basis: judgement}
    methane_potential: {typical: 0.2, unit: m3/kg, basis: judgement}
    degradation_rate: {typical: 0.007, unit: 1/d, basis: judgement}
    settling_share: {typical: 5, unit: "%", basis: judgement}
    dilution: {basis: judgement, target_total_solids: {typical: 8, unit: "%", basis: judgement}}
    retention_factor: {typical: 1.5, unit: "1", basis: judgement}
    starts_unaided: false
    cautions: [silo_fire]
  llama_dung:
    name: Llama dung
    group: dung
    total_solids: {typical: 30, unit: "%", basis: judgement}
    volatile_solids: {typical: 80, unit: "%", basis: judgement}
    bulk_density: {typical: 800, unit: kg/m3, basis: judgement}
    nitrogen: {typical: 2, unit: "%", basis: judgement}
    carbon_to_nitrogen: {typical: 20, unit: "1", basis: judgement}
    biogas_yield: {typical: 0.25, unit: m3/kg, basis: judgement}
    methane_share: {typical: 60, unit: "%", basis: judgement}
    methane_potential: {typical: 0.2, unit: m3/kg, basis: judgement}
    degradation_rate: {typical: 0.009, unit: 1/d, basis: judgement}
    settling_share: {typical: 10, unit: "%", basis: judgement}
    dilution: {basis: judgement, water_to_feed_by_volume: {typical: 3, unit: "1", basis: judgement}}
    retention_factor: {typical: 1, unit: "1", basis: judgement}
    starts_unaided: true
animals:
  llama:
    name: Llama
    substrate: llama_dung
    live_weight: {typical: 140, unit: kg, basis: judgement}
    dung_per_day: {low: 2, typical: 2.5, high: 3, unit: kg/d, basis: judgement}
    dung_per_live_weight: {typical: 1.8, unit: "%/d", basis: judgement}
    urine_per_day: {typical: 2, unit: L/d, basis: judgement}
    collectable:
      stall: {typical: 80, unit: "%", basis: judgement}
      night_pen: {typical: 50, unit: "%", basis: judgement}
      grazing: {typical: 0, unit: "%", basis: judgement}
    urine_collectable:
      stall: {typical: 0, unit: "%", basis: judgement}
      night_pen: {typical: 0, unit: "%", basis: judgement}
      grazing: {typical: 0, unit: "%", basis: judgement}
structures:
  barrel_plant:
    name: Barrel plant
    operation: continuous
    fill_share: {typical: 0.8, unit: "1", basis: judgement}
    least_fill_share: {typical: 0.6, unit: "1", basis: judgement}
    gas_storage_share: {typical: 0.2, unit: "1", basis: judgement}
    tanks_in_series: 2
    operating_pressure: {typical: 1, unit: kPa, basis: judgement}
    checked_as: fixed_dome
    geometry: {shape: cylinder, ratios: {height_to_diameter: {typical: 2, unit: "1", basis: judgement}}}
    buildable_sizes: {unit: m3, total_volumes: [2, 7, 21], basis: judgement}
    confirm_before_filling: [barrels_rinsed]
    cautions: [barrel_residues]
appliances:
  incubator:
    name: Egg incubator
    gas_per_hour: {typical: 50, unit: L/h, basis: judgement}
    usual_hours_per_day: {typical: 24, unit: "1", basis: judgement}
cautions:
  silo_fire: {signal: warning, text: "Chopped stover heats and can catch fire in a heap.", basis: judgement}
  barrel_residues: {signal: danger, text: "Barrels may have held poison.", basis: judgement}
facts:
  barrels_rinsed: {name: The barrels were rinsed, group: structure, field: barrels_rinsed, kind: yes_no}
  barrel_thickness:
    {name: Thickness of the barrels, group: structure, field: barrel_thickness, kind: length, unit: mm, at_least: 0, at_most: 50}
checks:
  barrels_are_clean:
    title: The barrels are clean
    topic: structure
    subject: barrels_rinsed
    must: {is: true}
    severity: danger
    why: Residues kill the microbes and harm people.
    do: Rinse them.
    asked_in: [safety_check, first_charge]
    basis: judgement
  barrels_are_thick:
    title: The barrels are thick enough
    topic: structure
    subject: barrel_thickness
    must: {at_least: 0.2, unit: cm}
    when: {barrels_rinsed: {is: true}}
    severity: warning
    why: Thin ones buckle.
    do: Take thicker ones.
    basis: judgement
"""


@pytest.fixture(scope="module")
def extended(tmp_path_factory: pytest.TempPathFactory) -> Mapping[str, Question]:
    path = tmp_path_factory.mktemp("pack") / "wet-hills.yaml"
    path.write_text(PACK, encoding="utf-8")
    return open_questions(load(path))


def cautions(answer: Json) -> set[str]:
    return {one["id"] for one in answer["cautions"]}


def test_a_new_crop_residue_is_charged(extended: Mapping[str, Question]) -> None:
    body: Json = {
        "digester": {"structure": "barrel_plant", "total_volume": 10},
        "feed": [{"substrate": "sorghum_stover", "gathered_per_day": 9}],
    }
    answer = ask("first-charge", body, among=extended)
    assert_sound("first-charge", answer, extended)
    assert value(answer, "slurry_volume") == pytest.approx(8)
    assert value(answer, "slurry_total_solids") == pytest.approx(8, rel=1e-4), "its own practice of dilution"
    assert value(answer, "substrate_mass") * 0.85 == pytest.approx(
        0.08 * (value(answer, "substrate_mass") + 1000 * value(answer, "water_volume")), rel=1e-4
    )
    assert answer["start_up"]["starts_unaided"] is False
    assert {"silo_fire", "barrel_residues"} <= cautions(answer)
    assert answer["confirm_before_filling"] == [{"fact": "barrels_rinsed", "name": "The barrels were rinsed", "state": "unknown"}]
    assert findings(answer)["barrels_are_clean"] == "unknown"
    assert ("bulk_density", "sorghum_stover") in assumed(answer)


def test_a_new_animal_gives_its_own_dung(extended: Mapping[str, Question]) -> None:
    body: Json = {"digester": {"total_volume": 12}, "herd": [{"animal": "llama", "count": 10, "housing": "stall"}]}
    answer = ask("maintenance-feed", body, among=extended)
    assert_sound("maintenance-feed", answer, extended)
    assert value(answer, "feed_per_day") == pytest.approx(10 * 2.5 * 0.8)
    assert [one["substrate"] for one in answer["per_feeding"]["substrates"]] == ["llama_dung"]
    assert value(answer, "water_per_day") == pytest.approx(3 * 1000 * 20 / 800)


def test_a_new_structure_and_appliance_are_sized(extended: Mapping[str, Question]) -> None:
    body: Json = {
        "structure": "barrel_plant",
        "herd": [{"animal": "llama", "count": 20}],
        "appliances": [{"appliance": "incubator", "count": 2}],
    }
    answer = ask("sizing", body, among=extended)
    assert_sound("sizing", answer, extended)
    assert value(answer, "gas_demand") == pytest.approx(2 * 0.05 * 24)
    assert value(answer, "total_volume") in {2, 7, 21}
    assert value(answer, "working_volume") == pytest.approx(0.8 * value(answer, "total_volume"))
    assert value(answer, "dimensions.height") == pytest.approx(2 * value(answer, "dimensions.diameter"), rel=1e-5)
    assert "barrel_residues" in cautions(answer)


@pytest.mark.parametrize(
    "said", [lambda facts: {"structure": facts}, lambda facts: {"facts": facts}], ids=["in its group", "among the facts"]
)
@pytest.mark.parametrize(
    ("facts", "clean", "thick"),
    [
        ({}, "unknown", "unknown"),
        ({"barrels_rinsed": False}, "fail", None),
        ({"barrels_rinsed": True}, "pass", "unknown"),
        ({"barrels_rinsed": True, "barrel_thickness": 1.9}, "pass", "fail"),
        ({"barrels_rinsed": True, "barrel_thickness": {"value": 0.2, "unit": "cm"}}, "pass", "pass"),
    ],
)
def test_a_new_fact_is_asked_and_checked(
    said: Callable[[Json], Json], facts: Json, clean: str, thick: str | None, extended: Mapping[str, Question]
) -> None:
    answer = ask("safety-check", said(facts) if facts else {}, among=extended)
    assert_sound("safety-check", answer, extended)
    found = findings(answer)
    assert (found.get("barrels_are_clean"), found.get("barrels_are_thick")) == (clean, thick)
    assert (answer["verdict"] == "danger") is (clean == "fail")


def test_a_new_fact_in_a_first_charge(extended: Mapping[str, Question]) -> None:
    body: Json = {
        "digester": {"structure": "barrel_plant", "total_volume": 2},
        "feed": [{"substrate": "llama_dung"}],
        "facts": {"barrels_rinsed": False},
    }
    answer = ask("first-charge", body, among=extended)
    assert findings(answer)["barrels_are_clean"] == "fail"
    assert answer["confirm_before_filling"][0]["state"] == "refused"


def test_the_base_rulebook_knows_none_of_it() -> None:
    for name, body in (
        ("maintenance-feed", {"digester": {"total_volume": 12}, "herd": [{"animal": "llama", "count": 1}]}),
        ("sizing", {"structure": "barrel_plant", "gas_demand": 1}),
        ("sizing", {"appliances": [{"appliance": "incubator"}]}),
        ("safety-check", {"facts": {"barrels_rinsed": True}}),
    ):
        with pytest.raises(RefusedError):
            ask(name, body)


def test_every_answer_names_the_layered_rulebook(extended: Mapping[str, Question]) -> None:
    ours = ask("safety-check", {}, among=extended)["rulebook"]
    assert (ours["id"], ours["version"]) == ("base_wet-hills", "0.0.1")
    assert ours["hash"] != ask("safety-check", {})["rulebook"]["hash"]


def test_a_farm_replaces_what_it_measured(pack: Callable[..., Path]) -> None:
    """One farm's own figure for dung changes its answers and is told as measured, with the farm's source."""
    path = pack(
        "sources: {own-oven: {title: Dried in our own oven (invented), kind: practice}}\n"
        "substrates: {cattle_dung: {total_solids: {typical: 20, unit: '%', basis: published, source: [own-oven]}}}\n"
    )
    body: Json = {
        "digester": {"total_volume": 12},
        "feed": [{"substrate": "cattle_dung", "mass": 60}],
        "dilution": {"water_to_feed_by_volume": 1},
    }
    ours = ask("maintenance-feed", body, among=open_questions(load(path)))
    assert value(ours, "slurry_total_solids") == pytest.approx(10)
    assert value(ask("maintenance-feed", body), "slurry_total_solids") == pytest.approx(7.5)
    [told] = [one for one in ours["assumptions"] if (one["quantity"], one.get("of")) == ("total_solids", "cattle_dung")]
    assert told["source"] == ["own-oven"]
