"""The kept corpus once through every target, and each target fuzzed for a short while from a fixed seed."""

from __future__ import annotations

import importlib.util
import json
import re
import subprocess
import sys
from pathlib import Path

import pytest
from tests.fuzz import mutating, targets

from kilisho.questions import Question

ROOT = Path(__file__).resolve().parents[2]
CORPUS = Path(__file__).parent / "corpus"
LARGEST_CORPUS = 200_000
# Runs of the short fuzzing: what an idle machine does in some ten seconds. The time ends a run only on a busy one.
RUNS = {"bodies": 120, "packs": 300, "messages": 15_000, "headers": 40_000, "requests": 2_000}
LONGEST_SECONDS = 18
KEPT = [(name, file) for name in targets.TARGETS for file in sorted((CORPUS / name).iterdir())]


@pytest.mark.parametrize(("name", "file"), KEPT, ids=[f"{name}-{file.name}" for name, file in KEPT])
def test_every_kept_input_is_answered_or_refused(name: str, file: Path) -> None:
    targets.TARGETS[name](file.read_bytes())


def test_the_corpus_has_something_for_every_target_and_stays_small() -> None:
    assert {name for name, _ in KEPT} == set(targets.TARGETS) == set(RUNS) == {folder.name for folder in CORPUS.iterdir()}
    assert sum(file.stat().st_size for _, file in KEPT) < LARGEST_CORPUS


def test_every_question_has_a_body_that_is_answered() -> None:
    """Else the fuzzer would only ever see refusals."""
    answered = set()
    for file in (CORPUS / "bodies").iterdir():
        name, _, body = file.read_bytes().partition(b"\n")
        question = targets.questions()[name.decode()]
        question.read(targets.parse(body))
        answered.add(question.name)
    assert answered == set(targets.questions())


@pytest.mark.parametrize("name", ["sizing-example", "feed-mix-contract"])
def test_changed_bodies_stay_json_and_differ(name: str) -> None:
    data = (CORPUS / "bodies" / name).read_bytes()
    changed = [mutating.body(data, 6_000, seed) for seed in range(200)]
    made = {one for one in changed if one is not None}
    assert len(made) > 100
    assert changed == [mutating.body(data, 6_000, seed) for seed in range(200)]
    for one in made:
        targets.parse(one.partition(b"\n")[2].replace(b"NaN", b"0"))
    assert mutating.body(b"sizing\nno json", 100, 1) is None


@pytest.mark.parametrize("name", ["sizing-example", "gas-forecast-example"])
def test_of_changed_bodies_many_are_taken_and_many_refused(name: str) -> None:
    """Where all are refused, nothing behind the reading of a request is tried."""
    data = (CORPUS / "bodies" / name).read_bytes()
    question = targets.questions()[name.removesuffix("-example")]
    verdicts = [_taken(question, one) for seed in range(100) if (one := mutating.body(data, 6_000, seed)) is not None]
    assert 30 < sum(verdicts) < 80


def _taken(question: Question, body: bytes) -> bool:
    try:
        question.read(targets.parse(body.partition(b"\n")[2]))
    except targets.REFUSALS:
        return False
    return True


def test_changed_packs_stay_packs_of_which_some_load(tmp_path: Path) -> None:
    from kilisho import packs

    data = (CORPUS / "packs" / "figure").read_bytes()
    file, sound = tmp_path / "p.yaml", 0
    for seed in range(40):
        made = mutating.pack(data, 20_000, seed)
        if made is not None:
            file.write_bytes(made)
            sound += not packs.check(file)
    assert 0 < sound < 40


def test_some_changed_packs_are_yaml_that_is_no_json() -> None:
    """Tags and scalars of YAML's own are read by another path than what JSON can write."""
    data = (CORPUS / "packs" / "figure").read_bytes()
    made = [one.decode() for seed in range(200) if (one := mutating.pack(data, 20_000, seed)) is not None]
    assert sum(not _is_json(one) for one in made) > 20
    assert sum("!!" in one for one in made) > 10
    assert any(scalar in one for one in made for scalar in mutating.SCALARS[-6:])


def _is_json(text: str) -> bool:
    try:
        json.loads(text)
    except ValueError:
        return False
    return True


def test_a_target_lets_a_fault_of_ours_through(monkeypatch: pytest.MonkeyPatch) -> None:
    """A harness that caught everything would find nothing."""

    def broken(*_: object) -> None:
        raise IndexError("a fault of ours")

    for where, name, file in (
        ("tests.fuzz.targets.parse", "bodies", "sizing-example"),
        ("kilisho.packs._merge", "packs", "figure"),
        ("tests.fuzz.targets.source_of", "messages", "translated"),
        ("tests.fuzz.targets.unchanged", "headers", "00"),
    ):
        with monkeypatch.context() as patched:
            patched.setattr(where, broken)
            with pytest.raises(IndexError):
                targets.TARGETS[name]((CORPUS / name / file).read_bytes())
    monkeypatch.setattr("kilisho_api.operations.parse", broken)
    with pytest.raises(AssertionError):
        targets.TARGETS["requests"]((CORPUS / "requests" / "00").read_bytes())


@pytest.mark.skipif(importlib.util.find_spec("atheris") is None, reason="atheris is built for Linux on x86-64 only")
@pytest.mark.parametrize("name", RUNS)
def test_a_short_fuzzing_finds_no_fault(name: str, tmp_path: Path) -> None:
    options = ["-seed=1", f"-runs={RUNS[name]}", f"-max_total_time={LONGEST_SECONDS}", f"-artifact_prefix={tmp_path}/"]
    (tmp_path / "new").mkdir()
    command = [sys.executable, "-m", "tests.fuzz.run", name, str(tmp_path / "new"), *options]
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False, timeout=300)
    assert done.returncode == 0, done.stderr[-5_000:]
    [runs] = re.findall(r"^Done (\d+) runs in", done.stderr, re.MULTILINE)
    assert int(runs) > len(list((CORPUS / name).iterdir()))
    # The engine's own lines are seen: a fuzzer that sees none is one that guesses.
    [*_, covered] = re.findall(r"cov: (\d+)", done.stderr)
    assert int(covered) > 50
