"""Messages: said in English by id, kept, and told in other languages with their numbers, amounts, dates and plurals."""

from __future__ import annotations

import copy
import datetime as dt
import json
import pickle
from collections.abc import Callable, Iterator
from decimal import ROUND_HALF_EVEN, Decimal
from pathlib import Path
from typing import Any

import pytest
from babel import Locale
from babel.dates import format_date
from babel.numbers import format_decimal
from hypothesis import given
from hypothesis import strategies as st
from tests.rules.conftest import SIZING, ask, questions

from kilisho import load
from kilisho.messages import LANGUAGES, Amount, Day, Language, Listed, Message, Number, in_a_row, say, told_in, with_overlays
from kilisho.messages.fluent import MessageFileError, references_of, source_of, stamp_of
from kilisho.packs import PackError
from kilisho.questions import open_questions

ENGLISH = LANGUAGES["en"]
TAGS = tuple(LANGUAGES)
EVERY = pytest.mark.parametrize("tag", TAGS)
FINITE = st.floats(-1e12, 1e12)
PACK = 'pack: {id: my_region, version: 0.1.0, title: "My region (invented)"}\n'


def entry(name: str, text: str, *, english: str | None = None, reviewed: bool = False) -> str:
    """A translation with its mark; of today's English of the code unless another is given."""
    stamp = stamp_of(source_of(ENGLISH.entries[name].message) if english is None else english)
    return f"# of {stamp}, reviewed: {str(reviewed).lower()}\n{name} = {text}\n"


def language(tmp_path: Path, tag: str, *entries: str) -> Language:
    """The language with these entries over its own."""
    file = tmp_path / f"over.{tag}.ftl"
    file.write_text("\n".join(entries), "utf-8")
    return with_overlays([(tag, file)])[tag]


# Numbers


@given(FINITE, st.integers(0, 6))
def test_english_numbers_with_decimals_are_written_as_babel_writes_them(value: float, decimals: int) -> None:
    """Against babel's English pattern, and rounded to even from the exact value as Python's decimal does."""
    exact = Decimal(value).quantize(Decimal(1).scaleb(-decimals), ROUND_HALF_EVEN) + 0
    pattern = f"#,##0.{'0' * decimals}"
    assert ENGLISH.number(value, decimals) == format_decimal(exact, pattern, locale="en")


@given(FINITE)
def test_english_numbers_have_three_digits_that_mean_something_and_are_written_as_babel_writes_them(value: float) -> None:
    shown = ENGLISH.number(value)
    read = Decimal(shown.replace(",", ""))
    assert shown == format_decimal(read, locale="en", decimal_quantization=False)
    assert len(read.normalize().as_tuple().digits) <= 3
    assert abs(Decimal(value) - read) <= abs(read) * Decimal("0.00501")


@pytest.mark.parametrize(
    ("value", "decimals", "shown"),
    [
        (3556.9, None, "3,560"),
        (0.98672, None, "0.987"),
        (0, None, "0"),
        (-0.0, None, "0"),
        (-0.2, 0, "0"),
        (1234.5, 0, "1,234"),
        (1e-5, None, "0.00001"),
        (0.5, 3, "0.500"),
        (999.6, None, "1,000"),
        (-12.34, None, "-12.3"),
    ],
)
def test_numbers_by_example(value: float, decimals: int | None, shown: str) -> None:
    assert ENGLISH.number(value, decimals) == shown


@pytest.mark.parametrize(
    ("tag", "thousands", "small"),
    [("en", "1,230,000", "0.987"), ("es", "1.230.000", "0,987"), ("fr", "1\u202f230\u202f000", "0,987"), ("sw", "1,230,000", "0.987")],
)
def test_each_language_has_its_own_separators(tag: str, thousands: str, small: str) -> None:
    """Separators of Unicode's CLDR: recalled, not read."""
    assert (LANGUAGES[tag].number(1_234_567), LANGUAGES[tag].number(0.98672)) == (thousands, small)


