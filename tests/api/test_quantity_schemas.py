"""What the contract says of a quantity is exactly what the engine takes: every unit of every quantity, at its bounds."""

from __future__ import annotations

import json
import math
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Annotated, Any

import pytest
from jsonschema import Draft202012Validator
from pydantic import TypeAdapter, ValidationError

from kilisho.packs import Rulebook
from kilisho.questions.fields import InUnit
from kilisho.units import KINDS

DOCUMENT = Path(__file__).resolve().parents[2] / "openapi" / "openapi.json"
SCHEMAS: Mapping[str, Any] = json.loads(DOCUMENT.read_bytes())["components"]["schemas"]
QUANTITIES = {name: schema for name, schema in SCHEMAS.items() if "x-kind" in schema}


def _field(schema: Mapping[str, Any]) -> TypeAdapter[float]:
    """The engine's own reader of the quantity that ``schema`` describes."""
    bare, stated = schema["anyOf"][0], schema["anyOf"][1]
    [key] = set(stated["properties"]) - {"value"}
    least = bare["minimum"]
    return TypeAdapter(Annotated[float, InUnit(schema["x-kind"], schema["x-unit"], least, bare["maximum"], key=key)])


def _around(window: Mapping[str, Any]) -> Iterator[float]:
    least, most = window.get("minimum", window.get("exclusiveMinimum")), window["maximum"]
    assert least is not None
    yield from (least, most, (least + most) / 2)
    yield from (math.nextafter(least, -math.inf), math.nextafter(least, math.inf))
    yield from (math.nextafter(most, -math.inf), math.nextafter(most, math.inf))


@pytest.mark.parametrize("name", QUANTITIES)
def test_schema_and_engine_agree_at_the_bounds_of_every_unit(name: str) -> None:
    schema = QUANTITIES[name]
    validator, field, tried = Draft202012Validator(schema), _field(schema), 0
    assert field.json_schema() == schema
    for branch in schema["anyOf"]:
        unit = next((part["const"] for part in branch.get("properties", {}).values() if "const" in part), None)
        key = next((member for member in branch.get("properties", {}) if member != "value"), None)
        for number in _around(branch["properties"]["value"] if key else branch):
            document = {"value": number, key: unit} if key else number
            assert validator.is_valid(document) == _accepted(field, document), document
            tried += 1
    assert tried == 7 * (1 + len(KINDS[schema["x-kind"]].units))


WRONG_SHAPES = (
    *(None, True, "1", [], {}),
    *({"value": 1}, {"value": True, "unit": "m3"}, {"value": 1, "unit": "m3", "x": 1}, {"value": 1, "unit": 3}),
)


@pytest.mark.parametrize("document", WRONG_SHAPES)
def test_schema_and_engine_refuse_the_same_shapes(document: Any) -> None:
    schema = QUANTITIES["TotalVolume"]
    assert not Draft202012Validator(schema).is_valid(document)
    assert not _accepted(_field(schema), document)


def test_every_fact_with_a_dimension_has_a_quantity_of_its_kind(rulebook: Rulebook) -> None:
    for name, fact in rulebook.data.facts.items():
        if fact.kind in KINDS:
            reference = SCHEMAS["StatedFacts"]["properties"][name]["$ref"].rsplit("/", 1)[1]
            assert QUANTITIES[reference]["x-kind"] == fact.kind, name


def _accepted(field: TypeAdapter[float], document: Any) -> bool:
    try:
        field.validate_python(document)
    except ValidationError:
        return False
    return True
