"""Rows of an answer as a table: RFC 4180 CSV that a spreadsheet opens and that runs nothing there."""

from __future__ import annotations

import csv
import io
import math
from collections.abc import Callable, Iterable, Iterator, Mapping
from typing import Any

from kilisho.messages import Language

CSV = "text/csv"
Cell = str | int | float
ENDS = {"value": "", "low": " low", "high": " high"}
# A spreadsheet takes text that begins so for a formula; some drop the blanks before it.
STARTS_FORMULA = ("=", "+", "-", "@", "＝", "＋", "－", "＠")
STARTS_BLANK = ("\t", "\r", "\n")


def table_of(rows: Callable[[dict[str, Any]], Iterable[Mapping[str, Any]]]) -> Callable[[dict[str, Any], Language], str]:
    """The function that writes an answer's ``rows`` as a table; its columns are names of members, the same in every language."""
    return lambda answer, _language: as_csv(rows(answer))


def as_csv(rows: Iterable[Mapping[str, Any]]) -> str:
    """``rows`` as CSV with a header, lines ended by CR LF; empty text when there is no column.

    A value is text, a number, true or false, None (an empty cell), or an amount ``{"value", "unit", "low", "high"}``. An amount
    ``gas`` in m3 stands in the columns ``gas [m3]``, ``gas low [m3]`` and ``gas high [m3]``; columns stand in the order in which
    they are first seen, and a row that has no such value leaves the cell empty. Text that a spreadsheet would run as a formula
    gets an apostrophe before it; numbers stay numbers. Raises ValueError for NaN, infinity and two values in one column of a row,
    TypeError for any other value.
    """
    table = [_cells_of(row) for row in rows]
    columns = list(dict.fromkeys(name for cells in table for name in cells))
    out = io.StringIO(newline="")
    if columns:
        writer = csv.writer(out, lineterminator="\r\n")
        writer.writerow(harmless(name) for name in columns)
        writer.writerows([cells.get(name, "") for name in columns] for cells in table)
    return out.getvalue()


def _cells_of(row: Mapping[str, Any]) -> dict[str, Cell]:
    cells = [cell for name, value in row.items() for cell in _cells(name, value)]
    if len(dict(cells)) < len(cells):
        raise ValueError(f"two values stand in one column: {', '.join(name for name, _ in cells)}")
    return dict(cells)


def _cells(name: str, value: Any) -> Iterator[tuple[str, Cell]]:
    if isinstance(value, Mapping):
        for member, mark in ENDS.items():
            if value.get(member) is not None:
                yield f"{name}{mark} [{value['unit']}]", _cell(value[member])
    else:
        yield name, "" if value is None else _cell(value)


def _cell(value: Any) -> Cell:
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, str):
        return harmless(value)
    if not isinstance(value, int | float):
        raise TypeError(f"a table cannot hold a {type(value).__name__}")
    if not math.isfinite(value):
        raise ValueError("a number of a table must be finite")
    return value


def harmless(text: str) -> str:
    """``text`` with an apostrophe before it where a spreadsheet would run it."""
    return f"'{text}" if text.startswith(STARTS_BLANK) or text.lstrip().startswith(STARTS_FORMULA) else text
