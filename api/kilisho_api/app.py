"""The one place where the service is put together."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import partial
from typing import cast

from litestar import Litestar
from litestar.handlers import HTTPRouteHandler
from litestar.types import ASGIApp

from kilisho import packs
from kilisho.farm import GRAPH
from kilisho.packs import Rulebook
from kilisho.questions import Question, open_questions
from kilisho_api import catalogue, docs, health, home, operations, problem_pages, problems
from kilisho_api.cors import with_cors
from kilisho_api.deprecation import with_deprecations
from kilisho_api.documents import Document, late_page
from kilisho_api.guide import guide
from kilisho_api.layers import App, Receive, Scope, Send, with_head, with_headers, with_request_id
from kilisho_api.metrics import Meter
from kilisho_api.settings import Settings
from kilisho_api.slow import SlowLane

HEADERS = (
    (b"x-content-type-options", b"nosniff"),
    (b"content-security-policy", b"default-src 'self'"),
    (b"referrer-policy", b"no-referrer"),
    (b"cache-control", b"no-store"),
    (b"vary", b"Accept, Accept-Language"),
)


def create_app(settings: Settings) -> Litestar:
    """The service over the base pack and the packs of ``settings``; raises :class:`kilisho.packs.PackError`."""
    rulebook = packs.load(*settings.packs)
    return assemble(settings, rulebook, open_questions(rulebook, settings.limits))


def assemble(settings: Settings, rulebook: Rulebook, questions: Mapping[str, Question]) -> Litestar:
    """The service over a rulebook and its questions that are loaded already."""
    meter = Meter()
    app = Litestar(
        route_handlers=_routes(settings, rulebook, questions, meter),
        exception_handlers=problems.handlers(),
        openapi_config=None,
        request_max_body_size=settings.largest_body,
        logging_config=None,
    )
    inner = cast("App", app.asgi_handler)
    app.asgi_handler = cast("ASGIApp", _layered(inner, meter, settings.cors_origins))
    return app


def _routes(settings: Settings, rulebook: Rulebook, questions: Mapping[str, Question], meter: Meter) -> list[HTTPRouteHandler]:
    lane = SlowLane(settings.slow_at_once, settings.slow_waiting)
    return [
        *(operations.handler(question, lane) for question in questions.values()),
        *catalogue.handlers(rulebook, GRAPH, settings.catalogue_max_age),
        *health.handlers(health.SelfCheck(questions), meter, rulebook.identity),
        *docs.handlers(partial(guide, settings, questions, rulebook.languages, rulebook.identity)),
        late_page("/openapi.json", _contract(settings, rulebook, questions)),
        problem_pages.handler(),
        home.handler(questions, catalogue.NAMES, rulebook.identity),
    ]


def _contract(settings: Settings, rulebook: Rulebook, questions: Mapping[str, Question]) -> Callable[[], Document]:
    """The contract is built when first asked for: no question needs it, and starting is faster without."""

    def build() -> Document:
        from kilisho_api.openapi import contract

        return Document(contract(rulebook, questions, settings))

    return build


def _layered(inner: App, meter: Meter, origins: Sequence[str]) -> App:
    """The framework inside the layers that hold for every answer, errors included."""
    layered = meter.layer(with_deprecations(with_headers(inner, HEADERS)))
    layered = with_cors(layered, origins) if origins else layered
    layered = with_request_id(with_head(layered))

    async def run(scope: Scope, receive: Receive, send: Send) -> None:
        await (layered if scope["type"] == "http" else inner)(scope, receive, send)

    return run
