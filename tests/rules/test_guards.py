"""What must not slip through: checks disarmed by packs or stated facts, silence read as safety, and plans that contradict themselves."""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
import yaml
from tests.rules.conftest import Json, ask, base, findings, like, value

from kilisho.faults import RefusedError
from kilisho.packs import check, load
from kilisho.questions import open_questions

FULL: Json = {
    "digester": {"structure": "fixed_dome", "total_volume": 12},
    "feed": [{"substrate": "cattle_dung"}],
    "herd": [{"animal": "dairy_cow", "count": 8, "housing": "stall"}],
    "stockpile": {"starts_on": "2027-01-04", "cover": "sheet"},
    "digester_ready_on": "2027-02-03",
    "climate": {"digester_temperature": 25},
}
FED: Json = {"digester": {"total_volume": 12}, "feed": [{"substrate": "cattle_dung", "mass": 120}], "climate": {"digester_temperature": 25}}


def events(answer: Json) -> dict[str, Json]:
    return {one["event"]: one for one in answer["schedule"]}


# ---- packs --------------------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("layer", "path"),
    [
        ({"facts": {"shadow": {"name": "Shadow", "group": "people", "field": "entry_planned", "kind": "yes_no"}}}, "facts.shadow.field"),
        ({"facts": {"entry_planned": {"field": "something_else"}}}, "facts.entry_planned"),
        ({"facts": {"flame_distance": {"unit": "km", "at_most": 5}}}, "facts.flame_distance"),
        ({"checks": {"no_entry": {"severity": "notice"}}}, "checks.no_entry"),
        ({"cautions": {"never_enter": None}}, "cautions.never_enter"),
        ({"cautions": {"never_enter": {"shown_in": []}}}, "cautions.never_enter"),
        ({"cautions": {"first_gas": {"signal": "notice"}}}, "cautions.first_gas"),
        ({"symptoms": {"flame_yellow": {"alarm": False}}}, "symptoms.flame_yellow"),
        ({"symptoms": {"gas_smell_indoors": None}}, "symptoms.gas_smell_indoors"),
        ({"causes": {"overfed": {"test": "nobody"}}}, "causes.overfed.test"),
        ({"causes": {"gas_gathers_low": None}}, "symptoms.person_collapsed"),
        ({"practice": {"figures": {"evidence_weak": None}}}, "practice.figures.evidence_weak"),
        ({"structures": {"fixed_dome": {"confirm_before_filling": []}}}, "structures.fixed_dome.confirm_before_filling"),
        ({"practice": {"figures": {"mixing_rate": None}}}, "practice.figures.mixing_rate"),
        ({"practice": {"curves": {"feed_step": None}}}, "practice.curves.feed_step"),
        ({"substrates": {"cattle_urine": None}}, "substrates.cattle_urine"),
        ({"substrates": {"human_excreta": {"group": "dung"}}}, "substrates"),
        ({"substrates": {name: {"group": "droppings"} for name in ("layer_droppings", "broiler_litter")}}, "substrates"),
        ({"structures": {"bag": {"geometry": {"shape": "tube", "ratios": {}}}}}, "structures.bag.geometry.ratios"),
    ],
)
def test_a_pack_cannot_disarm_or_starve_the_engine(layer: Json, path: str, pack: Callable[..., Path]) -> None:
    assert path in [fault.path for fault in check(pack(yaml.safe_dump(layer)))]


@pytest.mark.parametrize(
    ("field", "typical"),
    [("total_solids", 0), ("bulk_density", 0), ("degradation_rate", 0), ("carbon_to_nitrogen", 0), ("methane_share", 0)],
)
def test_a_figure_that_is_divided_by_is_above_zero(field: str, typical: float, pack: Callable[..., Path]) -> None:
    unit = getattr(base().data.substrates["whey"], field).unit
    layer = {"substrates": {"whey": {field: {"typical": typical, "unit": unit, "basis": "judgement"}}}}
    assert [fault.path for fault in check(pack(yaml.safe_dump(layer)))] == [f"substrates.whey.{field}"]


def film_tube(**more: Any) -> str:
    """A structure of another name that is a copy of the bag."""
    own = yaml.safe_load((Path(load.__code__.co_filename).parent / "packs/base/structures.yaml").read_text("utf-8"))["structures"]["bag"]
    return yaml.safe_dump({"structures": {"film_tube": {**own, **more}}})


def test_a_new_structure_says_whose_checks_hold_for_it(pack: Callable[..., Path]) -> None:
    [fault] = check(pack(film_tube()))
    assert fault.path == "structures.film_tube.checked_as"


def test_a_new_structure_is_held_to_the_checks_of_its_like(pack: Callable[..., Path]) -> None:
    questions = open_questions(load(pack(film_tube(checked_as="bag"))))
    facts = {"structure": {"kind": "film_tube"}, "facts": {"pressure_relief": False}}
    answer = ask("safety-check", facts, among=questions)
    assert findings(answer)["relief_on_bag"] == "fail"
    assert answer["verdict"] == "danger"
    charge = ask("first-charge", like(FULL, digester={"structure": "film_tube", "total_volume": 10}), among=questions)
    assert findings(charge)["relief_on_bag"] == "unknown"


# ---- stated facts -------------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("meter", [None, False, True])
@pytest.mark.parametrize(
    ("fact", "reading"),
    [("hydrogen_sulfide_in_breathed_air", {"value": 500, "unit": "[ppm]"}), ("methane_in_room_air", {"value": 4, "unit": "%"})],
)
def test_a_dangerous_reading_is_danger_whatever_is_said_of_the_meter(fact: str, reading: Json, meter: bool | None) -> None:
    facts = {fact: reading} | ({} if meter is None else {"gas_meter_used": meter})
    answer = ask("safety-check", {"facts": facts})
    assert (answer["verdict"], answer["stop"]) == ("danger", True)


