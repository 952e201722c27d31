"""Whole fleets of installations: Arrow record batches in, Arrow record batches out, a row for a row in the same order.

:func:`validate` answers each row as ``installations/validate`` answers one record: the same figures, formulas and checks, by the same code.
A row that cannot be read is answered in its place, with verdict ``refused`` and everything that is wrong with it; what nobody stated
is unknown, never passed. Memory is bounded by the batches: nothing is kept from one to the next but what combinations of checks mean.

This package needs pyarrow (``kilisho[fleet]``); nothing else of Kilisho imports it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from functools import lru_cache

import numpy as np
import pyarrow as pa

from kilisho.fleet.answers import Sheet, answer, schema_of
from kilisho.fleet.headings import Columns
from kilisho.fleet.members import Member, members_of
from kilisho.fleet.patterns import Packing, Teller
from kilisho.fleet.rows import read_rows
from kilisho.fleet.table import FAULTS, FAULTS_TYPE, ID, read
from kilisho.messages import DEFAULT, LANGUAGES, Language
from kilisho.packs import Rulebook
from kilisho.questions.installation.verdicts import Judge
from kilisho.questions.installation.work import desk_of, facts_told, work_out
from kilisho.questions.opening import shelf_of
from kilisho.questions.same import Same

__all__ = ("FAULTS", "FAULTS_TYPE", "Fleet", "fleet_of", "read_rows", "validate")

# Rows that are worked out at once: as many as stay in the processor's cache.
PART = 16_384
# Rows of the largest batch that is given back, which bounds the memory.
LARGEST = 131_072


class Fleet:
    """Validates batches under one rulebook; make one and keep it, or call :func:`fleet_of`."""

    def __init__(self, rulebook: Rulebook) -> None:
        self.shelf = shelf_of(rulebook.data)
        self.desk = desk_of(self.shelf)
        self.members: dict[str, Member] = members_of(self.shelf, self.desk)
        self.columns = Columns(self.members, self.shelf)
        judge = Judge(self.desk.checks)
        self._packing = Packing(judge, facts_told(self.desk))
        self._teller = Teller(judge, self._packing)

    @property
    def schema(self) -> pa.Schema:
        """The columns of an answer; ``id`` has the type that it has in the table."""
        return schema_of(len(self.desk.checks))

    def answer(self, batch: pa.RecordBatch, language: Language = LANGUAGES[DEFAULT]) -> pa.RecordBatch:
        """One batch answered whole, its faults told in ``language``; a large one is better sliced, see :func:`validate`."""
        records, refusals = read(batch, self.members, self.shelf, language)
        sheet = Sheet(self._packing)
        identity = batch.column(ID) if ID in batch.schema.names else None
        # What divides by nothing comes out as unknown.
        with np.errstate(all="ignore"):
            for start in range(0, max(batch.num_rows, 1), PART):
                sheet.add(work_out(records.part(start, start + PART), self.desk), refusals)
            return answer(sheet, identity, refusals, self._teller, self.desk)


def fleet_of(rulebook: Rulebook) -> Fleet:
    """The fleet of a rulebook, made once."""
    return _fleet_of(Same(rulebook))


@lru_cache(maxsize=4)
def _fleet_of(same: Same[Rulebook]) -> Fleet:
    return Fleet(same.thing)


def validate(
    batches: Iterable[pa.RecordBatch], rulebook: Rulebook, largest: int = LARGEST, language: Language = LANGUAGES[DEFAULT]
) -> Iterator[pa.RecordBatch]:
    """The answers to a stream of batches, none of more than ``largest`` rows; how the rows are cut changes no answer."""
    fleet = fleet_of(rulebook)
    for batch in batches:
        for start in range(0, batch.num_rows, largest):
            yield fleet.answer(batch.slice(start, largest), language)
