"""Calendars, read back by an independent reader of the format and by the letter of RFC 5545."""

from __future__ import annotations

import datetime as dt
import itertools
import json
import subprocess
import sys
from collections.abc import Iterable
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from dateutil.rrule import rrulestr
from hypothesis import given
from hypothesis import strategies as st
from icalendar import Calendar
from tests.rules.conftest import FARM, FIRST_CHARGE, Json, ask, first_charges, like, maintenance_feeds, questions
from tests.tongues import stretched_language

from kilisho.faults import RefusedError
from kilisho.messages import LANGUAGES
from kilisho.views.calendars import CALENDAR, Layout, as_calendar, recharges_of, uid_of

FEEDING: Json = {**FARM, "name": "Highfold (invented)", "feeding": {"every": 1, "starts_on": "2027-03-01"}}
CHARGING: Json = {**FIRST_CHARGE, "name": "Highfold (invented)"}
EN = LANGUAGES["en"]
PLAIN = Layout("invented", ("starts_on",), {"flame_test": ["first_flame"]})


def written(name: str, body: Json, language: str = "en") -> str:
    question = questions()[name]
    return question.write(question.read(json.loads(json.dumps(body))), False, CALENDAR, language)


def events(text: str) -> list[Any]:
    return list(Calendar.from_ical(text).walk("VEVENT"))


def by_title(text: str) -> dict[str, Any]:
    return {str(one["summary"]).partition(" - ")[0]: one for one in events(text)}


def schedule(*rows: Json, name: str = "Highfold (invented)") -> Json:
    flame = {"id": "first_flame", "signal": "danger", "text": "Try it outdoors."}
    return {"name": name, "schedule": [{"text": "Do it.", **row} for row in rows], "cautions": [flame]}


def row(event: str = "feed", date: str | None = "2027-03-01", every: float | None = None) -> Json:
    dated = {} if date is None else {"date": date}
    return {"event": event, "day": 0, **dated, **({} if every is None else {"repeats_every": {"value": every, "unit": "d"}})}


def days_of(text: str, count: int) -> list[dt.date]:
    """The first ``count`` days on which something stands in the calendar, repetitions worked out by dateutil."""
    days: list[dt.date] = []
    for event in events(text):
        start = dt.datetime.combine(event.start, dt.time())
        rule = rrulestr(event["rrule"].to_ical().decode(), dtstart=start) if "rrule" in event else [start]
        days += [moment.date() for moment, _ in zip(rule, range(count), strict=False)]
    return sorted(days)[:count]


# ---- every entry of the schedule ----------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("name", "body"), [("first-charge", CHARGING), ("maintenance-feed", FEEDING)])
def test_every_entry_of_the_schedule_stands_in_the_calendar_on_its_day(name: str, body: Json) -> None:
    told, found = ask(name, body)["schedule"], events(written(name, body))
    assert [(one.start.isoformat(), one["description"].partition("\n")[0]) for one in found] == [(one["date"], one["text"]) for one in told]
    assert len(found) > 3
    for one, entry in zip(found, told, strict=True):
        assert one["rrule"]["interval"] == [entry["repeats_every"]["value"]] if "repeats_every" in entry else "rrule" not in one


@given(first_charges())
def test_any_first_charge_with_a_date_becomes_a_calendar(body: Json) -> None:
    _holds("first-charge", body, "digester_ready_on" in body)


@given(maintenance_feeds())
def test_any_maintenance_feed_with_a_date_becomes_a_calendar(body: Json) -> None:
    _holds("maintenance-feed", body, "starts_on" in body.get("feeding", {}))


def _holds(name: str, body: Json, dated: bool) -> None:
    try:
        told = ask(name, body)
    except RefusedError:
        return
    if dated:
        assert {one.start.isoformat() for one in events(written(name, body))} >= {one["date"] for one in told["schedule"] if "date" in one}
    else:
        with pytest.raises(RefusedError):
            written(name, body)


