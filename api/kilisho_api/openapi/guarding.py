"""What the contract says of whom the service turns away: of keys and rates nothing as long as neither is asked for."""

from __future__ import annotations

from kilisho_api.guard import NEVER_LIMITED, OPEN
from kilisho_api.openapi.responses import Part, problems
from kilisho_api.settings import Settings
from kilisho_api.turns import NEVER_TURNED_AWAY

SCHEME = "ApiKey"
_KEY = "An API key of whoever runs this service, sent as `Authorization: Bearer KEY` (RFC 6750)."


def guarding(document: Part, settings: Settings) -> Part:
    """``document`` with the refusals, and the security scheme, that ``settings`` bring about."""
    for path, item in document["paths"].items():
        for operation in item.values():
            operation["responses"] |= problems(*_refusals(path, settings))
            if settings.api_keys is not None and path not in OPEN and path != "/problems/{slug}":
                operation["security"] = [{SCHEME: []}]
    if settings.api_keys is not None:
        document["components"]["securitySchemes"] = {SCHEME: {"type": "http", "scheme": "bearer", "description": _KEY}}
    return document


def _refusals(path: str, settings: Settings) -> list[str]:
    needs_key = settings.api_keys is not None and path not in OPEN
    limited = settings.rate_limit is not None and path != NEVER_LIMITED
    takes_turns = path not in NEVER_TURNED_AWAY
    return ["unauthorized"] * needs_key + ["too-many-requests"] * limited + ["overloaded"] * takes_turns
