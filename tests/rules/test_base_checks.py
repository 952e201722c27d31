"""The base pack's facts, checks and cautions: do they hang together, can each check fail, and do the bounds match their publication?"""

from __future__ import annotations

import re
from collections import Counter
from functools import cache
from pathlib import Path
from typing import Any

import pytest
import yaml
from tests.rules.conftest import questions

import kilisho
from kilisho.checks import Compiled, Finding, Verdict, compile_checks, evaluate, overall
from kilisho.packs import load
from kilisho.rulebook import NUMERIC_OPERATORS, Caution, Check, Condition, Fact, Source
from kilisho.units import KINDS, to_canonical

BASE = Path(kilisho.__file__).parent / "packs" / "base"
CHECK_FILES = [
    f"checks-{part}.yaml"
    for part in ("siting", "gas", "water-feed", "process", "structure", "hygiene", "handling", "plan", "digestate", "installation")
]
OPERATIONS = {"validate_installation" if name == "installations/validate" else name.replace("-", "_") for name in questions()}


def section(file: str, name: str) -> dict[str, Any]:
    content = yaml.safe_load((BASE / file).read_text("utf-8"))
    assert list(content) == [name], f"{file} holds {name}: and nothing else"
    return dict(content[name])


FACTS = {name: Fact.model_validate(entry) for name, entry in section("facts.yaml", "facts").items()}
CHECKS = {name: Check.model_validate(entry) for file in CHECK_FILES for name, entry in section(file, "checks").items()}
CAUTIONS = {name: Caution.model_validate(entry) for name, entry in section("cautions.yaml", "cautions").items()}
SAFETY_SOURCES = {name: Source.model_validate(entry) for name, entry in section("sources-safety.yaml", "sources").items()}

# What the other operations compute and checks read; each must also be something a caller can state.
COMPUTED = [
    "slurry_total_solids",
    "hydraulic_retention_time",
    "organic_loading_rate",
    "carbon_to_nitrogen",
    "total_ammonia_nitrogen",
    "free_ammonia",
    "digester_temperature",
    "water_sufficiency",
    "feeding_interval",
    "heap_age",
    "starter_share",
    "starts_unaided",
    "fed_share_of_design",
    "load_carried",
    "daily_mass_per_person",
    "crop_residue_share",
    "poultry_share",
    "human_excreta_fed",
    "first_fill_share",
    "gas_pressure",
    "slurry_ph",
]

CONFIRMED_BEFORE_FILLING = ("cured_for", "water_tightness_test", "gas_tightness_test", "pressure_relief", "backfilled")

# No entry, no flame at the digester, and a relief where the structure does not relieve itself: no pack may soften these.
ABSOLUTE = {
    "no_entry",
    "no_flame_at_digester",
    "first_flame_not_at_digester",
    "leak_test_without_flame",
    "relief_on_bag",
    "relief_on_separate_holder",
}


@cache
def compiled(operation: str) -> dict[str, Compiled]:
    return {check.id: check for check in compile_checks(load().data, operation)}


def conditions() -> list[tuple[str, str, Condition]]:
    return [
        (name, subject, condition)
        for name, check in CHECKS.items()
        for subject, condition in [(check.subject, check.must), *check.when.items()]
    ]


# ---- shape -----------------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("part", ["facts", "checks", "cautions", "sources"])
def test_no_id_stands_in_two_files_of_the_base_pack(part: str) -> None:
    ids = Counter(name for file in BASE.glob("*.yaml") for name in yaml.safe_load(file.read_text("utf-8")).get(part, {}))
    assert not [name for name, times in ids.items() if times > 1]


@pytest.mark.parametrize("file", ["facts.yaml", "cautions.yaml", "sources-safety.yaml", *CHECK_FILES])
def test_each_file_says_what_it_holds_and_how_to_override_it(file: str) -> None:
    head = "".join(line for line in (BASE / file).read_text("utf-8").splitlines() if line.startswith("#"))
    assert "nother pack" in head


def test_places_in_the_request_body_are_unique() -> None:
    places = Counter((fact.group, fact.field) for fact in FACTS.values())
    assert not [place for place, times in places.items() if times > 1]


@pytest.mark.parametrize("name", [*COMPUTED, *CONFIRMED_BEFORE_FILLING])
def test_computed_quantities_and_confirmations_can_be_stated(name: str) -> None:
    assert name in FACTS


