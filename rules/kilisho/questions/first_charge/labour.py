"""The work of a first charge: whole containers, trips, person-hours and days."""

from __future__ import annotations

import math
from collections.abc import Sequence

from kilisho.formulas.labour import carrying_hours, whole_containers
from kilisho.messages import Amount, say
from kilisho.questions.answers import Answer, in_hours, in_kilograms
from kilisho.questions.first_charge.work import Work
from kilisho.ranges import Uncertain, certain


def labour_of(work: Work, carried_in: tuple[str, float], bought: float) -> Answer:
    """Person-hours to carry dung and water in one kind of container (name, volume [m3]) and to mix them.

    ``bought`` is the mass [kg] that is taken from others.
    """
    name, volume = carried_in
    values = work.ledger.values
    trips = [whole_containers(values[part], volume) for part in ("substrate_volume", "water_volume")]
    carrying = _carrying(work, volume, trips)
    total = work.ledger.uncertain("mixing_hours").plus(carrying)
    return {
        "mixing": in_hours(*work.ledger.of("mixing_hours")),
        "carrying": in_hours(*carrying.told),
        "total": in_hours(*total.told),
        "trips": sum(trips),
        "carried_in": name,
        **_crew(work, total.value),
        **_hauled(bought + work.asked.starter_slurry),
    }


def _hauled(mass: float) -> Answer:
    """What comes from elsewhere [kg]: nobody carries tonnes over kilometres by hand, and how it is hauled is not asked."""
    if not mass:
        return {}
    return {"hauled_to_farm": in_kilograms(mass), "not_counted_text": say("labour-hauling", mass=Amount(mass, "kg", decimals=0))}


def _carrying(work: Work, volume: float, trips: Sequence[int]) -> Uncertain:
    """Hours of carrying: whole containers of the typical volumes, and parts of one among the samples."""
    ledger = work.ledger
    for name in ("walking_speed", "handling_time", "carrying_distance"):
        ledger.practice(name)
    speed, handling, distance = (ledger.uncertain(name) for name in ("walking_speed", "handling_time", "carrying_distance"))
    to_water = distance if work.asked.water_distance is None else certain(work.asked.water_distance)
    total = certain(0.0)
    for part, way, whole in zip(("substrate_volume", "water_volume"), (distance, to_water), trips, strict=True):
        hours = carrying_hours(whole, way.value, speed.value, handling.value)
        samples = carrying_hours(ledger.uncertain(part).samples / volume, way.samples, speed.samples, handling.samples)
        total = total.plus(Uncertain(float(hours), samples))
    return total


def _crew(work: Work, hours: float) -> Answer:
    """Days and daily mass where it is known who works."""
    values, crew = work.ledger.values, work.asked.labour
    if crew is None:
        return {}
    days = math.ceil(hours / (crew.people * crew.hours_per_day) - 1e-9)
    return {"days": days, "mass_per_person_and_day": in_kilograms((values["substrate_mass"] + values["water_mass"]) / crew.people / days)}
