"""The OpenAPI document of the service, made from the questions and the rulebook that it serves."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

import orjson

from kilisho.farm import GRAPH
from kilisho.faults import RefusedError
from kilisho.messages import DEFAULT, LANGUAGES, Language
from kilisho.packs import Rulebook
from kilisho.questions import Question
from kilisho.questions.asking import Answer
from kilisho.questions.examples import illustrated
from kilisho_api import table_types
from kilisho_api.catalogue import collections, rulebook_page
from kilisho_api.deprecation import marked
from kilisho_api.encoding import encode
from kilisho_api.http_rules import JSON
from kilisho_api.openapi import catalogue_schemas, literals, manual, responses, service, tables
from kilisho_api.openapi.guarding import guarding
from kilisho_api.openapi.responses import Part
from kilisho_api.openapi.schemas import Components
from kilisho_api.openapi.walk import PLACE
from kilisho_api.settings import Settings
from kilisho_api.tables import NAME as TABLE

OPENAPI = "3.1.1"
LONGEST_SHOWN = 4


def contract(rulebook: Rulebook, questions: Mapping[str, Question], settings: Settings) -> bytes:
    """The document as it is served and committed: indented JSON, the same bytes for the same rulebook."""
    return orjson.dumps(document(rulebook, questions, settings), option=orjson.OPT_INDENT_2 | orjson.OPT_APPEND_NEWLINE)


def document(rulebook: Rulebook, questions: Mapping[str, Question], settings: Settings) -> Part:
    """The document as plain data."""
    components = Components(rulebook.data)
    asked = components.add([question.request for question in questions.values()], "validation", "Asked")
    told = components.add([question.response for question in questions.values()], "serialization", "Told")
    items = catalogue_schemas.add_schemas(components)
    found = collections(rulebook, GRAPH)
    about = rulebook_page(rulebook, {name: len(entries) for name, entries in found.items()})
    paths = {f"/v1/{name}": {"post": _operation(q, asked[q.request], told[q.response])} for name, q in questions.items()}
    if table_types.offered():
        paths[f"/v1/{TABLE}"] = {"post": tables.add(components, rulebook, settings)}
    paths |= catalogue_schemas.paths(items, found, about) | service.paths(rulebook.identity)
    made = {
        "openapi": OPENAPI,
        "info": manual.info(settings),
        "servers": [{"url": "/", "description": "This service."}],
        "security": [],
        "tags": list(manual.TAGS),
        "paths": paths,
        "components": {"schemas": dict(sorted((components.schemas | literals.PROBLEM_SCHEMAS).items())), **responses.components()},
    }
    return responses.referred(guarding(marked(made), settings))


def _operation(question: Question, asked: str, told: str) -> Part:
    parameters = ({"$ref": f"#/components/parameters/{name}"} for name in ("Explain", "RequestId"))
    example = illustrated(question)
    request = {"schema": {"$ref": PLACE + asked}, **({"example": example.request} if example else {})}
    body = {"required": True, "content": {JSON: request}}
    shown = shortened(as_sent(example.answer)) if example else None
    answer = responses.success("The answer. Long lists are cut short in the example.", JSON, {"$ref": PLACE + told}, shown)
    refusals = (*responses.OF_EVERY_POST, *(("took-too-long",) if question.slow else ()))
    for media_type, write in question.representations.items():
        answer["content"][media_type] = {"schema": {"type": "string"}, **_written(write, shown)}
    return {
        "operationId": operation_id(question.name),
        "tags": ["Questions"],
        "summary": question.title,
        "description": question.description,
        "parameters": list(parameters),
        "requestBody": body,
        "responses": {"200": answer, **responses.problems(*refusals)},
    }


def _written(write: Callable[[Any, Language], str], shown: Any) -> Part:
    """The example as another media type; none where there is no example, or it had to leave out what that media type needs."""
    try:
        return {"example": write(shown, LANGUAGES[DEFAULT])} if shown is not None else {}
    except RefusedError:
        return {}


def operation_id(name: str) -> str:
    """askFirstCharge for first-charge."""
    return "ask" + "".join(part.capitalize() for part in name.replace("/", "-").split("-"))


def shortened(value: Any) -> Any:
    """``value`` with no list longer than :data:`LONGEST_SHOWN`."""
    if isinstance(value, dict):
        return {key: shortened(inner) for key, inner in value.items()}
    return [shortened(inner) for inner in value[:LONGEST_SHOWN]] if isinstance(value, list) else value


def as_sent(answer: Answer) -> Any:
    """An answer as JSON has it."""
    return orjson.loads(encode(answer))
