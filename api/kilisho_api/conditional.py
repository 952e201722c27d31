"""Entity tags and If-None-Match (RFC 9110, sections 8.8.3 and 13.1.2)."""

from __future__ import annotations

import hashlib
import re

_TAG = re.compile(r'(?:W/)?("[^"]*")')


def strong_tag(body: bytes) -> str:
    """The strong entity tag of exactly these bytes."""
    return f'"{hashlib.sha256(body).hexdigest()[:32]}"'


def unchanged(if_none_match: str | None, tag: str) -> bool:
    """Does the caller already hold the representation? Compares weakly, as the header demands."""
    if not if_none_match:
        return False
    return if_none_match.strip() == "*" or tag in _TAG.findall(if_none_match)
