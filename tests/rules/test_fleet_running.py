"""Validation of files by the command: the same answers however it is cut and by however many, and whatever ends it, it goes on."""

from __future__ import annotations

import json
import os
import resource
import signal
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pyarrow as pa
import pyarrow.csv as pacsv
import pyarrow.parquet as pq
import pytest
from tests.rules.conftest import Json, base
from tests.rules.fleets import fleet, row, table
from tests.rules.test_exchange_rows import CSV, NDJSON, ask

from kilisho.cli import main
from kilisho.fleet import running
from kilisho.fleet.files import UnreadableError
from kilisho.fleet.invented import invent
from kilisho.fleet.running import Order, StoppedError, run
from kilisho.fleet.writing import write

ROWS = 3000
KILISHO = [sys.executable, "-m", "kilisho.cli"]
Captured = pytest.CaptureFixture[str]


@pytest.fixture(scope="module")
def rows() -> pa.RecordBatch:
    return next(invent(ROWS, base(), seed=11))


@pytest.fixture(scope="module")
def file(rows: pa.RecordBatch, tmp_path_factory: pytest.TempPathFactory) -> Path:
    found = tmp_path_factory.mktemp("fleet") / "fleet.parquet"
    pq.write_table(pa.Table.from_batches([rows]), found, row_group_size=100)
    return found


@pytest.fixture(scope="module")
def expected(rows: pa.RecordBatch) -> list[Json]:
    found: list[Json] = fleet().answer(rows).to_pylist()
    return found


def read(out: Path) -> list[Json]:
    found: list[Json] = pq.read_table(out).to_pylist()
    return found


def order(file: Path, out: Path | str, **how: Any) -> Order:
    return Order((str(file),), str(out), **{"rows": 200, "workers": 1, **how})


# The same whatever the cut


@pytest.mark.parametrize(("end", "kind"), [("csv", CSV), ("ndjson", NDJSON)])
def test_text_is_byte_for_byte_that_over_http(tmp_path: Path, end: str, kind: str) -> None:
    """Units in the head, lists parted as people write them, and nothing that a spreadsheet would run."""
    rows = [row(id=name, total_volume=volume) for name in ("=1+1", 'a "b"; c', "naïve\u2028", None) for volume in (9.0, 9000.0, -1.0)]
    asked = "".join(json.dumps(one) + "\n" for one in rows).encode()
    (tmp_path / "fleet.ndjson").write_bytes(asked)
    run(order(tmp_path / "fleet.ndjson", tmp_path / f"out.{end}", rows=5), base())
    assert (tmp_path / f"out.{end}").read_bytes() == ask(asked, NDJSON, kind)


@pytest.mark.parametrize(("block", "workers"), [(100, 1), (700, 2), (10**6, 1)])
def test_neither_blocks_nor_workers_change_an_answer_or_a_count(
    file: Path, tmp_path: Path, expected: list[Json], block: int, workers: int
) -> None:
    counts = run(order(file, tmp_path / "out.parquet", rows=block, workers=workers, by="structure"), base())
    assert read(tmp_path / "out.parquet") == expected
    whole = run(order(file, tmp_path / "whole.parquet", rows=10**6, by="structure"), base())
    assert counts == whole
    assert counts["rows"] == ROWS
    assert [path.name for path in tmp_path.iterdir() if path.name.startswith("out")] == ["out.parquet"]


@pytest.mark.parametrize("given", ["parquet", "arrow", "csv", "ndjson"])
@pytest.mark.parametrize("wanted", ["parquet", "arrow", "csv", "ndjson"])
def test_every_format_in_and_out(rows: pa.RecordBatch, tmp_path: Path, given: str, wanted: str) -> None:
    some = rows.slice(0, 300)
    source, out = tmp_path / f"fleet.{given}", tmp_path / f"out.{wanted}"
    write([some.slice(0, 150), some.slice(150)], some.schema, source, given)
    run(order(source, out, rows=100), base())
    answers = fleet().answer(some).to_pylist()
    told = [(one["id"], one["verdict"], one["failed"], one["gas_ratio"]) for one in answers]
    assert [(one["id"], one["verdict"], one["failed"], one["gas_ratio"]) for one in _read(out, wanted)] == told


