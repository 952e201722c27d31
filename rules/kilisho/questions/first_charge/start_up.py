"""From the filled digester to full feeding: venting, the first flame, the ramp, and the schedule of it all."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from kilisho.messages import Amount, Listed, Message, in_a_row, say
from kilisho.process.start_up import start_up_days
from kilisho.questions.answers import Answer, in_days, in_kilograms_per_day, known, plus_days
from kilisho.questions.feeding import all_dung_of_animals, mix_starts_unaided
from kilisho.questions.first_charge.work import Work

Row = tuple[str, int, Message]

# Feeds that bring few methane-forming microbes and get no starter take about twice as long (judgement).
UNAIDED_DELAY = 2
Ends = tuple[float, float, float]
NO_START = (math.inf, math.inf, math.inf)
RAMP = (0.25, 0.5, 0.75, 1.0)
FILL = say("fill")


@dataclass(frozen=True, slots=True)
class FirstFlame:
    """Days from filling to the first burnable gas: low, typical and high of the process model, and as practice reports them.

    Infinity of the model reads as: do not count on it. A charge of which not practically all starts by itself is never counted on.
    """

    model: Ends
    practice: Ends
    starts_unaided: bool

    @property
    def sure(self) -> bool:
        """Whether nineteen of twenty samples start, and nothing else in the charge can sour them."""
        return self.starts_unaided and math.isfinite(self.model[2])

    @property
    def latest(self) -> float:
        """The last day by which nine in ten charges burn, by model and practice; practice's alone where the model foresees no start."""
        return max(day for day in (self.model[2], self.practice[2]) if math.isfinite(day))

    @property
    def try_on(self) -> float:
        """When the flame is first tried: once model and practice both expect it."""
        return max(day for day in (self.model[1], self.practice[1]) if math.isfinite(day))


def first_flame_of(work: Work) -> FirstFlame:
    """Days to the first burnable gas for the slurry's temperature: the quickest at its warm end, the slowest at its cold end."""
    ledger, shelf = work.ledger, work.ledger.shelf
    mean, *ends = work.warmth.uncertain.told
    cold, warm = ends or (mean, mean)
    unaided, starter = mix_starts_unaided(work.fed), ledger.values["starter_share"]
    cool, usual, quick = (_by_model(work, warmth) for warmth in (cold, mean, warm))
    reported = ledger.curve("first_burnable_gas", "days_to_first_burnable_gas", mean)
    slower = 1 if unaided or starter >= shelf.figure("starter_share").least else UNAIDED_DELAY
    practice = shelf.curve("first_burnable_gas", warm)[0], reported[1] * slower, shelf.curve("first_burnable_gas", cold)[2] * slower
    return FirstFlame((quick[0], usual[1], cool[2]), practice, unaided)


def _by_model(work: Work, temperature: float) -> Ends:
    """Days to the first burnable gas by the table of the process model, which is of dung alone.

    Dung of other animals needs the rulebook's usual starter: by full runs (gas-forecast, 16 to 28 Cel) every kind then starts typically,
    but pig and rabbit dung in two of three runs only. Plants and kitchen waste sour even with twice as much.
    """
    shelf, starter, unaided = work.ledger.shelf, work.ledger.values["starter_share"], mix_starts_unaided(work.fed)
    enough = all_dung_of_animals(work.fed) and starter >= shelf.figure("starter_share").typical
    return start_up_days(shelf.start_up, temperature, starter, unaided) if unaided or enough else NO_START


def start_up(work: Work, flame: FirstFlame, fill_days: int) -> Answer:
    """Venting, flame test, days from the end of filling to the first burnable gas, and how feeding grows."""
    cycles, batch = round(work.ledger.practice("vent_cycles")), work.structure.operation == "batch"
    low, usual, high = flame.practice
    return {
        "digester_temperature": work.warmth.told(),
        **_first_gas(work, flame, fill_days - 1),
        "in_practice": in_days(usual, low, high),
        "vent_completely": cycles,
        "starts_unaided": flame.starts_unaided,
        "sure_to_start": flame.sure,
        "steps": [*_steps(cycles, batch=batch), *_beside(work, flame)],
        "ramp": [] if batch else _ramp(work),
    }


def _steps(cycles: int, *, batch: bool) -> list[Message]:
    """From the full digester to the first feed; a batch digester is not fed."""
    steps = [say("start-up-close"), say("start-up-vent", cycles=cycles), say("start-up-flame"), say("start-up-again")]
    return steps if batch else [*steps, say("start-up-feed")]