@EVERY
@given(FINITE)
def test_every_language_writes_the_number_that_english_writes(tag: str, value: float) -> None:
    read = Decimal(ENGLISH.number(value, 2).replace(",", ""))
    assert LANGUAGES[tag].number(value, 2) == format_decimal(read, "#,##0.00", locale=tag)


# Amounts


@pytest.mark.parametrize(
    ("amount", "shown"),
    [
        (Amount(1, "d"), "1 day"),
        (Amount(2, "d"), "2 days"),
        (Amount(0.5, "h"), "0.5 hours"),
        (Amount(1.2, "a", decimals=0), "1 year"),
        (Amount(0, "d"), "0 days"),
        (Amount(3556.9, "kg", decimals=0), "3,557 kg"),
        (Amount(3556.9, "kg"), "3,560 kg"),
        (Amount(22, "Cel", decimals=0), "22 °C"),
        (Amount(12, "m3"), "12 m³"),
        (Amount(0.5, "har"), "0.5 ha"),
        (Amount(85.4, "%", decimals=0), "85 %"),
        (Amount(24.5, "1"), "24.5"),
        (Amount(90, "kg/d"), "90 kg a day"),
        (Amount(34, "d", 22, 46), "34 days (22 to 46)"),
        (Amount(1, "d", 0.5, 2.04), "1 day (0.5 to 2.04)"),
        (Amount(1.234, "m3/d", 1.234, 1.2341), "1.23 m³ a day"),
    ],
)
def test_amounts_in_english(amount: Amount, shown: str) -> None:
    assert ENGLISH.amount(amount) == shown


def test_a_told_amount_is_shown_with_its_range_or_as_its_typical_value() -> None:
    told = {"value": 34.0, "unit": "d", "low": 22.0, "high": 46.0}
    assert Amount.of(told) == Amount(34, "d", 22, 46)
    assert (ENGLISH.amount(told), ENGLISH.typical(told)) == ("34 days (22 to 46)", "34 days")
    assert Amount.of({"value": 3.0, "unit": "kg"}) == Amount(3, "kg")


# Plurals


@EVERY
@pytest.mark.parametrize("unit", ["unit-days", "unit-hours", "unit-years"])
def test_units_that_are_words_follow_the_language_s_plural(tag: str, unit: str, tmp_path: Path) -> None:
    """Against babel's rules of CLDR, which Fluent is to follow for whole numbers and for others."""
    forms = " ".join(f"\n    [{form}] {{ $shown }} {form}" for form in ("one", "two", "few", "many"))
    told = language(tmp_path, tag, entry(unit, f"{{ $count ->{forms}\n   *[other] {{ $shown }} other\n}}"))
    code = {"unit-days": "d", "unit-hours": "h", "unit-years": "a"}[unit]
    for number in (0, 1, 2, 3, 5, 11, 100, 1_000_000, 0.5, 1.5):
        form = Locale.parse(tag).plural_form(Decimal(str(number)))
        assert told.amount(Amount(number, code)) == f"{told.number(number)} {form}"


@pytest.mark.parametrize(
    ("tag", "single", "several"),
    [("en", (1,), (0, 2, 0.5)), ("es", (1,), (0, 2, 0.5)), ("fr", (0, 1, 0.5, 1.5), (2, 3)), ("sw", (1,), (0, 2, 0.5))],
)
def test_who_counts_as_one(tag: str, single: tuple[float, ...], several: tuple[float, ...], tmp_path: Path) -> None:
    """CLDR, recalled: French calls all below two one; English, Spanish and Kiswahili only the whole one."""
    told = language(tmp_path, tag, entry("unit-days", "{ $count ->\n    [one] { $shown } one\n   *[other] { $shown } more\n}"))
    assert {told.amount(Amount(number, "d")).split()[1] for number in single} == {"one"}
    assert {told.amount(Amount(number, "d")).split()[1] for number in several} == {"more"}


@given(st.integers(0, 10_000))
def test_english_counts_one_apart_from_all_others(count: int) -> None:
    verb = "check of danger level is" if count == 1 else "checks of danger level are"
    assert say("safety-more-unanswered", count=count) == f"{count:,} more {verb} not answered."


