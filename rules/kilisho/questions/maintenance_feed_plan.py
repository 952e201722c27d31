"""The parts of a maintenance feed's plan: per feeding, the process, upkeep, catching up, and the schedule."""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from kilisho.farm import Ledger
from kilisho.formulas.labour import whole_containers
from kilisho.questions import refusals
from kilisho.questions.answers import (
    Answer,
    in_cubic_metres,
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
    in_years,
)
from kilisho.questions.climate import Warmth
from kilisho.questions.feeding import Fed, Supply, resolve
from kilisho.questions.first_charge_plan import containers_of
from kilisho.questions.heaps import plus_days
from kilisho.questions.requests import DailyFeedItem

if TYPE_CHECKING:
    from kilisho.questions.maintenance_feed import Work

YEAR = 365.25
URINE_TEXT = (
    "The trade finds that urine raises the gas. The model counts no gas from urine itself: it saves water, brings nitrogen and a buffer "
    "against souring, and helps most where the feed is short of nitrogen; too much of it holds the microbes back."
)
CLEAN_FEED = (
    "Feed only clean dung: take out straw, leftovers, stones and plastic, and gather it from a hard floor.",
    "Mix until there are no lumps, let the mix stand a quarter of an hour so that sand sinks, then let it in and leave the sand behind.",
    "Clear the sand out of the mixing tank once a week.",
    "Put the covers back on inlet and outlet after every feeding.",
)


def substrates(asked: Any, ledger: Ledger, supply: Supply) -> list[Fed]:
    """The substrates with their daily masses: as stated, from the herd, or relative shares where only the digester decides."""
    feed = asked.feed or [DailyFeedItem.model_construct(substrate=name) for name in supply.by_substrate] or [_usual(ledger)]
    given = [item.mass if item.mass is not None else supply.by_substrate.get(item.substrate, 0.0) for item in feed]
    if any(item.share is not None for item in feed):
        shares = refusals.shares_of(feed, given)
        totals = [mass / share for mass, share in zip(given, shares, strict=True) if mass and share]
        given = [share * min(totals, default=0.0) for share in shares]
    if not any(given):
        # Nothing says how much: the shares stand for masses until fill_up() scales them to what the digester needs.
        given = [-share for share in refusals.shares_of(feed, [0.0] * len(feed))]
    return [resolve(item, mass, ledger) for item, mass in zip(feed, given, strict=True)]


def _usual(ledger: Ledger) -> DailyFeedItem:
    data = ledger.shelf.data
    name = "cattle_dung" if "cattle_dung" in data.substrates else next(iter(data.substrates))
    return DailyFeedItem.model_construct(substrate=ledger.choose("substrate", name, "Neither herd nor feed was stated."))


def fill_up(fed: Sequence[Fed], ledger: Ledger, warmth: Warmth) -> None:
    """Where nothing says how much is fed, feed what keeps the retention that the temperature asks for."""
    if not any(one.mass < 0 for one in fed):
        return
    retention = ledger.shelf.curve("design_retention", warmth.mean)[1]
    ledger.assumptions.append(ledger.shelf.assumption("curves", "design_retention", "design_retention_time"))
    per_volume = 1 + ledger.values["water_to_feed_by_volume"]
    scale = ledger.values["working_volume"] / retention / per_volume / sum(-one.volume for one in fed)
    for one in fed:
        one.mass *= -scale


def per_feeding(work: Work) -> Answer:
    """What goes in at one feeding, and the day's slurry."""
    values, every = work.ledger.values, work.asked.feeding.every
    substrate, water, urine = (values[n] * every for n in ("feed_volume_per_day", "water_per_day", "urine_per_day"))
    counts = [_container(name, size, (substrate, water, urine), values) for name, size in containers_of(work.asked, work.ledger)]
    return {
        "per_feeding": {
            "every": in_days(every),
            "substrate_mass": in_kilograms(values["feed_mass_per_day"] * every),
            "substrates": [_part(one, every, values["feed_mass_per_day"]) for one in work.fed],
            "water_volume": in_litres(water),
            "urine_volume": in_litres(urine),
            "containers": counts,
        },
        "feed_per_day": in_kilograms_per_day(values["feed_mass_per_day"]),
        "water_per_day": in_litres_per_day(values["water_per_day"]),
        "urine_per_day": in_litres_per_day(values["urine_per_day"]),
        "slurry_per_day": in_litres_per_day(values["slurry_per_day"]),
        "urine": _urine(values),
    }


