"""Facts that a row states as the single request does, in an object of their own (``facts``): columns of the row like all others."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from pydantic import ValidationError

from kilisho.faults import Fault
from kilisho.fleet.columns import as_written
from kilisho.fleet.members import Member, Reason, reason
from kilisho.fleet.table import DENIED, TWICE
from kilisho.messages import say
from kilisho.questions.stated_facts import agree

FACTS = "facts"
# How a member of ``facts`` is called by which nothing is read.
WITHIN = f"{FACTS}."
_NOT_AN_OBJECT = Fault((), "object_expected", say("fault-object_expected"))


def says_nothing(cell: Any) -> bool:
    """Whether a cell is as good as left out."""
    return cell is None or (isinstance(cell, str) and not cell.strip())


def width(row: Mapping[str, Any]) -> int:
    """The cells of a row, those among its facts too."""
    facts = row.get(FACTS)
    return len(row) + (len(facts) if isinstance(facts, Mapping) else 0)


def flat(row: Mapping[str, Any], members: Mapping[str, Member]) -> tuple[Mapping[str, Any], list[Reason]]:
    """The row with its facts as columns, and what is wrong with them; text in ``facts`` is a column of the caller's, as in a text file.

    A fact that the row states as a column too must be the same there.
    """
    facts = row.get(FACTS)
    if FACTS not in row or isinstance(facts, str):
        return row, []
    columns = {name: cell for name, cell in row.items() if name != FACTS}
    if not isinstance(facts, Mapping):
        return columns, [] if facts is None else [reason(FACTS, _NOT_AN_OBJECT)]
    twice = [name for name, cell in facts.items() if name in members and _denied(columns.get(name), cell, members[name])]
    for name, cell in facts.items():
        if name not in members:
            columns[f"{WITHIN}{name}"] = cell
        elif says_nothing(columns.get(name)):
            columns[name] = cell
    return columns, [Reason(name, TWICE, DENIED) for name in twice]


def _denied(column: Any, cell: Any, member: Member) -> bool:
    """Whether a column and a fact of the same name say different things."""
    if says_nothing(column) or says_nothing(cell) or column is cell:
        return False
    try:
        return not agree(*(member.read(as_written(one, member)) for one in (column, cell)))
    except ValidationError:
        return bool(type(column) is not type(cell) or column != cell)
