"""The command line: ask a question, look at the rulebook, check a pack. It knows no web server; `serve` comes from an entry point.

Exit codes: 0 all is well; 1 the request is refused, the pack has faults, or a fleet has rows of a verdict that --fail-on names; 2 wrong
usage, an unreadable file, or unusable packs; 3 the validation of a fleet was stopped, and the same command goes on.
"""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Callable, Sequence
from importlib.metadata import PackageNotFoundError, entry_points, version
from typing import Any

from kilisho import commands, fleet_commands, message_commands, packs
from kilisho.messages import DEFAULT

EXAMPLES = """examples:
  kilisho operations
  kilisho ask sizing farm.json --pretty
  kilisho ask first-charge - --packs my-region.yaml < farm.json
  kilisho rulebook check my-region.yaml
  kilisho validate register.csv -o answers.parquet --by district --report report.html
"""
Arguments = argparse.Namespace
Run = Callable[[Arguments], int]


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command and return its exit code. No mistake of a user ends in a traceback."""
    chosen = _parser().parse_args(arguments)
    run: Run = chosen.run
    try:
        code = run(chosen)
        sys.stdout.flush()
    except commands.UnusableError as error:
        return commands.fail(commands.UNUSABLE, str(error))
    except packs.PackError as error:
        return commands.fail(commands.UNUSABLE, *(f"pack: {fault}" for fault in error.faults))
    except BrokenPipeError:
        # Whoever read our output has had enough; without this Python would complain once more while closing it.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return commands.OK
    except OSError as error:
        return commands.fail(commands.UNUSABLE, f"{error.filename or 'input'}: {error.strerror or error}")
    except KeyboardInterrupt:
        return commands.UNUSABLE
    return code


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="kilisho",
        description="Questions about biogas digesters on small farms, answered from a rulebook.",
        epilog=EXAMPLES,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("--version", action="version", version=f"kilisho {_release()}")
    group = parser.add_subparsers(title="commands", required=True, metavar="COMMAND")
    _add_ask(group)
    _add_operations(group)
    _add_messages(group)
    _add_rulebook(group)
    _add_validate(group)
    _add_invent(group)
    for point in entry_points(group="kilisho.commands"):
        point.load()(group)
    return parser


def _release() -> str:
    try:
        return version("kilisho")
    except PackageNotFoundError:
        return "unreleased"


def add_packs(parser: argparse.ArgumentParser) -> None:
    """The option that lays packs over the base pack; commands of other packages use it too."""
    about = "YAML files or folders laid over the base pack, in this order"
    parser.add_argument("--packs", nargs="+", default=[], metavar="PACK", help=about)


def _add_ask(group: Any) -> None:
    ask = group.add_parser("ask", help="answer a question", description="Answer the JSON request in FILE; - reads standard input.")
    ask.add_argument("operation", metavar="OPERATION", help="as listed by `kilisho operations`")
    ask.add_argument("file", metavar="FILE", help="the request as JSON, or - for standard input")
    ask.add_argument("--explain", action="store_true", help="add the derivation of every number")
    ask.add_argument("--pretty", action="store_true", help="indent the answer")
    about = "write the answer as this media type, where the operation offers it, such as text/csv; application/json otherwise"
    ask.add_argument("--accept", default=commands.JSON, metavar="MEDIA_TYPE", help=about)
    ask.add_argument("--language", default=DEFAULT, metavar="TAG", help="the language of the answer's sentences: en, es, fr, sw")
    add_packs(ask)
    ask.set_defaults(run=commands.ask)


def _add_messages(group: Any) -> None:
    messages = group.add_parser("messages", help="check translations, or mark them with the English they are of").add_subparsers(
        required=True
    )
    check = messages.add_parser("check", help="what each language lacks, and which translations are stale")
    check.add_argument("languages", nargs="*", metavar="TAG", help="languages, such as sw; all when none is named")
    check.set_defaults(run=message_commands.check)
    mark = messages.add_parser("mark", help="mark the new messages of files as translations of today's English that nobody has reviewed")
    mark.add_argument("files", nargs="+", metavar="FILE", help="message files (.ftl)")
    mark.set_defaults(run=message_commands.mark)
    for command in (check, mark):
        add_packs(command)


def _add_operations(group: Any) -> None:
    operations = group.add_parser("operations", help="list the questions that can be asked")
    add_packs(operations)
    operations.set_defaults(run=commands.operations)


def _add_rulebook(group: Any) -> None:
    rulebook = group.add_parser("rulebook", help="check a pack or show the rulebook")
    parts = rulebook.add_subparsers(title="commands", required=True, metavar="COMMAND")
    check = parts.add_parser("check", help="check packs laid over the base pack, in order; no FILE checks the base pack alone")
    check.add_argument("files", nargs="*", metavar="FILE")
    check.set_defaults(run=commands.check)
    show = parts.add_parser("show", help="what the rulebook is and how much it holds")
    add_packs(show)
    show.set_defaults(run=commands.show)


VALIDATE = """Answer every row of tables of installations: Parquet, Arrow, CSV or lines of JSON, by the end of the name. Rows keep their
order; one that cannot be read is answered as refused, with what is wrong with it. A run that was stopped, even by a kill or a full disk,
goes on where it was when the same command is given again; until then its parts stand in OUT.parts."""
CODES = """exit codes: 0 every row is answered; 1 there are rows of a verdict that --fail-on names, and with `--fail-on danger`
also where rows are refused: nobody has judged what they state of dangers; 2 a file or an option cannot be used; 3 stopped before the end,
and the same command goes on."""


def _add_validate(group: Any) -> None:
    validate = group.add_parser("validate", help="validate a fleet of installations in files", description=VALIDATE, epilog=CODES)
    validate.add_argument("files", nargs="+", metavar="FILE", help="tables with a column for each member of an installation's record")
    about = "the answers, as Parquet, Arrow, CSV or lines of JSON by the end of the name; with / at the end a folder of such files"
    validate.add_argument("-o", "--output", required=True, metavar="OUT", help=about)
    validate.add_argument("--report", metavar="FILE", help="a report on the whole fleet, to print (.html) or to send (.md)")
    validate.add_argument("--by", metavar="COLUMN", help="a column, such as a district, by which the report tells the counts")
    validate.add_argument("--language", default=DEFAULT, metavar="TAG", help="the language of the report and of faults: en, es, fr, sw")
    about = (
        "exit with 1 if any row has this verdict, or for danger if any row is refused, since it may state one; may be given more than once"
    )
    validate.add_argument("--fail-on", action="append", default=[], choices=fleet_commands.FAIL_ON, help=about)
    validate.add_argument("--workers", type=_count, default=0, metavar="N", help="processes; as many as there are cores by default")
    about = "rows that are worked on at once, about; fewer need less memory (131072 by default)"
    validate.add_argument("--block", type=_count, default=131_072, metavar="ROWS", help=about)
    validate.add_argument("--restart", action="store_true", help="forget what an earlier run of this output has done")
    add_packs(validate)
    validate.set_defaults(run=fleet_commands.validate)


def _add_invent(group: Any) -> None:
    about = "write a fleet of invented installations, some with a planted fault that the column `planted` names; no row is a real one"
    invent = group.add_parser("invent-fleet", help="write a table of invented installations", description=about)
    invent.add_argument("rows", type=_count, metavar="ROWS")
    invent.add_argument("-o", "--output", required=True, metavar="FILE", help="ends in .parquet, .arrow, .csv or .ndjson")
    invent.add_argument("--seed", type=int, default=1, metavar="N", help="the same number gives the same rows")
    invent.add_argument("--faulty", type=_share, default=0.2, metavar="SHARE", help="of the rows, 0 to 1, that bear a fault")
    add_packs(invent)
    invent.set_defaults(run=fleet_commands.invent)


def _count(text: str) -> int:
    if not 0 < int(text) <= 10**12:
        raise ValueError
    return int(text)


def _share(text: str) -> float:
    if not 0 <= float(text) <= 1:
        raise ValueError
    return float(text)


if __name__ == "__main__":
    sys.exit(main())
