"""The worker processes of a running service, as its log names them."""

from __future__ import annotations

import re
from pathlib import Path

from tests.api.running import Server


def alive(server: Server) -> list[int]:
    """Process ids of the workers that live, the oldest first."""
    started = [int(pid) for pid in re.findall(r"worker (\d+) started", server.log.read_text())]
    return [pid for pid in started if _runs(pid)]


def _runs(pid: int) -> bool:
    try:
        return Path(f"/proc/{pid}/stat").read_text().rsplit(")", 1)[1].split()[0] != "Z"
    except FileNotFoundError:
        return False
