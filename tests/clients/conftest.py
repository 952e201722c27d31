"""A running service for the clients, and the tools with which they are made."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from tests.api.running import Server, serving
from tests.clients import packages


@pytest.fixture(scope="session")
def server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Server]:
    log = tmp_path_factory.mktemp("server") / "log"
    with serving(log) as running:
        yield running
    assert "Traceback" not in log.read_text()


@pytest.fixture(scope="session")
def node() -> None:
    """Node with the pinned packages."""
    if not packages.node_is_here():
        pytest.skip("needs Node 20 or newer with npm")
    packages.prepare()
