"""The Node packages of the client checks: what package-lock.json pins, installed once and again when it has changed."""

from __future__ import annotations

import hashlib
import shutil
import subprocess
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent
MODULES = HERE / "node_modules"
STAMP = MODULES / ".installed"
OLDEST_NODE = 20


def node_is_here() -> bool:
    """Can this machine run npm under Node 20 or newer?"""
    if shutil.which("npm") is None or shutil.which("node") is None:
        return False
    told = subprocess.run(["node", "--version"], capture_output=True, text=True, check=True).stdout
    return int(told.strip().lstrip("v").partition(".")[0]) >= OLDEST_NODE


def prepare() -> None:
    """Bring ``node_modules`` into step with the lock; raises :class:`subprocess.CalledProcessError` when npm cannot."""
    pinned = hashlib.sha256((HERE / "package-lock.json").read_bytes()).hexdigest()
    if STAMP.exists() and STAMP.read_text("utf-8") == pinned:
        return
    subprocess.run(["npm", "ci"], cwd=HERE, check=True)
    STAMP.write_text(pinned, "utf-8")


def command(name: str) -> str:
    """Path of a command that the packages bring."""
    return str(MODULES / ".bin" / name)


if __name__ == "__main__":
    if not node_is_here():
        sys.exit("The checks of the contract need Node 20 or newer with npm.")
    prepare()
