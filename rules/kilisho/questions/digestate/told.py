"""Tells the balance, the fields, the rule on nitrogen and the waits."""

from __future__ import annotations

from typing import Any

from kilisho.messages import Message, in_a_row, say
from kilisho.questions.answers import (
    Answer,
    in_cubic_metres,
    in_cubic_metres_per_day,
    in_cubic_metres_per_hectare,
    in_cubic_metres_per_year,
    in_days,
    in_hectares,
    in_kilograms_per_day,
    in_kilograms_per_hectare,
    in_kilograms_per_year,
    in_litres,
    in_litres_per_day,
    in_number,
    in_percent,
    known,
)
from kilisho.questions.digestate.land import YEAR, Field
from kilisho.questions.digestate.waiting import Waiting, longest
from kilisho.questions.digestate.work import Work
from kilisho.ranges import certain

HUNDRED_SQUARE_METRES = 100.0


def flows(work: Work) -> Answer:
    """What comes out a day and a year, and the balance of mass and solids."""
    ledger, of = work.ledger, work.ledger.of
    return {
        "digestate_per_day": in_litres_per_day(*of("digestate_per_day")),
        "digestate_per_year": in_cubic_metres_per_year(*of("digestate_per_day")),
        "slurry_per_day": in_litres_per_day(*of("slurry_per_day")),
        "water_per_day": in_litres_per_day(*of("water_per_day")),
        "hydraulic_retention_time": in_days(*of("hydraulic_retention_time")),
        "biogas_per_day": in_cubic_metres_per_day(*of("biogas_per_day")),
        "balance": {
            "slurry_in": in_kilograms_per_day(*of("slurry_mass_per_day")),
            "gas_out": in_kilograms_per_day(*of("biogas_mass_per_day")),
            "digestate_out": in_kilograms_per_day(*of("digestate_mass_per_day")),
            "total_solids_in": in_kilograms_per_day(*of("total_solids_per_day")),
            "organic_matter_in": in_kilograms_per_day(*of("volatile_solids_per_day")),
            "organic_matter_to_gas": in_kilograms_per_day(*of("volatile_solids_destroyed_per_day")),
            "organic_matter_left": in_kilograms_per_day(*of("volatile_solids_left_per_day")),
            "organic_matter_left_per_year": in_kilograms_per_year(*of("volatile_solids_left_per_day")),
            "total_solids_left": in_kilograms_per_day(*of("total_solids_left_per_day")),
            "total_solids_left_per_year": in_kilograms_per_year(*of("total_solids_left_per_day")),
            "digestate_total_solids": in_percent(*of("digestate_total_solids")),
            "grit_per_year": in_kilograms_per_year(*ledger.of("grit_per_day")),
            "text": say("digestate-balance"),
        },
    }


def land(work: Work, vessels: list[tuple[str, float]]) -> Answer:
    """How far the digestate reaches, field by field."""
    return {
        "area_served": in_hectares(*work.land.served.told),
        "surplus": in_cubic_metres(*work.land.surplus.told),
        "crops": [_field(field, vessels) for field in work.land.fields],
        "nitrogen_rule": _nitrogen_rule(work),
    }


def _field(field: Field, vessels: list[tuple[str, float]]) -> Answer:
    area, wanted = field.area, field.wanted
    shown: dict[str, Any] = {}
    if area is not None and wanted is not None:
        without = certain(area).less(field.served)
        shown = {
            "area": in_hectares(area),
            "area_left_without": in_hectares(*without.told),
            "digestate_wanted": in_cubic_metres(*wanted.told),
        }
    return {
        "crop": field.id,
        "name": field.entry.name,
        "nitrogen_need": in_kilograms_per_hectare(*field.need.told),
        "limited_by": field.limited_by,
        "digestate_per_area": in_cubic_metres_per_hectare(*field.rate.told),
        "total_nitrogen_per_area": in_kilograms_per_hectare(*field.nitrogen.told),
        "containers": [_container(field, name, size) for name, size in vessels],
        **shown,
        "digestate_given": in_cubic_metres(*field.given.told),
        "area_served": in_hectares(*field.served.told),
        "eaten_raw": field.facts["digestate_on_raw_crops"],
        "waiting": _waiting(field.waiting),
        "handling": list(field.entry.handling),
    }


def _container(field: Field, name: str, size: float) -> Answer:
    count = field.rate.times(HUNDRED_SQUARE_METRES / size)
    return {"name": name, "volume": in_litres(size), "on_100_square_metres": in_number(*count.told)}


def _waiting(waiting: Waiting) -> Answer:
    if waiting.never:
        return {"allowed": False, "checks": []}
    told = {"time": in_days(waiting.days)} if waiting.days is not None else {}
    return {"allowed": True, **told, "checks": list(waiting.checks)}


def _nitrogen_rule(work: Work) -> Answer:
    """The limit of manure nitrogen, stated or common elsewhere, and the area that all digestate needs to keep it."""
    ledger, stated = work.ledger, work.ledger.stated.get("nitrogen_limit")
    limit = stated if stated is not None else ledger.figure("figures", "nitrogen_limit_elsewhere", "nitrogen_limit").value
    area = ledger.uncertain("nitrogen_spread_per_day").times(YEAR / limit)
    return {
        "limit": in_kilograms_per_hectare(limit),
        "applied": stated is not None,
        "area_to_keep_it": in_hectares(*area.told),
        "text": say("digestate-limit-elsewhere") if stated is None else say("digestate-limit-stated"),
    }


def hygiene(work: Work) -> Answer:
    """The longest wait, the crops that must get none, and what must not be promised."""
    waits = [field.waiting for field in work.land.fields]
    days, stored = longest(waits), max((one.stored for one in waits if one.stored is not None), default=None)
    time = in_days(days) if days is not None else {}
    never = list(dict.fromkeys(field.id for field in work.land.fields if field.waiting.never))
    excreta = work.facts["human_excreta_fed"]
    return {
        "waiting_time": {**time, "never_on": never, "text": say("digestate-waiting")},
        "hygiene": {
            "sanitised": False,
            "human_excreta_fed": excreta,
            **known(storing_before_use=None if stored is None else in_days(stored)),
            "text": _germs(excreta),
        },
    }


def _germs(excreta: bool) -> Message:
    return in_a_row(say("digestate-not-safe"), *([say("digestate-excreta-first")] if excreta else []))
