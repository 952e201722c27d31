"""One answer in several media types: chosen by Accept, documented, and the same on the command line."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterator, Mapping
from typing import Any

import httpx
import pytest
from jsonschema import Draft202012Validator
from litestar.testing import TestClient
from openapi_spec_validator import OpenAPIV31SpecValidator
from tests import invented
from tests.api.asking import JSON_BODY, problem

from kilisho import commands
from kilisho.cli import main
from kilisho.packs import Rulebook
from kilisho.questions import Question
from kilisho.questions.opening import open_form
from kilisho.questions.tables import CSV
from kilisho_api.app import assemble
from kilisho_api.openapi.document import document
from kilisho_api.operations import content_type
from kilisho_api.settings import Settings

PATH = f"/v1/{invented.NAME}"
CONTENT_TYPE = "text/csv; charset=utf-8; header=present"
BODY: dict[str, Any] = {"name": "Nowhere (invented)", "days": 3, "gas": 2}


@pytest.fixture(scope="module")
def question(rulebook: Rulebook) -> Question:
    return open_form(invented.form, rulebook)


@pytest.fixture(scope="module")
def there(rulebook: Rulebook, questions: Mapping[str, Question], question: Question) -> Iterator[TestClient[Any]]:
    with TestClient(assemble(Settings(), rulebook, {**questions, question.name: question})) as opened:
        yield opened


def _asked(there: TestClient[Any], accept: str, body: Any = BODY) -> httpx.Response:
    return there.post(PATH, json=body, headers={"accept": accept})


@pytest.mark.parametrize(
    "accept", ["", "*/*", "application/json", "application/*", "text/csv, application/json", "text/csv;q=0.5, */*", "text/html, */*"]
)
def test_json_comes_first_when_the_caller_does_not_prefer_another(there: TestClient[Any], accept: str) -> None:
    answer = _asked(there, accept)
    assert answer.status_code == 200
    assert answer.headers["content-type"] == "application/json"
    assert len(answer.json()["rows"]) == 3


@pytest.mark.parametrize(
    "accept",
    ["text/csv", "TEXT/CSV", "text/*", "text/csv; header=present", "text/csv, application/json;q=0.9", "*/*, application/json;q=0"],
)
def test_a_table_comes_when_the_caller_prefers_it(there: TestClient[Any], accept: str) -> None:
    answer = _asked(there, accept)
    assert answer.status_code == 200
    assert answer.headers["content-type"] == CONTENT_TYPE
    assert "Accept, Accept-Language" in answer.headers.get_list("vary")
    rows = list(csv.DictReader(io.StringIO(answer.content.decode(), newline="")))
    told = _asked(there, "application/json").json()["rows"]
    assert [float(row["gas [m3/d]"]) for row in rows] == [row["gas"]["value"] for row in told] == [2, 2, 2]
    assert [float(row["gas low [m3/d]"]) for row in rows] == [row["gas"]["low"] for row in told]
    assert {row["remark"] for row in rows} == {"Nowhere (invented)"}


def test_text_of_the_caller_runs_nothing_in_a_spreadsheet(there: TestClient[Any]) -> None:
    answer = _asked(there, CSV, {**BODY, "name": '=HYPERLINK("https://a.example")'})
    [first, *_] = csv.DictReader(io.StringIO(answer.text, newline=""))
    assert first["remark"] == '\'=HYPERLINK("https://a.example")'


def test_text_beyond_ascii_is_utf_8(there: TestClient[Any]) -> None:
    answer = _asked(there, CSV, {**BODY, "name": "Ng'ombe – 山"})
    assert "Ng'ombe – 山" in answer.content.decode("utf-8")


@pytest.mark.parametrize("accept", ["text/html", "image/*", "text/csv;q=0", "application/xml, text/plain"])
def test_what_is_not_offered_is_not_acceptable(there: TestClient[Any], accept: str) -> None:
    told = problem(_asked(there, accept), 406, "not-acceptable")
    assert "application/json" in told["detail"]
    assert CSV in told["detail"]


def test_a_question_without_tables_offers_none(there: TestClient[Any], questions: Mapping[str, Question]) -> None:
    answer = there.post("/v1/sizing", json=questions["sizing"].example, headers={"accept": CSV})
    assert CSV not in problem(answer, 406, "not-acceptable")["detail"]


@pytest.mark.parametrize(
    ("body", "status", "slug"), [(b"[", 400, "malformed-json"), (b'{"days": 0}', 422, "invalid-request"), (b"{}", 422, "invalid-request")]
)
def test_a_refusal_is_a_problem_whatever_is_accepted(there: TestClient[Any], body: bytes, status: int, slug: str) -> None:
    problem(there.post(PATH, content=body, headers={**JSON_BODY, "accept": CSV}), status, slug)


def test_a_type_of_text_that_we_do_not_know_is_utf_8_too() -> None:
    assert content_type("text/calendar") == "text/calendar; charset=utf-8"
    assert content_type("application/geo+json") == "application/geo+json"


def test_every_representation_is_in_the_contract(rulebook: Rulebook, questions: Mapping[str, Question], question: Question) -> None:
    made = json.loads(json.dumps(document(rulebook, {**questions, question.name: question}, Settings())))
    assert [error.message for error in OpenAPIV31SpecValidator(made).iter_errors()] == []
    content = made["paths"][PATH]["post"]["responses"]["200"]["content"]
    assert list(content) == ["application/json", CSV]
    Draft202012Validator(content[CSV]["schema"]).validate(content[CSV]["example"])
    assert content[CSV]["example"].startswith(invented.HEADER)
    assert content[CSV]["example"].count("\r\n") == 1 + len(content["application/json"]["example"]["rows"]) == 5
    assert list(made["paths"]["/v1/safety-check"]["post"]["responses"]["200"]["content"]) == ["application/json"]


def _command_line(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Any, question: Question, *options: str
) -> tuple[int, str, str]:
    monkeypatch.setattr(commands, "open_questions", lambda _rulebook: {question.name: question})
    (tmp_path / "farm.json").write_text(json.dumps(BODY))
    code = main(["ask", question.name, str(tmp_path / "farm.json"), *options])
    told = capsys.readouterr()
    return code, told.out, told.err


def test_the_command_line_writes_the_same_table(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Any, question: Question, there: TestClient[Any]
) -> None:
    code, out, _ = _command_line(monkeypatch, capsys, tmp_path, question, "--accept", CSV)
    assert code == 0
    assert out == _asked(there, CSV).text
    code, out, _ = _command_line(monkeypatch, capsys, tmp_path, question, "--accept", "application/json")
    assert (code, json.loads(out)) == (0, _asked(there, "*/*").json())


def test_the_command_line_says_what_is_offered(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Any, question: Question
) -> None:
    code, out, told = _command_line(monkeypatch, capsys, tmp_path, question, "--accept", "text/html")
    assert (code, out) == (2, "")
    assert "application/json or text/csv" in told


def test_the_question_answers_its_own_example_in_its_published_shape(question: Question) -> None:
    question.response.model_validate(ask_itself(question))


def ask_itself(question: Question) -> Any:
    return question.ask(json.dumps(question.example).encode())
