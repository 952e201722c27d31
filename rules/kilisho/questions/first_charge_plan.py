"""The parts of a first charge's plan: stockpile and remedies, labour, what to confirm, start-up, and one dated schedule."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

from kilisho.farm import Ledger
from kilisho.questions.answers import Answer, in_cubic_metres, in_days, in_hours, in_kilograms, in_kilograms_per_day, in_number, in_percent
from kilisho.questions.feeding import Supply
from kilisho.questions.heaps import plus_days

if TYPE_CHECKING:
    from kilisho.questions.first_charge import Work

STEPS = (
    "Close the gas outlet only after the air has been pushed out as far as the filling allows; keep every flame away from the plant.",
    "Let the first gas out into the open air, unburnt and down to no pressure, each time the gas space has filled, {cycles} times in all.",
    "Only then try the flame: outdoors, on the appliance at the end of its pipe, never at the dome, the lid or the outlet.",
    "If it does not burn steadily with a blue flame, vent again, wait a day or two and try again; do not feed.",
    "Once it burns steadily for three days, begin the maintenance feed with a quarter of the full amount.",
)
# Feeds that bring few methane-forming microbes and get no starter take about twice as long (judgement).
UNAIDED_DELAY = 2
RAMP = (0.25, 0.5, 0.75, 1.0)


def animal_days(ledger: Ledger, supply: Supply, main: str) -> Answer:
    """Days of one animal's dung in the charge: of the farm's own animals, or of the substrate's first animal in the rulebook."""
    heads = supply.heads.get(main, 0)
    if heads and supply.by_substrate[main] > 0:
        per_day = supply.by_substrate[main] / heads
    else:
        data = ledger.shelf.data
        name, animal = next(((n, a) for n, a in data.animals.items() if a.substrate == main), (None, None))
        if name is None or animal is None:
            return in_number(0.0)
        ledger.assumptions.append(ledger.shelf.assumption("animals", name, "dung_per_day"))
        per_day = animal.dung_per_day.typical
    ledger.put(dung_per_animal_day=per_day)
    return in_number(ledger.solve("animal_days")["animal_days"])


def stockpile(work: Work, purchases: Sequence[Answer], lacking: Mapping[str, float]) -> Answer:
    """Own collection against the need, in numbers and words, and the ways to close what is short."""
    asked, piles = work.asked, work.piles
    short, still = sum(pile.shortfall for pile in piles), sum(lacking.values())
    needed = [pile.days_needed for pile in piles]
    days = None if None in needed else max(n for n in needed if n is not None)
    oldest = max(pile.days for pile in piles)
    start, ready = asked.stockpile.starts_on, asked.digester_ready_on
    return {
        "days_needed": None if days is None else in_days(days),
        "start_by": plus_days(ready, None if days is None else -days),
        "enough_on": plus_days(start, days),
        "collected": in_kilograms(sum(p.collected for p in piles)),
        "on_heap": in_kilograms(sum(p.on_heap for p in piles)),
        "shortfall": in_kilograms(short),
        "shortfall_after_purchases": in_kilograms(still),
        "enough": short == 0,
        "in_words": _in_words(work, days, short),
        "oldest": in_days(oldest),
        "keeps_for": in_days(work.keeps_for),
        "cover": work.cover_id,
        "purchases": list(purchases),
        "remedies": _remedies(work, purchases, short, still, days),
        "heaps": [pile.told(start) for pile in piles],
    }


def _in_words(work: Work, days: int | None, short: float) -> str:
    collected, on_heap, needed = (sum(getattr(p, name) for p in work.piles) for name in ("collected", "on_heap", "needed"))
    gathered = max(p.days for p in work.piles)
    text = f"{gathered} days of collection bring {collected:,.0f} kg, of which {on_heap:,.0f} kg are left at filling. "
    text += f"The charge needs {needed:,.0f} kg."
    if short == 0:
        return f"{text} That is enough."
    enough = plus_days(work.asked.stockpile.starts_on, days)
    when = (
        "Own collection alone never suffices."
        if days is None
        else f"Own collection suffices after {days} days" + (f", on {enough}." if enough else ".")
    )
    return f"{text} That is {short:,.0f} kg too little. {when}"


def _remedies(work: Work, purchases: Sequence[Answer], short: float, still: float, days: int | None) -> list[Answer]:
    if short == 0:
        return []
    values, structure = work.ledger.values, work.structure
    per_volume = values["substrate_mass"] / values["fresh_slurry_volume"]
    starter = short / per_volume + values["starter_volume"]
    most_starter = work.ledger.practice("largest_starter_share") * values["slurry_volume"]
    share = (values["slurry_volume"] - short / per_volume) / values["total_volume"]
    bought = short - still
    keeps = days is not None and days <= work.keeps_for
    return [
        _remedy("purchase", still <= 0 and bool(purchases), f"Take {bought:,.0f} kg from others.", in_kilograms(bought)),
        _remedy(
            "wait",
            keeps,
            "Own collection never suffices."
            if days is None
            else f"Wait until {days} days of own dung lie there; dung keeps {work.keeps_for:.0f} days under this cover.",
            None if days is None else in_days(days),
            plus_days(work.asked.stockpile.starts_on, days),
        ),
        _remedy(
            "starter_slurry",
            starter <= most_starter,
            "Replace the missing part by digested slurry from a working digester whose animals are healthy.",
            in_cubic_metres(starter),
        ),
        _remedy(
            "smaller_first_fill",
            share >= structure.least_fill_share.typical,
            f"Fill to {share * 100:.0f} % of the total volume and add the rest as dung comes in; inlet and outlet must stay under slurry "
            f"(usually from {structure.least_fill_share.typical * 100:.0f} %).",
            in_percent(share),
        ),
    ]