def _beside(work: Work, flame: FirstFlame) -> list[Message]:
    """What else is to be known before filling: what is better left for later. A batch digester takes nothing later."""
    sours = [] if flame.starts_unaided or work.structure.operation == "batch" else [say("start-up-sours")]
    return [*sours, *([say("start-up-latrine")] if work.awaits_latrine else [])]


def _first_gas(work: Work, flame: FirstFlame, filled: int) -> Answer:
    """Days and dates of the first burnable gas; nothing where the typical charge does not start by itself."""
    low, typical, _ = flame.model
    if not math.isfinite(typical):
        return {}
    ready, latest = work.asked.digester_ready_on, flame.latest
    dates = (plus_days(ready, filled + math.floor(low)), plus_days(ready, filled + math.ceil(latest)))
    return {
        "days_to_first_burnable_gas": in_days(typical, low, latest),
        **known(first_burnable_gas_from=dates[0], first_burnable_gas_until=dates[1]),
    }


def _ramp(work: Work) -> list[Answer]:
    """Quarter by quarter to the full feed: as stated, or what the farm gathers, as far as the shortest retention allows."""
    ledger = work.ledger
    step = round(ledger.curve("feed_step", "feed_step", work.warmth.mean)[1])
    shortest, usual, _ = ledger.curve("design_retention", "design_retention_time", work.warmth.mean)
    per_day = ledger.values["working_volume"] * ledger.values["substrate_mass"] / ledger.values["fresh_slurry_volume"]
    given = sum(pile.per_day.value for pile in work.piles)
    borne = min(per_day / shortest, given) if given else per_day / usual
    full = work.asked.full_feed_per_day if work.asked.full_feed_per_day is not None else borne
    return [
        {"from_day": index * step, "share_of_full_feed": share, "feed_per_day": in_kilograms_per_day(full * share)}
        for index, share in enumerate(RAMP)
    ]


def schedule(work: Work, flame: FirstFlame, fill_days: int, fill: Message) -> list[Answer]:
    """Everything in order of days; day 0 is the first day of filling, which ``fill`` words."""
    rows = sorted([*_before(work), *_from_filling(work, flame, fill_days - 1, fill)], key=lambda row: row[1])
    filled = work.asked.digester_ready_on
    if filled is None:
        return [{"event": name, "day": day, "text": text} for name, day, text in rows]
    return [{"event": name, "day": day, **known(date=plus_days(filled, day)), "text": text} for name, day, text in rows]


def fill_text(confirmations: Sequence[Answer], *, complete: bool) -> Message:
    """How filling is worded: not at all while a confirmation is refused, and only once every one is there."""
    refused = [one["name"] for one in confirmations if one["state"] == "refused"]
    if refused:
        return say("fill-refused", names=Listed(refused))
    if not complete:
        return say("fill-when-there")
    unknown = [one["name"] for one in confirmations if one["state"] == "unknown"]
    return say("fill-once-confirmed", names=Listed(unknown), fill=FILL) if unknown else FILL


def _flame_text(flame: FirstFlame) -> Message:
    if not flame.starts_unaided:
        return say("schedule-flame-sours")
    return say("schedule-flame") if flame.sure else say("schedule-flame-unsure")


def _before(work: Work) -> Sequence[Row]:
    gathered = max(pile.days for pile in work.piles)
    rows = [("confirm_tests", -3, say("schedule-confirm"))]
    if gathered:
        rows.append(("start_collecting", -gathered, say("schedule-collect")))
    if work.asked.purchases and any(pile.shortfall for pile in work.piles):
        rows.append(("bring_purchases", -1, say("schedule-purchases")))
    return rows


def _from_filling(work: Work, flame: FirstFlame, filled: int, fill: Message) -> Sequence[Row]:
    step = round(work.ledger.shelf.curve("feed_step", work.warmth.mean)[1])
    feeding = math.ceil(filled + flame.try_on) + 3
    feeds = (
        []
        if work.structure.operation == "batch"
        else [
            (f"feed_{percent}_per_cent", feeding + i * step, say("schedule-feed", share=Amount(percent, "%", decimals=0)))
            for i, percent in enumerate(round(share * 100) for share in RAMP)
        ]
    )
    return [
        ("fill", 0, in_a_row(fill, *_beside(work, flame))),
        ("first_gas", filled, say("schedule-first-gas")),
        ("flame_test", math.ceil(filled + flame.try_on), _flame_text(flame)),
        *feeds,
    ]
