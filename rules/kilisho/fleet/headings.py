"""Names of columns: which member each holds, in which unit (``total_volume [L]``), and which are not read at all."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import islice

import pyarrow as pa

from kilisho.deadline import keep_to_time
from kilisho.farm import Shelf
from kilisho.faults import Fault, RefusedError
from kilisho.fleet.members import REQUIRED, Member, Reason
from kilisho.fleet.nested_facts import WITHIN
from kilisho.fleet.table import FAULTS, ID
from kilisho.messages import DEFAULT, LANGUAGES, Language, say
from kilisho.nearest import nearest
from kilisho.questions import fields as f
from kilisho.questions.installation.request import InstallationRequest
from kilisho.questions.stated_facts import reader_of

_WITH_UNIT = re.compile(r"\s*(.*?)\s*(?:\[([^\[\]]*)\]|\(([^()]*)\))\s*")
# Spellings of units in headings that are none of UCUM: as people write them.
_SPELT = {"³": "3", "²": "2", "°C": "Cel", "ºC": "Cel", "°F": "[degF]", "ºF": "[degF]"}
LONGEST_NAME = 64
# Of a header in which no column is known: how many names are quoted, and how much of each.
MOST_QUOTED, LONGEST_QUOTED = 10, 32
MOST_NAMES = 100
# Units that are wrong in a heading and are told, each with what is near.
MOST_FAULTS = 100


@dataclass(frozen=True)
class Place:
    """One column that is read: its name in the table and its member; ``unit`` only where the name states one, the member is then in it."""

    name: str
    member: Member
    unit: str | None = None

    def reason_of(self, cell: object) -> Reason | None:
        """What is wrong with a cell, as a request would be told."""
        return self.member.reason_of(cell if self.unit is None else {"value": cell, "unit": self.unit})


@dataclass(frozen=True)
class Heading:
    """The columns of one table; ``identity`` is the name of the one that holds the ids, ``language`` that of what is told of its cells."""

    places: tuple[Place, ...]
    identity: str | None
    unread: tuple[str, ...]
    language: Language = LANGUAGES[DEFAULT]

    @property
    def wanted(self) -> list[str]:
        """Names of the columns that are read, the id among them."""
        return [*([] if self.identity is None else [self.identity]), *(place.name for place in self.places)]


@dataclass(frozen=True)
class Columns:
    """Every column that a table may have, and the language in which faults of rows are told."""

    members: Mapping[str, Member]
    shelf: Shelf
    language: Language = LANGUAGES[DEFAULT]

    def heading(self, names: Sequence[str], units: Mapping[str, str] | None = None) -> Heading:
        """The heading of a table with columns of these names; ``units`` are stated beside some. Raises :class:`RefusedError`."""
        plain = frozenset(map(self._known, names))
        found = {at: (name, *self._parts(name, (units or {}).get(name), plain)) for at, name in enumerate(names)}
        known = {at: one for at, one in found.items() if one[1] in self.members or one[1] == ID}
        units_wrong = (fault for one in known.values() for fault in self._unit_faults(*one))
        faults = [*_twice(one[1] for one in known.values()), *islice(units_wrong, MOST_FAULTS)]
        faults += self._missing({one[1] for one in known.values()}, names)
        if faults:
            raise RefusedError(faults)
        places = tuple(self._place(*one) for one in known.values() if one[1] != ID)
        unread = tuple(name[:LONGEST_NAME] for at, (name, *_) in found.items() if at not in known and name not in ("", FAULTS))
        return Heading(places, next((one[0] for one in known.values() if one[1] == ID), None), unread[:MOST_NAMES], self.language)

    def _missing(self, known: set[str], names: Sequence[str]) -> list[Fault]:
        """Every row would be refused for want of these; names that are close to one are told too."""
        missing = [name for name in REQUIRED if name not in known]
        some = [name for name in names[:MOST_NAMES] if name not in self.members] if missing else []
        near = {name: nearest(name, missing, 0.6) for name in some}
        misspelt = [Fault((name[:LONGEST_NAME],), "no_column", say("fault-unread_column"), meant) for name, meant in near.items() if meant]
        if not known & self.members.keys():
            quoted = ", ".join(repr(name[:LONGEST_QUOTED]) for name in names[:MOST_QUOTED])
            return [Fault((), "no_column", say("fault-no_column", names=quoted)), *misspelt]
        return [*(Fault((name,), "no_column", say("fault-required_column")) for name in missing), *misspelt]

    def unread(self, names: Iterable[str]) -> list[str]:
        """Those of ``names`` that no member is read by: further data of the caller, or misspelt."""
        return [name for name in names if name not in self.members and name not in (ID, FAULTS)]

    def nearest(self, name: str) -> list[str]:
        """Columns whose names are close to one that is not read, whatever stands behind it in brackets."""
        found = _WITH_UNIT.fullmatch(name[:LONGEST_NAME])
        return nearest((found[1] if found else name).removeprefix(WITHIN), self.members, 0.6)

    def _known(self, name: str) -> str:
        """The name without surrounding blanks, and in small letters where that is a column's."""
        bare = name.strip()
        small = bare.lower()
        return small if bare not in self.members and (small in self.members or small == ID) else bare

    def _parts(self, name: str, beside: str | None, plain: frozenset[str]) -> tuple[str, str | None]:
        """The member's name and the unit that the column states. The bare name wins: a fact might be called anything.

        Square brackets hold a unit. Round ones hold all sorts of remarks, so theirs is one only behind the name of a number with a unit
        that no column bears plainly.
        """
        keep_to_time()
        known = self._known(name)
        found = None if known in self.members else _WITH_UNIT.fullmatch(name)
        if not found:
            return known, beside
        member = self._known(found[1])
        if found[2] is None and (member in plain or member not in self.members or self._kind(member) is None):
            return known, beside
        return member, self._spelt(member, found[3] if found[2] is None else found[2])

    def _spelt(self, member: str, unit: str) -> str:
        """The code of a unit that is spelt as people write it."""
        unit = unit.strip()
        for spelt, code in _SPELT.items():
            unit = unit.replace(spelt, code)
        kind = self._kind(member) if member in self.members else None
        units = list(kind.windows()) if kind else []
        alike = [code for code in units if code.lower() == unit.lower()]
        return alike[0] if unit not in units and len(alike) == 1 else unit

    def _kind(self, name: str) -> f.InUnit | None:
        info = InstallationRequest.model_fields.get(name)
        kind = info.metadata[0] if info is not None else reader_of(self.shelf.data.facts[name])
        return kind if isinstance(kind, f.InUnit) else None

    def _unit_faults(self, name: str, member: str, unit: str | None) -> list[Fault]:
        if unit is None:
            return []
        kind = self._kind(member) if member in self.members else None
        units = list(kind.windows()) if kind else []
        if unit in units:
            return []
        detail = say("fault-unit_of_column", units=", ".join(units)) if units else say("fault-column_without_unit")
        return [Fault((name[:LONGEST_NAME],), "unknown_unit", detail, nearest(unit, units, 0.3))]

    def _place(self, name: str, member: str, unit: str | None) -> Place:
        found, kind = self.members[member], self._kind(member)
        if unit is None or kind is None or unit == kind.unit:
            return Place(name, found)
        window = kind.windows()[unit]
        in_unit = replace(found, least=window.least, most=window.most, factor=window.factor, offset=window.offset)
        return Place(name, in_unit, unit)


def _twice(names: Iterable[str]) -> list[Fault]:
    return [Fault((name,), "column_twice", say("fault-column_twice")) for name, times in Counter(names).items() if times > 1]


def units_of(schema: pa.Schema) -> dict[str, str]:
    """The units in the metadata of fields. An answer has units too; those of columns that need none are of no matter."""
    units = {field.name: field.metadata[b"unit"].decode("utf-8", "replace") for field in schema if b"unit" in (field.metadata or {})}
    return {name: unit for name, unit in units.items() if unit != "1"}


def unreadable(name: str) -> RefusedError:
    """The refusal of a whole file, by the message that says why."""
    return RefusedError([Fault((), "table_unreadable", say(name))])
