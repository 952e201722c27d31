"""Answers to look at, over HTTP: chosen by Accept, documented, refused where a date is missing."""

from __future__ import annotations

import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import httpx
import pytest
from icalendar import Calendar
from tests.api.asking import problem

from kilisho.cli import main
from kilisho.packs import Rulebook
from kilisho.questions import Question
from kilisho.views.sheets import style_source
from kilisho_api.openapi.document import document
from kilisho_api.settings import Settings

CALENDAR, SVG, HTML = "text/calendar", "image/svg+xml", "text/html"
VIEWS = [
    *(("first-charge", kind) for kind in (CALENDAR, SVG, HTML)),
    *(("maintenance-feed", kind) for kind in (CALENDAR, HTML)),
    ("sizing", SVG),
    ("gas-forecast", SVG),
    *(("batch-rotation", kind) for kind in (CALENDAR, SVG)),
    ("gas-use", SVG),
    ("farm-plan", CALENDAR),
]
UNDATED = {
    "first-charge": ({"digester_ready_on": None, "stockpile": None}, "/digester_ready_on"),
    "maintenance-feed": ({"feeding": None}, "/feeding"),
}


def _asked(client: httpx.Client, question: Question, media_type: str, **changes: Any) -> httpx.Response:
    body = {name: value for name, value in {**question.example, **changes}.items() if value is not None}
    return client.post(f"/v1/{question.name}", json=body, headers={"accept": media_type})


PLAIN = "default-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"


@pytest.mark.parametrize(("name", "media_type"), VIEWS)
def test_a_view_comes_when_it_is_asked_for(client: httpx.Client, questions: Mapping[str, Question], name: str, media_type: str) -> None:
    first, second = (_asked(client, questions[name], media_type) for _ in range(2))
    assert first.status_code == 200
    assert first.headers["content-type"].startswith(media_type)
    assert first.content == second.content
    assert client.post(f"/v1/{name}", json=questions[name].example).headers["content-type"] == "application/json"


@pytest.mark.parametrize(("name", "media_type"), VIEWS)
def test_what_a_browser_shows_may_load_nothing(client: httpx.Client, questions: Mapping[str, Question], name: str, media_type: str) -> None:
    policy = _asked(client, questions[name], media_type).headers["content-security-policy"]
    if media_type == CALENDAR:
        assert policy == PLAIN
        return
    rules = dict(rule.strip().split(" ", 1) for rule in policy.split(";"))
    style = {SVG: "'none'", HTML: style_source()}[media_type]
    assert rules == {"style-src": style, **dict.fromkeys(("default-src", "base-uri", "form-action", "frame-ancestors"), "'none'")}


def test_other_answers_keep_their_policy(client: httpx.Client, questions: Mapping[str, Question]) -> None:
    for media_type, name in (("application/json", "first-charge"), ("text/csv", "gas-forecast")):
        assert _asked(client, questions[name], media_type).headers["content-security-policy"] == PLAIN


@pytest.mark.parametrize("name", UNDATED)
def test_a_calendar_without_its_date_is_a_problem(client: httpx.Client, questions: Mapping[str, Question], name: str) -> None:
    changes, pointer = UNDATED[name]
    told = problem(_asked(client, questions[name], CALENDAR, **changes), 422, "invalid-request")
    assert [(one["pointer"], one["code"]) for one in told["errors"]] == [(pointer, "date_needed")]
    assert _asked(client, questions[name], "application/json", **changes).status_code == 200


def test_a_calendar_is_utf_8(client: httpx.Client, questions: Mapping[str, Question]) -> None:
    answer = _asked(client, questions["maintenance-feed"], CALENDAR, name="Ng'ombe – 山")
    assert answer.headers["content-type"] == "text/calendar; charset=utf-8"
    assert {str(one["summary"]) for one in Calendar.from_ical(answer.content).walk("VEVENT")} >= {"Feed - Ng'ombe – 山"}


@pytest.mark.parametrize(("name", "media_type"), VIEWS)
def test_every_view_is_in_the_contract(rulebook: Rulebook, questions: Mapping[str, Question], name: str, media_type: str) -> None:
    content = document(rulebook, questions, Settings())["paths"][f"/v1/{name}"]["post"]["responses"]["200"]["content"]
    assert content[media_type]["schema"] == {"type": "string"}
    assert len(content[media_type]["example"]) > 500


@pytest.mark.parametrize("name", UNDATED)
def test_the_command_line_refuses_a_calendar_without_its_date(
    questions: Mapping[str, Question], tmp_path: Path, capsys: pytest.CaptureFixture[str], name: str
) -> None:
    changes, pointer = UNDATED[name]
    body = {key: value for key, value in {**questions[name].example, **changes}.items() if value is not None}
    (tmp_path / "farm.json").write_text(json.dumps(body))
    assert main(["ask", name, str(tmp_path / "farm.json"), "--accept", CALENDAR]) == 1
    told = capsys.readouterr()
    assert (told.out, told.err) == ("", f"{pointer}: a calendar needs this date\n")
