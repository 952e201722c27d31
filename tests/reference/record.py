"""The one way in which a reference test compares our figure with a published one, and the table of all such comparisons.

``python tests/reference/record.py`` runs the folder's tests and writes RESULTS.md beside this file.
"""

from __future__ import annotations

import sys
from dataclasses import dataclass
from pathlib import Path

FOLDER = Path(__file__).resolve().parent
RESULTS = FOLDER / "RESULTS.md"


@dataclass(frozen=True, slots=True)
class Row:
    """One comparison; ``tolerance`` and ``difference`` are shares of the published figure."""

    what: str
    source: str
    published: float
    ours: float
    unit: str
    tolerance: float

    @property
    def difference(self) -> float:
        return (self.ours - self.published) / abs(self.published)


_ROWS: list[Row] = []
_NOTES: list[tuple[str, str]] = []


def check(what: str, ours: float, published: float, tolerance: float, unit: str, source: str) -> None:  # noqa: PLR0917
    """Record the comparison, then assert that ours lies within ``tolerance`` (a share) of the published figure.

    Raises ValueError for a published 0 (a relative difference means nothing there) and for a tolerance that could never fail.
    """
    if published == 0 or not 0 <= tolerance < 1:
        raise ValueError(f"{what}: published {published} and tolerance {tolerance} make no check")
    row = Row(what, source, float(published), float(ours), unit, tolerance)
    _ROWS.append(row)
    assert abs(row.difference) <= tolerance, f"{what}: ours {ours} {unit}, published {published} ({source})"


def note(source: str, text: str) -> None:
    """Put a remark on a source (a slip, a known departure) under the table."""
    _NOTES.append((source, text))


def rows() -> list[Row]:
    """The comparisons made so far in this process, in the order of the tests."""
    return list(_ROWS)


def table() -> str:
    """The comparisons and notes made so far, as Markdown."""
    lines = [_line(row) for row in _ROWS]
    worst = max((abs(row.difference) / row.tolerance for row in _ROWS if row.tolerance), default=0.0)
    head = [
        "# Our figures against published ones",
        "",
        "Written by `python tests/reference/record.py`; do not edit by hand. 'As printed' means that the figure was read in a copy of",
        "the source; 'recalled, to be confirmed' means that it was not. The reason for each tolerance stands in the test's file.",
        "",
        f"{len(_ROWS)} comparisons from {len({row.source for row in _ROWS})} sources; the nearest to its tolerance uses {worst:.0%} of it.",
        "",
        "| what | source | published | ours | unit | difference % | tolerance % |",
        "|---|---|---:|---:|---|---:|---:|",
    ]
    notes = [f"- **{source}**: {text}" for source, text in dict.fromkeys(_NOTES)]
    return "\n".join([*head, *lines, "", "## Notes", "", *notes, ""])


def _line(row: Row) -> str:
    # Differences in the last bits change with the machine; the table must not.
    percent = f"{100 * row.difference:+.2g}" if abs(row.difference) > 1e-8 else "0"
    figures = f"{row.published:.6g} | {row.ours:.6g} | {row.unit} | {percent} | {100 * row.tolerance:.2g}"
    return f"| {row.what} | {row.source} | {figures} |"


def main() -> int:
    """Run the reference tests in this process and write the table if all pass; the exit code is pytest's."""
    import pytest

    code = int(pytest.main(["-q", "-p", "no:cacheprovider", str(FOLDER)]))
    if code == 0:
        RESULTS.write_text(table(), encoding="utf-8")
    return code


if __name__ == "__main__":
    root = FOLDER.parents[1]
    sys.path[:0] = [str(root), str(root / "rules")]
    from tests.reference import record

    # The tests fill the imported module's list, not that of this script, which Python runs under another name.
    sys.exit(record.main())
