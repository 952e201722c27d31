"""Arrow columns to columns of numbers and codes, with every cell that cannot be read."""

from __future__ import annotations

import datetime as dt
import re
from collections.abc import Callable
from typing import Any, TypeAlias

import numpy as np
import numpy.typing as npt
import pyarrow as pa
import pyarrow.compute as pc
from pydantic import ValidationError

from kilisho.check_columns import Array, Coded, Codes
from kilisho.fleet.members import FLAG, Member

Rows: TypeAlias = npt.NDArray[np.intp]
NUMBER_IN_TEXT = r"^\s*[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?\s*$"
FIRST_DAY, LAST_DAY = dt.date(1990, 1, 1), dt.date(2150, 12, 31)
EPOCH = dt.date(1970, 1, 1)
_MIDNIGHT = re.compile(r"(?<=\d)[ T]00:00(:00(\.0+)?)?$", re.ASCII)
_NO_ROWS: Rows = np.zeros(0, np.intp)


def numbers(column: pa.Array, member: Member) -> tuple[Array, Rows]:
    """Canonical numbers with NaN where nothing is stated or readable, and the rows whose cells are bad."""
    if _is_text(column.type):
        return _bounded(*_from_text(column), member)
    if pa.types.is_integer(column.type) or pa.types.is_floating(column.type) or pa.types.is_decimal(column.type):
        return _bounded(*_plain(column), member)
    return _one_by_one(column, member)


def _is_text(kind: pa.DataType) -> bool:
    kind = kind.value_type if pa.types.is_dictionary(kind) else kind
    return bool(pa.types.is_string(kind) or pa.types.is_large_string(kind) or pa.types.is_string_view(kind))


def _plain(column: pa.Array) -> tuple[Array, npt.NDArray[np.bool_] | None]:
    """Numbers as they are written, NaN for nothing, and which cells are stated; None where all are."""
    floats = column if pa.types.is_float64(column.type) else column.cast(pa.float64(), safe=False)
    if not floats.null_count:
        return floats.to_numpy(zero_copy_only=False), None
    return floats.fill_null(np.nan).to_numpy(zero_copy_only=False), column.is_valid().to_numpy(zero_copy_only=False)


def _from_text(column: pa.Array) -> tuple[Array, npt.NDArray[np.bool_]]:
    text = column.cast(pa.string())
    readable = pc.match_substring_regex(text, NUMBER_IN_TEXT)
    found = pc.utf8_trim_whitespace(pc.if_else(readable, text, None)).cast(pa.float64())
    return found.fill_null(np.nan).to_numpy(zero_copy_only=False), _stated_text(text)


def _stated_text(text: pa.Array) -> npt.NDArray[np.bool_]:
    """Cells with anything in them: an empty cell of a text file says nothing."""
    stated: npt.NDArray[np.bool_] = pc.fill_null(pc.not_equal(pc.utf8_trim_whitespace(text), ""), False).to_numpy(zero_copy_only=False)
    return stated


def _bounded(written: Array, stated: npt.NDArray[np.bool_] | None, member: Member) -> tuple[Array, Rows]:
    good = (written >= member.least) & (written <= member.most)
    if member.whole:
        good &= np.floor(written) == written
    bad = ~good if stated is None else stated & ~good
    found = written if (member.factor, member.offset) == (1.0, 0.0) else written * member.factor + member.offset
    if not bad.any():
        return found, _NO_ROWS
    return np.where(bad, np.nan, found), np.flatnonzero(bad)


def codes(column: pa.Array, member: Member) -> tuple[Codes, Rows]:
    """Places in the member's values with -1 where nothing is stated or readable, and the rows whose cells are bad."""
    if pa.types.is_boolean(column.type):
        return _of_flags(column, member)
    if not _is_text(column.type):
        return _bad_throughout(column)
    place = {value: code for code, value in enumerate(member.values)} | _words_for(member)
    return _by_distinct_text(column, lambda text: place.get(text, _BAD), np.intp, -1)


_BAD = -2


def _words_for(member: Member) -> dict[str, int]:
    return {"true": 1, "false": 0} if member.values == FLAG else {}


