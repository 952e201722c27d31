"""Writes the base pack's table of start-up times: ``python -m kilisho.start_up_table``."""

from __future__ import annotations

import json
from dataclasses import asdict
from typing import Any

from kilisho.packs import load
from kilisho.process.start_up import StartUpTable
from kilisho.start_up_table import FILE, basis_of, computed

DIGITS = 3


def written(table: StartUpTable, key: str) -> str:
    """The table as the text of its file: days rounded to three digits, null for no start."""
    told, sides = asdict(table), {"unaided": True, "aided": False}
    parts = {name: {kind: _rounded(told[kind][side]) for kind in ("days", "started")} for name, side in sides.items()}
    rows = [
        f'  "{name}": {{\n' + ",\n".join(f'    "{kind}": [\n{_lines(rows)}\n    ]' for kind, rows in part.items()) + "\n  }"
        for name, part in parts.items()
    ]
    return "{\n" + f'  "key": "{key}",\n' + ",\n".join(rows) + "\n}\n"


def _lines(rows: list[Any]) -> str:
    return ",\n".join(f"      {json.dumps(row)}" for row in rows)


def _rounded(value: Any) -> Any:
    if isinstance(value, list):
        return [_rounded(inner) for inner in value]
    return None if value == float("inf") else float(f"{value:.{DIGITS}g}")


def main() -> None:
    """Work out and write the base pack's table."""
    basis = basis_of(load().data)
    FILE.write_text(written(computed(basis), basis.key), "utf-8")


if __name__ == "__main__":
    main()