def test_every_fact_is_read_by_a_check_or_a_cause() -> None:
    read = {subject for _, subject, _ in conditions()}
    read |= {subject for cause in load().data.causes.values() for one in cause.readings for subject in one.when}
    assert set(FACTS) - read == set()


@pytest.mark.parametrize(("name", "subject", "condition"), conditions(), ids=lambda part: part if isinstance(part, str) else "")
def test_each_condition_fits_its_fact(name: str, subject: str, condition: Condition) -> None:
    fact = FACTS[subject]
    [(operator, bound)] = condition.operators
    if fact.kind in KINDS:
        assert operator in NUMERIC_OPERATORS
        assert condition.unit in KINDS[fact.kind].units
    elif fact.kind == "yes_no":
        assert operator == "is_"
        assert isinstance(bound, bool)
    else:
        assert (fact.kind == "list_of") == (operator == "includes_none_of")
        known = load().data.structures if fact.kind == "structure" else fact.values
        assert set(bound if isinstance(bound, tuple) else (bound,)) <= set(known)


def trials(fact: Fact, condition: Condition) -> list[Any]:
    """Values that a caller could state, on both sides of the condition's bounds, in canonical units."""
    if fact.kind == "yes_no":
        return [True, False]
    if fact.kind == "one_of":
        return list(fact.values)
    if fact.kind == "structure":
        return sorted(load().data.structures)
    if fact.kind == "list_of":
        return [(), *((value,) for value in fact.values)]
    assert fact.unit is not None
    assert fact.at_least is not None
    assert fact.at_most is not None
    least, most = (to_canonical(end, fact.kind, fact.unit) for end in (fact.at_least, fact.at_most))
    [(_, bound)] = condition.operators
    bounds = [to_canonical(b, fact.kind, str(condition.unit)) for b in (bound if isinstance(bound, tuple) else (bound,))]
    return [v for b in bounds for v in (least, b, (b + least) / 2, (b + most) / 2, most) if least <= v <= most]


@pytest.mark.parametrize("name", CHECKS)
def test_each_check_can_pass_and_can_fail(name: str) -> None:
    check = CHECKS[name]
    ready = compiled(check.asked_in[-1])[name]
    assert {ready.test(value) for value in trials(FACTS[check.subject], check.must)} == {True, False}
    for (subject, condition), (_, applies) in zip(check.when.items(), ready.when, strict=True):
        assert {applies(value) for value in trials(FACTS[subject], condition)} == {True, False}


@pytest.mark.parametrize("name", CHECKS)
def test_each_check_is_asked_in_the_safety_check_or_of_a_record_only(name: str) -> None:
    asked_in = CHECKS[name].asked_in
    assert "safety_check" in asked_in or asked_in == ("validate_installation",)


@pytest.mark.parametrize("name", CHECKS)
def test_why_and_do_are_one_or_two_sentences(name: str) -> None:
    for words in (CHECKS[name].why, CHECKS[name].do):
        assert words.endswith(".")
        assert 1 <= len(re.findall(r"\.(?:\s|$)", words)) <= 2


# ---- what is known and by whom ---------------------------------------------------------------------------------------------------


def test_every_source_is_listed() -> None:
    listed = {name for file in BASE.glob("sources-*.yaml") for name in section(file.name, "sources")}
    cited = {source for entry in (*CHECKS.values(), *CAUTIONS.values()) for source in entry.source}
    assert cited - listed == set()


def test_every_safety_source_is_cited_somewhere() -> None:
    text = "".join(file.read_text("utf-8") for file in BASE.glob("*.yaml") if not file.name.startswith("sources-"))
    assert [name for name in SAFETY_SOURCES if name not in text] == []


def test_sources_hold_no_web_address() -> None:
    assert re.findall(r"://|www\.", (BASE / "sources-safety.yaml").read_text("utf-8")) == []


def test_danger_is_published_or_absolute() -> None:
    danger = {name: check for name, check in CHECKS.items() if check.severity == "danger"}
    assert {name for name, check in danger.items() if check.basis != "published" and not check.absolute} == set()


def test_absolute_checks_are_danger_and_exactly_these() -> None:
    assert {name for name, check in CHECKS.items() if check.absolute} == ABSOLUTE
    assert {CHECKS[name].severity for name in ABSOLUTE} == {"danger"}


