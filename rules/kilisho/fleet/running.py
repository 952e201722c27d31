"""The validation of files of any size on all cores, which goes on where it was stopped.

Each block's answers are a file of their own, and beside it stands what they come to, written after it: a block whose counts are there is
done. Whatever ends a run, a kill included, costs the blocks that were under way and nothing else. At the end the parts are put together,
or stay as they are where the output is a folder.
"""

from __future__ import annotations

import hashlib
import json
import os
import shutil
import signal
import sys
import threading
from collections.abc import Callable, Iterator, Mapping, Sequence
from concurrent.futures import FIRST_COMPLETED, ProcessPoolExecutor, wait
from concurrent.futures.process import BrokenProcessPool
from contextlib import contextmanager
from dataclasses import asdict, dataclass, replace
from itertools import islice
from multiprocessing import get_context, parent_process
from pathlib import Path
from typing import Any

import pyarrow as pa

from kilisho.fleet import fleet_of
from kilisho.fleet.answers import schema_of
from kilisho.fleet.counting import Counting, Counts, added, nothing
from kilisho.fleet.files import ROWS, Block, Table, UnreadableError, format_of, look_at, read_block
from kilisho.fleet.table import NOTICE_COLUMN
from kilisho.fleet.writing import SUFFIX, join, whole_file, write
from kilisho.messages import DEFAULT
from kilisho.packs import Rulebook, load

# Raised when what a part holds changes, so that no run goes on with parts of another make.
MAKE = 3
# Blocks under way for each worker: one that it works on, one that waits.
UNDER_WAY = 2
Progress = Callable[[int, int], None]


class StoppedError(Exception):
    """The run ended before its end; the same command goes on."""


@dataclass(frozen=True)
class Order:
    """What is to be done: answer ``files`` into ``out`` under ``packs``, in blocks of about ``rows`` rows.

    Counts are told by the column ``by``, faults of rows in ``language``.
    """

    files: tuple[str, ...]
    out: str
    packs: tuple[str, ...] = ()
    by: str | None = None
    rows: int = ROWS
    workers: int = 0
    language: str = DEFAULT

    @property
    def into_folder(self) -> bool:
        """Whether the output is a folder of parts."""
        return self.out.endswith(("/", os.sep)) or Path(self.out).is_dir()

    @property
    def kind(self) -> str:
        """The format of the output; Parquet for a folder whose name does not say."""
        return "parquet" if self.into_folder and not Path(self.out).suffix else format_of(self.out.rstrip("/" + os.sep))


@dataclass(frozen=True)
class Parts:
    """Where the parts of a run stand, and what is known of each."""

    folder: Path
    marks: Path
    kind: str

    def part(self, number: int) -> Path:
        """The answers of a block."""
        return self.folder / f"part-{number:06}{SUFFIX[self.kind]}"

    def mark(self, number: int) -> Path:
        """What the answers of a block come to; it is there once the block is done."""
        return self.marks / f"part-{number:06}.json"

    def done(self, number: int) -> Counts | None:
        """The counts of a block that is done."""
        try:
            found: Counts = json.loads(self.mark(number).read_text("utf-8"))
        except FileNotFoundError:
            return None
        return found if self.part(number).exists() else None


def parts_of(order: Order) -> Parts:
    """Parts stand in the output where that is a folder; else beside it, in a form that is quickly put together."""
    out = Path(order.out)
    if order.into_folder:
        return Parts(out, out / "_journal", order.kind)
    beside = out.with_name(f"{out.name}.parts")
    return Parts(beside, beside, "arrow" if order.kind == "parquet" else order.kind)


class Worker:
    """Answers blocks in one process."""

    def __init__(self, rulebook: Rulebook, order: Order, parts: Parts, schema: pa.Schema) -> None:
        self.fleet, self.order, self.parts, self.schema = fleet_of(rulebook), order, parts, schema
        self.columns = replace(self.fleet.columns, language=rulebook.languages[order.language])
        self.counting = Counting(self.fleet, order.by)

    def answer(self, number: int, block: Block) -> Counts:
        """Answer a block into its part, and give what its answers come to."""
        counted = [nothing()]
        write(self._answers(block, counted), self.schema, self.parts.part(number), self.parts.kind)
        if counted[0]["rows"] != block.rows:
            raise UnreadableError(f"{block.file}: was changed while it was read")
        with whole_file(self.parts.mark(number)) as begun:
            begun.write_text(json.dumps(counted[0]), "utf-8")
        return counted[0]

    def _answers(self, block: Block, counted: list[Counts]) -> Iterator[pa.RecordBatch]:
        row = block.row
        for batch, unread in read_block(block, self.columns, [NOTICE_COLUMN, *([self.order.by] if self.order.by else [])]):
            answer = _with_ids_as(self.fleet.answer(batch, self.columns.language), self.schema)
            counted[0] = added(counted[0], self.counting.of(batch, answer, row, unread), self.order.by)
            row += batch.num_rows
            yield answer


