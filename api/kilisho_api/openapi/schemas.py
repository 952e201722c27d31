"""JSON Schemas as pydantic itself makes them: closed for requests, open for answers, with repeated parts named once."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from typing import Any, Literal

from pydantic import BaseModel
from pydantic.json_schema import GenerateJsonSchema, models_json_schema

from kilisho.questions import fields
from kilisho.questions.fields import InUnit
from kilisho.rulebook import SECTIONS_OF_PRACTICE, RulebookData
from kilisho_api.openapi.walk import PLACE, Schema, conditioned, listed, mapped, opened, renamed

Mode = Literal["validation", "serialization"]
QUANTITY_KEYS = ("anyOf", "x-kind", "x-unit")


class _WithoutMadeUpTitles(GenerateJsonSchema):
    """A title that only repeats the member's name makes a contract longer and says nothing."""

    def field_title_should_be_set(self, schema: Any) -> bool:  # noqa: ARG002
        return False


class Components:
    """The named schemas of a contract, and the way in which parts that repeat become names."""

    def __init__(self, data: RulebookData) -> None:
        self.schemas: dict[str, Schema] = {}
        self._ids = _ids(data)
        self._names = {_key(item.json_schema()): _camel(name) for name, item in vars(fields).items() if isinstance(item, InUnit)}

    def add(self, models: Sequence[type[BaseModel]], mode: Mode, suffix: str) -> dict[type[BaseModel], str]:
        """Add ``models`` and all that they use; returns their names. A name that means something else already gets ``suffix``."""
        wanted = [(model, mode) for model in models]
        places, top = models_json_schema(wanted, ref_template=PLACE + "{model}", schema_generator=_WithoutMadeUpTitles)
        found = {name: self._tidy(schema) if mode == "validation" else opened(schema) for name, schema in top["$defs"].items()}
        found = {name: mapped(_untitled(schema), lambda part: conditioned(listed(part))) for name, schema in found.items()}
        names = {name: self._free_name(_readable(name), schema, suffix) for name, schema in found.items()}
        for name, schema in found.items():
            self.schemas[names[name]] = mapped(schema, lambda part: renamed(part, names))
        return {model: names[places[model, mode]["$ref"].removeprefix(PLACE)] for model in models}

    def put(self, name: str, schema: Schema) -> Schema:
        """Add a schema of our own; returns the reference to it."""
        self.schemas[name] = schema
        return {"$ref": PLACE + name}

    def _free_name(self, name: str, schema: Schema, suffix: str) -> str:
        return name if self.schemas.get(name, schema) == schema else name + suffix

    def _tidy(self, schema: Schema) -> Schema:
        tidy: Schema = mapped(schema, self._named)
        return tidy

    def _named(self, schema: Schema) -> Schema:
        """``schema`` with a reference in place of a quantity or of an id of the rulebook."""
        if schema.get("default", ...) is None:
            # Absence is the default. null itself is refused, so it must not be offered.
            schema = {key: value for key, value in schema.items() if key != "default"}
        if "x-ids-of" in schema:
            section = schema["x-ids-of"]
            others = {key: value for key, value in schema.items() if key not in ("x-ids-of", "type", "minLength", "maxLength")}
            return {**self.put(_id_name(section), self._id_schema(section)), **others}
        if "x-kind" not in schema:
            return schema
        quantity = {key: schema[key] for key in QUANTITY_KEYS}
        others = {key: value for key, value in schema.items() if key not in QUANTITY_KEYS}
        return {**self.put(self._quantity_name(quantity), quantity), **others}

    def _quantity_name(self, quantity: Schema) -> str:
        key = _key(quantity)
        if key not in self._names:
            taken = {*self._names.values(), *self.schemas}
            self._names[key] = next(name for name in _numbered(_camel(quantity["x-kind"])) if name not in taken)
        return self._names[key]

    def _id_schema(self, section: str) -> Schema:
        text = f"Id of an entry of the rulebook's {section}."
        return {"type": "string", "description": text, **({"enum": self._ids[section]} if self._ids[section] else {})}


def _untitled(schema: Schema) -> Schema:
    """``schema`` without the name of its class: generators would name two schemas alike by it, and drop one."""
    return {key: value for key, value in schema.items() if key != "title"}


def _readable(name: str) -> str:
    """GasUseGasTold for kilisho__questions__gas_use__shape__GasTold, as pydantic calls one of two classes of the same name."""
    *package, own = name.lstrip("_").split("__")
    return (_camel(package[2]) if len(package) > 2 else "") + own


def _ids(data: RulebookData) -> Mapping[str, list[str]]:
    entries = {name: getattr(data, name) for name in type(data).model_fields}
    entries |= {name: getattr(data.practice, name) for name in SECTIONS_OF_PRACTICE}
    return {section: list(found) for section, found in entries.items() if isinstance(found, Mapping)}


def _id_name(section: str) -> str:
    return _camel(section.removesuffix("s")) + "Id"


def _camel(name: str) -> str:
    return "".join(part[:1].upper() + part[1:].lower() for part in name.split("_") if part)


def _numbered(name: str) -> Iterable[str]:
    yield name
    for count in range(2, 1000):
        yield f"{name}{count}"


def _key(quantity: Schema) -> str:
    return json.dumps({key: quantity[key] for key in QUANTITY_KEYS}, sort_keys=True)
