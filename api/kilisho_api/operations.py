"""POST /v1/...: one handler for each question. Bytes in, bytes out: the framework never models the body."""

from __future__ import annotations

from typing import Any

from litestar import Request, Response, post
from litestar.handlers import HTTPRouteHandler

from kilisho.questions import Question
from kilisho_api.encoding import encode
from kilisho_api.http_rules import JSON, admit, demand_json

FLAGS = ("explain",)


def handler(question: Question) -> HTTPRouteHandler:
    """The handler of ``question``."""

    @post(f"/v1/{question.name}", status_code=200)
    async def handle(request: Request[Any, Any, Any]) -> Response[bytes]:
        demand_json(request)
        flags = admit(request, query=FLAGS)
        answer = question.ask(await request.body(), flags.get("explain", False))
        return Response(encode(answer), media_type=JSON)

    return handle
