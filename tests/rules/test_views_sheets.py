"""Sheets, read back by an HTML parser: all that the answer says stands there, dangers first, and what people typed stays text."""

from __future__ import annotations

import base64
import copy
import datetime as dt
import hashlib
import json
import re
from dataclasses import replace
from functools import cache
from html.parser import HTMLParser
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from jinja2 import UndefinedError
from tests.rules.conftest import FIRST_CHARGE, Json, ask, farm_plans, first_charges, like, maintenance_feeds, questions
from tests.tongues import stretched_language

from kilisho.faults import RefusedError
from kilisho.messages import LANGUAGES, Message
from kilisho.views.sheets import HTML, SIGNALS, as_sheet, style_source, stylesheet

EN = LANGUAGES["en"]
SHEETS = ("first-charge", "maintenance-feed", "farm-plan")
# Rows of a plan's calendar that its sheet has room for.
MOST_DAYS = 10
HOSTILE = "<script>alert(1)</script><img src=x onerror=alert(1)>\"'&amp;{{ 7*7 }}{% raw %}\x00\x1b"
VOID = {"meta", "path", "rect"}


def written(name: str, told: Json) -> str:
    return as_sheet(name, told, EN)


class Page(HTMLParser):
    """Tags with their attributes, and text by the tags that hold it; fails where tags do not close as they opened."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.tags: list[tuple[str, dict[str, str | None]]] = []
        self.texts: list[tuple[tuple[str, ...], str]] = []
        self.open: list[str] = []
        self.tongues: list[str | None] = []
        self.said: list[tuple[str, str]] = []
        self.feed(html)
        self.close()
        assert self.open == []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append((tag, dict(attrs)))
        if tag not in VOID:
            self.open.append(tag)
            self.tongues.append(dict(attrs).get("lang"))

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append((tag, dict(attrs)))

    def handle_endtag(self, tag: str) -> None:
        assert self.open
        assert self.open.pop() == tag
        self.tongues.pop()

    def handle_data(self, data: str) -> None:
        if data.strip() and "style" not in self.open:
            self.texts.append((tuple(self.open), " ".join(data.split())))
            self.said.append(([tongue for tongue in self.tongues if tongue][-1], " ".join(data.split())))

    def in_tongue(self, tag: str) -> list[str]:
        """Texts that the page says to be in a language."""
        return [text for tongue, text in self.said if tongue == tag]

    @property
    def text(self) -> str:
        return " ".join(text for _, text in self.texts)

    def of(self, tag: str) -> list[str]:
        """Texts directly inside a tag."""
        return [text for tags, text in self.texts if tags[-1] == tag]


@cache
def example(name: str) -> Json:
    return ask(name, questions()[name].example)


def days_of(told: Json) -> list[Json]:
    """What is to be done on which day."""
    found: list[Json] = told["calendar"] if "calendar" in told else told["schedule"]
    return found


@cache
def page(name: str) -> Page:
    return Page(written(name, example(name)))


def squeezed(text: str) -> str:
    return " ".join(text.split())


# ---- what every sheet keeps to ------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("name", SHEETS)
def test_a_sheet_loads_nothing_and_runs_nothing(name: str) -> None:
    for tag, attributes in page(name).tags:
        assert tag not in {"script", "link", "img", "iframe", "object", "embed", "form", "base", "a", "input"}
        assert not [one for one in attributes if one.startswith("on") or one in ("src", "href", "style", "action")]
    assert "url(" not in stylesheet()
    assert "@import" not in stylesheet()


@pytest.mark.parametrize("name", SHEETS)
def test_a_sheet_says_its_language_size_and_name(name: str) -> None:
    html = written(name, example(name))
    assert html.lstrip().startswith("<!DOCTYPE html>")
    assert ("html", {"lang": "en"}) in page(name).tags
    assert ("meta", {"charset": "utf-8"}) in page(name).tags
    assert "@page { size: A4" in stylesheet()
    [title] = [text for tags, text in page(name).texts if tags[-2:] == ("head", "title")]
    assert title == f"{page(name).of('h1')[0]} - Highfold (invented)"


@pytest.mark.parametrize("name", SHEETS)
def test_every_id_is_there_once_and_every_label_leads_to_one(name: str) -> None:
    ids = [attributes["id"] for _, attributes in page(name).tags if "id" in attributes]
    assert len(set(ids)) == len(ids)
    labels = [one for _, attributes in page(name).tags for one in (attributes.get("aria-labelledby") or "").split()]
    assert labels
    assert set(labels) <= set(ids)


@pytest.mark.parametrize("name", SHEETS)
def test_every_header_cell_says_what_it_heads(name: str) -> None:
    heads = [attributes.get("scope") for tag, attributes in page(name).tags if tag == "th"]
    assert len(heads) > 6
    assert set(heads) == {"row", "col"}


@pytest.mark.parametrize("name", SHEETS)
def test_the_same_answer_is_the_same_sheet(name: str) -> None:
    assert written(name, example(name)) == written(name, copy.deepcopy(example(name)))


@pytest.mark.parametrize("name", SHEETS)
def test_the_hash_is_that_of_the_style_in_the_page(name: str) -> None:
    [style] = re.findall("<style>(.*?)</style>", written(name, example(name)), re.DOTALL)
    digest = base64.b64encode(hashlib.sha256(style.encode()).digest()).decode()
    assert style_source() == f"'sha256-{digest}'"


def test_the_style_is_black_on_white() -> None:
    assert set(re.findall(r"#[0-9a-fA-F]{3,8}\b", stylesheet())) <= {"#000", "#fff"}


# ---- cautions -----------------------------------------------------------------------------------------------------------------------


def cautions_in(shown: Page) -> list[tuple[str, str]]:
    """Signal word and text of every caution, in order; a signal word stands above the cautions that it holds for."""
    found, signal = [], ""
    for tags, text in shown.texts:
        if tags[-2:] in (("p", "span"), ("h2", "span")):
            signal = text
        elif tags[-1] == "li" and signal and not ({"ol", "svg"} & set(tags)):
            found.append((signal, text))
    return found


@pytest.mark.parametrize("name", SHEETS)
def test_every_caution_stands_below_its_signal_word_once_the_gravest_first(name: str) -> None:
    told = {(one["signal"], squeezed(one["text"])) for one in example(name)["cautions"]}
    shown = [one for one in cautions_in(page(name)) if one in told]
    assert sorted(shown) == sorted(told)
    assert sorted(shown, key=lambda one: SIGNALS.index(one[0])) == shown


@pytest.mark.parametrize("name", SHEETS)
def test_dangers_come_before_any_number(name: str) -> None:
    texts = page(name).texts
    first = next(place for place, (tags, _) in enumerate(texts) if tags[-1] == "td")
    before = {text for _, text in texts[:first]}
    dangers = {squeezed(one["text"]) for one in example(name)["cautions"] if one["signal"] == "danger"}
    assert len(dangers) > 4
    assert dangers <= before


def test_a_signal_word_that_nobody_knows_ranks_as_a_warning() -> None:
    told = copy.deepcopy(example("maintenance-feed"))
    told["cautions"].append({"id": "new", "signal": "alarm", "text": "Something new.", "basis": "judgement", "source": []})
    found = cautions_in(Page(written("maintenance-feed", told)))
    signals = [signal for signal, _ in found]
    assert ("Alarm", "Something new.") in found
    assert signals.index("danger") < signals.index("Alarm") < signals.index("caution")


def test_cautions_that_say_the_same_stand_there_once() -> None:
    told = copy.deepcopy(example("farm-plan"))
    told["cautions"] += [{**one, "id": f"{one['id']}_again"} for one in told["cautions"]]
    assert written("farm-plan", told) == written("farm-plan", example("farm-plan"))


def test_an_answer_without_a_danger_has_no_box_for_it() -> None:
    told = {**example("maintenance-feed"), "cautions": []}
    assert "Read this first" not in Page(written("maintenance-feed", told)).text


# ---- what is not known --------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("name", SHEETS)
def test_what_fails_and_what_is_not_known_is_told(name: str) -> None:
    findings = example(name)["findings"]
    text = page(name).text
    for one in findings:
        if one["verdict"] == "fail":
            assert f"{one['title']}. {squeezed(one['do'])}" in text
            assert "Not as it should be: these do not hold" in page(name).of("h2")
    dangers = [one for one in findings if one["verdict"] == "unknown" and one["severity"] == "danger"]
    assert dangers
    assert all(f"{one['title']}." in page(name).of("li") for one in dangers)
    others = sum(one["verdict"] == "unknown" for one in findings) - len(dangers)
    assert f"{others} more checks, of lesser weight, lack a fact" in text


def test_a_sheet_never_says_that_all_is_well_while_something_is_open() -> None:
    told = copy.deepcopy(example("maintenance-feed"))
    well = "Every check that belongs to this plan could be made."
    assert well not in page("maintenance-feed").text
    told["findings"] = [one for one in told["findings"] if one["verdict"] == "unknown" and one["severity"] != "danger"][:1]
    assert well not in Page(written("maintenance-feed", told)).text
    told["findings"] = []
    assert well in Page(written("maintenance-feed", told)).text


def test_confirmations_are_boxes_to_tick_with_what_is_known() -> None:
    told = copy.deepcopy(example("first-charge"))
    for one, state in zip(told["confirm_before_filling"], ("confirmed", "refused", "unknown", "postponed"), strict=True):
        one["state"] = state
    shown = Page(written("first-charge", told)).text
    states = {"confirmed": "confirmed", "refused": "NOT MET: do not fill", "unknown": "not known: do not fill before it is"}
    for one in told["confirm_before_filling"]:
        assert f"{one['name']}: {states.get(one['state'], one['state'])}" in shown


def test_a_charge_that_may_not_start_says_so() -> None:
    told = copy.deepcopy(example("first-charge"))
    assert "may not start by itself" not in page("first-charge").text
    told["start_up"]["sure_to_start"] = False
    del told["start_up"]["days_to_first_burnable_gas"]
    shown = Page(written("first-charge", told)).text
    assert "may not start by itself" in shown
    assert f"After {EN.amount(told['start_up']['in_practice'])} in practice." in shown


def test_a_shortfall_that_nothing_closes_is_told() -> None:
    told = copy.deepcopy(example("first-charge"))
    for one in told["stockpile"]["remedies"]:
        one["possible"] = False
    assert "are missing, and no way to close that is open to this farm" in Page(written("first-charge", told)).text
    assert "no way to close" not in page("first-charge").text


# ---- the plan -----------------------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("name", SHEETS)
def test_every_day_of_the_schedule_stands_there(name: str) -> None:
    cells = page(name).of("td")
    for one in days_of(example(name))[:MOST_DAYS]:
        assert EN.long_date(one["date"]) in cells
        assert squeezed(one["text"]) in cells
        assert "repeats_every" not in one or EN.typical(one["repeats_every"]) in cells


def test_the_first_charge_tells_masses_and_whole_containers() -> None:
    told, cells = example("first-charge"), page("first-charge").of("td")
    for name in ("substrate_mass", "water_volume", "slurry_volume"):
        assert EN.amount(told[name]) in cells
    [bucket] = told["containers"]
    assert {f"{bucket['substrate']:,}", f"{bucket['water']:,}"} <= set(cells)
    assert "bucket, 20 L" in page("first-charge").of("th")
    assert squeezed(told["stockpile"]["in_words"]) in page("first-charge").of("figcaption")
    steps = [squeezed(one) for one in told["start_up"]["steps"]]
    assert [one for one in page("first-charge").of("li") if one in steps] == steps
    steps = [f"from day {one['from_day']} on {EN.typical(one['feed_per_day'])}" for one in told["start_up"]["ramp"]]
    assert f"Then feed, {', '.join(steps)}." in page("first-charge").of("p")


def test_the_maintenance_feed_tells_buckets_of_each_kind() -> None:
    told, cells = example("maintenance-feed"), page("maintenance-feed").of("td")
    [bucket] = told["per_feeding"]["containers"]
    row = [str(bucket["substrate"]), str(bucket["water"]), str(bucket["urine"]), EN.typical(bucket["load"])]
    place = cells.index(row[0])
    assert cells[place : place + 4] == row
    for name in ("biogas_per_day", "digestate_per_day", "hydraulic_retention_time"):
        assert EN.amount(told[name]) in cells
    for text in (*told["grit"]["clean_feed"], told["storing"]["text"], told["operation"]["text"], told["catching_up"]["text"]):
        assert squeezed(text) in page("maintenance-feed").text


def test_without_urine_there_is_no_column_for_it() -> None:
    body = like(questions()["maintenance-feed"].example, urine=None)
    assert "Urine" not in Page(written("maintenance-feed", ask("maintenance-feed", body))).of("th")
    assert "Urine" in page("maintenance-feed").of("th")


def test_several_substrates_are_told_apart() -> None:
    feed = [{"substrate": "cattle_dung", "mass": 80}, {"substrate": "pig_manure", "mass": 20}]
    body = like(questions()["maintenance-feed"].example, feed=feed, herd=None, urine=None)
    told = ask("maintenance-feed", body)
    shown = Page(written("maintenance-feed", told)).of("li")
    assert [f"{one['name']}: {EN.typical(one['mass'])}" for one in told["per_feeding"]["substrates"]] == [
        one for one in shown if one.startswith(("Cattle dung, ", "Pig dung, "))
    ]


def test_the_heading_says_how_often_is_fed() -> None:
    assert "At each feeding, every day" in page("maintenance-feed").of("h2")
    told = copy.deepcopy(example("maintenance-feed"))
    told["per_feeding"]["every"]["value"] = 2.0
    assert "At each feeding, every 2 days" in Page(written("maintenance-feed", told)).of("h2")


def test_missed_feedings_are_told_where_there_are_any() -> None:
    example_body = questions()["maintenance-feed"].example
    told = ask("maintenance-feed", {**example_body, "feeding": {"every": 1, "missed": 4}})
    shown = Page(written("maintenance-feed", told)).text
    assert f"4 feedings were missed: make them up over {told['catching_up']['feedings_to_make_up']} feedings." in shown
    assert "were missed: make" not in page("maintenance-feed").text


def test_a_plan_without_dates_counts_days() -> None:
    told = ask("first-charge", like(FIRST_CHARGE, stockpile={"cover": "sheet"}, digester_ready_on=None))
    cells = Page(written("first-charge", told)).of("td")
    assert [f"day {one['day']}" for one in told["schedule"]] == [one for one in cells if one.startswith("day ")]


def test_the_footer_says_what_the_numbers_rest_on() -> None:
    for name in SHEETS:
        told, text = example(name), page(name).text
        assert f"rulebook {told['rulebook']['id']} {told['rulebook']['version']} ({told['rulebook']['hash'][:12]})" in text
        assert f"{len(told['assumptions'])} figures were assumed" in text
    assert EN.amount(example("first-charge")["labour"]["total"]) in page("first-charge").text


# ---- other languages ----------------------------------------------------------------------------------------------------------------

TAGS = tuple(tag for tag in LANGUAGES if tag != "en")


@cache
def told_in_language(name: str, tag: str) -> Json:
    question = questions()[name]
    return question.ask(json.dumps(question.example).encode(), language=tag)


@cache
def page_in(name: str, tag: str) -> Page:
    return Page(as_sheet(name, told_in_language(name, tag), LANGUAGES[tag]))


def dangers_of(told: Json) -> list[Json]:
    return [one for one in told["cautions"] if one["signal"] == "danger"]


@pytest.mark.parametrize("tag", TAGS)
@pytest.mark.parametrize("name", SHEETS)
def test_no_danger_is_lost_in_another_language_and_each_stands_there_in_english_too(name: str, tag: str) -> None:
    told, shown = told_in_language(name, tag), page_in(name, tag)
    assert ("html", {"lang": tag}) in shown.tags
    assert {squeezed(one["text"]) for one in dangers_of(told)} <= set(shown.in_tongue(tag))
    english = [squeezed(one["text"]) for one in dangers_of(example(name))]
    assert sorted(one for one in shown.in_tongue("en") if one in english) == sorted(english)
    for one in told["findings"]:
        if one["verdict"] == "fail":
            assert f"{one['title']}." in shown.of("strong")
        elif (one["verdict"], one["severity"]) == ("unknown", "danger"):
            assert f"{one['title']}." in shown.of("li")


@pytest.mark.parametrize("tag", TAGS)
def test_each_danger_stands_right_before_its_english(tag: str) -> None:
    said = page_in("farm-plan", tag).said
    for one in dangers_of(told_in_language("farm-plan", tag)):
        place = said.index((tag, squeezed(one["text"])))
        assert said[place + 1] == ("en", squeezed(one["english"]["text"]))


def test_a_danger_that_failed_stands_there_in_english_too() -> None:
    told = copy.deepcopy(told_in_language("maintenance-feed", "sw"))
    told["findings"] = [{"verdict": "fail", "severity": "danger", "check": "x", "title": "Hakuna moto", "do": "Zima."}]
    told["findings"][0]["english"] = {"title": "No flame", "do": "Put it out."}
    shown = Page(as_sheet("maintenance-feed", told, LANGUAGES["sw"]))
    assert {"No flame", "Put it out."} <= set(shown.in_tongue("en"))


@pytest.mark.parametrize("tag", TAGS)
@pytest.mark.parametrize("name", SHEETS)
def test_a_translation_that_nobody_reviewed_says_so_in_both_languages(name: str, tag: str) -> None:
    note = [shown for shown in page_in(name, tag).said if shown[1] == EN.say("sheet-not-reviewed")]
    assert note == [("en", EN.say("sheet-not-reviewed"))]
    assert LANGUAGES[tag].say("sheet-not-reviewed") in page_in(name, tag).in_tongue(tag)
    assert EN.say("sheet-not-reviewed") not in page(name).text


def test_the_lesser_cautions_of_a_plan_are_counted_where_dangers_need_the_room() -> None:
    told, shown = told_in_language("farm-plan", "fr"), page_in("farm-plan", "fr")
    lesser = {squeezed(one["text"]) for one in told["cautions"] if one["signal"] != "danger"}
    assert not lesser & set(shown.of("li"))
    assert LANGUAGES["fr"].say("sheet-lesser-cautions", count=len(lesser)) in shown.of("p")
    for name in ("first-charge", "maintenance-feed"):
        others = {squeezed(one["text"]) for one in told_in_language(name, "fr")["cautions"]}
        assert others <= set(page_in(name, "fr").of("li"))


@pytest.mark.parametrize("name", SHEETS)
def test_a_reviewed_translation_stands_alone_with_every_caution(name: str) -> None:
    told = copy.deepcopy(told_in_language(name, "sw"))
    told["language"] = {"tag": "sw", "reviewed": True, "untranslated": 0}
    for one in (*told["cautions"], *told["findings"]):
        one.pop("english", None)
    shown = Page(as_sheet(name, told, LANGUAGES["sw"]))
    assert shown.in_tongue("en") == []
    assert {squeezed(one["text"]) for one in told["cautions"]} <= set(shown.of("li"))


@pytest.mark.parametrize(
    ("count", "words"),
    [(1, "One sentence is English for want of a translation."), (7, "7 sentences are English for want of a translation.")],
)
def test_sentences_without_a_translation_are_counted(count: int, words: str) -> None:
    told = {**example("maintenance-feed"), "language": {"tag": "en", "reviewed": True, "untranslated": count}}
    assert words in Page(written("maintenance-feed", told)).of("p")
    assert "want of a translation" not in page("maintenance-feed").text


WORD = re.compile(r"[^\W\d_]{4,}")


@pytest.mark.parametrize("name", SHEETS)
def test_no_word_of_a_sheet_escapes_its_language(name: str, tmp_path: Path) -> None:
    """Told in stretched English, nothing is as it was in English but names, and what is said to be English."""
    tongue, body = stretched_language(tmp_path), questions()[name].example
    told = replace(questions()[name], languages={**LANGUAGES, "sw": tongue}).ask(json.dumps(body).encode(), language="sw")
    shown = Page(as_sheet(name, told, tongue))
    names = {body["name"], "bucket, 20 L"}
    same = {text for text in shown.in_tongue("sw") if WORD.search(text)} & set(page(name).in_tongue("en"))
    assert same - names == set()


def test_a_message_is_cleaned_as_any_text() -> None:
    """An answer in English holds messages, which are texts with a memory."""
    told = copy.deepcopy(example("maintenance-feed"))
    told["storing"]["text"] = Message("Feed it\x1b <b>fresh</b>\x00.", "storing-fresh")
    html = written("maintenance-feed", told)
    assert "Feed it  &lt;b&gt;fresh&lt;/b&gt; ." in html
    assert not {"\x1b", "\x00"} & set(html)


def test_an_answer_from_before_languages_has_a_sheet_too() -> None:
    told = {key: one for key, one in example("maintenance-feed").items() if key != "language"}
    assert written("maintenance-feed", told) == written("maintenance-feed", example("maintenance-feed"))


# ---- what people typed stays text ---------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("name", SHEETS)
def test_no_name_becomes_markup(name: str) -> None:
    body = {**questions()[name].example, "name": HOSTILE, "containers": [{"name": HOSTILE, "volume": 20}]}
    if name == "first-charge":
        body["purchases"] = [{**body["purchases"][0], "name": HOSTILE}]
    found = Page(written(name, ask(name, body)))
    assert {tag for tag, _ in found.tags} == {tag for tag, _ in page(name).tags}
    shown = squeezed(HOSTILE.replace("\x00", " ").replace("\x1b", " "))
    assert found.text.count(shown) >= (4 if name == "first-charge" else 3)
    assert "49" not in [text for _, text in found.texts]


@given(st.text(min_size=1, max_size=60))
def test_any_name_is_read_back(name: str) -> None:
    found = Page(written("maintenance-feed", {**example("maintenance-feed"), "name": name}))
    assert [tag for tag, _ in found.tags].count("h1") == 1
    plain = "".join(" " if mark < " " or "\x7f" <= mark <= "\x9f" or mark in "\ufffe\uffff" else mark for mark in name)
    assert squeezed(plain) in found.text or not squeezed(plain)


@settings(max_examples=20)
@given(first_charges())
def test_any_first_charge_has_a_sheet(body: Json) -> None:
    _stands("first-charge", body)


@settings(max_examples=20)
@given(maintenance_feeds())
def test_any_maintenance_feed_has_a_sheet(body: Json) -> None:
    _stands("maintenance-feed", body)


@settings(max_examples=12)
@given(farm_plans())
def test_any_farm_plan_has_a_sheet(body: Json) -> None:
    _stands("farm-plan", body)


def test_a_plan_shows_every_part_that_it_has_and_says_what_it_lacks() -> None:
    body = {**questions()["farm-plan"].example, "with_forecast": False, "crops": []}
    told = ask("farm-plan", body)
    shown = Page(written("farm-plan", told))
    headings = shown.of("h2")
    assert {"At each feeding, every day", "Days", "The plan in numbers"} <= set(headings)
    assert {"First filling, feed", "Gas wanted"} <= set(shown.of("th"))
    assert "Enough for" not in shown.of("th")
    assert "Gas through the first year" not in headings
    assert "Not in this plan: Digestate, since no crops are stated." in shown.text
    assert EN.typical(told["sizing"]["total_volume"]) in shown.of("td")
    assert EN.amount(told["maintenance_feed"]["biogas_per_day"]) in shown.of("td")


def test_the_plan_draws_its_buckets_and_the_gas_of_its_forecast() -> None:
    told, whole = example("farm-plan"), page("farm-plan")
    [bucket] = told["maintenance_feed"]["per_feeding"]["containers"]
    drawn = [attributes.get("class") for tag, attributes in whole.tags if tag == "path"]
    assert drawn.count("bucket") == bucket["substrate"] + bucket["water"] > 4
    assert drawn.count("month") == drawn.count("month-range") == len(told["gas_forecast"]["series"]) == 13
    assert "Gas through the first year" in whole.of("h2")


def test_a_year_of_gas_that_may_not_burn_says_so_beside_its_bars() -> None:
    told = example("farm-plan")
    words = "starts by itself in 40 % of cases only"
    assert "starts by itself" not in page("farm-plan").text
    rarely = {**told, "gas_forecast": {**told["gas_forecast"], "starts": {"value": 40.0, "unit": "%"}}}
    assert words in Page(written("farm-plan", rarely)).text


def test_what_is_left_over_of_the_dung_is_told() -> None:
    told = example("farm-plan")
    assert EN.typical(told["left_over"]["mass_per_day"]) in page("farm-plan").of("td")


def test_days_that_have_no_room_are_counted() -> None:
    told = example("farm-plan")
    assert len(told["calendar"]) > MOST_DAYS + 2
    for count, words in ((1, "One later day stands in the calendar."), (2, "2 later days stand in the calendar.")):
        assert words in Page(written("farm-plan", {**told, "calendar": told["calendar"][: MOST_DAYS + count]})).of("p")
    assert "stand" not in Page(written("farm-plan", {**told, "calendar": told["calendar"][:MOST_DAYS]})).of("p")


def test_a_plan_of_a_digester_that_stands_already_says_so() -> None:
    body = {**questions()["farm-plan"].example, "digester": {"structure": "fixed_dome", "total_volume": 12}, "with_forecast": False}
    shown = Page(written("farm-plan", ask("farm-plan", body)))
    assert "The digester is chosen or built already." in shown.of("p")
    assert "Digester, in all" not in shown.of("th")


def _stands(name: str, body: Json) -> None:
    try:
        told = ask(name, body)
    except RefusedError:
        return
    shown = Page(written(name, told))
    cautions = {(one["signal"], squeezed(one["text"])) for one in told["cautions"]}
    assert cautions <= set(cautions_in(shown))
    assert len(shown.of("td")) >= 2 * len(days_of(told)[:MOST_DAYS])
    open_dangers = [one["title"] for one in told["findings"] if (one["verdict"], one["severity"]) == ("unknown", "danger")]
    assert {f"{title}." for title in open_dangers} <= set(shown.of("li"))


# ---- the blocks themselves ----------------------------------------------------------------------------------------------------------


def test_a_member_that_a_template_prints_and_an_answer_lacks_is_a_fault_and_no_gap() -> None:
    told: dict[str, Any] = copy.deepcopy(example("maintenance-feed"))
    del told["storing"]["text"]
    with pytest.raises(UndefinedError):
        written("maintenance-feed", told)


@pytest.mark.parametrize("day", [dt.date(2027, 2, 3), dt.date(2024, 2, 29), dt.date(1999, 12, 31)])
def test_a_date_is_told_with_its_weekday(day: dt.date) -> None:
    assert EN.long_date(day.isoformat()) == f"{day:%a} {day.day} {day:%b} {day.year}"


def test_sheets_are_offered_by_their_questions() -> None:
    assert {name for name, one in questions().items() if HTML in one.representations} == set(SHEETS)
    for name in SHEETS:
        question = questions()[name]
        assert question.write(question.read(question.example), False, HTML) == written(name, example(name))
