"""The schedule of an answer as an iCalendar document (RFC 5545)."""

from __future__ import annotations

import datetime as dt
import json
import math
from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import partial
from typing import TYPE_CHECKING, Any
from uuid import UUID, uuid5

from kilisho.faults import Fault, Place, RefusedError
from kilisho.messages import DEFAULT, LANGUAGES, Amount, Language, Number, say
from kilisho.views.printable import printable

if TYPE_CHECKING:
    from icalendar import Event

CALENDAR = "text/calendar"
# The namespace of all our event ids; drawn once, never to change, or calendars would show every event twice.
NAMESPACE = UUID("0f1c9f0b-5ac9-4a63-9d0e-7f3f4f0f7a52")
# Days between repetitions that are no whole number come as several series: 3/2 d is two series of three days. Finer steps are rounded.
MOST_SERIES = 7
Answer = Mapping[str, Any]
Rows = Callable[[Answer], Iterable[Answer]]


def schedule_of(answer: Answer) -> Iterable[Answer]:
    """The rows of an answer's own schedule."""
    rows: Iterable[Answer] = answer["schedule"]
    return rows


def recharges_of(answer: Answer) -> Iterator[Answer]:
    """The rows of a batch rotation: each charge, and before it the day on which the digester is opened and emptied."""
    for row in answer["recharge_dates"]:
        if "emptying_from" in row:
            yield {**row, "event": "open_and_empty", "date": row["emptying_from"], "text": row["emptying_text"]}
        yield row


def plan_of(answer: Answer) -> Iterator[Answer]:
    """The rows of a farm plan; each keeps the id that the operation it comes from gives it, so either calendar moves its events."""
    for row in answer["calendar"]:
        yield {**row, "operation": row["operation"].replace("_", "-")}


@dataclass(frozen=True)
class Layout:
    """How an operation's answers become calendars.

    ``day_member`` is the place in the request from which the days count, ``cautions`` are ids of cautions by the event beside which
    they matter, ``rows`` gives ``event``, ``text``, ``date`` where it is known, ``repeats_every`` in days,
    ``digester`` (a number) and ``operation`` where the rows are of several.
    """

    operation: str
    day_member: Place
    cautions: Mapping[str, Sequence[str]]
    rows: Rows = schedule_of


@dataclass(frozen=True)
class Entry:
    """One series of all-day events: ``every`` whole days, once when None; ``id`` is the same whatever the dates are."""

    id: str
    title: str
    date: dt.date
    text: str
    every: int | None


def calendar_of(layout: Layout) -> Callable[[Answer, Language], str]:
    """The function that writes an answer as a calendar; see :func:`as_calendar`."""
    return partial(as_calendar, layout)


def as_calendar(layout: Layout, answer: Answer, language: Language) -> str:
    """The calendar: all-day events without reminders, the dangers of each in its description.

    An event's ``UID`` follows from farm name, operation, event and its place among those of that name, never from a date or a
    language: a plan that is imported again moves its events instead of doubling them. Plans without a name cannot be told apart.
    ``DTSTAMP`` is midnight (UTC) of the event's own day, since the service keeps no clock in its answers: the same answer is the
    same text.
    Raises :class:`RefusedError` at ``layout.day_member``, code ``date_needed``, where no day has a date.
    """
    from icalendar import Calendar

    entries = list(_entries(layout, answer, language))
    if not entries:
        raise RefusedError([Fault(layout.day_member, "date_needed", say("fault-calendar_needs_date"))])
    calendar = Calendar()
    for name, value in (("prodid", f"-//Kilisho//Biogas plans//{language.tag.upper()}"), ("version", "2.0"), ("calscale", "GREGORIAN")):
        calendar.add(name, value)
    for entry in entries:
        calendar.add_component(_event(entry))
    written: bytes = calendar.to_ical()
    return written.decode()


def _entries(layout: Layout, answer: Answer, language: Language) -> Iterator[Entry]:
    """The dated rows, with the cautions that their events want as far as the answer carries them."""
    told, farm = {one["id"]: one for one in answer["cautions"]}, answer.get("name", "")
    seen: Counter[tuple[str, str]] = Counter()
    for row in layout.rows(answer):
        operation, which = row.get("operation", layout.operation), f"{row['event']} {row.get('digester', '')}"
        place, seen[operation, which] = seen[operation, which], seen[operation, which] + 1
        wanted = [told[one] for one in layout.cautions.get(row["event"], ()) if one in told]
        lines = (row["text"], *_rhythm(row, language), *(line for one in wanted for line in _caution(one, language)))
        for part, (days, every) in enumerate(_series(row.get("repeats_every")) if "date" in row else ()):
            day = dt.date.fromisoformat(row["date"]) + dt.timedelta(days)
            yield Entry(uid_of(farm, operation, which, place, part), _title(row, farm, language), day, "\n".join(lines), every)


def _caution(caution: Answer, language: Language) -> Iterator[str]:
    """A caution with its signal word, and on a line of its own its English where no speaker has reviewed the translation."""
    for text, tongue in ((caution["text"], language), (caution.get("english", {}).get("text"), LANGUAGES[DEFAULT])):
        if text:
            signal = tongue.word("signal", caution["signal"]).upper()
            yield tongue.say("calendar-caution", signal=signal, text=text)


def _series(repeats: Answer | None) -> list[tuple[int, int | None]]:
    """First day (counted from the entry's) and days between repetitions of each series; never more than one event a day."""
    if repeats is None:
        return [(0, None)]
    pace = max(Fraction(1), Fraction(repeats["value"]).limit_denominator(MOST_SERIES))
    return [(math.floor(step * pace), pace.numerator) for step in range(pace.denominator)]


def _rhythm(row: Answer, language: Language) -> list[str]:
    """Words for a rhythm that whole days cannot show."""
    days = row.get("repeats_every", {}).get("value", 1)
    if days < 1:
        return [language.say("calendar-times-a-day", times=Number(1 / days))]
    return [] if days == int(days) else [language.say("calendar-every", rhythm=Amount(days, "d"))]


def uid_of(farm: str, operation: str, event: str, place: int, part: int = 0) -> str:
    """The id of an event; ``place`` counts the events of this name in the plan, ``part`` the series of one event."""
    return str(uuid5(NAMESPACE, json.dumps((farm, operation, event, place, part))))


def _event(entry: Entry) -> Event:
    from icalendar import Event

    event = Event()
    event.add("uid", entry.id)
    event.add("dtstamp", dt.datetime.combine(entry.date, dt.time(), dt.UTC))
    event.add("dtstart", entry.date)
    event.add("summary", entry.title)
    event.add("description", entry.text)
    event.add("transp", "TRANSPARENT")
    if entry.every is not None:
        event.add("rrule", {"freq": "daily", "interval": entry.every})
    return event


def _title(row: Answer, farm: str, language: Language) -> str:
    """An event's id as words, with what it belongs to: "Flame test", "Recharge, digester 2 - Highfold"."""
    event = language.word("event", row["event"])
    if "digester" in row:
        event = language.say("calendar-event-of-digester", event=event, digester=row["digester"])
    return language.say("calendar-event-at-farm", event=event, farm=printable(farm)) if farm else event
