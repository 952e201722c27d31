"""The media types of tables, and what a request says of the one that it sends and the one that it wants."""

from __future__ import annotations

from importlib.util import find_spec

from kilisho.messages import say
from kilisho_api.headers import AnyRequest, header
from kilisho_api.http_rules import JSON, negotiate
from kilisho_api.problems import ProblemError

NDJSON, CSV = "application/x-ndjson", "text/csv"
ARROW, PARQUET = "application/vnd.apache.arrow.stream", "application/vnd.apache.parquet"
TABLES = (NDJSON, CSV, ARROW, PARQUET)
TEXTS = (NDJSON, CSV)
# Further parameters say nothing that a reader has to know.
_FITTING = {"charset": ("utf-8", "utf8", "us-ascii"), "header": ("present",)}


def offered() -> bool:
    """Whether tables can be read here: they need pyarrow."""
    return find_spec("pyarrow") is not None


def type_of(request: AnyRequest) -> str:
    """The media type of the table that is sent; raises :class:`ProblemError` (415)."""
    name, *parameters = (part.strip() for part in header(request, b"content-type").split(";"))
    kind = name.lower()
    if kind not in TABLES or not all(_fits(one) for one in parameters if kind in TEXTS):
        types = ", ".join(TABLES)
        raise ProblemError("unsupported-media-type", say("detail-table_content_type", types=types), headers={"Accept": types})
    if header(request, b"content-encoding").lower() not in ("", "identity"):
        raise ProblemError("unsupported-media-type", say("detail-not_compressed"), headers={"Accept-Encoding": "identity"})
    return kind


def _fits(parameter: str) -> bool:
    name, _, value = parameter.partition("=")
    fitting = _FITTING.get(name.strip().lower())
    return fitting is None or value.strip().strip('"').lower() in fitting


def wanted_of(request: AnyRequest, sent: str) -> str:
    """The media type of the answer: that of the table where Accept likes nothing better; raises :class:`ProblemError` (406)."""
    return negotiate(request, (sent, *(kind for kind in TABLES if kind != sent), JSON))