def _urine(values: dict[str, Any]) -> Answer:
    """Urine gathered and used, what limits its use, and how the trade's word about it fits the model."""
    return {
        "gathered": in_litres_per_day(values["urine_gathered"]),
        "used": in_litres_per_day(values["urine_per_day"]),
        "limited_by": values["urine_limited_by"],
        "nitrogen": in_kilograms_per_day(values["urine_nitrogen_per_day"]),
        "text": URINE_TEXT,
    }


def _part(one: Fed, every: float, total: float) -> Answer:
    return {"substrate": one.id, "mass": in_kilograms(one.mass * every), "share": in_percent(one.mass / total)}


def _container(name: str, size: float, volumes: tuple[float, float, float], values: dict[str, Any]) -> Answer:
    substrate, water, urine = (whole_containers(volume, size) for volume in volumes)
    load = size * values["feed_mass_per_day"] / values["feed_volume_per_day"]
    shown = {"substrate": substrate, "water": water, "urine": urine}
    return {"name": name, "volume": in_litres(size), **shown, "load": in_kilograms(load)}


def process(work: Work) -> Answer:
    """Retention, loading, gas with its range, ammonia and digestate."""
    values, low, high = work.ledger.values, work.low, work.high
    gas = in_cubic_metres_per_day(values["biogas_per_day"], low["biogas_per_day"], high["biogas_per_day"])
    share = in_percent(values["share_of_potential"], low["share_of_potential"], high["share_of_potential"])
    return {
        "hydraulic_retention_time": in_days(values["hydraulic_retention_time"]),
        "organic_loading_rate": in_kilograms_per_cubic_metre_and_day(values["organic_loading_rate"]),
        "slurry_total_solids": in_percent(values["slurry_total_solids"]),
        "digester_temperature": work.warmth.told(),
        "share_of_potential": share,
        "biogas_per_day": gas,
        "methane_share": in_percent(values["methane_share"]),
        "carbon_to_nitrogen": in_number(values["carbon_to_nitrogen"]),
        "nitrogen_per_day": in_kilograms_per_day(values["nitrogen_per_day"] + values["urine_nitrogen_per_day"]),
        "total_ammonia_nitrogen": in_grams_per_litre(values["total_ammonia_nitrogen"]),
        "free_ammonia": in_milligrams_per_litre(values["free_ammonia"]),
        "digestate_per_day": in_litres_per_day(values["digestate_per_day"]),
        "digestate_mass_per_day": in_kilograms_per_day(values["digestate_mass_per_day"]),
        **_rule_of_thumb(work),
    }


def _rule_of_thumb(work: Work) -> Answer:
    """The trade's gas per head beside the model's, with the reason why they differ."""
    if work.supply.rule_of_thumb_gas is None:
        return {}
    rule, values = work.supply.rule_of_thumb_gas, work.ledger.values
    inside = work.low["biogas_per_day"] <= rule <= work.high["biogas_per_day"]
    why = (
        f"The trade's gas per head holds for a warm digester, plentiful dung and a long retention; here the slurry is at "
        f"{values['digester_temperature']:.0f} Cel and stays {values['hydraulic_retention_time']:.0f} d. "
        + ("It lies within the model's range." if inside else "It lies outside the model's range: plan with the model's figure.")
    )
    return {"rule_of_thumb": {"biogas_per_day": in_cubic_metres_per_day(rule), "within_range": inside, "why": why}}


