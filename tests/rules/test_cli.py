"""The command line: the same answers as the API, exit codes that a script can trust, and words instead of tracebacks."""

from __future__ import annotations

import io
import json
import os
import subprocess
import sys
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest
from tests.api.asking import OPERATIONS

from kilisho import packs
from kilisho.cli import main
from kilisho.questions import Question, open_questions

KILISHO = [sys.executable, "-m", "kilisho.cli"]
Captured = pytest.CaptureFixture[str]
PACK = "pack: {id: region, version: 0.0.1, title: A region}\n"


@pytest.fixture(scope="module")
def questions() -> Mapping[str, Question]:
    return open_questions(packs.load())


@pytest.fixture
def request_file(tmp_path: Path, questions: Mapping[str, Question]) -> Path:
    file = tmp_path / "farm.json"
    file.write_text(json.dumps(questions["sizing"].example))
    return file


def _pack(folder: Path, text: str) -> str:
    file = folder / "region.yaml"
    file.write_text(PACK + text)
    return str(file)


@pytest.mark.parametrize("name", OPERATIONS)
@pytest.mark.parametrize("explain", [False, True])
def test_an_answer_is_the_answer_of_the_engine(
    tmp_path: Path, capsys: Captured, questions: Mapping[str, Question], name: str, explain: bool
) -> None:
    body = json.dumps(questions[name].example).encode()
    file = tmp_path / "request.json"
    file.write_bytes(body)
    assert main(["ask", name, str(file), *(["--explain"] if explain else [])]) == 0
    assert json.loads(capsys.readouterr().out) == json.loads(json.dumps(questions[name].ask(body, explain)))


def test_pretty_changes_the_look_alone(request_file: Path, capsys: Captured) -> None:
    main(["ask", "sizing", str(request_file)])
    plain = capsys.readouterr().out
    main(["ask", "sizing", str(request_file), "--pretty"])
    pretty = capsys.readouterr().out
    assert plain.count("\n") == 1
    assert pretty.count("\n") > 20
    assert json.loads(plain) == json.loads(pretty)


def test_a_request_can_come_from_standard_input(capsys: Captured, monkeypatch: pytest.MonkeyPatch, request_file: Path) -> None:
    monkeypatch.setattr("sys.stdin", io.TextIOWrapper(io.BytesIO(request_file.read_bytes())))
    assert main(["ask", "sizing", "-"]) == 0
    assert "total_volume" in json.loads(capsys.readouterr().out)


def test_a_refused_request_is_told_line_by_line_with_what_is_near(tmp_path: Path, capsys: Captured) -> None:
    file = tmp_path / "farm.json"
    file.write_text('{"herdd": [], "water_available": {"value": 1, "unit": "l/d"}}')
    assert main(["ask", "sizing", str(file)]) == 1
    out, err = capsys.readouterr()
    assert out == ""
    assert "/herdd: no such member here (nearest: herd)" in err.splitlines()
    assert any(line.startswith("/water_available/unit: ") and "L/d" in line for line in err.splitlines())


@pytest.mark.parametrize("text", ["", "{", "[1, 2", '{"a": NaN}', '{"name": "a", "name": "b"}', "[" * 10_000])
def test_broken_json_is_told(tmp_path: Path, capsys: Captured, text: str) -> None:
    file = tmp_path / "farm.json"
    file.write_text(text)
    assert main(["ask", "sizing", str(file)]) == 1
    assert capsys.readouterr().err.startswith("the body is not one JSON document")


def _file(folder: Path, content: bytes) -> str:
    file = folder / "request"
    file.write_bytes(content)
    return str(file)


@pytest.mark.parametrize(
    ("make", "expected"),
    [
        (lambda folder: str(folder / "missing.json"), "No such file"),
        (str, "Is a directory"),
        (lambda folder: _file(folder, b'{"name": "\xff"}'), "not UTF-8 text"),
        (lambda folder: _file(folder, b" " * 1_000_001), "more than 1000000 bytes"),
        (lambda _folder: "a\0b", "not a file name"),
    ],
)
def test_a_file_that_cannot_be_used_is_named(tmp_path: Path, capsys: Captured, make: Any, expected: str) -> None:
    name = make(tmp_path)
    assert main(["ask", "sizing", name]) == 2
    told = capsys.readouterr().err
    assert told.startswith(name)
    assert expected in told


def test_an_unknown_operation_is_answered_with_the_nearest(request_file: Path, capsys: Captured, questions: Mapping[str, Question]) -> None:
    assert main(["ask", "first_charge", str(request_file)]) == 2
    assert capsys.readouterr().err == "no operation is called 'first_charge'; did you mean first-charge?\n"
    assert main(["ask", "zzz", str(request_file)]) == 2
    assert " or ".join(questions) in capsys.readouterr().err


