"""The operations by which the service itself is watched."""

from __future__ import annotations

from collections.abc import Mapping

from kilisho.messages import DEFAULT, LANGUAGES, told_in
from kilisho_api.http_rules import JSON
from kilisho_api.openapi.catalogue_schemas import IDENTITY, LANGUAGE
from kilisho_api.openapi.responses import OF_EVERY_GET, Part, problems, success, unchanged
from kilisho_api.problem_types import PROBLEM_TYPES

TEXT = {"type": "string"}
EXAMPLE_PROBLEM = "invalid-request"


def paths(identity: Mapping[str, str]) -> Part:
    """The path items of health, readiness, metrics and the pages of problems."""
    status = {"type": "object", "properties": {"status": TEXT}, "required": ["status"]}
    fit = {**status, "properties": {"status": TEXT, "rulebook": IDENTITY}, "required": ["status", "rulebook"]}
    ready = _operation(
        "getReadiness",
        "Is the service fit to be asked?",
        "Recomputes the example of every question, and tells what was found to all who ask within a second; 503 when one fails or has "
        "changed.",
        success("It is.", JSON, fit, {"status": "ready", "rulebook": dict(identity)}),
    )
    ready["responses"] |= problems("not-ready")
    live = _operation("getHealth", "Is the process alive?", "Answers at once.", success("It is.", JSON, status, {"status": "live"}))
    figures = _operation(
        "getMetrics",
        "Figures for monitoring",
        "Requests by address and status, and how long they took, in the text format of Prometheus.",
        success("The figures of all workers.", "text/plain", TEXT),
    )
    pages = {"/health": live, "/ready": ready, "/metrics": figures, "/problems/{slug}": _problem_page()}
    return {path: {"get": operation} for path, operation in pages.items()}


def _problem_page() -> Part:
    texts: Part = dict.fromkeys(("type", "title", "about", "remedy"), TEXT)
    properties = {**texts, "status": {"type": "integer"}, "language": LANGUAGE}
    schema = {"type": "object", "properties": properties, "required": list(properties)}
    shown = told_in(LANGUAGES[DEFAULT], PROBLEM_TYPES[EXAMPLE_PROBLEM].as_dict())
    answer = success("What it means and what to do.", JSON, schema, shown, cached=True)
    answer["content"]["text/html"] = {"schema": TEXT}
    page = _operation("getProblemType", "A kind of problem", "The page that the type of a problem document leads to.", answer)
    slug = {"name": "slug", "in": "path", "required": True, "schema": {**TEXT, "enum": list(PROBLEM_TYPES)}, "example": EXAMPLE_PROBLEM}
    page["parameters"] = [slug, *page["parameters"], {"$ref": "#/components/parameters/IfNoneMatch"}]
    page["responses"] |= {"304": unchanged(), **problems("not-found")}
    return page


def _operation(name: str, summary: str, text: str, answer: Part) -> Part:
    return {
        "operationId": name,
        "tags": ["Service"],
        "summary": summary,
        "description": text,
        "parameters": [{"$ref": "#/components/parameters/RequestId"}],
        "responses": {"200": answer, **problems(*OF_EVERY_GET)},
    }