@pytest.mark.parametrize("facts", [{"structure_kind": "bag"}, {"slurry_total_solids": 0.02}, {"heap_covered": False}])
def test_a_stated_fact_that_denies_the_request_is_refused(facts: Json) -> None:
    with pytest.raises(RefusedError) as refused:
        ask("first-charge", like(FULL, facts=facts))
    assert [(fault.pointer, fault.code) for fault in refused.value.faults] == [(f"/facts/{next(iter(facts))}", "stated_twice")]


def test_a_stated_fact_that_agrees_is_taken() -> None:
    answer = ask("first-charge", like(FULL, facts={"structure_kind": "fixed_dome", "gas_tightness_test": "passed"}))
    assert {one["fact"]: one["state"] for one in answer["confirm_before_filling"]}["gas_tightness_test"] == "confirmed"


# ---- plans --------------------------------------------------------------------------------------------------------------------------


def test_nobody_is_told_to_fill_what_has_failed_its_test() -> None:
    failed = ask("first-charge", like(FULL, facts={"gas_tightness_test": "failed", "cured_for": 2}))
    assert events(failed)["fill"]["text"].startswith("Do not fill.")
    unknown = ask("first-charge", like(FULL, purchases=[{"name": "a", "available": 1000}]))
    assert events(unknown)["fill"]["text"].startswith("Once these are confirmed:")


def test_gas_is_expected_from_the_end_of_filling_and_dates_agree() -> None:
    answer = ask("first-charge", like(FULL, labour={"people": 1, "hours_per_day": 4}))
    days, told = answer["labour"]["days"], events(answer)
    assert days > 1
    assert told["first_gas"]["day"] == days - 1
    first = dt.date.fromisoformat(answer["start_up"]["first_burnable_gas_from"])
    assert (first - dt.date(2027, 2, 3)).days == days - 1 + int(answer["start_up"]["days_to_first_burnable_gas"]["low"])
    assert told["first_gas"]["date"] <= first.isoformat() <= told["flame_test"]["date"]


def test_loose_straw_fills_the_digester_by_its_mass_not_by_its_bulk() -> None:
    feed = [{"substrate": "cattle_dung", "share": 0.5}, {"substrate": "rice_straw", "share": 0.5, "gathered_per_day": 50}]
    answer = ask("first-charge", like(FULL, feed=feed))
    room = value(answer, "slurry_volume") - value(answer, "water_volume")
    assert room == pytest.approx(value(answer, "substrate_mass") / 1000, rel=1e-4)
    assert value(answer, "substrate_volume") > 2 * room


def test_dung_of_unknown_age_is_not_young() -> None:
    there = {"starts_on": "2027-01-04", "cover": "sheet", "on_hand": 500}
    unknown = ask("first-charge", like(FULL, stockpile=there))
    assert "oldest" not in unknown["stockpile"]
    assert unknown["stockpile"]["within_keeping_time"] is False
    assert findings(unknown)["heap_age_month"] == "unknown"
    known = ask("first-charge", like(FULL, stockpile={**there, "on_hand_age": 20}))
    assert (value(known, "stockpile.oldest"), findings(known)["heap_age_month"]) == (50, "fail")


def test_a_batch_tank_is_not_planned_for_regular_feeding() -> None:
    charge = ask("first-charge", like(FULL, digester={"structure": "batch_tank", "total_volume": 5}))
    assert charge["start_up"]["ramp"] == []
    assert not [name for name in events(charge) if name.startswith("feed_")]
    fed = ask("maintenance-feed", like(FED, digester={"structure": "batch_tank", "total_volume": 5}))
    assert fed["operation"]["kind"] == "batch_structure"


def test_a_dose_that_cannot_fit_is_found() -> None:
    answer = ask("maintenance-feed", like(FED, feeding={"every": 60}))
    assert (findings(answer)["dose_fits"], findings(answer)["heap_age_month"]) == ("fail", "fail")
    assert "dose_fits" not in findings(ask("maintenance-feed", FED))


@pytest.mark.parametrize("stated", [{"purchases": [{"name": "a", "available": 1000}]}, {"starter_slurry": 500}])
def test_dung_from_another_farm_brings_its_caution(stated: Json) -> None:
    assert "animal_disease_import" in {one["id"] for one in ask("first-charge", like(FULL, **stated))["cautions"]}
    assert "animal_disease_import" not in {one["id"] for one in ask("first-charge", FULL)["cautions"]}


def test_no_water_is_no_unknown() -> None:
    assert findings(ask("first-charge", like(FULL, water_available=0)))["first_water_in_time"] == "fail"


def test_a_little_starter_is_no_help() -> None:
    feed = [{"substrate": "layer_droppings"}]
    alone, pinch = (ask("first-charge", like(FULL, feed=feed, starter_slurry=kilograms)) for kilograms in (0, 1))
    assert alone["start_up"]["in_practice"] == pinch["start_up"]["in_practice"]
    assert not alone["start_up"]["sure_to_start"]
    assert not pinch["start_up"]["sure_to_start"]


def test_a_herd_that_does_not_give_the_feed_is_found() -> None:
    answer = ask(
        "maintenance-feed",
        {"digester": {"total_volume": 12}, "feed": [{"substrate": "cattle_dung"}], "herd": [{"animal": "buffalo", "count": 8}]},
    )
    assert findings(answer)["herd_covers_feed"] == "fail"
    assert "feed_mass_per_day" in {one["quantity"] for one in answer["assumptions"]}
