"""Write the contract, the schema of a pack and the executed examples, or check that the committed ones are up to date."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import orjson

from kilisho import packs
from kilisho.questions import open_questions
from kilisho_api.encoding import encode
from kilisho_api.openapi.document import as_sent, contract, operation_id
from kilisho_api.openapi.pack_schema import pack_schema
from kilisho_api.settings import Settings

RELEASED = Path("released") / "openapi-v1.json"
INDENTED = orjson.OPT_INDENT_2 | orjson.OPT_APPEND_NEWLINE


def files() -> dict[str, bytes]:
    """Every generated file by its place in the folder."""
    rulebook = packs.load()
    questions = open_questions(rulebook)
    out = {"openapi.json": contract(rulebook, questions, Settings()), "pack.schema.json": _indented(pack_schema())}
    for name, question in questions.items():
        out[f"examples/{operation_id(name)}.request.json"] = _indented(question.example)
        out[f"examples/{operation_id(name)}.response.json"] = _indented(as_sent(question.ask(encode(question.example))))
    return out


def main(arguments: Sequence[str] | None = None) -> int:
    """Write all files, or with ``--check`` name those that differ from what the service would generate (exit code 1)."""
    parser = argparse.ArgumentParser(prog="python -m kilisho_api.openapi", description=__doc__)
    parser.add_argument("folder", nargs="?", type=Path, default=Path("openapi"), help="where the files are")
    parser.add_argument("--check", action="store_true", help="write nothing; compare")
    parser.add_argument("--release", action="store_true", help="write the contract as the released one too, which no later one may break")
    chosen = parser.parse_args(arguments)
    if chosen.check:
        drifted = stale(chosen.folder)
        for name in drifted:
            print(f"{chosen.folder / name} differs from what the service generates", file=sys.stderr)
        return 1 if drifted else 0
    written = files()
    if chosen.release:
        written[str(RELEASED)] = written["openapi.json"]
    for name, content in written.items():
        target = chosen.folder / name
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes(content)
    return 0


def stale(folder: Path) -> list[str]:
    """Names of the files in ``folder`` that differ, are missing, or are no longer generated."""
    wanted = files()
    present = {str(path.relative_to(folder)): path.read_bytes() for path in folder.rglob("*.json")}
    present.pop(str(RELEASED), None)
    return sorted(name for name in wanted.keys() | present.keys() if wanted.get(name) != present.get(name))


def _indented(value: Any) -> bytes:
    return orjson.dumps(value, option=INDENTED)


if __name__ == "__main__":
    sys.exit(main())
