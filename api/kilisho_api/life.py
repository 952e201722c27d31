"""How a process stands between its start and its end: whether it is leaving, and what it may be told to do."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from kilisho_api.layers import App, Message, Receive, Scope, Send

CLOSE = (b"connection", b"close")


def _nothing_to_reload(_packs: Sequence[str]) -> None:
    """What a service that was put together from a rulebook in memory does when told to read its packs."""


@dataclass
class Life:
    """One process's state, shared by the server that gets the signals and the application that answers.

    leaving : set once the process is told to stop; ``/ready`` then refuses and every answer closes its connection.
    reload : reads packs anew and puts them in force, or leaves what is in force; takes long, for a thread.
    endings : called in order once the last answer is out.
    """

    leaving: bool = False
    reload: Callable[[Sequence[str]], None] = _nothing_to_reload
    endings: list[Callable[[], object]] = field(default_factory=list)

    def layer(self, app: App) -> App:
        """An ASGI layer that asks callers to come back on another connection once the process is leaving.

        A caller who keeps a connection would otherwise send its next request just when the server hangs up.
        """

        async def run(scope: Scope, receive: Receive, send: Send) -> None:
            async def sending(message: Message) -> None:
                if self.leaving and message["type"] == "http.response.start":
                    message["headers"] = [*message["headers"], CLOSE]
                await send(message)

            await app(scope, receive, sending)

        return run
