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
from collections.abc import Callable, Sequence
from types import FrameType
from typing import Any

import uvicorn
from anyio import CapacityLimiter, to_thread

from kilisho_api import logs
from kilisho_api.app import create_app
from kilisho_api.life import Life
from kilisho_api.settings import Settings

# Whoever has connected a moment ago has a request under way; uvicorn would hang up on it unread.
SECONDS_TO_SPEAK = 1.0
TICK = 0.02
# Longer than a proxy keeps an idle connection (nginx: 60 s): whoever is to send the next request should be the one who hangs up.
KEEP_ALIVE_SECONDS = 75
Hear = Callable[["Server", asyncio.AbstractEventLoop], None]


def server_of(settings: Settings, hear: Hear) -> Server:
    """A server over the packs of ``settings``, ready to run; raises :class:`kilisho.packs.PackError`.

    ``hear`` is called once the server listens and arranges for :meth:`Server.reload` to be called.
    """
    logs.set_up(settings.log_level, settings.log_format)
    life = Life()
    app = create_app(settings, life)
    gc.freeze()  # what is loaded stays: the collector need not walk the rulebook again and again while requests wait
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
        self._one_reload, self._reloads = CapacityLimiter(1), set[asyncio.Task[None]]()

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
        self._hear(self, asyncio.get_running_loop())

    async def on_tick(self, counter: int) -> bool:
        """True once it is time to stop listening."""
        if self._leave_at is not None and time.monotonic() >= self._leave_at:
            self.should_exit = True
        return await super().on_tick(counter)

    def reload(self, packs: Sequence[str]) -> None:
        """Put ``packs`` in force as they are now; from the loop, and in turn after any that is under way."""
        task = asyncio.ensure_future(to_thread.run_sync(self._life.reload, packs, limiter=self._one_reload))
        self._reloads.add(task)
        task.add_done_callback(self._reloads.discard)

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
        last = [socket.socket(fileno=os.dup(one.fileno())) for server in self.servers for one in server.sockets]
        for server in self.servers:
            server.close()
        for one in sockets:
            one.close()
        await asyncio.sleep(TICK)
        for copy in last:
            waiting = _accepted(copy)
            copy.close()
            for connection in waiting:
                await asyncio.get_running_loop().connect_accepted_socket(self._protocol, connection)

    def _protocol(self) -> asyncio.Protocol:
        made: asyncio.Protocol = self.config.http_protocol_class(  # type: ignore[call-arg]
            config=self.config, server_state=self.server_state, app_state=self.lifespan.state
        )
        return made


def _accepted(listener: socket.socket) -> list[socket.socket]:
    listener.setblocking(False)
    found = list[socket.socket]()
    while True:
        try:
            found.append(listener.accept()[0])
        except (BlockingIOError, InterruptedError):
            return found
        except OSError:  # the peer has gone again
            continue