# Dates


@EVERY
@given(st.dates(dt.date(1900, 1, 1), dt.date(9999, 12, 31)))
def test_dates_are_written_as_babel_writes_them(tag: str, day: dt.date) -> None:
    told = LANGUAGES[tag]
    assert told.long_date(day) == told.long_date(day.isoformat()) == format_date(day, "EEE d MMM y", tag)
    assert told.short_date(day) == format_date(day, "d MMM", tag)
    assert told.month(day) == format_date(day, "MMM y", tag)


@pytest.mark.parametrize(
    ("tag", "shown"),
    [("en", "Wed 3 Feb 2027"), ("es", "mié 3 feb 2027"), ("fr", "mer. 3 févr. 2027"), ("sw", "Jumatano 3 Feb 2027")],
)
def test_the_third_of_february_2027_was_a_wednesday(tag: str, shown: str) -> None:
    assert LANGUAGES[tag].long_date("2027-02-03") == shown


# Saying


def test_a_message_is_its_english_and_remembers_id_and_parameters() -> None:
    said = say("remedy-purchase", bought=Amount(443, "kg", decimals=0))
    assert said == "Take 443 kg from others."
    assert (said.id, dict(said.parameters)) == ("remedy-purchase", {"bought": Amount(443, "kg", decimals=0)})
    assert json.dumps({"text": said}) == '{"text": "Take 443 kg from others."}'
    assert type(f"{said}") is str


@pytest.mark.parametrize(
    "said",
    [
        say("stockpile-enough"),
        say("heap-short", short=Amount(1, "kg")),
        in_a_row(say("stockpile-enough-on", days=2, date=Day(dt.date(2027, 2, 3))), say("fill-refused", names=Listed([say("fill")]))),
        Message("No well near.", "checks-mine-title"),
    ],
)
@pytest.mark.parametrize("again", [lambda one: pickle.loads(pickle.dumps(one)), copy.copy, copy.deepcopy])
def test_pickled_and_copied_messages_stay_messages(said: Message, again: Callable[[Message], Message]) -> None:
    other = again(said)
    assert type(other) is Message
    assert (str(other), other.id, dict(other.parameters)) == (str(said), said.id, dict(said.parameters))


def test_an_id_that_is_not_there_is_no_message() -> None:
    for name in ("nobody-says-this", "sentences-3"):
        with pytest.raises(KeyError):
            say(name)
        with pytest.raises(KeyError):
            say(name, count=1)


def test_a_parameter_that_the_message_wants_must_come() -> None:
    with pytest.raises(ValueError, match="en remedy-wait"):
        say("remedy-wait", days=3)
    with pytest.raises(ValueError, match="en remedy-purchase"):
        say("remedy-purchase")


@pytest.mark.parametrize("wrong", [1.5, None, ["a"], {"value": 1, "unit": "d"}, dt.date(2027, 2, 3)])
def test_a_parameter_is_of_a_kind_that_languages_can_write(wrong: Any) -> None:
    with pytest.raises(TypeError, match="a message takes no"):
        say("remedy-purchase", bought=wrong)


def test_parameters_of_every_kind_are_written_in_the_language(tmp_path: Path) -> None:
    fill = say("fill")
    told = language(tmp_path, "fr", entry("fill-refused", "Non : { $names }."), entry("fill", "Remplissez."))
    for names, shown in (
        (Number(1234.5, 1), "1\u202f234,5"),
        (Amount(0.25, "kg"), "0,25 kg"),
        (Day(dt.date(2027, 2, 3)), "mer. 3 févr. 2027"),
        (1234, "1\u202f234"),
        ("as it is", "as it is"),
        (fill, "Remplissez."),
        (Listed([fill, "b"]), "Remplissez.; b"),
    ):
        assert told.tell(say("fill-refused", names=names))[0] == f"Non : {shown}."


