"""What material is carried in."""

from __future__ import annotations

from collections.abc import Sequence

from kilisho.farm import Ledger
from kilisho.questions.requests import Container


def containers_of(stated: Sequence[Container], ledger: Ledger) -> list[tuple[str, float]]:
    """Name and volume [m3] of the farm's containers, or the usual bucket."""
    if stated:
        return [(one.name, one.volume) for one in stated]
    name, usual = next(iter(ledger.shelf.data.practice.containers.items()))
    ledger.assumptions.append(ledger.shelf.assumption("containers", name, "volume"))
    return [(usual.name, usual.volume.typical)]


def lifted_load(stated: Sequence[Container], density: float) -> dict[str, float]:
    """The heaviest stated container that a person lifts, full of material of ``density`` [kg/m3]; empty where none is stated."""
    lifted = [one.volume * density for one in stated if one.by_hand]
    return {"load_carried": max(lifted)} if lifted else {}