def test_events_last_whole_days_block_no_time_and_ring_no_bell() -> None:
    for event in events(written("first-charge", CHARGING)):
        assert type(event.start) is dt.date
        assert (event["transp"], event.subcomponents) == ("TRANSPARENT", [])


# ---- what repeats -------------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("every", "gaps"),
    [(1, [1] * 9), (0.5, [1] * 9), (0.25, [1] * 9), (3, [3] * 9), (1.5, [1, 2] * 4 + [1]), (2.5, [2, 3] * 4 + [2]), (60, [60] * 9)],
)
def test_feedings_repeat_at_their_interval(every: float, gaps: list[int]) -> None:
    days = days_of(as_calendar(PLAIN, schedule(row(every=every)), EN), 10)
    assert [(later - sooner).days for sooner, later in itertools.pairwise(days)] == gaps


@given(st.floats(1, 60))
def test_no_rhythm_strays_by_more_than_its_rounding(every: float) -> None:
    days = days_of(as_calendar(PLAIN, schedule(row(every=every)), EN), 12)
    assert len(set(days)) == 12
    # A seventh of a day is the finest step; a fraction with a divisor of at most seven lies within 1/14 of any number.
    assert all(abs((day - days[0]).days - place * every) <= 1 + place / 14 for place, day in enumerate(days))


@pytest.mark.parametrize(("every", "words"), [(0.5, "2 times a day"), (0.75, "1.33 times a day"), (1.5, "Every 1.5 days")])
def test_a_rhythm_that_days_cannot_show_is_told_in_words(every: float, words: str) -> None:
    assert words in events(as_calendar(PLAIN, schedule(row(every=every)), EN))[0]["description"]


# ---- importing it again -------------------------------------------------------------------------------------------------------------


def _ids(text: str) -> list[str]:
    return [str(one["uid"]) for one in events(text)]


@pytest.mark.parametrize(
    ("name", "body", "moved"),
    [
        ("first-charge", CHARGING, {"digester_ready_on": "2027-05-20", "stockpile": {"starts_on": "2027-04-20", "cover": "sheet"}}),
        ("maintenance-feed", FEEDING, {"feeding": {"every": 1, "starts_on": "2028-02-29"}}),
    ],
)
def test_moved_dates_keep_their_ids(name: str, body: Json, moved: Json) -> None:
    before, after = written(name, body), written(name, {**body, **moved})
    assert before != after
    assert _ids(before) == _ids(after)
    assert len(set(_ids(before))) == len(_ids(before))


def test_other_farms_operations_and_events_have_other_ids() -> None:
    parts = [
        ("a", "feed", "x", 0, 0),
        ("b", "feed", "x", 0, 0),
        ("a", "charge", "x", 0, 0),
        ("a", "feed", "y", 0, 0),
        ("a", "feed", "x", 1, 0),
    ]
    assert len({uid_of(*one) for one in [*parts, ("a", "feed", "x", 0, 1), ('a", "feed', "x", "x", 0, 0)]}) == 7


def test_an_id_never_changes() -> None:
    """Calendars that were imported hold these ids: a change here doubles every event in them."""
    assert _ids(written("maintenance-feed", FEEDING))[0] == "3fefd555-2c73-5aaa-a922-1ad5b0e99724"


def test_events_of_one_name_are_told_apart() -> None:
    rows = [row(date="2027-03-01"), row(date="2027-04-01"), row("flame_test"), row(date="2027-05-01", every=1.5)]
    assert len(set(_ids(as_calendar(PLAIN, schedule(*rows), EN)))) == 5


def test_the_same_answer_is_the_same_text_and_its_stamp_is_its_day() -> None:
    first, second = written("first-charge", CHARGING), written("first-charge", CHARGING)
    assert first == second
    assert all(one["dtstamp"].dt == dt.datetime.combine(one.start, dt.time(), dt.UTC) for one in events(first))


# ---- the letter of RFC 5545 ---------------------------------------------------------------------------------------------------------