def test_sentences_in_a_row_are_one_message_told_one_by_one(tmp_path: Path) -> None:
    row = in_a_row(say("stockpile-enough"), say("stockpile-never"), say("remedy-never"))
    assert row == "That is enough. Own collection alone never suffices. Own collection never suffices."
    told = language(
        tmp_path,
        "sw",
        entry("sentences-2", "{ $first } { $second }"),
        *(entry(name, name.upper()) for name in ("stockpile-enough", "stockpile-never", "remedy-never")),
    )
    assert told.tell(row)[0] == "STOCKPILE-ENOUGH STOCKPILE-NEVER REMEDY-NEVER"
    assert in_a_row(say("fill")) is say("fill")


# Translations and their English


def test_a_translation_holds_only_for_the_english_that_it_was_made_of(tmp_path: Path) -> None:
    stale = entry("stockpile-enough", "Inatosha kwa leo.", english="That was enough.")
    assert language(tmp_path, "luo", stale).tell(say("stockpile-enough")) == ("That is enough.", None)
    assert language(tmp_path, "luo", "stockpile-enough = Oromo.\n").say("stockpile-enough") == "That is enough."
    shown, found = language(tmp_path, "luo", entry("stockpile-enough", "Oromo.")).tell(say("stockpile-enough"))
    assert (shown, found and found.reviewed) == ("Oromo.", False)
    assert language(tmp_path, "luo", entry("stockpile-enough", "Oromo.")).say("stockpile-enough") == "Oromo."


def test_a_rulebook_s_sentence_is_told_as_long_as_it_says_the_same(tmp_path: Path) -> None:
    told = language(tmp_path, "luo", entry("checks-mine-title", "Soko ni bor.", english="The well is far."))
    assert told.tell(Message("The well is far.", "checks-mine-title"))[0] == "Soko ni bor."
    assert told.tell(Message("The well is near.", "checks-mine-title"))[0] == "The well is near."


def test_ids_are_words_where_nobody_gave_them_any(tmp_path: Path) -> None:
    assert ENGLISH.word("event", "flame_test") == "Flame test"
    assert ENGLISH.word("event", "paint_the_gate") == "Paint the gate"
    assert language(tmp_path, "sw", entry("event-flame_test", "Jaribio la mwali")).word("event", "flame_test") == "Jaribio la mwali"


def test_a_language_that_cldr_does_not_know_writes_numbers_as_english_does(tmp_path: Path) -> None:
    told = language(tmp_path, "zz", entry("unit-days", "{ $count ->\n    [one] zek { $shown }\n   *[other] zeki { $shown }\n}"))
    assert [told.amount(Amount(number, "d")) for number in (1, 1234.0)] == ["zek 1", "zeki 1,230"]
    assert told.long_date("2027-02-03") == "Wed 3 Feb 2027"


# Files of messages


def test_later_files_lie_over_earlier_ones_and_leave_the_other_languages_alone(tmp_path: Path) -> None:
    first, second = tmp_path / "a.sw.ftl", tmp_path / "b.sw.ftl"
    first.write_text(entry("fill-when-there", "Kwanza") + entry("remedy-never", "Kamwe"), "utf-8")
    second.write_text(entry("fill-when-there", "Pili"), "utf-8")
    found = with_overlays([("sw", first), ("sw", second)])
    assert [found["sw"].say(name) for name in ("fill-when-there", "remedy-never")] == ["Pili", "Kamwe"]
    assert (found["en"], found["fr"], found["es"]) == (LANGUAGES["en"], LANGUAGES["fr"], LANGUAGES["es"])
    assert with_overlays([]) == LANGUAGES


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("stockpile-enough = Inatosha { $days }.\n", r"stockpile-enough: a text whose braces hold nothing"),
        ("remedy-purchase = Chukua { $kiasi }.\n", r"remedy-purchase: a text whose braces hold \$bought"),
        ("-dung = kinyesi\nfill = Jaza { -dung }.\n", r"fill: a text whose braces hold nothing"),
        ("fill = Jaza { fill-when-there }.\n", r"fill: a text whose braces hold nothing"),
        ("unit-days = { NUMBER($count) } siku\n", r"unit-days: a text whose braces hold \$count, \$shown"),
        ("fill =\n    .note = Jaza\n", r"fill: a text whose braces hold nothing"),
        ("checks-mine-title = Kisima { $x }\n", r"checks-mine-title: a text whose braces hold nothing"),
        ("fill = Jaza {\n", r"Fluent messages; reading stopped at"),
    ],
)
def test_a_file_whose_messages_could_not_be_told_is_refused(text: str, expected: str, tmp_path: Path) -> None:
    file = tmp_path / "over.sw.ftl"
    file.write_text(text, "utf-8")
    with pytest.raises(MessageFileError, match=expected) as refused:
        with_overlays([("sw", file)])
    assert refused.value.file == str(file)


