"""The report on a fleet: its counts are those of the answers, what nobody stated is told, and its text cannot be turned into anything."""

from __future__ import annotations

import html
import re
from html.parser import HTMLParser
from pathlib import Path
from typing import Any

import pyarrow as pa
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules.conftest import Json, base
from tests.rules.fleets import fleet, row, rows, table
from tests.rules.test_exchange_rows import CSV, summary
from tests.tongues import stretched_language

from kilisho.cli import main
from kilisho.fleet.counting import GROUPS, MOST_PLACES, MOST_WORST, Counting, Counts, TooManyPlacesError, added, counted, nothing
from kilisho.fleet.exchange.summary import summary_of
from kilisho.fleet.report import report_of
from kilisho.fleet.running import Order, run
from kilisho.fleet.table import NOTICE
from kilisho.messages import LANGUAGES, Message, say, told_in
from kilisho.questions.installation.verdicts import FAULTS
from kilisho.views.reports import as_markdown, as_page

ENGLISH = LANGUAGES["en"]


def counts_of(stated: list[Json], cut: int = 1000, by: str | None = None) -> Counts:
    """The counts of rows, so many at once."""
    found, counting = nothing(), Counting(fleet(), by)
    for start in range(0, len(stated), cut):
        batch = table(stated[start : start + cut])
        found = added(found, counting.of(batch, fleet().answer(batch), start, ()), by)
    return found


def report(stated: list[Json], by: str | None = None, cut: int = 1000) -> Json:
    return report_of(counts_of(stated, cut, by), fleet(), base(), "fleet.csv", by)


STARVED = row(id="S", feed_mass=8.0, water_volume=8.0, biogas_measured=0.2)
LEAKING = row(id="L", biogas_measured=0.3)
DANGER = row(id="D", gas_smell_indoors=True)
MIXED = [row(), STARVED, LEAKING, DANGER, row(id="N", total_volume=-1.0), row(id="V", total_volume=9000.0)]


def test_counts_are_those_of_the_answers() -> None:
    answers = fleet().answer(table(MIXED)).to_pylist()
    told = {one["group"]: one["count"] for one in report(MIXED)["groups"]}
    assert told == {group: sum(one[column] in words for one in answers) for group, (column, words) in GROUPS.items()}
    assert told["dangerous"] == told["refused"] == told["doubtful"] == told["starved"] == 1
    failed = report(MIXED)["failed"]
    for one in failed:
        assert one["count"] == sum(one["check"] in (answer["failed"] or ()) for answer in answers)
        assert one["do"] == base().data.checks[one["check"]].do


@given(st.lists(rows(), min_size=1, max_size=12), st.integers(1, 12), st.integers(1, 12))
@settings(max_examples=40, deadline=None)
def test_counts_do_not_hang_on_the_cut(stated: list[Json], one: int, other: int) -> None:
    assert counts_of(stated, one, "structure") == counts_of(stated, other, "structure")


def test_a_file_comes_to_what_the_summary_over_http_says(tmp_path: Path) -> None:
    """The same table, once counted in blocks of a row and once in one piece."""
    lines = ["id,structure,total_volume,feed_mass,notes", "a,bag,9,x,", "b,igloo,9,40,", "c,bag", ",fixed_dome,9000,40,", "e,bag,9,40,"]
    data = "\n".join([*lines, *[f"{number},bag,-1,40," for number in range(20)]]).encode()
    (tmp_path / "fleet.csv").write_bytes(data)
    counts = run(Order((str(tmp_path / "fleet.csv"),), str(tmp_path / "out.csv"), rows=1, workers=1), base())
    told = summary(data, CSV)
    assert summary_of(counts, counts["unread"], fleet().columns, base().identity) == told
    assert [one["row"] for one in told["first_refused"]] == [1, 2, 3, *range(6, 13)]
    assert told["slips"] == [{"member": "total_volume", "read_as": "L", "rows": 1}]
    assert told["faults"][0] == {"column": "total_volume", "code": "out_of_range", "rows": 20}
    assert counted(fleet().answer(table(MIXED)), 0).items() <= counts_of(MIXED).items()


def test_the_command_tells_the_first_rows_that_are_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "fleet.csv").write_text("id,structure,total_volume\na,bag,9\nb,igloo,9\nc,bag\n")
    assert main(["validate", str(tmp_path / "fleet.csv"), "-o", str(tmp_path / "out.csv")]) == 0
    said = capsys.readouterr().out
    assert "  row 2 b: structure: not an id of the rulebook's structures" in said
    assert "  row 3 : line 4: has 2 cells where the header has 3" in said


