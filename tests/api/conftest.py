"""A client of the service that all tests share, and the questions that it serves."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

import httpx
import pytest
from tests.api.running import Server

from kilisho import packs
from kilisho.packs import Rulebook
from kilisho.questions import Question, open_questions


@pytest.fixture(scope="session")
def client(server: Server) -> Iterator[httpx.Client]:
    with httpx.Client(base_url=server.url, timeout=30) as opened:
        yield opened


@pytest.fixture(scope="session")
def rulebook() -> Rulebook:
    return packs.load()


@pytest.fixture(scope="session")
def questions(rulebook: Rulebook) -> Mapping[str, Question]:
    return open_questions(rulebook)
