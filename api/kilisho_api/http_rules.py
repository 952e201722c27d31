"""Rules of HTTP that are checked before a handler answers: Accept, Content-Type, and the query."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from typing import Any
from urllib.parse import parse_qsl

from kilisho.messages import say
from kilisho.nearest import nearest
from kilisho_api.headers import AnyRequest, header
from kilisho_api.negotiation import preferred
from kilisho_api.problems import ProblemError

JSON = "application/json"

_CONTENT_TYPE = re.compile(r'\s*application/json\s*(;\s*charset="?utf-8"?\s*)?', re.IGNORECASE)
MOST_PARAMETERS = 100
YES_OR_NO = {"true": True, "false": False}


def admit(request: AnyRequest, offers: Sequence[str] = (JSON,)) -> str:
    """The one of ``offers`` that Accept likes best, for an address that takes no query; raises :class:`ProblemError` (406, 422).

    Called by the handlers themselves: the framework's guards would copy the request and, when plain functions, hop to a thread.
    """
    chosen = negotiate(request, offers)
    flags(request, ())
    return chosen


def negotiate(request: AnyRequest, offers: Sequence[str]) -> str:
    """The one of ``offers`` that Accept likes best, the first on a tie; raises :class:`ProblemError` (406)."""
    chosen = preferred(header(request, b"accept"), offers)
    if chosen is None:
        raise ProblemError("not-acceptable", say("detail-accept_must_admit", types=", ".join(offers)))
    return chosen


def flags(request: AnyRequest, known: Sequence[str]) -> dict[str, bool]:
    """The flags of the query; raises :class:`ProblemError` (422)."""
    return read_query(request.scope["query_string"], known) if request.scope["query_string"] else {}


def read_query(query: bytes, known: Sequence[str]) -> dict[str, bool]:
    """The flags in ``query``; raises :class:`ProblemError` with every fault."""
    flags, errors = dict[str, bool](), list[dict[str, Any]]()
    for name, value in _parameters(query):
        code, detail, nearest = _parameter_fault(name, value, known, flags)
        if code:
            errors.append({"parameter": name[:64], "code": code, "detail": detail, "nearest": nearest})
        flags[name] = YES_OR_NO.get(value, False)
    if errors:
        raise ProblemError("invalid-request", say("detail-query_does_not_fit"), errors)
    return flags


def _parameters(query: bytes) -> list[tuple[str, str]]:
    """Names and values; a query of more than any address could take is refused before it is read."""
    try:
        return parse_qsl(query.decode("latin-1"), keep_blank_values=True, max_num_fields=MOST_PARAMETERS)
    except ValueError:
        fault = {"code": "too_many_parameters", "detail": say("detail-most_parameters", most=MOST_PARAMETERS), "nearest": []}
        raise ProblemError("invalid-request", say("detail-query_does_not_fit"), [fault]) from None


def _parameter_fault(name: str, value: str, known: Sequence[str], seen: Iterable[str]) -> tuple[str, str, list[str]]:
    if name not in known:
        return "unknown_parameter", say("detail-no_parameter"), nearest(name, known, most=1) or list(known)
    if name in seen:
        return "repeated_parameter", say("detail-given_twice"), []
    if value not in YES_OR_NO:
        return "yes_no_expected", say("detail-yes_or_no"), list(YES_OR_NO)
    return "", "", []


def demand_json(request: AnyRequest) -> None:
    """Refuse (415) a body that is not plain application/json in UTF-8."""
    if not _CONTENT_TYPE.fullmatch(header(request, b"content-type")):
        raise ProblemError("unsupported-media-type", say("detail-content_type_json"), headers={"Accept": "application/json"})
    if header(request, b"content-encoding").lower() not in ("", "identity"):
        raise ProblemError("unsupported-media-type", say("detail-not_compressed"), headers={"Accept-Encoding": "identity"})
