"""POST /v1/...: one handler for each question. Bytes in, bytes out: the framework never models the body."""

from __future__ import annotations

from functools import partial
from typing import Any

from litestar import Request, Response, post
from litestar.handlers import HTTPRouteHandler

from kilisho.questions import Question
from kilisho.questions.asking import parse
from kilisho.views.paper import SVG
from kilisho.views.sheets import HTML, style_source
from kilisho_api.encoding import encode
from kilisho_api.headers import language_of
from kilisho_api.http_rules import JSON, demand_json, flags, negotiate
from kilisho_api.slow import SlowLane

FLAGS = ("explain",)
# The framework adds the character set to every text type that goes through it, and would put it last.
_PARAMETERS = {"text/csv": "; charset=utf-8; header=present"}
POLICY = "default-src 'none'; style-src {styles}; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"


def handler(question: Question, lane: SlowLane) -> HTTPRouteHandler:
    """The handler of ``question``; what takes long is worked out in ``lane``, once its request is found to be in order."""
    offers, headers = offers_of(question), {kind: headers_of(kind) for kind in question.representations}

    @post(f"/v1/{question.name}", status_code=200)
    async def handle(request: Request[Any, Any, Any]) -> Response[bytes]:
        demand_json(request)
        media_type = negotiate(request, offers)
        explain = flags(request, FLAGS).get("explain", False)
        language = language_of(request, question.languages)
        asked = question.read(parse(await request.body()))
        work = partial(answered, question, asked, explain, media_type, language)
        body = await lane.run(work, request) if question.takes_long(asked) else work()
        return Response(body, media_type=media_type, headers={**headers.get(media_type, {}), "content-language": language})

    return handle


def offers_of(question: Question) -> tuple[str, ...]:
    """The media types in which ``question`` is answered, JSON first."""
    return (JSON, *question.representations)


def answered(question: Question, asked: Any, explain: bool, media_type: str, language: str) -> bytes:
    """The answer to a validated request, in one of the media types and languages that ``question`` offers."""
    if media_type == JSON:
        return encode(question.tell(asked, explain, language))
    return question.write(asked, explain, media_type, language).encode()


def headers_of(media_type: str) -> dict[str, str]:
    """The headers of a representation. What a browser shows as a page may load nothing; a sheet applies its own style and no other."""
    shown = {"content-type": content_type(media_type)}
    styles = {SVG: "'none'", HTML: style_source() if media_type == HTML else ""}
    return {**shown, "content-security-policy": POLICY.format(styles=styles[media_type])} if media_type in styles else shown


def content_type(media_type: str) -> str:
    """The Content-Type of a representation: texts are UTF-8, and a table has its header (RFC 4180, section 3)."""
    return media_type + _PARAMETERS.get(media_type, "; charset=utf-8" if media_type.startswith("text/") else "")
