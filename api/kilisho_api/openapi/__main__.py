"""``python -m kilisho_api.openapi FOLDER``: write the contract, the schema of a pack and the executed examples."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import orjson

from kilisho import packs
from kilisho.questions import open_questions
from kilisho_api.openapi.document import contract, example_answer, operation_id
from kilisho_api.openapi.pack_schema import pack_schema
from kilisho_api.settings import Settings

INDENTED = orjson.OPT_INDENT_2 | orjson.OPT_APPEND_NEWLINE


def files() -> dict[str, bytes]:
    """Every generated file by its place in the folder."""
    rulebook = packs.load()
    questions = open_questions(rulebook)
    out = {"openapi.json": contract(rulebook, questions, Settings().largest_body), "pack.schema.json": _indented(pack_schema())}
    for name, question in questions.items():
        out[f"examples/{operation_id(name)}.request.json"] = _indented(question.example)
        out[f"examples/{operation_id(name)}.response.json"] = _indented(example_answer(question))
    return out


def main(arguments: Sequence[str]) -> int:
    """Write all files below the folder that is named; 2 when none is."""
    if len(arguments) != 1:
        print("usage: python -m kilisho_api.openapi FOLDER", file=sys.stderr)
        return 2
    for name, content in files().items():
        target = Path(arguments[0]) / name
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes(content)
    return 0


def _indented(value: Any) -> bytes:
    return orjson.dumps(value, option=INDENTED)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