def test_a_file_that_is_no_register_is_refused_in_the_language_that_is_chosen(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "fleet.csv").write_text("id,structure\na,bag\n")
    said = {}
    for tag in LANGUAGES:
        assert main(["validate", str(tmp_path / "fleet.csv"), "-o", str(tmp_path / "out.csv"), "--language", tag]) == 2
        said[tag] = capsys.readouterr().err
        assert str(LANGUAGES[tag].tell(say("fault-required_column"))[0]) in said[tag]
    assert len(set(said.values())) == len(LANGUAGES)


def test_the_worst_come_first_with_what_to_do() -> None:
    worst = report(MIXED)["worst"]
    assert worst[0]["id"] == "D"
    assert worst[0]["severity"] == "danger"
    assert worst[0]["do"] == base().data.checks["no_gas_smell_indoors"].do
    verdicts = [one["verdict"] for one in worst]
    assert verdicts == sorted(verdicts, key=("danger", "faulty", "doubtful", "attention").index)
    [doubtful] = [one for one in worst if one["verdict"] == "doubtful"]
    assert doubtful["slip"] == "total_volume is probably 9 m³: the number in the row is right as 9,000 L."
    assert len(report([STARVED] * 30)["worst"]) == MOST_WORST


@pytest.mark.parametrize(
    ("slipped", "told"),
    [
        ({"mean_air_temperature": 22.0 * 1.8 + 32}, "mean_air_temperature is probably 22 °C: the number in the row is right as 71.6 °F."),
        ({"feed_mass": 40_000.0}, "feed_mass is probably 40 kg a day: the number in the row is right as 40,000 g/d."),
        ({"feed_mass": 400.0}, "feed_mass is probably 40 kg a day: its decimal point has slipped."),
    ],
)
def test_a_slip_is_told_with_both_units(slipped: Json, told: str) -> None:
    """Degrees by their definition (F = 1.8 C + 32), grams by theirs."""
    found = report([row(**slipped)])
    assert found["worst"][0]["slip"] == told
    [slip] = found["slips"]
    assert (slip["member"], slip["count"], slip["share"]) == (next(iter(slipped)), 1, 1.0)


def test_a_column_in_another_unit_is_told_as_a_whole() -> None:
    litres = [row(id=f"V{number}", total_volume=9000.0) for number in range(7)]
    found = report([*litres, row(), STARVED], cut=3)
    assert found["slips"] == [{"member": "total_volume", "read_as": "L", "text": "L", "count": 7, "share": 7 / 9}]
    page, text = (write(told_in(ENGLISH, found), ENGLISH) for write in (as_page, as_markdown))
    assert all("the whole column is probably in another unit" in one for one in (page, text))
    assert report([row()])["slips"] == []
    assert "the whole column" not in as_page(told_in(ENGLISH, report([row()])), ENGLISH)


def test_faults_are_told_in_words() -> None:
    counts = counts_of([row(total_volume=-1.0), row(structure="castle"), row()])
    told = {one["fault"]: (one["column"], one["text"]) for one in report_of(counts, fleet(), base(), "f")["faults"]}
    assert told == {
        "total_volume: out_of_range": ("total_volume", "a number beyond the bounds of the column"),
        "structure: unknown_id": ("structure", "not an id of the rulebook"),
    }
    whole = report_of({**counts, "faults": {"": {"row_unreadable": 2}, "x": {"never_heard_of": 1}}}, fleet(), base(), "f")["faults"]
    assert [(one["column"], str(one["text"])) for one in whole] == [("", "the row as a whole cannot be read"), ("x", "never_heard_of")]


@pytest.mark.parametrize(("said", "told"), [(3, "no row is a real one"), (1, "1 of these installations are invented"), (0, None)])
def test_a_fleet_that_says_that_it_is_invented_is_told_so(said: int, told: str | None) -> None:
    batch = table(MIXED[:3]).append_column("notice", pa.array([NOTICE] * said + ["a note of one's own", None, ""][said:]))
    found = report_of(added(nothing(), Counting(fleet()).of(batch, fleet().answer(batch), 0, ())), fleet(), base(), "f")
    assert (told in found["invented"]) if told else found["invented"] is None
    for text in (as_page(told_in(ENGLISH, found), ENGLISH), as_markdown(told_in(ENGLISH, found), ENGLISH)):
        assert ("invented" in text) == bool(told)


