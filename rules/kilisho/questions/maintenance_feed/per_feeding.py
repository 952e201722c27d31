"""Tells what goes in at one feeding, and what the digester makes of it."""

from __future__ import annotations

from collections.abc import Sequence

from kilisho.farm import Ledger
from kilisho.formulas.labour import whole_containers
from kilisho.messages import Amount, in_a_row, say
from kilisho.questions.answers import (
    Answer,
    in_cubic_metres_per_day,
    in_days,
    in_grams_per_litre,
    in_kilograms,
    in_kilograms_per_cubic_metre_and_day,
    in_kilograms_per_day,
    in_litres,
    in_litres_per_day,
    in_milligrams_per_litre,
    in_number,
    in_percent,
)
from kilisho.questions.carrying import containers_of
from kilisho.questions.feeding import Fed, comes_by_itself, uncertain_mass
from kilisho.questions.gas_state import gas_state
from kilisho.questions.maintenance_feed.work import Work

URINE_TEXT = say("urine")


def per_feeding(work: Work) -> Answer:
    """What goes in at one feeding, and the day's slurry."""
    ledger, values, every = work.ledger, work.ledger.values, work.asked.feeding.every
    carried = [one for one in work.fed if not comes_by_itself(one.entry)]
    volumes = sum(one.volume for one in carried) * every, values["water_per_day"] * every, values["urine_per_day"] * every
    density = _density_of(carried or work.fed)
    counts = [_container(name, size, volumes, density) for name, size in containers_of(work.asked.containers, ledger)]
    return {
        "per_feeding": {
            "every": in_days(every),
            "substrate_mass": in_kilograms(*ledger.uncertain("feed_mass_per_day").times(every).told),
            "substrates": [_part(one, every, ledger) for one in work.fed],
            "water_volume": in_litres(*ledger.uncertain("water_per_day").times(every).told),
            "urine_volume": in_litres(volumes[2]),
            "containers": counts,
        },
        "feed_per_day": in_kilograms_per_day(*ledger.of("feed_mass_per_day")),
        "water_per_day": in_litres_per_day(*ledger.of("water_per_day")),
        "urine_per_day": in_litres_per_day(values["urine_per_day"]),
        "slurry_per_day": in_litres_per_day(*ledger.of("slurry_per_day")),
        "urine": _urine(ledger),
    }


def _urine(ledger: Ledger) -> Answer:
    """Urine gathered and used, what limits its use, and how the trade's word about it fits the model."""
    values = ledger.values
    return {
        "gathered": in_litres_per_day(*ledger.of("urine_gathered")),
        "used": in_litres_per_day(values["urine_per_day"]),
        "limited_by": values["urine_limited_by"],
        "nitrogen": in_kilograms_per_day(values["urine_nitrogen_per_day"]),
        "text": URINE_TEXT,
    }


def _part(one: Fed, every: float, ledger: Ledger) -> Answer:
    mass, total = uncertain_mass(one), ledger.uncertain("feed_mass_per_day")
    told = {"mass": in_kilograms(*mass.times(every).told), "share": in_percent(*mass.over(total).told)}
    return {"substrate": one.id, "name": one.entry.name, **told}


def _density_of(fed: Sequence[Fed]) -> float:
    """Of the substrates as carried together [kg/m3]."""
    return float(sum(one.mass for one in fed) / sum(one.volume for one in fed))


def _container(name: str, size: float, volumes: tuple[float, float, float], density: float) -> Answer:
    substrate, water, urine = (whole_containers(volume, size) for volume in volumes)
    shown = {"substrate": substrate, "water": water, "urine": urine}
    return {"name": name, "volume": in_litres(size), **shown, "load": in_kilograms(size * density)}


def process(work: Work) -> Answer:
    """Retention, loading, gas with its range, ammonia and digestate."""
    ledger, of = work.ledger, work.ledger.of
    nitrogen = ledger.uncertain("nitrogen_per_day").plus(ledger.uncertain("urine_nitrogen_per_day"))
    return {
        "hydraulic_retention_time": in_days(*of("hydraulic_retention_time")),
        "organic_loading_rate": in_kilograms_per_cubic_metre_and_day(*of("organic_loading_rate")),
        "slurry_total_solids": in_percent(*of("slurry_total_solids")),
        "digester_temperature": work.warmth.told(),
        "share_of_potential": in_percent(*of("share_of_potential")),
        "biogas_per_day": in_cubic_metres_per_day(*of("biogas_per_day")),
        "biogas_per_day_normal": in_cubic_metres_per_day(*of("biogas_per_day_normal")),
        "gas_state": gas_state(ledger),
        "methane_share": in_percent(*of("methane_share")),
        "carbon_to_nitrogen": in_number(*of("carbon_to_nitrogen")),
        "nitrogen_per_day": in_kilograms_per_day(*nitrogen.told),
        "total_ammonia_nitrogen": in_grams_per_litre(*of("total_ammonia_nitrogen")),
        "free_ammonia": in_milligrams_per_litre(*of("free_ammonia")),
        "digestate_per_day": in_litres_per_day(*of("digestate_per_day")),
        "digestate_mass_per_day": in_kilograms_per_day(*of("digestate_mass_per_day")),
        **_rule_of_thumb(work),
    }


def _rule_of_thumb(work: Work) -> Answer:
    """The trade's gas per head beside the model's, with the reason why they differ."""
    if work.supply.rule_of_thumb_gas is None:
        return {}
    rule, values = work.supply.rule_of_thumb_gas, work.ledger.values
    _, *ends = work.ledger.of("biogas_per_day")
    inside = bool(ends) and ends[0] <= rule <= ends[1]
    temperature, retention = values["digester_temperature"], values["hydraulic_retention_time"]
    holds = say("trade-gas", temperature=Amount(temperature, "Cel", decimals=0), retention=Amount(retention, "d", decimals=0))
    why = in_a_row(holds, say("trade-gas-inside") if inside else say("trade-gas-outside"))
    return {"rule_of_thumb": {"biogas_per_day": in_cubic_metres_per_day(rule), "within_range": inside, "why": why}}
