"""How the gas rises and falls between two feedings, and the storage that evens it out."""

from __future__ import annotations

from kilisho.formulas.gas_between_feedings import peak_over_mean, storage_between_feedings, trough_over_mean
from kilisho.messages import say
from kilisho.questions.answers import Answer, in_cubic_metres, in_cubic_metres_per_day
from kilisho.questions.maintenance_feed.work import Work
from kilisho.ranges import Uncertain

TEXT = say("between-feedings")


def between_feedings(work: Work) -> Answer:
    """Greatest and least gas, and the storage for an even use, of a stirred digester that is fed the same at each feeding."""
    every, gas, rate = work.asked.feeding.every, work.ledger.uncertain("biogas_per_day"), work.ledger.uncertain("mean_rate")
    peak, trough = (Uncertain(float(swing(rate.value, every)), swing(rate.samples, every)) for swing in (peak_over_mean, trough_over_mean))
    storage = float(storage_between_feedings(gas.value, rate.value, every))
    return {
        "greatest_gas": in_cubic_metres_per_day(*gas.by(peak).told),
        "least_gas": in_cubic_metres_per_day(*gas.by(trough).told),
        "storage_needed": in_cubic_metres(*Uncertain(storage, storage_between_feedings(gas.samples, rate.samples, every)).told),
        "text": TEXT,
    }