def upkeep(work: Work) -> Answer:
    """Storing between feedings, catching up, grit and desludging."""
    ledger, values, asked = work.ledger, work.ledger.values, work.asked
    every, normal = asked.feeding.every, values["feed_mass_per_day"] * asked.feeding.every
    extra = ledger.practice("catch_up_share")
    to_make_up = math.ceil(asked.feeding.missed / extra - 1e-9)
    return {
        "operation": _operation(every, ledger),
        "storing": {
            "oldest": in_days(every if every > 1 else 0.0),
            "text": "Feed it fresh."
            if every <= 1
            else "Keep dung shaded and covered until it is fed, oldest first; feed each time the same amount.",
        },
        "catching_up": {
            "missed_feedings": asked.feeding.missed,
            "largest_feeding": in_kilograms(normal * (1 + extra)),
            "feedings_to_make_up": to_make_up,
            "text": f"Never feed at once what was missed: at most {extra * 100:.0f} % more than usual; pause if the gas falls or sours.",
        },
        "grit": {
            "sludge_per_year": in_litres(values["sludge_per_day"] * YEAR),
            "desludging_interval": _desludging_told(work),
            **_sludge_so_far(work),
            "clean_feed": list(CLEAN_FEED),
        },
    }


def _desludging_told(work: Work) -> Answer | None:
    """Time until the sludge is due, with the most and least that the feeds may settle; None where nothing settles."""
    values = work.ledger.values
    if not values["sludge_per_day"]:
        return None
    ends = [_grit(work, side) for side in ("high", "low")]
    low, high = (values["desludging_interval"] * values["grit_per_day"] / grit if grit else None for grit in ends)
    return in_years(values["desludging_interval"], low, high)


def _grit(work: Work, side: str) -> float:
    """What settles per day if all feeds settle at one end of their range."""
    shares = [getattr(one, side)["settling_share"] for one in work.fed]
    ash = [one.mass * one.values["total_solids"] * (1 - one.values["volatile_solids_share"]) for one in work.fed]
    return float(sum(mass * share for mass, share in zip(ash, shares, strict=True)))


def supply_fact(work: Work) -> dict[str, float]:
    """How far the herd covers what is stated to be fed, for the substrate that is covered worst."""
    supply = work.supply.by_substrate
    covered = [supply[one.id] / one.mass for one in work.fed if one.id in supply and one.mass > 0]
    return {"supply_sufficiency": min(covered)} if covered else {}


def _sludge_so_far(work: Work) -> Answer:
    """What has settled over the digester's age and the retention that is left; empty where the age is not stated."""
    age, values = work.asked.digester.age, work.ledger.values
    if age is None:
        return {}
    settled = min(age * values["sludge_per_day"], values["working_volume"])
    return {
        "sludge_so_far": in_cubic_metres(settled),
        "retention_left": in_days((values["working_volume"] - settled) / values["slurry_per_day"]),
    }


def _operation(every: float, ledger: Ledger) -> Answer:
    longest, batch = ledger.practice("longest_regular_interval"), ledger.practice("batch_like_interval")
    if every >= batch:
        kind, text = (
            "batch_like",
            f"At {every:.0f} days between feedings this is batch feeding: expect gas in waves and plan it as batches.",
        )
    elif every > longest:
        kind, text = "irregular", f"More than {longest:.0f} days between feedings is no longer regular feeding; gas will rise and fall."
    else:
        kind, text = "regular", "Regular feeding: the same amount each time."
    return {"kind": kind, "text": text}


def schedule(work: Work) -> list[Answer]:
    """What is done and how often, from the first feeding on."""
    start, every = work.asked.feeding.starts_on, work.asked.feeding.every
    desludge = min(work.ledger.values.get("desludging_interval", math.inf), 100 * YEAR)
    rows: list[tuple[str, int, float | None, str]] = [
        ("feed", 0, every, "Feed: mix, let the sand settle, let in, cover."),
        ("clear_sand", 7, 7, "Clear sand out of the mixing tank; drain the condensate."),
        ("soap_test", 30, 30, "Test joints, valves and appliances with soapy water."),
        (
            "desludging_due",
            round(desludge),
            None,
            "Sludge may fill its share of the digester by now: have a trained team remove it. Nobody enters.",
        ),
    ]
    return [_event(start, *row) for row in rows]


def _event(start: dt.date | None, name: str, day: int, every: float | None, text: str) -> Answer:
    repeats = {} if every is None else {"repeats_every": in_days(every)}
    return {"event": name, "day": day, "date": plus_days(start, day), "text": text, **repeats}
