"""Requests counted and timed, as Prometheus reads them."""

from __future__ import annotations

import os
import time

from prometheus_client import CONTENT_TYPE_LATEST, CollectorRegistry, Counter, Gauge, Histogram, generate_latest, multiprocess

from kilisho_api.layers import App, Message, Receive, Scope, Send

__all__ = ("METRICS_TEXT", "SHARED_FOLDER", "Meter", "method_of", "operation_of")

# The framework adds the character set to every text type by itself.
METRICS_TEXT = CONTENT_TYPE_LATEST.removesuffix("; charset=utf-8")
SHARED_FOLDER = "PROMETHEUS_MULTIPROC_DIR"
BUCKETS = (0.0005, 0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30)
UNKNOWN_ADDRESS = "unknown"
METHODS = ("GET", "POST", "HEAD", "OPTIONS")


def operation_of(scope: Scope) -> str:
    """The pattern of the address that was asked, known once the request was taken up; never the address itself."""
    return scope.get("path_template") or UNKNOWN_ADDRESS


def method_of(scope: Scope) -> str:
    """The method; a caller may invent some, and each would be a series of figures for ever."""
    return scope["method"] if scope["method"] in METHODS else "other"


class Meter:
    """Counts requests and times them, by address pattern and status. Several workers share their counts through files."""

    def __init__(self) -> None:
        self._registry = CollectorRegistry()
        labels = ("method", "operation", "status")
        self._requests = Counter("kilisho_requests", "Requests answered.", labels, registry=self._registry)
        self._seconds = Histogram("kilisho_request_seconds", "Time to answer.", ("operation",), buckets=BUCKETS, registry=self._registry)
        self._open = Gauge("kilisho_requests_in_progress", "Requests being answered.", registry=self._registry, multiprocess_mode="livesum")
        self._reloads = Counter("kilisho_rulebook_reloads", "Times that packs were read anew.", ("result",), registry=self._registry)
        self._reloads.labels("in_force"), self._reloads.labels("refused")
        self._series: dict[tuple[str, str, int], tuple[Counter, Histogram]] = {}

    def text(self) -> bytes:
        """All workers' figures in the text format of Prometheus."""
        if SHARED_FOLDER not in os.environ:
            return generate_latest(self._registry)
        shared = CollectorRegistry()
        multiprocess.MultiProcessCollector(shared)  # type: ignore[no-untyped-call]
        return generate_latest(shared)

    def note_reload(self, in_force: bool) -> None:
        """Count a reading of packs: it is in force now, or was refused."""
        self._reloads.labels("in_force" if in_force else "refused").inc()

    def layer(self, app: App) -> App:
        """An ASGI layer that measures ``app``."""

        async def run(scope: Scope, receive: Receive, send: Send) -> None:
            status, begun = 500, time.perf_counter()

            async def sending(message: Message) -> None:
                nonlocal status
                if message["type"] == "http.response.start":
                    status = message["status"]
                await send(message)

            with self._open.track_inprogress():
                try:
                    await app(scope, receive, sending)
                finally:
                    self._note(method_of(scope), operation_of(scope), status, time.perf_counter() - begun)

        return run

    def _note(self, method: str, operation: str, status: int, seconds: float) -> None:
        series = self._series.get((method, operation, status))
        if series is None:
            found = (self._requests.labels(method, operation, str(status)), self._seconds.labels(operation))
            series = self._series.setdefault((method, operation, status), found)
        series[0].inc()
        series[1].observe(seconds)