def test_danger_never_hangs_on_a_measured_gas_that_a_household_cannot_know() -> None:
    measured = {name for name, fact in FACTS.items() if fact.kind == "share" and ("_air" in name or "_in_gas" in name)}
    assert measured
    for name, check in CHECKS.items():
        if check.severity == "danger" and check.subject in measured:
            assert {"gas_meter_used", "entry_planned"} & set(check.when), name


# ---- which operation asks what ---------------------------------------------------------------------------------------------------

ASKED = {
    "sizing": "distance_to_well distance_to_dwelling groundwater_depth water_sufficiency hydraulic_retention_time organic_loading_rate "
    "feed_sufficiency",
    "first_charge": "cured_for water_tightness_test gas_tightness_test backfilled pressure_relief heap_age starter_share "
    "slurry_total_solids water_days load_carried daily_mass_per_person first_fill_share",
    "gas_use": "gas_sufficiency gas_use_covered gas_vented_share pipe_pressure_drop appliance_pressure_ratio methane_loss_over_saving "
    "first_gas_vented flame_arrester condensate_trap gas_pressure flame_colour kitchen_openings unconverted_appliance hose_as_fixed_line",
    "maintenance_feed": "slurry_total_solids hydraulic_retention_time organic_loading_rate feeding_interval carbon_to_nitrogen "
    "total_ammonia_nitrogen free_ammonia water_sufficiency crop_residue_share poultry_share feed_contains digester_temperature",
    "batch_rotation": "rotation_sufficiency charge_start_reliability slurry_total_solids starter_share gas_tightness_test first_gas_vented",
    "digestate": "days_to_harvest digestate_on_raw_crops digestate_stored_for digestate_sprayed openings_fenced nitrogen_per_area "
    "slurry_store_sufficiency hydraulic_retention_time hand_washing protective_clothing sludge_stored_or_composted",
    "feed_mix": "slurry_total_solids hydraulic_retention_time organic_loading_rate carbon_to_nitrogen total_ammonia_nitrogen free_ammonia "
    "crop_residue_share poultry_share feed_contains digester_temperature fed_share_of_design",
    "diagnosis": "slurry_ph gas_pressure gas_smell_indoors flame_colour gas_ratio gas_ratio_to_low volatile_acids_to_alkalinity "
    "methane_in_gas days_since_feeding total_ammonia_nitrogen free_ammonia foam_seen "
    "scum_thickness organic_loading_rate leak_test_method entry_planned",
}


@pytest.mark.parametrize("operation", ASKED)
def test_each_operation_asks_for_its_quantities(operation: str) -> None:
    asked = {check.subject for check in CHECKS.values() if operation in check.asked_in}
    assert set(ASKED[operation].split()) <= asked


def test_the_first_charge_does_not_ask_for_what_comes_after_it() -> None:
    asked = {check.subject for check in CHECKS.values() if "first_charge" in check.asked_in}
    assert not asked & {"first_gas_vented", "first_flame_place", "slurry_ph", "feeding_interval"}


# ---- cautions --------------------------------------------------------------------------------------------------------------------

WITH_AN_ENTRY = [
    "pathogens_human",
    "pathogens_manure",
    "ammonia_feed",
    "acid_feed",
    "floating_feed",
    "grit_feed",
    "animal_disease_import",
    "cyanide_feed",
    "sharp_foreign_matter",
    "bag_puncture_pressure",
    "drum_corrosion",
    "dome_lid_pressure",
    "batch_opening",
    "engine_exhaust",
    "unattended_flame",
    "lamp_heat_and_mantle",
]


@pytest.mark.parametrize("name", WITH_AN_ENTRY)
def test_cautions_of_an_entry_are_shown_only_with_it(name: str) -> None:
    assert CAUTIONS[name].shown_in == ()


@pytest.mark.parametrize("name", ["local_codes", "never_enter"])
def test_local_codes_and_no_entry_stand_beside_every_answer(name: str) -> None:
    assert set(CAUTIONS[name].shown_in) == OPERATIONS


