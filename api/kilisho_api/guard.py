"""Who may ask, and how often: a layer that turns callers away before anything is read of what they send.

Both are off until whoever runs the service sets them. The key comes as a bearer token (RFC 6750), in the header and nowhere else.
"""

from __future__ import annotations

import math
import re

from kilisho.messages import say
from kilisho_api.addresses import network_of
from kilisho_api.buckets import Buckets, Rate
from kilisho_api.docs import ASSETS
from kilisho_api.keys import Keys
from kilisho_api.layers import App, Message, Receive, Scope, Send
from kilisho_api.problem_types import PROBLEM_TYPES
from kilisho_api.problems import ProblemError, refuse

# Asked every few seconds by whatever watches the process; it must neither need a key nor ever be told to wait.
NEVER_LIMITED = "/health"
_FILES = (f"/docs/{name}" for name in ASSETS)
_KINDS = (kind.address for kind in PROBLEM_TYPES.values())
OPEN = frozenset(("/", NEVER_LIMITED, "/ready", "/openapi.json", "/docs", "/docs/reference", *_FILES, *_KINDS))
CHALLENGE = 'Bearer realm="kilisho"'
NO_KEY, UNKNOWN_KEY, TOO_OFTEN = say("detail-no_key"), say("detail-key_not_known"), say("detail-asks_too_often")
_TOKEN = re.compile(r"bearer +([A-Za-z0-9._~+/-]{1,256}=*) *", re.IGNORECASE)


def guarded(app: App, keys: Keys | None, rate: Rate | None) -> App:
    """``app`` for callers that show one of ``keys`` and keep to ``rate``; the rest get 401 and 429."""
    if keys is None and rate is None:
        return app
    buckets = Buckets(rate) if rate is not None else None

    async def run(scope: Scope, receive: Receive, send: Send) -> None:
        try:
            admit(scope, keys, buckets)
        except ProblemError as refused:
            await refuse(scope, receive, send, refused)
        else:
            await app(scope, receive, send if keys is None or scope["path"] in OPEN else _private(send))

    return run


def admit(scope: Scope, keys: Keys | None, buckets: Buckets | None) -> None:
    """Raises :class:`ProblemError`: 429 for a caller that asks too often, 401 for one that needs a key and shows none that is known.

    A caller is known by its key, or else by its address; so whoever guesses keys soon has to wait.
    """
    holder = _holder(scope, keys)
    if buckets is not None and scope["path"] != NEVER_LIMITED:
        _take_a_token(buckets, f"key {holder}" if holder else f"address {network_of((scope.get('client') or ('',))[0])}")
    if keys is not None and holder is None and scope["path"] not in OPEN:
        shown = any(name == b"authorization" for name, _ in scope["headers"])
        challenge = f'{CHALLENGE}, error="invalid_token"' if shown else CHALLENGE
        raise ProblemError(
            "unauthorized", say("detail-key_not_known" if shown else "detail-no_key"), headers={"WWW-Authenticate": challenge}
        )


def _holder(scope: Scope, keys: Keys | None) -> str | None:
    """Whose key the request carries. Two keys are none: what a proxy reads must be what the service reads."""
    shown = [value.decode("latin-1") for name, value in scope["headers"] if name == b"authorization"]
    found = _TOKEN.fullmatch(shown[0]) if keys is not None and len(shown) == 1 else None
    return keys.holder(found[1]) if keys is not None and found is not None else None


def _take_a_token(buckets: Buckets, caller: str) -> None:
    seconds = buckets.seconds_to_wait(caller)
    if seconds > 0.0:
        raise ProblemError("too-many-requests", TOO_OFTEN, headers={"Retry-After": str(math.ceil(seconds))})


def _private(send: Send) -> Send:
    """What a key opened may be kept by its holder, and by no cache that others share."""

    async def sending(message: Message) -> None:
        if message["type"] == "http.response.start":
            message["headers"] = [(name, _kept(value) if name == b"cache-control" else value) for name, value in message["headers"]]
        await send(message)

    return sending


def _kept(value: bytes) -> bytes:
    return value.replace(b"public", b"private")
