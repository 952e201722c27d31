"""Tables over HTTP: every media type in and out, refusals with the right status, and no answer that fails ends like success."""

from __future__ import annotations

import io
import json
import logging
import os
import resource
import socket
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator, Mapping
from contextlib import suppress
from pathlib import Path
from typing import Any

import httpx
import orjson
import pyarrow as pa
import pyarrow.parquet as pq
import pytest
from litestar.testing import TestClient
from tests.api.asking import problem
from tests.api.running import Server, listening, serving
from tests.api.test_slow import until

from kilisho.fleet import fleet_of, read_rows
from kilisho.fleet.exchange import FORMATS
from kilisho.fleet.exchange.pages import footer_of, page_at
from kilisho.messages import LANGUAGES, Language
from kilisho.packs import Rulebook
from kilisho.questions import Question
from kilisho_api import tables
from kilisho_api.app import assemble
from kilisho_api.settings import Settings
from kilisho_api.table_lane import TableLane
from kilisho_api.table_types import ARROW, CSV, NDJSON, PARQUET, TABLES

PATH = f"/v1/{tables.NAME}"
RECORDS: list[dict[str, Any]] = [
    {"id": "INV-1", "structure": "fixed_dome", "total_volume": 9.0, "feed_mass": 40.0, "water_volume": 40.0, "mean_air_temperature": 22.0},
    {"id": "INV-2", "structure": "igloo", "total_volume": 9.0},
    {"id": "INV-3", "structure": "bag", "total_volume": -9.0, "biogas_measured": 1.0},
    {"id": "INV-4", "structure": "bag", "total_volume": 9000.0},
]
LINE = orjson.dumps(RECORDS[0]) + b"\n"


def written(kind: str, records: list[dict[str, Any]] = RECORDS) -> bytes:
    """The records as a table."""
    if kind == NDJSON:
        return b"".join(orjson.dumps(record) + b"\n" for record in records)
    optional = dict.fromkeys(("feed_mass", "water_volume", "mean_air_temperature", "biogas_measured"))
    table, out = pa.Table.from_pylist([{**optional, **one} for one in records]), io.BytesIO()
    if kind == CSV:
        names = table.column_names
        lines = [",".join("" if row[name] is None else str(row[name]) for name in names) for row in table.to_pylist()]
        return "\r\n".join([",".join(names), *lines]).encode()
    if kind == PARQUET:
        pq.write_table(table, out)
    else:
        with pa.ipc.new_stream(out, table.schema) as stream:
            stream.write_table(table)
    return out.getvalue()


def post(client: httpx.Client, body: bytes, sent: str, accept: str = "*/*", **headers: str) -> httpx.Response:
    return client.post(PATH, content=body, headers={"content-type": sent, "accept": accept, **headers})


def told(kind: str, body: bytes) -> list[dict[str, Any]]:
    """An answer as rows without what is not known; CSV with its texts."""
    if kind == NDJSON:
        return [json.loads(line) for line in body.splitlines()]
    if kind == CSV:
        import csv

        return list(csv.DictReader(io.StringIO(body.decode(), newline="")))
    table = pa.ipc.open_stream(body).read_all() if kind == ARROW else pq.read_table(io.BytesIO(body))
    return [{name: value for name, value in row.items() if value is not None} for row in table.to_pylist()]


def test_the_media_types_are_those_that_can_be_read() -> None:
    assert tuple(FORMATS) == TABLES


@pytest.mark.parametrize("sent", TABLES)
@pytest.mark.parametrize("wanted", TABLES)
def test_every_media_type_in_and_out_says_what_the_engine_says(client: httpx.Client, rulebook: Rulebook, sent: str, wanted: str) -> None:
    fleet = fleet_of(rulebook)
    expected = [
        {name: value for name, value in row.items() if value is not None}
        for row in fleet.answer(read_rows(RECORDS, fleet.members)).to_pylist()
    ]
    answer = post(client, written(sent), sent, wanted)
    assert answer.status_code == 200, answer.text
    assert answer.headers["content-type"].split(";")[0] == wanted
    assert answer.headers["kilisho-rulebook"] == "/".join(rulebook.identity[part] for part in ("id", "version", "hash"))
    found = told(wanted, answer.content)
    if wanted == CSV:
        assert [(row["id"], row["verdict"], row["failed"]) for row in found] == [
            (row["id"], row["verdict"], "; ".join(row.get("failed", ()))) for row in expected
        ]
    else:
        assert found == expected


