#!/usr/bin/env python3
"""Build the image without a Docker daemon: ``python3 docker/build_here.py DIRECTORY`` (as root, on Debian or Ubuntu).

``docker/Dockerfile`` is used as it stands, with chroot isolation and its base image replaced by a minimal Debian root.
The wheels are fetched on this machine, against the locks' hashes, so that nothing inside the build needs the network.
Needs the packages buildah and mmdebstrap. Everything is left in DIRECTORY; ``docker/README.md`` says how to use it.
"""

from __future__ import annotations

import argparse
import json
import os
import shutil
import subprocess
import sys
import time
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parent.parent
SUITE, SUITE_PYTHON = "bookworm", "3.11"
LOCKS = ("build.lock", "requirements.lock")
NEEDED = ("buildah", "mmdebstrap")
BASE, IMAGE = "localhost/kilisho-base", "localhost/kilisho"
# Long enough to spare a developer the half minute, short enough to pick up security updates.
BASE_KEPT_SECONDS = 7 * 24 * 3600


class CannotBuildError(Exception):
    """A step failed; the message holds its output."""


@dataclass(frozen=True)
class Image:
    """A built image: where its files lie, what it is set to run, and its size in bytes above the base."""

    root: Path
    config: dict[str, Any]
    own_bytes: int
    total_bytes: int


def missing() -> list[str]:
    """What this machine lacks to build an image."""
    lacking = [name for name in NEEDED if shutil.which(name) is None]
    return lacking if os.geteuid() == 0 else [*lacking, "root"]


def build(directory: Path) -> Image:
    """Build the image inside ``directory`` and unpack it; raises :class:`CannotBuildError`."""
    directory.mkdir(parents=True, exist_ok=True)
    _timed("base root", lambda: _import_base(directory, base_tar()))
    context = directory / "context"
    _timed("wheels", lambda: _lay_out(context))
    arguments = ["--isolation", "chroot", "--format", "docker", "--pull-never", "--layers=false", "--build-arg", f"BASE={BASE}"]
    ignore = ["--ignorefile", str(ROOT / "docker/Dockerfile.dockerignore")]
    dockerfile = ["--file", str(ROOT / "docker/Dockerfile")]
    _timed("image", lambda: _buildah(directory, "build", *arguments, *ignore, *dockerfile, "--tag", IMAGE, str(context)))
    return _unpacked(directory)


def base_tar() -> Path:
    """A minimal Debian root with Python, made once and kept in the user's cache."""
    tar = Path(os.environ.get("XDG_CACHE_HOME") or Path.home() / ".cache") / "kilisho" / f"{SUITE}.tar"
    if not tar.exists() or time.time() - tar.stat().st_mtime > BASE_KEPT_SECONDS:
        tar.parent.mkdir(parents=True, exist_ok=True)
        unfinished = tar.with_suffix(".part.tar")
        _run("mmdebstrap", "--variant=minbase", "--include=python3,python3-venv", SUITE, str(unfinished))
        unfinished.replace(tar)
    return tar


def _import_base(directory: Path, tar: Path) -> None:
    container = _buildah(directory, "from", "scratch").strip()
    _buildah(directory, "add", container, str(tar), "/")
    _buildah(directory, "commit", "--rm", container, BASE)


def _lay_out(context: Path) -> None:
    """Copy what the Dockerfile reads, and put the wheels where it looks for them."""
    shutil.rmtree(context, ignore_errors=True)
    unwanted = shutil.ignore_patterns("__pycache__")
    for folder in ("rules", "api", "docker"):
        shutil.copytree(ROOT / folder, context / folder, ignore=unwanted)
    for file in ("pyproject.toml", "README.md"):
        shutil.copy(ROOT / file, context)
    locks = [part for lock in LOCKS for part in ("-r", str(ROOT / "docker" / lock))]
    only = ["--require-hashes", "--no-deps", "--only-binary", ":all:", "--python-version", SUITE_PYTHON]
    _run(sys.executable, "-m", "pip", "download", "--quiet", *only, *locks, "--dest", str(context / "docker/wheels"))


def _unpacked(directory: Path) -> Image:
    inspected = json.loads(_buildah(directory, "inspect", "--type", "image", IMAGE))
    container = _buildah(directory, "from", "--pull-never", IMAGE).strip()
    root = Path(_buildah(directory, "mount", container).strip())
    return Image(root, inspected["Docker"]["config"], _bytes_under(root / "srv"), _bytes_under(root))


def _bytes_under(folder: Path) -> int:
    return int(_run("du", "--summarize", "--bytes", "--one-file-system", str(folder)).split()[0])


def _buildah(directory: Path, *arguments: str) -> str:
    # Its own storage, so that nothing of this build reaches the machine's images; vfs works inside a container as well.
    storage = ["--root", str(directory / "storage"), "--runroot", str(directory / "run"), "--storage-driver", "vfs"]
    return _run("buildah", *storage, *arguments)


def _run(*command: str) -> str:
    done = subprocess.run(command, capture_output=True, text=True, check=False)  # noqa: S603 - fixed commands
    if done.returncode:
        raise CannotBuildError(f"{' '.join(command)}\nended with {done.returncode}\n{done.stdout}{done.stderr}")
    return done.stdout


def _timed(name: str, step: Callable[[], object]) -> None:
    began = time.monotonic()
    step()
    print(f"{name:<10} {time.monotonic() - began:6.1f} s", flush=True)


def main() -> int:
    """Entry point; returns the exit code."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("directory", type=Path, help="where to build; about 2 GB")
    directory = parser.parse_args().directory
    if missing():
        print(f"Cannot build an image here; missing: {', '.join(missing())}", file=sys.stderr)
        return 1
    try:
        image = build(directory)
    except CannotBuildError as error:
        print(error, file=sys.stderr)
        return 1
    print(f"root       {image.root}\nsize       {image.total_bytes / 1e6:.0f} MB, of which Kilisho {image.own_bytes / 1e6:.0f} MB")
    return 0


if __name__ == "__main__":
    sys.exit(main())
