"""The README is true: its request is answered as it says, its pack is read as it says, and what it names exists."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest

from kilisho import check, load, open_questions
from kilisho.farm import GRAPH

ROOT = Path(__file__).resolve().parents[1]
README = (ROOT / "README.md").read_text("utf-8")
DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text("utf-8")


def block(language: str, containing: str) -> str:
    [found] = [body for body in re.findall(rf"```{language}\n(.*?)```", README, re.DOTALL) if containing in body]
    return str(found)


def test_the_job_stands_at_the_top_in_one_paragraph() -> None:
    title, job, *_ = README.split("\n\n")
    assert title == "# Kilisho"
    assert 60 < len(job.split()) < 160


def test_the_request_is_answered_as_the_text_says() -> None:
    body = re.search(r"-d '(\{.*?\})'", block("sh", "curl"), re.DOTALL)
    assert body is not None
    answer = open_questions(load())["first-charge"].ask(body[1].encode())
    heap = answer["stockpile"]
    assert (answer["slurry_volume"]["value"], answer["substrate_mass"]["value"], answer["water_volume"]["value"]) == (8, 4000, 4)
    assert (heap["collected"]["value"], heap["enough"]) == (3600, False)
    assert heap["enough_on"] > "2027-02-03"


def test_the_pack_names_what_is_missing(tmp_path: Path) -> None:
    file = tmp_path / "my-region.yaml"
    file.write_text(block("yaml", "sunflower_stalk"), "utf-8")
    faults = check(file)
    assert faults
    assert {fault.path.split(".")[:2] == ["substrates", "sunflower_stalk"] for fault in faults} == {True}
    assert {fault.expected for fault in faults} == {"this key is required"}


def test_the_pack_without_its_unfinished_substrate_is_sound(tmp_path: Path) -> None:
    text = block("yaml", "sunflower_stalk")
    start, end = text.index("substrates:"), text.index("checks:")
    file = tmp_path / "my-region.yaml"
    file.write_text(text[:start] + text[end:], "utf-8")
    assert check(file) == []
    assert "well_distance_here" in load(file).data.checks


@pytest.mark.parametrize("text", [README, DEVELOPERS], ids=["README", "DEVELOPERS"])
def test_every_file_that_is_named_exists(text: str) -> None:
    named = set(re.findall(r"\b(?:api|tests|rules|openapi|docker)/[\w./-]+\.\w+", text))
    assert named
    assert [name for name in sorted(named) if not (ROOT / name).exists()] == []


def test_the_formula_that_developers_read_is_the_formula_that_runs() -> None:
    assert "hydraulic_retention_time(working_volume, slurry_per_day)" in DEVELOPERS
    assert GRAPH.quantities["hydraulic_retention_time"].inputs == ("working_volume", "slurry_per_day")


def test_the_operations_of_the_table_are_those_that_can_be_asked() -> None:
    named = set(re.findall(r"`POST /v1/([\w/-]+)`", README))
    assert named == {*open_questions(load()), "installations/validate-table"}


def test_the_example_that_is_named_can_be_asked() -> None:
    [name] = set(re.findall(r"ask first-charge (openapi/examples/\S+)", README))
    assert json.loads((ROOT / name).read_text("utf-8"))["digester"]
