"""Every refusal and failure as RFC 9457 problem+json. Nothing of the request's content, no path and no trace goes out."""

from __future__ import annotations

import logging
import re
from collections.abc import Mapping, Sequence
from typing import Any

from litestar import Request, Response
from litestar.exceptions import HTTPException
from litestar.types import ExceptionHandlersMap

from kilisho.faults import MalformedError, RefusedError
from kilisho.messages import LANGUAGES, say, told_in
from kilisho_api.encoding import encode
from kilisho_api.headers import AnyRequest, language_of
from kilisho_api.layers import Receive, Scope, Send
from kilisho_api.problem_types import BY_STATUS, PROBLEM_TYPES, ProblemType

PROBLEM_JSON = "application/problem+json"
MOST_ERRORS = 100
_LOG = logging.getLogger("kilisho.api")
_POSITION = re.compile(r"at line (\d+) column (\d+)$")


class ProblemError(Exception):
    """A refusal on its way out: its type by slug, a detail for this occurrence and, where it helps, a list of errors."""

    def __init__(self, slug: str, detail: str, errors: Sequence[Mapping[str, Any]] = (), headers: Mapping[str, str] | None = None) -> None:
        self.kind, self.detail, self.errors, self.headers = PROBLEM_TYPES[slug], detail, errors, dict(headers or {})
        super().__init__(detail)


def handlers() -> ExceptionHandlersMap:
    """One handler for each family of exceptions, for the application's outermost layer."""
    return {
        ProblemError: _of_problem,
        MalformedError: _of_malformed,
        RefusedError: _of_refused,
        HTTPException: _of_framework,
        Exception: _of_failure,
    }


def body_of(kind: ProblemType, detail: str, request_id: str, errors: Sequence[Mapping[str, Any]] = ()) -> dict[str, Any]:
    """The members of a problem document."""
    instance = f"urn:uuid:{request_id}"
    body = {"type": kind.address, "title": kind.title, "status": kind.status, "detail": detail, "instance": instance}
    return {**body, "errors": list(errors)} if errors else body


def reply(request: AnyRequest, problem: ProblemError) -> Response[bytes]:
    """The problem document, in the language that the caller likes best."""
    # Litestar's Scope is closed for typing; the outer layer has put the id there under a name of ours.
    request_id = str(request.scope["kilisho.request_id"])  # type: ignore[typeddict-item]
    told = told_in(LANGUAGES[language_of(request, LANGUAGES)], body_of(problem.kind, problem.detail, request_id, problem.errors))
    language = told.pop("language")["tag"]
    headers = {**problem.headers, "content-language": language}
    return Response(encode(told), status_code=problem.kind.status, media_type=PROBLEM_JSON, headers=headers)


async def refuse(scope: Scope, receive: Receive, send: Send, problem: ProblemError) -> None:
    """Answer with the problem document, from a layer outside the framework."""
    request: AnyRequest = Request(scope, receive, send)  # type: ignore[arg-type]
    await reply(request, problem).to_asgi_response(None, request)(scope, receive, send)  # type: ignore[arg-type]


def _of_problem(request: AnyRequest, error: Exception) -> Response[bytes]:
    assert isinstance(error, ProblemError)
    return reply(request, error)


def _of_malformed(request: AnyRequest, error: Exception) -> Response[bytes]:
    return reply(request, ProblemError("malformed-json", syntax_detail(str(error))))


_SYNTAX = {"duplicate key": "detail-body_repeats_member", "recursion": "detail-body_too_deep"}


def syntax_detail(message: str) -> str:
    """What is wrong and where; the parser's own words may repeat a member name of the caller and are not passed on."""
    what = next((name for mark, name in _SYNTAX.items() if mark in message), "detail-body_not_json")
    place = _POSITION.search(message)
    return say(f"{what}_at", line=place[1], column=place[2]) if place else say(what)


def _of_refused(request: AnyRequest, error: Exception) -> Response[bytes]:
    assert isinstance(error, RefusedError)
    faults = [fault.as_dict() for fault in error.faults[:MOST_ERRORS]]
    count = len(error.faults)
    told = say("detail-faults", count=count)
    detail = say("detail-faults_first", faults=told, most=MOST_ERRORS) if count > MOST_ERRORS else told
    return reply(request, ProblemError("invalid-request", detail, faults))


_DETAILS = {
    404: say("detail-no_address"),
    405: say("detail-use_allowed_method"),
    413: say("detail-body_too_large"),
}


def _of_framework(request: AnyRequest, error: Exception) -> Response[bytes]:
    assert isinstance(error, HTTPException)
    kind = BY_STATUS.get(error.status_code) or (BY_STATUS[400] if error.status_code < 500 else BY_STATUS[500])
    return reply(request, ProblemError(kind.slug, _DETAILS.get(kind.status, kind.about), headers=error.headers))


def _of_failure(request: AnyRequest, error: Exception) -> Response[bytes]:
    _LOG.error("request %s failed", request.scope["kilisho.request_id"], exc_info=error)  # type: ignore[typeddict-item]
    return reply(request, ProblemError("internal-error", say("detail-failed")))
