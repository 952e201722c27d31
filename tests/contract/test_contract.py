"""The requests that other systems already send, as they stand: each is answered, and the answer holds what they rely on."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import jsonschema
import pytest
from tests.rules.conftest import assert_sound, questions, value

HERE = Path(__file__).parent
FIELDS = {
    "sizing": """working_volume total_volume gas_storage_volume hydraulic_retention_time organic_loading_rate biogas_per_day
        limited_by dimensions""",
    "first-charge": """slurry_volume substrate_mass water_volume animal_days stockpile.days_needed stockpile.start_by
        stockpile.collected stockpile.shortfall stockpile.purchases containers labour start_up schedule""",
    "maintenance-feed": """per_feeding.substrate_mass per_feeding.water_volume per_feeding.urine_volume per_feeding.containers
        slurry_per_day hydraulic_retention_time organic_loading_rate biogas_per_day digestate_per_day schedule""",
    "gas-forecast": "series first_burnable_gas_day steady_gas share_of_potential",
    "batch-rotation": "retention gas_curve digesters_needed storage_needed recharge_dates",
    "gas-use": "demand_per_day storage_needed cover_by_hour pipe replaced_fuels",
    "digestate": "digestate_per_day nitrogen phosphorus potassium area_served waiting_time",
    "farm-plan": """sizing.total_volume first_charge.substrate_mass maintenance_feed.per_feeding gas_use.demand_per_day digestate.nitrogen
        gas_forecast.series safety_check.verdict calendar""",
    "feed-mix": "feasible recipe total_solids carbon_to_nitrogen biogas_per_day binding_limits",
    "safety-check": "verdict findings cautions",
    "installations/validate": "verdict aspects.safety expected measured gas_ratio worked_out.organic_loading_rate unanswered",
    "diagnosis": "alarms causes tests gas.expected gas.measured gas.gas_ratio gas.verdict",
}
COMMON = "assumptions findings cautions rulebook.id rulebook.version rulebook.hash"
EVERY = pytest.mark.parametrize("name", sorted(FIELDS))
# The body of a question whose address has two parts is named after the thing.
FILES = {"installations/validate": "installation"}


def body(name: str) -> bytes:
    return (HERE / f"{FILES.get(name, name)}.request.json").read_bytes()


def reach(answer: Any, path: str) -> Any:
    for part in path.split("."):
        assert part in answer, path
        answer = answer[part]
    return answer


def test_there_is_a_request_for_each_question() -> None:
    assert {path.name.removesuffix(".request.json") for path in HERE.glob("*.request.json")} == {FILES.get(name, name) for name in FIELDS}
    assert set(FIELDS) == set(questions())


@EVERY
def test_the_request_is_answered_with_what_others_rely_on(name: str) -> None:
    answer = questions()[name].ask(body(name))
    assert_sound(name, answer)
    for path in (FIELDS[name] + " " + COMMON).split():
        assert reach(answer, path) is not None
    json.dumps(answer, allow_nan=False)


@EVERY
def test_the_answer_fits_its_published_schema(name: str) -> None:
    schema = questions()[name].response.model_json_schema(mode="serialization")
    jsonschema.Draft202012Validator(schema).validate(questions()[name].ask(body(name), explain=True))


@EVERY
def test_the_request_fits_its_published_schema(name: str) -> None:
    schema = questions()[name].request.model_json_schema(mode="validation")
    jsonschema.Draft202012Validator(schema).validate(json.loads(body(name)))


def amounts(answer: Any) -> list[dict[str, Any]]:
    inner = answer.values() if isinstance(answer, dict) else answer if isinstance(answer, list) else ()
    own = [answer] if isinstance(answer, dict) and isinstance(answer.get("value"), int | float) and "low" in answer else []
    return own + [found for one in inner for found in amounts(one)]


@EVERY
def test_every_range_holds_its_value(name: str) -> None:
    found = amounts(questions()[name].ask(body(name)))
    assert found or name == "safety-check"
    for one in found:
        if None not in (one["low"], one.get("high")):
            assert one["low"] <= one["value"] <= one["high"], one
        assert one.get("unit")


@EVERY
def test_a_derivation_comes_only_when_asked_for(name: str) -> None:
    plain = questions()[name].ask(body(name))
    explained = questions()[name].ask(body(name), explain=True)
    assert "derivation" not in plain
    assert {key: told for key, told in explained.items() if key != "derivation"} == plain
    if name != "safety-check":
        assert all(step["formula"] and step["inputs"] for step in explained["derivation"])


def test_the_dome_of_nine_cubic_metres() -> None:
    """Two thirds of 9 m3 are 6 m3 of slurry: 3 m3 of dung and 3 m3 of water; 84 kg a day are 2,352 kg in 28 days."""
    answer = questions()["first-charge"].ask(body("first-charge"))
    told = {name: value(answer, name) for name in ("slurry_volume", "substrate_mass", "water_volume", "stockpile.collected")}
    assert told == {"slurry_volume": 6.0, "substrate_mass": 3000.0, "water_volume": 3.0, "stockpile.collected": 2352.0}
    assert answer["stockpile"]["enough"] is False
    assert [one["name"] for one in answer["stockpile"]["purchases"]] == ["neighbour up the hill"]


def test_a_well_at_eight_metres_and_gas_that_was_not_vented() -> None:
    answer = questions()["safety-check"].ask(body("safety-check"))
    assert (answer["verdict"], answer["stop"]) == ("danger", True)
    failed = {one["subject"] for one in answer["findings"] if one["verdict"] == "fail"}
    assert {"distance_to_well", "first_gas_vented", "gas_tightness_test", "feed_contains"} <= failed


def test_a_sour_dome_with_a_yellow_flame() -> None:
    """pH 6.4 under 84 kg a day on 6 m3 is overfeeding; a yellow flame is an alarm, whatever the cause of the little gas."""
    answer = questions()["diagnosis"].ask(body("diagnosis"))
    assert [one["alarm"] for one in answer["alarms"]] == ["flame_yellow"]
    assert answer["causes"][0]["cause"] == "overfed"
    assert {clue["of"] for clue in answer["causes"][0]["speaks_for"]} >= {"gas_fell_slowly", "slurry_ph", "organic_loading_rate"}
    assert answer["gas"]["verdict"] == "below"
    assert value(answer, "gas.gas_ratio") == pytest.approx(0.9 / value(answer, "gas.expected"), rel=1e-4)
