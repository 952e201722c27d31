"""`kilisho serve`: finds out everything that can be wrong before the server starts, then serves until it is told to stop.

uvicorn with uvloop and httptools against granian 2.8, wrk -c16 -t1 on two busy cores: a small operation 237 against 280-386
microseconds of processor time, 99 % within 6-13 against 25-50 ms; first answer 0.9 s on both; 72 MB against 30 + 74 MB resident.
"""

from __future__ import annotations

import errno
import gc
import logging
import os
import socket
import sys
import tempfile
from argparse import Namespace, RawDescriptionHelpFormatter
from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

from kilisho import packs
from kilisho_api.escaping import EscapingFormatter
from kilisho_api.settings import Settings, SettingsError, read, table, variable

if TYPE_CHECKING:
    from litestar import Litestar

STOPPED, UNUSABLE = 0, 2
GRACE_SECONDS = 10
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
        return _unusable(f"{error.name} is not installed; install kilisho with its api extra")
    return STOPPED


def application() -> Litestar:
    """The service as the environment describes it: what each of several workers runs, and any other ASGI server may."""
    from kilisho_api.app import create_app

    settings = read(os.environ)
    handler = logging.StreamHandler()
    handler.setFormatter(EscapingFormatter("%(asctime)s %(levelname)s %(name)s: %(message)s"))
    logging.basicConfig(level=settings.log_level.upper(), handlers=[handler])
    app = create_app(settings)
    gc.freeze()  # what is loaded stays: the collector need not walk the rulebook again and again while requests wait
    return app


def _stated(chosen: Namespace) -> Mapping[str, str]:
    values = {name: getattr(chosen, name) for name in OPTIONS} | {"packs": os.pathsep.join(chosen.packs or ()) or None}
    return {variable(name): value for name, value in values.items() if value is not None}


def _probe(settings: Settings) -> None:
    """Listen for a moment, so that a taken port is told before anything is loaded; raises OSError in words."""
    try:
        family = socket.getaddrinfo(settings.host, settings.port, type=socket.SOCK_STREAM)[0][0]
        socket.create_server((settings.host, settings.port), family=family).close()
    except OSError as error:
        reason = "another program listens there" if error.errno == errno.EADDRINUSE else error.strerror
        raise OSError(f"cannot listen on {settings.host} port {settings.port}: {reason}") from None


def _serve(settings: Settings) -> None:
    import uvicorn

    if settings.workers == 1:
        uvicorn.run(application(), **_server_options(settings))
        return
    packs.load(*settings.packs)  # so that broken packs are told once, here, and not by every worker
    with tempfile.TemporaryDirectory(prefix="kilisho-metrics-") as shared:
        os.environ["PROMETHEUS_MULTIPROC_DIR"] = shared
        uvicorn.run("kilisho_api.serving:application", factory=True, workers=settings.workers, **_server_options(settings))


def _server_options(settings: Settings) -> dict[str, Any]:
    return {
        "host": settings.host,
        "port": settings.port,
        "log_level": settings.log_level,
        "access_log": False,
        "server_header": False,
        "proxy_headers": bool(settings.trusted_proxies),
        "forwarded_allow_ips": list(settings.trusted_proxies),
        "lifespan": "off",
        "ws": "none",
        "timeout_graceful_shutdown": GRACE_SECONDS,
    }


def _unusable(message: str) -> int:
    print(message, file=sys.stderr)
    return UNUSABLE
