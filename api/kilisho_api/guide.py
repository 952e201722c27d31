"""GET /docs: the page that a developer reads first. Its tables are made from what the service itself goes by; its samples are files."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from html import escape
from importlib.resources import files
from string import Template

from kilisho.messages import Language
from kilisho.questions import Question
from kilisho.units import KINDS
from kilisho_api.deprecation import DEPRECATED, NOTICE, Deprecation
from kilisho_api.home import release
from kilisho_api.problem_types import PROBLEM_TYPES
from kilisho_api.settings import Settings

ASSETS = files("kilisho_api") / "assets"
SAMPLES = ("ask.sh", "ask.py", "ask.ts", "refused.sh", "install.sh", "build.sh", "client.sh")


class _Page(Template):
    # The samples are full of dollars.
    delimiter = "§"


def guide(settings: Settings, questions: Mapping[str, Question], languages: Mapping[str, Language], rulebook: Mapping[str, str]) -> bytes:
    """The page, in HTML."""
    facts = {
        "release": escape(release()),
        "rulebook": escape(f"{rulebook['id']} {rulebook['version']}"),
        "questions": _questions(questions.values()),
        "unit_kinds": str(len(KINDS)),
        "units": _rows((escape(kind.name.replace("_", " ")), _codes(kind.units)) for kind in KINDS.values()),
        "problems": _problems(),
        "languages": ", ".join(_language(language) for language in languages.values()),
        "notice": str(NOTICE.days),
        "deprecated": deprecated(DEPRECATED),
        **_limits(settings),
        **{name.replace(".", "_"): escape((ASSETS / "samples" / f"{name}.txt").read_text("utf-8").rstrip()) for name in SAMPLES},
    }
    return _Page((ASSETS / "guide.html").read_text("utf-8")).substitute(facts).encode()


def deprecated(table: Iterable[Deprecation]) -> str:
    """What will go, as a list; a sentence when nothing will."""
    rows = [
        f"<li><code>{escape(f'{entry.method} {entry.path}')}</code> <code>{escape(entry.member)}</code> since {entry.since}, until"
        f" {entry.sunset}. {escape(entry.instead)}</li>"
        for entry in table
    ]
    return f"<ul>{''.join(rows)}</ul>" if rows else "<p>At present nothing is deprecated.</p>"


def _questions(questions: Iterable[Question]) -> str:
    return _rows((f"<code>/v1/{escape(one.name)}</code>", escape(one.title), _codes(one.representations)) for one in questions)


def _problems() -> str:
    kinds = PROBLEM_TYPES.values()
    return _rows((str(kind.status), f'<a href="{kind.address}">{kind.slug}</a>', escape(str(kind.about))) for kind in kinds)


def _language(language: Language) -> str:
    return f"{escape(language.locale.english_name or language.tag)} (<code>{escape(language.tag)}</code>)"


def _limits(settings: Settings) -> dict[str, str]:
    numbers = {
        "largest_body": settings.largest_body,
        "longest_forecast": settings.limits.forecast_days,
        "most_waiting": settings.most_waiting,
        "slow_at_once": settings.slow_at_once,
        "slow_waiting": settings.slow_waiting,
        "largest_table": settings.largest_table,
        "longest_table": settings.longest_table,
        "tables_at_once": settings.tables_at_once,
    }
    return {name: f"{number:,}" for name, number in numbers.items()}


def _codes(codes: Iterable[str]) -> str:
    return ", ".join(f"<code>{escape(code)}</code>" for code in codes)


def _rows(rows: Iterable[Iterable[str]]) -> str:
    return "\n".join(f"<tr>{''.join(f'<td>{cell}</td>' for cell in row)}</tr>" for row in rows)
