"""The work of a first charge: whole containers, trips, person-hours and days."""

from __future__ import annotations

import math

from kilisho.formulas.labour import carrying_hours, whole_containers
from kilisho.questions.answers import Answer, in_hours, in_kilograms
from kilisho.questions.first_charge.work import Work


def labour_of(work: Work, carried_in: tuple[str, float]) -> Answer:
    """Person-hours to carry dung and water in one kind of container (name, volume [m3]) and to mix them."""
    ledger, asked = work.ledger, work.asked
    values = ledger.values
    speed, handling, distance = (ledger.practice(name) for name in ("walking_speed", "handling_time", "carrying_distance"))
    to_water = asked.water_distance if asked.water_distance is not None else distance
    name, volume = carried_in
    trips = whole_containers(values["substrate_volume"], volume), whole_containers(values["water_volume"], volume)
    carrying = carrying_hours(trips[0], distance, speed, handling) + carrying_hours(trips[1], to_water, speed, handling)
    return _told(work, carrying, sum(trips), name)


def _told(work: Work, carrying: float, trips: int, carried_in: str) -> Answer:
    """Hours of mixing and carrying; days and daily mass where it is known who works."""
    values, crew = work.ledger.values, work.asked.labour
    total = values["mixing_hours"] + carrying
    out: Answer = {
        "mixing": in_hours(values["mixing_hours"]),
        "carrying": in_hours(carrying),
        "total": in_hours(total),
        "trips": trips,
        "carried_in": carried_in,
    }
    if crew is not None:
        out["days"] = days = math.ceil(total / (crew.people * crew.hours_per_day) - 1e-9)
        out["mass_per_person_and_day"] = in_kilograms((values["substrate_mass"] + values["water_mass"]) / crew.people / days)
    return out