def test_operations_are_listed(capsys: Captured, questions: Mapping[str, Question]) -> None:
    assert main(["operations"]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert [line.split()[0] for line in lines] == list(questions)
    assert all(question.title in line for line, question in zip(lines, questions.values(), strict=True))


def test_the_rulebook_is_shown(capsys: Captured) -> None:
    assert main(["rulebook", "show"]) == 0
    rulebook = packs.load()
    lines = capsys.readouterr().out.splitlines()
    assert lines[:3] == [f"{name}: {value}" for name, value in rulebook.identity.items()]
    assert f"substrates: {len(rulebook.data.substrates)}" in lines


def test_a_sound_pack_passes_in_silence(tmp_path: Path, capsys: Captured) -> None:
    pack = _pack(tmp_path, "substrates: {cattle_dung: {total_solids: {typical: 12, unit: '%', basis: judgement}}}\n")
    assert main(["rulebook", "check", pack]) == 0
    assert main(["rulebook", "check"]) == 0
    assert capsys.readouterr() == ("", "")


def test_faults_of_a_pack_are_told_by_file_line_and_path(tmp_path: Path, capsys: Captured) -> None:
    pack = _pack(tmp_path, "substrates:\n  cattle_dung:\n    total_solid: {typical: 12, unit: '%', basis: judgement}\n")
    assert main(["rulebook", "check", pack]) == 1
    assert capsys.readouterr().out == f"{pack}:4: substrates.cattle_dung.total_solid: no such key here\n"


@pytest.mark.parametrize("content", [b"a: [", b"\xff\xfe", b"- 1", b"a: &x [*x]", b""])
def test_a_file_that_is_no_pack_is_told(tmp_path: Path, capsys: Captured, content: bytes) -> None:
    file = tmp_path / "region.yaml"
    file.write_bytes(content)
    code = main(["rulebook", "check", str(file)])
    assert code == (0 if content == b"" else 1)
    assert (str(file) in capsys.readouterr().out) == (code == 1)


def test_packs_change_the_answer_and_its_rulebook(tmp_path: Path, capsys: Captured, request_file: Path) -> None:
    pack = _pack(tmp_path, "substrates: {cattle_dung: {total_solids: {typical: 12, unit: '%', basis: judgement}}}\n")
    main(["ask", "sizing", str(request_file)])
    base = json.loads(capsys.readouterr().out)
    main(["ask", "sizing", str(request_file), "--packs", pack])
    laid = json.loads(capsys.readouterr().out)
    assert laid["rulebook"]["id"] == "base_region"
    assert laid["rulebook"]["hash"] != base["rulebook"]["hash"]
    assert laid["organic_loading_rate"] != base["organic_loading_rate"]


def test_broken_packs_are_told_before_a_question_is_read(tmp_path: Path, capsys: Captured) -> None:
    assert main(["ask", "sizing", "missing.json", "--packs", _pack(tmp_path, "surprise: 1\n")]) == 2
    assert "surprise: no such key here" in capsys.readouterr().err


@pytest.mark.parametrize("arguments", [[], ["nothing"], ["ask"], ["ask", "sizing"], ["rulebook"], ["ask", "sizing", "x", "--loud"]])
def test_wrong_usage_is_told_with_the_right_one(capsys: Captured, arguments: list[str]) -> None:
    with pytest.raises(SystemExit) as stopped:
        main(arguments)
    assert stopped.value.code == 2
    assert capsys.readouterr().err.startswith("usage: kilisho")


@pytest.mark.parametrize("arguments", [["--help"], ["ask", "--help"], ["rulebook", "check", "--help"], ["serve", "--help"]])
def test_help_is_there_for_every_command(capsys: Captured, arguments: list[str]) -> None:
    with pytest.raises(SystemExit) as stopped:
        main(arguments)
    assert stopped.value.code == 0
    assert "kilisho" in capsys.readouterr().out


def test_help_gives_examples_that_work(capsys: Captured) -> None:
    with pytest.raises(SystemExit):
        main(["--help"])
    assert "kilisho ask sizing farm.json --pretty" in capsys.readouterr().out


def test_it_knows_its_version() -> None:
    done = subprocess.run([*KILISHO, "--version"], capture_output=True, text=True, check=True)
    assert done.stdout.startswith("kilisho ")


def test_a_reader_that_stops_reading_is_no_fault(request_file: Path) -> None:
    command = [*KILISHO, "ask", "sizing", str(request_file), "--pretty"]
    with subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE) as process:
        assert process.stdout is not None
        assert process.stderr is not None
        process.stdout.close()
        assert process.stderr.read() == b""
        assert process.wait() == 0


def test_text_of_the_caller_survives_a_poor_terminal(tmp_path: Path, questions: Mapping[str, Question]) -> None:
    file = tmp_path / "farm.json"
    file.write_text(json.dumps({**questions["sizing"].example, "name": "Mlima wa Ng'ombe – 山"}, ensure_ascii=False), "utf-8")
    environment = os.environ | {"LC_ALL": "C", "PYTHONUTF8": "0", "PYTHONIOENCODING": "ascii"}
    done = subprocess.run([*KILISHO, "ask", "sizing", str(file)], capture_output=True, env=environment, check=True)
    assert json.loads(done.stdout)["name"] == "Mlima wa Ng'ombe – 山"


def test_a_command_needs_no_web_server() -> None:
    program = (
        "import sys; from kilisho.cli import main; main(['operations']);print(sorted({'litestar', 'uvicorn', 'pint'} & sys.modules.keys()))"
    )
    assert subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True).stdout.endswith("[]\n")
