"""Tells how the feed is kept up for decades: storing, catching up, grit and desludging, and the schedule."""

from __future__ import annotations

import datetime as dt
import math

from kilisho.farm import Ledger
from kilisho.messages import Amount, Message, say
from kilisho.questions.answers import Answer, in_cubic_metres, in_days, in_kilograms, in_litres, in_years, known, plus_days
from kilisho.questions.maintenance_feed.work import Work

YEAR = 365.25
CENTURY = 100 * YEAR
CLEAN_FEED = (say("clean-feed"), say("clean-mixing"), say("clean-tank"), say("clean-covers"))


def upkeep(work: Work) -> Answer:
    """Storing between feedings, catching up, grit and desludging."""
    ledger, asked = work.ledger, work.asked
    every = asked.feeding.every
    extra = ledger.practice("catch_up_share")
    to_make_up = math.ceil(asked.feeding.missed / extra - 1e-9)
    return {
        "operation": _operation(work, every),
        "storing": {
            "oldest": in_days(every if every > 1 else 0.0),
            "text": say("storing-fresh") if every <= 1 else say("storing-covered"),
        },
        "catching_up": {
            "missed_feedings": asked.feeding.missed,
            "largest_feeding": in_kilograms(*ledger.uncertain("feed_mass_per_day").times(every * (1 + extra)).told),
            "feedings_to_make_up": to_make_up,
            "text": say("catching-up", extra=Amount(extra * 100, "%", decimals=0)),
        },
        "grit": {
            "sludge_per_year": in_litres(*ledger.uncertain("sludge_per_day").times(YEAR).told),
            **known(desludging_interval=_desludging_told(ledger)),
            **_sludge_so_far(work),
            "clean_feed": list(CLEAN_FEED),
        },
    }


def _desludging_told(ledger: Ledger) -> Answer | None:
    """Time until the sludge is due; None where nothing settles."""
    return in_years(*ledger.of("desludging_interval")) if ledger.values["sludge_per_day"] else None


def _sludge_so_far(work: Work) -> Answer:
    """What has settled over the digester's age and the retention that is left; empty where the age is not stated."""
    age = work.asked.digester.age
    if age is None:
        return {}
    sludge, working = work.ledger.uncertain("sludge_per_day"), work.ledger.uncertain("working_volume")
    settled = sludge.times(age).at_most(working)
    slurry = work.ledger.uncertain("slurry_per_day")
    left = working.less(settled).over(slurry)
    return {"sludge_so_far": in_cubic_metres(*settled.told), "retention_left": in_days(*left.told)}


def _operation(work: Work, every: float) -> Answer:
    longest, batch = work.ledger.practice("longest_regular_interval"), work.ledger.practice("batch_like_interval")
    if work.structure.operation == "batch":
        kind, text = "batch_structure", say("operation-batch-structure")
    elif every >= batch:
        kind, text = "batch_like", say("operation-batch-like", every=Amount(every, "d", decimals=0))
    elif every > longest:
        kind, text = "irregular", say("operation-irregular", longest=Amount(longest, "d", decimals=0))
    else:
        kind, text = "regular", say("operation-regular")
    return {"kind": kind, "text": text}


def schedule(work: Work) -> list[Answer]:
    """What is done and how often, from the first feeding on."""
    start, every = work.asked.feeding.starts_on, work.asked.feeding.every
    interval, age = work.ledger.values.get("desludging_interval"), work.asked.digester.age or 0.0
    rows: list[tuple[str, int, float | None, Message]] = [
        ("feed", 0, every, say("upkeep-feed")),
        ("clear_sand", 7, 7, say("upkeep-sand")),
        ("soap_test", 30, 30, say("upkeep-soap")),
    ]
    if interval is not None and interval < CENTURY:
        rows.append(("desludging_due", round(max(0.0, interval - age)), None, say("upkeep-desludge")))
    return [_event(start, *row) for row in rows]


def _event(start: dt.date | None, name: str, day: int, every: float | None, text: Message) -> Answer:
    repeats = None if every is None else in_days(every)
    return {"event": name, "day": day, "text": text, **known(date=plus_days(start, day), repeats_every=repeats)}
