"""Requests take turns; when too many wait for theirs, the rest is turned away at once, so that whoever is taken is answered soon.

One process works on one quick request at a time. At three times what it can answer those that wait would grow in number, and each would
wait for longer than the one before.
"""

from __future__ import annotations

from asyncio import Future, get_running_loop
from collections import deque

from kilisho.messages import say
from kilisho_api.layers import App, Receive, Scope, Send
from kilisho_api.problems import ProblemError, refuse

# Whoever watches a process must hear of it most of all when it is busy. What /ready costs does not grow with those who ask (health.py).
NEVER_TURNED_AWAY = frozenset(("/health", "/ready", "/metrics"))
FULL = say("detail-lane_full")
# A hundred that wait for some milliseconds' work each have had their turn by then.
SECONDS = "1"


class Turns:
    """Gives those who ask their turn in the order in which they came, one in each round of the event loop, and lets ``most`` wait.

    Between two turns the loop hears who else has come, so nobody waits unseen. A turn is over when its request is answered or waits by
    itself (for the rest of its body, for the lane of slow questions, for a caller that reads slowly): that holds up nobody.
    """

    def __init__(self, most: int) -> None:
        self._most, self._waiting, self._busy = most, deque[Future[None]](), False

    async def take(self) -> bool:
        """True once it is the caller's turn; false at once when too many wait."""
        if not self._busy:
            self._busy = True
            get_running_loop().call_soon(self._next)
            return True
        if len(self._waiting) >= self._most:
            return False
        turn = get_running_loop().create_future()
        self._waiting.append(turn)
        await turn
        return True

    def _next(self) -> None:
        while self._waiting and self._waiting[0].done():  # its request was given up
            self._waiting.popleft()
        self._busy = bool(self._waiting)
        if self._busy:
            self._waiting.popleft().set_result(None)
            get_running_loop().call_soon(self._next)


def in_turn(app: App, turns: Turns) -> App:
    """``app`` for whoever gets a turn; 503 with ``Retry-After`` for the rest."""

    async def run(scope: Scope, receive: Receive, send: Send) -> None:
        if scope["path"] in NEVER_TURNED_AWAY or await turns.take():
            await app(scope, receive, send)
        else:
            await refuse(scope, receive, send, ProblemError("overloaded", FULL, headers={"Retry-After": SECONDS}))

    return run