@pytest.mark.parametrize(
    ("operation", "words"),
    [
        ("sizing", ["licensed engineer", "fall without warning and bury"]),
        ("first_charge", ["outdoors and unburnt", "Never hold a flame to the digester", "below 20 kg", "gloves", "tightness tests"]),
        ("maintenance_feed", ["Never enter", "No flame", "gloves", "disinfectant", "Close the lids"]),
        ("gas_forecast", ["Never enter", "outdoors and unburnt", "Never hold a flame to the digester", "touch no switch"]),
        ("batch_rotation", ["Never enter", "outdoors and unburnt", "Take out no slurry while a flame burns", "gloves", "do not follow"]),
        ("gas_use", ["carbon monoxide", "outdoors and unburnt", "flame arrester", "water trap", "hose only", "shut the tap", "gas fitter"]),
        ("digestate", ["Never enter", "does not make slurry safe", "drown", "fence it", "gloves", "wells, streams", "local"]),
        ("feed_mix", ["Never enter", "gloves", "disinfectant", "Close the lids"]),
        ("safety_check", ["do not follow", "Call trained rescue", "blow fresh air in", "touch no switch"]),
    ],
)
def test_operations_show_the_cautions_of_their_work(operation: str, words: list[str]) -> None:
    shown = " ".join(" ".join(c.text.split()) for c in CAUTIONS.values() if operation in c.shown_in)
    assert [word for word in words if word not in shown] == []


# ---- bounds against their publication ---------------------------------------------------------------------------------------------

PUBLISHED_BOUNDS = [
    ("well_distance_least", {"at_least": 10, "unit": "m"}, "creativenergie-siting"),  # farmer training course, part 3: 10 m
    ("well_distance_usual", {"at_least": 15, "unit": "m"}, "well-spacing-answers"),  # practitioners: 15 m considered safe
    ("dwelling_distance_usual", {"at_least": 3, "unit": "m"}, "creativenergie-siting"),  # parts 3 and 4: 3 m
    ("pipe_drop_usual", {"at_most": 0.5, "unit": "kPa"}, "biogas-digest-2"),  # Biogas Digest II, p. 49: 5 mbar in all
    ("pipe_burial", {"at_least": 0.3, "unit": "m"}, "biogas-digest-2"),  # Biogas Digest II, p. 68: 0.30 m
    ("no_flame_at_digester", {"at_least": 5, "unit": "m"}, "weihai-safety-2018"),  # Weihai 2018: 5 m
    ("first_flame_distance", {"at_least": 10, "unit": "m"}, "anzhou-safety-2023"),  # Anzhou 2023: 10 m
    ("methane_in_room_air_danger", {"less_than": 0.5, "unit": "%"}, "osha-1910-146"),  # a tenth of the explosive limit of 5 %
    ("methane_in_room_air_much", {"less_than": 0.25, "unit": "%"}, "osha-1910-146"),  # half of that
    ("hydrogen_sulfide_air_danger", {"at_most": 10, "unit": "[ppm]"}, "hydrogen-sulfide-limits-2017"),  # NIOSH ceiling, 10 min
    ("hydrogen_sulfide_air_short", {"at_most": 5, "unit": "[ppm]"}, "hydrogen-sulfide-limits-2017"),  # ACGIH 2010, 15 min
    ("hydrogen_sulfide_air_day", {"at_most": 1, "unit": "[ppm]"}, "hydrogen-sulfide-limits-2017"),  # ACGIH 2010, a working day
    ("carbon_monoxide_danger", {"at_most": 90, "unit": "[ppm]"}, "who-air-europe-2000"),  # 100 mg/m3, 15 min
    ("carbon_monoxide_half_hour", {"at_most": 50, "unit": "[ppm]"}, "who-air-europe-2000"),  # 60 mg/m3, 30 min
    ("carbon_monoxide_hour", {"at_most": 25, "unit": "[ppm]"}, "who-air-europe-2000"),  # 30 mg/m3, 1 h
    ("carbon_monoxide_eight_hours", {"at_most": 10, "unit": "[ppm]"}, "who-air-europe-2000"),  # 10 mg/m3, 8 h
    ("entry_oxygen", {"between": [19.5, 23.5], "unit": "%"}, "osha-1910-146"),  # 29 CFR 1910.146
    ("entry_ventilated", {"at_least": 2, "unit": "d"}, "weihai-safety-2018"),  # Weihai 2018: 2 days and more
    ("water_test_loss", {"less_than": 2, "unit": "%"}, "werner-1989"),  # Werner et al. 1989, section 7.1, p. 87
    ("gas_test_drop", {"at_most": 3, "unit": "%"}, "tightness-handbook"),  # 0.24 of 8 kPa in 24 h
    ("slurry_total_solids_most", {"at_most": 12, "unit": "%"}, "steady-gas-2009"),  # 6 to 12 %
    ("slurry_total_solids_usual", {"between": [5, 10], "unit": "%"}, "sasse-1988"),  # Sasse 1988: 5 to 10 %
    ("loading_simple", {"at_most": 1.5, "unit": "kg/m3/d"}, "werner-1989"),  # Werner et al. 1989, p. 42
    ("retention_usual", {"at_least": 40, "unit": "d"}, "biogas-digest-2"),  # Biogas Digest II, p. 40: simple plants at least 40 d
    ("retention_below_15", {"at_least": 100, "unit": "d"}, "werner-1989"),  # p. 42: over 100 d in the cold band
    ("carbon_to_nitrogen_least", {"at_least": 15, "unit": "1"}, "wang-2014"),  # ammonia inhibition at 15 (35 °C)
    ("total_ammonia_most", {"at_most": 3, "unit": "g/L"}, "epa-1979-inhibitors"),  # US EPA 1979
    ("free_ammonia_usual", {"at_most": 100, "unit": "mg/L"}, "azura-failures"),
    ("ph_least", {"at_least": 6.5, "unit": "1"}, "yang-2018"),  # 6.5 to 7.5
    ("raw_crops_wait", {"at_least": 90, "unit": "d"}, "virginia-fst-39"),  # 90 d above ground
    ("raw_crops_in_soil_wait", {"at_least": 120, "unit": "d"}, "virginia-fst-39"),  # 120 d in or on the soil
]


