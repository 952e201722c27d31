"""Packs are read anew while the service runs: a whole new application is built beside the old one and put in its place at once."""

from __future__ import annotations

import gc
import logging
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from kilisho import packs
from kilisho.packs import PackError, PackFault, Rulebook
from kilisho_api.layers import App, Receive, Scope, Send

_LOG = logging.getLogger("kilisho.packs")
UNCHANGED = "the old rulebook stays in force"
STEADY = "a file that stays as it is while it is read; tell the service again once it is written"


class Current:
    """An ASGI application that stands for another. Every request is answered to its end by the one that took it up."""

    def __init__(self, app: App) -> None:
        self._app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Pass the request on."""
        await self._app(scope, receive, send)

    def replace(self, app: App) -> None:
        """From now on stand for ``app``; one assignment, so from any thread."""
        self._app = app


class Reloader:
    """Puts newly read packs in force, or says why not and leaves the old ones. For one thread at a time."""

    def __init__(self, current: Current, build: Callable[[Rulebook], App], count: Callable[[bool], None]) -> None:
        self._current, self._build, self._count = current, build, count

    def __call__(self, layers: Sequence[str]) -> None:
        """Read ``layers`` over the base pack; a fault of any kind is logged and changes nothing."""
        try:
            rulebook = read_whole(layers)
            app = self._build(rulebook)
        except PackError as error:
            self._refuse(error)
        except Exception:
            _LOG.exception("the packs could not be read anew; %s", UNCHANGED)
            self._count(False)
        else:
            self._current.replace(app)
            _settle()
            _LOG.info("rulebook %s %s (%s) is in force", *rulebook.identity.values())
            self._count(True)

    def _refuse(self, error: PackError) -> None:
        tell(error)
        self._count(False)


def tell(error: PackError) -> None:
    """Log every fault with file and line, and that nothing has changed."""
    for fault in error.faults:
        _LOG.error("pack: %s", fault)
    _LOG.error("the packs have faults; %s", UNCHANGED)


def read_whole(layers: Sequence[str]) -> Rulebook:
    """The rulebook of ``layers``; raises :class:`PackError`, also when a file changed while it was being read."""
    with held_still(layers):
        return packs.load(*layers)


@contextmanager
def held_still(layers: Iterable[str | Path]) -> Iterator[None]:
    """Raise :class:`PackError` at the end when a file of ``layers`` has changed since the beginning.

    The first half of a YAML file is often sound by itself, so a pack that is still being written may read well.
    """
    paths = [Path(layer) for layer in layers]
    before = _state(paths)
    yield
    after = _state(paths)
    changed = sorted(name for name in before.keys() | after.keys() if before.get(name) != after.get(name))
    if changed:
        raise PackError([PackFault(name, 0, "", STEADY) for name in changed])


def _state(layers: Iterable[Path]) -> dict[str, tuple[int, int, int]]:
    return {str(file): _state_of(file) for pack in layers for file in packs.files_of(pack)}


def _state_of(file: Path) -> tuple[int, int, int]:
    with packs.told_of(file):
        stat = file.stat()
    return stat.st_mtime_ns, stat.st_size, stat.st_ino


def _settle() -> None:
    """Give the old rulebook's memory back, then spare the collector the walk over the new one, as after start."""
    gc.unfreeze()
    gc.collect()
    gc.freeze()