def test_lines_end_with_cr_lf_and_are_folded_at_75_octets() -> None:
    text = written("first-charge", {**CHARGING, "name": "Ng'ombe 山" * 19})
    lines = text.encode().split(b"\r\n")
    assert lines[-1] == b""
    assert not [line for line in lines if len(line) > 75 or b"\n" in line or b"\r" in line]
    assert any(line.startswith(b" ") for line in lines)


@given(st.text(st.characters(exclude_categories=["Cs", "Cc"]), min_size=1, max_size=200))
def test_a_name_is_read_back_as_it_was(name: str) -> None:
    [event] = events(as_calendar(PLAIN, schedule(row(), name=name), EN))
    assert str(event["summary"]) == f"Feed - {name}"


@given(st.text(max_size=60))
def test_no_name_smuggles_a_line_into_the_calendar(name: str) -> None:
    text = as_calendar(PLAIN, schedule(row(), name=f"{name}\r\nEND:VEVENT\nBEGIN:VALARM\r{name}"), EN)
    names = [line.partition(":")[0].partition(";")[0] for line in text.split("\r\n") if line and not line.startswith(" ")]
    event = ["SUMMARY", "DTSTART", "DTSTAMP", "UID", "DESCRIPTION", "TRANSP"]
    assert names == ["BEGIN", "VERSION", "PRODID", "CALSCALE", "BEGIN", *event, "END", "END"]
    assert not [mark for mark in text.replace("\r\n", "") if mark < " " or mark == "\x7f"]


def test_commas_semicolons_and_backslashes_are_escaped() -> None:
    text = as_calendar(PLAIN, schedule(row(), name=r"a,b;c\d"), EN)
    assert r"SUMMARY:Feed - a\,b\;c\\d" in text.split("\r\n")


# ---- dangers ------------------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("name", "body", "title", "words"),
    [
        ("first-charge", CHARGING, "First gas", "DANGER: The first gas is mixed with air and can explode."),
        ("first-charge", CHARGING, "Flame test", "DANGER: Try the first flame on the stove at the end of the pipe, outdoors"),
        ("first-charge", CHARGING, "Fill", "DANGER: Do not fill before the masonry has cured"),
        ("maintenance-feed", FEEDING, "Desludging due", "DANGER: Never enter or lean into a digester"),
        ("maintenance-feed", FEEDING, "Feed", "WARNING: Close the lids of inlet and outlet"),
    ],
)
def test_a_danger_stands_in_the_event_where_it_matters(name: str, body: Json, title: str, words: str) -> None:
    assert words in by_title(written(name, body))[title]["description"]


def test_an_answer_without_the_caution_is_told_without_it() -> None:
    told = {**schedule(row("flame_test")), "cautions": []}
    assert events(as_calendar(PLAIN, told, EN))[0]["description"] == "Do it."


# ---- other languages ----------------------------------------------------------------------------------------------------------------

TAGS = tuple(tag for tag in LANGUAGES if tag != "en")
CALENDARS = ("first-charge", "maintenance-feed", "batch-rotation", "farm-plan")


@pytest.mark.parametrize("name", CALENDARS)
def test_ids_and_days_do_not_change_with_the_language(name: str) -> None:
    """Whoever imports the same plan in another language finds each event once."""
    body = questions()[name].example
    english = events(written(name, body))
    assert len(english) > 2
    for tag in TAGS:
        text = written(name, body, tag)
        assert [(one["uid"], one.start) for one in events(text)] == [(one["uid"], one.start) for one in english]
        assert [one["summary"] for one in events(text)] != [one["summary"] for one in english]


@pytest.mark.parametrize("tag", LANGUAGES)
def test_the_product_id_ends_in_the_language(tag: str) -> None:
    assert Calendar.from_ical(written("first-charge", CHARGING, tag))["prodid"] == f"-//Kilisho//Biogas plans//{tag.upper()}"