@pytest.mark.parametrize(("name", "must", "source"), PUBLISHED_BOUNDS, ids=[row[0] for row in PUBLISHED_BOUNDS])
def test_bound_matches_its_publication(name: str, must: dict[str, Any], source: str) -> None:
    check = CHECKS[name]
    assert check.must.model_dump(mode="json", by_alias=True, exclude_none=True) == must
    assert check.basis == "published"
    assert source in check.source


@pytest.mark.parametrize("subject", ["methane_in_room_air", "hydrogen_sulfide_in_breathed_air", "carbon_monoxide_in_room_air"])
def test_lesser_limits_of_room_air_are_asked_wherever_the_danger_is(subject: str) -> None:
    """Below the limit that stops everything lie limits that act at once; both are asked in the same operations, on the same condition."""
    of = [check for check in CHECKS.values() if check.subject == subject]
    [danger] = [check for check in of if check.severity == "danger"]
    assert any(check.severity == "warning" and check.alarm for check in of)
    assert all((check.asked_in, check.when) == (danger.asked_in, danger.when) for check in of)
    assert not any(check.alarm for check in of if check.severity in {"caution", "notice"})


def test_the_exposure_times_of_carbon_monoxide_are_those_of_the_same_air_in_milligrams() -> None:
    """The guideline is in mg/m3: 28 g/mol at 24.5 L/mol (25 °C, 1 atm, ideal gas) makes 10 mg/m3 some 9 ppm, told as 10."""
    for name, milligrams in (("half_hour", 60), ("hour", 30), ("eight_hours", 10)):
        [(_, bound)] = CHECKS[f"carbon_monoxide_{name}"].must.operators
        assert bound == pytest.approx(milligrams * 24.5 / 28, rel=0.15)


def test_much_hydrogen_sulphide_in_the_gas_is_immediate_danger_thirty_times_thinned() -> None:
    """100 ppm is the NIOSH level of immediate danger to life; the band of 3,000 ppm is recalled."""
    [(_, bound)] = CHECKS["hydrogen_sulfide_gas_much"].must.operators
    assert bound / 30 == 100
    assert CHECKS["hydrogen_sulfide_gas_much"].asked_in == CHECKS["hydrogen_sulfide_gas_usual"].asked_in


def test_the_first_filling_of_a_dome_to_two_thirds_is_not_faulted() -> None:
    bound = compiled("first_charge")["first_fill_whole"]
    assert bound.test(2 / 3)
    assert not bound.test(0.6)


# ---- one invented farm -----------------------------------------------------------------------------------------------------------

