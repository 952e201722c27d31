"""What the contract run adds to schemathesis: a check of refusals of valid data, and a smaller choice of facts and units."""

from __future__ import annotations

import itertools
import json
from typing import Any

import schemathesis
from hypothesis import strategies as st
from schemathesis import Case, CheckContext, HookContext, Response

from kilisho.faults import CROSS_FIELD_CODES
from kilisho_api.openapi.manual import CODES
from kilisho_api.openapi.tables import EXAMPLES
from kilisho_api.table_types import TABLES
from kilisho_api.tables import NAME

TABLE = f"/v1/{NAME}"
# A schema of text or bytes says nothing about the table in it.
OF_FILES = {"table_unreadable", "no_column", "column_twice", "column_type", "unknown_unit"}
_LINES = st.sampled_from([line for text in EXAMPLES.values() for line in text.splitlines()] + ["", "{}", '"', "\x00", "[1]"])
_FILES = st.lists(_LINES | st.text(max_size=8), max_size=6).map("\n".join)


def _as_bytes(_context: Any, value: Any) -> bytes:
    return value if isinstance(value, bytes) else str(value).encode("utf-8", "replace")


for _kind in TABLES:
    schemathesis.openapi.media_type(_kind, _FILES.map(str.encode) | st.binary(max_size=64))
    schemathesis.serializer(_kind)(_as_bytes)


@schemathesis.check
def valid_data_is_refused_only_across_fields(_context: CheckContext, response: Response, case: Case) -> None:
    """A body that fits its schema is refused for nothing that the schema could have said."""
    if case.meta is None or not case.meta.generation.mode.is_positive or response.status_code != 422:
        return
    codes = {error["code"] for error in response.json()["errors"]}
    allowed = CROSS_FIELD_CODES | (OF_FILES if case.path == TABLE else set())
    assert codes <= allowed, f"codes that the schema should have ruled out: {sorted(codes - allowed)}"


@schemathesis.check
def a_refusal_points_into_the_body_that_was_sent(_context: CheckContext, response: Response, case: Case) -> None:
    """Every pointer leads to a member that was sent, or to one that is missing from an object that was."""
    if response.status_code != 422 or not isinstance(case.body, dict | list):
        return
    sent = json.loads(response.request.body or b"null")
    for error in response.json()["errors"]:
        assert error["code"] in CODES or error["code"] in CROSS_FIELD_CODES, f"a code that the manual does not explain: {error['code']}"
        if "pointer" in error:
            _follow(sent, error["pointer"])


def _follow(document: Any, pointer: str) -> None:
    parts = [part.replace("~1", "/").replace("~0", "~") for part in pointer.split("/")[1:]]
    for depth, part in enumerate(parts):
        last = depth == len(parts) - 1
        if isinstance(document, list):
            assert part.isdigit(), pointer
            assert int(part) < len(document), pointer
            document = document[int(part)]
        else:
            assert isinstance(document, dict), pointer
            assert part in document or last, pointer
            document = document.get(part)


_turns = itertools.count()


@schemathesis.hook
def before_call(_context: HookContext, case: Case, _kwargs: dict[str, Any]) -> None:
    """Ask for each documented representation of an answer in turn; without a word, only the first would ever be seen."""
    offered = list(case.operation.definition.raw.get("responses", {}).get("200", {}).get("content", ()))
    if len(offered) > 1 and "Accept" not in case.headers:
        case.headers["Accept"] = offered[next(_turns) % len(offered)]


@schemathesis.hook
def before_load_schema(_context: HookContext, raw_schema: dict[str, Any]) -> None:
    """Keep one fact of each shape and two ways to state a quantity, or each combination would be tried again and again.

    Every unit of every quantity is tried at its bounds by test_quantity_schemas.py, without a server.
    """
    for content in raw_schema["paths"].get(TABLE, {"post": {"requestBody": {"content": {}}}})["post"]["requestBody"]["content"].values():
        # Bodies of files are bytes here; test_tables_over_http.py asks what the contract shows.
        content.pop("example", None)
    schemas = raw_schema["components"]["schemas"]
    for name, schema in schemas.items():
        if name.endswith("Facts"):
            schema["properties"] = _one_of_each_shape(schema["properties"], schemas)
        if "x-kind" in schema:
            schema["anyOf"] = [schema["anyOf"][0], schema["anyOf"][-1]]


def _one_of_each_shape(properties: dict[str, Any], schemas: dict[str, Any]) -> dict[str, Any]:
    kept: dict[str, tuple[str, Any]] = {}
    for member, schema in properties.items():
        target = schemas.get(schema.get("$ref", "").rsplit("/", 1)[-1], schema)
        shape = target.get("x-kind") or f"{target.get('type')} {'enum' in target} {'const' in target}"
        kept.setdefault(shape, (member, schema))
    return dict(kept.values())
