"""Worked out installations as a record batch: a row for a row, in their order."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any, TypeAlias, get_args

import numpy as np
import numpy.typing as npt
import pyarrow as pa

from kilisho.check_columns import Array, packed
from kilisho.fleet.patterns import LISTS, Packing, Teller, bitmap, combinations, every_list_of, lists, with_validity
from kilisho.fleet.table import FAULTS, FAULTS_TYPE, ID, Refusals
from kilisho.questions.installation.slips import Slipped, Suspect, home_of, readings_of, slipped, suspects, together
from kilisho.questions.installation.verdicts import REFUSED, WORDS
from kilisho.questions.installation.work import ASSUMED, Desk, Work
from kilisho.rulebook import Slipping

Rows: TypeAlias = npt.NDArray[np.bool_]
TEXT = pa.dictionary(pa.int8(), pa.string())
SLIP_TYPE = pa.struct({"member": TEXT, "value": pa.float64(), "read_as": TEXT})
# Numbers of an answer: where they stand in the work (facts or values), and their unit.
NUMBERS = {
    "digester_temperature": ("facts", "digester_temperature", "Cel"),
    "hydraulic_retention_time": ("facts", "hydraulic_retention_time", "d"),
    "organic_loading_rate": ("facts", "organic_loading_rate", "kg/m3/d"),
    "slurry_total_solids": ("facts", "slurry_total_solids", "1"),
    "fed_share_of_design": ("facts", "fed_share_of_design", "1"),
    "herd_to_largest_herd": ("facts", "herd_to_largest_herd", "1"),
    "herd_to_smallest_herd": ("facts", "herd_to_smallest_herd", "1"),
    "expected": ("values", "biogas_per_day", "m3/d"),
    "expected_low": ("values", "low_biogas_per_day", "m3/d"),
    "expected_high": ("values", "high_biogas_per_day", "m3/d"),
    "gas_ratio": ("values", "gas_ratio", "1"),
    "gas_ratio_low": ("values", "gas_ratio_to_high", "1"),
    "gas_ratio_high": ("values", "gas_ratio_to_low", "1"),
}
MEMBERS: tuple[str, ...] = get_args(Slipping)
READ_AS = tuple(dict.fromkeys(reading.read_as for member in MEMBERS for reading in readings_of(member)))
OF_ASSUMED = every_list_of(len(ASSUMED))


def schema_of(ids: int, id_type: pa.DataType | None = None) -> pa.Schema:
    """The columns of an answer under a rulebook with so many checks."""
    of_ids = pa.list_(pa.dictionary(pa.int8() if ids <= 127 else pa.int16(), pa.string()))
    numbers = [pa.field(name, pa.float64(), metadata={"unit": unit}) for name, (_, _, unit) in NUMBERS.items()]
    return pa.schema(
        [
            pa.field(ID, id_type or pa.string()),
            *(pa.field(name, TEXT) for name in WORDS),
            *(pa.field(name, of_ids) for name in LISTS),
            pa.field("slips", pa.list_(SLIP_TYPE)),
            pa.field("assumed", pa.list_(TEXT)),
            *numbers,
            pa.field(FAULTS, FAULTS_TYPE),
        ]
    )


@dataclass
class Sheet:
    """What is gathered of a batch, part by part."""

    packing: Packing
    ends: list[list[Any]] = field(default_factory=list)
    assumed: list[list[Any]] = field(default_factory=list)
    numbers: dict[str, list[Any]] = field(default_factory=lambda: {name: [] for name in NUMBERS})
    suspects: dict[str, list[tuple[int, Suspect]]] = field(default_factory=dict)
    sizes: list[int] = field(default_factory=list)

    def add(self, work: Work, refusals: Refusals) -> None:
        """Take the next part of the batch; what its rows deny is refused."""
        start, rows = sum(self.sizes), work.records.rows
        for name, denied in work.denied.items():
            if not isinstance(denied, bool):
                refusals.add_denied((np.flatnonzero(denied) + start).tolist(), name)
        failed, unknown = self.packing.ends(work.evaluation, rows)
        self.ends.append([*failed, *unknown])
        self.assumed.append(packed([work.assumed.get(name, False) for name in ASSUMED], rows))
        for name, (where, key, _) in NUMBERS.items():
            self.numbers[name].append(getattr(work, where).get(key))
        for suspect in suspects(work):
            self.suspects.setdefault(suspect.member, []).append((start, suspect))
        self.sizes.append(rows)


def answer(sheet: Sheet, identity: pa.Array | None, refusals: Refusals, teller: Teller, desk: Desk) -> pa.RecordBatch:
    """The batch of a sheet, with the faults of rows that are refused."""
    rows, told = sum(sheet.sizes), _told(refusals)
    found = combinations(_joined(sheet.ends, sheet.sizes), rows)
    combined = teller.tell(found.distinct)
    schema = schema_of(len(teller.ids), identity.type if identity is not None else None)
    columns = [
        identity if identity is not None else pa.nulls(rows, pa.string()),
        *(_words(name, combined.words[:, place].take(found.number), told) for place, name in enumerate(WORDS)),
        *(lists(padded, found.number, teller.ids, told) for padded in combined.lists),
        _slips([slipped(together(parts), desk) for parts in sheet.suspects.values()], rows, told),
        _assumed(_joined(sheet.assumed, sheet.sizes)[0], rows, told),
        *(_numbers(sheet.numbers[name], sheet.sizes, told) for name in NUMBERS),
        pa.nulls(rows, FAULTS_TYPE) if told is None else refusals.told(),
    ]
    return pa.RecordBatch.from_arrays(columns, schema=schema)


def _told(refusals: Refusals) -> Rows | None:
    """Which rows are answered; None where all are."""
    if not refusals.found:
        return None
    told = np.ones(refusals.rows, bool)
    told[refusals.refused] = False
    return told


def _words(name: str, codes: npt.NDArray[np.int8], told: Rows | None) -> pa.DictionaryArray:
    """A column of the words of the verdict or of an aspect; of refused rows only the verdict has one."""
    if told is not None and name == "verdict":
        codes, told = np.where(told, codes, WORDS[name].index(REFUSED)).astype(np.int8), None
    places = with_validity(codes, np.ones(codes.size, bool) if told is None else told, pa.int8())
    return pa.DictionaryArray.from_arrays(places, pa.array(WORDS[name], pa.string()), safe=False)


def _joined(parts: Sequence[Sequence[Any]], sizes: Sequence[int]) -> list[Any]:
    """The words of all parts of a batch, one after the other; one number where a word is the same throughout."""
    return [_one_word(word, sizes) for word in zip(*parts, strict=True)]


def _one_word(parts: Sequence[Any], sizes: Sequence[int]) -> Any:
    if all(isinstance(part, int) and part == parts[0] for part in parts):
        return parts[0]
    arrays = [np.full(size, part, np.uint64) if isinstance(part, int) else part for part, size in zip(parts, sizes, strict=True)]
    return np.concatenate(arrays)


def _numbers(parts: Sequence[Any], sizes: Sequence[int], told: Rows | None) -> pa.Array:
    if all(part is None or np.ndim(part) == 0 for part in parts):
        return pa.nulls(sum(sizes), pa.float64())
    found: Array = np.concatenate([_full(part, size) for part, size in zip(parts, sizes, strict=True)])
    known = np.isfinite(found)
    return with_validity(found, known if told is None else known & told, pa.float64())


def _full(part: Any, size: int) -> Array:
    return np.full(size, np.nan if part is None else part) if part is None or np.ndim(part) == 0 else part


def _assumed(bits: Any, rows: int, told: Rows | None) -> pa.ListArray:
    number = np.full(rows, bits, np.int64) if isinstance(bits, int) else bits.astype(np.int64)
    return lists(OF_ASSUMED, number, pa.array(ASSUMED, pa.string()), told)


def _slips(found: Sequence[Slipped], rows: int, told: Rows | None) -> pa.ListArray:
    """Numbers that are likely in another reading, as a list for each row."""
    at = np.concatenate([np.zeros(0, np.intp), *(slip.rows for slip in found)])
    keep = np.ones(at.size, bool) if told is None else told.take(at)
    order = np.argsort(at[keep], kind="stable")
    member, value, read_as = (np.concatenate(column)[keep][order] for column in _columns(found))
    offsets = np.zeros(rows + 1, np.int32)
    np.cumsum(np.bincount(at[keep], minlength=rows), out=offsets[1:])
    fields = [_coded(member, MEMBERS), pa.array(value), _coded(read_as, READ_AS)]
    struct = pa.StructArray.from_arrays(fields, fields=list(SLIP_TYPE))
    return pa.ListArray.from_arrays(pa.array(offsets), struct, mask=None if told is None else bitmap(~told))


def _columns(found: Sequence[Slipped]) -> list[list[Any]]:
    members: list[Any] = [np.zeros(0, np.int8)]
    values: list[Any] = [np.zeros(0)]
    read_as: list[Any] = [np.zeros(0, np.int8)]
    for slip in found:
        home = home_of(slip.member)
        members.append(np.full(slip.rows.size, MEMBERS.index(slip.member), np.int8))
        values.append((slip.values - home.offset) / home.factor)
        read_as.append(np.array([READ_AS.index(one.read_as) for one in readings_of(slip.member)], np.int8).take(slip.reading))
    return [members, values, read_as]


def _coded(codes: Any, values: Sequence[str]) -> pa.DictionaryArray:
    return pa.DictionaryArray.from_arrays(pa.array(codes), pa.array(values, pa.string()))