def _read(out: Path, kind: str) -> list[Json]:
    if kind == "ndjson":
        nothing = dict.fromkeys(fleet().schema.names)  # what is not known is left out of a line
        return [nothing | json.loads(line) for line in out.read_text("utf-8").splitlines()]
    if kind == "csv":
        texts = {"failed": pa.string()}
        found = pacsv.read_csv(out, convert_options=pacsv.ConvertOptions(column_types=texts, strings_can_be_null=True))
        bare = found.rename_columns([name.partition(" [")[0] for name in found.column_names]).to_pylist()
        lists = {"refused": None}
        return [{**one, "failed": lists.get(one["verdict"], one["failed"].split("; ") if one["failed"] else [])} for one in bare]
    if kind == "arrow":
        arrow: list[Json] = pa.ipc.open_file(out).read_all().to_pylist()
        return arrow
    return read(out)


def test_a_folder_holds_the_parts_in_order(file: Path, tmp_path: Path, expected: list[Json]) -> None:
    run(order(file, f"{tmp_path}/out/", workers=2), base())
    parts = sorted((tmp_path / "out").glob("part-*.parquet"))
    assert len(parts) == ROWS // 200
    assert [one for part in parts for one in read(part)] == expected


def test_no_more_than_a_few_blocks_are_under_way(file: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    under_way: list[int] = []
    wait = running.wait
    monkeypatch.setattr(running, "wait", lambda waiting, **how: (under_way.append(len(waiting)), wait(waiting, **how))[1])
    run(order(file, tmp_path / "out.parquet", rows=100, workers=2), base())
    assert 2 <= max(under_way) <= 2 * running.UNDER_WAY


def test_ids_of_two_kinds_come_out_as_text(tmp_path: Path) -> None:
    numbered = table([row(id=None)]).append_column("id", pa.array([417]))
    pq.write_table(pa.Table.from_batches([numbered]), tmp_path / "a.parquet")
    pq.write_table(pa.Table.from_batches([table([row()])]), tmp_path / "b.parquet")
    run(Order((str(tmp_path / "a.parquet"), str(tmp_path / "b.parquet")), str(tmp_path / "out.parquet"), workers=1), base())
    assert [one["id"] for one in read(tmp_path / "out.parquet")] == ["417", "INV-1"]


def test_faults_are_told_in_the_language_of_the_command(tmp_path: Path, capsys: Captured) -> None:
    (tmp_path / "fleet.csv").write_text("id,structure,total_volume\nb,igloo,9\nc,bag\n")
    assert main(["validate", str(tmp_path / "fleet.csv"), "-o", str(tmp_path / "out.ndjson"), "--language", "sw"]) == 0
    faults = [one["faults"][0]["detail"] for one in _read(tmp_path / "out.ndjson", "ndjson")]
    assert faults[1] == "mstari wa 3 wa faili: una seli 2 ilhali kichwa kina 3"
    assert all(detail in capsys.readouterr().out for detail in faults[1:])


# Whatever ends it


def _begin(file: Path, out: Path | str, *more: str, **how: Any) -> subprocess.Popen[str]:
    command = [*KILISHO, "validate", str(file), "-o", str(out), "--block", "100", "--workers", "2", *more]
    return subprocess.Popen(command, text=True, stdout=subprocess.PIPE, stderr=subprocess.PIPE, **how)


def _until_some_are_done(marks: Path, process: subprocess.Popen[str], least: int = 2) -> int:
    deadline = time.monotonic() + 120
    while time.monotonic() < deadline and process.poll() is None:
        done = len(list(marks.glob("part-*.json")))
        if done >= least:
            return done
        time.sleep(0.005)
    raise AssertionError(f"it ended by itself: {process.communicate()}")


def _until_none_is_left(group: int) -> None:
    """Waits until no process of the group runs; a zombie that nobody reaps does not."""
    deadline = time.monotonic() + 20
    while left := [one for one in Path("/proc").glob("[0-9]*/stat") if _runs_in(one, group)]:
        assert time.monotonic() < deadline, left
        time.sleep(0.1)


def _runs_in(stat: Path, group: int) -> bool:
    try:
        state, _, own = stat.read_text("utf-8").rpartition(")")[2].split()[:3]
    except OSError:
        return False
    return int(own) == group and state != "Z"


@pytest.fixture(scope="module")
def large(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Enough blocks that a run can be ended in the middle of them."""
    found = tmp_path_factory.mktemp("large") / "fleet.parquet"
    pq.write_table(pa.Table.from_batches(list(invent(15_000, base(), seed=11))), found, row_group_size=100)
    return found


@pytest.mark.parametrize("into", ["out.parquet", "out/"])
def test_after_a_kill_the_same_command_goes_on_and_loses_and_doubles_nothing(large: Path, tmp_path: Path, into: str) -> None:
    out = f"{tmp_path}/{into}"
    marks = tmp_path / ("out/_journal" if into == "out/" else "out.parquet.parts")
    with _begin(large, out, start_new_session=True) as process:
        _until_some_are_done(marks, process)
        process.send_signal(signal.SIGKILL)
    _until_none_is_left(process.pid)
    before = {path: path.stat().st_mtime_ns for path in marks.glob("part-*.json")}
    assert 0 < len(before) < 150
    assert not (tmp_path / "out.parquet").exists()
    progress: list[int] = []
    counts = run(Order((str(large),), out, rows=100, workers=1), base(), lambda done, _: progress.append(done))
    found = pq.read_table(tmp_path / "out.parquet" if into == "out.parquet" else sorted((tmp_path / "out").glob("part-*.parquet")))
    assert counts["rows"] == 15_000
    assert len(progress) == 150
    told = ["id", "verdict", "failed", "gas_ratio"]
    whole = pa.Table.from_batches([fleet().answer(batch) for batch in pq.read_table(large).combine_chunks().to_batches()])
    assert found.select(told).to_pylist() == whole.select(told).to_pylist()
    if into == "out/":
        assert {path: path.stat().st_mtime_ns for path in before} == before


@pytest.mark.parametrize("by", [signal.SIGINT, signal.SIGTERM])
def test_an_interrupted_run_says_how_to_go_on_and_leaves_no_process(large: Path, tmp_path: Path, by: signal.Signals) -> None:
    with _begin(large, tmp_path / "out.parquet", start_new_session=True) as process:
        _until_some_are_done(tmp_path / "out.parquet.parts", process)
        os.killpg(process.pid, by) if by is signal.SIGINT else process.send_signal(by)
        _, told = process.communicate(timeout=60)
    assert process.returncode == 3, told
    assert told.splitlines() == [f"stopped; the same command goes on from {tmp_path}/out.parquet.parts"]
    assert not (tmp_path / "out.parquet").exists()
    _until_none_is_left(process.pid)


def test_a_full_disk_is_told_and_the_run_goes_on_once_there_is_room(file: Path, tmp_path: Path, expected: list[Json]) -> None:
    limit = 60_000

    def little_room() -> None:
        resource.setrlimit(resource.RLIMIT_FSIZE, (limit, limit))

    command = [*KILISHO, "validate", str(file), "-o", str(tmp_path / "out.parquet"), "--block", "1000", "--workers", "1"]
    done = subprocess.run(command, text=True, capture_output=True, preexec_fn=little_room, check=False)
    assert done.returncode == 3, done.stderr
    assert "what is done is kept, and the same command goes on" in done.stderr
    assert "Traceback" not in done.stderr
    assert not (tmp_path / "out.parquet").exists()
    assert [path.name for path in (tmp_path / "out.parquet.parts").iterdir() if path.name.endswith(".begun")] == []
    assert subprocess.run(command, capture_output=True, check=False).returncode == 0
    assert read(tmp_path / "out.parquet") == expected


def test_a_worker_that_is_killed_ends_the_run_with_words(large: Path, tmp_path: Path) -> None:
    with _begin(large, tmp_path / "out.parquet") as process:
        _until_some_are_done(tmp_path / "out.parquet.parts", process)
        children = Path(f"/proc/{process.pid}/task/{process.pid}/children").read_text("ascii").split()
        workers = [int(one) for one in children if "spawn_main" in Path(f"/proc/{one}/cmdline").read_text("utf-8")]
        os.kill(workers[0], signal.SIGKILL)
        _, told = process.communicate(timeout=60)
    assert process.returncode == 3
    assert told.startswith("a worker was killed, perhaps for want of memory")


def test_two_at_once_do_not_mix(file: Path, tmp_path: Path) -> None:
    out = order(file, tmp_path / "out.parquet")

    def meanwhile(done: int, _: int) -> None:
        with pytest.raises(UnreadableError, match="another process is at work there"):
            run(out, base())

    run(out, base(), meanwhile)
    assert len(read(tmp_path / "out.parquet")) == ROWS


def test_parts_of_another_order_are_not_gone_on_with(file: Path, tmp_path: Path, expected: list[Json]) -> None:
    def stop(done: int, _: int) -> None:
        raise KeyboardInterrupt

    with pytest.raises(StoppedError):
        run(order(file, f"{tmp_path}/out/", rows=100), base(), stop)
    with pytest.raises(UnreadableError, match="other files, rulebook or options; --restart begins anew"):
        run(order(file, f"{tmp_path}/out/", rows=1000), base())
    run(order(file, f"{tmp_path}/out/", rows=1000), base(), restart=True)
    assert [one for part in sorted((tmp_path / "out").glob("part-*")) for one in read(part)] == expected


def test_a_folder_of_somebody_else_is_left_alone(file: Path, tmp_path: Path) -> None:
    (tmp_path / "out").mkdir()
    (tmp_path / "out" / "letter.txt").write_text("mine")
    with pytest.raises(UnreadableError, match="is not empty"):
        run(order(file, f"{tmp_path}/out/"), base(), restart=True)
    assert (tmp_path / "out" / "letter.txt").read_text() == "mine"


def test_rows_that_vanish_while_they_are_read_are_missed(file: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    whole = running.read_block
    monkeypatch.setattr(running, "read_block", lambda *of: ((batch.slice(1), unread) for batch, unread in whole(*of)))
    with pytest.raises(UnreadableError, match="was changed while it was read"):
        run(order(file, tmp_path / "out.parquet"), base())


# The command


@pytest.fixture
def in_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)


def test_the_command_tells_counts_the_worst_and_what_it_did_not_read(
    file: Path, tmp_path: Path, capsys: Captured, expected: list[Json]
) -> None:
    assert main(["validate", str(file), "-o", str(tmp_path / "out.csv"), "--workers", "1"]) == 0
    out, err = capsys.readouterr()
    assert err == ""
    lines = [line.split() for line in out.splitlines()]
    assert lines[0] == ["rows:", str(ROWS)]
    for word in ("doubtful", "faulty", "unknown", "refused"):
        assert [str(sum(one["verdict"] == word for one in expected)), word] in lines
    assert [str(sum("feeding_daily" in (one["failed"] or ()) for one in expected)), "feeding_daily"] in lines
    assert lines[-1] == ["columns", "that", "were", "not", "read:", "planted"]


# Some rows of the file cannot be read, so nobody knows whether they state a danger.
@pytest.mark.parametrize(("words", "code"), [([], 0), (["danger"], 1), (["faulty"], 1), (["danger", "refused"], 1)])
def test_the_exit_code_is_for_pipelines(file: Path, tmp_path: Path, words: list[str], code: int) -> None:
    more = [part for word in words for part in ("--fail-on", word)]
    assert main(["validate", str(file), "-o", str(tmp_path / "out.parquet"), "--workers", "1", *more]) == code
    assert (tmp_path / "out.parquet").exists()


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"file": "nowhere.csv"}, "nowhere.csv: No such file"),
        ({"file": "."}, "a name ends in one of"),
        ({"out": "out.xlsx"}, "out.xlsx: a name ends in one of"),
        ({"out": "nowhere/out.csv"}, "there is no such folder"),
        ({"more": ["--report", "report.pdf"]}, "a report ends in .html or .md"),
        ({"more": ["--language", "tlh"]}, "no language is called 'tlh'"),
        ({"more": ["--by", "id"]}, "more than 1000 different values"),
        ({"more": ["--packs", "nowhere.yaml"]}, "nowhere.yaml"),
    ],
)
@pytest.mark.usefixtures("in_folder")
def test_what_cannot_be_used_is_told(file: Path, capsys: Captured, change: dict[str, Any], words: str) -> None:
    more = change.get("more", [])
    assert main(["validate", change.get("file", str(file)), "-o", change.get("out", "out.csv"), "--workers", "1", *more]) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert words in err


def test_a_file_is_not_written_over_while_it_is_read(file: Path, capsys: Captured) -> None:
    assert main(["validate", str(file), "-o", str(file)]) == 2
    assert "cannot be written at the same time" in capsys.readouterr().err


def test_a_table_without_rows_gives_answers_without_rows(tmp_path: Path, capsys: Captured) -> None:
    (tmp_path / "fleet.csv").write_text("structure,total_volume\n")
    assert main(["validate", str(tmp_path / "fleet.csv"), "-o", str(tmp_path / "out.parquet"), "--fail-on", "danger"]) == 0
    assert read(tmp_path / "out.parquet") == []
    assert capsys.readouterr().out.startswith("rows: 0\n")


@pytest.mark.parametrize("kind", ["parquet", "arrow", "csv", "ndjson"])
def test_an_invented_fleet_is_written_and_validated(tmp_path: Path, capsys: Captured, kind: str) -> None:
    file = tmp_path / f"fleet.{kind}"
    assert main(["invent-fleet", "200", "-o", str(file), "--seed", "4", "--faulty", "0.5"]) == 0
    assert capsys.readouterr().out == f"{file}: 200 rows. Invented installations: no row is a real one.\n"
    assert main(["validate", str(file), "-o", str(tmp_path / "out.parquet"), "--workers", "1"]) == 0
    expected = fleet().answer(next(invent(200, base(), 4, 0.5))).to_pylist()
    assert [(one["id"], one["verdict"]) for one in read(tmp_path / "out.parquet")] == [(one["id"], one["verdict"]) for one in expected]


@pytest.mark.parametrize("arguments", [["0", "-o", "x.csv"], ["5"], ["5", "-o", "x.csv", "--faulty", "2"], ["many", "-o", "x.csv"]])
def test_wrong_numbers_are_wrong_usage(arguments: list[str], capsys: Captured) -> None:
    with pytest.raises(SystemExit) as stopped:
        main(["invent-fleet", *arguments])
    assert stopped.value.code == 2
    assert capsys.readouterr().err.startswith("usage: kilisho")


@pytest.mark.parametrize("name", ["pyarrow", "rich"])
@pytest.mark.parametrize("command", ["validate", "invent-fleet"])
def test_without_its_packages_one_line_says_what_to_install(file: Path, tmp_path: Path, name: str, command: str) -> None:
    program = f"import sys; sys.modules['{name}'] = None; from kilisho.cli import main; sys.exit(main(sys.argv[1:]))"
    given = str(file) if command == "validate" else "5"
    started = [sys.executable, "-c", program, command, given, "-o", str(tmp_path / "out.csv")]
    done = subprocess.run(started, text=True, capture_output=True, check=False)
    assert (done.returncode, done.stdout) == (2, "")
    assert done.stderr == "this command needs further packages: pip install 'kilisho[fleet]'\n"


def test_the_command_line_starts_without_arrow_and_rich() -> None:
    program = "import sys; from kilisho.cli import main; main(['operations']); sys.exit(bool({'pyarrow', 'rich'} & sys.modules.keys()))"
    assert subprocess.run([sys.executable, "-c", program], check=False, capture_output=True).returncode == 0
