"""Copies of the packs in force, so that a worker that starts later reads what the others read, whatever has become of the files."""

from __future__ import annotations

import dataclasses
import shutil
from collections.abc import Sequence
from pathlib import Path

from kilisho import packs
from kilisho.packs import PackError, PackFault
from kilisho_api.reloading import held_still

KEPT = 2


class PackCopies:
    """Numbered copies of ``packs`` under ``folder``; each is proved to make a rulebook before anybody is given it."""

    def __init__(self, folder: Path, packs: Sequence[str]) -> None:
        self._folder, self._packs, self._number = folder, [Path(pack) for pack in packs], 0
        self._sound: list[int] = []

    def take(self) -> tuple[str, ...]:
        """Copy the packs as they are now; raises :class:`PackError`, which names the files that were copied or could not be."""
        self._number += 1
        try:
            with held_still(self._packs):
                copies = [self._copied(pack, self._place(self._number) / str(index)) for index, pack in enumerate(self._packs)]
            packs.load(*copies)
        except PackError as error:
            self._drop(self._number)
            raise PackError([self._as_named(fault) for fault in error.faults]) from None
        except BaseException:
            self._drop(self._number)
            raise
        self._sound.append(self._number)
        # A worker that is slow to read may still be at the copy before.
        for number in self._sound[:-KEPT]:
            self._drop(number)
        del self._sound[:-KEPT]
        return tuple(map(str, copies))

    def _drop(self, number: int) -> None:
        shutil.rmtree(self._place(number), ignore_errors=True)

    def _place(self, number: int) -> Path:
        return self._folder / str(number)

    def _copied(self, pack: Path, place: Path) -> Path:
        with packs.told_of(pack):
            place.mkdir(parents=True)
        for file in packs.files_of(pack):
            with packs.told_of(file):
                shutil.copyfile(file, place / file.name)
        return place if pack.is_dir() else place / pack.name

    def _as_named(self, fault: PackFault) -> PackFault:
        for index, pack in enumerate(self._packs):
            place = self._place(self._number) / str(index)
            if Path(fault.file).is_relative_to(place):
                folder = pack if pack.is_dir() else pack.parent
                return dataclasses.replace(fault, file=str(folder / Path(fault.file).relative_to(place)))
        return fault
