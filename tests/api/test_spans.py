"""OpenTelemetry: off unless asked for; a server span for each request by the HTTP semantic conventions."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Iterator, Mapping
from http.server import BaseHTTPRequestHandler, HTTPServer
from pathlib import Path
from threading import Thread

import httpx
import pytest
from litestar.testing import TestClient
from opentelemetry.proto.collector.trace.v1.trace_service_pb2 import ExportTraceServiceRequest
from opentelemetry.sdk.trace import ReadableSpan, TracerProvider
from opentelemetry.sdk.trace.export import SimpleSpanProcessor
from opentelemetry.sdk.trace.export.in_memory_span_exporter import InMemorySpanExporter
from opentelemetry.trace import SpanKind, StatusCode
from tests.api.running import serving

from kilisho.packs import Rulebook
from kilisho.questions import Question
from kilisho_api import app, spans
from kilisho_api.log_context import told
from kilisho_api.settings import Settings

TRACE, SPAN = "4bf92f3577b34da6a3ce929d0e0e4736", "00f067aa0ba902b7"
Spans = tuple[TestClient, InMemorySpanExporter]


@pytest.fixture
def traced(monkeypatch: pytest.MonkeyPatch, rulebook: Rulebook, questions: Mapping[str, Question]) -> Iterator[Spans]:
    """A service with spans on, and where they end."""
    kept, provider = InMemorySpanExporter(), TracerProvider()
    provider.add_span_processor(SimpleSpanProcessor(kept))
    monkeypatch.setattr(spans, "_collected", lambda: provider)
    with TestClient(app.assemble(Settings(opentelemetry=True), rulebook, questions)) as client:
        yield client, kept


def only(kept: InMemorySpanExporter) -> ReadableSpan:
    [span] = kept.get_finished_spans()
    return span


def test_a_request_is_a_span_of_the_callers_trace(traced: Spans) -> None:
    client, kept = traced
    client.get("/v1/substrates/cattle_dung?no=1", headers={"traceparent": f"00-{TRACE}-{SPAN}-01"})
    span = only(kept)
    assert (span.name, span.kind) == ("GET /v1/substrates/{id}", SpanKind.SERVER)
    assert span.context is not None
    assert span.parent is not None
    assert (f"{span.context.trace_id:032x}", f"{span.parent.span_id:016x}") == (TRACE, SPAN)
    assert dict(span.attributes or {}) == {
        "http.request.method": "GET",
        "http.route": "/v1/substrates/{id}",
        "http.response.status_code": 422,
        "url.scheme": "http",
        "url.path": "/v1/substrates/cattle_dung",
        "network.protocol.version": "1.1",
    }
    assert span.status.status_code is StatusCode.UNSET  # a refusal is the caller's fault, not the service's


def test_a_failure_is_an_error(traced: Spans, monkeypatch: pytest.MonkeyPatch) -> None:
    client, kept = traced
    monkeypatch.setattr("kilisho_api.health.encode", lambda _: 1 / 0)
    client.get("/health")
    span = only(kept)
    assert span.status.status_code is StatusCode.ERROR
    assert (span.attributes or {})["error.type"] == "500"


def test_what_a_caller_makes_up_is_no_name_of_a_span(traced: Spans) -> None:
    client, kept = traced
    client.get("/made/up")
    client.request("BREW", "/made/up")
    first, second = kept.get_finished_spans()
    assert (first.name, second.name) == ("GET", "HTTP")
    assert (second.attributes or {})["http.request.method"] == "_OTHER"
    assert "http.route" not in (first.attributes or {})


def test_the_log_names_the_span(traced: Spans, monkeypatch: pytest.MonkeyPatch) -> None:
    client, kept = traced
    seen: list[Mapping[str, str]] = []
    monkeypatch.setattr("kilisho_api.health.encode", lambda _: seen.append(told()) or b"{}")
    client.get("/health")
    context = only(kept).context
    assert context is not None
    assert (seen[0]["trace_id"], seen[0]["span_id"]) == (f"{context.trace_id:032x}", f"{context.span_id:016x}")
    assert seen[0]["request_id"]


def test_nothing_of_it_is_loaded_unless_it_is_on() -> None:
    """The framework looks up a few names by itself where the libraries are installed; neither SDK nor exporter is among them."""
    program = (
        "import sys; from kilisho_api.app import create_app; from kilisho_api.settings import Settings; create_app(Settings());"
        "print([name for name in sys.modules if name.startswith(('opentelemetry.sdk', 'opentelemetry.trace', 'opentelemetry.exporter'))])"
    )
    assert subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True).stdout == "[]\n"


class _Collector(BaseHTTPRequestHandler):
    """As much of a collector as takes spans over HTTP."""

    def do_POST(self) -> None:
        body = self.rfile.read(int(self.headers["content-length"]))
        self.server.taken.append((self.path, self.headers.get("content-encoding"), body))  # type: ignore[attr-defined]
        self.send_response(200)
        self.end_headers()

    def log_message(self, *_: object) -> None:
        """Say nothing."""


def test_spans_reach_a_collector_before_the_process_ends(tmp_path: Path) -> None:
    collector = HTTPServer(("127.0.0.1", 0), _Collector)
    taken = collector.taken = []  # type: ignore[attr-defined]
    Thread(target=collector.serve_forever, daemon=True).start()
    place = {"OTEL_EXPORTER_OTLP_ENDPOINT": f"http://127.0.0.1:{collector.server_port}", "OTEL_BSP_SCHEDULE_DELAY": "600000"}
    named = {"OTEL_RESOURCE_ATTRIBUTES": "deployment.environment.name=test", "OTEL_SERVICE_NAME": "dung"}
    with serving(tmp_path / "log", KILISHO_OPENTELEMETRY="on", **place, **named) as server:
        httpx.get(f"{server.url}/v1/substrates", timeout=60)
    collector.shutdown()
    collector.server_close()
    sent = [ExportTraceServiceRequest.FromString(body) for path, _, body in taken if path == "/v1/traces"]
    resources = [resource for one in sent for resource in one.resource_spans]
    names = [span.name for resource in resources for scope in resource.scope_spans for span in scope.spans]
    assert "GET /v1/substrates" in names
    described = {item.key: item.value.string_value for item in resources[0].resource.attributes}
    assert described["service.name"] == "dung"
    assert described["deployment.environment.name"] == "test"
    assert "Traceback" not in (tmp_path / "log").read_text()
