"""Short words for asking a running server and for looking at its refusals."""

from __future__ import annotations

from typing import Any

import httpx
import orjson

from kilisho.faults import CROSS_FIELD_CODES
from kilisho_api.openapi.manual import CODES

OPERATIONS = (
    "sizing",
    "first-charge",
    "maintenance-feed",
    "feed-mix",
    "gas-forecast",
    "batch-rotation",
    "gas-use",
    "digestate",
    "farm-plan",
    "safety-check",
    "diagnosis",
    "installations/validate",
)
DOCUMENTED_CODES = CODES.keys() | CROSS_FIELD_CODES
JSON_BODY = {"content-type": "application/json"}


def ask(client: httpx.Client, operation: str, body: Any, **query: str) -> httpx.Response:
    """POST ``body`` (bytes as they are, anything else as JSON) to a question."""
    content = body if isinstance(body, bytes) else orjson.dumps(body)
    return client.post(f"/v1/{operation}", content=content, headers=JSON_BODY, params=query)


def problem(answer: httpx.Response, status: int, slug: str) -> dict[str, Any]:
    """The problem document of a refusal, once everything that holds for all of them is confirmed."""
    assert answer.status_code == status, answer.text
    assert answer.headers["content-type"] == "application/problem+json"
    body: dict[str, Any] = answer.json()
    assert body["type"] == f"/problems/{slug}"
    assert body["status"] == status
    assert body["instance"] == f"urn:uuid:{answer.headers['x-request-id']}"
    assert body["title"]
    assert body["detail"]
    assert {error["code"] for error in body.get("errors", ())} <= DOCUMENTED_CODES
    return body


def faults(answer: httpx.Response) -> dict[str, dict[str, Any]]:
    """The faults of a body that was refused with 422, by their place."""
    return {error["pointer"]: error for error in problem(answer, 422, "invalid-request")["errors"]}
