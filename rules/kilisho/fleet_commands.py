"""What `kilisho validate` and `kilisho invent-fleet` do. Arrow is imported when one of them runs, so no other command waits for it."""

from __future__ import annotations

import signal
import sys
from argparse import Namespace
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from importlib import import_module
from pathlib import Path
from typing import Any

from kilisho import packs
from kilisho.commands import OK, REFUSED, UnusableError, fail
from kilisho.messages import Language, Number, say, told_in
from kilisho.packs import Rulebook

STOPPED = 3
# Words of verdicts that a pipeline may want to stop for.
FAIL_ON = ("danger", "doubtful", "faulty", "attention", "unknown", "refused")
FORMATS = (".html", ".md")
NEEDS = "this command needs further packages: pip install 'kilisho[fleet]'"
MOST_SHOWN = 10


def validate(chosen: Namespace) -> int:
    """Answer every row of the files, and print what the answers come to."""
    _require()
    from kilisho.fleet.counting import TooManyPlacesError
    from kilisho.fleet.files import UnreadableError
    from kilisho.fleet.running import StoppedError

    rulebook = packs.load(*chosen.packs)
    language = _language(chosen.language, rulebook)
    try:
        _check_names(chosen)
        counts = _run(chosen, rulebook)
    except (UnreadableError, TooManyPlacesError) as error:
        raise UnusableError(str(error)) from None
    except StoppedError as error:
        return fail(STOPPED, str(error))
    report = _report(chosen, rulebook, language, counts)
    for line in summary(report, counts):
        print(line)
    return REFUSED if _stopped_for(chosen.fail_on, counts["words"].get("verdict", {})) else OK


def _stopped_for(words: Sequence[str], verdicts: Mapping[str, int]) -> bool:
    """Whether a pipeline is to stop. A row that cannot be read may state a danger, so who stops for dangers stops for it too."""
    return any(verdicts.get(word) for word in (*words, *(["refused"] if "danger" in words else [])))


def _require() -> None:
    try:
        import_module("kilisho.fleet")
        import_module("rich")
    except ImportError:
        raise UnusableError(NEEDS) from None


def _language(tag: str, rulebook: Rulebook) -> Language:
    if tag not in rulebook.languages:
        raise UnusableError(f"no language is called {tag!r}; choose {' or '.join(rulebook.languages)}")
    return rulebook.languages[tag]


def _check_names(chosen: Namespace) -> None:
    """Mistakes in names are told before any work is done."""
    if chosen.report and Path(chosen.report).suffix not in FORMATS:
        raise UnusableError(f"{chosen.report}: a report ends in {' or '.join(FORMATS)}")
    if chosen.report and not Path(chosen.report).resolve().parent.is_dir():
        raise UnusableError(f"{chosen.report}: there is no such folder")
    if not Path(chosen.output).resolve().parent.is_dir():
        raise UnusableError(f"{chosen.output}: there is no such folder")
    if Path(chosen.output).resolve() in [Path(file).resolve() for file in chosen.files]:
        raise UnusableError(f"{chosen.output}: is read and cannot be written at the same time")


def _run(chosen: Namespace, rulebook: Rulebook) -> dict[str, Any]:
    from kilisho.fleet.running import Order, run

    order = Order(tuple(chosen.files), chosen.output, tuple(chosen.packs), chosen.by, chosen.block, chosen.workers, chosen.language)
    with _ended_alike(), _progress() as told:
        return run(order, rulebook, told, chosen.restart)


@contextmanager
def _ended_alike() -> Iterator[None]:
    """Whoever ends the command politely is understood as somebody at the keyboard is."""

    def stop(*_: Any) -> None:
        raise KeyboardInterrupt

    before = signal.signal(signal.SIGTERM, stop)
    try:
        yield
    finally:
        signal.signal(signal.SIGTERM, before)


