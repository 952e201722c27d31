"""Alive, ready and measured: the addresses that whoever runs the service watches."""

from __future__ import annotations

import asyncio
import logging
import time
from collections.abc import Callable, Mapping
from typing import Any

from anyio import CapacityLimiter, to_thread
from litestar import Request, Response, get
from litestar.handlers import HTTPRouteHandler

from kilisho.messages import say
from kilisho.questions import Question
from kilisho.questions.examples import illustrated
from kilisho_api.encoding import encode
from kilisho_api.http_rules import JSON, admit
from kilisho_api.life import Life
from kilisho_api.metrics import METRICS_TEXT, Meter
from kilisho_api.problems import ProblemError

# Probes come every few seconds; whoever asks more often hears what the last one found.
SECONDS_KEPT = 1.0
# A request and the first answer to it; empty where there is none to ask.
_First = tuple[bytes, bytes]
_LOG = logging.getLogger("kilisho.api")


class SelfCheck:
    """Recomputes each question's own example and compares with the first result of this process.

    The example is made to fit the rulebook; a question for which that cannot be done is not checked. Slow questions are asked once in a
    process: probes come every few seconds, and a second of work at each would be a load of its own.
    """

    def __init__(self, questions: Mapping[str, Question]) -> None:
        self._questions, self._first = questions, dict[str, _First]()

    def faults(self) -> list[str]:
        """Names of the questions whose example fails or changes; empty when all is well."""
        return [name for name, question in self._questions.items() if not self._sound(name, question)]

    def _sound(self, name: str, question: Question) -> bool:
        try:
            if name not in self._first:
                self._first[name] = _first(name, question)
                return True
            request, answer = self._first[name]
            return not request or question.slow or encode(question.ask(request)) == answer
        except Exception:
            _LOG.exception("the example of %s fails", name)
            return False


def _first(name: str, question: Question) -> _First:
    example = illustrated(question)
    if example is None:
        _LOG.warning("no example of %s fits the rulebook; it is neither checked nor shown", name)
        return b"", b""
    return encode(example.request), encode(example.answer)


class SharedCheck:
    """One self-check at a time, in a thread of its own: all who ask meanwhile wait for its result, and it is kept for ``SECONDS_KEPT``.

    So strangers who ask all the time neither make the probe wait behind them nor have it turned away.
    """

    def __init__(self, check: SelfCheck) -> None:
        self._check, self._thread = check, CapacityLimiter(1)
        self._task: asyncio.Task[list[str]] | None = None
        self._kept_until = 0.0

    async def faults(self) -> list[str]:
        """As :meth:`SelfCheck.faults`. A caller who leaves ends the check for nobody else."""
        task = self._task
        if task is None or (task.done() and time.monotonic() >= self._kept_until):
            task = self._task = asyncio.create_task(self._work())
        return await asyncio.shield(task)

    async def _work(self) -> list[str]:
        found = await to_thread.run_sync(self._check.faults, limiter=self._thread)
        self._kept_until = time.monotonic() + SECONDS_KEPT
        return found


def handlers(check: SelfCheck, meter: Meter, identity: Mapping[str, str], life: Life) -> list[HTTPRouteHandler]:
    """The handlers of /health, /ready and /metrics."""

    return [
        _fresh("/health", JSON, lambda: encode({"status": "live"})),
        _ready(SharedCheck(check), encode({"status": "ready", "rulebook": dict(identity)}), life),
        _fresh("/metrics", METRICS_TEXT, meter.text),
    ]


def _ready(check: SharedCheck, fit: bytes, life: Life) -> HTTPRouteHandler:
    @get("/ready")
    async def handle(request: Request[Any, Any, Any]) -> Response[bytes]:
        admit(request)
        if life.leaving:  # before the check: whoever sends requests here must hear of it at once
            raise ProblemError("not-ready", say("detail-leaving"))
        if faults := await check.faults():
            raise ProblemError("not-ready", say("detail-examples_fail", names=", ".join(faults)))
        return Response(fit, media_type=JSON)

    return handle


def _fresh(path: str, media_type: str, make: Callable[[], bytes]) -> HTTPRouteHandler:
    offers = (media_type.split(";", maxsplit=1)[0],)

    @get(path, sync_to_thread=False)
    def handle(request: Request[Any, Any, Any]) -> Response[bytes]:
        admit(request, offers)
        return Response(make(), media_type=media_type)

    return handle
