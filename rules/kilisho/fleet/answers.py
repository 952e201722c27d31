"""Worked out installations as a record batch: a row for a row, in their order."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from typing import Any, get_args

import numpy as np
import pyarrow as pa

from kilisho.check_columns import Array, packed
from kilisho.fleet.patterns import Teller, combinations, lists, words
from kilisho.fleet.table import FAULTS, FAULTS_TYPE, ID, Refusals
from kilisho.questions.installation.slips import Slipped, home_of, readings_of, slips
from kilisho.questions.installation.verdicts import WORDS
from kilisho.questions.installation.work import ASSUMED, Work
from kilisho.rulebook import Slipping

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
LISTS = ("failed", "unknown", "open_dangers")


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

    failed: list[list[Any]] = field(default_factory=list)
    unknown: list[list[Any]] = field(default_factory=list)
    assumed: list[list[Any]] = field(default_factory=list)
    numbers: dict[str, list[Any]] = field(default_factory=lambda: {name: [] for name in NUMBERS})
    slips: list[tuple[int, Slipped]] = field(default_factory=list)
    sizes: list[int] = field(default_factory=list)

    def add(self, work: Work, refusals: Refusals) -> None:
        """Take the next part of the batch; what its rows deny is refused."""
        start, rows = sum(self.sizes), work.records.rows
        for name, denied in work.denied.items():
            if not isinstance(denied, bool):
                refusals.add_denied((np.flatnonzero(denied) + start).tolist(), name)
        self.failed.append(packed([work.evaluation.failed(check) for check in work.desk.checks], rows))
        self.unknown.append(packed([work.evaluation.unknown(check) for check in work.desk.checks], rows))
        self.assumed.append(packed([work.assumed.get(name, False) for name in ASSUMED], rows))
        for name, (where, key, _) in NUMBERS.items():
            self.numbers[name].append(getattr(work, where).get(key))
        self.slips += [(start, slipped) for slipped in slips(work)]
        self.sizes.append(rows)


def answer(sheet: Sheet, identity: pa.Array | None, refusals: Refusals, teller: Teller) -> pa.RecordBatch:
    """The batch of a sheet, with the faults of rows that are refused."""
    rows, refused = sum(sheet.sizes), refusals.refused
    found = combinations(_words(sheet.failed, sheet.sizes), _words(sheet.unknown, sheet.sizes), rows)
    told = teller.tell(found.distinct)
    codes = np.array([one.words for one in told], np.int8).reshape(len(told), len(WORDS))
    number = _number(found.number, refused)
    schema = schema_of(len(teller.ids), identity.type if identity is not None else None)
    columns = [
        identity if identity is not None else pa.nulls(rows, pa.string()),
        *(words(name, codes[:, place].take(found.number), refused) for place, name in enumerate(WORDS)),
        *(lists([getattr(one, name) for one in told], number, teller.ids) for name in LISTS),
        _slips(sheet.slips, rows, refused),
        _assumed(_words(sheet.assumed, sheet.sizes)[0], rows, refused),
        *(_numbers(sheet.numbers[name], sheet.sizes, refused) for name in NUMBERS),
        refusals.told() if refused.size else pa.nulls(rows, FAULTS_TYPE),
    ]
    return pa.RecordBatch.from_arrays(columns, schema=schema)


def _number(number: Any, refused: Any) -> pa.Array:
    if not refused.size:
        return pa.array(number)
    return pa.array(number, mask=_where(refused, number.size))


def _words(parts: Sequence[Sequence[Any]], sizes: Sequence[int]) -> list[Any]:
    """The words of all parts of a batch, one after the other; one number where they are the same throughout."""
    return [_joined(word, sizes) for word in zip(*parts, strict=True)]


def _joined(parts: Sequence[Any], sizes: Sequence[int]) -> Any:
    if all(isinstance(part, int) and part == parts[0] for part in parts):
        return parts[0]
    return np.concatenate(
        [np.full(size, part, np.uint64) if isinstance(part, int) else part for part, size in zip(parts, sizes, strict=True)]
    )


def _numbers(parts: Sequence[Any], sizes: Sequence[int], refused: Any) -> pa.Array:
    if all(part is None or np.ndim(part) == 0 for part in parts):
        return pa.nulls(sum(sizes), pa.float64())
    found: Array = np.concatenate([_full(part, size) for part, size in zip(parts, sizes, strict=True)])
    found[refused] = np.nan
    return pa.array(found, mask=~np.isfinite(found))


def _full(part: Any, size: int) -> Array:
    return np.full(size, np.nan if part is None else part) if part is None or np.ndim(part) == 0 else part


def _assumed(bits: Any, rows: int, refused: Any) -> pa.ListArray:
    number = np.full(rows, bits, np.int64) if isinstance(bits, int) else bits.astype(np.int64)
    every = [[place for place in range(len(ASSUMED)) if one >> place & 1] for one in range(1 << len(ASSUMED))]
    return lists(every, _number(number, refused), pa.array(ASSUMED, pa.string()))


def _slips(found: Iterable[tuple[int, Slipped]], rows: int, refused: Any) -> pa.ListArray:
    """Numbers that are likely in another reading, as a list for each row."""
    parts = [(slipped.rows + start, slipped) for start, slipped in found]
    at = np.concatenate([np.zeros(0, np.intp), *(part for part, _ in parts)])
    keep = np.isin(at, refused, invert=True)
    order = np.argsort(at[keep], kind="stable")
    values = [np.concatenate([column[0], *column[1:]])[keep][order] for column in _columns([slipped for _, slipped in parts])]
    offsets = np.zeros(rows + 1, np.int32)
    np.cumsum(np.bincount(at[keep], minlength=rows), out=offsets[1:])
    member, value, read_as = values
    fields = [_coded(member, MEMBERS), pa.array(value), _coded(read_as, READ_AS)]
    slipped = pa.StructArray.from_arrays(fields, fields=list(SLIP_TYPE))
    return pa.ListArray.from_arrays(pa.array(offsets), slipped, mask=pa.array(_where(refused, rows)) if refused.size else None)


def _where(chosen: Any, rows: int) -> Any:
    found = np.zeros(rows, bool)
    found[chosen] = True
    return found


def _columns(found: Sequence[Slipped]) -> list[list[Any]]:
    members: list[Any] = [np.zeros(0, np.int8)]
    values: list[Any] = [np.zeros(0)]
    read_as: list[Any] = [np.zeros(0, np.int8)]
    for slipped in found:
        home = home_of(slipped.member)
        members.append(np.full(slipped.rows.size, MEMBERS.index(slipped.member), np.int8))
        values.append((slipped.values - home.offset) / home.factor)
        read_as.append(np.array([READ_AS.index(one.read_as) for one in readings_of(slipped.member)], np.int8).take(slipped.reading))
    return [members, values, read_as]


def _coded(codes: Any, values: Sequence[str]) -> pa.DictionaryArray:
    return pa.DictionaryArray.from_arrays(pa.array(codes), pa.array(values, pa.string()))
