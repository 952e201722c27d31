"""The log: a line of text or one JSON object a line. Nothing that a caller sends can end a line or begin one.

The standard library's logging with two formatters: the server and the framework log through it, and a library over it would be
larger than they are.
"""

from __future__ import annotations

import json
import logging
import sys
from collections.abc import Mapping
from datetime import UTC, datetime
from typing import Any

from kilisho_api.escaping import escaped
from kilisho_api.log_context import told

FIELDS = "fields"


def set_up(level: str, form: str) -> None:
    """Send everything that is logged to standard error, from ``level`` up, as ``text`` or ``json``; other handlers are taken away."""
    handler = logging.StreamHandler(sys.stderr)
    handler.setFormatter(JsonLines() if form == "json" else TextLines())
    logging.basicConfig(level=level.upper(), handlers=[handler], force=True)


class JsonLines(logging.Formatter):
    """One JSON object a line, in ASCII: time, level, logger, message, the request's ids, further fields, and the exception."""

    def format(self, record: logging.LogRecord) -> str:
        """The line of ``record``."""
        head = {"time": moment(record.created), "level": record.levelname.lower(), "logger": record.name, "message": record.getMessage()}
        failed = {"exception": self.formatException(record.exc_info)} if record.exc_info else {}
        return json.dumps({**head, **told(), **_fields(record), **failed}, default=str)


class TextLines(logging.Formatter):
    """A line for people; a traceback follows on lines that are set in."""

    def format(self, record: logging.LogRecord) -> str:
        """The line of ``record`` and those of its exception."""
        more = " ".join(f"{name}={value}" for name, value in (*told().items(), *_fields(record).items()))
        line = f"{moment(record.created)} {record.levelname} {record.name}: {record.getMessage()}" + (f" [{more}]" if more else "")
        trace = self.formatException(record.exc_info).splitlines() if record.exc_info else []
        return "\n    ".join(map(escaped, (line, *trace)))


def moment(seconds: float) -> str:
    """A time as RFC 3339 writes it, in UTC, to the millisecond."""
    return datetime.fromtimestamp(seconds, UTC).isoformat(timespec="milliseconds").replace("+00:00", "Z")


def fields(**values: Any) -> Mapping[str, Any]:
    """The ``extra`` of a record that carries ``values`` beside its message."""
    return {FIELDS: values}


def _fields(record: logging.LogRecord) -> Mapping[str, Any]:
    return getattr(record, FIELDS, {})