def test_the_worst_are_rows_of_the_whole_fleet() -> None:
    rows_between = [row(id=f"I{number}") for number in range(40)]
    found = report([*rows_between, DANGER], cut=7)["worst"]
    assert (found[0]["id"], found[0]["row"]) == ("D", 41)


def test_what_nobody_stated_is_told_and_never_safe() -> None:
    found = report([row(), row(ph=7.0), {"id": "E", "structure": "bag", "total_volume": 9.0}])
    unstated = {one["member"]: one["count"] for one in found["unstated"]["members"]}
    assert unstated["ph"] == 2
    assert unstated["feed_mass"] == 1
    assert unstated["structure"] == 0
    assert found["open"]["count"] == 3
    assert found["unstated"]["facts_never_stated"] == found["unstated"]["facts"]
    page = as_page(told_in(ENGLISH, found), ENGLISH)
    assert "In 3 of 3 installations at least one check of danger level has no answer" in page
    assert "That is not safety" in page


def test_places_are_told_apart_the_largest_first() -> None:
    batch = table(MIXED).append_column("district", pa.array(["north", "south", None, "north", "north", "south"]))
    counts = Counting(fleet(), "district").of(batch, fleet().answer(batch), 0, ())
    places = report_of(added(nothing(), counts), fleet(), base(), "f", "district")["places"]
    assert [(one["place"], one["rows"]) for one in places] == [("north", 3), ("south", 2), ("not stated", 1)]
    assert places[0]["groups"]["dangerous"] == {"count": 1, "share": 1 / 3}
    assert sum(one["groups"]["starved"]["count"] for one in places) == 1


def test_many_places_are_put_together_and_too_many_refused() -> None:
    few = [row(ph=number / 100) for number in range(60)]
    places = report(few, "ph")["places"]
    assert len(places) == 41
    assert places[-1]["place"] == "20 smaller ones together"
    assert sum(one["rows"] for one in places) == 60
    with pytest.raises(TooManyPlacesError, match="'id' has more than 1000"):
        counts_of([row(id=str(number)) for number in range(MOST_PLACES + 1)], 100, "id")


def test_a_column_that_a_file_lacks_is_one_place() -> None:
    assert [one["place"] for one in report(MIXED, "nowhere")["places"]] == ["not stated"]


# A danger that is stated beside a cell that cannot be read, as registers have it (invented).
BLINDED = row(id="B", gas_vented_indoors=True, ph=-1.0)


@pytest.mark.parametrize("rest", [[], [row()], [DANGER]])
def test_a_danger_in_a_row_that_cannot_be_read_is_never_told_as_none(rest: list[Json]) -> None:
    found = report([BLINDED, *rest])
    assert found["open"]["unjudged"] == 1
    assert found["open"]["count"] == 1 + sum(one is not DANGER for one in rest)
    assert all(one["count"] >= 1 for one in found["open"]["checks"])
    page, text = (write(told_in(ENGLISH, found), ENGLISH) for write in (as_page, as_markdown))
    for written in (page, text):
        assert "One row could not be read: what it states of dangers was not judged." in written
        assert "No check of danger level failed in what was stated" not in written
        assert ("No check of danger level failed in the rows that could be read." in written) == (DANGER not in rest)


def test_dangers_of_rows_that_cannot_be_read_are_open_in_each_check() -> None:
    """Of one refused row in two, a danger that the other leaves open is known in neither."""
    assert {one["share"] for one in report([BLINDED, row()])["open"]["checks"]} == {1.0}
    assert {one["share"] for one in report([row(), row(gas_vented_indoors=False)])["open"]["checks"]} == {1.0}


@pytest.mark.parametrize("tag", LANGUAGES)
def test_every_language_says_that_dangers_of_refused_rows_were_not_judged(tag: str) -> None:
    language, found = LANGUAGES[tag], report([BLINDED, BLINDED, STARVED])
    said = language.say("report-unjudged", count=2, total="2")
    denied = str(language.tell(say("report-not-so", title=base().data.checks[found["worst"][0]["check"]].title))[0])
    for write, plain in ((as_page, str), (as_markdown, lambda text: text.replace("\\", ""))):
        written = html.unescape(plain(write(told_in(language, found), language)))
        assert said in written
        assert denied in written


