"""Copies of packs: whole or not at all, and faults named by the files that people know."""

from __future__ import annotations

import errno
import os
from pathlib import Path

import pytest

from kilisho import packs
from kilisho.packs import PackError
from kilisho_api import pack_copies
from kilisho_api.pack_copies import KEPT, PackCopies
from kilisho_api.reloading import STEADY, held_still, read_whole

PACK = "pack: {id: measured, version: 0.0.1, title: Measured on an invented farm}\n"
BROKEN = "substrates:\n  cattle_dung:\n    total_solid: 1\n"
MESSAGES = "# of 3f2a9c1e, reviewed: false\npack-title = Imepimwa\n"


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    made = tmp_path / "region"
    made.mkdir()
    (made / "a.yaml").write_text(PACK)
    (made / "farm.sw.ftl").write_text(MESSAGES)
    (made / "notes.txt").write_text("not read")
    return made


def test_a_copy_is_the_same_rulebook(tmp_path: Path, folder: Path) -> None:
    single = tmp_path / "farm.yaml"
    single.write_text(PACK.replace("measured", "single"))
    (tmp_path / "farm.sw.ftl").write_text(MESSAGES)
    given = [str(folder), str(single)]
    copies = PackCopies(tmp_path / "copies", given).take()
    assert packs.load(*copies).identity == packs.load(*given).identity
    assert [file.name for file in sorted(Path(copies[0]).iterdir())] == ["a.yaml", "farm.sw.ftl"]
    assert packs.load(*copies).languages["sw"].overlays != packs.load().languages["sw"].overlays


def test_a_later_change_leaves_the_copy_as_it_is(tmp_path: Path, folder: Path) -> None:
    copy = PackCopies(tmp_path / "copies", [str(folder)])
    first = copy.take()
    (folder / "a.yaml").write_text(PACK.replace("0.0.1", "0.0.2"))
    second = copy.take()
    assert packs.load(*first).identity["version"] != packs.load(*second).identity["version"]


@pytest.mark.parametrize("single", [True, False])
def test_faults_name_the_file_that_was_copied(tmp_path: Path, folder: Path, single: bool) -> None:
    (folder / "a.yaml").write_text(PACK + BROKEN)
    given = folder / "a.yaml" if single else folder
    with pytest.raises(PackError) as caught:
        PackCopies(tmp_path / "copies", [str(given)]).take()
    [fault] = caught.value.faults
    assert (fault.file, fault.line) == (str(folder / "a.yaml"), 4)
    assert list((tmp_path / "copies").iterdir()) == []


def test_a_pack_that_is_not_there_is_named_as_it_was_given(tmp_path: Path) -> None:
    with pytest.raises(PackError) as caught:
        PackCopies(tmp_path / "copies", [str(tmp_path / "nowhere.yaml")]).take()
    assert [fault.file for fault in caught.value.faults] == [str(tmp_path / "nowhere.yaml")]


def test_what_cannot_be_copied_is_named_and_leaves_nothing(tmp_path: Path, folder: Path) -> None:
    (folder / "b.yaml").symlink_to("nowhere")
    assert str(refused(tmp_path, folder)) == f"{folder / 'b.yaml'}:0: the file: a file that can be read (No such file or directory)"


@pytest.mark.parametrize("failing", ["shutil.copyfile", "Path.mkdir"])
def test_a_full_disk_is_a_fault(failing: str, tmp_path: Path, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object, **__: object) -> None:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    copies = PackCopies(tmp_path / "copies", [str(folder)])
    before = copies.take()
    with monkeypatch.context() as patched:
        patched.setattr(f"kilisho_api.pack_copies.{failing}", full)
        with pytest.raises(PackError, match="No space left on device"):
            copies.take()
    assert [file.name for file in (tmp_path / "copies").iterdir()] == ["1"]
    assert packs.load(*before).identity == packs.load(*copies.take()).identity


def test_a_fault_of_ours_leaves_no_copy(tmp_path: Path, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object) -> None:
        raise IndexError

    monkeypatch.setattr(pack_copies.packs, "load", broken)
    with pytest.raises(IndexError):
        PackCopies(tmp_path / "copies", [str(folder)]).take()
    assert list((tmp_path / "copies").iterdir()) == []


def refused(tmp_path: Path, pack: Path) -> PackError:
    with pytest.raises(PackError) as caught:
        PackCopies(tmp_path / "copies", [str(pack)]).take()
    return caught.value


def test_old_copies_are_cleared_away(tmp_path: Path, folder: Path) -> None:
    copy = PackCopies(tmp_path / "copies", [str(folder)])
    taken = [copy.take() for _ in range(KEPT + 2)]
    assert [Path(one[0]).exists() for one in taken] == [False, False, *[True] * KEPT]


def test_a_file_that_is_being_written_is_refused(folder: Path) -> None:
    def write_while_it_is_read() -> None:
        with held_still([folder]):
            (folder / "a.yaml").write_text(PACK + "# more")
            (folder / "b.yaml").write_text("")

    with pytest.raises(PackError) as caught:
        write_while_it_is_read()
    assert {(fault.file, fault.expected) for fault in caught.value.faults} == {
        (str(folder / name), STEADY) for name in ("a.yaml", "b.yaml")
    }


def test_a_pack_that_changes_while_it_is_copied_is_refused(tmp_path: Path, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def write_on(source: Path, target: Path) -> None:
        source.write_text(source.read_text() + "# more\n")

    monkeypatch.setattr(pack_copies.shutil, "copyfile", write_on)
    with pytest.raises(PackError, match="stays as it is"):
        PackCopies(tmp_path / "copies", [str(folder)]).take()


def test_reading_whole_is_reading(folder: Path) -> None:
    assert read_whole([str(folder)]).identity == packs.load(folder).identity
