"""The tools with which clients are made."""

from __future__ import annotations

import pytest
from tests.clients import packages


@pytest.fixture(scope="session")
def node() -> None:
    """Node with the pinned packages."""
    if not packages.node_is_here():
        pytest.skip("needs Node 20 or newer with npm")
    packages.prepare()