@pytest.mark.parametrize("sent", TABLES)
def test_the_answer_is_of_the_type_that_was_sent_unless_another_is_liked_better(client: httpx.Client, sent: str) -> None:
    for accept in ("*/*", "", f"{sent}, application/json", "application/json, text/plain, */*"):
        assert post(client, written(sent), sent, accept).headers["content-type"].split(";")[0] == sent
    found = post(client, written(sent), sent, "application/json")
    assert found.headers["content-type"] == "application/json"
    assert (found.json()["rows"], found.json()["refused"]) == (4, 2)


def test_a_column_that_is_not_read_is_named_in_a_header(client: httpx.Client) -> None:
    answer = post(client, b"structure,total_volume,total volme,\xc3\xa4\nbag,9,9,9\n", CSV)
    assert answer.headers["kilisho-unread-columns"] == "total%20volme, %C3%A4"
    assert "kilisho-unread-columns" not in post(client, written(CSV), CSV).headers


@pytest.mark.parametrize("sent", TABLES)
def test_faults_of_rows_are_told_in_the_language_that_was_asked_for(client: httpx.Client, sent: str) -> None:
    for accept, tag in (("sw-KE, en;q=0.5", "sw"), ("fr", "fr"), ("de", "en")):
        answer = post(client, written(sent), sent, NDJSON, **{"accept-language": accept})
        assert answer.headers["content-language"] == tag
        [fault] = told(NDJSON, answer.content)[1]["faults"]
        assert (fault["column"], fault["code"]) == ("structure", "unknown_id")
        assert fault["detail"].startswith(LANGUAGES[tag].say("fault-unknown_id", section="structures") + " (")
        summed = post(client, written(sent), sent, "application/json", **{"accept-language": accept}).json()
        assert summed["first_refused"][0]["faults"] == [fault]


def test_what_the_contract_shows_is_what_is_answered(client: httpx.Client) -> None:
    operation = client.get("/openapi.json").json()["paths"][PATH]["post"]
    told_content = operation["responses"]["200"]["content"]
    for kind in (NDJSON, CSV):
        example = operation["requestBody"]["content"][kind]["example"].encode()
        assert post(client, example, kind).text == told_content[kind]["example"]
    example = operation["requestBody"]["content"][NDJSON]["example"].encode()
    assert post(client, example, NDJSON, "application/json").json() == told_content["application/json"]["example"]


def test_rows_and_summary_fit_their_schemas(client: httpx.Client) -> None:
    from jsonschema import Draft202012Validator

    components = client.get("/openapi.json").json()["components"]

    def fits(name: str, value: Any) -> None:
        schema = {"$ref": f"#/components/schemas/{name}", "components": components}
        assert [error.message for error in Draft202012Validator(schema).iter_errors(value)] == []

    for row in told(NDJSON, post(client, written(NDJSON), NDJSON).content):
        fits("InstallationRowTold", row)
    fits("InstallationTableSummary", post(client, written(CSV), CSV, "application/json").json())
    fits("InstallationRow", RECORDS[0])


# Refusals


@pytest.mark.parametrize("kind", ["application/json", "text/plain", "", "text/csv; charset=latin-1", "text/csv; header=absent"])
def test_other_types_are_refused(client: httpx.Client, kind: str) -> None:
    answer = post(client, b"{}", kind)
    problem(answer, 415, "unsupported-media-type")
    assert NDJSON in answer.headers["accept"]


def test_parameters_that_say_nothing_new_are_no_matter(client: httpx.Client) -> None:
    for kind in ("Text/CSV; Charset=UTF-8; header=present", 'text/csv; charset="utf-8"'):
        assert post(client, written(CSV), kind).status_code == 200


def test_what_does_not_fit_http_is_refused_before_the_table_is_read(client: httpx.Client) -> None:
    problem(post(client, written(CSV), CSV, "image/png"), 406, "not-acceptable")
    problem(post(client, written(CSV), CSV, **{"content-encoding": "gzip"}), 415, "unsupported-media-type")
    problem(client.post(f"{PATH}?explain=true", content=b"", headers={"content-type": CSV}), 422, "invalid-request")
    problem(client.get(PATH), 405, "method-not-allowed")