@pytest.mark.parametrize(
    ("cells", "words", "code"),
    [
        ("n/a,true", ["danger"], 1),
        ("n/a,", ["danger"], 1),
        ("n/a,true", ["refused"], 1),
        ("n/a,true", ["faulty"], 0),
        ("n/a,true", ["faulty", "danger"], 1),
        ("7,true", ["danger"], 1),
        ("7,false", ["danger"], 0),
        ("7,false", ["refused"], 0),
    ],
)
def test_who_stops_for_dangers_stops_for_rows_that_cannot_be_read(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], cells: str, words: list[str], code: int
) -> None:
    (tmp_path / "fleet.csv").write_text(f"id,structure,total_volume,ph,gas_vented_indoors\nb,fixed_dome,12,{cells}\n")
    options = [option for word in words for option in ("--fail-on", word)]
    assert main(["validate", str(tmp_path / "fleet.csv"), "-o", str(tmp_path / "out.csv"), *options]) == code
    said = capsys.readouterr().out
    assert ("One row could not be read: what it states of dangers was not judged." in said) == ("n/a" in cells)


def test_a_failed_check_is_denied_and_an_open_one_is_not() -> None:
    found, checks = report(MIXED), base().data.checks
    for one in (*found["dangers"], *found["failed"], *found["worst"]):
        assert one["title"] == f"Not so: {checks[one['check']].title}"
    assert [one["title"] for one in found["open"]["checks"]] == [checks[one["check"]].title for one in found["open"]["checks"]]


def test_the_terminal_denies_what_should_hold(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "fleet.csv").write_text("id,structure,total_volume,gas_smell_indoors\na,bag,9,true\n")
    assert main(["validate", str(tmp_path / "fleet.csv"), "-o", str(tmp_path / "out.csv")]) == 0
    assert f"row 1 a: Not so: {base().data.checks['no_gas_smell_indoors'].title}. " in capsys.readouterr().out


def test_the_finding_that_gave_the_verdict_stands_first() -> None:
    """Against the aspects: a row is doubtful for its record, faulty for its size, feed or gas, whatever warnings stand beside."""
    starved = row(feed_mass=8.0, water_volume=8.0, biogas_measured=None, ph=5.0)
    [[*_, about]] = counts_of([starved])["worst"]
    checks = base().data.checks
    assert checks[about["failed"][0]].finds is None
    for one in report([starved, row(total_volume=9000.0, ph=5.0), row(ph=5.0)])["worst"]:
        finds = checks[one["check"]].finds
        assert {"doubtful": finds == "doubtful", "faulty": finds in FAULTS, "attention": True}[one["verdict"]]


def test_open_dangers_are_a_list_in_markdown() -> None:
    """CommonMark: each item of a list begins a line of its own."""
    found = report([row()])
    items = [line for line in as_markdown(told_in(ENGLISH, found), ENGLISH).splitlines() if line.startswith("- ")]
    assert len(items) == len(found["open"]["checks"]) + bool(found["open"]["others"])
    assert all(line.count("not known in") <= 1 for line in items)