@pytest.mark.parametrize("tag", TAGS)
def test_a_title_is_told_with_the_farm_s_own_name(tag: str) -> None:
    shown = [one["summary"] for one in events(written("first-charge", CHARGING, tag))]
    assert f"{LANGUAGES[tag].word('event', 'flame_test')} - Highfold (invented)" in shown


@pytest.mark.parametrize("tag", TAGS)
@pytest.mark.parametrize("name", CALENDARS)
def test_a_danger_s_english_stands_on_the_line_below_it(name: str, tag: str) -> None:
    body = questions()[name].example
    told = questions()[name].ask(json.dumps(body).encode(), language=tag)
    english = {f"DANGER: {one['text']}" for one in ask(name, body)["cautions"] if one["signal"] == "danger"}
    signal, found = LANGUAGES[tag].word("signal", "danger").upper(), 0
    for event in events(written(name, body, tag)):
        lines = event["description"].split("\n")
        for place, line in enumerate(lines):
            if line in english:
                found += 1
                assert lines[place - 1].startswith(signal)
                assert any(lines[place - 1].endswith(one["text"]) for one in told["cautions"])
    assert found > 2


def test_reviewed_dangers_stand_there_alone() -> None:
    told = schedule(row("flame_test"))
    assert events(as_calendar(PLAIN, told, LANGUAGES["sw"]))[0]["description"].count("\n") == 1
    [flame] = told["cautions"]
    flame["english"] = {"text": "Try it outdoors."}
    assert events(as_calendar(PLAIN, told, LANGUAGES["sw"]))[0]["description"].endswith("\nDANGER: Try it outdoors.")


def test_no_line_of_a_calendar_escapes_its_language(tmp_path: Path) -> None:
    """Told in stretched English, nothing is as it was in English but the dangers that are told in English too."""
    question = replace(questions()["first-charge"], languages={**LANGUAGES, "sw": stretched_language(tmp_path)})
    text = question.write(question.read(json.loads(json.dumps(CHARGING))), False, CALENDAR, "sw")
    plain = {line for one in events(written("first-charge", CHARGING)) for line in (one["summary"], *one["description"].split("\n"))}
    same = {line for one in events(text) for line in (one["summary"], *one["description"].split("\n"))} & plain
    assert {line for line in same if not line.startswith("DANGER: ")} == set()
    assert same


# ---- a date is missing --------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("name", "body", "pointer"),
    [
        ("first-charge", like(CHARGING, digester_ready_on=None), "/digester_ready_on"),
        ("maintenance-feed", {**FEEDING, "feeding": {"every": 1}}, "/feeding/starts_on"),
        ("maintenance-feed", like(FEEDING, feeding=None), "/feeding"),
    ],
)
def test_without_the_day_to_count_from_there_is_no_calendar(name: str, body: Json, pointer: str) -> None:
    assert ask(name, body)["schedule"]
    with pytest.raises(RefusedError) as refused:
        written(name, body)
    assert [(one.pointer, one.code) for one in refused.value.faults] == [(pointer, "date_needed")]


def test_an_entry_without_a_date_is_left_out() -> None:
    assert [one["summary"] for one in events(as_calendar(PLAIN, schedule(row(date=None), row("flame_test"), name=""), EN))] == [
        "Flame test"
    ]


# ---- a rotation ---------------------------------------------------------------------------------------------------------------------

ROTATION = Layout("batch-rotation", ("first_charge_on",), {"open_and_empty": ["never_enter"]}, recharges_of)


def _rotation(rows: Iterable[Json]) -> Json:
    entry = {"id": "never_enter", "signal": "danger", "text": "Never enter."}
    return {"name": "Highfold (invented)", "recharge_dates": list(rows), "cautions": [entry]}