@pytest.mark.parametrize("sent", TABLES)
def test_a_table_that_cannot_be_read_is_a_problem(client: httpx.Client, sent: str) -> None:
    for body in (b"", b"\x00\xff\xfe", b"PAR1"):
        for accept in ("*/*", "application/json"):
            [error] = problem(post(client, body, sent, accept), 422, "invalid-request")["errors"]
            assert error["code"] in ("table_unreadable", "no_column")


@pytest.fixture
def small(rulebook: Rulebook, questions: Mapping[str, Question], tmp_path: Path) -> Iterator[Callable[..., Any]]:
    """Serves under given settings."""

    def run(**settings: Any) -> Any:
        return listening(assemble(Settings(table_folder=str(tmp_path), **settings), rulebook, questions))

    yield run
    assert list(tmp_path.iterdir()) == []


def test_limits_of_bytes_and_rows_are_413(small: Callable[..., Any]) -> None:
    def parts() -> Iterator[bytes]:
        for _ in range(100):
            yield LINE

    with small(largest_table=5_000, longest_table=20) as address, httpx.Client(base_url=address) as client:
        assert post(client, LINE * 20, NDJSON).status_code == 200
        problem(post(client, LINE * 30, NDJSON), 413, "too-large")
        problem(post(client, LINE * 60, NDJSON), 413, "too-large")
        problem(client.post(PATH, content=parts(), headers={"content-type": NDJSON}), 413, "too-large")
        records = [RECORDS[0]] * 21
        for kind in (ARROW, PARQUET):
            problem(post(client, written(kind, records), kind), 413, "too-large")
        assert client.get("/health").status_code == 200


def test_a_body_larger_than_other_requests_may_be_is_taken(client: httpx.Client) -> None:
    assert len(LINE) * 20_000 > Settings().largest_body
    assert post(client, LINE * 20_000, NDJSON, "application/json").json()["rows"] == 20_000


def test_no_room_is_507(rulebook: Rulebook, questions: Mapping[str, Question], tmp_path: Path) -> None:
    """A limit of the process on the size of files stands for a full disk: writing fails in the middle of the body."""
    code = (
        "import resource, sys; resource.setrlimit(resource.RLIMIT_FSIZE, (2_000_000, 2_000_000));"
        "sys.argv = ['kilisho', *sys.argv[1:]]; from kilisho.cli import main; sys.exit(main())"
    )
    assert resource.getrlimit(resource.RLIMIT_FSIZE)[0] == resource.RLIM_INFINITY
    port = _free_port()
    environment = {**os.environ, "KILISHO_TABLE_FOLDER": str(tmp_path)}
    with subprocess.Popen(
        [sys.executable, "-c", code, "serve", "--port", str(port)], env=environment, stderr=subprocess.DEVNULL
    ) as process:
        try:
            with httpx.Client(base_url=f"http://127.0.0.1:{port}", timeout=30) as client:
                until(lambda: _up(client))
                problem(post(client, LINE * 30_000, NDJSON), 507, "no-room")
                assert post(client, LINE, NDJSON).status_code == 200
        finally:
            process.terminate()
    assert list(tmp_path.iterdir()) == []


def _free_port() -> int:
    with socket.create_server(("127.0.0.1", 0)) as listener:
        return int(listener.getsockname()[1])


def _up(client: httpx.Client) -> bool:
    try:
        return client.get("/health").status_code == 200
    except httpx.TransportError:
        return False


def test_a_folder_that_is_gone_is_507(rulebook: Rulebook, questions: Mapping[str, Question], tmp_path: Path) -> None:
    app = assemble(Settings(table_folder=str(tmp_path / "gone")), rulebook, questions)
    with TestClient(app) as client:
        problem(client.post(PATH, content=LINE, headers={"content-type": NDJSON}), 507, "no-room")


# On the way


def _head(length: int, kind: str = NDJSON) -> bytes:
    return f"POST {PATH} HTTP/1.1\r\nHost: a\r\nContent-Type: {kind}\r\nContent-Length: {length}\r\n\r\n".encode()


def _connected(address: str) -> socket.socket:
    url = httpx.URL(address)
    return socket.create_connection((url.host, url.port or 80))


