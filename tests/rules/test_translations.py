"""Work on translations: what is missing, stale or unknown, and the mark that binds a message to its English."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import pytest

from kilisho import load
from kilisho.cli import main
from kilisho.messages import LANGUAGES, Language
from kilisho.messages.fluent import stamp_of
from kilisho.translations import english_of, stamped, state_of

OTHERS = tuple(tag for tag in LANGUAGES if tag != "en")


@cache
def english() -> dict[str, str]:
    return english_of(load())


def test_english_holds_the_sentences_of_code_and_rulebook() -> None:
    text = load().data.checks["no_entry"].why
    assert english()["checks-no_entry-why"] == stamp_of(str(text))
    assert "fault-missing" in english()
    assert len(english()) > 1_500


@pytest.mark.parametrize("tag", OTHERS)
def test_every_message_is_translated_from_the_english_of_today(tag: str) -> None:
    state = state_of(LANGUAGES[tag], english())
    assert {kind: state[kind][:5] for kind in ("missing", "stale", "unknown")} == {"missing": [], "stale": [], "unknown": []}


@pytest.mark.parametrize("tag", OTHERS)
def test_nothing_is_said_to_be_reviewed_that_no_speaker_has_read(tag: str) -> None:
    """No speaker has reviewed a language yet; whoever does says so in the file and takes the language out of this test."""
    assert not [name for name, entry in LANGUAGES[tag].entries.items() if entry.reviewed]


def test_a_mark_is_written_above_each_message_once_and_stays(tmp_path: Path) -> None:
    text = "# for the reader\nfault-missing = kinahitajika\nmine = si la kitabu\nfault-list_expected =\n    orodha\n"
    once = stamped(text, english())
    assert once.count("reviewed: false") == 2
    assert stamped(once, english()) == once
    reviewed = once.replace("reviewed: false", "reviewed: true", 1)
    assert stamped(reviewed, english()) == reviewed
    file = tmp_path / "some.ftl"
    file.write_text(reviewed)
    found = Language("zz", (file,)).overlays
    assert found == (file,)


def test_a_changed_english_makes_a_translation_stale(tmp_path: Path) -> None:
    file = tmp_path / "x.ftl"
    file.write_text("# of 00000000, reviewed: true\nfault-missing = kinahitajika\nnobodys = maneno\n")
    state = state_of(Language("sw", (file,)), english())
    assert state["stale"] == ["fault-missing"]
    assert state["unknown"] == ["nobodys"]


def test_the_command_tells_and_marks(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = tmp_path / "some.ftl"
    file.write_text("fault-missing = kinahitajika\n")
    assert main(["messages", "mark", str(file)]) == 0
    assert file.read_text().startswith(f"# of {english()['fault-missing']}, reviewed: false\n")
    assert main(["messages", "check", "sw"]) == 0
    assert capsys.readouterr().out.startswith("sw: ")
    assert main(["messages", "check", "qq"]) == 2
    assert main(["messages", "mark", str(tmp_path / "none.ftl")]) == 2
