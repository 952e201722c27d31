"""A running service, for every test that asks one over HTTP."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from tests.api.running import Server, serving


@pytest.fixture(scope="session")
def server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Server]:
    """A server over the base pack. Whatever the tests did to it, it must not have failed once."""
    log = tmp_path_factory.mktemp("server") / "log"
    with serving(log) as running:
        yield running
    assert "Traceback" not in log.read_text()
