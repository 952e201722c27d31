"""One process of the service: uvicorn's server, which leaves in three steps and reads packs anew when told to.

Leaving after SIGTERM: for ``drain_seconds`` all is answered but ``/ready``, so that a proxy takes the process out; then nobody new is
taken up, while those who knocked before are; then what is open has ``grace_seconds`` to end. SIGINT leaves out the first step.
"""

from __future__ import annotations

import asyncio
import gc
import os
import signal
import socket
import time
from collections.abc import Callable, Coroutine, Iterator, Sequence
from itertools import islice
from types import FrameType
from typing import Any

import uvicorn
from anyio import CapacityLimiter, to_thread

from kilisho_api import logs
from kilisho_api.app import create_app
from kilisho_api.heads import BoundedHead
from kilisho_api.life import Life
from kilisho_api.settings import Settings

# Whoever has connected a moment ago has a request under way; uvicorn would hang up on it unread.
SECONDS_TO_SPEAK = 1.0
TICK = 0.02
# The event loop takes up one connection a round, and a round may answer a request: those who wait to be taken up would wait unseen.
# Not all at once either, since several workers are to share them.
CONNECTIONS_A_ROUND = 4
# Longer than a proxy keeps an idle connection (nginx: 60 s): whoever is to send the next request should be the one who hangs up.
KEEP_ALIVE_SECONDS = 75
# An answer is thousands of objects, nearly none of them in a cycle: at Python's 700 the collector walks each answer several times while
# it grows, which takes some 3 % of the time of a first charge (measured, on a restless machine).
ALLOCATIONS_TO_COLLECT = 20_000
Hear = Callable[["Server", asyncio.AbstractEventLoop], None]


def server_of(settings: Settings, hear: Hear) -> Server:
    """A server over the packs of ``settings``, ready to run; raises :class:`kilisho.packs.PackError`.

    ``hear`` is called once the server listens and arranges for :meth:`Server.reload` to be called.
    """
    logs.set_up(settings.log_level, settings.log_format)
    life = Life()
    app = create_app(settings, life)
    gc.freeze()  # what is loaded stays: the collector need not walk the rulebook again and again while requests wait
    gc.set_threshold(ALLOCATIONS_TO_COLLECT)
    return Server(uvicorn.Config(app, **options(settings)), life, settings.drain_seconds, hear)


def options(settings: Settings) -> dict[str, Any]:
    """How the server is run."""
    return {
        "host": settings.host,
        "port": settings.port,
        "log_config": None,
        "log_level": settings.log_level,
        "access_log": False,
        "server_header": False,
        "proxy_headers": bool(settings.trusted_proxies),
        "forwarded_allow_ips": list(settings.trusted_proxies),
        "http": BoundedHead,
        "lifespan": "off",
        "ws": "none",
        "timeout_keep_alive": KEEP_ALIVE_SECONDS,
        "timeout_graceful_shutdown": settings.grace_seconds,
    }


class Server(uvicorn.Server):
    """uvicorn's server with the steps of leaving and with reloads."""

    def __init__(self, config: uvicorn.Config, life: Life, drain_seconds: float, hear: Hear) -> None:
        super().__init__(config)
        self._life, self._drain_seconds, self._hear = life, drain_seconds, hear
        self._leave_at: float | None = None
        self._one_reload, self._tasks = CapacityLimiter(1), set[asyncio.Task[object]]()
        self._listeners = list[socket.socket]()

    def handle_exit(self, sig: int, frame: FrameType | None) -> None:
        """Begin to leave; a second signal ends the drain."""
        draining = sig == signal.SIGTERM and self._drain_seconds and not self._life.leaving
        self._life.leaving = True
        if draining:
            self._captured_signals.append(sig)
            self._leave_at = time.monotonic() + self._drain_seconds
        else:
            super().handle_exit(sig, frame)

    async def startup(self, sockets: list[socket.socket] | None = None) -> None:
        """Listen, to callers and to orders."""
        await super().startup(sockets)
        self._listeners = [socket.socket(fileno=os.dup(one.fileno())) for server in self.servers for one in server.sockets]
        for listener in self._listeners:
            listener.setblocking(False)
            asyncio.get_running_loop().add_reader(listener, self._take_up, listener)
        self._hear(self, asyncio.get_running_loop())

    async def on_tick(self, counter: int) -> bool:
        """True once it is time to stop listening."""
        if self._leave_at is not None and time.monotonic() >= self._leave_at:
            self.should_exit = True
        return await super().on_tick(counter)

    def reload(self, packs: Sequence[str]) -> None:
        """Put ``packs`` in force as they are now; from the loop, and in turn after any that is under way."""
        self._do(to_thread.run_sync(self._life.reload, packs, limiter=self._one_reload))

    def _take_up(self, listener: socket.socket) -> None:
        for connection in islice(_accepted(listener), CONNECTIONS_A_ROUND):
            self._do(asyncio.get_running_loop().connect_accepted_socket(self._protocol, connection))

    def _do(self, work: Coroutine[object, object, object]) -> None:
        task = asyncio.get_running_loop().create_task(work)
        self._tasks.add(task)
        task.add_done_callback(self._tasks.discard)

    async def shutdown(self, sockets: list[socket.socket] | None = None) -> None:
        """Stop listening without losing anybody who has connected, then let what is open end."""
        self._life.leaving = True
        await self._stop_listening(sockets or [])
        deadline = time.monotonic() + SECONDS_TO_SPEAK
        while self.server_state.connections and time.monotonic() < deadline:
            await asyncio.sleep(TICK)
        await super().shutdown(sockets)
        for end in self._life.endings:
            await to_thread.run_sync(end)

    async def _stop_listening(self, sockets: Sequence[socket.socket]) -> None:
        """The kernel resets connections that wait on a listener when its last copy is closed, so these are taken up before."""
        for server in self.servers:
            server.close()
        for one in sockets:
            one.close()
        await asyncio.sleep(TICK)
        for listener in self._listeners:
            asyncio.get_running_loop().remove_reader(listener)
            waiting = list(_accepted(listener))
            listener.close()
            for connection in waiting:
                await asyncio.get_running_loop().connect_accepted_socket(self._protocol, connection)

    def _protocol(self) -> asyncio.Protocol:
        made: asyncio.Protocol = self.config.http_protocol_class(  # type: ignore[call-arg]
            config=self.config, server_state=self.server_state, app_state=self.lifespan.state
        )
        return made


def _accepted(listener: socket.socket) -> Iterator[socket.socket]:
    """Those who wait to be taken up, each taken up as it is asked for."""
    while True:
        try:
            yield listener.accept()[0]
        except ConnectionAbortedError:  # the peer has gone again
            continue
        except OSError:  # nobody waits; or there is no file left for another, which the event loop's own listener sees to
            return
