"""Gas storage that the use asks for: exact where it is known when the gas is burnt, a share of a day's gas where it is not."""

from __future__ import annotations

from typing import Any

from kilisho.formulas.gas_storage import steady, storage_needed
from kilisho.questions.appliances import burning
from kilisho.questions.sizing.work import Work
from kilisho.questions.storage_methods import BY_HOURS, BY_SHARE, StorageMethod


def take_storage_needed(work: Work) -> StorageMethod:
    """Put the storage that the use asks for into the ledger, with its samples; the method by which it was found."""
    ledger, appliances = work.ledger, work.asked.appliances
    if not appliances or not all(use.use for use in appliances):
        ledger.practice("gas_storage_of_daily_gas")
        ledger.solve("gas_storage_needed")
        return BY_SHARE
    gas, (typical, samples) = ledger.uncertain("biogas_per_day"), burning(appliances, ledger)
    ledger.put(gas_storage_needed=float(storage_needed(steady(gas.value), typical)))
    ledger.sample(gas_storage_needed=storage_needed(steady(gas.samples), samples))
    return BY_HOURS


def storage_step(work: Work, method: StorageMethod) -> list[dict[str, Any]]:
    """The step of the derivation that the graph of formulas does not know: storage by the hours of use."""
    if method != BY_HOURS:
        return []
    values = work.ledger.values
    return [
        {
            "quantity": "gas_storage_needed",
            "value": values["gas_storage_needed"],
            "unit": "m3",
            "formula": "Greatest drop of supply less demand, summed over the hours of a day that repeats itself; the greatest rise where "
            "the day's supply falls short.",
            "inputs": {"biogas_per_day": values["biogas_per_day"], "gas_demand": work.demand},
            "input_units": {"biogas_per_day": "m3/d", "gas_demand": "m3/d"},
            "source": [],
        }
    ]