def test_misnamed_columns_are_told_first(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file, report_file = tmp_path / "fleet.csv", tmp_path / "report.md"
    file.write_text("id,structure,total_volume,feed_mas,village\na,bag,9,40,north\n")
    for tag in LANGUAGES:
        options = ["--restart", "--report", str(report_file), "--language", tag]
        assert main(["validate", str(file), "-o", str(tmp_path / "out.csv"), *options]) == 0
        lines = capsys.readouterr().out.splitlines()
        assert lines[1:3] == ["columns that were not read, and what may be meant:", "  feed_mas (nearest: feed_mass, feed_contains)"]
        assert lines[-1] == "columns that were not read: feed_mas, village"
        heads = [line for line in report_file.read_text("utf-8").splitlines() if line.startswith("## ")]
        assert heads[0] == heads[-1] == f"## {LANGUAGES[tag].say('report-unread')}"
    found = {**report([row()]), "misnamed": [{"column": "feed_mas", "nearest": ["feed_mass"], "text": "feed_mas (nearest: feed_mass)"}]}
    page = as_page(told_in(ENGLISH, found), ENGLISH)
    assert page.index("feed_mas (nearest: feed_mass)") < page.index('id="dangers"')


# As text


class _Parts(HTMLParser):
    """What stands in a page: tags, and text."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.tags: list[tuple[str, dict[str, Any]]] = []
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append((tag, dict(attrs)))


WICKED = "</table><script>alert(1)</script> | **x** `y` [z](javascript:1) \x1b[31m\n# head"


def wicked() -> Json:
    batch = table([{**DANGER, "id": WICKED}, STARVED]).append_column("district", pa.array([WICKED, "b"]))
    counts = Counting(fleet(), "district").of(batch, fleet().answer(batch), 0, [WICKED])
    return told_in(ENGLISH, report_of(added(nothing(), counts), fleet(), base(), WICKED, "district"))


def test_the_page_has_no_script_and_nothing_from_outside() -> None:
    page = as_page(wicked(), ENGLISH)
    parts = _Parts(page).tags
    assert not {"script", "link", "img", "iframe", "a"} & {tag for tag, _ in parts}
    assert not [attributes for _, attributes in parts if {"src", "href", "style", "onclick"} & attributes.keys()]
    assert "&lt;script&gt;" in page
    assert "\x1b" not in page


def test_the_page_can_be_read_aloud() -> None:
    page = as_page(told_in(ENGLISH, report(MIXED, "structure")), ENGLISH)
    parts = _Parts(page).tags
    assert ("html", {"lang": "en"}) in parts
    ids = {attributes["id"] for _, attributes in parts if "id" in attributes}
    named = [attributes["aria-labelledby"] for _, attributes in parts if "aria-labelledby" in attributes]
    assert set(named) <= ids
    assert all("scope" in attributes for tag, attributes in parts if tag == "th")
    assert page.count("<h1>") == 1
    tables = [attributes for tag, attributes in parts if tag == "table"]
    assert len([one for one in tables if "aria-labelledby" in one]) + page.count("<caption") >= len(tables)


def test_markdown_keeps_every_text_in_its_cell() -> None:
    text = as_markdown(wicked(), ENGLISH)
    assert "<script>" not in re.sub(r"\\<", "", text)
    assert "\x1b" not in text
    heads = [line for line in text.splitlines() if line.startswith("#")]
    assert not [line for line in heads if line == "# head"]
    for block in re.findall(r"(?:^\|.*\n)+", text, re.MULTILINE):
        columns = {len(re.findall(r"(?<!\\)\|", line)) for line in block.splitlines()}
        assert len(columns) == 1, block


def test_every_sentence_can_be_told_in_another_language(tmp_path: Path) -> None:
    language = stretched_language(tmp_path)
    found = told_in(language, report(MIXED, "structure"))
    assert found["language"]["untranslated"] == 0
    page = as_page(found, language)
    assert found["dangers"][0]["english"]["do"] in page
    assert str(base().data.checks["no_gas_smell_indoors"].do) in page
    assert "No speaker has reviewed this translation yet." in page


def test_sentences_are_messages() -> None:
    found = report(MIXED, "structure")
    texts = [one["text"] for one in (*found["groups"], *found["verdicts"])] + [one["do"] for one in found["failed"]]
    assert all(isinstance(text, Message) for text in texts)


def test_a_share_is_never_told_as_nothing_or_all_where_it_is_not() -> None:
    stated = [DANGER, *[row(id=f"I{number}") for number in range(2000)]]
    page = as_page(told_in(ENGLISH, report(stated)), ENGLISH)
    assert "&lt; 0.1 %" in page
    assert "99.9 %" in page


def test_a_column_to_tell_by_that_no_file_has_is_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "fleet.csv").write_text("id,structure,total_volume,district\na,bag,9,north\n")
    command = ["validate", str(tmp_path / "fleet.csv"), "-o", str(tmp_path / "out.csv")]
    assert main([*command, "--by", "distrct"]) == 2
    assert "no file has a column 'distrct'; they have district, id, structure, total_volume" in capsys.readouterr().err
    assert main([*command, "--by", "district"]) == 0


def test_a_report_on_an_invented_fleet_says_so(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    fleet_file, page = str(tmp_path / "some.csv"), tmp_path / "report.html"
    assert main(["invent-fleet", "50", "-o", fleet_file]) == 0
    assert main(["validate", fleet_file, "-o", str(tmp_path / "out.csv"), "--report", str(page)]) == 0
    assert "These installations are invented; no row is a real one." in page.read_text("utf-8")
    assert "not read: planted\n" in capsys.readouterr().out


@pytest.mark.parametrize("kind", ["html", "md"])
@pytest.mark.parametrize("language", ["en", "sw"])
def test_the_command_writes_it(tmp_path: Path, kind: str, language: str) -> None:
    (tmp_path / "fleet.csv").write_text("id,structure,total_volume,district\na,bag,9,north\nb,bag,-9,south\n")
    file = tmp_path / f"report.{kind}"
    command = ["validate", str(tmp_path / "fleet.csv"), "-o", str(tmp_path / "out.csv"), "--by", "district"]
    assert main([*command, "--report", str(file), "--language", language]) == 0
    text = file.read_text("utf-8")
    assert "north" in text
    assert "fleet.csv" in text
    assert ("lang=" in text) == (kind == "html")
