"""Several workers on one address: started, started anew when one dies, told to read packs anew, and stopped together.

uvicorn's own supervisor looks after its workers twice a second, replaces all of them to read packs anew, one after the other, and
keeps listening while they leave, so that connections which nobody takes up any more are accepted and then reset.
"""

from __future__ import annotations

import logging
import multiprocessing
import os
import signal
import socket
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from multiprocessing.connection import Connection, wait
from multiprocessing.process import BaseProcess

from prometheus_client.multiprocess import mark_process_dead

from kilisho.packs import PackError
from kilisho_api.pack_copies import PackCopies
from kilisho_api.reloading import UNCHANGED, tell

_LOG = logging.getLogger("kilisho.workers")
_SPAWN = multiprocessing.get_context("spawn")
LEAVE = (signal.SIGTERM, signal.SIGINT)
RELOAD = getattr(signal, "SIGHUP", None)
# A worker that cannot even start is not started again and again without a pause.
SHORTEST_LIFE = 1.0
Work = Callable[[Sequence[str], socket.socket, Connection], None]


@dataclass(frozen=True)
class Worker:
    """One worker process, the end of the pipe on which it is told what to do, and when it was started (monotonic seconds)."""

    process: BaseProcess
    orders: Connection
    born: float

    def order(self, packs: Sequence[str]) -> None:
        """Tell it to put ``packs`` in force; a worker that has just died is replaced by one that reads them anyway."""
        with suppress(OSError):
            self.orders.send(tuple(packs))

    def send_signal(self, number: int) -> None:
        """Send it a signal, unless it has ended."""
        if self.process.is_alive() and self.process.pid:
            with suppress(ProcessLookupError):
                os.kill(self.process.pid, number)


class Supervisor:
    """Runs ``count`` processes of ``work`` on ``listener`` until told to stop."""

    def __init__(self, count: int, work: Work, listener: socket.socket, copies: PackCopies) -> None:
        self._work, self._listener, self._copies = work, listener, copies
        self._packs = copies.take()
        self._workers = dict[int, Worker]()
        self._places = range(count)

    def run(self) -> None:
        """Start the workers and look after them; returns once all have left after SIGTERM or SIGINT."""
        _LOG.info("serving on %s port %d", *self._listener.getsockname()[:2])
        with _signals() as inbox:
            for place in self._places:
                self._start(place)
            while not self._attend(inbox):
                self._replace_the_dead()
            self._leave(inbox)

    def _start(self, place: int) -> None:
        here, there = _SPAWN.Pipe()
        process = _SPAWN.Process(target=self._work, args=(self._packs, self._listener, there))
        with _held_back():
            process.start()
        there.close()
        self._workers[place] = Worker(process, here, time.monotonic())
        _LOG.info("worker %d started", process.pid)

    def _attend(self, inbox: socket.socket) -> bool:
        """Wait until something happens; true when it is time to leave."""
        wait([inbox, *(worker.process.sentinel for worker in self._workers.values())])
        told = _received(inbox)
        if RELOAD in told:
            self._reload()
        return bool(told.intersection(LEAVE))

    def _reload(self) -> None:
        """Have every worker read the packs as they are now. Whatever goes wrong is only logged: the whole service hangs on this process."""
        try:
            self._packs = self._copies.take()
        except PackError as error:
            tell(error)
            return
        except Exception:
            _LOG.exception("the packs could not be copied; %s", UNCHANGED)
            return
        for worker in self._workers.values():
            worker.order(self._packs)

    def _replace_the_dead(self) -> None:
        for place, worker in list(self._workers.items()):
            if not worker.process.is_alive():
                self._bury(worker)
                time.sleep(max(0.0, worker.born + SHORTEST_LIFE - time.monotonic()))
                self._start(place)

    @staticmethod
    def _bury(worker: Worker) -> None:
        worker.process.join()
        worker.orders.close()
        mark_process_dead(worker.process.pid)  # type: ignore[no-untyped-call]
        _LOG.error("worker %d died (%s); another is started", worker.process.pid, worker.process.exitcode)

    def _leave(self, inbox: socket.socket) -> None:
        """Every worker leaves by its own clock; what is told meanwhile is passed on."""
        self._tell_all(signal.SIGTERM)
        self._listener.close()
        while alive := [worker.process.sentinel for worker in self._workers.values() if worker.process.is_alive()]:
            wait([inbox, *alive])
            for number in _received(inbox).intersection(LEAVE):
                self._tell_all(number)

    def _tell_all(self, number: int) -> None:
        for worker in self._workers.values():
            worker.send_signal(number)


@contextmanager
def _held_back() -> Iterator[None]:
    """Keep RELOAD from what is started inside until it says what to do with it, and for this process until the end.

    A terminal that closes tells the whole group. The handler is not passed on to a new process but what is held back is; were the signal
    ignored here meanwhile, one that comes just then would be lost.
    """
    if RELOAD is not None:
        signal.pthread_sigmask(signal.SIG_BLOCK, [RELOAD])
    try:
        yield
    finally:
        if RELOAD is not None:
            signal.pthread_sigmask(signal.SIG_UNBLOCK, [RELOAD])


@contextmanager
def _signals() -> Iterator[socket.socket]:
    """Signals as bytes that can be waited for."""
    inbox, outbox = socket.socketpair()
    inbox.setblocking(False)
    outbox.setblocking(False)
    former = signal.set_wakeup_fd(outbox.fileno())
    handlers = {number: signal.signal(number, lambda *_: None) for number in (*LEAVE, RELOAD) if number is not None}
    try:
        yield inbox
    finally:
        for number, handler in handlers.items():
            signal.signal(number, handler)
        signal.set_wakeup_fd(former)
        inbox.close()
        outbox.close()


def _received(inbox: socket.socket) -> set[int]:
    try:
        return set(inbox.recv(4096))
    except BlockingIOError:
        return set()
