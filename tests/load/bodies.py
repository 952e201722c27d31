"""The committed example requests, by operation."""

from __future__ import annotations

import re
from pathlib import Path

EXAMPLES = Path(__file__).resolve().parents[2] / "openapi" / "examples"
ENDING = ".request.json"


def bodies(folder: Path = EXAMPLES) -> dict[str, bytes]:
    """Every example request of ``folder`` by its address below the version, such as ``first-charge``."""
    found = {segment(path.name): path.read_bytes() for path in sorted(folder.glob(f"*{ENDING}"))}
    if not found:
        raise FileNotFoundError(f"no *{ENDING} in {folder}")
    return found


def segment(name: str) -> str:
    """``first-charge`` for ``askFirstCharge.request.json``: the files are named after the operations of the contract."""
    if name.startswith("askInstallations"):
        return "installations/" + segment(name.replace("Installations", ""))
    return re.sub(r"(?<!^)(?=[A-Z])", "-", name.removesuffix(ENDING)).lower().removeprefix("ask-")