def _of_flags(column: pa.Array, member: Member) -> tuple[Codes, Rows]:
    if member.values != FLAG:
        return _bad_throughout(column)
    return column.cast(pa.int64()).fill_null(-1).to_numpy(zero_copy_only=False), _NO_ROWS


def _bad_throughout(column: pa.Array) -> tuple[Codes, Rows]:
    return np.full(len(column), -1, np.intp), np.flatnonzero(column.is_valid().to_numpy(zero_copy_only=False))


def _by_distinct_text(column: pa.Array, read: Callable[[str], Any], kind: Any, missing: Any) -> tuple[Any, Rows]:
    """Each distinct text is read once; ``read`` gives ``_BAD`` for what it cannot read."""
    coded = column if pa.types.is_dictionary(column.type) else column.dictionary_encode()
    found = [missing if text is None or not text.strip() else read(text) for text in coded.dictionary.to_pylist()]
    bad = np.array([value is _BAD or value == _BAD for value in found] + [False])
    table = np.array([missing if is_bad else value for value, is_bad in zip(found, bad, strict=False)] + [missing], kind)
    places = coded.indices
    places = (places.fill_null(len(found)) if places.null_count else places).to_numpy(zero_copy_only=False)
    return table.take(places), np.flatnonzero(bad.take(places)) if bad.any() else _NO_ROWS


def days(column: pa.Array, member: Member) -> tuple[Array, Rows]:
    """Days since 1970 with NaN where nothing is stated or readable, and the rows whose cells are bad."""
    if _is_text(column.type):
        return _by_distinct_text(column, lambda text: _day(text, member), float, np.nan)
    if not (pa.types.is_date(column.type) or pa.types.is_timestamp(column.type)):
        found, bad = _bad_throughout(column)
        return np.full(found.size, np.nan), bad
    whole = column.cast(pa.date32(), safe=False).cast(pa.int32())
    found = whole.cast(pa.float64()).fill_null(np.nan).to_numpy(zero_copy_only=False)
    outside = (found < (FIRST_DAY - EPOCH).days) | (found > (LAST_DAY - EPOCH).days)
    return np.where(outside, np.nan, found), np.flatnonzero(outside)


def _day(text: str, member: Member) -> float:
    try:
        return float((member.read(day_in(text)) - EPOCH).days)
    except ValidationError:
        return _BAD


def lists(column: pa.Array, member: Member) -> tuple[Coded, Rows]:
    """Lists of words, each distinct list a value."""
    values: dict[tuple[str, ...], int] = {}
    found, bad = np.full(len(column), -1, np.intp), []
    for row, cell in enumerate(column.to_pylist()):
        if cell is None:
            continue
        try:
            found[row] = values.setdefault(member.read(cell), len(values))
        except ValidationError:
            bad.append(row)
    return Coded(found, tuple(values)), np.array(bad, np.intp)


def _one_by_one(column: pa.Array, member: Member) -> tuple[Array, Rows]:
    """Cells that are not plain numbers, such as values with units, read like members of a request; slow."""
    found, bad = np.full(len(column), np.nan), []
    for row, cell in enumerate(column.to_pylist()):
        if cell is None:
            continue
        try:
            found[row] = member.read(cell)
        except ValidationError:
            bad.append(row)
    return found, np.array(bad, np.intp)


def cells(column: pa.Array, rows: Rows, member: Member) -> list[Any]:
    """The cells of some rows as a request would have them: a number that a text file holds as that number, a day as text."""
    return [as_written(cell, member) for cell in column.take(pa.array(rows)).to_pylist()]


def day_in(text: str) -> str:
    """A day as a register has it: with blanks around it, or as the midnight at which it begins, as spreadsheets write days."""
    return _MIDNIGHT.sub("", text.strip())


def as_written(cell: Any, member: Member) -> Any:
    """A cell as a request would have it."""
    if isinstance(cell, dt.date):
        return cell.isoformat()
    if member.kind == "date" and isinstance(cell, str):
        return day_in(cell)
    in_text = member.kind == "number" and isinstance(cell, str) and re.fullmatch(NUMBER_IN_TEXT, cell)
    return float(cell) if in_text else cell