def test_a_file_beside_a_pack_tells_the_pack_s_sentences(pack: Callable[..., Path]) -> None:
    why = "The ground slides (invented)."
    region = pack(
        PACK + "checks:\n  slope: {title: Flat ground, topic: siting, subject: distance_to_well, must: {at_least: 900, unit: m},"
        f' severity: warning, why: "{why}", do: Move it., basis: judgement, asked_in: [safety_check]}}\n',
        "my-region.yaml",
    )
    pack(entry("checks-slope-why", "Udongo huteleza.", english=why, reviewed=True), "my-region.sw.ftl")
    pack(entry("checks-slope-why", "Not this pack's.", english=why), "other.fr.ftl")
    among = open_questions(load(region))
    body = json.dumps({"site": {"distance_to_well": 100}}).encode()
    slope = {tag: finding(among["safety-check"].ask(body, language=tag)) for tag in ("sw", "fr")}
    assert (slope["sw"]["why"], slope["fr"]["why"]) == ("Udongo huteleza.", why)
    assert "english" not in slope["sw"]


def finding(answer: dict[str, Any], check: str = "slope") -> dict[str, Any]:
    [found] = [one for one in answer["findings"] if one["check"] == check]
    return dict(found)


def test_a_folder_of_packs_takes_every_file_of_messages_in_it(tmp_path: Path) -> None:
    (tmp_path / "pack.yaml").write_text(PACK)
    (tmp_path / "farm.luo.ftl").write_text(entry("stockpile-enough", "Oromo."), "utf-8")
    (tmp_path / "sw.ftl").write_text(entry("remedy-never", "Kamwe."), "utf-8")
    found = load(tmp_path).languages
    assert (found["luo"].say("stockpile-enough"), found["sw"].say("remedy-never")) == ("Oromo.", "Kamwe.")
    assert set(found) == {*TAGS, "luo"}


@pytest.mark.parametrize("name", ["first-charge", "maintenance-feed", "digestate", "farm-plan"])
def test_the_bucket_that_is_assumed_has_a_name_in_every_language_and_that_of_the_caller_stays(name: str) -> None:
    question = questions()[name]
    bare = {member: value for member, value in question.example.items() if member != "containers"}
    own = {**bare, "containers": [{"name": "my own pail (invented)", "volume": 20}]}
    told = {tag: set(vessels(question.ask(json.dumps(bare).encode(), language=tag))) for tag in TAGS}
    assert told["en"] == {"Bucket of 20 litres"}
    assert len(set.union(*told.values())) == len(TAGS)
    assert {vessel for tag in TAGS for vessel in vessels(question.ask(json.dumps(own).encode(), language=tag))} == {
        "my own pail (invented)"
    }


def vessels(value: Any) -> Iterator[str]:
    """What an answer calls the things that material is carried in."""
    if isinstance(value, dict):
        yield from [value["carried_in"]] if "carried_in" in value else []
        yield from (one["name"] for one in value.get("containers", ()))
        value = list(value.values())
    if isinstance(value, list):
        for inner in value:
            yield from vessels(inner)


