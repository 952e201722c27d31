"""The lines of a file, in lists of bounded size."""

from __future__ import annotations

from collections.abc import Iterator
from typing import IO

BLOCK = 1 << 20
LONGEST_LINE = 1 << 20
BOM = b"\xef\xbb\xbf"


def blocks_of_lines(file: IO[bytes], block: int = BLOCK, longest: int = LONGEST_LINE) -> Iterator[list[bytes | None]]:
    """Lines without their ends (LF or CR LF), the last one also where nothing ends it; None for one of more than ``longest`` bytes."""
    carry, passing, first = b"", False, True
    while data := file.read(block):
        data, first = data.removeprefix(BOM) if first else data, False
        lines: list[bytes | None] = list((carry + data).split(b"\n"))
        carry = lines.pop() or b""
        if passing and lines:
            # What is left of a line that was told already.
            lines, passing = lines[1:], False
        if len(carry) > longest:
            carry, passing, lines = b"", True, lines if passing else [*lines, None]
        yield [_without_end(line, longest) for line in lines]
    if carry and not passing:
        yield [_without_end(carry, longest)]


def _without_end(line: bytes | None, longest: int) -> bytes | None:
    if line is None or len(line) > longest + 1:
        return None
    return line.removesuffix(b"\r")
