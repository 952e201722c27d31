"""The one place where the service is put together."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import partial
from typing import cast

from litestar import Litestar
from litestar.handlers import HTTPRouteHandler
from litestar.types import ASGIApp

from kilisho import packs
from kilisho.farm import GRAPH
from kilisho.packs import Rulebook
from kilisho.questions import Question, open_questions
from kilisho_api import catalogue, docs, health, home, operations, problem_pages, problems, table_types, tables
from kilisho_api.access_log import with_access_log
from kilisho_api.cors import with_cors
from kilisho_api.deprecation import with_deprecations
from kilisho_api.documents import Document, late_page
from kilisho_api.guard import guarded
from kilisho_api.guide import guide
from kilisho_api.layers import App, Receive, Scope, Send, with_head, with_headers, with_request_id
from kilisho_api.life import Life
from kilisho_api.metrics import Meter
from kilisho_api.paths import with_short_paths
from kilisho_api.reloading import Current, Reloader
from kilisho_api.settings import Settings
from kilisho_api.slow import SlowLane
from kilisho_api.spans import with_spans
from kilisho_api.table_lane import TableLane
from kilisho_api.trace_context import with_trace
from kilisho_api.turns import Turns, in_turn

HEADERS = (
    (b"x-content-type-options", b"nosniff"),
    (b"content-security-policy", b"default-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"),
    (b"referrer-policy", b"no-referrer"),
    (b"permissions-policy", b"camera=(), geolocation=(), microphone=(), payment=(), usb=()"),
    (b"cross-origin-opener-policy", b"same-origin"),
    (b"cross-origin-resource-policy", b"same-origin"),
    (b"cache-control", b"no-store"),
    (b"vary", b"Accept, Accept-Language"),
)


def create_app(settings: Settings, life: Life | None = None) -> Litestar:
    """The service over the base pack and the packs of ``settings``; raises :class:`kilisho.packs.PackError`."""
    rulebook = packs.load(*settings.packs)
    return assemble(settings, rulebook, open_questions(rulebook, settings.limits), life)


def assemble(settings: Settings, rulebook: Rulebook, questions: Mapping[str, Question], life: Life | None = None) -> Litestar:
    """The service over a rulebook and its questions that are loaded already; with ``life``, one that can be told to reload and to leave.

    A shell, with the layers that hold for every answer, around an application that a reload replaces whole.
    """
    life, meter, lane = life or Life(), Meter(), SlowLane(settings.slow_at_once, settings.slow_waiting, settings.longest_answer)
    tables_lane = TableLane(settings.tables_at_once, settings.longest_answer)

    def build(rulebook: Rulebook, questions: Mapping[str, Question]) -> App:
        return cast("App", _framework(settings, _routes(settings, rulebook, questions, (meter, lane, life), tables_lane)))

    current = Current(build(rulebook, questions))
    life.reload = Reloader(current, lambda new: build(new, open_questions(new, settings.limits)), meter.note_reload)
    shell = _framework(settings, [])
    admitted = guarded(in_turn(with_short_paths(current), Turns(settings.most_waiting)), settings.api_keys, settings.rate_limit)
    shell.asgi_handler = cast("ASGIApp", _layered(admitted, meter, settings, life))
    return shell


def _framework(settings: Settings, routes: list[HTTPRouteHandler]) -> Litestar:
    return Litestar(
        route_handlers=routes,
        exception_handlers=problems.handlers(),
        openapi_config=None,
        request_max_body_size=settings.largest_body,
        logging_config=None,
    )


def _routes(
    settings: Settings,
    rulebook: Rulebook,
    questions: Mapping[str, Question],
    shared: tuple[Meter, SlowLane, Life],
    tables_lane: TableLane,
) -> list[HTTPRouteHandler]:
    meter, lane, life = shared
    offered = [tables.NAME] if table_types.offered() else []
    return [
        *(operations.handler(question, lane) for question in questions.values()),
        *(tables.handler(rulebook, settings, tables_lane) for _ in offered),
        *catalogue.handlers(rulebook, GRAPH, settings.catalogue_max_age),
        *health.handlers(health.SelfCheck(questions), meter, rulebook.identity, life),
        *docs.handlers(partial(guide, settings, questions, rulebook.languages, rulebook.identity)),
        late_page("/openapi.json", _contract(settings, rulebook, questions)),
        problem_pages.handler(),
        home.handler([*questions, *offered], catalogue.NAMES, rulebook.identity),
    ]


def _contract(settings: Settings, rulebook: Rulebook, questions: Mapping[str, Question]) -> Callable[[], Document]:
    """The contract is built when first asked for: no question needs it, and starting is faster without."""

    def build() -> Document:
        from kilisho_api.openapi import contract

        return Document(contract(rulebook, questions, settings))

    return build


def _layered(inner: App, meter: Meter, settings: Settings, life: Life) -> App:
    """The framework inside the layers that hold for every answer, errors included."""
    layered = meter.layer(with_deprecations(with_headers(inner, HEADERS)))
    layered = with_cors(layered, settings.cors_origins) if settings.cors_origins else layered
    layered = with_access_log(layered) if settings.access_log else layered
    layered = with_spans(layered, life) if settings.opentelemetry else layered
    layered = with_request_id(with_trace(with_head(life.layer(layered))))

    async def run(scope: Scope, receive: Receive, send: Send) -> None:
        await (layered if scope["type"] == "http" else inner)(scope, receive, send)

    return run
