"""The command line: ask a question, look at the rulebook, check a pack. It knows no web server; `serve` comes from an entry point.

Exit codes: 0 all is well; 1 the request is refused or the pack has faults; 2 wrong usage, an unreadable file, or unusable packs.
"""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Callable, Sequence
from importlib.metadata import PackageNotFoundError, entry_points, version
from typing import Any

from kilisho import commands, message_commands, packs
from kilisho.messages import DEFAULT

EXAMPLES = """examples:
  kilisho operations
  kilisho ask sizing farm.json --pretty
  kilisho ask first-charge - --packs my-region.yaml < farm.json
  kilisho rulebook check my-region.yaml
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


if __name__ == "__main__":
    sys.exit(main())
