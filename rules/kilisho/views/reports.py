"""The report on a fleet, as a page that prints on A4 and as Markdown: pure functions from a told report to text."""

from __future__ import annotations

import re
from typing import Any

from kilisho.messages import Language
from kilisho.views.printable import printable
from kilisho.views.sheets import Answer, environment, stylesheet

# What a Markdown cell must not hold as it is.
SPECIAL = re.compile(r"([\\`*_\[\]<>|#~])")


def as_page(report: Answer, language: Language) -> str:
    """The report as HTML: dangers first, nothing from outside, no script."""
    return _written("fleet-report.html.jinja", report, language, style=stylesheet())


def as_markdown(report: Answer, language: Language) -> str:
    """The report as Markdown with tables."""
    return re.sub(r"\n{3,}", "\n\n", str(_written("fleet-report.md.jinja", report, language, md=_markdown)))


def _written(template: str, report: Answer, language: Language, **further: Any) -> str:
    return environment(language).get_template(template).render(report=report, percent=_percent(language), **further)


def _percent(language: Language) -> Any:
    """Writes a share; what is not nothing is never told as nothing, nor what is not all as all."""

    def write(share: float) -> str:
        if 0 < share < 0.001:
            return f"< {language.number(0.1, 1)} %"
        return f"{language.number(min(share * 100, 99.9) if share < 1 else 100.0, 1)} %"

    return write


def _markdown(text: Any) -> Any:
    """Text of a caller in one line of Markdown that says nothing else than itself."""
    from markupsafe import Markup

    return Markup(SPECIAL.sub(r"\\\1", " ".join(printable(str(text)).split())))  # noqa: S704
