"""Fuzz one target with coverage: ``python -m tests.fuzz.run TARGET [folder for new inputs] [options of libFuzzer]``, in the checkout.

The kept corpus is read and, where a folder is named before it, never written. It runs until Ctrl-C or a fault;
``-max_total_time=600`` ends it after ten minutes. A fault leaves its input in a file ``crash-...`` and is told with its traceback.
"""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import atheris

with atheris.instrument_imports(include=["kilisho", "kilisho_api", "fluent"], enable_loader_override=False):
    from tests.fuzz import mutating, targets

CORPUS = Path(__file__).parent / "corpus"
LONGEST = {"bodies": 6_000, "packs": 20_000}
CHANGING = {"bodies": mutating.body, "packs": mutating.pack}
# One input in so many is changed byte by byte even where it could be changed by its meaning.
BYTEWISE = 8


def main(arguments: Sequence[str]) -> None:
    """Run until told to stop; libFuzzer ends the process itself."""
    name, *options = arguments
    folders = [option for option in options if not option.startswith("-")]
    flags = [f"-max_len={LONGEST.get(name, 2_000)}", "-timeout=60", *(option for option in options if option.startswith("-"))]
    own: dict[str, Any] = {"custom_mutator": _mutator(name)} if name in CHANGING else {}
    atheris.Setup([sys.argv[0], *flags, *folders, str(CORPUS / name)], targets.TARGETS[name], **own)
    atheris.Fuzz()


def _mutator(name: str) -> Any:
    def mutate(data: bytes, most: int, seed: int) -> bytes:
        found = CHANGING[name](data, most, seed) if seed % BYTEWISE else None
        return found if found is not None else bytes(atheris.Mutate(data, most))

    return mutate


if __name__ == "__main__":
    main(sys.argv[1:])
