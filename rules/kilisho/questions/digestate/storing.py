"""The store that bridges the time without a crop to spread on."""

from __future__ import annotations

from typing import Any

from kilisho.farm import Ledger
from kilisho.messages import Message, in_a_row, say
from kilisho.questions.answers import Answer, in_cubic_metres, in_days, in_metres, in_months, in_percent, in_square_metres, known

CHOSEN = {"time": "slurry_storage_time", "depth": "slurry_store_depth", "freeboard": "slurry_store_freeboard"}
WANTED = ("digestate_to_store", "slurry_store_area", "slurry_store_needed")


def take_store(asked: Any, ledger: Ledger) -> str | None:
    """Put the store's measures and its loss of ammonia into the ledger; returns its id, None where digestate is spread as it comes."""
    storage = asked.storage
    for field, name in CHOSEN.items():
        stated = getattr(storage, field) if storage is not None else None
        # What somebody is to build or plan for is as certain as an instruction, so its range is not carried.
        ledger.put(**{name: ledger.practice(name) if stated is None else stated})
    if not ledger.values["slurry_storage_time"]:
        ledger.put(ammonia_loss_in_storage=0.0)
        return None
    store = storage.store if storage is not None else None
    first = next(iter(ledger.shelf.data.practice.slurry_stores))
    store = store or ledger.choose("slurry_store", first, say("digestate-store-unknown"))
    ledger.assume("ammonia_loss_in_storage", "slurry_stores", store, "ammonia_loss")
    return str(store)


def solve_store(asked: Any, ledger: Ledger) -> None:
    """Put the store that is needed, and how long the one that there is lasts, into the ledger."""
    ledger.solve(*WANTED)
    if asked.storage is not None and asked.storage.volume is not None:
        ledger.state("slurry_store_volume", asked.storage.volume)
        ledger.solve("slurry_store_lasts")


def store_facts(ledger: Ledger) -> dict[str, float]:
    """How far the store that there is holds what gathers, where it is stated and anything gathers."""
    volume, needed = ledger.values.get("slurry_store_volume"), ledger.values["slurry_store_needed"]
    return {"slurry_store_sufficiency": volume / needed} if volume is not None and needed > 0 else {}


def dug_depth(store: str | None, ledger: Ledger) -> dict[str, float]:
    """Depth [m] of the pit that is to be dug, or dug larger, with its freeboard; nothing where no hole is dug or the store is there."""
    values = ledger.values
    needed = values["slurry_store_needed"]
    if store is None or not ledger.shelf.data.practice.slurry_stores[store].dug or values.get("slurry_store_volume", 0.0) >= needed:
        return {}
    return {"pit_depth": values["slurry_store_depth"] + values["slurry_store_freeboard"]}


def storage(store: str | None, ledger: Ledger) -> Answer:
    """The store as an answer tells it."""
    values, of = ledger.values, ledger.of
    there = "slurry_store_volume" in values
    overflows = values["slurry_store_lasts"] < values["slurry_storage_time"] if there else None
    return {
        **_named(store, ledger),
        "time": in_months(values["slurry_storage_time"]),
        "digestate_to_store": in_cubic_metres(*of("digestate_to_store")),
        "depth": in_metres(values["slurry_store_depth"]),
        "freeboard": in_metres(values["slurry_store_freeboard"]),
        "area": in_square_metres(*of("slurry_store_area")),
        "volume_needed": in_cubic_metres(*of("slurry_store_needed")),
        "ammonia_loss": in_percent(*of("ammonia_loss_in_storage")),
        **({"lasts": in_days(*of("slurry_store_lasts"))} if there else {}),
        **known(overflows=overflows),
        "text": _text(bool(overflows)),
    }


def _text(overflows: bool) -> Message:
    return in_a_row(say("digestate-store"), *([say("digestate-store-overflows")] if overflows else []))


def _named(store: str | None, ledger: Ledger) -> Answer:
    return {} if store is None else {"store": store, "name": ledger.shelf.data.practice.slurry_stores[store].name}
