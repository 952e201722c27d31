"""POST /v1/installations/validate-table: a table in, a row out for every row, or a summary.

The body is taken whole before the first byte is answered: a client that sends everything before it reads anything would otherwise wait for
us while we wait for it. The answer then goes out piece by piece.
"""

from __future__ import annotations

import logging
from collections.abc import Callable, Iterator
from contextlib import closing
from dataclasses import dataclass
from functools import partial
from typing import IO, TYPE_CHECKING, Any, TypeVar, cast
from urllib.parse import quote

from anyio import CancelScope, create_task_group, fail_after
from litestar import Request, post
from litestar.handlers import HTTPRouteHandler
from litestar.types import ASGIApp

from kilisho.deadline import TooLongError
from kilisho.faults import RefusedError, TooManyRowsError
from kilisho.messages import say
from kilisho.packs import Rulebook
from kilisho_api.encoding import encode
from kilisho_api.headers import language_of
from kilisho_api.http_rules import JSON, flags
from kilisho_api.layers import Message, Receive, Scope, Send
from kilisho_api.operations import content_type
from kilisho_api.problems import ProblemError
from kilisho_api.settings import Settings
from kilisho_api.slow import gone
from kilisho_api.spool import Spool
from kilisho_api.table_lane import TableLane
from kilisho_api.table_types import type_of, wanted_of

if TYPE_CHECKING:
    from kilisho.fleet.exchange import Told

T = TypeVar("T")
NAME = "installations/validate-table"
UNREAD = b"kilisho-unread-columns"
RULEBOOK = b"kilisho-rulebook"
MOST_UNREAD = 20
_LOG = logging.getLogger("kilisho.api")
_END: Message = {"type": "http.response.body", "body": b"", "more_body": False}


@dataclass(frozen=True)
class Service:
    """What every table goes through: the rulebook in force, the settings, the lane and the spool."""

    rulebook: Rulebook
    settings: Settings
    lane: TableLane
    spool: Spool


def handler(rulebook: Rulebook, settings: Settings, lane: TableLane) -> HTTPRouteHandler:
    """The handler of tables."""
    spool = Spool(settings.table_folder, settings.largest_table, settings.table_patience, settings.table_least_rate, lane.writers)
    service = Service(rulebook, settings, lane, spool)

    @post(f"/v1/{NAME}", status_code=200)
    async def handle(request: Request[Any, Any, Any]) -> ASGIApp:
        sent = type_of(request)
        wanted = wanted_of(request, sent)
        flags(request, ())
        asked = Asked(sent, wanted, language_of(request, rulebook.languages))
        spool.check_length(request)

        async def run(scope: Scope, receive: Receive, send: Send) -> None:
            await Exchange(service, asked, str(scope["kilisho.request_id"]), receive, send).run()

        return cast("ASGIApp", run)

    return handle


@dataclass(frozen=True)
class Asked:
    """What a request says: the media types of the table and of its answer, and the language in which faults of rows are told."""

    sent: str
    wanted: str
    language: str


@dataclass(frozen=True)
class Exchange:
    """One table and its answer."""

    service: Service
    asked: Asked
    request_id: str
    receive: Receive
    send: Send

    async def run(self) -> None:
        """Take the table, work it out and answer it; what is raised before the first byte of the answer becomes a problem."""
        with self.service.lane.place(), await self.service.spool.take(self.receive) as file:
            told = await self._worked(partial(self._begun, file))
            with closing(cast("Any", told.chunks)):
                first = await self._first(told)
                await self.send(self._start(told))
                await self._stream(first, told)

    def _begun(self, file: IO[bytes]) -> Told:
        """The answer under way. Arrow is imported here, in the thread: no start and no other answer waits for it."""
        from kilisho.fleet.exchange import FORMATS, SummaryWriter, Terms, told

        writer = SummaryWriter(encode) if self.asked.wanted == JSON else FORMATS[self.asked.wanted].writer(encode)
        rulebook = self.service.rulebook
        terms = Terms(rulebook, self.service.settings.longest_table, encode, rulebook.languages[self.asked.language])
        return told(file, FORMATS[self.asked.sent].read, writer, terms)

    async def _worked(self, work: Callable[[], T]) -> T:
        """What ``work`` gives in a thread; what is wrong with the table is raised as a problem."""
        try:
            return await self.service.lane.run(work)
        except TooManyRowsError:
            raise ProblemError("too-large", say("detail-table_too_long", most=self.service.settings.longest_table)) from None
        except TooLongError:
            raise ProblemError("took-too-long", say("detail-table_took_too_long")) from None

    async def _first(self, told: Told) -> bytes:
        """The first bytes of the answer. A summary has none before all rows are counted; a caller who leaves meanwhile ends that."""
        chunk = b""
        while not chunk:
            if await gone(self.receive):
                raise ProblemError("bad-request", say("detail-caller_left"))
            chunk = await self._next(told.chunks) or b""
        return chunk

    async def _next(self, chunks: Iterator[bytes]) -> bytes | None:
        return await self._worked(lambda: next(chunks, None))

    def _start(self, told: Told) -> Message:
        identity = self.service.rulebook.identity
        headers = [
            (b"content-type", content_type(self.asked.wanted).encode()),
            (b"content-language", self.asked.language.encode()),
            (RULEBOOK, "/".join(quote(identity[part]) for part in ("id", "version", "hash")).encode()),
        ]
        if told.unread:
            headers.append((UNREAD, ", ".join(quote(name) for name in list(told.unread)[:MOST_UNREAD]).encode()))
        return {"type": "http.response.start", "status": 200, "headers": headers}

    async def _stream(self, first: bytes, told: Told) -> None:
        """Send the answer. One that cannot be finished ends without its last chunk, so that no client takes it for whole."""
        async with create_task_group() as tasks:
            tasks.start_soon(_cancel_when_gone, self.receive, tasks.cancel_scope)
            try:
                await self._send_all(first, told.chunks)
            except Exception as error:  # the answer has begun: no problem document can say it any more
                # Whoever sent the table is at fault for what is refused; all else is ours.
                ours = not isinstance(error, ProblemError | RefusedError | TimeoutError)
                _LOG.error(
                    "request %s: its table was broken off: %s", self.request_id, error or "nobody read", exc_info=error if ours else None
                )
            tasks.cancel_scope.cancel()

    async def _send_all(self, first: bytes, chunks: Iterator[bytes]) -> None:
        chunk: bytes | None = first
        while chunk is not None:
            if chunk:
                with fail_after(self.service.settings.table_patience):
                    await self.send({"type": "http.response.body", "body": chunk, "more_body": True})
            chunk = await self._next(chunks)
        await self.send(_END)


async def _cancel_when_gone(receive: Receive, scope: CancelScope) -> None:
    while (await receive())["type"] != "http.disconnect":
        pass
    scope.cancel()