def test_beyond_those_at_once_callers_are_told_when_to_come_back(small: Callable[..., Any]) -> None:
    with small(tables_at_once=1) as address, httpx.Client(base_url=address, timeout=30) as client:
        with _connected(address) as half:
            half.sendall(_head(1000) + b"{")
            until(lambda: post(client, LINE, NDJSON).status_code == 503)
            refused = post(client, LINE, NDJSON)
            problem(refused, 503, "overloaded")
            assert int(refused.headers["retry-after"]) >= 1
            assert client.get("/v1/substrates/cattle_dung").status_code == 200
        until(lambda: post(client, LINE, NDJSON).status_code == 200)


def test_an_upload_that_stalls_is_given_up(small: Callable[..., Any]) -> None:
    with small(table_patience=1) as address, _connected(address) as half:
        half.settimeout(20)
        half.sendall(_head(1000) + b"{")
        assert half.recv(100).startswith(b"HTTP/1.1 408 ")


def test_a_sender_that_trickles_loses_its_place(small: Callable[..., Any], monkeypatch: pytest.MonkeyPatch) -> None:
    """A part comes well within the patience each time; the first minute is cut short."""
    monkeypatch.setattr("kilisho_api.spool.FIRST_PATIENCE", 0.5)
    with small(tables_at_once=1) as address, _connected(address) as slow:
        slow.settimeout(0.2)
        slow.sendall(_head(1000) + b"{")
        assert _answer_while_trickling(slow).startswith(b"HTTP/1.1 408 ")
    with small(table_least_rate=0) as address, _connected(address) as slow:
        slow.settimeout(0.2)
        slow.sendall(_head(len(LINE)) + LINE[:-12])
        assert _answer_while_trickling(slow, LINE[-12:]).startswith(b"HTTP/1.1 200 ")


def _answer_while_trickling(slow: socket.socket, rest: bytes = b" " * 200) -> bytes:
    for byte in rest:
        with suppress(TimeoutError):
            return slow.recv(100)
        slow.sendall(bytes([byte]))
    slow.settimeout(20)
    return slow.recv(100)


@pytest.fixture
def lanes(monkeypatch: pytest.MonkeyPatch) -> list[TableLane]:
    """The lanes of every service that a test puts together."""
    made: list[TableLane] = []

    def note(at_once: int, longest: float) -> TableLane:
        made.append(TableLane(at_once, longest))
        return made[-1]

    monkeypatch.setattr("kilisho_api.app.TableLane", note)
    return made


def _open_files(folder: Path) -> int:
    return sum(str(folder) in os.readlink(f"/proc/self/fd/{one}") for one in os.listdir("/proc/self/fd") if _is_link(one))


def _is_link(one: str) -> bool:
    try:
        os.readlink(f"/proc/self/fd/{one}")
    except OSError:
        return False
    return True


