"""GET /problems/{slug}: what a kind of problem means, as a page for people and as JSON for programs."""

from __future__ import annotations

from html import escape
from typing import Any

from litestar import Request, Response, get
from litestar.handlers import HTTPRouteHandler

from kilisho.messages import LANGUAGES, Language, say, told_in
from kilisho_api.documents import Spoken
from kilisho_api.encoding import encode
from kilisho_api.http_rules import JSON, admit
from kilisho_api.problem_types import PROBLEM_TYPES, ProblemType
from kilisho_api.problems import ProblemError

HTML = "text/html"
OFFERS = (JSON, HTML)
ONE_DAY = 86_400


def handler() -> HTTPRouteHandler:
    """The handler of all problem pages."""
    pages = {slug: _documents(kind) for slug, kind in PROBLEM_TYPES.items()}

    @get("/problems/{slug:str}", sync_to_thread=False)
    def handle(request: Request[Any, Any, Any]) -> Response[Any]:
        wanted = admit(request, OFFERS)
        documents = pages.get(request.path_params["slug"])
        if documents is None:
            raise ProblemError("not-found", say("detail-no_problem_kind"))
        return documents[wanted].answer(request)

    return handle


def _documents(kind: ProblemType) -> dict[str, Spoken]:
    return {
        JSON: Spoken(lambda language: encode(told_in(language, kind.as_dict())), LANGUAGES, JSON, ONE_DAY),
        HTML: Spoken(lambda language: _html(kind, language).encode(), LANGUAGES, HTML, ONE_DAY),
    }


def _html(kind: ProblemType, language: Language) -> str:
    title, about, remedy = (escape(language.say(f"problem-{kind.slug}-{part}")) for part in ("title", "about", "remedy"))
    status, heading = escape(language.say("problem-page-status", status=kind.status)), escape(language.say("problem-page-what_to_do"))
    return (
        f'<!doctype html>\n<html lang="{language.tag}">\n<head><meta charset="utf-8"><meta name="viewport" content="width=device-width">'
        f"<title>{title}</title></head>\n<body>\n<h1>{title}</h1>\n<p>{status}</p>\n<p>{about}</p>\n"
        f"<h2>{heading}</h2>\n<p>{remedy}</p>\n</body>\n</html>\n"
    )
