"""`kilisho serve`: finds out everything that can be wrong before the server starts, then serves until it is told to stop.

uvicorn with uvloop and httptools against granian 2.8, wrk -c16 -t1 on two busy cores: a small operation 237 against 280-386
microseconds of processor time, 99 % within 6-13 against 25-50 ms; first answer 0.9 s on both; 72 MB against 30 + 74 MB resident.
"""

from __future__ import annotations

import dataclasses
import errno
import os
import signal
import socket
import sys
import tempfile
from argparse import Namespace, RawDescriptionHelpFormatter
from asyncio import AbstractEventLoop
from collections.abc import Mapping, Sequence
from contextlib import suppress
from multiprocessing.connection import Connection
from pathlib import Path
from threading import Thread
from typing import TYPE_CHECKING, Any

from kilisho_api import logs
from kilisho_api.pack_copies import PackCopies
from kilisho_api.settings import Settings, SettingsError, read, table, variable

if TYPE_CHECKING:
    from kilisho_api.server import Server

STOPPED, UNUSABLE = 0, 2
RELOAD = getattr(signal, "SIGHUP", None)
OPTIONS = {"host": "address to listen on", "port": "port to listen on", "workers": "processes that answer"}


def add_command(group: Any) -> None:
    """Add `serve` to the commands of `kilisho`."""
    about = "Serve the API. An option wins over the environment."
    listed = "\n".join(f"  {name:26}{meaning} [{default}]" for name, default, meaning in table())
    serve = group.add_parser(
        "serve", help="serve the API", description=about, epilog=f"environment:\n{listed}", formatter_class=RawDescriptionHelpFormatter
    )
    for name, meaning in OPTIONS.items():
        serve.add_argument(f"--{name}", help=meaning)
    serve.add_argument("--packs", nargs="+", metavar="PACK", help="YAML files or folders laid over the base pack, in this order")
    serve.set_defaults(run=run)


def run(chosen: Namespace) -> int:
    """Serve until told to stop; 2 when settings, packs or the address cannot be used (:class:`kilisho.packs.PackError` goes through)."""
    os.environ.update(_stated(chosen))
    try:
        settings = read(os.environ)
        _probe(settings)
    except (SettingsError, OSError) as error:
        return _unusable(str(error))
    try:
        _serve(settings)
    except ModuleNotFoundError as error:
        extra = "otel" if (error.name or "").startswith("opentelemetry") else "api"
        return _unusable(f"{error.name} is not installed; install kilisho with its {extra} extra")
    return STOPPED


def _stated(chosen: Namespace) -> Mapping[str, str]:
    values = {name: getattr(chosen, name) for name in OPTIONS} | {"packs": os.pathsep.join(chosen.packs or ()) or None}
    return {variable(name): value for name, value in values.items() if value is not None}


def _probe(settings: Settings) -> None:
    """Listen for a moment, so that a taken port is told before anything is loaded; raises OSError in words."""
    try:
        family = _places(settings)[0][0]
        socket.create_server((settings.host, settings.port), family=family).close()
    except OSError as error:
        reason = "another program listens there" if error.errno == errno.EADDRINUSE else error.strerror
        raise OSError(f"cannot listen on {settings.host} port {settings.port}: {reason}") from None


def _serve(settings: Settings) -> None:
    logs.set_up(settings.log_level, settings.log_format)
    _ignore_reload()  # until somebody listens to it
    with suppress(KeyboardInterrupt):
        (_serve_alone if settings.workers == 1 else _serve_together)(settings)


def _ignore_reload() -> None:
    """The signal ends a process that says nothing of it, such as a new one; the supervisor has held it back until here."""
    if RELOAD is not None:
        signal.signal(RELOAD, signal.SIG_IGN)
        signal.pthread_sigmask(signal.SIG_UNBLOCK, [RELOAD])


def _serve_alone(settings: Settings) -> None:
    from kilisho_api.server import server_of

    def hear(server: Server, loop: AbstractEventLoop) -> None:
        if RELOAD is not None:
            loop.add_signal_handler(RELOAD, server.reload, settings.packs)

    server_of(settings, hear).run()


def _serve_together(settings: Settings) -> None:
    with tempfile.TemporaryDirectory(prefix="kilisho-") as folder:
        os.environ["PROMETHEUS_MULTIPROC_DIR"] = folder
        from kilisho_api.supervisor import Supervisor

        copies = PackCopies(Path(folder) / "packs", settings.packs)
        Supervisor(settings.workers, work, _bound(settings), copies).run()


def work(packs: Sequence[str], listener: socket.socket, orders: Connection) -> None:
    """What each of several workers does; the pipe brings packs to put in force, and its end means that the supervisor is gone."""
    _ignore_reload()  # orders come by the pipe
    from kilisho_api.server import server_of

    def hear(server: Server, loop: AbstractEventLoop) -> None:
        Thread(target=_pass_on, args=(orders, server, loop), daemon=True).start()

    with suppress(KeyboardInterrupt):
        server_of(dataclasses.replace(read(os.environ), packs=tuple(packs)), hear).run([listener])


def _pass_on(orders: Connection, server: Server, loop: AbstractEventLoop) -> None:
    with suppress(RuntimeError):  # the loop has ended
        try:
            while True:
                loop.call_soon_threadsafe(server.reload, orders.recv())
        except (EOFError, OSError):
            loop.call_soon_threadsafe(server.handle_exit, signal.SIGTERM, None)


def _bound(settings: Settings) -> socket.socket:
    """The address, not listened on before the first worker does: until then callers are refused, not kept waiting."""
    family, kind, protocol, _, address = _places(settings)[0]
    bound = socket.socket(family, kind, protocol)
    bound.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    bound.bind(address)
    return bound


def _places(settings: Settings) -> list[Any]:
    return socket.getaddrinfo(settings.host, settings.port, type=socket.SOCK_STREAM)


def _unusable(message: str) -> int:
    print(message, file=sys.stderr)
    return UNUSABLE
