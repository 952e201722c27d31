"""The JSON Schema of a pack file: a layer, in which everything that another layer may bring is optional."""

from __future__ import annotations

from typing import Any

from kilisho.rulebook import RulebookData
from kilisho.units import KINDS
from kilisho_api.openapi.walk import Schema

DIALECT = "https://json-schema.org/draft/2020-12/schema"
ABOUT = (
    "One YAML file of a pack. A layer may bring any section, any entry and any member of an entry: what it leaves out comes from the "
    "layers below, and null takes an entry or a member out. A figure is replaced whole. An entry that is new must be complete."
)
# Parts that are replaced whole by a layer, and so must be complete wherever they stand.
WHOLE = {"Property", "_PracticeFigure", "CurvePoint", "Condition", "Collectable", "Dilution", "Geometry", "BuildableSizes"}


def pack_schema() -> Schema:
    """The schema, from the models that read packs."""
    schema = RulebookData.model_json_schema(mode="validation")
    definitions = {name: part if name in WHOLE else _layered(part) for name, part in schema.pop("$defs").items()}
    layer = _layered(schema)
    del layer["title"]
    return {"$schema": DIALECT, "title": "Kilisho pack", **_with_units(layer), "description": ABOUT, "$defs": _with_units(definitions)}


def _layered(part: Schema) -> Schema:
    """Nothing required, and null allowed for every member and entry."""
    if "properties" not in part:
        return part
    members = {name: _nullable(_entries_nullable(member)) for name, member in part["properties"].items()}
    return {key: value for key, value in part.items() if key != "required"} | {"properties": members}


def _entries_nullable(member: Schema) -> Schema:
    patterns = {pattern: _nullable(entry) for pattern, entry in member.get("patternProperties", {}).items()}
    return {**member, "patternProperties": patterns, "additionalProperties": False} if patterns else member


def _nullable(schema: Schema) -> Schema:
    return {"anyOf": [schema, {"type": "null"}]}


def _with_units(value: Any) -> Any:
    """Every figure's unit limited to the codes of its kind."""
    if isinstance(value, list):
        return [_with_units(inner) for inner in value]
    if not isinstance(value, dict):
        return value
    out = {key: _with_units(inner) for key, inner in value.items() if key != "x-units"}
    if "x-units" in value:
        out["properties"] = {**out.get("properties", {}), "unit": {"enum": list(KINDS[value["x-kind"]].units)}}
    return out