INVENTED_FARM = {
    "distance_to_well": 8.0,
    "distance_to_dwelling": 12.0,
    "groundwater_depth": 4.0,
    "structure_kind": "fixed_dome",
    "cured_for": 14.0,
    "water_tightness_test": "passed",
    "gas_tightness_test": "not_done",
    "inlet_covered": False,
    "overflow_guarded": True,
    "first_gas_vented": False,
    "gas_pressure": to_canonical(90, "pressure", "cm[H2O]"),
    "hydrogen_sulfide_in_gas": to_canonical(1200, "share", "[ppm]"),
    "condensate_trap": True,
    "slurry_total_solids": 0.09,
    "feed_contains": ("bedding_straw", "soil"),
    "feeding_interval": 1.0,
    "entry_planned": False,
    "load_carried": 28.0,
}


def findings(facts: dict[str, Any]) -> dict[str, Finding]:
    return {f.compiled.id: f for f in evaluate(compiled("safety_check").values(), facts)}


def test_an_invented_farm_fails_where_an_officer_would_object() -> None:
    found = findings(INVENTED_FARM)
    failed = {name for name, finding in found.items() if finding.verdict is Verdict.failed}
    assert failed == {
        "well_distance_usual",
        "groundwater_depth_masonry",
        "gas_tightness_passed",
        "inlet_covered",
        "first_gas_vented",
        "dome_pressure_tested",
        "household_pressure_scope",
        "hydrogen_sulfide_gas_usual",
        "no_grit",
        "bedding_straw_little",
        "load_light",
        "load_bucket",
        "load_most",
    }
    assert overall(list(found.values())) == "danger"


def test_the_well_at_8_m_is_unknown_and_not_passed_while_excreta_are_not_stated() -> None:
    finding = findings(INVENTED_FARM)["well_distance_least"]
    assert finding.verdict is Verdict.unknown
    assert finding.missing == ("human_excreta_fed",)
    assert findings({**INVENTED_FARM, "human_excreta_fed": True})["well_distance_least"].verdict is Verdict.failed
    assert "well_distance_least" not in findings({**INVENTED_FARM, "human_excreta_fed": False})


def test_conditions_for_entry_are_asked_only_when_somebody_plans_to_enter() -> None:
    assert "entry_oxygen" not in findings(INVENTED_FARM)
    planned = findings({**INVENTED_FARM, "entry_planned": True})
    assert planned["no_entry"].verdict is Verdict.failed
    assert planned["entry_oxygen"].verdict is Verdict.unknown


def test_a_farm_that_states_nothing_passes_nothing() -> None:
    found = findings({})
    assert set(found) == {name for name, check in CHECKS.items() if "safety_check" in check.asked_in and not check.only_if_stated}
    assert {finding.verdict for finding in found.values()} == {Verdict.unknown}
    assert overall(list(found.values())) == "unknown"


def test_a_bag_without_relief_is_danger() -> None:
    found = findings({"structure_kind": "bag", "pressure_relief": False})
    assert found["relief_on_bag"].verdict is Verdict.failed
    assert overall(list(found.values())) == "danger"


@pytest.mark.parametrize(
    ("days", "failed"),
    [
        (1, set()),
        (2, {"feeding_daily"}),
        (5, {"feeding_daily", "feeding_three_days"}),
        (8, {"feeding_daily", "feeding_three_days", "feeding_weekly"}),
        (14, {"feeding_daily", "feeding_three_days", "feeding_weekly", "feeding_fortnight"}),
    ],
)
def test_feeding_gets_worse_in_steps_to_a_fortnight(days: float, failed: set[str]) -> None:
    found = findings({"feeding_interval": days})
    assert {name for name, f in found.items() if name.startswith("feeding_") and f.verdict is Verdict.failed} == failed


@pytest.mark.parametrize(("temperature", "least_days"), [(27, 40), (22, 40), (17, 60), (12, 100)])
def test_retention_asked_for_rises_as_it_gets_colder(temperature: float, least_days: float) -> None:
    def failures(days: float) -> int:
        found = findings({"digester_temperature": temperature, "hydraulic_retention_time": days})
        return sum(name.startswith("retention_") and f.verdict is Verdict.failed for name, f in found.items())

    assert failures(least_days) == 0
    assert failures(least_days - 1) > 0