@pytest.mark.parametrize("moment", ["while it sends", "before the answer", "while it reads"])
def test_whoever_leaves_stops_the_work_and_leaves_no_file(
    small: Callable[..., Any], lanes: list[TableLane], tmp_path: Path, moment: str, caplog: pytest.LogCaptureFixture
) -> None:
    body = LINE * 60_000
    with small(tables_at_once=1) as address, httpx.Client(base_url=address, timeout=60) as client:
        leaving = _connected(address)
        leaving.sendall(_head(len(body)))
        leaving.sendall(body[: len(body) // 2 if moment == "while it sends" else len(body)])
        until(lambda: lanes[0].inside == 1)
        if moment == "while it reads":
            assert leaving.recv(1000).startswith(b"HTTP/1.1 200 ")
        leaving.close()
        until(lambda: lanes[0].inside == 0)
        assert _open_files(tmp_path) == 0
        assert post(client, LINE, NDJSON).status_code == 200
    assert "Traceback" not in caplog.text


def test_a_reader_that_does_not_read_is_given_up(small: Callable[..., Any], lanes: list[TableLane]) -> None:
    body = LINE * 30_000
    with small(tables_at_once=1, table_patience=1) as address, _connected(address) as lazy:
        lazy.setsockopt(socket.SOL_SOCKET, socket.SO_RCVBUF, 4096)
        lazy.sendall(_head(len(body)) + body)
        until(lambda: lanes[0].inside == 1)
        until(lambda: lanes[0].inside == 0)


def test_an_answer_that_fails_on_the_way_does_not_end_like_one_that_is_whole(
    small: Callable[..., Any], monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    from kilisho.fleet import Fleet

    answer, came = Fleet.answer, list[int]()

    def failing(self: Fleet, batch: pa.RecordBatch, language: Language) -> pa.RecordBatch:
        came.append(batch.num_rows)
        if len(came) > 2:
            raise RuntimeError("secret-of-ours")
        return answer(self, batch, language)

    monkeypatch.setattr(Fleet, "answer", failing)
    with small() as address, httpx.Client(base_url=address, timeout=60) as client, caplog.at_level(logging.ERROR):
        with pytest.raises(httpx.RemoteProtocolError):
            post(client, LINE * 60_000, NDJSON)
        assert "was broken off" in caplog.text
        came.clear()
        # A summary has not begun by then.
        problem(post(client, LINE * 60_000, NDJSON, "application/json"), 500, "internal-error")


def test_a_file_that_breaks_on_the_way_is_broken_off_or_refused(client: httpx.Client) -> None:
    """A page in the last row group does not unpack."""
    out = io.BytesIO()
    numbers = range(40_000)
    table = pa.table({"id": list(map(str, numbers)), "structure": ["bag"] * 40_000, "total_volume": list(map(float, numbers))})
    pq.write_table(table, out, row_group_size=10_000, compression="zstd", use_dictionary=False)
    body = bytearray(out.getvalue())
    begin = page_at(body, footer_of(body).groups[3][2].begin).end
    body[begin : begin + 4] = b"\x00" * 4
    with pytest.raises(httpx.RemoteProtocolError):
        post(client, bytes(body), PARQUET, NDJSON)
    [error] = problem(post(client, bytes(body), PARQUET, "application/json"), 422, "invalid-request")["errors"]
    assert error["code"] == "table_unreadable"


def test_others_are_answered_meanwhile(client: httpx.Client) -> None:
    from concurrent.futures import ThreadPoolExecutor

    with ThreadPoolExecutor(1) as pool:
        table = pool.submit(post, client, LINE * 60_000, NDJSON)
        seconds = []
        while not table.done():
            begun = time.perf_counter()
            assert client.get("/health").status_code == 200
            seconds.append(time.perf_counter() - begun)
        assert table.result().content.count(b"\n") == 60_000
    assert len(seconds) > 5
    assert sorted(seconds)[len(seconds) // 2] < 0.5


def test_memory_does_not_grow_with_the_table(tmp_path: Path) -> None:
    """What the process holds for itself, without the pages of files, with 300,000 rows passing through after 30,000."""
    with serving(tmp_path / "log") as server, httpx.Client(base_url=server.url, timeout=120) as client:
        before = _most(server, client, 30_000)
        assert _most(server, client, 300_000) < before + 60


def _most(server: Server, client: httpx.Client, rows: int) -> float:
    """The most megabytes of its own that the server held while it answered."""
    most, size = 0.0, 0
    with client.stream("POST", PATH, content=LINE * rows, headers={"content-type": NDJSON}) as answer:
        for part in answer.iter_raw():
            size += part.count(b"\n")
            most = max(most, _own_megabytes(server.process.pid))
    assert size == rows
    return most


def _own_megabytes(process: int) -> float:
    status = Path(f"/proc/{process}/status").read_text("ascii")
    return next(int(line.split()[1]) / 1024 for line in status.splitlines() if line.startswith("RssAnon"))


def test_the_requests_that_must_be_accepted_as_they_stand(client: httpx.Client) -> None:
    """A row that is cut in the middle among good ones, an unknown structure, a negative volume, words for a number."""
    lines = [
        LINE,
        b'{"structure":"igloo","total_volume":9}\n',
        b'{"structure":"bag","total_volume":-9}\n',
        b'{"structure":"bag","total_volume":9,"feed_mass":"forty"}\n',
        b'{"structure":"bag","total_vol\n',
        LINE,
    ]
    found = told(NDJSON, post(client, b"".join(lines), NDJSON).content)
    assert [row["verdict"] == "refused" for row in found] == [False, True, True, True, True, False]


def test_the_file_of_a_table_has_no_name(tmp_path: Path) -> None:
    with tempfile.TemporaryFile(dir=tmp_path):
        assert list(tmp_path.iterdir()) == []
