"""An answer as a sheet of paper: HTML that prints on A4 in large type, black and white, with nothing from outside.

The blocks of ``templates/`` serve every sheet: a new one is a template that extends ``sheet.html.jinja``.
"""

from __future__ import annotations

import base64
import hashlib
from collections.abc import Callable, Mapping, Sequence
from functools import cache, partial
from importlib.resources import files
from typing import TYPE_CHECKING, Any

from kilisho.messages import Language
from kilisho.views.words import amount, amount_range, in_words, long_date, number, printable

if TYPE_CHECKING:
    from jinja2 import Environment

HTML = "text/html"
# Signal words from the gravest on; one that is not known is read as a warning.
SIGNALS = ("danger", "warning", "caution", "notice")
STATES = {"confirmed": "confirmed", "refused": "NOT MET: do not fill", "unknown": "not known: do not fill before it is"}
MOST_MEASURED = 2
Answer = Mapping[str, Any]
Draw = Callable[[Answer, Language], str]


def sheet_of(template: str, draw: Draw | None = None) -> Callable[[Answer, Language], str]:
    """The function that writes an answer as a sheet; ``draw`` makes the drawing that its template shows."""
    return partial(as_sheet, template, draw)


def as_sheet(template: str, draw: Draw | None, answer: Answer, language: Language) -> str:
    """The sheet: cautions of danger first, then the plan, what fails or is not known, the other cautions, and room for notes."""
    ordered = sorted(answer["cautions"], key=lambda one: _gravity(one["signal"]))
    first = [one for one in ordered if one["signal"] == SIGNALS[0]]
    return (
        _environment()
        .get_template(f"{template}.html.jinja")
        .render(
            answer=answer,
            dangers=first,
            cautions=ordered[len(first) :],
            open=_open(answer),
            states=STATES,
            drawing=draw(answer, language) if draw else "",
            style=stylesheet(),
        )
    )


def _gravity(signal: str) -> int:
    return SIGNALS.index(signal if signal in SIGNALS else "warning")


def _open(answer: Answer) -> dict[str, Any]:
    """What fails, the dangers that nobody has ruled out, how many lesser checks lack a fact, and what to measure first."""
    failed, unknown = ([one for one in answer["findings"] if one["verdict"] == verdict] for verdict in ("fail", "unknown"))
    dangers = [one for one in unknown if one["severity"] == SIGNALS[0]]
    how = list(dict.fromkeys(one["how"] for one in answer.get("measure_first", ())))
    return {
        "failed": sorted(failed, key=lambda one: _gravity(one["severity"])),
        "dangers": dangers,
        "others": len(unknown) - len(dangers),
        "measure": how[:MOST_MEASURED],
    }


@cache
def stylesheet() -> str:
    """The style of every sheet; it stands in the page, so that a sheet that was saved or sent stays whole."""
    return (files("kilisho.views") / "templates" / "sheet.css").read_text("utf-8")


@cache
def style_source() -> str:
    """The stylesheet's hash as a source of a Content-Security-Policy: the one style that a sheet may apply."""
    digest = hashlib.sha256(stylesheet().encode()).digest()
    return f"'sha256-{base64.b64encode(digest).decode()}'"


@cache
def _environment() -> Environment:
    from jinja2 import Environment, PackageLoader, StrictUndefined

    class Absent(StrictUndefined):
        """A member that an answer leaves out: a template may ask for it, but never print it."""

        def __bool__(self) -> bool:  # type: ignore[override]
            return False

    made = Environment(
        loader=PackageLoader("kilisho.views"),
        autoescape=True,
        undefined=Absent,
        trim_blocks=True,
        lstrip_blocks=True,
        finalize=_clean,
    )
    made.filters |= {one.__name__: one for one in _filters()}
    return made


def _filters() -> Sequence[Callable[..., str]]:
    return amount, amount_range, in_words, long_date, number


def _clean(value: Any) -> Any:
    """Plain text without control characters; what is marked as safe is no plain text any more."""
    return printable(value) if type(value) is str else value
