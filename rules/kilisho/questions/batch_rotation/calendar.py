"""When each digester is charged and recharged in the first year."""

from __future__ import annotations

from collections.abc import Iterator

from kilisho.formulas.rotation import YEAR, Timetable
from kilisho.messages import say
from kilisho.questions.answers import Answer, known, plus_days
from kilisho.questions.batch_rotation.work import Work

FIRST_CHARGE, RECHARGE = "first_charge", "recharge"
TEXTS = {
    FIRST_CHARGE: say("rotation-first-charge"),
    RECHARGE: say("rotation-recharge"),
}
EMPTYING = say("rotation-emptying")


def recharge_dates(work: Work) -> list[Answer]:
    """Every charge of the first year in order of days; none where no rotation serves."""
    return sorted(_events(work), key=lambda event: (event["day"], event["digester"]))


def _events(work: Work) -> Iterator[Answer]:
    if work.chosen is None:
        return
    timetable = Timetable(work.chosen.plan.digesters, work.chosen.plan.retention, work.yard.turn_round)
    for place, first in enumerate(timetable.first_charges.tolist(), start=1):
        for day in range(first, YEAR, timetable.cycle):
            yield _event(work, place, day, RECHARGE if day > first else FIRST_CHARGE)


def _event(work: Work, place: int, day: int, event: str) -> Answer:
    opened = day - work.yard.turn_round
    emptied = {"emptying_from_day": opened, **_date(work, opened, "emptying_from"), "emptying_text": EMPTYING}
    return {
        "digester": place,
        "day": day,
        **_date(work, day, "date"),
        "event": event,
        "text": TEXTS[event],
        **(emptied if event == RECHARGE else {}),
    }


def _date(work: Work, day: int, name: str) -> Answer:
    return known(**{name: plus_days(work.asked.first_charge_on, day)})
