"""Schemas written by hand: what no model of ours describes."""

from __future__ import annotations

from typing import Any

from kilisho_api.openapi.walk import PLACE

_TEXT = {"type": "string"}
_TEXTS = {"type": "array", "items": _TEXT}
ERROR: dict[str, Any] = {
    "type": "object",
    "description": "One fault: where it lies, its code, and what was expected.",
    "properties": {
        "pointer": {**_TEXT, "description": "JSON Pointer (RFC 6901) into the body."},
        "parameter": {**_TEXT, "description": "Name of the query or path parameter, instead of a pointer."},
        "code": {**_TEXT, "description": "Stable; take a code that you do not know as a fault of the place it points at."},
        "detail": {**_TEXT, "description": "What was expected."},
        "nearest": {"type": "array", "items": _TEXT, "description": "Valid names close to the one given."},
    },
    "required": ["code", "detail"],
}
PROBLEM: dict[str, Any] = {
    "type": "object",
    "description": "A problem document (RFC 9457).",
    "properties": {
        "type": {**_TEXT, "format": "uri-reference", "description": "Kind of problem; this service serves its page."},
        "title": {**_TEXT, "description": "The same for every problem of the kind."},
        "status": {"type": "integer", "minimum": 400, "maximum": 599},
        "detail": {**_TEXT, "description": "What is wrong this time."},
        "instance": {**_TEXT, "format": "uri", "description": "urn:uuid: and the request's id."},
        "errors": {"type": "array", "items": {"$ref": PLACE + "ProblemError"}},
    },
    "required": ["type", "title", "status", "detail", "instance"],
}
QUANTITY: dict[str, Any] = {
    "type": "object",
    "description": "A quantity of the engine, and what it is derived from.",
    "properties": {
        "id": _TEXT,
        "kind": {**_TEXT, "description": "Kind of quantity, as in the table of units."},
        "unit": {**_TEXT, "description": "Canonical unit, in which the engine computes."},
        "description": _TEXT,
        "inputs": {**_TEXTS, "description": "Ids of the quantities that its formula needs; none when it is stated or looked up."},
        "source": {**_TEXTS, "description": "Ids under /v1/sources."},
        "validity": {"type": ["string", "null"], "description": "For a fitted formula: what its figures hide and where it holds."},
    },
    "required": ["id", "kind", "unit", "description", "inputs", "source", "validity"],
}
PROBLEM_SCHEMAS = {"Problem": PROBLEM, "ProblemError": ERROR}
