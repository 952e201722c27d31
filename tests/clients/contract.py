"""The committed contract as the checks of this folder read it: its operations, and what stands ready to ask and to expect of each."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

FOLDER = Path(__file__).resolve().parents[2] / "openapi"
CONTRACT = FOLDER / "openapi.json"
JSON = "application/json"
Part = dict[str, Any]


@dataclass(frozen=True)
class Operation:
    """One operation: where it is, what its example asks, and what it answers."""

    path: str
    method: str
    described: Part

    @property
    def name(self) -> str:
        """Its operationId."""
        return str(self.described["operationId"])

    @property
    def body(self) -> Any:
        """The example of the request; None where there is no body."""
        return self.described["requestBody"]["content"][JSON]["example"] if "requestBody" in self.described else None

    @property
    def content(self) -> Mapping[str, Part]:
        """The media types of its answer, JSON first where it has that."""
        found: Mapping[str, Part] = self.described["responses"]["200"]["content"]
        return found

    @property
    def in_path(self) -> dict[str, str]:
        """The parameters of its path with their examples."""
        return {one["name"]: one["example"] for one in self.described["parameters"] if one.get("in") == "path"}

    @property
    def address(self) -> str:
        """Its path with the examples of its parameters."""
        return self.path.format(**self.in_path)

    def expected(self) -> Any:
        """The whole answer to the example; None where the contract gives none (collections, texts)."""
        if self.body is not None:
            return json.loads((FOLDER / "examples" / f"{self.name}.response.json").read_bytes())
        return self.content.get(JSON, {}).get("example")


@cache
def contract() -> Part:
    """The committed document."""
    loaded: Part = json.loads(CONTRACT.read_bytes())
    return loaded


def operations() -> Iterator[Operation]:
    """Every operation that is asked in JSON or without a body, in the order of the contract; tables are files, for libraries of files."""
    for path, item in contract()["paths"].items():
        for method, described in item.items():
            if JSON in described.get("requestBody", {}).get("content", {JSON: {}}):
                yield Operation(path, method, described)


def counts() -> Mapping[str, int]:
    """How many entries each collection of the rulebook holds."""
    [about] = [one for one in operations() if one.name == "getRulebook"]
    found: Mapping[str, int] = about.expected()["entries"]
    return found
