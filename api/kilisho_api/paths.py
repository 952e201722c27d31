"""Addresses too long to be any of ours are answered before the framework's router, which keeps the last thousand that it was asked for."""

from __future__ import annotations

from kilisho.messages import say
from kilisho_api.layers import App, Receive, Scope, Send
from kilisho_api.problems import ProblemError, refuse

# Characters. The longest of ours is a section of the rulebook and an id of 64.
LONGEST = 256
NOTHING_THERE = say("detail-no_address")


def with_short_paths(app: App) -> App:
    """``app`` for addresses of at most ``LONGEST`` characters, queries apart; 404 for longer ones, which nothing remembers."""

    async def run(scope: Scope, receive: Receive, send: Send) -> None:
        if len(scope["path"]) > LONGEST:
            await refuse(scope, receive, send, ProblemError("not-found", NOTHING_THERE))
        else:
            await app(scope, receive, send)

    return run