def _with_ids_as(answer: pa.RecordBatch, schema: pa.Schema) -> pa.RecordBatch:
    """The answers with ids of the type that those of all files have."""
    if answer.schema.field(0).type == schema.field(0).type:
        return answer
    return pa.RecordBatch.from_arrays([answer.column(0).cast(schema.field(0).type), *answer.columns[1:]], schema=schema)


_worker: list[Worker] = []


def _begin(identity: Mapping[str, Any], order: Order, parts: Parts, schema: pa.Schema) -> None:
    """The first thing that a process of the pool does: one thread of its own, no keyboard, and an end when its parent has one."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    signal.signal(signal.SIGTERM, signal.SIG_DFL)
    threading.Thread(target=_end_with_parent, daemon=True).start()
    pa.set_cpu_count(1)
    rulebook = load(*order.packs)
    if rulebook.identity == identity:
        _worker.append(Worker(rulebook, order, parts, schema))


def _end_with_parent() -> None:
    parent = parent_process()
    if parent is not None:
        parent.join()
        os._exit(1)


def _answer(number: int, block: Block) -> Counts:
    if not _worker:
        raise UnreadableError("the packs were changed while they were used")
    return _worker[0].answer(number, block)


def run(order: Order, rulebook: Rulebook, progress: Progress = lambda _done, _rows: None, restart: bool = False) -> Counts:
    """Answer all files, and give what the answers come to; ``progress`` is told how many of how many rows are done.

    Raises :class:`UnreadableError` for files that cannot be used, and :class:`StoppedError` where the same order goes on later.
    """
    tables = look_at(order.files, replace(fleet_of(rulebook).columns, language=rulebook.languages[order.language]), order.rows)
    _check_by(order, tables)
    parts = parts_of(order)
    with _held(parts, _plan(order, rulebook, tables), restart):
        try:
            return _run(order, rulebook, tables, parts, progress)
        except KeyboardInterrupt:
            raise StoppedError(f"stopped; the same command goes on from {parts.marks}") from None
        except BrokenProcessPool:
            raise StoppedError("a worker was killed, perhaps for want of memory: fewer --workers or smaller --block need less") from None
        except UnreadableError:
            raise
        except OSError as error:
            why = f"{error.filename or order.out}: {error.strerror or error}"
            raise StoppedError(f"{why}; what is done is kept, and the same command goes on") from None


def _check_by(order: Order, tables: Sequence[Table]) -> None:
    """A column to tell the fleet by that no file has is misspelt; lines of JSON do not say beforehand which they have."""
    named = [set(table.columns) for table in tables]
    if order.by is not None and all(named) and order.by not in set().union(*named):
        raise UnreadableError(f"no file has a column {order.by!r}; they have {', '.join(sorted(set().union(*named))[:12])}")


def _run(order: Order, rulebook: Rulebook, tables: Sequence[Table], parts: Parts, progress: Progress) -> Counts:
    blocks = [block for table in tables for block in table.blocks]
    schema = schema_of(len(fleet_of(rulebook).desk.checks), _id_type(tables))
    made_of = (rulebook, order, parts, schema)
    counted, done, rows = _with_unread(nothing(), tables, order), 0, sum(block.rows for block in blocks)
    for counts in _counts(blocks, made_of, order.workers or cores()):
        counted, done = added(counted, counts, order.by), done + counts["rows"]
        progress(done, rows)
    if done != rows:
        raise StoppedError(f"{rows - done} of {rows} rows were not answered; the same command goes on")
    if not blocks or not order.into_folder:
        _put_together(order, parts, len(blocks), schema)
    return counted


def cores() -> int:
    """Cores that this process may use."""
    return len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 1


def _id_type(tables: Sequence[Table]) -> pa.DataType:
    kinds = {table.id_type for table in tables}
    return kinds.pop() if len(kinds) == 1 else pa.string()


def _with_unread(counted: Counts, tables: Sequence[Table], order: Order) -> Counts:
    names = {name for table in tables for name in table.unread if name not in (order.by, NOTICE_COLUMN)}
    return {**counted, "unread": dict.fromkeys(sorted(names), 1)}


def _counts(blocks: Sequence[Block], made_of: tuple[Any, ...], workers: int) -> Iterator[Counts]:
    """The counts of each block, as they are done."""
    parts: Parts = made_of[2]
    open_blocks = []
    for number, block in enumerate(blocks):
        counts = parts.done(number)
        if counts is None:
            open_blocks.append((number, block))
        else:
            yield counts
    if min(workers, len(open_blocks)) <= 1:
        worker = Worker(*made_of) if open_blocks else None
        yield from (worker.answer(number, block) for number, block in open_blocks if worker is not None)
        return
    rulebook, *others = made_of
    yield from _by_many(open_blocks, (rulebook.identity, *others), min(workers, len(open_blocks)))


def _by_many(blocks: Sequence[tuple[int, Block]], made_of: tuple[Any, ...], workers: int) -> Iterator[Counts]:
    left = iter(blocks)
    pool = ProcessPoolExecutor(workers, get_context("spawn"), _begin, made_of)
    try:
        under_way = {pool.submit(_answer, *one) for one in islice(left, workers * UNDER_WAY)}
        while under_way:
            ready, under_way = wait(under_way, return_when=FIRST_COMPLETED)
            for one in ready:
                yield one.result()
                under_way |= {pool.submit(_answer, *another) for another in islice(left, 1)}
    finally:
        pool.shutdown(cancel_futures=True)


def _put_together(order: Order, parts: Parts, count: int, schema: pa.Schema) -> None:
    """One file of all parts; these go once it stands. A folder of no blocks gets one part without rows."""
    if order.into_folder or not count:
        target = parts.part(0) if order.into_folder else Path(order.out)
        write((), schema, target, order.kind)
    else:
        join([parts.part(number) for number in range(count)], schema, Path(order.out), order.kind)
    if not order.into_folder:
        shutil.rmtree(parts.folder)


def _plan(order: Order, rulebook: Rulebook, tables: Sequence[Table]) -> str:
    """What parts hang on; parts of another plan are not gone on with."""
    files = [(str(Path(file).resolve()), os.stat(file).st_size, os.stat(file).st_mtime_ns) for file in order.files]
    blocks = [asdict(block) for table in tables for block in table.blocks]
    hangs_on = [MAKE, pa.__version__, files, blocks, order.kind, order.by, order.language, rulebook.identity]
    return hashlib.sha256(json.dumps(hangs_on, sort_keys=True).encode()).hexdigest()


@contextmanager
def _held(parts: Parts, plan: str, restart: bool) -> Iterator[None]:
    """The parts' folder for this process alone, with the plan in it; raises :class:`UnreadableError` where it holds anything else."""
    if restart:
        _forget(parts)
    if not parts.marks.exists() and parts.folder.exists() and any(parts.folder.iterdir()):
        raise UnreadableError(f"{parts.folder}: is not empty, and no run of this command began it")
    parts.marks.mkdir(parents=True, exist_ok=True)
    with (parts.marks / "plan").open("a+", encoding="ascii") as held:
        _lock(held, parts)
        held.seek(0)
        begun = held.read()
        if begun not in ("", plan):
            raise UnreadableError(f"{parts.marks}: was begun with other files, rulebook or options; --restart begins anew")
        if not begun:
            held.write(plan)
            held.flush()
        yield


def _forget(parts: Parts) -> None:
    """Take away what an earlier run left, and nothing else of the folder."""
    for part in [*parts.folder.glob(f"part-??????{SUFFIX[parts.kind]}"), *parts.marks.glob("part-??????.json")]:
        part.unlink()
    (parts.marks / "plan").unlink(missing_ok=True)


def _lock(held: Any, parts: Parts) -> None:
    if sys.platform == "win32":
        return
    import fcntl

    try:
        fcntl.flock(held, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError:
        raise UnreadableError(f"{parts.marks}: another process is at work there") from None
