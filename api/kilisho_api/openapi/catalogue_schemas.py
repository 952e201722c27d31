"""Schemas and operations of the catalogue: every collection of the rulebook and its entries."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, get_args

from pydantic import BaseModel

from kilisho import rulebook
from kilisho.messages import DEFAULT, LANGUAGES, told_in
from kilisho.questions.answers import LanguageTold, RulebookIdentity
from kilisho_api.http_rules import JSON
from kilisho_api.openapi.literals import QUANTITY
from kilisho_api.openapi.responses import OF_EVERY_GET, Part, problems, success, unchanged
from kilisho_api.openapi.schemas import Components
from kilisho_api.openapi.walk import PLACE

MODELS: dict[str, type[BaseModel]] = {
    "substrates": rulebook.Substrate,
    "animals": rulebook.Animal,
    "appliances": rulebook.Appliance,
    "structures": rulebook.Structure,
    "fuels": rulebook.Fuel,
    "pipes": rulebook.Pipe,
    "crops": rulebook.Crop,
    "facts": rulebook.Fact,
    "checks": rulebook.Check,
    "cautions": rulebook.Caution,
    "symptoms": rulebook.Symptom,
    "causes": rulebook.Cause,
    "tests": rulebook.FieldTest,
    "sources": rulebook.Source,
}


def _model_of(section: Any) -> type[BaseModel]:
    """The model of a section's entries, from ``dict[Identifier, model]``; figures carry marks beside theirs."""
    model: Any = get_args(section)[1]
    return model if isinstance(model, type) else get_args(model)[0]


PRACTICE_MODELS = tuple(_model_of(field.annotation) for field in rulebook.Practice.model_fields.values())
ABOUT = {
    "substrates": "What can be fed, with its solids, nitrogen, gas and usual dilution.",
    "animals": "What animals (and people) give, and how much of it can be gathered.",
    "appliances": "What burns the gas, and how much of it.",
    "structures": "Kinds of digester, with fill, gas storage, mixing and the sizes that are built.",
    "fuels": "In whose place the gas can come, with heat, stove and carbon dioxide.",
    "pipes": "Sizes of gas pipe with their true bores.",
    "crops": "What digestate can feed, with its nitrogen need and whether it is eaten raw.",
    "facts": "What can be stated about a farm; checks read facts.",
    "checks": "What must hold, when, how bad it is if it does not, why, and what to do.",
    "cautions": "Sentences that stand beside answers whatever the facts are.",
    "symptoms": "What a household sees, smells or remembers when something is wrong; alarms among them call for action at once.",
    "causes": "Troubles of digesters: what speaks for and against each, the test that tells it, the remedy.",
    "tests": "Tests on the farm that tell causes apart, with what each outcome points to and rules out.",
    "sources": "Where figures come from.",
    "practice": (
        "How the work is done: containers, covers of heaps, slurry stores, ways of spreading, curves against temperature, single figures, "
        "how to measure what an answer would be narrower for."
    ),
    "quantities": "Every quantity that the engine knows: its unit, what it is derived from, and where its formula is valid.",
}
SINGULAR = {"practice": "practicePart", "quantities": "quantity"}
IDENTITY = {"$ref": PLACE + "RulebookIdentity"}
LANGUAGE = {"$ref": PLACE + "LanguageTold"}
# What every page of the catalogue tells beside its entries.
BESIDE = {"rulebook": IDENTITY, "language": LANGUAGE}


def add_schemas(components: Components) -> dict[str, Part]:
    """Put the schemas of all collections into ``components``; returns a reference to each collection's item."""
    components.add([RulebookIdentity, LanguageTold], "serialization", "Told")
    names = components.add([*MODELS.values(), *PRACTICE_MODELS], "serialization", "Entry")
    components.schemas["Property"] = _shown(components.schemas["Property"])
    items = {section: _with_id(PLACE + names[model]) for section, model in MODELS.items()}
    entries = {"type": "array", "items": {"anyOf": [_with_id(PLACE + names[model]) for model in PRACTICE_MODELS]}}
    items["practice"] = _object({"id": {"type": "string", "enum": list(rulebook.SECTIONS_OF_PRACTICE)}, "entries": entries})
    items["quantities"] = components.put("Quantity", QUANTITY)
    return items


def paths(items: Mapping[str, Part], found: Mapping[str, Sequence[Any]], about: Part) -> Part:
    """The path items of all collections, with the first entry of each as the example."""
    out: Part = {}
    for name, item in items.items():
        example, identity = found[name][0] if found[name] else None, {key: about[key] for key in ("id", "version", "hash")}
        listing = _object({"items": {"type": "array", "items": item}, "next": {"type": "null"}, **BESIDE})
        out[f"/v1/{name}"] = {"get": _operation(f"list{_capital(name)}", f"All {name}", ABOUT[name], listing)}
        entry = {"allOf": [item, _object(BESIDE)]}
        told = example and told_in(LANGUAGES[DEFAULT], {**example, "rulebook": identity})
        one = _operation(f"get{_capital(_singular(name))}", f"One entry of {name}", ABOUT[name], entry, told)
        one["parameters"].insert(0, _id_parameter(example))
        one["responses"] |= problems("not-found")
        out[f"/v1/{name}/{{id}}"] = {"get": one}
    out["/v1/rulebook"] = {"get": _about(about)}
    return out


def _about(about: Part) -> Part:
    counts = {"type": "object", "additionalProperties": {"type": "integer"}}
    region = {"type": ["string", "null"], "description": "Where a pack's figures hold; null where they are meant for everywhere."}
    schema = {"allOf": [IDENTITY, _object({"title": {"type": "string"}, "region": region, "entries": counts})]}
    text = "Its id, version and hash, and how many entries each collection holds."
    return _operation("getRulebook", "The rulebook that is served", text, schema, about)


def _id_parameter(example: Part | None) -> Part:
    shown = {"example": example["id"]} if example else {}
    return {"name": "id", "in": "path", "required": True, "schema": {"type": "string"}, **shown}


def _operation(name: str, summary: str, text: str, schema: Part, example: Any = None) -> Part:
    answer = success("As the packs state it.", JSON, schema, example, cached=True)
    return {
        "operationId": name,
        "tags": ["Rulebook"],
        "summary": summary,
        "description": text,
        "parameters": [{"$ref": "#/components/parameters/RequestId"}, {"$ref": "#/components/parameters/IfNoneMatch"}],
        "responses": {"200": answer, "304": unchanged(), **problems(*OF_EVERY_GET)},
    }


def _shown(figure: Part) -> Part:
    """A figure as the catalogue shows it: in its author's unit, and with the kind that a pack leaves to the field."""
    kind = {"type": "string", "description": "Kind of quantity, as in the table of units."}
    told = {"description": "A figure with its range, in ``unit``.", "properties": {**figure["properties"], "kind": kind}}
    return {**figure, **told, "required": [*figure["required"], "kind"]}


def _with_id(reference: str) -> Part:
    return {"allOf": [{"$ref": reference}, _object({"id": {"type": "string"}})]}


def _object(properties: Part) -> Part:
    return {"type": "object", "properties": properties, "required": list(properties)}


def _singular(name: str) -> str:
    return SINGULAR.get(name, name.removesuffix("s"))


def _capital(name: str) -> str:
    return name[0].upper() + name[1:]