def test_a_new_language_of_a_pack_can_be_asked_for(tmp_path: Path) -> None:
    (tmp_path / "pack.yaml").write_text(PACK)
    (tmp_path / "farm.luo.ftl").write_text(entry("storage-by-share", "dier achiel"), "utf-8")
    answer = open_questions(load(tmp_path))["sizing"].ask(json.dumps(SIZING).encode(), language="luo")
    assert answer["gas_storage_method_name"] == "dier achiel"
    assert answer["gas_storage_method"] == "share_of_a_day_s_gas"
    assert answer["language"]["tag"] == "luo"
    assert answer["language"]["untranslated"] > 10


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("layer.sw.ftl", b"fill = Jaza {\n", "Fluent messages"),
        ("layer.sw.ftl", b"fill = \xff\n", "UTF-8 text"),
        ("layer.sw.ftl", b"fill = { $x }\n", "a text whose braces hold nothing"),
        ("layer.kiswahili.ftl", b"fill = Jaza\n", "a name that ends in a language"),
        ("layer.ftl", b"fill = Jaza\n", "a name that ends in a language"),
    ],
)
def test_a_bad_file_beside_a_pack_is_a_fault_of_the_pack(pack: Callable[..., Path], name: str, text: bytes, expected: str) -> None:
    region = pack(PACK)
    bad = region.parent / name
    bad.write_bytes(text)
    if name == "layer.ftl":  # a pack of one file looks only at names that go on from its own
        region = region.parent
    with pytest.raises(PackError) as refused:
        load(region)
    [fault] = refused.value.faults
    assert fault.file == str(bad)
    assert expected in fault.expected


@pytest.mark.parametrize(
    ("source", "found"),
    [
        ("plain", set()),
        ("{ $a } and { $b ->\n    [one] { $c }\n   *[other] { -term }\n}", {"$a", "$b", "$c", "term"}),
        ("{ NUMBER($n, minimumFractionDigits: 2) } { other.part }", {"NUMBER", "$n", "other"}),
        ('{ "{" }', set()),
    ],
)
def test_what_braces_refer_to(source: str, found: set[str], tmp_path: Path) -> None:
    file = tmp_path / "x.sw.ftl"
    file.write_text(f"some = {source}\n")
    assert references_of(Language("zz", (file,)).entries["some"].message) == found


# A whole answer in another language


def dangers() -> dict[str, Any]:
    """An answer by hand: a danger, a warning, a number, an id, a text of the caller."""
    stop = say("safety-stop", titles=Listed([say("values-agree"), "stated by somebody"]))
    return {
        "name": "Highfold (invented)",
        "number": 3,
        "share": 0.25,
        "known": True,
        "nothing": None,
        "in_words": stop,
        "findings": [
            {"check": "a", "severity": "danger", "why": say("values-agree-why", inputs="x"), "do": say("values-agree-do"), "source": []},
            {"check": "b", "severity": "warning", "why": say("values-agree-do")},
        ],
        "cautions": [{"id": "c", "signal": "danger", "text": say("safety-clear")}],
        "steps": (say("start-up-close"), say("start-up-again")),
    }


NAMES = ("safety-stop", "values-agree", "values-agree-why", "values-agree-do", "safety-clear", "start-up-close", "start-up-again")


def translations(*, reviewed: bool, without: tuple[str, ...] = ()) -> list[str]:
    texts = {name: name.replace("-", " ") for name in NAMES} | {"safety-stop": "simama { $titles }", "values-agree-why": "kwa { $inputs }"}
    return [entry(name, text, reviewed=reviewed) for name, text in texts.items() if name not in without]


def test_dangers_keep_their_english_until_somebody_has_reviewed_the_words(tmp_path: Path) -> None:
    answer = dangers()
    told = told_in(language(tmp_path, "luo", *translations(reviewed=False)), answer)
    first, second = told["findings"]
    assert (first["why"], first["do"]) == ("kwa x", "values agree do")
    assert first["english"] == {name: str(answer["findings"][0][name]) for name in ("why", "do")}
    assert "english" not in second
    assert told["cautions"] == [
        {"id": "c", "signal": "danger", "text": "safety clear", "english": {"text": "No check failed on what was stated."}}
    ]
    assert told["language"] == {"tag": "luo", "reviewed": False, "untranslated": 0}


