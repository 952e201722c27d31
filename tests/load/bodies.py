"""The committed example requests, by operation, and what else is measured of an operation."""

from __future__ import annotations

import json
import re
from pathlib import Path

EXAMPLES = Path(__file__).resolve().parents[2] / "openapi" / "examples"
ENDING = ".request.json"
# A plan without the year's forecast is quick and one with it is not, so both are measured.
BESIDE = {"farm-plan-without-forecast": ("farm-plan", {"with_forecast": False})}

# These are worked out in a lane of their own, few at a time.
SLOW = frozenset(("feed-mix", "gas-forecast", "batch-rotation", "farm-plan"))


def bodies(folder: Path = EXAMPLES) -> dict[str, bytes]:
    """Every example request of ``folder`` by its address below the version, such as ``first-charge``."""
    found = {segment(path.name): path.read_bytes() for path in sorted(folder.glob(f"*{ENDING}"))}
    if not found:
        raise FileNotFoundError(f"no *{ENDING} in {folder}")
    return found


def loads(folder: Path = EXAMPLES) -> dict[str, bytes]:
    """Every body to measure by name: the examples, and those of ``BESIDE`` as far as their operation has one."""
    found = bodies(folder)
    beside = {name: json.dumps(json.loads(found[of]) | changes).encode() for name, (of, changes) in BESIDE.items() if of in found}
    return found | beside


def operation(name: str) -> str:
    """The last segment of the address at which the load ``name`` is posted."""
    return BESIDE[name][0] if name in BESIDE else name


def segment(name: str) -> str:
    """``first-charge`` for ``askFirstCharge.request.json``: the files are named after the operations of the contract."""
    if name.startswith("askInstallations"):
        return "installations/" + segment(name.replace("Installations", ""))
    return re.sub(r"(?<!^)(?=[A-Z])", "-", name.removesuffix(ENDING)).lower().removeprefix("ask-")
