"""An answer as a sheet of paper: HTML that prints on A4 in large type, black and white, with nothing from outside.

The blocks of ``templates/`` serve every sheet: a new one is a template that extends ``sheet.html.jinja``.
"""

from __future__ import annotations

import base64
import hashlib
from collections.abc import Callable, Mapping, Sequence
from functools import cache, lru_cache, partial
from importlib.resources import files
from itertools import groupby
from typing import TYPE_CHECKING, Any

from kilisho.messages import DEFAULT, LANGUAGES, Language
from kilisho.views.bucket_drawing import bucket_figure
from kilisho.views.printable import printable
from kilisho.views.stockpile_drawing import stockpile_figure
from kilisho.views.year_drawing import year_figure

if TYPE_CHECKING:
    from jinja2 import Environment

HTML = "text/html"
# Signal words from the gravest on; one that is not known is read as a warning.
SIGNALS = ("danger", "warning", "caution", "notice")
MOST_MEASURED = 2
FIGURES = (bucket_figure, stockpile_figure, year_figure)
Answer = Mapping[str, Any]


def sheet_of(template: str) -> Callable[[Answer, Language], str]:
    """The function that writes an answer as a sheet."""
    return partial(as_sheet, template)


def as_sheet(template: str, answer: Answer, language: Language) -> str:
    """The sheet: cautions of danger first, then the plan, what fails or is not known, the other cautions, and room for notes."""
    ordered = sorted({one["text"]: one for one in answer["cautions"]}.values(), key=_gravity)
    dangers = [one for one in ordered if one["signal"] == SIGNALS[0]]
    others = ordered[len(dangers) :]
    two_tongues = any("english" in one for one in dangers)
    made = environment(language).get_template(f"{template}.html.jinja")
    return made.render(
        sheet=template,
        answer=answer,
        dangers=dangers,
        cautions=[(signal, list(entries)) for signal, entries in groupby(others, key=lambda one: one["signal"])],
        two_tongues=two_tongues,
        open=_open(answer, 1 if two_tongues else MOST_MEASURED),
        style=stylesheet(),
    )


def _gravity(caution: Answer) -> tuple[int, str]:
    signal = caution["signal"]
    return _rank(signal), signal


def _rank(signal: str) -> int:
    return SIGNALS.index(signal if signal in SIGNALS else "warning")


def _open(answer: Answer, most_measured: int) -> dict[str, Any]:
    """What fails, the dangers that nobody has ruled out, how many lesser checks lack a fact, and what to measure first."""
    failed, unknown = ([one for one in answer["findings"] if one["verdict"] == verdict] for verdict in ("fail", "unknown"))
    dangers = [one for one in unknown if one["severity"] == SIGNALS[0]]
    how = list(dict.fromkeys(one["how"] for one in answer.get("measure_first", ())))
    return {
        "failed": sorted(failed, key=lambda one: _rank(one["severity"])),
        "dangers": dangers,
        "others": len(unknown) - len(dangers),
        "measure": how[:most_measured],
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


@lru_cache(maxsize=16)
def environment(language: Language) -> Environment:
    """What templates are filled by, in one language: everything escaped, and nothing printed that an answer leaves out."""
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
    made.filters |= {one.__name__: one for one in _writers(language)}
    made.globals |= {"say": language.say, "word": language.word, "english": LANGUAGES[DEFAULT].say, "language": language}
    made.globals |= {one.__name__: _drawn(one, language) for one in FIGURES}
    return made


def _writers(language: Language) -> Sequence[Callable[..., str]]:
    return language.amount, language.typical, language.number, language.long_date, language.month


def _drawn(figure: Callable[[Any, Language], str], language: Language) -> Callable[[Any], str]:
    """A drawing for a template, which escapes its own texts."""
    from markupsafe import Markup

    return lambda part: Markup(figure(part, language))  # noqa: S704


def _clean(value: Any) -> Any:
    """Text without control characters; what is marked as safe is no plain text any more."""
    return printable(value) if isinstance(value, str) and not hasattr(value, "__html__") else value
