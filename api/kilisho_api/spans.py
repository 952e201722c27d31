"""OpenTelemetry, when it is asked for: a server span for each request, named by the HTTP semantic conventions (stable since 1.23).

The libraries are imported here and nowhere else, when the first span layer is made.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from kilisho_api.home import release
from kilisho_api.layers import App, Message, Receive, Scope, Send
from kilisho_api.life import Life
from kilisho_api.log_context import telling
from kilisho_api.metrics import UNKNOWN_ADDRESS, method_of, operation_of

if TYPE_CHECKING:
    from opentelemetry.sdk.trace import TracerProvider
    from opentelemetry.trace import Span

FLUSH_MILLISECONDS = 3_000
_LONGEST_PATH = 256


def with_spans(app: App, life: Life, provider: TracerProvider | None = None) -> App:
    """Record every request of ``app`` as a span that goes on the caller's trace; without ``provider``, one that sends to a collector."""
    from opentelemetry.propagate import extract
    from opentelemetry.trace import SpanKind

    provider = provider or _collected()
    # Spans go out in batches, and a process that is ended by a signal runs no exit hooks.
    life.endings.append(lambda: provider.force_flush(FLUSH_MILLISECONDS))
    tracer = provider.get_tracer("kilisho", release())

    async def run(scope: Scope, receive: Receive, send: Send) -> None:
        carried = extract({name.decode("latin-1"): value.decode("latin-1") for name, value in scope["headers"]})
        asked = _asked(scope)
        # A method that a caller invents may not become a name of spans.
        with tracer.start_as_current_span(asked["http.request.method"], carried, SpanKind.SERVER, attributes=asked) as span:
            place = span.get_span_context()
            with telling(trace_id=f"{place.trace_id:032x}", span_id=f"{place.span_id:016x}"):
                await app(scope, receive, _noting(span, send))
            _name(span, scope, asked["http.request.method"])

    return run


def _collected() -> TracerProvider:
    """Spans to the collector that the ``OTEL_EXPORTER_OTLP_`` variables name, over HTTP."""
    from opentelemetry.exporter.otlp.proto.http.trace_exporter import OTLPSpanExporter
    from opentelemetry.sdk.resources import OTELResourceDetector, Resource
    from opentelemetry.sdk.trace import TracerProvider
    from opentelemetry.sdk.trace.export import BatchSpanProcessor

    ours = Resource({"service.name": "kilisho", "service.version": release()})
    provider = TracerProvider(resource=Resource.create().merge(ours).merge(OTELResourceDetector().detect()))
    provider.add_span_processor(BatchSpanProcessor(OTLPSpanExporter()))
    return provider


def _asked(scope: Scope) -> dict[str, Any]:
    """What is known before the request is taken up. The query is left out: nothing in it is worth a caller's secrets."""
    method = method_of(scope)
    return {
        "http.request.method": "_OTHER" if method == "other" else method,
        "url.scheme": scope.get("scheme", "http"),
        "url.path": scope["path"][:_LONGEST_PATH],
        "network.protocol.version": scope.get("http_version", "1.1"),
    }


def _noting(span: Span, send: Send) -> Send:
    from opentelemetry.trace import StatusCode

    async def sending(message: Message) -> None:
        if message["type"] == "http.response.start":
            status = message["status"]
            span.set_attribute("http.response.status_code", status)
            if status >= 500:
                span.set_attribute("error.type", str(status))
                span.set_status(StatusCode.ERROR)
        await send(message)

    return sending


def _name(span: Span, scope: Scope, method: str) -> None:
    operation = operation_of(scope)
    known = "HTTP" if method == "_OTHER" else method
    if operation == UNKNOWN_ADDRESS:
        span.update_name(known)
    else:
        span.set_attribute("http.route", operation)
        span.update_name(f"{known} {operation}")
