"""GET /problems/{slug}: what a kind of problem means, as a page for people and as JSON for programs."""

from __future__ import annotations

from html import escape
from typing import Any

from litestar import Request, Response, get
from litestar.handlers import HTTPRouteHandler

from kilisho_api.documents import Document
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
            raise ProblemError("not-found", "No kind of problem has this name.")
        return documents[wanted].answer(request)

    return handle


def _documents(kind: ProblemType) -> dict[str, Document]:
    return {
        JSON: Document(encode(kind.as_dict()), max_age=ONE_DAY),
        HTML: Document(_html(kind).encode(), HTML, ONE_DAY),
    }


def _html(kind: ProblemType) -> str:
    title, about, remedy = escape(kind.title), escape(kind.about), escape(kind.remedy)
    return (
        '<!doctype html>\n<html lang="en">\n<head><meta charset="utf-8"><meta name="viewport" content="width=device-width">'
        f"<title>{title}</title></head>\n<body>\n<h1>{title}</h1>\n<p>Status {kind.status}</p>\n<p>{about}</p>\n"
        f"<h2>What to do</h2>\n<p>{remedy}</p>\n</body>\n</html>\n"
    )