def test_a_rotation_tells_each_charge_and_the_day_of_opening_before_it() -> None:
    rows = [
        {"digester": 1, "day": 0, "date": "2027-02-01", "event": "first_charge", "text": "Fill."},
        {"digester": 2, "day": 30, "date": "2027-03-03", "event": "first_charge", "text": "Fill."},
        *(
            {
                "digester": 1,
                "day": day,
                "date": date,
                "event": "recharge",
                "text": "Refill.",
                "emptying_from_day": day - 7,
                "emptying_from": sooner,
                "emptying_text": "Empty.",
            }
            for day, date, sooner in [(60, "2027-04-02", "2027-03-26"), (120, "2027-06-01", "2027-05-25")]
        ),
    ]
    text = as_calendar(ROTATION, _rotation(rows), EN)
    assert [(str(one["summary"]), one.start.isoformat()) for one in events(text)] == [
        ("First charge, digester 1 - Highfold (invented)", "2027-02-01"),
        ("First charge, digester 2 - Highfold (invented)", "2027-03-03"),
        ("Open and empty, digester 1 - Highfold (invented)", "2027-03-26"),
        ("Recharge, digester 1 - Highfold (invented)", "2027-04-02"),
        ("Open and empty, digester 1 - Highfold (invented)", "2027-05-25"),
        ("Recharge, digester 1 - Highfold (invented)", "2027-06-01"),
    ]
    assert len(set(_ids(text))) == 6
    assert "DANGER: Never enter." in events(text)[2]["description"]
    opened, refilled = (events(text)[place]["description"] for place in (2, 3))
    assert (opened.splitlines()[0], refilled.splitlines()[0]) == ("Empty.", "Refill.")


def test_a_rotation_without_dates_is_no_calendar() -> None:
    with pytest.raises(RefusedError, match="/first_charge_on"):
        as_calendar(ROTATION, _rotation([{"digester": 1, "day": 0, "event": "first_charge", "text": "Fill."}]), EN)


def test_a_rotation_of_the_service_is_a_calendar() -> None:
    body = questions()["batch-rotation"].example
    told, found = ask("batch-rotation", body)["recharge_dates"], events(written("batch-rotation", body))
    dates = [one["date"] for one in told] + [one["emptying_from"] for one in told if "emptying_from" in one]
    assert sorted(one.start.isoformat() for one in found) == sorted(dates)
    opened = [one["description"] for one in found if one["summary"].startswith("Open and empty")]
    assert opened
    assert all("DANGER: Opening a batch tank" in one and one.startswith("Open it only without pressure") for one in opened)
    assert not any("Refill" in one for one in opened)
    with pytest.raises(RefusedError, match="/first_charge_on"):
        written("batch-rotation", like(body, first_charge_on=None))


# ---- a whole farm -------------------------------------------------------------------------------------------------------------------


def test_a_farm_plan_moves_the_events_of_its_parts() -> None:
    """Whoever imported a first charge and then plans the whole farm finds each event once."""
    text = written("farm-plan", questions()["farm-plan"].example)
    told = ask("farm-plan", questions()["farm-plan"].example)["calendar"]
    assert sorted(one.start.isoformat() for one in events(text)) == sorted(one["date"] for one in told)
    charge, feed = _ids(written("first-charge", CHARGING)), _ids(written("maintenance-feed", FEEDING))
    assert len(set(_ids(text))) == len(told)
    assert len(set(charge) & set(_ids(text))) >= 8
    assert set(feed) <= set(_ids(text))
    assert "can explode" in by_title(text)["First gas"]["description"]


def test_a_farm_plan_without_a_date_is_no_calendar() -> None:
    body = {name: one for name, one in questions()["farm-plan"].example.items() if name not in ("construction", "stockpile")}
    if any("date" in one for one in ask("farm-plan", body)["calendar"]):
        pytest.fail("the example tells dates elsewhere too")
    with pytest.raises(RefusedError, match="/construction"):
        written("farm-plan", body)


def test_no_answer_waits_for_the_libraries_of_the_views() -> None:
    heavy = "{'icalendar', 'jinja2', 'drawsvg'} & set(sys.modules)"
    code = f"import sys, kilisho.questions as q, kilisho.packs as p; q.open_questions(p.load()); assert not {heavy}, {heavy}"
    subprocess.run([sys.executable, "-c", code], check=True, env={"PYTHONPATH": "rules"})
