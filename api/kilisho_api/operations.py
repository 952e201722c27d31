"""POST /v1/...: one handler for each question. Bytes in, bytes out: the framework never models the body."""

from __future__ import annotations

from typing import Any

from litestar import Request, Response, post
from litestar.handlers import HTTPRouteHandler

from kilisho.questions import Question
from kilisho_api.encoding import encode
from kilisho_api.http_rules import JSON, demand_json, flags, negotiate

FLAGS = ("explain",)
# The framework adds the character set to every text type that goes through it, and would put it last.
_PARAMETERS = {"text/csv": "; charset=utf-8; header=present"}


def handler(question: Question) -> HTTPRouteHandler:
    """The handler of ``question``."""
    offers, headers = offers_of(question), {kind: {"content-type": content_type(kind)} for kind in question.representations}

    @post(f"/v1/{question.name}", status_code=200)
    async def handle(request: Request[Any, Any, Any]) -> Response[bytes]:
        demand_json(request)
        media_type = negotiate(request, offers)
        explain = flags(request, FLAGS).get("explain", False)
        answer = question.ask(await request.body(), explain)
        return Response(represented(question, answer, media_type), media_type=media_type, headers=headers.get(media_type))

    return handle


def offers_of(question: Question) -> tuple[str, ...]:
    """The media types in which ``question`` is answered, JSON first."""
    return (JSON, *question.representations)


def represented(question: Question, answer: Any, media_type: str) -> bytes:
    """``answer`` in one of the media types that ``question`` offers."""
    return encode(answer) if media_type == JSON else question.representations[media_type](answer).encode()


def content_type(media_type: str) -> str:
    """The Content-Type of a representation: texts are UTF-8, and a table has its header (RFC 4180, section 3)."""
    return media_type + _PARAMETERS.get(media_type, "; charset=utf-8" if media_type.startswith("text/") else "")