def _remedy(name: str, possible: bool, text: str, size: Answer | None, date: str | None = None) -> Answer:
    return {"remedy": name, "possible": possible, "text": text, "amount": size, "date": date}


def containers_of(asked: Any, ledger: Ledger) -> list[tuple[str, float]]:
    """Name and volume [m3] of the farm's containers, or the usual bucket."""
    if asked.containers:
        return [(one.name, one.volume) for one in asked.containers]
    name, usual = next(iter(ledger.shelf.data.practice.containers.items()))
    ledger.assumptions.append(ledger.shelf.assumption("containers", name, "volume"))
    return [(usual.name, usual.volume.typical)]


def labour(work: Work, carrying: float, trips: int, carried_in: str) -> Answer:
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
        work.mass_per_person = (values["substrate_mass"] + values["water_mass"]) / crew.people / days
        out["mass_per_person_and_day"] = in_kilograms(work.mass_per_person)
    return out


def confirmations(work: Work, facts: Mapping[str, Any]) -> list[Answer]:
    """What must be known before the digester is filled, and whether it is."""
    known, data = work.structure.confirm_before_filling, work.ledger.shelf.data
    return [{"fact": fact, "name": data.facts[fact].name, "state": _state(facts, fact, work)} for fact in known]


def _state(facts: Mapping[str, Any], fact: str, work: Work) -> str:
    if fact not in facts:
        return "unknown"
    value = facts[fact]
    if fact == "cured_for":
        return "confirmed" if value >= work.ledger.shelf.figure("curing_time").least else "refused"
    return "confirmed" if value is True or value == "passed" else "refused"


def start_up(work: Work) -> Answer:
    """Venting, flame test, days to the first burnable gas by temperature, and how feeding grows."""
    ledger, warmth = work.ledger, work.warmth
    slow, usual, quick = (ledger.shelf.curve("first_burnable_gas", t) for t in (warmth.low, warmth.mean, warmth.high))
    ledger.assumptions.append(ledger.shelf.assumption("curves", "first_burnable_gas", "days_to_first_burnable_gas"))
    cycles = round(ledger.practice("vent_cycles"))
    unaided = sum(p.fed.mass for p in work.piles if p.fed.entry.starts_unaided) >= ledger.values["substrate_mass"] / 2
    slower = 1 if unaided or ledger.values["starter_share"] > 0 else UNAIDED_DELAY
    low, typical, high = quick[0], usual[1] * slower, slow[2] * slower
    work.first_flame = (low, typical, high)
    filled = work.asked.digester_ready_on
    return {
        "digester_temperature": warmth.told(),
        "days_to_first_burnable_gas": in_days(typical, low, high),
        "first_burnable_gas_from": plus_days(filled, math.floor(low)),
        "first_burnable_gas_until": plus_days(filled, math.ceil(high)),
        "vent_completely": cycles,
        "starts_unaided": unaided,
        "steps": [step.format(cycles=cycles) for step in STEPS],
        "ramp": _ramp(work),
    }


def _ramp(work: Work) -> list[Answer]:
    """Quarter by quarter to the full feed: what the farm gathers, as far as the shortest retention for this temperature allows."""
    ledger = work.ledger
    step = round(ledger.shelf.curve("feed_step", work.warmth.mean)[1])
    shortest, usual, _ = ledger.shelf.curve("design_retention", work.warmth.mean)
    ledger.assumptions.append(ledger.shelf.assumption("curves", "design_retention", "design_retention_time"))
    per_day = ledger.values["working_volume"] / (1 + ledger.values["water_to_feed_by_volume"]) * ledger.values["bulk_density"]
    given = sum(pile.per_day for pile in work.piles)
    full = min(per_day / shortest, given) if given else per_day / usual
    return [
        {"from_day": index * step, "share_of_full_feed": share, "feed_per_day": in_kilograms_per_day(full * share)}
        for index, share in enumerate(RAMP)
    ]


def schedule(work: Work, hours: Answer, lacking: Mapping[str, float]) -> list[Answer]:
    """Everything in order of days; day 0 is the day of filling."""
    fill_days, usual = hours.get("days", 1), work.first_flame[1]
    step = round(work.ledger.shelf.curve("feed_step", work.warmth.mean)[1])
    filled = fill_days - 1
    feeding = math.ceil(filled + usual) + 3
    gathered = max(pile.days for pile in work.piles)
    collect = [("start_collecting", -gathered, "Start gathering clean dung under cover.")] if gathered else []
    buy = (
        [("bring_purchases", -1, "Have everything bought in and covered beside the digester.")]
        if any(p.shortfall for p in work.piles)
        else []
    )
    events = [
        *collect,
        ("confirm_tests", -3, "Confirm curing, water tightness and gas tightness; do not fill before."),
        *buy,
        (
            "fill",
            0,
            "Fill in one go: mix lump-free with water, keep out sand, stones and long straw."
            if not any(lacking.values())
            else "Fill only when the missing part is there.",
        ),
        ("first_gas", math.floor(filled + work.first_flame[0]), "From now on expect gas: vent it outdoors, unburnt."),
        ("flame_test", math.ceil(filled + usual), "Try the flame outdoors on the appliance, after venting."),
        *[
            (f"feed_{round(share * 100)}_per_cent", feeding + i * step, f"Feed {share * 100:.0f} % of the full amount daily.")
            for i, share in enumerate(RAMP)
        ],
    ]
    day_zero = work.asked.digester_ready_on
    return [
        {"event": name, "day": day, "date": plus_days(day_zero, day), "text": text}
        for name, day, text in sorted(events, key=lambda e: e[1])
    ]
