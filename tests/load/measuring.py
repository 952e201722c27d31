"""Drives one server with wrk and reads what it says; reads what a process used from /proc."""

from __future__ import annotations

import json
import os
import subprocess
from dataclasses import dataclass
from pathlib import Path

# wrk's own report is meant for people; its script interface hands over exact numbers.
SCRIPT = """
wrk.method = "POST"
wrk.headers["Content-Type"] = "application/json"
local file = assert(io.open("{body}", "rb"))
wrk.body = file:read("*a")
file:close()
function done(summary, latency)
  local refused = summary.errors.status + summary.errors.connect + summary.errors.read + summary.errors.write + summary.errors.timeout
  io.stdout:write(string.format('{{"requests":%d,"microseconds":%d,"refused":%d,"p50":%d,"p99":%d}}\\n',
    summary.requests, summary.duration, refused, latency:percentile(50), latency:percentile(99)))
end
"""
TICKS_PER_SECOND = os.sysconf("SC_CLK_TCK")
CONNECTIONS = 16
# A slow answer is waited for; wrk gives up after two seconds otherwise.
PATIENCE = "60s"


class LoadError(RuntimeError):
    """The load did not run, or the server did not answer 200 to all of it."""


@dataclass(frozen=True)
class Round:
    """One run of wrk: requests a second, latencies in milliseconds, and processor time of the server in microseconds a request."""

    per_second: float
    p50: float
    p99: float
    processor: float


def run_round(url: str, body: bytes, seconds: int, server: int, folder: Path) -> Round:
    """Load ``url`` with ``body`` from 16 connections; raises :class:`LoadError` unless every answer was a success."""
    (folder / "body").write_bytes(body)
    (folder / "post.lua").write_text(SCRIPT.format(body=folder / "body"), encoding="utf-8")
    began = sum(map(processor_seconds, family(server)))
    command = ["wrk", "-t1", f"-c{CONNECTIONS}", f"-d{seconds}s", "--timeout", PATIENCE, "-s", str(folder / "post.lua"), url]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    used = sum(map(processor_seconds, family(server))) - began
    if done.returncode:
        raise LoadError(done.stdout + done.stderr)
    return read_report(done.stdout, used)


def read_report(report: str, processor_used: float) -> Round:
    """The numbers that the script wrote at the end of wrk's report."""
    told = json.loads(report.splitlines()[-1])
    if told["refused"] or not told["requests"]:
        raise LoadError(f"{told['refused']} of {told['requests']} requests failed")
    requests = told["requests"]
    return Round(requests / told["microseconds"] * 1e6, told["p50"] / 1000, told["p99"] / 1000, processor_used / requests * 1e6)


def processor_seconds(process: int) -> float:
    """Processor time that ``process`` has used, in and outside the kernel."""
    after_name = Path(f"/proc/{process}/stat").read_text(encoding="ascii").rpartition(")")[2].split()
    return (int(after_name[11]) + int(after_name[12])) / TICKS_PER_SECOND


def machine_seconds() -> float:
    """Processor time that was used on the whole machine since it started, or was taken from it by its host."""
    user, nice, system, _idle, _waiting, hard, soft, stolen = map(int, Path("/proc/stat").read_text(encoding="ascii").split()[1:9])
    return (user + nice + system + hard + soft + stolen) / TICKS_PER_SECOND


def family(process: int) -> list[int]:
    """``process`` and those that it has started and that live: the workers of a service."""
    children = Path(f"/proc/{process}/task/{process}/children").read_text(encoding="ascii").split()
    return [process, *map(int, children)]


def open_files(process: int) -> int:
    """Files and connections that ``process`` holds open."""
    return len(list(Path(f"/proc/{process}/fd").iterdir()))


def resident_megabytes(process: int) -> float:
    """Memory that ``process`` holds now."""
    status = Path(f"/proc/{process}/status").read_text(encoding="ascii")
    return next(int(line.split()[1]) / 1024 for line in status.splitlines() if line.startswith("VmRSS"))