def test_reviewed_dangers_need_no_english(tmp_path: Path) -> None:
    told = told_in(language(tmp_path, "luo", *translations(reviewed=True)), dangers())
    assert not [one for one in (*told["findings"], *told["cautions"]) if "english" in one]
    assert told["language"] == {"tag": "luo", "reviewed": True, "untranslated": 0}


def test_sentences_that_are_english_for_want_of_a_translation_are_counted(tmp_path: Path) -> None:
    told = told_in(language(tmp_path, "luo", *translations(reviewed=True, without=("values-agree-do", "start-up-close"))), dangers())
    assert told["language"] == {"tag": "luo", "reviewed": True, "untranslated": 3}
    assert told["steps"] == [str(say("start-up-close")), "start up again"]


def test_sentences_within_a_sentence_count_too(tmp_path: Path) -> None:
    titles = Listed([say("values-agree")])
    danger = {"signal": "danger", "text": say("safety-stop", titles=titles)}
    frame = entry("safety-stop", "simama { $titles }", reviewed=True)
    within = told_in(language(tmp_path, "luo", frame, entry("values-agree", "maadili")), {"one": danger})
    assert within["one"]["text"] == "simama maadili"
    assert within["one"]["english"] == {"text": str(danger["text"])}
    assert within["language"] == {"tag": "luo", "reviewed": False, "untranslated": 0}
    lacking = told_in(language(tmp_path, "luo", frame), {"one": danger})
    assert lacking["language"] == {"tag": "luo", "reviewed": True, "untranslated": 1}
    assert told_in(language(tmp_path, "luo"), {"one": danger})["language"]["untranslated"] == 1


def test_nothing_but_messages_changes(tmp_path: Path) -> None:
    answer = dangers()
    told = told_in(language(tmp_path, "luo", *translations(reviewed=True)), answer)
    assert {name: told[name] for name in ("name", "number", "share", "known", "nothing")} == {
        name: answer[name] for name in ("name", "number", "share", "known", "nothing")
    }
    assert answer == dangers()
    assert told["in_words"] == "simama values agree; stated by somebody"


def test_english_is_told_as_it_is_and_needs_no_review() -> None:
    answer = dangers()
    assert told_in(ENGLISH, answer) == {**answer, "language": {"tag": "en", "reviewed": True, "untranslated": 0}}


@pytest.mark.parametrize("tag", [tag for tag in TAGS if tag != "en"])
@pytest.mark.parametrize("name", sorted(name for name, one in questions().items() if not one.slow))
def test_the_examples_keep_all_their_numbers_and_ids_in_every_language(name: str, tag: str) -> None:
    question = questions()[name]
    body = json.dumps(question.example).encode()
    english, told = ask(name, question.example), question.ask(body, language=tag)
    untold = question.answer(question.read(question.example), False)
    assert told.pop("language")["tag"] == tag
    assert english.pop("language") == {"tag": "en", "reviewed": True, "untranslated": 0}
    assert_like(untold, english, told)


def assert_like(untold: Any, english: Any, told: Any, path: str = "") -> None:
    """``told`` differs from ``english`` by messages, and by the English that dangers carry."""
    if isinstance(untold, dict):
        added = set(told) - set(untold)
        assert added <= {"english"}, path
        if added:
            assert "danger" in (untold.get("signal"), untold.get("severity")), path
            assert told["english"] == {key: str(value) for key, value in untold.items() if type(value) is Message}, path
        for key, value in untold.items():
            assert_like(value, english[key], told[key], f"{path}/{key}")
    elif isinstance(untold, list | tuple):
        assert len(untold) == len(told), path
        for place, value in enumerate(untold):
            assert_like(value, english[place], told[place], f"{path}/{place}")
    elif type(untold) is Message:
        assert (english, type(told)) == (str(untold), str), path
    else:
        assert untold == english == told, path
