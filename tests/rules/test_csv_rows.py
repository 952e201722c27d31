"""Rows of CSV: the standard library's reading of them, whatever a text holds, and the same answers in a file and over HTTP."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable, Sequence
from dataclasses import replace
from pathlib import Path
from unittest.mock import patch

import pyarrow as pa
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.rules.conftest import Json
from tests.rules.fleets import fleet
from tests.rules.test_exchange_rows import CSV, NDJSON, faults, refused, rows

from kilisho.faults import RefusedError
from kilisho.fleet import text_blocks
from kilisho.fleet.csv_rows import CsvReader, Head, head_of
from kilisho.fleet.files import UnreadableError, look_at, read_block
from kilisho.fleet.headings import Heading
from kilisho.fleet.table import FAULTS
from kilisho.fleet.text_blocks import LONGEST_ROW, MOST_LINES, Cut, Size, cuts, rows_of
from kilisho.messages import LANGUAGES

HEAD = "id,structure,total_volume\n"
SAMPLES = (
    "",
    "a",
    "9",
    "9000",
    "-1",
    "bag",
    "igloo",
    "fixed_dome",
    " 9 ",
    "nine",
    "NA",
    "ä",
    'pipe of 5"',
    '""',
    '"',
    '"bag"',
    '"9"',
    '"bag"x',
    'ba"g',
    '"two\nlines"',
    '"two\r\nlines"',
    '"open',
    "\r",
    "\ufeff",
    "\x00",
)
HEADINGS = ("id", "mean_air_temperature [K]", "feed_mass", '"biogas_measured [L/d]"', "feed_contains", "notes", "notes", "", "total_volum")


def answers(data: bytes, file: Path, block: int = 1000, further: Sequence[str] = (), language: str = "en") -> list[Json]:
    """The rows of a CSV file as ``kilisho validate`` answers them, without what is not known."""
    file.write_bytes(data)
    [looked] = look_at([str(file)], fleet().columns, block)
    tongue = LANGUAGES[language]
    columns = replace(fleet().columns, language=tongue)
    found = [fleet().answer(batch, tongue).to_pylist() for one in looked.blocks for batch, _ in read_block(one, columns, further)]
    return [{name: value for name, value in row.items() if value is not None} for part in found for row in part]


def lines_of(data: bytes) -> list[bytes]:
    return io.BytesIO(data).readlines()


def row_by_row(data: bytes, head: Head) -> list[list[str] | None]:
    """The rows as the standard library reads each for itself, None for one that cannot be; a second way to what ``text_blocks`` finds."""
    found: list[list[str] | None] = []
    lines, at = lines_of(data[head.size :]), 0
    while at < len(lines):
        # A line of nothing but what parts cells is blank: spreadsheets leave such behind.
        if not lines[at].strip(b"\r\n" + head.delimiter.encode()):
            at += 1
            continue
        reader = csv.reader((line.decode("latin-1") for line in lines[at : at + MOST_LINES + 1]), delimiter=head.delimiter, strict=True)
        try:
            cells, used = next(reader), reader.line_num
            if used > 1 and len(cells) != len(head.columns):
                raise csv.Error
            found.append(_decoded(cells) if len(cells) == len(head.columns) else None)
        except csv.Error:
            found, used = [*found, None], 1
        at += used
    return found


def _decoded(cells: list[str]) -> list[str] | None:
    try:
        return [cell.encode("latin-1").decode() for cell in cells]
    except UnicodeDecodeError:
        return None


@st.composite
def texts(draw: st.DrawFn) -> bytes:
    """A CSV text as anybody might send it: any delimiter, units, quotes where none may be, bad cells, half a row at the end."""
    delimiter, end = draw(st.sampled_from(",;\t")), draw(st.sampled_from(["\n", "\r\n"]))
    others = draw(st.lists(st.sampled_from(HEADINGS), max_size=5))
    needed = ["structure", draw(st.sampled_from(["total_volume", "total_volume [L]", " total_volume", "volume"]))]
    names = draw(st.permutations([*others, *needed]))
    cell = st.sampled_from(SAMPLES) | st.text(alphabet='a9,;\t"\n\r é', max_size=4)
    row = st.lists(cell, min_size=len(names), max_size=len(names)) | st.lists(cell, max_size=7)
    body = draw(st.lists(row.map(delimiter.join) | st.sampled_from(["", " ", '"']), max_size=8))
    text = end.join([*draw(st.lists(st.just(""), max_size=1)), delimiter.join(names), *body]) + draw(st.sampled_from(["", end]))
    data = draw(st.sampled_from([b"", b"\xef\xbb\xbf"])) + text.encode()
    return data[: len(data) - draw(st.integers(0, 3))] if draw(st.booleans()) else data


@pytest.fixture(scope="session")
def file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("csv") / "fleet.csv"


@given(texts(), st.integers(1, 20))
@settings(max_examples=200, deadline=None)
def test_a_text_is_answered_in_a_file_as_over_http(file: Path, data: bytes, block: int) -> None:
    over_http = answered_or_refused(lambda: rows(data, CSV))
    in_file = answered_or_refused(lambda: answers(data, file, block))
    if isinstance(over_http, RefusedError):
        assert isinstance(in_file, UnreadableError)
        assert all(fault.detail in str(in_file) for fault in over_http.faults)
    else:
        assert in_file == over_http


def answered_or_refused(ask: Callable[[], list[Json]]) -> list[Json] | ValueError:
    try:
        return ask()
    except (RefusedError, UnreadableError) as refusal:
        return refusal


@given(texts(), st.integers(1, 40), st.sampled_from([1, 7, 1 << 18]))
@settings(max_examples=200, deadline=None)
def test_rows_are_those_that_the_standard_library_reads(data: bytes, block: int, at_once: int) -> None:
    try:
        head = head_of(io.BytesIO(data))
    except RefusedError:
        return
    with patch.object(text_blocks, "AT_ONCE", at_once):
        assert cells_of(data, head, block) == row_by_row(data, head)


def cells_of(data: bytes, head: Head, block: int = 1 << 20) -> list[list[str] | None]:
    """All cells of a text as it is read in pieces, None for a row that is at fault."""
    names = [str(at) for at in range(len(head.columns))]
    reader = CsvReader(head._replace(columns=tuple(names)), Heading((), None, ()), names)
    found: list[list[str] | None] = []
    for cut in cuts(io.BytesIO(data), Size(block, block), head.quoting, head.size, head.lines):
        for row in reader.batch(cut).to_pylist():
            assert row.get(FAULTS) is None or not any(row[name] for name in names)
            found.append(None if row.get(FAULTS) else [row[name] for name in names])
    return found


def both(data: bytes, file: Path, block: int = 1000) -> list[Json]:
    """The answers of a file, which are those over HTTP."""
    found = answers(data, file, block)
    assert found == rows(data, CSV)
    return found


def details(found: list[Json]) -> list[str]:
    return [fault["detail"] for row in found for fault in row.get(FAULTS, ())]


# The first row


@pytest.mark.parametrize(
    ("text", "columns", "delimiter"),
    [
        ("id,structure\n", ("id", "structure"), ","),
        ("id;structure,x;y\n", ("id", "structure,x", "y"), ";"),
        ('id\t"a;b"\ttotal, in all\n', ("id", "a;b", "total, in all"), "\t"),
        ("id;a,b\n", ("id;a", "b"), ","),
        ("structure\r\n1,2;3\n", ("structure",), ","),
        ('\n\r\n"two\nlines" ; b;c\n1;2;3\n', ("two\nlines", "b", "c"), ";"),
    ],
)
def test_what_parts_the_first_row_into_most_cells_parts_all(text: str, columns: tuple[str, ...], delimiter: str) -> None:
    if text.startswith("\n"):
        text = text.replace('lines" ;', 'lines";')
    for mark in ("", "\ufeff"):
        head = head_of(io.BytesIO((mark + text).encode()))
        assert (head.columns, head.delimiter) == (columns, delimiter)
        data = (mark + text).encode()
        assert head.lines == data[: head.size].count(b"\n")
        assert cells_of(data, head) == row_by_row(data, head)


@pytest.mark.parametrize(
    ("data", "code"),
    [
        (b"", "has no row"),
        (b"\xef\xbb\xbf\r\n\n", "has no row"),
        (b'"structure,total_volume\nbag,9\n', "no header"),
        ("structure,total_volume\n".encode("utf-16"), "no header"),
        (b"structure,\xfc\n", "no header"),
        (b"structure,\x00\n", "no header"),
        (b"structure," + b"x" * LONGEST_ROW + b"\nbag,9\n", "no header"),
    ],
)
def test_a_text_without_a_first_row_is_refused(data: bytes, code: str, file: Path) -> None:
    assert refused(data, CSV) == {("", "table_unreadable")}
    with pytest.raises(UnreadableError, match=code):
        answers(data, file)


def test_names_that_nobody_reads_may_stand_there_twice_and_are_told(file: Path) -> None:
    data = b"notes,structure,notes,total_volume,,\na,bag,b,9,,\n"
    assert both(data, file)[0]["verdict"] == "unknown"
    [looked] = look_at([str(file)], fleet().columns)
    assert looked.unread == ("notes", "notes")
    assert refused(b"structure,total_volume,total_volume [L]\nbag,9,9\n", CSV) == {("/total_volume", "column_twice")}


# Cells


def test_units_lists_and_ids_are_read_in_files_too(file: Path) -> None:
    litres = b"id;structure;total_volume [L];feed_contains;biogas_measured [L/d]\n;bag;9000;sand; 1000\nb;bag;9e9;gold;x\n"
    found = both(litres, file)
    plain = both(b"structure,total_volume,biogas_measured,feed_contains\nbag,9,1,sand\n", file)
    assert found[0] == {name: pytest.approx(value) if isinstance(value, float) else value for name, value in plain[0].items()}
    assert "id" not in found[0]
    assert faults(found[1]) == {
        ("total_volume", "out_of_range"),
        ("biogas_measured", "number_expected"),
        ("feed_contains", "not_one_of"),
    }


def test_a_column_by_which_a_fleet_is_told_comes_along(file: Path) -> None:
    file.write_bytes(b"district\tstructure\ttotal_volume\nnorth\tbag\t9\n\tbag\nsouth\tbag\t9\n")
    [looked] = look_at([str(file)], fleet().columns)
    [(batch, _)] = read_block(looked.blocks[0], fleet().columns, ["district", "nowhere", "structure"])
    assert batch["district"].to_pylist() == ["north", None, "south"]


# Rows that cannot be


@pytest.mark.parametrize("delimiter", [",", ";", "\t"])
def test_bad_rows_are_told_by_their_lines(file: Path, delimiter: str) -> None:
    good = ["id,structure,total_volume", "", 'a,"bag",9', '"two', 'lines",bag,9']
    lines = [*good, "b,bag", 'c,"bag"x,9', "d,bag,9,", "e,b\rag,9", '"f,bag,9', "g,bag,9"]
    data = "\n".join(lines).replace(",", delimiter).encode() + b"\nM\xfcller" + delimiter.encode() * 2
    found = both(data, file)
    assert [row.get("id") for row in found] == ["a", "two\nlines", *[None] * 5, "g", None]
    quotation = "a quotation mark stands where none may, or nothing closes it"
    assert details(found) == [
        "line 6: has 2 cells where the header has 3",
        f"line 7: {quotation}",
        "line 8: has 4 cells where the header has 3",
        f"line 9: {quotation}",
        f"line 10: {quotation}",
        "line 12: not text in UTF-8",
    ]


def test_a_quotation_mark_that_nothing_closes_costs_its_line_alone(file: Path) -> None:
    lines = [*['"INV,fixed_dome,9'] * 300, *["INV,fixed_dome,9"] * (MOST_LINES + 20), '"INV,fixed_dome,9']
    found = both((HEAD + "\n".join(lines)).encode(), file, 7)
    assert [row["verdict"] == "refused" for row in found] == [line.startswith('"') for line in lines]


def test_a_row_takes_as_many_lines_as_it_may_and_not_one_more(file: Path) -> None:
    def text(ends: int) -> bytes:
        return (HEAD + f'"{"x" + chr(10) * ends}",bag,9\nlast,bag,9\n').encode()

    assert [row["id"] for row in both(text(MOST_LINES), file)] == ["x" + "\n" * MOST_LINES, "last"]
    found = both(text(MOST_LINES + 1), file)
    assert found[0]["verdict"] == found[1]["verdict"] == "refused"
    assert found[2]["id"] == "last"


@pytest.mark.parametrize("block", [1, 10_000])
@pytest.mark.parametrize("long", ["x", '"x', "x,"])
def test_a_row_that_is_too_long_is_one_row(file: Path, block: int, long: str) -> None:
    data = (HEAD + "a,bag,9\n" + long * (LONGEST_ROW * 3) + "\nb,bag,9\n" + "y" * (LONGEST_ROW + 1)).encode()
    found = both(data, file, block)
    assert [row.get("id") for row in found] == ["a", None, "b", None]
    assert details(found) == ["line 3: the row is too long", "line 5: the row is too long"]


def test_a_row_of_lines_that_are_too_long_together_is_not_joined(file: Path) -> None:
    half = "x" * (LONGEST_ROW * 2 // 3)
    found = both((HEAD + f'"{half}\n{half}",bag,9\nb,bag,9\n').encode(), file)
    assert [row["verdict"] == "refused" for row in found] == [True, False, False]
    assert details(found) == ["line 2: a quotation mark stands where none may, or nothing closes it"]


class Sparing(io.BytesIO):
    """Remembers the most bytes that were asked for at once."""

    most = 0

    def read(self, size: int | None = -1, /) -> bytes:
        assert size is not None
        self.most = max(self.most, size)
        return super().read(size)


@pytest.mark.parametrize("line", [b"x", b'"x\n', b'"\n'])
def test_no_text_is_held_for_longer_than_a_row_may_be(line: bytes) -> None:
    stream = Sparing(HEAD.encode() + line * (10 * LONGEST_ROW // len(line)))
    head = head_of(stream)
    pieces = [len(cut.data) for cut in cuts(stream, Size(1000, 1000), head.quoting, head.size, head.lines)]
    assert sum(pieces) >= LONGEST_ROW
    assert max(*pieces, stream.most) <= 4 * LONGEST_ROW


def test_rows_that_are_not_those_that_were_counted_break_the_table_off() -> None:
    """Else every later answer would stand beside the wrong row."""
    head, data = Head(("a", "b"), ",", 0, 0), b"1,2\r3,4\n5,6\n"
    miscounted = rows_of(data)
    with pytest.raises(pa.ArrowInvalid):
        CsvReader(head, Heading((), None, ()), ["a"]).batch(Cut(data, miscounted, 0, 0))


def test_ndjson_may_begin_with_a_mark_too() -> None:
    assert rows(b'\xef\xbb\xbf{"id":"a","structure":"bag","total_volume":9}\n', NDJSON)[0]["id"] == "a"


# Faults in the caller's language

FAULTY_CSV = b"""structure,total_volume [L],feed_mass,visited_on,gas_smell_indoors,fed_share_of_design
iglo,x,-1,never,maybe,0.5
bag
"bag"x,9000,,,,
bag,,,,,
bag,9000,,,\xff,
bag,9000,40,,,0.1
"""
FAULTY_JSON = b"""{"structure":"bag","total_volume":9}
{"structure":"bag","total_volume":true}
{"structure":"bag","total_volume":{"value":9,"unit":"ell"}}
{"structure":"bag","structure":"bag"}
{"structure":
[1]
"""


@pytest.mark.parametrize("language", ["es", "fr", "sw"])
@pytest.mark.parametrize(("sent", "data"), [(CSV, FAULTY_CSV), (NDJSON, FAULTY_JSON)], ids=["csv", "ndjson"])
def test_every_fault_of_a_row_is_told_in_the_language_and_nothing_else_changes(language: str, sent: str, data: bytes) -> None:
    english, told = rows(data, sent), rows(data, sent, language=language)
    both_told = [(row.get(FAULTS, []), foreign.get(FAULTS, [])) for row, foreign in zip(english, told, strict=True)]
    pairs = [pair for faults_of, foreign in both_told for pair in zip(faults_of, foreign, strict=True)]
    assert len(pairs) >= 5
    assert len({one["code"] for one, _ in pairs}) >= 3
    for one, other in pairs:
        assert {**one, "detail": other["detail"]} == other
        assert one["detail"] != other["detail"]
    assert [{**row, FAULTS: None} for row in english] == [{**row, FAULTS: None} for row in told]


def test_faults_in_a_file_are_told_in_the_language_as_over_http(file: Path) -> None:
    for language in LANGUAGES:
        assert answers(FAULTY_CSV, file, language=language) == rows(FAULTY_CSV, CSV, language=language)
    assert "mstari wa 3 wa faili: una seli 1 ilhali kichwa kina 6" in details(answers(FAULTY_CSV, file, language="sw"))
    assert any("(lo más parecido: " in detail for detail in details(answers(FAULTY_CSV, file, language="es")))
