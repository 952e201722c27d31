"""The digester as built: its structure, volumes, and contradictions between what is stated of it."""

from __future__ import annotations

from typing import Any

from kilisho.farm import GRAPH, Ledger
from kilisho.messages import say
from kilisho.questions.requests import Digester
from kilisho.questions.sharing import once
from kilisho.rulebook import Structure


def structure_of(name: str | None, ledger: Ledger) -> tuple[str, Structure]:
    """The structure named, or the one assumed."""
    chosen = name or ledger.choose("structure", ledger.shelf.first_structure, say("assumed-structure"))
    return chosen, ledger.shelf.data.structures[chosen]


@once
def take_digester(digester: Digester, ledger: Ledger) -> tuple[str, Structure]:
    """Put the digester's volumes and its structure's shares into the ledger.

    ``total_volume``, ``working_volume`` and ``gas_storage_volume`` are known afterwards, as stated or derived from each other.
    """
    name, structure = structure_of(digester.structure, ledger)
    ledger.put(tanks_in_series=float(structure.tanks_in_series))
    for field in ("total_volume", "working_volume", "gas_storage_volume"):
        value = getattr(digester, field)
        if value is not None:
            ledger.state(field, value)
    _fill_share(name, ledger)
    if "gas_storage_volume" not in ledger.stated:
        ledger.assume("gas_storage_share", "structures", name, "gas_storage_share")
    ledger.solve("working_volume", "gas_storage_volume")
    return name, structure


def _fill_share(name: str, ledger: Ledger) -> None:
    """The share of the total volume that is slurry: from both volumes where both are stated, otherwise the structure's."""
    values = ledger.values
    if "total_volume" in values and "working_volume" in values:
        ledger.put(fill_share=values["working_volume"] / values["total_volume"])
        return
    share = ledger.assume("fill_share", "structures", name, "fill_share")
    if "total_volume" not in values:
        ledger.put(total_volume=values["working_volume"] / share)


def digester_contradictions(structure: Structure, ledger: Ledger) -> list[Any]:
    """Stated volumes that the structure's shares, from their low to their high end, deny."""
    stated: dict[str, Any] = {n: ledger.stated[n] for n in ("total_volume", "working_volume", "gas_storage_volume") if n in ledger.stated}
    if "total_volume" not in stated:
        return []
    shares = {"fill_share": structure.fill_share, "gas_storage_share": structure.gas_storage_share}
    low = {name: figure.least for name, figure in shares.items()}
    high = {name: figure.most for name, figure in shares.items()}
    return GRAPH.contradictions(stated, low, high)
