"""What a fleet's table may hold: the members of an installation's record, and facts of the rulebook by id, as columns.

A cell is read by the very field that reads the member of a single request, so a bad cell has the same code and the same words there.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Annotated, Any, NamedTuple

from pydantic import TypeAdapter, ValidationError

from kilisho.farm import Shelf
from kilisho.faults import Fault, faults_of
from kilisho.messages import DEFAULT, Language, Message, say
from kilisho.questions import fields as f
from kilisho.questions.installation.request import InstallationRequest
from kilisho.questions.installation.single import ids_of
from kilisho.questions.installation.work import CODES, NUMBERS, Desk
from kilisho.questions.stated_facts import reader_of
from kilisho.units import unit_of

DATES = ("commissioned_on", "visited_on")
REQUIRED = tuple(name for name, info in InstallationRequest.model_fields.items() if info.is_required())
FLAG = (False, True)
# Distinct bad cells whose faults are kept; beyond that they are worked out again.
MOST_KEPT = 10_000
# What a number should have been, in the words of a table.
_OF_CELLS = {
    "fault-number_in_unit": "fault-cell_number_in_unit",
    "fault-plain_number": "fault-cell_number",
    "fault-whole_number": "fault-cell_whole_number",
}
UNREADABLE = Fault((), "cell_unreadable", say("fault-cell_unreadable"))


class Reason(NamedTuple):
    """Why a row is refused: the column, a stable code, and what was expected."""

    column: str
    code: str
    detail: str


@dataclass(frozen=True)
class Member:
    """One column of a table. ``values`` are what a coded column may hold, in the order of the codes; numbers have bounds instead.

    ``canonical = number * factor + offset``; ``least`` and ``most`` bound the number as it is written; ``whole`` asks for a whole one.
    """

    name: str
    kind: str
    reader: Any
    ids: Mapping[str, Any]
    values: tuple[Any, ...] = ()
    least: float = 0.0
    most: float = 0.0
    factor: float = 1.0
    offset: float = 0.0
    whole: bool = False
    _kept: dict[Any, Reason | None] = field(default_factory=dict, repr=False, compare=False)

    def read(self, value: Any) -> Any:
        """The canonical value of one cell; raises ``pydantic.ValidationError``."""
        return self.reader.validate_python(value, context=self.ids)

    def reason_of(self, value: Any) -> Reason | None:
        """What is wrong with one cell, as a request would be told; None where nothing is."""
        if isinstance(value, list | dict):
            return self._reason(value)
        # True is not 1 here.
        key = (type(value), value)
        found = self._kept.get(key, self)
        if isinstance(found, Member):
            if len(self._kept) >= MOST_KEPT:
                self._kept.clear()  # safe while other threads read: each keeps the value that it has found or made
            found = self._kept[key] = self._reason(value)
        return found

    def _reason(self, value: Any) -> Reason | None:
        try:
            self.read(value)
        except ValidationError as error:
            [found] = faults_of(error)
            return reason(self.name, _of_a_cell(found, value))
        return None


def _of_a_cell(fault: Fault, value: Any) -> Fault:
    """A fault of a request's member in the words of a table, where nobody writes objects; a value with a unit is a number in that one."""
    detail = fault.detail
    name = _OF_CELLS.get(detail.id) if isinstance(detail, Message) else None
    if name is None or not isinstance(detail, Message):
        return fault
    stated = {"unit": value["unit"]} if "unit" in detail.parameters and isinstance(value, dict) and "unit" in value else {}
    return replace(fault, detail=say(name, **{**detail.parameters, **stated}))


def reason(column: str, fault: Fault = UNREADABLE) -> Reason:
    """A fault as a row has it, with valid values that are near; without one, that of a cell that is nothing a member could be."""
    detail = say("fault-nearest", fault=fault.detail, nearest=", ".join(fault.nearest)) if fault.nearest else fault.detail
    return Reason(column, fault.code, detail)


def in_a_line(column: str, detail: str) -> str:
    """A reason in a line of text; what is wrong with no column in particular stands alone."""
    return f"{column}: {detail}" if column else detail


def told_in(why: Reason, language: Language) -> Reason:
    """A reason in a language; one that was told already stays as it is."""
    if language.tag == DEFAULT or not isinstance(why.detail, Message):
        return why
    return why._replace(detail=language.tell(why.detail)[0])


def at_line(fault: Fault, line: int) -> Fault:
    """A fault of a row of a text, with the line in which the row begins."""
    return replace(fault, detail=say("fault-at_line", line=str(line), fault=fault.detail))


def members_of(shelf: Shelf, desk: Desk) -> dict[str, Member]:
    """Every column that is read, by name: the record's members first, then the facts that no member tells."""
    ids: dict[str, Any] = {**shelf.ids, **ids_of(desk.figures)}
    found = {name: _of_record(name, ids) for name in (*NUMBERS, *CODES, *DATES)}
    facts = {name: fact for name, fact in shelf.data.facts.items() if name not in found and fact.kind != "structure"}
    return found | {name: _of_fact(name, fact, ids) for name, fact in facts.items()}


def _of_record(name: str, ids: Mapping[str, Any]) -> Member:
    kind = InstallationRequest.model_fields[name].metadata[0]
    reader = TypeAdapter(Annotated[Any, kind])
    if name in DATES:
        return Member(name, "date", reader, ids)
    return Member(name, "code", reader, ids, ids[name]) if name in CODES else _number(name, kind, reader, ids)


def _number(name: str, kind: Any, reader: Any, ids: Mapping[str, Any]) -> Member:
    if isinstance(kind, f.InUnit):
        window, unit = kind.windows()[kind.unit], unit_of(kind.kind, kind.unit)
        return Member(name, "number", reader, ids, (), window.least, window.most, unit.factor, unit.offset)
    bounds = dict(kind.schema)
    return Member(name, "number", reader, ids, (), bounds["minimum"], bounds["maximum"], whole=bounds["type"] == "integer")


def _of_fact(name: str, fact: Any, ids: Mapping[str, Any]) -> Member:
    kind = reader_of(fact)
    reader = TypeAdapter(Annotated[Any, kind])
    if isinstance(kind, f.InUnit):
        return _number(name, kind, reader, ids)
    values = {"yes_no": FLAG, "one_of": tuple(fact.values)}.get(fact.kind, ())
    return Member(name, "code" if values else "list", reader, ids, values)