@contextmanager
def _progress() -> Iterator[Callable[[int, int], None]]:
    """A bar where somebody looks on; nothing in a log."""
    if not sys.stderr.isatty():
        yield lambda _done, _rows: None
        return
    from rich.console import Console
    from rich.progress import BarColumn, MofNCompleteColumn, Progress, TimeRemainingColumn

    with Progress(BarColumn(), MofNCompleteColumn(), TimeRemainingColumn(), console=Console(stderr=True)) as bar:
        task = bar.add_task("rows", total=None)
        yield lambda done, rows: bar.update(task, completed=done, total=rows)


def _report(chosen: Namespace, rulebook: Rulebook, language: Language, counts: dict[str, Any]) -> dict[str, Any]:
    from kilisho.fleet import fleet_of
    from kilisho.fleet.report import report_of
    from kilisho.views.reports import as_markdown, as_page

    name = ", ".join(Path(file).name for file in chosen.files)
    report = report_of(counts, fleet_of(rulebook), rulebook, name, chosen.by)
    if chosen.report:
        write = as_page if Path(chosen.report).suffix == ".html" else as_markdown
        Path(chosen.report).write_text(write(told_in(language, report), language), "utf-8")
    return report


def summary(report: dict[str, Any], counts: dict[str, Any]) -> Iterator[str]:
    """What a run comes to, in lines for a terminal or a log."""
    yield f"rows: {report['rows']}"
    if report["misnamed"]:
        yield "columns that were not read, and what may be meant:"
        yield from (f"  {one['text']}" for one in report["misnamed"])
    yield from _table((one["verdict"], one["count"]) for one in report["verdicts"])
    if report["open"]["unjudged"]:
        yield str(say("report-unjudged", count=report["open"]["unjudged"], total=Number(report["open"]["unjudged"])))
    if report["open"]["count"]:
        left = report["open"]["count"]
        yield f"rows that leave a check of danger level unanswered: {left}; none of them is safe until somebody has looked"
    failed = [*report["dangers"], *report["failed"]]
    if failed:
        yield "failed checks, those of danger level first:"
        yield from _table((one["check"], one["count"]) for one in failed[:MOST_SHOWN])
    if report["worst"]:
        yield "the worst, and what to do first:"
        yield from map(_worst, report["worst"])
    if report["slips"]:
        yield "numbers that are probably in another unit, by column and what they read as:"
        yield from _table((f"{one['member']}: {one['text']}", one["count"]) for one in report["slips"])
    if report["faults"]:
        yield "rows that cannot be read, by column and fault:"
        yield from _table((f"{one['fault']}, {one['text']}", one["count"]) for one in report["faults"])
        yield "the first of these rows:"
        yield from map(_refused, counts["refused"])
    if counts["unread"]:
        yield f"columns that were not read: {', '.join(counts['unread'])}"


def _worst(one: dict[str, Any]) -> str:
    return f"  row {one['row']} {one['id'] or ''}: {one['title']}. {one['do']} {one['slip'] or ''}".rstrip()


def _refused(one: dict[str, Any]) -> str:
    from kilisho.fleet.members import in_a_line

    fault = one["faults"][0]
    return f"  row {one['row']} {one['id'] or ''}: {in_a_line(fault['column'], fault['detail'])}"


def _table(pairs: Any) -> Sequence[str]:
    return [f"  {count:>12}  {name}" for name, count in pairs]


def invent(chosen: Namespace) -> int:
    """Write an invented fleet."""
    _require()
    from kilisho.fleet.files import UnreadableError, format_of
    from kilisho.fleet.labelled import labelled, schema_of
    from kilisho.fleet.table import NOTICE
    from kilisho.fleet.writing import write

    rulebook = packs.load(*chosen.packs)
    try:
        kind = format_of(chosen.output)
    except UnreadableError as error:
        raise UnusableError(str(error)) from None
    batches = labelled(chosen.rows, rulebook, chosen.seed, chosen.faulty)
    write(batches, schema_of(rulebook), Path(chosen.output), kind)
    print(f"{chosen.output}: {chosen.rows} rows. {NOTICE}")
    return OK
